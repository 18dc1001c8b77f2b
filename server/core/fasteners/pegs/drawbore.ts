/** Drawbore: the hole through the tenon stands nearer the shoulder, so that the driven peg draws the joint tight. */
import type { ValueStatus } from "../../sourced.ts";

export interface DrawboreRange {
  /** in */
  readonly least: number;
  readonly most: number;
  readonly status: ValueStatus;
  readonly source: string;
}

/**
 * Usual offset. Hardwood timbers with 1 in pegs 1/16 to 1/8 in (a builder’s account; builders’ forums name the same
 * range); the most in proportion to the peg, which bends the more the thicker it is. Softwood takes about half as much
 * again: the account says double, and that 1/4 in could hardly be driven.
 * @param diameter of the peg, in
 */
export function drawboreRange(diameter: number, timber: "hardwood" | "softwood"): DrawboreRange {
  const least = Math.min(1 / 16, diameter / 12);
  const most = diameter * (timber === "hardwood" ? 1 / 8 : 3 / 16);
  const printed = timber === "hardwood" && Math.abs(diameter - 1) < 1e-9;
  return {
    least,
    most,
    status: printed ? "published" : "derived",
    source: "drawboring, a builder’s account: 1/16 to 1/8 in with 1 in pegs in hardwood; by the diameter",
  };
}

export interface DrawboreLens {
  /** in, clear through both holes, along the offset */
  readonly clear: number;
  /** share of the hole’s area that is left, 0 to 1 */
  readonly open: number;
  /** slope of the bent peg between the middle of the tenon and a cheek’s outer face */
  readonly slope: number;
}

/** What is left of the holes when the tenon is home: two circles offset (plane geometry). @param cheek in */
export function drawboreLens(diameter: number, offset: number, cheek: number): DrawboreLens {
  const d = Math.max(0, Math.min(diameter, Math.abs(offset)));
  const r = diameter / 2;
  const lens =
    r > 0 ? 2 * r ** 2 * Math.acos(d / (2 * r)) - (d / 2) * Math.sqrt(Math.max(0, 4 * r ** 2 - d ** 2)) : 0;
  return {
    clear: Math.max(0, diameter - Math.abs(offset)),
    open: r > 0 ? lens / (Math.PI * r ** 2) : 0,
    slope: cheek > 0 ? Math.abs(offset) / cheek : 0,
  };
}
