/** The whole frame analysis: combinations, timbers, joints, piers and racking. */
import type { Model } from "../model/model.ts";
import type { FrameResults } from "./frame-results.ts";
import { jointActions } from "./joint-actions.ts";
import { jointForces, pierReactions } from "./joint-forces.ts";
import { rackingOf } from "./racking.ts";
import { solveFrame } from "./solve-frame.ts";

/** @returns undefined for a model without timbers */
export function analyseFrame(model: Model): FrameResults | undefined {
  if (model.timbers.length === 0) return undefined;
  const actions = jointActions(model);
  const solution = solveFrame(model, actions);
  return {
    model,
    solution,
    members: new Map(),
    unchecked: [],
    joints: jointForces(solution.cases),
    piers: pierReactions(model, solution.cases),
    racking: rackingOf(model, solution.loads),
  };
}
