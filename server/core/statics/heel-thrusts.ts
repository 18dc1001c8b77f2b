/** How hard rafters' feet push along their tie toward its end, against the relish there. */
import { leanOf } from "../joinery/end-breadth.ts";
import type { Joint } from "../joinery/joint.ts";
import { type Relish, relishOf } from "../joinery/relish.ts";
import type { Adjusted } from "../members/adjust.ts";
import { dot } from "../model/vec.ts";
import type { Factor } from "../sourced.ts";
import type { FrameResults } from "./frame-results.ts";
import { eachEndForce } from "./joint-forces.ts";
import { adjustedFor, woodOf } from "./timber-wood.ts";

/** What a rafter's foot pushes against wood that is held by shear, in the combination that asks most of it. */
export interface Thrust {
  readonly joint: Joint;
  /** lb, the way in which that wood would break off */
  readonly thrust: number;
  readonly caseId: string;
  /** C_D of the combination */
  readonly duration: Factor;
  /** psi: thrust ÷ sheared area, infinite where there is none, and what it may be */
  readonly stress: number;
  readonly limit: number;
  /** F_v′ of the timber that receives the foot, from which the limit is made */
  readonly shear: Adjusted;
}

/** Along the tie's grain, toward its end; the limit is F_v′ itself. */
export interface HeelThrust extends Thrust {
  readonly relish: Relish;
}

function judged(
  joint: Joint,
  relish: Relish,
  thrust: number,
  caseId: string,
  duration: Factor,
): HeelThrust | undefined {
  const wood = woodOf(joint.into);
  if (!wood) return undefined;
  const area = relish.counted * relish.breadth;
  const shear = adjustedFor(joint.into, wood, duration).Fv;
  return {
    joint,
    relish,
    thrust,
    caseId,
    duration,
    stress: area > 0 ? thrust / area : Number.POSITIVE_INFINITY,
    limit: shear.value,
    shear,
  };
}

/** @returns for each such foot the combination that asks most of its relish; none for woods without values */
export function heelThrusts(frame: FrameResults): HeelThrust[] {
  const feet = new Map(
    frame.model.joints.flatMap((joint) => {
      const relish = relishOf(joint);
      return relish ? [[joint.id, { joint, relish, toe: leanOf(joint).toe }] as const] : [];
    }),
  );
  const worst = new Map<string, HeelThrust>();
  eachEndForce(frame.solution.cases, feet, ({ joint, relish, toe }, force, { id, combination }) => {
    // what the tie does to the rafter is the opposite of what the rafter pushes
    const along = -toe * dot(force, joint.face.grain);
    const next = along > 0 ? judged(joint, relish, along, id, combination.duration) : undefined;
    const known = worst.get(joint.id);
    if (next && (!known || next.stress / next.limit > known.stress / known.limit)) worst.set(joint.id, next);
  });
  return [...worst.values()];
}
