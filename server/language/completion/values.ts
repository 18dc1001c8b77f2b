/** Values that fit the key they are typed behind: choices, names, units after a number. */
import { type Schema, schemaBeforeKind } from "../../document/schema.ts";
import type { TypedValue } from "../../document/typing.ts";
import { speciesHover } from "../hover/species.ts";
import type { Choice } from "./choice.ts";
import { namesFor } from "./names.ts";
import type { Naming } from "./naming.ts";
import { unitsFor } from "./units.ts";

export function valueChoices(typed: TypedValue, naming: Naming): readonly Choice[] {
  const schema = schemaBeforeKind(typed.index.root, typed.path);
  if (schema === undefined) return [];
  const units = unitChoices(schema, typed, naming);
  // Choices and names are the whole of a value.
  if (units.length > 0 || typed.before !== typed.begun || typed.after !== "") return units;
  const found = [...fixedChoices(schema, naming), ...nameChoices(schema, naming)];
  return found
    .filter(({ label }) => !typed.others.has(label))
    .map((choice) => ({ ...choice, head: typed.lead + choice.head, tail: typed.trail }));
}

function fixedChoices(schema: Schema, { say }: Naming): readonly Choice[] {
  const meaning = schema.description === undefined ? "" : say.text(schema.description);
  return choicesOf(schema).map((text) => {
    const own = schema.meanings?.[text];
    const about = own === undefined ? meaning : say.text(own);
    const usual = String(schema.default) === text ? say.text("where nothing is said") : undefined;
    return { ...whole(text), sort: "value", detail: usual, about, plain: about };
  });
}

function choicesOf(schema: Schema): readonly string[] {
  if (schema.enum !== undefined) return schema.enum;
  if (schema.const !== undefined) return [String(schema.const)];
  return [schema.type].flat().includes("boolean") ? ["true", "false"] : [];
}

function nameChoices(schema: Schema, naming: Naming): readonly Choice[] {
  const sorts = schema["x-ref"] ?? [];
  const woods = sorts.includes("species");
  return namesFor(sorts, naming).map(({ text, detail }) => {
    const about = woods ? (speciesHover(text, undefined, [], naming.say) ?? "") : "";
    return { ...whole(text), sort: "name", detail, about, plain: detail ?? "" };
  });
}

function whole(text: string): Pick<Choice, "label" | "filter" | "head" | "tail"> {
  return { label: text, filter: text, head: text, tail: "" };
}

function unitChoices(schema: Schema, typed: TypedValue, { say }: Naming): readonly Choice[] {
  const quantity = schema["x-quantity"];
  if (quantity === undefined) return [];
  return unitsFor(quantity, typed, say.metric ? "mm" : "inch").map(({ unit, word }) => ({
    sort: "unit",
    label: unit,
    detail: undefined,
    about: "",
    plain: "",
    // what is typed without a blank is compared without it
    filter: word.replace(/\s/g, ""),
    head: typed.lead + word,
    tail: typed.trail,
  }));
}
