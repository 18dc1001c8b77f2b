/** Reference design values of the woods of a frame as a table, with how well they are known. */
import type { Say } from "../core/checks/say.ts";
import { leastCertain } from "../core/sourced.ts";
import type { WoodInUse } from "../core/statics/woods-in-use.ts";
import { STATUS_WORDS } from "./hover/status.ts";

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
      say.text(wood.sizeClass.replaceAll("-", " ")),
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
