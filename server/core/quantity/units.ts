/**
 * Every unit that can be written, with its exact factor to the unit the engine computes in:
 * nanometres, ft², psf, psi, lb/ft³, lb (force), mph, degrees.
 *
 * Factors from NIST SP 811 (2008), appendix B, exact definitions (memory): 1 in = 25.4 mm, 1 lb = 0.45359237 kg,
 * standard gravity 9.80665 m/s², 1 mi = 1609.344 m. A mass in kg stands for its weight under standard gravity.
 */
import { decimal, divide, multiply, type Rational, rational } from "./rational.ts";
import type { UnitSystem } from "./reading.ts";

/** The dimensions that are one number and one unit. */
export type ScalarDimension = "area" | "pressure" | "stress" | "density" | "force" | "speed" | "angle";

export interface Unit {
  /** its usual spelling */
  readonly name: string;
  readonly system: UnitSystem | "either";
  /** by dimension: how many canonical units one of it is */
  readonly factors: Readonly<Partial<Record<"length" | ScalarDimension, Rational>>>;
}

/** A unit of length, with the nanometres in one of it. */
export interface LengthUnit {
  readonly name: string;
  readonly system: UnitSystem;
  readonly nanometres: Rational;
}

export const INCH: LengthUnit = { name: "in", system: "inch", nanometres: rational(25_400_000n) };
export const MILLIMETRE: LengthUnit = { name: "mm", system: "mm", nanometres: rational(1_000_000n) };

const ONE = rational(1n);
const FOOT_IN_METRES = decimal("0.3048");
const INCH_IN_METRES = decimal("0.0254");
const POUND_IN_KILOGRAMS = decimal("0.45359237");
const POUND_FORCE_IN_NEWTONS = multiply(POUND_IN_KILOGRAMS, decimal("9.80665"));
const MILE_IN_METRES = decimal("1609.344");
/** 180/π to 33 digits, far beyond a double */
const RADIAN_IN_DEGREES = decimal("57.2957795130823208767981548141051");

const square = (a: Rational): Rational => multiply(a, a);

const PASCAL_IN_PSF = divide(square(FOOT_IN_METRES), POUND_FORCE_IN_NEWTONS);
const PASCAL_IN_PSI = divide(square(INCH_IN_METRES), POUND_FORCE_IN_NEWTONS);

/** a unit of both pressure and stress, so many pascals each */
const pascals = (count: bigint): Unit["factors"] => ({
  pressure: multiply(rational(count), PASCAL_IN_PSF),
  stress: multiply(rational(count), PASCAL_IN_PSI),
});
const newtons = (count: bigint): Unit["factors"] => ({
  force: divide(rational(count), POUND_FORCE_IN_NEWTONS),
});

/** name, system, factors, other spellings (compared without regard to capitals) */
const TABLE: readonly (readonly [string, Unit["system"], Unit["factors"], readonly string[]])[] = [
  ["in", "inch", { length: INCH.nanometres }, ["inch", "inches", "ins"]],
  ["ft", "inch", { length: rational(304_800_000n) }, ["foot", "feet"]],
  ["mm", "mm", { length: MILLIMETRE.nanometres }, ["millimetre", "millimetres", "millimeter", "millimeters"]],
  ["cm", "mm", { length: rational(10_000_000n) }, ["centimetre", "centimetres", "centimeter", "centimeters"]],
  ["m", "mm", { length: rational(1_000_000_000n) }, ["metre", "metres", "meter", "meters"]],
  ["ft²", "inch", { area: ONE }, ["ft2", "sf", "sqft"]],
  ["m²", "mm", { area: divide(ONE, square(FOOT_IN_METRES)) }, ["m2", "sqm"]],
  ["psf", "inch", { pressure: ONE }, ["lb/ft2", "lb/ft²", "lbf/ft2", "lbf/ft²", "lb/sf"]],
  ["psi", "inch", { pressure: rational(144n), stress: ONE }, ["lb/in2", "lb/in²", "lbf/in2", "lbf/in²"]],
  ["ksi", "inch", { stress: rational(1000n) }, ["kip/in2", "kip/in²"]],
  ["Pa", "mm", pascals(1n), ["N/m2", "N/m²"]],
  ["kPa", "mm", pascals(1000n), ["kN/m2", "kN/m²"]],
  ["MPa", "mm", pascals(1_000_000n), ["N/mm2", "N/mm²"]],
  ["GPa", "mm", pascals(1_000_000_000n), ["kN/mm2", "kN/mm²"]],
  ["lb/ft³", "inch", { density: ONE }, ["pcf", "lb/ft3"]],
  [
    "kg/m³",
    "mm",
    { density: divide(multiply(square(FOOT_IN_METRES), FOOT_IN_METRES), POUND_IN_KILOGRAMS) },
    ["kg/m3"],
  ],
  ["lb", "inch", { force: ONE }, ["lbs", "lbf", "pound", "pounds"]],
  ["kip", "inch", { force: rational(1000n) }, ["kips"]],
  ["N", "mm", newtons(1n), ["newton", "newtons"]],
  ["kN", "mm", newtons(1000n), []],
  ["kg", "mm", { force: divide(ONE, POUND_IN_KILOGRAMS) }, ["kgs", "kilogram", "kilograms"]],
  ["mph", "inch", { speed: ONE }, ["mi/h"]],
  ["m/s", "mm", { speed: divide(rational(3600n), MILE_IN_METRES) }, []],
  ["km/h", "mm", { speed: divide(rational(1000n), MILE_IN_METRES) }, ["kph", "kmh"]],
  ["°", "either", { angle: ONE }, ["º", "deg", "degs", "degree", "degrees"]],
  ["rad", "either", { angle: RADIAN_IN_DEGREES }, ["radian", "radians"]],
];

const BY_SPELLING: ReadonlyMap<string, Unit> = new Map(
  TABLE.flatMap(([name, system, factors, others]) =>
    [name, ...others].map((spelling) => [spelling.toLowerCase(), { name, system, factors }] as const),
  ),
);

/** The longest spelling above; a longer word is no unit and is not looked up. */
const LONGEST = Math.max(...[...BY_SPELLING.keys()].map((spelling) => spelling.length));

/**
 * @param written a unit as it stands in the text, in capitals or not; `mPa` (a thousandth of a pascal) is not taken
 *   for `MPa`
 * @returns undefined if no such unit is known
 */
export function unitOf(written: string): Unit | undefined {
  if (written.length > LONGEST || written === "mPa") return undefined;
  return BY_SPELLING.get(written.toLowerCase());
}

/** @returns undefined if `unit` measures something else */
export function asLengthUnit(unit: Unit): LengthUnit | undefined {
  const nanometres = unit.factors.length;
  if (nanometres === undefined || unit.system === "either") return undefined;
  return { name: unit.name, system: unit.system, nanometres };
}

/** How many of the unit `name` one canonical unit is, as a double: for printing. */
export function perCanonical(name: string, dimension: ScalarDimension): number {
  const factor = unitOf(name)?.factors[dimension];
  return factor === undefined ? Number.NaN : Number(factor.den) / Number(factor.num);
}
