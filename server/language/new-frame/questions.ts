/** What "New Frame" asks: the few things that only the builder knows, each in a plain sentence with a sensible default. */
import type { Say } from "../../core/checks/say.ts";
import { makeSay, type Translate } from "../../core/checks/speak.ts";
import type { Units } from "../../core/frame/frame.ts";
import { formatQuantity } from "../../core/quantity/quantity.ts";
import {
  NEW_FRAME_UNKNOWN,
  type NewFrameAnswers,
  type NewFrameChoice,
  type NewFrameQuestion,
} from "../../protocol.ts";
import {
  type Answer,
  type Answers,
  bayRefusal,
  type Given,
  type MillAnswer,
  type PitchAnswer,
  pitchRefusal,
  RANGES,
  type Range,
  type RoofKind,
  readChoice,
  readCount,
  readLength,
  readMill,
  readPitch,
  readScalar,
  readSpecies,
  SITE_QUESTIONS,
} from "./answers.ts";
import { PITCH } from "./design.ts";

interface Values {
  readonly roof: RoofKind;
  readonly pitch: PitchAnswer;
  readonly width: number;
  readonly length: number;
  readonly bays: number;
  readonly eave: number;
  readonly snow: Given;
  readonly wind: Given;
  readonly frost: number;
  readonly species: string;
  readonly mill: MillAnswer;
}

export type QuestionId = keyof Values;
type Value<K extends QuestionId> = Values[K];

interface Refused {
  readonly ok: false;
  readonly question: QuestionId;
  readonly why: string;
}

/** inches */
const USUAL_BAY = 108;
/** Whatever the roof; what its kind allows of it, {@link newFrameRefusal} says. */
const STEEPEST_RANGE = { least: RANGES.pitch.shed.least, most: RANGES.pitch.gable.most };

/** How each answer is read; the keys are the ids of the questions, in the order in which they are asked. */
const READERS: { readonly [K in QuestionId]: (text: string, say: Say) => Answer<Values[K]> } = {
  roof: (text, say) => readChoice(text, ["gable", "shed"], say),
  pitch: (text, say) => readPitch(text, STEEPEST_RANGE, say),
  width: (text, say) => readLength(text, RANGES.width, say),
  length: (text, say) => readLength(text, RANGES.length, say),
  bays: (text, say) => readCount(text, RANGES.bays, say),
  eave: (text, say) => readLength(text, RANGES.eave, say),
  snow: (text, say) => readScalar(text, "pressure", RANGES.snow, say),
  wind: (text, say) => readScalar(text, "speed", RANGES.wind, say),
  frost: (text, say) => readLength(text, RANGES.frost, say),
  species: (text, say) => readSpecies(text, USUAL_SPECIES, say),
  mill: (text, say) => readMill(text, say),
};

export const QUESTION_IDS = Object.keys(READERS) as readonly QuestionId[];

const MAY_BE_UNKNOWN: ReadonlySet<QuestionId> = new Set(["snow", "wind", "frost", "species", "mill"]);

/** Woods that framers saw, with where they grow. */
const SPECIES: readonly NewFrameChoice[] = [
  { value: "eastern-white-pine", label: "Eastern white pine", detail: "Northeast and Lake States" },
  { value: "eastern-hemlock", label: "Eastern hemlock", detail: "Northeast and Appalachians" },
  { value: "eastern-spruce", label: "Eastern spruce", detail: "red, white or black spruce of the Northeast" },
  { value: "douglas-fir-larch", label: "Douglas fir or western larch", detail: "the West" },
  { value: "hem-fir", label: "Hem-fir", detail: "western hemlock and true firs" },
  { value: "western-cedars", label: "Western cedar", detail: "the West; lasts in the weather" },
  { value: "southern-pine", label: "Southern yellow pine", detail: "the South" },
  { value: "mixed-oak", label: "Oak, red or white", detail: "the East" },
];

const USUAL_SPECIES = SPECIES.map(({ value }) => value);

const ROOFS: readonly NewFrameChoice[] = [
  { value: "gable", label: "Gable", detail: "two slopes that meet at a ridge" },
  { value: "shed", label: "Shed", detail: "one slope, from a high wall to a low one" },
];

type Words = Omit<NewFrameQuestion, "id" | "mayBeUnknown" | "default"> & {
  readonly default: Readonly<Record<Units, string>>;
};

const both = (text: string): Readonly<Record<Units, string>> => ({ inch: text, mm: text });

