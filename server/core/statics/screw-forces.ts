/** What the screws at the ends of braces carry: all of a pull, and without a housing what pushes along the face too. */
import { remembering } from "../collect.ts";
import type { CombinedUse } from "../fasteners/combined.ts";
import type { Joint } from "../joinery/joint.ts";
import { type ScrewForce, type ScrewHold, screwHold, screwUse } from "../joinery/screw-hold.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import type { Factor } from "../sourced.ts";
import type { FrameResults } from "./frame-results.ts";
import { eachEndForce } from "./joint-forces.ts";

export interface ScrewLoad extends ScrewForce {
  readonly caseId: string;
  /** C_D of the combination */
  readonly duration: Factor;
}

/** A brace that pushes bears square to the face; along it, in its housing or else on its screws. */
function onScrews(joint: Joint, force: Vec3): ScrewForce {
  const pull = Math.max(0, dot(force, joint.face.inward));
  const bears = pull === 0 && joint.sizes.housing.value > 0;
  return { pull, along: bears ? 0 : Math.abs(dot(force, joint.face.grain)) };
}

/** @returns by joint id, for every screwed end of a brace, each combination that loads its screws */
export function screwLoads(frame: FrameResults): ReadonlyMap<string, readonly ScrewLoad[]> {
  const screwed = frame.model.joints.filter(({ sizes, end }) => sizes.screws && end !== "side");
  const found = new Map(screwed.map(({ id }) => [id, [] as ScrewLoad[]]));
  const joints = new Map(screwed.map((joint) => [joint.id, joint]));
  eachEndForce(frame.solution.cases, joints, (joint, force, { id: caseId, combination }) => {
    const load = onScrews(joint, force);
    if (load.pull + load.along >= 1)
      found.get(joint.id)?.push({ ...load, caseId, duration: combination.duration });
  });
  return found;
}

/** lb, both parts together */
export const screwForceOf = ({ pull, along }: ScrewForce): number => Math.hypot(pull, along);

export interface JudgedScrews {
  readonly load: ScrewLoad;
  /** undefined = the woods have no values */
  readonly held: { readonly hold: ScrewHold; readonly use: CombinedUse } | undefined;
}

/** @returns the combination that asks most of the screws; undefined where none loads them */
export function judgeScrews(joint: Joint, loads: readonly ScrewLoad[]): JudgedScrews | undefined {
  const holdFor = remembering((duration: Factor) => screwHold(joint, duration));
  const judged = loads.map((load): JudgedScrews => {
    const hold = holdFor(load.duration);
    return { load, held: hold && { hold, use: screwUse(hold, load) } };
  });
  const asks = ({ load, held }: JudgedScrews): number => held?.use.ratio ?? screwForceOf(load);
  return judged.reduce<JudgedScrews | undefined>(
    (worst, each) => (worst && asks(worst) >= asks(each) ? worst : each),
    undefined,
  );
}
