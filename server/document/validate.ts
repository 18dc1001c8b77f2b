/** Holds a tree against the frame schema and turns what does not fit into facts: one for each cause, none for a consequence. */
import type { SourceFact } from "../core/checks/source-facts.ts";
import { nearest } from "../core/text/nearest.ts";
import { type SchemaError, validate as validateSchema } from "./generated/validate.js";
import { meant } from "./lost.ts";
import { toPlain } from "./plain.ts";
import { keysAllowed, kindOf, ROOT, type Schema, schemaAt } from "./schema.ts";
import { child, entryOf, keysOf, type ScalarNode, stepTo, type Tree } from "./tree.ts";

/**
 * @param root a map
 * @param incomplete maps and lists that lost something: what they lack may be what was lost
 */
export function validateTree(root: Tree, incomplete: ReadonlySet<Tree>): readonly SourceFact[] {
  if (validateSchema(toPlain(root))) return [];
  const judge = { root, incomplete };
  const facts = new Map<string, SourceFact>();
  for (const error of validateSchema.errors ?? []) {
    const fact = factOf(judge, error);
    if (fact === undefined) continue;
    // One fact for a place; a key that is missing or unknown is a place of its own.
    const key =
      fact.kind === "missing-key" ? `${fact.path}/${fact.key} missing` : "path" in fact ? fact.path : "";
    if (!facts.has(key)) facts.set(key, fact);
  }
  return withoutBegun([...facts.values()]);
}

/** A key that is missing because it stands there misspelt or half typed has its finding there. */
function withoutBegun(facts: readonly SourceFact[]): readonly SourceFact[] {
  const unknown = facts.filter((fact) => fact.kind === "unknown-key");
  return facts.filter(
    (fact) =>
      fact.kind !== "missing-key" ||
      !unknown.some((each) => each.path === child(fact.path, each.key) && meant(each, fact.key)),
  );
}

interface Judge {
  readonly root: Tree;
  readonly incomplete: ReadonlySet<Tree>;
}

function nodeAt(root: Tree, pointer: string): Tree | undefined {
  let node: Tree | undefined = root;
  for (const key of keysOf(pointer)) node = stepTo(node, key)?.value;
  return node;
}

function factOf(judge: Judge, error: SchemaError): SourceFact | undefined {
  const path = error.instancePath;
  const node = nodeAt(judge.root, path);
  if (node === undefined || (node.kind === "blank" && node.lost)) return undefined;
  switch (error.keyword) {
    case "required":
    case "dependentRequired":
      return missingKey(judge, path, node, String(error.params.missingProperty));
    case "additionalProperties":
      return unknownKey(judge, path, node, String(error.params.additionalProperty));
    case "discriminator":
      return wrongKind(judge, path, node);
    case "propertyNames":
      return wrongName(path, node, String(error.params.propertyName));
    case "pattern":
      // The name itself is reported by `propertyNames`.
      return error.schemaPath.includes("propertyNames") ? undefined : wrongValue(judge, path, node);
    case "enum":
    case "const":
    case "minimum":
    case "maximum":
    case "exclusiveMinimum":
      return wrongValue(judge, path, node);
    case "type":
      return wrongType(judge, path, node);
    case "minItems":
    case "maxItems":
    case "minProperties":
    case "maxProperties":
      return wrongCount(judge, path, node, error);
    default:
      return undefined;
  }
}

function missingKey(judge: Judge, path: string, node: Tree, key: string): SourceFact | undefined {
  if (judge.incomplete.has(node)) return undefined;
  const schema = schemaAt(judge.root, child(path, key));
  return { kind: "missing-key", path, key, example: exampleOf(schema) };
}

function exampleOf(schema: Schema | undefined): string | undefined {
  const example = schema?.examples?.[0];
  return example === undefined ? undefined : String(example);
}

