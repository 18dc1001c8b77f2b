/**
 * The layout of a stick: everything that a carpenter marks on it, from the arris of its two reference faces and from one
 * end, to the sixteenth of an inch or the millimetre. Distances run from the foot's outermost point (in lying timbers the
 * end at bent 1 or wall A), so that no error of one mark enters the next.
 */
import { groupBy } from "../../collect.ts";
import type { JointKindName } from "../../frame/frame.ts";
import type { PostFoot } from "../../joinery/foot/post-foot.ts";
import type { Joint, Peg } from "../../joinery/joint.ts";
import { jointKindOf } from "../../joinery/kinds/index.ts";
import { leftLong } from "../../joinery/scribe.ts";
import { isSeatKind } from "../../joinery/seat.ts";
import type { Model, Timber } from "../../model/model.ts";
import { solidOf } from "../../model/solid.ts";
import { stickExtent } from "../../model/true-ends.ts";
import { type Cut, cornersOf, cutBySpots, cutOf, entryFace, type Marked, outlineOf } from "./cuts.ts";
import { type EndMarks, endMarks, LEAST_OVER } from "./ends.ts";
import {
  acrossFace,
  depthBelow,
  FACES,
  type FaceNumber,
  type ReferenceFrame,
  referenceFrame,
  type Spot,
  spotOn,
  woodBelow,
} from "./faces.ts";
import { type MeasuredSize, measuredEntry, measuredSizes, type Surplus, surplusAt } from "./measured.ts";

/** A cut on a real stick. */
export interface StickCut extends Cut {
  /** how far the real face stands outside the perfect one there: to add to every depth from it; 0 on faces 1 and 2 */
  readonly over: number;
}

export interface PegHole {
  /** the reference face that it is bored from */
  readonly face: 1 | 2;
  /** its center, inches; in a tenon, where the hole of the cheeks comes */
  readonly along: number;
  readonly across: number;
  readonly diameter: number;
  /** in a tenon: bored this much nearer the shoulder, square to it, so that the peg draws the joint tight; else 0 */
  readonly draw: number;
  /** for a bolt of an anchor */
  readonly bolt?: true;
}

/** Where a screw enters a stick. */
export interface ScrewMark {
  readonly face: FaceNumber;
  /** the middle of its head, inches */
  readonly along: number;
  readonly across: number;
  readonly diameter: number;
  readonly length: number;
  /** degrees between the screw and the arris; 90 = square across the stick */
  readonly angle: number;
}

/** What one joint leaves on a stick. */
export interface JointMarks {
  readonly joint: string;
  readonly kind: JointKindName | "post-foot";
  /** the timber that it joins this one to, or the pier */
  readonly other: string;
  readonly role: "joined" | "receiving";
  /** marked from the other timber in its place: the numbers say where to expect it */
  readonly scribed: boolean;
  readonly cuts: readonly StickCut[];
  readonly holes: readonly PegHole[];
  /** driven from this stick into the other */
  readonly screws: readonly ScrewMark[];
}

export interface StickLayout {
  readonly timber: Timber;
  readonly frame: ReferenceFrame;
  /** inches from tip to tip as it will be, tenons included */
  readonly length: number;
  /** what it keeps over at its ends until it is scribed */
  readonly leave: { readonly foot: number; readonly head: number };
  readonly foot: EndMarks;
  readonly head: EndMarks;
  /** in order along the stick */
  readonly joints: readonly JointMarks[];
  /** what somebody measured on it; empty = it is taken as perfect */
  readonly measured: readonly MeasuredSize[];
}

/** What a stick has over its perfect size square to a face: it stands outside the faces that are no reference. */
function overFace(face: FaceNumber, surplus: Surplus, { ways }: ReferenceFrame): number {
  return face < 3 ? 0 : surplus[ways[face === 3 ? 0 : 1]];
}

/** A stick while it is laid out. */
interface Stick extends Marked {
  readonly timber: Timber;
  readonly measured: readonly MeasuredSize[];
}

/** The cuts on the real stick. A solid that lies past its ends or beside it takes nothing from it, and is not marked. */
function onWood(cuts: readonly Cut[], { timber, measured, frame }: Stick): StickCut[] {
  return cuts.flatMap((cut) => {
    if (extentOf(cut, "along") < NOTHING || extentOf(cut, "across") < NOTHING) return [];
    const [from, to] = cut.opening.along;
    const over = overFace(cut.face, surplusAt(measured, timber, (from + to) / 2), frame);
    return [{ ...cut, over }];
  });
}

