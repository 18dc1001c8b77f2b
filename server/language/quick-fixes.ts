/**
 * Quick fixes at a range: those that the checks offer themselves, and "size this timber". A fix belongs to a finding by
 * its check, its path and its place, never by its words.
 */
import { CodeActionKind, type Range, type TextEdit } from "vscode-languageserver-types";
import type { Edit } from "../core/checks/check.ts";
import type { Sizing } from "../core/sizing/size-timber.ts";
import { toTextEdit } from "../document/edits.ts";
import { diagnosticOf, type FrameDiagnostic, type LinkOf } from "./diagnostics.ts";
import type { LocatedFinding, Snapshot } from "./frame-service.ts";
import type { Sizer } from "./sizer.ts";
import { noSizeWords, sizedWords, sizeThisWords } from "./sizing-words.ts";

/** What the editor can do with an answer. */
export interface FixAbilities {
  /** edits that name the version they are for */
  readonly versioned: boolean;
  /** edits may follow when the user has chosen */
  readonly lazy: boolean;
  /** fixes that cannot be had, with the reason */
  readonly disabled: boolean;
  /** what its diagnostics link to */
  readonly linkOf?: LinkOf | undefined;
}

/** What stands in `data` of a fix whose edit follows. */
export interface SizeRequest {
  readonly uri: string;
  readonly version: number;
  readonly check: string;
  readonly path: string;
}

/** Changes of the open document, for one version of it where the editor knows versions. */
export type FixEdit =
  | {
      readonly documentChanges: {
        readonly textDocument: { readonly uri: string; readonly version: number };
        readonly edits: TextEdit[];
      }[];
    }
  | { readonly changes: { readonly [uri: string]: TextEdit[] } };

/** A code action whose diagnostics have plain messages, as every client reads it. */
export interface QuickFix {
  readonly title: string;
  readonly kind: typeof CodeActionKind.QuickFix;
  /** the finding that it mends */
  readonly diagnostics: FrameDiagnostic[];
  readonly edit?: FixEdit;
  readonly disabled?: { readonly reason: string };
  readonly data?: SizeRequest;
}

/** @param only the kinds that the editor asks for; left out: all */
export function wantsQuickFixes(only: readonly string[] | undefined): boolean {
  return only === undefined || only.some((kind) => kind === "" || kind === CodeActionKind.QuickFix);
}

/**
 * The fixes of every finding that touches the range, in the order of the text. Sizes are worked out here only where the
 * editor cannot ask for them later.
 * @param wanted asked while sizes are worked out
 * @returns nothing once it is not wanted
 */
export async function quickFixesAt(
  snapshot: Snapshot,
  range: Range,
  sizer: Sizer,
  able: FixAbilities,
  wanted: () => boolean,
): Promise<QuickFix[]> {
  const actions: QuickFix[] = [];
  for (const located of snapshot.findings) {
    const { finding } = located;
    if (finding.accepted !== undefined || !touches(located.range, range)) continue;
    for (const { title, edits } of finding.fixes()) {
      const edit = editOf(snapshot, edits, able);
      if (edit) actions.push({ ...fixOf(snapshot, located, able), title, edit });
    }
    const entry = sizer.entryOf(snapshot, finding);
    if (!entry) continue;
    if (!able.lazy) await sizer.find(snapshot, finding, wanted);
    if (!wanted()) return [];
    actions.push(...sizeFix(snapshot, located, entry.name, sizer, able));
  }
  return actions;
}

/** The size fix as far as it is known: with its edit, as one that cannot be had, or as one to be worked out. */
function sizeFix(
  snapshot: Snapshot,
  located: LocatedFinding,
  entry: string,
  sizer: Sizer,
  able: FixAbilities,
): QuickFix[] {
  const { say } = snapshot;
  const { finding } = located;
  const fix = fixOf(snapshot, located, able);
  const title = sizeThisWords(entry, say);
  const sizing = sizer.known(snapshot, finding);
  if (sizing?.kind === "sized") return [{ ...fix, ...sized(snapshot, sizing, able) }];
  if (sizing) return able.disabled ? [{ ...fix, title, disabled: { reason: noSizeWords(sizing, say) } }] : [];
  if (!able.lazy) return [];
  const { uri, version } = snapshot;
  const data: SizeRequest = { uri, version, check: finding.check, path: finding.path };
  return [{ ...fix, title, data }];
}

