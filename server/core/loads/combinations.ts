/**
 * Allowable stress load combinations, ASCE 7-16 and 7-22 section 2.4.1, with the load duration factor that the NDS gives
 * each: that of its shortest load (NDS 2.3.2, Table 2.3.2). Earthquake is not among them.
 */
import type { Factor, ValueStatus } from "../sourced.ts";
import type { Edition } from "./snow-factors.ts";

/** dead, floor live, roof live, snow, rain, wind */
export type LoadKind = "D" | "L" | "Lr" | "S" | "R" | "W";

export interface Combination {
  /** `3-S`: number of the standard, then the roof load taken where it offers a choice */
  readonly id: string;
  /** number of the standard: 1 to 7 */
  readonly number: number;
  /** `D + 0.7 S` */
  readonly text: string;
  readonly factors: Readonly<Partial<Record<LoadKind, number>>>;
  readonly duration: Factor;
  readonly status: ValueStatus;
}

const lasting = (value: number, status: ValueStatus, note: string): Factor => ({
  symbol: "C_D",
  source: "NDS Table 2.3.2",
  value,
  status,
  note,
});

const DURATION: Readonly<Record<LoadKind, Factor>> = {
  D: lasting(0.9, "published", "permanent"),
  L: lasting(1.0, "published", "ten years, occupancy"),
  S: lasting(1.15, "published", "two months, snow"),
  Lr: lasting(1.25, "published", "seven days, construction"),
  R: lasting(1.15, "common-practice", "rain, taken like snow"),
  W: lasting(1.6, "published", "ten minutes, wind"),
};

/** Load duration factor C_D of one kind of load, NDS Table 2.3.2: one object for each, so that values can be kept by it. */
export function durationFactor(kind: LoadKind): Factor {
  return DURATION[kind];
}

export const ROOF_LOADS = ["Lr", "S", "R"] as const;

/**
 * @param roofed some roof load acts; without one 3 and 4 say no more than 1 and 2, and 6 is D + 0.75 L + 0.45 W
 * @returns every combination of the edition, in the order of the standard; a choice of roof load makes three
 */
export function asdCombinations(edition: Edition, roofed = true): readonly Combination[] {
  const snow = edition === "asce-7-22" ? 0.7 : 1;
  const seen: ValueStatus = edition === "asce-7-22" ? "memory" : "published";
  const roof = (number: number, share: number, others: Partial<Record<LoadKind, number>>) =>
    (roofed ? ROOF_LOADS : []).map((kind) =>
      combine(
        number,
        `${number}-${kind}`,
        { ...others, [kind]: share * (kind === "S" ? snow : 1) },
        "published",
      ),
    );
  return [
    combine(1, "1", { D: 1 }, seen),
    combine(2, "2", { D: 1, L: 1 }, seen),
    ...roof(3, 1, { D: 1 }),
    ...roof(4, 0.75, { D: 1, L: 0.75 }),
    combine(5, "5", { D: 1, W: 0.6 }, seen),
    ...roof(6, 0.75, { D: 1, L: 0.75, W: 0.45 }),
    ...(roofed ? [] : [combine(6, "6", { D: 1, L: 0.75, W: 0.45 }, seen)]),
    combine(7, "7", { D: 0.6, W: 0.6 }, seen),
  ];
}

/** @returns the combination without the loads that a frame does not have */
export function withOnly(combination: Combination, present: ReadonlySet<LoadKind>): Combination {
  const kinds = (Object.keys(combination.factors) as LoadKind[]).filter((kind) => present.has(kind));
  const factors = Object.fromEntries(kinds.map((kind) => [kind, combination.factors[kind]]));
  return { ...combination, factors, text: textOf(factors) };
}

function textOf(factors: Combination["factors"]): string {
  return (Object.keys(DURATION) as LoadKind[])
    .filter((kind) => factors[kind] !== undefined)
    .map((kind) => (factors[kind] === 1 ? kind : `${Number((factors[kind] ?? 0).toFixed(4))} ${kind}`))
    .join(" + ");
}

function combine(
  number: number,
  id: string,
  factors: Partial<Record<LoadKind, number>>,
  status: ValueStatus,
): Combination {
  const kinds = (Object.keys(DURATION) as LoadKind[]).filter((kind) => factors[kind] !== undefined);
  const duration = kinds
    .map(durationFactor)
    .reduce((shortest, factor) => (factor.value > shortest.value ? factor : shortest));
  return { id, number, text: textOf(factors), factors, duration, status };
}

/** Sum of a combination's loads, in whatever unit they are. */
export function combined(
  combination: Combination,
  loads: Readonly<Partial<Record<LoadKind, number>>>,
): number {
  return (Object.keys(combination.factors) as LoadKind[]).reduce(
    (sum, kind) => sum + (combination.factors[kind] ?? 0) * (loads[kind] ?? 0),
    0,
  );
}
