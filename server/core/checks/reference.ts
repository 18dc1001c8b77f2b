/** The check reference, written from the metadata of the checks: one source for `explain`, the editor and the file. */
import { BESIDE_CHECKS } from "./accepted.ts";
import type { Area, CheckMeta } from "./check.ts";
import { metaParts } from "./page.ts";
import { CHECKS } from "./registry.ts";
import { makeSay } from "./speak.ts";

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
  return [...CHECKS.map(({ meta }) => meta), ...BESIDE_CHECKS];
}

function entry(meta: CheckMeta): string {
  const say = makeSay("inch");
  return [
    `### ${meta.id}`,
    `${meta.title}. Usual level: ${meta.level}.`,
    ...metaParts(meta, say).map(({ label, text }) => `- **${label}:** ${text}`),
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
