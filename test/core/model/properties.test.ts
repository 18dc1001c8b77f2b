/** What holds for every frame: made-up frames of posts, plates, ties, braces and rafters (derived). */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Prism } from "../../../server/core/joinery/joint.ts";
import { findMeetings } from "../../../server/core/model/meetings.ts";
import type { Model, Timber } from "../../../server/core/model/model.ts";
import { type Solid, solidOf } from "../../../server/core/model/solid.ts";
import { dot, sub, type Vec3 } from "../../../server/core/model/vec.ts";
import { boxOf, build, type Parts, stick, summary } from "./frames.ts";

const RUNS = { numRuns: 40 };

/** Sizes of a frame in inches, all whole sixteenths so that both kinds of file say them exactly enough. */
interface Sizes {
  readonly width: number;
  readonly bays: readonly number[];
  readonly post: number;
  readonly plate: number;
  readonly tie: number;
  readonly overhang: number;
  readonly leg: number;
  readonly spacing: number;
  readonly rise: number;
}

const sizes = fc.record({
  width: fc.integer({ min: 96, max: 240 }),
  bays: fc.array(fc.integer({ min: 84, max: 168 }), { minLength: 1, maxLength: 3 }),
  post: fc.constantFrom(6, 7, 8, 10),
  plate: fc.integer({ min: 7, max: 12 }),
  tie: fc.integer({ min: 8, max: 12 }),
  overhang: fc.integer({ min: 0, max: 24 }),
  leg: fc.integer({ min: 15, max: 36 }),
  spacing: fc.integer({ min: 12, max: 48 }),
  rise: fc.integer({ min: 3, max: 14 }),
});

/** The same frame, its grid moved by `dx`, `dy`, in inches or in millimetres. Every size is given, no default is used. */
function parts(s: Sizes, dx = 0, dy = 0, metric = false): Parts {
  const l = (inches: number): string => (metric ? `${inches * 25.4} mm` : `${inches} in`);
  const section = (w: number, d: number): string => (metric ? `${w * 25.4}x${d * 25.4}` : `${w}x${d}`);
  const lines = [0];
  for (const bay of s.bays) lines.push((lines.at(-1) ?? 0) + bay);
  const bents = lines.map((_, i) => `${i + 1}`);
  const places = ["A", "B"].flatMap((wall) => bents.map((b) => `${wall}${b}`));
  const tenon = (setIn: number): string =>
    `tenon: {thickness: ${l(1.5)}, length: ${l(3)}, set-in: ${l(setIn)}}, pegs: {count: 1, diameter: ${l(0.75)}, draw: ${l(0.125)}}`;
  return {
    units: metric ? "mm" : "inch",
    walls: `{A: ${l(dy)}, B: ${l(dy + s.width)}}`,
    bents: `{${lines.map((x, i) => `${i + 1}: ${l(x + dx)}`).join(", ")}}`,
    levels: `{base: 0, eave: ${l(108)}, tie-top: ${l(84)}}`,
    members: {
      post: `{kind: post, section: ${section(s.post, s.post)}, at: [${places.join(", ")}], from: base, to: plate}`,
      plate: `{kind: plate, section: ${section(s.post, s.plate)}, walls: [A, B], top: eave, overhang: ${l(s.overhang)}}`,
      tie: `{kind: tie, section: ${section(s.post, s.tie)}, bents: [${bents.join(", ")}], top: tie-top}`,
      knee: `{kind: brace, section: ${section(3, 5)}, between: [post, plate], leg: ${l(s.leg)}, curve: {radius: ${l(s.leg * 2)}}}`,
      ridge: `{kind: ridge, section: ${section(6, 10)}, overhang: ${l(s.overhang)}}`,
    },
    joints: {
      head: `{kind: mortise-and-tenon, of: post, into: plate, ${tenon(2)}}`,
      end: `{kind: wedged-half-dovetail, of: tie, into: post, housing: ${l(0.5)}, drop: ${l(1)}, wedge: {length: ${l(12)}}, ${tenon(2)}}`,
      knees: `{kind: brace-tenon, of: knee, into: [post, plate], housing: ${l(0.5)}, ${tenon(1)}}`,
    },
    roof: `{kind: gable, pitch: "${s.rise}:12", rafters: {section: ${section(3, 6)}, spacing: ${l(s.spacing)}, seat: {kind: birds-mouth, length: ${l(1)}}, head: {kind: housed, into: ridge, housing: ${l(0.5)}}, overhang: {eave: ${l(12)}}}}`,
    piers: {
      all: `{under: post, kind: tube, diameter: ${l(12)}, depth: ${l(40)}, anchor: {kind: post-base, stand-off: ${l(1)}}}`,
    },
  };
}

