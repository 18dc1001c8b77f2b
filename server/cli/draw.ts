/** `bentwright draw`: an elevation of a frame as SVG. */
import type { Say } from "../core/checks/say.ts";
import type { Evaluation } from "../core/evaluate.ts";
import { drawElevation } from "../drawing/elevation.ts";
import { caseIds, layerOf, layersOf, NONE, type Overlay, WORST } from "../drawing/forces-cases.ts";
import { toSvg } from "../drawing/svg.ts";
import { viewsOf } from "../drawing/views.ts";
import { type Command, EXIT, nameOf, readArguments, readText, WrongCall, writeTo } from "./command.ts";

const HELP = `Usage: bentwright draw FILE [--view VIEW] [--layer LAYER] [--case ID]
                       [-o OUTPUT]

Draws an elevation as SVG, at its true proportions, with the forces over it if asked.

  FILE               a frame file; - reads standard input
  --view VIEW        front, side, a wall (A) or a bent (2); front when left out
  --layer LAYER      axial, shear, moment or deflected; none when left out
  --case ID          the load combination of the layer, by the number or the id that
                     \`bentwright forces\` shows for it, or worst: each timber under the
                     one that gives it the most (no deflected shape has that); dead load
                     with balanced snow when left out
  -o, --output FILE  where to write it; - (the usual) is standard output

Exit code: 0 drawn, 1 the frame gives nothing to draw, 2 called wrongly or a file
cannot be opened.`;

export const draw: Command = {
  name: "draw",
  summary: "draw an elevation as SVG",
  help: HELP,
  run(args, around, service) {
    const { values, positionals } = readArguments(args, {
      view: { type: "string", default: "front" },
      layer: { type: "string", default: NONE },
      case: { type: "string" },
      output: { type: "string", short: "o", default: "-" },
    });
    const [file, ...others] = positionals;
    if (file === undefined || others.length > 0) throw new WrongCall("Name one frame file.");
    const { evaluation, say } = service.open(file, 0, readText(file, around));
    const model = evaluation?.model;
    if (!evaluation || !model || model.timbers.length === 0) {
      around.err(`${nameOf(file)} has no timber that can be placed. See: bentwright check ${file}\n`);
      return EXIT.errors;
    }
    const views = viewsOf(model);
    if (!views.some(({ id }) => id === values.view))
      throw new WrongCall(
        `There is no view \`${values.view}\`; this frame has ${views.map(({ id }) => id).join(", ")}.`,
      );
    const overlay = overlayOf(values.layer, values.case, evaluation, say);
    const svg = toSvg(drawElevation(model, values.view, say, overlay), { standalone: true });
    writeTo(values.output, svg, around);
    return EXIT.fine;
  },
};

/** @throws WrongCall for a layer or a combination that there is not, and for a combination without a layer */
function overlayOf(
  name: string,
  caseId: string | undefined,
  evaluation: Evaluation,
  say: Say,
): Overlay | undefined {
  const layers = layersOf(say).map(({ id }) => id);
  if (!layers.includes(name))
    throw new WrongCall(`There is no layer \`${name}\`; there are ${layers.join(", ")}.`);
  const layer = layerOf(name);
  if (!layer) {
    if (caseId === undefined) return undefined;
    throw new WrongCall("--case says under which loads a layer is drawn; name one with --layer.");
  }
  const { frame } = evaluation.results;
  const cases = caseIds({ layer, caseId: "", frame });
  const overlay: Overlay = { layer, caseId: idOf(caseId, cases), frame };
  if (caseId !== undefined && frame && !cases.includes(overlay.caseId))
    throw new WrongCall(
      `There is no combination \`${caseId}\` for the layer ${layer}; this frame has ${cases.join(", ")}.`,
    );
  return overlay;
}

/** `3` is the third combination of the table that `bentwright forces` prints; the ids come in its order. */
function idOf(asked: string | undefined, cases: readonly string[]): string {
  if (asked === undefined || cases.includes(asked) || !/^\d+$/.test(asked)) return asked ?? "";
  return cases.filter((id) => id !== WORST)[Number(asked) - 1] ?? asked;
}
