/**
 * The center lines of a frame: every timber cut into pieces where others meet it. An end that joins another timber has
 * no node of its own: its piece runs on to the point nearest the other's center line and hangs there on a rigid arm.
 * Timbers that only rest on, cross or butt each other keep their own nodes and are held together by ties at the contact.
 */
import { groupBy } from "../collect.ts";
import type { Joint } from "../joinery/joint.ts";
import { isSeatKind } from "../joinery/seat.ts";
import { bearingTimbers, groundedTimbers } from "../model/grounded.ts";
import type { Meeting, Model, Pier, Timber } from "../model/model.ts";
import { isDiagonal } from "../model/upright.ts";
import { along, cross, dot, sub, type Vec3 } from "../model/vec.ts";

/** A node, and how far from it the end of a piece lies. */
export interface Hold {
  readonly node: number;
  readonly arm: Vec3;
}

/** A part of a timber between two neighboring points. */
export interface Piece {
  readonly timber: Timber;
  /** axial positions on the timber's center line, inches from its foot */
  readonly from: number;
  readonly to: number;
  readonly i: Hold;
  readonly j: Hold;
  /** the joint at an end, where the piece hangs on another timber's node */
  readonly jointI: Joint | undefined;
  readonly jointJ: Joint | undefined;
}

/** Two timbers held together at a point that lies on neither center line: a seat, a nailed crossing, a butt. */
export interface Tie {
  readonly i: Hold;
  readonly j: Hold;
  readonly at: Vec3;
  readonly joint: Joint | undefined;
  readonly meeting: Meeting;
}

export interface Bearing {
  readonly node: number;
  readonly timber: Timber;
  readonly pier: Pier | undefined;
}

export interface Skeleton {
  readonly nodes: readonly Vec3[];
  /** the timber whose center line each node lies on, and where */
  readonly owners: readonly { readonly timber: Timber; readonly at: number }[];
  readonly pieces: readonly Piece[];
  readonly ties: readonly Tie[];
  readonly bearings: readonly Bearing[];
  readonly piecesOf: ReadonlyMap<string, readonly Piece[]>;
}

/** Points nearer than this on one timber count as one, inches: a piece so short would only harm the arithmetic. */
const MERGE = 0.75;
/** A center line is not followed further than this past the end of its timber to find the other's, inches. */
const FURTHEST = 30;

interface Alias {
  readonly into: Timber;
  readonly at: number;
  /** where the piece ends, on its own center line */
  readonly own: number;
  readonly joint: Joint;
}

/** Axial positions of the nearest points of two center lines; undefined when they run side by side. */
function nearestPoints(a: Timber, b: Timber): { readonly onA: number; readonly onB: number } | undefined {
  const w = sub(b.origin, a.origin);
  const c = dot(a.axis, b.axis);
  const sin2 = 1 - c * c;
  if (sin2 < 0.03) return undefined;
  const p = dot(w, a.axis);
  const q = dot(w, b.axis);
  return { onA: (p - q * c) / sin2, onB: (p * c - q) / sin2 };
}

const axial = (t: Timber, p: Vec3): number => dot(sub(p, t.origin), t.axis);
const clamp = (x: number, low: number, high: number): number => Math.min(Math.max(x, low), high);
const pointOn = (t: Timber, at: number): Vec3 => along(t.origin, t.axis, at);

/** Where the end of `of` hangs on `into`. */
function aliasOf(joint: Joint): Alias {
  const { of, into, end } = joint;
  const tip = end === "head" ? of.span : 0;
  const near = nearestPoints(of, into);
  if (near && Math.abs(near.onA - tip) <= FURTHEST)
    return { into, at: clamp(near.onB, 0, into.span), own: near.onA, joint };
  return { into, at: clamp(axial(into, pointOn(of, tip)), 0, into.span), own: tip, joint };
}

/** Builder state for one frame; lives only while the skeleton is made. */
class Builder {
  readonly stations = new Map<string, number[]>();
  readonly aliases = new Map<string, Alias>();
  /** what the very end of a rafter sits on, where it has no tail */
  readonly seats = new Map<string, Timber>();
  /** what stands on nothing, or in the place of another, carries nothing; it has a finding of its own */
  readonly grounded: ReadonlySet<string>;
  readonly nodes: Vec3[] = [];
  readonly owners: { timber: Timber; at: number }[] = [];
  readonly #nodeAt = new Map<string, number>();
  readonly #merged = new Map<string, readonly number[]>();

