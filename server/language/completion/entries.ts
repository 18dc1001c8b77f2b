/** New entries where the file gives names of its own: each with a free name, its kind and what an entry of it must have. */
import type { Say } from "../../core/checks/say.ts";
import { childSchema, type Schema } from "../../document/schema.ts";
import type { TypedKey } from "../../document/typing.ts";
import { ROOF_NAMES, SECTIONS, type Sort, TOGETHER } from "../defined-names.ts";
import type { Choice } from "./choice.ts";
import { BRACKETS, formOf, type Hand, requiredOf } from "./form.ts";
import usualEntries from "./new-entries.json" with { type: "json" };

/** @returns nothing where the keys are the language's own or names that stand elsewhere */
export function entryChoices(schema: Schema, typed: TypedKey, hand: Hand, say: Say): readonly Choice[] {
  const sort = (Object.keys(SECTIONS) as Sort[]).find((each) => SECTIONS[each] === typed.path);
  if (sort === undefined || typed.behind === "colon" || typed.behind === "lines") return [];
  const taken = namesBeside(sort, typed);
  return kindsOf(sort, schema, taken).flatMap(({ base, kind, shape, about }) => {
    const usual = kind === undefined ? undefined : usualEntry(typed.path, kind);
    const name = freeName(usual?.name ?? base, taken);
    if (name === undefined) return [];
    const pieces = piecesOf(shape, kind, typed, hand);
    const what = say.text(about);
    const label = kind ?? name;
    return {
      sort: "key" as const,
      label,
      detail: kind === undefined ? say.text("new") : say.text("new {kind}", { kind }),
      about: what,
      plain: what,
      filter: label,
      head: typed.lead + name + pieces.join(""),
      tail: typed.trail,
      snippet: usual
        ? `${typed.lead}\${1:${escaped(name)}}${bodyOf(usual.keys, typed, hand)}${escaped(typed.trail)}`
        : withStops(typed.lead, name, [...pieces.slice(0, -1), `${pieces.at(-1)}${typed.trail}`]),
    };
  });
}

/** A whole entry as it is usually written, each value of it to be typed over. */
interface UsualEntry {
  readonly name: string;
  /** `section: ${2:8x8}`: a key and its value, in snippet syntax */
  readonly keys: readonly string[];
}

const USUAL: Readonly<Record<string, Readonly<Record<string, string>>>> = usualEntries;

function usualEntry(section: string, kind: string): UsualEntry | undefined {
  const [, name, body] = /^\$\{1:([^}]+)\}: \{(.*)\}$/.exec(USUAL[section]?.[kind] ?? "") ?? [];
  return name === undefined || body === undefined ? undefined : { name, keys: outerParts(body) };
}

/** Divided at the commas that stand in no bracket. */
function outerParts(body: string): string[] {
  const parts = [""];
  let depth = 0;
  for (const char of body) {
    if ("{[".includes(char)) depth += 1;
    if ("}]".includes(char)) depth -= 1;
    if (char === "," && depth === 0) parts.push("");
    else parts[parts.length - 1] += char;
  }
  return parts.map((part) => part.trim());
}

/** What stands behind the name: in lines where the other entries are written so. */
function bodyOf(keys: readonly string[], typed: TypedKey, { step, lineBreak }: Hand): string {
  if (!inLines(typed)) return `: {${keys.join(", ")}\\}`;
  const next = lineBreak + " ".repeat(typed.column + step);
  return `:${next}${keys.join(next)}`;
}

/** The name may be typed over; then the cursor goes from gap to gap, and stays in the last. */
function withStops(lead: string, name: string, pieces: readonly string[]): string {
  const gaps = pieces.length - 1;
  const body = pieces.map((piece, i) =>
    i === gaps ? escaped(piece) : `${escaped(piece)}$${i === gaps - 1 ? 0 : i + 2}`,
  );
  return `${lead}\${1:${escaped(name)}}${body.join("")}`;
}

