/** Accepting a finding: the entry that is written covers it and no other, and nothing else of the text changes. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { TextDocument } from "vscode-languageserver-textdocument";
import { type AcceptAbilities, acceptActionsAt, acceptWith } from "../../server/language/accept.ts";
import { nameOfFinding } from "../../server/language/check-page.ts";
import {
  createFrameService,
  type LocatedFinding,
  type Snapshot,
} from "../../server/language/frame-service.ts";
import { gate, THREE_BENTS } from "../core/checks/gate.ts";
import { VARIANTS } from "../fixtures.ts";

const URI = "file:///g.frame.yaml";
const ASKS: AcceptAbilities = { versioned: true, lazy: true, disabled: true, asks: true };
const PLAIN: AcceptAbilities = { versioned: false, lazy: false, disabled: false, asks: false };
const WRONG = readFileSync("samples/wrong-on-purpose.frame.yaml", "utf8");

/** Both posts have a thin tenon of their own entry; both piers end above the frost. */
const frame = (accept = ""): string =>
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post@A1, into: plate, tenon: {thickness: 1 in, length: 4 in}}
        other: {kind: mortise-and-tenon, of: post@A2, into: plate, tenon: {thickness: 1 in, length: 4 in}}
    `,
    piers: `
      piers:
        all: {under: post, kind: tube, diameter: 14 in, depth: 20 in, anchor: {kind: embedded-strap}}
    `,
    accept,
  });

const open = (text: string): Snapshot => createFrameService().open(URI, 1, text);
const facts = ({ findings }: Snapshot): string[] =>
  findings.map(({ finding: { check, path, places, accepted } }) =>
    JSON.stringify([check, path, places, accepted]),
  );

function located(snapshot: Snapshot, check: string, path = ""): LocatedFinding {
  const found = snapshot.findings.find(
    ({ finding }) =>
      finding.check === check && finding.path.startsWith(path) && finding.accepted === undefined,
  );
  if (!found) throw new Error(`${check} is not found: ${facts(snapshot)}`);
  return found;
}

/** The text once a finding is accepted. */
function accepted(snapshot: Snapshot, found: LocatedFinding, because: string): string {
  const answer = acceptWith(snapshot, nameOfFinding(URI, found.finding), because);
  if ("refused" in answer) throw new Error(answer.refused);
  return TextDocument.applyEdits(snapshot.document, [...answer.edits]);
}

/** What was put in, and that it is all that has changed. */
function added(before: string, after: string): string {
  let from = 0;
  while (from < before.length && before[from] === after[from]) from++;
  const rest = before.length - from;
  expect(after.slice(after.length - rest)).toBe(before.slice(from));
  return after.slice(from, after.length - rest);
}

const LISTS: readonly (readonly [string, string])[] = [
  ["no list", ""],
  ["an empty key", "accept:\n"],
  ["an inline list", `accept: [{check: joint-assumed, because: "x"}] # mine\n`],
  ["an empty inline list", "accept: []\n"],
  [
    "a block list",
    `accept:\n  - {check: joint-assumed, because: "x"}\n  - check: tenon-long\n    because: y # why\n`,
  ],
  ["an example in a comment", `# accept: [{check: post-slender, at: post@A2, because: "reviewed"}]\n`],
];

describe.each(VARIANTS)("with $name", ({ text: written }) => {
  test.each(LISTS)("%s: one place is accepted, and nothing else changes", (_list, list) => {
    const text = written(frame(list));
    const snapshot = open(text);
    const found = located(snapshot, "tenon-thin", "/joints/other");
    const after = accepted(snapshot, found, 'small "load", says: Eve #2 \\ {x}');
    const entry = added(text, after);
    expect(entry).toContain("{check: tenon-thin, at: other@A2, because: ");
    if (text.includes("\r\n")) expect(entry.replaceAll("\r\n", "")).not.toContain("\n");
    // the empty list has a finding of its own until something stands there
    const was = facts(snapshot).filter((fact) => !fact.startsWith('["wrong-shape","/accept"'));
    const { check, path, places } = found.finding;
    was[was.indexOf(JSON.stringify([check, path, places, undefined]))] = JSON.stringify([
      check,
      path,
      places,
      'small "load", says: Eve #2 \\ {x}',
    ]);
    expect(facts(open(after)).sort()).toEqual(was.sort());
  });
});

