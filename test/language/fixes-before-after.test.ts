/** Quick fixes as the user sees them: the text before and after, nothing else of it changed, in four ways of writing. */
import { describe, expect, test } from "vitest";
import { TextDocument } from "vscode-languageserver-textdocument";
import { createFrameService } from "../../server/language/frame-service.ts";
import { textEditsOf } from "../../server/language/quick-fixes.ts";
import { gate } from "../core/checks/gate.ts";
import { VARIANTS } from "../fixtures.ts";

/** The check, a piece of the clean frame, what is written in its place, and what the fix makes of that. */
const SLIPS: readonly (readonly [string, string, string, string])[] = [
  ["unknown-key", "soil: sand", "sol: sand", "soil: sand"],
  ["wrong-value", "soil: sand", "soil: snad", "soil: sand"],
  ["unknown-id", "eastern-white-pine", "eastern-white-pin", "eastern-white-pine"],
  ["unknown-id", "to: plate}", "to: plat}", "to: plate}"],
  ["missing-separator", "A: 0,", "A:0,", "A: 0,"],
  ["missing-separator", "section: 8x8, at", "section 8x8, at", "section: 8x8, at"],
  ["missing-separator", "at: [A1, A2]", "at: A1, A2", "at: [A1, A2]"],
  ["missing-separator", "kind: post, section", "kind: post section", "kind: post, section"],
  ["unclosed-bracket", "{A: 0, B: 10 ft}", "{A: 0, B: 10 ft", "{A: 0, B: 10 ft}"],
  [
    "unreadable-quantity",
    "site: {frost-depth: 30 in, soil: sand}",
    "site:\n  frost-depth: 30,5 in # asked\n  soil: sand",
    "site:\n  frost-depth: 30.5 in # asked\n  soil: sand",
  ],
  ["grade-assumed", ", grade: no-1}", "}", ", grade: no-2}"],
  ["tenon-thin", "thickness: 2 in", "thickness: 1 in", "thickness: 1 1/2 in"],
  [
    "joint-assumed",
    gate({}).slice(gate({}).indexOf("joints:"), gate({}).indexOf("piers:")),
    "joints: {} # none yet\n",
    "joints: {post-to-plate: {kind: mortise-and-tenon, of: post, into: plate}} # none yet\n",
  ],
  [
    "accept-idle",
    "piers:",
    "accept: [{check: tenon-thn, because: x}]\npiers:",
    "accept: [{check: tenon-thin, because: x}]\npiers:",
  ],
];

describe.each(VARIANTS)("with $name", ({ text: written }) => {
  test.each(SLIPS)("%s: %j written as %j becomes %j", (check, right, wrong, mended) => {
    const clean = gate({});
    expect(clean).toContain(right);
    const [before, after] = [wrong, mended].map((piece) => written(clean.replace(right, piece)));
    const snapshot = createFrameService().open("file:///f.frame.yaml", 1, before ?? "");
    const found = snapshot.findings.find(({ finding }) => finding.check === check);
    const [fix] = found?.finding.fixes() ?? [];
    const edits = textEditsOf(snapshot, fix?.edits ?? []);
    expect(edits, `${check} has a fix`).toBeDefined();
    const text = TextDocument.applyEdits(snapshot.document, edits ?? []);
    expect(text).toBe(after);
    const left = createFrameService().open("file:///f.frame.yaml", 1, text).findings;
    // the misspelt entry now names a check that has nothing to accept
    if (check !== "accept-idle") expect(left.map(({ finding }) => finding.check)).not.toContain(check);
  });
});
