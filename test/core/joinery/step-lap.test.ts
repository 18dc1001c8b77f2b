/** Step-lap seats: sizes, volumes and surfaces by plane geometry, forces by statics (derived); usual sizes are common practice. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Joint, Prism } from "../../../server/core/joinery/joint.ts";
import { plumbThrough, seatRun } from "../../../server/core/joinery/seat.ts";
import { defaultStepLap, stepOf } from "../../../server/core/joinery/step.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import { dot } from "../../../server/core/model/vec.ts";
import { woodThrough } from "../../../server/core/roof/fastener-room.ts";
import { bearingSurfaces } from "../../../server/core/statics/end-surfaces.ts";
import { isSolved } from "../../../server/core/statics/force-table.ts";
import { stepThrusts } from "../../../server/core/statics/step-thrusts.ts";
import { readFrame } from "../../../server/document/read.ts";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { build, expectNear, joint, MM, modelOf, sample } from "../model/frames.ts";
import { inPrism } from "./clearance.ts";
import { cut, prismBox } from "./prisms.ts";

const SHED = readFileSync(new URL("../../frames/wagon-shed.frame.yaml", import.meta.url), "utf8");
const seated = (keys: string, text = SHED): string => {
  expect(text).toContain("seat: {kind: step-lap}");
  return text.replace("seat: {kind: step-lap}", `seat: {kind: step-lap${keys}}`);
};
const seatOf = (text: string): Joint => joint(buildModel(readFrame(text).frame), "rafter-seat@A.4");

/** Shoelace formula. */
const areaOf = ({ outline }: Prism): number =>
  Math.abs(
    outline.reduce((sum, [x, y], i) => {
      const [u, v] = outline[(i + 1) % outline.length]!;
      return sum + x * v - u * y;
    }, 0),
  ) / 2;
const volumeOf = (prisms: readonly Prism[]): number =>
  prisms.reduce((sum, prism) => sum + areaOf(prism) * (prism.to - prism.from), 0);

// 9:12 is the 3-4-5 triangle
const [SIN, COS, TAN] = [0.6, 0.8, 0.75];

describe("a plumb step at 9:12, 4 in over the plate, rafters 4×6", () => {
  const j = seatOf(SHED);
  test("the tail laps over 2 in and the step is set back as far [common practice, no source]", () => {
    expectNear(j.sizes.seat?.level.value, 4, "run");
    expect(j.sizes.step?.form).toBe("plumb");
    for (const size of ["housed", "lap", "rim"] as const) expectNear(j.sizes.step?.[size], 2, size);
    expectNear(j.sizes.step?.abutment, 0.75, "step");
    expectNear(j.sizes.housing.value, 0.75, "half of 2 × 3/4");
    expectNear(j.sizes.step?.sole, 2 - 0.75 / TAN, "sole");
    expectNear(j.sizes.step?.notch, (2 * TAN - 0.75) * COS, "notch of the bearing");
    expectNear(j.sizes.seat?.woodLeft, 6 - 4 * SIN, "tail");
  });
  test("the plate loses a trapezoid, the rafter the rest of what would lie in the plate", () => {
    const [d, h] = [0.75, 2];
    const housing = 4 * (d * h - d ** 2 / TAN / 2);
    expectNear(volumeOf(j.solids.housings), housing, "housing");
    expectNear(volumeOf(j.solids.notches), (4 * (4 ** 2 * TAN)) / 2 - housing, "notches");
  });
  test("the housing lies in the plate's top, 2 in from its outside face", () => {
    const { low, high } = prismBox(j.solids.housings[0]!);
    const x = j.of.origin[0];
    expect([low, high].map((p) => p.map((v) => Math.round(v * 1e6) / 1e6))).toEqual([
      [x - 2, 2, 118 - 0.75],
      [x + 2, 4, 118],
    ]);
  });
  test("it bears on its sole straight down, and out on its step", () => {
    const [sole, step] = bearingSurfaces(j);
    expectNear(dot(sole!.toward, [0, 0, -1]), 1, "down");
    expectNear(sole!.area, 4 * 1, "sole");
    expectNear(dot(step!.toward, [0, -1, 0]), 1, "out of wall A");
    expectNear(step!.area, 4 * 0.75, "step");
  });
  test("a screw stands plumb through the middle of the housing", () => {
    // 1 in out from the crossing: the underside lies 3/4 in below the plate's top there
    expectNear(plumbThrough(j)?.rafter, 6 / COS, "rafter");
    expectNear(plumbThrough(j)?.plate, 8 - 0.75, "plate");
    expectNear(woodThrough(j), 6 / COS + 8 - 0.75, "through");
    expectNear(seatRun(j.sizes), 2, "room");
  });
  test("the cut sheet has what is cut on both", () => {
    expectNear(cut(j, "plate’s outside face to the step, level"), 2, "set back");
    expectNear(cut(j, "step, plumb below the plate’s top"), 0.75, "step");
    expectNear(cut(j, "level sole before the step"), 1, "sole");
    expectNear(cut(j, "plumb (heel) cut"), 3, "heel");
  });
});

