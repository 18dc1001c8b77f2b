/** Every square foot of a roof lies on a timber, once: purlins by bays, rafters in pieces, all overhangs. Areas by hand. */
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { carrierSpacing } from "../../../server/core/roof/deck-carriers.ts";
import { type BasicLoads, basicLoads } from "../../../server/core/statics/basic-loads.ts";
import { type LineLoad, totalOf } from "../../../server/core/statics/line-loads.ts";
import { readFrame } from "../../../server/document/read.ts";

/** 16 by 20 ft over its plates' outside faces. */
const barn = (members: string, roof: string, siding = ""): string => `frame: Hay barn
format: 1
units: inch
basis: {loads: asce-7-16, risk-category: i}
site:
  snow: {ground: 40 psf, exposure: partially-exposed, thermal: open}
  wind: {speed: 105 mph, exposure: B, flow: clear}
  frost-depth: 36 in
  soil: sand
${siding}timber:
  frame: {species: eastern-white-pine, grade: no-1, seasoning: green, surface: rough}
grid:
  walls: {A: 0, Q: 4 ft, R: 12 ft, B: 16 ft}
  bents: {1: 0, 2: 10 ft, 3: 20 ft}
  levels: {pt: 6 in, tie: 8 ft, eave: 9 ft 6 in, high: 13 ft}
members:
${members}roof:
${roof}  deck: {kind: boards, thickness: 1 in}
  covering: {kind: standing-seam, coverage: 16 in}
`;

const GABLE = `  post:  {kind: post, section: 8x8, at: [A1, A2, A3, B1, B2, B3], from: pt, to: plate}
  plate: {kind: plate, section: 8x10, walls: [A, B], from: 1, to: 3, top: eave}
  cross: {kind: tie, section: 8x12, bents: [1, 2, 3], from: A, to: B, top: tie}
  king:  {kind: king-post, section: 8x8, bents: [1, 2, 3], from: cross, to: ridge}
  ridge: {kind: ridge, section: 8x10, from: 1, to: 3}
`;
const ON_PLATES = GABLE.replace("top: tie", "bottom: eave");
const SHED = `  posta:  {kind: post, section: 8x8, at: [A1, A2, A3], from: pt, to: platea}
  postb:  {kind: post, section: 8x8, at: [B1, B2, B3], from: pt, to: plateb}
  platea: {kind: plate, section: 8x10, walls: [A], from: 1, to: 3, top: eave}
  plateb: {kind: plate, section: 8x10, walls: [B], from: 1, to: 3, top: high}
`;
const principal = (from: string, to = "ridge", keys = ""): string =>
  `  principal: {kind: rafter, section: 7x9, bents: [1, 2, 3], from: ${from}, to: ${to}${keys}}\n`;
const purlin = (keys: string, name = "purlin"): string =>
  `  ${name}: {kind: purlin, section: 5x7, ${keys}, spacing: 30 in}\n`;
const BY_BAYS = purlin("from: 1, to: 2", "west") + purlin("from: 2, to: 3", "east");
const TWO_PIECES = `  beam: {kind: beam, section: 8x8, walls: [Q, R], from: 1, to: 3, top: 140 in}
  queen: {kind: post, section: 8x8, at: [Q1, Q2, Q3, R1, R2, R3], from: cross, to: beam}
  lower: {kind: rafter, section: 7x9, bents: [1, 2, 3], from: plate, to: beam}
  upper: {kind: rafter, section: 7x9, bents: [1, 2, 3], from: beam, to: ridge}
`;
const rafters = (overhang: string): string =>
  `  rafters: {section: 5x8, spacing: 48 in, seat: {kind: birds-mouth}, overhang: {${overhang}}}\n`;
const OVER = "eave: 18 in, rake: 12 in";
const gable = (own = ""): string => `  kind: gable\n  pitch: 6:12\n${own}`;
const shed = (own = ""): string => `  kind: shed\n  high: B\n${own}`;

const FRAMES: readonly (readonly [string, string, number])[] = [
  ["purlins of one length", barn(GABLE + principal("plate") + purlin("from: 1, to: 3"), gable()), 16 * 20],
  ["purlins bay by bay", barn(GABLE + principal("plate") + BY_BAYS, gable()), 16 * 20],
  [
    "purlins that overhang by 6 in",
    barn(GABLE + principal("plate") + purlin("overhang: 6 in"), gable()),
    16 * 21,
  ],
  ["purlins to the rake", barn(GABLE + purlin("from: 1, to: 3"), gable(rafters(OVER))), 19 * 22],
  ["purlins short of the rake", barn(GABLE + purlin("overhang: 0 in"), gable(rafters(OVER))), 19 * 22],
  ["purlins over the first bay", barn(GABLE + purlin("from: 1, to: 2"), gable(rafters(OVER))), 19 * 22],
  [
    "principals under the first bay’s purlins alone",
    barn(GABLE + principal("plate") + purlin("from: 1, to: 2"), gable()),
    16 * 20,
  ],
  ["principals in two pieces", barn(GABLE + TWO_PIECES, gable()), 16 * 20],
  ["principals on ties over the plates", barn(ON_PLATES + principal("cross"), gable()), 16 * 20],
  ["principals from ties under the plates", barn(GABLE + principal("cross"), gable()), 16 * 20],
  ["a shed’s rafters", barn(SHED, shed(rafters(`${OVER}, high: 24 in`))), 19.5 * 22],
  [
    "a shed’s purlins",
    barn(SHED + purlin("from: 1, to: 3"), shed(rafters(`${OVER}, high: 24 in`))),
    19.5 * 22,
  ],
  [
    "a shed’s principals",
    barn(SHED + principal("platea", "plateb", ", overhang: {from: 18 in, to: 24 in}"), shed()),
    19.5 * 20,
  ],
];

