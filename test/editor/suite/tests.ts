/** What a user does with a frame, through the editor's own interface. */
import assert from "node:assert/strict";
import * as vscode from "vscode";
import { codeOf, FrameEditor, quickFixes, until } from "./frame-editor.ts";

const WRONG = "wrong-on-purpose.frame.yaml";
const ARCH = "garden-arch.frame.yaml";
const PAVILION = "cider-press-pavilion.frame.yaml";
const TIE_SECTION = /kind: tie, section: *([^,}\n]+)/;
const TENON_THICKNESS = /tenon:\s*\{?\s*thickness: *([^,}\n#]*[^,}\n# ])/;
const JOINT_NAME = /^joints:\n(?: *#.*\n)* +([a-z0-9-]+):/m;

const isPreview = ({ input }: vscode.Tab) =>
  input instanceof vscode.TabInputWebview && input.viewType.endsWith("bentwright.elevation");
const previews = () => vscode.window.tabGroups.all.flatMap(({ tabs }) => tabs).filter(isPreview);

/** An error or a warning: a note leaves a frame clean. */
const isDefect = ({ severity }: vscode.Diagnostic) => severity <= vscode.DiagnosticSeverity.Warning;
const isThinTenon = ({ code }: vscode.Diagnostic) => codeOf(code) === "tenon-thin";

const isUnknownKey = ({ code }: vscode.Diagnostic) => codeOf(code) === "unknown-key";
const isOverstressed = ({ code }: vscode.Diagnostic) => codeOf(code) === "timber-overstressed";

/** Runs it with one of our settings off, and puts the setting back. */
async function without(setting: string, run: () => Promise<void>): Promise<void> {
  const settings = () => vscode.workspace.getConfiguration("bentwright");
  await settings().update(setting, false, vscode.ConfigurationTarget.Global);
  try {
    await run();
  } finally {
    await settings().update(setting, undefined, vscode.ConfigurationTarget.Global);
  }
}

export const tests: Readonly<Record<string, () => Promise<void>>> = {
  "a sound sample opens as a frame, is checked, and is clean": async () => {
    const arch = await FrameEditor.open(ARCH);
    assert.equal(arch.document.languageId, "bentwright-frame");
    await arch.checked();
    assert.deepEqual(
      arch.findings.filter(isDefect).map(({ message }) => message),
      [],
    );
  },

  "a tenon made too thin is marked at its value, and the mark goes with an undo": async () => {
    const arch = await FrameEditor.open(ARCH);
    await arch.checked();
    const value = arch.find(TENON_THICKNESS);
    await arch.replace(value, "3/4 in");
    await arch.findingsAre((findings) => findings.some(isThinTenon), "a finding of tenon-thin");
    const thin = arch.findings.filter(isThinTenon);
    assert.deepEqual(
      thin.map(({ range }) => arch.document.getText(range)),
      ["3/4 in"],
    );
    assert.deepEqual(thin[0]?.range.start, value.start);
    await arch.undo();
    await arch.findingsAre((findings) => !findings.some(isDefect), "no finding");
    assert.ok(await arch.isAsSaved());
  },

  "a joint tells its cut sizes when it is hovered": async () => {
    const arch = await FrameEditor.open(ARCH);
    await arch.checked();
    const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(
      "vscode.executeHoverProvider",
      arch.uri,
      arch.find(JOINT_NAME).start,
    );
    const text = hovers
      .flatMap(({ contents }) => contents)
      .map((content) => (typeof content === "string" ? content : content.value))
      .join("\n");
    assert.match(text, /tenon/i);
    assert.match(text, /mortise/i);
    assert.match(text, /\d+ in\b|\d+\/\d+ in\b/);
  },

  "a quick fix puts a slip right": async () => {
    const arch = await FrameEditor.open(ARCH);
    await arch.checked();
    await arch.replace(arch.find(/(overhang):/), "overhnag");
    await arch.findingsAre((findings) => findings.some(isUnknownKey), "a finding of unknown-key");
    const fixes = await quickFixes(arch, arch.find(/(overhnag):/));
    assert.equal(fixes.length, 1);
    assert.ok(fixes[0]?.edit && (await vscode.workspace.applyEdit(fixes[0].edit)));
    await arch.findingsAre((findings) => !findings.some(isDefect), "no finding");
    assert.ok(await arch.isAsSaved());
  },

  "a tie that is too small is made the smallest that passes": async () => {
    const pavilion = await FrameEditor.open(PAVILION);
    await pavilion.checked();
    await pavilion.replace(pavilion.find(TIE_SECTION), "6x6");
    await pavilion.findingsAre(
      (findings) => findings.some(isOverstressed),
      "a finding of timber-overstressed",
    );
    const fixes = await quickFixes(pavilion, pavilion.find(TIE_SECTION));
    const size = fixes.find(({ title }) => title.startsWith("Size this timber"));
    assert.ok(size?.edit && (await vscode.workspace.applyEdit(size.edit)), JSON.stringify(fixes));
    assert.match(pavilion.document.getText(pavilion.find(TIE_SECTION)), /^7x\d+$/);
    await pavilion.findingsAre((findings) => !findings.some(isOverstressed), "no timber-overstressed");
  },

  "a frame that the user calls plain YAML is checked all the same": async () => {
    const arch = await FrameEditor.open(ARCH);
    await arch.checked();
    await vscode.languages.setTextDocumentLanguage(arch.document, "yaml");
    await arch.replace(arch.find(TENON_THICKNESS), "3/4 in");
    await arch.findingsAre((findings) => findings.some(isThinTenon), "a finding of tenon-thin");
  },

  "other YAML is left alone": async () => {
    const document = await vscode.workspace.openTextDocument({
      language: "yaml",
      content: "tenon: 3/4 inn\n",
    });
    await vscode.window.showTextDocument(document);
    const arch = await FrameEditor.open(ARCH);
    await arch.checked();
    assert.deepEqual(vscode.languages.getDiagnostics(document.uri), []);
  },

  "settings take away what stands in the text, and bring it back, at once": async () => {
    const arch = await FrameEditor.open(ARCH);
    await arch.checked();
    const whole = new vscode.Range(0, 0, arch.document.lineCount, 0);
    const ask = async (what: string, ...args: unknown[]) =>
      (await vscode.commands.executeCommand<unknown[]>(`vscode.execute${what}Provider`, arch.uri, ...args))
        .length;
    const hints = () => ask("InlayHint", whole);
    const lenses = () => ask("CodeLens");
    assert.ok((await hints()) > 0);
    assert.ok((await lenses()) > 0);
    await without("text.sectionUse", async () => assert.equal(await hints(), 0));
    await without("text.stickCounts", async () => assert.equal(await lenses(), 0));
    assert.ok((await hints()) > 0);
    assert.ok((await lenses()) > 0);
  },

  "a setting takes notes away, and brings them back without a new check": async () => {
    const wrong = await FrameEditor.open(WRONG);
    const hasNotes = (findings: vscode.Diagnostic[]) => findings.some((finding) => !isDefect(finding));
    await wrong.findingsAre(hasNotes, "a note");
    const all = wrong.findings.length;
    await without("text.notes", async () => {
      await wrong.findingsAre((findings) => !hasNotes(findings), "no note");
      assert.ok(wrong.findings.some(isDefect));
    });
    await wrong.findingsAre(hasNotes, "the note again");
    assert.equal(wrong.findings.length, all);
  },

  "the elevation opens beside the text, once for a document": async () => {
    const arch = await FrameEditor.open(ARCH);
    await arch.checked();
    await vscode.commands.executeCommand("bentwright.openPreview");
    await until(vscode.window.tabGroups.onDidChangeTabs, () => previews().length === 1, "the preview");
    assert.match(previews()[0]?.label ?? "", /garden-arch\.frame\.yaml/);
    assert.notEqual(previews()[0]?.group.viewColumn, vscode.ViewColumn.One);
    await vscode.window.showTextDocument(arch.document, vscode.ViewColumn.One);
    await vscode.commands.executeCommand("bentwright.openPreview", arch.uri);
    assert.equal(previews().length, 1);
  },

  "the server can be restarted and checks again": async () => {
    const arch = await FrameEditor.open(ARCH);
    await arch.checked();
    await arch.replace(arch.find(TENON_THICKNESS), "3/4 in");
    await arch.findingsAre((findings) => findings.some(isThinTenon), "a finding of tenon-thin");
    const gone = until(
      vscode.languages.onDidChangeDiagnostics,
      () => arch.findings.length === 0,
      "old findings to go",
    );
    await vscode.commands.executeCommand("bentwright.restartServer");
    await gone;
    await arch.findingsAre((findings) => findings.some(isThinTenon), "a finding of tenon-thin");
  },
};
