/** A key of the frame language under the cursor: what it means, as the schema says. Its words are Markdown of ours. */
import type { Say } from "../../core/checks/say.ts";
import type { Schema } from "../../document/schema.ts";
import { code, escapeMarkdown } from "./table.ts";

/**
 * Description, choices, default and an example.
 * @param name the key as written, or the place in a list
 */
export function keyHover(name: string, schema: Schema, say: Say): string {
  const meaning = schema.description === undefined ? "" : ` · ${say.text(schema.description)}`;
  const parts = [`**${escapeMarkdown(name)}**${meaning}`, ...choices(schema, say)];
  const [example] = schema.examples ?? [];
  const facts = [
    ...(schema.default === undefined ? [] : [defaultText(schema, String(schema.default), say)]),
    ...(example === undefined
      ? []
      : [say.text("Example: {example}", { example: code(`${name}: ${example}`) })]),
  ];
  return [...parts, ...facts].join("\n\n");
}

/** What a value means, in a line: the description of its key. */
export function meaningOf(schema: Schema, say: Say): string {
  return schema.description === undefined ? "" : say.text(schema.description);
}

function choices(schema: Schema, say: Say): string[] {
  const all = schema.enum ?? [];
  if (all.length < 2) return [];
  return [say.text("One of {choices}.", { choices: say.list(all.map(code)) })];
}

function defaultText(schema: Schema, value: string, say: Say): string {
  const source = schema["x-default-source"];
  return source === undefined
    ? say.text("Left out, it is {value}.", { value: code(value) })
    : say.text("Left out, it is {value} ({source}).", {
        value: code(value),
        source: say.text(source),
      });
}
