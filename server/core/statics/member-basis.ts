/** What the checks of a frame's timbers start from: plans, buckling lengths, bearings and spans. */
import type { Model, Timber } from "../model/model.ts";
import { isUpright } from "../model/upright.ts";
import type { TimberValues } from "../wood/stated-values.ts";
import type { Bearing } from "./bearing-force.ts";
import { type DeflectionPlan, deflectionPlans } from "./deflections.ts";
import { bucklingLengths, type Story } from "./effective-length.ts";
import { leaningShare } from "./leaning-share.ts";
import { bearingsOf, byTimber } from "./member-bearing.ts";
import { type MemberPlan, memberPlans } from "./member-plan.ts";
import { groundsOf } from "./member-supports.ts";
import { timberCuts } from "./net-section.ts";
import type { SolvedCase } from "./solve-frame.ts";
import type { FrameStructure } from "./structure.ts";
import { woodOf } from "./timber-wood.ts";

/** Wood by class and section: sticks of one entry share it. */
function woods(): (timber: Timber) => TimberValues | undefined {
  const known = new Map<string, TimberValues | undefined>();
  return (t) => {
    const key = `${t.class?.path} ${t.width} ${t.depth}`;
    if (!known.has(key)) known.set(key, woodOf(t));
    return known.get(key);
  };
}

/** What the checks of timbers start from: it stands while only loads change, and leaning posts have the same share in them. */
export interface MemberBasis {
  readonly plans: readonly MemberPlan[];
  /** timbers whose wood has no design values: they are part of the frame but not checked */
  readonly unchecked: readonly Timber[];
  readonly bearings: ReadonlyMap<string, readonly Bearing[]>;
  readonly bends: ReadonlyMap<MemberPlan, DeflectionPlan>;
  /** a lying timber rests on a pier */
  readonly onGround: boolean;
  /** stories with leaning uprights, and the load of each ÷ that of its swaying ones: the buckling lengths hold for these */
  readonly leaning: readonly { readonly story: Story; readonly share: number }[];
}

/** Whether the buckling lengths hold under these forces too: leaning uprights have the same share in the load. */
export function basisHolds({ leaning }: MemberBasis, cases: readonly SolvedCase[]): boolean {
  return leaning.every(({ story, share }) => Math.abs(leaningShare(story, cases) - share) < 1e-9);
}

/**
 * @param hold the frame's structure with seats that hold
 * @param cases every combination solved, for the share of leaning uprights in the load
 */
export function memberBasis(model: Model, hold: FrameStructure, cases: readonly SolvedCase[]): MemberBasis {
  const grounds = groundsOf(model, hold.skeleton);
  const cuts = timberCuts(model);
  const leaning: { story: Story; share: number }[] = [];
  const lengths = bucklingLengths(model, grounds, cuts, (story) => {
    const share = leaningShare(story, cases);
    leaning.push({ story, share });
    return share;
  });
  const { plans, unchecked } = memberPlans({
    model,
    frame: hold,
    wood: woods(),
    lengths,
    cuts,
  });
  return {
    plans,
    unchecked,
    bearings: byTimber(bearingsOf(model, hold, grounds)),
    bends: new Map(deflectionPlans(model, hold, plans).map((d) => [d.plan, d])),
    onGround: grounds.some((g) => !isUpright(g.timber)),
    leaning,
  };
}
