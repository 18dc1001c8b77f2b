/**
 * Elastic frames against outside figures: printed examples, closed forms, timber frames with push-only braces solved by a
 * second program, and mechanisms worked by hand. Every figure of every case is compared, within the case's tolerance.
 */
import { describe, expect, it } from "vitest";
import { analyse } from "../../server/core/analysis/analyse.ts";
import type { Mode } from "../../server/core/analysis/faults.ts";
import { fromCase } from "../core/analysis/from-case.ts";
import { readReference } from "./cases.ts";

type Numbers = Record<string, number> | readonly number[];
type Tolerance = number | { absolute: Record<string, number> };

interface FrameCase {
  id: string;
  what: string;
  // biome-ignore lint/suspicious/noExplicitAny: read by fromCase
  given: Record<string, any>;
  expect: {
    displacements?: Record<string, Numbers>;
    reactions?: Record<string, Numbers>;
    end_i?: Record<string, Numbers>;
    end_j?: Record<string, Numbers>;
    axial?: Record<string, number>;
    dropped?: string[];
    mechanism?: boolean;
    modes?: number;
    mode?: Record<string, number[]>;
  };
  tolerance: Tolerance;
  status: string;
  source: string;
  agrees: boolean;
  idle?: string | string[];
}

const CASES: FrameCase[] = readReference("frames").cases;
const EXPECTED = new Set([
  "displacements",
  "reactions",
  "end_i",
  "end_j",
  "axial",
  "dropped",
  "mechanism",
  "modes",
  "mode",
]);
const NAMES = {
  displacements: ["ux", "uy", "uz", "rx", "ry", "rz"],
  forces: ["Fx", "Fy", "Fz", "Mx", "My", "Mz"],
};

interface Figure {
  label: string;
  kind: "translation" | "rotation" | "force" | "moment";
  want: number;
  got: number;
}

describe("frames of frames.yaml", () => {
  it("holds 64 cases that an independent recomputation reproduces", () => {
    expect(CASES.filter((c) => c.agrees)).toHaveLength(64);
  });

  for (const c of CASES.filter((one) => one.agrees))
    it(`${c.id} (${c.status}, ${c.source}): ${c.what}`, () => {
      expect(Object.keys(c.expect).filter((key) => !EXPECTED.has(key))).toEqual([]);
      const { structure, load, nodeIds, elementIds } = fromCase(c.given);
      const analysis = analyse(structure, [load]);
      const result = analysis.cases[0]!;
      expect(analysis.faults).toEqual([]);

      if (c.expect.mechanism === true) {
        checkMechanism(
          c,
          analysis.idle,
          result.faults.flatMap((f) => (f.kind === "mechanism" ? f.modes : [])),
        );
        return;
      }
      expect(result.faults).toEqual([]);
      expect(result.status).toBe("sound");
      const solution = result.solution!;
      if (c.expect.dropped) expect([...solution.dropped].sort()).toEqual([...c.expect.dropped].sort());

      const figures: Figure[] = [];
      const add = (
        label: string,
        want: Numbers,
        got: readonly number[],
        names: readonly string[],
        force: boolean,
      ) => {
        names.forEach((name, m) => {
          const value = Array.isArray(want) ? want[m] : (want as Record<string, number>)[name];
          if (value === undefined) return;
          const kind = force ? (m < 3 ? "force" : "moment") : m < 3 ? "translation" : "rotation";
          figures.push({ label: `${label}.${name}`, kind, want: value, got: got[m]! });
        });
      };
      for (const [id, want] of Object.entries(c.expect.displacements ?? {}))
        add(id, want, solution.displacements[nodeIds.indexOf(id)]!, NAMES.displacements, false);
      for (const [id, want] of Object.entries(c.expect.reactions ?? {})) {
        const found = solution.reactions.find((r) => r.node === nodeIds.indexOf(id))!;
        // The holds that keep a flat case flat carry nothing.
        add(`reaction ${id}`, want, found.force, NAMES.forces, true);
      }
      for (const end of ["end_i", "end_j"] as const)
        for (const [id, want] of Object.entries(c.expect[end] ?? {})) {
          const forces = solution.elements[elementIds.indexOf(id)]!;
          add(`${end} ${id}`, want, end === "end_i" ? forces.endI : forces.endJ, NAMES.forces, true);
        }
      for (const [id, want] of Object.entries(c.expect.axial ?? {}))
        figures.push({
          label: `axial ${id}`,
          kind: "force",
          want,
          got: solution.elements[elementIds.indexOf(id)]!.axial,
        });
      expect(figures.length + Number(c.expect.mechanism === false)).toBeGreaterThan(0);
      const sizes = { translation: 0, rotation: 0, force: 0, moment: 0 };
      for (const { endI, endJ } of solution.elements)
        [...endI, ...endJ].forEach((v, m) => {
          const kind = m % 6 < 3 ? "force" : "moment";
          sizes[kind] = Math.max(sizes[kind], Math.abs(v));
        });
      for (const v of solution.displacements)
        v.forEach((value, m) => {
          const kind = m < 3 ? "translation" : "rotation";
          sizes[kind] = Math.max(sizes[kind], Math.abs(value));
        });
      compare(figures, c.tolerance, sizes);
    });
});

/** A relative tolerance is of the figure or of a thousandth of the largest of its kind, whichever is more. */
function compare(
  figures: readonly Figure[],
  tolerance: Tolerance,
  largestOf: Record<Figure["kind"], number>,
): void {
  for (const { label, kind, want, got } of figures) {
    const largest = largestOf[kind];
    const allowed =
      typeof tolerance === "number"
        ? tolerance * Math.max(Math.abs(want), 0.001 * largest)
        : (tolerance.absolute[kind] ?? 0);
    expect(Math.abs(got - want), `${label}: got ${got}, want ${want} ± ${allowed}`).toBeLessThanOrEqual(
      allowed + 1e-15 * largest,
    );
  }
}

/** The mode's shape is compared after scaling to the same length; its sign is free. */
function checkMechanism(c: FrameCase, idle: readonly Mode[], modes: readonly Mode[]): void {
  const shape = c.expect.mode;
  if (shape && Object.keys(shape).length === 0) {
    // Only turns: no joint moves. That does no harm and is listed apart.
    expect(modes).toEqual([]);
    expect(idle).toHaveLength(c.expect.modes!);
    return;
  }
  expect(modes).toHaveLength(c.expect.modes!);
  if (!shape) return;
  const tolerance = typeof c.tolerance === "number" ? c.tolerance : c.tolerance.absolute.mode!;
  const [mode] = modes;
  const got = (id: string) => mode!.nodes.find((n) => n.id === id)?.motion.slice(0, 3) ?? [0, 0, 0];
  const leading = Object.entries(shape).flatMap(([id, v]) =>
    v.map((want, m) => ({ want, got: got(id)[m]! })),
  );
  const sign = Math.sign(leading.reduce((sum, { want, got: found }) => sum + want * found, 0));
  for (const { id } of mode!.nodes) {
    const want = shape[id] ?? [0, 0, 0];
    got(id).forEach((v, m) => {
      expect(Math.abs(sign * v - want[m]!), `${id} ${m}`).toBeLessThanOrEqual(tolerance);
    });
  }
  for (const id of Object.keys(shape)) expect(mode!.nodes.map((n) => n.id)).toContain(id);
}
