/** One section under given forces, judged by the very code that judges every place of every timber of a frame. */
import type { Combined } from "../../../server/core/analysis/combined.ts";
import { sectionRow } from "../../../server/core/analysis/sections.ts";
import type { MemberPlan } from "../../../server/core/statics/member-plan.ts";
import { TimberStress } from "../../../server/core/statics/member-stresses.ts";
import type { DurationValues, Limits } from "../../../server/core/statics/member-values.ts";
import { type StationTable, stickTable } from "../../../server/core/statics/station-table.ts";
import { STRESSES, type Stress } from "../../../server/core/statics/worst-stress.ts";

export interface JudgedSection {
  /** in; whole, deeper than wide */
  readonly breadth: number;
  readonly depth: number;
  /** lb, tension positive; in-lb about the strong axis and about the weak one */
  readonly N: number;
  readonly M1: number;
  readonly M2: number;
  /** psi; what is left out does not limit */
  readonly limits: Partial<Limits>;
}

const NO_LIMIT: Limits = Object.fromEntries(
  [
    ...["Fb1", "plus1", "minus1", "criticalPlus", "criticalMinus", "Fb2", "plus2", "minus2"],
    ...["Ft", "Fv", "Fc", "FcStar", "FcE1", "FcE2"],
  ].map((key) => [key, Number.POSITIVE_INFINITY]),
) as unknown as Limits;

/** @returns value ÷ limit of each kind of stress that acts */
export function ratios({
  breadth,
  depth,
  N,
  M1,
  M2,
  limits,
}: JudgedSection): Partial<Record<Stress, number>> {
  const one = (value: number): Float64Array => Float64Array.of(value);
  const area = breadth * depth;
  const table: StationTable = {
    row: Int32Array.of(0),
    mix: Int32Array.of(-1),
    weights: new Float64Array(0),
    x: one(0),
    A: one(area),
    At: one(area),
    yc: one(0),
    zc: one(0),
    Sz: one((breadth * depth ** 2) / 6),
    Sy: one((depth * breadth ** 2) / 6),
    shear: Int32Array.of(0),
    next: Int32Array.of(-1),
    stick: Int32Array.of(0),
  };
  const elements = [0];
  const plan = {
    timber: { width: breadth, depth },
    elements,
    table,
    sticks: stickTable(elements, table),
    area,
    stations: [],
    shearSpots: [],
    notches: [],
  };
  const stress = new TimberStress(plan as unknown as MemberPlan);
  const values = { limits: { ...NO_LIMIT, ...limits } } as unknown as DurationValues;
  // N, V_y, V_z, T, M_y, M_z; the same all along
  const section = [N, 0, 0, 0, M2, M1];
  const combined: Pick<Combined, "tips" | "boundInner" | "writeSections"> = {
    tips: Float64Array.from([...section, ...section]),
    boundInner: (_, out) => out.fill(0),
    writeSections: (_, into) => into.set(section),
  };
  stress.show(values, combined as Combined, new Float64Array(sectionRow(0, 1)), 0);
  return Object.fromEntries(
    STRESSES.flatMap((what) => {
      const worst = stress.worst(what);
      return worst ? [[what, worst.ratio]] : [];
    }),
  );
}
