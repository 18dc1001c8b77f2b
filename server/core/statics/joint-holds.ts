/** What every joint that is pulled has to hold with, for hovers and reports: pegs of tenons, screws and nails of seats. */
import type { Joint } from "../joinery/joint.ts";
import { seatHold, sizedFasteners } from "../roof/seat-fasteners.ts";
import type { Factor, Sourced } from "../sourced.ts";
import type { FrameResults, Pull } from "./frame-results.ts";
import { jointPulls } from "./joint-pulls.ts";

export interface JointHold {
  readonly joint: Joint;
  readonly pull: Pull;
  /** what holds; `nothing` where the joint only bears, `unjudged` where no rule here tells how much */
  readonly by: "pegs" | "screws" | "nails" | "nothing" | "unjudged";
  /** lb, with all factors; undefined where nothing holds, or nobody can tell how much */
  readonly capacity: Sourced | undefined;
  readonly factors: readonly Factor[];
  /** pull ÷ capacity */
  readonly ratio: number | undefined;
}

/** @returns the hold of a seat or of a joint at a timber's end; undefined where nothing pulls at it */
export function jointHolds(frame: FrameResults): (joint: Joint) => JointHold | undefined {
  const pullOf = jointPulls(frame);
  const seatOf = seatHolds(frame);
  return (joint) => {
    if (joint.kind === "birds-mouth") return seatOf(joint);
    const pull = pullOf(joint);
    if (!pull) return undefined;
    const { hold, ratio } = pull;
    return hold.kind === "pegs"
      ? { joint, pull, by: "pegs", capacity: hold.pegs.tension, factors: hold.pegs.pegs.factors, ratio }
      : { joint, pull, by: hold.kind, capacity: undefined, factors: [], ratio };
  };
}

/** Seats of the roof's rafters on what the file fastens them with. */
function seatHolds(frame: FrameResults): (joint: Joint) => JointHold | undefined {
  const { model } = frame;
  const own = new Set(model.roof?.slopes.flatMap(({ rafters }) => rafters.map(({ id }) => id)));
  const fasten = model.frame.roof?.rafters?.fasten;
  const sized = fasten && fasten !== "unread" ? sizedFasteners(fasten) : undefined;
  return (joint) => {
    const pull = seatPull(frame, joint);
    if (!own.has(joint.of.id) || !pull) return undefined;
    const hold = sized && seatHold(joint, sized, pull.duration);
    if (!sized || !hold) {
      const by = fasten ? "unjudged" : "nothing";
      return { joint, pull, by, capacity: undefined, factors: [], ratio: undefined };
    }
    const { reference, value, status, factors } = hold.uplift;
    const capacity = { value, status, source: reference.source };
    const ratio = value > 0 ? pull.most / value : Number.POSITIVE_INFINITY;
    return { joint, pull, by: sized.kind, capacity, factors, ratio };
  };
}

/** The most that lifts a seat: only wind does, and all of it has one duration. */
export function seatPull({ joints }: FrameResults, joint: Joint): Pull | undefined {
  const pulls = joints.get(joint.id)?.pulls ?? [];
  const most = pulls.reduce<Pull | undefined>(
    (worst, p) => (worst && worst.most >= p.most ? worst : p),
    undefined,
  );
  return most && most.most >= 1 ? most : undefined;
}
