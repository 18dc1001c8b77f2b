/** Outside figures about bolts, screws and nails in joints.yaml; its sources are named at the head of that file. */
import { describe, expect, test } from "vitest";
import { boltLateral } from "../../server/core/fasteners/bolt.ts";
import { adjust, endGrain } from "../../server/core/fasteners/connection-factors.ts";
import { dowelBearing } from "../../server/core/fasteners/dowel-bearing.ts";
import {
  lagLateral,
  lagThreadIn,
  lagWithdrawal,
  lagWithdrawalTested,
} from "../../server/core/fasteners/lag-screw.ts";
import {
  type Lateral,
  penetration,
  type WoodPart,
  type WoodSide,
} from "../../server/core/fasteners/lateral.ts";
import {
  COMMON_NAILS,
  nailBearingLength,
  nailBendingYield,
  nailBendingYieldByRule,
  nailLateral,
  nailWithdrawal,
} from "../../server/core/fasteners/nail.ts";
import { woodScrewLateral, woodScrewWithdrawal } from "../../server/core/fasteners/wood-screw.ts";
import { durationFactor } from "../../server/core/loads/combinations.ts";
import type { Sourced } from "../../server/core/sourced.ts";
import { type Case, casesOf, compareCases, type Row, readReference, tableOf } from "./cases.ts";
import { modesOf } from "./joints-modes.ts";
import { TOPICS } from "./joints-topics.ts";

type Given = Case["given"];
type Figures = Case["expect"];

const wood = (G: number, angle = 0): WoodPart => ({ kind: "wood", G, angle });
const woodSide = (G: number, thickness: number, angle = 0): WoodSide => ({ ...wood(G, angle), thickness });

function bearing({ G }: Given): Figures {
  const at = (D: number, angle: number) => dowelBearing(G, D, angle).value;
  return {
    Fe_par: at(0.5, 0),
    Fe_under_quarter: at(0.2, 0),
    Fe_perp_0_5: at(0.5, 90),
    Fe_perp_0_75: at(0.75, 90),
    Fe_perp_1_0: at(1, 90),
  };
}

function lagPull(g: Given): Figures {
  const thread = g.thread_in_main ?? lagThreadIn(g.D, g.length, g.side);
  const got = lagWithdrawal(g.G, g.D, thread);
  return g.C_eg === undefined
    ? { thread_in_main: thread, W: got.reference.value }
    : { W: adjust(got.reference, [endGrain("lag-withdrawal")]).value };
}

function lagTested(g: Given): Figures {
  const ultimate = lagWithdrawalTested(g.G, g.D, g.thread).value;
  const design = lagWithdrawal(g.G, g.D, g.thread).reference.value;
  return { ultimate, design, ratio: ultimate / design };
}

function nail(g: Given): Figures {
  const got = nailLateral({
    diameter: g.D,
    length: g.length,
    main: wood(g.G),
    side: woodSide(g.G, g.side),
    rounded: g.Fe !== undefined,
  });
  expect(got.bendingYield.value).toBe(g.Fyb);
  return { Z: got.reference.value, mode: got.yields.governs.mode };
}

function shortNail(g: Given): Figures {
  const reach = penetration(g.penetration, g.D, "screw-or-nail");
  const table = {
    symbol: "p/10D",
    value: reach.tableFactor,
    status: "published",
    source: "table note",
  } as const;
  const Z: Sourced = { value: g.Z, status: "published", source: "NDS Table 12N" };
  const wind = durationFactor("W");
  expect(wind.value).toBe(g.C_D);
  return { penetration_factor: reach.tableFactor, Z_adj: adjust(Z, [table, wind]).value };
}

function doubleScrew(g: Given): Figures {
  const got = woodScrewLateral({
    diameter: g.D,
    root: g.D_root,
    main: wood(g.G),
    reach: g.main,
    side: woodSide(g.G, g.side),
    farSide: g.side_far_bearing,
    rounded: false,
  });
  expect(got.bendingYield.value).toBe(g.Fyb);
  const { Z, mode, Z_IIIs } = modesOf(got.yields);
  return { Z, mode, IIIs: Z_IIIs };
}

function nailYield({ D }: Given): Figures {
  return { Fyb_ksi: nailBendingYieldByRule(D).value / 1000, NDS_table_ksi: nailBendingYield(D).value / 1000 };
}

function nailLength(g: Given): Figures {
  const got = nailLateral({ diameter: g.D, length: g.length, main: wood(0.5), side: woodSide(0.5, g.side) });
  const reach = got.penetration!;
  return { penetration: reach.have, ten_D: reach.full, lm: nailBearingLength(reach.have, g.D) };
}

function bolt(g: Given, double: boolean): Figures {
  const got = boltLateral({
    diameter: g.D,
    main: wood(g.G_main, g.angle_main_deg),
    mainThickness: g.main,
    side: woodSide(g.G_side, g.side, g.angle_side_deg),
    ...(double ? { farSide: g.side } : {}),
    bendingYield: { value: g.Fyb, status: "given", source: "case" },
    rounded: false,
  });
  return modesOf(got.yields);
}

