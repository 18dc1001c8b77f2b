/** Basic loads that others add up to: the sums give back every load, and the frame answers as if each were solved alone. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { prepare } from "../../../server/core/analysis/analyse.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import type { Timber } from "../../../server/core/model/model.ts";
import type { Vec3 } from "../../../server/core/model/vec.ts";
import { analyseFrame } from "../../../server/core/statics/analyse-frame.ts";
import { loadCase } from "../../../server/core/statics/element-loads.ts";
import { isSolved } from "../../../server/core/statics/force-table.ts";
import type { LineLoad } from "../../../server/core/statics/line-loads.ts";
import { loadsInSum as inSum } from "../../../server/core/statics/loads-in-sum.ts";
import { readFrame } from "../../../server/document/read.ts";

const textOf = (name: string): string =>
  readFileSync(new URL(`../../../samples/${name}.frame.yaml`, import.meta.url), "utf8");
const model = buildModel(readFrame(textOf("cider-press-pavilion")).frame);
const [post, other] = model.timbers as [Timber, Timber];

const lying = (timber: Timber, from: number, to: number, start: Vec3, end: Vec3 = start): LineLoad => ({
  timber,
  from,
  to,
  startForce: start,
  endForce: end,
});
const down = (by: number): Vec3 => [0, 0, -by];

type Basic = { readonly kind: "S" | "Lr"; readonly loads: LineLoad[] };

/** With loads named by their places. */
function loadsInSum(loads: readonly Basic[]) {
  // the very same load twice is one to a map
  const own = loads.map((load) => ({ ...load }));
  const { solved, shares } = inSum(own);
  return {
    solved: solved.map((l) => own.indexOf(l)),
    shares: own.map((l) => shares.get(l)!.map(({ of, factor }) => ({ of: solved.indexOf(of), factor }))),
  };
}

