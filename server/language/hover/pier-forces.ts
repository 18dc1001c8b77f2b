/** What the frame sets on the piers under the cursor. */
import type { Say } from "../../core/checks/say.ts";
import { pierHold } from "../../core/ground/uplift.ts";
import type { Pier } from "../../core/model/model.ts";
import { caseWords } from "../../core/statics/case-words.ts";
import type { FrameResults } from "../../core/statics/frame-results.ts";
import { table } from "./table.ts";
import { hasForces, unsolvedWords } from "./unsolved.ts";

/** Forces below this say nothing, lb. */
const SMALL = 1;

/** @returns a table with one line for each pier; only what has no answer where the analysis has none of them */
export function pierForceTable(piers: readonly Pier[], frame: FrameResults, say: Say): string[] {
  const own = new Set(piers.map(({ id }) => id));
  const cell = ({ most, caseId }: { readonly most: number; readonly caseId: string }): string =>
    most < SMALL ? say.text("nothing") : `${say.force(most)}, ${caseWords(frame.solution, caseId, say)}`;
  const rows = frame.piers
    .filter(({ pier }) => own.has(pier.id))
    .map(({ pier, down, up, sideways }) => [
      pier.place.text,
      cell(down),
      cell(up),
      say.force(pierHold(pier, up.most).held),
      cell(sideways),
    ]);
  const columns = [
    say.text("pier"),
    say.text("pressed by at most"),
    say.text("lifted by at most"),
    say.text("0.6 of its weight"),
    say.text("pushed sideways by at most"),
  ];
  const unsolved = unsolvedWords(frame, say);
  return rows.length === 0 || !hasForces(frame) ? unsolved : [table(columns, rows), ...unsolved];
}
