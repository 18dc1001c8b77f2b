/** Where purlins lie on, or drop into, what carries them, and what the file fastens them with there. */
import type { JointKindName } from "../frame/frame.ts";
import type { Joint } from "../joinery/joint.ts";
import { halfExtent } from "../model/box.ts";
import type { Model, Timber } from "../model/model.ts";
import { isDiagonal, isUpright } from "../model/upright.ts";
import { dot, scale, sub, unit, type Vec3 } from "../model/vec.ts";
import type { Fastening } from "./fastening.ts";
import type { Lying } from "./seat-fasteners.ts";

/** A purlin and what carries it. */
export interface PurlinCrossing extends Lying {
  /** cut at the crossing; undefined = only nailed */
  readonly joint: Joint | undefined;
  /** square to the carrier's upper face */
  readonly up: Vec3;
  /** in, along the purlin, over which it has the carrier's wood under it */
  readonly run: number;
}

/** Ends that are lifted out of what they were dropped into. */
const OPEN_ABOVE: ReadonlySet<JointKindName> = new Set(["pocket", "housed", "housed-dovetail"]);

/** Square to a timber's grain, in the plumb plane through it, upward. */
function upFrom({ axis }: Timber): Vec3 {
  return unit(sub([0, 0, 1], scale(axis, axis[2])));
}

/** In, of the carrier's wood that a joint of its upper side takes away. */
function cutAway({ sizes, solids }: Joint): number {
  if (sizes.seat) return 0;
  const [prism] = [...solids.mortises, ...solids.housings];
  return prism ? prism.to - prism.from : 0;
}

/** How much of a purlin's length lies over its carrier: less than the carrier's width where it ends on it. */
function runOver(purlin: Timber, on: Timber): number {
  const half = halfExtent(on, purlin.axis);
  const at = dot(sub(on.origin, purlin.origin), purlin.axis);
  // a carrier that crosses on the skew, from where the two are nearest
  const cos = dot(purlin.axis, on.axis);
  const along = at - cos * dot(sub(on.origin, purlin.origin), on.axis);
  const center = along / Math.max(1e-6, 1 - cos ** 2);
  return Math.max(0, Math.min(purlin.span, center + half) - Math.max(0, center - half));
}

function crossingOf(purlin: Timber, on: Timber, joint: Joint | undefined): PurlinCrossing | undefined {
  if (isUpright(on) || isDiagonal(on) || Math.abs(dot(purlin.axis, on.axis)) > 0.5) return undefined;
  const up = upFrom(on);
  const drops = joint !== undefined && OPEN_ABOVE.has(joint.kind);
  if (!drops && dot(sub(purlin.origin, on.origin), up) <= 0) return undefined;
  const wood = 2 * halfExtent(purlin, up) - (joint?.sizes.seat?.depth ?? 0);
  const under = 2 * halfExtent(on, up) - (drops ? cutAway(joint) : 0);
  const run = drops
    ? joint.sizes.housing.value + (joint.sizes.dovetail?.length.value ?? 0)
    : runOver(purlin, on);
  return { upper: purlin, lower: on, wood, under, joint, up, run };
}

/** @returns every crossing, in the order of the meetings */
export function purlinCrossings({ meetings, joints }: Model): PurlinCrossing[] {
  const byPair = new Map(joints.map((joint) => [`${joint.of.id} ${joint.into.id}`, joint]));
  return meetings.flatMap(({ a, b }) =>
    (
      [
        [a, b],
        [b, a],
      ] as const
    ).flatMap(([purlin, on]): PurlinCrossing[] => {
      if (purlin.kind !== "purlin" || on.kind === "purlin") return [];
      if (byPair.has(`${on.id} ${purlin.id}`)) return [];
      const joint = byPair.get(`${purlin.id} ${on.id}`);
      if (joint && joint.kind !== "birds-mouth" && !OPEN_ABOVE.has(joint.kind)) return [];
      const crossing = crossingOf(purlin, on, joint);
      return crossing ? [crossing] : [];
    }),
  );
}

/** Where the file says what holds a purlin: the joint there, else the purlin's own entry. */
export function purlinFastening(
  { frame }: Pick<Model, "frame">,
  { upper, joint }: Pick<PurlinCrossing, "upper" | "joint">,
): Fastening {
  const entry = joint?.entry;
  const member = frame.members.find(({ path }) => path === upper.path);
  const written = entry?.fasten ?? member?.fasten;
  const holder = member?.path ?? upper.path;
  return { written, holder, path: written === undefined || written === "unread" ? holder : written.path };
}

/** How a place is named: `purlin@A.2 on principal@A1`. */
export const crossingName = ({ upper, lower }: Lying): string => `${upper.id} on ${lower.id}`;