function expectMoved(from: Model, to: Model, move: Vec3, tolerance: number): void {
  expect(to.timbers.map((t) => t.id)).toEqual(from.timbers.map((t) => t.id));
  expect(to.joints.map((j) => `${j.id} ${j.kind}`)).toEqual(from.joints.map((j) => `${j.id} ${j.kind}`));
  for (const [i, t] of from.timbers.entries()) {
    const other = to.timbers[i]!;
    const off = [0, 1, 2].map((k) => Math.abs(other.origin[k]! - t.origin[k]! - move[k]!));
    expect(Math.max(...off), t.id).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(other.length - t.length), `length of ${t.id}`).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(other.width - t.width), t.id).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(other.depth - t.depth), t.id).toBeLessThanOrEqual(tolerance);
  }
  for (const [i, j] of from.joints.entries()) {
    const numbers = (value: unknown): number[] =>
      typeof value === "number"
        ? [value]
        : value && typeof value === "object"
          ? Object.values(value).flatMap(numbers)
          : [];
    const [a, b] = [numbers(j.sizes), numbers(to.joints[i]!.sizes)];
    expect(b, j.id).toHaveLength(a.length);
    for (const [k, n] of a.entries()) expect(Math.abs(n - b[k]!), j.id).toBeLessThanOrEqual(tolerance);
  }
}

describe("the place of the grid", () => {
  test("moving it moves every timber, and changes nothing else", () => {
    fc.assert(
      fc.property(
        sizes,
        fc.integer({ min: -500, max: 500 }),
        fc.integer({ min: -500, max: 500 }),
        (s, dx, dy) => {
          expectMoved(build(parts(s)), build(parts(s, dx, dy)), [dx, dy, 0], 1e-6);
        },
      ),
      RUNS,
    );
  });

  test("walls are mirror images of each other", () => {
    fc.assert(
      fc.property(sizes, (s) => {
        const model = build(parts(s));
        for (const post of model.timbers.filter((t) => t.id.startsWith("post@A"))) {
          const a = boxOf(post);
          const b = boxOf(stick(model, post.id.replace("@A", "@B")));
          expect(b.x).toEqual(a.x);
          expect(b.y[0]).toBeCloseTo(s.width - a.y[1], 6);
          expect(b.z).toEqual(a.z);
        }
        const lengths = (wall: string): number[] =>
          model.timbers
            .filter((t) => /^(rafter|knee|plate)/.test(t.id) && t.id.includes(`@${wall}`))
            .map((t) => Math.round(t.length * 1e6))
            .sort();
        expect(lengths("B")).toEqual(lengths("A"));
        const sizesAt = (wall: string): string[] =>
          model.joints
            .filter((j) => j.id.includes(`@${wall}`))
            .map((j) => JSON.stringify(summaryOf(j.sizes)))
            .sort();
        expect(sizesAt("B")).toEqual(sizesAt("A"));
      }),
      RUNS,
    );
  });

  test("the ends of the frame are mirror images of each other", () => {
    fc.assert(
      fc.property(sizes, (s) => {
        const model = build(parts({ ...s, bays: [s.bays[0]!] }));
        const [a, b] = [boxOf(stick(model, "post@A1")), boxOf(stick(model, "post@A2"))];
        expect(b.x[0]).toBeCloseTo(s.bays[0]! - a.x[1], 6);
        expect(stick(model, "knee@A2-A1").length).toBeCloseTo(stick(model, "knee@A1-A2").length, 6);
      }),
      RUNS,
    );
  });
});