describe("a step square to the rafter", () => {
  const j = seatOf(seated(", form: square, housing: 1 in"));
  test("1 in deep: housing, sole and step from the right triangle", () => {
    const h = 1 / (SIN * COS);
    expectNear(j.sizes.step?.housed, h, "housing");
    expectNear(j.sizes.step?.sole, h * COS, "sole");
    expectNear(j.sizes.step?.abutment, h * SIN, "step");
    expectNear(j.sizes.step?.lap, 4 - h, "lap");
    expectNear(j.sizes.step?.rim, 4 - h * COS ** 2, "rim");
    expectNear(j.sizes.step?.notch, 0, "the rafter bears on its whole depth");
    expectNear(volumeOf(j.solids.housings), 4 * (h / 2), "triangle, 1 in high");
    expectNear(volumeOf(j.solids.notches), 4 * (6 - h / 2), "the rest of the triangle");
  });
  test("its two surfaces stand square to each other, the step across the rafter's grain", () => {
    const [sole, step] = bearingSurfaces(j);
    expectNear(dot(sole!.toward, step!.toward), 0, "square");
    expectNear(Math.abs(dot(step!.toward, j.of.axis)), 1, "along the rafter");
    // what comes straight down is split between them
    expectNear(-sole!.toward[2], COS, "sole");
    expectNear(-step!.toward[2], SIN, "step");
    expectNear(sole!.area, (4 * 1) / SIN, "area of the sole");
    expectNear(step!.area, (4 * 1) / COS, "area of the step");
  });
  test("without a depth the housing runs about as far in as the tail laps", () => {
    const usual = seatOf(seated(", form: square"));
    // 2 × 0.6 × 0.8 = 0.96, down to the eighth
    expectNear(usual.sizes.housing.value, 0.875, "step");
  });
});

test("whatever the slope, run and depth: housing and notches share what the rafter reaches into the plate", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 1.4, noNaN: true }),
      fc.double({ min: 0.3, max: 9, noNaN: true }),
      fc.option(fc.double({ min: 0.01, max: 5, noNaN: true })),
      fc.constantFrom("plumb" as const, "square" as const),
      fc.boolean(),
      (angle, seat, depth, form, metric) => {
        const s = stepOf({ seat, angle, form, depth: depth ?? undefined, plateWidth: 8, metric });
        const [sin, cos, tan] = [Math.sin(angle), Math.cos(angle), Math.tan(angle)];
        expect(s.housed + s.lap).toBeCloseTo(seat, 9);
        for (const size of [s.depth, s.housed, s.lap, s.abutment, s.sole, s.rim, s.notch])
          expect(size).toBeGreaterThanOrEqual(-1e-9);
        // no deeper than the rafter reaches there
        expect(s.depth).toBeLessThanOrEqual(seat * tan + 1e-9);
        if (form === "square") {
          expect(s.abutment / s.housed).toBeCloseTo(sin, 9);
          expect(s.rim).toBeGreaterThanOrEqual(s.lap - 1e-9);
        } else expect(s.notch).toBeLessThanOrEqual(s.housed * sin + 1e-9);
        if (seat <= 8 && form === "square") expect(Math.hypot(s.abutment, s.sole)).toBeCloseTo(s.housed, 9);
        if (seat <= 8 && form === "plumb") expect(s.sole * sin).toBeCloseTo(s.notch, 6);
        expect(cos).toBeGreaterThan(0);
      },
    ),
  );
});

