/** How much of the two lengths there is for the lap of each scarf, once the joints at their far ends are known. */
import type { Joint } from "../joinery/joint.ts";
import type { LapRoom } from "../joinery/joint-sizes.ts";
import { isScarf, lapPlace } from "../joinery/scarf.ts";
import type { Timber } from "./model.ts";
import { cornersOf } from "./solid.ts";
import { dot, scale, sub, type Vec3 } from "./vec.ts";

interface Lap {
  readonly id: string;
  readonly middle: Vec3;
  /** what it reaches from its middle as asked for, in */
  readonly half: number;
}

/** From the middle of a lap to where the full section of a length ends, the way it runs off, in. */
function toEnd(timber: Timber, middle: Vec3, away: Vec3): number {
  const corners = cornersOf(timber);
  const far = dot(timber.axis, away) > 0 ? corners.slice(4) : corners.slice(0, 4);
  return Math.min(...far.map((c) => dot(sub(c, middle), away)));
}

/**
 * @param joints as they are shaped where nothing limits their laps
 * @param ended the timbers with the ends that follow from these joints, by id
 * @returns by joint, of scarfs alone: lengths in inches from the middle of the lap. Two scarfs at the two ends of one length
 * share it: each has what the other leaves, and half of it at least.
 */
export function lapRooms(
  joints: readonly Joint[],
  ended: ReadonlyMap<string, Timber>,
): ReadonlyMap<string, LapRoom> {
  const scarfs = joints.filter(({ kind, end }) => isScarf(kind) && end !== "side");
  const laps = new Map<string, Lap[]>();
  for (const { id, of, end, into, sizes } of scarfs) {
    const { middle } = lapPlace(of, end, into);
    const half = (sizes.lap?.length.value ?? 0) / 2 + (sizes.splay?.undercut ?? 0);
    for (const t of [of, into]) laps.set(t.id, [...(laps.get(t.id) ?? []), { id, middle, half }]);
  }
  const roomIn = (id: string, stick: Timber, middle: Vec3, away: Vec3): number => {
    const others = (laps.get(stick.id) ?? []).flatMap((lap) => {
      const apart = dot(sub(lap.middle, middle), away);
      return lap.id === id || apart <= 0 ? [] : [Math.max(apart / 2, apart - lap.half)];
    });
    return Math.min(toEnd(ended.get(stick.id) ?? stick, middle, away), ...others);
  };
  return new Map(
    scarfs.map(({ id, of, end, into }): [string, LapRoom] => {
      const { middle, out } = lapPlace(of, end, into);
      const own = roomIn(id, of, middle, scale(out, -1));
      const other = roomIn(id, into, middle, out);
      return [
        id,
        own <= other ? { near: own, stick: of.id, other } : { near: other, stick: into.id, other: own },
      ];
    }),
  );
}
