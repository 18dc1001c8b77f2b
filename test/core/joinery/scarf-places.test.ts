/** Scarfs at every place of an 18 ft plate: two lengths of one timber and what both have in common (plane geometry, derived). */
import { describe, expect, test } from "vitest";
import { scarfUnfit } from "../../../server/core/checks/joinery/scarf-unfit.ts";
import type { Prism } from "../../../server/core/joinery/joint.ts";
import { jointKindOf } from "../../../server/core/joinery/kinds/index.ts";
import { solidOf } from "../../../server/core/model/solid.ts";
import { build, joint, stick } from "../model/frames.ts";
import { prismBox } from "./prisms.ts";

const PLATE = 18 * 12;
const LAPS = [undefined, 12, 24, 36, 60, 144] as const;

/** A plate along wall A over three posts, from x = 0. @param at in */
const plate = (kind: string, at: number, lap: number | undefined, keys = "") =>
  build({
    bents: "{1: 0, 2: 9 ft, 3: 18 ft}",
    members: {
      post: "{kind: post, section: 8x8, at: [A1, A2, A3], from: base, to: plate}",
      plate: `{kind: plate, section: 8x8, walls: [A], top: top, splice: {at: ${at} in, kind: ${kind}}}`,
    },
    joints: {
      scarf: `{kind: ${kind}, of: plate, into: plate${lap === undefined ? "" : `, lap: ${lap} in`}${keys}}`,
    },
  });

const runOf = (prisms: readonly Prism[]): [number, number] => {
  const boxes = prisms.map(prismBox);
  return [Math.min(...boxes.map((b) => b.low[0]!)), Math.max(...boxes.map((b) => b.high[0]!))];
};

const NEAR = 1e-6;

/** @param usual the lap where the file says nothing, for a depth of 8 in; @param past what a butt stands past its outer edge */
describe.each([
  { kind: "half-lap-scarf", usual: 32, past: 0 },
  { kind: "bladed-scarf", usual: 24, past: 0 },
  { kind: "stop-splayed-scarf", usual: 36, past: 1 / 2 },
])("$kind, every 3 in along the plate", ({ kind, usual, past }) => {
  test.each(LAPS.map((lap) => ({ lap, words: lap === undefined ? "the usual lap" : `a lap of ${lap} in` })))(
    "$words",
    ({ lap }) => {
      for (let at = 3; at < PLATE; at += 3) {
        const model = plate(kind, at, lap);
        const scarf = joint(model, "scarf@A.1");
        const where = `${kind}, lap ${lap}, at ${at}`;
        const { low, high } = solidOf(stick(model, "plate@A.1"));
        const second = solidOf(stick(model, "plate@A.2"));
        // both lengths lie in the timber and reach over one another from the middle of the lap alike
        expect(low[0], where).toBeCloseTo(0, 6);
        expect(second.high[0], where).toBeCloseTo(PLATE, 6);
        const [from, to] = [second.low[0], high[0]];
        expect(from, where).toBeGreaterThan(-NEAR);
        expect(to, where).toBeLessThan(PLATE + NEAR);
        expect((from + to) / 2, where).toBeCloseTo(at, 6);
        const shared = stick(model, "plate@A.1").length + stick(model, "plate@A.2").length - PLATE;
        expect(shared, where).toBeCloseTo(to - from, 6);
        // as long as asked for where both ends leave it room, and then without a finding
        const asked = lap ?? usual;
        const room = Math.min(at, PLATE - at);
        const fits = asked / 2 + past <= room + NEAR;
        expect(scarf.sizes.lap!.length.value, where)[fits ? "toBeCloseTo" : "toBeLessThan"](asked);
        expect(shared, where).toBeCloseTo(fits ? asked + 2 * past : 2 * room, 6);
        const found = [...scarfUnfit.find(model)].filter(({ data }) => data.what === "end");
        expect(
          found.map(({ data }) => [data.size, data.near, data.stick]),
          where,
        ).toEqual(fits ? [] : [[asked, room, at < PLATE / 2 ? "plate@A.1" : "plate@A.2"]]);
        // cuts and pegs stay where both lengths are
        const { mortises, notches, wedges, tenons, pegs } = scarf.solids;
        const [cutFrom, cutTo] = runOf([...mortises, ...notches, ...wedges, ...tenons]);
        expect(cutFrom, where).toBeCloseTo(from, 6);
        expect(cutTo, where).toBeCloseTo(to, 6);
        for (const peg of pegs) {
          expect(peg.from[0], where).toBeGreaterThan(from);
          expect(peg.to[0], where).toBeLessThan(to);
        }
        for (const row of jointKindOf(scarf.kind).cutSheet(scarf))
          expect(row.value, `${where}: ${row.label}`).toBeGreaterThan(0);
      }
    },
  );
});

