/** Finds where timbers meet: a sweep along x for candidates, then the contact of their solids. */
import type { Meeting, Timber } from "./model.ts";
import { type Contact, contact, type Solid, TOUCH } from "./solid.ts";
import { dot, type Vec3 } from "./vec.ts";

function endOf(own: Contact): "foot" | "head" | "side" {
  const [foot, head] = own.ends;
  if (foot === 0 && head === 0) return "side";
  return foot >= head ? "foot" : "head";
}

/** The nearer of the two views' centers: a small face in a big one places the joint better than the reverse. */
function middle(a: Contact, b: Contact): Vec3 {
  if (a.area === 0) return b.center;
  if (b.area === 0) return a.center;
  return a.ends[0] + a.ends[1] >= b.ends[0] + b.ends[1] ? a.center : b.center;
}

const SERIES: ReadonlySet<Timber["rule"]> = new Set(["series", "roof-rafter", "purlins-up-slope"]);

/** Sticks of one series lie side by side and are never jointed to each other, however close a slip of the pen sets them. */
function sameSeries(a: Timber, b: Timber): boolean {
  return a.path === b.path && a.rule === b.rule && SERIES.has(a.rule) && dot(a.axis, b.axis) > 0.99;
}

/** The corners of a solid to the sixteenth of an inch: equal for timbers that stand in the very same place. */
const placeKey = ({ corners }: Solid): string =>
  corners.map((c) => c.map((v) => Math.round(v / TOUCH)).join(" ")).join(";");

/** @returns each timber that stands in the very place of one before it in the list, with that one */
export function findDoubles(
  timbers: readonly Timber[],
  solids: ReadonlyMap<Timber, Solid>,
): ReadonlyMap<Timber, Timber> {
  const first = new Map<string, Timber>();
  const doubles = new Map<Timber, Timber>();
  for (const timber of timbers) {
    const solid = solids.get(timber);
    if (!solid) continue;
    const place = placeKey(solid);
    const there = first.get(place);
    if (!there) first.set(place, timber);
    else if (!sameSeries(there, timber)) doubles.set(timber, there);
  }
  return doubles;
}

/** Meetings beyond so many for each timber are of sticks heaped up in one place, which are found long before. */
const MOST_EACH = 30;
const MOST_BESIDES = 500;

/**
 * Every pair of timbers within 1/16 in of each other over at least one square inch.
 * Cost: n log n for the sweep, plus the pairs whose boxes overlap.
 * @param doubles timbers in the very place of another: they meet that one only
 */
export function findMeetings(
  timbers: readonly Timber[],
  solids: ReadonlyMap<Timber, Solid>,
  doubles: ReadonlyMap<Timber, Timber> = new Map(),
): Meeting[] {
  const order = timbers
    .flatMap((timber, index) => {
      const solid = solids.get(timber);
      return solid ? [{ timber, solid, index }] : [];
    })
    .sort((p, q) => p.solid.low[0] - q.solid.low[0] || p.index - q.index);
  const found: { meeting: Meeting; key: number }[] = [];
  const most = MOST_EACH * timbers.length + MOST_BESIDES;
  const meet = (one: (typeof order)[number], two: (typeof order)[number]): void => {
    const [first, second] = one.index < two.index ? [one, two] : [two, one];
    if (found.length >= most || sameSeries(first.timber, second.timber)) return;
    const touch = contact(first.solid, second.solid);
    if (!touch) return;
    found.push({
      key: first.index * timbers.length + second.index,
      meeting: {
        a: first.timber,
        b: second.timber,
        point: middle(touch.a, touch.b),
        area: Math.max(touch.a.area, touch.b.area),
        aEnd: endOf(touch.a),
        bEnd: endOf(touch.b),
      },
    });
  };
  let open: typeof order = [];
  for (const next of order) {
    if (doubles.has(next.timber)) continue;
    open = open.filter((o) => o.solid.high[0] + TOUCH >= next.solid.low[0]);
    for (const other of open) meet(other, next);
    open.push(next);
  }
  const placed = new Map(order.map((o) => [o.timber, o]));
  for (const [double, of] of doubles) {
    const [one, two] = [placed.get(of), placed.get(double)];
    if (one && two) meet(one, two);
  }
  return found.sort((p, q) => p.key - q.key).map((f) => f.meeting);
}
