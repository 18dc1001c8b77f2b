/**
 * Purlins that wind lifts off what carries them. They lie across rafters, in seats or only nailed, or their ends drop into
 * pockets: wood bears what presses down, and only screws or nails hold what lifts. The force is counted square to the
 * carrier's upper face; what runs along it is left to the deck.
 */
import { dot, scale } from "../model/vec.ts";
import type { Fastening } from "../roof/fastening.ts";
import { type PurlinCrossing, purlinCrossings, purlinFastening } from "../roof/purlin-crossings.ts";
import { type UpliftHold, upliftHold } from "../roof/seat-fasteners.ts";
import { sizedFasteners } from "../roof/sized-fasteners.ts";
import { isSolved } from "./force-table.ts";
import type { FrameResults, Pull } from "./frame-results.ts";
import { eachEndForce, forceOnFirst, raisePull } from "./joint-forces.ts";
import { worstPull } from "./joint-pulls.ts";

export interface PurlinLift extends Omit<PurlinCrossing, "up"> {
  /** the pull that asks most of what holds */
  readonly pull: Pull;
  readonly fastening: Fastening;
  /** undefined = the file names nothing that holds, or gives no size for it */
  readonly hold: UpliftHold | undefined;
}

/** Uplift below this is none, lb: less than a foot of purlin weighs. */
const NOTHING = 5;

/** With the force in each combination still to come. */
interface Crossing extends PurlinCrossing {
  readonly pulls: Pull[];
}

function gather({ solution: { cases } }: FrameResults, found: ReadonlyMap<string, Crossing>): void {
  const ends = new Map([...found.values()].flatMap((c) => (c.joint ? [[c.joint.id, c] as const] : [])));
  eachEndForce(cases, ends, ({ up, pulls }, force, frameCase) =>
    raisePull(pulls, -dot(force, up), frameCase),
  );
  for (const solved of cases) {
    if (!isSolved(solved)) continue;
    for (const { tie, springs } of solved.frame.ties) {
      const { a, b } = tie.meeting;
      const onFirst = forceOnFirst(solved, springs);
      for (const [purlin, on, force] of [
        [a, b, onFirst],
        [b, a, scale(onFirst, -1)],
      ] as const) {
        const crossing = found.get(`${purlin.id} ${on.id}`);
        if (crossing) raisePull(crossing.pulls, -dot(force, crossing.up), solved.frameCase);
      }
    }
  }
}

/** @returns every place where something lifts a purlin, with what holds it there; in the order of the meetings */
export function purlinLifts(frame: FrameResults): PurlinLift[] {
  // by the ids of its two timbers: forces may be older than the timbers of now
  const found = new Map(
    purlinCrossings(frame.model).map((one): [string, Crossing] => [
      `${one.upper.id} ${one.lower.id}`,
      { ...one, pulls: [] },
    ]),
  );
  if (found.size === 0) return [];
  gather(frame, found);
  return [...found.values()].flatMap(({ pulls, up: _, ...crossing }) => {
    const fastening = purlinFastening(frame.model, crossing);
    const sized = sizedFasteners(fastening.written);
    const pull = worstPull(pulls, sized !== undefined);
    if (!pull || pull.most < NOTHING) return [];
    const hold = sized && upliftHold(crossing, sized, pull.duration);
    return [{ ...crossing, pull, fastening, hold }];
  });
}
