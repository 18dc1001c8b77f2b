/** What the builder answered, read: each answer is a value in the units of the engineering, or refused in words. */
import type { Say } from "../../core/checks/say.ts";
import type { Units } from "../../core/frame/frame.ts";
import { inches } from "../../core/quantity/length.ts";
import { parsePitch } from "../../core/quantity/pitch.ts";
import { formatPitch } from "../../core/quantity/print.ts";
import {
  examplesOf,
  formatQuantity,
  parseLength,
  parseQuantity,
  type Unreadable,
} from "../../core/quantity/quantity.ts";
import { findSpecies } from "../../core/wood/species.ts";

export type RoofKind = "gable" | "shed";

/** What the mill can cut. */
export interface MillAnswer {
  /** inches */
  readonly longest: number;
  /** thickness of the thickest log at its small end, inches; undefined = not said */
  readonly log: number | undefined;
}

/** A load or speed as it was written, and what that is. */
export interface Given {
  readonly text: string;
  /** psf or mph */
  readonly value: number;
}

/** A pitch as it was written, and its rise for a run of 12. */
export interface PitchAnswer {
  readonly text: string;
  readonly rise: number;
}

/** What only the place can tell. */
export const SITE_QUESTIONS = ["snow", "wind", "frost"] as const;
export type SiteQuestion = (typeof SITE_QUESTIONS)[number];

/** All answers; undefined = not known yet. */
export interface Answers {
  readonly units: Units;
  readonly roof: RoofKind;
  readonly pitch: PitchAnswer;
  /** over the outside faces, inches */
  readonly width: number;
  /** inches */
  readonly length: number;
  readonly bays: number;
  /** top of the (lower) plate above the ground, inches */
  readonly eave: number;
  readonly snow: Given | undefined;
  readonly wind: Given | undefined;
  /** inches */
  readonly frost: number | undefined;
  readonly species: string | undefined;
  readonly mill: MillAnswer | undefined;
  /** those that nobody gave: what is usual elsewhere stands for them */
  readonly usual: ReadonlySet<SiteQuestion>;
}

export type Answer<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly why: string };

/** From what to what an answer may be: canonical units (in, psf, mph). */
export interface Range {
  readonly least: number;
  readonly most: number;
}

const FOOT = 12;

/** The sizes that a frame of this kind is proposed for. Common practice, no source. */
export const RANGES = {
  width: { least: 8 * FOOT, most: 24 * FOOT },
  length: { least: 8 * FOOT, most: 48 * FOOT },
  bays: { least: 1, most: 4 },
  /** of one bay: closer, the knees of two posts meet; wider, a plate asks for more than two knees can shorten */
  bay: { least: 6 * FOOT, most: 16 * FOOT },
  eave: { least: 7 * FOOT, most: 12 * FOOT },
  /** rise in 12: flatter, a king-post is too short for its knees; steeper, a shed's high posts outgrow the frame */
  pitch: { gable: { least: 4, most: 12 }, shed: { least: 1, most: 6 } },
  snow: { least: 0, most: 100 },
  wind: { least: 90, most: 140 },
  frost: { least: 0, most: 60 },
  longest: { least: 8 * FOOT, most: 60 * FOOT },
  log: { least: 8, most: 40 },
} as const satisfies Readonly<Record<string, Range | Readonly<Record<RoofKind, Range>>>>;

/** A file says millimetres whole: 8 ft are 2438 mm, and 2440 mm are taken for them. */
const SLACK = 0.1;

