/** Why no frame can be made for some answers, and other answers that are worth a trial. */
import type { Finding } from "../../core/checks/check.ts";
import type { Say } from "../../core/checks/say.ts";
import { type Answers, bayRefusal, RANGES } from "./answers.ts";
import { PITCH } from "./design.ts";
import type { QuestionId } from "./questions.ts";

type Size = "length" | "width" | "eave";

/** What stands in the way, and which answer it goes back to. */
export interface Obstacle {
  readonly question: Size | "bays";
  readonly why: string;
  /** what is longer than the mill's cut, inches; undefined where the mill is not in the way */
  readonly needed: number | undefined;
}

/** Other answers; the words say what they would be. */
export interface Easier {
  readonly question: QuestionId;
  readonly answers: Answers;
  readonly help: string;
  /** several answers at once: the last resort */
  readonly last?: true;
}

const FOOT = 12;
/** Shares of a length that are tried, the largest first. */
const SHARES = [0.85, 0.7, 0.55] as const;
/** The strongest softwood that is asked for. */
const STRONG = "douglas-fir-larch";
/** Beyond the plates: rafters, high posts and overhangs want somewhat more, inches. */
const MORE_CUT = [0, 24, 72] as const;
/** What one still walks under with a bowed head, inches. */
const LOW_EAVE = 96;
/** Rise in 12 of a roof that is tried where a steeper or flatter one cannot be made. */
const EASY_PITCHES = { gable: [PITCH.gable], shed: [PITCH.shed, 1] } as const;

/** Plates and ridge run from end to end in one piece: seen without working out the frame. */
export function beyondMill({ length, mill }: Answers, say: Say): Obstacle | undefined {
  if (!mill || length <= mill.longest + 1e-6) return undefined;
  const why = say.text(
    "The plates run from end to end in one piece, {length}, and the mill cuts at most {longest}.",
    { length: say.length(length), longest: say.length(mill.longest) },
  );
  return { question: "length", why, needed: length };
}

/** @param left what could not be mended, the gravest first */
export function obstacleOf(first: Finding, left: readonly Finding[], say: Say): Obstacle {
  const [longest] = left
    .filter(({ check }) => check === "longer-than-mill")
    .sort((a, b) => (b.value ?? 0) - (a.value ?? 0));
  const worst = longest ?? first;
  return {
    question: questionOf(worst),
    why: say.text("The best frame that was found still has this fault. {fault}", { fault: worst.message }),
    needed: longest?.value,
  };
}

/** What a stick spans or stands up to goes back to an answer. */
function questionOf({ check, path }: Finding): Obstacle["question"] {
  const [, , name = ""] = path.split("/");
  if (name.includes("plate") || name.startsWith("ridge"))
    return check === "longer-than-mill" ? "length" : "bays";
  return name.endsWith("post") && name !== "king-post" ? "eave" : "width";
}

/** @returns what is worth a trial: what the obstacle speaks of first, the least change first */
export function* easierAnswers(answers: Answers, obstacle: Obstacle, say: Say): Generator<Easier> {
  const { question, needed } = obstacle;
  if (needed === undefined) {
    yield* thickerLogs(answers, say);
    for (const way of new Set([question, "bays", "width", "eave", "length"] as const))
      yield* way === "bays" ? moreBays(answers, say) : shorter(way, answers, SHARES, say);
    yield* otherPitch(answers, say);
    if (answers.species !== STRONG)
      yield {
        question: "species",
        answers: { ...answers, species: STRONG },
        help: say.text("In Douglas fir or western larch it can be made."),
      };
  } else yield* sawnInOnePiece(answers, question, needed, say);
  yield smallest(answers, question, say);
}

function* sawnInOnePiece(
  answers: Answers,
  question: Obstacle["question"],
  needed: number,
  say: Say,
): Generator<Easier> {
  const { mill } = answers;
  if (!mill) return;
  const share = mill.longest / needed;
  if (question !== "bays") yield* shorter(question, answers, [share, 0.9 * share], say);
  for (const more of MORE_CUT) {
    const longest = Math.ceil((needed + more) / FOOT) * FOOT;
    if (longest > RANGES.longest.most) return;
    yield {
      question: "mill",
      answers: { ...answers, mill: { ...mill, longest } },
      help: say.text("With a mill that cuts {length} it can be made.", { length: say.length(longest) }),
    };
  }
}

/** The narrowest and lowest with the most bays, no longer than the mill saws. */
function smallest(answers: Answers, question: QuestionId, say: Say): Easier {
  const { mill } = answers;
  const width = rounded(RANGES.width.least, answers, Math.ceil);
  const eave = Math.min(answers.eave, LOW_EAVE);
  const length = mill ? rounded(Math.min(answers.length, mill.longest), answers) : answers.length;
  const fitting = [4, 3, 2, 1].find((count) => bayRefusal(length, count, say) === undefined);
  const bays = fitting ?? answers.bays;
  return {
    question,
    answers: { ...answers, width, eave, length, bays },
    help: say.text(
      "With all of this it can be made: a width of {width}, a length of {length}, an eave height of {eave}, bays: {bays}.",
      { width: say.length(width), length: say.length(length), eave: say.length(eave), bays },
    ),
    last: true,
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

function* otherPitch(answers: Answers, say: Say): Generator<Easier> {
  for (const rise of EASY_PITCHES[answers.roof]) {
    if (rise === answers.pitch.rise) continue;
    const text = `${rise}:12`;
    const help = say.text("With a pitch of {pitch} it can be made.", { pitch: text });
    yield { question: "pitch", answers: { ...answers, pitch: { text, rise } }, help };
  }
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

function* shorter(question: Size, answers: Answers, shares: readonly number[], say: Say): Generator<Easier> {
  const tried = new Set([answers[question]]);
  for (const share of shares) {
    const size = rounded(answers[question] * share, answers);
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

/** To half a foot, or to 100 mm. */
function rounded(size: number, { units }: Answers, way: (steps: number) => number = Math.floor): number {
  const step = units === "inch" ? FOOT / 2 : 100 / 25.4;
  // what is whole but for the last digit stays
  const steps = size / step;
  return (Math.abs(steps - Math.round(steps)) < 1e-6 ? Math.round(steps) : way(steps)) * step;
}
