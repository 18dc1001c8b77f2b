/**
 * Joints of one timber that come near each other: wood that two timbers want at once, the wall between their mortises,
 * pegs that run into another joint. Found in space from what the joints cut and fill. A sweep along each timber compares
 * a joint with its neighbors only, so that long frames stay quick.
 */
import { groupBy } from "../collect.ts";
import type { JointKindName } from "../frame/frame.ts";
import type { Timber } from "../model/model.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import { type Convex, clearance, convexOf, extent, roundOf } from "./convex.ts";
import type { Joint, Peg, Prism } from "./joint.ts";
import { isScarf } from "./scarf.ts";

/** Wood between two mortises below which they count as near, in: what two opposed braces of usual sizes leave. */
export const LEAST_WALL = 1 / 2;
/** What saw, chisel and auger leave: two cuts count as crossing from here on, in. */
const CUT = 1 / 32;
/** Two mortises face each other when they have this much in common both other ways; else only their edges come near, in. */
const FACING = 1 / 2;

/** A joint is compared with this many that follow it along the timber; more than that take each other's place, which is said. */
const MOST_NEIGHBORS = 60;
/** One that runs into this many others is not looked at any further. */
const MOST_HITS = 4;

/** Half of each timber is cut away where they cross; another joint there goes through both halves. */
const LAPS: ReadonlySet<JointKindName> = new Set(["corner-half-lap", "corner-bridle", "dovetail-lap"]);

export const isLap = (kind: JointKindName): boolean => LAPS.has(kind) || isScarf(kind);

/** What of the second joint stands in the way of the first. */
export type Crossing =
  /** both fill it: two tenons, or a tenon and a timber let in */
  | "filled"
  /** a peg or screw of the one in the other's tenon, in the empty part of its mortise, or in its peg */
  | "peg-in-tenon"
  | "peg-in-mortise"
  | "peg-in-peg";

export interface NearJoints {
  readonly timber: Timber;
  /** for a peg: first the joint that has it; else along the timber */
  readonly joints: readonly [Joint, Joint];
  /** axial position of the place from the timber's foot, in */
  readonly at: number;
  /** what crosses; undefined = only the wall between two mortises is thin */
  readonly crossing: Crossing | undefined;
  /** how deep they stand in each other, in; of a thin wall its thickness, 0 or less where none is left */
  readonly depth: number;
  /** one of them moved this far along the timber leaves the least wall, in */
  readonly move: number;
}

/** A part of a joint as one convex solid, with the box around it in the timber's own axes. */
interface Body {
  readonly solid: Convex;
  readonly box: readonly Range[];
  /** the end of a timber let in, not a tenon: shallow, and pared where another is let in beside it */
  readonly housed: boolean;
}

type Range = readonly [number, number];

/** What a joint takes out of one timber, and what stands in it there. */
interface Parts<P, R> {
  /** tenons and what is let in like them */
  readonly fills: readonly P[];
  readonly housings: readonly P[];
  readonly mortises: readonly P[];
  readonly pegs: readonly R[];
}

interface Cuts extends Omit<Parts<Body, Body>, "housings"> {
  readonly joint: Joint;
}

const NONE: readonly never[] = [];

const axesOf = (t: Timber): readonly Vec3[] => [t.axis, t.widthDir, t.depthDir];

function bodyOf(timber: Timber, solid: Convex, housed = false): Body {
  return { solid, housed, box: axesOf(timber).map((way) => extent(solid, way)) };
}

/** @param shortened by how much its tenon is less long, in */
function partsOf(timber: Timber, joint: Joint, shortened = 0): Parts<Prism, Peg> {
  const { solids, face } = joint;
  const shorter = (prisms: readonly Prism[]): readonly Prism[] =>
    shortened > 0 ? prisms.map((p) => cutBack(p, face.inward, shortened)) : prisms;
  const received = joint.into.id === timber.id;
  const mortises = received ? shorter(solids.mortises) : solids.notches.filter((p) => !p.endCut);
  const filled = [...shorter(solids.tenons), ...solids.wedges];
  const housings = received ? solids.housings : NONE;
  const bored = received || mortises.length > 0;
  return {
    mortises,
    // a lap has no tenon: the other timber fills what is cut out
    fills: received && filled.length + housings.length > 0 ? filled : mortises,
    housings,
    pegs: bored ? [...solids.pegs, ...(solids.screws ?? NONE)] : NONE,
  };
}

