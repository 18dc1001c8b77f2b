/**
 * A post's foot on the anchor of its pier: sizes, what is cut, and what it holds each way against hand calculation.
 * Bolts by the yield modes of NDS 12.3.1 (derived; formulas of joints.yaml), F_yb 45,000 psi, G 0.36 of eastern white pine.
 */
import { describe, expect, test } from "vitest";
import { boltLateral } from "../../../server/core/fasteners/bolt.ts";
import { steelBearing } from "../../../server/core/fasteners/dowel-bearing.ts";
import { strapEdgeMoment, strapFlatMoment, strapShear } from "../../../server/core/fasteners/strap-steel.ts";
import { footCuts } from "../../../server/core/joinery/foot/foot-cuts.ts";
import { footHold, rowPush } from "../../../server/core/joinery/foot/foot-hold.ts";
import { footAssembly, heightsOf, type PostFoot } from "../../../server/core/joinery/foot/post-foot.ts";
import { durationFactor } from "../../../server/core/loads/combinations.ts";
import { layoutSticks } from "../../../server/core/shop/layout/layout.ts";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { SHED } from "../../shed.ts";

const STRAP = "strap: {thickness: 3/16 in, width: 2 1/2 in}";
const BOLTS = "bolts: {count: 2, diameter: 1/2 in}";

function modelWith(anchor: string, from = SHED) {
  const text = from.replace(/anchor: \{.*\}\}/, `anchor: {${anchor}}}`);
  const model = createFrameService().open("file:///f.frame.yaml", 1, text).evaluation?.model;
  if (!model) throw new Error("no model");
  return model;
}

function footWith(anchor: string): PostFoot {
  const foot = modelWith(anchor).feet.find(({ id }) => id === "post-foot@A1");
  if (!foot) throw new Error("no foot");
  return foot;
}

const wind = durationFactor("W");
const limits = (foot: PostFoot, way: "down" | "uplift" | "along-bolts" | "across-bolts") =>
  new Map((footHold(foot, wind).ways[way]?.limits ?? []).map((one) => [one.kind, one.value.value]));

describe("steel side plates of 1/4 in, double shear, main member 3 1/2 in of Douglas fir (NDS Table 12G; memory)", () => {
  // printed to 10 lb: Z along and across the grain
  test.each([
    [0.5, 1650, 1030],
    [0.625, 2410, 1230],
    [0.75, 3340, 1370],
  ])("bolt of %s in", (diameter, parallel, across) => {
    const Z = (angle: number): number =>
      boltLateral({
        diameter,
        main: { kind: "wood", G: 0.5, angle },
        mainThickness: 3.5,
        side: { kind: "plate", thickness: 0.25, bearing: steelBearing(58_000, "hot") },
        farSide: 0.25,
      }).reference.value;
    expect(Math.abs(Z(0) - parallel)).toBeLessThanOrEqual(5);
    expect(Math.abs(Z(90) - across)).toBeLessThanOrEqual(5);
  });
});

describe("the flat steel alone (AISC 360 F11, J4; memory), by hand", () => {
  const bar = { thickness: 3 / 16, width: 2.5 };
  test("flat: 33,000 psi × 2.5 in × (3/16 in)² ÷ 4 ÷ 1.67 = 434.2 lb·in", () =>
    expect(strapFlatMoment(bar).value).toBeCloseTo(434.17, 1));
  test("on edge, short: plastic; 33,000 × 3/16 × 2.5² ÷ 4 ÷ 1.67 = 5,789 lb·in", () =>
    expect(strapEdgeMoment(bar, 0.5).value).toBeCloseTo(5789, 0));
  test("on edge, 4 1/2 in: L d/t² = 320, (1.52 − 0.274 × 320 × 33/29,000) × S F_y ÷ 1.67 = 5,482 lb·in", () =>
    expect(strapEdgeMoment(bar, 4.5).value).toBeCloseTo(5481.6, 0));
  test("it grows no stronger with its lever, and a very long one rolls over elastically", () => {
    const all = [1, 5, 20, 22, 24, 40, 80].map((lever) => strapEdgeMoment(bar, lever).value);
    expect(all).toEqual([...all].sort((a, b) => b - a));
    expect(all.at(-1)).toBeGreaterThan(0);
  });
  test("shear: 0.6 × 33,000 × 0.469 in² ÷ 1.5 = 6,188 lb", () =>
    expect(strapShear(bar).value).toBeCloseTo(6187.5, 1));
  test("from 1/4 in on it counts as A36", () =>
    expect(strapFlatMoment({ thickness: 0.25, width: 2 }).value).toBeCloseTo(
      (36_000 * 2 * 0.0625) / 4 / 1.67,
      6,
    ));
});

