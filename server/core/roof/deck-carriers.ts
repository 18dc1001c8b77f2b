/** What the deck of a slope lies on, stretch by stretch, and how far apart that stands. Lengths in in. */
import { common, type Interval, lengthOf } from "../model/box.ts";
import type { Model, RoofSlope, Timber } from "../model/model.ts";
import { dot, sub, type Vec3 } from "../model/vec.ts";

/** A stretch of deck over timbers that lie side by side. Places are x along the walls, else inches up the slope. */
export interface DeckField {
  /** from where to where, in the direction in which its carriers lie: x of purlins, up the slope of rafters */
  readonly stretch: Interval;
  /** its edges square to them */
  readonly across: Interval;
  /** in order across, each with its place there */
  readonly carriers: readonly Carrier[];
}

interface Carrier {
  readonly timber: Timber;
  readonly at: number;
}

/** A timber under the deck: what it covers in its own direction, and its place across. */
interface Plank extends Carrier {
  readonly own: Interval;
}

/** What is left out when the widest spacing is sought: a board carries over so narrow a strip beside its neighbors, in. */
const NARROW = 12;

const liesOn = (slope: RoofSlope, timber: Timber): boolean => timber.walls.includes(slope.wall);

/** Whether a timber that carries deck lies along the walls. */
export const liesAlong = (timber: Timber): boolean => timber.rule === "purlins-up-slope";

/** How far up the slope a point lies from the plate's outside face, inches along the slope, taken square to it. */
function upSlope(slope: RoofSlope, p: Vec3): number {
  const [, y, z] = slope.plane.normal;
  return dot(sub(p, slope.plane.point), [0, -Math.sign(y) * z, Math.abs(y)]);
}

/** How far up the slope a place in plan lies from the plate's outside face, inches along the slope. */
export function upSlopeAt(slope: RoofSlope, y: number): number {
  return (-Math.sign(slope.plane.normal[1]) * (y - slope.plane.point[1])) / Math.cos(slope.angle);
}

/** Where a carrier's foot lies in its own direction: x of a purlin, inches up the slope of a rafter. */
export function footPlace(slope: RoofSlope, timber: Timber): number {
  return liesAlong(timber) ? timber.origin[0] : upSlopeAt(slope, timber.origin[1]);
}

/** The deck from eave to peak, inches up the slope. */
export function deckUp(slope: RoofSlope): Interval {
  const flat = Math.cos(slope.angle);
  return [-slope.eaveOverhang / flat, slope.peakRun / flat];
}

function plankOf(slope: RoofSlope, timber: Timber): Plank {
  const foot = footPlace(slope, timber);
  const at = liesAlong(timber) ? upSlope(slope, timber.origin) : timber.origin[0];
  return { timber, at, own: [foot, foot + timber.span] };
}

/**
 * Fields of deck over timbers that lie one way: cut where one of them begins or ends. What no timber reaches belongs to
 * the nearest stretch, so that no part of the deck is on nobody.
 */
function fieldsOver(planks: readonly Plank[], own: Interval, across: Interval): DeckField[] {
  const inside = (v: number): number => Math.min(own[1], Math.max(own[0], v));
  const stops = [...new Set(planks.flatMap((p) => p.own.map(inside)))].sort((a, b) => a - b);
  const held = stops.slice(1).flatMap((to, i) => {
    const stretch: Interval = [stops[i] ?? to, to];
    const here = planks.filter((p) => common(p.own, stretch) > lengthOf(stretch) / 2);
    if (lengthOf(stretch) < 1e-6 || here.length === 0) return [];
    return [{ stretch, carriers: here.sort((a, b) => a.at - b.at) }];
  });
  return held.map(({ stretch, carriers }, i) => {
    const before = held[i - 1]?.stretch[1];
    const after = held[i + 1]?.stretch[0];
    return {
      stretch: [
        before === undefined ? own[0] : (before + stretch[0]) / 2,
        after === undefined ? own[1] : (stretch[1] + after) / 2,
      ],
      across,
      carriers,
    };
  });
}

/** What of an interval is left beside some others. */
function rest(whole: Interval, taken: readonly Interval[]): Interval[] {
  const left: Interval[] = [];
  let from = whole[0];
  for (const [a, b] of [...taken].sort((p, q) => p[0] - q[0])) {
    if (a - from > 1e-6) left.push([from, Math.min(a, whole[1])]);
    from = Math.max(from, b);
  }
  if (whole[1] - from > 1e-6) left.push([from, whole[1]]);
  return left.filter((i) => lengthOf(i) > 1e-6);
}

const halfAcross = ({ timber }: Plank): number => timber.width / 2;

/** What slopes with a roof: its own rafters, where it has none its principal rafters. */
export function raftersOf(model: Model, slope: RoofSlope): readonly Timber[] {
  if (slope.rafters.length > 0) return slope.rafters;
  return model.timbers.filter((t) => t.kind === "rafter" && t.rule === "roof-rafter" && liesOn(slope, t));
}

/**
 * The whole deck of a slope, divided among what carries it. Purlins lie over everything else; in bays without them the
 * roof's own rafters carry the deck, without those the principal rafters.
 */
export function deckFields(model: Model, slope: RoofSlope): DeckField[] {
  const along: Interval = [slope.deckFrom, slope.deckTo];
  const up = deckUp(slope);
  const lying = model.timbers.filter((t) => liesOn(slope, t));
  const planks = (timbers: readonly Timber[]): Plank[] => timbers.map((t) => plankOf(slope, t));
  const purlins = planks(lying.filter(liesAlong));
  const rafters = planks(raftersOf(model, slope));
  // a bay without purlins is one in which a rafter stands; a strip past their ends only hangs on them
  const bare =
    purlins.length === 0
      ? [along]
      : rest(
          along,
          purlins.map((p) => p.own),
        ).filter(([a, b]) => rafters.some(({ at }) => at > a && at < b));
  const ofPurlins = purlins.length === 0 ? [] : rest(along, bare);
  return [
    ...ofPurlins.flatMap((x) =>
      fieldsOver(
        purlins.filter((p) => common(p.own, x) > 0),
        x,
        up,
      ),
    ),
    ...bare.flatMap((x) => {
      const under = rafters.filter((p) => {
        // the deck reaches the last rafter, also where a rake was written that ends before it
        const low = x[0] > along[0] ? x[0] : Number.NEGATIVE_INFINITY;
        const high = x[1] < along[1] ? x[1] : Number.POSITIVE_INFINITY;
        return p.at + halfAcross(p) > low && p.at - halfAcross(p) < high;
      });
      return fieldsOver(under, up, x);
    }),
  ];
}

/** @returns every timber that the deck of a slope lies on, each once */
export function deckCarriers(model: Model, slope: RoofSlope): readonly Timber[] {
  return [...new Set(deckFields(model, slope).flatMap(({ carriers }) => carriers.map((c) => c.timber)))];
}

/** @returns the widest distance between neighbors, center to center; undefined where no two lie side by side */
export function carrierSpacing(model: Model, slope: RoofSlope): number | undefined {
  const gaps = deckFields(model, slope)
    .filter(({ stretch }) => lengthOf(stretch) >= NARROW)
    .flatMap(({ carriers }) => carriers.slice(1).map(({ at }, i) => at - (carriers[i]?.at ?? at)));
  return gaps.length === 0 ? undefined : Math.max(...gaps);
}
