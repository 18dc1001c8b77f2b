/**
 * C_P and C_L from what is printed beside them and nothing else: NDS 3.7-1 and 3.3-6 (from memory), E_min′ from its reference
 * value and its own factors. A beam or stringer that buckles sideways bends flat: of No. 1 its E_min takes 0.90 (NDS Supplement
 * Table 4D, from memory).
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { run } from "../../server/cli/run.ts";
import { stressFormula } from "../../server/core/checks/members/stress-formula.ts";
import { makeSay } from "../../server/core/checks/speak.ts";
import { createFrameService } from "../../server/language/frame-service.ts";
import { limitTable } from "../../server/language/hover/limit-table.ts";

interface Factor {
  readonly symbol: string;
  readonly value: number;
  readonly source: string;
  readonly amounts?: Readonly<Record<string, { readonly value: number }>>;
  readonly from?: {
    readonly symbol: string;
    readonly reference: { readonly value: number };
    readonly factors: readonly Factor[];
    readonly value: number;
  };
}

interface Sized {
  readonly width: number;
  readonly depth: number;
}

interface Use {
  readonly member: Sized;
  readonly check: string;
  readonly limit: number;
  readonly reference?: { readonly value: number };
  readonly factors: readonly Factor[];
}

const textOf = (command: readonly string[]): string => {
  let text = "";
  run(command, {
    read: (file) => readFileSync(file),
    write: () => undefined,
    out: (part) => {
      text += part;
    },
    err: () => undefined,
    color: false,
  });
  return text;
};

interface Member extends Sized {
  readonly uses?: readonly Omit<Use, "member">[];
}

interface Answer {
  readonly results: { readonly frame: { readonly members: readonly Member[] } };
}

function usesOf(file: string): Use[] {
  const { results } = JSON.parse(textOf(["forces", "--format", "json", file])) as Answer;
  return results.frame.members.flatMap((member) => (member.uses ?? []).map((use) => ({ ...use, member })));
}

const product = (of: number, factors: readonly Factor[]): number =>
  factors.reduce((all, { value }) => all * value, of);

/** F_c* of a use, and E_min′, as printed. */
function column(use: Use, factor: Factor) {
  const { reference, factors, value } = factor.from!;
  const Emin = product(reference.value, factors);
  expect(Emin / value).toBeCloseTo(1, 8);
  return { Emin, star: product(use.reference!.value, use.factors.slice(0, use.factors.indexOf(factor))) };
}

const FRAMES = [
  "samples/cider-press-pavilion",
  "samples/kayak-shelter",
  "samples/goat-shed",
  "test/frames/king-post-truss",
  "test/frames/loft",
];

describe("stability factors can be worked again from the JSON", () => {
  const uses = FRAMES.flatMap((frame) => usesOf(`${frame}.frame.yaml`));
  const withFactor = (check: string, symbol: string) =>
    uses
      .filter((use) => use.check === check)
      .flatMap((use) => {
        const factor = use.factors.find((f) => f.symbol === symbol && f.value > 0 && f.value < 1);
        return factor ? [{ use, factor }] : [];
      });

  test("C_P, NDS 3.7-1", () => {
    const found = withFactor("compression", "C_P");
    expect(found.length).toBeGreaterThan(50);
    for (const { use, factor } of found) {
      const { Emin, star } = column(use, factor);
      const critical = (0.822 * Emin) / factor.amounts!.slenderness!.value ** 2;
      const half = (1 + critical / star) / 1.6;
      expect(half - Math.sqrt(half ** 2 - critical / star / 0.8)).toBeCloseTo(factor.value, 6);
      expect(product(use.reference!.value, use.factors) / use.limit).toBeCloseTo(1, 8);
    }
  });

  test("flat use of beams and stringers is one of them, with its source", () => {
    const flat = withFactor("compression", "C_P").flatMap(({ factor }) =>
      factor.from!.factors.filter(({ symbol }) => symbol === "C_fu"),
    );
    expect(flat.length).toBeGreaterThan(3);
    expect(flat.some(({ value }) => value === 0.9)).toBe(true);
    for (const { source } of flat) expect(source).toContain("NDS Supplement Table 4");
  });

  test("C_P 0.7314 at l_e/d 17.69 of a No. 1 eastern white pine beam, wet, in wind", () => {
    // F_c* 575 × 1.6 × 0.91 = 837.2 psi; F_cE 0.822 × 400,000 × 0.90 ÷ 17.69² = 945.6 psi; without the 0.90 it would be 0.755
    const found = withFactor("compression", "C_P").filter(
      ({ factor }) => Math.abs(factor.amounts!.slenderness!.value - 17.69) < 0.01,
    );
    expect(found.length).toBeGreaterThan(0);
    for (const { use, factor } of found) {
      expect(factor.from!.reference.value).toBe(400_000);
      if (Math.abs(column(use, factor).star - 837.2) < 0.1) expect(factor.value).toBeCloseTo(0.7314, 3);
    }
  });

  test("C_L, NDS 3.3-6, l_e by the last line of Table 3.3.3 for loads of any kind", () => {
    const found = withFactor("bending", "C_L");
    expect(found.length).toBeGreaterThan(10);
    for (const { use, factor } of found) {
      const { Emin, star } = column(use, factor);
      const [b, d] = [
        Math.min(use.member.width, use.member.depth),
        Math.max(use.member.width, use.member.depth),
      ];
      const lu = factor.amounts!.length!.value;
      const le = lu < 7 * d ? 2.06 * lu : lu <= 14.3 * d ? 1.63 * lu + 3 * d : 1.84 * lu;
      const a = (1.2 * Emin) / ((le * d) / b ** 2) / star;
      const half = (1 + a) / 1.9;
      expect(half - Math.sqrt(half ** 2 - a / 0.95)).toBeCloseTo(factor.value, 6);
    }
  });
});

/** Of the ties of the pavilion, whose sides are as far apart as makes them beams, under the push of their knees. */
describe("what else names it", () => {
  const text = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
  const snapshot = createFrameService().open("file:///pavilion.frame.yaml", 1, text);
  const say = makeSay("inch");
  const pressed = [...snapshot.evaluation!.results!.frame!.members.values()]
    .flatMap(({ uses }) => uses)
    .filter(
      ({ what, factors }) =>
        what === "compression" &&
        factors.some(({ from }) =>
          from?.factors.some(({ symbol, value }) => symbol === "C_fu" && value === 0.9),
        ),
    );

  test("the table of the hover", () => {
    expect(pressed.length).toBeGreaterThan(0);
    const rows = limitTable(pressed[0]!, say).join("\n");
    expect(rows).toMatch(/E\\_min in C\\_P +\| 400,000 psi/);
    expect(rows).toMatch(
      /C\\_fu × E\\_min in C\\_P \(load on the wide face\) +\| 0\.9 +\| NDS Supplement Table 4D/,
    );
  });

  test("the formula of the page", () => {
    const over = { ...pressed[0]!, value: 2 * pressed[0]!.limit };
    expect(stressFormula(over, say)).toMatch(
      /^C_P \(l_e\/d = [\d.]+\): E_min 400,000 psi × C_fu 0\.9 = 360,000 psi; /,
    );
  });
});
