/** The shed of `shed.ts` under a gable roof in snow and wind: for tests of what its joints, piers and seats hold. */
import { SHED_IN_SNOW } from "./shed.ts";

export const ROOFED = SHED_IN_SNOW.replace(
  "piers:\n",
  `${[
    "roof:",
    "  kind: gable",
    "  pitch: 9:12",
    "  rafters: {section: 4x6, spacing: 30 in, seat: {kind: birds-mouth}, overhang: {eave: 6 in}, fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 10 in}}",
    "  deck: {kind: panels, thickness: 5/8 in}",
    "  covering: {kind: standing-seam, coverage: 16 in}",
  ].join("\n")}\npiers:\n`,
);

/** The text with a marker (see `fixtures.ts`) under the first line that holds these words. */
export function under(text: string, words: string, marker: string): string {
  const lines = text.split("\n");
  const at = lines.findIndex((l) => l.includes(words));
  if (at < 0) throw new Error(`No line to mark: ${words}`);
  lines.splice(at + 1, 0, marker);
  return lines.join("\n");
}
