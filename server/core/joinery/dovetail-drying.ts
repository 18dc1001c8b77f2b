/** How far a dovetail draws out of its socket as a green timber dries, and what the wedge of a half-dovetail takes up. */
import { dovetailFit } from "../fasteners/dovetail.ts";
import type { Timber } from "../model/model.ts";
import { shrinkageTo } from "../wood/moisture.ts";
import { findSpecies } from "../wood/species.ts";
import { inchRow } from "./cut-rows.ts";
import type { CutRow, Joint } from "./joint.ts";
import type { DovetailSizes, JointSizes } from "./joint-sizes.ts";

/** Moisture in service under a roof in the open, percent (Wood Handbook chapter 13, about 12 in most of the U.S.; memory). */
const IN_SERVICE = 12;

/**
 * What a timber loses across its grain until it is dry: S = S_0 (1 − x/30) (Wood Handbook Eq 4-9), tangential, the worse
 * way, of the wood that shrinks most where a name stands for several.
 * @returns a fraction; 0 for dry timber, undefined where the shrinkage of its wood is not known
 */
export function dryingOf(timber: Timber): number | undefined {
  if (timber.class?.seasoning === "dry") return 0;
  const rows = findSpecies(timber.class?.species?.text ?? "")?.species ?? [];
  const totals = rows.flatMap((row) => row.shrinkage?.tangential?.[0] ?? []);
  return totals.length === 0 ? undefined : shrinkageTo(Math.max(...totals), IN_SERVICE) / 100;
}

/**
 * A tail with two sloped edges draws out S × tip ÷ (2 × slope) until it is tight again (plane geometry, `dovetailFit`).
 * @returns inches; 0 for dry timber, undefined where the shrinkage of its wood is not known
 */
export function drawOut(timber: Timber, { tip, length, flare }: DovetailSizes): number | undefined {
  const shrinkage = dryingOf(timber);
  if (shrinkage === undefined || !(length.value > 0)) return undefined;
  const slope = flare.value / length.value;
  return dovetailFit({ tail: tip, length: length.value, slope, slopedSides: 2, shrinkage }).drawOut;
}

/** Rise of the lower edge of a wedged half-dovetail for each inch of its length; 0 for other joints. */
export function tailSlope({ wedge, tenon }: Pick<JointSizes, "wedge" | "tenon">): number {
  if (!wedge || !tenon || !(tenon.length.value > 0)) return 0;
  return Math.max(0, (wedge.tip - tenon.width.value) / tenon.length.value);
}

/**
 * How far a wedge is driven on to keep a half-dovetail tight as it dries: S × tip ÷ the wedge's slope (plane geometry).
 * @param tip depth of the tail, in; @param slope of the wedge; @returns inches, 0 where nothing is known
 */
export function wedgeReserve(timber: Timber, tip: number, slope: number): number {
  return slope > 0 ? ((dryingOf(timber) ?? 0) * tip) / slope : 0;
}

/** How far a green tail draws out, for the cut sheet. */
export function dryingRows({ of, sizes: { dovetail, pegs } }: Joint): CutRow[] {
  const out = dovetail && drawOut(of, dovetail);
  if (!out || !Number.isFinite(out)) return [];
  return [
    inchRow(
      "joined",
      "draws out as it dries, at most",
      out,
      pegs
        ? "shrinkage across the tip ÷ twice the flare’s slope; its peg holds it until then"
        : "shrinkage across the tip ÷ twice the flare’s slope",
    ),
  ];
}
