/** Deflection of spans with a scarf in them: a hinged beam over three posts, by hand (statics, derived). */
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { analyseFrame } from "../../../server/core/statics/analyse-frame.ts";
import { scarfedLengths } from "../../../server/core/statics/scarfed-spans.ts";
import { readFrame } from "../../../server/document/read.ts";
import { SHED } from "../../shed.ts";
import { checked, use } from "./members.ts";

/** Three bents, 9 ft apart; rails with knees brace the posts, so that nothing but posts carries the plates. */
const wall = (splice: string): string =>
  SHED.replace("2: 9 ft}", "2: 9 ft, 3: 18 ft}")
    .replace("bents: [1, 2], from: A", "bents: [1, 2, 3], from: A")
    .replace("from: 1, to: 2, top: eave, overhang: 12 in}", `from: 1, to: 3, top: eave${splice}}`)
    .replace("[A1, A2, B1, B2]", "[A1, A2, A3, B1, B2, B3]")
    .replace(
      "  knee: {kind: brace, section: 4x6, between: [post, plate], leg: 30 in}",
      "  rail: {kind: girt, section: 6x8, walls: [A, B], from: 1, to: 3, top: 4 ft 6 in}\n  knee: {kind: brace, section: 4x6, between: [post, rail], leg: 24 in}",
    )
    .replace(/into: \[post, plate, tie\]/, "into: [post, rail, tie]")
    .replace(/ {2}(snow|wind): .*\n/g, "");

describe("a plate scarfed in the span between two posts", () => {
  const c = checked(wall(", splice: {at: 12 ft, kind: half-lap-scarf}"));
  const hinge = c.solution.hold.pieces
    .flatMap(({ jointI, jointJ, from, to, timber }) =>
      jointI?.kind === "half-lap-scarf"
        ? [timber.origin[0] + from * timber.axis[0]]
        : jointJ?.kind === "half-lap-scarf"
          ? [timber.origin[0] + to * timber.axis[0]]
          : [],
    )
    .at(0)!;

  test("both lengths are judged over the whole span from post to post, though one has a single post", () => {
    // middles of posts 2 and 3: 108 in, and 4 in inside the outer face at 216 in
    for (const stick of ["plate@A.1", "plate@A.2"]) {
      const total = use(c, stick, "total-deflection");
      expect(total.share!.length, stick).toBeCloseTo(212 - 108, 6);
      expect(total.limit).toBeCloseTo((212 - 108) / 120, 6);
    }
  });

  test("the scarf sinks by R a² (L + a)/3EI + w a (4 a² L − L³ + 3 a³)/24EI, R what the far length puts on the hinge", () => {
    const [a, L] = [hinge - 108, 108 - 4];
    const dead = c.solution.loads.all.find(({ id }) => id === "D")!;
    const own = dead.loads.find(({ timber }) => timber.id === "plate@A.1")!;
    const w = -own.startForce[2];
    const total = use(c, "plate@A.1", "total-deflection");
    const EI =
      (total.reference!.value *
        total.factors.filter(({ symbol }) => symbol !== "K_cr").reduce((p, f) => p * f.value, 1) *
        8 ** 4) /
      12;
    // the far length lies on the hinge with the end of its lap hanging out before it: moments about post 3
    const far = c.model.byId.get("plate@A.2")!;
    const middle = far.origin[0] + far.span / 2;
    const R = (w * far.span * (212 - middle)) / (212 - hinge);
    const sinks = (R * a ** 2 * (L + a)) / 3 + (w * a * (4 * a ** 2 * L - L ** 3 + 3 * a ** 3)) / 24;
    expect(Math.abs((Math.abs(total.bent!.long) * EI) / sinks - 1)).toBeLessThan(0.02);
    expect(total.value / Math.abs(total.bent!.long)).toBeCloseTo(2, 6);
    expect(total.at + c.model.byId.get("plate@A.1")!.origin[0]).toBeCloseTo(hinge, 0);
    // it hangs on the same hinge: the other length is used as far
    expect(use(c, "plate@A.2", "total-deflection").value / total.value).toBeCloseTo(1, 1);
  });
});

test("a scarf over a post leaves the spans as they are", () => {
  const c = checked(wall(", splice: {at: 2, kind: half-lap-scarf}"));
  // a simple span each, or one held at the post and at the joint there
  const lengths = ["plate@A.1", "plate@A.2"].flatMap(
    (stick) =>
      c.members.get(stick)!.uses.find(({ what }) => what === "total-deflection")?.share?.length ?? [],
  );
  expect(lengths.length).toBeGreaterThan(0);
  for (const length of lengths) expect(length).toBeLessThan(110);
});

test("a scarf whose hinge stands on a post, or less than its depth beside it, sinks with nothing (statics)", () => {
  const lengthsAt = (at: number): number => {
    const model = buildModel(readFrame(wall(`, splice: {at: ${at} in, kind: half-lap-scarf}`)).frame);
    const { solution, basis } = analyseFrame(model)!;
    return scarfedLengths(model, solution.hold, basis.plans).size;
  };
  // the lap is 32 in long and hinges at its far end: 16 in past its middle; the post's middle is at 108 in, plates are 8 in deep
  expect([92, 96, 99].map(lengthsAt)).toEqual([0, 0, 0]);
  // both lengths of both plates
  expect(lengthsAt(101)).toBe(4);
});

test.each(["half-lap-scarf", "bladed-scarf", "stop-splayed-scarf"])(
  "%s over a post or beside it: the few inches on the post are no span",
  (kind) => {
    for (const at of [100, 104, 108, 111, 114]) {
      const c = checked(wall(`, splice: {at: ${at} in, kind: ${kind}}`));
      const lengths = ["plate@A.1", "plate@A.2"].flatMap((stick) =>
        c.members
          .get(stick)!
          .uses.filter(({ what }) => what.endsWith("deflection"))
          .map(({ share }) => share!.length),
      );
      for (const length of lengths) expect(length, `at ${at}`).toBeGreaterThan(8);
    }
  },
);