/** @returns a length in inches within the range */
export function readLength(text: string, range: Range, say: Say): Answer<number> {
  const units = unitsOf(say);
  const read = parseLength(text, units);
  if (!read.ok) return refuse(unreadableWords(text, read, "length", say));
  const value = inches(read.value);
  if (within(value, range)) return { ok: true, value };
  const between = say.text("between {least} and {most}", {
    least: say.length(range.least),
    most: say.length(range.most),
  });
  // who types a bare 12 may mean feet, and is asked rather than guessed
  if (read.assumed && units === "inch" && within(value * FOOT, range) && value !== 0)
    return refuse(
      say.text("“{text}” without a unit is {read}. Write “{text} ft” if feet are meant.", {
        text: text.trim(),
        read: formatQuantity(read.value, "length", units),
      }),
    );
  return refuse(
    say.text("{value} is outside what this proposes: it must be {between}.", {
      value: formatQuantity(read.value, "length", units),
      between,
    }),
  );
}

/** @returns psf or mph within the range */
export function readScalar(
  text: string,
  dimension: "pressure" | "speed",
  range: Range,
  say: Say,
): Answer<Given> {
  const units = unitsOf(say);
  const read = parseQuantity(text, dimension, units);
  if (!read.ok) return refuse(unreadableWords(text, read, dimension, say));
  // metric figures are rounded: 40 m/s for 90 mph
  const slack = dimension === "speed" ? 1 : 0.5;
  if (read.value >= range.least - slack && read.value <= range.most + slack)
    return { ok: true, value: { text: text.trim().replace(/\s+/g, " "), value: read.value } };
  const words = (value: number): string => formatQuantity(value, dimension, units);
  return refuse(
    say.text("{value} is outside what this proposes: it must be between {least} and {most}.", {
      value: words(read.value),
      least: words(range.least),
      most: words(range.most),
    }),
  );
}

/** @returns how many bays */
export function readCount(text: string, { least, most }: Range, say: Say): Answer<number> {
  const value = Number(text);
  if (/^\s*\d{1,3}\s*$/.test(text) && value >= least && value <= most) return { ok: true, value };
  return refuse(
    say.text("“{text}” is no number of bays: write a whole number between {least} and {most}.", {
      text: shown(text),
      least,
      most,
    }),
  );
}

/** @returns the pitch within the range, in the words of the file */
export function readPitch(text: string, range: Range, say: Say): Answer<PitchAnswer> {
  const read = parsePitch(text);
  if (!read.ok)
    return refuse(
      say.text("“{text}” cannot be read as a pitch. Write it like {examples}.", {
        text: shown(text),
        examples: say.either(["7:12", "30 deg"]),
      }),
    );
  const { rise, run } = read.value;
  const up = (12 * rise) / run;
  if (up >= range.least - 1e-9 && up <= range.most + 1e-9)
    return {
      ok: true,
      value: {
        text: text
          .trim()
          .replace(/\s*:\s*/, ":")
          .replace(/\s+/g, " "),
        rise: up,
      },
    };
  return refuse(
    say.text("{value} is outside what this proposes: it must be between {least} and {most}.", {
      value: formatPitch(read.value),
      least: `${range.least}:12`,
      most: `${range.most}:12`,
    }),
  );
}

/** Whether a roof of that kind is proposed with that pitch. */
export function pitchRefusal(text: string, roof: RoofKind, say: Say): string | undefined {
  const read = readPitch(text, RANGES.pitch[roof], say);
  return read.ok ? undefined : read.why;
}

/** @returns one of the choices */
export function readChoice<T extends string>(text: string, choices: readonly T[], say: Say): Answer<T> {
  const value = choices.find((choice) => choice === text.trim());
  if (value !== undefined) return { ok: true, value };
  return refuse(
    say.text("“{text}” is none of the choices: {choices}.", {
      text: shown(text),
      choices: choices.join(", "),
    }),
  );
}

/** @returns a species or group that has design values for timbers and for rafters */
export function readSpecies(text: string, usual: readonly string[], say: Say): Answer<string> {
  const id = text.trim().toLowerCase().replace(/\s+/g, "-");
  const wood = findSpecies(id);
  if (wood?.timberGroup !== undefined && wood.dimensionGroup !== undefined) return { ok: true, value: id };
  if (wood)
    return refuse(
      say.text(
        "No design values are recorded for {name}, so nothing can be sized in it. Take one of {usual}.",
        {
          name: wood.name,
          usual: usual.join(", "),
        },
      ),
    );
  return refuse(
    say.text("“{text}” is no species that is known here. Take one of {usual}.", {
      text: shown(text),
      usual: usual.join(", "),
    }),
  );
}