describe("bolts through straps on both faces", () => {
  const foot = footWith(`kind: embedded-strap, stand-off: 1 in, ${STRAP}, ${BOLTS}`);
  test("places by the NDS: 7 D above the end, 5 D from one to the next, holes 1/16 in wider through the post", () => {
    expect(foot.row && heightsOf(foot.row)).toEqual([3.5, 6]);
    expect(foot.holes.map(({ diameter }) => diameter)).toEqual([9 / 16, 9 / 16]);
    for (const { from, to } of foot.holes)
      expect(Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2])).toBeCloseTo(8, 9);
  });
  test("the post goes straight down on it, and nothing is cut out", () => {
    expect(footAssembly(foot).direction.map((x) => x + 0)).toEqual([0, 0, -1]);
    expect(foot.notches).toEqual([]);
  });
  test("uplift: mode III_s gives 1,251 lb each along the grain; two with C_D 1.6 and C_g a little under 1", () => {
    const [first] = footHold(foot, wind).ways.uplift?.limits ?? [];
    expect(first?.kind).toBe("bolts");
    expect(first?.each?.reference.value).toBeCloseTo(1251.08, 1);
    const whole = 2 * 1251.08 * 1.6;
    expect(first?.value.value).toBeGreaterThan(0.98 * whole);
    expect(first?.value.value).toBeLessThanOrEqual(whole);
  });
  test("wood below the bolts: n F_v′ t s = 2 × 125 × 1.6 psi × 8 in × 2 1/2 in = 8,000 lb (NDS E.3)", () =>
    expect(limits(foot, "uplift").get("row-tear-out")).toBeCloseTo(8000, 0));
  test("straps: 2 × 33,000 × 0.469 ÷ 1.67 = 18,525 lb, 2 × 45,000 ÷ 2 × 3/16 × 1 7/8 in = 15,820 lb", () => {
    expect(limits(foot, "uplift").get("strap-yield")).toBeCloseTo(18525, 0);
    expect(limits(foot, "uplift").get("strap-rupture")).toBeCloseTo(15820, 0);
  });
  test("along the bolts: 434 lb·in ÷ 1 in + 434 lb·in ÷ 4 1/2 in = 531 lb", () =>
    expect(limits(foot, "along-bolts").get("strap-bending")).toBeCloseTo(530.7, 1));
  test("square to them: 4 1/2 in × Z + 7 in × the rest ≤ 2 × 5,482 lb·in of steel; wood splits at 2/3 F_v′ b d_e (d_e/d)²", () => {
    const across = limits(foot, "across-bolts");
    const Z = (across.get("bolts") ?? 0) / 2;
    expect(across.get("strap-bending")).toBeCloseTo(Z + (2 * 5481.6 - 4.5 * Z) / 7, 0);
    // 2/3 × 200 psi × 8 in × 4 in × 1/4 (NDS 3.4-6)
    expect(across.get("split")).toBeCloseTo(1066.7, 1);
  });
  test("down: straps as columns over 1 in, K 1.2: KL/r 22.2, F_e 582,500 psi, 2 × 32,227 psi × 0.469 in² ÷ 1.67 = 18,092 lb (AISC 360 E3; memory)", () => {
    const hold = footHold(foot, wind).ways.down;
    expect(hold?.limits[0].kind).toBe("strap-column");
    expect(hold?.limits[0].value.value).toBeCloseTo(18092, -1);
    expect(hold?.whole).toBe(false);
  });
  test("down on a plate: F_c* of the whole end; C_M 0.91 of green timbers (NDS Table 4D)", () => {
    const on = footWith(`kind: embedded-strap, stand-off: 1 in, plate: 8 in, ${STRAP}, ${BOLTS}`);
    const hold = footHold(on, wind).ways.down;
    expect(hold?.whole).toBe(false);
    const [first] = hold?.limits ?? [];
    expect(first?.times).toBe(64);
    // eastern white pine No.1, posts and timbers: 725 psi in the table used here × 1.6 × 0.91
    expect(first?.value.value).toBeCloseTo(64 * (first?.each?.reference.value ?? 0) * 1.6 * 0.91, 6);
  });
  test("down on a plate beside straps let in: 64 in² less two notches of 1/4 by 2 1/2 in (plane geometry)", () => {
    const letIn = STRAP.replace("2 1/2 in}", "2 1/2 in, let-in: 1/4 in}");
    const on = footWith(`kind: embedded-strap, stand-off: 1 in, plate: 8 in, ${letIn}, ${BOLTS}`);
    const grain = footHold(on, wind).ways.down?.limits.find(({ kind }) => kind === "end-grain");
    expect(grain?.times).toBeCloseTo(64 - 2 * (1 / 4) * 2.5, 9);
  });
  test("straps of 3/8 in are hot rolled: mode III_s with 58,000 × 2.4 ÷ 1.6 = 87,000 psi (NDS Appendix I)", () => {
    const thick = footWith(
      `kind: embedded-strap, stand-off: 1 in, ${STRAP.replace("3/16", "3/8")}, ${BOLTS}`,
    );
    const [first] = footHold(thick, wind).ways.uplift?.limits ?? [];
    // NDS Table 12.3.1A: 2 k_3 D l_s F_em ÷ ((2 + R_e) 3.2); F_em = 11,200 × 0.36, to 50 psi
    const [D, side, Fem, Fyb] = [0.5, 3 / 8, 4050, 45_000];
    const ratio = Fem / 87_000;
    const k =
      -1 + Math.sqrt((2 * (1 + ratio)) / ratio + (2 * Fyb * (2 + ratio) * D ** 2) / (3 * Fem * side ** 2));
    const third = (2 * k * D * side * Fem) / ((2 + ratio) * 3.2);
    const fourth = ((2 * D ** 2) / 3.2) * Math.sqrt((2 * Fem * Fyb) / (3 * (1 + ratio)));
    expect(first?.each?.reference.value).toBeCloseTo(Math.min(third, fourth), 6);
  });
});