/** What a fix becomes once it is worked out, or why it cannot be had, for the user to read. */
export type Resolved = Pick<QuickFix, "title" | "edit"> | { readonly reason: string };

/**
 * Works out the edit of a fix that was listed without one.
 * @param snapshot of the version in the request
 * @returns undefined where it is no longer wanted
 */
export async function resolveSize(
  request: SizeRequest,
  snapshot: Snapshot,
  sizer: Sizer,
  able: FixAbilities,
  wanted: () => boolean,
): Promise<Resolved | undefined> {
  const found = snapshot.findings.find(
    ({ finding }) =>
      finding.accepted === undefined && finding.check === request.check && finding.path === request.path,
  );
  const sizing = found && (await sizer.find(snapshot, found.finding, wanted));
  if (!sizing || !wanted()) return undefined;
  return sizing.kind === "none"
    ? { reason: noSizeWords(sizing, snapshot.say) }
    : sized(snapshot, sizing, able);
}

function sized(
  snapshot: Snapshot,
  sizing: Extract<Sizing, { kind: "sized" }>,
  able: FixAbilities,
): Pick<QuickFix, "title" | "edit"> {
  const path = `${sizing.entry.path}/section`;
  const edit = editOf(snapshot, [{ kind: "replace", path, text: sizing.to.text }], able);
  return { title: sizedWords(sizing, snapshot.say), ...(edit && { edit }) };
}

/** The request in a fix as it comes back from the editor; undefined for anything else. */
export function sizeRequestOf({ data }: { readonly data?: unknown }): SizeRequest | undefined {
  if (typeof data !== "object" || data === null) return undefined;
  const [uri, version, check, path]: unknown[] = ["uri", "version", "check", "path"].map((key) =>
    Reflect.get(data, key),
  );
  return typeof uri === "string" &&
    typeof version === "number" &&
    typeof check === "string" &&
    typeof path === "string"
    ? { uri, version, check, path }
    : undefined;
}

function fixOf(
  { uri }: Snapshot,
  located: LocatedFinding,
  { linkOf }: FixAbilities,
): Pick<QuickFix, "kind" | "diagnostics"> {
  return { kind: CodeActionKind.QuickFix, diagnostics: [diagnosticOf(uri, located, linkOf)] };
}

/** @returns undefined where one of the changes cannot be made: half a fix is none */
export function editOf(
  snapshot: Snapshot,
  edits: readonly Edit[],
  { versioned }: FixAbilities,
): FixEdit | undefined {
  const { uri, version } = snapshot;
  const changes = textEditsOf(snapshot, edits);
  if (!changes) return undefined;
  return versioned
    ? { documentChanges: [{ textDocument: { uri, version }, edits: changes }] }
    : { changes: { [uri]: changes } };
}

/** The changes of the text by line and character; undefined where there are none, or one cannot be made. */
export function textEditsOf({ document, reading }: Snapshot, edits: readonly Edit[]): TextEdit[] | undefined {
  if (!reading || edits.length === 0) return undefined;
  const changes: TextEdit[] = [];
  for (const edit of edits) {
    const change = toTextEdit(reading, edit);
    if (!change) return undefined;
    const { start, end, newText } = change;
    changes.push({ range: { start: document.positionAt(start), end: document.positionAt(end) }, newText });
  }
  return changes;
}

/** Ranges that share a character or an edge, so that a cursor behind a word counts. */
export function touches(a: Range, b: Range): boolean {
  return !before(a.end, b.start) && !before(b.end, a.start);
}

function before(a: Range["start"], b: Range["start"]): boolean {
  return a.line < b.line || (a.line === b.line && a.character < b.character);
}
