/**
 * Buckling lengths: NDS appendix G (K_e 2.4 pinned foot with a top that may shift but not turn, 1.0 between held places,
 * 2.1 cantilever), applied as the method of the frame analysis says. Hand cases.
 */
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import {
  bucklingLengths,
  type TimberLengths,
  uprightLength,
} from "../../../server/core/statics/effective-length.ts";
import { groundsOf } from "../../../server/core/statics/member-supports.ts";
import { timberCuts } from "../../../server/core/statics/net-section.ts";
import { skeletonOf } from "../../../server/core/statics/skeleton.ts";
import { readFrame } from "../../../server/document/read.ts";
import { SHED } from "../../shed.ts";
import { sample } from "../model/frames.ts";

const lengthsOf = (model: ReturnType<typeof sample>) =>
  bucklingLengths(model, groundsOf(model, skeletonOf(model)), timberCuts(model));

function at(lengths: ReadonlyMap<string, TimberLengths>, id: string): TimberLengths {
  expect(lengths.has(id), id).toBe(true);
  return lengths.get(id)!;
}

describe("one upright [memory]", () => {
  const free = { held: [], knees: [], stops: [], span: 100 };

  test("knees only: 2.4 × foot to the lower bearing", () => {
    expect(uprightLength({ ...free, knees: [60], stops: [95] }, 1, true)).toMatchObject({
      length: 60,
      factor: 2.4,
      effective: 144,
      why: "sways",
    });
  });

  test("knees near the foot: the piece above governs with 1.0", () => {
    expect(uprightLength({ ...free, knees: [20] }, 1, true)).toMatchObject({
      effective: 80,
      factor: 1,
      why: "above-knee",
    });
  });

  test("held above the foot: 1.0 between held places, knees or not; 2.1 × what stands free", () => {
    expect(uprightLength({ ...free, held: [40, 100], knees: [60] }, 1, true)).toMatchObject({
      length: 60,
      factor: 1,
      why: "held",
    });
    expect(uprightLength({ ...free, held: [60] }, 1, true)).toMatchObject({
      length: 40,
      factor: 2.1,
      why: "free-end",
    });
  });

  test("no knees, others sway: it leans, 1.0 between what runs that way", () => {
    expect(uprightLength({ ...free, stops: [90] }, 1, true)).toMatchObject({
      length: 90,
      factor: 1,
      why: "leans",
    });
  });

  test("nothing holds it: 2.4 × the whole", () => {
    expect(uprightLength(free, 1, false)).toMatchObject({ effective: 240, why: "unheld" });
  });
});

describe("pavilion: held by knees both ways [derived]", () => {
  const lengths = lengthsOf(sample("cider-press-pavilion"));

  test("post: 2.4 × foot to the tie knee across, to the plate knee along", () => {
    // post foot at 9 in; legs run from faces housed 1/2 in: tie from 82 in with 27 in, plate from 103 in with 36 in
    const post = at(lengths, "post@A1");
    expect(post.depth).toMatchObject({ factor: 2.4, why: "sways" });
    expect(post.depth.length).toBeCloseTo(82.5 - 27 - 9, 6);
    expect(post.width.length).toBeCloseTo(103.5 - 36 - 9, 6);
  });

  test("king-post: along the ridge by its knees, across as a strut", () => {
    const king = at(lengths, "king-post@2");
    expect(king.width).toMatchObject({ factor: 2.4, why: "sways" });
    expect(king.depth).toMatchObject({ factor: 1, effective: king.depth.length });
  });

  test("rafter: seat to ridge in its plane, held by the boards sideways", () => {
    const rafter = at(lengths, "rafter@A.3");
    expect(rafter.decked).toBe(true);
    expect(rafter.width.effective).toBe(0);
    expect(rafter.depth.factor).toBe(1);
  });
});

describe("kayak shelter: a bank holds it across [derived]", () => {
  const lengths = lengthsOf(sample("kayak-shelter"));

  test("posts without a girt are held at foot and head, through the rafters on the beam in the bank", () => {
    const post = at(lengths, "post@A2");
    expect(post.depth).toMatchObject({ factor: 1, why: "held" });
    expect(post.depth.length).toBeCloseTo(90.6, 0);
  });

  test("along the plate they sway on their knees all the same", () => {
    expect(at(lengths, "post@A2").width).toMatchObject({ factor: 2.4, why: "sways" });
    expect(at(lengths, "post@A1").width).toMatchObject({ factor: 2.4, why: "sways" });
  });
});

describe("a frame in which some posts lean [derived]", () => {
  const model = (text: string) => {
    const { frame, source } = readFrame(text);
    expect(source.facts).toEqual([]);
    return buildModel(frame);
  };
  const THREE = SHED.replace("bents: {1: 0, 2: 9 ft}", "bents: {1: 0, 2: 9 ft, 3: 18 ft}")
    .replace("at: [A1, A2, B1, B2]", "at: [A1, A2, A3, B1, B2, B3]")
    .replace("from: 1, to: 2,", "from: 1, to: 3,")
    .replace("bents: [1, 2],", "bents: [1, 2, 3],");
  // knees in the end bents only: the middle posts lean across
  const lean = model(
    THREE.replace(
      "  tie-knee: {kind: brace, section: 4x6, between: [post, tie], leg: 30 in}\n",
      [
        "  tie-knee: {kind: brace, section: 4x6, between: [post, tie@1], leg: 30 in}\n",
        "  end-knee: {kind: brace, section: 4x6, between: [post, tie@3], leg: 30 in}\n",
      ].join(""),
    ).replace("of: [knee, tie-knee]", "of: [knee, tie-knee, end-knee]"),
  );
  const lengths = lengthsOf(lean);

  test("they count 1.0 from foot to tie", () => {
    const middle = at(lengths, "post@A2");
    expect(middle.depth).toMatchObject({ factor: 1, why: "leans" });
  });

  test("the swaying ones carry them: 2.4 √(6/4)", () => {
    const post = at(lengths, "post@A1");
    expect(post.depth.why).toBe("sways");
    expect(post.depth.factor).toBeCloseTo(2.4 * Math.sqrt(6 / 4));
    expect(at(lengths, "post@A1").width.factor).toBeCloseTo(2.4);
  });
});
