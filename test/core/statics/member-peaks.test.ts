/**
 * Forces that peak between the places that the analysis keeps: of one beam against the beam tables (AISC Manual, beam
 * diagrams; Roark; from memory, each worked again from statics here), of whole frames against the exact curves of the
 * analysis, which integrates the loads of every case as it is handed over, solved whole and not summed.
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { prepare } from "../../../server/core/analysis/analyse.ts";
import type { FrameElement, FrameSupport } from "../../../server/core/analysis/structure.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import type { Timber } from "../../../server/core/model/model.ts";
import type { Vec3 } from "../../../server/core/model/vec.ts";
import { analyseFrame } from "../../../server/core/statics/analyse-frame.ts";
import { loadCase } from "../../../server/core/statics/element-loads.ts";
import { forcesAlong } from "../../../server/core/statics/forces-along.ts";
import { jointActions } from "../../../server/core/statics/joint-actions.ts";
import type { LineLoad } from "../../../server/core/statics/line-loads.ts";
import { type ForceKind, memberForces } from "../../../server/core/statics/member-forces.ts";
import { type SolvedCase, solveFrame } from "../../../server/core/statics/solve-frame.ts";
import type { FrameStructure } from "../../../server/core/statics/structure.ts";
import { readFrame } from "../../../server/document/read.ts";

const L = 120;
const SPAN = { A: 48, Iy: 144, Iz: 256, J: 311, E: 1_200_000, G: 75_000, ydir: [0, 1, 0] as const };
const PINNED = { ux: 0, uy: 0, uz: 0, rx: 0 };
const ROLLS = { uy: 0, uz: 0 };
const BEAM = { id: "beam", span: L, axis: [1, 0, 0] as Vec3, depthDir: [0, 1, 0] as Vec3 } as Timber;

/** A beam along x over supports at its ends and between its spans, each span one element. @param loads from, to, intensity at both */
function beam(spans: number, loads: readonly (readonly [number, number, Vec3, Vec3])[]): SolvedCase {
  const nodes = Array.from({ length: spans + 1 }, (_, n) => ({ id: `${n}`, at: [n * L, 0, 0] as const }));
  const elements = Array.from(
    { length: spans },
    (_, n): FrameElement => ({ id: `e${n}`, i: n, j: n + 1, ...SPAN }),
  );
  const supports = nodes.map((_, node): FrameSupport => ({ node, fixed: node === 0 ? PINNED : ROLLS }));
  const structure = { nodes, elements, supports };
  const frame = {
    structure,
    pieces: elements.map((_, n) => ({ timber: BEAM, from: n * L, to: (n + 1) * L })),
    elementsOf: new Map([["beam", elements.map((_, n) => n)]]),
  } as unknown as FrameStructure;
  const lines = loads.map(
    ([from, to, startForce, endForce]): LineLoad => ({
      timber: BEAM,
      from,
      to,
      startForce,
      endForce,
    }),
  );
  const load = loadCase(frame, "load", [{ loads: lines, factor: 1 }]);
  const combined = prepare(structure).superpose([load]).combine("load", [1]);
  expect(combined.status).toBe("sound");
  return {
    frameCase: { id: "load", parts: [{ load: { loads: lines }, factor: 1 }] },
    seats: "hold",
    frame,
    combined,
    load: () => load,
  } as unknown as SolvedCase;
}

const w = 7;
const down = (by: number): Vec3 => [0, -by, 0];
const most = (solved: SolvedCase, kind: ForceKind) => {
  const { value, at, caseId } = memberForces([solved], "beam")![kind];
  expect(caseId).toBe("load");
  return { value, at };
};
const near = (got: { value: number; at: number }, value: number, at: number) => {
  expect(Math.abs(got.value - value), `${got.value} for ${value}`).toBeLessThan(1e-6 * value);
  expect(Math.abs(got.at - at), `at ${got.at} for ${at}`).toBeLessThan(1e-4);
};

