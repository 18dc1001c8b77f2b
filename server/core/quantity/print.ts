/** Prints quantities for people, and lengths also so that nothing is lost. */
import { type Length, NM_PER_INCH, NM_PER_MM } from "./length.ts";
import type { Pitch, SectionSize, UnitSystem } from "./reading.ts";
import { perCanonical, type ScalarDimension } from "./units.ts";

/**
 * trade: `8'-6 1/2"`, always with feet, as on drawings; worded: `8 ft 6 1/2 in`, as in the file;
 * inches: `102 1/2 in`; mm: `2604 mm`
 */
export type LengthStyle = "trade" | "worded" | "inches" | "mm";

export interface LengthOptions {
  /** the finest fraction of an inch, 16 unless told */
  readonly denominator?: 1 | 2 | 4 | 8 | 16 | 32 | 64;
  /** digits after the point of millimetres, none unless told */
  readonly decimals?: 0 | 1 | 2 | 3;
  /** where a length lies midway; away from zero unless told, as a tape is read */
  readonly halves?: "away-from-zero" | "to-even";
}

/** What is printed where a computation left no number; no such text ever reaches a file. */
const NO_NUMBER = "?";

/** Shorter lengths are written in inches alone: `36 in`, `50 in`, but `7 ft 10 in`. */
const FEET_FROM = 60 * NM_PER_INCH;

const NM_PER_64TH = NM_PER_INCH / 64;
const NM_PER_TEN_THOUSANDTH = NM_PER_INCH / 10_000;

/** Prints a length to the nearest sixteenth (or another step), carrying 15/16 + 1/16 into inches and feet. */
export function formatLength(length: Length, style: LengthStyle, options: LengthOptions = {}): string {
  if (!Number.isFinite(length)) return NO_NUMBER;
  const halves = options.halves ?? "away-from-zero";
  const size = Math.abs(Math.round(length));
  if (style === "mm") {
    const decimals = options.decimals ?? 0;
    const steps = countSteps(size, NM_PER_MM / 10 ** decimals, halves);
    return `${signOf(length, steps)}${(steps / 10 ** decimals).toFixed(decimals)} mm`;
  }
  const denominator = options.denominator ?? 16;
  const steps = countSteps(size, NM_PER_INCH / denominator, halves);
  return signOf(length, steps) + feetAndInches(steps, denominator, style);
}

/** Both systems side by side, the file's own first: `8'-6 1/2" (2604 mm)`. */
export function bothSystems(length: Length, first: UnitSystem = "inch"): string {
  const [inch, mm] = [formatLength(length, "trade"), formatLength(length, "mm")];
  return first === "inch" ? `${inch} (${mm})` : `${mm} (${inch})`;
}

/**
 * Prints a length without loss: reading it back gives the same whole nanometre. In an inch file: 64ths, else up to
 * four decimals of an inch, else millimetres. In a mm file: millimetres with as many decimals as it takes.
 */
export function printExact(length: Length, units: UnitSystem): string {
  if (!Number.isFinite(length)) return NO_NUMBER;
  const size = Math.abs(Math.round(length));
  const sign = signOf(length, size);
  if (units === "inch" && size >= FEET_FROM && size % NM_PER_64TH === 0) {
    return sign + feetAndInches(size / NM_PER_64TH, 64, "worded");
  }
  const inch = units === "inch" ? exactInches(size) : undefined;
  return inch === undefined ? `${sign}${withPoint(size, 6)} mm` : `${sign}${inch} in`;
}

/**
 * Prints a section without loss, as it is written in a file of these units: `8x9`, `5 1/2 x 7 1/4`, `200x225`;
 * a metric section in an inch file keeps its unit: `200x225 mm`.
 */
export function formatSection(section: Pick<SectionSize, "width" | "depth">, units: UnitSystem): string {
  const sides = [section.width, section.depth];
  if (!sides.every(Number.isFinite)) return NO_NUMBER;
  const sizes = sides.map((side) => Math.abs(Math.round(side)));
  const inch = sizes.map(exactInches).filter((text) => text !== undefined);
  if (units === "inch" && inch.length === sizes.length) {
    return inch.join(inch.some((text) => text.includes("/")) ? " x " : "x");
  }
  const mm = sizes.map((size) => withPoint(size, 6)).join("x");
  return units === "mm" ? mm : `${mm} mm`;
}

/** Prints a pitch as it was written: `7:12`, or `30°` where it was given as an angle. */
export function formatPitch(pitch: Pitch): string {
  const angle = pitch.run === 1 && !Number.isInteger(pitch.rise);
  if (!angle) return `${tidy(pitch.rise, 3)}:${tidy(pitch.run, 3)}`;
  return formatScalar((Math.atan(pitch.rise) * 180) / Math.PI, "angle", "inch");
}

