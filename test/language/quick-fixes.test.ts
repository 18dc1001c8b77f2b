/** Quick fixes at the cursor: written into the text they mend what they were offered for. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { TextDocument } from "vscode-languageserver-textdocument";
import { createFrameService, type Snapshot } from "../../server/language/frame-service.ts";
import {
  type FixAbilities,
  type FixEdit,
  type QuickFix,
  quickFixesAt,
  resolveSize,
  sizeRequestOf,
  wantsQuickFixes,
} from "../../server/language/quick-fixes.ts";
import { createSizer } from "../../server/language/sizer.ts";
import { readFixture } from "../fixtures.ts";
import { SHED } from "../shed.ts";

const URI = "file:///f.frame.yaml";
const PAVILION = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
const EDITOR: FixAbilities = { versioned: true, lazy: true, disabled: true };
const PLAIN: FixAbilities = { versioned: false, lazy: false, disabled: false };
const always = (): boolean => true;

interface At {
  readonly snapshot: Snapshot;
  readonly fixes: QuickFix[];
}

/** @param marked the text, `$0` at the cursor */
async function at(marked: string, able = EDITOR, sizer = createSizer(), version = 3): Promise<At> {
  const { text, cursor } = readFixture(marked);
  if (!cursor) throw new Error("no cursor");
  const snapshot = createFrameService().open(URI, version, text);
  const range = { start: cursor, end: cursor };
  return { snapshot, fixes: await quickFixesAt(snapshot, range, sizer, able, always) };
}

function applied({ document }: Snapshot, edit: FixEdit | undefined): string {
  if (!edit) throw new Error("no edit");
  const edits = "changes" in edit ? edit.changes[URI] : edit.documentChanges[0]?.edits;
  return TextDocument.applyEdits(document, edits ?? []);
}

const codes = (text: string): string[] =>
  createFrameService()
    .open(URI, 1, text)
    .findings.map(({ finding }) => finding.check);

describe("the fixes of checks", () => {
  test("one that writes a joint", async () => {
    const { snapshot, fixes } = await at(
      SHED.replace(/ {2}tie-end: .*\n/, "").replace("  tie: {", "  t$0ie: {"),
    );
    const fix = fixes.find(({ diagnostics }) => diagnostics[0]?.code === "joint-assumed");
    expect(fix).toMatchObject({
      title: "Write this joint into the file",
      kind: "quickfix",
      diagnostics: [{ code: "joint-assumed", severity: 3 }],
    });
    expect(applied(snapshot, fix?.edit)).toContain(
      "tie-to-post: {kind: mortise-and-tenon, of: tie, into: post}",
    );
  });

  test("one that mends a misspelt key, for the version that was read", async () => {
    const { snapshot, fixes } = await at(SHED.replace("overhang: 12 in", "over$0hnag: 12 in"));
    const [fix] = fixes;
    expect(fix?.edit).toEqual({
      documentChanges: [{ textDocument: { uri: URI, version: 3 }, edits: [expect.anything()] }],
    });
    expect(applied(snapshot, fix?.edit)).toBe(SHED);
  });

  test("an editor without versions gets plain changes", async () => {
    const { snapshot, fixes } = await at(SHED.replace("overhang: 12 in", "over$0hnag: 12 in"), PLAIN);
    expect(fixes[0]?.edit).toEqual({ changes: { [URI]: [expect.anything()] } });
    expect(applied(snapshot, fixes[0]?.edit)).toBe(SHED);
  });

  test("right behind the value too, but not elsewhere on the line", async () => {
    const bad = SHED.replace("overhang: 12 in", "overhnag: 12 in");
    expect((await at(bad.replace("overhnag", "overhnag$0"))).fixes).toHaveLength(1);
    expect((await at(bad.replace("overhnag: 12", "overhnag: $012"))).fixes).toEqual([]);
    expect((await at(bad.replace("walls: [A, B], from", "walls: [A$0, B], from"))).fixes).toEqual([]);
  });

  test("none for a finding that the file accepts", async () => {
    const text = PAVILION.replace("kind: tie, section: 8x12", "kind: tie, section: 6$0x6");
    expect((await at(text)).fixes).not.toEqual([]);
    const accepted = `${text}\naccept: [{check: timber-overstressed, because: "reviewed"}]\n`;
    expect((await at(accepted)).fixes).toEqual([]);
  });

  test("by the kinds that are asked for", () => {
    expect(wantsQuickFixes(undefined)).toBe(true);
    expect(wantsQuickFixes([""])).toBe(true);
    expect(wantsQuickFixes(["refactor", "quickfix"])).toBe(true);
    expect(wantsQuickFixes(["source.organizeImports"])).toBe(false);
    expect(wantsQuickFixes([])).toBe(false);
  });
});