/** Narrower than this, no wood is cut. */
const NOTHING = 1e-6;

/** How far a cut reaches one way, at its opening and at its deepest together. */
function extentOf({ opening, bottom = opening }: Cut, way: "along" | "across"): number {
  return Math.max(opening[way][1], bottom[way][1]) - Math.min(opening[way][0], bottom[way][0]);
}

/** Holes across the grain; a peg along it is none of this stick's. */
function holeOf(peg: Peg, draw: number, { spot }: Stick): PegHole[] {
  const [from, to] = [spot(peg.from), spot(peg.to)];
  const across = ([0, 1] as const).find(
    (i) => Math.abs(from.below[i] - to.below[i]) > 0.99 * Math.hypot(...differences(from, to)),
  );
  if (across === undefined) return [];
  const face = across === 0 ? 1 : 2;
  const along = (from.along + to.along) / 2;
  return [{ face, along, across: acrossFace(face, from), diameter: peg.diameter, draw }];
}

/** A screw that has its head on none of the faces of the perfect stick is set out in its place, and not marked. */
function screwMark({ from: head, to: point, diameter }: Peg, { spot, frame }: Stick): ScrewMark[] {
  const [from, to] = [spot(head), spot(point)];
  const face = FACES.find((one) => Math.abs(depthBelow(one, from, frame)) < LEAST_OVER);
  if (face === undefined) return [];
  const length = Math.hypot(...differences(from, to));
  const angle = (Math.acos(Math.min(1, Math.abs(from.along - to.along) / length)) * 180) / Math.PI;
  return [{ face, along: from.along, across: acrossFace(face, from), diameter, length, angle }];
}

const differences = (a: Spot, b: Spot): [number, number, number] => [
  a.along - b.along,
  a.below[0] - b.below[0],
  a.below[1] - b.below[1],
];

function joined(joint: Joint, stick: Stick): JointMarks {
  const { solids, sizes } = joint;
  const draw = sizes.pegs?.draw.value ?? 0;
  return {
    ...about(joint, "joined"),
    cuts: onWood(
      [
        ...solids.notches.map((prism) =>
          cutOf(prism, jointKindOf(joint.kind).cut ?? "notch", undefined, 0, stick),
        ),
        ...letIn(joint, stick),
      ],
      stick,
    ),
    holes: solids.pegs.flatMap((peg) => holeOf(peg, draw, stick)),
    screws: (solids.screws ?? []).flatMap((screw) => screwMark(screw, stick)),
  };
}

function received(joint: Joint, stick: Stick): JointMarks {
  const { solids, face, sizes } = joint;
  const housing = sizes.housing.value;
  const part = jointKindOf(joint.kind).cut ?? "mortise";
  return {
    ...about(joint, "receiving"),
    cuts: onWood(
      [
        ...(solids.housings.length === 0 ? reduction(joint, stick) : []),
        ...solids.housings.map((prism) => cutOf(prism, "housing", face.inward, 0, stick)),
        ...solids.mortises.map((prism) => cutOf(prism, part, face.inward, housing, stick)),
      ],
      stick,
    ),
    holes: solids.pegs.flatMap((peg) => holeOf(peg, 0, stick)),
    screws: [],
  };
}

/** What the anchor of its pier wants of a post. */
function footed(foot: PostFoot, stick: Stick): JointMarks {
  const { id, pier, notches, holes, row } = foot;
  const screws = row?.kind === "screws";
  return {
    joint: id,
    kind: "post-foot",
    other: pier.id,
    role: "joined",
    scribed: false,
    cuts: onWood(
      notches.map((prism) => cutOf(prism, "notch", undefined, 0, stick)),
      stick,
    ),
    holes: screws
      ? []
      : holes.flatMap((hole) => holeOf(hole, 0, stick).map((one) => ({ ...one, bolt: true as const }))),
    screws: screws ? holes.flatMap((hole) => screwMark(hole, stick)) : [],
  };
}

const about = (
  joint: Joint,
  role: JointMarks["role"],
): Pick<JointMarks, "joint" | "kind" | "other" | "role" | "scribed"> => ({
  joint: joint.id,
  kind: joint.kind,
  other: role === "joined" ? joint.into.id : joint.of.id,
  role,
  scribed: joint.scribe > 0,
});

