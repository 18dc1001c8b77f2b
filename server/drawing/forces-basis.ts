/** What every layer is drawn from, and what the layers have in common. */
import type { SolvedCase } from "../core/statics/solve-frame.ts";
import { timbersOf } from "../core/statics/structure.ts";
import type { DrawingElement } from "./drawing.ts";
import type { LegendRow } from "./forces-legend.ts";
import type { PaperLine } from "./forces-line.ts";
import type { Layout } from "./layout.ts";
import type { Sight } from "./views.ts";

export interface DrawnForces {
  readonly elements: readonly DrawingElement[];
  readonly legend: readonly LegendRow[];
}

export interface Basis {
  readonly worst: boolean;
  /** cases with an answer: of one combination, both ways to seat the rafters; all of them for the worst */
  readonly cases: readonly SolvedCase[];
  readonly sight: Sight;
  readonly lines: readonly PaperLine[];
  readonly layout: Layout;
}

/** letters of a value, share of the usual */
export const VALUE = 0.8;

/** Timbers out of action under every case shown, as ids. */
export function slackIn(cases: readonly SolvedCase[]): ReadonlySet<string> {
  const [first, ...rest] = cases.map(({ combined, frame }) => new Set(timbersOf(combined.dropped, frame)));
  return new Set([...(first ?? [])].filter((id) => rest.every((other) => other.has(id))));
}

/** Dashed center lines of what has let go. */
export function slackLines({ cases, lines }: Basis): DrawingElement[] {
  const slack = slackIn(cases);
  return lines
    .filter(({ timber }) => slack.has(timber.id))
    .map(({ timber, at }) => ({ type: "line", from: at(0), to: at(timber.span), classes: ["slack"] }));
}

export function slackRow({ worst, layout: { say } }: Basis, found: number): LegendRow[] {
  if (found === 0) return [];
  const text = worst
    ? say.text("braces that only push, slack under every combination")
    : say.text("braces that only push, slack under this combination");
  return [{ text, sample: "slack" }];
}
