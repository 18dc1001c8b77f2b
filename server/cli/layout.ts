/** `bentwright layout`: what to mark on each stick, from its reference faces. */
import type { Model } from "../core/model/model.ts";
import { layoutSticks, type StickLayout } from "../core/shop/layout/layout.ts";
import { nearest } from "../core/text/nearest.ts";
import { CAUTION } from "../language/caution.ts";
import { VERSION } from "../version.ts";
import { type Command, EXIT, nameOf, readArguments, readText, WrongCall } from "./command.ts";
import { formatOf } from "./frame-of.ts";
import { jsonText } from "./json-text.ts";
import { layoutJson } from "./layout-json.ts";
import { layoutText } from "./layout-text.ts";

const HELP = `Usage: bentwright layout [--format text|json] FILE [TIMBER]

Prints what to mark on each stick at the sawhorses: its two reference faces and their
arris, shoulders and tenons, mortises, housings, seats and peg holes, each with its face,
its distance along the arris from one end and across the face, to 1/16 in or 1 mm.
Housings go down to the perfect timber; where a stick is measured (\`measured:\`), by what
it has over. Scribed joints say how much to leave long.

  FILE            a frame file; - reads standard input
  TIMBER          one stick (post@A1), or an entry for all its sticks (post); all when
                  left out
  --format json   for programs, as schemas/layout.schema.json describes it

Exit code: 0 printed, 1 the frame has no timber that can be placed, 2 called wrongly or a
file cannot be opened. Whether it can be cut so is said by \`bentwright check\`.`;

/** Version of the report's shape; raised when a member changes its meaning or goes. */
const LAYOUT = 1;

export const layout: Command = {
  name: "layout",
  summary: "say what to mark on each stick, from its reference faces",
  help: HELP,
  run(args, around, service) {
    const { values, positionals } = readArguments(args, { format: { type: "string", default: "text" } });
    const format = formatOf(values.format);
    const [file, timber, ...others] = positionals;
    if (file === undefined || others.length > 0)
      throw new WrongCall("Name one frame file, and at most one timber.");
    const { evaluation, say } = service.open(file, 0, readText(file, around));
    const model = evaluation?.model;
    if (!model || model.timbers.length === 0) {
      around.err(`${nameOf(file)} has no timber that can be placed. See: bentwright check ${file}\n`);
      return EXIT.errors;
    }
    const sticks = named(layoutSticks(model), timber, model);
    if (format === "text") {
      around.out(`${layoutText(sticks, model, say)}\n\n${CAUTION}\n`);
      return EXIT.fine;
    }
    around.out(
      jsonText({
        layout: LAYOUT,
        tool: { name: "bentwright", version: VERSION },
        file,
        ...layoutJson(sticks, model, say),
        caution: CAUTION,
      }),
    );
    return EXIT.fine;
  },
};

/** @throws WrongCall when no stick and no entry is called so */
function named(
  sticks: readonly StickLayout[],
  name: string | undefined,
  model: Model,
): readonly StickLayout[] {
  if (name === undefined) return sticks;
  const found = sticks.filter(({ timber }) => timber.id === name || timber.member === name);
  if (found.length > 0) return found;
  const close = nearest(name, [...model.byId.keys(), ...model.sticks.keys()]);
  const hint = close === undefined ? "" : ` Did you mean \`${close}\`?`;
  throw new WrongCall(`There is no timber \`${name}\` in this frame.${hint}`);
}
