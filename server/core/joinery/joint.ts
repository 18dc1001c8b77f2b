/**
 * A joint in place: two timbers, the local axes of the face that receives, the resolved sizes of its parts, and the
 * solids these parts fill. Each kind of joint is one file under `kinds/`; `kinds/index.ts` lists them.
 */
import type { JointEntry, JointKindName, JointSpec, Pointer } from "../frame/frame.ts";
import type { EndPlane, Meeting, Timber } from "../model/model.ts";
import type { Vec2, Vec3 } from "../model/vec.ts";
import type { Note } from "../note.ts";

/** Which part of the joined timber makes the joint. */
export type JointEnd = "foot" | "head" | "side";

/** A size and whether the file gives it or a rule of proportion does. */
export interface Sized {
  /** inches */
  readonly value: number;
  readonly from: "file" | "default";
  /** what is asked for, in, where that cannot be cut: `value` is then what can */
  readonly asked?: number;
}

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

export interface TenonSizes {
  readonly thickness: Sized;
  /** along the grain of the mortised timber */
  readonly width: Sized;
  /** square to the receiving face, from the shoulder to the tip */
  readonly length: Sized;
  /** reference face of the mortised timber to the near cheek */
  readonly setIn: Sized;
  readonly through: boolean;
  /** wood of the mortised timber beside the mortise: reference side, far side */
  readonly walls: readonly [number, number];
  /** wood behind the housing that a tenon may use: to the far face, less what the rule leaves */
  readonly room: number;
  readonly mortiseDepth: number;
  /** where the tenon's middle lies along `grain`, and across, from the face's origin */
  readonly center: Vec2;
  /** width held back at a free end of the mortised timber (relish) */
  readonly relishCut: number;
}

export interface PegSizes {
  readonly count: number;
  readonly diameter: Sized;
  /** hole in the tenon nearer the shoulder than the hole in the cheeks by this much */
  readonly draw: Sized;
  /** shoulder to the center of each row of holes in the mortised timber, along `inward` */
  readonly setbacks: readonly number[];
  /** positions along the tenon's width, from its middle */
  readonly alongWidth: readonly number[];
  /** edge of the tenon (the level top of a half-dovetail, the toe of a brace) to the nearest hole in the first row */
  readonly fromEdge: number;
  /** which of `alongWidth` that nearest hole has; the first when left out */
  readonly nearest?: number;
}

export interface SeatSizes {
  /** level length */
  readonly level: Sized;
  /** plumb cut (heel) height = level × tan θ */
  readonly plumb: number;
  /** depth of the notch square to the rafter = level × sin θ */
  readonly depth: number;
  /** wood above the plate measured plumb at the plumb cut */
  readonly heightAbovePlate: number;
  /** wood left square to the rafter */
  readonly woodLeft: number;
  readonly angle: number;
}

/** Step-lap seat; `seat` has what the rafter as a whole keeps over the plate. */
export interface StepSizes {
  readonly form: "plumb" | "square";
  /** level run of the housing on the plate's top, and of the tail over the rim beyond the step */
  readonly housed: number;
  readonly lap: number;
  /** of the face that takes the thrust, along itself */
  readonly abutment: number;
  /** of the face before it, along itself */
  readonly sole: number;
  /** level, from the abutment's bottom to the plate's outside face */
  readonly rim: number;
  /** plumb: as deep as a step there can be and still have the rafter against all of it */
  readonly deepest: number;
  /** what the bearing takes from the rafter's depth, square to it */
  readonly notch: number;
}

export interface DovetailSizes {
  readonly length: Sized;
  readonly depth: Sized;
  /** widening on each side from neck to tip */
  readonly flare: Sized;
  readonly neck: number;
  readonly tip: number;
}

