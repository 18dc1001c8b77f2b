/** `bentwright new`: a frame file from a few answers, asked for in turn or given as flags. */
import { newFrameQuestions, newFrameRefusal } from "../language/new-frame/questions.ts";
import { writeFrame } from "../language/new-frame/write.ts";
import { NEW_FRAME_UNKNOWN, type NewFrameAnswers, type NewFrameQuestion } from "../protocol.ts";
import { type Command, EXIT, readArguments, type Surroundings, WrongCall, writeTo } from "./command.ts";

const HELP = `Usage: bentwright new [--roof gable|shed] [--width W] [--length L] [--bays N] [--eave H]
                      [--snow S] [--wind V] [--frost D] [--species WOOD] [--mill CUT]
                      [--units inch|mm] [--out FILE]

Writes a small frame that passes every check: sections and joints are worked out for the
answers. In a terminal what is not given is asked for; elsewhere it is taken as usual, and
said so.

  --roof     gable or shed
  --width    over the outside faces of the posts: "12 ft", 3600 (mm)
  --length   the same, the other way
  --bays     how many the length is divided into
  --eave     top of the (lower) plate above the ground
  --snow     ground snow load by ASCE 7-16: "40 psf", "1.9 kPa"
  --wind     wind speed by ASCE 7-16: "105 mph", "47 m/s"
  --frost    how deep the ground freezes
  --species  the wood: eastern-white-pine, hem-fir …
  --mill     the longest cut, and after a comma the thickest log: "20 ft, 18 in"
  --units    inch (the usual) or mm
  --out      where to write it; a file that is there is left alone. Else: standard output

snow, wind, frost, species and mill may be unknown: the file then says whom to ask.

Exit code: 0 written, 1 no frame can be made for the answers, 2 called wrongly.`;

const FLAGS = [
  "roof",
  "width",
  "length",
  "bays",
  "eave",
  "snow",
  "wind",
  "frost",
  "species",
  "mill",
] as const;
type Flag = (typeof FLAGS)[number];

/** What only the place can tell. */
const SITE: ReadonlySet<Flag> = new Set(["snow", "wind", "frost"]);
const ASK_FOR_SITE =
  "Usual snow, wind and frost are not those of your site: ask the building department, or write unknown.";

export const newFrame: Command = {
  name: "new",
  summary: "write a small frame for a few answers",
  help: HELP,
  run(args, around) {
    const text = { type: "string" } as const;
    const { values, positionals } = readArguments(withSigns(args), {
      roof: text,
      width: text,
      length: text,
      bays: text,
      eave: text,
      snow: text,
      wind: text,
      frost: text,
      species: text,
      mill: text,
      units: text,
      out: text,
    });
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
function answersOf(
  given: Readonly<Partial<Record<Flag | "units", string>>>,
  around: Surroundings,
): NewFrameAnswers {
  const { units = "inch" } = given;
  if (units !== "inch" && units !== "mm") throw new WrongCall(`--units: “${units}” is neither inch nor mm.`);
  let answers: NewFrameAnswers = { units };
  const usual: { readonly id: Flag; readonly answer: string }[] = [];
  for (const id of FLAGS) {
    // usual answers go by what was answered before
    const question = newFrameQuestions(units, answers).find((one) => one.id === id);
    if (!question) continue;
    const flag = given[id];
    if (flag !== undefined) {
      const why = newFrameRefusal(id, flag, answers);
      if (why !== null) throw new WrongCall(`--${id}: ${why}`);
      answers = { ...answers, [id]: flag };
    } else if (around.ask) answers = { ...answers, [id]: askFor(question, answers, around.ask, around) };
    else usual.push({ id, answer: question.default });
  }
  if (usual.length > 0) {
    const taken = usual.map(({ id, answer }) => `${id} ${answer}`).join("; ");
    const site = usual.some(({ id }) => SITE.has(id)) ? ` ${ASK_FOR_SITE}` : "";
    around.err(`Not given, so taken as usual: ${taken}.${site}\n`);
  }
  return answers;
}

/** Asks until there is an answer that can be taken; an empty line takes the usual one. */
function askFor(
  { id, sentence, choices, default: usual, mayBeUnknown }: NewFrameQuestion,
  answers: NewFrameAnswers,
  ask: (question: string) => string | undefined,
  around: Surroundings,
): string {
  const listed = (choices ?? []).map(({ value, label, detail }) =>
    detail === undefined ? `  ${value}  ${label}\n` : `  ${value}  ${label}, ${detail}\n`,
  );
  const unknown = mayBeUnknown ? `; ? if you don't know yet` : "";
  const words = `\n${sentence}\n${listed.join("")}${id} [${usual}${unknown}]: `;
  for (;;) {
    const line = ask(words);
    if (line === undefined) throw new WrongCall("Broken off: nothing was written.");
    const typed = line.trim();
    const answer = typed === "" ? usual : typed === "?" && mayBeUnknown ? NEW_FRAME_UNKNOWN : typed;
    const why = newFrameRefusal(id, answer, answers);
    if (why === null) return answer;
    around.err(`${why}\n`);
  }
}
