/** The check reference, written from the metadata of the checks: one source for `explain`, the editor and the file. */
import { ACCEPT_IDLE, CHECK_FAILED } from "./accepted.ts";
import type { Area, CheckMeta, SourceStatus } from "./check.ts";
import { CHECKS } from "./registry.ts";
import { LOADS_UNANSWERED } from "./unanswered.ts";

/** How well the source of a rule is known, in words. */
export const SOURCE_STATUS: Readonly<Record<SourceStatus, string>> = {
  published: "seen in the publication",
  derived: "worked out from a published rule",
  memory: "remembered from the publication, not seen again",
  "common-practice": "common practice of the trade",
  "file-format": "a rule of the frame file",
};

const AREAS: Readonly<Record<Area, string>> = {
  file: "The file",
  geometry: "Geometry",
  timber: "Timber and mill",
  loads: "Loads",
  members: "Members",
  joinery: "Joinery",
  ground: "Ground",
  roof: "Roof",
  raising: "Raising",
};

/** Metadata of everything that can be found, the checks of the registry and those that stand beside it. */
export function allMeta(): readonly CheckMeta[] {
  return [...CHECKS.map(({ meta }) => meta), LOADS_UNANSWERED, ACCEPT_IDLE, CHECK_FAILED];
}

function entry({ id, title, level, source, explanation }: CheckMeta): string {
  const { what, why, formula, remedy } = explanation;
  return [
    `### ${id}`,
    `${title}. Usual level: ${level}.`,
    `- **What:** ${what}`,
    `- **Why:** ${why}`,
    ...(formula === undefined ? [] : [`- **Formula:** ${formula}`]),
    `- **What to do:** ${remedy}`,
    `- **Source:** ${source.text} (${SOURCE_STATUS[source.status]})`,
  ].join("\n");
}

/** @returns Markdown, one chapter for each area */
export function checkReference(): string {
  const metas = allMeta();
  const chapters = (Object.keys(AREAS) as Area[]).flatMap((area) => {
    const own = metas.filter((m) => m.area === area);
    return own.length === 0 ? [] : [`## ${AREAS[area]}\n\n${own.map(entry).join("\n\n")}`];
  });
  const head =
    "# Check reference\n\nWritten by `npm run generate` from the metadata of the checks; do not edit it. `bentwright explain CHECK` prints the same.\n\n" +
    "An error cannot be built or is unsafe by the stated rule; a warning falls short of a rule or of good practice; a note is worth knowing. " +
    "Bentwright checks the rules named here and leaves others out; local code and licensed practice decide.";
  return `${[head, ...chapters].join("\n\n")}\n`;
}
