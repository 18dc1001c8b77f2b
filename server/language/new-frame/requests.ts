/** The requests of "New Frame", for the language server: what comes in is checked, what takes long lets others in. */
import type { NewFrameAnswers, NewFrameWriteResult } from "../../protocol.ts";
import { breath } from "../frame-service.ts";
import { writeFrame } from "./write.ts";

/** @param value anything that came over the wire; what is no text is left out */
export function answersIn(value: unknown): NewFrameAnswers {
  if (typeof value !== "object" || value === null) return {};
  return Object.fromEntries(Object.entries(value).filter(([, text]) => typeof text === "string"));
}

/** Writes the frame, and lets other work in before every analysis. */
export async function writeInSteps(answers: NewFrameAnswers): Promise<NewFrameWriteResult> {
  const work = writeFrame(answers);
  let step = work.next();
  while (!step.done) {
    await breath();
    step = work.next();
  }
  return step.value;
}
