/** The command line: `bentwright COMMAND …`. What it does is in `cli/run.ts`; here it gets files and a terminal. */
import { readFileSync, writeFileSync } from "node:fs";
import { run } from "./cli/run.ts";

const STANDARD_INPUT = 0;

// A reader that has seen enough (`| head`) closes the pipe; that is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit();
});

process.exitCode = run(process.argv.slice(2), {
  read: (file) => readFileSync(file === "-" ? STANDARD_INPUT : file),
  write: (file, text) => writeFileSync(file, text),
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  color: process.stdout.isTTY === true && !process.env.NO_COLOR,
});
