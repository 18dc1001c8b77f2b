/**
 * What holds a frame down against the wind: only the least of what weighs. Volumes and areas by hand from the sizes of the
 * timbers and the roof; weights at 12 percent moisture, 62.4 G (1 + 0.12), G of the Wood Handbook.
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { SolvedCase } from "../../../server/core/statics/solve-frame.ts";
import { SHED } from "../../shed.ts";
import { type Checked, checked } from "./members.ts";

const PAVILION = readFileSync(
  new URL("../../../samples/cider-press-pavilion.frame.yaml", import.meta.url),
  "utf8",
);

const of = (c: Checked, number: number): SolvedCase[] =>
  c.solution.cases.filter(
    ({ frameCase }) => frameCase.combination.number === number && frameCase.id.includes("W/"),
  );

/** lb straight down of the dead load in a case, before its factor. */
function deadOf({ frameCase }: SolvedCase): number {
  const dead = frameCase.parts.find(({ load }) => load.kind === "D")!.load;
  return dead.loads.reduce((sum, l) => sum - ((l.startForce[2] + l.endForce[2]) / 2) * (l.to - l.from), 0);
}

/** ft³ of all sticks but the rafters, and of the rafters, of one length each. */
function volumes({ model }: Checked): { readonly frame: number; readonly rafters: number } {
  const cubic = (rafters: boolean): number =>
    model.timbers
      .filter((t) => (t.kind === "rafter") === rafters)
      .reduce((sum, t) => sum + (t.width * t.depth * t.span) / 1728, 0);
  return { frame: cubic(false), rafters: cubic(true) };
}

describe("the pavilion: pine green, rafters of hemlock-tamarack dry, standing seam on boards of 1 in", () => {
  const c = checked(PAVILION);
  const { frame, rafters } = volumes(c);
  // ft² of slope at 7:12: the outer grid lines are outside faces; half of 13 ft and an eave of 18 in, twice; 18 ft and two
  // rakes of 12 in
  const roof = (2 * (78 + 18) * (216 + 24) * (Math.hypot(7, 12) / 12)) / 144;
  const hemlock = ((62.4 * 0.41) / (1 + 0.009 * 0.41 * 15)) * 1.15;

  test("0.6 D + 0.6 W: pine 62.4 × 0.35 × 1.12 lb/ft³, roof 0.9 + 0.03 + 2.04 psf, in every case [published]", () => {
    const hand = 62.4 * 0.35 * 1.12 * frame + hemlock * rafters + (0.9 + 0.03 + 2.04) * roof;
    for (const solved of of(c, 7)) {
      expect(deadOf(solved) / hand).toBeCloseTo(1, 2);
      expect(solved.frameCase.parts.map(({ factor }) => factor)).toEqual([0.6, 0.6]);
    }
    expect(of(c, 7).length).toBe(of(c, 5).length);
  });

  test("D + 0.6 W: green pine 36 lb/ft³ and roof 1 + 0.26 + 3 psf [memory]", () => {
    const hand = 36 * frame + hemlock * rafters + 4.26 * roof;
    for (const solved of of(c, 5)) expect(deadOf(solved) / hand).toBeCloseTo(1, 2);
  });

  test("every other combination keeps the green weight [derived]", () => {
    for (const { frameCase } of c.solution.cases)
      if (frameCase.combination.number !== 7)
        expect(frameCase.parts.filter(({ load }) => load.kind === "D").map(({ load }) => load.id)).toEqual([
          "D",
        ]);
  });

  test("reactions balance what is applied [derived]", () => {
    for (const solved of of(c, 7)) {
      const up = solved.combined.reactions().reduce((sum, r) => sum + r.force[2], 0);
      const wind = solved.frameCase.parts
        .find(({ load }) => load.kind === "W")!
        .load.loads.reduce((sum, l) => sum + ((l.startForce[2] + l.endForce[2]) / 2) * (l.to - l.from), 0);
      expect(up).toBeCloseTo(0.6 * deadOf(solved) - 0.6 * wind, 3);
    }
  });

  test("no timber sags most under it: it bends less than wind alone or dead load alone [derived]", () => {
    for (const { uses } of c.members.values())
      for (const u of uses) if (u.unit === "in") expect(u.caseId).not.toMatch(/^7/);
  });
});

describe("a weight that the file states", () => {
  const stated = (more: string): number => {
    const c = checked(SHED.replace("seasoning: green}", more));
    return deadOf(of(c, 7)[0]!) / volumes(c).frame;
  };
  test("of green timber is not what lasts: dry pine 24.5 lb/ft³ in place of 40 [published]", () =>
    expect(stated("seasoning: green, weight: 40 lb/ft³}")).toBeCloseTo(62.4 * 0.35 * 1.12, 1));
  test("of dry timber lasts [derived]", () =>
    expect(stated("seasoning: dry, weight: 40 lb/ft³}")).toBeCloseTo(40, 1));
  test("below the dry weight that is on record lasts too [derived]", () =>
    expect(stated("seasoning: green, weight: 22 lb/ft³}")).toBeCloseTo(22, 1));
});
