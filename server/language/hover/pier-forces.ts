/** What the frame sets on the piers under the cursor. */
import type { Say } from "../../core/checks/say.ts";
import { type BearingUse, bearingUse } from "../../core/ground/bearing.ts";
import { type SidewaysUse, sidewaysUse } from "../../core/ground/sideways.ts";
import { pierHold } from "../../core/ground/uplift.ts";
import type { Pier } from "../../core/model/model.ts";
import { caseWords } from "../../core/statics/case-words.ts";
import type { FrameResults } from "../../core/statics/frame-results.ts";
import { table } from "./table.ts";
import { hasForces, unsolvedWords } from "./unsolved.ts";

/** Forces below this say nothing, lb. */
const SMALL = 1;

/** What the soil needs to be known for. */
const unknown = (say: Say): string => say.text("unknown soil");

/** `1,791 of 2,000 psf, D + S` */
function bearingCell(use: BearingUse | undefined, frame: FrameResults, say: Say): string {
  if (!use) return unknown(say);
  return Number.isFinite(use.pressure)
    ? say.text("{pressure} of {allowed}, {combination}", {
        pressure: say.pressure(use.pressure),
        allowed: say.pressure(use.allowed.value),
        combination: caseWords(frame.solution, use.caseId, say),
      })
    : say.text("tips, {combination}", { combination: caseWords(frame.solution, use.caseId, say) });
}

/** What the soil holds under the combination that uses it most. */
function sidewaysCell(use: SidewaysUse | undefined, frame: FrameResults, say: Say): string {
  if (!use) return unknown(say);
  if (use.push < SMALL) return say.text("nothing");
  return say.text("{push} of {holds}, {combination}", {
    push: say.force(use.push),
    holds: say.force(use.holds),
    combination: caseWords(frame.solution, use.caseId, say),
  });
}

/** @returns a table with one line for each pier; only what has no answer where the analysis has none of them */
export function pierForceTable(piers: readonly Pier[], frame: FrameResults, say: Say): string[] {
  const { soil } = frame.model.frame.site;
  const own = new Set(piers.map(({ id }) => id));
  const cell = ({ most, caseId }: { readonly most: number; readonly caseId: string }): string =>
    most < SMALL ? say.text("nothing") : `${say.force(most)}, ${caseWords(frame.solution, caseId, say)}`;
  const rows = frame.piers
    .filter(({ pier }) => own.has(pier.id))
    .map(({ pier, down, up, sideways, cases }) => [
      pier.place.text,
      cell(down),
      bearingCell(bearingUse(pier, cases, soil), frame, say),
      cell(up),
      say.force(pierHold(pier, up.most).held),
      cell(sideways),
      sidewaysCell(sidewaysUse(pier, cases, soil), frame, say),
    ]);
  const columns = [
    say.text("pier"),
    say.text("pressed by at most"),
    say.text("soil under it"),
    say.text("lifted by at most"),
    say.text("0.6 of its weight"),
    say.text("pushed sideways by at most"),
    say.text("soil beside it"),
  ];
  const unsolved = unsolvedWords(frame, say);
  return rows.length === 0 || !hasForces(frame) ? unsolved : [table(columns, rows), ...unsolved];
}
