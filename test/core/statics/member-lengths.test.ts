/**
 * Buckling lengths: NDS appendix G (K_e 2.4 pinned foot with a top that may shift but not turn, 1.0 between held places,
 * 2.1 cantilever), applied as the method of the frame analysis says. Hand cases.
 */
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { analyseFrame } from "../../../server/core/statics/analyse-frame.ts";
import {
  bucklingLengths,
  type LeaningShare,
  type Story,
  type TimberLengths,
  uprightLength,
} from "../../../server/core/statics/effective-length.ts";
import { forceTable, rowOf } from "../../../server/core/statics/force-table.ts";
import { leaningShare } from "../../../server/core/statics/leaning-share.ts";
import { groundsOf } from "../../../server/core/statics/member-supports.ts";
import { timberCuts } from "../../../server/core/statics/net-section.ts";
import { skeletonOf } from "../../../server/core/statics/skeleton.ts";
import type { SolvedCase } from "../../../server/core/statics/solve-frame.ts";
import { readFrame } from "../../../server/document/read.ts";
import { SHED, SHED_IN_SNOW } from "../../shed.ts";
import { sample } from "../model/frames.ts";
import { checked, sharesOf } from "./members.ts";

/** Where no upright leans, or its lengths are not asked for, the share in the load is one that no test expects. */
const lengthsOf = (model: ReturnType<typeof sample>, share: LeaningShare = () => 100) =>
  bucklingLengths(model, groundsOf(model, skeletonOf(model)), timberCuts(model), share);

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

  test("knees to a tie: 2.1 × what stands free above the tie, unless knees hold it there", () => {
    expect(uprightLength({ ...free, knees: [20], stops: [40] }, 1, true)).toMatchObject({
      length: 60,
      factor: 2.1,
      why: "free-end",
    });
    expect(uprightLength({ ...free, knees: [20, 80], stops: [40, 100] }, 1, true)).toMatchObject({
      effective: 48,
      why: "sways",
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
  const THREE = SHED_IN_SNOW.replace("bents: {1: 0, 2: 9 ft}", "bents: {1: 0, 2: 9 ft, 3: 18 ft}")
    .replace("at: [A1, A2, B1, B2]", "at: [A1, A2, A3, B1, B2, B3]")
    .replace("from: 1, to: 2,", "from: 1, to: 3,")
    .replace("bents: [1, 2],", "bents: [1, 2, 3],");
  // knees in the end bents only: the middle posts lean across
  const LEAN = THREE.replace(
    "  tie-knee: {kind: brace, section: 4x6, between: [post, tie], leg: 30 in}\n",
    [
      "  tie-knee: {kind: brace, section: 4x6, between: [post, tie@1], leg: 30 in}\n",
      "  end-knee: {kind: brace, section: 4x6, between: [post, tie@3], leg: 30 in}\n",
      "  king: {kind: king-post, section: 6x6, bents: [1, 2, 3], from: tie, to: ridge}\n",
      "  ridge: {kind: ridge, section: 6x10, from: 1, to: 3, overhang: 12 in}\n",
    ].join(""),
  )
    .replace("of: [knee, tie-knee]", "of: [knee, tie-knee, end-knee]")
    .concat(`roof:
  kind: gable
  pitch: 6:12
  rafters: {section: 4x6, spacing: 24 in, seat: {kind: birds-mouth}, head: {kind: housed, into: ridge}, overhang: {eave: 12 in, rake: 12 in}}
  deck: {kind: panels, thickness: 5/8 in}
  covering: {kind: standing-seam, coverage: 16 in}
`);
  const c = checked(LEAN);
  const lengths = lengthsOf(c.model, sharesOf(c));

  /** lb on the foot of a post under dead and snow load, seats that hold the thrust. */
  const load = (post: string): number => {
    const solved = c.solution.cases.find((k) => k.frameCase.id === "3-S:S/balanced" && k.seats === "hold")!;
    return -forceTable(solved)![rowOf(solved.frame.elementsOf.get(post)![0]!, 0)]!;
  };
  const end = load("post@A1");
  const middle = load("post@A2");

  test("they count 1.0 from foot to tie", () => {
    expect(at(lengths, "post@A2").depth).toMatchObject({ factor: 1, why: "leans" });
  });

  test("middle posts stand under more of the roof: 9 ft of eave against 5 ft 6 in at each end", () => {
    // 4.5 + 1 ft of overhang; the rafters at the rake are nearer: a little more than 9 ÷ 5.5 = 1.636
    expect(middle / end).toBeGreaterThan(9 / 5.5);
    expect(middle / end).toBeLessThan(1.8);
  });

  test("the swaying ones carry them by their load, not by their number: 2.4 √(ΣP/ΣP of the swaying)", () => {
    const post = at(lengths, "post@A1");
    expect(post.depth.why).toBe("sways");
    expect(post.depth.factor).toBeCloseTo(2.4 * Math.sqrt((4 * end + 2 * middle) / (4 * end)), 6);
    expect(post.depth.factor).toBeGreaterThan(2.4 * Math.sqrt(6 / 4) + 0.2);
    expect(at(lengths, "post@A1").width.factor).toBeCloseTo(2.4);
  });

  test("other loads on the same frame: the product's own lengths are found anew, with that frame's forces", () => {
    const factorIn = (r: ReturnType<typeof analyseFrame>): number =>
      r!.basis.plans.find((p) => p.timber.id === "post@A1")!.lengths.depth.factor;
    const before = analyseFrame(c.model);
    expect(factorIn(before)).toBeCloseTo(at(lengths, "post@A1").depth.factor, 9);
    const heavier = buildModel(readFrame(LEAN.replace("ground: 30 psf", "ground: 90 psf")).frame);
    const after = factorIn(analyseFrame(heavier, before));
    expect(after).toBeCloseTo(factorIn(analyseFrame(heavier)), 9);
    expect(after).not.toBeCloseTo(factorIn(before), 3);
  });
});

test("an upright that leaves its load to a strut halfway down counts with its head: ΣP by equilibrium [derived]", () => {
  // axial forces at the lower and the upper end of each upright, lb: 100 from above, 60 of it gone by the foot
  const tips = new Float64Array(4 * 6);
  for (const [at, axial] of [-40, -100, -50, -50].entries()) tips[6 * at] = axial;
  const solved = {
    combined: { status: "solved", tips },
    frame: {
      elementsOf: new Map([
        ["leans", [0]],
        ["sways", [1]],
      ]),
    },
  } as unknown as SolvedCase;
  const share = leaningShare({ uprights: ["leans", "sways"], swaying: ["sways"] } as unknown as Story, [
    solved,
  ]);
  expect(share).toBeCloseTo((100 + 50) / 50, 9);
});

describe("sideways, a timber is held only by what runs sideways and is held itself [derived]", () => {
  const model = (text: string) => {
    const { frame, source } = readFrame(text);
    expect(source.facts).toEqual([]);
    return buildModel(frame);
  };
  // B at 16 ft: from inside to inside of the 8 in posts 16 × 12 − 16 + 1 for two housings of 1/2 in = 177 in
  const WIDE = SHED.replace("B: 10 ft", "B: 16 ft")
    .replace("leg: 30 in}\njoints", "leg: 48 in}\njoints")
    .replace("tie: {kind: tie, section: 8x10", "tie: {kind: tie, section: 3x12");
  const joist = (between: string) =>
    WIDE.replace(
      "joints:\n",
      `  joist: {kind: joist, section: 3x8, between: ${between}, from: 7 ft, to: 9 ft, count: 2}\njoints:\n`,
    );

  test("knees in the tie's own plane hold nothing: the whole 177 in", () => {
    const tie = at(lengthsOf(model(WIDE)), "tie@1");
    expect(tie.width).toMatchObject({ factor: 1, why: "held" });
    expect(tie.width.effective).toBeCloseTo(177, 6);
    expect(tie.unbraced).toBeCloseTo(177, 6);
  });

  test("joists from tie to tie hold it: the longest piece is from the post to the nearest joist", () => {
    const tie = at(lengthsOf(model(joist("[tie@1, tie@2]"))), "tie@1");
    expect(tie.unbraced).toBeGreaterThan(70);
    expect(tie.unbraced).toBeLessThan(84);
    expect(tie.width.effective).toBe(tie.unbraced);
  });

  test("a post turns over between its foot and the knee that runs sideways, not at the knee in its own plane", () => {
    const frame = model(WIDE);
    const post = at(lengthsOf(frame), "post@A1");
    const knee = frame.meetings.find(
      (m) => [m.a.id, m.b.id].includes("post@A1") && [m.a.id, m.b.id].includes("knee@A1-A2"),
    )!;
    expect(post.unbraced).toBeCloseTo(knee.point[2] - frame.byId.get("post@A1")!.origin[2], 6);
  });
});
