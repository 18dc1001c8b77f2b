/** Where lying timbers lie without a joint that is cut to bear: across others, and on piers. */
import { isSeatKind } from "../joinery/seat.ts";
import type { Model, Timber } from "../model/model.ts";
import { isDiagonal, isUpright } from "../model/upright.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import type { Note } from "../note.ts";
import { type Bearing, pressOfTie } from "./bearing-force.ts";
import type { Ground } from "./member-supports.ts";
import type { FrameStructure } from "./structure.ts";

const derived = (note: Note): Bearing["made"] => ({ note, status: "derived" });

const DOWN: Vec3 = [0, 0, -1];

/** From the edge of a bearing to the nearer end of the timber, in. */
export const toEnd = (timber: Timber, at: number, length: number): number =>
  Math.max(0, Math.min(at, timber.span - at) - length / 2);

/** Lying timbers across others: the force of the upright spring at their contact. Seats are joints, with their own sizes. */
export function contactBearings(model: Model, frame: FrameStructure): Bearing[] {
  const joints = new Map(model.joints.map((j) => [j.id, j]));
  const timbers = new Map(model.timbers.map((t) => [t.id, t]));
  // forces that are kept are of an earlier model's timbers
  const now = (t: Timber): Timber => timbers.get(t.id) ?? t;
  return frame.ties.flatMap(({ tie }, index): Bearing[] => {
    const { area } = tie.meeting;
    const [a, b] = [now(tie.meeting.a), now(tie.meeting.b)];
    const joint = tie.joint && joints.get(tie.joint.id);
    if (isUpright(a) || isUpright(b) || isDiagonal(a) || isDiagonal(b)) return [];
    if (joint && (joint.end !== "side" || isSeatKind(joint.kind))) return [];
    const axialAt = (t: Timber): number =>
      dot([tie.at[0] - t.origin[0], tie.at[1] - t.origin[1], tie.at[2] - t.origin[2]], t.axis);
    const heightOver = (t: Timber): number => tie.at[2] - (t.origin[2] + t.axis[2] * axialAt(t));
    const upper = heightOver(a) < heightOver(b) ? a : b;
    const lower = upper === a ? b : a;
    // the contact must lie on top of the one and under the other, or they only touch side by side
    if (heightOver(lower) < lower.depth / 4 || heightOver(upper) > -upper.depth / 4) return [];
    const along = upper.width;
    const onUpper = area / upper.width;
    const shared = {
      place: joint?.id ?? `${upper.id} on ${lower.id}`,
      joint,
      area,
      source: pressOfTie(index, upper === a, DOWN),
      growth: undefined,
      made: derived("contact of the two"),
    };
    const slope = (Math.asin(Math.min(1, Math.abs(upper.axis[2]))) * 180) / Math.PI;
    const [atLower, atUpper] = [axialAt(lower), axialAt(upper)];
    return [
      {
        ...shared,
        timber: lower,
        at: atLower,
        length: along,
        fromEnd: toEnd(lower, atLower, along),
        angle: 90,
      },
      {
        ...shared,
        timber: upper,
        at: atUpper,
        length: onUpper,
        fromEnd: toEnd(upper, atUpper, onUpper),
        angle: 90 - slope,
      },
    ];
  });
}

/** Area of a round pier's top under a strip of the timber's width, in². */
function stripOfCircle(width: number, diameter: number): number {
  const r = diameter / 2;
  const h = Math.min(width / 2, r);
  return 2 * (h * Math.sqrt(r * r - h * h) + r * r * Math.asin(h / r));
}

/** Lying timbers on piers. Held off the concrete, they sit on a saddle as long as they are wide. */
export function groundBearings(grounds: readonly Ground[]): Bearing[] {
  return grounds.flatMap(({ timber, at, node, pier }): Bearing[] => {
    if (!pier || isUpright(timber)) return [];
    const saddle = (pier.entry.anchor?.standOff ?? 0) > 0;
    const square = pier.entry.kind === "pad";
    const length = saddle ? timber.width : pier.diameter;
    const area = saddle || square ? timber.width * length : stripOfCircle(timber.width, length);
    return [
      {
        timber,
        at,
        place: pier.id,
        joint: undefined,
        growth: undefined,
        area,
        length,
        fromEnd: toEnd(timber, at, length),
        angle: 90,
        source: { kind: "ground", node },
        made: saddle
          ? { note: "saddle as long as the timber is wide", status: "common-practice" }
          : derived("top of the pier"),
      },
    ];
  });
}
