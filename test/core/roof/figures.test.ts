/**
 * Coverings, decks, sheets, screws and heat against outside figures: every case of the roof in the file. Those of wood
 * and water stand in `reference/roof-and-wood-moisture.test.ts`.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { COVERINGS, type Covering, flatterThan } from "../../../server/core/roof/coverings.ts";
import { boardSpan, boardsFor, panelByThickness, panelOf } from "../../../server/core/roof/deck-spans.ts";
import {
  fieldScrews,
  gableArea,
  SHEET_SCREWS,
  screwRows,
  sheetsAlong,
} from "../../../server/core/roof/sheet-takeoff.ts";
import { shingleExposure } from "../../../server/core/roof/shingle-exposure.ts";
import { EXPANSION, thermalMovement } from "../../../server/core/roof/thermal-movement.ts";
import { type Case, casesOf, check, readReference, tableOf, titleOf } from "../../reference/cases.ts";

const FILE = "roof-and-wood";

/** The file's words for a covering, and which of its two slopes they mean. */
const SLOPE: Record<string, readonly [Covering, "leastSlope" | "plainFrom"]> = {
  "asphalt shingles, single underlayment": ["asphalt-shingles", "plainFrom"],
  "metal panels, lapped seams with sealant": ["ribbed-steel", "leastSlope"],
  "metal panels, standing seam": ["standing-seam", "leastSlope"],
  "metal shingles": ["metal-shingles", "leastSlope"],
  "clay or concrete tile": ["clay-tile", "leastSlope"],
  "wood shingles": ["wood-shingles", "leastSlope"],
  "built-up roof": ["built-up", "leastSlope"],
  slate: ["slate", "leastSlope"],
  "mineral-surfaced roll roofing": ["roll-roofing", "leastSlope"],
};

const RUN: Record<string, (c: Case) => Record<string, unknown>> = {
  "slope-": (c) => {
    const [covering, which] = SLOPE[c.given.covering]!;
    return { rise_per_12: COVERINGS[covering][which]!.value };
  },
  "sheath-board-": (c) => {
    const { thickness, wood } = boardsFor(c.given.spacing_in)!;
    return { thickness_in: thickness, ...(wood ? { Fb_psi: wood.Fb, E_psi: wood.E } : {}) };
  },
  "sheath-panel-": (c) => {
    const panel = panelOf(c.given.rating)!;
    return { allowed: c.given.spacing_in <= (c.given.edge_support ? panel.held : panel.free) };
  },
  "panel-": (c) => {
    const { sheets, over } = sheetsAlong(c.given.edge_in, c.given.cover_in);
    return { panels: sheets, over_in: over };
  },
  "screws-": (c) => {
    const rows = screwRows(c.given.slope_length_in, c.given.spacing_in);
    return { rows, field_screws: fieldScrews(rows, c.given.panels, c.given.screws_per_panel_row) };
  },
  "area-": (c) => {
    const g = c.given;
    const found = gableArea({ rise: g.rise_per_12, run: 12 }, g.run_with_overhang_ft, g.length_ft);
    return {
      factor: found.factor,
      area_ft2: found.area,
      squares: found.squares,
      sheets_4x8_net: found.panels,
    };
  },
  "thermal-": (c) => {
    expect(EXPANSION.steel.value).toBe(c.given.per_F);
    return { change_in: thermalMovement("steel", c.given.length_ft, c.given.change_F) };
  },
};

describe("outside figures of the roof", () => {
  const cases = Object.entries(RUN).flatMap(([prefix, run]) =>
    casesOf(FILE, prefix).map((c) => [titleOf(c), c, run] as const),
  );
  it.each(cases)("%s", (_title, c, run) => check(c, run(c)));
  it("leave only wood and water to others", () => {
    const all: Case[] = readReference(FILE).cases;
    const left = all.filter((c) => c.agrees && !cases.some(([, mine]) => mine.id === c.id));
    expect([...new Set(left.map((c) => c.id.split("-")[0]))].sort()).toEqual([
      "change",
      "density",
      "emc",
      "max",
      "sg",
      "shrink",
      "weight",
    ]);
    expect(readReference(FILE).tables.map((t: { "id-prefix": string }) => t["id-prefix"])).toEqual([
      "shingle-exposure",
      "emc-70",
      "emc",
    ]);
  });
});