  constructor(readonly model: Model) {
    this.grounded = new Set([...groundedTimbers(model)].filter((id) => !model.doubles.has(id)));
    for (const t of model.timbers) if (this.grounded.has(t.id)) this.stations.set(t.id, [0, t.span]);
  }

  add(timber: Timber, at: number): void {
    this.stations.get(timber.id)?.push(clamp(at, 0, timber.span));
  }

  /**
   * Stations of a timber in order, near ones merged; the two ends stay where they are. What meets it beyond the point by
   * which an end hangs, as a post under the lap of a corner, hangs there too.
   */
  merged(timber: Timber): readonly number[] {
    const done = this.#merged.get(timber.id);
    if (done) return done;
    const first = Math.max(0, this.aliases.get(`${timber.id} foot`)?.own ?? 0);
    const last = Math.min(timber.span, this.aliases.get(`${timber.id} head`)?.own ?? timber.span);
    const inner = (this.stations.get(timber.id) ?? [])
      .filter((s) => s > first + MERGE && s < last - MERGE)
      .sort((a, b) => a - b);
    const kept: number[] = [0];
    for (const s of inner) if (s - (kept.at(-1) ?? 0) > MERGE) kept.push(s);
    if (timber.span > MERGE) kept.push(timber.span);
    this.#merged.set(timber.id, kept);
    return kept;
  }

  /** The node at a station, following the end of a timber to what it hangs on. */
  hold(timber: Timber, at: number, depth = 0): Hold {
    const stops = this.merged(timber);
    const near = stops.reduce(
      (best, s) => (Math.abs(s - at) < Math.abs(best - at) ? s : best),
      stops[0] ?? 0,
    );
    const end = near === 0 ? "foot" : near === stops.at(-1) ? "head" : undefined;
    const alias = end && this.aliases.get(`${timber.id} ${end}`);
    // a ring of timbers that all hang on each other is cut where it closes
    if (alias && depth < 8) {
      const base = this.hold(alias.into, alias.at, depth + 1);
      return {
        node: base.node,
        arm: sub(pointOn(timber, alias.own), this.nodes[base.node] ?? timber.origin),
      };
    }
    const key = `${timber.id} ${near}`;
    let node = this.#nodeAt.get(key);
    if (node === undefined) {
      node = this.nodes.length;
      this.nodes.push(pointOn(timber, near));
      this.owners.push({ timber, at: near });
      this.#nodeAt.set(key, node);
    }
    return { node, arm: [0, 0, 0] };
  }

  /** The node nearest a point in space, with the arm from it to that point. */
  holdAt(timber: Timber, point: Vec3): Hold {
    const { node } = this.hold(timber, axial(timber, point));
    return { node, arm: sub(point, this.nodes[node] ?? point) };
  }
}

/** Ends that join become aliases, the first joint of an end first; every other contact becomes a tie. */
function connect(b: Builder): { readonly joint: Joint | undefined; readonly meeting: Meeting }[] {
  const ties: { joint: Joint | undefined; meeting: Meeting }[] = [];
  const joined = new Set<Meeting>();
  const stands = (m: Meeting): boolean => b.grounded.has(m.a.id) && b.grounded.has(m.b.id);
  // where an end meets two timbers it hangs on the one that a joint is named for
  const { joints } = b.model;
  for (const joint of [...joints.filter((j) => !j.assumed), ...joints.filter((j) => j.assumed)]) {
    if (!stands(joint.meeting)) continue;
    joined.add(joint.meeting);
    const key = `${joint.of.id} ${joint.end}`;
    // a rafter sits on its plate and does not hang on it, also where it has no tail and its very end sits there
    const sits = joint.end !== "side" && isSeatKind(joint.kind);
    if (sits && !b.seats.has(key)) b.seats.set(key, joint.into);
    if (sits || joint.end === "side" || b.aliases.has(key) || hangsOn(b, joint.into, joint.of)) {
      ties.push({ joint, meeting: joint.meeting });
      continue;
    }
    const alias = aliasOf(joint);
    b.aliases.set(key, alias);
    b.add(joint.into, alias.at);
  }
  // what carries along its length only acts through its joints: what else it touches is in its way
  const tied = (m: Meeting): boolean => !isDiagonal(m.a) && !isDiagonal(m.b);
  for (const meeting of b.model.meetings)
    if (!joined.has(meeting) && stands(meeting) && tied(meeting)) ties.push({ joint: undefined, meeting });
  const kept = ties.filter(({ meeting }) => !clampsEnd(b, meeting));
  for (const { meeting } of kept) {
    b.add(meeting.a, axial(meeting.a, meeting.point));
    b.add(meeting.b, axial(meeting.b, meeting.point));
  }
  return kept;
}