describe("one beam", () => {
  test("simple, loads that turn inside a quarter: shear crosses nought twice between two places", () => {
    for (const [up, back] of [
      [10, 10],
      [10, 12],
      [-10, -10],
    ] as const) {
      const loads = [
        [62, 75, up],
        [76, 89, -back],
      ] as const;
      // statics: the left reaction, then the moment of all left of x
      const R = loads.reduce((sum, [a, b, q]) => sum + (q * (b - a) * (L - (a + b) / 2)) / L, 0);
      const moment = (x: number) =>
        R * x -
        loads.reduce((sum, [a, b, q]) => {
          const lies = Math.max(0, Math.min(x, b) - a);
          return sum + q * lies * (x - a - lies / 2);
        }, 0);
      let [peak, where] = [0, 0];
      for (let x = 0; x <= L; x += 1 / 512)
        if (Math.abs(moment(x)) > peak) [peak, where] = [Math.abs(moment(x)), x];
      const got = most(
        beam(
          1,
          loads.map(([a, b, q]) => [a, b, down(q), down(q)]),
        ),
        "moment-depth",
      );
      expect(Math.abs(got.value - peak), `${got.value} for ${peak}`).toBeLessThan(1e-4 * peak);
      expect(Math.abs(got.at - where)).toBeLessThan(0.01);
    }
  });

  test("simple, load over 0.3 L from one end: R²/2w at R/w, R = w a (2L − a)/2L", () => {
    const a = 0.3 * L;
    const R = (w * a * (2 * L - a)) / (2 * L);
    near(most(beam(1, [[0, a, down(w), down(w)]]), "moment-depth"), R ** 2 / (2 * w), R / w);
  });

  test("simple, load rising to w at one end: w L²/(9 √3) at L/√3", () => {
    near(
      most(beam(1, [[0, L, down(0), down(w)]]), "moment-depth"),
      (w * L ** 2) / (9 * Math.sqrt(3)),
      L / Math.sqrt(3),
    );
  });

  test("simple, a short load between two places: P L/4 at the middle less w c²/8", () => {
    const [a, c] = [0.37 * L, 0.02 * L];
    const R = (w * c * (L - a - c / 2)) / L;
    near(most(beam(1, [[a, a + c, down(w), down(w)]]), "moment-depth"), R * a + R ** 2 / (2 * w), a + R / w);
  });

  test("the same sideways bends in the plane of the width", () => {
    const a = 0.3 * L;
    const R = (w * a * (2 * L - a)) / (2 * L);
    near(most(beam(1, [[0, a, [0, 0, w], [0, 0, w]]]), "moment-width"), R ** 2 / (2 * w), R / w);
  });

  test("two equal spans, load on the first: 49 w L²/512 at 7 L/16, not what acts at the middle of the span", () => {
    const got = most(beam(2, [[0, L, down(w), down(w)]]), "moment-depth");
    near(got, (49 * w * L ** 2) / 512, (7 * L) / 16);
    // 7/32 − 1/8 = 3/32 at L/2 (the same beam): 2 percent less
    expect(got.value).toBeGreaterThan(1.02 * (3 / 32) * w * L ** 2);
  });

  test.each([0.1, 0.3])("shear where the load turns: up on %d L at both ends, down between", (share) => {
    const a = share * L;
    // by symmetry each support holds half of what is left over; from there shear rises by w a to where the load turns
    const R = (w * (L - 2 * a)) / 2 - w * a;
    const peak = R + w * a;
    expect(peak).toBeGreaterThan(1.2 * Math.abs(R));
    const solved = beam(1, [
      [0, a, down(-w), down(-w)],
      [a, L - a, down(w), down(w)],
      [L - a, L, down(-w), down(-w)],
    ]);
    const got = most(solved, "shear-depth");
    near({ ...got, at: Math.min(got.at, L - got.at) }, peak, a);
  });

  test("force along its length where the load along it turns: w a at a", () => {
    const a = 0.4 * L;
    // the far end rolls: N(a) = what pushes on beyond a
    const solved = beam(1, [
      [0, a, [-w, 0, 0], [-w, 0, 0]],
      [a, L, [w, 0, 0], [w, 0, 0]],
    ]);
    near(most(solved, "tension"), w * (L - a), a);
  });
});

