/**
 * Piers against the soil under and beside them: capacities by the cases of ground.yaml (bearing derived from the presumptive
 * values, poles by IBC 1807.3.2.1), taken through what the checks themselves call; the frame's reactions by statics.
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { bearingUse } from "../../../server/core/ground/bearing.ts";
import { depthNeeded, sidewaysUse } from "../../../server/core/ground/sideways.ts";
import type { Pier } from "../../../server/core/model/model.ts";
import type { PierCase } from "../../../server/core/statics/frame-results.ts";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { expectFindings, findingsFixture } from "../../fixtures.ts";
import { casesOf } from "../../reference/cases.ts";
import { ROOFED, under } from "../../roofed-shed.ts";
import { findingsOf, fixed } from "./gate.ts";

const STRAP = "anchor: {kind: embedded-strap, stand-off: 1 in}";
const BARS = "rebar: {count: 3, size: 4}";
const DEFECTS = { whole: true, only: ["error", "warning"] } as const;

/** The shed in much wind, on piers of its own. */
const on = (pier: string, soil = "sand"): string =>
  ROOFED.replace("speed: 100 mph, exposure: B", "speed: 115 mph, exposure: C")
    .replace("soil: sand", `soil: ${soil}`)
    .replace(/^ {2}all: .*$/m, `  all: {under: post, ${pier}}`);

const one = (text: string, check: string) => {
  const found = findingsOf(text, true).filter(({ finding }) => finding.check === check);
  expect(found.length, check).toBe(1);
  return found[0]!.finding;
};

const SOUND = on(`kind: tube, diameter: 18 in, depth: 54 in, lateral: doubled, ${STRAP}`);
test("a pier that the soil carries and holds", () => expectFindings(SOUND, DEFECTS));

findingsFixture(
  "pier-bearing: a tube that is too slim for clay",
  under(
    on(`kind: tube, diameter: 16 in, depth: 62 in, lateral: doubled, ${STRAP}`, "clay"),
    "  all: ",
    "#@43-48 error pier-bearing: all@A1 presses the soil with 1,980 psf under D + 0.75 S + 0.45 W (wind toward -x, case B; balanced snow): 1,543 lb from post@A1 and 1,222 lb of its own concrete on 1.4 ft². “soil: clay” carries 1,500 psf by the code’s table, which leaves 873 lb for the post; beyond that the pier settles and the joints above it open. A footing 20 in across and 6 in thick does. The same holds at all@A2, all@B1 and all@B2.",
  ),
  DEFECTS,
);
describe("pier-bearing", () => {
  const clay = on(`kind: tube, diameter: 16 in, depth: 62 in, lateral: doubled, ${STRAP}`, "clay");
  const ratioOf = (text: string): number => {
    const frame = createFrameService().open("file:///p.frame.yaml", 1, text).evaluation?.results.frame;
    return Math.max(
      ...(frame?.piers ?? []).map(
        ({ pier, cases }) => bearingUse(pier, cases, frame?.model.frame.site.soil)?.ratio ?? Number.NaN,
      ),
    );
  };

  test("its fix casts the smallest usual footing that does, no thinner than it reaches past the tube", () => {
    expect(fixed(clay, "pier-bearing", 0, true)).toContain("footing: {diameter: 20 in, thickness: 6 in}");
    const by = (footing: string): number =>
      ratioOf(clay.replace("diameter: 16 in,", `diameter: 16 in, footing: {${footing}},`));
    expect(by("diameter: 18 in, thickness: 6 in")).toBeGreaterThan(1);
    expect(by("diameter: 20 in, thickness: 6 in")).toBeLessThan(1);
  });

  test("and widens the footing that is there, thicker where it then reaches farther", () => {
    const narrow = clay.replace(
      "diameter: 16 in,",
      "diameter: 16 in, footing: {diameter: 17 in, thickness: 1 in},",
    );
    const after = fixed(narrow, "pier-bearing", 0, true);
    expect(after).toMatch(/footing: \{diameter: 20 in, thickness: 6 in\}/);
  });

  test("on gravel the same pier is no finding, and without a soil there is nothing to hold it against", () => {
    const { frame } = createFrameService().open("file:///p.frame.yaml", 1, clay).evaluation!.results;
    const [first] = frame!.piers;
    expect(bearingUse(first!.pier, first!.cases, "clay")!.ratio).toBeGreaterThan(1);
    expect(bearingUse(first!.pier, first!.cases, "gravel")!.ratio).toBeLessThan(1);
    expect(bearingUse(first!.pier, first!.cases, undefined)).toBeUndefined();
  });

  test("nothing is said where the file does not say the soil: that is asked for instead", () => {
    const ids = findingsOf(clay.replace("  soil: clay\n", ""), true).map(({ finding }) => finding.check);
    expect(ids).not.toContain("pier-bearing");
    expect(ids).toContain("site-value-missing");
  });
});