const WORDS: Readonly<Record<QuestionId, Words>> = {
  roof: {
    title: "Kind of roof",
    sentence: "Which kind of roof shall the frame carry?",
    choices: ROOFS,
    default: both("gable"),
  },
  pitch: {
    title: "Pitch",
    sentence: "How steep is the roof? Inches up for every 12 along, like 7:12, or degrees, like 30 deg.",
    default: both(`${PITCH.gable}:12`),
  },
  width: {
    title: "Width",
    sentence: "How wide is the frame, from the outside of one wall of posts to the outside of the other?",
    default: { inch: "12 ft", mm: "3600 mm" },
  },
  length: {
    title: "Length",
    sentence: "How long is it, from the outside of the first posts to the outside of the last?",
    default: { inch: "16 ft", mm: "4800 mm" },
  },
  bays: {
    title: "Bays",
    sentence: "Into how many bays do posts divide that length? 8 to 12 ft (2.4 to 3.6 m) to a bay is usual.",
    default: both("2"),
  },
  eave: {
    title: "Eave height",
    sentence:
      "How high above the ground is the top of the plate that the rafters sit on (of a shed roof, the lower one)? Ties cross below it: under them there is about 2 1/2 ft (800 mm) less to walk upright in.",
    default: { inch: "9 ft", mm: "2750 mm" },
  },
  snow: {
    title: "Ground snow load",
    sentence:
      "What is the ground snow load at the site, by ASCE 7-16? The building department knows it; it is a load of the ground, not of the roof.",
    default: { inch: "40 psf", mm: "1.9 kPa" },
  },
  wind: {
    title: "Wind speed",
    sentence:
      "What is the wind speed at the site (three-second gust, ASCE 7-16, risk category I)? The building department knows it.",
    default: { inch: "105 mph", mm: "47 m/s" },
  },
  frost: {
    title: "Frost depth",
    sentence: "How deep does the ground freeze? The building department knows it.",
    default: { inch: "36 in", mm: "900 mm" },
  },
  species: {
    title: "Species",
    sentence: "Which wood will the frame be sawn from?",
    choices: SPECIES,
    default: both("eastern-white-pine"),
  },
  mill: {
    title: "Mill",
    sentence:
      "What can the mill cut? The longest cut, and if you like after a comma the thickest log at its small end: 20 ft, 18 in (6 m, 450 mm).",
    default: { inch: "20 ft", mm: "6 m" },
  },
};

/**
 * @param answered what is answered already: the usual number of bays goes by the length
 * @returns the questions in their order
 */
export function newFrameQuestions(
  units: Units,
  answered: NewFrameAnswers = {},
  translate?: Translate,
): readonly NewFrameQuestion[] {
  const say = makeSay(units, translate);
  const length = readAnswer("length", answered.length ?? WORDS.length.default[units], say);
  const bays = usualBays(length.ok ? length.value : undefined);
  return QUESTION_IDS.map((id) => {
    const { title, sentence, choices, default: answers } = WORDS[id];
    return {
      id,
      title: say.text(title),
      sentence: say.text(sentence),
      ...(choices ? { choices: choices.map((choice) => spoken(choice, say)) } : {}),
      default: id === "bays" ? bays : id === "pitch" ? usualPitch(answered.roof) : answers[units],
      mayBeUnknown: MAY_BE_UNKNOWN.has(id),
    };
  });
}

function spoken({ value, label, detail }: NewFrameChoice, say: Say): NewFrameChoice {
  return { value, label: say.text(label), ...(detail === undefined ? {} : { detail: say.text(detail) }) };
}

/**
 * @param answers given before; what they make impossible is refused here, where it can be answered otherwise
 * @returns why the answer is refused, in words; null where it is taken
 */
export function newFrameRefusal(
  id: string,
  answer: string,
  answers: NewFrameAnswers,
  translate?: Translate,
): string | null {
  const units = unitsOf(answers);
  const say = makeSay(units, translate);
  const question = QUESTION_IDS.find((known) => known === id);
  if (!question) return say.text("There is no question “{id}”.", { id });
  const read = readAnswer(question, answer, say);
  if (!read.ok) return read.why;
  if (question === "pitch") {
    const roof = readAnswer("roof", answers.roof ?? WORDS.roof.default[units], say);
    return (roof.ok && roof.value && pitchRefusal(answer, roof.value, say)) || null;
  }
  if (question !== "bays") return null;
  const length = readAnswer("length", answers.length ?? WORDS.length.default[units], say);
  if (!length.ok || length.value === undefined) return null;
  return bayRefusal(length.value, Number(answer), say) ?? null;
}

