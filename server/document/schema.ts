/**
 * The frame language as `schemas/frame.schema.json` states it, for lookups by place: what may stand at a pointer, what
 * it means, what it measures. Hovers and completion read their words here.
 */
import frameSchema from "../../schemas/frame.schema.json" with { type: "json" };
import { keysOf, stepTo, type Tree, valueAt } from "./tree.ts";

/** The part of JSON Schema 2020-12 that the frame schema uses, and its own keywords. */
export interface Schema {
  readonly $ref?: string;
  readonly description?: string;
  readonly type?: string | readonly string[];
  readonly const?: string | number;
  readonly enum?: readonly string[];
  /** what each choice means, where each has words of its own; not in the file, but made of its shapes */
  readonly meanings?: Readonly<Record<string, string>>;
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

/** The whole language, with every reference replaced by what it leads to. */
export const ROOT: Schema = withoutReferences(frameSchema as unknown as Schema);

/** What stands beside a reference (a description for this place) lies over what the reference leads to. */
function withoutReferences(file: Schema): Schema {
  const definitions = new Map<string, Schema>();
  const definition = (reference: string): Schema => {
    const known = definitions.get(reference);
    if (known !== undefined) return known;
    const found = resolve(file.$defs?.[reference.replace("#/$defs/", "")] ?? {});
    definitions.set(reference, found);
    return found;
  };
  const each = (schemas: Readonly<Record<string, Schema>>): Readonly<Record<string, Schema>> =>
    Object.fromEntries(Object.entries(schemas).map(([key, schema]) => [key, resolve(schema)]));
  const resolve = ({ $ref, $defs: _, ...own }: Schema): Schema => ({
    ...($ref === undefined ? {} : definition($ref)),
    ...own,
    ...(own.properties && { properties: each(own.properties) }),
    ...(own.patternProperties && { patternProperties: each(own.patternProperties) }),
    ...(typeof own.additionalProperties === "object" && {
      additionalProperties: resolve(own.additionalProperties),
    }),
    ...(own.items && { items: resolve(own.items) }),
    ...(own.oneOf && { oneOf: own.oneOf.map(resolve) }),
  });
  return resolve(file);
}

/**
 * @param root the file's tree, which says of what `kind` each thing is
 * @param pointer a place in the file, whether something stands there or not
 * @returns what may stand there; undefined where the language knows nothing of that name
 */
export function schemaAt(root: Tree | undefined, pointer: string): Schema | undefined {
  return follow(root, pointer, ofKind);
}

/**
 * The same for what is still being typed: as long as no `kind` chooses a shape, the keys may stand there that mean the
 * same in all of them.
 */
export function schemaBeforeKind(root: Tree | undefined, pointer: string): Schema | undefined {
  return follow(root, pointer, (schema, node) => {
    const chosen = ofKind(schema, node);
    return schema.oneOf === undefined || schema.oneOf.includes(chosen)
      ? chosen
      : { ...chosen, ...inAll(schema.oneOf, chosen.properties) };
  });
}

type Choose = (schema: Schema, node: Tree | undefined) => Schema;

function follow(root: Tree | undefined, pointer: string, choose: Choose): Schema | undefined {
  let schema: Schema | undefined = ROOT;
  let node = root;
  for (const key of keysOf(pointer)) {
    if (schema === undefined) return undefined;
    schema = childOf(choose(schema, node), key);
    node = stepTo(node, key)?.value;
  }
  return schema === undefined ? undefined : choose(schema, node);
}

/** What the shapes have in common, and which keys all of them need. */
function inAll(
  shapes: readonly Schema[],
  own: Schema["properties"],
): Pick<Schema, "properties" | "required"> {
  const [first, ...others] = shapes;
  const common = Object.entries(first?.properties ?? {}).filter(([key, schema]) =>
    others.every((shape) => sameValues(shape.properties?.[key], schema)),
  );
  const needed = (first?.required ?? []).filter((key) => others.every((one) => one.required?.includes(key)));
  return { properties: { ...own, ...Object.fromEntries(common) }, required: needed };
}

function sameValues(a: Schema | undefined, b: Schema): boolean {
  const about = (schema: Schema): string =>
    JSON.stringify([schema.type, schema.const, schema.enum, schema["x-quantity"], schema["x-ref"]]);
  return a !== undefined && about(a) === about(b);
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
  const kind = valueAt(node, "kind");
  const chosen = schema.oneOf.find(
    (branch) => kind?.kind === "scalar" && branch.properties?.kind?.const === kind.text,
  );
  if (chosen !== undefined) return chosen;
  const { oneOf: _, ...rest } = schema;
  return { ...rest, properties: { kind: kindOf(schema) } };
}

/** @returns what `kind` may be where the shape depends on it */
export function kindOf(schema: Schema): Schema {
  const kinds = (schema.oneOf ?? []).map(
    (branch) => [String(branch.properties?.kind?.const ?? ""), branch.description ?? ""] as const,
  );
  return {
    ...(schema.description !== undefined && { description: schema.description }),
    type: "string",
    enum: kinds.map(([kind]) => kind),
    meanings: Object.fromEntries(kinds),
    examples: kinds.slice(0, 1).map(([kind]) => kind),
  };
}

/** One step of {@link schemaAt}: from what may stand at `node` to what may stand under one of its keys. */
export function childSchema(schema: Schema, node: Tree | undefined, key: string): Schema | undefined {
  return childOf(ofKind(schema, node), key);
}

function childOf(schema: Schema, key: string): Schema | undefined {
  const { properties = {}, patternProperties = {}, additionalProperties, items } = schema;
  const own = Object.hasOwn(properties, key) ? properties[key] : undefined;
  if (own !== undefined) return own;
  for (const [pattern, value] of Object.entries(patternProperties)) {
    if (new RegExp(pattern, "u").test(key)) return value;
  }
  if (typeof additionalProperties === "object") return additionalProperties;
  return items !== undefined && /^\d+$/.test(key) ? items : undefined;
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
      if (holds(value)) keys.add(key);
      visit(value);
    }
    for (const value of Object.values(schema.patternProperties ?? {})) visit(value);
    visit(schema.additionalProperties);
    visit(schema.items);
    for (const branch of schema.oneOf ?? []) visit(branch);
  };
  visit(ROOT);
  return keys;
}
