/**
 * What dovetails and pegged laps hold when they are pulled apart, against closed forms written out here with the values of
 * the tables: NDS Supplement Table 4A and 4D (memory), Wood Handbook Table 4-3 (memory), TFEC 1 3.4 (memory).
 */
import { describe, expect, test } from "vitest";
import { drawOut, dryingOf, tailSlope, wedgeReserve } from "../../../server/core/joinery/dovetail-drying.ts";
import { dovetailTension } from "../../../server/core/joinery/dovetail-tension.ts";
import type { Joint } from "../../../server/core/joinery/joint.ts";
import { lapPegs } from "../../../server/core/joinery/lap-tension.ts";
import { pegTension } from "../../../server/core/joinery/peg-tension.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import type { Factor } from "../../../server/core/sourced.ts";
import type { JointPull } from "../../../server/core/statics/joint-pulls.ts";
import { wedgeRelish } from "../../../server/core/statics/wedge-thrusts.ts";
import { readFrame } from "../../../server/document/read.ts";
import { ROOFED } from "../../roofed-shed.ts";
import { gate, spliced } from "../checks/gate.ts";

const SNOW: Factor = { symbol: "C_D", value: 1.15, status: "published", source: "NDS Table 2.3.2" };

function jointsOf(
  text: string,
  kind: string,
): { readonly joints: Joint[]; readonly frame: ReturnType<typeof readFrame>["frame"] } {
  const { frame } = readFrame(text);
  return { joints: buildModel(frame).joints.filter((joint) => joint.kind === kind), frame };
}

/** Joists 4x6 of eastern white pine between the plates 8x8 of the shed. */
const joists = (joint: string, run = "from: 2 ft, to: 7 ft, count: 3", seasoning = "green"): string =>
  ROOFED.replace("seasoning: green", `seasoning: ${seasoning}`).replace(
    "joints:\n",
    `  joist: {kind: joist, section: 4x6, between: [plate@A, plate@B], ${run}}\njoints:\n  joist-end: {of: joist, into: plate, ${joint}}\n`,
  );

const close = (got: number | undefined, want: number): void => {
  expect(Math.abs((got ?? Number.NaN) - want)).toBeLessThan(0.002 * want);
};

describe("drying of a dovetail", () => {
  const [green] = jointsOf(joists("kind: housed-dovetail"), "housed-dovetail").joints;
  const [dry] = jointsOf(joists("kind: housed-dovetail", undefined, "dry"), "housed-dovetail").joints;
  test("eastern white pine loses 6.1 % × (1 − 12/30) across its rings [memory]", () => {
    expect(dryingOf(green!.of)).toBeCloseTo(0.0366, 9);
    expect(dryingOf(dry!.of)).toBe(0);
  });
  test("a tail 4 in wide and 3 in long, flared 1/2 in on each side, draws out 0.0366 × 4 × 3 ÷ (2 × 1/2) [derived]", () => {
    expect(drawOut(green!.of, green!.sizes.dovetail!)).toBeCloseTo(0.4392, 9);
    expect(drawOut(dry!.of, dry!.sizes.dovetail!)).toBe(0);
  });
  test("a wedge takes up what the tail loses, ten times that along 1 in 10 [derived, dovetail-1 to -5]", () => {
    const [end] = jointsOf(
      ROOFED.replace(
        /^ {2}tie-end: .*$/m,
        "  tie-end: {kind: wedged-half-dovetail, of: tie, into: post, drop: 1 in}",
      ),
      "wedged-half-dovetail",
    ).joints;
    const { wedge } = end!.sizes;
    expect(wedgeReserve(end!.of, 10, 0.1)).toBeCloseTo(3.66, 9);
    expect(wedge!.reserve).toBeCloseTo(3.66, 9);
    expect(wedgeReserve(end!.of, 10, 0)).toBe(0);
    // housing of 3/4 in, so that 7 1/4 in of post are left
    expect(tailSlope(end!.sizes)).toBeCloseTo(1 / 7.25, 9);
    expect(wedge!.whole).toEqual({ value: 11, from: "default" });
  });
});

test("a wedge's relish counts no farther than 8 × the half of it that each plane stands for, as NDS 3.4.3 counts (memory)", () => {
  const [joint] = jointsOf(
    ROOFED.replace(
      /^ {2}tie-end: .*$/m,
      "  tie-end: {kind: wedged-half-dovetail, of: tie, into: post, drop: 1 in}",
    ),
    "wedged-half-dovetail",
  ).joints;
  const relish = wedgeRelish({ joint: joint!, most: 1000, duration: SNOW } as unknown as JointPull)!;
  // post's end at 94 in, tie-top at 84: above it 1 in of drop, and at the middle half of 7 1/4 in ÷ 10
  expect(relish.length).toBeCloseTo(94 - 84 - 1 - 7.25 / 20, 9);
  expect(relish.counted).toBeCloseTo((8 * 2) / 2, 9);
  // edge at 1 in 7 1/4 over friction of 0.3 and level friction, on two planes of 8 by 7 1/4 in (derived)
  const thrust = 1000 / (Math.tan(Math.atan(1 / 7.25) + Math.atan(0.3)) + 0.3);
  expect(relish.stress).toBeCloseTo(thrust / (2 * 8 * 7.25), 6);
});