/**
 * Whether a contact lies so near the end by which a timber hangs or sits that the two would clamp it between them: within
 * its depth, on a timber that itself hangs on what the end hangs or sits on, or carries it. The end's joint alone counts
 * then, as between a rafter that hangs on the ridge and the king-post under it, or over a plate scarfed under its foot.
 */
function clampsEnd(b: Builder, { a, b: other, point }: Meeting): boolean {
  return endClamped(b, a, other, point) || endClamped(b, other, a, point);
}

function endClamped(b: Builder, timber: Timber, other: Timber, point: Vec3): boolean {
  const near = (t: Timber, end: "foot" | "head", within: number): Timber | undefined => {
    const tip = end === "head" ? t.span : 0;
    const key = `${t.id} ${end}`;
    return Math.abs(axial(t, point) - tip) <= within
      ? (b.aliases.get(key)?.into ?? b.seats.get(key))
      : undefined;
  };
  const reach = timber.depth + other.depth;
  return ENDS.some((end) => {
    const into = near(timber, end, timber.depth);
    if (!into || into === other) return false;
    return ENDS.some((tip) => near(other, tip, reach) === into || near(into, tip, reach) === other);
  });
}

const ENDS = ["foot", "head"] as const;

/** Whether an end of `timber` already hangs on `other`: then `other` must not hang on it in turn. */
function hangsOn(b: Builder, timber: Timber, other: Timber): boolean {
  return ENDS.some((end) => b.aliases.get(`${timber.id} ${end}`)?.into.id === other.id);
}

function piecesOf(b: Builder, timber: Timber): Piece[] {
  const stops = b.merged(timber);
  const foot = b.aliases.get(`${timber.id} foot`);
  const head = b.aliases.get(`${timber.id} head`);
  const at = (index: number): number =>
    index === 0
      ? (foot?.own ?? 0)
      : index === stops.length - 1
        ? (head?.own ?? timber.span)
        : (stops[index] ?? 0);
  return stops.slice(1).map((stop, k) => ({
    timber,
    from: at(k),
    to: at(k + 1),
    i: b.hold(timber, stops[k] ?? 0),
    j: b.hold(timber, stop),
    jointI: k === 0 ? foot?.joint : undefined,
    jointJ: k === stops.length - 2 ? head?.joint : undefined,
  }));
}

/** Piers first; without any, the feet of what stands lowest. */
function bearingsOf(b: Builder): Bearing[] {
  const { piers } = b.model;
  const onPiers = piers.flatMap((pier) =>
    pier.timber
      ? [{ node: b.hold(pier.timber, axial(pier.timber, pier.top)).node, timber: pier.timber, pier }]
      : [],
  );
  if (onPiers.length > 0) return onPiers;
  return bearingTimbers(b.model).flatMap((timber) => {
    const ends = Math.abs(timber.axis[2]) > 0.7 ? [0] : [0, timber.span];
    return ends.map((at) => ({ node: b.hold(timber, at).node, timber, pier: undefined }));
  });
}

/** @returns the center lines of every timber, cut where others meet it */
export function skeletonOf(model: Model): Skeleton {
  const b = new Builder(model);
  const met = connect(b);
  for (const pier of model.piers) if (pier.timber) b.add(pier.timber, axial(pier.timber, pier.top));
  const pieces = model.timbers.filter((t) => b.grounded.has(t.id)).flatMap((t) => piecesOf(b, t));
  const ties = met.map(({ joint, meeting }) => ({
    i: b.holdAt(meeting.a, meeting.point),
    j: b.holdAt(meeting.b, meeting.point),
    at: meeting.point,
    joint,
    meeting,
  }));
  const bearings = bearingsOf(b);
  return {
    nodes: b.nodes,
    owners: b.owners,
    pieces,
    ties: ties.filter((t) => t.i.node !== t.j.node),
    bearings,
    piecesOf: groupBy(pieces, (p) => p.timber.id),
  };
}

/** Local y of a timber's pieces: its depth; local z = axis × depth. */
export function localZ(timber: Timber): Vec3 {
  return cross(timber.axis, timber.depthDir);
}
