/** What every joint that is pulled has to hold with, for hovers and reports: pegs of tenons and laps, dovetails, screws of braces, screws and nails of seats. */
import type { Joint } from "../joinery/joint.ts";
import { isSeatKind } from "../joinery/seat.ts";
import { fastenings, isHousedHead, isRafterSeat } from "../roof/fastening.ts";
import { seatHold } from "../roof/seat-fasteners.ts";
import { sizedFasteners } from "../roof/sized-fasteners.ts";
import type { Factor, Sourced } from "../sourced.ts";
import type { FrameResults, Pull } from "./frame-results.ts";
import { headForceOf, headPulls, judgeHead } from "./head-pulls.ts";
import { heldBy, jointPulls } from "./joint-pulls.ts";
import { judgeScrews, screwForceOf, screwLoads } from "./screw-forces.ts";

export interface JointHold {
  readonly joint: Joint;
  readonly pull: Pull;
  /** what holds; `nothing` where the joint only bears, `unjudged` where nobody can tell how much */
  readonly by: "pegs" | "dovetail" | "screws" | "nails" | "nothing" | "unjudged";
  /** lb, with all factors; undefined where nothing holds, or nobody can tell how much */
  readonly capacity: Sourced | undefined;
  readonly factors: readonly Factor[];
  /** pull ÷ capacity */
  readonly ratio: number | undefined;
  /** the force runs along the face of the receiving timber and pulls nothing apart: a brace that pushes on its screws */
  readonly along?: true;
}

/** @returns the hold of a seat, of a rafter's head or of a joint at a timber's end; undefined where nothing pulls at it */
export function jointHolds(frame: FrameResults): (joint: Joint) => JointHold | undefined {
  const pullOf = jointPulls(frame);
  const seatOf = seatHolds(frame);
  const headOf = headHolds(frame);
  const screwsOf = screwHolds(frame);
  return (joint) => {
    if (joint.sizes.screws) return screwsOf(joint);
    if (isSeatKind(joint.kind)) return seatOf(joint);
    if (isHousedHead(joint)) return headOf(joint) ?? endHold(joint);
    return endHold(joint);
  };
  function endHold(joint: Joint): JointHold | undefined {
    const pull = pullOf(joint);
    if (!pull) return undefined;
    const { hold, ratio } = pull;
    // of a dovetail the strengths carry the factors, each its own
    const factors = hold.kind === "pegs" ? hold.pegs.pegs.factors : [];
    return { joint, pull, by: hold.kind, capacity: heldBy(hold), factors, ratio };
  }
}

/** Screwed ends of braces, pulled and pushed along their face. */
function screwHolds(frame: FrameResults): (joint: Joint) => JointHold | undefined {
  const loads = screwLoads(frame);
  return (joint) => {
    const judged = judgeScrews(joint, loads.get(joint.id) ?? []);
    if (!judged) return undefined;
    const { load, held } = judged;
    const pull = { most: screwForceOf(load), caseId: load.caseId, duration: load.duration };
    const along = load.pull > 0 ? {} : { along: true as const };
    if (!held)
      return { joint, pull, by: "unjudged", capacity: undefined, factors: [], ratio: undefined, ...along };
    const { hold, use } = held;
    const { factors } = load.pull > 0 ? hold.withdrawal : hold.lateral;
    return { joint, pull, by: "screws", capacity: use.allowed, factors, ratio: use.ratio, ...along };
  };
}

/** Heads of rafters in the ridge, pulled and lifted at once. */
function headHolds(frame: FrameResults): (joint: Joint) => JointHold | undefined {
  const pulls = headPulls(frame);
  const fasteningOf = fastenings(frame.model);
  return (joint) => {
    const { written } = fasteningOf(joint);
    const sized = sizedFasteners(written);
    const judged = judgeHead(joint, pulls.get(joint.id) ?? [], sized);
    if (!judged) return undefined;
    const { pull, held } = judged;
    const most = { most: headForceOf(pull), caseId: pull.caseId, duration: pull.duration };
    if (!sized || !held) {
      const by = written ? "unjudged" : "nothing";
      return { joint, pull: most, by, capacity: undefined, factors: [], ratio: undefined };
    }
    const { hold, use } = held;
    return {
      joint,
      pull: most,
      by: sized.kind,
      capacity: use.allowed,
      factors: hold.withdrawal.factors,
      ratio: use.ratio,
    };
  };
}

/** Seats of rafters on what the file fastens them with. */
function seatHolds(frame: FrameResults): (joint: Joint) => JointHold | undefined {
  const fasteningOf = fastenings(frame.model);
  return (joint) => {
    const pull = isRafterSeat(joint) ? seatPull(frame, joint) : undefined;
    if (!pull) return undefined;
    const { written } = fasteningOf(joint);
    const sized = sizedFasteners(written);
    const hold = sized && seatHold(joint, sized, pull.duration);
    if (!sized || !hold) {
      const by = written ? "unjudged" : "nothing";
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
