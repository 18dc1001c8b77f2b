/** Lag screws: lateral values with the root diameter, withdrawal of the thread, NDS 12.1.4, 12.2.1, 12.3 and Appendix L. */
import type { Sourced } from "../sourced.ts";
import { between, type Lateral, lateral, penetration, type SidePart, type WoodPart } from "./lateral.ts";

export interface LagSize {
  /** in, nominal */
  readonly diameter: number;
  /** D_r, in */
  readonly root: number;
  /** E, in: the tapered tip, which does not count */
  readonly tip: number;
}

/** NDS Appendix L, Table L2, from memory; roots up to 7/8 in reproduce the printed lateral tables. */
export const LAG_SIZES: readonly LagSize[] = [
  { diameter: 0.25, root: 0.173, tip: 5 / 32 },
  { diameter: 0.3125, root: 0.227, tip: 3 / 16 },
  { diameter: 0.375, root: 0.265, tip: 7 / 32 },
  { diameter: 0.4375, root: 0.328, tip: 9 / 32 },
  { diameter: 0.5, root: 0.371, tip: 5 / 16 },
  { diameter: 0.625, root: 0.471, tip: 13 / 32 },
  { diameter: 0.75, root: 0.579, tip: 1 / 2 },
  { diameter: 0.875, root: 0.683, tip: 19 / 32 },
  { diameter: 1, root: 0.78, tip: 11 / 16 },
];

/** @param diameter nominal, in; sizes between those of the table are taken in proportion */
export function lagSize(diameter: number): LagSize {
  return {
    diameter,
    root: between(
      LAG_SIZES.map((size) => [size.diameter, size.root]),
      diameter,
    ),
    tip: between(
      LAG_SIZES.map((size) => [size.diameter, size.tip]),
      diameter,
    ),
  };
}

/** F_yb of lag screws: 70,000 psi at 1/4 in, 60,000 at 5/16 in, 45,000 from 3/8 in (NDS Table I1). */
function lagBendingYield(diameter: number): Sourced {
  const value = diameter >= 0.375 - 1e-9 ? 45000 : diameter >= 0.3125 - 1e-9 ? 60000 : 70000;
  return { value, status: "memory", source: "NDS Table I1, lag screws" };
}

/**
 * Thread, with its tip, of a lag screw: half the length and 1/2 in up to 9 in, then 5 in or half the length, at
 * most 6 in (NDS Table L2, memory).
 * @param length in
 */
export function lagThread(length: number): number {
  return Math.min(length, 6, length <= 9 ? length / 2 + 0.5 : Math.max(5, length / 2));
}

/** Thread that holds in the main member, without the tip, in. */
export function lagThreadIn(diameter: number, length: number, side: number): number {
  return Math.max(0, Math.min(lagThread(length), length - side) - lagSize(diameter).tip);
}

/** Length of a lag screw in the main member, without the tip, in: what lateral values go by. */
export function lagPenetration(diameter: number, length: number, side: number): number {
  return Math.max(0, length - side - lagSize(diameter).tip);
}

export interface LagLateral {
  /** in, nominal */
  readonly diameter: number;
  readonly main: WoodPart;
  readonly side: SidePart;
  /** in the main member, without the tip, in: `lagPenetration` */
  readonly penetration: number;
}

/**
 * Z of one lag screw in single shear: yield modes with the root diameter, bearing across the grain with the nominal one
 * (NDS 12.3.3, 12.3.7). End grain in the main member takes the factor `endGrain("lateral")`.
 */
export function lagLateral(input: LagLateral): Lateral {
  return lateral({
    nominal: input.diameter,
    diameter: lagSize(input.diameter).root,
    bendingYield: lagBendingYield(input.diameter),
    main: input.main,
    mainLength: input.penetration,
    side: input.side,
    sideLength: input.side.thickness,
    shear: "single",
    penetration: penetration(input.penetration, input.diameter, "lag"),
  });
}

export interface Withdrawal {
  /** lb per inch */
  readonly perInch: Sourced;
  /** in, that holds */
  readonly length: number;
  /** W of one fastener, lb, before any factor */
  readonly reference: Sourced;
}

/**
 * Withdrawal from side grain: W = 1,800 G^1.5 D^0.75 lb per inch of thread (NDS 12.2-1).
 * @param G assigned specific gravity; @param diameter nominal, in; @param thread in the main member without tip, in
 */
export function lagWithdrawal(G: number, diameter: number, thread: number): Withdrawal {
  return withdrawalOf(1800 * G ** 1.5 * diameter ** 0.75, thread, {
    status: "published",
    source: "1,800 G^1.5 D^0.75, NDS 12.2-1",
  });
}

/** @param perInch lb per inch; @param length in that holds */
export function withdrawalOf(perInch: number, length: number, known: Omit<Sourced, "value">): Withdrawal {
  const each = Number.isFinite(perInch) ? Math.max(0, perInch) : 0;
  const held = Math.max(0, length);
  return {
    perInch: { value: each, ...known },
    length: held,
    reference: { value: each * held, ...known },
  };
}

/**
 * Average load at which lag screws tore out in tests: 8,100 G^1.5 D^0.75 L, lb (Wood Handbook 8-14). About 4.5 times the
 * design value; never a limit.
 */
export function lagWithdrawalTested(G: number, diameter: number, thread: number): Sourced {
  return {
    value: 8100 * G ** 1.5 * diameter ** 0.75 * thread,
    status: "published",
    source: "Wood Handbook, average of tests",
  };
}