function cutsOf(timber: Timber, joint: Joint, shortened = 0): Cuts {
  const parts = partsOf(timber, joint, shortened);
  const bodies = (prisms: readonly Prism[]): Body[] =>
    prisms.flatMap((p) => convexOf(p).map((solid) => bodyOf(timber, solid)));
  const housed = parts.housings.flatMap((p) => convexOf(p).map((solid) => bodyOf(timber, solid, true)));
  const mortises = bodies(parts.mortises);
  return {
    joint,
    mortises,
    fills: [...(parts.fills === parts.mortises ? mortises : bodies(parts.fills)), ...housed],
    pegs: parts.pegs.map((peg) => bodyOf(timber, roundOf(peg))),
  };
}

/** From where to where a prism reaches along a direction, in. */
export function prismReach({ base, u, v, w, outline, from, to }: Prism, way: Vec3): Range {
  const b = dot(base, way);
  const x = dot(u, way);
  const y = dot(v, way);
  const z = dot(w, way);
  const z0 = (z > 0 ? from : to) * z;
  const z1 = (z > 0 ? to : from) * z;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const [p, q] of outline) {
    const at = b + p * x + q * y;
    if (at + z0 < low) low = at + z0;
    if (at + z1 > high) high = at + z1;
  }
  return [low, high];
}

/** From where to where all parts of a joint reach along a direction; nothing where it leaves the timber whole. */
function reach({ fills, housings, mortises, pegs }: Parts<Prism, Peg>, way: Vec3): Range | undefined {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const prisms of fills === mortises ? [fills, housings] : [fills, housings, mortises])
    for (const prism of prisms) {
      const own = prismReach(prism, way);
      if (own[0] < low) low = own[0];
      if (own[1] > high) high = own[1];
    }
  for (const { from, to, diameter } of pegs)
    for (const end of [from, to]) {
      const at = dot(end, way);
      low = Math.min(low, at - diameter / 2);
      high = Math.max(high, at + diameter / 2);
    }
  return low <= high ? [low, high] : undefined;
}

/** A prism whose outline reaches less far inward, by so much. */
function cutBack(prism: Prism, inward: Vec3, by: number): Prism {
  if (dot(prism.u, inward) < 1 - 1e-9) return prism;
  const tip = Math.max(...prism.outline.map(([u]) => u)) - by;
  return { ...prism, outline: prism.outline.map(([u, v]) => [Math.min(u, tip), v]) };
}

/** Least distance of the boxes; negative: how deep they stand in each other. */
function boxGap(a: readonly Range[], b: readonly Range[]): number {
  let gap = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < a.length; k++) {
    const own = a[k];
    const other = b[k];
    if (own && other) gap = Math.max(gap, own[0] - other[1], other[0] - own[1]);
  }
  return gap;
}

interface Nearest {
  readonly distance: number;
  readonly a: Body;
  readonly b: Body;
}

/** The two bodies that come nearest, if nearer than `within`. */
function nearest(
  as: readonly Body[],
  bs: readonly Body[],
  within: number,
  counts: (a: Body, b: Body) => boolean = () => true,
): Nearest | undefined {
  let best: Nearest | undefined;
  for (const a of as)
    for (const b of bs) {
      const limit = best?.distance ?? within;
      if (boxGap(a.box, b.box) >= limit || !counts(a, b)) continue;
      const distance = clearance(a.solid, b.solid, within);
      if (distance < limit) best = { distance, a, b };
    }
  return best;
}

