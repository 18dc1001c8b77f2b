/** The requests of "New Frame", for the language server: what comes in is checked, what takes long lets others in. */
import type { Translate } from "../../core/checks/speak.ts";
import type { NewFrameAnswers, NewFrameWriteResult } from "../../protocol.ts";
import { breath } from "../frame-service.ts";
import { withoutUsualSite } from "./questions.ts";
import { writeFrame } from "./write.ts";

/** Whoever asked for the frame has given it up. */
class CancelledNewFrame extends Error {}

/** @param value anything that came over the wire; what is no text is left out */
export function answersIn(value: unknown): NewFrameAnswers {
  if (typeof value !== "object" || value === null) return {};
  return Object.fromEntries(Object.entries(value).filter(([, text]) => typeof text === "string"));
}

/**
 * Writes the frame, and lets other work in before every analysis.
 * @param wanted asked before every analysis
 * @throws CancelledNewFrame once it is not wanted
 */
export async function writeInSteps(
  answers: NewFrameAnswers,
  wanted: () => boolean = () => true,
  translate?: Translate,
): Promise<NewFrameWriteResult> {
  const work = writeFrame(withoutUsualSite(answers), translate);
  let step = work.next();
  while (!step.done) {
    await breath();
    if (!wanted()) throw new CancelledNewFrame();
    step = work.next();
  }
  return step.value;
}
