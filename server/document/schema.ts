/**
 * The frame language as `schemas/frame.schema.json` states it, for lookups by place: what may stand at a pointer, what
 * it means, what it measures. Hovers and completion read their words here.
 */
import frameSchema from "../../schemas/frame.schema.json" with { type: "json" };
import { keysOf, type Tree, valueAt } from "./tree.ts";

/** The part of JSON Schema 2020-12 that the frame schema uses, and its own keywords. */
export interface Schema {
  readonly $ref?: string;
  readonly description?: string;
  readonly type?: string | readonly string[];
  readonly const?: string | number;
  readonly enum?: readonly string[];
  readonly pattern?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly examples?: readonly (string | number | boolean)[];
  readonly default?: string | number | boolean;
  /** why the default is what it is */
  readonly "x-default-source"?: string;
  /** what a value measures: a dimension of the quantity parser, `height` or `grid-place` */
  readonly "x-quantity"?: string;
  /** what the words of a value name: member, stick, level, wall, bent, place, class, species, grade, check, kind */
  readonly "x-ref"?: readonly string[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly patternProperties?: Readonly<Record<string, Schema>>;
  readonly additionalProperties?: boolean | Schema;
  readonly items?: Schema;
  readonly required?: readonly string[];
  readonly dependentRequired?: Readonly<Record<string, readonly string[]>>;
  readonly discriminator?: { readonly propertyName: string };
  readonly oneOf?: readonly Schema[];
  readonly $defs?: Readonly<Record<string, Schema>>;
}

export const ROOT: Schema = frameSchema as unknown as Schema;

/** @returns the schema a reference leads to, with what stands beside the reference laid over it */
export function resolved(schema: Schema): Schema {
  if (schema.$ref === undefined) return schema;
  const target = subschema(schema.$ref);
  const { $ref: _, ...beside } = schema;
  return { ...(target === undefined ? {} : resolved(target)), ...beside };
}

/** @param path JSON Pointer as a fragment: `#/$defs/section`; @returns what stands there in the schema file */
export function subschema(path: string): Schema | undefined {
  let at: unknown = ROOT;
  for (const key of keysOf(decodeURIComponent(path.slice(1)))) {
    if (typeof at !== "object" || at === null || !Object.hasOwn(at, key)) return undefined;
    at = (at as Readonly<Record<string, unknown>>)[key];
  }
  return at as Schema | undefined;
}

/**
 * @param root the file's tree, which says of what `kind` each thing is
 * @param pointer a place in the file, whether something stands there or not
 * @returns what may stand there; undefined where the language knows nothing of that name
 */
export function schemaAt(root: Tree | undefined, pointer: string): Schema | undefined {
  let schema: Schema | undefined = resolved(ROOT);
  let node = root;
  for (const key of keysOf(pointer)) {
    if (schema === undefined) return undefined;
    schema = childSchema(schema, node, key);
    node = node?.kind === "list" ? node.items[Number(key)]?.value : valueAt(node, key);
  }
  return schema === undefined ? undefined : ofKind(schema, node);
}

/** @returns the keys that a map of this schema may have, in the order of the schema; free names are not listed */
export function keysAllowed(schema: Schema): readonly string[] {
  return Object.keys(schema.properties ?? {});
}

/**
 * Chooses among shapes by their `kind`. Without a known kind, all that is known is that there must be one.
 */
function ofKind(schema: Schema, node: Tree | undefined): Schema {
  if (schema.oneOf === undefined) return schema;
  const branches = schema.oneOf.map(resolved);
  const kind = valueAt(node, "kind");
  const chosen = branches.find(
    (branch) => kind?.kind === "scalar" && branch.properties?.kind?.const === kind.text,
  );
  if (chosen !== undefined) return chosen;
  const { oneOf: _, ...rest } = schema;
  return { ...rest, properties: { kind: kindOf(schema) } };
}

/** @returns what `kind` may be where the shape depends on it */
export function kindOf(schema: Schema): Schema {
  const kinds = (schema.oneOf ?? []).map((branch) => String(resolved(branch).properties?.kind?.const ?? ""));
  return {
    ...(schema.description !== undefined && { description: schema.description }),
    type: "string",
    enum: kinds,
    examples: kinds.slice(0, 1),
  };
}

/** One step of {@link schemaAt}: from what may stand at `node` to what may stand under one of its keys. */
export function childSchema(schema: Schema, node: Tree | undefined, key: string): Schema | undefined {
  return childOf(ofKind(schema, node), key);
}

function childOf(schema: Schema, key: string): Schema | undefined {
  const { properties = {}, patternProperties = {}, additionalProperties, items } = schema;
  const own = Object.hasOwn(properties, key) ? properties[key] : undefined;
  if (own !== undefined) return resolved(own);
  for (const [pattern, value] of Object.entries(patternProperties)) {
    if (new RegExp(pattern, "u").test(key)) return resolved(value);
  }
  if (typeof additionalProperties === "object") return resolved(additionalProperties);
  return items !== undefined && /^\d+$/.test(key) ? resolved(items) : undefined;
}

/** Every key that the language names itself, whatever map it belongs to. */
export const KNOWN_KEYS: ReadonlySet<string> = keysWhere(() => true);
/** Keys that can take a list. */
export const LIST_KEYS: ReadonlySet<string> = keysWhere((schema) => [schema.type].flat().includes("array"));
/** Keys that take a map and nothing else. */
export const MAP_KEYS: ReadonlySet<string> = keysWhere((schema) => schema.type === "object");
/** Keys that take words in free form. */
export const TEXT_KEYS: ReadonlySet<string> = keysWhere(
  (schema) => schema.type === "string" && !schema.enum && !schema.pattern && !schema["x-ref"],
);
/** Keys that are true or false. */
export const BOOLEAN_KEYS: ReadonlySet<string> = keysWhere((schema) => schema.type === "boolean");

function keysWhere(holds: (schema: Schema) => boolean): ReadonlySet<string> {
  const keys = new Set<string>();
  const visit = (schema: Schema | boolean | undefined): void => {
    if (typeof schema !== "object") return;
    for (const [key, value] of Object.entries(schema.properties ?? {})) {
      if (holds(resolved(value))) keys.add(key);
      visit(value);
    }
    for (const value of Object.values(schema.patternProperties ?? {})) visit(value);
    visit(schema.additionalProperties);
    visit(schema.items);
  };
  visit(ROOT);
  for (const schema of Object.values(ROOT.$defs ?? {})) visit(schema);
  return keys;
}
