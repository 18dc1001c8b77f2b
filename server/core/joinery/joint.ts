/**
 * A joint in place: two timbers, the local axes of the face that receives, the resolved sizes of its parts, and the
 * solids these parts fill. Each kind of joint is one file under `kinds/`; `kinds/index.ts` lists them.
 */
import type { JointEntry, JointKindName, JointSpec, Pointer } from "../frame/frame.ts";
import type { EndPlane, Meeting, Timber } from "../model/model.ts";
import type { Vec2, Vec3 } from "../model/vec.ts";
import type { Note } from "../note.ts";
import type { JointSizes, LapRoom } from "./joint-sizes.ts";

/** Which part of the joined timber makes the joint. */
export type JointEnd = "foot" | "head" | "side";

/**
 * The face that receives, and its axes: `inward` goes square into the timber, `grain` along it, `across` = inward × grain.
 * `origin` lies on the (unhoused) face where the joined timber's center line enters.
 */
export interface ReceivingFace {
  readonly origin: Vec3;
  readonly inward: Vec3;
  readonly grain: Vec3;
  readonly across: Vec3;
  /** wood behind the face, along `inward` */
  readonly thickness: number;
  /** the face's two edges along `across`, measured from `origin` */
  readonly edges: readonly [number, number];
  /** the timber's two ends along `grain`, measured from `origin` */
  readonly ends: readonly [number, number];
  /** the edge that is the reference face: -1 the lower, 1 the higher along `across`, 0 neither */
  readonly reference: -1 | 0 | 1;
}

/** A straight solid: `outline` (along u and v from `base`) drawn from `from` to `to` along w = u × v. */
export interface Prism {
  readonly base: Vec3;
  readonly u: Vec3;
  readonly v: Vec3;
  readonly w: Vec3;
  readonly outline: readonly Vec2[];
  readonly from: number;
  readonly to: number;
  /** it only gives an end its slant: no section of the timber is taken through it */
  readonly endCut?: true;
}

export interface Peg {
  /** center of the hole at the face it enters, in space */
  readonly from: Vec3;
  readonly to: Vec3;
  readonly diameter: number;
}

export interface JointSolids {
  /** what stands out of the joined timber past its shoulder */
  readonly tenons: readonly Prism[];
  /** what stands out of the receiving timber past its own end: tines of a fork, half of a lap */
  readonly tines?: readonly Prism[];
  /** what is cut out of the receiving timber */
  readonly mortises: readonly Prism[];
  readonly housings: readonly Prism[];
  readonly wedges: readonly Prism[];
  /** what is cut out of the joined timber (seats, laps) */
  readonly notches: readonly Prism[];
  readonly pegs: readonly Peg[];
  /** shank and thread, from under the head to the point */
  readonly screws?: readonly Peg[];
}

export interface Joint {
  /** `post-head@A1` */
  readonly id: string;
  readonly kind: JointKindName;
  /** the entry that names it; undefined = the usual kind was assumed, or the roof's own seats and heads */
  readonly entry: JointEntry | undefined;
  /** pointer of what decides its sizes: the joint entry, the roof's seat or head, else the joined timber's entry */
  readonly path: Pointer;
  readonly assumed: boolean;
  /** the entry that names its timbers, and whose kind cannot be cut here: this joint is taken in its stead */
  readonly standsFor?: JointEntry;
  /** pointer of what the file says of its pegs; undefined = nothing */
  readonly pegsPath: Pointer | undefined;
  readonly of: Timber;
  readonly end: JointEnd;
  readonly into: Timber;
  readonly meeting: Meeting;
  readonly face: ReceivingFace;
  readonly sizes: JointSizes;
  readonly solids: JointSolids;
  /** how far the joined timber runs past its shoulder, along its own axis */
  readonly extension: number;
  /** inches that the joined timber keeps over its length until it is marked in its place; 0 by the square rule */
  readonly scribe: number;
}

/** Everything a kind needs to size a joint. */
export interface JointPlace {
  readonly of: Timber;
  readonly end: JointEnd;
  readonly into: Timber;
  readonly meeting: Meeting;
  readonly face: ReceivingFace;
  readonly spec: JointSpec | undefined;
  readonly metric: boolean;
  /** another brace or tenon enters the opposite face at the same height: tenons share the wood */
  readonly opposed: boolean;
  /** of scarfs, once it is known where the two lengths end */
  readonly room?: LapRoom;
}

export interface ShapedJoint {
  readonly sizes: JointSizes;
  readonly solids: JointSolids;
  /** what the joined timber runs past its shoulder, along its own axis: its tenon */
  readonly extension: number;
  /** where the full section of the joined timber ends; undefined = as placed */
  readonly shoulder: EndPlane | undefined;
  /** scarfs: where the full section of the receiving timber ends */
  readonly receivingEnd?: EndPlane;
}

/** One line of a cut sheet. */
export interface CutRow {
  /** which stick, or which loose part, it is cut on */
  readonly on: "joined" | "receiving" | "peg" | "wedge" | "screw" | "bolt";
  /** plain name of the size: `tenon thickness` */
  readonly label: string;
  /** which pegs it is about, where it is not about all: it runs from those to these */
  readonly pegs?: { readonly from: readonly number[]; readonly to?: readonly number[] };
  /** inches, or degrees, or a count */
  readonly value: number;
  readonly unit: "in" | "deg" | "count";
  /** one line: how it was derived */
  readonly how: Note;
}

/** How the joined timber comes to its place while the other one stands. */
export interface Assembly {
  /** unit vector in which it goes in */
  readonly direction: Vec3;
  /** the last move of a joint that locks, after it has gone in: unit vector, and how far, inches */
  readonly last?: { readonly direction: Vec3; readonly distance: number };
}

/** Two timbers that meet, before anything is cut: what decides which kinds can be. */
export interface Meet {
  readonly of: Timber;
  readonly end: JointEnd;
  readonly into: Timber;
  /** the end of the receiving timber that takes part */
  readonly intoEnd: JointEnd;
}

/** What about a meeting a kind of joint cannot be cut for. */
export type UnfitWhy =
  | "one-end"
  | "in-line"
  | "not-in-line"
  | "not-square"
  | "square"
  | "into-upright"
  | "of-upright"
  | "of-not-level"
  | "into-not-level"
  | "no-common-height"
  | "of-not-sloping"
  | "alongside"
  | "across"
  | "upper-end"
  | "no-peak"
  | "depth-across"
  | "under";

export interface Unfit {
  readonly why: UnfitWhy;
  /** degrees: between the two grains, or of the timber over the level */
  readonly angle?: number;
}

/** What a carpenter calls the cuts of some kinds of joint. */
export type OwnCut = "pocket" | "socket" | "lap" | "seat";

export interface JointKind {
  readonly kind: JointKindName;
  /** plain name: `Mortise and tenon` */
  readonly title: string;
  /** where its cuts have a name of their own; left out = mortise and notch */
  readonly cut?: OwnCut;
  /** where it is not the long face that the end enters: ends that meet end to end */
  readonly face?: (of: Timber, end: JointEnd, into: Timber, point: Vec3) => ReceivingFace;
  /** what forbids this kind where these two timbers meet; undefined = it can be cut there */
  unfit(meet: Meet): Unfit | undefined;
  shape(place: JointPlace): ShapedJoint;
  /** moved back this way from its seat, its wood meets none that is left of the receiving timber */
  assembly(joint: Joint): Assembly;
  cutSheet(joint: Joint): readonly CutRow[];
}
