/** Joists and other timbers between two others: one, or a series from line to line. */
import type { Member, Ref } from "../frame/frame.ts";
import { inches } from "../quantity/length.ts";
import { baseOf, boxTimber, type Interval } from "./box.ts";
import { spanAcross } from "./grid.ts";
import type { Timber } from "./model.ts";
import type { Placer } from "./placer.ts";
import { positions } from "./series.ts";
import { type Solid, solidOf } from "./solid.ts";

/** Pairs of carriers in order: two names give their sticks pairwise, one name (twice) its neighbouring sticks. */
function carriers(p: Placer, between: readonly Ref[]): { first: Timber; second: Timber }[] {
  const lists = between.map((ref) => p.sticksNamed(ref));
  const all = lists.flat();
  if (lists.length === 2 && lists[0]?.length === 1 && lists[1]?.length === 1)
    return all[0] && all[1] ? [{ first: all[0], second: all[1] }] : [];
  const k = all[0] && Math.abs(all[0].axis[0]) > 0.7 ? 1 : 0;
  const sorted = [...new Set(all)].sort((a, b) => (a.origin[k] ?? 0) - (b.origin[k] ?? 0));
  return sorted.slice(1).flatMap((second, i) => {
    const first = sorted[i];
    return first ? [{ first, second }] : [];
  });
}

/** Extent of one carrier's near face and the other's, along the series' own grain (axis 0 = x, 1 = y). */
function clear(a: Solid, b: Solid, axis: 0 | 1): Interval {
  return a.high[axis] <= b.low[axis] ? [a.high[axis], b.low[axis]] : [b.high[axis], a.low[axis]];
}

/** Where a series begins or ends across its grain: a line's own place for a stick of this breadth, or a timber's near face. */
function limit(
  p: Placer,
  ref: Ref | undefined,
  breadth: number,
  across: 0 | 1,
  which: "from" | "to",
  fallback: number,
): { center: number; inside: boolean } | undefined {
  if (!ref) return { center: fallback, inside: false };
  const meaning = p.meaning(ref);
  if (!meaning) return undefined;
  if (meaning.sort === "wall" || meaning.sort === "bent") {
    const [low, high] = spanAcross(meaning.line, breadth);
    return { center: (low + high) / 2, inside: false };
  }
  if (meaning.sort === "length") {
    const first = (across === 0 ? p.grid.bents : p.grid.walls)[0]?.at ?? 0;
    return { center: first + meaning.length, inside: false };
  }
  if (meaning.sort === "level") {
    const lines = across === 0 ? p.grid.bents : p.grid.walls;
    return p.unknown(
      ref,
      across === 0 ? "bent" : "wall",
      lines.map(({ id }) => id),
    );
  }
  const faces = p
    .sticksNamed(ref)
    .map(solidOf)
    .map((s) => (which === "from" ? s.high[across] : s.low[across]));
  if (faces.length === 0) return undefined;
  return { center: which === "from" ? Math.min(...faces) : Math.max(...faces), inside: true };
}

/** Timbers between the carriers named by `between`, running square to them; with spacing or count a series. */
export function placeSeries(p: Placer, member: Member, between: readonly Ref[]): Timber[] {
  const timberClass = p.classOf(member.timber, member.kind);
  const section = p.section(member.section, member.turned, timberClass);
  if (!section) return [];
  const pairs = carriers(p, between);
  return pairs.flatMap(({ first, second }, bay) => {
    const [a, b] = [solidOf(first), solidOf(second)];
    // the series runs across the carriers: along y between timbers that lie along x, and the reverse
    const axis: 0 | 1 = Math.abs(first.axis[0]) > 0.7 ? 1 : 0;
    const across: 0 | 1 = axis === 0 ? 1 : 0;
    const overlap: Interval = [
      Math.max(a.low[across], b.low[across]),
      Math.min(a.high[across], b.high[across]),
    ];
    const from = limit(p, member.from, section.width, across, "from", overlap[0] + section.width / 2);
    const to = limit(p, member.to, section.width, across, "to", overlap[1] - section.width / 2);
    if (!from || !to) return [];
    const spacing = member.spacing === undefined ? undefined : inches(member.spacing);
    // between two timbers the count is that of the sticks, without the timbers themselves
    const bounds = (from.inside ? 1 : 0) + (to.inside ? 1 : 0);
    const count = member.count === undefined ? undefined : member.count + bounds;
    let centers = positions(from.center, to.center, spacing, count, member.layout);
    if (member.count === undefined && spacing === undefined) centers = [(from.center + to.center) / 2];
    else if (from.inside || to.inside)
      centers = centers.slice(from.inside ? 1 : 0, to.inside ? -1 : undefined);
    const top = p.height(member.top) ?? Math.min(a.high[2], b.high[2]);
    const bottom = p.height(member.bottom);
    const z: Interval = bottom === undefined ? [top - section.depth, top] : [bottom, bottom + section.depth];
    const name = pairs.length > 1 ? `${member.name}@${bay + 1}` : member.name;
    return centers.map((center, index) => {
      const crossing: Interval = [center - section.width / 2, center + section.width / 2];
      const grain = clear(a, b, axis);
      return boxTimber(
        baseOf(member, timberClass),
        {
          id: centers.length > 1 ? `${name}.${index + 1}` : name,
          rule: member.spacing === undefined && member.count === undefined ? "between-timbers" : "series",
          reference: { width: 0, depth: 1 },
          walls: axis === 0 ? [] : [...new Set([...first.walls, ...second.walls])],
          bents: axis === 1 ? [] : [...new Set([...first.bents, ...second.bents])],
        },
        axis === 0 ? "x" : "y",
        axis === 0 ? grain : crossing,
        axis === 0 ? crossing : grain,
        z,
      );
    });
  });
}