const built = (text: string) => {
  const { frame, source } = readFrame(text);
  expect(source.facts).toEqual([]);
  const model = buildModel(frame);
  expect(model.problems).toEqual([]);
  return { model, loads: basicLoads(model) };
};

const loadsOf = ({ all }: BasicLoads, id: string): readonly LineLoad[] => {
  const load = all.find((l) => l.id === id);
  expect(load, all.map((l) => l.id).join(", ")).toBeDefined();
  return load!.loads;
};
const down = (loads: readonly LineLoad[]): number => -totalOf(loads)[2];

/** ASCE 7-16 Eq. 7.3-1: 0.7 C_e 1.0, C_t 1.2, I_s 0.8, 40 psf; C_s 1.0 for what does not slide. */
const SNOW = 0.7 * 1.2 * 0.8 * 40;

describe.each(FRAMES)("%s", (_, text, plan) => {
  const { model, loads } = built(text);

  test(`balanced snow p_s × ${plan} ft² of plan [derived]`, () => {
    expect(down(loadsOf(loads, "S/balanced")) / (SNOW * plan)).toBeCloseTo(1, 9);
  });

  test("the roof weighs its psf × the area along its slope [derived]", () => {
    const { angle } = model.roof!.slopes[0]!;
    const own = new Set(loads.strips.map((s) => s.timber));
    // the first load of each timber is its own weight
    const seen = new Set<unknown>();
    const deck = loadsOf(loads, "D").filter(({ timber }) => {
      const first = !seen.has(timber);
      seen.add(timber);
      return own.has(timber) && !first;
    });
    expect((down(deck) * Math.cos(angle)) / (loads.roof!.total * plan)).toBeCloseTo(1, 9);
  });

  test("every wind case lifts and pushes it as the pressures of its planes say [derived]", () => {
    const { cases } = loads.wind!;
    const carriers = new Set(loads.strips.map((s) => s.timber));
    expect(cases.length).toBeGreaterThanOrEqual(8);
    for (const { id, resultant } of cases) {
      const up = -down(loadsOf(loads, `W/${id}`).filter(({ timber }) => carriers.has(timber)));
      expect(Math.abs(up - resultant.up), id).toBeLessThan(1e-6 * Math.abs(resultant.up) + 1e-6);
    }
  });
});

