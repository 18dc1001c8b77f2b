/** Tails of rafters sag when they go down; what their span bends up, or wind lifts, is no sag. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { computeResults } from "../../../server/core/results.ts";
import { readFrame } from "../../../server/document/read.ts";

const SAMPLE = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");

/** The sample pavilion in snow, its eave so far out; in little wind unless told. */
function pavilion(eave: string, wind = false, section = "3x7") {
  const text = SAMPLE.replace(/eave: \d+ in/, `eave: ${eave}`).replace("section: 3x7", `section: ${section}`);
  expect(text).toContain(`eave: ${eave}`);
  const { frame, source } = readFrame(
    wind ? text : text.replace("107 mph, exposure: C", "90 mph, exposure: B"),
  );
  expect(source.facts).toEqual([]);
  const results = computeResults(buildModel(frame));
  const stick = results.frame!.members.get("rafter@A.3")!;
  const [rafter] = results.rafters;
  return { rafter: rafter!, stick, uses: stick.uses, cases: results.frame!.solution.cases };
}

/**
 * Tip of a beam on two supports with one tail under an even load: w a (4 a² L − L³ + 3 a³) ÷ 24 EI (statics, derived): it
 * goes up while a is less than 0.43 of L.
 */
const goesDown = (a: number, L: number): boolean => 4 * a ** 2 * L - L ** 3 + 3 * a ** 3 > 0;

describe("dead load and snow", () => {
  test("a short tail goes up as its span sags: the sag is that of the span [derived]", () => {
    const { rafter, stick, uses } = pavilion("12 in");
    expect(goesDown(rafter.input.overhang, rafter.input.span)).toBe(false);
    const total = uses.find(({ what }) => what === "total-deflection")!;
    expect(total.at).toBeGreaterThan(stick.timber.span / 4);
    // the share is of the span, not of twice a tail
    expect(total.share!.length).toBeGreaterThan(rafter.input.span * 0.9);
  });

  test("a long tail goes down, as far as the rafter by itself says [derived]", () => {
    const { rafter, uses } = pavilion("52 in");
    expect(goesDown(rafter.input.overhang, rafter.input.span)).toBe(true);
    const total = uses.find(({ what }) => what === "total-deflection")!;
    expect(total.at).toBeCloseTo(0, 6);
    const own = rafter.check.worst.find(({ what }) => what === "tip-total-deflection")!;
    expect(Math.abs(total.value / own.value - 1)).toBeLessThan(0.15);
  });
});

test("wind that lifts the eave is no sag of the tail", () => {
  const { uses, cases } = pavilion("18 in", true, "3x3");
  expect(cases.some(({ frameCase }) => frameCase.parts.some(({ load }) => load.kind === "W"))).toBe(true);
  for (const what of ["live-deflection", "total-deflection"] as const)
    expect(uses.find((u) => u.what === what)!.at, what).toBeGreaterThan(30);
});
