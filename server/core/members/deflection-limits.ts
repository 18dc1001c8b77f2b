/** How far a timber may bend, by what it carries: shares of its span from the building code. */

import type { CeilingKind } from "../frame/roof.ts";
import type { Thermal } from "../frame/site.ts";
import type { Note } from "../note.ts";
import type { Sourced } from "../sourced.ts";
import type { DeflectionLimits } from "./deflection.ts";

export type DeflectionUse = "floor" | "open-roof" | "ceiling" | "plaster" | "greenhouse";

/** The limits of a use: span divisors of live, snow or wind load alone, and of all load with creep. */
export interface DeflectionRule {
  readonly use: DeflectionUse;
  readonly live: Sourced;
  readonly total: Sourced;
  /** what was taken to choose it */
  readonly note: Note;
}

const row = (use: DeflectionUse, live: number, total: number, line: string, note: Note): DeflectionRule => {
  const from = (value: number): Sourced => ({ value, status: "memory", source: `IBC Table 1604.3, ${line}` });
  return { use, live: from(live), total: from(total), note };
};

/** Remembered from the table; IRC Table R301.7 has the same 360 for floors, 180 for rafters without ceiling and 240 with. */
const RULES: Readonly<Record<DeflectionUse, DeflectionRule>> = {
  floor: row("floor", 360, 240, "floor members", "carries a floor"),
  "open-roof": row(
    "open-roof",
    180,
    120,
    "roof members without a ceiling",
    "no floor, and nothing heated under the roof: no ceiling",
  ),
  ceiling: row(
    "ceiling",
    240,
    180,
    "roof members with a ceiling that is not plaster",
    "a ceiling or lining that is not plaster",
  ),
  plaster: row("plaster", 360, 240, "roof members with a plaster ceiling", "a plaster ceiling"),
  greenhouse: row(
    "greenhouse",
    180,
    120,
    "greenhouses for all load, roof members without a ceiling for live load",
    "a greenhouse",
  ),
};

/** A heated or cooled room is lined below its roof: the file does not say with what. */
const TAKEN: DeflectionRule = {
  ...RULES.ceiling,
  note: "the roof keeps warmth or cold in: a ceiling or lining that is not plaster is taken",
};

const OF_CEILING: Readonly<Record<CeilingKind, DeflectionRule>> = {
  plaster: RULES.plaster,
  plasterboard: RULES.ceiling,
  boards: RULES.ceiling,
  none: { ...RULES["open-roof"], note: "no floor and no ceiling" },
};

/**
 * A roof over heated or cooled room is lined below, under the rafters or under its insulation: where the file does not say
 * with what, the limit of a lining that is not plaster is taken (common practice).
 * @param thermal undefined = the file does not say, as without snow
 * @param ceiling undefined = the file does not say
 */
export function deflectionRule(
  thermal: Thermal | undefined,
  ceiling: CeilingKind | undefined,
  floor: boolean,
): DeflectionRule {
  if (floor) return RULES.floor;
  if (ceiling !== undefined) return OF_CEILING[ceiling];
  if (thermal === "greenhouse") return RULES.greenhouse;
  return thermal === undefined || thermal === "open" || thermal === "unheated" ? RULES["open-roof"] : TAKEN;
}

/** A limit of deflection as the share of a length that it is. */
export interface DeflectionShare {
  readonly use: DeflectionUse;
  readonly divisor: Sourced;
  /** the span, or twice a tail, in */
  readonly length: number;
  readonly note: Note;
}

/** @param limit in */
export function deflectionShare(
  rule: DeflectionRule,
  load: "live" | "total",
  limit: number,
): DeflectionShare {
  const divisor = rule[load];
  return { use: rule.use, divisor, length: limit * divisor.value, note: rule.note };
}

/** The divisors alone. */
export const limitsOf = ({ live, total }: DeflectionRule): Required<DeflectionLimits> => ({
  live: live.value,
  total: total.value,
});
