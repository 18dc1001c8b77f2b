/** What a check of a member or rafter looks at, in as few words as a hint has room for. */
import type { Say } from "../../core/checks/say.ts";
import type { CheckKind } from "../../core/members/utilisation.ts";
import type { MemberCheck } from "../../core/statics/frame-results.ts";

export const USE_WORDS: Readonly<Record<MemberCheck | CheckKind, string>> = {
  bending: "bending",
  shear: "shear",
  "notched-shear": "shear at a notch",
  tension: "tension",
  compression: "compression",
  "tension-and-bending": "tension with bending",
  "compression-and-bending": "compression with bending",
  bearing: "bearing",
  slenderness: "slenderness",
  "live-deflection": "deflection under live load",
  "total-deflection": "deflection under all load",
  "bending-at-seat": "bending over the seat",
  "shear-at-seat": "shear over the seat",
  "tip-live-deflection": "deflection of the tail under live load",
  "tip-total-deflection": "deflection of the tail under all load",
};

/** A ratio as the trade writes it: two figures behind the point; what is over 1 never reads as 1. */
export function ratioText(ratio: number, say: Say): string {
  if (!Number.isFinite(ratio)) return say.text("far over");
  const up = ratio > 1 ? Math.ceil(ratio * 100 - 1e-9) / 100 : ratio;
  return Math.max(up, 0).toFixed(2);
}

/** A stress, a deflection, or the sum of an interaction. */
export function amountText(value: number, unit: "psi" | "in" | "ratio", say: Say): string {
  if (!Number.isFinite(value)) return say.text("beyond any limit");
  if (unit === "psi") return say.stress(value);
  return unit === "in" ? say.length(value) : say.number(value, 2);
}
