/** How a load came about, under the part of the file that it follows from. */
import type { Pointer } from "../../core/frame/frame.ts";
import { loadDerivation, loadStandard } from "../../core/statics/load-derivation.ts";
import type { LoadSection } from "../../core/statics/load-lines.ts";
import { keysOf } from "../../document/tree.ts";
import type { Snapshot } from "../frame-service.ts";
import { loadTables } from "../load-words.ts";
import { escapeMarkdown, table } from "./table.ts";

/** @returns sections that tell of what a key stands for; none for most keys */
function sectionsAt(sections: readonly LoadSection[], path: Pointer): readonly LoadSection[] {
  const [area, part, ...more] = keysOf(path);
  if (more.length > 0) return [];
  const of = (...parts: readonly LoadSection["part"][]): readonly LoadSection[] =>
    sections.filter((s) => parts.includes(s.part));
  if (part === undefined)
    return area === "timber"
      ? of("weight")
      : area === "roof"
        ? of("roof", "roof-live")
        : area === "floors"
          ? of("floor")
          : [];
  if (area === "site" && (part === "snow" || part === "wind")) return of(part);
  if (area === "roof" && (part === "deck" || part === "covering")) return of("roof");
  return area === "floors" ? of("floor").filter(({ name }) => name === part) : [];
}

/** @returns paragraphs and tables; none while the frame is not analysed, or where no load follows from that key */
export function loadHover({ evaluation, say }: Snapshot, path: Pointer): string[] {
  const frame = evaluation?.results.frame;
  if (!frame) return [];
  const standard = loadStandard(frame.model) ?? "";
  return sectionsAt(loadDerivation(frame.model, frame.solution.loads), path).flatMap((section) => {
    const { title, lines, caption, patterns } = loadTables(section, standard, say);
    const [lineHead = [], ...lineRows] = lines;
    const [caseHead, ...caseRows] = patterns;
    return [
      `**${escapeMarkdown(title)}**`,
      table(lineHead, lineRows),
      ...(caseHead ? [caption, table(caseHead, caseRows)] : []),
    ];
  });
}
