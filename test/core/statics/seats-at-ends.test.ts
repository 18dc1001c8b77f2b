/** Rafters whose ends sit on the plate, without a tail: in the second model they slide there like any other. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { isSeatKind } from "../../../server/core/joinery/seat.ts";
import { dot, sub } from "../../../server/core/model/vec.ts";
import { forceOnFirst } from "../../../server/core/statics/joint-forces.ts";
import type { SolvedCase } from "../../../server/core/statics/solve-frame.ts";
import { SHED_IN_SNOW } from "../../shed.ts";
import { type Checked, checked } from "./members.ts";

/** The shed under a ridge on king-posts. */
const shed = (seat: string, eave: string): string =>
  SHED_IN_SNOW.replace(
    "joints:\n",
    "  king: {kind: king-post, section: 6x6, bents: [1, 2], from: tie, to: ridge}\n" +
      "  ridge: {kind: ridge, section: 6x8, from: 1, to: 2, overhang: 12 in}\n  ridge-knee: {kind: brace, section: 4x4, between: [king, ridge], leg: 20 in}\njoints:\n",
  ).concat(
    `roof: {kind: gable, pitch: 8:12, rafters: {section: 4x6, spacing: 24 in, seat: {kind: ${seat}}, overhang: {eave: ${eave}}}, deck: {kind: boards, thickness: 1 in}, covering: {kind: standing-seam, coverage: 16 in}}\n`,
  );

/** Upward and level force of each seat on its rafter. */
function seats(solved: SolvedCase) {
  return solved.frame.ties.flatMap(({ tie, springs }) => {
    const { joint, meeting } = tie;
    if (!joint || !isSeatKind(joint.kind)) return [];
    const [, y, z] = forceOnFirst(solved, springs);
    const sign = joint.of === meeting.a ? 1 : -1;
    return [{ joint, at: tie.at, up: sign * z, level: sign * y }];
  });
}

const caseOf = ({ solution }: Checked, id: string, model: SolvedCase["seats"]): SolvedCase =>
  solution.cases.find(({ frameCase, seats: own }) => frameCase.id === id && own === model)!;

/** What lies on a rafter under a combination, lb, and its moment about a plumb line at `y`, lb·in. */
function loadOn({ frameCase }: SolvedCase, rafter: string, y: number) {
  let [weight, moment] = [0, 0];
  for (const { load, factor } of frameCase.parts)
    for (const { timber, from, to, startForce, endForce } of load.loads) {
      if (timber.id !== rafter) continue;
      // trapezoid: half of it at a third of its length from either end
      for (const [force, at] of [
        [startForce, (2 * from + to) / 3],
        [endForce, (from + 2 * to) / 3],
      ] as const) {
        const part = (-factor * force[2] * (to - from)) / 2;
        weight += part;
        moment += part * (timber.origin[1] + timber.axis[1] * at - y);
      }
    }
  return { weight, moment };
}

describe.each(["birds-mouth", "step-lap"])("%s", (kind) => {
  test.each(["0 in", "12 in"])(
    "eave %s: plate and ridge share each rafter as a simple beam [derived]",
    (eave) => {
      const frame = checked(shed(kind, eave));
      const solved = caseOf(frame, "3-S:S/balanced", "slide");
      expect(solved.combined.status).toBe("sound");
      const found = seats(solved);
      expect(found).toHaveLength(frame.model.roof!.slopes.flatMap((s) => s.rafters).length);
      const ridge = frame.model.timbers.find((t) => t.kind === "ridge")!;
      let onRidge = 0;
      for (const { joint, at, up, level } of found) {
        // the head turns where its center line comes nearest the ridge's
        const { of } = joint;
        const pin = of.origin[1] + of.axis[1] * dot(sub(ridge.origin, of.origin), of.axis);
        const { weight, moment } = loadOn(solved, joint.of.id, pin);
        expect(dot(sub(at, joint.of.origin), joint.of.axis)).toBeLessThan(joint.of.span / 2);
        expect(Math.abs(level)).toBe(0);
        expect(up / (moment / (at[1] - pin))).toBeCloseTo(1, 2);
        onRidge += weight - up;
      }
      // nearly half of the roof where nothing overhangs, the greater part of it on the plates otherwise
      const all = found.reduce((sum, { up }) => sum + up, onRidge);
      if (eave === "0 in") expect(onRidge / all).toBeGreaterThan(0.44);
      else expect(onRidge / all).toBeLessThan(0.42);
    },
  );

  test("eave 0 in: seats that hold take thrust", () => {
    const solved = caseOf(checked(shed(kind, "0 in")), "3-S:S/balanced", "hold");
    const held = seats(solved);
    // toward the ridge: against the thrust
    for (const { joint, level } of held) expect(level * Math.sign(joint.of.axis[1])).toBeGreaterThan(20);
  });
});

test("over a plate scarfed under its foot a rafter sits on one half: it does not splint the scarf", () => {
  const { model, solution } = checked(readFileSync("test/frames/purlins-on-principals.frame.yaml", "utf8"));
  const foot = "principal@A2";
  // it touches both halves, and a seat is cut in both
  expect(model.joints.filter(({ of, kind }) => of.id === foot && isSeatKind(kind))).toHaveLength(2);
  const sits = solution.hold.ties.filter(
    ({ tie: { joint } }) => joint?.of.id === foot && isSeatKind(joint.kind),
  );
  expect(sits).toHaveLength(1);
});
