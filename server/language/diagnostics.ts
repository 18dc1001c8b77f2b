/** Findings as an editor shows them: wavy lines and the list of problems. */
import { type Diagnostic, DiagnosticSeverity } from "vscode-languageserver-types";
import type { Finding, Level } from "../core/checks/check.ts";
import type { LocatedFinding, Snapshot } from "./frame-service.ts";

const DIAGNOSTIC_SOURCE = "bentwright";

const SEVERITY: Readonly<Record<Level, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  note: DiagnosticSeverity.Information,
};

/** A diagnostic whose message is plain text, as every client reads it. */
export interface FrameDiagnostic extends Diagnostic {
  message: string;
}

/** The address of the page about a finding; undefined where this editor has none that it could open. */
export type LinkOf = (uri: string, finding: Finding) => string | undefined;

/** One diagnostic for each finding that the file does not accept, in the order of the text. */
export function diagnosticsOf(snapshot: Snapshot, linkOf?: LinkOf): FrameDiagnostic[] {
  return snapshot.findings
    .filter(({ finding }) => finding.accepted === undefined)
    .map((located) => diagnosticOf(snapshot.uri, located, linkOf));
}

/** @returns the very same diagnostic for the same finding, so that a fix can name what it mends */
export function diagnosticOf(
  uri: string,
  { finding, range, related }: LocatedFinding,
  linkOf?: LinkOf,
): FrameDiagnostic {
  const href = linkOf?.(uri, finding);
  return {
    range,
    severity: SEVERITY[finding.level],
    code: finding.check,
    ...(href !== undefined && { codeDescription: { href } }),
    source: DIAGNOSTIC_SOURCE,
    message: finding.message,
    ...(related.length > 0 && {
      relatedInformation: related.map((other) => ({
        location: { uri, range: other.range },
        message: other.message,
      })),
    }),
  };
}

export interface Counts {
  readonly errors: number;
  readonly warnings: number;
  readonly notes: number;
}

/** How many findings of each level the file does not accept. */
export function countsOf(snapshot: Snapshot): Counts {
  const open = snapshot.findings.filter(({ finding }) => finding.accepted === undefined);
  const count = (level: Level): number => open.filter(({ finding }) => finding.level === level).length;
  return { errors: count("error"), warnings: count("warning"), notes: count("note") };
}
