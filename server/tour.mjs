/** `npm start`: the main job on the samples, with the built command line, as a first look. */
import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync } from "node:fs";

const PAVILION = "samples/cider-press-pavilion.frame.yaml";

/** One line of the sample, so that the tour keeps its place when the sample is edited. */
const joint =
  readFileSync(PAVILION, "utf8")
    .split("\n")
    .findIndex((line) => line.includes("tie-end:")) + 1;

/** @param {string[]} args */
function bentwright(...args) {
  process.stdout.write(`\n$ bentwright ${args.join(" ")}\n`);
  return spawnSync(process.execPath, ["dist/cli.js", ...args], { stdio: "inherit" }).status ?? 1;
}

mkdirSync("out", { recursive: true });
const good = bentwright(
  "check",
  "samples/garden-arch.frame.yaml",
  "samples/kayak-shelter.frame.yaml",
  PAVILION,
);
bentwright("check", "samples/wrong-on-purpose.frame.yaml");
bentwright("hover", `${PAVILION}:${joint}:4`);
const drawn = bentwright("draw", PAVILION, "--view", "front", "-o", "out/pavilion-front.svg");
process.stdout.write(
  "\nThe front elevation is in out/pavilion-front.svg. To try it in VS Code, open this folder there and press F5.\n",
);
process.exitCode = good || drawn;
