/**
 * Purlins that wind lifts off what carries them. They lie across rafters, in seats or only nailed, or their ends drop into
 * pockets: wood bears what presses down, and only screws or nails hold what lifts. The force is counted square to the
 * carrier's upper face; what runs along it is left to the deck.
 */
import type { JointKindName } from "../frame/frame.ts";
import type { Joint } from "../joinery/joint.ts";
import { halfExtent } from "../model/box.ts";
import type { Model, Timber } from "../model/model.ts";
import { isDiagonal, isUpright } from "../model/upright.ts";
import { dot, scale, sub, unit, type Vec3 } from "../model/vec.ts";
import type { Fastening } from "../roof/fastening.ts";
import { type Lying, type UpliftHold, upliftHold } from "../roof/seat-fasteners.ts";
import { sizedFasteners } from "../roof/sized-fasteners.ts";
import { forceTable } from "./force-table.ts";
import type { FrameResults, Pull } from "./frame-results.ts";
import { eachEndForce, forceOnFirst, raisePull } from "./joint-forces.ts";
import { worstPull } from "./joint-pulls.ts";

export interface PurlinLift extends Lying {
  /** cut at the crossing; undefined = only nailed */
  readonly joint: Joint | undefined;
  /** the pull that asks most of what holds */
  readonly pull: Pull;
  readonly fastening: Fastening;
  /** undefined = the file names nothing that holds, or gives no size for it */
  readonly hold: UpliftHold | undefined;
}

/** Uplift below this is none, lb: less than a foot of purlin weighs. */
const NOTHING = 5;

/** Ends that are lifted out of what they were dropped into. */
const OPEN_ABOVE: ReadonlySet<JointKindName> = new Set(["pocket", "housed", "housed-dovetail"]);

/** A purlin and what carries it, with the force in each combination still to come. */
interface Crossing extends Lying {
  readonly joint: Joint | undefined;
  /** square to the carrier's upper face */
  readonly up: Vec3;
  readonly pulls: Pull[];
}

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

function crossingOf(purlin: Timber, on: Timber, joint: Joint | undefined): Crossing | undefined {
  if (isUpright(on) || isDiagonal(on) || Math.abs(dot(purlin.axis, on.axis)) > 0.5) return undefined;
  const up = upFrom(on);
  const drops = joint !== undefined && OPEN_ABOVE.has(joint.kind);
  if (!drops && dot(sub(purlin.origin, on.origin), up) <= 0) return undefined;
  const wood = 2 * halfExtent(purlin, up) - (joint?.sizes.seat?.depth ?? 0);
  const under = 2 * halfExtent(on, up) - (drops ? cutAway(joint) : 0);
  return { upper: purlin, lower: on, wood, under, joint, up, pulls: [] };
}

/** Every crossing by the ids of its two timbers: forces may be older than the timbers of now. */
function crossings({ meetings, joints }: Model): Map<string, Crossing> {
  const found = new Map<string, Crossing>();
  const byPair = new Map(joints.map((joint) => [`${joint.of.id} ${joint.into.id}`, joint]));
  for (const { a, b } of meetings)
    for (const [purlin, on] of [
      [a, b],
      [b, a],
    ] as const) {
      if (purlin.kind !== "purlin" || on.kind === "purlin") continue;
      if (byPair.has(`${on.id} ${purlin.id}`)) continue;
      const joint = byPair.get(`${purlin.id} ${on.id}`);
      if (joint && joint.kind !== "birds-mouth" && !OPEN_ABOVE.has(joint.kind)) continue;
      const crossing = crossingOf(purlin, on, joint);
      if (crossing) found.set(`${purlin.id} ${on.id}`, crossing);
    }
  return found;
}

function gather({ solution: { cases } }: FrameResults, found: ReadonlyMap<string, Crossing>): void {
  const ends = new Map([...found.values()].flatMap((c) => (c.joint ? [[c.joint.id, c] as const] : [])));
  eachEndForce(cases, ends, ({ up, pulls }, force, frameCase) =>
    raisePull(pulls, -dot(force, up), frameCase),
  );
  for (const solved of cases) {
    if (!forceTable(solved)) continue;
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

/** Where the file says what holds a purlin: the joint there, else the purlin's own entry. */
function fasteningOf({ frame }: Model, { upper, joint }: Crossing): Fastening {
  const entry = joint?.entry;
  const member = frame.members.find(({ path }) => path === upper.path);
  const written = entry?.fasten ?? member?.fasten;
  const holder = member?.path ?? upper.path;
  return { written, holder, path: written === undefined || written === "unread" ? holder : written.path };
}

/** @returns every place where something lifts a purlin, with what holds it there; in the order of the meetings */
export function purlinLifts(frame: FrameResults): PurlinLift[] {
  const found = crossings(frame.model);
  if (found.size === 0) return [];
  gather(frame, found);
  return [...found.values()].flatMap((crossing) => {
    const { upper, lower, wood, under, joint, pulls } = crossing;
    const fastening = fasteningOf(frame.model, crossing);
    const sized = sizedFasteners(fastening.written);
    const pull = worstPull(pulls, sized !== undefined);
    if (!pull || pull.most < NOTHING) return [];
    const hold = sized && upliftHold({ upper, lower, wood, under }, sized, pull.duration);
    return [{ upper, lower, wood, under, joint, pull, fastening, hold }];
  });
}
