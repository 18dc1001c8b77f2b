/**
 * Two ways to lay out a joint. Square rule: both timbers are cut to the perfect timber inside them, from the reference
 * faces, and fit unseen. Scribe rule: one is held over the other in its place and marked from it; until then it keeps
 * some length over. Curved braces and rafter seats are often scribed (common practice, no source).
 */
import type { CutRow, Joint } from "./joint.ts";
import { usual } from "./proportions.ts";

/** What is left past the computed end until it is marked in place: 1 in, or 25 mm (common practice, no source). */
export function scribeAllowance(metric: boolean): number {
  return usual(metric, 1, 25);
}

/**
 * What a stick keeps over at its two ends until it is marked: where an end is scribed, there; where its side is (a rafter
 * over its plate), at both, for it is held up before anyone knows where it ends.
 * @param own the joints that the timber joins into others with
 * @returns inches
 */
export function leftLong(own: readonly Pick<Joint, "end" | "scribe">[]): {
  readonly foot: number;
  readonly head: number;
} {
  const at = (end: "foot" | "head"): number =>
    Math.max(0, ...own.filter((j) => j.end === end || j.end === "side").map((j) => j.scribe));
  return { foot: at("foot"), head: at("head") };
}

/** What a cut sheet says of a scribed joint; nothing for one by the square rule. */
export function scribeRows(joint: Joint): CutRow[] {
  if (joint.scribe === 0) return [];
  return [
    {
      on: "joined",
      label: joint.end === "side" ? "left long at both ends" : "left long at this end",
      value: joint.scribe,
      unit: "in",
      how: "scribed: hold it in its place, mark both timbers there, then cut",
    },
  ];
}
