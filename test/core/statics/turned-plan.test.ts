/** The same frame written with its walls for bents and its bents for walls stands on its piers as before. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { SolvedCase } from "../../../server/core/statics/solve-frame.ts";
import { type Checked, checked } from "./members.ts";

interface Deck {
  /** feet, under the beams that lie on the posts */
  readonly long: number;
  /** feet, under the beams between the posts */
  readonly cross: number;
  readonly leg: number;
  readonly depth: number;
  readonly joists: number;
  readonly live: number;
  /** across, too */
  readonly braced: boolean;
}

const decks: fc.Arbitrary<Deck> = fc.record({
  long: fc.integer({ min: 8, max: 14 }),
  cross: fc.integer({ min: 7, max: 12 }),
  leg: fc.integer({ min: 24, max: 32 }),
  depth: fc.integer({ min: 8, max: 12 }),
  joists: fc.integer({ min: 2, max: 5 }),
  live: fc.integer({ min: 30, max: 80 }),
  braced: fc.boolean(),
});

/** @param turned the long beams lie in the bents, not along the walls */
function deckText({ long, cross, leg, depth, joists, live, braced }: Deck, turned: boolean): string {
  const [wide, deep] = turned ? [long, cross] : [cross, long];
  const along = "walls: [A, B], from: 1, to: 2";
  const across = "bents: [1, 2], from: A, to: B";
  const [first, second] = turned ? ["A", "B"] : ["1", "2"];
  return `frame: Deck on four posts
format: 1
units: inch
basis: {loads: asce-7-16, risk-category: i}
site:
  frost-depth: 32 in
  soil: sand
timber:
  frame: {species: eastern-white-pine, grade: no-1, seasoning: green}
  pegs:  {species: white-oak}
grid:
  walls: {A: 0, B: ${wide} ft}
  bents: {1: 0, 2: ${deep} ft}
  levels: {pier-top: 8 in, low: 7 ft, high: 9 ft}
members:
  post:  {kind: post, section: 8x8, at: [A1, A2, B1, B2], from: pier-top, to: long}
  long:  {kind: beam, section: 8x10, ${turned ? across : along}, top: high}
  cross: {kind: beam, section: 8x${depth}, ${turned ? along : across}, top: low}
  joist: {kind: joist, section: 4x6, between: [cross@${first}, cross@${second}], from: 1 ft, to: ${cross - 3} ft, count: ${joists}}
  knee:  {kind: brace, section: 4x6, between: [post, long], leg: ${leg} in}
${
  braced
    ? `  cross-knee: {kind: brace, section: 4x6, between: [post, cross], leg: ${leg - 2} in}
`
    : ""
}floors:
  deck: {on: joist, live: ${live} psf}
piers:
  all: {under: post, kind: tube, diameter: 14 in, depth: 48 in, anchor: {kind: embedded-strap, stand-off: 1 in}}
`;
}
/** `post@A2` ↔ `post@B1`, `long@A` ↔ `long@1`, `knee@A1-A2` ↔ `knee@A1-B1`. */
function turnedId(id: string): string {
  const swap: Record<string, string> = { A: "1", B: "2", 1: "A", 2: "B" };
  const [name, where] = id.split("@");
  if (where === undefined) return id;
  const places = where.split("-").map((place) =>
    [...place]
      .map((c) => swap[c] ?? c)
      .toReversed()
      .join(""),
  );
  return `${name}@${places.join("-")}`;
}

const swapped = ([x = 0, y = 0, z = 0]: readonly number[]): number[] => [y, x, z];

/** Reactions by the place of the foot, plan turned back where asked. */
function feet({ frame, combined }: SolvedCase, turned: boolean): { at: number[]; force: number[] }[] {
  const way = turned ? swapped : (v: readonly number[]) => v.slice(0, 3);
  return combined
    .reactions()
    .map(({ node, force }) => ({ at: way(frame.structure.nodes[node]?.at ?? []), force: way(force) }))
    .sort((a, b) => (a.at[0] ?? 0) - (b.at[0] ?? 0) || (a.at[1] ?? 0) - (b.at[1] ?? 0));
}

function expectSameForces(one: Checked, other: Checked): void {
  one.solution.cases.forEach((solved, n) => {
    const [here, there] = [feet(solved, false), feet(other.solution.cases[n]!, true)];
    const most = Math.max(...here.map(({ force }) => Math.hypot(...force)));
    expect(most).toBeGreaterThan(100);
    expect(there).toHaveLength(4);
    here.forEach(({ at, force }, k) => {
      at.forEach((v, m) => {
        expect(there[k]!.at[m]).toBeCloseTo(v, 6);
      });
      force.forEach((v, m) => {
        expect(Math.abs(there[k]!.force[m]! - v), `foot at ${at}`).toBeLessThan(1e-6 * most);
      });
    });
  });
  expect(one.members.size).toBe(one.model.timbers.length);
  for (const [id, { uses }] of one.members) {
    const found = other.members.get(turnedId(id));
    const checks = found?.uses.map((u) => u.what);
    expect(checks, `${id} as ${turnedId(id)}`).toEqual(uses.map((u) => u.what));
    uses.forEach((u, n) => {
      expect(Math.abs(found!.uses[n]!.ratio - u.ratio), `${id}: ${u.what}`).toBeLessThan(1e-6);
    });
  }
}

/** Which timbers move which way when the frame is pushed, by names of the frame that is not turned. */
function racking({ solution }: Checked, turned: boolean): Map<string, unknown> {
  return new Map(
    solution.racking.map(({ toward, stands, moving }) => [
      turned ? toward.replace(/[xy]/, (way) => (way === "x" ? "y" : "x")) : toward,
      { stands, moving: moving.map((id) => (turned ? turnedId(id) : id)).sort() },
    ]),
  );
}

function expectSame(deck: Deck): void {
  const [one, other] = [checked(deckText(deck, false)), checked(deckText(deck, true))];
  for (const { solution } of [one, other]) {
    expect(solution.cases.map((c) => c.frameCase.id)).toEqual(expect.arrayContaining(["1", "2"]));
    expect(solution.cases).toHaveLength(one.solution.cases.length);
    expect(solution.failed).toHaveLength(deck.braced ? 0 : solution.cases.length);
    expect(solution.mechanisms.length > 0).toBe(!deck.braced);
  }
  if (deck.braced) expectSameForces(one, other);
  const here = racking(one, false);
  expect([...racking(other, true)].sort()).toEqual([...here].sort());
  expect(here.get("+x")).toEqual({ stands: true, moving: [] });
  expect(here.get("+y")).toMatchObject({ stands: deck.braced });
}

describe("a deck on four posts, its plan turned by a right angle", () => {
  test("reactions, ratios of every timber and racking are the same [derived]", () => {
    fc.assert(
      fc.property(decks, (deck) => {
        expectSame(deck);
      }),
      { seed: 90_210, numRuns: 12 },
    );
  });
});
