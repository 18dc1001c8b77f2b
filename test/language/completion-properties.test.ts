/** Whatever is chosen, wherever: the text can still be read, has what was chosen where it belongs, and nothing else moves. */
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { CompletionItem } from "vscode-languageserver-types";
import { type Plain, toPlain } from "../../server/document/plain.ts";
import { readFrame } from "../../server/document/read.ts";
import { readYaml, walkTree } from "../../server/document/read-yaml.ts";
import { type Schema, schemaBeforeKind } from "../../server/document/schema.ts";
import { indexOf } from "../../server/document/source-index.ts";
import { keysOf, lineEnd, lineStart, type MapNode, type ScalarNode } from "../../server/document/tree.ts";
import { VARIANTS } from "../fixtures.ts";
import { completed, PLAIN, SNIPPETS } from "./completion-text.ts";

const FILES = ["samples", "test/frames"].flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".frame.yaml") && !name.startsWith("wrong"))
    .map((name) => readFileSync(`${folder}/${name}`, "utf8")),
);

/** Maps and lists in lines of their own, which the samples write inline. */
const BLOCKS = `frame: Blocks
timber:
    frame:
        species: white-oak
        grade: no-1
    oak: {species: white-oak, weight: 47 1/2 pcf, values: {Fb: 900 psi, E: 8000 MPa, Fv: 170 psi}, because: tested}
    pegs:
        species: white-oak
        weight: 760 kg/m³
site: {snow: {ground: 1.2 kPa}, wind: {speed: 48 m/s}, elevation: 0.3 m, frost-depth: 3 ft 6 1/2 in}
grid: {walls: {A: 0, B: 9 ft}, bents: {1: 0, 2: 9 ft}}
mill:
    logs:
        - species: white-oak
          small-end: 14 in
          length: 12 ft
          count: 3
        - small-end: 12 in
          length: 9 ft
          count: 2
members:
    post:
        kind: post
        section: 8x8
        at:
            - A1
            - B1
        ends:
            - at: A1
              level: 3 ft
            - {at: B1,
               level: 4 ft}
    plate: {
        kind: plate,
        section: 8x9,
        walls: [A,
                B]
    }
joints:
    head:
        kind: mortise-and-tenon
        of: post
        into: plate
        pegs: {count: 2, diameter: 3/4 in, draw: 3/32 in}
        tenon:
            thickness: 1 1/2 in
crew: {people: 2, each: 0.4 kN, machine: {kind: forks, limit: 1500 lb}}
siding: {A: {openings: 8 1/2 ft²}}
accept:
    - check: tenon-thin
      at: head@A1
      because: "tried on a bench, and {held}"
    - {check: tenon-long, because: "so: and so"}
`;

const TEXTS = [...FILES, BLOCKS].flatMap((text) => VARIANTS.map((variant) => variant.text(text)));

/** One of the texts with its tree, and one of the nodes of a sort in it. */
function nodes<N extends MapNode | ScalarNode>(
  fits: (node: N, schema: Schema, text: string) => boolean,
): fc.Arbitrary<{ readonly text: string; readonly pointer: string; readonly node: N }> {
  const all = TEXTS.map((text) => {
    const { root } = readYaml(text);
    const found = [...walkTree(root)].filter(({ node, pointer }) => {
      const schema = schemaBeforeKind(root, pointer);
      return schema !== undefined && fits(node as N, schema, text);
    });
    return { text, found };
  }).filter(({ found }) => found.length > 0);
  return fc
    .constantFrom(...all)
    .chain(({ text, found }) =>
      fc.constantFrom(...found).map(({ pointer, node }) => ({ text, pointer, node: node as N })),
    );
}

const able = fc.constantFrom(SNIPPETS, PLAIN);
const share = fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true });

/** A map that has not all its keys yet. */
function hasRoom(node: MapNode | ScalarNode, schema: Schema): node is MapNode {
  return node.kind === "map" && unused(node, schema).length > 0;
}

function unused({ entries }: MapNode, schema: Schema | undefined): readonly string[] {
  return Object.keys(schema?.properties ?? {}).filter((key) => !entries.some((entry) => entry.key === key));
}

function pick(items: readonly CompletionItem[], at: number): CompletionItem {
  return items[Math.floor(at * items.length)]!;
}