test("every finding of a frame can be accepted, one after the other", () => {
  let text = WRONG;
  const area = (snapshot: Snapshot): LocatedFinding[] =>
    snapshot.findings.filter(({ range }) => acceptActionsAt(snapshot, range, ASKS).length > 0);
  const first = open(text);
  const count = area(first).length;
  expect(count).toBeGreaterThan(10);
  for (let n = 0; n <= count; n++) {
    const snapshot = open(text);
    const [next] = snapshot.findings.filter(
      (each) =>
        each.finding.accepted === undefined &&
        acceptActionsAt(snapshot, each.range, ASKS).some(
          (a) => a.diagnostics[0]?.code === each.finding.check,
        ),
    );
    if (!next) break;
    const before = snapshot.findings.filter(({ finding }) => finding.accepted !== undefined).length;
    text = accepted(snapshot, next, "because");
    const after = open(text).findings.filter(({ finding }) => finding.accepted !== undefined).length;
    expect(after, next.finding.message).toBeGreaterThan(before);
  }
  expect(area(open(text))).toEqual([]);
  expect(open(text).findings.filter(({ finding }) => finding.check === "accept-idle")).toEqual([]);
});

describe("what the entry names", () => {
  test("the entry, where all its places have the finding", () => {
    const snapshot = open(frame());
    expect(added(frame(), accepted(snapshot, located(snapshot, "pier-above-frost"), "rock"))).toBe(
      `accept: [{check: pier-above-frost, at: all, because: "rock"}]\n`,
    );
  });

  test("each place, where others of the entry have a graver finding of the same check", () => {
    const text = gate({
      site: "site: {frost-depth: 30 in, soil: sand, ground: {1: 9 in, 2: 9 in, 3: 5 in}}\n",
      grid: THREE_BENTS,
      members: `
        members:
          post: {kind: post, section: 8x8, at: [A1, A2, A3], from: pier-top, to: plate}
          plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 3, top: eave}
      `,
    });
    const snapshot = open(text);
    const found = snapshot.findings.find(
      ({ finding }) => finding.check === "wood-near-earth" && finding.level === "warning",
    );
    expect(found?.finding.places).toEqual(["post@A2", "post@A3"]);
    const after = accepted(snapshot, found!, "x");
    expect(after).toContain('at: post@A2, because: "x"}, {check: wood-near-earth, at: post@A3,');
    const left = open(after).findings.filter(({ finding }) => finding.check === "wood-near-earth");
    expect(left.map(({ finding }) => [finding.level, finding.accepted]).sort()).toEqual([
      ["error", undefined],
      ["warning", "x"],
      ["warning", "x"],
    ]);
  });

  test("what covers more says so", () => {
    const text = frame().replaceAll("thickness: 1 in", "thickness: 9 in, width: 11 in");
    const snapshot = open(text);
    const { range } = located(snapshot, "tenon-wide", "/joints/head");
    expect(acceptActionsAt(snapshot, range, ASKS).map(({ title }) => title)).toContain(
      "Accept tenon-wide at head@A1, with a reason (covers one more finding)",
    );
  });
});

