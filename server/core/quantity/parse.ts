/** Reads lengths and the quantities that are one number and one unit. */
import type { Length } from "./length.ts";
import { add, multiply, negate, type Rational, roundToWhole, toNumber } from "./rational.ts";
import { type Reading, type UnitSystem, type Unreadable, unreadable } from "./reading.ts";
import { type ScannedNumber, Scanner } from "./scan.ts";
import { asLengthUnit, INCH, type LengthUnit, MILLIMETRE, type ScalarDimension } from "./units.ts";

/** Far beyond any load, strength or speed, far below where a double loses whole numbers. */
const LARGEST_SCALAR = 1e15;

const CANONICAL: Readonly<Record<ScalarDimension, string>> = {
  area: "ft²",
  pressure: "psf",
  stress: "psi",
  density: "lb/ft³",
  force: "lb",
  speed: "mph",
  angle: "°",
};

/** A number, perhaps with a unit of length. */
export interface Term {
  readonly ok: true;
  readonly number: ScannedNumber;
  readonly unit: LengthUnit | undefined;
}

/**
 * Reads a length as the trade writes it: `8 ft 6 1/2 in`, `8'-6 1/2"`, `5-1/2`, `½`, `140 mm`. A sign covers all of
 * it; a bare number takes `units`; a bare number after feet is inches; inches of 12 and more after feet are read as
 * written.
 * @returns whole nanometres, exact for every 64th of an inch and for six decimals of a millimetre, else the nearest
 */
export function parseLength(text: string, units: UnitSystem): Reading<Length> {
  const scan = new Scanner(text);
  const sign = scan.takeSign();
  if (scan.done) return unreadable("empty", scan.at);

  const first = readTerm(scan);
  if (!first.ok) return first;
  const unit = first.unit ?? bareUnit(units);
  let total = inNanometres(first.number.value, unit);

  const joint = first.unit?.name === "ft" ? jointToInches(scan) : undefined;
  if (joint !== undefined) {
    const second = readTerm(scan);
    if (!second.ok) return second;
    const problem = notInches(second);
    if (problem !== undefined) return { ...problem, end: scan.at };
    const { value } = second.number;
    if (joint.spacedDash && value.num < value.den) {
      return unreadable("ambiguous-dash", joint.at, second.number.at);
    }
    total = add(total, inNanometres(value, INCH));
  }
  const rest = restOfLength(scan, unit);
  if (rest !== undefined) return rest;

  const value = toLength(sign < 0 ? negate(total) : total);
  if (value === undefined) return unreadable("too-large", first.number.at, scan.at);
  return { ok: true, value, unit: unit.name, system: unit.system, assumed: first.unit === undefined };
}

/**
 * Reads one number with one unit, `45 psf`, `1.9 kPa`, `-20 psf`.
 * @returns psf, psi, lb/ft³, lb, mph or degrees. A bare number is unreadable, except 0, which needs no unit.
 */
export function parseScalar(text: string, dimension: ScalarDimension): Reading<number> {
  const scan = new Scanner(text);
  const sign = scan.takeSign();
  if (scan.done) return unreadable("empty", scan.at);
  const number = scan.number();
  if (!number.ok) return number;
  const afterNumber = scan.at;

  const written = dimension === "area" ? scan.areaUnit() : scan.unit();
  if (written === undefined) {
    const problem = scan.leftOver();
    if (problem !== undefined) return problem;
    if (number.value.num !== 0n) return unreadable("no-unit", afterNumber);
    return { ok: true, value: 0, unit: CANONICAL[dimension], system: "either", assumed: true };
  }
  if (written.unit === undefined) return unreadable("unknown-unit", written.at, written.end);
  const factor = written.unit.factors[dimension];
  if (factor === undefined) return unreadable("wrong-dimension", written.at, written.end);
  const rest = scan.leftOver();
  if (rest !== undefined) return rest;

  const exact = multiply(number.value, factor);
  const value = toNumber(sign < 0 ? negate(exact) : exact);
  if (Math.abs(value) > LARGEST_SCALAR) return unreadable("too-large", number.at, scan.at);
  return { ok: true, value, unit: written.unit.name, system: written.unit.system, assumed: false };
}

/** Reads a number and the unit of length behind it, if there is one. */
export function readTerm(scan: Scanner): Term | Unreadable {
  const number = scan.number();
  if (!number.ok) return number;
  const start = scan.at;
  const written = scan.unit();
  if (written === undefined) {
    scan.at = start;
    return { ok: true, number, unit: undefined };
  }
  if (written.unit === undefined) return unreadable("unknown-unit", written.at, written.end);
  const unit = asLengthUnit(written.unit);
  return unit === undefined
    ? unreadable("wrong-dimension", written.at, written.end)
    : { ok: true, number, unit };
}

/** The unit of a number without one. */
export function bareUnit(units: UnitSystem): LengthUnit {
  return units === "mm" ? MILLIMETRE : INCH;
}

export function inNanometres(value: Rational, unit: LengthUnit): Rational {
  return multiply(value, unit.nanometres);
}

/** @returns the nearest whole nanometre; undefined beyond 9000 km, where doubles stop counting nanometres */
export function toLength(nanometres: Rational): Length | undefined {
  const whole = Number(roundToWhole(nanometres));
  return Number.isSafeInteger(whole) ? (whole as Length) : undefined;
}

/**
 * Moves to the inches that follow feet, over blanks and a joining dash. `10' - 6"` is a usual way to write ten feet
 * six, but `10' - 1/2"` may also mean half an inch less.
 */
function jointToInches(scan: Scanner): { readonly at: number; readonly spacedDash: boolean } | undefined {
  const start = scan.at;
  scan.skipBlanks();
  const at = scan.at;
  const dash = scan.takeDash();
  const afterDash = scan.at;
  scan.skipBlanks();
  if (dash || scan.numberAhead) return { at, spacedDash: dash && (at > start || scan.at > afterDash) };
  scan.at = start;
  return undefined;
}

function notInches(term: Term): Unreadable | undefined {
  if (term.unit === undefined || term.unit.name === "in") return undefined;
  return unreadable(term.unit.system === "mm" ? "mixed-systems" : "two-numbers", term.number.at);
}

/** What follows a complete length. A further length in the other system gets its own reason. */
function restOfLength(scan: Scanner, unit: LengthUnit): Unreadable | undefined {
  const rest = scan.leftOver();
  if (rest?.reason !== "two-numbers") return rest;
  const further = readTerm(scan);
  const mixed = further.ok && further.unit !== undefined && further.unit.system !== unit.system;
  return mixed ? { ...rest, reason: "mixed-systems" } : rest;
}
