/** The help of `bentwright new`, made from the questions themselves, so that it says what they take. */
import type { Units } from "../core/frame/frame.ts";
import { wrapped } from "../core/text/wrapped.ts";
import {
  answerLimits,
  newFrameQuestions,
  QUESTION_IDS,
  type QuestionId,
} from "../language/new-frame/questions.ts";
import { NEW_FRAME_UNKNOWN, type NewFrameAnswers, type NewFrameChoice } from "../protocol.ts";

const WIDTH = 88;
const INDENT = " ".repeat(13);

/** @returns what `bentwright new --help` prints, no longer than {@link WIDTH} in a line */
export function newFrameHelp(): string {
  const unknown = newFrameQuestions("inch").filter(({ mayBeUnknown }) => mayBeUnknown);
  return [
    "Usage: bentwright new [--FLAG ANSWER]… [--units inch|mm] [--out FILE]",
    "",
    ...wrapped(
      "Writes a small frame that passes every check: sections and joints are worked out for the answers. In a terminal what is not given is asked for; elsewhere the usual answer is taken, and said so.",
      WIDTH,
    ),
    "",
    ...wrapped(
      'Write a size with its unit, in quotation marks: "12 ft", "8 ft 6 in", "3600 mm". A bare number is inches, or millimetres with --units mm; snow and wind always need their unit (psf or kPa, mph or m/s).',
      WIDTH,
    ),
    "",
    ...QUESTION_IDS.flatMap(flagHelp),
    ...explained("units", "inch (the usual) or mm: in what the file is written, and what a bare number is."),
    ...explained(
      "out",
      "Where to write the file; one that is there is left alone. Without it: standard output.",
    ),
    "",
    ...wrapped(
      `For ${unknown.map(({ id }) => id).join(", ")} you may write ${NEW_FRAME_UNKNOWN}, as --snow ${NEW_FRAME_UNKNOWN}: the file then says whom to ask.`,
      WIDTH,
    ),
    "",
    "Exit code: 0 written, 1 no frame can be made for the answers, 2 called wrongly.",
  ].join("\n");
}

function flagHelp(id: QuestionId): string[] {
  const question = newFrameQuestions("inch").find((one) => one.id === id);
  const limits = inBoth((units) => answerLimits(id, units));
  return [
    ...explained(id, question?.sentence ?? ""),
    ...(question?.choices ?? []).flatMap(choiceHelp),
    ...indented(
      [limits && `Limits: ${limits}.`, `Usual: ${inBoth((units) => usual(id, units))}.`]
        .filter(Boolean)
        .join(" "),
    ),
  ];
}

/** The usual answer; where it goes by the roof, for each kind. */
function usual(id: QuestionId, units: Units): string {
  const roofs = (newFrameQuestions(units).find((one) => one.id === "roof")?.choices ?? []).map(
    ({ value }) => ({ value, usual: usualAfter(id, units, { roof: value }) }),
  );
  const [first] = roofs;
  if (first && roofs.some((roof) => roof.usual !== first.usual))
    return roofs.map((roof) => `${roof.value} ${roof.usual}`).join(", ");
  const byLength = usualAfter(id, units, {}) !== usualAfter(id, units, { length: "8 ft" });
  return `${usualAfter(id, units, {})}${byLength && id !== "length" ? " in the usual length" : ""}`;
}

function usualAfter(id: QuestionId, units: Units, answers: NewFrameAnswers): string {
  return newFrameQuestions(units, answers).find((one) => one.id === id)?.default ?? "";
}

/** Said for inches, and after it in parentheses for millimetres where that differs. */
function inBoth(said: (units: Units) => string | undefined): string | undefined {
  const [inch, mm] = [said("inch"), said("mm")];
  return inch === mm ? inch : `${inch} (${mm})`;
}

function choiceHelp({ value, label, detail }: NewFrameChoice): string[] {
  return indented(`${value}: ${detail === undefined ? label : `${label}, ${detail}`}`);
}

function explained(flag: string, text: string): string[] {
  const [first = "", ...more] = indented(text);
  return [`  --${flag}`.padEnd(INDENT.length) + first.trimStart(), ...more];
}

function indented(text: string): string[] {
  return wrapped(text, WIDTH - INDENT.length).map((line) => INDENT + line);
}
