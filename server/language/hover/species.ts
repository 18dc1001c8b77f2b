/** A wood under the cursor: weight, shrinkage, decay and design values, each with how well it is known. */
import type { Say } from "../../core/checks/say.ts";
import type { TimberClass } from "../../core/frame/frame.ts";
import type { Timber } from "../../core/model/model.ts";
import { leastCertain, type ValueStatus } from "../../core/sourced.ts";
import { designValues } from "../../core/wood/design-values.ts";
import { sizeClass } from "../../core/wood/size-class.ts";
import { findSpecies } from "../../core/wood/species.ts";
import type { DesignValueKey } from "../../core/wood/types.ts";
import { decayResistance, shrinkage, weight } from "../../core/wood/weight.ts";
import { STATUS_WORDS } from "./status.ts";
import { escapeMarkdown, table } from "./table.ts";
import { DECAY, SIZE_CLASSES } from "./wood-classes.ts";

/** 1 lb/ft³ = 16.018463 kg/m³ (0.45359237 kg over 0.3048³ m³, exact units; NIST SP 811, memory) */
const KG_PER_M3 = 16.018463;

export function densityText(poundsPerCubicFoot: number, say: Say): string {
  return say.metric
    ? `${say.number(poundsPerCubicFoot * KG_PER_M3, 0)} kg/m³`
    : `${say.number(poundsPerCubicFoot, 1)} lb/ft³`;
}

type Row = readonly [what: string, value: string, status: ValueStatus];

/**
 * @param timberClass the class that names it, where one does: its grade's values are shown for the sections in use
 * @param timbers sticks of that class
 * @returns undefined for a name that is no wood
 */
export function speciesHover(
  id: string,
  timberClass: TimberClass | undefined,
  timbers: readonly Timber[],
  say: Say,
): string | undefined {
  const wood = findSpecies(id);
  if (!wood) return undefined;
  const botanical = wood.botanical === undefined ? "" : `, *${escapeMarkdown(wood.botanical)}*`;
  const rows = factsOf(id, say).map(([what, value, status]) => [what, value, say.text(STATUS_WORDS[status])]);
  const parts = [`**${escapeMarkdown(wood.name)}**${botanical}`];
  if (rows.length > 0) parts.push(table(["", say.text("average"), say.text("how known")], rows));
  return [...parts, ...(timberClass ? valuesOf(id, timberClass, timbers, say) : [])].join("\n\n");
}

function factsOf(id: string, say: Say): Row[] {
  const rows: Row[] = [];
  const green = weight(id, "green");
  const dry = weight(id, "dry");
  if (green)
    rows.push([weightName("green", green.moisture, say), densityText(green.value, say), green.status]);
  if (dry) rows.push([weightName("dry", dry.moisture, say), densityText(dry.value, say), dry.status]);
  const moves = shrinkage(id);
  if (moves) {
    const percent = (value: number): string => `${say.number(value, 1)} %`;
    rows.push([
      say.text("shrinkage along the rings"),
      percent(moves.tangential.value),
      moves.tangential.status,
    ]);
    rows.push([say.text("shrinkage across the rings"), percent(moves.radial.value), moves.radial.status]);
  }
  const decay = decayResistance(id);
  if (decay) rows.push([say.text("heartwood against decay"), say.text(DECAY[decay.group]), decay.status]);
  return rows;
}

function weightName(seasoning: "green" | "dry", moisture: number | undefined, say: Say): string {
  const name = say.text(seasoning === "green" ? "weight green" : "weight dry");
  return moisture === undefined
    ? name
    : say.text("{name}, {moisture} % moisture", { name, moisture: say.number(moisture, 0) });
}

/** Reference design values, a column for each size class that the class's timbers are of. */
function valuesOf(id: string, timberClass: TimberClass, timbers: readonly Timber[], say: Say): string[] {
  const bySize = new Map(timbers.map((timber) => [sizeClass(timber.width, timber.depth), timber]));
  const found = [...bySize.values()].flatMap((timber) => {
    const values = designValues(id, timberClass.grade?.text, timber.width, timber.depth);
    return values.kind === "values" ? [values] : [];
  });
  const [first] = found;
  if (!first) return [];
  const keys = Object.keys(first.values) as DesignValueKey[];
  const rows = keys.map((key) => {
    const columns = found.map(({ values }) => values[key]);
    return [
      key,
      ...columns.map(({ value }) => (key === "G" ? say.number(value, 2) : say.stress(value))),
      say.text(STATUS_WORDS[leastCertain(columns.map(({ status }) => status))]),
    ];
  });
  const heads = found.map(({ sizeClass: size, table: name }) =>
    say.text("{size} (table {table})", { size: say.text(SIZE_CLASSES[size]), table: name }),
  );
  const grade = first.assumedGrade ? say.text("{grade}, assumed", { grade: first.grade }) : first.grade;
  return [
    say.text("Reference design values of the NDS Supplement, grade {grade}:", { grade }),
    table(["", ...heads, say.text("how known")], rows),
  ];
}
