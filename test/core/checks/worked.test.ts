/** The formula with a case's numbers: what a page states is reckoned again here, side by side. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { gate } from "./gate.ts";

/** Units in which lines are written, in one of their kind; whatever else has letters is the symbol of a factor. */
const UNITS: Readonly<Record<string, number>> = {
  ft: 12,
  in: 1,
  mm: 1 / 25.4,
  lb: 1,
  kN: 224.809,
  psi: 1,
  MPa: 145.038,
};

/** The sides of a line, reckoned; relations between them. Only numbers, units, + − × ÷ √ max ² and brackets are known. */
function reckoned(line: string): { readonly sides: number[]; readonly relations: string[] } {
  const relations = [...line.matchAll(/[=<>≤≥]/g)].map(([sign]) => sign);
  const sides = line.split(/[=<>≤≥]/).map((side) => {
    const plain = side
      .replace(/(\d),(?=\d{3})/g, "$1")
      .replace(
        /(-?)(\d+)'-(\d+)(?: (\d+)\/(\d+))?"/g,
        (_, sign, feet, inches, over = "0", under = "1") =>
          `(${sign}(${feet}*12+${inches}+${over}/${under}))`,
      )
      .replace(/\b[FCK]_[A-Za-z⊥]+\b/g, " ")
      .replace(/(\d+) (\d+)\/(\d+)/g, "($1+$2/$3)")
      .replace(/(?<![\d+])(\d+)\/(\d+)\b/g, "($1/$2)")
      .replace(/ (ft|in|mm|lb|kN|psi|MPa)\b/g, (_, unit: string) => `*${UNITS[unit]}`)
      .replaceAll("×", "*")
      .replaceAll("÷", "/")
      .replaceAll("−", "-")
      .replace(/√\(/g, "Math.sqrt(")
      .replace(/max\(/g, "Math.max(")
      .replace(/([\d.]+)\*1²/g, "($1)**2");
    if (!/^(?:Math\.(?:sqrt|max)|[\d\s.,+*/()-])+$/.test(plain)) throw new Error(`${line}: ${plain}`);
    return Number(new Function(`return (${plain});`)());
  });
  return { sides, relations };
}

/** Lengths are said to a sixteenth, factors to two figures. */
const near = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1 / 8 + 0.02 * Math.max(Math.abs(a), Math.abs(b));

function expectToHold(line: string): void {
  const { sides, relations } = reckoned(line);
  expect(relations.length, line).toBeGreaterThan(0);
  relations.forEach((sign, i) => {
    const [a = Number.NaN, b = Number.NaN] = [sides[i], sides[i + 1]];
    const holds = near(a, b) || (sign === "<" || sign === "≤" ? a < b : sign === "=" ? false : a > b);
    expect(holds, `${line}: ${a} ${sign} ${b}`).toBe(true);
  });
}

function linesOf(text: string): Map<string, string[]> {
  const lines = new Map<string, string[]>();
  for (const { finding } of createFrameService().open("file:///w.frame.yaml", 1, text).findings) {
    const line = finding.worked?.();
    if (line !== undefined) lines.set(finding.check, [...(lines.get(finding.check) ?? []), line]);
  }
  return lines;
}

test("the reckoning itself tells a wrong line from a right one", () => {
  expectToHold("14 in ÷ 2 − 8 in ÷ 2 = 3 in ≥ 3 in");
  expectToHold("1,120 psi > F_b 875 psi × C_D 1.15 = 1,006 psi");
  expectToHold(`√(6 in² + 8 in²) = 10 in < 8'-6 1/2"`);
  for (const wrong of ["14 in ÷ 2 = 5 in", "2 in > 3 in", "3/16 × 3/4 in = 2 in"])
    expect(() => expectToHold(wrong), wrong).toThrow();
  expect(() => expectToHold("depth = 3 in")).toThrow();
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
    const found = linesOf(text).get(check) ?? [];
    expect(found).toContain(line);
    expectToHold(line);
  });
});

test("every line in the samples, and in one with a tie too weak, holds", () => {
  const all = new Map<string, string[]>();
  const texts = readdirSync("samples")
    .filter((name) => name.endsWith(".yaml"))
    .map((name) => readFileSync(`samples/${name}`, "utf8"));
  const weak = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8").replace("8x12", "6x6");
  for (const text of [...texts, weak])
    for (const [check, lines] of linesOf(text)) all.set(check, [...(all.get(check) ?? []), ...lines]);
  for (const lines of all.values()) for (const line of lines) expectToHold(line);
  expect([...all.keys()]).toContain("timber-overstressed");
});
