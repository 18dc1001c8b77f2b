/** Answers next to the given ones, to be tried for a frame that no listed section can carry. */
import type { Finding } from "../../core/checks/check.ts";
import type { Say } from "../../core/checks/say.ts";
import { type Answers, RANGES } from "./answers.ts";
import type { QuestionId } from "./questions.ts";

/** One answer changed; the words say what it would be. */
export interface Easier {
  readonly question: QuestionId;
  readonly answers: Answers;
  readonly help: string;
}

const FOOT = 12;
/** Shares of a length that are tried, the largest first. */
const SHARES = [0.85, 0.7, 0.55] as const;
/** The strongest softwood that is asked for. */
const STRONG = "douglas-fir-larch";

/**
 * @param left what could not be mended, the gravest first
 * @returns what is worth a trial, the least change first
 */
export function* easierAnswers(answers: Answers, left: readonly Finding[], say: Say): Generator<Easier> {
  const [longest] = left
    .filter(({ check }) => check === "longer-than-mill")
    .sort((a, b) => (b.value ?? 0) - (a.value ?? 0));
  if (longest) yield* sawnInOnePiece(answers, longest, say);
  else {
    yield* thickerLogs(answers, say);
    yield* moreBays(answers, say);
    yield* shorter("width", answers, SHARES, say);
    yield* shorter("eave", answers, SHARES.slice(0, 1), say);
    if (answers.species !== STRONG)
      yield {
        question: "species",
        answers: { ...answers, species: STRONG },
        help: say.text("In Douglas fir or western larch it can be made."),
      };
    yield* shorter("length", answers, SHARES, say);
  }
}

/** Which size a stick takes its length from. */
function sizeOf({ path }: Finding): "length" | "width" | "eave" {
  const [, , name = ""] = path.split("/");
  if (name.includes("plate") || name === "ridge") return "length";
  return name.includes("post") ? "eave" : "width";
}

function* sawnInOnePiece(answers: Answers, finding: Finding, say: Say): Generator<Easier> {
  const { value: needed = 0, limit: longest = 0 } = finding;
  const question = sizeOf(finding);
  yield* shorter(question, answers, [longest / needed, 0.9 * (longest / needed)], say);
  const cut = Math.min(RANGES.longest.most, Math.ceil(needed / FOOT) * FOOT);
  if (answers.mill && cut >= needed)
    yield {
      question: "mill",
      answers: { ...answers, mill: { ...answers.mill, longest: cut } },
      help: say.text("With a mill that cuts {length} it can be made.", { length: say.length(cut) }),
    };
}

/** Inches at the small end: what gives 8 in posts, and what gives the largest that are proposed. */
const LOGS = [14, 20] as const;

function* thickerLogs(answers: Answers, say: Say): Generator<Easier> {
  const { mill } = answers;
  if (mill?.log === undefined) return;
  for (const log of LOGS)
    if (log > mill.log)
      yield {
        question: "mill",
        answers: { ...answers, mill: { ...mill, log } },
        help: say.text("From logs of {log} at the small end it can be made.", { log: say.length(log) }),
      };
}

function* moreBays(answers: Answers, say: Say): Generator<Easier> {
  for (let bays = answers.bays + 1; bays <= RANGES.bays.most; bays += 1) {
    if (answers.length / bays < RANGES.bay.least) return;
    yield {
      question: "bays",
      answers: { ...answers, bays },
      help: say.text("With {bays} bays it can be made.", { bays }),
    };
  }
}

function* shorter(
  question: "length" | "width" | "eave",
  answers: Answers,
  shares: readonly number[],
  say: Say,
): Generator<Easier> {
  const tried = new Set([answers[question]]);
  for (const share of shares) {
    const size = round(answers[question] * share, answers);
    if (size < RANGES[question].least || tried.has(size)) continue;
    if (question === "length" && size / answers.bays < RANGES.bay.least) continue;
    tried.add(size);
    const words = { size: say.length(size) };
    yield {
      question,
      answers: { ...answers, [question]: size },
      help:
        question === "length"
          ? say.text("With a length of {size} it can be made.", words)
          : question === "width"
            ? say.text("With a width of {size} it can be made.", words)
            : say.text("With an eave height of {size} it can be made.", words),
    };
  }
}

/** Down to half a foot, or to 100 mm. */
function round(size: number, { units }: Answers): number {
  const step = units === "inch" ? FOOT / 2 : 100 / 25.4;
  return Math.floor(size / step + 1e-6) * step;
}
