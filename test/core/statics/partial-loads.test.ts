/** Loads on some spans only, where timbers run on over their supports: ASCE 7-16 sections 7.5, 4.3.3 and 4.8. */
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { basicLoads } from "../../../server/core/statics/basic-loads.ts";
import { frameCases } from "../../../server/core/statics/combine.ts";
import { totalOf } from "../../../server/core/statics/line-loads.ts";
import { readFrame } from "../../../server/document/read.ts";
import { SHED_IN_SNOW } from "../../shed.ts";

const ROOF = `roof:
  kind: gable
  pitch: 6:12
  rafters: {section: 4x6, spacing: 24 in, seat: {kind: birds-mouth}, overhang: {eave: 12 in, rake: 0 in}}
  deck: {kind: boards, thickness: 1 in}
  covering: {kind: standing-seam, coverage: 16 in}
`;
/** The shed with a roof, so many bents 9 ft apart, its plates ending in the plane of the end posts unless told. */
function roofed(bents: number, overhang = "0 in", ridge = true): string {
  const numbers = Array.from({ length: bents }, (_, i) => i + 1);
  const list = numbers.join(", ");
  const post = (wall: string): string => numbers.map((n) => `${wall}${n}`).join(", ");
  return SHED_IN_SNOW.replace(
    "{1: 0, 2: 9 ft}",
    `{${numbers.map((n) => `${n}: ${9 * (n - 1)} ft`).join(", ")}}`,
  )
    .replace("[A1, A2, B1, B2]", `[${post("A")}, ${post("B")}]`)
    .replace("bents: [1, 2], from: A", `bents: [${list}], from: A`)
    .replace(
      "from: 1, to: 2, top: eave, overhang: 12 in",
      `from: 1, to: ${bents}, top: eave, overhang: ${overhang}`,
    )
    .replace(
      "joints:\n",
      ridge
        ? `  king: {kind: king-post, section: 6x6, bents: [${list}], from: tie, to: ridge}\n  ridge: {kind: ridge, section: 6x8, from: 1, to: ${bents}, overhang: ${overhang}}\njoints:\n`
        : "joints:\n",
    )
    .concat(ROOF);
}

/** So little snow that roof live load on some spans can govern. */
const dry = (text: string): string => text.replace("ground: 30 psf", "ground: 20 psf");

function loaded(text: string) {
  const { frame, source } = readFrame(text);
  expect(source.facts, text).toEqual([]);
  const model = buildModel(frame);
  const { all } = basicLoads(model);
  return { model, all, cases: frameCases(frame.basis.loads, all) };
}
const partial = (all: ReturnType<typeof loaded>["all"], kind: string) =>
  all.filter((l) => l.kind === kind && l.partial);
const less = (all: ReturnType<typeof loaded>["all"], kind: string) =>
  partial(all, kind).map((l) => l.partial!.less.join(" "));

describe("spans along the walls", () => {
  test("one bay, plates that end over their posts: simple beams, nothing partial [published, 7.5.1]", () => {
    expect(loaded(roofed(2)).all.filter((l) => l.partial)).toEqual([]);
  });

  test("two bays: either span with half of the snow, or without roof live load [memory]", () => {
    const { all } = loaded(dry(roofed(3)));
    expect(less(all, "S")).toEqual(["1", "2"]);
    expect(less(all, "Lr")).toEqual(["1", "2"]);
    const whole = -totalOf(all.find((l) => l.id === "S/balanced")!.loads)[2];
    // alike halves: 1/2 (1 + 1/2) of the whole
    for (const load of partial(all, "S")) expect(-totalOf(load.loads)[2] / whole).toBeCloseTo(0.75, 6);
    const live = -totalOf(all.find((l) => l.id === "Lr")!.loads)[2];
    for (const load of partial(all, "Lr")) expect(-totalOf(load.loads)[2] / live).toBeCloseTo(0.5, 6);
  });

  test("every two neighbors are full at once and every span less at least once, in any number of bays", () => {
    for (const bents of [4, 5, 6, 9]) {
      const spans = bents - 1;
      for (const kind of ["S", "Lr"]) {
        const patterns = partial(loaded(dry(roofed(bents))).all, kind).map((l) => new Set(l.partial!.less));
        for (let i = 1; i < spans; i++)
          expect(
            patterns.some((p) => !p.has(i) && !p.has(i + 1)),
            `${kind} ${i} of ${spans}`,
          ).toBe(true);
        for (let i = 1; i <= spans; i++) expect(patterns.some((p) => p.has(i))).toBe(true);
        expect(patterns.length).toBeLessThanOrEqual(5);
      }
    }
  });

  test("four bays: snow full on the outer spans alone too, which live load has by every other span [memory, 7.5.1 case 1]", () => {
    const { all } = loaded(dry(roofed(5)));
    expect(less(all, "S")).toEqual(["1 4", "2", "3", "2 3"]);
    expect(less(all, "Lr")).toEqual(["1 3", "2 4", "1 4", "2", "3"]);
    // three bays: the middle one alone is less in turn anyway
    expect(less(loaded(dry(roofed(4))).all, "S")).toEqual(["1", "2", "3"]);
  });

  test("a bay of 3 ft between longer ones is a span of its own [published, 7.5.1]", () => {
    const narrow = roofed(4).replace("3: 18 ft, 4: 27 ft}", "3: 12 ft, 4: 21 ft}");
    const { all } = loaded(narrow);
    expect(partial(all, "S").map(({ partial: p }) => p!.spans)).toEqual([3, 3, 3]);
    expect(less(all, "S")).toEqual(["1", "2", "3"]);
  });

  test("a plate run out by two feet is a cantilever, a span of its own; by eight inches it is not", () => {
    expect(partial(loaded(roofed(2, "24 in")).all, "S")[0]?.partial?.spans).toBe(3);
    expect(loaded(roofed(2, "8 in")).all.filter((l) => l.partial)).toEqual([]);
  });

  test("roof live load stays whole where the snow, on all of it or on some, does more [derived]", () => {
    const snowy = roofed(3).replace("ground: 30 psf", "ground: 60 psf");
    expect(less(loaded(snowy).all, "Lr")).toEqual([]);
    expect(less(loaded(snowy).all, "S")).toEqual(["1", "2"]);
    const bare = snowy.replace("snow: {ground: 60 psf,", "snow: {");
    expect(less(loaded(bare).all, "Lr")).toEqual(["1", "2"]);
  });

  test("rafters of a gable from 1/2 on 12 up are exempt [published, 7.5]", () => {
    const { all } = loaded(roofed(3));
    expect(new Set(all.flatMap((l) => l.partial?.along ?? []))).toEqual(new Set(["walls"]));
  });
});

describe("combinations", () => {
  const { cases } = loaded(dry(roofed(3)));
  test("take one partial load at a time, and none with wind", () => {
    const some = cases.filter((c) => c.parts.some(({ load }) => load.partial));
    expect(some.length).toBeGreaterThan(3);
    for (const c of some) {
      expect(c.parts.filter(({ load }) => load.partial)).toHaveLength(1);
      expect(c.parts.some(({ load }) => load.kind === "W")).toBe(false);
    }
  });
  test("name only the loads that the frame has", () => {
    expect(new Set(cases.map((c) => c.combination.text))).toEqual(
      new Set([
        "D",
        "D + S",
        "D + Lr",
        "D + 0.6 W",
        "D + 0.75 S + 0.45 W",
        "D + 0.75 Lr + 0.45 W",
        "0.6 D + 0.6 W",
      ]),
    );
  });
});
