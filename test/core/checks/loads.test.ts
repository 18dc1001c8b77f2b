import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { findingsFixture } from "../../fixtures.ts";
import { under } from "../../roofed-shed.ts";
import { SHED } from "../../shed.ts";
import { findingsOf, gate, pavilion, UNDER_ROOF } from "./gate.ts";

const PAVILION_SAMPLE = readFileSync(
  new URL("../../../samples/cider-press-pavilion.frame.yaml", import.meta.url),
  "utf8",
);

findingsFixture(
  "site-value-missing: frost and soil where there are piers, at the nearest thing the file has",
  gate({
    site: `
      site: {}
      #@0-4 warning site-value-missing: the frost depth
      #@0-4 warning site-value-missing: the soil
    `,
  }),
);

findingsFixture(
  "site-value-missing: nothing at all of a site with a roof",
  pavilion({
    head: `
      frame: Pavilion
      #@0-5 warning site-value-missing: The file does not give the ground snow load, so what depends on it is not checked. It comes from the building department or the hazard map of the load standard. Write “site: {snow: {ground: 45 psf}}”.
      #@0-5 warning site-value-missing: the wind speed
      #@0-5 warning site-value-missing: the frost depth
      #@0-5 warning site-value-missing: the soil
      format: 1
    `,
    site: "",
  }),
);

findingsFixture(
  "site-value-missing: what belongs to the snow and the wind, and their edition",
  pavilion({
    head: `
      frame: Pavilion
      #@0-5 warning site-value-missing: which edition of ASCE 7
      #@0-5 warning site-value-missing: the risk category
      format: 1
    `,
    site: `
      site:
        snow: {ground: 45 psf}
      # ^^^^ warning site-value-missing: how exposed the roof is
        wind: {speed: 107 mph}
      # ^^^^ warning site-value-missing: the exposure category
        frost-depth: 30 in
        soil: sand
    `,
  }),
);

findingsFixture(
  "site-value-missing: the exposure that snow goes by, where nothing is said of the wind",
  pavilion({
    site: `
      site:
      #@0-4 warning site-value-missing: The file does not give the wind speed and the exposure category (B woods and suburbs, C open, D shore), which the snow on a roof goes by too, so what depends on it is not checked. It comes from the building department or the hazard map of the load standard, the exposure from your own look at the site. Write “wind: {speed: 107 mph, exposure: C}” under “site”.
        snow: {ground: 45 psf, exposure: partially-exposed, thermal: open}
        frost-depth: 30 in
        soil: sand
    `,
  }),
);

findingsFixture(
  "site-value-missing: speed and exposure one by one, where something is said of the wind",
  pavilion({
    site: `
      site:
        snow: {ground: 45 psf, exposure: partially-exposed, thermal: open}
        wind: {flow: clear}
      # ^^^^ warning site-value-missing: The file does not give the wind speed
      # ^^^^ warning site-value-missing: the exposure category (B woods and suburbs, C open, D shore), which wind and the snow on a roof go by, so what depends on it is not checked. It comes from your own look at the site. Write “exposure: C” under “wind”.
        frost-depth: 30 in
        soil: sand
    `,
  }),
);

findingsFixture(
  "site-value-missing: the flow between two open sides of a building with closed ends",
  pavilion({
    site: `
      site:
        snow: {ground: 45 psf, exposure: partially-exposed, thermal: open}
        wind: {speed: 107 mph, exposure: C}
      # ^^^^ warning site-value-missing: whether wind passes freely under the roof, where sides are open
        frost-depth: 30 in
        soil: sand
      siding: {1: {}, 2: {}}
    `,
  }),
);

findingsFixture(
  "site-value-missing: the last of the snow's and the wind's",
  pavilion({
    site: `
      site:
        snow: {ground: 45 psf, exposure: sheltered}
      # ^^^^ warning site-value-missing: whether the roof is heated or open
        wind: {speed: 107 mph, exposure: C}
      # ^^^^ warning site-value-missing: whether wind passes freely under the roof, where sides are open
        frost-depth: 30 in
        soil: sand
    `,
  }),
);

test("site-value-missing: a frame without roof and piers needs nothing of its site", () => {
  const bare = gate({ site: "", piers: "" }).replaceAll("from: pier-top", "from: 0");
  expect(findingsOf(bare).filter(({ finding }) => finding.check === "site-value-missing")).toEqual([]);
});