/** `20 ft`, or `20 ft, 18 in`: the longest cut, and the thickest log at its small end. */
export function readMill(text: string, say: Say): Answer<MillAnswer> {
  const [first = "", second, ...more] = text.split(",");
  if (more.length > 0)
    return refuse(
      say.text(
        "“{text}” holds more than two sizes: write the longest cut, then the thickest log, as {example}.",
        {
          text: shown(text),
          example: say.metric ? "6 m, 450 mm" : "20 ft, 18 in",
        },
      ),
    );
  const longest = readLength(first, RANGES.longest, say);
  if (!longest.ok) return refuse(say.text("The longest cut: {why}", { why: longest.why }));
  if (second === undefined) return { ok: true, value: { longest: longest.value, log: undefined } };
  const log = readLength(second, RANGES.log, say);
  if (!log.ok) return refuse(say.text("The thickest log: {why}", { why: log.why }));
  return { ok: true, value: { longest: longest.value, log: log.value } };
}

/** Whether that many bays of that length can be framed with knees. */
export function bayRefusal(length: number, bays: number, say: Say): string | undefined {
  const bay = length / bays;
  const { least, most } = RANGES.bay;
  if (within(bay, RANGES.bay)) return undefined;
  const fitting = [1, 2, 3, 4].filter((count) => within(length / count, RANGES.bay));
  const facts = {
    bays,
    length: say.length(length),
    bay: say.length(bay),
    limit: say.length(bay < least ? least : most),
    fitting: fitting.length === 0 ? "" : say.text("Take {fitting}.", { fitting: orList(fitting, say) }),
  };
  const many =
    bays === 1
      ? "One bay in {length} is {bay} long, and more than {limit} between posts is beyond what is proposed here. {fitting}"
      : "{bays} bays in {length} are {bay} each, and more than {limit} between posts is beyond what is proposed here. {fitting}";
  return say
    .text(
      bay < least
        ? "{bays} bays in {length} are {bay} each, and with less than {limit} the knees of neighbouring posts meet. {fitting}"
        : many,
      facts,
    )
    .trim();
}

function orList(counts: readonly number[], say: Say): string {
  return counts.length === 1 ? String(counts[0]) : say.text("one of {counts}", { counts: counts.join(", ") });
}

function within(value: number, { least, most }: Range): boolean {
  return value >= least - SLACK && value <= most + SLACK;
}

function refuse(why: string): { readonly ok: false; readonly why: string } {
  return { ok: false, why };
}

function unitsOf(say: Say): Units {
  return say.metric ? "mm" : "inch";
}

const KIND = {
  length: "a length",
  pressure: "a load on each square foot or metre",
  speed: "a wind speed",
} as const;

function unreadableWords(
  text: string,
  { reason }: Unreadable,
  dimension: keyof typeof KIND,
  say: Say,
): string {
  const facts = {
    text: shown(text),
    what: say.text(KIND[dimension]),
    examples: say.either(examplesOf(dimension, unitsOf(say)).slice(0, 2)),
  };
  switch (reason) {
    case "empty":
      return say.text("Nothing is written. Write {what}, like {examples}.", facts);
    case "no-unit":
      return say.text("“{text}” has no unit. Write it with one, like {examples}.", facts);
    case "wrong-dimension":
      return say.text("“{text}” has the unit of something else. Write {what}, like {examples}.", facts);
    default:
      return say.text("“{text}” cannot be read as {what}. Write it like {examples}.", facts);
  }
}

/** A long or strange text is cut: it stands in a message. */
function shown(text: string): string {
  const clean = text.replace(/\p{Cc}/gu, " ").trim();
  return clean.length > 40 ? `${clean.slice(0, 40)}…` : clean;
}
