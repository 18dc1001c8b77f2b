/** The command line: `bentwright COMMAND …`. What it does is in `cli/run.ts`; here it gets files and a terminal. */
import { readFileSync, readSync, writeFileSync } from "node:fs";
import { run } from "./cli/run.ts";

const STANDARD_INPUT = 0;
const LINE_END = 10;

// A reader that has seen enough (`| head`) closes the pipe; that is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit();
});

process.exitCode = run(process.argv.slice(2), {
  read: (file) => readFileSync(file === "-" ? STANDARD_INPUT : file),
  write: (file, text, fresh) => writeFileSync(file, text, { flag: fresh ? "wx" : "w" }),
  ask: process.stdin.isTTY === true ? askAtTerminal : undefined,
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  color: process.stdout.isTTY === true && !process.env.NO_COLOR,
});

/** Standard output stays free for the file that is written. */
function askAtTerminal(question: string): string | undefined {
  process.stderr.write(question);
  const bytes: number[] = [];
  const byte = new Uint8Array(1);
  while (readSync(STANDARD_INPUT, byte) === 1) {
    const [one = 0] = byte;
    if (one === LINE_END) return new TextDecoder().decode(Uint8Array.from(bytes));
    bytes.push(one);
  }
  return bytes.length > 0 ? new TextDecoder().decode(Uint8Array.from(bytes)) : undefined;
}