/** A pier in the air: what counts is its concrete and the ground. */
const pier = (shape: Partial<Pier> & Pick<Pier, "top" | "tubeBottom" | "diameter">, kind = "tube"): Pier =>
  ({
    id: "p@A1",
    entry: { kind, lateral: "single", path: "/piers/p" },
    place: { text: "A1" },
    timber: undefined,
    groundLow: 0,
    groundHigh: 0,
    bottom: shape.tubeBottom,
    footing: undefined,
    ...shape,
  }) as unknown as Pier;

const load = (force: PierCase["force"], more: Partial<PierCase> = {}): PierCase => ({
  caseId: "x",
  force,
  dead: 1,
  onlyDead: false,
  wind: false,
  ...more,
});

const cases = casesOf("ground", "");
const given = (id: string) => cases.find((c) => c.id === id)!;

describe("capacity as ground.yaml has it", () => {
  test.each([
    ["pier-4", "clay"],
    ["pier-5", "gravel"],
    ["pier-6", "sand"],
  ] as const)(
    "%s: what is left for the post presses with the whole of the soil's value (derived)",
    (id, soil) => {
      const { given: g, expect: want } = given(id);
      const tube = pier({ top: [0, 0, 0], tubeBottom: -12 * g.height_ft, diameter: g.diameter_in });
      expect(bearingUse(tube, [load([0, 0, want.net_lb])], soil)!.ratio).toBeCloseTo(1, 6);
      expect(bearingUse(tube, [load([0, 0, want.net_lb])], soil)!.pressure).toBeCloseTo(g.bearing_psf, 4);
    },
  );

  test.each([
    ["pole-3", "sand"],
    ["pole-5", "clay"],
  ] as const)(
    "%s: the depth that it needs is the one at which all is used (IBC 1807.3.2.1, derived)",
    (id, soil) => {
      const { given: g, expect: want } = given(id);
      const tube = pier({
        top: [0, 0, 12 * g.h_ft],
        tubeBottom: -12 * want.d_ft,
        diameter: 12 * g.b_ft,
      });
      const use = sidewaysUse(tube, [load([g.P_lb, 0, 100])], soil)!;
      expect(use.ratio).toBeCloseTo(1, 5);
      expect(use.kind === "pole" && depthNeeded(use)).toBeCloseTo(12 * want.d_ft, 4);
    },
  );

  test("by hand: 12 in tube, 36 in deep, 12 in above sand: S_1 = 150 × 3/3 = 150 psf, 150 × 1 × 9 ÷ (2.34 × 4.09) lb", () => {
    const tube = pier({ top: [0, 0, 12], tubeBottom: -36, diameter: 12 });
    expect(sidewaysUse(tube, [load([0, 50, 0])], "sand")!.holds).toBeCloseTo(1350 / (2.34 * 4.09), 6);
  });

  test("by hand, 15 ft deep: bearing grows down to 12 ft only (IBC 1807.3.2.1, memory), 150 × 12/3 × 1 × 15 ÷ 2.34 lb", () => {
    const tube = pier({ top: [0, 0, 0], tubeBottom: -180, diameter: 12 });
    expect(sidewaysUse(tube, [load([0, 50, 0])], "sand")!.holds).toBeCloseTo((600 * 15) / 2.34, 6);
  });

  test("wind past the doubled value goes before a push past the single one that uses more of it (IBC 1806.3.4, memory)", () => {
    const single = 1350 / (2.34 * 4.09);
    const entry = { kind: "tube", lateral: "doubled", path: "/piers/p" } as Pier["entry"];
    const tube = pier({ top: [0, 0, 12], tubeBottom: -36, diameter: 12, entry });
    // 1.5 of 1 and 2.1 of 2: only the second is beyond twice the tabled value
    const both = [
      load([1.5 * single, 0, 100], { caseId: "snow" }),
      load([2.1 * single, 0, 100], { caseId: "wind", wind: true }),
    ];
    for (const order of [both, both.toReversed()]) {
      const use = sidewaysUse(tube, order, "sand")!;
      expect(use.caseId).toBe("wind");
      expect(use.ratio).toBeCloseTo(1.05, 9);
    }
  });
});