describe("a housed dovetail pulled out of a plate (derived; NDS as remembered)", () => {
  test("green, far from the end of the plate: every limit, and the flanks govern", () => {
    const [joint] = jointsOf(
      joists("kind: housed-dovetail", "from: 3 ft, to: 6 ft, count: 3"),
      "housed-dovetail",
    ).joints;
    const hold = dovetailTension(joint!, SNOW);
    const bears = 3 - 0.4392;
    // dimension lumber, No. 1: F_c 1,000 × C_D × C_F 1.1 × C_M 0.8; F_c⊥ 350 × 0.67; F_v 135 × C_D × 0.97; F_t 350 × C_D × C_F 1.3
    const [Fc, Fp, Fv, Ft] = [1000 * 1.15 * 1.1 * 0.8, 350 * 0.67, 135 * 1.15 * 0.97, 350 * 1.15 * 1.3];
    const theta = Math.PI / 2 - Math.atan(1 / 6);
    const flank = (Fc * Fp) / (Fc * Math.sin(theta) ** 2 + Fp * Math.cos(theta) ** 2);
    close(hold?.limits.bearing, (2 * bears * 3 * flank) / 6);
    close(hold?.limits["tail-shear"], bears * 3 * Fv);
    close(hold?.limits["neck-tension"], 3 * 3 * Ft);
    // of the plate, a post-and-timber size: F_v 125 × C_D
    close(hold?.limits["socket-split"], (4 / 3) * 125 * 1.15 * 3 * (1 / 2 + bears));
    close(hold?.limits["socket-end"], 2 * (1 / 6) * 125 * 1.15 * 24 * (bears + 3));
    expect(hold?.governs).toBe("bearing");
    expect(hold?.tension.value).toBe(hold?.limits.bearing);
  });
  test("within five depths of the end of the plate it splits: (d_e/d)², on one side [memory, NDS 3.4-6]", () => {
    const [joint] = jointsOf(joists("kind: housed-dovetail"), "housed-dovetail").joints;
    const hold = dovetailTension(joint!, SNOW);
    const reach = 1 / 2 + 3 - 0.4392;
    close(hold?.limits["socket-split"], (2 / 3) * 125 * 1.15 * 3 * reach * (reach / 8) ** 2);
    expect(hold?.governs).toBe("socket-split");
  });
  test("near the end of the plate its socket shears off over what lies between its tip and that end (derived)", () => {
    const [joint] = jointsOf(
      joists("kind: housed-dovetail", "from: 6 in, to: 8 ft 6 in, count: 3"),
      "housed-dovetail",
    ).joints;
    const { limits, terms } = dovetailTension(joint!, SNOW)!;
    // the plate runs 12 in past the posts: 18 in from the joist's middle, whose tail is 4 in wide at its tip
    expect(terms.end.counted).toBeCloseTo(18 - 4 / 2, 9);
    close(limits["socket-end"], 2 * (1 / 6) * 125 * 1.15 * 16 * (3 - 0.4392 + 3));
  });
  test("half an inch of wood behind a long tail is sheared with it, none is where it comes through (common practice, no source)", () => {
    const [joint] = jointsOf(joists("kind: housed-dovetail", undefined, "dry"), "housed-dovetail").joints;
    const breadth = (L: number): number => {
      const dovetail = { ...joint!.sizes.dovetail!, length: { value: L, from: "file" as const } };
      return dovetailTension({ ...joint!, sizes: { ...joint!.sizes, dovetail } }, SNOW)!.terms.end.breadth;
    };
    // plate of 8 in, housing of 1/2 in, tail 3 in deep
    expect(breadth(7)).toBeCloseTo(7 + 3, 9);
    expect(breadth(7.5)).toBeCloseTo(7.5, 9);
  });
  test("dry it bears on its whole length; with a flare that drying takes it holds nothing", () => {
    const [dry] = jointsOf(joists("kind: housed-dovetail", undefined, "dry"), "housed-dovetail").joints;
    expect(dovetailTension(dry!, SNOW)?.terms.bears).toBe(3);
    const [flat] = jointsOf(
      joists("kind: housed-dovetail, dovetail: {flare: 1/16 in}"),
      "housed-dovetail",
    ).joints;
    expect(dovetailTension(flat!, SNOW)?.tension.value).toBe(0);
  });
  test("what carries more flare carries more on its flanks, and no size without sense is ever NaN", () => {
    const [joint] = jointsOf(joists("kind: housed-dovetail"), "housed-dovetail").joints;
    const of = (flare: number, length = 3): number => {
      const dovetail = {
        ...joint!.sizes.dovetail!,
        flare: { value: flare, from: "file" as const },
        length: { value: length, from: "file" as const },
      };
      return (
        dovetailTension({ ...joint!, sizes: { ...joint!.sizes, dovetail } }, SNOW)?.limits.bearing ??
        Number.NaN
      );
    };
    expect(of(3 / 4)).toBeGreaterThan(of(1 / 2));
    for (const [flare, length] of [
      [0, 3],
      [1, 0],
      [0, 0],
      [-1, 3],
    ] as const)
      expect(of(flare, length)).not.toBeNaN();
  });
});

