/** What holds for every stick of every frame: marks lie on the wood, lengths add up, and both sides of a joint meet. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Model } from "../../../../server/core/model/model.ts";
import { stickExtent } from "../../../../server/core/model/true-ends.ts";
import { cross, dot, length, sub, unit, type Vec3 } from "../../../../server/core/model/vec.ts";
import { cornersOf } from "../../../../server/core/shop/layout/cuts.ts";
import { breadthOf, woodBelow } from "../../../../server/core/shop/layout/faces.ts";
import { layoutSticks, type PegHole, type StickLayout } from "../../../../server/core/shop/layout/layout.ts";
import { toMark } from "../../../../server/core/shop/layout/rounded.ts";
import { modelOf, sample } from "../../model/frames.ts";
import { expectRange, layoutOf, marksOf, pointOf } from "./marks.ts";

const file = (name: string): Model =>
  modelOf(readFileSync(new URL(`../../../frames/${name}.frame.yaml`, import.meta.url), "utf8"));

const FRAMES: readonly (readonly [string, Model])[] = [
  ...["cider-press-pavilion", "kayak-shelter", "garden-arch"].map((n) => [n, sample(n)] as const),
  ...["loft", "trussed-lean-to", "purlins-on-principals", "king-post-truss"].map(
    (n) => [n, file(n)] as const,
  ),
];

const inside = ([from, to]: readonly [number, number], most: number): boolean =>
  from > -1e-6 && to < most + 1e-6 && from <= to;

/** The line of a peg hole in space. */
function lineOf(model: Model, stick: StickLayout, hole: PegHole): { point: Vec3; way: Vec3 } {
  const at = (below: number): Vec3 =>
    hole.face === 1
      ? pointOf(model, stick, hole.along, below, hole.across)
      : pointOf(model, stick, hole.along, hole.across, below);
  return { point: at(0), way: unit(sub(at(1), at(0))) };
}

describe.each(FRAMES)("%s", (_, model) => {
  const sticks = layoutSticks(model);
  const byId = new Map(sticks.map((stick) => [stick.timber.id, stick]));
  const stickOf = (id: string): StickLayout => byId.get(id) ?? layoutOf(model, id);

  test("every mark lies on its stick", () => {
    let marks = 0;
    for (const stick of sticks)
      for (const { joint, cuts } of stick.joints)
        for (const cut of cuts) {
          const where = `${stick.timber.id} ${joint} ${cut.part}`;
          for (const outline of [cut.opening, ...(cut.bottom ? [cut.bottom] : [])]) {
            expect(inside(outline.along, stick.length), where).toBe(true);
            expect(inside(outline.across, breadthOf(cut.face, stick.frame)), where).toBe(true);
          }
          expect(cut.opening.along[1] - cut.opening.along[0], where).toBeGreaterThan(0);
          for (const way of ["along", "across"] as const) {
            const at = (cut.corners ?? []).map((corner) => corner[way]);
            if (at.length > 0) expectRange(cut.opening[way], Math.min(...at), Math.max(...at));
          }
          expect(cut.depth, where).toBeGreaterThan(0);
          expect(cut.depth + cut.floor, where).toBeCloseTo(woodBelow(cut.face, stick.frame), 9);
          marks++;
        }
    expect(marks).toBeGreaterThan(10);
  });

  test("the two ends and what lies between make up the length", () => {
    for (const { timber, length: whole, foot, head } of sticks) {
      expect(whole).toBeCloseTo(timber.length, 9);
      const tips = [foot, head].flatMap((end) => [
        ...end.crosses,
        ...end.tenons.flatMap((t) => t.outline.map((c) => c.along)),
      ]);
      expect(Math.min(...tips), timber.id).toBeCloseTo(0, 6);
      expect(Math.max(...tips), timber.id).toBeCloseTo(whole, 6);
    }
  });

  test("every cut of every joint is marked, on both of its timbers", () => {
    for (const joint of model.joints) {
      const { mortises, housings, notches, tenons } = joint.solids;
      const of = stickOf(joint.of.id);
      const into = stickOf(joint.into.id);
      const count = (stick: StickLayout, role: string): number =>
        stick.joints.find((m) => m.joint === joint.id && m.role === role)?.cuts.length ?? 0;
      expect(count(into, "receiving"), joint.id).toBe(mortises.length + housings.length);
      // a seat that the model puts past the rafter's end takes no wood from it
      const past = notches.filter((prism) => {
        const at = cornersOf(prism).map((p) => dot(sub(p, joint.of.origin), joint.of.axis));
        const [start, end] = stickExtent(
          joint.of,
          model.joints.filter((other) => other.of.id === joint.of.id),
          model.joints.filter((other) => other.into.id === joint.of.id),
        );
        return Math.max(...at) <= start || Math.min(...at) >= end;
      });
      expect(count(of, "joined"), joint.id).toBe(notches.length - past.length);
      const end = joint.end === "foot" ? of.foot : of.head;
      if (tenons.length > 0) expect(end.tenons.length, joint.id).toBeGreaterThanOrEqual(tenons.length);
    }
  });

  test("a peg’s hole is one line through both timbers", () => {
    for (const joint of model.joints) {
      if (!joint.sizes.pegs) continue;
      const of = stickOf(joint.of.id);
      const into = stickOf(joint.into.id);
      const mine = marksOf(of, joint.id).holes;
      const theirs = marksOf(into, joint.id).holes;
      expect(mine.length, joint.id).toBe(joint.solids.pegs.length);
      expect(theirs.length, joint.id).toBe(mine.length);
      for (const [i, hole] of mine.entries()) {
        const a = lineOf(model, of, hole);
        const b = lineOf(model, into, theirs[i] ?? hole);
        expect(Math.abs(dot(a.way, b.way)), joint.id).toBeCloseTo(1, 6);
        expect(length(cross(sub(b.point, a.point), a.way)), joint.id).toBeLessThan(1e-6);
      }
    }
  });

  test("a tenon's cheeks are the sides of its mortise", () => {
    for (const joint of model.joints) {
      if (joint.kind !== "mortise-and-tenon" && joint.kind !== "brace-tenon") continue;
      const of = stickOf(joint.of.id);
      const into = stickOf(joint.into.id);
      const tenon = (joint.end === "foot" ? of.foot : of.head).tenons[0];
      const mortise = marksOf(into, joint.id).cuts.find((c) => c.part === "mortise");
      expect(tenon, joint.id).toBeDefined();
      if (!tenon || !mortise) throw new Error(joint.id);
      // both cheeks as points on their planes; the mortise's two sides likewise, by the normal of the tenon's face
      const normal = of.frame.normals[tenon.cheeksFrom - 1] ?? of.frame.normals[0];
      const corner = tenon.outline[0] ?? { along: 0, across: 0 };
      const cheek = (below: number): number =>
        dot(
          tenon.cheeksFrom === 1
            ? pointOf(model, of, corner.along, below, corner.across)
            : pointOf(model, of, corner.along, corner.across, below),
          normal,
        );
      const side = (across: number): number => {
        const at = mortise.opening.along[0];
        return dot(
          mortise.face % 2 === 1 ? pointOf(model, into, at, 0, across) : pointOf(model, into, at, across, 0),
          normal,
        );
      };
      const own = tenon.cheeks.map(cheek).sort((a, b) => a - b);
      const sides = mortise.opening.across.map(side).sort((a, b) => a - b);
      expect(own[0], joint.id).toBeCloseTo(sides[0] ?? 0, 6);
      expect(own[1], joint.id).toBeCloseTo(sides[1] ?? 0, 6);
    }
  });
});