describe("size this timber", () => {
  const SIZED = /^Make tie 7 × (\d+) in: smallest that passes$/;
  const WEAK = PAVILION.replace("kind: tie, section: 8x12", "kind: tie, section: 6$0x6");

  test("is listed at once and worked out when it is chosen", async () => {
    const sizer = createSizer();
    const { snapshot, fixes } = await at(WEAK, EDITOR, sizer);
    const [fix] = fixes;
    expect(fixes).toHaveLength(1);
    expect(fix).toMatchObject({
      title: "Size this timber: find the smallest tie that passes",
      diagnostics: [{ code: "timber-overstressed" }],
      data: { uri: URI, version: 3, check: "timber-overstressed", path: "/members/tie/section" },
    });
    expect(fix?.edit).toBeUndefined();
    const request = sizeRequestOf(fix ?? {});
    const resolved = request && (await resolveSize(request, snapshot, sizer, EDITOR, always));
    if (!resolved || "reason" in resolved) throw new Error("no size");
    const depth = SIZED.exec(resolved.title)?.[1];
    expect(depth, resolved.title).toBeDefined();
    const mended = applied(snapshot, resolved.edit);
    expect(mended).toBe(PAVILION.replace("kind: tie, section: 8x12", `kind: tie, section: 7x${depth}`));
    expect(codes(mended)).not.toContain("timber-overstressed");
    // from then on the list has the result
    const cursor = snapshot.document.positionAt(snapshot.document.getText().indexOf("6x6"));
    const again = await quickFixesAt(snapshot, { start: cursor, end: cursor }, sizer, EDITOR, always);
    expect(again[0]).toMatchObject({ title: resolved.title, edit: resolved.edit });
  });

  test("is worked out at once for an editor that cannot ask later", async () => {
    const { snapshot, fixes } = await at(WEAK, PLAIN);
    expect(fixes).toHaveLength(1);
    const depth = SIZED.exec(fixes[0]?.title ?? "")?.[1];
    expect(applied(snapshot, fixes[0]?.edit)).toContain(`kind: tie, section: 7x${depth},`);
  });

  test("says why there is none", async () => {
    const short = WEAK.replace("longest-cut: 21 ft", "longest-cut: 10 ft");
    const sizer = createSizer();
    const { snapshot, fixes } = await at(short, EDITOR, sizer);
    const request = sizeRequestOf(fixes[0] ?? {});
    expect(request && (await resolveSize(request, snapshot, sizer, EDITOR, always))).toEqual({
      reason: "A tie that is large enough would still be refused: longer-than-mill",
    });
    const { fixes: known } = await at(short, { ...EDITOR, lazy: false });
    expect(known).toMatchObject([
      { title: fixes[0]?.title, disabled: { reason: expect.stringContaining("longer-than-mill") } },
    ]);
    expect((await at(short, PLAIN)).fixes).toEqual([]);
  });

  test("stops when it is no longer wanted, and nothing is kept of it", async () => {
    const sizer = createSizer();
    const { snapshot, fixes } = await at(WEAK, EDITOR, sizer);
    const request = sizeRequestOf(fixes[0] ?? {});
    let asked = 0;
    const wanted = (): boolean => ++asked < 2;
    expect(request && (await resolveSize(request, snapshot, sizer, EDITOR, wanted))).toBeUndefined();
    expect(asked).toBe(2);
    const tie = snapshot.findings.find(({ finding }) => finding.check === "timber-overstressed");
    expect(tie && sizer.known(snapshot, tie.finding)).toBeUndefined();
  });

  test("an equal frame has the answer already", async () => {
    const sizer = createSizer();
    const { text, cursor } = readFixture(WEAK);
    const service = createFrameService();
    const range = { start: cursor!, end: cursor! };
    const first = service.open(URI, 1, text);
    await quickFixesAt(first, range, sizer, PLAIN, always);
    const second = service.open(URI, 2, `${text}# a word more\n`);
    expect(second.findings.some(({ finding }) => sizer.known(second, finding))).toBe(true);
    const third = service.open(URI, 3, text.replace("ground: 45 psf", "ground: 46 psf"));
    expect(third.findings.some(({ finding }) => sizer.known(third, finding))).toBe(false);
  });

  test("in millimetres, and for a frame that writes nominal sizes", async () => {
    const shelter = readFileSync("samples/kayak-shelter.frame.yaml", "utf8");
    const { fixes } = await at(shelter.replace("section: 50x150", "section: 50$0x75"), PLAIN);
    expect(fixes[0]?.title).toMatch(/^Make rafter 50 × (100|125|150) mm: smallest that passes$/);
    const { snapshot, fixes: planed } = await at(
      PAVILION.replace("section: 3x7", "section: 2x3$0").replace(
        "dry, surface: rough",
        "dry, surface: planed",
      ),
      PLAIN,
    );
    const [fix] = planed.filter(({ diagnostics }) => diagnostics[0]?.code === "rafter-overspanned");
    expect(fix?.title).toMatch(/^Make rafter 2 × (6|8) nominal: smallest that passes$/);
    expect(applied(snapshot, fix?.edit)).toMatch(/rafters: \{section: 2x(6|8),/);
  });

  test("is not offered while a line is half typed", async () => {
    const { fixes } = await at(WEAK.replace("kind: plate, section: 8x9", "kind: plate, section: 8x"));
    expect(fixes).toEqual([]);
  });
});
