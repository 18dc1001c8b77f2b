/** Joints that are marked in their place: what is left long (common practice, no source), and what says so. */
import { describe, expect, test } from "vitest";
import { leftLong } from "../../../server/core/joinery/scribe.ts";
import { build, joint, MM, type Parts, stick } from "../model/frames.ts";
import { layoutOf, marksOf } from "../shop/layout/marks.ts";
import { cut } from "./prisms.ts";

const MEMBERS = {
  post: "{kind: post, section: 8x8, at: [A1, A2, B1, B2], from: base, to: plate}",
  plate: "{kind: plate, section: 8x10, walls: [A, B], top: top, overhang: 12 in}",
  knee: "{kind: brace, section: 4x8, between: [post, plate], leg: 36 in, curve: {radius: 100 in}}",
};

const frame = (rule: string, more: Partial<Parts> = {}) =>
  build({
    bents: "{1: 0, 2: 10 ft}",
    members: MEMBERS,
    joints: { "knee-end": `{kind: brace-tenon, of: knee, into: [post, plate], housing: 1/2 in${rule}}` },
    ...more,
  });

describe("a scribed brace", () => {
  const square = frame("");
  const scribed = frame(", rule: scribe");

  test("is an inch longer at both ends, and cut to the same place", () => {
    const [was, now] = [stick(square, "knee@A1-A2"), stick(scribed, "knee@A1-A2")];
    expect(now.length - was.length).toBeCloseTo(2, 9);
    expect([now.origin, now.span]).toEqual([was.origin, was.span]);
    const layout = layoutOf(scribed, "knee@A1-A2");
    expect(layout.length).toBeCloseTo(was.length, 9);
    expect([layout.leave.foot, layout.leave.head]).toEqual([1, 1]);
    expect([layout.foot.leave, layout.head.leave]).toEqual([1, 1]);
  });

  test("its cut sheet says so, whatever the kind; by the square rule it says nothing", () => {
    expect(cut(joint(scribed, "knee-end@A1-A2.foot"), "left long at this end")).toBe(1);
    expect(cut(joint(square, "knee-end@A1-A2.foot"), "left long at this end")).toBeUndefined();
    expect(
      cut(joint(frame(", rule: square"), "knee-end@A1-A2.foot"), "left long at this end"),
    ).toBeUndefined();
  });

  test("its marks on the post are a guide, the post keeps its length", () => {
    expect(marksOf(layoutOf(scribed, "post@A1"), "knee-end@A1-A2.foot").scribed).toBe(true);
    expect(marksOf(layoutOf(square, "post@A1"), "knee-end@A1-A2.foot").scribed).toBe(false);
    expect(stick(scribed, "post@A1").length).toBe(stick(square, "post@A1").length);
  });

  test("25 mm in a metric file", () => {
    const metric = build({
      units: "mm",
      walls: "{A: 0, B: 3600}",
      bents: "{1: 0, 2: 3000}",
      levels: "{base: 0, top: 2400}",
      members: {
        post: "{kind: post, section: 200x200, at: [A1, A2], from: base, to: plate}",
        plate: "{kind: plate, section: 200x250, walls: [A], top: top}",
      },
      joints: { head: "{kind: mortise-and-tenon, of: post, into: plate, rule: scribe}" },
    });
    expect(joint(metric, "head@A1").scribe).toBeCloseTo(25 * MM, 12);
    expect(layoutOf(metric, "post@A1").leave).toEqual({ foot: 0, head: 25 * MM });
  });
});

describe("scribed seats and heads of rafters", () => {
  const roof = (seat: string, head: string) =>
    frame("", {
      members: { ...MEMBERS, ridge: "{kind: ridge, section: 6x10, from: 1, to: 2, overhang: 12 in}" },
      roof: `{kind: gable, pitch: 8:12, rafters: {section: 3x6, spacing: 30 in, seat: {kind: birds-mouth${seat}}, head: {kind: housed, into: ridge${head}}, overhang: {eave: 12 in, rake: 12 in}}}`,
    });
  const rafter = (seat: string, head: string) => layoutOf(roof(seat, head), "rafter@A.2");

  test("a seat that is marked in place leaves both ends long, a head its own", () => {
    expect(rafter("", "").leave).toEqual({ foot: 0, head: 0 });
    expect(rafter(", rule: scribe", "").leave).toEqual({ foot: 1, head: 1 });
    expect(rafter("", ", rule: scribe").leave).toEqual({ foot: 0, head: 1 });
    expect(cut(joint(roof(", rule: scribe", ""), "rafter-seat@A.2"), "left long at both ends")).toBe(1);
  });
});

test("ends and sides: what a stick keeps is the most that any of its joints needs", () => {
  expect(leftLong([])).toEqual({ foot: 0, head: 0 });
  expect(
    leftLong([
      { end: "foot", scribe: 1 },
      { end: "foot", scribe: 0 },
      { end: "side", scribe: 0.5 },
    ]),
  ).toEqual({ foot: 1, head: 0.5 });
});