test("a knife plate: steel in the middle bears first, 1/2 × 3/16 in × 61,875 psi ÷ 4 = 1,450 lb each; the kerf is sawn through", () => {
  const foot = footWith(
    `kind: post-base, stand-off: 1 in, strap: {thickness: 3/16 in, width: 2 1/2 in, place: in-kerf, height: 9 in}, ${BOLTS}`,
  );
  const [first] = footHold(foot, wind).ways.uplift?.limits ?? [];
  expect(first?.each?.reference.value).toBeCloseTo(1450.2, 1);
  const [kerf, ...more] = foot.notches;
  expect(more).toEqual([]);
  expect((kerf?.to ?? 0) - (kerf?.from ?? 0)).toBeCloseTo(1 / 4, 9);
  expect(kerf?.outline).toEqual([
    [-4, 0],
    [4, 0],
    [4, 9],
    [-4, 9],
  ]);
  const down = footHold(foot, wind).ways.down;
  expect([down?.limits[0].kind, down?.limits[0].times, down?.whole]).toEqual(["bolts", 2, true]);
  const onPlate = footWith(
    `kind: post-base, plate: 8 in, strap: {thickness: 3/16 in, width: 2 1/2 in, place: in-kerf}, ${BOLTS}`,
  );
  expect(footHold(onPlate, wind).ways.down?.limits[0].times).toBeCloseTo(64 - 8 / 4, 9);
});

test("straps let in: two notches as wide as the strap, and so much less wood along the bolts", () => {
  const foot = footWith(
    `kind: embedded-strap, strap: {thickness: 3/16 in, width: 2 1/2 in, let-in: 1/4 in}, ${BOLTS}`,
  );
  expect(foot.notches.map(({ from, to }) => [from, to])).toEqual([
    [3.75, 4],
    [-4, -3.75],
  ]);
  const rows = new Map(footCuts(foot).map((row) => [row.label, row.value]));
  expect(rows.get("notch depth for each strap")).toBe(1 / 4);
  // 8 in less two notches, and both straps
  expect(rows.get("bolt from head to nut")).toBeCloseTo(7.875, 9);
});

test("which way the bolts run decides the faces", () => {
  const along = footWith(`kind: embedded-strap, runs: along-wall, ${STRAP}, ${BOLTS}`);
  expect(along.run.map(Math.abs)).toEqual([1, 0, 0]);
  expect(footWith(`kind: embedded-strap, ${STRAP}, ${BOLTS}`).run.map(Math.abs)).toEqual([0, 1, 0]);
});