/** All of a text, values as they are written: what they are may depend on a kind that has just been chosen. */
function readWhole(text: string): Plain {
  const { root, facts } = readYaml(text);
  // a key that has no value yet is all that is left to say
  const faults = facts.filter((fact) => fact.kind !== "missing-separator" || fact.reason !== "no-value");
  expect(faults, text).toEqual([]);
  return toPlain(root, {});
}

/** The same without the entry or item at a place. */
function without(value: Plain, [key, ...deeper]: readonly string[]): Plain {
  if (typeof value !== "object" || value === null || key === undefined) return value;
  if (Array.isArray(value)) {
    const gone = (item: Plain): Plain => (deeper.length > 0 ? without(item, deeper) : null);
    return value.map((item, i) => (String(i) === key ? gone(item) : item));
  }
  const entries = Object.entries(value).flatMap(([name, own]) =>
    name !== key ? [[name, own] as const] : deeper.length > 0 ? [[name, without(own, deeper)] as const] : [],
  );
  return Object.fromEntries(entries);
}

function listAt(value: Plain, [key, ...deeper]: readonly string[]): readonly Plain[] {
  if (key === undefined && Array.isArray(value)) return value;
  if (key === undefined || typeof value !== "object" || value === null) throw new Error("no list");
  return listAt((value as Readonly<Record<string, Plain>>)[key] ?? null, deeper);
}

function expectAdded(before: string, after: string, pointer: string, key: string): void {
  const { root } = readYaml(after);
  const own = /^\/(?:members|joints|piers)$/.test(pointer) ? namedAfter(before, root, pointer, key) : key;
  const place = indexOf(after, root).entry(`${pointer}/${own}`);
  expect(place, `${pointer}/${own} in\n${after}`).toBeDefined();
  expect(without(readWhole(after), keysOf(`${pointer}/${own}`))).toEqual(
    without(readWhole(before), ["none"]),
  );
}

/** A whole entry has a free name of its own and says its kind. */
function namedAfter(
  before: string,
  root: ReturnType<typeof readYaml>["root"],
  pointer: string,
  kind: string,
): string {
  const names = (tree: typeof root): string[] => {
    const map = indexOf("", tree).node(pointer);
    return map?.kind === "map" ? map.entries.map((entry) => entry.key) : [];
  };
  const known = new Set(names(readYaml(before).root));
  const [name, ...more] = names(root).filter((each) => !known.has(each));
  expect(more).toEqual([]);
  expect(indexOf("", root).node(`${pointer}/${name}/kind`)).toMatchObject({ kind: "scalar", text: kind });
  return name ?? kind;
}

