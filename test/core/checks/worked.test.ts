/** The formula with a case's numbers: what a page states is reckoned again, and shows the numbers of its check. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Finding } from "../../../server/core/checks/check.ts";
import { caseParts } from "../../../server/core/checks/page.ts";
import { CHECKS } from "../../../server/core/checks/registry.ts";
import { LIMITS } from "../../../server/document/parse-yaml.ts";
import { metaOf, nameOfFinding, pageOf } from "../../../server/language/check-page.ts";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { FORMULA_FRAMES, inMillimetres } from "./formula-frames.ts";
import { gate } from "./gate.ts";
import { reckon, shows } from "./reckon.ts";

const URI = "file:///w.frame.yaml";

/** Checks that hold a number against a limit and show no formula, each with the reason. */
const WITHOUT: Readonly<Record<string, string>> = {
  "frame-racks": "how many combinations have no answer, against none: nothing is reckoned",
  "loads-unanswered": "the same, of a frame whose racking is accepted",
};

const findingsOf = (text: string): Finding[] =>
  createFrameService()
    .open(URI, 1, text)
    .findings.map(({ finding }) => finding);

const lineOf = (finding: Finding): string | undefined => finding.worked?.();

test("the reckoning itself tells a wrong line from a right one", () => {
  for (const right of [
    "14 in ÷ 2 − 8 in ÷ 2 = 3 in ≥ 3 in",
    "1,120 psi > F_b 875 psi × C_D 1.15 = 1,006 psi",
    `√((6 in)² + (8 in)²) = 10 in < 8'-6 1/2"`,
    "12 kN ÷ 8,000 mm² = 1.5 MPa",
    "α: atan(300 lb ÷ 300 lb) = 45°; 2 × cos² 45° = 1",
    "2/3 × 90 psi × 8 in × (3 in ÷ 6 in)² ≠ 200 lb/in",
  ])
    expect(() => reckon(right), right).not.toThrow();
  for (const wrong of [
    "14 in ÷ 2 = 5 in",
    "2 in > 3 in",
    "3/16 × 3/4 in = 2 in",
    "1,200 psi > F_b 875 psi × C_D 1.15 = 1,010 psi",
    "√(6 in² + 8 in²) = 10 in",
    "12 kN ÷ 8,000 mm = 1.5 MPa",
    "3 in = 3 lb",
    "3 in + 2 = 5 in",
    "depth = 3 in",
    "(3 in",
  ])
    expect(() => reckon(wrong), wrong).toThrow();
  expect(shows(reckon("3 in < 4 in"), 3.01, "in")).toBe(true);
  expect(shows(reckon("3 in < 4 in"), 3.1, "in")).toBe(false);
  expect(shows(reckon("3 in < 4 in"), 3, "lb")).toBe(false);
});

const POSTS = "post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}";
const PLATE = "plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}";
const head = (more: string): string =>
  gate({ joints: `joints: {head: {kind: mortise-and-tenon, of: post, into: plate, ${more}}}\n` });

describe("a line of this check", () => {
  test.each([
    [
      "pier-above-frost",
      gate({
        piers:
          "piers: {all: {under: post, kind: tube, diameter: 14 in, depth: 20 in, footing: {diameter: 24 in, thickness: 6 in}, anchor: {kind: embedded-strap}}}\n",
      }),
      "20 in + 6 in = 26 in < max(30 in, 12 in) = 30 in",
    ],
    [
      "side-cover-short",
      gate({
        piers:
          "piers: {all: {under: post, kind: tube, diameter: 12 in, depth: 40 in, anchor: {kind: embedded-strap}}}\n",
      }),
      "12 in ÷ 2 − 8 in ÷ 2 = 2 in < 3 in",
    ],
    ["housing-deep", head("housing: 2 1/2 in"), "2 1/2 in > 8 in ÷ 4 = 2 in"],
    ["housing-deep", head("housing: 5 in"), "5 in ≥ 8 in ÷ 2 = 4 in"],
    [
      "drawbore-out-of-range",
      head("tenon: {thickness: 2 in, length: 4 in}, pegs: {count: 1, diameter: 1 in, draw: 1/4 in}"),
      "1/4 in > 3/16 × 1 in = 3/16 in",
    ],
    [
      "larger-than-logs",
      gate({
        mill: "mill: {longest-cut: 21 ft, logs: [{species: eastern-white-pine, small-end: 10 in, length: 22 ft, count: 9}]}\n",
        members: `members:\n  ${POSTS}\n  ${PLATE}\n`,
      }),
      "√((8 in)² + (8 in)²) = 11 5/16 in > 10 in",
    ],
  ])("%s", (check, text, line) => {
    const own = findingsOf(text).filter((finding) => finding.check === check);
    expect(own.map(lineOf)).toContain(line);
    reckon(line);
  });
});

