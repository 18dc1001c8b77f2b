/** What the pegs of a joint carry in tension: from its sizes and woods to the rules of pegged joinery. */
import { type PegJoint, pegJoint } from "../fasteners/pegs/peg-joint.ts";
import { pegGravity } from "../fasteners/pegs/strength.ts";
import type { Frame } from "../frame/frame.ts";
import { dot } from "../model/vec.ts";
import type { Factor } from "../sourced.ts";
import { adjustedFor, woodOf } from "../statics/timber-wood.ts";
import type { Joint } from "./joint.ts";
import { lapTension } from "./lap-tension.ts";
import { pairTension } from "./pair-tension.ts";
import { pegSpecies } from "./peg-species.ts";

/** Load duration of ordinary use, for what does not depend on a combination. */
const TEN_YEARS: Factor = {
  symbol: "C_D",
  value: 1,
  status: "published",
  source: "NDS Table 2.3.2",
  note: "ten years, occupancy",
};

/**
 * @param duration C_D of the combination
 * @returns undefined for a joint without pegs, with neither a tenon nor a lap, or whose woods are unknown
 */
export function pegTension(joint: Joint, frame: Frame, duration: Factor = TEN_YEARS): PegJoint | undefined {
  if (joint.sizes.pair) return pairTension(joint, frame, duration);
  if (!joint.sizes.tenon) return lapTension(joint, frame, duration);
  const { tenon, pegs, housing } = joint.sizes;
  const own = woodOf(joint.of);
  const other = woodOf(joint.into);
  const gravity = pegGravity(pegSpecies(frame));
  if (!pegs || !own || !other || gravity === undefined) return undefined;
  const values = adjustedFor(joint.of, own, duration);
  const toEnd = Math.min(-joint.face.ends[0] + tenon.center[0], joint.face.ends[1] - tenon.center[0]);
  const angle = (Math.acos(Math.min(1, Math.abs(dot(joint.of.axis, joint.into.axis)))) * 180) / Math.PI;
  return pegJoint({
    peg: { diameter: pegs.diameter.value, G: gravity.value, count: pegs.count },
    tenon: {
      species: own.group,
      G: own.values.G.value,
      thickness: tenon.thickness.value,
      width: tenon.width.value,
      length: tenon.length.value,
      setbacks: pegs.setbacks.map((s) => s - housing.value),
      alongWidth: pegs.alongWidth,
      strength: { Fv: values.Fv.value, Ft: values.Ft.value, made: { Fv: values.Fv, Ft: values.Ft } },
    },
    mortised: {
      species: other.group,
      G: other.values.G.value,
      walls: tenon.walls,
      toEnd,
    },
    ...(angle > 0.5 && angle < 89.5 ? { angle } : {}),
    seasoning: joint.into.class?.seasoning ?? "green",
    duration,
  });
}
