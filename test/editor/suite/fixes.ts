/** Quick fixes in the editor: a slip is made, its fix chosen at the finding, and the text is what it should be. */
import assert from "node:assert/strict";
import * as vscode from "vscode";
import { codeOf, FrameEditor, quickFixes } from "./frame-editor.ts";

const ARCH = "garden-arch.frame.yaml";

interface Slip {
  readonly check: string;
  /** what is written otherwise: the pattern's first group */
  readonly from: RegExp;
  readonly to: string;
  /** what the fix makes of it; left out where the text is as it was */
  readonly mended?: RegExp;
}

const SLIPS: Readonly<Record<string, Slip>> = {
  "a misspelt key": { check: "unknown-key", from: /(frost-depth):/, to: "frost-dept" },
  "a misspelt choice": { check: "wrong-value", from: /soil: (sand)/, to: "snad" },
  "a misspelt wood": { check: "unknown-id", from: /(northern-white-cedar)/, to: "northern-white-ceder" },
  "a misspelt name": { check: "unknown-id", from: /of: (tie), into: post/, to: "tei" },
  "a missing space": { check: "missing-separator", from: /walls: \{(A: 0),/, to: "A:0" },
  "a missing bracket": { check: "unclosed-bracket", from: /walls: \{A: 0, B: 5 ft(\})/, to: "" },
  "a thin tenon": { check: "tenon-thin", from: /post-head:.*thickness: (1 1\/2 in), length/, to: "1 in" },
  "a missing grade": {
    check: "grade-assumed",
    from: /northern-white-cedar(, grade: no-1)/,
    to: "",
    mended: /grade: no-2/,
  },
  "a joint that nobody named": {
    check: "joint-assumed",
    from: /^( {2}tie-end:.*\n)/m,
    to: "",
    mended: /kind: mortise-and-tenon, of: tie, into: post/,
  },
};

/** What mends the finding, not what accepts it. */
const mends = ({ title }: vscode.CodeAction): boolean => !title.startsWith("Accept");

async function mend({ check, from, to, mended }: Slip): Promise<void> {
  const arch = await FrameEditor.open(ARCH);
  await arch.checked();
  await arch.replace(arch.find(from), to);
  const isIt = ({ code }: vscode.Diagnostic): boolean => codeOf(code) === check;
  await arch.findingsAre((findings) => findings.some(isIt), `a finding of ${check}`);
  const found = arch.findings.find(isIt);
  assert.ok(found);
  const fixes = (await quickFixes(arch, found.range)).filter(mends);
  assert.ok(fixes[0]?.edit, `no fix of ${check}`);
  assert.ok(await vscode.workspace.applyEdit(fixes[0].edit));
  await arch.findingsAre((findings) => !findings.some(isIt), `no finding of ${check}`);
  if (mended === undefined) assert.ok(await arch.isAsSaved(), arch.document.getText());
  else assert.match(arch.document.getText(), mended);
}

export const fixTests: Readonly<Record<string, () => Promise<void>>> = Object.fromEntries(
  Object.entries(SLIPS).map(([name, slip]) => [`${name} is mended by its quick fix`, () => mend(slip)]),
);
