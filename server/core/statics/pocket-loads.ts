/**
 * What the wood under a pocket carries. The load enters its carrier low down, as at a fastener: what lies above the pocket's
 * floor does not help, and the carrier splits along the grain from there (NDS 3.4.3.3, taken over from fasteners to the floor
 * of a pocket; derived). Where a pocket comes from the other face as well, each has half of the carrier.
 */
import { cheekSplit } from "../fasteners/tear-out.ts";
import type { Joint } from "../joinery/joint.ts";
import type { Adjusted } from "../members/adjust.ts";
import { halfExtent } from "../model/box.ts";
import { dot, length, sub } from "../model/vec.ts";
import type { Factor } from "../sourced.ts";
import type { FrameResults } from "./frame-results.ts";
import { eachEndForce } from "./joint-forces.ts";
import { adjustedFor, woodOf } from "./timber-wood.ts";

export interface PocketLoad {
  readonly joint: Joint;
  /** lb, down */
  readonly load: number;
  readonly caseId: string;
  /** C_D of the combination */
  readonly duration: Factor;
  /** lb that the wood under the pocket carries */
  readonly capacity: number;
  /** in, of that wood: d_e */
  readonly under: number;
  /** breadth and depth of the carrier that count, in */
  readonly breadth: number;
  readonly depth: number;
  /** within five depths of the carrier's end */
  readonly nearEnd: boolean;
  /** F_v′ of the carrier */
  readonly shear: Adjusted;
}

/** Wood of the carrier under the floor of a pocket, plumb, in; negative where the pocket is deeper than its carrier. */
export function woodUnder({ face, into, sizes }: Joint): number {
  return 2 * halfExtent(into, face.across) - (sizes.pocket?.depth ?? 0);
}

/** Pockets from opposite faces nearer than this along the carrier share its wood, in. */
const SAME_PLACE = 6;

function isOpposed(joint: Joint, all: readonly Joint[]): boolean {
  return all.some(
    (o) =>
      o.into.id === joint.into.id &&
      dot(o.face.inward, joint.face.inward) < -0.9 &&
      Math.abs(dot(sub(o.face.origin, joint.face.origin), joint.face.grain)) < SAME_PLACE &&
      length(sub(o.face.origin, joint.face.origin)) < 2 * joint.face.thickness + SAME_PLACE,
  );
}

/** @returns for each pocket the combination that asks most of the wood under it; none for woods without values */
export function pocketLoads(frame: FrameResults): PocketLoad[] {
  // a pocket in a post bears on end grain, and has a post's length of wood under it
  const pockets = frame.model.joints.filter((j) => j.kind === "pocket" && Math.abs(j.into.axis[2]) < 0.5);
  const places = new Map(
    pockets.map((joint) => [joint.id, { joint, share: isOpposed(joint, pockets) ? 1 / 2 : 1 }]),
  );
  // F_v′ goes by C_D alone: the combination that asks most is known before the wood is
  const most = new Map<string, Pick<PocketLoad, "load" | "caseId" | "duration">>();
  eachEndForce(
    frame.solution.cases,
    places,
    ({ joint }, force, { id: caseId, combination: { duration } }) => {
      // what holds the end up presses the floor down
      const load = force[2];
      const known = most.get(joint.id);
      if (load > 0 && (!known || load / duration.value > known.load / known.duration.value))
        most.set(joint.id, { load, caseId, duration });
    },
  );
  return [...places.values()].flatMap(({ joint, share }): PocketLoad[] => {
    const asked = most.get(joint.id);
    const wood = woodOf(joint.into);
    if (!asked || !wood) return [];
    const { face, into } = joint;
    const under = Math.max(0, woodUnder(joint));
    const breadth = share * face.thickness;
    const depth = 2 * halfExtent(into, face.across);
    const shear = adjustedFor(into, wood, asked.duration).Fv;
    const fromEnd = Math.min(-face.ends[0], face.ends[1]);
    const { pull, near } = cheekSplit(under, 0, depth, [breadth, 0], shear.value, fromEnd);
    return [{ joint, ...asked, capacity: pull, under, breadth, depth, nearEnd: near, shear }];
  });
}
