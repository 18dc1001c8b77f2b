/** The report for people: a line for each finding, what is accepted, the count, the caution. */
import { styleText } from "node:util";
import type { Level } from "../core/checks/check.ts";
import { loadDerivation, loadStandard } from "../core/statics/load-derivation.ts";
import { woodsInUse } from "../core/statics/woods-in-use.ts";
import { CAUTION } from "../language/caution.ts";
import { countsOf } from "../language/diagnostics.ts";
import type { LocatedFinding } from "../language/frame-service.ts";
import { loadNotes } from "../language/load-words.ts";
import { woodNotes } from "../language/wood-words.ts";
import type { CheckedFile } from "./report-json.ts";

const COLORS: Readonly<Record<Level, "red" | "yellow" | "cyan">> = {
  error: "red",
  warning: "yellow",
  note: "cyan",
};

/** @param color whether levels are coloured */
export function textReport(checked: readonly CheckedFile[], color: boolean): string {
  const lines = checked.flatMap(({ file, snapshot }) =>
    snapshot.findings.map((located) => findingLine(file, located, color)),
  );
  return `${[...lines, countLine(checked), ...remembered(checked), CAUTION].join("\n")}\n`;
}

/** What stands as remembered, each wood and each load standard once, however many files are of it. */
function remembered(checked: readonly CheckedFile[]): string[] {
  const frames = checked.flatMap(({ snapshot: { evaluation, say } }) => {
    const frame = evaluation?.results.frame;
    return frame ? [{ frame, say }] : [];
  });
  const woods = frames.flatMap(({ frame, say }) => woodNotes(woodsInUse(frame.members.values()), say));
  const loads = frames.flatMap(({ frame: { model, solution }, say }) =>
    loadNotes(loadDerivation(model, solution.loads), loadStandard(model) ?? "", say),
  );
  return [...new Set([...woods, ...loads].map(oneLine))];
}

function findingLine(file: string, located: LocatedFinding, color: boolean): string {
  const { start } = located.range;
  return `${file}:${start.line + 1}:${start.character + 1} ${findingWords(located, color)}`;
}

/** Level, check and message of a finding on one line. */
export function findingWords({ finding }: LocatedFinding, color = false): string {
  const { check, level, accepted } = finding;
  const message = oneLine(finding.message);
  if (accepted !== undefined) return `accepted ${check} ${message} Accepted because: ${oneLine(accepted)}`;
  const word = color ? styleText(COLORS[level], level, { validateStream: false }) : level;
  return `${word} ${check} ${message}`;
}

function countLine(checked: readonly CheckedFile[]): string {
  const counts = checked.map(({ snapshot }) => countsOf(snapshot));
  const sum = (of: "errors" | "warnings" | "notes"): number => counts.reduce((n, one) => n + one[of], 0);
  const accepted = checked
    .flatMap(({ snapshot }) => snapshot.findings)
    .filter(({ finding }) => finding.accepted !== undefined).length;
  const parts = [
    many(sum("errors"), "error"),
    many(sum("warnings"), "warning"),
    many(sum("notes"), "note"),
    ...(accepted > 0 ? [`${accepted} accepted`] : []),
  ];
  return `${parts.join(", ")} in ${many(checked.length, "file")}.`;
}

function many(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? "" : "s"}`;
}

/** Control characters of the file would command the terminal; they are shown as `\x1b`. */
export function oneLine(text: string): string {
  return text
    .replace(/\s*[\r\n]+\s*/g, " ")
    .replace(/\p{Cc}/gu, (char) => `\\x${(char.codePointAt(0) ?? 0).toString(16).padStart(2, "0")}`)
    .trim();
}