/** @returns every answer read, those left out by their defaults; or the first question whose answer is refused, and why */
export function readAnswers(
  answers: NewFrameAnswers,
  translate?: Translate,
): { readonly ok: true; readonly value: Answers } | Refused {
  const units = unitsOf(answers);
  const say = makeSay(units, translate);
  let refused: Refused | undefined;
  const take = <K extends QuestionId>(
    id: K,
    usual: string = WORDS[id].default[units],
  ): Value<K> | undefined => {
    const text = answers[id] ?? usual;
    const read = readAnswer(id, text, say);
    const why = read.ok ? newFrameRefusal(id, text, { ...answers, units }, translate) : read.why;
    if (why !== null) refused ??= { ok: false, question: id, why };
    return read.ok ? read.value : undefined;
  };
  const roof = take("roof");
  const [pitch, width, length] = [take("pitch", usualPitch(roof)), take("width"), take("length")];
  const [bays, eave] = [take("bays", usualBays(length)), take("eave")];
  const [snow, wind, frost] = [take("snow"), take("wind"), take("frost")];
  const [species, mill] = [take("species"), take("mill")];
  if (refused) return refused;
  if (
    !roof ||
    !pitch ||
    width === undefined ||
    length === undefined ||
    bays === undefined ||
    eave === undefined
  )
    return { ok: false, question: "roof", why: say.text("Nothing can be proposed without the sizes.") };
  const usual = new Set(SITE_QUESTIONS.filter((id) => answers[id] === undefined));
  const value = { units, roof, pitch, width, length, bays, eave, snow, wind, frost, species, mill, usual };
  return { ok: true, value };
}

/** An editor shows the usual answers and cannot tell one that was left standing from one that was meant. */
export function withoutUsualSite(answers: NewFrameAnswers): NewFrameAnswers {
  const left: ReadonlySet<string> = new Set(
    SITE_QUESTIONS.filter((id) => answers[id]?.trim() === WORDS[id].default[unitsOf(answers)]),
  );
  return Object.fromEntries(Object.entries(answers).filter(([id]) => !left.has(id)));
}

function usualPitch(roof: string | undefined): string {
  return `${roof === "shed" ? PITCH.shed : PITCH.gable}:12`;
}

/** @returns within what limits an answer is taken, in words; undefined where it is chosen from a list */
export function answerLimits(id: QuestionId, units: Units): string | undefined {
  const say = makeSay(units);
  const between = ({ least, most }: Range, shown: (value: number) => string): string =>
    `${shown(least)} to ${shown(most)}`;
  const length = (range: Range): string => between(range, say.length);
  switch (id) {
    case "roof":
    case "species":
      return undefined;
    case "pitch":
      return ROOFS.map(({ value }) => {
        const range = RANGES.pitch[value === "shed" ? "shed" : "gable"];
        return `${value} ${between(range, (rise) => `${rise}:12`)}`;
      }).join(", ");
    case "bays":
      return `${between(RANGES.bays, String)}, each ${length(RANGES.bay)} long`;
    case "snow":
      return between(RANGES.snow, (value) => formatQuantity(value, "pressure", units));
    case "wind":
      return between(RANGES.wind, (value) => formatQuantity(value, "speed", units));
    case "mill":
      return `cut ${length(RANGES.longest)}, log ${length(RANGES.log)}`;
    default:
      return length(RANGES[id]);
  }
}

/** Bays of about 9 ft. */
function usualBays(length: number | undefined): string {
  return String(Math.min(RANGES.bays.most, Math.max(1, Math.round((length ?? 0) / USUAL_BAY))));
}

/** @returns the file's units; anything but `mm` is an inch file */
function unitsOf(answers: NewFrameAnswers): Units {
  return answers.units === "mm" ? "mm" : "inch";
}

function readAnswer<K extends QuestionId>(id: K, text: string, say: Say): Answer<Value<K> | undefined> {
  if (text.trim() !== NEW_FRAME_UNKNOWN) return READERS[id](text, say);
  if (MAY_BE_UNKNOWN.has(id)) return { ok: true, value: undefined };
  return {
    ok: false,
    why: say.text(
      "Nothing can be proposed without it. Write what you would like best; it is easily changed later.",
    ),
  };
}
