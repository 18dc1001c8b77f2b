/**
 * `npm run bench`: time from text to findings for each sample and for generated frames, and of completion in the samples.
 * `-- --json` prints rows.
 */
import { readdirSync, readFileSync } from "node:fs";
import { completionTimes } from "./completion.ts";
import { inEditorNode, runtime } from "./editor-node.ts";
import { frameText, shapeOf } from "./generate.ts";
import { type Keystroke, measure, type Row, WHERE } from "./measure.ts";

const SAMPLES = new URL("../../samples/", import.meta.url);
const SIZES = [100, 300, 1000, 3000];
/** What is aimed at: ms for a sample and for a frame of 300 timbers, power of the number of timbers. */
const AIM = { sample: 50, of300: 250, power: 1.3, completion: 50 };

inEditorNode();

const texts = readdirSync(SAMPLES)
  .filter((name) => name.endsWith(".frame.yaml"))
  .map((name) => [name.replace(".frame.yaml", ""), readFileSync(new URL(name, SAMPLES), "utf8")] as const);
const samples = texts.map(([name, text]) => measure(name, text));
const generated = SIZES.map((size) => measure(`generated-${size}`, frameText(shapeOf(size))));
const rows = [...samples, ...generated];

if (process.argv.includes("--json")) {
  console.log(
    JSON.stringify(
      rows.map(({ name, timbers, ms }) => ({
        name,
        timbers,
        ms: Object.fromEntries(Object.entries(ms).map(([where, time]) => [where, rounded(time)])),
      })),
      null,
      2,
    ),
  );
} else {
  console.log(`from text to findings, one digit typed, warm, median, ms; ${runtime()}\n`);
  const wide = Math.max(...rows.map(({ name }) => name.length));
  const cell = (text: string): string => text.padStart(10);
  console.log(`${" ".repeat(wide)} ${cell("timbers")}${WHERE.map(cell).join("")}`);
  for (const { name, timbers, ms } of rows)
    console.log(
      `${name.padEnd(wide)} ${cell(String(timbers))}${WHERE.map((w) => cell(ms[w]?.toFixed(1) ?? "-")).join("")}`,
    );
  console.log("");
  for (const where of WHERE) for (const verdictLine of verdict(where)) console.log(verdictLine);
  for (const [name, text] of texts) {
    const { middle, most } = completionTimes(name, text);
    console.log(
      line(name, `completion, middle ${middle.toFixed(1)} ms, slowest place`, most, AIM.completion, " ms"),
    );
  }
}

function rounded(ms: number): number {
  return Math.round(ms * 100) / 100;
}

/** The aims, each with what was measured. */
function verdict(where: Keystroke): string[] {
  const slowest = Math.max(...samples.map(({ ms }) => ms[where] ?? 0));
  const of300 = generated[SIZES.indexOf(300)]?.ms[where] ?? Number.NaN;
  const power = exponent(generated.at(0), generated.at(-1), where);
  return [
    line(where, "slowest sample", slowest, AIM.sample, " ms"),
    line(where, "300 timbers", of300, AIM.of300, " ms"),
    line(where, `growth from ${SIZES[0]} to ${SIZES.at(-1)}, timbers to the power of`, power, AIM.power, ""),
  ];
}

function line(what: string, name: string, value: number, aim: number, unit: string): string {
  const digits = unit === "" ? 2 : 1;
  return `${value < aim ? "meets " : "misses"} ${what}: ${name} ${value.toFixed(digits)}${unit}, aim below ${aim}${unit}`;
}

/** The power of the number of timbers that the time grows with. */
function exponent(small: Row | undefined, large: Row | undefined, where: Keystroke): number {
  if (!small || !large) return Number.NaN;
  const growth = (large.ms[where] ?? Number.NaN) / (small.ms[where] ?? Number.NaN);
  return Math.log(growth) / Math.log(large.timbers / small.timbers);
}
