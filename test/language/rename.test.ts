/** Renaming: every place of a name and no other; what would go wrong is refused in words. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { TextDocument } from "vscode-languageserver-textdocument";
import type { Position } from "vscode-languageserver-types";
import { createFrameService, type ReadText } from "../../server/language/frame-service.ts";
import { namesIn } from "../../server/language/names.ts";
import { renamableAt, renameEdits } from "../../server/language/rename.ts";
import { SHED } from "../shed.ts";
import { inEveryWriting, readText } from "./moving.ts";

/** The text afterwards, or why it stays. */
function renamed(text: ReadText, cursor: Position, name: string): string {
  const answer = renameEdits(text, cursor, name);
  return "reason" in answer
    ? `refused: ${answer.reason}`
    : TextDocument.applyEdits(text.document, answer.edits);
}

const WHOLE = `
  site: {ground: {A: 0, B: 0}}
  timber: {oak: {species: white-oak}, pegs: {species: white-oak}}
  grid: {walls: {A: 0, B: 9 ft}, bents: {"1": 0, 2: 9 ft}, levels: {eave: 9 ft, low: 1 ft}}
  members:
    leg: {kind: post, section: 8x8, timber: oak, at: [A1, "A2", B@2 ft], to: plate, measured: {leg@A1: {width: 8 in, depth: 8 in}}}
    plate: {kind: plate, section: 8x8, walls: [A, B], from: 1, to: 2, top: eave}
    knee: {kind: brace, section: 4x6, between: [leg@A1, plate], legs: {leg: 3 ft, plate: 2 ft}}
    strut: {kind: brace, section: 4x6, between: [leg, plate], leg: 3 ft}
  joints:
    head: {kind: mortise-and-tenon, of: 'leg', into: plate} # of the leg
    ends: {kind: brace-tenon, of: brace, into: [leg, plate]}
  piers: {all: {under: leg, kind: tube, diameter: 12 in}}
  roof: {kind: gable, pitch: 8:12, rafters: {section: 3x7}}
  accept:
    - {check: post-slender, at: leg@A1.foot, because: the leg is short}
    - {check: tenon-thin, at: leg-plate@A1, because: x}
`;

describe("everywhere and nowhere else", () => {
  test("an entry, at quotes, parts of ids and keys", () => {
    for (const written of inEveryWriting(WHOLE.replace("leg: {kind", "le$0g: {kind"))) {
      const before = written.text.document.getText();
      const changed = before
        .replace("leg: {kind", "corner_1: {kind")
        .replaceAll("leg@", "corner_1@")
        .replace("{leg: 3 ft", "{corner_1: 3 ft")
        .replace("[leg, plate], leg:", "[corner_1, plate], leg:")
        .replace("'leg'", "'corner_1'")
        .replace("into: [leg", "into: [corner_1")
        .replace("under: leg", "under: corner_1")
        .replace("leg-plate@", "corner_1-plate@");
      expect(renamed(written.text, written.cursor, "corner_1")).toBe(changed);
    }
  });

  test("a wall and a bent, from within a place", () => {
    for (const written of inEveryWriting(WHOLE.replace('"A2"', '"$0A2"')))
      expect(renamed(written.text, written.cursor, "C")).toBe(
        written.text.document.getText().replaceAll(/\bA(?=\d|: 0|, B\])/g, "C"),
      );
    for (const written of inEveryWriting(WHOLE.replace("@A1.foot", "@A1$0.foot")))
      expect(renamed(written.text, written.cursor, "30")).toBe(
        written.text.document
          .getText()
          .replaceAll("A1", "A30")
          .replace('"1"', '"30"')
          .replace("from: 1", "from: 30"),
      );
  });

  test("the same name changes nothing", () => {
    const [{ text, cursor } = { text: readText(""), cursor: { line: 0, character: 0 } }] = inEveryWriting(
      WHOLE.replace("leg: {kind", "le$0g: {kind"),
    );
    expect(renameEdits(text, cursor, "leg")).toEqual({ edits: [] });
  });
});