/** Sizes without what has a side to it: where along its face a tenon's middle lies. */
function summaryOf(sizes: Model["joints"][number]["sizes"]): unknown {
  const r = (n: number): number => Math.round(n * 1e6) / 1e6;
  const { tenon, ...rest } = sizes;
  const { center: _, ...same } = tenon ?? { center: undefined };
  return JSON.parse(JSON.stringify({ ...rest, tenon: same }), (_key, v) =>
    typeof v === "number" ? r(v) : v,
  );
}

describe("units and order", () => {
  test("the same sizes in millimetres are the same frame, within 1/64 in", () => {
    fc.assert(
      fc.property(sizes, (s) => {
        expectMoved(build(parts(s)), build(parts(s, 0, 0, true)), [0, 0, 0], 1 / 64);
      }),
      RUNS,
    );
  });

  test("the order of keys never matters", () => {
    fc.assert(
      fc.property(sizes, fc.infiniteStream(fc.nat(1000)), (s, random) => {
        const shuffled = <T>(record: Readonly<Record<string, T>> | undefined): Record<string, T> =>
          Object.fromEntries(
            Object.entries(record ?? {})
              .map((e) => ({ e, key: random.next().value as number }))
              .sort((a, b) => a.key - b.key)
              .map(({ e }) => e),
          );
        const p = parts(s);
        // joints are left out half of the time, so that assumed ones are shuffled too
        const joints = s.leg % 2 ? p.joints : {};
        const other = build({ ...p, members: shuffled(p.members), joints: shuffled(joints) });
        expect(summary(other)).toEqual(summary(build({ ...p, joints: joints ?? {} })));
      }),
      RUNS,
    );
  });
});

/** Whether every corner of one prism lies in another, both with the same axes or not. */
function inside(inner: Prism, outer: Prism): boolean {
  const points = inner.outline.flatMap(([u, v]) =>
    [inner.from, inner.to].map((w): Vec3 => {
      const p = [0, 1, 2].map((k) => inner.base[k]! + u * inner.u[k]! + v * inner.v[k]! + w * inner.w[k]!);
      return p as unknown as Vec3;
    }),
  );
  const slack = 1e-6;
  return points.every((p) => {
    const d = sub(p, outer.base);
    const [u, v, w] = [dot(d, outer.u), dot(d, outer.v), dot(d, outer.w)];
    if (w < outer.from - slack || w > outer.to + slack) return false;
    const turn = outer.outline.map(([u0, v0], i) => {
      const [u1, v1] = outer.outline[(i + 1) % outer.outline.length]!;
      const edge = Math.hypot(u1 - u0, v1 - v0) || 1;
      return ((u1 - u0) * (v - v0) - (v1 - v0) * (u - u0)) / edge;
    });
    return turn.every((t) => t >= -slack) || turn.every((t) => t <= slack);
  });
}

