/**
 * Whose boards lie where two floors, two rows or two bays of joists meet: a timber that joists end in from both sides, or a
 * joist that stands beside the last one of another floor, would be counted by both. Each reaches the middle of what both
 * cover there (statics: half the way to each neighbor). Where one lies over the other no edge tells whose place it is:
 * both count, which is on the safe side, and is told.
 */
import { common, type Interval, lengthOf, middleOf } from "../model/box.ts";
import type { Timber } from "../model/model.ts";
import { dot, type Vec3 } from "../model/vec.ts";

/** What boards cover: places along their row's timbers and across them, inches. */
export interface Region {
  u: Interval;
  readonly v: Interval;
}

/** A part of a floor on one timber. */
export interface LaidPatch {
  readonly timber: Timber;
  /** axial positions; a little past an end counts at the end */
  readonly from: number;
  readonly to: number;
  /** boards carried, square to the timber: places in that direction, inches */
  readonly reach: Interval;
  /** the boards that it is part of */
  readonly region: Region;
}

/** A row of timbers with the boards on it. */
export interface Laid {
  /** level, along the timbers and across them: the first turned by a quarter to the left */
  readonly along: Vec3;
  readonly across: Vec3;
  /** in, of the timbers' tops */
  readonly top: number;
  readonly regions: readonly Region[];
  readonly patches: readonly LaidPatch[];
}

export interface Twice<L> {
  readonly first: L;
  readonly later: L;
  /** in², covered by both */
  readonly area: number;
}

/** Boards of rows whose tops differ by more lie over each other and share nothing, inches (common practice) */
const SAME_HEIGHT = 1 / 4;
/** Less than this is the width of an edge, in²: one square foot (common practice, no source). */
const TOLD = 144;
const THIN = 1e-6;

const overlap = (a: Interval, b: Interval): Interval => [Math.max(a[0], b[0]), Math.min(a[1], b[1])];
const signed = ([a, b]: Interval, sign: number): Interval => (sign > 0 ? [a, b] : [-b, -a]);

/** A region of another row in the directions of this one; undefined where they lie on a slant to each other. */
function seenFrom(row: Laid, other: Laid, { u, v }: Region): Region | undefined {
  const same = dot(row.along, other.along);
  if (Math.abs(same) > 0.98) return { u: signed(u, same), v: signed(v, same) };
  const turned = dot(row.across, other.along);
  return Math.abs(turned) > 0.98 ? { u: signed(v, -turned), v: signed(u, turned) } : undefined;
}

/** What of an overlap an interval leaves to another that begins and ends after it, or before it; undefined where one holds the other. */
function left(own: Interval, other: Interval): Interval | undefined {
  const both = overlap(own, other);
  if (own[0] < other[0] - THIN && own[1] < other[1] - THIN) return [middleOf(both), both[1]];
  if (own[0] > other[0] + THIN && own[1] > other[1] + THIN) return [both[0], middleOf(both)];
  return undefined;
}

/** What a region leaves to another; `both` where neither has an edge of its own there; undefined where they lie apart. */
function given(own: Region, other: Region): Region | "both" | undefined {
  const [u, v] = [overlap(own.u, other.u), overlap(own.v, other.v)];
  if (lengthOf(u) <= THIN || lengthOf(v) <= THIN) return undefined;
  const [along, across] = [left(own.u, other.u), left(own.v, other.v)];
  if (along && (!across || lengthOf(u) <= lengthOf(v))) return { u: along, v };
  return across ? { u, v: across } : "both";
}

const without = (whole: Interval, part: Interval): Interval[] =>
  [[whole[0], Math.min(whole[1], part[0])] as const, [Math.max(whole[0], part[1]), whole[1]] as const].filter(
    (rest) => lengthOf(rest) > THIN,
  );

/** A patch less what its boards leave to others. */
function less({ along, across }: Laid, patch: LaidPatch, part: Region): LaidPatch[] {
  const { timber, from, to, reach } = patch;
  const runs = Math.abs(dot(timber.axis, along)) > 0.5;
  const dir = runs ? along : across;
  const [axial, wide] = runs ? [part.u, part.v] : [part.v, part.u];
  const [start, per] = [dot(timber.origin, dir), dot(timber.axis, dir)];
  const [low = 0, high = 0] = axial.map((s) => (s - start) / per).sort((a, b) => a - b);
  const cut = overlap([from, to], [low, high]);
  if (lengthOf(cut) <= THIN || common(reach, wide) <= THIN) return [patch];
  return [
    ...without([from, to], cut).map(([a, b]) => ({ ...patch, from: a, to: b })),
    ...without(reach, wide).map((rest) => ({ ...patch, from: cut[0], to: cut[1], reach: rest })),
  ];
}

/** @returns the patches of each row without what it leaves to the others, and which rows lie over each other */
export function shareOut<L extends Laid>(
  rows: readonly L[],
): { readonly patches: ReadonlyMap<L, readonly LaidPatch[]>; readonly twice: readonly Twice<L>[] } {
  const all = rows.flatMap((row, i) => row.regions.map((region) => ({ row, i, region })));
  const area = new Map<string, Twice<L>>();
  const patches = new Map<L, readonly LaidPatch[]>();
  for (const row of rows) patches.set(row, row.patches);
  for (const own of all)
    for (const other of all) {
      if (own === other || Math.abs(own.row.top - other.row.top) > SAME_HEIGHT) continue;
      const seen = seenFrom(own.row, other.row, other.region);
      const part = seen && given(own.region, seen);
      if (!seen || !part) continue;
      if (part !== "both") {
        const rest = (patches.get(own.row) ?? []).flatMap((p) =>
          p.region === own.region ? less(own.row, p, part) : [p],
        );
        patches.set(own.row, rest);
      } else if (own.i < other.i) {
        const key = `${own.i} ${other.i}`;
        const more = common(own.region.u, seen.u) * common(own.region.v, seen.v);
        area.set(key, { first: own.row, later: other.row, area: (area.get(key)?.area ?? 0) + more });
      }
    }
  return { patches, twice: [...area.values()].filter((one) => one.area > TOLD) };
}
