/** The resolved sizes of a joint's parts: what the file gives, or a rule of proportion, before anything is cut. */
import type { Vec2 } from "../model/vec.ts";

/** A size and whether the file gives it or a rule of proportion does. */
export interface Sized {
  /** inches */
  readonly value: number;
  readonly from: "file" | "default";
  /** what is asked for, in, where that cannot be cut: `value` is then what can */
  readonly asked?: number;
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
