/** The report for programs; schemas/report.schema.json is its contract. */
import { CAUTION } from "../language/caution.ts";
import { countsOf } from "../language/diagnostics.ts";
import type { LocatedFinding, Snapshot } from "../language/frame-service.ts";
import { VERSION } from "../version.ts";
import { jsonText } from "./json-text.ts";
import { resultsJson } from "./results-json.ts";

export interface CheckedFile {
  /** as it was named in the call */
  readonly file: string;
  readonly snapshot: Snapshot;
}

/** Version of the report's shape; raised when a member changes its meaning or goes. */
const REPORT = 1;

export function jsonReport(checked: readonly CheckedFile[]): string {
  const all = checked.flatMap(({ file, snapshot }) =>
    snapshot.findings.map((located) => ({
      accepted: located.finding.accepted,
      entry: entryOf(file, located),
    })),
  );
  const counts = checked.map(({ snapshot }) => countsOf(snapshot));
  const sum = (of: "errors" | "warnings" | "notes"): number => counts.reduce((n, one) => n + one[of], 0);
  const accepted = all.flatMap(({ accepted: because, entry }) =>
    because === undefined ? [] : [{ ...entry, because }],
  );
  const report = {
    report: REPORT,
    tool: { name: "bentwright", version: VERSION },
    files: checked.map(({ file }) => file),
    findings: all.filter((one) => one.accepted === undefined).map(({ entry }) => entry),
    accepted,
    counts: {
      errors: sum("errors"),
      warnings: sum("warnings"),
      notes: sum("notes"),
      accepted: accepted.length,
    },
    results: checked.flatMap(({ file, snapshot }) => {
      const results = snapshot.evaluation?.results;
      return results ? [{ file, ...resultsJson(results, snapshot.say) }] : [];
    }),
    caution: CAUTION,
  };
  return jsonText(report);
}

/** A finding as every JSON of the command line has it. */
export function entryOf(file: string, { finding, range, related }: LocatedFinding) {
  const { check, level, path, message, value, limit, unit, places } = finding;
  const number = value !== undefined && Number.isFinite(value) ? { value } : undefined;
  return {
    file,
    check,
    level,
    path,
    line: range.start.line + 1,
    column: range.start.character + 1,
    endLine: range.end.line + 1,
    endColumn: range.end.character + 1,
    message,
    ...number,
    ...(number && unit !== undefined && { unit }),
    ...(number && unit !== undefined && limit !== undefined && Number.isFinite(limit) && { limit }),
    places,
    related: related.map((other) => ({
      path: other.path,
      line: other.range.start.line + 1,
      column: other.range.start.character + 1,
      message: other.message,
    })),
  };
}