test.each(["", ", form: square", ", form: square, housing: 1/2 in", ", housing: 1 in, length: 5 in"])(
  "every point that both would fill is cut out of one and only one: %s",
  (keys) => {
    const j = seatOf(seated(keys));
    const { seat } = j.sizes;
    const top = 118;
    let points = 0;
    for (let y = 0.05; y < (seat?.level.value ?? 0); y += 0.1)
      for (let z = top - (seat?.plumb ?? 0); z < top; z += 0.1) {
        // the rafter's underside rises from the outside face
        const under = top - ((seat?.level.value ?? 0) - y) * TAN;
        if (z < under + 0.03) continue;
        const p: [number, number, number] = [j.of.origin[0], y, z];
        const hits = [...j.solids.housings, ...j.solids.notches].filter((prism) => inPrism(prism, p, 0));
        points++;
        expect(hits.length, `${y} ${z}`).toBe(1);
      }
    expect(points).toBeGreaterThan(100);
  },
);

describe("usual sizes [common practice, no source]", () => {
  test("2 in and 2 in at 12:12 on a rafter of 6 in, the trade's usual drawing of it", () =>
    expectNear(defaultStepLap(6, Math.PI / 4, 8, false), 4, "run"));
  test("the tail keeps half of the rafter, and the plate is wide enough", () => {
    expectNear(defaultStepLap(4, Math.PI / 4, 8, false), 2.75, "4 ÷ 2 ÷ 0.707 = 2.83, down to the quarter");
    expectNear(defaultStepLap(8, 0.3, 3, false), 3, "plate of 3 in");
    expectNear(defaultStepLap(6, 0.6, 8, true), 100 * MM, "100 mm");
    expect(defaultStepLap(6, 0, 8, false)).toBe(4);
  });
  test("a flat rafter has no step and says so in zeros, not in NaN", () => {
    for (const form of ["plumb", "square"] as const)
      for (const angle of [0, Math.PI / 2, Number.NaN])
        expect(
          stepOf({ seat: 4, angle, form, depth: undefined, plateWidth: 8, metric: false }),
        ).toMatchObject({ depth: 0, housed: 0, abutment: 0, sole: 0, notch: 0, rim: 4 });
  });
});

describe("where else it stands", () => {
  test("a shed's rafters: on the high plate the rim lies at the inside face", () => {
    const model = build({
      members: {
        low: "{kind: plate, section: 8x8, walls: [B], from: 1, to: 3, top: top}",
        high: "{kind: plate, section: 8x8, walls: [A], from: 1, to: 3, top: 11 ft}",
      },
      roof: "{kind: shed, high: A, rafters: {section: 4x6, seat: {kind: step-lap, length: 4 in}, count: 2, overhang: {eave: 1 ft, high: 6 in}}}",
    });
    const seats = model.joints.filter(({ kind }) => kind === "step-lap");
    expect(seats.map(({ into }) => into.id).sort()).toEqual(["high@A", "high@A", "low@B", "low@B"]);
    for (const j of seats) {
      const { low, high } = prismBox(j.solids.housings[0]!);
      // wall A stands from y = 0 to 8 in, wall B ends at 12 ft; the rafters rise toward A
      expectNear(high[1], j.into.id === "high@A" ? 8 - 2 : 144 - 2, `${j.id} rim`);
      expectNear(high[1]! - low[1]!, 2, `${j.id} housing`);
    }
  });
  test("a principal rafter over its plate, by a joint entry", () => {
    const text = readFileSync("test/frames/purlins-on-principals.frame.yaml", "utf8");
    const frame = readFrame(
      text.replace(
        "roof:\n",
        "joints:\n  seat: {kind: step-lap, of: principal, into: plate, form: square}\nroof:\n",
      ),
    ).frame;
    const j = buildModel(frame).joints.find(({ kind }) => kind === "step-lap");
    expect(j?.id).toMatch(/^seat@/);
    // the roof's planes rise from where a bird's mouth of the usual length would stand
    const step = j!.sizes.step!;
    const angle = (j!.sizes.seat!.angle * Math.PI) / 180;
    expect(step.form).toBe("square");
    expectNear(step.housed + step.lap, j!.sizes.seat!.level.value, "run");
    expectNear(
      volumeOf(j!.solids.housings),
      (j!.of.width * step.housed ** 2 * Math.sin(angle) * Math.cos(angle)) / 2,
      "triangle",
    );
  });
  test("what the rafter spans runs from the middle of its housing", () => {
    const slope = modelOf(SHED).roof!.slopes[0]!;
    expectNear(slope.bearingRun, 3, "4 − 2 ÷ 2");
    expectNear(slope.span, 72 - 3, "to the peak over the middle");
  });
});

