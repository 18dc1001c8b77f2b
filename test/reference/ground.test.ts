/** Every outside figure about ground and concrete in ground.yaml; its sources are named at the head of that file. */
import { describe, expect, test } from "vitest";
import { padFor, soilBearing } from "../../server/core/ground/bearing.ts";
import {
  type BagSize,
  bagsFor,
  bagsPerCubicYard,
  bagYield,
  CONCRETE_WEIGHT,
  concreteWeight,
  roundArea,
  tubeVolume,
} from "../../server/core/ground/concrete.ts";
import {
  cornerCover,
  faceCover,
  LEAST_SIDE_COVER,
  USUAL_SIDE_COVER,
} from "../../server/core/ground/cover.ts";
import {
  freeCapacity,
  freeDepth,
  heldDepth,
  lateralAtBottom,
  lateralAtThird,
  poleFactor,
} from "../../server/core/ground/embedded-pole.ts";
import { leastFootingDepth } from "../../server/core/ground/frost.ts";
import { pierLayout, slopeOver, steppedPosts, tapeBetween } from "../../server/core/ground/layout.ts";
import {
  BARS,
  type BarNumber,
  barWeight,
  concreteCover,
  largestCage,
} from "../../server/core/ground/rebar.ts";
import { FEDERAL_BEARING, SOILS, type SoilValues } from "../../server/core/ground/soil.ts";
import { upliftHold } from "../../server/core/ground/uplift.ts";
import { type Case, casesOf, compareCases, readReference, tableOf } from "./cases.ts";

const PSF_PER_KPA = 20.8854342;

type Given = Case["given"];
type Figures = Case["expect"];

const bar = (name: string): BarNumber => Number(name.replace("No.", "")) as BarNumber;

function soil({ soil: title }: Given): Figures {
  const found: SoilValues = Object.values(SOILS).find((s) => s.title === title)!;
  return {
    bearing_psf: found.bearing.value,
    lateral_psf_per_ft: found.lateral.value,
    ...(found.sliding.kind === "friction"
      ? { friction: found.sliding.coefficient.value }
      : { cohesion_psf: found.sliding.psf.value }),
  };
}

function federalSoil(): Figures {
  return {
    bearing_psf: FEDERAL_BEARING.untested.value,
    sandy_gravel_psf: FEDERAL_BEARING.sandyGravel.value,
    sand_psf: FEDERAL_BEARING.sand.value,
  };
}

function pier(g: Given): Figures {
  const area = roundArea(g.diameter_in);
  const weight = concreteWeight(tubeVolume(g.diameter_in, g.height_ft));
  expect(g.w_pcf).toBe(CONCRETE_WEIGHT.value);
  const got = soilBearing(area, weight, g.bearing_psf);
  return { area_ft2: area, gross_lb: got.gross, net_lb: got.net };
}

function pad(g: Given): Figures {
  const got = padFor(g.load_lb, g.bearing_psf);
  return { area_ft2: got.area, square_in: got.square, round_in: got.round };
}

function pole(g: Given, want: Figures): Figures {
  const p = {
    load: g.P_lb,
    height: g.h_ft,
    breadth: g.b_ft,
    lateral: g.lateral_psf_per_ft * (g.increase ?? 1),
    factor: g.isolated_factor ?? 1,
  };
  if (g.depth_ft !== undefined) return { A_ft: poleFactor(p, lateralAtThird(p, g.depth_ft)) };
  const depth = "S3_kPa" in want ? heldDepth(p) : freeDepth(p);
  const s1 = lateralAtThird(p, depth);
  return {
    d_ft: depth,
    A_ft: poleFactor(p, s1),
    ...("S3_kPa" in want
      ? { S3_kPa: lateralAtBottom(p, depth) / PSF_PER_KPA, S1_kPa: s1 / PSF_PER_KPA }
      : {}),
  };
}

const COVERS: Record<string, readonly [Parameters<typeof concreteCover>[0], readonly BarNumber[]]> = {
  "formed, exposed to earth or weather, No.6 to No.18": ["exposed", [6, 7, 8, 9, 10, 11, 14, 18]],
  "beam or column not exposed": ["sheltered-beam", [3, 5, 11, 18]],
  "slab, wall, joist not exposed, No.11 and smaller": ["sheltered-slab", [3, 5, 9, 11]],
};

