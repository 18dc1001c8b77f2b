/**
 * A deck that braces the plane of its roof: structural panels, or boards laid diagonally. Boards laid square across the
 * rafters do not count (design, section 6). Between two neighboring rafters the deck acts as two crossed springs.
 */
import type { FrameLink } from "../analysis/structure.ts";
import { bracesRoofPlane } from "../frame/roof.ts";
import { isSeatKind } from "../joinery/seat.ts";
import type { Model, RoofSlope, Timber } from "../model/model.ts";
import { add, length, sub, unit, type Vec3 } from "../model/vec.ts";
import type { Hold, Skeleton } from "./skeleton.ts";

/**
 * Apparent shear stiffness of a nailed roof deck, lb/in: the least of unblocked structural panels on 2x framing, and that of
 * diagonal boards (SDPWS-2015 tables 4.2C and 4.2D, from memory).
 */
const SHEAR_STIFFNESS = 6000;

/** The rafters that a slope's deck ties together, in order along the wall; purlins lie on the principal ones. */
function raftersOf(model: Model, slope: RoofSlope): Timber[] {
  const own = slope.rafters.length > 0 ? slope.rafters : model.timbers.filter((t) => onSlope(t, slope));
  return [...own].sort((a, b) => a.origin[0] - b.origin[0]);
}

const onSlope = (t: Timber, slope: RoofSlope): boolean => t.kind === "rafter" && t.walls.includes(slope.wall);

/** Where a rafter is held below and above: its seat (else its foot), its head. */
interface Ends {
  readonly low: Hold;
  readonly high: Hold;
}

function endsOf(skeleton: Skeleton, seats: ReadonlyMap<string, Hold>, rafter: Timber): Ends | undefined {
  const pieces = skeleton.piecesOf.get(rafter.id);
  const low = seats.get(rafter.id) ?? pieces?.[0]?.i;
  const high = pieces?.at(-1)?.j;
  return low && high && { low, high };
}

/** The node of each rafter over its seat, on its own center line. */
function seatsOf(skeleton: Skeleton): Map<string, Hold> {
  const seats = new Map<string, Hold>();
  for (const { joint, meeting, i, j } of skeleton.ties) {
    if (!joint || !isSeatKind(joint.kind)) continue;
    const { node } = joint.of === meeting.a ? i : j;
    seats.set(joint.of.id, { node, arm: [0, 0, 0] });
  }
  return seats;
}

/** @returns springs of the decks that count, between each rafter’s seat and its neighbor’s head; none for other decks */
export function deckLinks(model: Model, skeleton: Skeleton): FrameLink[] {
  if (!bracesRoofPlane(model.frame.roof)) return [];
  const seats = seatsOf(skeleton);
  const point = ({ node, arm }: Hold): Vec3 => add(skeleton.nodes[node] ?? [0, 0, 0], arm);
  const spring = (id: string, low: Hold, high: Hold): FrameLink | undefined => {
    const direction = sub(point(high), point(low));
    const along = Math.abs(direction[0]);
    const up = Math.hypot(direction[1], direction[2]);
    if (low.node === high.node || along < 1 || up < 1) return undefined;
    return {
      id,
      i: low.node,
      j: high.node,
      offsetI: low.arm,
      offsetJ: high.arm,
      direction: unit(direction),
      // two crossed springs as stiff in shear as the deck between them: G a/b = 2 k a²/(a² + b²)
      stiffness: (SHEAR_STIFFNESS * length(direction) ** 2) / (2 * along * up),
    };
  };
  return (model.roof?.slopes ?? []).flatMap((slope) => {
    const rafters = raftersOf(model, slope);
    return rafters.slice(1).flatMap((next, index) => {
      const own = rafters[index];
      const [a, b] = [own && endsOf(skeleton, seats, own), endsOf(skeleton, seats, next)];
      if (!own || !a || !b) return [];
      const pair = `deck ${own.id}+${next.id}`;
      return [spring(`${pair}.up`, a.low, b.high), spring(`${pair}.down`, b.low, a.high)].flatMap(
        (l) => l ?? [],
      );
    });
  });
}
