/** Where timbers meet each other along their lengths, and what holds a lying timber up. */
import { groupBy } from "../collect.ts";
import type { Joint } from "../joinery/joint.ts";
import { isScarf } from "../joinery/scarf.ts";
import { isSeatKind, seatRun } from "../joinery/seat.ts";
import { halfExtent } from "../model/box.ts";
import type { Model, Pier, Timber } from "../model/model.ts";
import { isDiagonal, isUpright } from "../model/upright.ts";
import { dot, sub, type Vec3 } from "../model/vec.ts";
import type { Skeleton } from "./skeleton.ts";

/** A timber seen from another that it touches. */
export interface Contact {
  readonly other: Timber;
  /** axial positions on the one and on the other, in */
  readonly at: number;
  readonly otherAt: number;
  readonly point: Vec3;
  readonly joint: Joint | undefined;
}

export interface Support {
  /** axial position of its middle, in */
  readonly at: number;
  /** half of its length along the grain, in */
  readonly half: number;
  /** it bears on the underside, over the whole width: loads near it go straight down (NDS 3.4.3.1) */
  readonly bears: boolean;
  /** joint, pier or timber */
  readonly place: string;
}

/** Foot of a timber on the ground: a pier, or the ground itself where no piers are given. */
export interface Ground {
  readonly timber: Timber;
  readonly at: number;
  readonly node: number;
  readonly pier: Pier | undefined;
}

const axial = (t: Timber, p: Vec3): number =>
  Math.min(Math.max(dot(sub(p, t.origin), t.axis), 0), Math.max(t.span, 0));

/** @returns the contacts of every timber, by id, from foot to head */
export function contactsOf(model: Model): Map<string, readonly Contact[]> {
  const joints = groupBy(model.joints, (j) => j.meeting);
  const all = model.meetings.flatMap((meeting) => {
    const { a, b, point } = meeting;
    const joint = joints.get(meeting)?.[0];
    const [at, otherAt] = [axial(a, point), axial(b, point)];
    return [
      { own: a, contact: { other: b, at, otherAt, point, joint } },
      { own: b, contact: { other: a, at: otherAt, otherAt: at, point, joint } },
    ];
  });
  const grouped = groupBy(all, ({ own }) => own.id);
  return new Map(
    model.timbers.map((t) => [
      t.id,
      (grouped.get(t.id) ?? []).map(({ contact }) => contact).sort((p, q) => p.at - q.at),
    ]),
  );
}

/**
 * Where the frame stands.
 * @param skeleton of the model, or of an earlier one whose forces still hold: timbers and piers are those of the model
 */
export function groundsOf(model: Model, skeleton: Skeleton): Ground[] {
  const timbers = new Map(model.timbers.map((t) => [t.id, t]));
  const piers = new Map(model.piers.map((p) => [p.id, p]));
  return skeleton.bearings.flatMap(({ timber, node, pier }): Ground[] => {
    const own = timbers.get(timber.id);
    const owner = skeleton.owners[node];
    if (!own) return [];
    return [
      { timber: own, node, at: owner?.timber === timber ? owner.at : 0, pier: pier && piers.get(pier.id) },
    ];
  });
}

/** Whether the contact lies on the underside of the timber. */
function below(timber: Timber, point: Vec3): boolean {
  return (
    dot(sub(point, timber.origin), timber.depthDir) * Math.sign(timber.depthDir[2] || 1) < -timber.depth / 4
  );
}

/** What a contact does for the timber: holds it up, or nothing. */
export function supportBy(timber: Timber, contact: Contact): Support | undefined {
  const { other, joint, at, point } = contact;
  if ((joint && isScarf(joint.kind)) || isDiagonal(other)) return undefined;
  const place = joint?.id ?? other.id;
  if (joint?.of === timber) {
    if (isSeatKind(joint.kind)) return { at, half: seatRun(joint.sizes) / 2, bears: true, place };
    if (joint.end !== "side")
      return { at: joint.end === "foot" ? 0 : timber.span, half: 0, bears: false, place };
  }
  // an upright under it, or a timber that it lies across
  if (!below(timber, point)) return undefined;
  const half = halfExtent(other, timber.axis);
  if (isUpright(other)) return { at, half, bears: true, place };
  return Math.abs(dot(other.axis, timber.axis)) < 0.7 ? { at, half, bears: true, place } : undefined;
}

/**
 * What holds a lying or sloping timber up, from foot to head: its own joined ends, uprights and other timbers under it,
 * piers. Knees are left out: they stiffen, but do not carry alone.
 */
export function supportsOf(
  timber: Timber,
  contacts: readonly Contact[],
  grounds: readonly Ground[],
): Support[] {
  const onGround = grounds
    .filter((g) => g.timber === timber)
    .map((g) => ({
      at: g.at,
      half: (g.pier?.diameter ?? 0) / 2,
      bears: true,
      place: g.pier?.id ?? "ground",
    }));
  const found = [...onGround, ...contacts.flatMap((c) => supportBy(timber, c) ?? [])].sort(
    (a, b) => a.at - b.at,
  );
  const merged: Support[] = [];
  for (const s of found) {
    const last = merged.at(-1);
    if (last && s.at - last.at < timber.depth / 2) {
      if (s.bears && !last.bears) merged[merged.length - 1] = s;
      continue;
    }
    merged.push(s);
  }
  return merged;
}
