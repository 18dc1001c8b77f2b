/** `bentwright draw`: an elevation of a frame as SVG. */
import { drawElevation } from "../drawing/elevation.ts";
import { toSvg } from "../drawing/svg.ts";
import { viewsOf } from "../drawing/views.ts";
import { type Command, EXIT, nameOf, readArguments, readText, WrongCall, whyNot } from "./command.ts";

const HELP = `Usage: bentwright draw FILE [--view VIEW] [-o OUTPUT]

Draws an elevation as SVG, at its true proportions.

  FILE               a frame file; - reads standard input
  --view VIEW        front, side, a wall (A) or a bent (2); front when left out
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
      output: { type: "string", short: "o", default: "-" },
    });
    const [file, ...others] = positionals;
    if (file === undefined || others.length > 0) throw new WrongCall("Name one frame file.");
    const { evaluation, say } = service.open(file, 0, readText(file, around));
    const model = evaluation?.model;
    if (!model || model.timbers.length === 0) {
      around.err(`${nameOf(file)} has no timber that can be placed. See: bentwright check ${file}\n`);
      return EXIT.errors;
    }
    const views = viewsOf(model);
    if (!views.some(({ id }) => id === values.view))
      throw new WrongCall(
        `There is no view \`${values.view}\`; this frame has ${views.map(({ id }) => id).join(", ")}.`,
      );
    const svg = toSvg(drawElevation(model, values.view, say), { standalone: true });
    if (values.output === "-") {
      around.out(svg);
      return EXIT.fine;
    }
    try {
      around.write(values.output, svg);
    } catch (error) {
      throw new WrongCall(`${values.output} cannot be written: ${whyNot(error)}.`);
    }
    return EXIT.fine;
  },
};
