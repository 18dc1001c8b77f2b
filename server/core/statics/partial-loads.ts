/**
 * Loads that lie on some spans only: snow (ASCE 7-16 and 7-22 section 7.5), floor live load (4.3.3) and reduced roof live
 * load (4.8), where timbers run on over their supports or past them. Each pattern is a basic load of its own.
 *
 * Snow keeps half of the balanced load where it is less, live loads keep nothing. Patterns: less on every third span, each
 * span in turn. That leaves every two neighbors full at once (7.5.1 case 3), with more than those two full where there are
 * four spans and more, and one end or both less (case 2). One end alone full (case 1) comes of it for two spans only; from
 * three on the two ends are full together, the rest less. Live loads on alternate spans too. So their number does not grow
 * with the building.
 */
import { common, type Interval } from "../model/box.ts";
import type { Model, Timber } from "../model/model.ts";
import { add, dot, scale, sub, type Vec3 } from "../model/vec.ts";
import type { BasicLoad } from "./basic-loads.ts";
import type { LineLoad } from "./line-loads.ts";
import { type Contact, contactsOf, type Ground, supportsOf } from "./member-supports.ts";

/** Which way spans follow each other; each slope has spans of its own and is named by the wall at its eave. */
export type LaneWay =
  | { readonly along: "walls" | "joists" | "across-joists" }
  | { readonly along: "slope"; readonly wall: string };

/** A row of spans one behind the other; the first and the last reach to the edge. */
export interface Lane {
  readonly way: LaneWay;
  /** level direction in which places are counted from the datum, inches */
  readonly dir: Vec3;
  /** places between one span and the next, in order */
  readonly breaks: readonly number[];
  /** the first or the last span hangs over its support */
  readonly tails: boolean;
}

/** Which of the spans of a lane carry less, counted from 1. */
export type Partial = LaneWay & {
  /** id of the load that lies everywhere */
  readonly of: string;
  readonly spans: number;
  readonly less: readonly number[];
  /** what is left there: 0.5 or 0 */
  readonly share: number;
};

/** A line load, and what its timber carries from and to in a lane that it lies across. */
export interface Portion {
  readonly load: LineLoad;
  readonly reach: (lane: Lane) => Interval;
}

/** A tail counts as a span of its own from this share of the span beside it; a shorter one changes that by under 3 percent. */
const TAIL = 1 / 8;
/** Supports nearer than this to each other are one, inches. */
const NEAR = 12;

/** What holds timbers up, from the model alone. */
export interface Holders {
  readonly contacts: ReadonlyMap<string, readonly Contact[]>;
  readonly grounds: readonly Ground[];
}

export function holdersOf(model: Model): Holders {
  const grounds = model.piers.flatMap((pier): Ground[] => {
    const { timber } = pier;
    return timber ? [{ timber, at: dot(sub(pier.top, timber.origin), timber.axis), node: -1, pier }] : [];
  });
  return { contacts: contactsOf(model), grounds };
}

/** Where one span of a timber ends and the next begins, and whether it hangs over there; empty for a simple beam. */
function breaksOf(
  timber: Timber,
  dir: Vec3,
  { contacts, grounds }: Holders,
): { readonly at: number; readonly tail: boolean }[] {
  const start = dot(timber.origin, dir);
  const per = dot(timber.axis, dir);
  const supports = supportsOf(timber, contacts.get(timber.id) ?? [], grounds)
    .map((s) => ({ at: start + per * s.at, half: s.half }))
    .sort((a, b) => a.at - b.at);
  const [first, second] = supports;
  const [before, last] = supports.slice(-2);
  if (!first || !second || !before || !last) return [];
  const [low = 0, high = 0] = [start, start + per * timber.span].sort((a, b) => a - b);
  // a tail is measured from the face of its support
  const tails = (length: number, span: number): boolean => length > TAIL * span;
  return [
    ...(tails(first.at - first.half - low, second.at - first.at) ? [{ at: first.at, tail: true }] : []),
    ...supports.slice(1, -1).map(({ at }) => ({ at, tail: false })),
    ...(tails(high - last.at - last.half, last.at - before.at) ? [{ at: last.at, tail: true }] : []),
  ];
}