/** Characters that mean something in a snippet. */
export function escaped(text: string): string {
  return text.replace(/[\\$}]/g, "\\$&");
}

interface NewEntry {
  readonly base: string;
  readonly kind: string | undefined;
  readonly shape: Schema;
  readonly about: string;
}

function kindsOf(sort: Sort, schema: Schema, taken: ReadonlySet<string>): readonly NewEntry[] {
  const plain = (base: string): NewEntry[] => {
    const shape = childSchema(schema, undefined, base);
    return shape === undefined ? [] : [{ base, kind: undefined, shape, about: shape.description ?? "" }];
  };
  if (sort === "wall")
    return LETTERS.filter((name) => !taken.has(name))
      .slice(0, 1)
      .flatMap(plain);
  if (sort === "bent") {
    const most = Math.max(0, ...[...taken].filter((name) => /^\d{1,6}$/.test(name)).map(Number));
    return plain(String(most + 1));
  }
  const branches = schema.additionalProperties;
  const kinds = typeof branches === "object" ? (branches.oneOf ?? []) : [];
  if (kinds.length > 0)
    return kinds.map((shape) => {
      const kind = String(shape.properties?.kind?.const ?? "");
      return { base: kind, kind, shape, about: shape.description ?? "" };
    });
  if (sort !== "class") return plain(sort);
  const usual = CLASSES.filter((name) => !taken.has(name));
  return (usual.length > 0 ? usual : ["wood"]).flatMap(plain);
}

const LETTERS = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"];
/** The classes that timbers, the roof's own rafters and pegs find by their name. */
const CLASSES = ["frame", "rafters", "pegs"];

/** Names that a new one must not be, of this sort and of those that must differ from it. */
function namesBeside(sort: Sort, { index, present }: TypedKey): ReadonlySet<string> {
  const others = TOGETHER[sort].flatMap((each) => {
    const map = index.node(SECTIONS[each]);
    return map?.kind === "map" ? map.entries.map(({ key }) => key) : [];
  });
  const roof = index.node("/roof/rafters") === undefined ? [] : Object.keys(ROOF_NAMES);
  return new Set([...present, ...others, ...roof]);
}

const MOST_TRIED = 1000;

/** `post`, else `post-2` and on. */
function freeName(base: string, taken: ReadonlySet<string>): string | undefined {
  if (!taken.has(base)) return base;
  for (let number = 2; number < MOST_TRIED; number++)
    if (!taken.has(`${base}-${number}`)) return `${base}-${number}`;
  return undefined;
}

/** What stands behind the name, with a gap between each two pieces: in lines where the other entries are written so. */
function piecesOf(
  shape: Schema,
  kind: string | undefined,
  typed: TypedKey,
  { step, lineBreak }: Hand,
): readonly string[] {
  if (formOf(shape) !== "map") return [": ", ""];
  const lines = inLines(typed);
  const needed = [...requiredOf(shape, new Set())].filter((key) => key !== "kind");
  const next = lines ? `${lineBreak}${" ".repeat(typed.column + step)}` : ", ";
  const pieces: string[] = [];
  let piece = lines ? `:${next}` : ": {";
  if (kind !== undefined) piece += `kind: ${kind}${needed.length > 0 ? next : ""}`;
  needed.forEach((key, i) => {
    const form = formOf(shape.properties?.[key] ?? {});
    const [open, close] = form === "scalar" ? ["", ""] : BRACKETS[form];
    pieces.push(`${piece}${key}: ${open}`);
    piece = close + (i < needed.length - 1 ? next : "");
  });
  const end = lines ? piece : `${piece}}`;
  return pieces.length > 0 ? [...pieces, end] : [piece, lines ? "" : "}"];
}

function inLines({ index, path, flow, behind }: TypedKey): boolean {
  const map = index.node(path);
  if (flow || behind !== "nothing" || map?.kind !== "map") return false;
  const sibling = map.entries.find(({ value }) => value.kind === "map")?.value;
  return sibling?.kind === "map" && !sibling.flow;
}
