/** Wind that draws the heads of rafters out of their ridge, or lifts them out of their housings. */
import { remembering } from "../collect.ts";
import type { CombinedUse } from "../fasteners/combined.ts";
import type { Joint } from "../joinery/joint.ts";
import { dot } from "../model/vec.ts";
import { isHousedHead } from "../roof/fastening.ts";
import { type HeadForce, type HeadHold, headHold, headUse } from "../roof/head-fasteners.ts";
import type { SizedFasteners } from "../roof/sized-fasteners.ts";
import type { Factor } from "../sourced.ts";
import type { FrameResults } from "./frame-results.ts";
import { eachEndForce } from "./joint-forces.ts";

export interface HeadPull extends HeadForce {
  readonly caseId: string;
  /** C_D of the combination */
  readonly duration: Factor;
}

/**
 * Vertical loads alone count where the seats slide, so that a rafter is a simple beam: where seats hold the thrust, snow on
 * one side presses a rafter up along the ridge's face, which gives way to the other model before anything comes apart.
 * @returns by joint id, each combination that pulls or lifts, the two parts of its force acting at once; a housing bears
 * what presses inward or down
 */
export function headPulls(frame: FrameResults): ReadonlyMap<string, readonly HeadPull[]> {
  const heads = frame.model.joints.filter(isHousedHead);
  const found = new Map(heads.map((joint) => [joint.id, [] as HeadPull[]]));
  const { cases } = frame.solution;
  const slides = cases.some(({ seats }) => seats === "slide");
  const counted = cases.filter(({ seats, frameCase }) => !(slides && frameCase.vertical && seats === "hold"));
  const joints = new Map(heads.map((joint) => [joint.id, joint]));
  eachEndForce(counted, joints, (joint, force, { id: caseId, combination }) => {
    const pull = Math.max(0, dot(force, joint.face.inward));
    const lift = Math.max(0, -force[2]);
    if (pull + lift > 0) found.get(joint.id)?.push({ pull, lift, caseId, duration: combination.duration });
  });
  return found;
}

/** lb, both parts together */
export const headForceOf = ({ pull, lift }: HeadForce): number => Math.hypot(pull, lift);

export interface JudgedHead {
  readonly pull: HeadPull;
  /** undefined = nothing of a known size is named, or the woods have no values */
  readonly held: { readonly hold: HeadHold; readonly use: CombinedUse } | undefined;
}

/** @returns the combination that asks most of the fasteners, or without them the greatest force; undefined without any */
export function judgeHead(
  joint: Joint,
  pulls: readonly HeadPull[],
  fasteners: SizedFasteners | undefined,
): JudgedHead | undefined {
  const holdFor = remembering((duration: Factor) => fasteners && headHold(joint, fasteners, duration));
  const judged = pulls.map((pull): JudgedHead => {
    const hold = holdFor(pull.duration);
    return { pull, held: hold && { hold, use: headUse(hold, pull) } };
  });
  const asks = ({ pull, held }: JudgedHead): number => held?.use.ratio ?? headForceOf(pull);
  return judged.reduce<JudgedHead | undefined>(
    (worst, each) => (worst && asks(worst) >= asks(each) ? worst : each),
    undefined,
  );
}