describe("what counts sideways", () => {
  const tube = (more: object): Pier => {
    const made = pier({ top: [0, 0, 8], tubeBottom: -50, diameter: 16 });
    return { ...made, entry: { ...made.entry, ...more } };
  };
  const wind = load([100, 0, 0], { wind: true });
  test("the doubled value counts with wind, not for what pushes all winter (IBC 1806.3.4: short-term loads; memory)", () => {
    const [single, twice] = [tube({}), tube({ lateral: "doubled" })];
    const held = (p: Pier, each: PierCase): number => sidewaysUse(p, [each], "sand")!.holds;
    expect(held(twice, wind)).toBeCloseTo(2 * held(single, wind), 9);
    expect(held(twice, load([100, 0, 0]))).toBeCloseTo(held(single, wind), 9);
  });
  test("a footing counts with its depth where bars tie it on", () => {
    const footing = { footing: { diameter: 24, thickness: 12 }, bottom: -62 };
    const loose = { ...tube({}), ...footing };
    const tied = { ...tube({ rebar: { path: "", count: 3, size: 4 } }), ...footing };
    const depth = (p: Pier): number | false => {
      const use = sidewaysUse(p, [wind], "sand")!;
      return use.kind === "pole" && use.depth;
    };
    expect([depth(loose), depth(tied)]).toEqual([50, 62]);
  });
  test("a pad holds by what rubs under it: 0.25 of the dead load and its weight on sand (published)", () => {
    const pad = pier({ top: [0, 0, 0], tubeBottom: -12, diameter: 24 }, "pad");
    const dead = load([0, 0, 1000], { onlyDead: true });
    const weight = 4 * 150;
    const snow = load([100, 0, 5000]);
    expect(sidewaysUse(pad, [dead, snow], "sand")!.holds).toBeCloseTo(0.25 * (1000 + weight), 9);
    const lifted = load([100, 0, -200], { dead: 0.6, wind: true });
    expect(sidewaysUse(pad, [dead, lifted], "sand")!.holds).toBeCloseTo(0.25 * (0.6 * weight - 200), 9);
    // clay: 130 psf over 4 ft², but no more than half of the weight (memory)
    expect(sidewaysUse(pad, [dead, snow], "clay")!.holds).toBeCloseTo(520, 9);
    expect(sidewaysUse(pad, [dead, lifted], "clay")!.holds).toBeCloseTo(0.5 * (0.6 * weight - 200), 9);
  });
});

