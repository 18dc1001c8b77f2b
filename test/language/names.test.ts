/** Names of a file: from each use to its definition and back. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Ref } from "../../server/core/frame/frame.ts";
import { definedNames, partsOf } from "../../server/language/defined-names.ts";
import { definitionsAt } from "../../server/language/definition.ts";
import { createFrameService } from "../../server/language/frame-service.ts";
import { namesIn } from "../../server/language/names.ts";
import { highlightsAt, referencesAt } from "../../server/language/references.ts";
import { inEveryWriting, readText } from "./moving.ts";

const SAMPLES = readdirSync("samples")
  .filter((file) => file.endsWith(".yaml"))
  .map((file) => [file, readFileSync(`samples/${file}`, "utf8")] as const);

/** Each cursor with all that its name has in the file. */
const CASES: Readonly<Record<string, string>> = {
  "a member": `
    grid: {walls: {A: 0}, bents: {1: 0, 2: 9 ft}, levels: {eave: 9 ft}}
    members:
      ⟪post⟫: {kind: post, at: [A1, A2], to: plate, measured: {"«post»@A1": {width: 8 in, depth: 8 in}}}
      plate: {kind: plate, walls: A, from: 1, to: 2, top: eave}
      knee: {kind: brace, between: [«post»@A2, plate], legs: {«post»: 3 ft, plate: 2 ft}}
      gate: {kind: girt, hung-on: «post»@A1}
    joints:
      post-head: {kind: mortise-and-tenon, of: "«post»", into: plate}
    piers: {all: {under: [«po$0st»]}}
    floors: {loft: {on: «post»}}
    accept: [{check: post-slender, at: «post»@A1.foot, because: post}, {check: tenon-thin, at: «post»-plate@A1, because: x}]
  `,
  "a wall": `
    site: {ground: {«A»: 0, «A»1: 0, B: 0, 1: 4 in}}
    grid:
      walls:
        ⟪A⟫: 0
        B: {at: 10 ft, reference: center}
      bents: {1: 0, 2: 9 ft}
    members:
      post: {kind: post, at: ["«A»1", «A$0»@4 ft 9 in, B2]}
      plate: {kind: plate, walls: [«A», B]}
      tie: {kind: tie, bents: 1, from: «A», to: B, splice: {at: «A»1}}
      rest: {kind: beam, walls: B, measured: {rest@«A»: [{width: 1 in, depth: 1 in, at: 0}]}}
    roof: {kind: shed, high: «A»}
    siding: {«A»: {}, 1: {}}
    accept:
      - {check: a, at: knee@«A»2-«A»3, because: A}
      - {check: a, at: rafter@«A».4, because: A}
      - {check: a, at: all@«A»@4-ft-9-in, because: A}
  `,
  "a bent, and what only looks like one": `
    site: {ground: {«2»: 0, A«2»: 0}}
    grid: {walls: {A: 0, B: 9 ft}, bents: {"1": 0, "⟪2⟫": 9 ft, 22: 20 ft}}
    members:
      post: {kind: post, at: [A1, A«2», A22, A@2 ft, A@2], measured: {post@A«2$0»: {width: 2, depth: 2}}}
      tie: {kind: tie, bents: [1, «2»], count: 2, from: "2 ft", to: 2-1/2}
      plate: {kind: plate, walls: A, from: 2 ft, to: «2», measured: {plate@A.2: {width: 2, depth: 2}}}
      joist: {kind: joist, between: [tie, tie], measured: {joist@2.3: {width: 2, depth: 2}}}
      floor: {kind: joist, between: [tie@1, tie@«2»], measured: {floor.2: {width: 2, depth: 2}}}
      knee: {kind: brace, between: [tie, plate]}
    joints:
      joist-end: {kind: pocket, of: joist, into: tie}
      floor-end: {kind: pocket, of: floor, into: tie}
      foot: {kind: stub-tenon, of: king, into: tie}
    accept:
      - {check: a, at: joist-end@2.3, because: 2}
      - {check: a, at: floor-end@«2».2, because: 2}
      - {check: a, at: foot@«2», because: 2}
      - {check: a, at: knee@«2»A-B«2», because: 2}
  `,
  "a level": `
    grid: {walls: {A: 0}, bents: {1: 0}, levels: {⟪eave⟫: 9 ft, pier-top: 1 ft}}
    members:
      post: {kind: post, at: A1, from: pier-top, to: «eave»}
      plate: {kind: plate, walls: A, top: «$0eave»}
      wild: {kind: strut, ends: [{at: A1, level: «eave»}, {at: A1, level: 3 ft}]}
    piers: {all: {under: post, kind: tube, top: «eave»}}
    floors: {eave: {on: post}}
  `,
  "a class of timber": `
    timber:
      frame: {species: white-oak}
      ⟪oak⟫: {species: white-oak}
    members:
      post: {kind: post, timber: «oak»}
      oak: {kind: plate}
    roof: {kind: gable, rafters: {timber: «oa$0k»}}
  `,
  "a joint": `
    members: {post: {kind: post}, plate: {kind: plate}}
    joints:
      ⟪post-head⟫: {kind: mortise-and-tenon, of: post, into: plate}
    accept:
      - {check: tenon-thin, at: «$0post-head»@A1.head, because: x}
      - {check: tenon-long, at: «post-head», because: x}
  `,
  "a pier": `
    members: {post: {kind: post, at: A1}}
    piers: {⟪all⟫: {under: post}, corner: {under: post@A1}}
    accept: [{check: side-cover-short, at: «all$0»@A1, because: x}]
  `,
  "a kind, which stands for each of its timbers": `
    members:
      ⟪knee⟫: {kind: brace}
      post: {kind: post}
      ⟪tie-knee⟫: {kind: brace}
    joints:
      ends: {kind: brace-tenon, of: «bra$0ce», into: post}
      more: {kind: brace-tenon, of: [«knee», «tie-knee»@A1-B1], into: post}
  `,
  "one entry that a joint names by its kind": `
    members:
      ⟪kn$0ee⟫: {kind: brace}
      tie-knee: {kind: brace}
    joints: {ends: {kind: brace-tenon, of: «brace», into: tie-knee}}
  `,
  "an entry that is called like its kind: elsewhere it alone, in joints all of that kind": `
    members:
      post: {kind: post}
      ⟪cor$0ner⟫: {kind: post}
      knee: {kind: brace, between: [post, «corner»]}
    joints: {head: {kind: mortise-and-tenon, of: «post», into: plate}}
  `,
  "the roof’s own rafters": `
    roof:
      kind: gable
      ⟪rafters⟫: {section: 3x7}
    joints: {seat: {kind: birds-mouth, of: «rafter», into: plate}}
    accept: [{check: a, at: «raf$0ter»@A.4, because: x}, {check: a, at: «rafter-seat»@A.4, because: x}]
  `,
  "an entry of which not even the kind can be read": `
    grid: {walls: {A: 0}, bents: {1: 0}, levels: {eave: 9 ft}}
    members:
      plate: {kind: pla, walls: A, top: eave}
      knee: {kind: , between: [«po$0st», plate]}
      ⟪post⟫: {kind: post, section: 8x, at: A1
    joints:
      head: {kind: mortise-and-tenon, of: «post», into: plate}
  `,
  "a name that comes in by an anchor stands once": `
    members:
      ⟪post⟫: {kind: post}
      knee: &knee {kind: brace, between: &two [«post», plate]}
      far: {kind: brace, between: *two}
      more: {<<: *knee, leg: 3 ft}
    piers: {all: {under: «p$0ost»}}
  `,
};