function unknownKey(judge: Judge, path: string, node: Tree, key: string): SourceFact | undefined {
  if (entryOf(node, key)?.doubtful || belongsFurtherOut(judge, path, key)) return undefined;
  const schema = schemaAt(judge.root, path);
  const allowed = schema === undefined ? [] : keysAllowed(schema);
  // Lettered and numbered keys are no list to choose from; the examples show how they look.
  const patterns = Object.keys(schema?.patternProperties ?? {});
  const capital = key.toUpperCase();
  const fits = patterns.some((pattern) => new RegExp(pattern, "u").test(capital));
  const near = fits
    ? capital
    : nearest(
        key,
        allowed.filter((each) => entryOf(node, each) === undefined),
      );
  return {
    kind: "unknown-key",
    path: child(path, key),
    key,
    nearest: near,
    allowed: allowed.length > 0 || schema === undefined ? allowed : (schema.examples ?? []).map(String),
  };
}

/** `{tenon: {length: 5 in, pegs: {…}}`: a key of the outer map, which reports the bracket that is missing. */
function belongsFurtherOut({ root, incomplete }: Judge, path: string, key: string): boolean {
  const keys = keysOf(path);
  return keys.some((_, i) => {
    const outer = keys.slice(0, i).reduce(child, "");
    const node = nodeAt(root, outer);
    const schema = node?.kind === "map" && node.flow && incomplete.has(node) && schemaAt(root, outer);
    return schema !== undefined && schema !== false && keysAllowed(schema).includes(key);
  });
}

/** `kind` chooses the shape; as long as it does not, nothing else of the entry is judged. */
function wrongKind(judge: Judge, path: string, node: Tree): SourceFact | undefined {
  const kind = entryOf(node, "kind")?.value;
  if (kind === undefined || (kind.kind === "blank" && kind.lost)) return undefined;
  const pointer = child(path, "kind");
  const allowed = kindOf(unchosen(judge, path)).enum ?? [];
  if (kind.kind !== "scalar")
    return { kind: "wrong-shape", path: pointer, expected: allowed.join(", "), got: gotOf(kind) };
  return {
    kind: "wrong-value",
    path: pointer,
    text: kind.text,
    allowed,
    nearest: nearest(kind.text, allowed),
  };
}

/** The schema at a place before its `kind` has chosen one of the shapes. */
function unchosen(judge: Judge, path: string): Schema {
  const keys = keysOf(path);
  const last = keys.at(-1);
  if (last === undefined) return ROOT;
  const parent = schemaAt(judge.root, keys.slice(0, -1).reduce(child, ""));
  const own = parent?.properties?.[last] ?? parent?.additionalProperties;
  return typeof own === "object" ? own : ROOT;
}

function wrongName(path: string, node: Tree, name: string): SourceFact | undefined {
  if (entryOf(node, name)?.doubtful) return undefined;
  const plain = name
    .normalize()
    .replace(/[^\p{L}\p{N}_-]+/gu, "-")
    .replace(/^[^\p{L}]+|[-_]+$/gu, "");
  return {
    kind: "unknown-key",
    path: child(path, name),
    key: name,
    // what is left of `12-end` without its number is another name
    nearest:
      plain === "" || plain === name || /^\p{N}/u.test(name) || entryOf(node, plain) !== undefined
        ? undefined
        : plain,
    allowed: ["a name that begins with a letter, of letters, digits and hyphens"],
  };
}

function wrongValue(judge: Judge, path: string, node: Tree): SourceFact | undefined {
  if (node.kind !== "scalar") return undefined;
  const schema = schemaAt(judge.root, path);
  if (schema?.pattern === ANY_WORD)
    return { kind: "wrong-shape", path, expected: "a reason", got: "nothing" };
  const allowed = allowedBy(schema);
  const comma = withoutComma(path, node, schema);
  if (comma !== undefined) return comma;
  return {
    kind: "wrong-value",
    path,
    text: node.text,
    allowed,
    nearest: suggestion(node.text, schema, allowed),
  };
}

/** Of a reason: something has to be said. */
const ANY_WORD = "\\S";