describe("refused", () => {
  test.each([
    ["leg$0: {kind", "2legs", "begins with a letter"],
    ["leg$0: {kind", "", "begins with a letter"],
    ["leg$0: {kind", "leg one", "begins with a letter"],
    ["leg$0: {kind", "a: b", "begins with a letter"],
    ["leg$0: {kind", "null", "no value"],
    ["leg$0: {kind", "NULL", "no value"],
    ["leg$0: {kind", "true", "true or false"],
    ["leg$0: {kind", "False", "true or false"],
    ["leg$0: {kind", "yes", "true or false"],
    ["all$0: {under", "off", "true or false"],
    ["leg$0: {kind", "l".repeat(300), "A name of 300 letters"],
    ["leg$0: {kind", "ä".repeat(61), "A name of 61 letters"],
    ["leg$0: {kind", "12", "begins with a letter"],
    ["leg$0: {kind", "1e3", "begins with a letter"],
    ["leg$0: {kind", "~", "begins with a letter"],
    ["leg$0: {kind", "&leg", "begins with a letter"],
    ["leg$0: {kind", "leg #1", "begins with a letter"],
    ["leg$0: {kind", "leg{", "begins with a letter"],
    ["leg$0: {kind", "leg'", "begins with a letter"],
    ["leg$0: {kind", "leg@A1", "begins with a letter"],
    ["leg$0: {kind", "leg.2", "begins with a letter"],
    ["leg$0: {kind", "leg\nplate: 1", "begins with a letter"],
    ['"1$0"', "1".repeat(300), "A name of 300 letters"],
    ["leg$0: {kind", "plate", "taken already, under members"],
    ["leg$0: {kind", "head", "taken already, under joints"],
    ["leg$0: {kind", "eave", "taken already, under grid, levels"],
    ["leg$0: {kind", "B", "taken already, under grid, walls"],
    ["leg$0: {kind", "all", "taken already, under piers"],
    ["leg$0: {kind", "rafter", "roof’s own rafters"],
    ["leg$0: {kind", "brace", "“leg” in line"],
    ["knee$0: {kind", "brace", "“brace” in line"],
    ["eave$0: 9 ft", "head", "taken already, under joints"],
    ["head$0: {kind", "rafter-seat", "roof’s own rafters"],
    ["A$0: 0, B: 9", "B", "taken already, under grid, walls"],
    ["A$0: 0, B: 9", "AA", "one capital letter"],
    ["A$0: 0, B: 9", "a", "one capital letter"],
    ['"1$0"', "2", "taken already, under grid, bents"],
    ['"1$0"', "0", "whole number"],
    ["oak$0: {species", "frame", "“frame” by its name"],
    ["oak$0: {species", "pegs", "taken already, under timber"],
    ["pegs$0: {species", "pins", "“pegs” by its name"],
    ["of: bra$0ce", "knees", "no name of one entry"],
    ["raf$0ters: {section", "spars", "roof’s own rafters"],
    ["white-$0oak}, pegs", "oak", "no name of this file"],
    ["# of the le$0g", "foot", "no name of this file"],
  ])("at %s the name “%s”", (place, name, words) => {
    const [written] = inEveryWriting(WHOLE.replace(place.replace("$0", ""), () => place));
    if (!written) throw new Error("no writing");
    expect(renamed(written.text, written.cursor, name)).toMatch(/^refused: /);
    expect(renamed(written.text, written.cursor, name)).toContain(words);
  });

  test("not a name of 60 letters, nor one that only begins like a choice", () => {
    const [written] = inEveryWriting(WHOLE.replace("leg: {kind", "le$0g: {kind"));
    if (!written) throw new Error("no writing");
    for (const name of ["l".repeat(60), "trueing-post", "offcut", "nullhead", "Pfosten_ä-2"])
      expect(renamed(written.text, written.cursor, name)).toContain(`${name}: {kind: post`);
  });

  test("while a part of the file cannot be read", () => {
    const at = (text: string): unknown => {
      const read = readText(text);
      return renamableAt(read, read.document.positionAt(text.indexOf("post: {")));
    };
    expect(at(SHED)).toMatchObject({ placeholder: "post" });
    expect(at(SHED.replace("section: 8x10", "section: 8x"))).toMatchObject({ placeholder: "post" });
    for (const broken of [
      SHED.replace("leg: 30 in}", "leg: 30 in"),
      SHED.replace("at: [A1, A2, B1, B2]", "at: A1, A2"),
    ])
      expect(at(broken)).toEqual({ reason: expect.stringContaining("cannot be read") });
  });

  test("when a joint that names a kind and an entry at once would lose the others", () => {
    const [written] = inEveryWriting(`
      members:
        po$0st: {kind: post}
        corner: {kind: post}
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate}
    `);
    if (!written) throw new Error("no writing");
    expect(renamed(written.text, written.cursor, "inner")).toContain("“post” in line 5");
  });
});

describe.each(readdirSync("samples").filter((file) => file.endsWith(".yaml")))("in %s", (file) => {
  const sample = readFileSync(`samples/${file}`, "utf8");
  const text = readText(sample);
  const { reading } = text;
  if (!reading) throw new Error("not read");
  const whole = !file.startsWith("wrong");

  test("every name goes to another and back, and the others stay", () => {
    for (const { range, text: old, definitions } of namesIn(reading).filter(({ declares }) => declares)) {
      const at = text.document.positionAt(range.start);
      const able = renamableAt(text, at);
      expect("reason" in able).toBe(!whole || definitions.some((path) => path.startsWith("/roof")));
      const name = /^\d/.test(old) ? "77" : /^[A-Z]$/.test(old) ? "Q" : "new-name";
      const answer = renameEdits(text, at, name);
      if ("reason" in answer) continue;
      const changed = readText(TextDocument.applyEdits(text.document, answer.edits));
      expect(changed.reading && namesIn(changed.reading).map((use) => use.text)).toEqual(
        namesIn(reading).map((use) =>
          use.definitions.length === 1 && use.definitions[0] === definitions[0] ? name : use.text,
        ),
      );
      const moved = changed.document.positionAt(changed.document.getText().indexOf(name));
      expect(renamed(changed, moved, old)).toBe(sample);
    }
  });
});