describe("sums", () => {
  test("a share of another load, and the sum of two", () => {
    const a = { kind: "S" as const, loads: [lying(post, 0, 40, down(3))] };
    const b = { kind: "S" as const, loads: [lying(other, 0, 40, down(2), down(4))] };
    const half = { kind: "S" as const, loads: [lying(post, 0, 40, down(1.5))] };
    const both = {
      kind: "S" as const,
      loads: [lying(other, 0, 40, down(1), down(2)), lying(post, 0, 40, down(6))],
    };
    const { solved, shares } = loadsInSum([a, half, b, both]);
    expect(solved).toEqual([0, 2]);
    expect(shares[1]).toEqual([{ of: 0, factor: 0.5 }]);
    expect(shares[3]).toEqual([
      { of: 0, factor: 2 },
      { of: 1, factor: 0.5 },
    ]);
  });

  test("other stretches, other senses, other shapes are other loads", () => {
    const first = lying(post, 0, 40, down(3));
    for (const load of [
      lying(post, 0, 41, down(3)),
      lying(post, 1, 40, down(3)),
      lying(other, 0, 40, down(3)),
      lying(post, 0, 40, [0, 3, 0]),
      lying(post, 0, 40, down(3), down(3.001)),
    ])
      expect(
        loadsInSum([
          { kind: "S" as const, loads: [first] },
          { kind: "S" as const, loads: [load] },
        ]).solved,
      ).toEqual([0, 1]);
  });

  test("what is of another kind is no share", () => {
    const loads = [lying(post, 0, 40, down(3))];
    const { solved } = loadsInSum([
      { kind: "S", loads },
      { kind: "Lr", loads },
      { kind: "S", loads },
    ]);
    expect(solved).toEqual([0, 1]);
  });

  test("stretches that rounding parts are one", () => {
    const first = { kind: "S" as const, loads: [lying(post, 0, 40, down(3))] };
    const second = { kind: "S" as const, loads: [lying(post, 1e-13, 40 - 1e-12, down(6))] };
    expect(loadsInSum([first, second]).shares[1]).toEqual([{ of: 0, factor: 2 }]);
  });

  test("line loads that lie on the same stretch count together", () => {
    const twice = { kind: "S" as const, loads: [lying(post, 0, 40, down(1)), lying(post, 0, 40, down(2))] };
    expect(
      loadsInSum([{ kind: "S" as const, loads: [lying(post, 0, 40, down(3))] }, twice]).shares[1],
    ).toEqual([{ of: 0, factor: 1 }]);
  });

  test("no load is no share of any; what is no number stands alone and spoils no other", () => {
    const plain = { kind: "S" as const, loads: [lying(post, 0, 40, down(3))] };
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      const wrong = { kind: "S" as const, loads: [lying(other, 0, 40, down(bad))] };
      const { solved, shares } = loadsInSum([plain, wrong, wrong, { kind: "S" as const, loads: [] }, plain]);
      expect(solved, String(bad)).toEqual([0, 1, 2]);
      expect(shares[3], String(bad)).toEqual([]);
      expect(shares[4], String(bad)).toEqual([{ of: 0, factor: 1 }]);
    }
  });

  test("a sum that takes great factors is solved itself", () => {
    const nearly = (by: number) => ({
      kind: "S" as const,
      loads: [lying(post, 0, 40, down(3)), lying(other, 0, 40, down(by))],
    });
    const { solved } = loadsInSum([
      nearly(0),
      nearly(0.001),
      { kind: "S" as const, loads: [lying(other, 0, 40, down(1))] },
    ]);
    expect(solved).toEqual([0, 1, 2]);
  });

  test("whatever loads there are, their sums give them back", () => {
    const force = fc.constantFrom(-2, -1, 0, 0, 0, 0.5, 1, 3);
    const stretch = fc.constantFrom(
      [post, 0, 40] as const,
      [post, 40, 80] as const,
      [other, 0, 40] as const,
      [other, 10, 30] as const,
    );
    const line = fc
      .tuple(stretch, force, force, force)
      .map(([[timber, from, to], x, z, end]) => lying(timber, from, to, [x, 0, z], [x, 0, end]));
    const basic = fc.record({ kind: fc.constant("S" as const), loads: fc.array(line, { maxLength: 5 }) });
    fc.assert(
      fc.property(fc.array(basic, { maxLength: 12 }), (loads) => {
        const { solved, shares } = loadsInSum(loads);
        const figures = ({ loads: lines }: { loads: LineLoad[] }) => {
          const sums = new Map<string, number>();
          for (const { timber, from, to, startForce, endForce } of lines)
            [...startForce, ...endForce].forEach((v, k) => {
              const key = `${timber.id} ${from} ${to} ${k}`;
              sums.set(key, (sums.get(key) ?? 0) + v);
            });
          return sums;
        };
        const all = loads.map(figures);
        for (const [n, own] of shares.entries()) {
          const keys = new Set(
            [all[n]!, ...own.map(({ of }) => all[solved[of]!]!)].flatMap((f) => [...f.keys()]),
          );
          for (const key of keys) {
            const sum = own.reduce((s, { of, factor }) => s + factor * (all[solved[of]!]!.get(key) ?? 0), 0);
            expect(sum).toBeCloseTo(all[n]!.get(key) ?? 0, 9);
          }
        }
        // what is solved, no others add up to
        expect(loadsInSum(solved.map((n) => loads[n]!)).solved).toEqual(solved.map((_, n) => n));
      }),
    );
  });
});

describe.each(["goat-shed", "cider-press-pavilion", "kayak-shelter"])("%s", (name) => {
  const { solution } = analyseFrame(buildModel(readFrame(textOf(name)).frame))!;

  test("fewer loads are solved than there are", () => {
    expect(inSum(solution.loads.all).solved.length).toBeLessThan(0.9 * solution.loads.all.length);
  });

  test("every combination has the forces and reactions that it has with each load solved alone", () => {
    const cases = solution.cases.filter((c) => isSolved(c) && c.seats === "hold" && !c.bracesNominal);
    const { frame } = cases[0]!;
    const loads = solution.loads.all;
    const alone = prepare(frame.structure).superpose(
      loads.map((l) => loadCase(frame, l.id, [{ loads: l.loads, factor: 1 }])),
    );
    for (const { frameCase, combined } of cases) {
      const factors = loads.map((l) => frameCase.parts.find((p) => p.load === l)?.factor ?? 0);
      const other = alone.combine(frameCase.id, factors);
      expect(combined.dropped, frameCase.id).toEqual(other.dropped);
      const largest = other.tips.reduce((most, v) => Math.max(most, Math.abs(v)), 0);
      const off = (a: Float64Array, b: Float64Array) =>
        a.reduce((most, v, k) => Math.max(most, Math.abs(v - b[k]!)), 0) / largest;
      expect(off(combined.tips, other.tips), frameCase.id).toBeLessThan(1e-9);
      expect(off(combined.sections(), other.sections()), frameCase.id).toBeLessThan(1e-9);
      const reactions = (c: typeof other) => Float64Array.from(c.reactions().flatMap((r) => [...r.force]));
      expect(off(reactions(combined), reactions(other)), frameCase.id).toBeLessThan(1e-9);
    }
  });
});
