/** What can be the least that a post's foot holds with, and what each such limit is reckoned from. */
import type { Adjusted } from "../../members/adjust.ts";
import type { Factor, Sourced } from "../../sourced.ts";
import type { TimberValues } from "../../wood/stated-values.ts";
import type { FootRow, FootStrap, PostFoot } from "./post-foot.ts";

export type LimitKind =
  | "stated"
  | "end-grain"
  | "bolts"
  | "screws"
  | "row-tear-out"
  | "net-section"
  | "split"
  | "strap-yield"
  | "strap-rupture"
  | "strap-bending"
  | "strap-shear"
  | "strap-column"
  | "withdrawal";

export interface FootLimit {
  readonly kind: LimitKind;
  /** lb */
  readonly value: Sourced;
  /** bolts and screws: of one, with its factors; end grain: F_c* in psi */
  readonly each?: Adjusted;
  /** bolts and screws: how many; end grain: in² */
  readonly times?: number;
  /** bolts and screws that hold nothing: no wood is left, they stand too near something, or reach too little wood */
  readonly none?: "wood" | "place" | "reach";
}

/** A sentence's end: what makes it no more. */
export const LIMIT_WORDS: Readonly<Record<LimitKind, string>> = {
  stated: "what the file states",
  "end-grain": "the end grain on its plate",
  bolts: "the bolts in the wood",
  screws: "the screws in the wood",
  "row-tear-out": "the wood below the bolts, which tears out",
  "net-section": "the wood beside the bolt holes",
  split: "the wood, which splits at the bolts",
  "strap-yield": "the strap, which yields",
  "strap-rupture": "the strap at its hole",
  "strap-bending": "the strap, which bends",
  "strap-shear": "the strap, which shears",
  "strap-column": "the steel between concrete and post, as a column",
  withdrawal: "the screws, which draw out of the wood",
};

/** What the limits of one foot are reckoned from. */
export interface Held {
  readonly foot: PostFoot;
  readonly row: FootRow;
  readonly strap: FootStrap;
  readonly wood: TimberValues;
  readonly duration: Factor;
}

export const limit = (kind: LimitKind, value: Sourced): FootLimit => ({ kind, value });