/** @returns the spans of some timbers along a direction; undefined where all of them are simple beams */
export function laneOf(
  way: LaneWay,
  dir: Vec3,
  timbers: readonly Timber[],
  holders: Holders,
): Lane | undefined {
  const all = timbers.flatMap((t) => breaksOf(t, dir, holders)).sort((a, b) => a.at - b.at);
  const breaks: number[] = [];
  for (const { at } of all) if (breaks.length === 0 || at - (breaks.at(-1) ?? at) > NEAR) breaks.push(at);
  return breaks.length > 0 ? { way, dir, breaks, tails: all.some((b) => b.tail) } : undefined;
}

/** Spans with less load, counted from 0, for so many spans. */
function patterns(count: number, share: number): readonly (readonly number[])[] {
  const spans = Array.from({ length: count }, (_, i) => i);
  const third = [0, 1, 2].map((k) => spans.filter((i) => i % 3 === k));
  const alternate = share === 0 ? [0, 1].map((k) => spans.filter((i) => i % 2 === k)) : [];
  const outer = share > 0 && count > 3 ? [spans.slice(1, -1)] : [];
  const fit = [...alternate, ...third, ...outer].filter((less) => less.length > 0 && less.length < count);
  return [...new Map(fit.map((less) => [less.join(), less])).values()];
}

/** @returns what a line load is with a share for each span of a lane: where it lies on them is the same in every pattern */
function onSpans({ load, reach }: Portion, lane: Lane): (shares: readonly number[]) => LineLoad[] {
  const { timber, from, to, startForce, endForce } = load;
  const start = dot(timber.origin, lane.dir);
  const per = dot(timber.axis, lane.dir);
  const spans = Array.from(
    { length: lane.breaks.length + 1 },
    (_, i): Interval => [
      lane.breaks[i - 1] ?? Number.NEGATIVE_INFINITY,
      lane.breaks[i] ?? Number.POSITIVE_INFINITY,
    ],
  );
  if (Math.abs(per) < 0.05) {
    const own = reach(lane);
    const width = own[1] - own[0];
    const parts = spans.map((span) => common(own, span));
    return (shares) => {
      const part = shares.reduce((sum, s, i) => sum + s * (parts[i] ?? 0), 0);
      const by = width > 0 ? part / width : 1;
      return [{ ...load, startForce: scale(startForce, by), endForce: scale(endForce, by) }];
    };
  }
  const force = (s: number): Vec3 => {
    const t = to > from ? (s - from) / (to - from) : 0;
    return add(scale(startForce, 1 - t), scale(endForce, t));
  };
  const stops = [
    from,
    ...lane.breaks.map((b) => (b - start) / per).filter((s) => s > from && s < to),
    to,
  ].sort((a, b) => a - b);
  const pieces = stops.slice(1).flatMap((b, i) => {
    const a = stops[i] ?? from;
    const middle = start + (per * (a + b)) / 2;
    const span = spans.findIndex(([low, high]) => middle >= low && middle < high);
    return b - a < 1e-9 ? [] : [{ from: a, to: b, startForce: force(a), endForce: force(b), span }];
  });
  return (shares) =>
    pieces.flatMap(({ span, from, to, startForce, endForce }) => {
      const by = shares[span] ?? 1;
      if (by === 0) return [];
      return [{ timber, from, to, startForce: scale(startForce, by), endForce: scale(endForce, by) }];
    });
}

/**
 * Every pattern of a load along one lane.
 * @param whole the load that lies everywhere; its portions may be less than its loads: what snow drops when it is partial
 * @param share what is left where there is less
 */
export function partialLoads(
  whole: Pick<BasicLoad, "id" | "kind">,
  portions: readonly Portion[],
  lane: Lane,
  share: number,
): BasicLoad[] {
  const count = lane.breaks.length + 1;
  const { way } = lane;
  const name = way.along === "slope" ? `slope-${way.wall}` : way.along;
  const laid = portions.map((portion) => onSpans(portion, lane));
  return patterns(count, share).map((less) => {
    const shares = Array.from({ length: count }, (_, i) => (less.includes(i) ? share : 1));
    const numbers = less.map((i) => i + 1);
    return {
      id: `${whole.id}/${name}-${numbers.join("-")}`,
      kind: whole.kind,
      vertical: true,
      partial: { of: whole.id, ...way, spans: count, less: numbers, share },
      loads: laid.flatMap((sharedBy) => sharedBy(shares)),
    };
  });
}
