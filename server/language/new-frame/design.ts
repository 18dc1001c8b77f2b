/** What is proposed for the answers, in inches; `frame-text.ts` writes it, `propose.ts` changes it until it passes. */
import type { Units } from "../../core/frame/frame.ts";
import type { Answers } from "./answers.ts";

/** Width and depth, inches. */
export type Sides = readonly [number, number];

export interface Pegs {
  readonly count: number;
  readonly diameter: number;
}

export type EntryName =
  | "post"
  | "low-post"
  | "high-post"
  | "plate"
  | "low-plate"
  | "high-plate"
  | "tie"
  | "king-post"
  | "ridge"
  | "knee"
  | "low-knee"
  | "high-knee"
  | "tie-knee"
  | "low-tie-knee"
  | "high-tie-knee"
  | "ridge-knee"
  | "rafter";

export type JointName = "post-head" | "tie-end" | "king-foot" | "king-head" | "brace-ends";

/** Everything that a finding may ask to be changed. Lengths in inches. */
export interface Design {
  readonly sections: Readonly<Partial<Record<EntryName, Sides>>>;
  readonly legs: Readonly<Partial<Record<EntryName, number>>>;
  readonly pegs: Readonly<Record<JointName, Pegs>>;
  /** rise in 12 */
  readonly pitch: number;
  readonly rafterSpacing: number;
  /** thickness and count of the screws at each seat and head */
  readonly screws: { readonly seat: number; readonly head: number };
  readonly pier: {
    readonly diameter: number;
    readonly depth: number;
    readonly footing: { readonly diameter: number; readonly thickness: number };
  };
}

/** Below the plate's top the tie's top, inches: room for the post's own tenon and its pegs above the tie's joint. */
export const TIE_DROP = 20;
/** Past the end bents' outer faces, inches. */
export const RAKE = 12;

const MM = 25.4;

/** @returns the nearest size of the usual series: whole inches, or 25 mm in a millimetre file */
function usualSide(inches: number, units: Units): number {
  return units === "inch" ? Math.round(inches) : (Math.round(inches) * 25) / MM;
}

export function firstDesign(answers: Answers): Design {
  const { units } = answers;
  const sides = (width: number, depth: number): Sides => [usualSide(width, units), usualSide(depth, units)];
  const pegs = (count: number, diameter: number): Pegs => ({ count, diameter });
  const shared = {
    pegs: {
      "post-head": pegs(2, 0.75),
      "tie-end": pegs(3, 0.75),
      "king-foot": pegs(2, 0.75),
      "king-head": pegs(2, 0.75),
      "brace-ends": pegs(1, 0.75),
    },
    rafterSpacing: 30,
    screws: { seat: 2, head: 2 },
    pier: {
      diameter: 16,
      depth: Math.max(48, (answers.frost ?? 0) + 6),
      footing: { diameter: 24, thickness: 12 },
    },
  };
  if (answers.roof === "gable")
    return {
      ...shared,
      sections: {
        post: sides(8, 8),
        plate: sides(8, 9),
        tie: sides(8, 12),
        "king-post": sides(8, 8),
        ridge: sides(6, 9),
        knee: sides(4, 6),
        "tie-knee": sides(4, 6),
        "ridge-knee": sides(4, 6),
        rafter: sides(3, 7),
      },
      legs: { knee: 30, "tie-knee": 27, "ridge-knee": 24 },
      pitch: 7,
    };
  return {
    ...shared,
    sections: {
      "low-post": sides(8, 8),
      "high-post": sides(8, 8),
      "low-plate": sides(8, 9),
      "high-plate": sides(8, 9),
      tie: sides(8, 8),
      "low-knee": sides(4, 6),
      "high-knee": sides(4, 6),
      "low-tie-knee": sides(4, 6),
      "high-tie-knee": sides(4, 6),
      rafter: sides(4, 8),
    },
    legs: { "low-knee": 30, "high-knee": 30, "low-tie-knee": 27, "high-tie-knee": 27 },
    pitch: 3,
  };
}
