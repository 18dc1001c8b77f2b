/** Measures the way from a text to its findings, as a keystroke goes it: warm, without debounce, nothing cached. */
import { createFrameService } from "../../server/language/frame-service.ts";

export interface Row {
  readonly name: string;
  readonly timbers: number;
  readonly median_ms: number;
}

/** One keystroke in the frost depth or a pier's depth: another frame, so every stage runs again. */
const KEYSTROKE = /(depth: \d*)(\d)/;

/** The text itself and the same with one digit changed. */
export function keystrokes(text: string): readonly [string, string] {
  const other = text.replace(
    KEYSTROKE,
    (_, before: string, digit: string) => before + (digit === "0" ? "1" : "0"),
  );
  if (other === text) throw new Error("There is no depth in this text to change a digit of.");
  return [text, other];
}

/**
 * @param runs how many times at least, and for how long at most (milliseconds) once three are done
 * @returns median of the runs after the first ones, which warm up
 */
export function measure(name: string, text: string, runs = { warm: 5, count: 25, budget: 6000 }): Row {
  const service = createFrameService();
  const texts = keystrokes(text);
  const times: number[] = [];
  let timbers = 0;
  let version = 0;
  let before: unknown;
  const began = performance.now();
  while (times.length < runs.warm + runs.count) {
    const start = performance.now();
    const { evaluation } = service.open(`file:///${name}`, ++version, texts[version % 2] ?? text);
    times.push(performance.now() - start);
    if (!evaluation || evaluation.model === before) throw new Error(`${name} was not checked anew.`);
    before = evaluation.model;
    timbers = evaluation.model.timbers.length;
    if (times.length >= runs.warm + 3 && performance.now() - began > runs.budget) break;
  }
  const warm = times.slice(runs.warm).sort((a, b) => a - b);
  return { name, timbers, median_ms: warm[Math.floor(warm.length / 2)] ?? Number.NaN };
}
