/**
 * The page of a check in the editor: the case that was clicked with its numbers, then what the check is about. A link
 * to it names the check, the document and the finding, never its words; only this file writes and reads such links.
 */
import type { CheckMeta, Finding } from "../core/checks/check.ts";
import { caseParts, metaParts, type PagePart } from "../core/checks/page.ts";
import { allMeta } from "../core/checks/reference.ts";
import type { Say } from "../core/checks/say.ts";
import { makeSay } from "../core/checks/speak.ts";
import { CAUTION } from "./caution.ts";
import type { LocatedFinding, Snapshot } from "./frame-service.ts";
import { escapeMarkdown } from "./hover/table.ts";

/** Scheme of pages that our own client opens. */
const PAGE_SCHEME = "bentwright-page";

/** A finding as a link or a request names it. */
export interface FindingName {
  readonly uri: string;
  readonly check: string;
  readonly path: string;
  /** the first of its places, where it has one */
  readonly place?: string;
}

export function nameOfFinding(uri: string, { check, path, places }: Finding): FindingName {
  const [place] = places;
  return { uri, check, path, ...(place !== undefined && { place }) };
}

/** The named finding in a snapshot; where its worst place has changed, the one of that check at that path. */
function findingNamed(
  { findings }: Snapshot,
  { check, path, place }: Omit<FindingName, "uri">,
): LocatedFinding | undefined {
  const own = findings.filter(({ finding }) => finding.check === check && finding.path === path);
  return own.find(({ finding }) => place === undefined || finding.places.includes(place)) ?? own[0];
}

/** Metadata of everything that can be found, by id. */
export function metaOf(check: string): CheckMeta | undefined {
  return allMeta().find(({ id }) => id === check);
}

/** `bentwright-page:/tenon-thin.md?…`, which our client gives back to have the page written. */
export function pageLink(uri: string, finding: Finding): string {
  const name = nameOfFinding(uri, finding);
  return `${PAGE_SCHEME}:/${finding.check}.md?${encodeURIComponent(JSON.stringify(name))}`;
}

/** The finding that a link names, from its query as an editor decodes it; undefined for anything else. */
export function linkedFinding(query: string): FindingName | undefined {
  let read: unknown;
  try {
    read = JSON.parse(query);
  } catch {
    return undefined;
  }
  return findingNameOf(read);
}

/** A finding's name among the members of something that came over the wire. */
export function findingNameOf(value: unknown): FindingName | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  const [uri, check, path, place]: unknown[] = ["uri", "check", "path", "place"].map((key) =>
    Reflect.get(value, key),
  );
  if (typeof uri !== "string" || typeof check !== "string" || typeof path !== "string") return undefined;
  return { uri, check, path, ...(typeof place === "string" && { place }) };
}

/**
 * The page as Markdown.
 * @param snapshot of the document that the finding is in; undefined once it is closed
 * @param otherwise how things are said where there is no document
 */
export function pageOf(
  name: FindingName,
  snapshot: Snapshot | undefined,
  otherwise: Say = makeSay("inch"),
): string {
  const say = snapshot?.say ?? otherwise;
  const meta = metaOf(name.check);
  if (!meta) return `${say.text("There is no check {check}.", { check: escapeMarkdown(name.check) })}\n`;
  return `${[
    `# ${say.text(meta.title)}`,
    `\`${meta.id}\` · ${say.text("usual level: {level}", { level: say.text(meta.level) })}`,
    `## ${say.text("Here")}`,
    hereWords(name, snapshot, say),
    `## ${say.text("The check")}`,
    ...metaParts(meta, say).map((part) => paragraph(part, false)),
    `*${say.text(CAUTION)}*`,
  ].join("\n\n")}\n`;
}

function hereWords(name: FindingName, snapshot: Snapshot | undefined, say: Say): string {
  const located = snapshot && findingNamed(snapshot, name);
  if (!snapshot) return say.text("The file is closed; open it to see this case again.");
  if (!located) return say.text("This finding is no longer in the file.");
  const line = say.text("{file}, line {line}", {
    file: escapeMarkdown(fileName(name.uri)),
    line: located.range.start.line + 1,
  });
  return [line, ...caseParts(located.finding, say).map((part) => paragraph(part, true))].join("\n\n");
}

/** @param raw the text holds words of the file, which must not turn into Markdown */
function paragraph({ label, text, steps }: PagePart, raw: boolean): string {
  const words = (part: string): string => (raw ? escapeMarkdown(part.replace(/\s+/g, " ")) : part);
  return steps
    ? `**${label}:**\n\n${steps.map((step) => `- ${words(step)}`).join("\n")}`
    : `**${label}:** ${words(text)}`;
}

function fileName(uri: string): string {
  const name = uri.slice(uri.lastIndexOf("/") + 1);
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
}