describe.each(["goat-shed", "cider-press-pavilion", "garden-arch", "kayak-shelter"])("in %s", (sample) => {
  test("every stick, joint and pier that accept and measured name goes with its entry", () => {
    const service = createFrameService();
    const plain = readFileSync(`samples/${sample}.frame.yaml`, "utf8");
    const { evaluation } = service.open("file:///plain", 1, plain);
    if (!evaluation) throw new Error("not checked");
    const { timbers, joints, piers } = evaluation.model;
    const ids = [...timbers, ...joints, ...piers].map(({ id }) => id);
    expect(ids.length).toBeGreaterThan(10);
    const accept = ids.map((id) => `  - {check: tenon-thin, at: ${id}, because: x}\n`).join("");
    const own = timbers.filter(({ id, path }) => id.includes("@") && path.startsWith("/members/"));
    // each stick of an entry that is written in braces is measured, the first by its height too
    const measured = plain.replace(/^ {2}([\w-]+): +\{kind: [\w-]+, section/gm, (line, name: string) => {
      const sticks = own.filter(({ member }) => member === name);
      const sizes = sticks.map(({ id, width, depth }) => `${id}: {width: ${width} in, depth: ${depth} in}`);
      return sizes.length > 0
        ? line.replace(", section", `, measured: {${sizes.join(", ")}}, section`)
        : line;
    });
    let text = `${measured.trimEnd()}\naccept:\n${accept}`;
    const measuredSticks = (snapshot: ReturnType<typeof service.open>): readonly (string | undefined)[] =>
      [...(snapshot.evaluation?.model.members.values() ?? [])].flatMap((member) =>
        (member.measured ?? []).map(({ stick }) => stick?.text),
      );
    expect(measuredSticks(service.open("file:///measured", 1, text)).length).toBe(own.length);
    const { reading } = readText(text);
    if (!reading) throw new Error("not read");
    const declared = namesIn(reading).filter(
      ({ declares, definitions }) => declares && !definitions[0]?.startsWith("/roof"),
    );
    for (const { text: old, definitions } of declared) {
      const read = readText(text);
      const use = (read.reading ? namesIn(read.reading) : []).find(
        (each) => each.declares && each.text === old,
      );
      const next = /^[A-Z]$/.test(old) ? { A: "P", B: "Q" }[old] : /^\d+$/.test(old) ? `${old}7` : `${old}-x`;
      const after = renamed(read, read.document.positionAt(use?.range.start ?? 0), next ?? "Z");
      if (after.startsWith("refused"))
        expect([definitions[0], after]).toEqual([
          expect.stringMatching(/^\/timber\/(?:frame|rafters|pegs)$/),
          expect.stringContaining("by its name"),
        ]);
      else text = after;
    }
    const changed = service.open("file:///changed", 1, text);
    const model = changed.evaluation?.model;
    const now = [...(model?.timbers ?? []), ...(model?.joints ?? []), ...(model?.piers ?? [])].map(
      ({ id }) => id,
    );
    expect(now).toHaveLength(ids.length);
    expect(now.filter((id) => ids.includes(id) && id.includes("@") && !id.startsWith("rafter"))).toEqual([]);
    const accepted = changed.reading?.frame.accepted.map(({ at }) => at);
    expect(accepted?.toSorted()).toEqual(now.toSorted());
    const sticks = measuredSticks(changed);
    expect(sticks).toHaveLength(own.length);
    expect(now).toEqual(expect.arrayContaining([...sticks]));
  });
});

test("a frame with new names is the same frame", () => {
  const sample = readFileSync("samples/goat-shed.frame.yaml", "utf8");
  const service = createFrameService();
  const before = service.open("file:///before.frame.yaml", 1, sample);
  let text = sample;
  const names = {
    A: "C",
    B: "D",
    "1": "7",
    "2": "8",
    "3": "9",
    "pier-top": "low",
    post: "leg",
    tie: "beam-2",
    joist: "floor",
    "post-head": "top",
    all: "feet",
  };
  for (const [old, name] of Object.entries(names)) {
    const read = readText(text);
    const use = read.reading && namesIn(read.reading).find((each) => each.declares && each.text === old);
    text = renamed(read, read.document.positionAt(use?.range.start ?? 0), name);
  }
  expect(text).not.toContain("refused");
  const after = service.open("file:///after.frame.yaml", 1, text);
  const shown = ({ findings, evaluation }: typeof before): unknown => ({
    checks: findings.map(({ finding }) => [finding.check, finding.level, finding.value]),
    timbers: evaluation?.model.timbers.map(({ kind, span }) => [kind, span]),
    joints: evaluation?.model.joints.map(({ kind, assumed }) => [kind, assumed]),
    piers: evaluation?.model.piers.length,
  });
  expect(shown(after)).toEqual(shown(before));
});