describe("what is refused", () => {
  const named = (snapshot: Snapshot, check: string) => nameOfFinding(URI, located(snapshot, check).finding);

  test("an empty reason, in words", () => {
    const snapshot = open(frame());
    for (const because of ["", "  ", "\n\t\u2028"])
      expect(acceptWith(snapshot, named(snapshot, "tenon-thin"), because)).toEqual({
        refused: expect.stringContaining("without a reason"),
      });
  });

  test("a finding that is gone, or accepted already", () => {
    const snapshot = open(frame());
    const name = named(snapshot, "tenon-thin");
    const after = accepted(snapshot, located(snapshot, "tenon-thin"), "x");
    const gone = { refused: expect.stringContaining("no longer") };
    expect(acceptWith(open(after), name, "y")).toEqual(gone);
    const elsewhere = { ...name, place: "head@B7" };
    expect(acceptWith(snapshot, elsewhere, "y")).toEqual(gone);
    const all = open(frame(`accept: [{check: tenon-thin, because: "x"}]\n`));
    expect(acceptWith(all, name, "y")).toEqual(gone);
    expect(acceptWith(open("frame: x\n"), name, "y")).toEqual(gone);
  });

  test.each([
    ["accept: reviewed\n", "a text in its place"],
    ["accept: {check: x}\n", "a map in its place"],
    ['note: "never closed\n', "an open quote above its place"],
  ])("%j: what cannot be read is left alone", (more) => {
    const snapshot = open(frame(more));
    const answer = acceptWith(snapshot, named(snapshot, "tenon-thin"), "x");
    if ("refused" in answer) expect(answer.refused).toContain("cannot be written");
    else {
      const after = TextDocument.applyEdits(snapshot.document, [...answer.edits]);
      expect(facts(open(after))).toHaveLength(facts(snapshot).length);
      expect(after).toContain(more.trim());
    }
  });

  test("slips of writing, and findings of accept itself", () => {
    const text = frame(`accept: [{check: tenon-long, because: "x"}]\nfrme: x\n`);
    const snapshot = open(text);
    for (const check of ["unknown-key", "accept-idle"]) {
      const { range } = located(snapshot, check);
      expect(acceptActionsAt(snapshot, range, ASKS)).toEqual([]);
    }
  });
});

describe("while a line is half typed", () => {
  test.each([
    "roof: {kind: gab",
    "mill: {longest-cut: 2",
    "accept: [",
    "accept:\n  - {check: tenon-thin, because",
  ])("%j at the end: it is accepted all the same, and the line stays", (line) => {
    const text = frame(line);
    const snapshot = open(text);
    const found = located(snapshot, "tenon-thin", "/joints/head");
    const after = accepted(snapshot, found, "x");
    added(text, after);
    const again = open(after).findings.filter(({ finding }) => finding.accepted === "x");
    expect(again.map(({ finding }) => finding.path)).toEqual([found.finding.path]);
  });
});

test("behind a quote that is never closed nothing can be written, and it says so", () => {
  const snapshot = open(frame('frame: "'));
  const name = nameOfFinding(URI, located(snapshot, "tenon-thin").finding);
  expect(acceptWith(snapshot, name, "x")).toEqual({ refused: expect.stringContaining("mend that first") });
});

describe("the code action", () => {
  test("asks for the reason where the editor can", () => {
    const snapshot = open(frame());
    const { range, finding } = located(snapshot, "tenon-thin", "/joints/head");
    expect(acceptActionsAt(snapshot, range, ASKS)).toMatchObject([
      {
        title: "Accept tenon-thin at head@A1, with a reason",
        kind: "quickfix",
        diagnostics: [{ code: "tenon-thin" }],
        command: {
          command: "bentwright.acceptFinding",
          arguments: [{ uri: URI, check: "tenon-thin", path: finding.path, place: "head@A1" }],
        },
      },
    ]);
  });

  test("elsewhere writes an empty reason, which accepts nothing and is a finding until it is written", () => {
    const text = frame();
    const snapshot = open(text);
    const { range } = located(snapshot, "tenon-thin", "/joints/head");
    const [action] = acceptActionsAt(snapshot, range, PLAIN);
    const edits = action?.edit && "changes" in action.edit ? action.edit.changes[URI] : undefined;
    const after = TextDocument.applyEdits(snapshot.document, edits ?? []);
    expect(added(text, after)).toBe(`accept: [{check: tenon-thin, at: head@A1, because: ""}]\n`);
    const left = open(after);
    expect(left.findings.filter(({ finding }) => finding.accepted !== undefined)).toEqual([]);
    expect(located(left, "wrong-shape").finding).toMatchObject({
      path: "/accept/0/because",
      message: "Nothing stands here, and a reason is expected. Write it behind the colon.",
    });
    expect(
      open(after.replace('because: ""', 'because: "x"')).findings.map(({ finding }) => finding.check),
    ).not.toContain("wrong-shape");
  });
});
