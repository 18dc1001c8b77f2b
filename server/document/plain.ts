/** A tree as plain values for the schema: objects without a prototype, numbers and booleans only where they are wanted. */
import { childSchema, ROOT, type Schema } from "./schema.ts";
import type { ScalarNode, Tree } from "./tree.ts";

export type Plain = string | number | boolean | null | readonly Plain[] | PlainMap;
interface PlainMap {
  readonly [key: string]: Plain;
}

/**
 * @returns maps as objects without prototype, so that no key can mean anything but itself; a missing value as null;
 *   quantities, names and texts as they are written
 */
export function toPlain(tree: Tree, schema: Schema | undefined = ROOT): Plain {
  switch (tree.kind) {
    case "blank":
      return null;
    case "scalar":
      return scalarValue(tree, schema);
    case "list":
      return tree.items.map((item, i) => toPlain(item.value, step(schema, tree, String(i))));
    case "map": {
      const map: Record<string, Plain> = Object.create(null);
      for (const { key, value } of tree.entries) map[key] = toPlain(value, step(schema, tree, key));
      return map;
    }
  }
}

/** Under a key that the language does not know, everything is text. */
const UNKNOWN: Schema = {};

function step(schema: Schema | undefined, tree: Tree, key: string): Schema {
  return (schema === undefined ? undefined : childSchema(schema, tree, key)) ?? UNKNOWN;
}

/** YAML 1.2 core schema, for those values that are to be numbers or booleans. */
function scalarValue({ text, quoted }: ScalarNode, schema: Schema | undefined): Plain {
  const types = [schema?.type ?? "string"].flat();
  if (quoted || types.includes("string")) return text;
  if (types.includes("boolean") && /^(?:true|True|TRUE)$/.test(text)) return true;
  if (types.includes("boolean") && /^(?:false|False|FALSE)$/.test(text)) return false;
  if (types.includes("integer") || types.includes("number")) return numberValue(text) ?? text;
  return text;
}

/** @returns the number that a plain scalar is in YAML's core schema; undefined for text, infinity and not-a-number */
export function numberValue(text: string): number | undefined {
  if (!/^[-+]?(?:\.\d+|\d+(?:\.\d*)?)(?:[eE][-+]?\d+)?$/.test(text)) return undefined;
  const value = Number(text);
  return Number.isFinite(value) ? value : undefined;
}
