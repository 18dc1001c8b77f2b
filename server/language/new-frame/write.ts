/** From the answers to the file: a proposal is written, checked by the whole catalogue, and changed until it is clean. */

import type { Finding } from "../../core/checks/check.ts";
import { pegInOtherJoint } from "../../core/checks/joinery/peg-in-other-joint.ts";
import type { Say } from "../../core/checks/say.ts";
import { makeSay, type Translate } from "../../core/checks/speak.ts";
import { type Evaluation, evaluate } from "../../core/evaluate.ts";
import { isOpen } from "../../core/sizing/trial.ts";
import { woodsInUse } from "../../core/statics/woods-in-use.ts";
import { readFrame } from "../../document/read.ts";
import type { NewFrameAnswers, NewFrameWriteResult } from "../../protocol.ts";
import { woodNotes } from "../wood-words.ts";
import type { Answers } from "./answers.ts";
import { isAwaited } from "./awaited.ts";
import { type Design, firstDesign } from "./design.ts";
import { beyondMill, easierAnswers, obstacleOf } from "./easier.ts";
import { frameText } from "./frame-text.ts";
import { readAnswers } from "./questions.ts";
import { otherLegs, remedied, worstOf } from "./remedies.ts";

/** How often one proposal is changed before it is given up. */
const MOST_ROUNDS = 12;
/** After so many analyses only the last resort is tried: its asker has waited long enough. */
const MOST_ANALYSES = 18;

interface Proposal {
  readonly design: Design;
  readonly evaluation: Evaluation;
  /** what is still wrong, the gravest first; empty for a clean frame */
  readonly left: readonly Finding[];
  readonly analyses: number;
}

/** Yields before each analysis of the frame. */
export function* writeFrame(
  given: NewFrameAnswers,
  translate?: Translate,
): Generator<undefined, NewFrameWriteResult> {
  const read = readAnswers(given, translate);
  if (!read.ok) return { question: read.question, why: read.why, help: "" };
  const answers = read.value;
  const say = makeSay(answers.units, translate);
  let obstacle = beyondMill(answers, say);
  let spent = 0;
  if (!obstacle) {
    const { design, evaluation, left, analyses } = yield* propose(answers, say);
    const [first] = left;
    if (!first) return { text: frameText(answers, design, say, woodsOf(evaluation, say)) };
    spent = analyses;
    obstacle = obstacleOf(first, left, say);
  }
  const { why } = obstacle;
  for (const easier of easierAnswers(answers, obstacle, say)) {
    if (spent > MOST_ANALYSES && !easier.last) continue;
    const { left, analyses } = yield* propose(easier.answers, say);
    if (left.length === 0) return { question: easier.question, why, help: easier.help };
    spent += analyses;
  }
  const help = say.text("Nothing that was tried mends it: ask an engineer about this frame.");
  return { question: obstacle.question, why, help };
}

/** Changes the proposal as its findings ask, until none is left or none can be mended. */
function* propose(answers: Answers, say: Say): Generator<undefined, Proposal> {
  let design = firstDesign(answers);
  let before: Evaluation | undefined;
  for (let analyses = 1; ; analyses += 1) {
    yield;
    const { left, evaluation } = judged(answers, design, before, say);
    const proposal = { design, evaluation, left, analyses };
    if (left.length === 0) return yield* drivable(proposal, answers, say);
    const next = worstOf(left).reduce((changed, finding) => remedied(changed, finding, answers), design);
    if (next === design || analyses === MOST_ROUNDS) return proposal;
    design = next;
    before = evaluation;
  }
}

/** A clean proposal with other legs where pegs would meet inside a post, if those are as clean. */
function* drivable(proposal: Proposal, answers: Answers, say: Say): Generator<undefined, Proposal> {
  if (!crossed(proposal.evaluation)) return proposal;
  let { analyses } = proposal;
  for (const design of otherLegs(proposal.design, answers)) {
    yield;
    analyses += 1;
    const { left, evaluation } = judged(answers, design, proposal.evaluation, say);
    if (left.length === 0 && !crossed(evaluation)) return { design, evaluation, left, analyses };
  }
  return { ...proposal, analyses };
}

/** A design written and checked. @param before an evaluation of a frame like it */
function judged(answers: Answers, design: Design, before: Evaluation | undefined, say: Say) {
  const text = frameText(answers, design, say);
  const { frame, source } = readFrame(text);
  const evaluation = evaluate(frame, source, before, say);
  const left = evaluation.findings.filter((finding) => isOpen(finding) && !isAwaited(finding, answers));
  return { left, evaluation };
}

function woodsOf({ results }: Evaluation, say: Say): readonly string[] {
  return results.frame ? woodNotes(woodsInUse(results.frame.members.values()), say) : [];
}

/** A note, since they are easily bored elsewhere; still, who does not know it drives the second peg against the first. */
function crossed({ findings }: Evaluation): boolean {
  return findings.some(({ check }) => check === pegInOtherJoint.meta.id);
}