describe("a key", () => {
  test("on a line of its own behind the others", () => {
    const blocks = nodes<MapNode>((node, schema) => hasRoom(node, schema) && !node.flow);
    fc.assert(
      fc.property(
        blocks,
        able,
        share,
        fc.nat(3),
        fc.boolean(),
        ({ text, pointer, node }, can, at, begun, note) => {
          const { indent } = indexOf(text, node).style(node);
          const last = node.entries.at(-1)!;
          const end = lineEnd(text, Math.max(last.keyRange.end, trimmedEnd(text, last.value.range.end)));
          const expected = unused(node, schemaBeforeKind(readYaml(text).root, pointer));
          const word = (expected[Math.floor(at * expected.length)] ?? "").slice(0, begun);
          const nl = text.includes("\r\n") ? "\r\n" : "\n";
          const typed = `${text.slice(0, end)}${nl}${" ".repeat(indent)}${word}`;
          const whole = typed + (note ? "  # a note" : "") + text.slice(end);
          const { items, choose } = completed(whole, typed.length, can);
          const keys = items.map(({ label }) => label);
          expect(keys, whole).toEqual(expect.arrayContaining([...expected]));
          const item = pick(items, at);
          expectAdded(text, choose(item).text, pointer, item.label);
        },
      ),
      { numRuns: 150 },
    );
  });

  test("on a blank line above any of them, wherever in it the cursor stands", () => {
    const blocks = nodes<MapNode>((node) => node.kind === "map" && !node.flow);
    let named = 0;
    fc.assert(
      fc.property(
        blocks,
        able,
        share,
        share,
        fc.nat(12),
        ({ text, pointer, node }, can, at, which, typedAt) => {
          const entry = node.entries[Math.floor(which * node.entries.length)]!;
          const start = lineStart(text, entry.keyRange.start);
          // the first line of an item begins with its dash
          if (text.slice(start, entry.keyRange.start).trim() !== "") return;
          const { indent } = indexOf(text, node).style(node);
          const above = text.slice(0, start).trimEnd().split(/\r?\n/).at(-1) ?? "";
          // what stands deeper under a deeper line belongs to that line
          const column = above.search(/\S/) > indent ? Math.min(typedAt, indent) : typedAt;
          const nl = text.includes("\r\n") ? "\r\n" : "\n";
          const whole = `${text.slice(0, start)}${" ".repeat(column)}${nl}${text.slice(start)}`;
          const { items, choose } = completed(whole, start + column, can);
          const labels = items.map(({ label }) => label);
          const keys = unused(node, schemaBeforeKind(readYaml(text).root, pointer));
          expect(labels, whole).toEqual(expect.arrayContaining([...keys]));
          if (/^\/(?:members|joints|piers|floors|timber)$/.test(pointer)) {
            expect(labels.length, whole).toBeGreaterThan(0);
            named++;
          }
          if (items.length === 0) return;
          const item = pick(items, at);
          expectAdded(text, choose(item).text, pointer, item.label);
        },
      ),
      { numRuns: 250 },
    );
    expect(named).toBeGreaterThan(10);
  });

  test("of a new item, on a blank line above and behind the others of its list", () => {
    let items = 0;
    for (const text of TEXTS) {
      const { root } = readYaml(text);
      const nl = text.includes("\r\n") ? "\r\n" : "\n";
      for (const { node, pointer } of walkTree(root)) {
        if (node.kind !== "list" || node.flow || schemaBeforeKind(root, pointer)?.items === undefined)
          continue;
        for (let place = 0; place <= node.items.length; place++) {
          const value = node.items[Math.min(place, node.items.length - 1)]!.value;
          const last = place === node.items.length;
          const start = last
            ? lineEnd(text, trimmedEnd(text, value.range.end)) + nl.length
            : lineStart(text, value.range.start);
          const dash = text.slice(0, trimmedEnd(text, value.range.start)).length;
          const column = /^ */.exec(text.slice(lineStart(text, value.range.start), dash))![0].length;
          const whole = `${text.slice(0, start)}${" ".repeat(column)}${nl}${text.slice(start)}`;
          const { items: offered, choose } = completed(whole, start + column, SNIPPETS);
          for (const item of offered.slice(0, 4)) {
            const before = readWhole(text);
            const after = readWhole(choose(item).text);
            const [list, longer] = [before, after].map((all) => listAt(all, keysOf(pointer)));
            expect(longer, `${pointer} ${place} ${item.label}\n${whole}`).toHaveLength(list!.length + 1);
            expect(longer!.filter((_, i) => i !== place)).toEqual(list);
            const added = longer![place];
            if (typeof added === "object" && added !== null) expect(Object.keys(added)).toEqual([item.label]);
            else expect(String(added)).toBe(item.label);
            items++;
          }
        }
      }
    }
    expect(items).toBeGreaterThan(30);
  });

  test("in braces, before and behind the others", () => {
    const inline = nodes<MapNode>((node, schema) => hasRoom(node, schema) && node.flow);
    fc.assert(
      fc.property(
        inline,
        able,
        share,
        fc.nat(3),
        fc.boolean(),
        ({ text, pointer, node }, can, at, begun, first) => {
          if (text[node.range.start] !== "{") return;
          const expected = unused(node, schemaBeforeKind(readYaml(text).root, pointer));
          const word = (expected[Math.floor(at * expected.length)] ?? "").slice(0, begun);
          const last = node.entries.at(-1);
          const split =
            first || !last ? node.range.start + 1 : Math.max(last.keyRange.end, last.value.range.end);
          const typed = text.slice(0, split) + (first || !last ? "" : ", ") + word;
          const gap = first && word !== "" ? " " : "";
          const whole = typed + gap + text.slice(split);
          const { items, choose } = completed(whole, typed.length, can);
          expect(
            items.map(({ label }) => label),
            whole,
          ).toEqual(expect.arrayContaining([...expected]));
          const item = pick(items, at);
          expectAdded(text, choose(item).text, pointer, item.label);
        },
      ),
      { numRuns: 200 },
    );
  });

  test("half typed again becomes what it was", () => {
    const maps = nodes<MapNode>((node) => node.kind === "map");
    let renamed = 0;
    fc.assert(
      fc.property(maps, able, share, share, ({ text, pointer, node }, can, which, part) => {
        const known = Object.keys(schemaBeforeKind(readYaml(text).root, pointer)?.properties ?? {});
        const own = node.entries.filter(({ key }) => known.includes(key) && key !== "kind");
        const entry = own[Math.floor(which * own.length)];
        if (entry === undefined) return;
        const { start, end } = entry.keyRange;
        const length = 1 + Math.floor(part * (end - start - 1));
        const whole = text.slice(0, start + length) + text.slice(end);
        const { items, choose } = completed(whole, start + length, can);
        const item = items.find(({ label }) => label === entry.key);
        expect(item, whole).toBeDefined();
        expect(choose(item!).text).toBe(text);
        renamed++;
      }),
      { numRuns: 150 },
    );
    expect(renamed).toBeGreaterThan(20);
  });
});

