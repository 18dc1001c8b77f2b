/**
 * Shares of posts, plates and ridges, and the live load of floors.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FLOOR_LIVE, floorLive } from "../../../server/core/loads/floor-live.ts";
import { continuousReactions, postAreas, rafterShares } from "../../../server/core/loads/tributary.ts";

const spans = fc.array(fc.double({ min: 1, max: 40, noNaN: true }), { minLength: 1, maxLength: 6 });
const overhang = fc.record({
  first: fc.double({ min: 0, max: 5, noNaN: true }),
  last: fc.double({ min: 0, max: 5, noNaN: true }),
});

describe("a plate over several posts", () => {
  it("of three equal spans bears 0.4, 1.1, 1.1, 0.4 w l (derived, theorem of three moments)", () => {
    const got = continuousReactions([10, 10, 10], 1);
    for (const [i, want] of [4, 11, 11, 4].entries()) expect(got[i]).toBeCloseTo(want, 9);
  });
  it("of one span is a simple beam, with an overhang by statics", () => {
    expect(continuousReactions([10], 2)).toEqual([10, 10]);
    const [first, last] = continuousReactions([6], 30, { first: 1.5, last: 0 });
    const { plate, ridge } = rafterShares(6, 1.5).byStatics;
    expect(first).toBeCloseTo(30 * plate, 9);
    expect(last).toBeCloseTo(30 * ridge, 9);
  });
  it("loses nothing: reactions sum to the load and balance its moment", () => {
    fc.assert(
      fc.property(spans, overhang, (lengths, ends) => {
        const reactions = continuousReactions(lengths, 7, ends);
        const length = lengths.reduce((sum, l) => sum + l, 0);
        const all = length + ends.first + ends.last;
        const places = [0, ...lengths.map((_, i) => lengths.slice(0, i + 1).reduce((sum, l) => sum + l, 0))];
        expect(reactions.reduce((sum, r) => sum + r, 0)).toBeCloseTo(7 * all, 6);
        const turning = reactions.reduce((sum, r, i) => sum + r * (places[i] ?? 0), 0);
        expect(turning).toBeCloseTo(7 * all * (all / 2 - ends.first), 5);
      }),
    );
  });
  it("read from its other end gives the same reactions", () => {
    fc.assert(
      fc.property(spans, overhang, (lengths, ends) => {
        const there = continuousReactions(lengths, 3, ends);
        const back = continuousReactions([...lengths].reverse(), 3, { first: ends.last, last: ends.first });
        for (const [i, r] of there.entries()) expect(r).toBeCloseTo(back[there.length - 1 - i]!, 6);
      }),
    );
  });
  it("with unequal spans meets the three moments: 8 and 12 ft under 1 plf, M = −14 ft-lb (derived)", () => {
    // M = −w (l₁³ + l₂³)/(8 (l₁ + l₂)) = −(512 + 1728)/160 = −14
    const [a, b, c] = continuousReactions([8, 12], 1);
    expect(a).toBeCloseTo(4 - 14 / 8, 9);
    expect(c).toBeCloseTo(6 - 14 / 12, 9);
    expect(b).toBeCloseTo(20 - a! - c!, 9);
  });
});

describe("posts of a grid", () => {
  it("share the whole roof among them", () => {
    fc.assert(
      fc.property(spans, spans, overhang, (across, along, { first, last }) => {
        const line = (lengths: readonly number[]) => [
          0,
          ...lengths.map((_, i) => lengths.slice(0, i + 1).reduce((at, l) => at + l, 0)),
        ];
        const [walls, bents] = [line(across), line(along)];
        const sum = postAreas(walls, bents, { eaves: first, gables: last })
          .flat()
          .reduce((total, area) => total + area, 0);
        expect(sum).toBeCloseTo((walls.at(-1)! + 2 * first) * (bents.at(-1)! + 2 * last), 6);
      }),
    );
  });
});

describe("floor live load (memory, ASCE 7 chapter 4)", () => {
  const beam = { basic: 40, member: "beam", area: 200, floors: 1, assembly: false } as const;
  it("lists lofts by use", () => {
    expect(FLOOR_LIVE["attic-limited-storage"].value).toBe(20);
    expect(FLOOR_LIVE.sleeping.value).toBe(30);
    expect(Object.values(FLOOR_LIVE).every((l) => l.status === "memory" && l.source !== "")).toBe(true);
  });
  it("is reduced from an area of influence of 400 ft²: 0.25 + 15/√(2 · 300)", () => {
    expect(floorLive(beam).value).toBe(40);
    expect(floorLive({ ...beam, area: 199 }).value).toBe(40);
    expect(floorLive({ ...beam, area: 300 }).reduction.value).toBeCloseTo(0.25 + 15 / Math.sqrt(600), 9);
    expect(floorLive({ ...beam, member: "post", area: 300 }).value).toBeCloseTo(
      40 * (0.25 + 15 / Math.sqrt(1200)),
      9,
    );
  });
  it("keeps half for one floor, 0.4 for more, and all of storage and assembly", () => {
    expect(floorLive({ ...beam, area: 1e5 }).value).toBe(20);
    expect(floorLive({ ...beam, area: 1e5, floors: 2 }).value).toBe(16);
    expect(floorLive({ ...beam, area: 1e5, basic: 125 }).value).toBe(125);
    expect(floorLive({ ...beam, area: 1e5, assembly: true }).value).toBe(40);
  });
});
