/**
 * Factors on the reference values of fasteners, NDS Table 11.3.1; C_D comes with the load combination
 * (`loads/combinations.ts`).
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

function factor(symbol: string, value: number, status: ValueStatus, source: string, note: Note): Factor {
  return { symbol, value, status, source, note };
}
