/**
 * Forces over an elevation: axial force, shear, moment or the deflected shape of what lies in the plane of the view,
 * under one load combination or each timber under its own worst. Where the analysis has no answer, words stand instead.
 */
import { frameCaseWords } from "../core/statics/case-words.ts";
import type { SolvedCase } from "../core/statics/solve-frame.ts";
import type { Body } from "./body.ts";
import type { Basis, DrawnForces } from "./forces-basis.ts";
import { caseOf, layerTitle, type Overlay, WORST } from "./forces-cases.ts";
import { drawDiagrams } from "./forces-diagrams.ts";
import type { LegendRow } from "./forces-legend.ts";
import { linesOf } from "./forces-line.ts";
import { drawShape } from "./forces-shape.ts";
import { whyNone } from "./forces-words.ts";
import type { Layout } from "./layout.ts";
import type { Sight } from "./views.ts";

/** @param bodies of the view: diagrams are drawn for those that lie in its plane */
export function drawForces(
  sight: Sight,
  bodies: readonly Body[],
  overlay: Overlay,
  layout: Layout,
): DrawnForces {
  const { say } = layout;
  const { frame, layer } = overlay;
  const heading: LegendRow = { text: layerTitle(layer, say), heading: true };
  const only = (text: string): DrawnForces => ({ elements: [], legend: [heading, { text }] });
  if (!frame)
    return only(say.text("Nothing is drawn: the file has parts that cannot be read or placed yet."));
  const caseId = caseOf(overlay);
  const worst = caseId === WORST;
  const asked = frame.solution.cases.filter(({ frameCase }) => worst || frameCase.id === caseId);
  const combination = asked[0] && !worst ? frameCaseWords(asked[0].frameCase, say) : undefined;
  const title: LegendRow = {
    ...heading,
    text: say.text("{layer}: {combination}", {
      layer: heading.text,
      combination: combination ?? say.text("each timber under the combination that gives it the most"),
    }),
  };
  const none = whyNone(frame.solution, asked, say);
  if (none !== undefined) return { elements: [], legend: [title, { text: none }] };
  const cases = asked.filter(({ combined }) => combined.status !== "failed");
  const lines = linesOf(sight, bodies);
  const basis: Basis = { worst, cases, sight, lines, layout };
  const drawn = layer === "deflected" ? drawShape(basis) : drawDiagrams(basis, layer);
  return {
    elements: drawn.elements,
    legend: [title, ...drawn.legend, ...notes(basis, layer, asked, bodies)],
  };
}

/** What a reader has to know besides. */
function notes(
  basis: Basis,
  layer: Overlay["layer"],
  asked: readonly SolvedCase[],
  bodies: readonly Body[],
): LegendRow[] {
  const { cases, lines, layout } = basis;
  const { say } = layout;
  const rows: string[] = [];
  if (lines.length < bodies.length) rows.push(say.text("Timbers that run out of this plane are left out."));
  if (!basis.worst && cases.some(({ bracesNominal }) => bracesNominal))
    rows.push(
      say.text(
        "All braces go slack without being needed; they are taken to work both ways, with nominal stiffness.",
      ),
    );
  if (layer !== "deflected" && cases.some(({ seats }) => seats === "slide"))
    rows.push(say.text("Rafter seats that hold the thrust, or that slide: the worse for each timber."));
  const lost = new Set(asked.filter((c) => !cases.includes(c)).map(({ frameCase }) => frameCase.id)).size;
  if (lost > 0) rows.push(say.text("Combinations without an answer, left out: {count}.", { count: lost }));
  return rows.map((text) => ({ text }));
}
