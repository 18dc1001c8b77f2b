/** Keys that a map may still have, each with what it means and with the beginning of its value. */
import type { Say } from "../../core/checks/say.ts";
import { childSchema, type Schema, schemaBeforeKind } from "../../document/schema.ts";
import type { TypedKey } from "../../document/typing.ts";
import { keyHover } from "../hover/key.ts";
import type { Choice } from "./choice.ts";
import { type Naming, namesFor } from "./names.ts";

/** How the file is written. */
export interface Hand {
  /** columns of one step of indentation */
  readonly step: number;
  readonly lineBreak: string;
}

/** @returns the keys that must be there first, then in the order of the schema, then names as keys */
export function keyChoices(typed: TypedKey, naming: Naming, hand: Hand): readonly Choice[] {
  const schema = schemaBeforeKind(typed.index.root, typed.path);
  if (schema === undefined) return [];
  const needed = requiredOf(schema, typed.present);
  const known = Object.keys(schema.properties ?? {});
  const keys = [...known.filter((key) => needed.has(key)), ...known.filter((key) => !needed.has(key))];
  const named = schema["x-ref"] === undefined ? [] : namesFor(schema["x-ref"], naming);
  const { say } = naming;
  return [
    ...keys.map((key) => ({ text: key, detail: needed.has(key) ? say.text("required") : undefined })),
    ...named,
  ]
    .filter(({ text }) => !typed.present.has(text))
    .flatMap(({ text, detail }) => {
      const own = childSchema(schema, undefined, text);
      return own === undefined ? [] : [choiceOf(text, detail, own, typed, hand, say)];
    });
}

function requiredOf(schema: Schema, present: ReadonlySet<string>): ReadonlySet<string> {
  const following = Object.entries(schema.dependentRequired ?? {}).flatMap(([key, needed]) =>
    present.has(key) ? needed : [],
  );
  return new Set([...(schema.required ?? []), ...following]);
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

type Form = "scalar" | "map" | "list" | "maps";

/** A value that can be written as a single one begins as that. */
function formOf(schema: Schema): Form {
  const types = [schema.type ?? (schema.oneOf === undefined ? "string" : "object")].flat();
  if (types.includes("object")) return types.every((type) => type !== "string") ? "map" : "scalar";
  if (types.every((type) => type === "array")) return schema.items?.type === "object" ? "maps" : "list";
  return "scalar";
}

const BRACKETS: Readonly<Record<Exclude<Form, "scalar">, readonly [string, string]>> = {
  map: ["{", "}"],
  list: ["[", "]"],
  maps: ["[{", "}]"],
};

/** In braces everything stays inline; on a line of its own, maps and lists of maps go on in the next, one step in. */
function written(
  key: string,
  form: Form,
  { flow, behind, column, trail }: TypedKey,
  { step, lineBreak }: Hand,
): Pick<Choice, "head" | "tail"> {
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