describe("pegged laps: each peg is sheared once between two halves (memory, TFEC 1 3.4; derived)", () => {
  // F_vy = 4,850 G_p G_t^0.75: white oak 0.73 in eastern white pine 0.36; half of the two sections of a tenon
  const one = (Math.PI * 0.75 ** 2 * 4850 * 0.73 * 0.36 ** 0.75) / (4 * 3.5);
  const hold = (text: string, kind: string) => {
    const { joints, frame } = jointsOf(text, kind);
    return pegTension(joints[0]!, frame, SNOW);
  };
  test("a corner half-lap of joists holds what one section of its peg does", () => {
    const pegs = hold(joists("kind: corner-half-lap"), "corner-half-lap");
    expect(pegs?.governs).toBe("V");
    close(pegs?.tension.value, 1.15 * one);
  });
  test("a dovetail lap holds the same by its peg", () => {
    close(hold(joists("kind: dovetail-lap"), "dovetail-lap")?.tension.value, 1.15 * one);
  });
  test("a half-lap scarf holds by four of them, along the grain of both timbers", () => {
    const pegs = hold(spliced("2", "half-lap-scarf"), "half-lap-scarf");
    close(pegs?.tension.value, 4 * 1.15 * one);
    expect(pegs?.one.bearing.cheek.angle).toBe(0);
    expect(pegs?.one.sizes).toMatchObject({ tenon: 4, cheek: 4, planes: 1 });
  });
  test("a blade is pegged through: two sections each, or what tears out of both blades", () => {
    const pegs = hold(spliced("2", "bladed-scarf"), "bladed-scarf");
    expect(pegs?.one.sizes).toMatchObject({ tenon: 2, cheek: 3, planes: 2 });
    // 4 in of blade, pegs in its middle: 2 in behind each; F_v 125 psi × C_D
    close(pegs?.tenon.find(({ what }) => what === "relish")?.value, 4 * 125 * 1.15 * 2 * 2);
    // two blades of 4 × 2 in, two holes in each; F_t 525 psi × C_D
    close(pegs?.tenon.find(({ what }) => what === "net-section")?.value, 2 * 525 * 1.15 * (4 - 1.5) * 2);
    close(pegs?.tension.value, Math.min(4 * 2 * 1.15 * one, 4 * 125 * 1.15 * 2 * 2));
  });
  test("a splayed scarf is thinner towards its butt: at two thirds of the lap between half and butt", () => {
    const { joints } = jointsOf(spliced("2", "stop-splayed-scarf"), "stop-splayed-scarf");
    const lap = lapPegs(joints[0]!);
    const { lap: size, splay } = joints[0]!.sizes;
    const half = size!.length.value / 2;
    // plane geometry: a straight line from (8 + k)/2 beside the opening to the butt under its undercut
    const at = Math.max(...joints[0]!.sizes.pegs!.setbacks) - half;
    const share = (at - splay!.key.length / 2) / (half + splay!.undercut - splay!.key.length / 2);
    const want = ((8 + splay!.key.height) / 2) * (1 - share) + splay!.butt.value * share;
    expect(lap?.thickness).toBeCloseTo(want, 9);
    expect(lap!.thickness + lap!.other).toBeCloseTo(8, 9);
  });
  test("without pegs, or in wood without values, there is nothing to say", () => {
    expect(hold(joists("kind: corner-half-lap, pegs: {count: 0}"), "corner-half-lap")).toBeUndefined();
    const unknown = gate({ timber: "timber:\n  frame: {species: eastern-white-pin}\n" });
    expect(jointsOf(unknown, "half-lap-scarf").joints).toEqual([]);
  });
});
