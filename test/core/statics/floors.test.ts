/** Floors from edge to edge, their weight, and live load on some spans only. Hand statics throughout. */
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { type BasicLoad, basicLoads } from "../../../server/core/statics/basic-loads.ts";
import { type FloorPlan, floorPlans } from "../../../server/core/statics/floor-loads.ts";
import { type Laid, type Region, shareOut } from "../../../server/core/statics/floor-shares.ts";
import { totalOf } from "../../../server/core/statics/line-loads.ts";
import { readFrame } from "../../../server/document/read.ts";
import { SHED } from "../../shed.ts";
import { checked } from "./members.ts";

/** Ties 8 in wide, outer faces 9 ft apart; joists 4 in wide between them at 24 in, their tops level with the ties'. */
const JOIST = "joist: {kind: joist, section: 4x6, between: [tie@1, tie@2], from: 2 ft, to: 8 ft, count: 4}";
const girt = (top: string): string =>
  `girt: {kind: girt, section: 6x8, walls: [A, B], from: 1, to: 2, top: ${top}}`;
const withFloor = (members: readonly string[], floor: string): string =>
  SHED.replace("joints:\n", `${members.map((m) => `  ${m}\n`).join("")}joints:\n`).concat(
    `floors:\n  loft: {${floor}}\n`,
  );

interface Loaded {
  readonly plan: FloorPlan;
  readonly all: readonly BasicLoad[];
  readonly down: (id: string) => number;
}

function loaded(text: string): Loaded {
  const { frame, source } = readFrame(text);
  expect(source.facts, text).toEqual([]);
  const model = buildModel(frame);
  const { all } = basicLoads(model);
  const [plan] = floorPlans(model);
  const down = (id: string): number => {
    const load = all.find((l) => l.id === id);
    expect(load, all.map((l) => l.id).join(", ")).toBeDefined();
    return -totalOf(load!.loads)[2];
  };
  return { plan: plan!, all, down };
}
const live = (text: string): number => loaded(text).down("L/loft");
const gaps = (text: string): string[] => loaded(text).plan.gaps.map((g) => g.what);

