/** A quantity under the cursor: what it means and how much it is in both systems of units. */
import type { Say } from "../../core/checks/say.ts";
import type { Units } from "../../core/frame/frame.ts";
import type { Model } from "../../core/model/model.ts";
import { inches } from "../../core/quantity/length.ts";
import {
  type Dimension,
  formatLength,
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
  "area",
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
  const read = dimension && readBoth(text, dimension, units, say);
  if (read === undefined) return undefined;
  const meaning = meaningOf(schema, say);
  return meaning === "" ? `**${escapeMarkdown(read)}**` : `**${escapeMarkdown(read)}** · ${meaning}`;
}

function readBoth<D extends Dimension>(
  text: string,
  dimension: D,
  units: Units,
  say: Say,
): string | undefined {
  const read = parseQuantity(text, dimension, units);
  return read.ok ? both(read.value, dimension, units, say) : undefined;
}

function both<D extends Dimension>(value: QuantityValues[D], dimension: D, units: Units, say: Say): string {
  if (dimension === "length") return say.lengthBoth(inches(value as QuantityValues["length"]));
  if (dimension === "section") {
    const section = value as QuantityValues["section"];
    return `${sectionText(section, units)} (${sectionText(section, units === "mm" ? "inch" : "mm")})`;
  }
  const own = formatQuantity(value, dimension, units);
  if (dimension === "pitch") {
    const { rise, run } = value as QuantityValues["pitch"];
    const degrees = formatQuantity((Math.atan2(rise, run) * 180) / Math.PI, "angle", units);
    return own === degrees ? own : `${own} (${degrees})`;
  }
  const other = formatQuantity(value, dimension, units === "mm" ? "inch" : "mm");
  return own === other ? own : `${own} (${other})`;
}

function sectionText({ width, depth }: QuantityValues["section"], units: Units): string {
  const unit = units === "mm" ? "mm" : "in";
  const side = (length: QuantityValues["length"]): string =>
    formatLength(length, units === "mm" ? "mm" : "inches").replace(` ${unit}`, "");
  return `${side(width)} × ${side(depth)} ${unit}`;
}

/** A level's name where a height is asked for. */
export function levelHover(name: string, model: Model, say: Say): string | undefined {
  const level = model.frame.grid.levels.find(({ id }) => id === name);
  if (!level) return undefined;
  return `**${escapeMarkdown(name)}** · ${say.text("a level, {height} above the datum", {
    height: say.lengthBoth(inches(level.height)),
  })}`;
}
