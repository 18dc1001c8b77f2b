/**
 * What is being typed at an offset: a key of which map, or a value of which key. The word that is half typed is replaced
 * by a stand-in, and the text read with it: so the reader itself says where it belongs, in whatever state the rest is.
 */
import { readYaml } from "./read-yaml.ts";
import { type Schema, schemaBeforeKind } from "./schema.ts";
import { indexOf, type SourceIndex } from "./source-index.ts";
import { keysOf, lineEnd, lineStart, type Range, stepTo, type Tree } from "./tree.ts";

interface Typed {
  /** of the text with the stand-in; ranges in it are none of the user's text */
  readonly index: SourceIndex;
  /** what the completed word takes the place of, in the user's text */
  readonly range: Range;
  /** what must stand before the completed word: a blank behind the colon, indentation, the dash of an item */
  readonly lead: string;
  /** what must stand behind the completed word so that what follows stays what it is */
  readonly trail: string;
  /** how much of the text cannot be read with the word in it; keys without a value wait for it and are no fault */
  readonly faults: number;
}

export interface TypedKey extends Typed {
  readonly role: "key";
  /** of the map */
  readonly path: string;
  /** keys that the map has besides, in their order */
  readonly present: ReadonlySet<string>;
  /** the one that stands before this */
  readonly previous: string | undefined;
  /** in braces */
  readonly flow: boolean;
  /** column of the key, where it has a line of its own */
  readonly column: number;
  /** its colon follows, or its whole value in deeper lines */
  readonly behind: "nothing" | "comment" | "colon" | "lines";
}

export interface TypedValue extends Typed {
  readonly role: "value";
  readonly path: string;
  /** the part of the value before the cursor, without quotes */
  readonly before: string;
  /** the part behind the word */
  readonly after: string;
  /** the part of the word before the cursor */
  readonly begun: string;
  /** other items, where it is one of a list */
  readonly others: ReadonlySet<string>;
}

/**
 * @returns what may be typed there, the likeliest first: on a blank line, also what would begin at the indentation of the
 *   lines around it, or as an item of their list; nothing in comments and quotes, and wherever nothing can be put in
 *   without changing what stands there
 */
export function* typingsAt(text: string, offset: number): Generator<TypedKey | TypedValue, void> {
  const slot = slotAt(text, offset);
  if (slot === undefined) return;
  const blank = /^ *$/.test(text.slice(lineStart(text, offset), lineEnd(text, offset)));
  const slots = blank && slot.colon ? [slot, ...elsewhere(text, slot, offset)] : [slot];
  const faults = blank ? faultsOf(readYaml(text).facts) : 0;
  for (const each of slots) {
    const typed = typedIn(text, each);
    if (typed !== undefined && (!blank || (belongs(typed, each.lead) && typed.faults <= faults))) yield typed;
  }
}

function typedIn(text: string, slot: Slot): TypedKey | TypedValue | undefined {
  for (const trail of slot.trails) {
    const typed = read(text, slot, trail);
    if (typed !== undefined) return typed;
  }
  return undefined;
}

/** On a blank line: as an item of a list, and at the indentation of the lines below and above. */
function elsewhere(text: string, slot: Slot, offset: number): readonly Slot[] {
  const [from, to] = [lineStart(text, offset), lineEnd(text, offset)];
  const column = offset - from;
  const below = indentOf(lineBelow(text, to));
  const above = indentOf(contentBefore(text, from, true));
  return [...new Set([column, below, above])].flatMap((at): readonly Slot[] => {
    if (at === undefined) return [];
    const start = from + Math.min(at, column);
    const lead = " ".repeat(Math.max(0, at - column));
    const key = { ...slot, start, end: offset, lead };
    const item = { ...key, lead: `${lead}- ` };
    return at === column ? [item] : [key, item];
  });
}

function indentOf(line: string): number | undefined {
  const column = line.search(/[^ \uFEFF]/);
  return column < 0 ? undefined : column;
}

/** A dash only where a list may stand, and not within an item: there it would take the keys below for its own. */
function belongs(typed: TypedKey | TypedValue, lead: string): boolean {
  if (!lead.endsWith("- ")) return true;
  const { index, path, role } = typed;
  const list = path.slice(0, path.lastIndexOf("/"));
  const { type } = schemaBeforeKind(index.root, list) ?? {};
  if (![type].flat().includes("array") || index.node(list)?.kind !== "list") return false;
  return role === "value" || typed.present.size === 0;
}

