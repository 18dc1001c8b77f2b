/** Reads cross-sections, and knows the dressed sizes that nominal ones stand for. */
import { fromInches, inches, type Length } from "./length.ts";
import { bareUnit, inNanometres, readTerm, type Term, toLength } from "./parse.ts";
import { type Reading, type SectionSize, type UnitSystem, type Unreadable, unreadable } from "./reading.ts";
import { Scanner } from "./scan.ts";
import type { LengthUnit } from "./units.ts";

const TIMES = new Set(["x", "X", "×", "✕", "⨯", "*"]);

/**
 * Reads `8x9`, `8 × 9 in`, `5 1/2 x 7 1/4`, `200x225 mm`, `8" x 9"`, `2x8 nominal`. A unit on one side holds for both;
 * without any, both take `units`. Nominal sizes are inches in every file.
 * @returns first × second as written; nominal sizes as dressed ones
 */
export function parseSection(text: string, units: UnitSystem): Reading<SectionSize> {
  const scan = new Scanner(text);
  const sign = scan.takeSign();
  if (scan.done) return unreadable("empty", scan.at);
  const first = readSide(scan);
  if (!first.ok) return first;
  if (sign < 0) return unreadable("negative-not-allowed", 0, first.number.at);
  scan.skipBlanks();
  if (scan.done) return unreadable("missing-part", scan.at);
  if (!scan.take(TIMES)) return scan.leftOver() ?? unreadable("missing-part", scan.at);

  const sizeAt = scan.at;
  if (scan.takeSign() < 0) return unreadable("negative-not-allowed", sizeAt, scan.at);
  if (scan.done) return unreadable("missing-part", scan.at);
  const second = readSide(scan);
  if (!second.ok) return second;
  scan.skipBlanks();
  const nominal = scan.takeWord("nominal") || scan.takeWord("nom.") || scan.takeWord("nom");
  const rest = scan.leftOver();
  if (rest !== undefined) return rest;

  const written = first.unit ?? second.unit;
  if (written !== undefined && (second.unit ?? written).system !== written.system) {
    return unreadable("mixed-systems", second.number.at, scan.at);
  }
  if (nominal && written !== undefined && written.name !== "in") {
    return unreadable("bad-nominal", first.number.at, scan.at);
  }
  const shared = written ?? bareUnit(nominal ? "inch" : units);
  const width = sizeOf(first, shared);
  const depth = sizeOf(second, second.unit ?? shared);
  if (width === undefined || depth === undefined) {
    return unreadable("too-large", first.number.at, scan.at);
  }
  const size = nominal ? dressedSize(width, depth) : { width, depth };
  if (size === undefined) return unreadable("bad-nominal", first.number.at, scan.at);
  return {
    ok: true,
    value: { ...size, nominal },
    unit: shared.name,
    system: shared.system,
    assumed: written === undefined,
  };
}

/** What nominal widths of 5 in and more lose, in lumber of 1 to 4 in thickness. */
const WIDE_LOSS = { below8: 0.5, from8: 0.75 };

/** Nominal thickness (in) of boards and dimension lumber, and what is left of it, dressed dry. */
const DRESSED_THICKNESS: ReadonlyMap<number, number> = new Map([
  [1, 0.75],
  [1.25, 1],
  [1.5, 1.25],
  [2, 1.5],
  [2.5, 2],
  [3, 2.5],
  [3.5, 3],
  [4, 3.5],
]);

const LARGEST_NOMINAL = 24;

/**
 * Dressed size of a nominal one. American softwood lumber standard PS 20 (memory; NDS Supplement table 1A prints the
 * same sizes): boards and dimension lumber, 1 to 4 in thick, dressed dry — 1 in loses 1/4 in, 2 to 7 in lose 1/2 in,
 * widths of 8 in and more 3/4 in; timbers 5 in and thicker lose 1/2 in each way, dressed green.
 * @param width nominal size one way
 * @param depth nominal size the other way; the smaller of the two is the thickness
 * @returns undefined for a size that the standard does not have
 */
function dressedSize(
  width: Length,
  depth: Length,
): { readonly width: Length; readonly depth: Length } | undefined {
  const thickness = Math.min(inches(width), inches(depth));
  const dressed = (nominal: number): number | undefined => {
    if (nominal > LARGEST_NOMINAL) return undefined;
    const sawn = DRESSED_THICKNESS.get(nominal);
    if (sawn !== undefined) return sawn;
    if (nominal < 5 || !Number.isInteger(nominal)) return undefined;
    if (thickness >= 5 || nominal < 8) return nominal - WIDE_LOSS.below8;
    return nominal - WIDE_LOSS.from8;
  };
  const [newWidth, newDepth] = [dressed(inches(width)), dressed(inches(depth))];
  if (newWidth === undefined || newDepth === undefined) return undefined;
  return { width: fromInches(newWidth), depth: fromInches(newDepth) };
}

/**
 * The true size of a planed section that is written by its nominal size; a size that the lumber standard does not
 * have (`5 1/2 x 7 1/4`, `200x225 mm`) is taken as true already. See {@link dressedSize}.
 */
export function dressedSection(section: SectionSize): SectionSize {
  if (section.nominal) return section;
  return { ...section, ...dressedSize(section.width, section.depth) };
}

/** One side of a section; the `x` behind it is no unit. */
function readSide(scan: Scanner): Term | Unreadable {
  const number = scan.number();
  if (!number.ok) return number;
  const start = scan.at;
  scan.skipBlanks();
  const bare = TIMES.has(scan.peek()) || scan.takeWord("nominal") || scan.takeWord("nom");
  scan.at = start;
  if (bare) return { ok: true, number, unit: undefined };
  scan.at = number.at;
  return readTerm(scan);
}

function sizeOf(term: Term, unit: LengthUnit): Length | undefined {
  return toLength(inNanometres(term.number.value, unit));
}
