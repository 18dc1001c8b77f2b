/** Plates, sills, girts, ties and beams: lying along a wall or along a bent, from line to line. */
import type { Member, Ref, TimberClass } from "../frame/frame.ts";
import { inches } from "../quantity/length.ts";
import { parseLength } from "../quantity/quantity.ts";
import { baseOf, boxTimber, type Interval } from "./box.ts";
import { type Line, referenceSign, spanAcross } from "./grid.ts";
import type { Timber } from "./model.ts";
import type { Placer } from "./placer.ts";
import { plateTopFromPitch } from "./roof-planes.ts";
import { solidOf } from "./solid.ts";

type Way = "wall" | "bent";

interface Row {
  readonly member: Member;
  readonly timberClass: TimberClass | undefined;
  readonly way: Way;
  readonly line: Line;
  /** extent across the line */
  readonly across: Interval;
  readonly z: Interval;
}

/** Vertical extent: from the level of its top or of its underside; a shed's plate may leave it to the pitch. */
function vertical(
  p: Placer,
  member: Member,
  way: Way,
  line: Line,
  width: number,
  depth: number,
): Interval | undefined {
  const top = p.height(member.top);
  if (top !== undefined) return [top - depth, top];
  const bottom = p.height(member.bottom);
  if (bottom !== undefined) return [bottom, bottom + depth];
  if (member.top || member.bottom) return undefined;
  const derived = way === "wall" ? plateTopFromPitch(p, line.id, width) : undefined;
  if (derived !== undefined) return [derived - depth, derived];
  return p.missing(member.path, member.name, ["top", "bottom"]);
}

/** A grid place along the timber: `A2` along wall A or bent 2, `B@2 m` along wall B. */
function atPlace(p: Placer, row: Row, text: string): ReturnType<typeof endAt> {
  const crossing = row.way === "wall" ? p.grid.bents : p.grid.walls;
  const line = crossing.find((l) => text === (row.way === "wall" ? row.line.id + l.id : l.id + row.line.id));
  if (line) return { at: line.at, line };
  const [wall, ...rest] = text.split("@");
  if (row.way !== "wall" || wall !== row.line.id || rest.length === 0) return undefined;
  const length = parseLength(rest.join("@"), p.frame.units);
  return length.ok ? { at: (crossing[0]?.at ?? 0) + inches(length.value), line: undefined } : undefined;
}

/** Position along the timber that a `from`/`to` name means, and the grid line it is on, if any. */
function endAt(
  p: Placer,
  row: Row,
  ref: Ref | undefined,
  which: "from" | "to",
): { readonly at: number; readonly line: Line | undefined } | undefined {
  const crossing = row.way === "wall" ? p.grid.bents : p.grid.walls;
  if (!ref) {
    const line = which === "from" ? crossing[0] : crossing.at(-1);
    return line ? { at: line.at, line } : p.missing(row.member.path, row.member.name, [which]);
  }
  const placed = atPlace(p, row, ref.text);
  if (placed) return placed;
  const meaning = p.meaning(ref);
  if (!meaning) return undefined;
  if (meaning.sort === "length") return { at: (crossing[0]?.at ?? 0) + meaning.length, line: undefined };
  if (meaning.sort === (row.way === "wall" ? "bent" : "wall")) {
    const line = (meaning as { line: Line }).line;
    return { at: line.at, line };
  }
  if (meaning.sort === "member" || meaning.sort === "stick") {
    const axis = row.way === "wall" ? 0 : 1;
    const faces = p
      .sticksNamed(ref)
      .map(solidOf)
      .filter((s) => crosses(s.low, s.high, row, axis === 0 ? 1 : 0))
      .map((s) => (which === "from" ? s.high[axis] : s.low[axis]));
    if (faces.length === 0) return p.missing(ref.path, row.member.name, [`${ref.text} here`]);
    return { at: which === "from" ? Math.min(...faces) : Math.max(...faces), line: undefined };
  }
  return p.unknown(
    ref,
    row.way === "wall" ? "bent" : "wall",
    crossing.map((l) => l.id),
  );
}

function crosses(low: readonly number[], high: readonly number[], row: Row, k: 0 | 1): boolean {
  const l = low[k] ?? 0;
  const h = high[k] ?? 0;
  return (
    h > row.across[0] && l < row.across[1] && (high[2] ?? 0) >= row.z[0] - 1 && (low[2] ?? 0) <= row.z[1] + 1
  );
}

/** Where one stick of a row ends and the next begins: at one point of a splice, on both sides of a post. */
interface Cut {
  readonly until: number;
  readonly from: number;
  readonly line: Line | undefined;
}