/** Mortises that only come near with their edges leave a wall nobody needs. */
function facing(a: Body, b: Body): boolean {
  const common = a.box.map((own, k) => {
    const other = b.box[k] ?? own;
    return Math.min(own[1], other[1]) - Math.max(own[0], other[0]);
  });
  return common.filter((c) => c >= FACING).length >= 2;
}

/** From opposite sides, one behind the other: together they are one mortise through the timber, and no wall is needed. */
function meetEndOn(a: Joint, b: Joint): (p: Body, q: Body) => boolean {
  const opposed = dot(a.face.inward, b.face.inward) < -0.9 && a.into.id === b.into.id;
  const { across, grain } = a.face;
  const common = (p: Body, q: Body, way: Vec3): number => {
    const [own, other] = [extent(p.solid, way), extent(q.solid, way)];
    return Math.min(own[1], other[1]) - Math.max(own[0], other[0]);
  };
  return (p, q) => opposed && common(p, q, across) > 0 && common(p, q, grain) > 0;
}

type Result = Omit<NearJoints, "timber">;

function place(timber: Timber, { a, b, distance }: Nearest): Pick<Result, "at" | "move" | "depth"> {
  const [[a0, a1] = [0, 0]] = a.box;
  const [[b0, b1] = [0, 0]] = b.box;
  const foot = dot(timber.origin, timber.axis);
  const middle = (Math.max(a0, b0) + Math.min(a1, b1)) / 2;
  return {
    at: middle - foot,
    depth: distance,
    move: Math.min(a1 - b0, b1 - a0) + LEAST_WALL,
  };
}

/**
 * Pegs of a joint in the tenon and mortise of the other. What is let in without a tenon lies so shallow that a peg is cut off
 * at its floor; laps are pegged, and the pegs cut off, before another joint is cut there.
 */
function pegsIn(timber: Timber, a: Cuts, b: Cuts): Result | undefined {
  if (isLap(a.joint.kind) || b.joint.solids.tenons.length === 0) return undefined;
  const joints = [a.joint, b.joint] as const;
  const through = (near: Nearest, crossing: Crossing): Result => ({
    joints,
    crossing,
    ...place(timber, near),
    depth: -near.distance,
  });
  const tenon = nearest(a.pegs, b.fills, -CUT, (_, fill) => !fill.housed);
  if (tenon) return through(tenon, "peg-in-tenon");
  const empty = nearest(a.pegs, b.mortises, -CUT);
  return empty && through(empty, "peg-in-mortise");
}

/** What is wrong between two joints of one timber: the gravest thing alone. */
function between(timber: Timber, a: Cuts, b: Cuts): Result | undefined {
  const joints = [a.joint, b.joint] as const;
  const shared = nearest(a.fills, b.fills, -CUT, (p, q) => !(p.housed && q.housed));
  if (shared) return { joints, crossing: "filled", ...place(timber, shared), depth: -shared.distance };
  const bored = pegsIn(timber, a, b) ?? pegsIn(timber, b, a);
  if (bored) return bored;
  const pegs = isLap(a.joint.kind) || isLap(b.joint.kind) ? undefined : nearest(a.pegs, b.pegs, -CUT);
  if (pegs) return { joints, crossing: "peg-in-peg", ...place(timber, pegs), depth: -pegs.distance };
  const endOn = meetEndOn(a.joint, b.joint);
  const wall = nearest(a.mortises, b.mortises, LEAST_WALL - CUT, (p, q) => facing(p, q) && !endOn(p, q));
  return wall && { joints, crossing: undefined, ...place(timber, wall) };
}

/** Which timbers are joined, and which are two lengths of one. */
class Pairs {
  readonly #joined = new Set<string>();
  readonly #scarfed = new Set<string>();

  constructor(joints: readonly Joint[]) {
    for (const { of, into, kind } of joints)
      for (const key of [`${of.id} ${into.id}`, `${into.id} ${of.id}`]) {
        this.#joined.add(key);
        if (isScarf(kind)) this.#scarfed.add(key);
      }
  }

