/** Reference design values of the woods of a frame as a table, with how well they are known. */

import type { Say } from "../core/checks/say.ts";
import { groupBy } from "../core/collect.ts";
import { leastCertain } from "../core/sourced.ts";
import type { WoodInUse } from "../core/statics/woods-in-use.ts";
import { STATUS_WORDS } from "./hover/status.ts";
import { SIZE_CLASSES } from "./hover/wood-classes.ts";

const KEYS = ["Fb", "Ft", "Fv", "Fc-perp", "Fc", "E"] as const;
const HEADS = ["F_b", "F_t", "F_v", "F_c⊥", "F_c", "E"] as const;

/** @returns head first: one row for each wood */
export function woodTable(woods: readonly WoodInUse[], say: Say): string[][] {
  const rows = woods.map(({ timberClass, wood }) => {
    const values = KEYS.map((key) => wood.values[key]);
    const known = say.text(STATUS_WORDS[leastCertain(values.map(({ status }) => status))]);
    const grade = wood.assumedGrade ? say.text("{grade}, assumed", { grade: wood.grade }) : wood.grade;
    return [
      timberClass,
      `${wood.group.replaceAll("-", " ")}, ${grade}`,
      say.text(SIZE_CLASSES[wood.sizeClass]),
      ...values.map(({ value }) => say.stress(value)),
      known,
      say.list([...new Set(values.map(({ source }) => source))]),
    ];
  });
  return [
    ["", say.text("wood"), say.text("size class"), ...HEADS, say.text("known"), say.text("source")],
    ...rows,
  ];
}

/** Sticks of 5 in and more are graded as timbers, thinner ones as dimension lumber: tables of their own (NDS Supplement). */
const THICK = 5;

/** @returns for each set of woods whose design values nobody has compared with the print, a sentence that says so */
export function woodNotes(woods: readonly WoodInUse[], say: Say): string[] {
  const open = woods.flatMap(({ timberClass, wood }) =>
    KEYS.map((key) => wood.values[key])
      .filter(({ status }) => status === "memory" || status === "uncertain")
      .map(({ status, source }) => ({
        timberClass,
        status,
        source,
        wood: `${wood.group.replaceAll("-", " ")}, ${wood.grade}`,
        thin: wood.sizeClass === "dimension-lumber",
      })),
  );
  return [...groupBy(open, ({ wood }) => wood)].map(([wood, own]) => {
    const tables = [...groupBy(own, ({ source }) => source)].map(([table, sticks]) => {
      const facts = { table, thick: say.length(THICK) };
      return sticks.every(({ thin }) => thin)
        ? say.text("{table} (sticks thinner than {thick})", facts)
        : say.text("{table} (sticks of {thick} and thicker)", facts);
    });
    return say.text(
      own.some(({ status }) => status === "uncertain")
        ? "Design values of {wood} ({classes}) were written down from memory, some of them uncertain. Before you build, compare {values} with a print: {tables}."
        : "Design values of {wood} ({classes}) were written down from memory. Before you build, compare {values} with a print: {tables}.",
      {
        wood,
        classes: [...new Set(own.map(({ timberClass }) => timberClass))].join(", "),
        values: HEADS.join(", "),
        tables: say.list(tables),
      },
    );
  });
}