describe("joints", () => {
  test("every tenon lies inside its mortise, with room at the bottom of a blind one", () => {
    fc.assert(
      fc.property(sizes, (s) => {
        const model = build(parts(s));
        let tenons = 0;
        for (const j of model.joints) {
          for (const [i, tenon] of j.solids.tenons.entries()) {
            tenons++;
            expect(inside(tenon, j.solids.mortises[i]!), j.id).toBe(true);
          }
          const { tenon } = j.sizes;
          if (tenon && !tenon.through)
            expect(tenon.mortiseDepth, j.id).toBeGreaterThanOrEqual(tenon.length.value + 0.25 - 1e-9);
        }
        expect(tenons).toBeGreaterThan(10);
      }),
      RUNS,
    );
  });

  test("a shoulder stands in its housing: the two timbers still touch with their true ends", () => {
    fc.assert(
      fc.property(sizes, (s) => {
        const model = build(parts(s));
        for (const j of model.joints) {
          if (j.end === "side" || j.kind === "half-lap-scarf") continue;
          const end = j.end === "head" ? j.of.head.point : j.of.foot.point;
          const depth = dot(sub(end, j.face.origin), j.face.inward);
          expect(Math.abs(depth - j.sizes.housing.value), j.id).toBeLessThanOrEqual(1e-6);
        }
      }),
      RUNS,
    );
  });

  test("walls, tenon and set-in make up the mortised timber", () => {
    fc.assert(
      fc.property(sizes, (s) => {
        for (const j of build(parts(s)).joints) {
          const { tenon } = j.sizes;
          if (!tenon) continue;
          const breadth = j.face.edges[1] - j.face.edges[0];
          expect(tenon.walls[0] + tenon.thickness.value + tenon.walls[1]).toBeCloseTo(breadth, 6);
        }
      }),
      RUNS,
    );
  });
});

describe("meetings", () => {
  const key = (m: { a: Timber; b: Timber }): string => [m.a.id, m.b.id].sort().join(" ");
  const solids = (timbers: readonly Timber[]): Map<Timber, Solid> =>
    new Map(timbers.map((t) => [t, solidOf(t)]));

  test("do not depend on which timber comes first", () => {
    fc.assert(
      fc.property(sizes, (s) => {
        const { timbers } = build(parts(s));
        const back = [...timbers].reverse();
        const forth = findMeetings(timbers, solids(timbers));
        const reverse = findMeetings(back, solids(back));
        expect(reverse.map(key).sort()).toEqual(forth.map(key).sort());
        const areas = new Map(forth.map((m) => [key(m), m]));
        for (const m of reverse) {
          const other = areas.get(key(m))!;
          expect(m.area).toBeCloseTo(other.area, 6);
          expect([m.aEnd, m.bEnd]).toEqual(
            m.a.id === other.a.id ? [other.aEnd, other.bEnd] : [other.bEnd, other.aEnd],
          );
        }
      }),
      RUNS,
    );
  });
});

describe("touching: within 1/16 in over at least one square inch", () => {
  const beside = (gap: number, across = 0, up = 0): number => {
    const model = build({
      members: {
        a: "{kind: beam, section: 6x6, ends: [{at: A1, offset: [0, 0, 0]}, {at: A1, offset: [40 in, 0, 0]}]}",
        b: `{kind: beam, section: 6x6, ends: [{at: A1, offset: [${40 + gap} in, ${across} in, ${up} in]}, {at: A1, offset: [${80 + gap} in, ${across} in, ${up} in]}]}`,
      },
    });
    return model.meetings.length;
  };

  test("by the gap", () => {
    expect(beside(0)).toBe(1);
    expect(beside(1 / 16)).toBe(1);
    expect(beside(1 / 16 + 0.001)).toBe(0);
    expect(beside(1 / 8)).toBe(0);
    expect(beside(-1)).toBe(1);
  });

  test("by the area: along an edge or a corner there is none", () => {
    expect(beside(0, 6)).toBe(0);
    expect(beside(0, 6, 6)).toBe(0);
    // 1/2 in of overlap on 6 in, and 1/8 in
    expect(beside(0, 5.5)).toBe(1);
    expect(beside(0, 5.875, 0)).toBe(1);
    expect(beside(0, 5, 5.5)).toBe(0);
  });

  test("a timber inside another meets it; one far away does not", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 60 }), fc.integer({ min: -20, max: 20 }), (gap, across) => {
        const met = beside(gap, across);
        expect(met).toBe(gap === 0 && Math.abs(across) < 6 ? 1 : 0);
      }),
    );
  });
});