/** The post that stands in a girt's way at a crossing line, unless the post itself rests on the girt or ends under it. */
function postInWay(p: Placer, row: Row, crossing: Line): Interval | undefined {
  const [wall, bent] = row.way === "wall" ? [row.line.id, crossing.id] : [crossing.id, row.line.id];
  const axis = row.way === "wall" ? 0 : 1;
  const names = (ref: Ref | undefined): boolean => ref?.text.split("@")[0] === row.member.name;
  for (const m of p.members.values()) {
    if (m.kind !== "post" || names(m.from) || names(m.to)) continue;
    if (!m.at?.some((a) => a.wall === wall && a.bent === bent)) continue;
    const solid = p
      .sticks(m.name)
      .filter((s) => s.walls.includes(wall) && s.bents.includes(bent))
      .map(solidOf)
      .find((s) => s.high[2] > row.z[0] && s.low[2] < row.z[1]);
    if (solid) return [solid.low[axis], solid.high[axis]];
  }
  return undefined;
}

/** Positions at which the row is cut into several sticks. */
function cuts(p: Placer, row: Row, from: number, to: number): Cut[] {
  const crossing = row.way === "wall" ? p.grid.bents : p.grid.walls;
  const inner = crossing.filter((l) => l.at > from + 1 && l.at < to - 1);
  if (row.member.kind === "girt")
    return inner.flatMap((line) => {
      const post = postInWay(p, row, line);
      return post ? [{ until: post[0], from: post[1], line }] : [];
    });
  const splice = row.member.splice;
  const at = splice && endAt(p, row, splice.at, "to");
  return at && at.at > from && at.at < to ? [{ until: at.at, from: at.at, line: at.line }] : [];
}

function place(row: Row, id: string, along: Interval, crossing: readonly string[]): Timber {
  const sign = referenceSign(row.line);
  const wall = row.way === "wall";
  return boxTimber(
    baseOf(row.member, row.timberClass),
    {
      id,
      rule: wall ? "along-wall" : "along-bent",
      // a timber along a bent has its width axis against x, so the face toward bent 1 is its upper one
      reference: { width: wall ? sign : sign === -1 ? 1 : -1, depth: 1 },
      walls: wall ? [row.line.id] : crossing,
      bents: wall ? crossing : [row.line.id],
    },
    wall ? "x" : "y",
    wall ? along : row.across,
    wall ? row.across : along,
    row.z,
  );
}

function placeRow(p: Placer, row: Row): Timber[] {
  const { member } = row;
  const from = endAt(p, row, member.from, "from");
  const to = endAt(p, row, member.to, "to");
  if (!from || !to) return [];
  const over = member.overhang;
  const start = from.at - (over ? inches(over.from) : 0);
  const end = to.at + (over ? inches(over.to) : 0);
  const between = cuts(p, row, from.at, to.at);
  const stops: Cut[] = [
    { until: start, from: start, line: from.line },
    ...between,
    { until: end, from: end, line: to.line },
  ];
  const name = row.line.id;
  return stops.slice(1).map((stop, index) => {
    const before = stops[index] ?? stop;
    const run: Interval = [before.from, stop.until];
    if (member.kind === "girt" && before.line && stop.line) {
      const pair =
        row.way === "wall"
          ? `${name}${before.line.id}-${name}${stop.line.id}`
          : `${before.line.id}${name}-${stop.line.id}${name}`;
      return place(row, `${member.name}@${pair}`, run, [before.line.id, stop.line.id]);
    }
    const id = between.length > 0 ? `${member.name}@${name}.${index + 1}` : `${member.name}@${name}`;
    return place(row, id, run, linesIn(p, row, run));
  });
}

/** Names of the lines that a run reaches, for the views. */
function linesIn(p: Placer, row: Row, run: Interval): string[] {
  const crossing = row.way === "wall" ? p.grid.bents : p.grid.walls;
  return crossing.filter((l) => l.at >= run[0] - 1 && l.at <= run[1] + 1).map((l) => l.id);
}

/** Lying timbers of one entry: one row for each wall or bent it names. */
export function placeLying(p: Placer, member: Member): Timber[] {
  const timberClass = p.classOf(member.timber, member.kind);
  const section = p.section(member.section, member.turned, timberClass);
  const way: Way = member.walls ? "wall" : "bent";
  const refs = member.walls ?? member.bents;
  if (!refs) return p.missing(member.path, member.name, ["walls", "bents"]) ?? [];
  if (!section) return [];
  return refs.flatMap((ref) => {
    const line = p.line(ref, way);
    const z = line && vertical(p, member, way, line, section.width, section.depth);
    if (!line || !z) return [];
    return placeRow(p, { member, timberClass, way, line, across: spanAcross(line, section.width), z });
  });
}