describe("with a formula or among those without", () => {
  const files = readdirSync("server/core/checks", { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => readFileSync(`server/core/checks/${name}`, "utf8"));

  test.each(CHECKS.map((check) => [check.meta.id, check] as const))("%s", (id, check) => {
    const own = files.find((text) => text.includes(`    id: "${id}",`)) ?? "";
    expect(own, "its file").toContain("defineCheck");
    const compares = /\blimit[,:]/.test(own);
    if (compares)
      expect(check.showsFormula !== id in WITHOUT, "a formula, or a reason in WITHOUT").toBe(true);
    else expect(WITHOUT).not.toHaveProperty(id);
    // what is worked out for a case stands for every case too
    if (check.showsFormula) expect(check.meta.explanation.formula, "the formula in general").toBeDefined();
  });
});

/** What is wrong with a finding's line; undefined where nothing is. */
function faultOf(finding: Finding): string | undefined {
  const { check, value, limit, unit } = finding;
  const line = lineOf(finding);
  if (line === undefined)
    return limit === undefined || check in WITHOUT
      ? undefined
      : `${check}: ${value} against ${limit}, no line`;
  try {
    const shown = reckon(line);
    const lost = [value, limit].filter(
      (n) => n !== undefined && unit !== undefined && !shows(shown, n, unit),
    );
    return lost.length === 0 ? undefined : `${check}: ${lost.join(", ")} is not in ${line}`;
  } catch (fault) {
    return `${check}: ${String(fault)} in ${line}`;
  }
}

test.each([
  ["inches", (text: string) => text],
  ["millimetres", inMillimetres],
])("every line holds and shows the numbers of its check, in %s; each check has one", (_, turned) => {
  const texts = readdirSync("samples")
    .filter((name) => name.endsWith(".yaml"))
    .map((name) => readFileSync(`samples/${name}`, "utf8"));
  const found = [...FORMULA_FRAMES, ...texts].map(turned).flatMap(findingsOf);
  expect([...new Set(found.flatMap((finding) => faultOf(finding) ?? []))]).toEqual([]);
  const tried = new Set(found.flatMap((finding) => (lineOf(finding) === undefined ? [] : [finding.check])));
  const all = CHECKS.filter(({ showsFormula }) => showsFormula).map(({ meta }) => meta.id);
  expect(all.filter((id) => !tried.has(id))).toEqual([]);
});

test("a file that is too large: the limits that its page names are those of the reader", () => {
  const limits = Object.values(LIMITS).map((limit) => limit.toLocaleString("en-US"));
  for (const limit of limits) expect(metaOf("not-a-frame")?.explanation.formula).toContain(limit);
});

test("the page in the editor and the command line show the same line", () => {
  const snapshot = createFrameService().open(URI, 1, FORMULA_FRAMES.at(-1) ?? "");
  const found = snapshot.findings.map(({ finding }) => finding);
  const stressed = found.find(({ check }) => check === "timber-overstressed");
  if (!stressed) throw new Error("no timber is overstressed");
  const line = lineOf(stressed) ?? "";
  expect(line).toMatch(/÷ .* = .* > F_[bv] /);
  // `bentwright explain` prints these parts
  expect(caseParts(stressed, snapshot.say)).toContainEqual({ label: "With its numbers", text: line });
  const pulled = found.find((finding) => (lineOf(finding)?.split("; ").length ?? 0) > 1);
  if (!pulled) throw new Error("no formula has steps");
  const steps = lineOf(pulled)?.split("; ") ?? [];
  const [part] = caseParts(pulled, snapshot.say).filter((one) => one.steps);
  expect(part?.steps).toEqual(steps);
  expect(pageOf(nameOfFinding(URI, pulled), snapshot).replaceAll("\\", "")).toContain(
    `**With its numbers:**\n\n${steps.map((step) => `- ${step}`).join("\n")}\n`,
  );
  const page = pageOf(nameOfFinding(URI, stressed), snapshot).replaceAll("\\", "");
  expect(page).toContain(`**With its numbers:** ${line}`);
});
