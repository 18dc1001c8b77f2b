/** Series: spacing as the most allowed, counts, fixed layouts; joists and purlins (placement rules; derived). */
import { describe, expect, test } from "vitest";
import { MOST_IN_SERIES, positions } from "../../../server/core/model/series.ts";
import { boxOf, build, expectNear, idsOf, problemsOf, stick } from "./frames.ts";

describe("positions", () => {
  test("even: the fewest bays that keep the spacing", () => {
    expect(positions(0, 100, 30, undefined, "even")).toEqual([0, 25, 50, 75, 100]);
    expect(positions(0, 90, 30, undefined, "even")).toEqual([0, 30, 60, 90]);
    expect(positions(0, 90.00000001, 30, undefined, "even")).toHaveLength(4);
  });

  test("fixed: the remainder in the last bay", () => {
    expect(positions(0, 100, 30, undefined, "fixed")).toEqual([0, 30, 60, 90, 100]);
    expect(positions(0, 90, 30, undefined, "fixed")).toEqual([0, 30, 60, 90]);
  });

  test("a count goes before a spacing; one alone stands in the middle", () => {
    expect(positions(0, 90, 10, 4, "even")).toEqual([0, 30, 60, 90]);
    expect(positions(0, 90, 10, 4, "fixed")).toEqual([0, 30, 60, 90]);
    expect(positions(0, 90, undefined, 1, "even")).toEqual([45]);
  });

  test("no room, no end of it", () => {
    expect(positions(5, 5, 10, undefined, "even")).toEqual([5]);
    expect(positions(9, 5, 10, 3, "even")).toEqual([7]);
    expect(positions(0, 1e6, 1e-9, undefined, "even")).toHaveLength(MOST_IN_SERIES + 1);
    expect(positions(0, 1e6, 1e-9, undefined, "fixed").length).toBeLessThanOrEqual(MOST_IN_SERIES + 2);
    expect(positions(0, 1e6, undefined, 1e9, "even")).toHaveLength(MOST_IN_SERIES + 1);
    expect(positions(0, 90, 0, undefined, "fixed")).toEqual([0, 90]);
  });
});

describe("joists", () => {
  const ties = {
    post: "{kind: post, section: 8x8, at: [A1, A2, A3, B1, B2, B3], from: base, to: top}",
    tie: "{kind: tie, section: 8x10, bents: [1, 2, 3], top: tie-top}",
  };
  const joists = (keys: string) =>
    build({ members: { ...ties, joist: `{kind: joist, section: 4x6, between: [tie, tie], ${keys}}` } });
  const middles = (model: ReturnType<typeof build>, bay = "1") =>
    idsOf(model, "joist")
      .filter((id) => id.startsWith(`joist@${bay}`))
      .map((id) => {
        const { y } = boxOf(stick(model, id));
        return Math.round(((y[0] + y[1]) / 2) * 1e6) / 1e6;
      });

  test("between neighbouring ties, flush with their tops, in pockets", () => {
    const model = build({
      members: { ...ties, joist: "{kind: joist, section: 4x6, between: [tie@1, tie@2], count: 3}" },
    });
    expect(idsOf(model, "joist")).toEqual(["joist.1", "joist.2", "joist.3"]);
    const box = boxOf(stick(model, "joist.2"));
    // faces 8 and 116, 2 in of bearing
    expectNear(box.x[0], 6, "bearing");
    expectNear(box.x[1], 118, "bearing");
    expect(box.z).toEqual([78, 84]);
    // the ties' shoulders stand at the posts' faces 8 and 136, but a series fills the ties as they are placed: 0 to 144
    expectNear(box.y[0], 70, "middle");
  });

  test("one of each bay, in the middle, when neither spacing nor count is given", () => {
    const model = joists("top: tie-top");
    expect(idsOf(model, "joist")).toEqual(["joist@1", "joist@2"]);
    expect(middles(model)).toEqual([72]);
  });

  test("from wall to wall, spacing the most allowed, even or fixed", () => {
    // centers 2 to 142: 140 / 30 = 4.67, so 5 bays of 28
    expect(middles(joists("from: A, to: B, spacing: 30 in"))).toEqual([2, 30, 58, 86, 114, 142]);
    expect(middles(joists("from: A, to: B, spacing: 30 in, layout: fixed"))).toEqual([
      2, 32, 62, 92, 122, 142,
    ]);
    expect(middles(joists("from: A, to: B, count: 3"), "2")).toEqual([2, 72, 142]);
  });

  test("from lengths, counted from the first wall", () => {
    expect(middles(joists("from: 2 ft, to: 6 ft, count: 3"))).toEqual([24, 48, 72]);
    const moved = build({
      walls: "{A: 10 in, B: 12 ft 10 in}",
      members: {
        ...ties,
        joist: "{kind: joist, section: 4x6, between: [tie, tie], from: 2 ft, to: 6 ft, count: 3}",
      },
    });
    expect(middles(moved)).toEqual([34, 58, 82]);
  });

  test("between two timbers, whose faces are the ends of the series; the count is that of the sticks", () => {
    // posts' inside faces 8 and 136: four bays of 32
    expect(middles(joists("from: post, to: post, count: 3"))).toEqual([40, 72, 104]);
    expect(middles(joists("from: post, to: post, spacing: 32 in"))).toEqual([40, 72, 104]);
  });

  test("between girts and beams that run along the walls", () => {
    const model = build({
      members: {
        beam: "{kind: beam, section: 8x10, walls: [A, B], top: 4 ft}",
        joist: "{kind: joist, section: 4x6, between: [beam, beam], from: 1, to: 3, count: 3}",
      },
    });
    expect(idsOf(model, "joist")).toEqual(["joist.1", "joist.2", "joist.3"]);
    const { x } = boxOf(stick(model, "joist.2"));
    expect([x[0], x[1]]).toEqual([118, 122]);
    expect(problemsOf(model)).toEqual([]);
  });

  test("a slip of the pen does not fill the memory", () => {
    const model = joists("from: A, to: B, spacing: 1/64 in");
    expect(model.timbers.length).toBeLessThanOrEqual(9 + 2 * (MOST_IN_SERIES + 1));
  });
});