describe("forces", () => {
  const frameOf = (text: string) =>
    createFrameService().open("file:///t.frame.yaml", 1, text).evaluation!.results.frame!;
  test("a plumb step takes all that is level, its rim in rolling shear", () => {
    const frame = frameOf(SHED);
    const found = stepThrusts(frame);
    expect(found).toHaveLength(18);
    for (const { joint: j, thrust, stress, limit, rim, duration } of found) {
      expectNear(rim, 2, "rim");
      expectNear(stress, thrust / (2 * 4), "stress");
      // Douglas fir-larch, beams and stringers or posts and timbers: F_v 170 psi (memory); a third of it rolling (memory)
      expectNear(limit, (170 * duration.value) / 3, "F_v′ ÷ 3");
      expect(thrust).toBeLessThanOrEqual((frame.joints.get(j.id)?.across.most ?? 0) + 1e-6);
    }
    expect(Math.max(...found.map(({ thrust }) => thrust))).toBeGreaterThan(150);
  });
  test("mirrored slopes push alike", () => {
    const pushes = new Map(stepThrusts(frameOf(SHED)).map((t) => [t.joint.id, t.thrust]));
    const [a, b] = [pushes.get("rafter-seat@A.5")!, pushes.get("rafter-seat@B.5")!];
    expect(Math.abs(a - b) / a).toBeLessThan(0.02);
  });
  test("square to the rafter: its level share of what goes along the rafter", () => {
    const frame = frameOf(seated(", form: square"));
    for (const { joint: j, thrust, caseId } of stepThrusts(frame)) {
      expect(caseId).not.toBe("");
      const [, step] = bearingSurfaces(j);
      expectNear(Math.hypot(step!.toward[0], step!.toward[1]), COS, "share");
      // what the seat's springs put on the plate, level out of it and straight down: (H cos + V sin) of it along the rafter
      const along = frame.solution.cases
        .filter((solved) => solved.frameCase.id === caseId && isSolved(solved))
        .map(({ combined, frame: { ties } }) => {
          const { tie, springs } = ties.find((one) => one.tie.joint?.id === j.id)!;
          const [, y, z] = springs.map((s) => combined.links[s] ?? Number.NaN);
          const sign = tie.meeting.a.id === j.of.id ? -1 : 1;
          const outward = j.into.id === "plate@A" ? -1 : 1;
          return sign * (outward * y! * COS - z! * SIN);
        });
      expectNear(thrust / (Math.max(...along) * COS), 1, "level");
    }
  });
  test("with a ridge that carries, seats also slide: both models treat it as a seat", () => {
    const text = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
    expect(text).toContain("seat: {kind: birds-mouth}");
    const frame = frameOf(text.replace("seat: {kind: birds-mouth}", "seat: {kind: step-lap}"));
    expect(new Set(frame.solution.cases.map(({ seats }) => seats))).toEqual(new Set(["hold", "slide"]));
    // a seat that slides pushes nothing level, and down as much as its share of the roof
    const down = frame.solution.cases
      .filter(({ seats }) => seats === "slide")
      .flatMap((solved) =>
        solved.frame.ties.flatMap(({ tie, springs }) => (tie.joint?.kind === "step-lap" ? [springs[1]] : [])),
      );
    expect(down.length).toBeGreaterThan(0);
    expect(new Set(down)).toEqual(new Set([-1]));
    expect(sample("cider-press-pavilion").joints.some(({ kind }) => kind === "step-lap")).toBe(false);
  });
});
