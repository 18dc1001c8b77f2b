/** Joists that lie on top of ties and run over them: nailed down there, they neither roll nor slide. */
import { describe, expect, test } from "vitest";
import { SHED } from "../../shed.ts";
import { checked, loft } from "./members.ts";

/** Two joists over both ties of the shed, their ends flush with the ties' outer faces. */
const OVER = SHED.replace("{A: 0, B: 10 ft}", "{A: 0, C: 3 ft, D: 7 ft, B: 10 ft}")
  .replace(
    "joints:\n",
    "  joist: {kind: joist, section: 4x6, walls: [C, D], from: 1, to: 2, bottom: tie-top, overhang: 4 in}\njoints:\n",
  )
  .concat("floors:\n  loft: {on: joist, live: 30 psf}\n");

const rolls = (text: string): string[] =>
  (checked(text).solution.hold.structure.links ?? []).flatMap(({ id }) =>
    id.endsWith(".upright") ? [id] : [],
  );

describe("joists that lie on ties", () => {
  test("are held against rolling and sliding: every combination has an answer", () => {
    const { solution, members } = checked(OVER);
    expect(solution.failed).toEqual([]);
    expect(members.get("joist@C")?.uses[0]?.ratio).toBeGreaterThan(0);
  });

  test("at each tie, square to their grain", () => {
    const ids = ["joist@C", "joist@D"].flatMap((j) => [1, 2].map((tie) => `tie@${tie}+${j}.upright`));
    expect(rolls(OVER).sort()).toEqual(ids.sort());
  });

  test("joists let in between ties, and those hung under them, get nothing from it", () => {
    expect(rolls(loft("4x6"))).toEqual([]);
    const under = OVER.replace("bottom: tie-top", "top: 6 ft 2 in");
    expect(rolls(under)).toEqual([]);
    expect(checked(under).solution.failed).not.toEqual([]);
  });
});