/**
 * An end that stands against a rough face without a housing: the face is pared down to the perfect timber where it stands.
 * Its depth is all surplus.
 */
function reduction(joint: Joint, stick: Stick): Cut[] {
  const { frame, spot, length, measured, timber } = stick;
  const face = entryFace(joint.face.inward, frame);
  if (face === undefined || face < 3 || joint.end === "side") return [];
  const corners = solidOf(joint.of).corners;
  const end = (joint.end === "foot" ? corners.slice(0, 4) : corners.slice(4)).map(spot);
  if (end.some((s) => Math.abs(depthBelow(face, s, frame)) > LEAST_OVER)) return [];
  const cut = cutBySpots(end, "reduction", face, frame, length);
  const [from, to] = cut.opening.along;
  const over = overFace(face, surplusAt(measured, timber, (from + to) / 2), frame);
  return over > LEAST_OVER ? [cut] : [];
}

/**
 * A rafter whose seat is housed in its plate: where it stands in the housing its rough faces are pared to the perfect timber,
 * for which the housing is cut.
 */
function letIn(joint: Joint, { frame, spot, length, measured, timber }: Stick): Cut[] {
  if (!isSeatKind(joint.kind)) return [];
  const corners = joint.solids.housings.flatMap(cornersOf).map(spot);
  return ([3, 4] as const).flatMap((face) => {
    const onFace = corners.filter((s) => Math.abs(depthBelow(face, s, frame)) < LEAST_OVER);
    if (onFace.length === 0) return [];
    const opening = outlineOf(onFace, face, frame, length);
    const over = overFace(
      face,
      surplusAt(measured, timber, (opening.along[0] + opening.along[1]) / 2),
      frame,
    );
    const floor = woodBelow(face, frame);
    return over > LEAST_OVER
      ? [
          {
            part: "reduction",
            face,
            opening,
            corners: undefined,
            bottom: undefined,
            from: 0,
            depth: 0,
            floor,
            through: false,
          } as const,
        ]
      : [];
  });
}

/** Where a joint's first mark lies. */
function firstMark(marks: JointMarks): number {
  return Math.min(
    ...marks.cuts.map((cut) => cut.opening.along[0]),
    ...[...marks.holes, ...marks.screws].map(({ along }) => along),
  );
}

/** The joints of a frame by the sticks they are cut in. */
export interface JointsOf {
  readonly into: ReadonlyMap<string, readonly Joint[]>;
  readonly of: ReadonlyMap<string, readonly Joint[]>;
  readonly feet: ReadonlyMap<string, readonly PostFoot[]>;
}

function layoutOf(timber: Timber, model: Model, joints: JointsOf): StickLayout {
  const own = joints.of.get(timber.id) ?? [];
  const frame = referenceFrame(timber);
  const [start, end] = stickExtent(timber, own, joints.into.get(timber.id) ?? []);
  const measured = measuredSizes(timber, measuredEntry(model, timber));
  const stick: Stick = {
    timber,
    measured,
    frame,
    length: end - start,
    spot: spotOn(timber, frame, start),
  };
  const marks = [
    ...own.map((joint) => joined(joint, stick)),
    ...(joints.into.get(timber.id) ?? []).map((joint) => received(joint, stick)),
    ...(joints.feet.get(timber.id) ?? []).map((foot) => footed(foot, stick)),
  ].filter(({ cuts, holes, screws }) => cuts.length + holes.length + screws.length > 0);
  return {
    timber,
    frame,
    length: stick.length,
    leave: leftLong(own),
    foot: endMarks(timber, "foot", own, measured, stick),
    head: endMarks(timber, "head", own, measured, stick),
    joints: marks.sort((a, b) => firstMark(a) - firstMark(b)),
    measured,
  };
}

/** The layout of every stick of a frame, in the order of its timbers. */
export function layoutSticks(model: Model): readonly StickLayout[] {
  const joints: JointsOf = {
    into: groupBy(model.joints, (joint) => joint.into.id),
    of: groupBy(model.joints, (joint) => joint.of.id),
    feet: groupBy(model.feet, (foot) => foot.post.id),
  };
  return model.timbers.map((timber) => layoutOf(timber, model, joints));
}