function cover(g: Given): Figures {
  const [where, bars] = COVERS[g.case]!;
  const all = new Set(bars.map((b) => concreteCover(where, b).value));
  return { cover_in: all.size === 1 ? [...all][0] : Number.NaN };
}

function cage(g: Given): Figures {
  const where = g.formed_tube ? "exposed" : "against-earth";
  return {
    cover_in: concreteCover(where, bar(g.bar)).value,
    cage_outside_in: largestCage(g.diameter_in, where, bar(g.bar)),
  };
}

function bag({ bag_lb }: Given, want: Figures): Figures {
  return {
    yield_ft3: bagYield(bag_lb as BagSize).value,
    ...("bags_per_yd3" in want ? { bags_per_yd3: bagsPerCubicYard(bag_lb as BagSize) } : {}),
  };
}

function uplift(g: Given): Figures {
  const got = upliftHold(g.diameter_in, g.height_ft, g.dead_on_post_lb, g.uplift_lb);
  return { pier_lb: got.pier, held_lb: got.held, short_lb: got.short, ok: got.short === 0 };
}

function side({ tube_in, timber_in }: Given): Figures {
  const strap = faceCover(tube_in, timber_in);
  const corner = cornerCover(tube_in, timber_in);
  return {
    strap_cover_in: strap,
    corner_cover_in: corner,
    timber_inside_tube: corner >= 0,
    strap_cover_2_ok: strap >= LEAST_SIDE_COVER,
    strap_cover_3_ok: strap >= USUAL_SIDE_COVER,
  };
}

function step(g: Given): Figures {
  if (g.run_ft !== undefined) {
    const got = slopeOver(g.run_ft, g.fall_percent);
    return { fall_in: got.fall, angle_deg: got.angle, slope_length_ft: got.along };
  }
  const got = steppedPosts(g.soffit_level_in, g.pier_top_levels_in);
  return { post_lengths_in: got.lengths, fall_in: got.fall };
}

function grid(g: Given): Figures {
  const got = pierLayout({ x: g.bays_x, y: g.bays_y }, { x: g.spacing_x_in, y: g.spacing_y_in });
  return {
    x_in: got.x,
    y_in: got.y,
    overall_diagonal_in: got.overallDiagonal,
    bay_diagonal_in: got.bayDiagonal,
    piers: got.piers,
  };
}

function diagonal(g: Given): Figures {
  const { tape, plan } = tapeBetween(g.dx_in, g.dy_in, g.dz_in);
  return { tape_in: tape, plan_in: plan, reads_long_by_in: tape - plan };
}

/** By what a case's id begins with; the longest that fits. */
const FIGURES: Record<string, (given: Given, want: Figures) => Figures> = {
  "soil-": soil,
  "soil-hud": federalSoil,
  "pier-": pier,
  "pad-": pad,
  "pole-": pole,
  "cover-": cover,
  "cage-": cage,
  "bag-": bag,
  "tube-seen-": (g) => ({ volume_ft3: tubeVolume(g.diameter_in, g.height_ft) }),
  "rebar-weight-": (g) => ({ weight_lb: barWeight(bar(g.bar), g.count, g.length_ft) }),
  "frost-": (g) => ({ depth_in: leastFootingDepth(g.frost_depth_in) }),
  "uplift-": uplift,
  "side-": side,
  "step-": step,
  "grid-": grid,
  "diag3-": diagonal,
};

const cases = casesOf("ground", "");

test("the file has as many cases as ever", () => {
  expect(cases).toHaveLength(readReference("ground").cases.filter((c: Case) => c.agrees).length);
  expect(cases.length).toBeGreaterThan(40);
});

describe("figures of ground.yaml", () => compareCases(cases, FIGURES));

