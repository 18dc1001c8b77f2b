/** Measures the way from a text to its findings, as a keystroke goes it: warm, without debounce. */
import { createFrameService } from "../../server/language/frame-service.ts";

/** Where a digit is typed, which decides how much has to be worked out again. */
export const KEYSTROKES = {
  /** the frost depth or a pier's depth: another frame, in which the forces stay */
  depth: /(depth: \d*)(\d)/,
  /** the snow or the wind: other loads on the frame as it is */
  loads: /((?:snow: \{ground: |wind: \{speed: )[\d.]*)(\d)/,
  /** a section: nothing stays */
  section: /(section: \d+x\d*)(\d)/,
} as const;

export type Keystroke = keyof typeof KEYSTROKES;
export const WHERE = Object.keys(KEYSTROKES) as readonly Keystroke[];

export interface Row {
  readonly name: string;
  readonly timbers: number;
  /** median, ms; missing where the text has nothing of the kind */
  readonly ms: Readonly<Partial<Record<Keystroke, number>>>;
}

/** The text itself and the same with one digit changed. */
export function keystrokes(text: string, where: RegExp): readonly [string, string] {
  const other = text.replace(
    where,
    (_, before: string, digit: string) => before + (digit === "5" ? "6" : "5"),
  );
  if (other === text) throw new Error("There is nothing of that kind in this text to change a digit of.");
  return [text, other];
}

interface Runs {
  /** runs that only warm up: so many, and until so many ms are over, for a program is slow until it has been compiled */
  readonly warm: number;
  readonly warmFor: number;
  /** runs that only warm up end after so many ms, however few they were: by then a large frame has compiled everything */
  readonly warmMost: number;
  /** runs that count; fewer once three are done and so many ms are over */
  readonly count: number;
  readonly budget: number;
}

const RUNS: Runs = { warm: 3, warmFor: 5000, warmMost: 10_000, count: 25, budget: 6000 };

/** @returns medians of the runs that count */
export function measure(name: string, text: string, runs = RUNS): Row {
  let timbers = 0;
  const ms: Partial<Record<Keystroke, number>> = {};
  for (const where of WHERE) {
    if (!KEYSTROKES[where].test(text)) continue;
    const timed = timeOf(name, keystrokes(text, KEYSTROKES[where]), runs);
    timbers = timed.timbers;
    ms[where] = timed.median;
  }
  return { name, timbers, ms };
}

function timeOf(
  name: string,
  texts: readonly [string, string],
  runs: Runs,
): { readonly timbers: number; readonly median: number } {
  const service = createFrameService();
  const times: number[] = [];
  let timbers = 0;
  let version = 0;
  let before: unknown;
  const began = performance.now();
  let warmUntil = began + runs.warmFor;
  while (times.length < runs.count) {
    const start = performance.now();
    const { evaluation } = service.open(`file:///${name}`, ++version, texts[version % 2 === 0 ? 0 : 1]);
    const end = performance.now();
    if (!evaluation || evaluation.model === before) throw new Error(`${name} was not checked anew.`);
    before = evaluation.model;
    timbers = evaluation.model.timbers.length;
    const cold = version <= runs.warm && end - began < runs.warmMost;
    if (cold || end < warmUntil) continue;
    warmUntil = 0;
    times.push(end - start);
    if (times.length >= 3 && end - began > runs.budget) break;
  }
  const sorted = times.sort((a, b) => a - b);
  return { timbers, median: sorted[Math.floor(sorted.length / 2)] ?? Number.NaN };
}
