/** From the answers to the file: a proposal is written, checked by the whole catalogue, and changed until it is clean. */

import { evaluate } from "../../core/evaluate.ts";
import { isOpen } from "../../core/sizing/trial.ts";
import { readFrame } from "../../document/read.ts";
import type { NewFrameAnswers, NewFrameWriteResult } from "../../protocol.ts";
import { firstDesign } from "./design.ts";
import { frameText } from "./frame-text.ts";
import { readAnswers } from "./questions.ts";

/** Yields before each analysis of the frame. */
export function* writeFrame(answers: NewFrameAnswers): Generator<undefined, NewFrameWriteResult> {
  const read = readAnswers(answers);
  if (!read.ok) return { question: read.question, why: read.why, help: "" };
  const text = frameText(read.value, firstDesign(read.value));
  yield;
  const { frame, source } = readFrame(text);
  const [first] = evaluate(frame, source).findings.filter(isOpen);
  return first && first.check !== "site-value-missing"
    ? { question: "width", why: first.message, help: "" }
    : { text };
}
