/**
 * Every row of the load tables that the program holds, against the collected data in `load-tables.yaml`, each with its
 * status there: verified = seen in the named source, memory = remembered and not seen.
 */
import { describe, expect, test } from "vitest";
import {
  exposureFactor,
  importanceFactor,
  minimumSnow,
  rainOnSnow,
  type Terrain,
  thermalFactor,
} from "../../server/core/loads/snow-factors.ts";
import { leastWind } from "../../server/core/loads/wind-drag.ts";
import {
  alongCoefficients,
  type Flow,
  monoslopeCoefficients,
  pitchedCoefficients,
} from "../../server/core/loads/wind-open.ts";
import { type Row, readReference } from "./cases.ts";

const { snow, wind_open_buildings: wind } = readReference("load-tables");
const { open_building_roof: open, minimum } = wind;
const FLOWS: readonly Flow[] = ["clear", "obstructed"];

describe("net pressure of free roofs, ASCE 7 Figures 27.3-4, 27.3-5 and 27.3-7", () => {
  const pitched: readonly Row[] = open.pitched_free_roof_gamma_0_and_180.rows;
  test.each(pitched.map((r) => [r.theta_deg, r.case, r.status, r] as const))(
    "pitched, %s°, case %s [%s]",
    (slope, load, _, row) => {
      for (const flow of FLOWS) {
        const found = pitchedCoefficients(slope, flow).filter((c) => c.load === load);
        expect(found.map((c) => [c.windward, c.leeward])).toEqual([[row[`${flow}_CNW`], row[`${flow}_CNL`]]]);
      }
    },
  );
  const monoslope: readonly Row[] = open.monoslope_free_roof.rows;
  test.each(monoslope.map((r) => [r.theta_deg, r.case, r.status, r] as const))(
    "monoslope, %s°, case %s [%s]",
    (slope, load, _, row) => {
      for (const flow of FLOWS)
        for (const [edge, gamma] of [
          ["high-edge", 0],
          ["low-edge", 180],
        ] as const) {
          const found = monoslopeCoefficients(slope, flow, edge).filter((c) => c.load === load);
          expect(found.map((c) => [c.windward, c.leeward])).toEqual([row[`gamma${gamma}_${flow}`]]);
        }
    },
  );
  const along: readonly Row[] = open.wind_along_ridge_gamma_90.rows;
  test.each(along.map((r, n) => [r.distance, r.case, r.status, r, Math.floor(n / 2)] as const))(
    "along the ridge, %s, case %s [%s]",
    (_, load, __, row, strip) => {
      for (const flow of FLOWS) {
        const found = alongCoefficients(10, 100, flow).find(({ id }) => id === load);
        expect(found?.strips[strip]?.C, flow).toBe(row[flow]);
      }
    },
  );
});

test(`the least wind [${minimum.wall_psf.status}]`, () => {
  const least = leastWind("asce-7-16");
  expect([least.walls.value, least.roof.value]).toEqual([minimum.wall_psf.value, minimum.roof_psf.value]);
});

describe("snow, ASCE 7 chapter 7", () => {
  const rows: readonly Row[] = snow.Ce.rows.filter((r: Row) => r.terrain.length === 1);
  test.each(rows.map((r) => [r.terrain as Terrain, r.status, r] as const))(
    "C_e in terrain %s [%s]",
    (terrain, _, row) => {
      expect(exposureFactor(terrain, "fully-exposed").value).toBe(row.fully_exposed);
      expect(exposureFactor(terrain, "partially-exposed").value).toBe(row.partially_exposed);
      expect(exposureFactor(terrain, "sheltered").value).toBe(row.sheltered);
    },
  );
  const { asce7_10_and_7_16: old, asce7_22: recent } = snow.Ct;
  test.each([
    ["asce-7-16", "heated", old.all_other],
    ["asce-7-16", "cold-ventilated", old.just_above_freezing_or_cold_ventilated_R_over_25],
    ["asce-7-16", "open", old.unheated_and_open_air],
    ["asce-7-16", "unheated", old.unheated_and_open_air],
    ["asce-7-16", "freezer", old.kept_below_freezing],
    ["asce-7-16", "greenhouse", old.heated_greenhouse],
    ["asce-7-22", "cold-ventilated", recent.ventilated_R25_or_better],
    ["asce-7-22", "open", recent.unheated_and_open_air],
    ["asce-7-22", "unheated", recent.unheated_and_open_air],
    ["asce-7-22", "freezer", recent.kept_below_freezing],
    ["asce-7-22", "greenhouse", recent.heated_greenhouse],
  ] as const)("C_t of %s, %s [$2.status]", (edition, thermal, row) => {
    const found = thermalFactor(edition, thermal);
    expect(found.value).toBe(row.value);
    expect(found.status).toBe(row.status === "verified" ? "published" : row.status);
  });
  test.each(["i", "ii", "iii", "iv"] as const)("I_s and p_m of category %s [verified, memory]", (risk) => {
    const is = snow.Is[risk.toUpperCase()].value;
    expect(importanceFactor("asce-7-16", risk)?.value).toBe(is);
    expect(importanceFactor("asce-7-22", risk)).toBeUndefined();
    const { asce7_16, asce7_22 } = snow.minimum_low_slope;
    expect(minimumSnow("asce-7-16", 100, risk, 5)?.value).toBeCloseTo(is * asce7_16.limit_psf.value, 9);
    expect(minimumSnow("asce-7-22", 100, risk, 5)?.value).toBe(
      asce7_22[`pm_max_${risk.toUpperCase()}`].value,
    );
  });
  const { asce7_16: rain16, asce7_22: rain22 } = snow.rain_on_snow_psf;
  test(`rain on snow [${rain16.status}, ${rain22.status}]`, () => {
    expect(rainOnSnow("asce-7-16", 20, 100, 1, "ii").value).toBe(rain16.value);
    expect(rainOnSnow("asce-7-22", 20, 100, 1, "ii").value).toBe(rain22.value);
  });
});
