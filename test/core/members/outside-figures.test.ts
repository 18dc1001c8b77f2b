/**
 * Member checks against outside figures: every case of members.yaml and its table of columns. How each figure is computed
 * stands in the `figures-` files beside this one.
 */
import { describe, expect, it } from "vitest";
import { columnStability } from "../../../server/core/members/compression.ts";
import { area } from "../../../server/core/members/section.ts";
import { minimumModulus } from "../../../server/core/wood/design-values.ts";
import { type Case, casesOf, check, readReference, tableOf, titleOf } from "../../reference/cases.ts";
import { adjustCase, type Numbers, weightCase } from "./figures-adjusted.ts";
import {
  bendingCase,
  continuousCase,
  deflectionCase,
  notchCase,
  rafterCase,
  shearCase,
  stabilityCase,
} from "./figures-beams.ts";
import { bearingCase, columnCase, combinedCase, hankinsonCase, netCase } from "./figures-columns.ts";

const FILE = "members";

const RUN: Record<string, (c: Case) => Numbers> = {
  "mem-adj-": adjustCase,
  "mem-span-": continuousCase,
  "mem-bend-": bendingCase,
  "mem-shear-": shearCase,
  "mem-notch-": notchCase,
  "mem-cl-": stabilityCase,
  "mem-defl-": deflectionCase,
  "mem-bear-": bearingCase,
  "mem-col-": columnCase,
  "mem-comb-": combinedCase,
  "mem-hank-": hankinsonCase,
  "mem-net-": netCase,
  "mem-ten-": netCase,
  "mem-weight-": weightCase,
  "mem-emin-": (c) => ({ Emin: minimumModulus(c.given.E, c.given.COV) }),
  "mem-raft-": rafterCase,
};

/** A rule that no check of the program uses; the reason stands in `members/shear.ts`. */
const UNUSED: ReadonlySet<string> = new Set(["mem-notch-004", "mem-notch-005"]);

describe("outside figures", () => {
  const cases = Object.entries(RUN).flatMap(([prefix, run]) =>
    casesOf(FILE, prefix)
      .filter((c) => !UNUSED.has(c.id))
      .map((c) => [titleOf(c), c, run] as const),
  );
  it.each(cases)("%s", (_title, c, run) => check(c, run(c)));
  it("are all covered", () => {
    const all: Case[] = readReference(FILE).cases;
    expect(all.filter((c) => c.agrees).length).toBe(cases.length + UNUSED.size);
  });
});

describe("table of allowable column loads (published, half a percent)", () => {
  const rows = tableOf(FILE, "mem-p55").records;
  it.each(rows.map((r) => [r.row, r.size, r.le_ft, r] as const))(
    "row %s: %s, %s ft",
    (_row, _size, _feet, r) => {
      const found = columnStability(r.Fc_star, r.Emin, (r.le_ft * 12) / 3.5);
      const load = found.factor.value * r.Fc_star * area(3.5, r.size === "4x4" ? 3.5 : 5.5);
      expect(Math.abs(load - r.P_printed) / r.P_printed).toBeLessThanOrEqual(0.005);
      expect(Math.abs(load - r.P_calc)).toBeLessThanOrEqual(0.6);
    },
  );
});