test("screws: those of both straps count, in single shear and at most a row along the grain", () => {
  const three = footWith(
    `kind: embedded-strap, ${STRAP}, screws: {count: 3, diameter: 1/4 in, length: 3 in}`,
  );
  const one = footWith(
    `kind: embedded-strap, strap: {thickness: 3/16 in, width: 2 1/2 in, place: one-face}, screws: {count: 3, diameter: 1/4 in, length: 3 in}`,
  );
  expect(limits(three, "uplift").get("screws")).toBeGreaterThan(
    1.9 * (limits(one, "uplift").get("screws") ?? 0),
  );
  expect([three.holes.length, one.holes.length]).toEqual([6, 3]);
});

test("six thin bolts set no more on their straps than the straps bend under: 419 lb × (2 3/4 + 4) in + 246 lb × 5 1/4 in = 4,122 lb·in", () => {
  const from = SHED.replace("post: {kind: post, section: 8x8", "post: {kind: post, section: 12x12");
  const text =
    "kind: embedded-strap, stand-off: 1 in, strap: {thickness: 3/16 in, width: 1 1/2 in}, bolts: {count: 6, diameter: 1/4 in}";
  const foot = modelWith(text, from).feet.find(({ id }) => id === "post-foot@A1");
  if (!foot) throw new Error("no foot");
  const across = limits(foot, "across-bolts");
  expect((across.get("bolts") ?? 0) / 6).toBeCloseTo(419, -0.5);
  expect(across.get("strap-bending")).toBeGreaterThan(1080);
  expect(across.get("strap-bending")).toBeLessThan(1090);
});

describe("rowPush, by hand", () => {
  test("the lowest is filled first: 100 × 2 + 50 × 4 = 400 lb·in", () =>
    expect(rowPush([2, 4], 100, 400)).toBeCloseTo(150, 9));
  test("steel that is strong enough leaves all of them their value", () =>
    expect(rowPush([2, 4], 100, 700)).toBeCloseTo(200, 9));
  test("steel that the lowest alone bends", () => expect(rowPush([2, 4], 1000, 400)).toBeCloseTo(200, 9));
});

describe("wood and thread that are not there", () => {
  const reaches = (length: number, place: string, thick = "1/4 in", D = "1/2 in") =>
    limits(
      footWith(
        `kind: embedded-strap, strap: {thickness: ${thick}, width: 2 in, place: ${place}}, screws: {count: 2, diameter: ${D}, length: ${length} in}`,
      ),
      "uplift",
    ).get("screws") ?? 0;
  test("screws count to the middle from both faces, to the far face from one", () => {
    expect(reaches(12, "both-faces")).toBeCloseTo(reaches(4.25 + 5 / 16, "both-faces"), 6);
    expect(reaches(12, "one-face")).toBeCloseTo(reaches(8.25 + 5 / 16, "one-face"), 6);
    expect(reaches(12, "one-face", "1/16 in", "0.2 in")).toBeCloseTo(
      reaches(8 + 1 / 16, "one-face", "1/16 in", "0.2 in"),
      6,
    );
  });
  test("straps let in past the middle leave nothing for bolts, and no size below nothing", () => {
    const foot = footWith(
      `kind: embedded-strap, strap: {thickness: 3/16 in, width: 2 1/2 in, let-in: 5 in}, ${BOLTS}`,
    );
    expect(footHold(foot, wind).ways.uplift?.limits[0]).toMatchObject({ value: { value: 0 }, none: "wood" });
    const kerf = footWith(
      `kind: embedded-strap, strap: {thickness: 9 in, width: 2 1/2 in, place: in-kerf}, ${BOLTS}`,
    );
    for (const row of [...footCuts(foot), ...footCuts(kerf)]) expect(row.value, row.label).toBeGreaterThan(0);
  });
  test("steel counts no wider than its post", () => {
    const wide = (width: number) =>
      limits(
        footWith(`kind: embedded-strap, strap: {thickness: 3/16 in, width: ${width} in}, ${BOLTS}`),
        "uplift",
      ).get("strap-yield");
    expect(wide(20)).toBeCloseTo(wide(8) ?? 0, 9);
  });
  test("screws draw a strap flat no harder than their thread holds: 2 × W of NDS 12.2-1 × C_D, and what the other takes", () => {
    const along = limits(
      footWith(
        "kind: embedded-strap, stand-off: 1 in, strap: {thickness: 1 in, width: 4 in}, screws: {count: 2, diameter: 1/4 in, length: 3 in}",
      ),
      "along-bolts",
    );
    // thread 2 in less the tip of 5/32 in; G 0.36; flat moment 36,000 × 4 × 1 ÷ 4 ÷ 1.67 over 1 in, under the shear
    const W = 1800 * 0.36 ** 1.5 * 0.25 ** 0.75 * (2 - 5 / 32);
    expect(along.get("withdrawal")).toBeCloseTo(2 * W * 1.6 + 36_000 / 1.67, 0);
  });
});

