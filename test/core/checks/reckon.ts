/**
 * Reckons the formula lines that pages show, from what is printed and nothing else. Every printed number stands for all
 * values that are printed so, and units are carried along: a line holds when what is left of a relation can be what is
 * right of it, in size and in kind.
 */

import type { Unit } from "../../../server/core/checks/check.ts";

/** All values that a printed number may stand for, in pounds and inches, and the powers of inch and pound of its unit. */
interface Amount {
  readonly low: number;
  readonly high: number;
  readonly inches: number;
  readonly pounds: number;
}

interface Measure {
  readonly size: number;
  readonly inches: number;
  readonly pounds: number;
}

const unit = (size: number, inches: number, pounds: number): Measure => ({ size, inches, pounds });

/** 1 in = 25.4 mm and 1 lb = 4.4482216152605 N, exact (NIST SP 811, appendix B; memory). */
const MM = 1 / 25.4;
const N = 1 / 4.4482216152605;

const UNITS: Readonly<Record<string, Measure>> = {
  in: unit(1, 1, 0),
  "in²": unit(1, 2, 0),
  "in³": unit(1, 3, 0),
  "ft²": unit(144, 2, 0),
  "m²": unit((1000 * MM) ** 2, 2, 0),
  mm: unit(MM, 1, 0),
  "mm²": unit(MM ** 2, 2, 0),
  "mm³": unit(MM ** 3, 3, 0),
  lb: unit(1, 0, 1),
  N: unit(N, 0, 1),
  kN: unit(1000 * N, 0, 1),
  "lb/in": unit(1, -1, 1),
  "N/mm": unit(N / MM, -1, 1),
  lb·in: unit(1, 1, 1),
  kN·m: unit(1000 * N * 1000 * MM, 1, 1),
  psi: unit(1, -2, 1),
  MPa: unit(N / MM ** 2, -2, 1),
  psf: unit(1 / 144, -2, 1),
  kPa: unit(N / (1000 * MM ** 2), -2, 1),
  "psf/ft": unit(1 / 144 / 12, -3, 1),
  "kPa/m": unit(N / (1000 * MM ** 2) / (1000 * MM), -3, 1),
  "°": unit(Math.PI / 180, 0, 0),
};

