/**
 * Sizing against the code's span tables: for a span between two printed ones, the search finds the size that the table
 * gives. Rows and their sources: `test/reference/spans.yaml`.
 */
import { describe, expect, test } from "vitest";
import { durationFactor } from "../../../server/core/loads/combinations.ts";
import { repetitiveFactor } from "../../../server/core/members/factors.ts";
import { checkSimpleSpan } from "../../../server/core/members/simple-span.ts";
import { inches } from "../../../server/core/quantity/length.ts";
import { parseSection } from "../../../server/core/quantity/quantity.ts";
import { smallestPassing } from "../../../server/core/sizing/search.ts";
import { nominalSizes } from "../../../server/core/sizing/usual-sections.ts";
import { designValues } from "../../../server/core/wood/design-values.ts";
import { sizeClass } from "../../../server/core/wood/size-class.ts";
import { type Row, readReference, tableOf } from "../../reference/cases.ts";

const SETS: Record<string, Row> = readReference("spans").sets;
const GRADE: Record<string, string> = {
  "Select Structural": "select-structural",
  "No.1": "no-1",
  "No.1/No.2": "no-1",
  "No.2": "no-2",
  "No.3": "no-3",
};
const DURATION: Record<number, "S" | "Lr" | "L"> = { 1.15: "S", 1.25: "Lr", 1: "L" };

/** Joists and rafters of 2 in: the line of the usual series that the tables print. */
const LINE = nominalSizes()
  .filter(([thickness]) => thickness === 2)
  .map((sides) => {
    const text = sides.join("x");
    const reading = parseSection(`${text} nominal`, "inch");
    if (!reading.ok) throw new Error(text);
    const [breadth, depth] = [inches(reading.value.width), inches(reading.value.depth)];
    const own = { width: breadth, depth, sizeClass: sizeClass(breadth, depth) };
    return { text, ...own, area: breadth * depth };
  });

/** The smallest 2 in size that carries the row's loads over a span, by our checks. */
function sizeFor(row: Row, span: number): string | undefined {
  const set = SETS[row.set]!;
  const work = smallestPassing(
    [LINE],
    ({ width: breadth, depth }) => {
      const found = designValues(row.species.replaceAll("_", "-"), GRADE[row.grade], breadth, depth);
      if (found.kind === "none") throw new Error(found.reason);
      const { governing } = checkSimpleSpan({
        values: found.values,
        conditions: {
          section: { sizeClass: found.sizeClass, group: found.group, breadth, depth },
          grade: found.grade,
          duration: durationFactor(DURATION[set.CD]!),
          wet: false,
          repetitive: repetitiveFactor({
            sizeClass: found.sizeClass,
            count: 10,
            spacing: row.spacing_in,
            loadSharingDeck: true,
          }),
        },
        deadPlf: (set.dead_psf * row.spacing_in) / 12,
        livePlf: (set.live_psf * row.spacing_in) / 12,
        span,
        unbraced: 0,
        seasoning: "dry",
        limits: { live: set.deflection_divisor },
      });
      return governing.ratio > 1 ? "weak" : "passes";
    },
    100,
  );
  let step = work.next();
  while (!step.done) step = work.next();
  return step.value.found?.text;
}

const PRINTED: readonly Row[] = tableOf("spans", "span").records.filter(
  (row: Row) => SETS[row.set]!.values === "now" && row.span_in !== null,
);

/** Printed neighbours in size: the table gives the larger for every span between theirs. */
const PAIRS = PRINTED.flatMap((row) => {
  const smaller = PRINTED.filter(
    (other) =>
      other.set === row.set &&
      other.species === row.species &&
      other.grade === row.grade &&
      other.spacing_in === row.spacing_in &&
      LINE.findIndex(({ text }) => text === other.size) ===
        LINE.findIndex(({ text }) => text === row.size) - 1,
  );
  return smaller.map((other) => [row, other] as const);
});

describe("a span between two printed ones gets the larger size", () => {
  test.each(
    PAIRS.map(([row, smaller]) => {
      const { status, source } = SETS[row.set]!;
      return [
        `row ${row.row} (${status}, ${source}): ${row.size} ${row.species} ${row.grade} at ${row.spacing_in} in, ${row.set}`,
        row,
        smaller,
      ] as const;
    }),
  )("%s", (_title, row, smaller) => {
    // an inch from the printed spans, which are rounded to the nearest
    expect(sizeFor(row, smaller.span_in + 1)).toBe(row.size);
    expect(sizeFor(row, row.span_in - 1)).toBe(row.size);
  });

  test("there are hundreds of such rows", () => expect(PAIRS.length).toBeGreaterThan(200));
});