describe("down, where the file says little", () => {
  const down = (anchor: string) => footHold(footWith(anchor), wind).ways.down;
  test("two straps of 1/32 × 1/2 in over 12 in buckle: KL/r 1,596, 0.877 × 112.3 psi × 1/64 in² ÷ 1.67 × 2 = 1.84 lb", () =>
    expect(
      down("kind: embedded-strap, stand-off: 12 in, strap: {thickness: 1/32 in, width: 1/2 in}")?.limits[0]
        .value.value,
    ).toBeCloseTo(1.84, 2));
  test("a plate in a kerf holds no more than its bolt, and nothing is known without one", () => {
    const plate = "kind: post-base, stand-off: 1 in, strap: {thickness: 1/2 in, width: 2 in, place: in-kerf}";
    expect(down(`${plate}, bolts: {count: 1, diameter: 1/4 in}`)?.limits[0]).toMatchObject({
      kind: "bolts",
      times: 1,
    });
    expect(down(plate)).toBeUndefined();
    const screwed = footHold(footWith(`${plate}, screws: {count: 2, diameter: 1/4 in, length: 3 in}`), wind);
    expect(screwed.lacks).toEqual(["kerf-bolts"]);
  });
  test("what the file states is the whole", () =>
    expect(down("kind: post-base, capacity: {down: 9000 lb, because: the sheet}")?.whole).toBe(true));
  test("a dowel wants no straps and bolts", () =>
    expect(footHold(footWith("kind: dowel"), wind).lacks).toEqual(["dowel"]));
});

describe("what the file does not say", () => {
  test("without bolts and steel only the end grain is known", () => {
    const hold = footHold(footWith("kind: embedded-strap"), wind);
    expect(Object.keys(hold.ways)).toEqual(["down"]);
    expect(hold.lacks).toEqual(["strap", "fasteners"]);
  });
  test("a stated capacity goes before what is reckoned, each way that it names", () => {
    const hold = footHold(
      footWith(
        `kind: embedded-strap, ${STRAP}, ${BOLTS}, capacity: {uplift: 900 lb, because: the maker’s sheet}`,
      ),
      wind,
    );
    expect(hold.ways.uplift?.limits[0].value).toEqual({
      value: 900,
      status: "given",
      source: "the maker’s sheet",
    });
    expect(hold.ways["along-bolts"]?.limits[0].kind).toBe("strap-bending");
  });
  test("a dowel keeps its place alone: 1/2 in, 3 in into the end grain (published: NAVFAC, in foundation.yaml)", () => {
    const foot = footWith("kind: dowel");
    expect(foot.holes.map(({ from, to, diameter }) => [diameter, to[2] - from[2]])).toEqual([[0.5, 3]]);
    expect(footHold(foot, wind).ways.uplift).toBeUndefined();
  });
});

test("the layout marks holes and notches on the post, from its end", () => {
  const model = modelWith(
    `kind: embedded-strap, strap: {thickness: 3/16 in, width: 2 1/2 in, let-in: 3/16 in}, ${BOLTS}`,
  );
  const post = layoutSticks(model).find(({ timber }) => timber.id === "post@A1");
  const marks = post?.joints.find(({ joint }) => joint === "post-foot@A1");
  expect(marks?.holes.map(({ along, across, bolt }) => [along, across, bolt])).toEqual([
    [3.5, 4, true],
    [6, 4, true],
  ]);
  expect(marks?.cuts.map(({ part, opening, depth }) => [part, opening.along, opening.across, depth])).toEqual(
    [
      ["notch", [0, 8], [2.75, 5.25], 3 / 16],
      ["notch", [0, 8], [2.75, 5.25], 3 / 16],
    ],
  );
});

test("a joint that has the name already keeps it", () => {
  const ids = modelWith("kind: embedded-strap", SHED.replace("  post-head: ", "  post-foot: ")).feet.map(
    ({ id }) => id,
  );
  expect(ids).toContain("post-foot@A1.pier");
});