const QUANTITIES: readonly (readonly ["N" | "Vy" | "Vz" | "My" | "Mz", ForceKind, ForceKind])[] = [
  ["N", "tension", "compression"],
  ["Vy", "shear-depth", "shear-depth"],
  ["Vz", "shear-width", "shear-width"],
  ["My", "moment-width", "moment-width"],
  ["Mz", "moment-depth", "moment-depth"],
];

describe.each(["test/frames/king-post-truss", "test/frames/purlins-on-principals", "samples/kayak-shelter"])(
  "%s",
  (name) => {
    const text = readFileSync(new URL(`../../../${name}.frame.yaml`, import.meta.url), "utf8");
    const model = buildModel(readFrame(text).frame);
    const { cases } = solveFrame(model, jointActions(model));
    const prepared = new Map<unknown, ReturnType<typeof prepare>>();
    /** by timber and kind, over all cases and elements */
    const exact = new Map<string, number>();
    const raise = (key: string, value: number) => exact.set(key, Math.max(exact.get(key) ?? 0, value));
    for (const solved of cases) {
      const { structure } = solved.frame;
      const whole = prepared.get(structure) ?? prepare(structure);
      prepared.set(structure, whole);
      const { solution } = whole.solve(solved.load());
      structure.elements.forEach((_, element) => {
        const curves = solution?.along(element);
        const timber = solved.frame.pieces[element]!.timber.id;
        for (const [quantity, above, below] of QUANTITIES)
          for (const { from, to, coefficients } of curves?.piecesOf(quantity) ?? []) {
            // past a force at the very end there is no more timber
            if (to <= from) continue;
            const STEPS = 200;
            for (let n = 0; n <= STEPS; n++) {
              const t = ((to - from) * n) / STEPS;
              const value = coefficients.reduce((sum, c, power) => sum + c * t ** power, 0);
              raise(`${timber} ${value > 0 ? above : below}`, Math.abs(value));
            }
          }
      });
    }

    test("no force inside a timber is more than what is said of it, and what is said is reached", () => {
      expect(exact.size).toBeGreaterThan(4 * model.timbers.length);
      for (const { id } of model.timbers) {
        const forces = memberForces(cases, id)!;
        for (const kind of new Set(QUANTITIES.flatMap(([, above, below]) => [above, below]))) {
          const most = exact.get(`${id} ${kind}`) ?? 0;
          const off = forces[kind].value - most;
          // the curves are read at 200 steps: off a peak by no more than a ten-thousandth of it, or 0.01 lb or lb·in
          expect(off, `${id} ${kind}: ${forces[kind].value}, at steps ${most}`).toBeGreaterThan(
            -1e-6 * most - 1e-3,
          );
          expect(off, `${id} ${kind}: ${forces[kind].value}, at steps ${most}`).toBeLessThan(
            1e-4 * most + 0.01,
          );
        }
      }
    });
  },
);

test("where a moment peaks between two places, it acts together with the axial force there, not beside it", () => {
  const text = readFileSync(new URL("../../frames/market-stall.frame.yaml", import.meta.url), "utf8");
  const { members, solution } = analyseFrame(buildModel(readFrame(text).frame))!;
  let peaks = 0;
  for (const { timber, uses } of members.values())
    for (const { what, at, caseId, terms } of uses) {
      if (what !== "compression-and-bending" && what !== "tension-and-bending") continue;
      if (at < 1 || at > timber.span - 1) continue;
      const found = solution.cases.flatMap((solved) => {
        if (solved.frameCase.id !== caseId) return [];
        const own = solved.frame.elementsOf.get(timber.id)!;
        return own.flatMap((element) => {
          const { from, to } = solved.frame.pieces[element]!;
          if (at < from || at > to) return [];
          const pieces = forcesAlong(solved, element)!.piecesOf("N");
          const piece = pieces.find((p) => at - from <= p.to) ?? pieces.at(-1)!;
          return Math.abs(
            piece.coefficients.reduce((sum, c, power) => sum + c * (at - from - piece.from) ** power, 0),
          );
        });
      });
      const off = Math.min(...found.map((N) => Math.abs(N - Math.abs(terms!.force))));
      expect(off, `${timber.id} ${what} at ${at}: ${terms!.force}, not ${found}`).toBeLessThan(0.01);
      peaks++;
    }
  expect(peaks).toBeGreaterThan(20);
});