/**
 * Prints a number with its unit and no more digits than it deserves.
 * @param value ft², psf, psi, lb/ft³, lb, mph or degrees
 * @param units `mm` prints m², kPa, MPa, kg/m³, kN (N below 100 N), m/s
 */
export function formatScalar(value: number, dimension: ScalarDimension, units: UnitSystem): string {
  if (!Number.isFinite(value)) return NO_NUMBER;
  if (dimension === "angle") return `${tidy(value, 1)}°`;
  const unit = units === "inch" ? INCH_UNITS[dimension] : metricUnit(value, dimension);
  const shown = units === "inch" ? value : value * perCanonical(unit, dimension);
  return `${tidy(shown, decimalsFor(shown, dimension, units))} ${unit}`;
}

const INCH_UNITS: Readonly<Record<Exclude<ScalarDimension, "angle">, string>> = {
  area: "ft²",
  pressure: "psf",
  stress: "psi",
  density: "lb/ft³",
  force: "lb",
  speed: "mph",
};

function metricUnit(value: number, dimension: Exclude<ScalarDimension, "angle">): string {
  if (dimension === "force") return Math.abs(value * perCanonical("N", "force")) < 100 ? "N" : "kN";
  return { area: "m²", pressure: "kPa", stress: "MPa", density: "kg/m³", speed: "m/s" }[dimension];
}

/** Three significant digits at least, four of a large number never cut: 793 psi, 1,280 lb, 12.5 psf, 2.15 kPa. */
function decimalsFor(value: number, dimension: ScalarDimension, units: UnitSystem): number {
  const size = Math.abs(value);
  if (size >= 99.95) return 0;
  if (size >= 9.995) return dimension === "force" && units === "inch" ? 0 : 1;
  if (size >= 0.9995) return dimension === "force" && units === "inch" ? 1 : 2;
  return 3;
}

/** Rounds halves away from zero, drops zeros behind the point, groups thousands. */
function tidy(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  const point = text.indexOf(".");
  const whole = point < 0 ? text : text.slice(0, point);
  const places = point < 0 ? "" : text.slice(point).replace(/\.?0+$/, "");
  const printed = whole.replace(/\B(?=(\d{3})+$)/g, ",") + places;
  return value < 0 && printed !== "0" ? `-${printed}` : printed;
}

function signOf(length: number, steps: number): string {
  return length < 0 && steps > 0 ? "-" : "";
}

/** How many steps a size is; both are whole nanometres, so that a half is met exactly. */
function countSteps(size: number, step: number, halves: "away-from-zero" | "to-even"): number {
  const below = Math.floor(size / step);
  const rest = size - below * step;
  if (rest * 2 < step) return below;
  if (rest * 2 > step) return below + 1;
  return halves === "to-even" && below % 2 === 0 ? below : below + 1;
}

/** @param steps whole number of `1/denominator` in, the denominator a power of two */
function feetAndInches(steps: number, denominator: number, style: "trade" | "worded" | "inches"): string {
  const wholeInches = Math.floor(steps / denominator);
  const fraction = fractionOf(steps - wholeInches * denominator, denominator);
  const feet = style === "inches" ? 0 : Math.floor(wholeInches / 12);
  const inch = wholeInches - feet * 12;
  if (style === "trade") return `${feet}'-${inch}${fraction === "" ? "" : ` ${fraction}`}"`;

  const number = fraction === "" ? `${inch}` : inch === 0 ? fraction : `${inch} ${fraction}`;
  if (feet === 0) return `${number} in`;
  return number === "0" ? `${feet} ft` : `${feet} ft ${number} in`;
}

/** Inches as 64ths or with up to four decimals; undefined if neither is exact. */
function exactInches(size: number): string | undefined {
  if (size % NM_PER_64TH === 0) return feetAndInches(size / NM_PER_64TH, 64, "inches").replace(" in", "");
  if (size % NM_PER_TEN_THOUSANDTH === 0) return withPoint(size / NM_PER_TEN_THOUSANDTH, 4);
  return undefined;
}

/** In lowest terms; '' for none. */
function fractionOf(num: number, den: number): string {
  if (num === 0) return "";
  let [above, below] = [num, den];
  while (above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  return `${above}/${below}`;
}

/** A whole number of 10^-places, as a decimal number without needless zeros. */
function withPoint(count: number, places: number): string {
  const digits = String(count).padStart(places + 1, "0");
  const decimals = digits.slice(-places).replace(/0+$/, "");
  return digits.slice(0, -places) + (decimals === "" ? "" : `.${decimals}`);
}
