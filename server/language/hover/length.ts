/** A quantity under the cursor: what it means and how much it is in both systems of units. */
import type { Say } from "../../core/checks/say.ts";
import type { Units } from "../../core/frame/frame.ts";
import type { Model } from "../../core/model/model.ts";
import { inches } from "../../core/quantity/length.ts";
import {
  bothSystems,
  type Dimension,
  formatQuantity,
  parseQuantity,
  type QuantityValues,
} from "../../core/quantity/quantity.ts";
import type { Schema } from "../../document/schema.ts";
import { meaningOf } from "./key.ts";
import { escapeMarkdown } from "./table.ts";

const DIMENSIONS: readonly Dimension[] = [
  "length",
  "section",
  "pitch",
  "pressure",
  "stress",
  "density",
  "force",
  "speed",
  "angle",
];

/**
 * @param text the value as written, without quotes
 * @returns undefined where the value measures nothing or cannot be read
 */
export function quantityHover(text: string, schema: Schema, units: Units, say: Say): string | undefined {
  const asked = schema["x-quantity"];
  // A height is a level's name or a length.
  const dimension = asked === "height" ? "length" : DIMENSIONS.find((one) => one === asked);
  const both = dimension && readBoth(text, dimension, units);
  if (both === undefined) return undefined;
  const meaning = meaningOf(schema, say);
  return meaning === "" ? `**${escapeMarkdown(both)}**` : `**${escapeMarkdown(both)}** · ${meaning}`;
}

function readBoth<D extends Dimension>(text: string, dimension: D, units: Units): string | undefined {
  const read = parseQuantity(text, dimension, units);
  return read.ok ? both(read.value, dimension, units) : undefined;
}

function both<D extends Dimension>(value: QuantityValues[D], dimension: D, units: Units): string {
  if (dimension === "length") return bothLengths(value as QuantityValues["length"], units);
  const own = formatQuantity(value, dimension, units);
  if (dimension === "pitch") {
    const { rise, run } = value as QuantityValues["pitch"];
    const degrees = (Math.atan2(rise, run) * 180) / Math.PI;
    return `${own} (${formatQuantity(degrees, "angle", units)})`;
  }
  const unit = dimension === "section" ? (units === "mm" ? " mm" : " in") : "";
  const other = units === "mm" ? "inch" : "mm";
  const there =
    dimension === "section"
      ? sectionText(value as QuantityValues["section"], other)
      : formatQuantity(value, dimension, other);
  return own === there ? own : `${own}${unit} (${there})`;
}

/** Short lengths without feet: `36 in (914 mm)`, `7'-10" (2388 mm)`. */
function bothLengths(length: QuantityValues["length"], units: Units): string {
  const feet = Math.abs(inches(length)) >= 60;
  const [inch, mm] = [formatQuantity(length, "length", "inch"), formatQuantity(length, "length", "mm")];
  if (feet) return bothSystems(length, units);
  return units === "mm" ? `${mm} (${inch})` : `${inch} (${mm})`;
}

function sectionText({ width, depth }: QuantityValues["section"], units: Units): string {
  const side = (length: QuantityValues["length"]): string =>
    formatQuantity(length, "length", units).replace(/ (in|mm)$/, "");
  return `${side(width)} × ${side(depth)} ${units === "mm" ? "mm" : "in"}`;
}

/** A level's name where a height is asked for. */
export function levelHover(name: string, model: Model, say: Say): string | undefined {
  const level = model.frame.grid.levels.find(({ id }) => id === name);
  if (!level) return undefined;
  return `**${escapeMarkdown(name)}** · ${say.text("a level, {height} above the datum", {
    height: say.lengthBoth(inches(level.height)),
  })}`;
}
