/**
 * Quantities as people write them in a frame file, read to exact values and printed again: the whole of
 * `quantity/` for the rest of the program. Lengths are whole nanometres; areas ft², pressures psf, stresses psi,
 * densities lb/ft³, forces and weights lb, speeds mph, angles degrees.
 */
import type { Length } from "./length.ts";
import { parseLength, parseScalar } from "./parse.ts";
import { parsePitch } from "./pitch.ts";
import { formatLength, formatPitch, formatScalar, formatSection } from "./print.ts";
import type { Pitch, Reading, SectionSize, UnitSystem } from "./reading.ts";
import { parseSection } from "./section.ts";
import type { ScalarDimension } from "./units.ts";

export type { Length } from "./length.ts";
export { parseLength } from "./parse.ts";
export {
  bothSystems,
  formatLength,
  formatSection,
  type LengthOptions,
  type LengthStyle,
  printExact,
} from "./print.ts";
export type { Pitch, Read, Reading, Reason, SectionSize, UnitSystem, Unreadable } from "./reading.ts";
export { dressedSection, parseSection } from "./section.ts";

/** What a quantity measures. */
export type Dimension = "length" | "section" | "pitch" | ScalarDimension;

/** The type of a read value, by dimension. */
export interface QuantityValues extends Record<ScalarDimension, number> {
  readonly length: Length;
  readonly section: SectionSize;
  readonly pitch: Pitch;
}

type Readers = { readonly [D in Dimension]: (text: string, units: UnitSystem) => Reading<QuantityValues[D]> };
type Printers = { readonly [D in Dimension]: (value: QuantityValues[D], units: UnitSystem) => string };

const READERS: Readers = {
  length: parseLength,
  section: parseSection,
  pitch: parsePitch,
  area: (text) => parseScalar(text, "area"),
  pressure: (text) => parseScalar(text, "pressure"),
  stress: (text) => parseScalar(text, "stress"),
  density: (text) => parseScalar(text, "density"),
  force: (text) => parseScalar(text, "force"),
  speed: (text) => parseScalar(text, "speed"),
  angle: (text) => parseScalar(text, "angle"),
};

const PRINTERS: Printers = {
  length: (value, units) => formatLength(value, units === "mm" ? "mm" : "worded"),
  section: formatSection,
  pitch: formatPitch,
  area: (value, units) => formatScalar(value, "area", units),
  pressure: (value, units) => formatScalar(value, "pressure", units),
  stress: (value, units) => formatScalar(value, "stress", units),
  density: (value, units) => formatScalar(value, "density", units),
  force: (value, units) => formatScalar(value, "force", units),
  speed: (value, units) => formatScalar(value, "speed", units),
  angle: (value, units) => formatScalar(value, "angle", units),
};

/**
 * Reads a quantity of the dimension that is expected. Never throws; takes time in proportion to the text.
 * @param text the value as it stands in the file, without the file's own quotes
 * @param units what a bare length or section takes; the other dimensions always name their unit
 */
export function parseQuantity<D extends Dimension>(
  text: string,
  dimension: D,
  units: UnitSystem,
): Reading<QuantityValues[D]> {
  return READERS[dimension](text, units);
}

/** Prints a value for people, rounded: `8 ft 6 1/2 in`, `45 psf`, `1,280 lb`, `30.3°`; metric in a mm file. */
export function formatQuantity<D extends Dimension>(
  value: QuantityValues[D],
  dimension: D,
  units: UnitSystem,
): string {
  return PRINTERS[dimension](value, units);
}

const EXAMPLES: Readonly<Record<Dimension, Readonly<Record<UnitSystem, readonly string[]>>>> = {
  length: { inch: ["8 ft 6 1/2 in", "5-1/2", "140 mm"], mm: ["2600", "140 mm", "8 ft 6 1/2 in"] },
  section: { inch: ["8x9", "5 1/2 x 7 1/4", "2x8 nominal"], mm: ["200x225", "140x190 mm"] },
  pitch: { inch: ["7:12", "30 deg"], mm: ["30 deg", "7:12"] },
  area: { inch: ["24 ft²", "2.2 m²"], mm: ["2.2 m²", "24 ft²"] },
  pressure: { inch: ["40 psf", "1.9 kPa"], mm: ["1.9 kPa", "40 psf"] },
  stress: { inch: ["875 psi", "6 MPa"], mm: ["6 MPa", "875 psi"] },
  density: { inch: ["35 pcf", "560 kg/m3"], mm: ["560 kg/m3", "35 pcf"] },
  force: { inch: ["1500 lb", "6.5 kN"], mm: ["6.5 kN", "700 kg", "1500 lb"] },
  speed: { inch: ["107 mph", "48 m/s"], mm: ["48 m/s", "107 mph"] },
  angle: { inch: ["45 deg", "45°"], mm: ["45 deg", "45°"] },
};

/** Ways to write a quantity, for messages ("write it like 8 ft 6 1/2 in or 140 mm") and completion. */
export function examplesOf(dimension: Dimension, units: UnitSystem): readonly string[] {
  return EXAMPLES[dimension][units];
}