/** `[A1 A2, B1]`: two items of a list with nothing but a blank between them. */
function withoutComma(path: string, node: ScalarNode, schema: Schema | undefined): SourceFact | undefined {
  const words = node.text.split(/\s+/);
  if (schema?.pattern === undefined || !/\/\d+$/.test(path) || node.quoted || words.length < 2)
    return undefined;
  const pattern = new RegExp(schema.pattern, "u");
  if (node.text.length > LONGEST_ITEM || !words.every((word) => pattern.test(word))) return undefined;
  return {
    kind: "missing-separator",
    path,
    ...node.range,
    written: node.text,
    reason: "comma",
    key: words[1] ?? "",
    proposals: [words.join(", ")],
  };
}

/** Longer texts are no items of a list that ran together. */
const LONGEST_ITEM = 200;

function suggestion(
  text: string,
  schema: Schema | undefined,
  allowed: readonly string[],
): string | undefined {
  if (schema?.pattern === undefined) return nearest(text, allowed);
  const capital = text.charAt(0).toUpperCase() + text.slice(1);
  return capital !== text && new RegExp(schema.pattern, "u").test(capital) ? capital : undefined;
}

function allowedBy(schema: Schema | undefined): readonly string[] {
  if (schema?.enum !== undefined) return schema.enum;
  if (schema?.const !== undefined) return [String(schema.const)];
  const types = [schema?.type ?? []].flat();
  if (types.includes("boolean")) return ["true", "false"];
  if (schema?.pattern === undefined && (types.includes("integer") || types.includes("number"))) {
    return [numberWords(schema, types.includes("integer") ? "a whole number" : "a number")];
  }
  return (schema?.examples ?? []).map(String);
}

function numberWords(schema: Schema | undefined, noun: string): string {
  const { minimum, maximum, exclusiveMinimum } = schema ?? {};
  const from =
    minimum === undefined
      ? exclusiveMinimum === undefined
        ? ""
        : ` above ${exclusiveMinimum}`
      : ` from ${minimum}`;
  return `${noun}${from}${maximum === undefined ? "" : ` to ${maximum}`}`;
}

function wrongType(judge: Judge, path: string, node: Tree): SourceFact | undefined {
  const schema = schemaAt(judge.root, path);
  const types = [schema?.type ?? []].flat();
  const scalar = types.some((type) => type !== "array" && type !== "object");
  if (node.kind === "scalar" && scalar) return wrongValue(judge, path, node);
  return { kind: "wrong-shape", path, expected: expectedBy(schema), got: gotOf(node) };
}

/** Words for what may stand somewhere: `a length, for example 6 1/2 in`. */
function expectedBy(schema: Schema | undefined): string {
  const types = [schema?.type ?? []].flat();
  const quantity = schema?.["x-quantity"]?.replace("-", " ");
  if (schema?.enum !== undefined) return schema.enum.join(", ");
  if (quantity !== undefined) return /^[aeiou]/.test(quantity) ? `an ${quantity}` : `a ${quantity}`;
  if (types.includes("boolean")) return "true or false";
  if (types.includes("string")) return "a single value";
  if (types.includes("integer")) return numberWords(schema, "a whole number");
  if (types.includes("number")) return numberWords(schema, "a number");
  return types.includes("array") ? "a list" : "a map of keys";
}

function wrongCount(judge: Judge, path: string, node: Tree, error: SchemaError): SourceFact | undefined {
  if (judge.incomplete.has(node)) return undefined;
  const limit = Number(error.params.limit);
  const least = error.keyword.startsWith("min");
  const noun = error.keyword.endsWith("Items") ? "a list" : "a map";
  const size = node.kind === "map" ? node.entries.length : node.kind === "list" ? node.items.length : 0;
  const expected = `${noun} with ${least ? "at least" : "at most"} ${limit} ${limit === 1 ? "entry" : "entries"}`;
  return { kind: "wrong-shape", path, expected, got: size === 0 ? "nothing" : gotOf(node) };
}

function gotOf(node: Tree): Extract<SourceFact, { kind: "wrong-shape" }>["got"] {
  if (node.kind === "blank") return "nothing";
  return node.kind === "scalar" ? "text" : node.kind;
}