describe("a pad whose load stands off its middle (pressures: test/core/ground/pad-pressure.test.ts)", () => {
  test("the push at its top times its height over the load: 100 lb × 24 in ÷ (1000 + 1200) lb", () => {
    const pad = pier({ top: [0, 0, 12], tubeBottom: -12, diameter: 24 }, "pad");
    const use = bearingUse(pad, [load([100, 0, 1000])], "sand")!;
    expect(use.off).toEqual([expect.closeTo(2400 / 2200, 9), 0]);
    expect(use.pressure).toBeCloseTo(550 * (1 + (6 * use.off[0]) / 24), 9);
    // each way by its own part of the push
    const both = bearingUse(pad, [load([-100, 100, 1000])], "sand")!;
    expect(both.off).toEqual([expect.closeTo(2400 / 2200, 9), expect.closeTo(2400 / 2200, 9)]);
    expect(both.push).toBeCloseTo(Math.SQRT2 * 100, 9);
  });
  test("1,000 lb on 24 in, 6.0 in and 5.76 in off: 1,442 psf on sand's 2,000", () => {
    // 12 in high: 500 and 480 lb; the exact figures by a plane fitted over small squares (derived)
    const pad = pier({ top: [0, 0, 0], tubeBottom: -12, diameter: 24 }, "pad");
    const use = bearingUse(pad, [load([500, 480, 1000 - 600])], "sand")!;
    expect(use.pressure).toBeCloseTo(1442, 0);
    expect(use.ratio).toBeLessThan(1);
    expect(bearingUse(pad, [load([550, 550, 400])], "sand")!.pressure).toBeCloseTo(1852, 0);
  });
  describe("pads of one entry under posts that bring unlike loads", () => {
    const padded = (width: string): string =>
      readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8").replace(
        /^ {2}all: .*$/m,
        `  all: {under: post, kind: pad, width: ${width}, depth: 40 in, ${STRAP}}`,
      );
    test("where one tips, the size that is proposed does under all of them", () => {
      expect(one(padded("24 in"), "pier-bearing").message).toMatch(/^all@A1 tips .* A pad of 36 in does\./);
      const mended = fixed(padded("24 in"), "pier-bearing", 0, true);
      expect(mended).toContain("width: 36 in");
      expect(findingsOf(mended, true).map(({ finding }) => finding.check)).not.toContain("pier-bearing");
    });
    test("one that stands and presses at its edge says how far off its middle the load is", () => {
      const { message, value } = one(padded("34 in"), "pier-bearing");
      expect(message).toMatch(
        /^all@A2 presses the soil at its edge with 2,143 psf under .*: 352 lb from post@A2 and 3,197 lb of its own concrete stand 1\/8 in off its middle along the walls and 12 1\/4 in along the bents, because 820 lb push at its top, 53 1\/8 in above its base\./,
      );
      expect(message).not.toContain("leaves");
      // by hand: 2 N over three times what is left to the edge (derived); across it, next to nothing
      const [load, off] = [352 + 3197, (820 * 53.125) / (352 + 3197)];
      expect(value).toBeCloseTo((2 * load) / (3 * (34 / 12) * ((17 - off) / 12)), -2);
    });
  });
  test("a pad that tips says so, and how wide one would have to be", () => {
    const finding = one(on(`kind: pad, width: 24 in, depth: 34 in, ${STRAP}`), "pier-bearing");
    expect(finding.message).toContain(
      "all@A1 tips under 0.6 D + 0.6 W (wind toward -x, case A): a push of 514 lb at its top, with 335 lb from post@A1 and 1,260 lb of its own on it, puts the load 13 9/16 in off its middle along the walls and 5/16 in along the bents, and its edge is 12 in away. A pad of 30 in does.",
    );
    expect(fixed(on(`kind: pad, width: 24 in, depth: 34 in, ${STRAP}`), "pier-bearing", 0, true)).toContain(
      "width: 30 in",
    );
  });
});

