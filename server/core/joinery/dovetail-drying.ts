/** How far a dovetail draws out of its socket as a green timber dries. */
import { dovetailFit } from "../fasteners/dovetail.ts";
import type { Timber } from "../model/model.ts";
import { shrinkageTo } from "../wood/moisture.ts";
import { findSpecies } from "../wood/species.ts";
import type { DovetailSizes } from "./joint.ts";

/** Moisture in service under a roof in the open, percent (Wood Handbook chapter 13, about 12 in most of the U.S.; memory). */
const IN_SERVICE = 12;

/**
 * The timber shrinks across the dovetail by S = S_0 (1 − x/30) (Wood Handbook Eq 4-9), tangential, the worse way; a tail
 * with two sloped edges draws out S × tip ÷ (2 × slope) until it is tight again (plane geometry, `dovetailFit`).
 * @returns inches; 0 for dry timber, undefined where the shrinkage of its wood is not known
 */
export function drawOut(timber: Timber, { tip, length, flare }: DovetailSizes): number | undefined {
  if (timber.class?.seasoning === "dry") return 0;
  const rows = findSpecies(timber.class?.species?.text ?? "")?.species ?? [];
  const totals = rows.flatMap((row) => row.shrinkage?.tangential?.[0] ?? []);
  if (totals.length === 0 || !(length.value > 0)) return undefined;
  return dovetailFit({
    tail: tip,
    length: length.value,
    slope: flare.value / length.value,
    slopedSides: 2,
    shrinkage: shrinkageTo(Math.max(...totals), IN_SERVICE) / 100,
  }).drawOut;
}
