/** `bentwright model`: the frame as the analysis takes it, for whoever wants to check the answer with another solver. */
import { CAUTION } from "../language/caution.ts";
import { VERSION } from "../version.ts";
import { type Command, EXIT, readArguments, WrongCall } from "./command.ts";
import { analysed } from "./frame-of.ts";
import { jsonText } from "./json-text.ts";
import { modelJson } from "./model-json.ts";

const HELP = `Usage: bentwright model --format json FILE

Prints the resolved analysis model, so that any other frame solver can check the answer:
nodes, elements with section, stiffness, orientation and releases, links, supports, the loads
of every combination, and what Bentwright found. schemas/model.schema.json describes it.

  FILE            a frame file; - reads standard input
  --format json   the only format, and the usual one

Exit code: 0 printed, 1 the frame cannot be analysed, 2 called wrongly or a file cannot be
opened.`;

/** Version of the model's shape; raised when a member changes its meaning or goes. */
const MODEL = 1;

export const model: Command = {
  name: "model",
  summary: "print the analysis model for another solver",
  help: HELP,
  run(args, around, service) {
    const { values, positionals } = readArguments(args, { format: { type: "string", default: "json" } });
    if (values.format !== "json")
      throw new WrongCall(`There is no format \`${values.format}\`; there is json.`);
    const found = analysed(positionals, around, service);
    if (!found) return EXIT.errors;
    around.out(
      jsonText({
        model: MODEL,
        tool: { name: "bentwright", version: VERSION },
        file: found.file,
        ...modelJson(found.frame.solution, found.snapshot.say),
        caution: CAUTION,
      }),
    );
    return EXIT.fine;
  },
};
