/** The perfect timber inside a measured stick: marks keep to the reference faces, depths follow the wood (derived). */
import { describe, expect, test } from "vitest";
import type { Model } from "../../../../server/core/model/model.ts";
import { build } from "../../model/frames.ts";
import { cutOn, layoutOf } from "./marks.ts";

const JOINTS = {
  head: "{kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 6 in}}",
  "tie-end":
    "{kind: mortise-and-tenon, of: tie, into: post, housing: 3/4 in, tenon: {thickness: 2 in, length: 4 in}}",
  "knee-end": "{kind: brace-tenon, of: knee, into: [post, plate], housing: 1/2 in}",
};

const frame = (measured: { post?: string; plate?: string; tie?: string } = {}, turned = ""): Model => {
  const key = (text: string | undefined): string => (text === undefined ? "" : `, measured: ${text}`);
  return build({
    bents: "{1: 0, 2: 10 ft}",
    members: {
      post: `{kind: post, section: 8x8${turned}, at: [A1, A2, B1, B2], from: base, to: plate${key(measured.post)}}`,
      plate: `{kind: plate, section: 8x10, walls: [A, B], top: top, overhang: 12 in${key(measured.plate)}}`,
      tie: `{kind: tie, section: 8x10, bents: [1, 2], from: A, to: B, top: tie-top${key(measured.tie)}}`,
      knee: "{kind: brace, section: 4x6, between: [post, plate], leg: 24 in}",
    },
    joints: JOINTS,
  });
};

const PERFECT = frame();

