/**
 * Accepting a finding with a reason: an entry of `accept` at the narrowest place that covers it. Our own client asks for
 * the reason first; any other gets the entry with an empty one, which accepts nothing until it is written.
 */
import same from "fast-deep-equal/es6/index.js";
import { CodeActionKind, type Command, type Range, type TextEdit } from "vscode-languageserver-types";
import { type Acceptance, acceptanceOf } from "../core/checks/acceptance.ts";
import { BESIDE_CHECKS } from "../core/checks/accepted.ts";
import type { Edit, Finding } from "../core/checks/check.ts";
import type { Frame } from "../core/frame/frame.ts";
import { toTextEdit } from "../document/edits.ts";
import { type Reading, readFrame } from "../document/read.ts";
import { type FindingName, metaOf, nameOfFinding } from "./check-page.ts";
import { diagnosticOf, type FrameDiagnostic } from "./diagnostics.ts";
import type { Snapshot } from "./frame-service.ts";
import { editOf, type FixAbilities, type FixEdit, textEditsOf, touches } from "./quick-fixes.ts";

/** A command of our client, which asks for the reason. */
const ACCEPT_COMMAND = "bentwright.acceptFinding";

/** What the editor can do here. */
export interface AcceptAbilities extends FixAbilities {
  /** it asks for the reason itself */
  readonly asks: boolean;
}

/** A code action as every client reads it. */
export interface AcceptAction {
  readonly title: string;
  readonly kind: typeof CodeActionKind.QuickFix;
  readonly diagnostics: FrameDiagnostic[];
  readonly command?: Command;
  readonly edit?: FixEdit;
}

/** Slips of writing are mended; what stands in the frame by choice can be accepted. */
export function canBeAccepted({ check, accepted }: Finding): boolean {
  if (accepted !== undefined || BESIDE_CHECKS.some(({ id }) => id === check)) return false;
  const area = metaOf(check)?.area;
  return area !== undefined && area !== "file";
}

/** One action for every finding that touches the range and can be accepted, in the order of the text. */
export function acceptActionsAt(snapshot: Snapshot, range: Range, able: AcceptAbilities): AcceptAction[] {
  return snapshot.findings.flatMap((located): AcceptAction[] => {
    const { finding } = located;
    if (!canBeAccepted(finding) || !touches(located.range, range)) return [];
    const acceptance = acceptanceIn(snapshot, finding);
    const action = {
      title: titleOf(finding, acceptance, snapshot),
      kind: CodeActionKind.QuickFix,
      diagnostics: [diagnosticOf(snapshot.uri, located, able.linkOf)],
    };
    if (able.asks) {
      const named = { ...nameOfFinding(snapshot.uri, finding), title: action.title };
      const command = { title: action.title, command: ACCEPT_COMMAND, arguments: [named] };
      return [{ ...action, command }];
    }
    const edits = entryEdits(snapshot.reading, finding, acceptance, "");
    const edit = edits && editOf(snapshot, edits, able);
    return edit ? [{ ...action, edit }] : [];
  });
}

function acceptanceIn({ findings }: Snapshot, finding: Finding): Acceptance {
  return acceptanceOf(
    finding,
    findings.map((located) => located.finding),
  );
}

/** Places that a title names before it only counts them. */
const NAMED = 3;

function titleOf({ check }: Finding, { at, others }: Acceptance, { say }: Snapshot): string {
  const places = at.filter((one) => one !== undefined);
  const title =
    places.length === 0
      ? say.text("Accept {check} everywhere, with a reason", { check })
      : places.length <= NAMED
        ? say.text("Accept {check} at {places}, with a reason", { check, places: say.list(places) })
        : say.text("Accept {check} at {count} places, with a reason", { check, count: places.length });
  if (others === 0) return title;
  return others === 1
    ? say.text("{title} (covers one more finding)", { title })
    : say.text("{title} (covers {count} more findings)", { title, count: others });
}