const SINGLE = on(`kind: tube, diameter: 16 in, depth: 50 in, ${STRAP}`);
findingsFixture(
  "pier-pushed-over: between the single and the doubled value it is a warning",
  under(
    SINGLE,
    "  all: ",
    "#@57-62 warning pier-pushed-over: post@A1 pushes all@A1 sideways with 517 lb under D + 0.6 W (wind toward -x, case B), 8 in above the ground, more than the 421 lb that “soil: sand” holds beside a pier 16 in across and 50 in deep; the doubled value, 842 lb, holds only where half an inch of movement at the ground does no harm: then write “lateral: doubled”. Beyond that it leans. A depth of 56 in instead of 50 in, or a tube of 20 in, holds it. The same holds at all@A2, all@B1 and all@B2.",
  ),
  DEFECTS,
);
describe("pier-pushed-over", () => {
  test("each of its three fixes holds it", () => {
    expect(fixed(SINGLE, "pier-pushed-over", 0, true)).toContain("diameter: 16 in, depth: 56 in");
    expect(fixed(SINGLE, "pier-pushed-over", 1, true)).toContain("diameter: 20 in, depth: 50 in");
    expect(fixed(SINGLE, "pier-pushed-over", 2, true)).toContain("lateral: doubled");
    const said = SINGLE.replace("depth: 50 in,", "depth: 50 in, lateral: single,");
    expect(fixed(said, "pier-pushed-over", 2, true)).toContain("depth: 50 in, lateral: doubled,");
  });
  test("where neither a depth nor a tube does alone, both together do", () => {
    const slim = on(`kind: tube, diameter: 8 in, depth: 34 in, ${STRAP}`, "clay");
    expect(one(slim, "pier-pushed-over").message).toMatch(/A tube of \S+ in dug \S+ deep holds it\./);
    expect(fixed(slim, "pier-pushed-over", 0, true)).not.toMatch(/diameter: 8 in|depth: 34 in/);
  });
  test("with the file's word for the doubled value it is none", () =>
    expectFindings(SINGLE.replace("depth: 50 in,", "depth: 50 in, lateral: doubled,"), DEFECTS));
  test("beyond the doubled value it is an error, whatever the file says", () => {
    const shallow = (lateral: string) =>
      one(on(`kind: tube, diameter: 16 in, depth: 36 in, lateral: ${lateral}, ${STRAP}`), "pier-pushed-over");
    for (const lateral of ["single", "doubled"]) {
      const finding = shallow(lateral);
      expect(finding.level).toBe("error");
      expect(finding.value).toBeGreaterThan((lateral === "single" ? 2 : 1) * finding.limit!);
    }
    expect(shallow("single").message).toMatch(/; the doubled value would hold \d+ lb only\. Beyond/);
    expect(shallow("doubled").message).toMatch(/36 in deep, doubled already\. Beyond/);
  });
  test("a footing that bars tie on counts, one without does not and is told so", () => {
    const footing = "footing: {diameter: 24 in, thickness: 12 in}";
    const loose = on(`kind: tube, diameter: 16 in, depth: 50 in, ${footing}, ${STRAP}`);
    expect(one(loose, "pier-pushed-over").message).toContain(
      "50 in deep (no bars tie its footing on, so that does not count);",
    );
    expectFindings(loose.replace(`${STRAP}}`, `${STRAP}, ${BARS}}`), DEFECTS);
  });
  test("a pad slides", () => {
    const finding = one(on(`kind: pad, width: 30 in, depth: 8 in, ${STRAP}`), "pier-pushed-over");
    expect(finding.level).toBe("error");
    expect(finding.message).toMatch(/with which the [\d,]+ lb on it hold a pad on “soil: sand”: it slides/);
    expect(finding.fixes()).toEqual([]);
  });
  test("a pad that the wind lifts is held by nothing, and that is said in words", () => {
    // 200 lb of concrete, 0.6 of it against 454 lb of lift (statics of the shed)
    const { message } = one(on(`kind: pad, width: 12 in, depth: 8 in, ${STRAP}`), "pier-pushed-over");
    expect(message).toMatch(
      /^post@A1 pushes all@A1 sideways with \d+ lb under 0\.6 D \+ 0\.6 W \(.*\): the wind takes all load off the pad at the same time, and nothing holds it on “soil: sand”\. It slides/,
    );
    expect(message).not.toContain("0 lb");
  });
});

// IRC R403.1.1 (published): 2 in past the tube at least
const footed = (size: string, soil?: string): string =>
  on(`kind: tube, diameter: 18 in, depth: 54 in, lateral: doubled, footing: {${size}}, ${STRAP}`, soil);
