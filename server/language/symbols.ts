/** The outline of a file: its sections, and the entries in them with what they are. */
import { type DocumentSymbol, type SymbolInformation, SymbolKind } from "vscode-languageserver-types";
import { child, type Entry, type MapNode, type Tree, valueAt } from "../document/tree.ts";
import type { ReadText } from "./frame-service.ts";
import { rangeOf } from "./name-at.ts";

/** What the entries of a section are, for the icon beside them. */
const KINDS: Readonly<Record<string, SymbolKind | undefined>> = {
  "/grid/walls": SymbolKind.Key,
  "/grid/bents": SymbolKind.Key,
  "/grid/levels": SymbolKind.Constant,
  "/timber": SymbolKind.Class,
  "/members": SymbolKind.Struct,
  "/joints": SymbolKind.Interface,
  "/piers": SymbolKind.Object,
  "/floors": SymbolKind.Object,
};

/** Longer values are shortened: an outline is narrow. */
const MOST_DETAIL = 60;

/** How deep the outline goes: `grid`, `walls`, `A`. */
const DEPTH = 3;

/** @returns in the order of the text, without the `kind` that a detail tells; what comes in by an anchor is listed where it is written */
export function symbolsOf(text: ReadText): DocumentSymbol[] {
  const root = text.reading?.index.root;
  return root?.kind === "map" ? entriesOf(text, root, "", 1) : [];
}

/** The same as a plain list, for editors that know no tree. */
export function flatSymbols(
  symbols: readonly DocumentSymbol[],
  uri: string,
  within?: string,
): SymbolInformation[] {
  return symbols.flatMap(({ name, kind, range, children }) => [
    { name, kind, location: { uri, range }, ...(within === undefined ? {} : { containerName: within }) },
    ...flatSymbols(children ?? [], uri, name),
  ]);
}

function entriesOf(text: ReadText, map: MapNode, path: string, depth: number): DocumentSymbol[] {
  return map.entries
    .filter(({ key, merged, value }) => key !== "" && !merged && !(key === "kind" && value.kind === "scalar"))
    .map((entry) => symbolOf(text, entry, path, depth));
}

function symbolOf(text: ReadText, entry: Entry, section: string, depth: number): DocumentSymbol {
  const { key, keyRange, value, alias } = entry;
  const path = child(section, key);
  const detail = detailOf(section, value);
  const inside = alias === undefined ? childrenOf(text, value, path, depth) : [];
  // a bracket too many can make the last value reach out of the block that it is in
  const reach = inside.map(({ range }) => text.document.offsetAt(range.end));
  const end = Math.max(keyRange.end, endOf(text, alias ?? value.range), ...reach);
  return {
    name: key,
    kind: KINDS[section] ?? (value.kind === "map" ? SymbolKind.Namespace : SymbolKind.Property),
    ...(detail === "" ? {} : { detail }),
    range: rangeOf(text, { start: keyRange.start, end }),
    selectionRange: rangeOf(text, keyRange),
    ...(inside.length > 0 ? { children: inside } : {}),
  };
}

/** A block ends with its last character that is no blank. */
function endOf({ document }: ReadText, { start, end }: Tree["range"]): number {
  return start + document.getText().slice(start, end).trimEnd().length;
}

/** What lies in an entry of its own (a post, a joint) is its size, no outline. */
function childrenOf(text: ReadText, value: Tree, path: string, depth: number): DocumentSymbol[] {
  const [, section = "", ...below] = path.split("/");
  if (depth >= DEPTH || (below.length > 0 && section !== "grid")) return [];
  if (value.kind === "map") return entriesOf(text, value, path, depth + 1);
  return section === "accept" && value.kind === "list" ? acceptedOf(text, value.items) : [];
}

function acceptedOf(text: ReadText, items: readonly { readonly value: Tree }[]): DocumentSymbol[] {
  return items.flatMap(({ value }) => {
    const check = valueAt(value, "check");
    if (check?.kind !== "scalar" || check.text === "") return [];
    const end = Math.max(check.range.end, endOf(text, value.range));
    const range = rangeOf(text, { start: value.range.start, end });
    const detail = written(valueAt(value, "at"));
    return [
      {
        name: check.text,
        kind: SymbolKind.Event,
        ...(detail === "" ? {} : { detail }),
        range,
        selectionRange: rangeOf(text, check.range),
      },
    ];
  });
}

/** What an entry is: `brace 4x8`; `mortise-and-tenon post → plate`; a single value itself. */
function detailOf(section: string, value: Tree): string {
  if (value.kind === "scalar") return written(value);
  const given = (...keys: readonly string[]): string[] =>
    keys.map((key) => written(valueAt(value, key))).filter((text) => text !== "");
  switch (section) {
    case "/joints": {
      const joined = [given("of"), given("into")].flat().join(" → ");
      return shortened([...given("kind"), joined].join(" ").trim());
    }
    case "/timber":
      return given("species", "grade").join(" ");
    case "/piers":
      return given("kind", "diameter", "width", "under").join(" ");
    case "/floors":
      return given("on", "live").join(" ");
    case "/grid/walls":
    case "/grid/bents":
      return given("at").join("");
    default:
      return given("kind", "section").join(" ");
  }
}

/** A value as it is written; several of a list side by side; nothing for a map. */
function written(value: Tree | undefined): string {
  if (value?.kind === "list") return shortened(value.items.map((item) => written(item.value)).join(", "));
  return value?.kind === "scalar" ? shortened(value.text) : "";
}

function shortened(text: string): string {
  const line = text.replace(/\s+/g, " ").trim();
  return line.length <= MOST_DETAIL ? line : `${line.slice(0, MOST_DETAIL - 1).trimEnd()}…`;
}
