/** Finds the command that is asked for, and answers calls that cannot be carried out. */
import { nearest } from "../core/text/nearest.ts";
import { createFrameService } from "../language/frame-service.ts";
import { VERSION } from "../version.ts";
import { check } from "./check.ts";
import { type Command, EXIT, type Surroundings, WrongCall } from "./command.ts";
import { draw } from "./draw.ts";
import { explain } from "./explain.ts";
import { forces } from "./forces.ts";
import { hover } from "./hover.ts";
import { joint } from "./joint.ts";
import { layout } from "./layout.ts";
import { model } from "./model.ts";
import { newFrame } from "./new.ts";

const COMMANDS: readonly Command[] = [newFrame, check, draw, joint, layout, forces, model, hover, explain];

const USAGE = `Bentwright checks timber frames that are written as *.frame.yaml files.

Usage: bentwright COMMAND …

${COMMANDS.map(({ name, summary }) => `  ${name.padEnd(9)}${summary}`).join("\n")}

  bentwright COMMAND --help   how to call one of them
  bentwright --version        the version

Exit code: 0 when no error is found, 1 when there is one, 2 when the call is wrong
or a file cannot be opened.
`;

/**
 * Carries out one call of the command line. Never throws for what the user wrote.
 * @returns the exit code
 */
export function run(args: readonly string[], around: Surroundings): number {
  const [word, ...rest] = args;
  if (word === "--version" || word === "-v") {
    around.out(`${VERSION}\n`);
    return EXIT.fine;
  }
  if (word === "--help" || word === "-h" || word === "help") {
    around.out(USAGE);
    return EXIT.fine;
  }
  if (word === undefined) {
    around.err(USAGE);
    return EXIT.wrongCall;
  }
  const command = COMMANDS.find(({ name }) => name === word);
  if (!command) {
    const close = nearest(
      word,
      COMMANDS.map(({ name }) => name),
    );
    const hint = close === undefined ? "" : ` Did you mean \`${close}\`?`;
    around.err(`There is no command \`${word}\`.${hint}\n\n${USAGE}`);
    return EXIT.wrongCall;
  }
  if (rest.includes("--help") || rest.includes("-h")) {
    around.out(`${command.help}\n`);
    return EXIT.fine;
  }
  try {
    return command.run(rest, around, createFrameService());
  } catch (error) {
    if (!(error instanceof WrongCall)) throw error;
    around.err(`${error.message}\nSee: bentwright ${command.name} --help\n`);
    return EXIT.wrongCall;
  }
}