findingsFixture(
  "footing-narrow: narrower than its tube",
  under(
    footed("diameter: 16 in, thickness: 6 in", "gravel"),
    "  all: ",
    "#@102-107 error footing-narrow: The footing of all@A1 is 16 in across, narrower than its tube of 18 in, which hangs over it all round. Cast it 22 in across, so that it reaches 2 in past the tube, or leave it out. The same holds at all@A2, all@B1 and all@B2.",
  ),
  DEFECTS,
);
findingsFixture(
  "footing-narrow: less than 2 in past it",
  under(
    footed("diameter: 20 in, thickness: 6 in", "gravel"),
    "  all: ",
    "#@102-107 warning footing-narrow: The footing of all@A1 is 20 in across and reaches 1 in past its tube of 18 in: a tube never stands in the very middle, and hangs over it. The code asks for 2 in. Cast it 22 in across.",
  ),
  DEFECTS,
);
describe("footing-narrow", () => {
  test("2 in past the tube are enough, and its fix gives them", () => {
    expectFindings(footed("diameter: 22 in, thickness: 6 in"), DEFECTS);
    expect(fixed(footed("diameter: 16 in, thickness: 6 in", "gravel"), "footing-narrow", 0, true)).toContain(
      "footing: {diameter: 22 in, thickness: 6 in}",
    );
    expect(one(footed("diameter: 18 in, thickness: 6 in"), "footing-narrow").message).toContain(
      "no wider than its tube",
    );
  });
  test("a footing that the soil asks for reaches past the tube, however narrow the one that is there", () => {
    // a post of 1,543 lb needs 1.8 ft² of clay, a round 18 in across; the tube of 18 in asks for 22 in
    const weak = footed("diameter: 8 in, thickness: 6 in", "clay");
    const after = fixed(weak, "pier-bearing", 0, true);
    expect(Number(/footing: \{diameter: (\d+) in/.exec(after)?.[1])).toBeGreaterThanOrEqual(22);
    expect(findingsOf(after, true).map(({ finding }) => finding.check)).not.toContain("footing-narrow");
  });
});

// IRC R403.1.1 (published): no thinner than it reaches past the tube, 6 in at least
findingsFixture(
  "footing-thin: a wide footing that breaks off at its tube",
  under(
    on(
      `kind: tube, diameter: 18 in, depth: 54 in, lateral: doubled, footing: {diameter: 40 in, thickness: 6 in}, ${STRAP}`,
    ),
    "  all: ",
    "#@120-124 error footing-thin: The footing of all@A1 is 6 in thick and reaches 11 in past its tube: thinner than it reaches, it breaks off at the tube’s edge, and only the tube stands on the soil. Cast it 12 in thick, or narrower. The same holds at all@A2, all@B1 and all@B2.",
  ),
  DEFECTS,
);
test("footing-thin: as thick as it reaches is enough, and less than 6 in never is", () => {
  expectFindings(footed("diameter: 40 in, thickness: 11 in"), DEFECTS);
  const thin = one(footed("diameter: 22 in, thickness: 4 in"), "footing-thin");
  expect(thin.limit).toBe(6);
  expect(thin.message).toMatch(
    /is 4 in thick, less than the 6 in that the code asks of any footing: .*Cast it 6 in thick\./,
  );
  expect(fixed(footed("diameter: 40 in, thickness: 6 in"), "footing-thin", 0, true)).toContain(
    "footing: {diameter: 40 in, thickness: 12 in}",
  );
});
test("footing-thin in millimetres: 150 mm are what one casts for 6 in, and pass", () => {
  const kayak = readFileSync("samples/kayak-shelter.frame.yaml", "utf8").replace(
    "diameter: 400, depth: 1150,",
    "diameter: 400, depth: 1150, footing: {diameter: 700, thickness: 145},",
  );
  const { message } = one(kayak, "footing-thin");
  expect(message).toMatch(/is 145 mm thick, less than the 150 mm that .* Cast it 150 mm thick\./);
  const after = fixed(kayak, "footing-thin", 0, true);
  expect(after).toContain("thickness: 150");
  expect(findingsOf(after, true).map(({ finding }) => finding.check)).not.toContain("footing-thin");
});
