/** Design values of a timber in a model, with the factors of its state. */
import { type AdjustedValues, adjustValues } from "../members/adjust.ts";
import type { Timber } from "../model/model.ts";
import type { Factor } from "../sourced.ts";
import { type TimberValues, timberValues } from "../wood/stated-values.ts";

/**
 * Design values by the timber's class and section; undefined where no table and no stated values give any, or where a
 * stated one cannot be read.
 */
export function woodOf(timber: Timber): TimberValues | undefined {
  return timber.class?.unreadValues ? undefined : readableWoodOf(timber);
}

/** The same, whether or not every stated value can be read. */
function readableWoodOf(timber: Timber): TimberValues | undefined {
  const species = timber.class?.species?.text;
  if (species === undefined) return undefined;
  const found = timberValues({
    species,
    grade: timber.class?.grade?.text,
    width: timber.width,
    depth: timber.depth,
    own: timber.class?.values ?? new Map(),
    because: timber.class?.because,
  });
  return found.kind === "values" ? found : undefined;
}

/** Green timber is loaded before it has dried: wet-service factors hold for it. */
export function isWet(timber: Timber): boolean {
  return (timber.class?.seasoning ?? "green") === "green";
}

/** Adjusted values under a load duration. @param repetitive C_r where it applies */
export function adjustedFor(
  timber: Timber,
  wood: TimberValues,
  duration: Factor,
  repetitive?: Factor,
): AdjustedValues {
  return adjustValues(wood.values, {
    section: { sizeClass: wood.sizeClass, group: wood.group, breadth: timber.width, depth: timber.depth },
    grade: wood.grade,
    duration,
    wet: isWet(timber),
    ...(repetitive ? { repetitive } : {}),
  });
}

const NO_DURATION: Factor = { symbol: "C_D", value: 1, status: "published", source: "NDS Table 2.3.2" };

/** F_c⊥′ in psi, without C_b: C_D does not act on it. */
export function sideGrainOf(timber: Timber, wood: TimberValues): number {
  return adjustedFor(timber, wood, NO_DURATION)["Fc-perp"].value;
}

/** Modulus for a timber whose wood is unknown, psi: the lowest of common softwoods, so that the frame can still be solved. */
const FALLBACK_MODULUS = 1_000_000;

/** E′ in psi. */
export function modulusOf(timber: Timber): number {
  // a strength that cannot be read leaves the stiffness as it is
  const wood = readableWoodOf(timber);
  return wood ? adjustedFor(timber, wood, NO_DURATION).E.value : FALLBACK_MODULUS;
}
