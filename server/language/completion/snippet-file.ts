/** The same whole entries as a file of snippets, for an editor's own command that inserts one. */
import frameSchema from "../../../schemas/frame.schema.json" with { type: "json" };
import usualEntries from "./new-entries.json" with { type: "json" };

const DEFINITIONS: Readonly<Record<string, { readonly description?: string }>> = frameSchema.$defs;

/** @returns JSON: by `member post` what is typed for it, what stands there then, and what it is */
export function snippetFile(): string {
  const snippets = Object.entries(usualEntries).flatMap(([path, entries]) => {
    const what = path.slice(1).replace(/s$/, "");
    return Object.entries(entries).map(([kind, body]) => [
      `${what} ${kind}`,
      { prefix: kind, body, description: DEFINITIONS[`${what}-${kind}`]?.description ?? "" },
    ]);
  });
  return `${JSON.stringify(Object.fromEntries(snippets), null, 2)}\n`;
}