function faultsOf(facts: ReturnType<typeof readYaml>["facts"]): number {
  return facts.filter((fact) => fact.kind !== "missing-separator" || fact.reason !== "no-value").length;
}

/** The word at the cursor with what its neighbors say about it. */
interface Slot extends Range {
  /** its characters before the cursor */
  readonly begun: string;
  /** first on its line, but for dashes */
  readonly first: boolean;
  readonly lead: string;
  /** a key can stand here, and only its colon is missing */
  readonly colon: boolean;
  readonly comment: boolean;
  /** what may have to follow it, the likeliest first */
  readonly trails: readonly string[];
}

const BOUNDARY = /[\s,:{}[\]#"'\uFEFF]/;
/** A cursor farther out than this is in no line that anybody writes. */
const LONGEST_LINE = 4000;

function slotAt(text: string, offset: number): Slot | undefined {
  const from = lineStart(text, offset);
  const to = lineEnd(text, offset);
  if (offset > text.length || offset < from || to - from > LONGEST_LINE) return undefined;
  let start = offset;
  while (start > from && !BOUNDARY.test(text[start - 1] ?? " ")) start--;
  let end = offset;
  while (end < to && !BOUNDARY.test(text[end] ?? " ")) end++;
  const begun = text.slice(start, offset);
  const first = /^[ \t]*(?:-[ \t]+)*$/.test(text.slice(from, start));
  const dash = first && text.slice(from, start).includes("-");
  const before = contentBefore(text, dash ? from : start, first && !dash);
  const inFlow = !dash && /[{[,]$/.test(before);
  // With the cursor before a word, a new one is wanted; only behind a colon the word is the value to be changed.
  if (begun === "" && !before.endsWith(":")) end = start;
  const rest = text.slice(end, to);
  // behind a word, `#` begins no comment
  if (rest.startsWith("#") && end > from && !/\s/.test(text[end - 1] ?? " ")) return undefined;
  const content = withoutComment(rest);
  const comment = content.length < rest.trimEnd().length;
  const word = { start, end, begun, first, comment, lead: text[start - 1] === ":" ? " " : "" };
  if (/^[ \t]*:(?=$|[\s,[\]{}])/.test(rest)) return { ...word, colon: false, trails: [""] };
  if (first && !inFlow) return content.trim() === "" ? { ...word, colon: true, trails: [""] } : undefined;
  if (!inFlow) return { ...word, colon: false, trails: [""] };
  const next = content.trim() || contentAfter(text, to);
  if (next === "" || /^[,}\]]/.test(next)) return { ...word, colon: true, trails: [""] };
  const comma = /^(?:\s|$)/.test(rest) ? "," : ", ";
  return { ...word, colon: true, trails: content.trim() === "" ? [comma, ""] : [comma] };
}

function withoutComment(line: string): string {
  return line.replace(/(?:^|\s)#.*$/, "").trimEnd();
}

/** The last line that holds something before an offset, up to its end; of the same line only, where `above` is false. */
function contentBefore(text: string, offset: number, above: boolean): string {
  let at = offset;
  for (let lines = 0; lines < MOST_LINES; lines++) {
    const start = lineStart(text, at);
    const line = lines === 0 ? text.slice(start, at).trimEnd() : withoutComment(text.slice(start, at));
    if (line !== "" || !above || start <= 1) return line;
    at = start - 1;
    if (text[at] === "\n" && text[at - 1] === "\r") at--;
  }
  return "";
}

/** What the next line that holds something begins with. */
function contentAfter(text: string, end: number): string {
  return lineBelow(text, end).trim();
}

function lineBelow(text: string, end: number): string {
  const lines = text.slice(end, end + FAR).split(/\r?\n/, MOST_LINES);
  return lines.map(withoutComment).find((line) => line !== "") ?? "";
}

/** Comments between two entries are no longer than this. */
const MOST_LINES = 40;
const FAR = 2000;

function read(text: string, slot: Slot, trail: string): TypedKey | TypedValue | undefined {
  const standIn = standInFor(text);
  const at = slot.start + slot.lead.length;
  const written = slot.lead + standIn + (slot.colon ? ": " : "") + trail;
  const probed = text.slice(0, slot.start) + written + text.slice(slot.end);
  const { root, facts } = readYaml(probed);
  // A comma at the end of an inline map that is not closed yet would draw the next line into it.
  if (trail !== "" && slot.trails.length > 1 && facts.some((fact) => fact.kind === "unclosed-bracket"))
    return undefined;
  const index = indexOf(probed, root);
  const { pointer, onKey, node } = index.pathAt(at);
  const shared = {
    index,
    range: { start: slot.start, end: slot.end },
    lead: slot.lead,
    trail,
    faults: faultsOf(facts),
  };
  if (onKey && keysOf(pointer).at(-1) === standIn) {
    const path = pointer.slice(0, pointer.lastIndexOf("/"));
    const map = index.node(path);
    if (map?.kind !== "map") return undefined;
    // A word on a line of its own under a key or a dash may be a value too.
    if (map.entries.length === 1 && node.kind === "blank" && isScalar(schemaBeforeKind(root, path)))
      return { ...shared, role: "value", path, ...aboutValue(slot, index, path, "", "") };
    return keyOf(shared, slot, { text: probed, path, map, standIn, value: node });
  }
  const whole = onKey ? undefined : wordsOf(node, probed, at);
  const found = whole?.indexOf(standIn) ?? -1;
  if (whole === undefined || found < 0) return undefined;
  const after = whole.slice(found + standIn.length);
  const about = aboutValue(slot, index, pointer, whole.slice(0, found), after);
  return { ...shared, role: "value", path: pointer, ...about };
}

/** A plain value; also the last one of an inline map that is still open, which has no value for others yet. */
function wordsOf(node: Tree, text: string, at: number): string | undefined {
  if (node.kind === "scalar") return node.quoted ? undefined : node.text;
  const { start, end } = node.range;
  const own = node.kind === "blank" && node.lost && start <= at && at < end;
  return own && !/^["'&*!|>]/.test(text.slice(start)) ? text.slice(start, end) : undefined;
}

function aboutValue(
  slot: Slot,
  index: SourceIndex,
  path: string,
  before: string,
  after: string,
): Pick<TypedValue, "before" | "after" | "begun" | "others"> {
  const list = index.node(path.slice(0, path.lastIndexOf("/")));
  const own = stepTo(list, keysOf(path).at(-1) ?? "");
  const others = list?.kind === "list" ? list.items.filter((item) => item !== own) : [];
  return {
    before: before + slot.begun,
    after,
    begun: slot.begun,
    others: new Set(others.flatMap(({ value }) => (value.kind === "scalar" ? [value.text] : []))),
  };
}

interface Found {
  readonly text: string;
  readonly path: string;
  readonly map: Extract<Tree, { kind: "map" }>;
  readonly standIn: string;
  readonly value: Tree;
}

function keyOf(shared: Typed, slot: Slot, { text, path, map, standIn, value }: Found): TypedKey | undefined {
  const renamed = !slot.colon && /^\s*:/.test(text.slice(slot.start + slot.lead.length + standIn.length));
  const adopts = !renamed && value.kind !== "blank";
  // Lines below become the new key's own only where its name has been begun.
  if (adopts && (map.flow || slot.begun === "")) return undefined;
  // `[key: value]` is a map without braces, which holds no second key
  if (map.flow && text[map.range.start] !== "{") return undefined;
  const behind = renamed ? "colon" : adopts ? "lines" : slot.comment ? "comment" : "nothing";
  const place = map.entries.findIndex((entry) => entry.key === standIn);
  const present = map.entries.filter((entry) => entry.key !== standIn).map((entry) => entry.key);
  return {
    ...shared,
    role: "key",
    path,
    present: new Set(present),
    previous: map.entries[place - 1]?.key,
    flow: map.flow,
    column: slot.start + slot.lead.length - lineStart(text, slot.start),
    behind,
  };
}

function isScalar(schema: Schema | undefined): boolean {
  const types = [schema?.type ?? "object"].flat();
  return !types.includes("object") && types.some((type) => type !== "array");
}

/** A word that YAML reads as nothing but a word, and that the text does not hold. */
function standInFor(text: string): string {
  const taken = text.match(/zqx(?:zq)*/g) ?? [];
  const longest = taken.reduce((most, { length }) => Math.max(most, length), 0);
  return `zqx${"zq".repeat(longest)}`;
}
