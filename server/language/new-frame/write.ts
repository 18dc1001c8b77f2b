/** From the answers to the file: a proposal is written, checked by the whole catalogue, and changed until it is clean. */

import type { Finding } from "../../core/checks/check.ts";
import { pegInOtherJoint } from "../../core/checks/joinery/peg-in-other-joint.ts";
import { makeSay } from "../../core/checks/speak.ts";
import { type Evaluation, evaluate } from "../../core/evaluate.ts";
import { isOpen } from "../../core/sizing/trial.ts";
import { readFrame } from "../../document/read.ts";
import type { NewFrameAnswers, NewFrameWriteResult } from "../../protocol.ts";
import type { Answers } from "./answers.ts";
import { isAwaited } from "./awaited.ts";
import { type Design, firstDesign } from "./design.ts";
import { easierAnswers } from "./easier.ts";
import { frameText } from "./frame-text.ts";
import { readAnswers } from "./questions.ts";
import { otherLegs, remedied, worstOf } from "./remedies.ts";

/** How often one proposal is changed before it is given up. */
const MOST_ROUNDS = 12;
/** After so many analyses no further answer is tried: its asker has waited long enough. */
const MOST_ANALYSES = 18;

interface Proposal {
  readonly text: string;
  /** what is still wrong, the gravest first; empty for a clean frame */
  readonly left: readonly Finding[];
  readonly analyses: number;
}

/** Yields before each analysis of the frame. */
export function* writeFrame(given: NewFrameAnswers): Generator<undefined, NewFrameWriteResult> {
  const read = readAnswers(given);
  if (!read.ok) return { question: read.question, why: read.why, help: "" };
  const { text, left, analyses } = yield* propose(read.value);
  const [first] = left;
  if (!first) return { text };
  const say = makeSay(read.value.units);
  const why = say.text("The best frame that was found still has this fault. {fault}", {
    fault: first.message,
  });
  let spent = analyses;
  for (const { question, answers, help } of easierAnswers(read.value, left, say)) {
    if (spent > MOST_ANALYSES) break;
    const easier = yield* propose(answers);
    if (easier.left.length === 0) return { question, why, help };
    spent += easier.analyses;
  }
  const help = say.text(
    "No single answer that was tried mends it: take a smaller frame, or ask an engineer about this one.",
  );
  return { question: first.check === "longer-than-mill" ? "mill" : "width", why, help };
}

/** Changes the proposal as its findings ask, until none is left or none can be mended. */
function* propose(answers: Answers): Generator<undefined, Proposal> {
  let design = firstDesign(answers);
  let before: Evaluation | undefined;
  for (let analyses = 1; ; analyses += 1) {
    const text = frameText(answers, design);
    yield;
    const { frame, source } = readFrame(text);
    before = evaluate(frame, source, before);
    const left = before.findings.filter((finding) => isOpen(finding) && !isAwaited(finding, answers));
    const next = worstOf(left).reduce((changed, finding) => remedied(changed, finding, answers), design);
    if (left.length === 0) return yield* drivable({ text, left, analyses }, design, answers, before);
    if (next === design || analyses === MOST_ROUNDS) return { text, left, analyses };
    design = next;
  }
}

/** A clean proposal with other legs where pegs would meet inside a post, if those are as clean. */
function* drivable(
  proposal: Proposal,
  design: Design,
  answers: Answers,
  found: Evaluation,
): Generator<undefined, Proposal> {
  if (!crossed(found)) return proposal;
  let { analyses } = proposal;
  for (const other of otherLegs(design, answers)) {
    const text = frameText(answers, other);
    yield;
    analyses += 1;
    const { frame, source } = readFrame(text);
    const after = evaluate(frame, source, found);
    const left = after.findings.filter((finding) => isOpen(finding) && !isAwaited(finding, answers));
    if (left.length === 0 && !crossed(after)) return { text, left, analyses };
  }
  return { ...proposal, analyses };
}

/** A note, since they are easily bored elsewhere; still, who does not know it drives the second peg against the first. */
function crossed({ findings }: Evaluation): boolean {
  return findings.some(({ check }) => check === pegInOtherJoint.meta.id);
}
