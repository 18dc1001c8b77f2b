/** Units behind a number that has been typed: those in which the whole value can be read. */
import { type Dimension, parseLength, parseQuantity, type UnitSystem } from "../../core/quantity/quantity.ts";

interface Units {
  readonly dimension: Dimension;
  /** of the file's own system first */
  readonly inch: readonly string[];
  readonly mm: readonly string[];
}

const LENGTH: Units = { dimension: "length", inch: ["ft", "in"], mm: ["mm", "m", "cm"] };

/** By what the schema says a value measures, `x-quantity`. */
const UNITS: Readonly<Record<string, Units>> = {
  length: LENGTH,
  height: LENGTH,
  "grid-place": LENGTH,
  section: { dimension: "section", inch: ["nominal", "in"], mm: ["mm"] },
  pitch: { dimension: "pitch", inch: ["deg"], mm: ["deg"] },
  area: { dimension: "area", inch: ["ft²"], mm: ["m²"] },
  pressure: { dimension: "pressure", inch: ["psf"], mm: ["kPa"] },
  stress: { dimension: "stress", inch: ["psi", "ksi"], mm: ["MPa", "GPa"] },
  density: { dimension: "density", inch: ["pcf"], mm: ["kg/m³"] },
  force: { dimension: "force", inch: ["lb", "kip"], mm: ["kg", "kN", "N"] },
  speed: { dimension: "speed", inch: ["mph"], mm: ["m/s", "km/h"] },
};

export interface UnitChoice {
  readonly unit: string;
  /** what the word at the cursor becomes */
  readonly word: string;
}

/**
 * @param quantity `x-quantity` of the value
 * @param before the value up to the cursor
 * @param begun the part of its last word before the cursor
 * @param after the rest of the value behind the word
 */
export function unitsFor(
  quantity: string,
  { before, begun, after }: { readonly before: string; readonly begun: string; readonly after: string },
  system: UnitSystem,
): readonly UnitChoice[] {
  const units = Object.hasOwn(UNITS, quantity) ? UNITS[quantity] : undefined;
  const [, number = "", gap = "", letters = ""] = /^(.*[\d½⅓⅔¼¾⅛⅜⅝⅞])(\s*)([^\d\s]*)$/u.exec(before) ?? [];
  if (units === undefined || number === "" || letters.length > begun.length) return [];
  if (gap === "" && !/^[\p{L}°]*$/u.test(letters)) return [];
  const kept = begun.slice(0, begun.length - letters.length);
  const order = system === "mm" ? [...units.mm, ...units.inch] : [...units.inch, ...units.mm];
  return [...new Set(order)]
    .filter((unit) => isRead(quantity, units.dimension, `${number} ${unit}${after}`, system))
    .map((unit) => ({ unit, word: gap === "" ? `${kept} ${unit}` : unit }));
}

/** Of a place only what stands behind the `@` is a length. */
function isRead(quantity: string, dimension: Dimension, text: string, system: UnitSystem): boolean {
  if (quantity !== "grid-place") return parseQuantity(text, dimension, system).ok;
  const [, length] = /^[A-Z]@(.+)$/.exec(text) ?? [];
  return length !== undefined && parseLength(length, system).ok;
}