describe("a measured stick", () => {
  test("its marks stay, its housings go deeper by exactly what it has over", () => {
    // over by 3/16 along the wall (width), 1/8 across it (depth)
    const model = frame({ post: "{width: 8 3/16 in, depth: 8 1/8 in}" });
    const [post, was] = [layoutOf(model, "post@A1"), layoutOf(PERFECT, "post@A1")];
    // face 3 lies across the wall, face 4 along it
    const tie = cutOn(post, "tie-end@A1", "housing");
    expect([tie.face, tie.over]).toEqual([3, 1 / 8]);
    const knee = cutOn(post, "knee-end@A1-A2.foot", "housing");
    expect([knee.face, knee.over]).toEqual([4, 3 / 16]);
    expect({ ...tie, over: 0 }).toEqual(cutOn(was, "tie-end@A1", "housing"));
    expect({ ...knee, over: 0 }).toEqual(cutOn(was, "knee-end@A1-A2.foot", "housing"));
    // the floor lies at the perfect size whatever the stick has over
    expect(tie.floor).toBe(7.25);
    const { tenons, ...end } = post.head;
    const { tenons: perfect, ...perfectEnd } = was.head;
    expect(end).toEqual(perfectEnd);
    expect(tenons.map(({ outline }) => outline)).toEqual(perfect.map(({ outline }) => outline));
  });

  test("its tenon has the edges of the perfect timber, as the mortise has, and what is over is pared off", () => {
    const tenonOf = (measured: string) => layoutOf(frame({ post: measured }), "post@A1").head.tenons;
    const mortise = cutOn(layoutOf(PERFECT, "plate@A"), "head@A1", "mortise");
    const [perfect] = layoutOf(PERFECT, "post@A1").head.tenons;
    const wide = mortise.opening.along[1] - mortise.opening.along[0];
    // across on face 1 runs along the wall, to face 4: the post's width
    const [over] = tenonOf("{width: 8 3/16 in, depth: 8 1/8 in}");
    expect([over?.full, over?.over]).toEqual([false, 3 / 16]);
    expect(over?.rectangle?.across).toEqual(perfect?.rectangle?.across);
    const [low, high] = over?.rectangle?.across ?? [0, 0];
    expect(high - low).toBeCloseTo(wide, 9);
    // thicker in the other way only, or within the finest mark, it is as it was
    for (const measured of ["{width: 8 in, depth: 9 in}", "{width: 8 1/32 in, depth: 8 in}"])
      expect(tenonOf(measured)).toEqual(layoutOf(PERFECT, "post@A1").head.tenons);
  });

  test("on a reference face nothing changes", () => {
    const model = frame({ post: "{width: 8 1/2 in, depth: 8 1/2 in}" });
    const knee = cutOn(layoutOf(model, "post@A2"), "knee-end@A2-A1.foot", "housing");
    expect([knee.face, knee.over]).toEqual([4, 0.5]);
    const inner = build({
      members: {
        post: "{kind: post, section: 8x8, at: [A2], from: base, to: plate, measured: {width: 8 1/2 in, depth: 8 in}}",
        plate: "{kind: plate, section: 8x10, walls: [A], top: top}",
        knee: "{kind: brace, section: 4x6, between: [post, plate], leg: 24 in}",
      },
      joints: { "knee-end": JOINTS["knee-end"] },
    });
    const post = layoutOf(inner, "post@A2");
    const toward1 = cutOn(post, "knee-end@A2-A1.foot", "housing");
    const away = cutOn(post, "knee-end@A2-A3.foot", "housing");
    expect([toward1.face, toward1.over]).toEqual([2, 0]);
    expect([away.face, away.over]).toEqual([4, 0.5]);
  });

  test("between two places it runs straight, beyond them it stays", () => {
    const at = (measured: string, joint: string): number =>
      cutOn(layoutOf(frame({ post: measured }), "post@A1"), joint, "housing").over;
    const places = "[{width: 8 in, depth: 8 1/2 in, at: 0}, {width: 8 in, depth: 8 in, at: 8 ft}]";
    const { opening } = cutOn(layoutOf(PERFECT, "post@A1"), "tie-end@A1", "housing");
    const middle = (opening.along[0] + opening.along[1]) / 2;
    expect(at(places, "tie-end@A1")).toBeCloseTo(0.5 * (1 - middle / 96), 9);
    expect(at("[{width: 8 in, depth: 8 1/4 in, at: 2 ft}]", "tie-end@A1")).toBe(0.25);
    // their order in the file does not matter
    const swapped = "[{width: 8 in, depth: 8 in, at: 8 ft}, {width: 8 in, depth: 8 1/2 in, at: 0}]";
    expect(at(swapped, "tie-end@A1")).toBe(at(places, "tie-end@A1"));
  });

  test("stick by stick: only the one that is named", () => {
    const model = frame({
      post: "{post@A1: {width: 8 in, depth: 8 1/4 in}, post@B2: [{width: 8 in, depth: 8 1/8 in, at: 1 ft}]}",
    });
    const over = (id: string): number =>
      cutOn(layoutOf(model, id), `tie-end@${id.slice(-2)}`, "housing").over;
    expect(["post@A1", "post@A2", "post@B1", "post@B2"].map(over)).toEqual([0.25, 0, 0, 0.125]);
  });

  test("of a turned timber, as its section counts", () => {
    const model = frame({ post: "{width: 8 1/4 in, depth: 8 in}" }, ", turned: true");
    // turned: the section's width lies across the wall, opposite face 1
    expect(cutOn(layoutOf(model, "post@A1"), "tie-end@A1", "housing").over).toBe(0.25);
    expect(cutOn(layoutOf(model, "post@A1"), "knee-end@A1-A2.foot", "housing").over).toBe(0);
  });

  test("where no housing is cut the rough face is pared down under the shoulder", () => {
    const model = frame({ plate: "{width: 8 in, depth: 10 1/4 in}" });
    const cut = cutOn(layoutOf(model, "plate@A"), "head@A1", "reduction");
    expect([cut.face, cut.depth, cut.over, cut.floor]).toEqual([4, 0, 0.25, 10]);
    // the post's section: 12 in of overhang, then 8
    expect(cut.opening.along[0]).toBeCloseTo(12, 9);
    expect(cut.opening.along[1]).toBeCloseTo(20, 9);
    const mortise = cutOn(layoutOf(model, "plate@A"), "head@A1", "mortise");
    expect([mortise.depth, mortise.over]).toEqual([6.25, 0.25]);
    const plain = layoutOf(PERFECT, "plate@A").joints.flatMap((m) => m.cuts.map((c) => c.part));
    expect(plain).not.toContain("reduction");
  });

  test("an end that goes into a housing is pared to its perfect size over the housing's depth", () => {
    const tie = layoutOf(frame({ tie: "{width: 8 1/8 in, depth: 10 in}" }), "tie@1");
    expect([tie.foot.pare, tie.head.pare]).toEqual([0.75, 0.75]);
    expect(layoutOf(PERFECT, "tie@1").foot.pare).toBeUndefined();
    // over at one end only
    const tapered = layoutOf(
      frame({ tie: "[{width: 8 1/4 in, depth: 10 in, at: 0}, {width: 8 in, depth: 10 in, at: 11 ft}]" }),
      "tie@1",
    );
    expect([tapered.foot.pare, tapered.head.pare]).toEqual([0.75, undefined]);
  });
});

