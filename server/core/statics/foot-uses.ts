/** What the frame sets on the feet of its posts, each way, against what they hold. */
import { type FootWay, footHold, type WayHold } from "../joinery/foot/foot-hold.ts";
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
const asksMore = (a: FootUse, b: FootUse): boolean =>
  a.ratio !== undefined && b.ratio !== undefined && a.ratio !== b.ratio
    ? a.ratio > b.ratio
    : a.force > b.force;

/**
 * @returns for each foot and way the combination that asks most of it, where it asks anything. The file states no lb by
 * load duration, so that a stated capacity holds for all; one for sideways is held against the whole push.
 */
export function footUses(frame: FrameResults): readonly FootUse[] {
  const feet = new Map(frame.model.feet.map((foot) => [foot.pier.id, foot]));
  const holds = new Map<string, ReturnType<typeof footHold>>();
  const worst = new Map<string, FootUse>();
  for (const { combined, frame: solved, frameCase } of feet.size === 0 ? [] : frame.solution.cases) {
    const { duration } = frameCase.combination;
    const byNode = new Map(combined.reactions().map((r) => [r.node, r.force]));
    for (const { pier, node } of solved.skeleton.bearings) {
      const foot = pier && feet.get(pier.id);
      const force = byNode.get(node);
      if (!foot || !force) continue;
      const key = `${foot.id} ${duration.value}`;
      const hold = holds.get(key) ?? footHold(foot, duration);
      holds.set(key, hold);
      const sideways: Vec3 = [force[0], force[1], force[2]];
      const asked: Record<FootWay, number> = {
        down: force[2],
        uplift: -force[2],
        sideways: Math.hypot(force[0], force[1]),
        "along-bolts": Math.abs(dot(sideways, foot.run)),
        "across-bolts": Math.abs(dot(sideways, foot.across)),
      };
      for (const way of hold.asked) {
        if (!(asked[way] >= LEAST)) continue;
        const held = hold.ways[way];
        const most = held?.limits[0].value.value;
        const ratio =
          most === undefined ? undefined : most > 0 ? asked[way] / most : Number.POSITIVE_INFINITY;
        const use = { foot, way, force: asked[way], caseId: frameCase.id, duration, hold: held, ratio };
        const before = worst.get(`${foot.id} ${way}`);
        if (!before || asksMore(use, before)) worst.set(`${foot.id} ${way}`, use);
      }
    }
  }
  return [...worst.values()];
}

/** lb; less is none */
const LEAST = 1;
