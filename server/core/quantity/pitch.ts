/** Reads roof pitches and other slopes. */
import { divide, type Rational, toNumber } from "./rational.ts";
import { type Pitch, type Reading, type Unreadable, unreadable } from "./reading.ts";
import { Scanner } from "./scan.ts";

const LARGEST = 1e9;

/**
 * Reads `7:12`, `7/12`, `7 in 12`, `4 1/2:12`, `7" in 12"` as rise and run, and `30 deg`, `30°` as tangent over 1.
 * @returns the two numbers as written, so that a limit at 7:12 can be compared as such
 */
export function parsePitch(text: string): Reading<Pitch> {
  const scan = new Scanner(text);
  const sign = scan.takeSign();
  if (scan.done) return unreadable("empty", scan.at);
  const rise = scan.number();
  if (!rise.ok) return rise;
  if (sign < 0) return unreadable("negative-not-allowed", 0, rise.at);

  const start = scan.at;
  if (takeSeparator(scan)) {
    scan.skipBlanks();
    if (scan.done) return unreadable("missing-part", scan.at);
    const run = scan.number();
    if (!run.ok) return run;
    scan.takeInchMark();
    return scan.leftOver() ?? ratio(rise.value, run.value, rise.at, scan.at);
  }
  scan.at = start;
  const written = scan.unit();
  const rest = written === undefined ? scan.leftOver() : undefined;
  if (rest !== undefined) return rest;
  if (written === undefined) {
    if (rise.parts === undefined) return unreadable("missing-part", scan.at);
    return ratio(rise.parts.num, rise.parts.den, rise.at, scan.at);
  }
  if (written.unit === undefined) return unreadable("unknown-unit", written.at, written.end);
  const factor = written.unit.factors.angle;
  if (factor === undefined) return unreadable("wrong-dimension", written.at, written.end);
  const after = scan.leftOver();
  if (after !== undefined) return after;
  const degrees = toNumber({ num: rise.value.num * factor.num, den: rise.value.den * factor.den });
  return degrees < 90
    ? {
        ok: true,
        value: { rise: tangent(degrees), run: 1 },
        unit: written.unit.name,
        system: "either",
        assumed: false,
      }
    : unreadable("too-large", rise.at, scan.at);
}

/** Tangent to 15 digits, so that 45° is 1 and not a hair less. */
function tangent(degrees: number): number {
  return Number(Math.tan((degrees * Math.PI) / 180).toPrecision(15));
}

/** `:`, `/` or `in` between rise and run, an inch mark before it at will. */
function takeSeparator(scan: Scanner): boolean {
  scan.skipBlanks();
  scan.takeInchMark();
  scan.skipBlanks();
  if (scan.peek() === ":") {
    scan.at++;
    return true;
  }
  return scan.takeSlash() || scan.takeWord("in");
}

function ratio(rise: Rational, run: Rational, at: number, end: number): Reading<Pitch> | Unreadable {
  if (run.num === 0n) return unreadable("bad-fraction", at, end);
  const value = { rise: toNumber(rise), run: toNumber(run) };
  if (value.rise > LARGEST || value.run > LARGEST || toNumber(divide(rise, run)) > LARGEST) {
    return unreadable("too-large", at, end);
  }
  return { ok: true, value, unit: "ratio", system: "either", assumed: false };
}
