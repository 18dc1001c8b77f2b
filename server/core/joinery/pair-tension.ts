/**
 * What the pegs of a rafter pair carry when the rafters are drawn apart: in a bridle each peg is sheared at both faces of
 * the tongue, in a lap once. The pull is taken level, so that it stands at each rafter's slope to its grain. Distances are
 * plane geometry in the rhombus of the two (derived): along the grain up to the end cut, square to the grain to the edges.
 */
import { type PegJoint, pegJoint } from "../fasteners/pegs/peg-joint.ts";
import { pegGravity } from "../fasteners/pegs/strength.ts";
import type { Frame } from "../frame/frame.ts";
import type { Factor } from "../sourced.ts";
import { adjustedFor, woodOf } from "../statics/timber-wood.ts";
import type { Joint } from "./joint.ts";
import { pegSpecies } from "./peg-species.ts";

/**
 * @param duration C_D of the combination
 * @returns undefined for another joint, without pegs, or where the woods are unknown
 */
export function pairTension(
  { of, into, sizes }: Joint,
  frame: Frame,
  duration: Factor,
): PegJoint | undefined {
  const { pair, pegs } = sizes;
  const [own, other] = [woodOf(of), woodOf(into)];
  const gravity = pegGravity(pegSpecies(frame));
  if (!pair || !pegs || !own || !other || gravity === undefined) return undefined;
  const values = adjustedFor(of, own, duration);
  const [slope, receiving] = pair.slopes;
  const middle = pegs.alongWidth.reduce((sum, a) => sum + a, 0) / Math.max(1, pegs.alongWidth.length);
  const heights = pegs.alongWidth.map((a) => a - middle);
  const farthest = Math.max(0, ...heights.map(Math.abs));
  const over = pair.plumb / 2 - farthest;
  // level from the highest peg to where the other's upper edge cuts the end off
  const level = over / (Math.tan(slope) + Math.tan(receiving));
  const edge = over * Math.cos(receiving);
  const lean = Math.sin(receiving);
  return pegJoint({
    peg: { diameter: pegs.diameter.value, G: gravity.value, count: pegs.count },
    tenon: {
      species: own.group,
      G: own.values.G.value,
      thickness: pair.tongue,
      width: pair.plumb * Math.cos(slope),
      // the rule measures square to the face and leans it by the angle; here the distance along the grain is known
      length: edge + (level / Math.cos(slope)) * lean,
      setbacks: [edge],
      alongWidth: heights.map((h) => h * Math.cos(slope)),
      strength: { Fv: values.Fv.value, Ft: values.Ft.value, made: { Fv: values.Fv, Ft: values.Ft } },
    },
    mortised: {
      species: other.group,
      G: other.values.G.value,
      walls: [pair.tine, pair.tine],
      toEnd: level / Math.cos(receiving) + farthest * Math.cos(slope),
    },
    angle: degrees(receiving),
    angleOfTenon: degrees(slope),
    planes: pair.form === "lapped" ? 1 : 2,
    seasoning: into.class?.seasoning ?? "green",
    duration,
  });
}

const degrees = (radians: number): number => (radians * 180) / Math.PI;