describe("a loft from edge to edge [derived]", () => {
  test("boards reach over the ties that the joists end in and over girts level with them: 9 by 10 ft", () => {
    const text = withFloor([girt("tie-top"), JOIST], "on: joist, live: 40 psf");
    expect(live(text)).toBeCloseTo(40 * 9 * 10, 6);
    expect(gaps(text)).toEqual([]);
    const { plan } = loaded(text);
    // the first joist stands at 24 in, the middle of the girt on wall A at 3 in: half the way to each
    const first = plan.patches.find((p) => p.timber.id === "joist.1")!;
    expect(first.reach).toEqual([(3 + 24) / 2, 36].map((v) => expect.closeTo(v, 9)));
  });

  test("spans across the joists are counted onward: from wall A, and from bent 1 under joists from wall to wall", () => {
    const over = "joist: {kind: joist, section: 4x6, between: [girt@A1-A2, girt@B1-B2], count: 4}";
    const [alike, crosswise] = [
      withFloor([girt("tie-top"), JOIST], "on: joist, live: 40 psf"),
      withFloor([girt("tie-top"), over], "on: joist, live: 40 psf"),
    ].map((text) => loaded(text).plan.across.map((v) => v + 0));
    expect(alike).toEqual([0, 1, 0]);
    expect(crosswise).toEqual([1, 0, 0]);
  });

  test("girts that lie lower carry none of it, which is told with how much", () => {
    const text = withFloor([girt("6 ft 8 in"), JOIST], "on: joist, live: 40 psf");
    // from the outer edge of the first joist to that of the last: 22 to 98 in
    expect(live(text)).toBeCloseTo((40 * 9 * 76) / 12, 6);
    const steps = loaded(text).plan.gaps.flatMap((g) => (g.what === "not-level" ? [g.step] : []));
    expect(steps).toEqual([expect.closeTo(-4, 9), expect.closeTo(-4, 9)]);
  });

  test("one joist takes half the way to the level girts beside it", () => {
    const one = JOIST.replace("from: 2 ft, to: 8 ft, count: 4", "from: 5 ft, to: 5 ft, count: 1");
    const text = withFloor([girt("tie-top"), one], "on: joist, live: 40 psf");
    expect(live(text)).toBeCloseTo(40 * 9 * 10, 6);
    const joist = loaded(text).plan.patches.find((p) => p.timber.id === "joist")!;
    expect(joist.reach).toEqual([31.5, 88.5].map((v) => expect.closeTo(v, 9)));
  });

  test("one joist with nothing level beside it carries its own width, and is told", () => {
    const one = JOIST.replace("from: 2 ft, to: 8 ft, count: 4", "from: 5 ft, to: 5 ft, count: 1");
    const text = withFloor([one], "on: joist, live: 40 psf");
    expect(live(text)).toBeCloseTo((40 * 9 * 4) / 12, 6);
    expect(gaps(text)).toEqual(["alone"]);
  });

  test.each(["post", "plate", "knee"])("%s is no row of joists: nothing is loaded, which is told", (on) => {
    const text = withFloor([JOIST], `on: ${on}, live: 40 psf`);
    expect(loaded(text).all.some((l) => l.kind === "L")).toBe(false);
    expect(gaps(text)).toEqual(["no-row"]);
  });

  const three = SHED.replace("2: 9 ft}", "2: 9 ft, 3: 18 ft}")
    .replace("bents: [1, 2], from: A", "bents: [1, 2, 3], from: A")
    .replace("from: 1, to: 2, top: eave", "from: 1, to: 3, top: eave")
    .replace("[A1, A2, B1, B2]", "[A1, A2, A3, B1, B2, B3]");
  const floorsOf = (text: string, members: readonly string[], floors: readonly string[]): string =>
    text
      .replace("joints:\n", `${members.map((m) => `  ${m}\n`).join("")}joints:\n`)
      .concat(`floors:\n${floors.map((f) => `  ${f}\n`).join("")}`);
  const SECOND = JOIST.replace("joist:", "second:");
  const FLOORS = ["loft: {on: joist, live: 40 psf}", "far: {on: second, live: 20 psf}"];

  test("joists of two bays meet on the middle tie: no board twice, none left out", () => {
    const far = SECOND.replace("[tie@1, tie@2]", "[tie@2, tie@3]");
    const { down } = loaded(floorsOf(three, [JOIST, far], FLOORS));
    // ties 1 and 3 have their outer faces at 0 and 18 ft, tie 2 stands in the middle: nine feet for each floor, 76 in wide
    expect(down("L/loft")).toBeCloseTo((40 * 9 * 76) / 12, 6);
    expect(down("L/far")).toBeCloseTo((20 * 9 * 76) / 12, 6);
  });

  test("the far bay is wider: past the near joists its boards reach over the whole of the tie", () => {
    const far = SECOND.replace(
      "[tie@1, tie@2], from: 2 ft, to: 8 ft",
      "[tie@2, tie@3], from: 1 ft, to: 9 ft",
    );
    const { down } = loaded(floorsOf(three, [JOIST, far], FLOORS));
    // boards of 100 in; of the tie, 8 in wide, they take half for 76 in and all of it for the other 24
    expect(down("L/loft")).toBeCloseTo((40 * 9 * 76) / 12, 6);
    expect(down("L/far")).toBeCloseTo((20 * (108 * 100 + 4 * 24)) / 144, 6);
  });

  test("one floor over both bays takes the tie between them once", () => {
    const both = JOIST.replace("between: [tie@1, tie@2]", "between: [tie, tie]");
    const { plan, down } = loaded(floorsOf(three, [both], [FLOORS[0]!]));
    expect(plan.row).toHaveLength(8);
    expect(down("L/loft")).toBeCloseTo((40 * 18 * 76) / 12, 6);
  });

  test("two floors side by side in one bay meet midway between their last joists", () => {
    const near = JOIST.replace("to: 8 ft, count: 4", "to: 4 ft, count: 2");
    const far = SECOND.replace("from: 2 ft", "from: 6 ft").replace("count: 4", "count: 2");
    const { down, all } = loaded(floorsOf(SHED, [near, far], FLOORS));
    // joists at 24, 48, 72 and 96 in, 4 in wide; outer edges at 22 and 98, the middle at 60; 9 ft long with both ties
    expect(down("L/loft")).toBeCloseTo((40 * 9 * 38) / 12, 6);
    expect(down("L/far")).toBeCloseTo((20 * 9 * 38) / 12, 6);
    const on = (id: string): string[] => [
      ...new Set(all.find((l) => l.id === id)!.loads.map(({ timber }) => timber.member)),
    ];
    expect(on("L/loft").sort()).toEqual(["joist", "tie"]);
    expect(on("L/far").sort()).toEqual(["second", "tie"]);
  });

  test("a floor in another floor's place counts twice, which is told with how much", () => {
    const far = SECOND.replace("from: 2 ft", "from: 3 ft").replace(
      "to: 8 ft, count: 4",
      "to: 7 ft, count: 3",
    );
    const text = floorsOf(SHED, [JOIST, far], FLOORS);
    const { frame } = readFrame(text);
    const plans = floorPlans(buildModel(frame));
    // joists at 24 to 96 in and at 36 to 84 between them: both floors cover 22 to 98 in by 9 ft
    expect(plans.flatMap(({ gaps }) => gaps)).toEqual([
      expect.objectContaining({ what: "twice", area: expect.closeTo(76 * 108, 6) }),
    ]);
    expect(live(text)).toBeCloseTo((40 * 9 * 76) / 12, 6);
    expect(loaded(text).down("L/far")).toBeCloseTo((20 * 9 * 76) / 12, 6);
  });

  test("two inches lower it is another floor: neither takes from the other, and nothing is told (common practice, no source)", () => {
    const far = SECOND.replace("from: 2 ft", "from: 3 ft").replace(
      "to: 8 ft, count: 4}",
      "to: 7 ft, count: 3, top: 6 ft 10 in}",
    );
    const text = floorsOf(SHED, [JOIST, far], FLOORS);
    const plans = floorPlans(buildModel(readFrame(text).frame));
    expect(plans.flatMap(({ gaps }) => gaps).filter(({ what }) => what === "twice")).toEqual([]);
    expect(live(text)).toBeCloseTo((40 * 9 * 76) / 12, 6);
  });

  test("what two floors cover twice is told from one square foot on (common practice, no source)", () => {
    const row = (regions: readonly Region[]): Laid => ({
      along: [1, 0, 0],
      across: [0, 1, 0],
      top: 100,
      regions,
      patches: [],
    });
    const told = (side: number): number[] => {
      const whole = row([{ u: [0, 120], v: [0, 120] }]);
      const within = row([{ u: [40, 40 + side], v: [40, 52] }]);
      return shareOut([whole, within]).twice.map(({ area }) => area);
    };
    expect(told(11.9)).toEqual([]);
    expect(told(12.1)).toEqual([expect.closeTo(12 * 12.1, 6)]);
  });

  test("ties themselves, one bay apart, carry boards that lie across them", () => {
    const text = withFloor([], "on: tie, live: 20 psf");
    const { plan } = loaded(text);
    const [tie] = plan.row;
    expect(live(text)).toBeCloseTo((20 * 9 * tie!.span) / 12, 6);
  });

  test("a gap of more than one and a half times the usual spacing is an opening, which is told", () => {
    // ties at 0, 4, 8 and 20 ft: no board spans the last 12 ft
    const text = SHED.replace("2: 9 ft}", "2: 4 ft, 3: 8 ft, 4: 20 ft}")
      .replace("bents: [1, 2], from: A", "bents: [1, 2, 3, 4], from: A")
      .replace("from: 1, to: 2, top: eave", "from: 1, to: 4, top: eave")
      .replace("[A1, A2, B1, B2]", "[A1, A2, A3, A4, B1, B2, B3, B4]")
      .concat("floors:\n  loft: {on: tie, live: 20 psf}\n");
    const { plan } = loaded(text);
    expect(plan.gaps.map((g) => g.what).sort()).toEqual(["alone", "opening"]);
    const between = plan.gaps.flatMap((g) => (g.what === "opening" ? g.between.map((t) => t.id) : []));
    expect(between.sort()).toEqual(["tie@3", "tie@4"]);
  });
});