describe("a value", () => {
  const scalars = nodes<ScalarNode>((node) => node.kind === "scalar" && !node.quoted);

  test("half typed again becomes what it was, and any other is one that the place takes", () => {
    let found = 0;
    fc.assert(
      fc.property(scalars, able, share, fc.nat(5), ({ text, pointer, node }, can, which, begun) => {
        const { start, end } = node.range;
        const schema = schemaBeforeKind(readYaml(text).root, pointer);
        if (node.quoted || node.text !== text.slice(start, end) || schema === undefined) return;
        const word = node.text.slice(0, begun);
        const whole = text.slice(0, start) + word + text.slice(end);
        const { items, choose } = completed(whole, start + word.length, can);
        const fixed = schema.enum?.includes(node.text) || (schema["x-ref"] && /^[\w-]+$/.test(node.text));
        if (fixed && !/\d$/.test(word)) {
          const item = items.find(({ label }) => label === node.text);
          expect(item, `${pointer} ${JSON.stringify(word)}\n${whole}`).toBeDefined();
          expect(choose(item!).text).toBe(text);
        }
        if (items.length === 0) return;
        found++;
        const item = pick(items, which);
        const done = choose(item).text;
        const { source } = readFrame(done);
        const here = source.facts.filter(
          // how large the number is that was typed is no matter of its unit
          (fact) => "path" in fact && fact.path === pointer && fact.kind !== "value-out-of-range",
        );
        expect(here, `${item.label} at ${pointer}\n${done}`).toEqual([]);
        expect(without(readWhole(done), keysOf(pointer))).toEqual(without(readWhole(text), keysOf(pointer)));
      }),
      { numRuns: 250 },
    );
    expect(found).toBeGreaterThan(30);
  });

  test("gets its unit back", () => {
    const UNIT = / (ft|in|mm|m|psf|kPa|mph|m\/s|lb|kg|ft²|psi|MPa|pcf|kg\/m³|kN)$/;
    const quantities = nodes<ScalarNode>(
      ({ kind, text, quoted }: ScalarNode, schema) =>
        kind === "scalar" && !quoted && UNIT.test(text) && schema["x-quantity"] !== undefined,
    );
    fc.assert(
      fc.property(
        quantities,
        able,
        fc.constantFrom("", " ", "first"),
        ({ text, pointer, node }, can, typed) => {
          const [gap = "", unit = ""] = UNIT.exec(node.text) ?? [];
          const { end } = node.range;
          const kept = typed === "first" ? ` ${unit[0]}` : typed;
          const whole = text.slice(0, end - gap.length) + kept + text.slice(end);
          const { items, choose } = completed(whole, end - gap.length + kept.length, can);
          const item = items.find(({ label }) => label === unit);
          expect(item, `${pointer}: ${node.text} as ${JSON.stringify(kept)}`).toBeDefined();
          expect(choose(item!).text).toBe(text);
        },
      ),
      { numRuns: 120 },
    );
  });
});

function trimmedEnd(text: string, end: number): number {
  return text.slice(0, end).trimEnd().length;
}
