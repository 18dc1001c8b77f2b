/** `npm run bench`: time from text to findings for each sample and for generated frames. `-- --json` prints rows. */
import { readdirSync, readFileSync } from "node:fs";
import { frameText, shapeOf } from "./generate.ts";
import { measure, type Row } from "./measure.ts";

const SAMPLES = new URL("../../samples/", import.meta.url);
const SIZES = [100, 300, 1000, 3000];
/** What is aimed at: ms for a sample and for a frame of 300 timbers, power of the number of timbers. */
const AIM = { sample: 50, of300: 250, power: 1.3 };

const samples = readdirSync(SAMPLES)
  .filter((name) => name.endsWith(".frame.yaml"))
  .map((name) => measure(name.replace(".frame.yaml", ""), readFileSync(new URL(name, SAMPLES), "utf8")));
const generated = SIZES.map((size) => measure(`generated-${size}`, frameText(shapeOf(size))));
const rows = [...samples, ...generated];

if (process.argv.includes("--json")) {
  console.log(
    JSON.stringify(
      rows.map((row) => ({ ...row, median_ms: rounded(row.median_ms), forces_ms: rounded(row.forces_ms) })),
      null,
      2,
    ),
  );
} else {
  console.log("from text to findings, one digit typed, warm, median: forces stay / every stage anew\n");
  const wide = Math.max(...rows.map(({ name }) => name.length));
  for (const { name, timbers, median_ms, forces_ms } of rows)
    console.log(
      `${name.padEnd(wide)} ${String(timbers).padStart(6)} timbers ${median_ms.toFixed(1).padStart(9)} ms ${forces_ms.toFixed(1).padStart(9)} ms`,
    );
  console.log("");
  for (const line of [...verdict("forces stay", "median_ms"), ...verdict("every stage anew", "forces_ms")])
    console.log(line);
}

function rounded(ms: number): number {
  return Math.round(ms * 100) / 100;
}

/** The aims, each with what was measured. */
function verdict(what: string, time: "median_ms" | "forces_ms"): string[] {
  const slowest = Math.max(...samples.map((row) => row[time]));
  const of300 = generated[SIZES.indexOf(300)]?.[time] ?? Number.NaN;
  const power = exponent(generated.at(0), generated.at(-1), time);
  return [
    line(what, "slowest sample", slowest, AIM.sample, " ms"),
    line(what, "300 timbers", of300, AIM.of300, " ms"),
    line(what, `growth from ${SIZES[0]} to ${SIZES.at(-1)}, timbers to the power of`, power, AIM.power, ""),
  ];
}

function line(what: string, name: string, value: number, aim: number, unit: string): string {
  const digits = unit === "" ? 2 : 1;
  return `${value < aim ? "meets " : "misses"} ${what}: ${name} ${value.toFixed(digits)}${unit}, aim below ${aim}${unit}`;
}

/** The power of the number of timbers that the time grows with. */
function exponent(small: Row | undefined, large: Row | undefined, time: "median_ms" | "forces_ms"): number {
  if (!small || !large) return Number.NaN;
  return Math.log(large[time] / small[time]) / Math.log(large.timbers / small.timbers);
}
