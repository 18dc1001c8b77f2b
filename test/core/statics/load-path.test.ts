/** The load path by statics alone: what goes in at the top comes out below, whatever the stiffnesses are. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import type { Timber } from "../../../server/core/model/model.ts";
import { computeResults } from "../../../server/core/results.ts";
import { appliedTotal, bearingReactions, reactionTotal } from "../../../server/core/statics/balance.ts";
import { basicLoads } from "../../../server/core/statics/basic-loads.ts";
import { totalOf } from "../../../server/core/statics/line-loads.ts";
import { broughtTo, roofAreas } from "../../../server/core/statics/load-path.ts";
import { memberForces } from "../../../server/core/statics/member-forces.ts";
import { readFrame } from "../../../server/document/read.ts";
import { SHED } from "../../shed.ts";

const text = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
const { frame } = computeResults(buildModel(readFrame(text).frame));
if (!frame) throw new Error("no analysis");
const { model, solution } = frame;
const vertical = solution.cases.filter((c) => c.frameCase.vertical);

describe.each(vertical.map((c) => [`${c.frameCase.id}, seats ${c.seats}`, c] as const))("%s", (_, solved) => {
  test("all that lies on the rafters is set down on plates and ridge", () => {
    const onRafters = solved.frameCase.parts.reduce((sum, { load, factor }) => {
      const own = load.loads.filter(({ timber }) => timber.kind === "rafter");
      return sum - factor * totalOf(own)[2];
    }, 0);
    // what runs on past a rafter's head lies on the ridge itself
    const past = solved.load().elementLoads ?? [];
    const beyond = past.reduce((sum, l) => {
      const piece = solved.frame.pieces[l.element];
      const end = piece && piece.to - piece.from;
      const atEnd = l.kind === "point" && end !== undefined && l.at > end - 1e-6;
      return atEnd && piece?.timber.kind === "rafter" ? sum - (l.force?.[2] ?? 0) : sum;
    }, 0);
    const takers = model.timbers.filter(({ kind }) => kind === "plate" || kind === "ridge");
    const fromRafters = broughtTo([solved], takers)
      .flatMap(({ from }) => from)
      .filter(({ member }) => member === "rafter")
      .reduce((s, { force }) => s + force, 0);
    expect(onRafters).toBeGreaterThan(1000);
    expect(fromRafters + beyond).toBeCloseTo(onRafters, 3);
  });

  test("a post presses on its pier with the most it carries along its length", () => {
    for (const { timber, force } of bearingReactions(solved))
      expect(memberForces([solved], timber)?.compression.value, timber).toBeCloseTo(force[2], 4);
  });

  test("applied and reaction cancel", () => {
    const [x, y, z] = reactionTotal(solved);
    const load = appliedTotal(solved);
    expect(Math.hypot(x + load[0], y + load[1], z + load[2])).toBeLessThan(1e-6 * Math.abs(z));
  });
});

test("a second tie in the place of the first stands on nothing: the sums still cancel", () => {
  const twin = SHED.replace(/^( {2}tie): (.*)$/m, "$1: $2\n  tie-twin: $2");
  const [worst] = computeResults(buildModel(readFrame(twin).frame)).frame?.solution.cases ?? [];
  if (!worst) throw new Error("no answer");
  const load = appliedTotal(worst);
  const answer = reactionTotal(worst);
  expect(load[2]).toBeLessThan(0);
  expect(load[2] + answer[2]).toBeCloseTo(0, 3);
});

test("roof areas by the rule of halves: every square foot once on rafters, once on what they rest on", () => {
  const areas = roofAreas(model, solution.loads.strips);
  const sum = (kinds: readonly string[]): number =>
    model.timbers
      .filter(({ kind }) => kinds.includes(kind))
      .reduce((s, { id }) => s + (areas.get(id) ?? 0), 0);
  expect(sum(["rafter"])).toBeGreaterThan(100);
  expect(sum(["plate", "ridge"])).toBeCloseTo(sum(["rafter"]), 6);
  expect(sum(["post", "tie", "brace"])).toBe(0);
});

describe("purlins on principal rafters", () => {
  const purlined = readFileSync("test/frames/purlins-on-principals.frame.yaml", "utf8");
  const built = buildModel(readFrame(purlined).frame);
  const { strips } = basicLoads(built);
  const areas = roofAreas(built, strips);
  const sum = (test: (t: Timber) => boolean): number =>
    built.timbers.filter(test).reduce((s, { id }) => s + (areas.get(id) ?? 0), 0);
  // 24 ft over the plates’ faces; plates 26 ft long with the overhangs of 12 in; 6:12
  const roof = (24 * 26 * Math.sqrt(5)) / 2;

  test.each([["purlin"], ["rafter"]])("every square foot once on each %s [derived]", (kind) => {
    expect(sum((t) => t.kind === kind)).toBeCloseTo(roof, 6);
  });

  test("and once on plates and ridge [derived]", () => {
    expect(sum((t) => t.kind === "plate" || t.kind === "ridge")).toBeCloseTo(roof, 6);
  });

  test("halves between the principals’ middles at 4, 144 and 284 in: 86, 140 and 86 in of 312 [derived]", () => {
    for (const [bent, width] of [
      ["1", 86],
      ["2", 140],
      ["3", 86],
    ] as const)
      expect(sum((t) => t.kind === "rafter" && t.bents[0] === bent) / roof).toBeCloseTo(width / 312, 9);
  });
});

test("nothing is said of a timber that is not there", () => {
  expect(memberForces(solution.cases, "post@Z9")).toBeUndefined();
  expect(broughtTo(solution.cases, [])).toEqual([]);
});
