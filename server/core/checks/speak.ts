/** Makes the `Say` that checks, hovers and reports word their numbers with: file units, and a translator if there is one. */
import type { Units } from "../frame/frame.ts";
import { fromInches, NM_PER_INCH, NM_PER_MM } from "../quantity/length.ts";
import { formatLength, formatQuantity } from "../quantity/quantity.ts";
import type { Say } from "./say.ts";

/** Looks up a sentence pattern in another language; the pattern itself when there is no translation. */
export type Translate = (pattern: string) => string;

/** Shorter lengths are said in inches alone (`36 in`), longer ones with feet (`8'-6 1/2"`). */
const FEET_FROM_INCHES = 60;

/** 1 lb = 0.45359237 kg, exact (NIST SP 811 (2008), appendix B; memory) */
const KILOGRAMS_PER_POUND = 0.45359237;

/** 1 lb·in = 0.1129848290276167 N·m (NIST SP 811 (2008), appendix B; memory) */
export const NEWTON_METRES_PER_POUND_INCH = 0.1129848290276167;
const INCHES_PER_FOOT = 12;

const DECIMALS = [0, 1, 2, 3, 4, 5, 6].map(
  (digits) => new Intl.NumberFormat("en-US", { maximumFractionDigits: digits, signDisplay: "negative" }),
);

function plain(value: number, digits: number): string {
  const format = DECIMALS[Math.min(Math.max(Math.trunc(digits), 0), DECIMALS.length - 1)];
  return Number.isFinite(value) && format ? format.format(value) : "?";
}

/** A length that is a whole number of 64ths was written so and is said so, everything else to the nearest 16th. */
function inFeetAndInches(inches: number): string {
  const nm = fromInches(inches);
  const style = Math.abs(inches) >= FEET_FROM_INCHES ? "trade" : "inches";
  return formatLength(nm, style, { denominator: nm % (NM_PER_INCH / 64) === 0 ? 64 : 16 });
}

/** Whole millimetres; tenths where little would be left without them. */
function inMillimetres(inches: number): string {
  const nm = fromInches(inches);
  const decimals = Math.abs(nm) < 10 * NM_PER_MM ? 1 : 0;
  return formatLength(nm, "mm", { decimals }).replace(".0 mm", " mm");
}

/** As many decimals as leave three figures that mean something. */
function usualDigits(value: number): number {
  const size = Math.abs(value);
  return size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3;
}

/** Three figures that mean something, as forces have them. */
function inNewtonMetres(poundInches: number): string {
  const value = poundInches * NEWTON_METRES_PER_POUND_INCH;
  const [shown, unit] = Math.abs(value) < 100 ? [value, "N·m"] : [value / 1000, "kN·m"];
  return `${plain(shown, usualDigits(shown))} ${unit}`;
}

/** Tenths only where little would be left without them. */
function inPoundFeet(poundInches: number): string {
  const value = poundInches / INCHES_PER_FOOT;
  return `${plain(value, Math.abs(value) < 9.95 ? 1 : 0)} lb·ft`;
}

/** Longer pieces of the file are not repeated whole. */
const LONGEST_PIECE = 60;
const LONG_WORD = /\S{61,}/g;
const TAIL = 12;

/** The beginning and the end of a text that is too long for a message. */
function shortened(text: string): string {
  return text.length > LONGEST_PIECE
    ? `${text.slice(0, LONGEST_PIECE - TAIL - 1).trimEnd()}…${text.slice(-TAIL).trimStart()}`
    : text;
}

/**
 * @param units which system the file is in
 * @param translate gives a pattern in the reader's language; left out: English
 */
export function makeSay(units: Units, translate: Translate = (pattern) => pattern): Say {
  const metric = units === "mm";
  const [length, other] = metric ? [inMillimetres, inFeetAndInches] : [inFeetAndInches, inMillimetres];
  const text: Say["text"] = (pattern, values = {}) =>
    translate(pattern).replace(/\{([a-z0-9-]+)\}/gi, (hole, name: string, at: number, whole: string) => {
      const value = Object.hasOwn(values, name) ? values[name] : undefined;
      if (value === undefined) return hole;
      // what stands in quotation marks is repeated from the file as it is written
      const quoted = whole[at - 1] === "“" && whole[at + hole.length] === "”";
      return quoted ? shortened(String(value)) : String(value).replace(LONG_WORD, shortened);
    });
  const listed = (items: readonly string[], pattern: string): string =>
    items.length < 2
      ? (items[0] ?? "")
      : text(pattern, { items: items.slice(0, -1).join(", "), last: items.at(-1) ?? "" });
  return Object.freeze({
    metric,
    length,
    lengthBoth: (inches) => `${length(inches)} (${other(inches)})`,
    pressure: (psf) => formatQuantity(psf, "pressure", units),
    stress: (psi) => formatQuantity(psi, "stress", units),
    force: (pounds) => formatQuantity(pounds, "force", units),
    moment: metric ? inNewtonMetres : inPoundFeet,
    weight: (pounds) => {
      const value = metric ? pounds * KILOGRAMS_PER_POUND : pounds;
      return `${plain(value, Math.abs(value) >= 10 ? 0 : 1)} ${metric ? "kg" : "lb"}`;
    },
    angle: (degrees) => formatQuantity(degrees, "angle", units),
    percent: (ratio) => `${plain(ratio * 100, 0)} %`,
    number: (value, digits = usualDigits(value)) => plain(value, digits),
    list: (items) => listed(items, "{items} and {last}"),
    either: (items) => listed(items, "{items} or {last}"),
    text,
  } satisfies Say);
}