describe("exposure of wood shingles (published, IRC Table R905.7.5)", () => {
  it.each(tableOf(FILE, "shingle-exposure").records.map((r) => [r.length_in, r.grade, r] as const))(
    "%s in, grade %s",
    (length, grade, r) => {
      const at = (rise: number) => shingleExposure(length, grade, { rise, run: 12 })?.value;
      expect([at(3), at(3.99)]).toEqual([r.from_3_to_under_4_per_12, r.from_3_to_under_4_per_12]);
      expect([at(4), at(12)]).toEqual([r.from_4_per_12, r.from_4_per_12]);
      expect(at(2.99)).toBeUndefined();
    },
  );
  it("says nothing of what was not seen", () => {
    expect(shingleExposure(16, 1, { rise: 6, run: 12 })).toBeUndefined();
    expect(shingleExposure(20, 1, { rise: 6, run: 12 })).toBeUndefined();
  });
});

describe("decks", () => {
  it("of boards reach in proportion to their thickness from 5/8 in at 24 in (derived, IRC R803.1)", () => {
    expect(boardSpan(0.625)).toMatchObject({ value: 24, status: "published" });
    expect(boardSpan(1)!.value).toBeCloseTo(38.4, 9);
    expect(boardSpan(1)!.status).toBe("derived");
    expect(boardSpan(1.4)!.value).toBe(48);
    expect(boardSpan(1.5)).toMatchObject({ value: 72, plain: 48 });
    expect(boardSpan(0.6)).toBeUndefined();
    expect(boardsFor(72.5)).toBeUndefined();
  });
  it("of boards never reach less for being thicker", () => {
    const thickness = fc.double({ min: 0.625, max: 3, noNaN: true });
    fc.assert(
      fc.property(thickness, thickness, (a, b) => {
        const [thin, thick] = [Math.min(a, b), Math.max(a, b)];
        expect(boardSpan(thick)!.value).toBeGreaterThanOrEqual(boardSpan(thin)!.value);
      }),
    );
  });
  it("of panels take the weakest rating sold in their thickness (memory)", () => {
    expect(panelByThickness(3 / 8)!.rating).toBe("16/0");
    expect(panelByThickness(1 / 2)!.rating).toBe("32/16");
    expect(panelByThickness(18 / 25.4)!.rating).toBe("48/24");
    expect(panelByThickness(1.125)!.rating).toBe("48/24");
    expect(panelByThickness(1 / 4)).toBeUndefined();
    expect(panelOf("60/32")).toBeUndefined();
  });
});

describe("sheets and rows", () => {
  it("cover the edge with none to spare, and no sheet is wider than it covers", () => {
    const edge = fc.double({ min: 1, max: 2000, noNaN: true });
    const cover = fc.double({ min: 6, max: 48, noNaN: true });
    fc.assert(
      fc.property(edge, cover, (e, c) => {
        const { sheets, over, last } = sheetsAlong(e, c);
        expect(sheets * c).toBeGreaterThanOrEqual(e - 1 / 16 - 1e-9);
        expect((sheets - 1) * c).toBeLessThan(e);
        expect(over).toBeLessThanOrEqual(c);
        expect(last).toBeLessThanOrEqual(c);
        expect(last).toBeGreaterThanOrEqual(0);
      }),
    );
  });
  it("leave no sliver for a hair of a sixteenth", () => {
    expect(sheetsAlong(240.05, 16)).toMatchObject({ sheets: 15, last: 16 });
    expect(sheetsAlong(242, 16)).toMatchObject({ sheets: 16, last: 2 });
  });
  it("need no row more where the last step is whole", () => {
    expect(screwRows(120, 24)).toBe(6);
    expect(screwRows(0.3, 0.1)).toBe(4);
  });
  it("know their practice (memory)", () => {
    expect(Object.values(SHEET_SCREWS).map((s) => s.value)).toEqual([24, 9, 1, 24, 12]);
  });
});

describe("pitches", () => {
  it("are compared as such: 4:12 is 1:3 is 2:6", () => {
    for (const [rise, run] of [
      [4, 12],
      [1, 3],
      [0.1, 0.3],
    ] as const) {
      expect(flatterThan({ rise, run }, 4), `${rise}:${run}`).toBe(false);
    }
    expect(flatterThan({ rise: 3.999, run: 12 }, 4)).toBe(true);
  });
  it("of every covering have a source, and a condition only above the least", () => {
    for (const rules of Object.values(COVERINGS)) {
      expect(rules.leastSlope.source).toMatch(/^IRC R905/);
      if (rules.plainFrom) expect(rules.plainFrom.value).toBeGreaterThan(rules.leastSlope.value);
    }
  });
});
