/** `bentwright explain`: what a check is about, and its cases in a file. */

import type { CheckMeta, Finding } from "../core/checks/check.ts";
import { caseParts, metaParts, type PagePart } from "../core/checks/page.ts";
import { allMeta } from "../core/checks/reference.ts";
import { makeSay } from "../core/checks/speak.ts";
import { nearest } from "../core/text/nearest.ts";
import type { FrameService, LocatedFinding, Snapshot } from "../language/frame-service.ts";
import {
  type Command,
  EXIT,
  nameOf,
  readArguments,
  readText,
  type Surroundings,
  WrongCall,
} from "./command.ts";
import { footFindings } from "./joint-findings.ts";
import { oneLine } from "./report-text.ts";

const HELP = `Usage: bentwright explain [CHECK [FILE [--at PATH-OR-ID]]]

Says what a check looks at, why it matters, the formula, what to do, and where the rule is
from. With a file it then shows each finding of that check in it: the message, and the formula
with the numbers of that case. Without a name it lists all checks.

  FILE     a frame file; - reads standard input
  --at     only findings at this path (/joints/tie-end), entry (tie-end) or place (tie-end@A1)

Exit code: 0, or 2 when there is no such check or the file cannot be opened.`;

export const explain: Command = {
  name: "explain",
  summary: "say what a check is about, and its cases in a file",
  help: HELP,
  run(args, around, service) {
    const { values, positionals } = readArguments(args, { at: { type: "string" } });
    const [id, file, ...others] = positionals;
    if (others.length > 0) throw new WrongCall("Name one check and at most one file.");
    if (values.at !== undefined && file === undefined)
      throw new WrongCall("Name the file that --at is a place of.");
    if (id === undefined) {
      list(allMeta(), around);
      return EXIT.fine;
    }
    const meta = metaNamed(id);
    // the file first: a call that fails prints no half of an answer
    const cases = file === undefined ? "" : casesIn(file, meta, values.at, around, service);
    around.out(text(meta) + cases);
    return EXIT.fine;
  },
};

/** @throws WrongCall, with the nearest name, where there is none */
function metaNamed(id: string): CheckMeta {
  const metas = allMeta();
  const meta = metas.find((one) => one.id === id);
  if (meta) return meta;
  const close = nearest(
    id,
    metas.map((one) => one.id),
  );
  const hint = close === undefined ? "" : ` Did you mean \`${close}\`?`;
  throw new WrongCall(`There is no check \`${id}\`.${hint} \`bentwright explain\` lists all.`);
}

function list(metas: readonly CheckMeta[], around: Surroundings): void {
  const wide = Math.max(...metas.map(({ id }) => id.length));
  const areas = [...new Set(metas.map(({ area }) => area))];
  const parts = areas.map((area) => {
    const lines = metas
      .filter((meta) => meta.area === area)
      .map(({ id, level, title }) => `  ${id.padEnd(wide)}  ${level.padEnd(7)}  ${title}`);
    return `${area}\n${lines.join("\n")}`;
  });
  around.out(`${parts.join("\n\n")}\n`);
}

const said = ({ label, text: words, steps }: PagePart): string =>
  steps
    ? `${label}:${steps.map((step) => `\n    ${oneLine(step)}`).join("")}`
    : `${label}: ${oneLine(words)}`;

function text(meta: CheckMeta): string {
  const head = `${meta.id} (${meta.level}, ${meta.area})\n${meta.title}`;
  return `${[head, ...metaParts(meta, makeSay("inch")).map(said)].join("\n\n")}\n`;
}

function casesIn(
  file: string,
  meta: CheckMeta,
  at: string | undefined,
  around: Surroundings,
  service: FrameService,
): string {
  const snapshot = service.open(file, 0, readText(file, around));
  const foot = snapshot.evaluation?.model?.feet.find(({ id }) => id === at);
  const there = foot ? new Set(footFindings(foot, snapshot)) : undefined;
  const found = snapshot.findings.filter(
    (located) =>
      located.finding.check === meta.id &&
      (at === undefined || there?.has(located) === true || isAt(located.finding, at)),
  );
  const where = at === undefined ? nameOf(file) : `${nameOf(file)} at ${oneLine(at)}`;
  if (found.length === 0) return `\n${where} has no finding of ${meta.id}.\n`;
  return found.map((located) => `\n${caseText(file, located, snapshot)}\n`).join("");
}

function caseText(file: string, { finding, range }: LocatedFinding, { say }: Snapshot): string {
  const place = `${file}:${range.start.line + 1}:${range.start.character + 1}`;
  return [place, ...caseParts(finding, say).map((part) => `  ${said(part)}`)].join("\n");
}

/** Whether a finding lies at this path or deeper, or is about this place or a place of this entry. */
function isAt({ path, places }: Finding, at: string): boolean {
  if (at.startsWith("/")) return path === at || path.startsWith(`${at}/`);
  return path.split("/").includes(at) || places.some((place) => place === at || place.startsWith(`${at}@`));
}