describe.each(Object.entries(CASES))("%s", (_, marked) => {
  test.each(inEveryWriting(marked))("with $writing", ({ text, cursor, definitions, uses, names }) => {
    const found = definitionsAt(text, cursor);
    expect(found.map((one) => one.targetSelectionRange)).toEqual(definitions);
    for (const { originSelectionRange } of found) expect(names).toContainEqual(originSelectionRange);
    const lit = highlightsAt(text, cursor);
    expect(lit.map(({ range }) => range)).toEqual(names);
    expect(lit.filter(({ kind }) => kind === 3).map(({ range }) => range)).toEqual(definitions);
    expect(referencesAt(text, cursor, true).map(({ range }) => range)).toEqual(names);
    expect(referencesAt(text, cursor, false).map(({ range }) => range)).toEqual(uses);
  });
});

test("between two names the one that begins there counts, at the end of one that one", () => {
  const text = readText("grid: {walls: {A: 0}, bents: {1: 0}}\nmembers: {post: {kind: post, at: A1}}\n");
  const line = text.document.getText().split("\n")[1] ?? "";
  const at = (character: number): string[] =>
    definitionsAt(text, { line: 1, character }).map((one) => text.document.getText(one.targetSelectionRange));
  const place = line.indexOf("A1");
  expect([at(place), at(place + 1), at(place + 2), at(place + 3)]).toEqual([["A"], ["1"], ["1"], []]);
  // past the end of the line is no place of it
  expect(at(line.length + 5)).toEqual([]);
});

