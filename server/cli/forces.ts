/** `bentwright forces`: what every timber, joint and pier carries. */
import { CAUTION } from "../language/caution.ts";
import { hasForces } from "../language/hover/unsolved.ts";
import { VERSION } from "../version.ts";
import { type Command, EXIT, readArguments } from "./command.ts";
import { forcesText } from "./forces-text.ts";
import { analysed, formatOf } from "./frame-of.ts";
import { jsonText } from "./json-text.ts";
import { resultsJson } from "./results-json.ts";

const HELP = `Usage: bentwright forces [--format text|json] FILE

Prints how every load came about, factor by factor with source and status, and what the
frame analysis finds: every load combination with what is applied and what the piers
answer; the design values of each wood and how well they are known; for every timber how
far it is used, by which check and combination, and its largest forces; for every joint
its forces; for every pier its reactions.

  FILE            a frame file; - reads standard input
  --format json   for programs, as schemas/forces.schema.json describes it: pounds, inches,
                  psi, with every adjustment factor and its source

Exit code: 0 printed, 1 the frame cannot be analysed or has no answer, 2 called wrongly or a
file cannot be opened. Whether it holds is said by \`bentwright check\`.`;

/** Version of the report's shape; raised when a member changes its meaning or goes. */
const FORCES = 1;

export const forces: Command = {
  name: "forces",
  summary: "say what timbers, joints and piers carry",
  help: HELP,
  run(args, around, service) {
    const { values, positionals } = readArguments(args, { format: { type: "string", default: "text" } });
    const format = formatOf(values.format);
    const found = analysed(positionals, around, service);
    if (!found) return EXIT.errors;
    const { file, snapshot, results, frame } = found;
    const answered = hasForces(frame) ? EXIT.fine : EXIT.errors;
    if (format === "text") {
      around.out(`${forcesText(results, frame, snapshot.say)}\n\n${CAUTION}\n`);
      return answered;
    }
    around.out(
      jsonText({
        forces: FORCES,
        tool: { name: "bentwright", version: VERSION },
        file,
        results: resultsJson(results, snapshot.say),
        caution: CAUTION,
      }),
    );
    return answered;
  },
};
