/** What the frame analysis says of every timber, joint and pier, ready for checks, hovers, reports and drawings. */
import type { DeflectionShare } from "../members/deflection-limits.ts";
import type { Model, Pier, Timber } from "../model/model.ts";
import type { Vec3 } from "../model/vec.ts";
import type { Note } from "../note.ts";
import type { Factor, Sourced } from "../sourced.ts";
import type { TimberValues } from "../wood/stated-values.ts";
import type { Bearing } from "./bearing-force.ts";
import type { BucklingLength } from "./effective-length.ts";
import type { MemberBasis } from "./member-basis.ts";
import type { BearingLimit } from "./member-bearing.ts";
import type { FrameSolution } from "./solve-frame.ts";
import type { StressTerms } from "./stress-terms.ts";

export type MemberCheck =
  | "bending"
  | "shear"
  | "notched-shear"
  | "tension"
  | "compression"
  | "tension-and-bending"
  | "compression-and-bending"
  | "bearing"
  | "slenderness"
  | "live-deflection"
  | "total-deflection";

/** One check of a timber at one place under one combination: the worst of its kind. */
export interface MemberUse {
  readonly what: MemberCheck;
  readonly value: number;
  readonly limit: number;
  readonly unit: "psi" | "in" | "ratio";
  /** several stresses held against their limits together: its value is the sum of their shares */
  readonly interaction?: true;
  /** value ÷ limit, or the sum of an interaction; passes up to 1 */
  readonly ratio: number;
  /** id of the frame case, and its combination in words: `D + S` */
  readonly caseId: string;
  readonly combination: string;
  /** axial position from the foot, inches */
  readonly at: number;
  /** joint or meeting at that place, where it matters */
  readonly place: string | undefined;
  /** where it bends: in the plane of its depth or of its width, whichever takes the greater part */
  readonly bends?: "depth" | "width";
  /** the length that counts for slenderness, and why */
  readonly buckling?: BucklingLength;
  /** what bears, in², and how it came about */
  readonly area?: Sourced & { readonly note: Note };
  /** of a deflection: its limit is this share of a length, by what the timber carries */
  readonly share?: DeflectionShare;
  /** of a bearing: the surface that is pressed, and what makes it larger */
  readonly bearing?: Bearing;
  /** of a bearing: lb that presses, and between the grains the two values that make its limit */
  readonly pressed?: { readonly force: number; readonly angled: BearingLimit["angled"] };
  /** of a stress: what it was reckoned from */
  readonly terms?: StressTerms;
  /** of a deflection, in: what dead load bends before creep, and what the rest of the load adds */
  readonly bent?: { readonly long: number; readonly short: number };
  readonly reference: Sourced | undefined;
  readonly factors: readonly Factor[];
  /** of an interaction: the value that the stress along the grain goes by, with all of its own factors */
  readonly second?: {
    readonly symbol: "F_c" | "F_t";
    readonly reference: Sourced;
    readonly factors: readonly Factor[];
    /** how many of the use's factors are those of bending; the rest are the second's */
    readonly own: number;
  };
}

export interface MemberResult {
  readonly timber: Timber;
  readonly wood: TimberValues;
  /** the worst of each kind, the governing one first */
  readonly uses: readonly MemberUse[];
}

export interface Pull {
  /** lb */
  readonly most: number;
  readonly caseId: string;
  /** C_D of the combination */
  readonly duration: Factor;
}

/** Force that a joint carries, in the axes of its receiving face, over all combinations. */
export interface JointForce {
  readonly joint: string;
  /** along the joined timber, tension positive: most and least over the combinations, lb */
  readonly tension: { readonly most: number; readonly caseId: string };
  /** the most tension under each load duration, by which pegs and screws hold more or less; empty where it never pulls */
  readonly pulls: readonly Pull[];
  readonly compression: { readonly most: number; readonly caseId: string };
  /** square to the joined timber: along the receiving grain, and across it, lb */
  readonly alongGrain: { readonly most: number; readonly caseId: string };
  readonly across: { readonly most: number; readonly caseId: string };
}

/** What a pier carries under one combination that has an answer. */
export interface PierCase {
  readonly caseId: string;
  /** of the pier on the timber, lb in global axes: what the timber does to the pier is its opposite */
  readonly force: Vec3;
  /** share of the dead load in the combination: of the pier's own weight too */
  readonly dead: number;
  /** dead load alone */
  readonly onlyDead: boolean;
  /** wind takes part, which pushes for moments, not for a winter */
  readonly wind: boolean;
}

export interface PierReaction {
  readonly pier: Pier;
  readonly down: { readonly most: number; readonly caseId: string };
  /** uplift, positive up on the timber: what the anchor must hold; 0 = none */
  readonly up: { readonly most: number; readonly caseId: string };
  readonly sideways: { readonly most: number; readonly caseId: string };
  readonly cases: readonly PierCase[];
}

/** How the frame moves when it is pushed a little sideways with braces that only push. */
export interface RackingResult {
  readonly toward: "+x" | "-x" | "+y" | "-y";
  /** true when braces hold it that way */
  readonly stands: boolean;
  /** it is held, but by what yields so far that its weight brings it down */
  readonly soft: boolean;
  /** of such a frame, how far its farthest point goes, in */
  readonly lean: number;
  /** timbers that move, when it does not stand */
  readonly moving: readonly string[];
  readonly direction: Vec3;
}

export interface FrameResults {
  readonly model: Model;
  /** what the forces depend on, see analyse-frame.ts */
  readonly signature: string;
  /** what the checks of timbers depend on besides */
  readonly shapes: () => string;
  readonly solution: FrameSolution;
  /** what the checks of timbers start from */
  readonly basis: MemberBasis;
  readonly members: ReadonlyMap<string, MemberResult>;
  /** timbers without design values: they are in the model, but not checked */
  readonly unchecked: readonly Timber[];
  readonly joints: ReadonlyMap<string, JointForce>;
  readonly piers: readonly PierReaction[];
  readonly racking: readonly RackingResult[];
}
