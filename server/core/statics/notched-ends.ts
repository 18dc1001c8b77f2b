/**
 * Ends of lying timbers that carry their shear on less than their section: tenons, dovetails, laps, the halves of scarfs
 * (NDS 3.4.3.2, equation 3.4-3).
 *
 * A housing under such an end carries what its floor bears: the area times the lesser value of the two timbers. F_c⊥ is a
 * limit of crushing and not of breaking, so the floor keeps that much while the rest goes through the neck (derived). A
 * housing that bears the whole end leaves nothing to the neck; one that is only a shallow line leaves almost all. It is
 * open on top or not tight there, so what lifts goes through the neck. An end that leans bears on its shoulder and its
 * toe, and is no notched end.
 */
import type { Joint } from "../joinery/joint.ts";
import { isScarf } from "../joinery/scarf.ts";
import type { Timber } from "../model/model.ts";
import { isDiagonal, isUpright } from "../model/upright.ts";
import { dot } from "../model/vec.ts";
import { housingFloor } from "./end-surfaces.ts";
import { tipOf } from "./force-table.ts";
import type { Support } from "./member-supports.ts";

/** An end that carries its shear on less than its section. */
export interface NotchedEnd {
  readonly joint: string;
  readonly x: number;
  /** index of the shear among the forces at the ends of elements */
  readonly index: number;
  /** times the shear: positive where the end presses down */
  readonly down: 1 | -1;
  readonly breadth: number;
  /** d_n, in */
  readonly left: number;
  /** of what presses down, lb: borne by the floor of the housing before anything goes through the neck */
  readonly housed: number;
}

/** Index of the shear in the plane of the depth, within a row. */
const VY = 1;

/** What leans more than this (as a cosine of its angle to the way in, about 15°) bears on its shoulder. */
const NEARLY_SQUARE = 0.966;
/** Wood below a tenon that counts as cut away from under it, in. */
const BELOW = 1 / 16;

interface Neck {
  readonly breadth: number;
  readonly left: number;
}

/**
 * A tenon that lies flat, as in the side of a beam: its thickness is what is left of the depth. With its lower face flush
 * with the underside only the upper side is cut, no further than the face that it bears on: whole depth (3.4-5 with e = 0).
 */
function flatTenon({ sizes, face }: Joint, timber: Timber): Neck | undefined {
  const { tenon } = sizes;
  if (!tenon) return undefined;
  const up = Math.sign(face.across[2]) || 1;
  const below = up * tenon.center[1] - tenon.thickness.value / 2 + timber.depth / 2;
  return {
    breadth: Math.min(tenon.width.value, timber.width),
    left: below <= BELOW ? timber.depth : Math.min(tenon.thickness.value, timber.depth),
  };
}

/** Breadth and depth that carry the shear of the joined end, where that is not the whole section. */
function neckOf(joint: Joint, timber: Timber): Neck | undefined {
  const { face, sizes } = joint;
  const { tenon, dovetail, lap } = sizes;
  if (isScarf(joint.kind))
    return lap && { breadth: timber.width, left: Math.max(timber.depth - lap.depth, 0) };
  if (joint.kind === "corner-half-lap") {
    const cut = joint.solids.notches[0];
    return cut && { breadth: timber.width, left: timber.depth - (cut.to - cut.from) };
  }
  if (Math.abs(dot(timber.axis, face.inward)) < NEARLY_SQUARE) return undefined;
  const flat = Math.abs(dot(timber.depthDir, face.across)) > Math.abs(dot(timber.depthDir, face.grain));
  if (dovetail)
    return flat
      ? { breadth: dovetail.neck, left: Math.min(dovetail.depth.value, timber.depth) }
      : {
          breadth: Math.min(dovetail.depth.value, timber.width),
          left: Math.min(dovetail.neck, timber.depth),
        };
  if (!tenon) return undefined;
  return flat
    ? flatTenon(joint, timber)
    : { breadth: tenon.thickness.value, left: Math.min(tenon.width.value, timber.depth) };
}

