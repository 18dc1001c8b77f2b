/**
 * How hard rafters push level out of their plate against the rim beyond their step. The rim is held by the wood below it,
 * across whose grain it is pushed: rolling shear. The plate's grain that runs on at both sides is not counted, nor is the
 * friction on the sole (on the safe side).
 */
import type { Joint } from "../joinery/joint.ts";
import type { Factor, Sourced } from "../sourced.ts";
import { pressAt, pressing, type Source, tiesByJoint } from "./bearing-force.ts";
import { abutmentOf } from "./end-surfaces.ts";
import { isSolved } from "./force-table.ts";
import type { FrameResults } from "./frame-results.ts";
import type { Thrust } from "./heel-thrusts.ts";
import type { FrameStructure } from "./structure.ts";
import { adjustedFor, woodOf } from "./timber-wood.ts";

/** Rolling shear against shear along the grain. */
const ROLLING: Sourced = {
  value: 1 / 3,
  status: "memory",
  source: "rolling shear a third of F_v, ANSI/APA PRG 320 for sawn layers",
};

/** Level, across the plate; the limit is a third of F_v′. */
export interface StepThrust extends Thrust {
  /** in: the rim that is sheared, along the rafter's run and across it */
  readonly rim: number;
  readonly width: number;
}

function judged(joint: Joint, thrust: number, caseId: string, duration: Factor): StepThrust | undefined {
  const wood = woodOf(joint.into);
  const { step } = joint.sizes;
  if (!wood || !step) return undefined;
  const width = joint.of.width;
  const area = step.rim * width;
  const shear = adjustedFor(joint.into, wood, duration).Fv;
  return {
    joint,
    rim: step.rim,
    width,
    thrust,
    caseId,
    duration,
    stress: area > 1e-6 ? thrust / area : Number.POSITIVE_INFINITY,
    limit: shear.value * ROLLING.value,
    shear,
  };
}

/** @returns for each step of a rafter's seat the combination that asks most of its rim; none for woods without values */
export function stepThrusts({ model, solution }: FrameResults): StepThrust[] {
  const steps = model.joints.flatMap((joint) => {
    const abutment = joint.kind === "step-lap" ? abutmentOf(joint) : undefined;
    return abutment ? [{ joint, toward: abutment.toward }] : [];
  });
  if (steps.length === 0) return [];
  const worst = new Map<string, StepThrust>();
  // few structures stand for many combinations
  const sourcesOf = new Map<FrameStructure, readonly (Source | undefined)[]>();
  for (const solved of solution.cases) {
    if (!isSolved(solved)) continue;
    const { id, combination } = solved.frameCase;
    let sources = sourcesOf.get(solved.frame);
    if (!sources) {
      const ties = tiesByJoint(solved.frame);
      sources = steps.map(({ joint, toward }) => pressAt(solved.frame, ties, joint, toward, false));
      sourcesOf.set(solved.frame, sources);
    }
    for (const [k, { joint, toward }] of steps.entries()) {
      const source = sources[k];
      // the reaction of a pier is not asked for
      const press = source ? pressing(source, solved, () => 0) : 0;
      const level = press * Math.hypot(toward[0], toward[1]);
      const next = level > 0 ? judged(joint, level, id, combination.duration) : undefined;
      const known = worst.get(joint.id);
      if (next && (!known || next.stress / next.limit > known.stress / known.limit))
        worst.set(joint.id, next);
    }
  }
  return [...worst.values()];
}