test("a bladed scarf at 16 ft: 17 ft and 3 ft, and the lap from 15 to 17 ft (by hand)", () => {
  const model = plate("bladed-scarf", 192, undefined);
  expect(stick(model, "plate@A.1").length).toBeCloseTo(204, 6);
  expect(stick(model, "plate@A.2").length).toBeCloseTo(36, 6);
  expect(runOf(joint(model, "scarf@A.1").solids.notches)).toEqual([180, 204]);
});

test.each([
  ["bladed-scarf", ", lap: 3 in, blade: {thickness: 10 in, length: 9 in}"],
  ["bladed-scarf", ", lap: 6 in"],
  ["bladed-scarf", ", lap: 1/2 in"],
  ["stop-splayed-scarf", ", lap: 8 in, butt: 5 in"],
  ["stop-splayed-scarf", ", lap: 1 in, butt: 20 in, wedge: {slope: 1:3}"],
  ["half-lap-scarf", ", lap: 1/2 in"],
])("%s%s: no size below nothing, and no wood outside of the timber", (kind, keys) => {
  for (const at of [1 / 4, 3, 108, 212, 215.5]) {
    const scarf = joint(plate(kind, at, undefined, keys), "scarf@A.1");
    for (const { label, value } of jointKindOf(scarf.kind).cutSheet(scarf))
      expect(value, `${label} at ${at}`).toBeGreaterThanOrEqual(0);
    const { mortises, notches, wedges, tenons } = scarf.solids;
    const { low, high } = solidOf(scarf.of);
    for (const prism of [...mortises, ...notches, ...wedges, ...tenons]) {
      const box = prismBox(prism);
      for (const k of [1, 2] as const) {
        expect(box.low[k], `low at ${at}`).toBeGreaterThan(low[k] - NEAR);
        expect(box.high[k], `high at ${at}`).toBeLessThan(high[k] + NEAR);
      }
      expect(box.low[0]).toBeGreaterThan(-NEAR);
      expect(box.high[0]).toBeLessThan(PLATE + NEAR);
    }
  }
});

test("two scarfs on one length share it", () => {
  const model = build({
    bents: "{1: 0, 2: 9 ft, 3: 11 ft, 4: 20 ft}",
    members: {
      one: "{kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: top}",
      two: "{kind: plate, section: 8x8, walls: [A], from: 2, to: 3, top: top}",
      three: "{kind: plate, section: 8x8, walls: [A], from: 3, to: 4, top: top}",
    },
    joints: {
      first: "{kind: half-lap-scarf, of: one, into: two, lap: 20 in}",
      second: "{kind: half-lap-scarf, of: three, into: two, lap: 36 in}",
    },
  });
  const [first, second] = ["first", "second"].map(
    (name) => model.joints.find(({ entry }) => entry?.name === name)!,
  );
  // 24 in from the one to the other: 10 in are wanted of them, and 18 in; the first leaves the second 14 in
  expect(first!.sizes.lap!.length).toEqual({ value: 20, from: "file" });
  expect(second!.sizes.lap!.length).toEqual({ value: 28, from: "file", asked: 36 });
  expect(runOf(first!.solids.mortises)[1]).toBeCloseTo(runOf(second!.solids.mortises)[0], 6);
});
