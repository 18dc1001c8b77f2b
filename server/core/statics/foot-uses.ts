/** What the frame sets on the feet of its posts, each way, against what they hold. */
import { remembering } from "../collect.ts";
import { type FootHold, type FootWay, footHold, type WayHold } from "../joinery/foot/foot-hold.ts";
import type { PostFoot } from "../joinery/foot/post-foot.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import type { Factor } from "../sourced.ts";
import type { FrameResults } from "./frame-results.ts";

export interface FootUse {
  readonly foot: PostFoot;
  readonly way: FootWay;
  /** lb */
  readonly force: number;
  readonly caseId: string;
  /** C_D of the combination */
  readonly duration: Factor;
  /** undefined = nothing is known of what holds */
  readonly hold: WayHold | undefined;
  /** force ÷ what holds it; undefined without one */
  readonly ratio: number | undefined;
}

/** Which of two uses asks more: by its ratio where there are any, else by its force. */
const asksMore = (a: Asked, b: Asked): boolean =>
  a.ratio !== undefined && b.ratio !== undefined && a.ratio !== b.ratio
    ? a.ratio > b.ratio
    : a.force > b.force;

type Asked = Pick<FootUse, "force" | "ratio">;

/** The part of what a pier sets on a timber that acts in one way, lb. */
function askedOf(way: FootWay, { run, across }: PostFoot, force: Vec3): number {
  switch (way) {
    case "down":
      return force[2];
    case "uplift":
      return -force[2];
    case "sideways":
      return Math.hypot(force[0], force[1]);
    case "along-bolts":
      return Math.abs(dot(force, run));
    case "across-bolts":
      return Math.abs(dot(force, across));
  }
}

/** What a foot holds under each duration, and the worst use of each way so far. */
interface Judged {
  readonly holdFor: (duration: Factor) => FootHold;
  readonly worst: Map<FootWay, { use: FootUse }>;
}

function newFoot(known: Map<string, Judged>, foot: PostFoot): Judged {
  const own: Judged = {
    holdFor: remembering((duration) => footHold(foot, duration)),
    worst: new Map(),
  };
  known.set(foot.id, own);
  return own;
}

/**
 * @returns for each foot and way the combination that asks most of it, where it asks anything. The file states no lb by
 * load duration, so that a stated capacity holds for all; one for sideways is held against the whole push.
 */
export function footUses(frame: FrameResults): readonly FootUse[] {
  const feet = new Map(frame.model.feet.map((foot) => [foot.pier.id, foot]));
  // two piers in one place are one foot
  const judged = new Map<string, Judged>();
  const found: { use: FootUse }[] = [];
  for (const { combined, frame: solved, frameCase } of feet.size === 0 ? [] : frame.solution.cases) {
    const { duration } = frameCase.combination;
    const byNode = new Map(combined.reactions().map((r) => [r.node, r.force]));
    for (const { pier, node } of solved.skeleton.bearings) {
      const foot = pier && feet.get(pier.id);
      const force = byNode.get(node);
      if (!foot || !force) continue;
      const { holdFor, worst } = judged.get(foot.id) ?? newFoot(judged, foot);
      const push: Vec3 = [force[0], force[1], force[2]];
      const hold = holdFor(duration);
      for (const way of hold.asked) {
        const asked = askedOf(way, foot, push);
        if (!(asked >= LEAST)) continue;
        const held = hold.ways[way];
        const most = held?.limits[0].value.value;
        const ratio = most === undefined ? undefined : most > 0 ? asked / most : Number.POSITIVE_INFINITY;
        const before = worst.get(way);
        if (before && !asksMore({ force: asked, ratio }, before.use)) continue;
        const use = { foot, way, force: asked, caseId: frameCase.id, duration, hold: held, ratio };
        if (before) before.use = use;
        else {
          const first = { use };
          worst.set(way, first);
          found.push(first);
        }
      }
    }
  }
  return found.map(({ use }) => use);
}

/** lb; less is none */
const LEAST = 1;
