/** `bentwright check`: the findings of one or more files. */
import { countsOf } from "../language/diagnostics.ts";
import { type Command, EXIT, nameOf, readArguments, readText, WrongCall } from "./command.ts";
import { type CheckedFile, jsonReport } from "./report-json.ts";
import { textReport } from "./report-text.ts";

const FORMATS = ["text", "json"];

const HELP = `Usage: bentwright check [--format text|json] FILE…

Reads frame files and says what is wrong with them, one finding a line:

  FILE:LINE:COLUMN LEVEL CHECK MESSAGE

A level is error, warning or note. \`bentwright explain CHECK\` says what a check is about.

  FILE            a frame file; - reads standard input
  --format json   a report for programs, as schemas/report.schema.json describes it

Exit code: 0 no error, 1 at least one error, 2 called wrongly or a file cannot be opened.`;

export const check: Command = {
  name: "check",
  summary: "say what is wrong with frames",
  help: HELP,
  run(args, around, service) {
    const { values, positionals } = readArguments(args, { format: { type: "string", default: "text" } });
    if (!FORMATS.includes(values.format))
      throw new WrongCall(`There is no format \`${values.format}\`; there are ${FORMATS.join(" and ")}.`);
    const files = [...new Set(positionals)];
    if (files.length === 0) throw new WrongCall("Name at least one frame file.");

    const checked: CheckedFile[] = [];
    const unopened: string[] = [];
    for (const file of files) {
      try {
        checked.push({ file, snapshot: service.open(file, 0, readText(file, around)) });
      } catch (error) {
        if (!(error instanceof WrongCall)) throw error;
        unopened.push(error.message);
      }
    }
    if (checked.length > 0)
      around.out(values.format === "json" ? jsonReport(checked) : textReport(checked, around.color));
    if (unopened.length > 0) {
      around.err(`${unopened.join("\n")}\n`);
      return EXIT.wrongCall;
    }
    for (const { file, snapshot } of checked)
      for (const { what, error } of snapshot.faults)
        around.err(`${nameOf(file)}: broke down while ${what}: ${stackOf(error)}\n`);
    return checked.some(({ snapshot }) => countsOf(snapshot).errors > 0) ? EXIT.errors : EXIT.fine;
  },
};

function stackOf(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}