describe("what a floor weighs", () => {
  const weight = (floor: string): number => {
    const bare = loaded(withFloor([JOIST], "on: post, live: 1 psf")).down("D");
    return loaded(withFloor([JOIST], `on: joist, live: 40 psf${floor}`)).down("D") - bare;
  };
  const AREA = (9 * 76) / 12;
  test.each([
    ["boards of 1 in where nothing is said: 3 psf [memory]", "", 3],
    ["boards of 1 1/2 in: 4.5 psf [memory]", ", deck: {kind: boards, thickness: 1 1/2 in}", 4.5],
    ["panels of 3/4 in: 2.4 psf [memory]", ", deck: {kind: panels, thickness: 3/4 in}", 2.4],
    ["what the file states, in place of the deck", ", deck: {kind: boards, thickness: 2 in}, dead: 8 psf", 8],
  ])("%s", (_, floor, psf) => {
    expect(weight(floor)).toBeCloseTo(psf * AREA, 6);
  });
});

describe("a loft in the wind, without a roof", () => {
  const { solution, members } = checked(withFloor([JOIST], "on: joist, live: 40 psf"));
  const ids = [...new Set(solution.cases.map((c) => c.frameCase.id))];

  test("wind also meets three quarters of the live load: combination 6 of the standard [published]", () => {
    const six = solution.cases.filter((c) => c.frameCase.combination.number === 6);
    expect(six.length).toBe(solution.loads.all.filter((l) => l.kind === "W").length);
    for (const { frameCase } of six) {
      expect(frameCase.combination.text).toBe("D + 0.75 L + 0.45 W");
      expect(frameCase.parts.map(({ load, factor }) => [load.kind, factor])).toEqual([
        ["D", 1],
        ["L", 0.75],
        ["W", 0.45],
      ]);
    }
    expect(ids.filter((id) => id.startsWith("3") || id.startsWith("4"))).toEqual([]);
    expect(members.size).toBeGreaterThan(0);
  });

  test("without a floor it says less than 5, and is left out", () => {
    const plain = checked(SHED).solution.cases.map((c) => c.frameCase.combination.number);
    expect([...new Set(plain)].sort()).toEqual([1, 5, 7]);
  });
});
