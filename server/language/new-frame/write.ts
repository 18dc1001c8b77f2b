/** From the answers to the file: a proposal is written, checked by the whole catalogue, and changed until it is clean. */

import type { Finding } from "../../core/checks/check.ts";
import { makeSay } from "../../core/checks/speak.ts";
import { type Evaluation, evaluate } from "../../core/evaluate.ts";
import { isOpen } from "../../core/sizing/trial.ts";
import { readFrame } from "../../document/read.ts";
import type { NewFrameAnswers, NewFrameWriteResult } from "../../protocol.ts";
import type { Answers } from "./answers.ts";
import { type Design, firstDesign } from "./design.ts";
import { frameText } from "./frame-text.ts";
import { isAwaited } from "./awaited.ts";
import { readAnswers } from "./questions.ts";
import { remedied } from "./remedies.ts";
import { easierAnswers } from "./easier.ts";

/** How often one proposal is changed before it is given up: more than any frame of the tests took. */
const MOST_ROUNDS = 24;

interface Proposal {
  readonly text: string;
  /** what is still wrong, the gravest first; empty for a clean frame */
  readonly left: readonly Finding[];
}

/** Yields before each analysis of the frame. */
export function* writeFrame(given: NewFrameAnswers): Generator<undefined, NewFrameWriteResult> {
  const read = readAnswers(given);
  if (!read.ok) return { question: read.question, why: read.why, help: "" };
  const { text, left } = yield* propose(read.value);
  const [first] = left;
  if (!first) return { text };
  const say = makeSay(read.value.units);
  for (const { question, answers, help } of easierAnswers(read.value, say)) {
    const easier = yield* propose(answers);
    if (easier.left.length === 0) return { question, why: first.message, help };
  }
  return {
    question: "width",
    why: first.message,
    help: say.text("No other single answer helps either: take a smaller frame, and ask an engineer about this one."),
  };
}

/** Changes the proposal as its findings ask, until none is left or none can be mended. */
function* propose(answers: Answers): Generator<undefined, Proposal> {
  let design = firstDesign(answers);
  let before: Evaluation | undefined;
  for (let round = 0; ; round += 1) {
    const text = frameText(answers, design);
    yield;
    const { frame, source } = readFrame(text);
    before = evaluate(frame, source, before);
    const left = before.findings.filter((finding) => isOpen(finding) && !isAwaited(finding, answers));
    const next = left.reduce<Design>((changed, finding) => remedied(changed, finding, answers), design);
    if (process.env.DEBUG_NF) console.error(round, left.map((f) => `${f.check} ${f.path} ${f.value?.toFixed(2)}/${f.limit?.toFixed(2)}`), JSON.stringify(next));
    if (left.length === 0 || next === design || round === MOST_ROUNDS) return { text, left };
    design = next;
  }
}
