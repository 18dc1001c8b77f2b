/** Keys that a map may still have, each with what it means and with the beginning of its value. */
import type { Say } from "../../core/checks/say.ts";
import { childSchema, type Schema, schemaBeforeKind } from "../../document/schema.ts";
import type { TypedKey } from "../../document/typing.ts";
import { keyHover } from "../hover/key.ts";
import type { Choice } from "./choice.ts";
import { entryChoices } from "./entries.ts";
import { BRACKETS, type Form, formOf, type Hand, requiredOf } from "./form.ts";
import { namesFor } from "./names.ts";
import type { Naming } from "./naming.ts";

/** @returns the keys that must be there first, the others in the order of the schema (sections: from the one above on), then names as keys, then new entries */
export function keyChoices(typed: TypedKey, naming: Naming, hand: Hand): readonly Choice[] {
  const schema = schemaBeforeKind(typed.index.root, typed.path);
  if (schema === undefined) return [];
  const needed = requiredOf(schema, typed.present);
  const known = Object.keys(schema.properties ?? {});
  // the sections of a file are usually written in their order
  const next = typed.path === "" ? known.indexOf(typed.previous ?? "") + 1 : 0;
  const others = [...known.slice(next), ...known.slice(0, next)].filter((key) => !needed.has(key));
  const keys = [...known.filter((key) => needed.has(key)), ...others];
  const named = schema["x-ref"] === undefined ? [] : namesFor(schema["x-ref"], naming);
  const { say } = naming;
  const choices = [
    ...keys.map((key) => ({ text: key, detail: needed.has(key) ? say.text("required") : undefined })),
    ...named,
  ]
    .filter(({ text }) => !typed.present.has(text))
    .flatMap(({ text, detail }) => {
      const own = childSchema(schema, undefined, text);
      return own === undefined ? [] : [choiceOf(text, detail, own, typed, hand, say)];
    });
  return [...choices, ...entryChoices(schema, typed, hand, say)];
}

function choiceOf(
  key: string,
  detail: string | undefined,
  schema: Schema,
  typed: TypedKey,
  hand: Hand,
  say: Say,
): Choice {
  return {
    sort: "key",
    label: key,
    detail,
    about: keyHover(key, schema, say),
    plain: schema.description === undefined ? "" : say.text(schema.description),
    filter: key,
    ...written(key, formOf(schema), typed, hand),
  };
}

/** In braces everything stays inline; on a line of its own, maps and lists of maps go on in the next, one step in. */
function written(
  name: string,
  form: Form,
  { flow, behind, column, lead, trail }: TypedKey,
  { step, lineBreak }: Hand,
): Pick<Choice, "head" | "tail"> {
  const key = lead + name;
  if (behind === "colon") return { head: key, tail: "" };
  if (behind === "lines") return { head: `${key}:`, tail: "" };
  if (form === "scalar" || (behind === "comment" && !flow)) return { head: `${key}: `, tail: trail };
  if (flow || form === "list") {
    const [open, close] = BRACKETS[form];
    return { head: `${key}: ${open}`, tail: close + trail };
  }
  const next = `${lineBreak}${" ".repeat(column + step)}`;
  return { head: `${key}:${next}${form === "maps" ? "- " : ""}`, tail: "" };
}