describe.each(SAMPLES)("in %s", (_, sample) => {
  const text = readText(sample);
  const { reading } = text;
  if (!reading) throw new Error("not read");
  const names = namesIn(reading);

  test("every name leads to its definition, which lists it", () => {
    expect(names.length).toBeGreaterThan(40);
    for (const name of names) {
      expect(sample.slice(name.range.start, name.range.end)).toBe(name.text);
      for (const offset of [name.range.start, name.range.end - 1]) {
        const links = definitionsAt(text, text.document.positionAt(offset));
        expect(links.length).toBe(name.definitions.length);
        for (const { targetUri, targetSelectionRange, targetRange, originSelectionRange } of links) {
          expect(targetRange.start).toEqual(targetSelectionRange.start);
          const back = referencesAt(text, targetSelectionRange.start, true);
          expect(back).toContainEqual({ uri: targetUri, range: originSelectionRange });
          expect(back).toContainEqual({ uri: targetUri, range: targetSelectionRange });
        }
      }
    }
  });

  test("every name that the frame knows and resolves is among them", () => {
    for (const { text: written, path } of refsIn(reading.frame)) {
      if (/\/(?:species|grade)$/.test(path) || /^\d+ (?:ft|in)/.test(written)) continue;
      const key = reading.index.range(path);
      const place = sample.startsWith(written, key.start) ? key : reading.index.keyRange(path);
      expect(
        names.map(({ range }) => range.start),
        `${written} at ${path}`,
      ).toContain(place.start);
    }
  });

  test("every id of the frame leads to its entry", () => {
    const { evaluation } = createFrameService().open("file:///ids.frame.yaml", 1, sample);
    const model = evaluation?.model;
    if (!model) throw new Error("no model");
    const defined = definedNames(reading.index.root);
    const first = (id: string): readonly string[] =>
      partsOf(defined, id, ["stick", "joint", "pier"])[0]?.definitions ?? [];
    for (const timber of model.timbers) {
      expect(first(timber.id)).toEqual([timber.path]);
      const lines = partsOf(defined, timber.id, ["stick"]).slice(1);
      for (const { definitions } of lines)
        for (const path of definitions) expect(path).toMatch(/^\/grid\/(?:walls|bents)\/./);
      if (timber.rule === "series") expect(lines).toEqual([]);
      if (timber.rule === "post-on-grid") expect(lines.length).toBe(2);
    }
    for (const joint of model.joints) {
      if (joint.assumed) expect(first(joint.id)).toEqual([joint.of.path]);
      else if (joint.entry) expect(first(joint.id)).toEqual([joint.entry.path]);
      else expect(first(joint.id)).toEqual([expect.stringMatching(/^\/roof\/rafters/)]);
    }
    for (const pier of model.piers) expect(first(pier.id)).toEqual([pier.entry.path]);
  });
});

function refsIn(value: unknown): readonly Ref[] {
  if (typeof value !== "object" || value === null) return [];
  if ("text" in value && "path" in value && typeof value.text === "string" && typeof value.path === "string")
    return [{ text: value.text, path: value.path }];
  return Object.values(value).flatMap(refsIn);
}
