/**
 * Factors on the reference values of fasteners, NDS Table 11.3.1; C_D comes with the load combination
 * (`loads/combinations.ts`), C_Δ from `placement.ts`.
 */
import { type Adjusted, withFactor } from "../members/adjust.ts";
import { lengthNote, type Note } from "../note.ts";
import type { Factor, Sourced, ValueStatus } from "../sourced.ts";

/** Moisture of the wood: `green` is above 19 percent. */
export interface FastenerMoisture {
  readonly placed: "green" | "dry";
  readonly service: "green" | "dry";
}

/** @returns reference value × factors, with each shown */
export function adjust(reference: Sourced, factors: readonly Factor[]): Adjusted {
  const bare: Adjusted = { reference, factors: [], value: reference.value, status: reference.status };
  return factors.reduce((value, factor) => withFactor(value, factor), bare);
}

/**
 * C_M on lateral values of bolts, lag screws, screws and nails, NDS Table 11.3.3: 0.7 where the wood stays wet; placed in
 * green wood that dries 0.4, but 0.7 under 1/4 in, and 1 for one fastener or a single row along the grain.
 * @param diameter nominal, in; @param rows of fasteners side by side across the grain
 */
export function wetLateral(moisture: FastenerMoisture, diameter: number, rows: number): Factor {
  const one = (value: number, note: Note) => factor("C_M", value, "memory", "NDS Table 11.3.3", note);
  if (moisture.service === "green") return one(0.7, "above 19 percent moisture in service");
  if (moisture.placed === "dry") return one(1, "dry when placed and in service");
  if (diameter < 0.25) return one(0.7, lengthNote("green when placed, under {length}", 0.25));
  if (rows <= 1) return one(1, "green when placed; one fastener, or one row along the grain");
  return one(0.4, "green when placed; more than one row holds the wood as it shrinks");
}

/** C_M on withdrawal, NDS Table 11.3.3: nails lose most where the wood changes its moisture, screws where it stays wet. */
export function wetWithdrawal(moisture: FastenerMoisture, kind: "nail" | "screw"): Factor {
  const one = (value: number, note: Note) => factor("C_M", value, "memory", "NDS Table 11.3.3", note);
  if (kind === "screw") {
    return moisture.service === "green"
      ? one(0.7, "above 19 percent moisture in service")
      : one(1, "dry in service");
  }
  return moisture.placed === moisture.service
    ? one(1, "moisture does not change")
    : one(0.25, "the wood changes its moisture round the nail");
}

/** C_eg: 0.67 on lateral values (NDS 12.5.2), 0.75 on withdrawal of lag screws (NDS 12.2.1.4) in end grain. */
export function endGrain(of: "lateral" | "lag-withdrawal"): Factor {
  return of === "lateral"
    ? factor("C_eg", 0.67, "memory", "NDS 12.5.2", "in end grain")
    : factor("C_eg", 0.75, "published", "NDS 12.2.1.4; Wood Handbook p. 8-13", "in end grain");
}

/** C_tn: 0.83 on lateral values, 0.67 on withdrawal of toe-nails (NDS 12.5.4). */
export function toeNail(of: "lateral" | "withdrawal"): Factor {
  return factor("C_tn", of === "lateral" ? 0.83 : 0.67, "memory", "NDS 12.5.4", "driven on the slant");
}

export interface FastenerRow {
  /** fasteners in a row along the load */
  readonly count: number;
  /** in, center to center along the row */
  readonly spacing: number;
  /** in, nominal */
  readonly diameter: number;
  /** E A, lb, of the main and of the side member (both sides together) */
  readonly main: number;
  readonly side: number;
  readonly sideIs: "wood" | "steel";
}

/**
 * C_g, NDS 11.3-1: the fasteners at the ends of a row take more than their share. Load/slip modulus γ 180,000 D^1.5
 * lb/in wood to wood, 270,000 D^1.5 wood to metal; 1 for one fastener and under 1/4 in.
 */
export function groupAction(row: FastenerRow): Factor {
  const one = (value: number, note: Note) => factor("C_g", value, "memory", "NDS 11.3-1", note);
  const { count: n, spacing, diameter, main, side } = row;
  if (n <= 1 || diameter < 0.25)
    return one(1, n <= 1 ? "one fastener in a row" : lengthNote("under {length}", 0.25));
  if (!(main > 0 && side > 0 && spacing > 0)) return one(0, "a size is missing");
  const slip = (row.sideIs === "wood" ? 180000 : 270000) * diameter ** 1.5;
  const u = 1 + ((slip * spacing) / 2) * (1 / main + 1 / side);
  const m = u - Math.sqrt(u ** 2 - 1);
  const R = Math.min(side / main, main / side);
  const spread = (m * (1 - m ** (2 * n))) / (n * ((1 + R * m ** n) * (1 + m) - 1 + m ** (2 * n)));
  return one((spread * (1 + R)) / (1 - m), `${n} in a row`);
}

function factor(symbol: string, value: number, status: ValueStatus, source: string, note: Note): Factor {
  return { symbol, value, status, source, note };
}
