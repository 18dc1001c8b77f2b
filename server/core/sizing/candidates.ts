/**
 * The sections that may take the place of one that is too small, as lines to search: in each line the width stays and the
 * depth grows. Nothing here is thinner or shallower than what is there.
 */
import type { Section, Units } from "../frame/frame.ts";
import type { Model, Timber } from "../model/model.ts";
import { fromInches, fromMillimetres, inches, type Length } from "../quantity/length.ts";
import { dressedSection, formatSection, parseSection } from "../quantity/quantity.ts";
import { smallestLog } from "../shop/log.ts";
import { logsFor } from "../shop/logs-for.ts";
import { sizeClass } from "../wood/size-class.ts";
import type { SizedEntry } from "./entry.ts";
import { MOST_SLENDER, nominalSizes, type SeriesName, sidesOf } from "./usual-sections.ts";

/** A section that could be written at the entry. */
export interface Candidate {
  /** as the file would have it */
  readonly text: string;
  readonly section: Section;
  readonly series: SeriesName;
  /** true size as it lies, in */
  readonly width: number;
  readonly depth: number;
  /** square inches of wood */
  readonly area: number;
  readonly sizeClass: ReturnType<typeof sizeClass>;
}

/** Candidates of one width, the shallowest first; or squares, the smallest first. */
export type Line = readonly Candidate[];

/** A wider timber is another design (common practice, no source). */
const MOST_WIDENING = 2;
/** in; sizes are whole nanometres */
const SLACK = 1e-6;

/** Uprights that are square stay square where they can: all their faces take joints (common practice, no source). */
const UPRIGHT: ReadonlySet<SizedEntry["kind"]> = new Set(["post", "king-post", "strut"]);

/**
 * @returns for a square upright the squares; else nothing. They go before {@link linesOf}: the first pass of a search
 */
export function squaresOf(model: Model, entry: SizedEntry): readonly Line[] {
  const [stick] = entry.sticks;
  if (!stick || !UPRIGHT.has(entry.kind) || Math.abs(stick.width - stick.depth) > SLACK) return [];
  const squares = larger(model, entry).filter((c) => Math.abs(c.width - c.depth) < SLACK);
  return squares.length === 0 ? [] : [squares];
}

/** @returns lines of growing depth, that of the present width first, then the wider ones; within the logs of the mill */
export function linesOf(model: Model, entry: SizedEntry): readonly Line[] {
  const lines = new Map<number, Candidate[]>();
  for (const candidate of larger(model, entry)) {
    const width = fromInches(candidate.width);
    lines.set(width, [...(lines.get(width) ?? []), candidate]);
  }
  return [...lines].sort(([a], [b]) => a - b).map(([, line]) => line.sort((a, b) => a.depth - b.depth));
}

function larger(model: Model, entry: SizedEntry): Candidate[] {
  const [stick] = entry.sticks;
  if (!stick) return [];
  return allOf(model.frame.units, entry)
    .filter((c) => c.width > stick.width - SLACK && c.depth > stick.depth - SLACK)
    .filter((c) => c.area > stick.width * stick.depth + SLACK)
    .filter((c) => c.width <= stick.width * MOST_WIDENING + SLACK)
    .filter((c) => entry.sticks.every((each) => fitsLogs(model, each, c)))
    .sort((a, b) => a.area - b.area);
}

/** Whether one of the logs it may come from is thick and long enough; true where the file lists none for it. */
function fitsLogs(model: Model, timber: Timber, { width, depth }: Candidate): boolean {
  const logs = logsFor(model, timber);
  const needs = smallestLog(width, depth);
  return (
    logs === undefined ||
    logs.some((log) => inches(log.smallEnd) >= needs - SLACK && inches(log.length) >= timber.length - SLACK)
  );
}

function allOf(units: Units, entry: SizedEntry): Candidate[] {
  const planed = entry.class?.surface === "planed";
  if (entry.section.nominal || (planed && units === "inch")) return nominal(units, entry);
  const series = units === "inch" ? "full-inch" : planed ? "planed-metric" : "sawn-metric";
  const length = units === "inch" ? fromInches : fromMillimetres;
  const sides = sidesOf(series).map((side) => length(side));
  // a side that is not in the series may stay as it is
  const both = (own: Length): Length[] => [...new Set([own, ...sides])];
  return both(entry.section.width).flatMap((width) =>
    both(entry.section.depth).flatMap((depth) =>
      candidate(formatSection({ width, depth }, units), units, entry, series, slenderness(width, depth)),
    ),
  );
}

/** Nominal sizes, written as the file writes them: `2x8` where the class says planed, else `2x8 nominal`. */
function nominal(units: Units, entry: SizedEntry): Candidate[] {
  const { section } = entry;
  const bare = !section.nominal && dressedSection(section).width !== section.width;
  return nominalSizes().flatMap(([a, b]) => {
    const orders =
      a === b
        ? [[a, b]]
        : [
            [a, b],
            [b, a],
          ];
    return orders.flatMap(([first = a, second = b]) =>
      candidate(`${first}x${second}${bare ? "" : " nominal"}`, units, entry, "nominal", b / a),
    );
  });
}

/** What the text is read as is what gets analysed. */
function candidate(
  text: string,
  units: Units,
  entry: SizedEntry,
  series: SeriesName,
  slender: number,
): Candidate[] {
  const reading = parseSection(text, units);
  if (!reading.ok || slender > MOST_SLENDER.value + SLACK) return [];
  const section = reading.value;
  const true_ = entry.class?.surface === "planed" ? dressedSection(section) : section;
  const [first, second] = [inches(true_.width), inches(true_.depth)];
  const [width, depth] = entry.turned ? [second, first] : [first, second];
  const own = { width, depth, area: width * depth, sizeClass: sizeClass(width, depth) };
  return [{ text, section, series, ...own }];
}

function slenderness(a: Length, b: Length): number {
  return Math.max(a, b) / Math.max(1, Math.min(a, b));
}
