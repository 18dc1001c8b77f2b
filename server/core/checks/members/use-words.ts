/** How findings and hovers word a check of a timber: the amount, what the limit is made of, and what helps. */

import { END_GRAIN } from "../../members/bearing.ts";
import type { Factor } from "../../sourced.ts";
import type { MemberResult, MemberUse } from "../../statics/frame-results.ts";
import { amountWords } from "../amount-words.ts";
import { madeStress } from "../formula-words.ts";
import type { Say } from "../say.ts";

/** Kinds of check that break a timber, with their names. */
export const STRENGTH: Readonly<Partial<Record<MemberUse["what"], string>>> = {
  bending: "bending",
  shear: "shear",
  "notched-shear": "shear at its cut-down end",
  tension: "tension",
  compression: "compression",
  "tension-and-bending": "tension and bending together",
  "compression-and-bending": "compression and bending together",
};

/** A use that exceeds its limit, and the timber it is of. */
export interface Exceeded {
  readonly result: MemberResult;
  readonly use: MemberUse;
}

/** The leading one of the uses of these kinds that pass their limit. */
export function worstOver(
  result: MemberResult,
  counts: (what: MemberUse["what"]) => boolean,
): MemberUse | undefined {
  return result.uses.find((u) => counts(u.what) && u.ratio > 1);
}

/** How far a limit is passed, rounded up: what is over never reads as 100 %. */
export const overPercent = (ratio: number, say: Say): string =>
  say.percent(Math.ceil(ratio * 100 - 1e-9) / 100);

/** `460 psi`, or `0.83` for an interaction. */
export function amount(use: MemberUse, value: number, say: Say): string {
  return use.unit === "psi"
    ? say.stress(value)
    : use.unit === "in"
      ? say.length(value)
      : say.number(value, 2);
}

const SYMBOL: Readonly<Partial<Record<MemberUse["what"], string>>> = {
  bending: "F_b",
  shear: "F_v",
  "notched-shear": "F_v",
  tension: "F_t",
  compression: "F_c",
  bearing: "F_c⊥",
  "tension-and-bending": "F_b",
  "compression-and-bending": "F_b",
};

/** Whether end grain limits a bearing. */
export const byEndGrain = ({ factors }: MemberUse): boolean =>
  factors.some((f) => f.symbol === END_GRAIN.symbol);

/** The value that a check goes by, as the standard prints it. */
function symbolOf(use: MemberUse): string {
  return byEndGrain(use) ? "F_c" : (SYMBOL[use.what] ?? "E");
}

const product = (symbol: string, value: number, factors: readonly Factor[], say: Say): string =>
  [
    `${symbol} ${say.stress(value)}`,
    ...factors
      .filter((f) => Math.abs(f.value - 1) > 5e-4)
      .map((f) => `${f.symbol} ${say.number(f.value, 2)}`),
  ].join(" × ");

/** `F_b 875 psi × C_D 1.15 × C_L 0.97`: factors of one are left out. Of two stresses together both values. */
export function limitWords(use: MemberUse, say: Say): string {
  const { reference, factors, second } = use;
  if (!reference) return "";
  const first = product(symbolOf(use), reference.value, factors.slice(0, second?.own), say);
  return second ? `${first}; ${product(second.symbol, second.reference.value, second.factors, say)}` : first;
}

/**
 * `1120 psi > F_b 875 psi × C_D 1.15 = 1006 psi`.
 * @returns undefined where the limit is not just this product: interactions, and what buckles past all limits
 */
export function productWords(use: MemberUse, say: Say): string | undefined {
  const { reference, factors, second, unit, value, limit, interaction } = use;
  if (!reference || second || interaction || unit !== "psi" || !Number.isFinite(value)) return undefined;
  const made = factors.reduce((all, factor) => all * factor.value, reference.value);
  if (!(Math.abs(made - limit) <= 1e-6 * limit)) return undefined;
  return say.text("{value} > {made}", {
    value: say.stress(value),
    made: madeStress(symbolOf(use), { reference, factors, value: limit }, say),
  });
}

/** A place in a timber, inches from its foot. It is no cut size: to the nearest 1/16 in. */
export function fromFoot(at: number, say: Say): string {
  const distance = Math.max(0, Math.round(at * 16) / 16);
  return distance === 0
    ? say.text("at its foot")
    : say.text("{length} from its foot", { length: amountWords({ value: at, unit: "in" }, say) });
}

/** Where along the stick: a joint by its name, else the distance from the foot. */
export function placeWords(use: MemberUse, say: Say): string {
  return use.place === undefined ? fromFoot(use.at, say) : say.text("at {place}", { place: use.place });
}