describe("the roof's own rafters", () => {
  const roofed = (measured: string, seat = "{kind: birds-mouth, length: 3 in}"): Model =>
    build({
      members: {
        plate: "{kind: plate, section: 8x8, walls: [A, B], from: 1, to: 3, top: top}",
        ridge: "{kind: ridge, section: 6x10, from: 1, to: 3}",
      },
      // 9:12 is the 3-4-5 triangle
      roof: `{kind: gable, pitch: "9:12", rafters: {section: 3x7, count: 4, seat: ${seat}, head: {kind: housed, into: ridge}, overhang: {eave: 12 in}${measured === "" ? "" : `, measured: ${measured}`}}}`,
    });
  const ALL = "{width: 3 1/8 in, depth: 7 1/4 in}";
  const SEAT = "rafter-seat@A.2";

  test("their seats go deeper from the underside by what they have over, down to the perfect floor", () => {
    const [was, now] = [roofed(""), roofed(ALL)].map((m) => cutOn(layoutOf(m, "rafter@A.2"), SEAT, "seat"));
    expect([now?.face, now?.over]).toEqual([4, 1 / 4]);
    expect({ ...now, over: 0 }).toEqual(was);
    expect(now?.depth).toBeCloseTo(3 * 0.6, 9);
    expect(now?.floor).toBeCloseTo(7 - 3 * 0.6, 9);
  });
  test("their heads are pared over the ridge's housing, and nothing else of the frame moves", () => {
    const [was, now] = [roofed(""), roofed(ALL)];
    expect(layoutOf(now, "rafter@B.3").head.pare).toBe(0.5);
    expect(layoutOf(was, "rafter@B.3").head.pare).toBeUndefined();
    expect(layoutOf(now, "ridge")).toEqual(layoutOf(was, "ridge"));
    expect(now.timbers.map(({ origin }) => origin)).toEqual(was.timbers.map(({ origin }) => origin));
  });
  test("one stick alone, and along it from the foot", () => {
    const model = roofed(
      "{rafter@A.2: [{width: 3 in, depth: 7 1/2 in, at: 0}, {width: 3 in, depth: 7 in, at: 5 ft}]}",
    );
    const cut = cutOn(layoutOf(model, "rafter@A.2"), SEAT, "seat");
    const middle = (cut.opening.along[0] + cut.opening.along[1]) / 2;
    expect(middle).toBeGreaterThan(10);
    expect(cut.over).toBeCloseTo(0.5 * (1 - middle / 60), 9);
    expect(cutOn(layoutOf(model, "rafter@A.3"), "rafter-seat@A.3", "seat").over).toBe(0);
    expect(layoutOf(model, "rafter@A.2").measured).toHaveLength(2);
  });
  test("in a step-lap seat they are pared to the perfect timber where they stand in the plate's housing", () => {
    const model = roofed(ALL, "{kind: step-lap, length: 4 in, form: square, housing: 7/8 in}");
    const cuts = layoutOf(model, "rafter@A.2").joints.find(({ joint }) => joint === SEAT)!.cuts;
    const [side, under] = [3, 4].map((face) => cuts.find((c) => c.part === "reduction" && c.face === face)!);
    expect([side?.over, under?.over]).toEqual([1 / 8, 1 / 4]);
    expect([side?.depth, under?.depth]).toEqual([0, 0]);
    // the sole: h cos θ of h = d ÷ (sin θ cos θ)
    const sole = 7 / 8 / 0.6;
    expect(under!.opening.along[1] - under!.opening.along[0]).toBeCloseTo(sole, 9);
    // on the side as far up as the step is high
    expect(side!.opening.across[1] - side!.opening.across[0]).toBeCloseTo(7 / 8 / 0.8, 9);
    const perfect = roofed("", "{kind: step-lap, length: 4 in, form: square, housing: 7/8 in}");
    const plain = layoutOf(perfect, "rafter@A.2").joints.flatMap((m) => m.cuts.map((c) => c.part));
    expect(plain).not.toContain("reduction");
    // the plate's housing is cut for the perfect rafter
    expect(layoutOf(model, "plate@A")).toEqual(layoutOf(perfect, "plate@A"));
  });
});