describe("mirrored sticks", () => {
  const model = sample("cider-press-pavilion");

  test.each([
    ["post@A1", "post@B1"],
    ["post@A1", "post@A3"],
    ["post@A1", "post@B3"],
    ["plate@A", "plate@B"],
    ["knee@A1-A2", "knee@B3-B2"],
    ["tie-knee@A1-B1", "tie-knee@B1-A1"],
    ["rafter@A.1", "rafter@B.1"],
  ])("%s and %s have the same marks", (one, other) => {
    const numbers = (id: string) => {
      const { length: whole, foot, head, joints } = layoutOf(model, id);
      const round = (value: unknown): unknown =>
        JSON.parse(
          JSON.stringify(value, (_, v: unknown) =>
            typeof v === "number" ? Math.round(v * 1e6) / 1e6 || 0 : v,
          ),
        );
      const sorted = (list: readonly unknown[]): string[] => list.map((v) => JSON.stringify(v)).sort();
      const end = ({ crosses, tenons }: typeof foot) => ({
        crosses,
        tenons: tenons.map((t) => ({ ...t, outline: sorted(round(t.outline) as unknown[]) })),
      });
      return round({
        whole,
        foot: end(foot),
        head: end(head),
        joints: joints.map((m) => ({
          kind: m.kind,
          cuts: m.cuts,
          holes: sorted(round(m.holes) as unknown[]),
        })),
      });
    };
    expect(numbers(other)).toEqual(numbers(one));
  });
});

describe("rounding to a mark", () => {
  test("sixteenths and whole millimetres, each distance by itself", () => {
    expect(toMark(10 + 1 / 33, false)).toBe(10);
    expect(toMark(10 + 1 / 31, false)).toBe(10 + 1 / 16);
    expect(toMark(-1e-9, false)).toBe(0);
    expect(toMark(100.49 / 25.4, true) * 25.4).toBeCloseTo(100, 9);
    expect(toMark(100.51 / 25.4, true) * 25.4).toBeCloseTo(101, 9);
  });
});