  /**
   * Whether one cut is meant for both joints: a tenon goes through both halves of a lap whose two timbers it is joined to,
   * and what is joined to both lengths of a scarfed timber is cut once.
   */
  shareCut(timber: Timber, a: Joint, b: Joint): boolean {
    const other = (j: Joint): Timber => (j.of.id === timber.id ? j.into : j.of);
    const key = `${other(a).id} ${other(b).id}`;
    return this.#scarfed.has(key) || ((isLap(a.kind) || isLap(b.kind)) && this.#joined.has(key));
  }
}

/**
 * @param joints of the whole frame, each with its solids in space
 * @returns for every two joints of a timber that cross, or leave too thin a wall, what is worst between them
 */
export function nearJoints(timbers: readonly Timber[], joints: readonly Joint[]): NearJoints[] {
  const pairs = new Pairs(joints);
  const receiving = groupBy(joints, (j) => j.into.id);
  const ending = groupBy(joints, (j) => j.of.id);
  return timbers.flatMap((timber) => {
    const own = [...(receiving.get(timber.id) ?? NONE), ...(ending.get(timber.id) ?? NONE)];
    return own.length < 2 ? [] : sweep(timber, own, pairs);
  });
}

/** A joint's place along its timber; what it cuts is worked out only where another comes near. */
interface Placed {
  readonly joint: Joint;
  readonly box: readonly [Range, ...Range[]];
  cuts: Cuts | undefined;
}

function placed(timber: Timber, joint: Joint): Placed[] {
  const parts = partsOf(timber, joint);
  const [along, width, depth] = axesOf(timber).map((way) => reach(parts, way));
  return along && width && depth ? [{ joint, box: [along, width, depth], cuts: undefined }] : [];
}

/** Compares each joint with those that follow it along the timber as long as they can come near. */
function sweep(timber: Timber, joints: readonly Joint[], pairs: Pairs): NearJoints[] {
  const along = joints.flatMap((joint) => placed(timber, joint));
  along.sort((a, b) => a.box[0][0] - b.box[0][0]);
  const cuts = (p: Placed): Cuts => {
    p.cuts ??= cutsOf(timber, p.joint);
    return p.cuts;
  };
  const found: NearJoints[] = [];
  along.forEach((a, i) => {
    let hits = 0;
    for (let j = i + 1; j < along.length && j <= i + MOST_NEIGHBORS && hits < MOST_HITS; j++) {
      const b = along[j];
      if (!b || b.box[0][0] > a.box[0][1] + LEAST_WALL) break;
      if (boxGap(a.box, b.box) >= LEAST_WALL || pairs.shareCut(timber, a.joint, b.joint)) continue;
      const result = between(timber, cuts(a), cuts(b));
      if (!result) continue;
      hits++;
      found.push({ timber, ...result });
    }
  });
  return found;
}

/** A tenon shorter than this holds little, in. */
const SHORTEST = 2;
/** Steps by which a tenon is shortened before it is given up. */
const MOST_TRIED = 24;

/**
 * Which blind tenon, made shorter, leaves enough wood between two joints, and how long it may be.
 * @param step lengths to choose from are multiples of it, in
 * @returns undefined where no tenon of 2 in or more does; else the one that loses least, in
 */
export function shorterTenon(
  { timber, joints: [a, b] }: NearJoints,
  step: number,
): { readonly joint: Joint; readonly length: number } | undefined {
  const tried = [
    [a, b],
    [b, a],
  ] as const;
  const answers = tried.flatMap(([joint, other]) => {
    const tenon = joint.sizes.tenon;
    if (!tenon || tenon.through || joint.into.id !== timber.id || isLap(joint.kind)) return [];
    const fixed = cutsOf(timber, other);
    const now = tenon.length.value;
    const first = Math.ceil(now / step - 1e-9) - 1;
    const last = Math.max(SHORTEST, now - MOST_TRIED * step);
    for (let n = first; n * step >= last - 1e-9; n--)
      if (!between(timber, cutsOf(timber, joint, now - n * step), fixed))
        return [{ joint, length: n * step, lost: now - n * step }];
    return [];
  });
  return answers.sort((x, y) => x.lost - y.lost)[0];
}