const COVERED = "deck: {kind: boards, thickness: 1 in}, covering: {kind: standing-seam, coverage: 16 in}";
/** The gate's plate on wall A, a second one on wall B, and a roof over both. */
const covered = (members: string): string =>
  gate({
    ...UNDER_ROOF,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2, B1, B2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A, B], from: 1, to: 2, top: eave}
        ${members}
    `,
  });

findingsFixture(
  "roof-uncarried: a roof without rafters and purlins bears on no timber",
  covered("").replace(
    "joints:\n",
    `roof: {kind: gable, pitch: "9:12", ${COVERED}}\n#@0-4 warning roof-uncarried: No timber of the frame carries this roof\njoints:\n`,
  ),
  { whole: true, only: ["warning"] },
);
findingsFixture(
  "roof-uncarried: a principal rafter in each bent carries it",
  covered("principal: {kind: rafter, section: 6x8, bents: [1, 2]}").replace(
    "joints:\n",
    `roof: {kind: gable, pitch: "9:12", deck: {kind: boards, thickness: 1 1/2 in}}\njoints:\n`,
  ),
  { only: ["error"] },
);

/** Two plates on posts, two bents 9 ft apart, ties at 7 ft. */
const lofty = (floor: string, more = ""): string =>
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2, B1, B2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A, B], from: 1, to: 2, top: eave}
        tie: {kind: tie, section: 8x10, bents: [1, 2], from: A, to: B, top: 7 ft}
        ${more}
    `,
  }).concat(`floors:\n  loft: ${floor}\n`);
const every = (text: string) => createFrameService().open("file:///f.frame.yaml", 1, text).findings;
const floorFindings = (text: string): string[] =>
  every(text)
    .filter(({ finding }) => finding.check === "floor-uncarried")
    .map(({ finding }) => `${finding.level} ${finding.path} ${finding.message}`);

findingsFixture(
  "floor-uncarried: on posts",
  lofty(
    "{on: post, live: 40 psf}\n#            ^^^^ warning floor-uncarried: Floor loft lies on “post”, a post",
  ),
  { whole: true, only: ["warning"] },
);

test.each(["post", "plate"])("floor-uncarried: on %s, which is no row of joists", (on) => {
  expect(floorFindings(lofty(`{on: ${on}, live: 40 psf}`))).toEqual([
    expect.stringMatching(
      `^warning /floors/loft/on Floor loft lies on “${on}”, a ${on}, .* its load is on no timber and in no check`,
    ),
  ]);
});

test("floor-uncarried: one joist alone; an edge beside a timber that is not level", () => {
  const joist = (count: number, girt = ""): string =>
    lofty(
      "{on: joist, live: 40 psf}",
      `joist: {kind: joist, section: 4x6, between: [tie@1, tie@2], from: ${count > 1 ? "2 ft" : "5 ft"}, to: ${count > 1 ? "8 ft" : "5 ft"}, count: ${count}}\n${girt}`,
    );
  expect(floorFindings(joist(1))).toEqual([
    expect.stringContaining("nothing beside joist that its boards could lie on"),
  ]);
  expect(floorFindings(joist(4))).toEqual([]);
  const girt = "        girt: {kind: girt, section: 6x8, walls: [A], from: 1, to: 2, top: 6 ft 8 in}";
  expect(floorFindings(joist(4, girt))).toEqual([
    "note /floors/loft/on The boards of floor loft end at the outer edge of joist.1: the top of girt@A1-A2 beside it lies 4 in lower, so it is taken to carry none of them.",
  ]);
  expect(floorFindings(joist(4, girt.replace("6 ft 8 in", "7 ft")))).toEqual([]);
});

test("floor-uncarried: a second floor in the place of the first is told with its area", () => {
  const joist = (id: string, from: string, to: string, count: number): string =>
    `${id}: {kind: joist, section: 4x6, between: [tie@1, tie@2], from: ${from}, to: ${to}, count: ${count}}\n`;
  const text = lofty(
    "{on: joist, live: 40 psf}\n  store: {on: inner, live: 20 psf}",
    joist("joist", "2 ft", "8 ft", 4).concat(`        ${joist("inner", "3 ft", "7 ft", 3)}`),
  );
  // joists at 24 to 96 in, 4 in wide, and 9 ft from outer face to outer face of the ties: 76 in × 108 in
  expect(floorFindings(text)).toEqual([
    "warning /floors/store/on Floor store lies over floor loft on 57 ft², at the same height: the load of that place is counted twice. Name each timber, and each place, in one of the two only.",
  ]);
});

findingsFixture(
  "roof-weightless: neither deck nor covering",
  pavilion({})
    .replace(/^ *(deck|covering): .*\n/gm, "")
    .replace(
      /^roof:\n/m,
      "roof:\n#@0-4 warning roof-weightless: The roof has neither “deck” nor “covering”\n",
    ),
  { whole: true, only: ["warning"] },
);

findingsFixture(
  "roof-weightless: a deck without a covering",
  pavilion({})
    .replace(/^ *covering: .*\n/gm, "")
    .replace(/^roof:\n/m, "roof:\n#@0-4 warning roof-weightless: The roof has no “covering”\n"),
  { whole: true, only: ["warning"] },
);
findingsFixture(
  "roof-weightless: a covering without a deck or purlins",
  pavilion({})
    .replace(/^ *deck: .*\n/gm, "")
    .replace(/^roof:\n/m, "roof:\n#@0-4 warning roof-weightless: The roof has no “deck” and no purlins\n"),
  { whole: true, only: ["warning"] },
);

const SLIDING = PAVILION_SAMPLE.replace("thermal: open}", "thermal: open, slides: true}");
findingsFixture(
  "snow-held: shingles",
  under(
    SLIDING.replace("covering: {kind: standing-seam, coverage: 16 in}", "covering: {kind: asphalt-shingles}"),
    "slides: true",
    "#@77-81 warning snow-held: An asphalt shingle covering holds its snow, though the site says that it slides: all of it is counted.",
  ),
  { whole: true, only: ["warning"] },
);
test("snow-held: metal sheds it, and then less is counted; on shingles all is (derived)", () => {
  const sloped = (text: string): number => {
    const { evaluation } = createFrameService().open("file:///s.frame.yaml", 1, text);
    return [...(evaluation?.results.frame?.solution.loads.snow?.values() ?? [])][0]?.sloped ?? Number.NaN;
  };
  expect(findingsOf(SLIDING, true).map(({ finding }) => finding.check)).not.toContain("snow-held");
  expect(sloped(SLIDING)).toBeLessThan(sloped(PAVILION_SAMPLE));
  expect(sloped(SLIDING.replace("kind: standing-seam, coverage: 16 in", "kind: wood-shakes"))).toBe(
    sloped(PAVILION_SAMPLE),
  );
});

findingsFixture(
  "timber-weight-unknown: a class without a species and without a weight",
  gate({
    timber: `
      timber:
        frame: {grade: no-1}
      # ^^^^^ warning timber-weight-unknown: The weight of a species that is not named is not known, so 3 timbers
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
      # ^^^^ warning timber-unchecked: The strength of post@A1 was not checked
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
      # ^^^^^ warning timber-unchecked: The strength of plate
    `,
  }),
  { whole: true, only: ["warning"] },
);

test.each(["{grade: no-1, weight: 40 lb/ft³}", "{species: eastern-white-pine, grade: no-1}"])(
  "timber-weight-unknown: %s has a weight",
  (timber) => {
    const found = every(gate({ timber: `\n      timber:\n        frame: ${timber}\n    ` }));
    expect(found.filter(({ finding }) => finding.check === "timber-weight-unknown")).toEqual([]);
  },
);

findingsFixture(
  "site-load-unused: snow where there is no roof",
  gate({
    head: `
      frame: Arbor
      format: 1
      basis: {loads: asce-7-16, risk-category: i}
    `,
    site: `
      site:
        snow: {ground: 50 psf}
      # ^^^^ warning site-load-unused: The site gives snow, and the frame has no roof for it to lie on
        frost-depth: 30 in
        soil: sand
    `,
  }),
  { whole: true, only: ["warning"] },
);

test("site-load-unused: wind meets a frame without a roof", () => {
  const found = findingsOf(SHED, true).map(({ finding }) => finding.check);
  expect(found).not.toContain("site-load-unused");
  const { evaluation } = createFrameService().open("file:///w.frame.yaml", 1, SHED);
  expect(evaluation?.results.frame?.solution.loads.all.map(({ kind }) => kind)).toContain("W");
});

test("site-value-missing: asce-7-22 asks for the winter wind where purlins take the drift, and never takes one by itself", () => {
  const roof = (members: string, snow: string): string =>
    covered(members)
      .replace("loads: asce-7-16", "loads: asce-7-22")
      .replace("thermal: open}", `thermal: open${snow}}`)
      .replace(
        "joints:\n",
        `roof: {kind: gable, pitch: "6:12", deck: {kind: boards, thickness: 1 1/2 in}}\njoints:\n`,
      );
  const PRINCIPAL = "principal: {kind: rafter, section: 6x8, bents: [1, 2]}";
  const both = `${PRINCIPAL}\n        purlin: {kind: purlin, section: 5x7, from: 1, to: 2, spacing: 30 in}`;
  const asks = (text: string): boolean =>
    findingsOf(text).some(
      ({ finding }) => finding.check === "site-value-missing" && finding.message.includes("winter wind"),
    );
  expect(asks(roof(PRINCIPAL, ""))).toBe(false);
  expect(asks(roof(both, ""))).toBe(true);
  expect(asks(roof(both, ", winter-wind: 0.45"))).toBe(false);
  expect(asks(roof(both, "").replace("asce-7-22", "asce-7-16"))).toBe(false);
});
