/** The chain from a frame to its findings. Pure: same frame and facts, same answer. */
import equal from "fast-deep-equal/es6/index.js";
import { idleFindings } from "./checks/accepted.ts";
import type { Finding } from "./checks/check.ts";
import { CHECKS } from "./checks/registry.ts";
import { runChecks } from "./checks/run.ts";
import type { Say } from "./checks/say.ts";
import type { SourceFacts } from "./checks/source-facts.ts";
import { makeSay } from "./checks/speak.ts";
import { unansweredFindings } from "./checks/unanswered.ts";
import type { Frame } from "./frame/frame.ts";
import { buildModel } from "./model/build.ts";
import type { Model } from "./model/model.ts";
import { computeResults, type Results } from "./results.ts";

export interface Evaluation {
  readonly frame: Frame;
  readonly model: Model;
  readonly results: Results;
  /** errors first; those that the file accepts carry the reason */
  readonly findings: readonly Finding[];
}

/** Checks of the engineering of the whole frame. */
const OF_THE_WHOLE: ReadonlySet<string> = new Set(CHECKS.filter((c) => c.ofTheWhole).map((c) => c.meta.id));

/** What the model is built from: all of the frame but what only loads it. */
function builtFrom(frame: Frame): unknown {
  return { ...frame, basis: undefined, site: { ...frame.site, snow: undefined, wind: undefined } };
}

/** The model of a frame; timbers, joints and piers are the very same as before while only its loads have changed. */
function modelOf(frame: Frame, previous: Evaluation | undefined): Model {
  if (!previous || !equal(builtFrom(previous.frame), builtFrom(frame))) return buildModel(frame);
  const { model } = previous;
  const { snow, wind } = frame.site;
  // its timbers and joints know their classes and entries by the parts of the frame that they were made from
  return {
    ...model,
    frame: { ...model.frame, basis: frame.basis, site: { ...model.frame.site, snow, wind } },
  };
}

/**
 * @param previous the last answer: its model and results serve again when the frame is the very same object
 */
export function evaluate(
  frame: Frame,
  source: SourceFacts,
  previous?: Evaluation,
  say: Say = makeSay(frame.units),
): Evaluation {
  const kept = previous?.frame === frame ? previous : undefined;
  const model = kept?.model ?? modelOf(frame, previous);
  const results = kept?.results ?? computeResults(model, previous?.results);
  const { findings, idle } = runChecks(
    CHECKS,
    { source, frame, model, results, whole: { source, model } },
    frame.accepted,
    say,
  );
  // half a line leaves the frame incomplete for a moment: what was found of the whole stays until it can be told anew
  const stays = results.complete ? [] : (previous?.findings.filter((f) => OF_THE_WHOLE.has(f.check)) ?? []);
  const known = CHECKS.map((c) => c.meta.id);
  const beside = [
    ...unansweredFindings(results.frame, findings, frame.accepted, say),
    ...idleFindings(idle, known, say),
  ];
  return { frame, model, results, findings: [...findings, ...stays, ...beside] };
}