/** By what a case's id begins with; the longest that fits. */
const FIGURES: Record<string, (given: Given) => Figures> = {
  "bearing-": bearing,
  "bearing-angle-": (g) => ({ Fe: dowelBearing(g.G, g.D, g.angle_deg, false).value }),
  "withdraw-lag": lagPull,
  "withdraw-lag-ultimate": lagTested,
  "withdraw-screw": (g) => ({ W_per_in: woodScrewWithdrawal(g.G, g.D, 1).perInch.value }),
  "nail-16d": nail,
  "nail-16d-short": shortNail,
  "nail-10d": nail,
  "nail-fyb": nailYield,
  "nail-lm": nailLength,
  "screw-double-root": doubleScrew,
  "bolt-double-": (g) => bolt(g, true),
  "bolt-modes-": (g) => bolt(g, false),
};

describe("steel fasteners, case by case", () => compareCases(casesOf("joints", ...TOPICS.steel), FIGURES));

const file = readReference("joints");
const known = (name: string) => `${name} (${tableOf("joints", name).status})`;
const near = (got: number, want: number, within: number, what: string) =>
  expect(Math.abs(got - want), `${what}: got ${got}, want ${want}`).toBeLessThanOrEqual(within + 1e-9);
const rowsOf = (name: string): [string, Row][] => {
  const table = tableOf("joints", name);
  return table.records.map((r) => [`${name}-${r.row} (${table.status})`, r]);
};

/** Z of the three directions of the printed tables. */
const DIRECTIONS = [
  ["Z_par", 0, 0],
  ["Zs_perp", 0, 90],
  ["Zm_perp", 90, 0],
] as const;

describe(`lag screws through 2 1/2 in of wood, ${known("lag-wood")}`, () => {
  const { given } = file.tables.find((t: Row) => t["id-prefix"] === "lag-wood");
  const lag = (r: Row, main: number, side: number): Lateral =>
    lagLateral({
      diameter: r.D,
      main: wood(r.G, main),
      side: woodSide(r.G, given.side_thickness, side),
      penetration: given.penetration_D * r.D,
    });
  test.each(rowsOf("lag-wood"))("%s", (_title, r) => {
    for (const [column, main, side] of DIRECTIONS) {
      near(lag(r, main, side).reference.value, r[column], 5, column);
    }
    expect(lag(r, 0, 0).yields.governs.mode).toBe(r.mode_par);
  });
});

describe(`lag screws through a steel plate, ${known("lag-steel")}`, () => {
  const { given } = file.tables.find((t: Row) => t["id-prefix"] === "lag-steel");
  const figures = [67, 55, 50, 49, 46, 43, 42, 37, 36, 35];
  const side = (r: Row) => ({
    kind: "plate" as const,
    thickness: r.plate,
    bearing: { value: given.Fe_plate, status: "published" as const, source: "Table 12K" },
  });
  test.each(rowsOf("lag-steel"))("%s", (_title, r) => {
    for (const G of figures) {
      for (const [name, angle] of [
        ["par", 0],
        ["perp", 90],
      ] as const) {
        const got = lagLateral({
          diameter: r.D,
          main: wood(G / 100, angle),
          side: side(r),
          penetration: given.penetration_D * r.D,
        });
        near(got.reference.value, r[`${name}_${G}`], 5, `${name}_${G}`);
      }
    }
  });
});

describe(`lag screws pulled out, ${known("lag-withdrawal")}`, () => {
  test.each(rowsOf("lag-withdrawal"))("%s", (_title, r) => {
    const columns = Object.keys(r).filter((c) => c.startsWith("d_"));
    expect(columns).toHaveLength(11);
    for (const c of columns) {
      near(lagWithdrawal(r.G, Number(c.slice(2)), 1).perInch.value, r[c], 0.75, c);
    }
  });
});

describe(`nails pulled out, ${known("nail-withdrawal")}`, () => {
  test.each(rowsOf("nail-withdrawal"))("%s", (_title, r) => {
    const listed = COMMON_NAILS[r.size];
    if (listed) expect(listed.diameter).toBe(r.D);
    for (const [c, G] of [
      ["G_0_55", 0.55],
      ["G_0_50", 0.5],
      ["G_0_43", 0.43],
    ] as const) {
      near(nailWithdrawal(G, r.D, 1).perInch.value, r[c], 0.6, c);
    }
  });
});

describe(`bolts in single shear, ${known("bolt-single")}`, () => {
  const { given } = file.tables.find((t: Row) => t["id-prefix"] === "bolt-single");
  const at = (r: Row, main: number, side: number): Lateral =>
    boltLateral({
      diameter: r.D,
      main: wood(given.G, main),
      mainThickness: r.main,
      side: woodSide(given.G, r.side, side),
    });
  test.each(rowsOf("bolt-single"))("%s", (_title, r) => {
    for (const [column, main, side] of [...DIRECTIONS, ["Z_perp", 90, 90] as const]) {
      near(at(r, main, side).reference.value, r[column], 5, column);
    }
    expect(at(r, 0, 0).yields.governs.mode).toBe(r.mode_par);
    expect(at(r, 90, 90).yields.governs.mode).toBe(r.mode_perp);
    expect(at(r, 0, 0).bendingYield.value).toBe(given.Fyb);
  });
});