/** The edit that accepts a finding, or why there is none, for the user to read. */
export type Accepting = { readonly edits: readonly TextEdit[] } | { readonly refused: string };

/**
 * Accepts a finding of the newest text.
 * @param because as the user wrote it
 */
export function acceptWith(snapshot: Snapshot, name: FindingName, because: string): Accepting {
  const { say } = snapshot;
  const reason = oneLine(because);
  if (reason === "")
    return { refused: say.text("Nothing is accepted without a reason; the file is as it was.") };
  const finding = openFinding(snapshot, name);
  if (!finding || !canBeAccepted(finding))
    return { refused: say.text("This finding is no longer in the file, so there is nothing to accept.") };
  const edits = entryEdits(snapshot.reading, finding, acceptanceIn(snapshot, finding), reason);
  const changes = edits && textEditsOf(snapshot, edits);
  if (changes) return { edits: changes };
  return {
    refused: say.text(
      "The entry cannot be written while “accept” or the end of the file cannot be read; mend that first.",
    ),
  };
}

/** The very finding: another place of the same path may have been accepted, or be fine. */
function openFinding(
  { findings }: Snapshot,
  { check, path, place }: Omit<FindingName, "uri">,
): Finding | undefined {
  return findings.find(
    ({ finding }) =>
      finding.accepted === undefined &&
      finding.check === check &&
      finding.path === path &&
      (place === undefined || finding.places.includes(place)),
  )?.finding;
}

/** Blanks of every kind, and what nobody sees, become single blanks: the reason stands in quotes on one line. */
function oneLine(text: string): string {
  return text.replace(/[\s\p{Cc}\p{Zl}\p{Zp}\p{Cs}\uFEFF]+/gu, " ").trim();
}

/**
 * The edits that add the entries in the hand the file is written in.
 * @returns undefined where the text with them would not read as the frame before and these entries
 */
function entryEdits(
  reading: Reading | undefined,
  finding: Finding,
  { at }: Acceptance,
  because: string,
): Edit[] | undefined {
  // an empty reason accepts nothing yet: whether the entries can be read is tried with another
  const tried = reading && writeEntries(reading, finding.check, at, because || "x");
  if (!reading || !tried || !keepsFrame(reading, tried, at.length)) return undefined;
  return writeEntries(reading, finding.check, at, because);
}

function writeEntries(
  { index }: Reading,
  check: string,
  at: Acceptance["at"],
  because: string,
): Edit[] | undefined {
  const entries = at.map((one) => {
    const place = one === undefined ? "" : ` at: ${placeText(one)},`;
    return `{check: ${check},${place} because: ${JSON.stringify(because)}}`;
  });
  const list = index.node("/accept");
  const append = (text: string): Edit => ({ kind: "add", path: "/accept", key: "-", text });
  if (list?.kind === "list") return list.flow ? [append(entries.join(", "))] : entries.map(append);
  if (list !== undefined && (list.kind !== "blank" || list.lost)) return undefined;
  return [{ kind: "replace", path: "/accept", text: `[${entries.join(", ")}]` }];
}

const placeText = (place: string): string => (/^[\w.@-]+$/.test(place) ? place : JSON.stringify(place));

/** Whether the edited text reads as the same frame with so many more accepted entries. */
function keepsFrame(reading: Reading, edits: readonly Edit[], more: number): boolean {
  let text = reading.text;
  const changes = edits.map((edit) => toTextEdit(reading, edit));
  for (const change of changes.toReversed()) {
    if (!change) return false;
    text = text.slice(0, change.start) + change.newText + text.slice(change.end);
  }
  const after = readFrame(text).frame;
  const before = reading.frame;
  return (
    after.accepted.length === before.accepted.length + more &&
    same(after.accepted.slice(0, before.accepted.length), before.accepted) &&
    same(withoutAccepted(after), withoutAccepted(before))
  );
}

const withoutAccepted = (frame: Frame): Frame => ({ ...frame, accepted: [] });
