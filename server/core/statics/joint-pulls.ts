/** What pulls joints apart, against what holds in them. */
import type { PegJoint } from "../fasteners/pegs/peg-joint.ts";
import { type DovetailHold, dovetailTension } from "../joinery/dovetail-tension.ts";
import type { Joint } from "../joinery/joint.ts";
import { pegTension } from "../joinery/peg-tension.ts";
import { dot } from "../model/vec.ts";
import { isHousedHead, isRafterSeat } from "../roof/fastening.ts";
import type { Sourced } from "../sourced.ts";
import type { FrameResults, Pull } from "./frame-results.ts";

/** What of a joint holds when its timber is pulled out of the other. */
export type Hold =
  /** its pegs, judged by the rules of pegged joinery */
  | { readonly kind: "pegs"; readonly pegs: PegJoint }
  /** its flared tail, judged by statics without friction */
  | { readonly kind: "dovetail"; readonly dovetail: DovetailHold }
  /** something holds, but how much is not known: wood without values, no wood beside a peg */
  | { readonly kind: "unjudged" }
  /** what bears only when it is pushed */
  | { readonly kind: "nothing" };

export interface JointPull extends Pull {
  readonly joint: Joint;
  readonly hold: Hold;
  /** pull ÷ capacity, passes up to 1; undefined where the hold is neither pegs nor a dovetail */
  readonly ratio: number | undefined;
}

/** Pulls below this say nothing, lb: a snug joint's own friction holds as much (common practice, no source). */
export const FRICTION = 50;

/** Whether nothing in a joint holds when it is pulled: it has neither pegs nor screws nor a dovetail. */
export function onlyBears({ sizes: { pegs, screws, dovetail } }: Joint): boolean {
  return !pegs && !screws && !dovetail;
}

function holdOf(joint: Joint, frame: FrameResults, pull: Pull): Hold {
  if (onlyBears(joint)) return { kind: "nothing" };
  // screws are judged by what acts on them in every direction, see screw-forces.ts
  if (joint.sizes.screws) return { kind: "unjudged" };
  const pegs = pegTension(joint, frame.model.frame, pull.duration);
  const dovetail = dovetailTension(joint, pull.duration);
  // the two give by different amounts and do not share the pull (NDS 11.1.4, mixed fastenings): what holds more counts
  if (dovetail && dovetail.tension.value >= (pegs?.tension.value ?? 0)) return { kind: "dovetail", dovetail };
  // a mortise without walls has a finding of its own
  return pegs && pegs.one.reference.value > 0 ? { kind: "pegs", pegs } : { kind: "unjudged" };
}

/** @returns what a joint's hold carries with all factors, lb; undefined where nobody can tell, or nothing holds */
export function heldBy(hold: Hold): Sourced | undefined {
  switch (hold.kind) {
    case "pegs":
      return hold.pegs.tension;
    case "dovetail":
      return hold.dovetail.tension;
    default:
      return undefined;
  }
}

/** Timbers that only push in the analysis: what their ends show besides is their own weight. */
function pushing({ solution }: FrameResults): ReadonlySet<string> {
  const { structure, pieces } = solution.hold;
  return new Set(
    structure.elements.flatMap(({ oneWay }, k) => {
      const id = pieces[k]?.timber.id;
      return oneWay === undefined || id === undefined ? [] : [id];
    }),
  );
}

/** A leaning tenon is pulled along its own grain, and its shoulder takes no part in that; a pair's pegs take it as it is. */
function alongGrain({ of, face, kind }: Joint, force: number): number {
  if (kind === "rafter-pair") return force;
  const square = Math.abs(dot(of.axis, face.inward));
  return square > 1e-3 ? force / square : force;
}

/** The pull that asks most: without anything that holds the greatest, else the greatest by its load duration. */
export function worstPull(pulls: readonly Pull[], byDuration: boolean): Pull | undefined {
  const asks = ({ most, duration }: Pull): number => (byDuration ? most / duration.value : most);
  return pulls.reduce<Pull | undefined>(
    (worst, p) => (worst && asks(worst) >= asks(p) ? worst : p),
    undefined,
  );
}

/**
 * The pull that asks most of each joint at a timber's end; whatever holds it is worth C_D times as much for a short load.
 * Seats of rafters and their housed heads stand apart: their screws hold them.
 * @returns only joints with a pull of any size; none for timbers that only push
 */
export function jointPulls(frame: FrameResults): (joint: Joint) => JointPull | undefined {
  const push = pushing(frame);
  return (joint) => {
    if (joint.end === "side" || push.has(joint.of.id)) return undefined;
    if (isRafterSeat(joint) || isHousedHead(joint)) return undefined;
    const worst = worstPull(frame.joints.get(joint.id)?.pulls ?? [], !onlyBears(joint));
    if (!worst || worst.most < 1) return undefined;
    const pull = { ...worst, most: alongGrain(joint, worst.most) };
    const hold = holdOf(joint, frame, pull);
    const capacity = heldBy(hold)?.value;
    return {
      ...pull,
      joint,
      hold,
      ratio:
        capacity === undefined ? undefined : capacity > 0 ? pull.most / capacity : Number.POSITIVE_INFINITY,
    };
  };
}
