/**
 * Spans over which a timber is scarfed: a scarf between two posts is a hinge that carries one length on the other and goes
 * down with it. Each length bends between its own post and the scarf, and the scarf itself sinks from the line between the
 * two posts, by what the frame's analysis says. The limit is a share of the whole span from post to post.
 */
import type { Joint } from "../joinery/joint.ts";
import { isScarf } from "../joinery/scarf.ts";
import type { Model, Timber } from "../model/model.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import type { MemberPlan } from "./member-plan.ts";
import type { FrameStructure } from "./structure.ts";

/** A length of a scarfed span, from its post to the scarf. */
export interface ScarfedLength {
  /** axial positions on this length, in */
  readonly support: number;
  readonly scarf: number;
  /** in, from post to post */
  readonly span: number;
  /** nodes: the scarf, the post of this length, the post of the other */
  readonly nodes: readonly [scarf: number, own: number, other: number];
  /** share of the way from the one post to the other */
  readonly part: number;
}

interface Reach {
  readonly at: number;
  readonly node: number;
}

/** The node of a timber nearest a place on it. */
function nodeAt({ elements }: MemberPlan, { pieces }: FrameStructure, at: number): Reach | undefined {
  const all = elements.flatMap((element): Reach[] => {
    const piece = pieces[element];
    return piece
      ? [
          { at: piece.from, node: piece.i.node },
          { at: piece.to, node: piece.j.node },
        ]
      : [];
  });
  return all.reduce<Reach | undefined>(
    (best, one) => (best && Math.abs(best.at - at) <= Math.abs(one.at - at) ? best : one),
    undefined,
  );
}

/** The last support of a length before its scarf; undefined where a post stands under the scarf, or none on this length. */
function supportOf(plan: MemberPlan, frame: FrameStructure, scarf: number): Reach | undefined {
  const { timber, lengths } = plan;
  const supports = lengths.supports.map(({ at }) => at);
  if (supports.some((at) => Math.abs(at - scarf) < timber.depth)) return undefined;
  const near = supports.reduce<number | undefined>(
    (best, at) => (best !== undefined && Math.abs(best - scarf) <= Math.abs(at - scarf) ? best : at),
    undefined,
  );
  return near === undefined ? undefined : nodeAt(plan, frame, near);
}

/** Where a scarf is a hinge: the node, and where that lies on each length. */
function hingeOf(
  { pieces, skeleton }: FrameStructure,
  joint: Joint,
): { node: number; of: number; into: number } | undefined {
  // by its id: forces that are kept are of an earlier model's joints
  for (const { from, to, i, j, jointI, jointJ } of pieces) {
    if (jointI?.id !== joint.id && jointJ?.id !== joint.id) continue;
    const [node, of] = jointI?.id === joint.id ? [i.node, from] : [j.node, to];
    const owner = skeleton.owners[node];
    if (owner?.timber.id === joint.into.id) return { node, of, into: owner.at };
  }
  return undefined;
}

/** @returns by timber id, its lengths between a post and a scarf in the span */
export function scarfedLengths(
  model: Model,
  frame: FrameStructure,
  plans: readonly MemberPlan[],
): ReadonlyMap<string, readonly ScarfedLength[]> {
  const found = new Map<string, ScarfedLength[]>();
  const planOf = new Map(plans.map((plan) => [plan.timber.id, plan]));
  const pointOf = ({ origin, axis }: Timber, at: number, along: Vec3): number =>
    dot(origin, along) + at * dot(axis, along);
  for (const joint of model.joints.filter(({ kind }) => isScarf(kind))) {
    const [first, second] = [planOf.get(joint.of.id), planOf.get(joint.into.id)];
    const hinge = first && second && hingeOf(frame, joint);
    if (!hinge) continue;
    const [a, b] = [supportOf(first, frame, hinge.of), supportOf(second, frame, hinge.into)];
    if (!a || !b) continue;
    const along = joint.of.axis;
    const span = Math.abs(pointOf(joint.of, a.at, along) - pointOf(joint.into, b.at, along));
    // both lie on one post: nothing hangs free between
    if (span < joint.of.depth) continue;
    const add = (timber: Timber, own: Reach, scarf: number, other: Reach): void => {
      const length: ScarfedLength = {
        support: own.at,
        scarf,
        span,
        nodes: [hinge.node, own.node, other.node],
        part: Math.abs(scarf - own.at) / span,
      };
      found.set(timber.id, [...(found.get(timber.id) ?? []), length]);
    };
    add(joint.of, a, hinge.of, b);
    add(joint.into, b, hinge.into, a);
  }
  return found;
}
