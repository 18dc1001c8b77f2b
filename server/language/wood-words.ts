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

/** @returns for each class of timber whose design values nobody has compared with the print, a sentence that says so */
export function woodNotes(woods: readonly WoodInUse[], say: Say): string[] {
  return [...groupBy(woods, (w) => w.timberClass)].flatMap(([timberClass, own]) => {
    const open = own
      .flatMap(({ wood }) => KEYS.map((key) => wood.values[key]))
      .filter(({ status }) => status === "memory" || status === "uncertain");
    if (open.length === 0) return [];
    const named = own.map(({ wood }) => `${wood.group.replaceAll("-", " ")}, ${wood.grade}`);
    return [
      say.text(
        open.some(({ status }) => status === "uncertain")
          ? "Design values of {class} ({wood}) stand as remembered, some not surely. Compare them with a print of {source} before you build."
          : "Design values of {class} ({wood}) stand as remembered. Compare them with a print of {source} before you build.",
        {
          class: timberClass,
          wood: say.list([...new Set(named)]),
          source: say.list([...new Set(open.map(({ source }) => source))]),
        },
      ),
    ];
  });
}
