/** A frame that looks the same from either side carries mirrored loads by mirrored forces, whatever its size. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { endForces } from "../../../server/core/statics/force-table.ts";
import type { FrameSolution, SolvedCase } from "../../../server/core/statics/solve-frame.ts";
import { checked } from "./members.ts";
import { type Shed, sheds, shedText } from "./random-shed.ts";

type Side = "x" | "y";

/** `W/+y` ↔ `W/-y`, leeward at wall A ↔ at wall B, less on the first span along the walls ↔ on the last. */
function mirroredId({ id, parts }: SolvedCase["frameCase"], side: Side): string {
  const spans = parts.map(({ load }) => load.partial?.spans).find((n) => n !== undefined) ?? 0;
  const last = (less: string): string =>
    less
      .split("-")
      .map((n) => spans + 1 - Number(n))
      .sort((a, b) => a - b)
      .join("-");
  const winds: Record<string, string> = { [`+${side}`]: `-${side}`, [`-${side}`]: `+${side}` };
  const walls: Record<string, string> = side === "y" ? { A: "B", B: "A" } : {};
  return id
    .replace(/W\/([+-][xy])/, (all, way: string) => all.replace(way, winds[way] ?? way))
    .replace(/leeward\/([AB])/, (all, wall: string) => all.replace(wall, walls[wall] ?? wall))
    .replace(/(?<=walls-)[\d-]+/, (less) => (side === "x" ? last(less) : less));
}

/** Where each node and each stick of the frame lies in the mirror. */
function mirrored({ hold }: FrameSolution, side: Side, middle: number) {
  const k = side === "x" ? 0 : 1;
  const { nodes, elements } = hold.structure;
  const other = nodes.map(({ at }) => {
    const image = at.map((v, m) => (m === k ? 2 * middle - v : v));
    return nodes.findIndex((n) => n.at.every((v, m) => Math.abs(v - image[m]!) < 1e-4));
  });
  const ends = (i: number, j: number): string => [i, j].sort((a, b) => a - b).join();
  const sticks = new Map(elements.map((e, n) => [ends(e.i, e.j), n]));
  const stick = elements.map((e) => sticks.get(ends(other[e.i] ?? -1, other[e.j] ?? -1)) ?? -1);
  // points nearer than 3/4 in are taken as one from a timber's foot on, which its image need not do
  fc.pre(!other.includes(-1) && !stick.includes(-1));
  return { other, stick };
}

/** Forces of a stick's end that do not depend on how its axes are laid: along, across, twist, bending. */
function plain(tips: Float64Array, element: number, end: "i" | "j"): number[] {
  const [n = 0, vy = 0, vz = 0, t = 0, my = 0, mz = 0] = endForces(tips, element, end);
  return [end === "i" ? -n : n, Math.hypot(vy, vz), Math.abs(t), Math.hypot(my, mz)];
}

/** A shift and a turn in the mirror: turns are the other way about what lies in it. */
function flip(six: readonly number[], side: Side): number[] {
  const signs = side === "x" ? [-1, 1, 1, 1, -1, -1] : [1, -1, 1, -1, 1, -1];
  return six.map((v, m) => v * signs[m]!);
}

function expectMirrored(shed: Shed, side: Side): void {
  const { solution } = checked(shedText(shed));
  const middle = side === "x" ? ((shed.bents - 1) * shed.bay * 12) / 2 : (shed.width * 12) / 2;
  const { other, stick } = mirrored(solution, side, middle);
  const wrong: string[] = [];
  const near = (got: readonly number[], want: readonly number[], size: number, where: () => string): void => {
    want.forEach((v, m) => {
      if (!(Math.abs(v - got[m]!) < 1e-6 * size)) wrong.push(`${where()} [${m}]: ${got[m]} for ${v}`);
    });
  };
  let differ = 0;
  for (const solved of solution.cases) {
    const { frameCase, seats, combined, frame } = solved;
    const id = mirroredId(frameCase, side);
    if (id !== frameCase.id) differ++;
    const image = solution.cases.find((c) => c.frameCase.id === id && c.seats === seats);
    expect(image, `${frameCase.id} has its mirror image`).toBeDefined();
    expect(image!.combined.status, id).toBe(combined.status);
    const most = Math.max(...combined.reactions().map((r) => Math.hypot(...r.force.slice(0, 3))));
    const inMirror = new Map(image!.combined.reactions().map((r) => [r.node, r.force]));
    for (const { node, force } of combined.reactions()) {
      const got = flip(inMirror.get(other[node]!) ?? [], side);
      near(got.slice(0, 3), force.slice(0, 3), most, () => `${id} reaction of ${node}`);
    }
    const [own, images] = [combined.tips, image!.combined.tips];
    frame.structure.elements.forEach((e, n) => {
      const turned = frame.structure.elements[stick[n]!]!.i !== other[e.i];
      for (const end of ["i", "j"] as const) {
        const far = end === "i" ? "j" : "i";
        const got = plain(images, stick[n]!, turned ? far : end);
        near(got, plain(own, n, end), 100 * most, () => `${id} ${e.id} ${end}`);
      }
    });
    frame.structure.nodes.forEach((_, n) => {
      const shift = flip(image!.combined.displacement(other[n]!), side).slice(0, 3);
      near(shift, combined.displacement(n).slice(0, 3), 100, () => `${id} shift of ${n}`);
    });
  }
  expect(wrong.slice(0, 5)).toEqual([]);
  expect(differ, "combinations that are not their own image").toBeGreaterThan(10);
}

/** Sticks of a bent between others lie to one face of it, so along the walls only a single bay is its own image. */
const ALIKE: Readonly<Record<Side, fc.Arbitrary<Shed>>> = {
  y: sheds,
  x: sheds.map((shed) => ({ ...shed, bents: 2 })),
};

describe("a shed that is the same on both sides", () => {
  test.each(["y", "x"] as const)(
    "mirrored along %s: reactions, forces and shifts mirrored [derived]",
    (side) => {
      fc.assert(
        fc.property(ALIKE[side], (shed) => {
          expectMirrored(shed, side);
        }),
        { seed: 20_241, numRuns: 5 },
      );
    },
  );
});