/** What is left of the receiving timber's own end where it is halved for another: the lower half of a scarf, of a corner. */
function receivedNeck(
  joint: Joint,
  timber: Timber,
  supports: readonly Support[],
): (Neck & { readonly x: number }) | undefined {
  const { lap } = joint.sizes;
  const cut = joint.solids.mortises[0];
  const scarf = isScarf(joint.kind);
  if (!lap || !cut || (!scarf && joint.kind !== "corner-half-lap")) return undefined;
  const [dx, dy, dz] = [0, 1, 2].map((k) => (cut.base[k] ?? 0) - (timber.origin[k] ?? 0));
  const middle = dot([dx ?? 0, dy ?? 0, dz ?? 0], timber.axis);
  const x = middle < timber.span / 2 ? 0 : timber.span;
  // across the middle of a timber it is no end; over a support the lower half bears where it is
  const half = lap.length.value / 2;
  if (Math.abs(x - middle) > half + timber.depth) return undefined;
  if (supports.some((s) => s.bears && Math.abs(s.at - middle) < half + s.half)) return undefined;
  const deep = scarf ? lap.depth : cut.to - cut.from;
  return { breadth: timber.width, left: Math.max(timber.depth - deep, 0), x };
}

/** Where the shear of a timber's joined end stands, and which way it presses. */
function endShear(
  timber: Timber,
  elements: readonly number[],
  end: Joint["end"],
): Pick<NotchedEnd, "index" | "down"> | undefined {
  const element = end === "head" ? elements.at(-1) : elements[0];
  if (element === undefined || end === "side") return undefined;
  const sign = (end === "head" ? 1 : -1) * (timber.depthDir[2] < 0 ? -1 : 1);
  return { index: tipOf(element, end === "head" ? "j" : "i") + VY, down: sign > 0 ? 1 : -1 };
}

export interface NotchInput {
  readonly timber: Timber;
  readonly supports: readonly Support[];
  /** joints at the timber's own ends, and those that others make in it */
  readonly joined: readonly Joint[];
  readonly received: readonly Joint[];
  readonly elementsOf: (timber: Timber) => readonly number[];
  /** F_c⊥′ of a timber, psi; undefined where its wood is unknown */
  readonly sideGrain: (timber: Timber) => number | undefined;
}

/** lb that the floor of the housing bears; a post takes it on end grain, which is far stronger than the timber in it. */
function housedLoad(joint: Joint, timber: Timber, sideGrain: NotchInput["sideGrain"]): number {
  const floor = housingFloor(joint);
  if (floor <= 0) return 0;
  const own = sideGrain(timber) ?? 0;
  const other = isUpright(joint.into) ? own : (sideGrain(joint.into) ?? 0);
  return floor * Math.min(own, other);
}

/** @returns the notched ends of a lying timber */
export function notchedEnds(input: NotchInput): NotchedEnd[] {
  const { timber, elementsOf } = input;
  if (isUpright(timber) || isDiagonal(timber)) return [];
  const own = input.joined.flatMap((joint): NotchedEnd[] => {
    const neck = neckOf(joint, timber);
    const shear = endShear(timber, elementsOf(timber), joint.end);
    if (!neck || !shear) return [];
    const housed = housedLoad(joint, timber, input.sideGrain);
    return [{ joint: joint.id, x: joint.end === "head" ? timber.span : 0, ...shear, ...neck, housed }];
  });
  const halved = input.received.flatMap((joint): NotchedEnd[] => {
    const neck = receivedNeck(joint, timber, input.supports);
    // the half carries what the other timber's end lays on it
    const shear = endShear(joint.of, elementsOf(joint.of), joint.end);
    return neck && shear ? [{ joint: joint.id, ...shear, ...neck, housed: 0 }] : [];
  });
  return [...own, ...halved];
}
