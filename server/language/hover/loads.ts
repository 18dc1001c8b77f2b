/** How a load came about, under the part of the file that it follows from. */
import type { Pointer } from "../../core/frame/frame.ts";
import { loadDerivation, loadStandard } from "../../core/statics/load-derivation.ts";
import type { LoadPart } from "../../core/statics/load-lines.ts";
import type { Snapshot } from "../frame-service.ts";
import { loadTables } from "../load-words.ts";
import { escapeMarkdown, table } from "./table.ts";

/** Sections that tell of a key, by the path of the key. */
const PARTS: Readonly<Record<string, readonly LoadPart[]>> = {
  "/timber": ["weight"],
  "/roof": ["roof", "roof-live"],
  "/roof/deck": ["roof"],
  "/roof/covering": ["roof"],
  "/roof/ceiling": ["roof"],
  "/siding": ["siding"],
  "/floors": ["floor"],
  "/site/snow": ["snow"],
  "/site/wind": ["wind", "least-weight"],
};

/** @returns paragraphs and tables; none while the frame is not analysed, or where no load follows from that key */
export function loadHover({ evaluation, say }: Snapshot, path: Pointer): string[] {
  const frame = evaluation?.results.frame;
  const floor = frame?.model.frame.floors.find((one) => one.path === path);
  const parts = floor ? PARTS["/floors"] : PARTS[path];
  if (!frame || !parts) return [];
  const standard = loadStandard(frame.model) ?? "";
  const own = loadDerivation(frame.model, frame.solution.loads).filter(
    ({ part, name }) => parts.includes(part) && (!floor || name === floor.name),
  );
  return own.flatMap((section) => {
    const { title, lines, caption, patterns, known } = loadTables(section, standard, say);
    const [lineHead = [], ...lineRows] = lines;
    const [caseHead, ...caseRows] = patterns;
    return [
      `**${escapeMarkdown(title)}**`,
      table(lineHead, lineRows),
      ...(caseHead ? [caption, table(caseHead, caseRows), escapeMarkdown(known)] : []),
    ];
  });
}