const NUMBER =
  /^(?<sign>[-−]?)(?:(?<feet>\d+)'-(?<inches>\d+)(?: (?<above>\d+)\/(?<below>\d+))?"|(?:(?<whole>\d+) )?(?<num>\d+)\/(?<den>\d+)|(?<decimal>\d[\d,]*(?:\.\d+)?))/;
const UNIT =
  /^ ?(in³|in²|ft²|m²|lb\/in|lb·in|in|mm³|mm²|mm|lb|kN·m|kN|N\/mm|N|psi|MPa|psf\/ft|psf|kPa\/m|kPa|°)(?![A-Za-z])/;
/** Symbols before a number: `F_b 875 psi`, `C_F (F_c) 1.1`, `f_c/F_c* 0.75`. */
const SYMBOL = /^[A-Za-z]_[\p{L}\d⊥*′]+(?:\/[A-Za-z]_[\p{L}\d⊥*′]+)?(?: \(F_[ct]\))? /u;
const FUNCTION = /^(sin²|cos²|sin|cos|tan|atan|max|min|√)(?: ?(?=\()| )/;

const pure = (low: number, high = low): Amount => ({ low, high, inches: 0, pounds: 0 });

const sameKind = (a: Amount, b: Amount): boolean => a.inches === b.inches && a.pounds === b.pounds;

function product(a: Amount, b: Amount, way: 1 | -1): Amount {
  if (way < 0 && b.low <= 0 && b.high >= 0) throw new Error("divided by nothing");
  const all = [a.low, a.high].flatMap((x) => [b.low, b.high].map((y) => (way > 0 ? x * y : x / y)));
  return {
    low: Math.min(...all),
    high: Math.max(...all),
    inches: a.inches + way * b.inches,
    pounds: a.pounds + way * b.pounds,
  };
}

/** A function that rises or falls all along. */
const through = (a: Amount, f: (x: number) => number, inches = a.inches, pounds = a.pounds): Amount => {
  const ends = [f(a.low), f(a.high)];
  return { low: Math.min(...ends), high: Math.max(...ends), inches, pounds };
};

class Reader {
  rest: string;
  /** every number by itself */
  readonly numbers: Amount[] = [];

  constructor(text: string) {
    this.rest = text.trim();
  }

  take(pattern: RegExp): RegExpExecArray | undefined {
    const found = pattern.exec(this.rest);
    if (!found) return undefined;
    this.rest = this.rest.slice(found[0].length);
    return found;
  }

  sum(): Amount {
    let all = this.term();
    for (let sign = this.take(/^ ([+−]) /); sign; sign = this.take(/^ ([+−]) /)) {
      const next = this.term();
      if (!sameKind(all, next)) throw new Error(`kinds differ before “${this.rest}”`);
      all =
        sign[1] === "+"
          ? { ...all, low: all.low + next.low, high: all.high + next.high }
          : { ...all, low: all.low - next.high, high: all.high - next.low };
    }
    return all;
  }

  term(): Amount {
    let all = this.power();
    for (let sign = this.take(/^ ([×÷]) /); sign; sign = this.take(/^ ([×÷]) /))
      all = product(all, this.power(), sign[1] === "×" ? 1 : -1);
    return all;
  }

  power(): Amount {
    const base = this.one();
    if (!this.take(/^²/)) return base;
    return product(base, base, 1);
  }

  one(): Amount {
    this.take(SYMBOL);
    const named = this.take(FUNCTION)?.[1];
    if (named !== undefined) return this.called(named);
    if (this.take(/^\(/)) return this.closed();
    if (this.take(/^π/)) return pure(Math.PI);
    return this.number();
  }

  closed(): Amount {
    const inside = this.sum();
    if (!this.take(/^\)/)) throw new Error(`a bracket is open before “${this.rest}”`);
    return inside;
  }

  called(name: string): Amount {
    if (name === "max" || name === "min") {
      if (!this.take(/^\(/)) throw new Error(`${name} of what, before “${this.rest}”`);
      const all = [this.sum()];
      while (this.take(/^, /)) all.push(this.sum());
      if (!this.take(/^\)/) || all.some((a) => !sameKind(a, all[0] as Amount)))
        throw new Error(`${name} fails`);
      const of = Math[name];
      return {
        ...(all[0] as Amount),
        low: of(...all.map(({ low }) => low)),
        high: of(...all.map(({ high }) => high)),
      };
    }
    const a = this.one();
    if (name === "√") return through(a, (x) => Math.sqrt(Math.max(0, x)), a.inches / 2, a.pounds / 2);
    if (a.inches !== 0 || a.pounds !== 0) throw new Error(`${name} of what has a unit`);
    if (name === "atan") return through(a, Math.atan);
    const plain = name.startsWith("sin") ? Math.sin : name.startsWith("cos") ? Math.cos : Math.tan;
    const value = through(a, plain);
    return name.endsWith("²") ? product(value, value, 1) : value;
  }

  number(): Amount {
    const found = this.take(NUMBER)?.groups;
    if (!found) throw new Error(`no number at “${this.rest}”`);
    const sign = found.sign ? -1 : 1;
    const named = found.feet === undefined ? this.take(UNIT)?.[1] : "in";
    const { size, inches, pounds } = named === undefined ? unit(1, 0, 0) : (UNITS[named] as Measure);
    const decimals = found.decimal?.split(".")[1]?.length ?? 0;
    const value =
      found.decimal !== undefined
        ? Number(found.decimal.replaceAll(",", ""))
        : found.feet !== undefined
          ? Number(found.feet) * 12 +
            Number(found.inches) +
            Number(found.above ?? 0) / Number(found.below ?? 1)
          : Number(found.whole ?? 0) + Number(found.num) / Number(found.den);
    // factors, shares and counts have three digits after the point or more, angles one, less zeros; inches without a point are told to
    // a sixteenth
    const round =
      named === undefined
        ? 0.5 / 10 ** Math.max(3, decimals)
        : named === "in" && decimals === 0
          ? 1 / 32
          : 0.5 / 10 ** (named === "°" ? Math.max(1, decimals) : decimals);
    const [low, high] = [(sign * value - round) * size, (sign * value + round) * size];
    const amount = { low: low - 1e-9, high: high + 1e-9, inches, pounds };
    this.numbers.push(amount);
    return amount;
  }
}

/** One side of a relation, and the numbers in it. */
function read(side: string): { readonly all: Amount; readonly numbers: readonly Amount[] } {
  const reader = new Reader(side);
  const all = reader.sum();
  if (reader.rest !== "") throw new Error(`“${reader.rest}” of “${side}” is not understood`);
  return { all, numbers: reader.numbers };
}

function holds(a: Amount, sign: string, b: Amount): boolean {
  if (!sameKind(a, b)) return false;
  switch (sign) {
    case "=":
      return a.low <= b.high && b.low <= a.high;
    case "<":
    case "≤":
      return a.low <= b.high;
    case ">":
    case "≥":
      return b.low <= a.high;
    default:
      return a.high < b.low || b.high < a.low;
  }
}

/**
 * Reckons every step of a line; a step's name stands before a colon.
 * @param kept the limit may be kept: `>` and `<` only need sides of one kind
 * @returns all that it shows: each side of a relation and each number by itself
 * @throws where a relation does not hold, or something is no formula
 */
export function reckon(line: string, kept = false): Amount[] {
  return line.split("; ").flatMap((step) => {
    const sum = step.slice(step.indexOf(": ") < 0 ? 0 : step.indexOf(": ") + 2);
    const relations = [...sum.matchAll(/ ([=<>≤≥≠]) /g)].map(([, sign]) => sign ?? "");
    const sides = sum.split(/ [=<>≤≥≠] /).map(read);
    relations.forEach((sign, i) => {
      const [a, b] = [sides[i]?.all, sides[i + 1]?.all];
      const same = kept && sign !== "=" && a && b && sameKind(a, b);
      if (!same && (!a || !b || !holds(a, sign, b)))
        throw new Error(`“${step}” fails at ${sign}: ${a?.low} to ${a?.high}, ${b?.low} to ${b?.high}`);
    });
    return sides.flatMap(({ all, numbers }) => [all, ...numbers]);
  });
}

/** Kinds of a finding's number: powers of inch and pound. */
const KINDS: Readonly<Record<Unit, readonly [number, number]>> = {
  in: [1, 0],
  lb: [0, 1],
  psi: [-2, 1],
  psf: [-2, 1],
  deg: [0, 0],
  ratio: [0, 0],
  count: [0, 0],
};

/** Whether a line shows a number of its finding, in its kind and as near as its own digits tell. */
export function shows(amounts: readonly Amount[], value: number, unit: Unit): boolean {
  const [inches, pounds] = KINDS[unit];
  const size = unit === "deg" ? (value * Math.PI) / 180 : unit === "psf" ? value / 144 : value;
  return amounts.some(
    (a) => a.inches === inches && a.pounds === pounds && a.low - 1e-6 <= size && size <= a.high + 1e-6,
  );
}
