/** `bentwright hover`: what an editor shows when the mouse rests at a place of a file. */
import { hoverAt } from "../language/hover.ts";
import { type Command, EXIT, readArguments, readText, WrongCall } from "./command.ts";

const HELP = `Usage: bentwright hover FILE:LINE:COLUMN

Prints, as Markdown, what an editor shows at that place: what a key means, a length in
both systems, the true length and weight of a timber, the cut sizes of a joint.

  LINE, COLUMN    from 1; columns count as editors do (UTF-16)

Exit code: 0 also when there is nothing to say, 2 called wrongly or the file cannot be opened.`;

export const hover: Command = {
  name: "hover",
  summary: "say what stands at a place of a file",
  help: HELP,
  run(args, around, service) {
    const { positionals } = readArguments(args, {});
    const [place, ...others] = positionals;
    const parts = place === undefined ? null : /^(.+):(\d{1,9}):(\d{1,9})$/s.exec(place);
    if (!parts || others.length > 0)
      throw new WrongCall("Name one place as FILE:LINE:COLUMN, for example pavilion.frame.yaml:12:5.");
    const [, file = "", line, column] = parts;
    if (Number(line) < 1 || Number(column) < 1) throw new WrongCall("Lines and columns count from 1.");
    const snapshot = service.open(file, 0, readText(file, around));
    const found = hoverAt(snapshot, { line: Number(line) - 1, character: Number(column) - 1 });
    around.out(found ? `${found.contents.value}\n` : `Nothing to say about ${place}.\n`);
    return EXIT.fine;
  },
};
