/** `npm run bench`: time from text to findings for each sample and for generated frames. `-- --json` prints rows. */
import { readdirSync, readFileSync } from "node:fs";
import { frameText, shapeOf } from "./generate.ts";
import { measure, type Row } from "./measure.ts";

const SAMPLES = new URL("../../samples/", import.meta.url);
const SIZES = [100, 300, 1000];

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
  const growth = exponent(generated.at(0), generated.at(-1));
  if (growth !== undefined)
    console.log(`\ngrowth from ${SIZES[0]} to ${SIZES.at(-1)}: timbers to the power of ${growth.toFixed(2)}`);
}

function rounded(ms: number): number {
  return Math.round(ms * 100) / 100;
}

/** The power of the number of timbers that the time grows with. */
function exponent(small: Row | undefined, large: Row | undefined): number | undefined {
  if (!small || !large) return undefined;
  return Math.log(large.forces_ms / small.forces_ms) / Math.log(large.timbers / small.timbers);
}