describe("who carries the deck", () => {
  const byKind = (text: string) => {
    const { loads } = built(text);
    return loadsOf(loads, "S/balanced");
  };

  test("purlins by bays carry what purlins of one length do, half and half [derived]", () => {
    const [, one] = FRAMES[0]!;
    const [, two] = FRAMES[1]!;
    const share = (loads: readonly LineLoad[], ids: readonly string[]): number =>
      down(loads.filter(({ timber }) => ids.includes(timber.id)));
    const [whole, parts] = [byKind(one), byKind(two)];
    for (const n of [1, 2, 3, 4]) {
      const want = share(whole, [`purlin@A.${n}`]);
      expect(want).toBeGreaterThan(100);
      expect(share(parts, [`west@A.${n}`, `east@A.${n}`]) / want).toBeCloseTo(1, 9);
      // they overlap in a scarf about bent 2
      expect(share(parts, [`west@A.${n}`]) / want).toBeCloseTo(0.5, 1);
    }
  });

  test("purlins over one bay: the rafters of the other bay carry its deck, those under them nothing", () => {
    const loads = byKind(FRAMES.find(([name]) => name === "purlins over the first bay")![1]);
    const loaded = new Set(loads.filter((l) => l.timber.kind === "rafter").map((l) => l.timber.origin[0]));
    expect(Math.min(...loaded)).toBeGreaterThan(120 - 2.5);
    expect(down(loads.filter((l) => l.timber.kind === "rafter")) / (SNOW * 19 * 11)).toBeCloseTo(1, 9);
    expect(down(loads.filter((l) => l.timber.kind === "purlin")) / (SNOW * 19 * 11)).toBeCloseTo(1, 9);
  });

  test("principals in two pieces: each its own part of the slope, over its own length", () => {
    const { loads } = built(FRAMES.find(([name]) => name === "principals in two pieces")![1]);
    for (const wall of ["A", "B"]) {
      const own = loads.strips.filter((s) => s.slope.wall === wall);
      expect(own).toHaveLength(6);
      for (const { timber, from, to, width } of own) {
        // from a post's middle to the face of the 8 in beam or ridge, along 6:12
        expect(from).toBeGreaterThan(-4 * 1.12);
        expect(to).toBeLessThan(timber.span + 4 * 1.12);
        expect(width).toBeGreaterThan(60);
      }
    }
  });

  test.each([
    ["A", 18],
    ["B", 24],
  ])("a shed’s roof reaches as far past wall %s as its principals: %s in [derived]", (wall, over) => {
    const { model } = built(FRAMES.find(([name]) => name === "a shed’s principals")![1]);
    const [slope] = model.roof!.slopes;
    expect(wall === "A" ? slope!.eaveOverhang : slope!.peakRun - 192).toBeCloseTo(over, 9);
  });

  test("the last rafter carries the edge, also where the rake was written shorter than the plates reach", () => {
    const long = GABLE.replace("to: 3, top: eave", "to: 3, top: eave, overhang: 12 in");
    const { loads } = built(barn(long, gable(rafters("eave: 18 in, rake: 4 in"))));
    const ends = loads.strips.filter((s) => /@[AB]\.1$/.test(s.timber.id));
    expect(ends).toHaveLength(2);
    for (const { width } of ends) expect(width).toBeGreaterThan(10);
    expect(down(loadsOf(loads, "S/balanced")) / (SNOW * 19 * (20 + 8 / 12))).toBeCloseTo(1, 9);
  });

  test("boards are measured between purlins of the same bay", () => {
    const [narrow, wide] = ["30 in", "60 in"].map((spacing) =>
      purlin("from: 2, to: 3", "east").replace("30 in", spacing),
    );
    const spacing = (east: string): number => {
      const members = GABLE + principal("plate") + purlin("from: 1, to: 2", "west") + east;
      const { model } = built(barn(members, gable()));
      return carrierSpacing(model, model.roof!.slopes[0]!)!;
    };
    expect(spacing(narrow!)).toBeLessThanOrEqual(30);
    expect(spacing(wide!)).toBeGreaterThan(45);
  });
});

describe("a closed building", () => {
  const CLOSED = "siding: {A: {}, B: {}, 1: {}, 3: {}}\n";
  const purlined = barn(GABLE + purlin("from: 1, to: 3"), gable(rafters(OVER)), CLOSED);
  const raftered = barn(GABLE, gable(rafters(OVER)), CLOSED);

  test.each([
    ["purlins", purlined],
    ["rafters", raftered],
  ])(
    "wind under the windward overhang reaches %s: pressure × 18 in × 22 ft, or 12 in × 19 ft [derived]",
    (_, text) => {
      const { loads } = built(text);
      const carriers = new Set(loads.strips.map((s) => s.timber));
      const { cases } = loads.wind!;
      for (const c of cases) {
        const along = c.toward === "+x" || c.toward === "-x";
        // vertical part of a pressure square to the slope: psf × plan area
        const plans = along ? { A: 9.5, B: 9.5 } : c.toward === "+y" ? { A: 1.5 * 22 } : { B: 1.5 * 22 };
        const extra = Object.entries(plans).reduce((sum, [wall, plan]) => {
          const own = c.roof.find((p) => p.plane === wall)!.psf;
          return sum + (own - c.windwardOverhang!) * plan;
        }, 0);
        const up = -down(loadsOf(loads, `W/${c.id}`).filter(({ timber }) => carriers.has(timber)));
        expect(Math.abs(extra), c.id).toBeGreaterThan(50);
        expect(up - c.resultant.up, c.id).toBeCloseTo(extra, 6);
      }
    },
  );
});

test("a ridge’s drift that is wider than the slope ends at the eave, past the plate [memory: 7-16 7.6.1]", () => {
  const over = ", overhang: {from: 36 in, to: 0 in}";
  const text = barn(GABLE + principal("plate", "ridge", over) + purlin("from: 1, to: 3"), gable())
    .replace("6:12", "2:12")
    .replace("ground: 40 psf", "ground: 60 psf");
  const { loads } = built(text);
  // h_d of a fetch of 11 ft under the floor of 20 ft, p_g 60 psf, I_s 0.8; S = 6
  const h = (0.43 * 20 ** (1 / 3) * 70 ** 0.25 - 1.5) * Math.sqrt(0.8);
  const surcharge = (h * (0.13 * 60 + 14)) / Math.sqrt(6);
  const width = (8 / 3) * h * Math.sqrt(6);
  const ps = 0.7 * 1.2 * 0.8 * 60;
  expect(width).toBeGreaterThan(8);
  const want = (1.3 * ps * 11 + surcharge * Math.min(11, width)) * 20;
  expect(down(loadsOf(loads, "S/unbalanced-leeward/A")) / want).toBeCloseTo(1, 6);
});
