/** What the frame sets on the piers under the cursor. */
import type { Say } from "../../core/checks/say.ts";
import type { Soil } from "../../core/frame/site.ts";
import { bearingUse } from "../../core/ground/bearing.ts";
import { sidewaysUse } from "../../core/ground/sideways.ts";
import { pierHold } from "../../core/ground/uplift.ts";
import type { Pier } from "../../core/model/model.ts";
import { caseWords } from "../../core/statics/case-words.ts";
import type { FrameResults, PierReaction } from "../../core/statics/frame-results.ts";
import { table } from "./table.ts";
import { hasForces, unsolvedWords } from "./unsolved.ts";

/** Forces below this say nothing, lb. */
const SMALL = 1;

/** What the piers press and push with, where most of the soil's value is used, and what the soil has against it. */
function soilTable(rows: readonly PierReaction[], soil: Soil | undefined, say: Say): string {
  if (soil === undefined)
    return say.text(
      "What the ground carries is not known: the file does not say the soil (“soil: sand” under “site”).",
    );
  const columns = [
    say.text("pier"),
    say.text("presses the soil with"),
    say.text("it carries"),
    say.text("pushes the soil with"),
    say.text("it holds"),
  ];
  const cells = rows.flatMap(({ pier, cases }) => {
    const [under, beside] = [bearingUse(pier, cases, soil), sidewaysUse(pier, cases, soil)];
    if (!under || !beside) return [];
    return [
      [
        pier.place.text,
        Number.isFinite(under.pressure) ? say.pressure(under.pressure) : say.text("it tips"),
        say.pressure(under.allowed.value),
        beside.push < SMALL ? say.text("nothing") : say.force(beside.push),
        say.force(beside.holds),
      ],
    ];
  });
  return table(columns, cells);
}

/** @returns a table with one line for each pier; only what has no answer where the analysis has none of them */
export function pierForceTable(piers: readonly Pier[], frame: FrameResults, say: Say): string[] {
  const own = new Set(piers.map(({ id }) => id));
  const cell = ({ most, caseId }: { readonly most: number; readonly caseId: string }): string =>
    most < SMALL ? say.text("nothing") : `${say.force(most)}, ${caseWords(frame.solution, caseId, say)}`;
  const shown = frame.piers.filter(({ pier }) => own.has(pier.id));
  const rows = shown.map(({ pier, down, up, sideways }) => [
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
  return rows.length === 0 || !hasForces(frame)
    ? unsolved
    : [...unsolved, table(columns, rows), soilTable(shown, frame.model.frame.site.soil, say)];
}