export interface WedgeSizes {
  /** rise per unit of length */
  readonly slope: number;
  readonly drop: Sized;
  /** depth of the tenon at its tip, and where it leaves the mortise: less where a tail stands out */
  readonly tip: number;
  readonly depthOuter: number;
  /** height of the opening above the seated tenon at the inner and at the outer face, or at a blind mortise’s bottom */
  readonly heightInner: number;
  readonly heightOuter: number;
  /** as deep as the mortise */
  readonly length: number;
  /** what it is driven on by while the timber dries */
  readonly reserve: number;
  /** of the wedge, thin end to thick end */
  readonly whole: Sized;
  readonly width: number;
}

export interface LapSizes {
  /** along the grain */
  readonly length: Sized;
  readonly depth: number;
  /** of a scarf that cannot be cut as asked: what the two lengths have room for */
  readonly room?: LapRoom;
}

/** How far a scarf may reach from the middle of its lap before one of the two lengths ends. */
export interface LapRoom {
  /** to the nearer end, in */
  readonly near: number;
  /** the length that ends there */
  readonly stick: string;
  /** to the far end of the other length, in */
  readonly other: number;
}

/** Bladed scarf: the blade at the end of each half, in the middle of its width. */
export interface BladeSizes {
  readonly thickness: Sized;
  /** along the grain */
  readonly length: Sized;
}

export interface SplaySizes {
  /** depth of the butt in which each half ends */
  readonly butt: Sized;
  /** how far the inner edge of a butt stands past its outer one */
  readonly undercut: number;
  /** opening for the wedges in the middle: along the grain, and upright */
  readonly key: { readonly length: number; readonly height: number };
  /** of each folding wedge, in 1 of its length */
  readonly wedgeSlope: number;
}

export interface ScrewSizes {
  readonly count: number;
  readonly diameter: Sized;
  /** under the head */
  readonly length: Sized;
  /** wood of the brace that each passes before it enters the other timber */
  readonly wood: readonly number[];
  /** rows side by side across the grain of the receiving timber */
  readonly columns: number;
  /** of the brace, across which they stand side by side */
  readonly breadth: number;
  /** degrees between the brace and the grain of the receiving timber */
  readonly angle: number;
}

/** Two rafters head to head: each runs on past the plumb line of the ridge to the other's upper edge. */
export interface PairSizes {
  readonly form: "bridle" | "lapped";
  /** thickness of the joined rafter's part: its tongue, or its half */
  readonly tongue: number;
  /** of the receiving rafter's part: each tine, or its half */
  readonly tine: number;
  /** plumb height of the joint at the ridge's line */
  readonly plumb: number;
  /** slopes of the joined and of the receiving rafter, radians */
  readonly slopes: readonly [number, number];
  /** past the plumb line along the underside: joined, receiving */
  readonly past: readonly [number, number];
}

/** Foot of a rafter stepped into a tie. */
export interface HeelSizes {
  readonly form: "bisecting" | "square";
  /** between the two grains, radians */
  readonly angle: number;
  /** length of the face that takes the thrust, and of the foot behind it, both on the slant */
  readonly abutment: number;
  readonly sole: number;
  /** the abutment's bottom along the grain, from the face's origin */
  readonly bottom: number;
  /** from there to the end of the tie */
  readonly relish: number;
  /** of the abutment, across the grain */
  readonly width: number;
}

export interface JointSizes {
  /** depth of the housing in the receiving timber; 0 = none */
  readonly housing: Sized;
  readonly tenon?: TenonSizes;
  readonly pegs?: PegSizes;
  readonly seat?: SeatSizes;
  readonly step?: StepSizes;
  readonly dovetail?: DovetailSizes;
  readonly wedge?: WedgeSizes;
  readonly lap?: LapSizes;
  readonly blade?: BladeSizes;
  readonly splay?: SplaySizes;
  readonly screws?: ScrewSizes;
  readonly pair?: PairSizes;
  readonly heel?: HeelSizes;
  /** drop-in pocket: how far the end bears in, and how deep the pocket is from the top */
  readonly pocket?: { readonly bearing: Sized; readonly depth: number; readonly width: number };
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
