/** Amounts, and notes that hold some, in the units of the file. */
import type { CutRow } from "../joinery/joint.ts";
import type { Amount, AmountUnit, Note } from "../note.ts";
import { formatQuantity } from "../quantity/quantity.ts";
import type { UnitSystem } from "../quantity/reading.ts";
import type { Say } from "./say.ts";

/** 1 in = 25.4 mm, 1 ft = 0.3048 m, exact */
const SQUARE_MILLIMETRES = 25.4 ** 2;
const SQUARE_METRES = 0.3048 ** 2;
const INCHES_PER_FOOT = 12;

/** @param squareFeet ft²; @returns ft² or m² */
export function areaWords(squareFeet: number, say: Say): string {
  return say.metric
    ? `${say.number(squareFeet * SQUARE_METRES, 1)} m²`
    : `${say.number(squareFeet, squareFeet < 10 ? 1 : 0)} ft²`;
}

/** No cut size: to the nearest 1/16 in, whatever 64ths it has. */
const lengthWords = (inches: number, say: Say): string =>
  say.length(say.metric ? inches : Math.round(inches * 16) / 16);

const units = (say: Say): UnitSystem => (say.metric ? "mm" : "inch");

const WORDS: Readonly<Record<AmountUnit, (value: number, say: Say) => string>> = {
  in: lengthWords,
  ft: (v, say) => lengthWords(v * INCHES_PER_FOOT, say),
  in2: (v, say) =>
    say.metric ? `${say.number(v * SQUARE_MILLIMETRES, 0)} mm²` : `${say.number(v, v < 100 ? 1 : 0)} in²`,
  ft2: areaWords,
  psi: (v, say) => say.stress(v),
  psf: (v, say) => say.pressure(v),
  lb: (v, say) => say.force(v),
  mph: (v, say) => formatQuantity(v, "speed", units(say)),
  "lb/ft3": (v, say) => formatQuantity(v, "density", units(say)),
  degree: (v, say) => say.angle(v),
  degF: (v, say) => (say.metric ? `${say.number(((v - 32) * 5) / 9, 0)} °C` : `${say.number(v, 0)} °F`),
  ratio: (v, say) => say.number(v),
};

/** @returns an amount with its unit */
export function amountWords({ value, unit }: Amount, say: Say): string {
  return WORDS[unit](value, say);
}

/** @returns the name of a size on a cut sheet: `face to peg hole, pegs 1 and 2` */
export function sizeWords({ label, pegs }: Pick<CutRow, "label" | "pegs">, say: Say): string {
  const size = say.text(label);
  if (!pegs) return size;
  const named = (numbers: readonly number[]): string => {
    const values = { numbers: say.list(numbers.map(String)) };
    return numbers.length === 1 ? say.text("peg {numbers}", values) : say.text("pegs {numbers}", values);
  };
  const from = named(pegs.from);
  return pegs.to === undefined
    ? say.text("{size}, {pegs}", { size, pegs: from })
    : say.text("{size}, {pegs} to {others}", { size, pegs: from, others: named(pegs.to) });
}

/** @returns a note as the reader reads it */
export function noteWords(note: Note, say: Say): string {
  if (typeof note === "string") return say.text(note);
  const parts = Object.entries(note.parts).map(([name, part]): [string, string] => [
    name,
    "words" in part ? say.text(part.words) : amountWords(part, say),
  ]);
  return say.text(note.text, Object.fromEntries(parts));
}