const tubes = tableOf("ground", "tube");
describe(`concrete in a round tube (${tubes.status}; ${tubes.source})`, () => {
  test.each(tubes.records)("$diameter_in in, $height_ft ft", (row) => {
    const volume = tubeVolume(row.diameter_in, row.height_ft);
    expect(Math.abs(volume - row.volume_ft3)).toBeLessThanOrEqual(0.001 * row.volume_ft3);
    expect([bagsFor(volume, 80), bagsFor(volume, 60), bagsFor(volume, 80, 0.1)]).toEqual([
      row.bags_80,
      row.bags_60,
      row.bags_80_with_10_percent,
    ]);
    expect(Math.abs(concreteWeight(volume) - row.weight_lb)).toBeLessThanOrEqual(0.001 * row.weight_lb);
  });
});

const bars = tableOf("ground", "rebar");
describe(`deformed bars (${bars.status}; ${bars.source})`, () => {
  test.each(bars.records)("No.$number", (row) => {
    const got = BARS[row.number as BarNumber];
    expect(Math.abs(got.weight - row.lb_per_ft)).toBeLessThanOrEqual(0.003 * row.lb_per_ft);
    expect(Math.abs(got.diameter - row.diameter_in)).toBeLessThanOrEqual(0.003 * row.diameter_in);
    expect(Math.abs(got.area - row.area_in2)).toBeLessThanOrEqual(0.005);
  });

  test("a bar weighs what its steel does: π d²/4 × 490/144 lb per ft (derived)", () => {
    for (const { diameter, weight } of Object.values(BARS)) {
      const steel = ((Math.PI * diameter ** 2) / 4) * (490 / 144);
      expect(Math.abs(steel / weight - 1)).toBeLessThan(0.005);
    }
  });
});

describe("outside the tables", () => {
  test("bars larger than No.11 need more in a sheltered slab, and every bar 3 in against earth (published)", () => {
    expect([concreteCover("sheltered-slab", 14).value, concreteCover("against-earth", 3).value]).toEqual([
      1.5, 3,
    ]);
    expect([concreteCover("exposed", 5).value, concreteCover("exposed", 6).value]).toEqual([1.5, 2]);
  });

  test("a doubled lateral value makes a pole shallower, and no load needs no depth", () => {
    const pole = { load: 350, height: 7, breadth: 1, lateral: 100 };
    expect(freeDepth({ ...pole, factor: 2 })).toBeLessThan(freeDepth({ ...pole, factor: 1 }));
    expect(freeDepth({ ...pole, load: 0, factor: 1 })).toBe(0);
  });

  test("what a pole holds is the load that needs its depth: pole-3 and pole-5 the other way round (derived)", () => {
    const capacity = (height: number, lateral: number, depth: number): number =>
      freeCapacity({ height, breadth: 1, lateral, factor: 1 }, depth);
    expect(capacity(6, 150, 4.724163647)).toBeCloseTo(200, 4);
    expect(capacity(7, 100, 7.13145425)).toBeCloseTo(350, 4);
  });

  test.each([
    { load: -1, height: 7, breadth: 1, lateral: 100 },
    { load: 350, height: 7, breadth: 0, lateral: 100 },
    { load: 350, height: 7, breadth: 1, lateral: 0 },
    { load: Number.POSITIVE_INFINITY, height: 7, breadth: 1, lateral: 100 },
    { load: 350, height: Number.NaN, breadth: 1, lateral: 100 },
  ])("$load lb at $height ft on $breadth ft has no depth", (pole) => {
    expect([freeDepth({ ...pole, factor: 1 }), heldDepth({ ...pole, factor: 1 })]).toEqual([
      Number.NaN,
      Number.NaN,
    ]);
  });

  test("lateral bearing grows no further below 12 ft, and the depth is still found (memory)", () => {
    const pole = { load: 20000, height: 12, breadth: 1, lateral: 100, factor: 1 as const };
    const depth = freeDepth(pole);
    const a = poleFactor(pole, lateralAtThird(pole, 12));
    expect(depth).toBeGreaterThan(12);
    expect(depth).toBeCloseTo(0.5 * a * (1 + Math.sqrt(1 + (4.36 * 12) / a)), 5);
  });
});
