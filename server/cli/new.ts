/** `bentwright new`: a frame file from a few answers, asked for in turn or given as flags. */
import { SITE_QUESTIONS } from "../language/new-frame/answers.ts";
import {
  newFrameQuestions,
  newFrameRefusal,
  QUESTION_IDS,
  type QuestionId,
} from "../language/new-frame/questions.ts";
import { writeFrame } from "../language/new-frame/write.ts";
import { NEW_FRAME_UNKNOWN, type NewFrameAnswers, type NewFrameQuestion } from "../protocol.ts";
import { type Command, EXIT, readArguments, type Surroundings, WrongCall, writeTo } from "./command.ts";
import { newFrameHelp } from "./new-help.ts";

type Flag = QuestionId | "units" | "out";
const OPTIONS = Object.fromEntries(
  [...QUESTION_IDS, "units", "out"].map((name) => [name, { type: "string" }]),
) as Readonly<Record<Flag, { readonly type: "string" }>>;

const ASK_FOR_SITE =
  "Usual snow, wind and frost are not those of your site: ask the building department, or write unknown.";

export const newFrame: Command = {
  name: "new",
  summary: "write a small frame for a few answers",
  help: newFrameHelp(),
  run(args, around) {
    const { values, positionals } = readArguments(withSigns(args), OPTIONS);
    if (positionals.length > 0) throw new WrongCall('Give the answers as flags: --width "12 ft".');
    const answers = answersOf(values, around);
    const written = done(writeFrame(answers));
    if ("text" in written) {
      const file = values.out ?? "-";
      writeTo(file, written.text, around, true);
      if (file !== "-") around.err(`${file} is written. See: bentwright check ${file}\n${endingHint(file)}`);
      return EXIT.fine;
    }
    around.err(`${[`--${written.question}: ${written.why}`, written.help].filter(Boolean).join("\n")}\n`);
    return EXIT.errors;
  },
};

/** A value that begins with a minus sign is an answer to be refused in words, not another flag. */
function withSigns(args: readonly string[]): string[] {
  const read: string[] = [];
  for (const arg of args) {
    const flag = read.at(-1);
    if (/^-[\d.]/.test(arg) && flag?.startsWith("--") && !flag.includes("="))
      read.push(`${read.pop()}=${arg}`);
    else read.push(arg);
  }
  return read;
}

function endingHint(file: string): string {
  return /\.frame\.ya?ml$/.test(file) ? "" : "Editors know a frame by the ending .frame.yaml.\n";
}

function done<T>(work: Generator<unknown, T>): T {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}

/** @throws WrongCall for a flag whose answer is refused, and where the asking is broken off */
function answersOf(given: Readonly<Partial<Record<Flag, string>>>, around: Surroundings): NewFrameAnswers {
  const { units = "inch" } = given;
  if (units !== "inch" && units !== "mm") throw new WrongCall(`--units: “${units}” is neither inch nor mm.`);
  let answers: NewFrameAnswers = { units };
  const usual: { readonly id: QuestionId; readonly answer: string }[] = [];
  for (const id of QUESTION_IDS) {
    // usual answers go by what was answered before
    const question = newFrameQuestions(units, answers).find((one) => one.id === id);
    if (!question) continue;
    const flag = given[id];
    if (flag !== undefined) {
      const why = newFrameRefusal(id, flag, answers);
      if (why !== null) throw new WrongCall(`--${id}: ${why}`);
      answers = { ...answers, [id]: flag };
      continue;
    }
    const answer = around.ask && askFor(question, answers, around.ask, around);
    if (answer !== undefined) answers = { ...answers, [id]: answer };
    else if (!around.ask) usual.push({ id, answer: question.default });
  }
  if (usual.length > 0) {
    const taken = usual.map(({ id, answer }) => `${id} ${answer}`).join("; ");
    const site = usual.some(({ id }) => SITE_QUESTIONS.some((site) => site === id)) ? ` ${ASK_FOR_SITE}` : "";
    around.err(`Not given, so taken as usual: ${taken}.${site}\n`);
  }
  return answers;
}

/** Asks until there is an answer that can be taken. @returns undefined for an empty line: the usual one is taken */
function askFor(
  { id, sentence, choices, default: usual, mayBeUnknown }: NewFrameQuestion,
  answers: NewFrameAnswers,
  ask: (question: string) => string | undefined,
  around: Surroundings,
): string | undefined {
  const listed = (choices ?? []).map(({ value, label, detail }) =>
    detail === undefined ? `  ${value}  ${label}\n` : `  ${value}  ${label}, ${detail}\n`,
  );
  const unknown = mayBeUnknown ? `; ? if you don't know yet` : "";
  const words = `\n${sentence}\n${listed.join("")}${id} [${usual}${unknown}]: `;
  for (;;) {
    const line = ask(words);
    if (line === undefined) throw new WrongCall("Broken off: nothing was written.");
    const typed = line.trim();
    if (typed === "") return undefined;
    const answer = typed === "?" && mayBeUnknown ? NEW_FRAME_UNKNOWN : typed;
    const why = newFrameRefusal(id, answer, answers);
    if (why === null) return answer;
    around.err(`${why}\n`);
  }
}
