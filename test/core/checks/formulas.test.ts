/**
 * The formulas behind findings, of every check of every timber, over or not, and of pegs and screws of all sizes: whatever
 * a check reckons, the line with its numbers gives the same.
 */
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bothWays } from "../../../server/core/checks/fastener-words.ts";
import { pegFormula } from "../../../server/core/checks/joinery/peg-formula.ts";
import { bearingFormula } from "../../../server/core/checks/members/bearing-formula.ts";
import { stressFormula } from "../../../server/core/checks/members/stress-formula.ts";
import { timberSags } from "../../../server/core/checks/members/timber-sags.ts";
import { timberSlender } from "../../../server/core/checks/members/timber-slender.ts";
import { rafterOverspanned } from "../../../server/core/checks/roof/rafter-overspanned.ts";
import type { Say } from "../../../server/core/checks/say.ts";
import { makeSay } from "../../../server/core/checks/speak.ts";
import { combinedUse } from "../../../server/core/fasteners/combined.ts";
import { pegJoint } from "../../../server/core/fasteners/pegs/peg-joint.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import { computeResults, type Results } from "../../../server/core/results.ts";
import type { MemberResult, MemberUse } from "../../../server/core/statics/frame-results.ts";
import { readFrame } from "../../../server/document/read.ts";
import { ROOFED } from "../../roofed-shed.ts";
import { SHED } from "../../shed.ts";
import { loft } from "../statics/members.ts";
import { reckon, shows } from "./reckon.ts";

const SAYS: readonly Say[] = [makeSay("inch"), makeSay("mm")];

const files = (folder: string): string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".frame.yaml"))
    .map((name) => readFileSync(`${folder}/${name}`, "utf8"));

const FRAMES: readonly string[] = [
  ...files("samples"),
  ...files("test/frames"),
  SHED,
  ROOFED,
  ROOFED.replace("overhang: {eave: 6 in}", "overhang: {eave: 4 ft}"),
  loft("4x6", "200 psf"),
  loft("8x8", "1000 psf"),
];

const resultsOf = (text: string): Results => computeResults(buildModel(readFrame(text).frame));

function lineOf(result: MemberResult, use: MemberUse, results: Results, say: Say): string | undefined {
  const { frame } = results;
  if (!frame) return undefined;
  const data = { result, use, solution: frame.solution };
  switch (use.what) {
    case "bearing":
      return bearingFormula(use, say);
    case "slenderness":
      return timberSlender.worked?.(data, say);
    case "live-deflection":
    case "total-deflection":
      return timberSags.worked?.(data, say);
    default:
      return stressFormula(use, say);
  }
}

/** What is wrong with a line that tells how a value and its limit came about; undefined where nothing is. */
function faultOf(
  line: string | undefined,
  { value, limit, unit }: Pick<MemberUse, "value" | "limit" | "unit">,
): string | undefined {
  if (line === undefined) return `${value} against ${limit}: no line`;
  try {
    const shown = reckon(line, true);
    const lost = [value, limit].filter((n) => Number.isFinite(n) && !shows(shown, n, unit));
    return lost.length === 0 ? undefined : `${lost.join(", ")} is not in ${line}`;
  } catch (fault) {
    return `${String(fault)} in ${line}`;
  }
}

test("every check of every timber and rafter of the samples and test frames", () => {
  const kinds = new Set<string>();
  const faults = FRAMES.map(resultsOf).flatMap((results) =>
    SAYS.flatMap((say) => [
      ...[...(results.frame?.members.values() ?? [])].flatMap((result) =>
        result.uses.flatMap((use) => {
          kinds.add(use.what);
          return faultOf(lineOf(result, use, results, say), use) ?? [];
        }),
      ),
      ...results.rafters.flatMap((result) =>
        // what the wind holds up counts as no deflection, and is never a finding
        result.check.worst
          .filter(({ value }) => value > 0)
          .flatMap((use) => {
            kinds.add(use.what);
            const line = rafterOverspanned.worked?.(
              { result, use, longest: undefined, inFrame: undefined },
              say,
            );
            return faultOf(line, use) ?? [];
          }),
      ),
    ]),
  );
  expect([...new Set(faults)]).toEqual([]);
  expect([...kinds].sort()).toEqual([
    "bearing",
    "bending",
    "bending-at-seat",
    "compression",
    "compression-and-bending",
    "live-deflection",
    "notched-shear",
    "shear",
    "shear-at-seat",
    "slenderness",
    "tension",
    "tension-and-bending",
    "tip-live-deflection",
    "tip-total-deflection",
    "total-deflection",
  ]);
});

describe("pegs", () => {
  const DURATION = { symbol: "C_D", value: 1.6, status: "memory", source: "NDS 2.3.2" } as const;
  const inches = (from: number, to: number): fc.Arbitrary<number> =>
    fc.integer({ min: 16 * from, max: 16 * to }).map((n) => n / 16);

  test("of all sizes, in tenons and laps: every mode and what is left of the tenon", () => {
    const modes = new Set<string>();
    fc.assert(
      fc.property(
        inches(0.5, 1.5),
        inches(0.25, 4),
        inches(0.25, 4),
        inches(3, 12),
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        fc.constantFrom<1 | 2>(1, 2),
        fc.integer({ min: 1, max: 4 }),
        fc.boolean(),
        (diameter, thickness, wall, width, G, wood, cheek, planes, count, metric) => {
          const say = makeSay(metric ? "mm" : "inch");
          const pegs = pegJoint({
            peg: { diameter, G, count },
            tenon: {
              species: "eastern-white-pine",
              G: wood,
              thickness,
              width,
              length: 6,
              setbacks: [2, 4],
              alongWidth: count > 1 ? [-width / 4, width / 4] : [0],
              strength: { Fv: 200, Ft: 800 },
            },
            mortised: { species: "eastern-white-pine", G: cheek, walls: [wall, wall] },
            planes,
            seasoning: "green",
            duration: DURATION,
          });
          modes.add(pegs.one.yields.governs.mode);
          const pull = pegs.tension.value + 100;
          const line = pegFormula(pegs, count, pull, say);
          const shown = reckon(line);
          for (const pounds of [pull, pegs.pegs.value, pegs.tension.value])
            expect(shows(shown, pounds, "lb"), `${pounds} in ${line}`).toBe(true);
        },
      ),
      { numRuns: 1500, seed: 7 },
    );
    // mode IV does not occur with wood pegs
    expect([...modes].sort()).toEqual(["II", "IIIm", "IIIs", "Im", "Is", "V"]);
  });
});

test("screws and nails drawn and pushed at once", () => {
  const pounds = fc.integer({ min: 1, max: 5000 });
  fc.assert(
    fc.property(
      fc.constantFrom("screw" as const, "nail" as const),
      fc.integer({ min: 0, max: 5000 }),
      fc.integer({ min: 0, max: 5000 }),
      pounds,
      pounds,
      fc.boolean(),
      (kind, sideways, outward, Z, W, metric) => {
        const say = makeSay(metric ? "mm" : "inch");
        const use = combinedUse(kind, Z, W, sideways, outward);
        const line = bothWays(kind, use, sideways, outward, Z, W, say);
        const shown = reckon(line, true);
        for (const n of [use.force, use.allowed.value])
          expect(shows(shown, n, "lb"), `${n} in ${line}`).toBe(true);
      },
    ),
    { numRuns: 300, seed: 7 },
  );
});
