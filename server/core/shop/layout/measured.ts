/**
 * The perfect timber inside the rough one. The perfect timber is the section of the file, and lies flush with the two
 * reference faces: what a stick has over stands outside faces 3 and 4, and every housing there goes that much deeper, so
 * that its floor is at the perfect size (square rule; common practice, no source).
 */
import type { Member, Pointer } from "../../frame/frame.ts";
import type { Model, Timber } from "../../model/model.ts";
import { inches } from "../../quantity/length.ts";

/** Measured at one place, inches: across the timber's own width and depth, as it lies. */
export interface MeasuredSize {
  readonly path: Pointer;
  readonly width: number;
  readonly depth: number;
  /** from the foot's outermost point; undefined = all along */
  readonly at: number | undefined;
}

/** An entry of the file whose sticks can be measured: a member, or the roof's own rafters. */
export type MeasuredEntry = Pick<Member, "path" | "section" | "measured" | "turned">;

/** The entry that a stick stands for. */
export function measuredEntry(
  { members, frame }: Pick<Model, "members" | "frame">,
  timber: Timber,
): MeasuredEntry | undefined {
  const rafters = frame.roof?.rafters;
  return rafters?.path === timber.path ? { ...rafters, turned: false } : members.get(timber.member);
}

/**
 * What a stick measures: what is said of it alone goes before what is said of all sticks.
 * @param entry the one it stands for
 * @returns in order along the stick; empty when nobody measured it
 */
export function measuredSizes(timber: Timber, entry: MeasuredEntry | undefined): readonly MeasuredSize[] {
  const all = entry?.measured ?? [];
  const found = all.find((m) => m.stick?.text === timber.id) ?? all.find((m) => m.stick === undefined);
  const turned = entry?.turned ?? false;
  return (found?.places ?? [])
    .map(({ path, width, depth, at }) => ({
      path,
      width: inches(turned ? depth : width),
      depth: inches(turned ? width : depth),
      at: at === undefined ? undefined : inches(at),
    }))
    .sort((a, b) => (a.at ?? 0) - (b.at ?? 0));
}

/** How much a stick is over its perfect size, inches; below zero where it is short. */
export interface Surplus {
  readonly width: number;
  readonly depth: number;
}

const NONE: Surplus = { width: 0, depth: 0 };

/** What a measured size has over the perfect timber. */
export function surplusOf(size: Surplus, timber: Timber): Surplus {
  return { width: size.width - timber.width, depth: size.depth - timber.depth };
}

/**
 * What a stick is over at a place along it: straight between two places that were measured, the same beyond the last.
 * @param along inches from the foot's outermost point
 */
export function surplusAt(sizes: readonly MeasuredSize[], timber: Timber, along: number): Surplus {
  const after = sizes.findIndex((s) => (s.at ?? 0) >= along);
  const next = sizes[after < 0 ? sizes.length - 1 : after];
  const before = after < 0 ? next : sizes[after - 1];
  if (!next) return NONE;
  if (!before || before === next) return surplusOf(next, timber);
  const [from, to] = [before.at ?? 0, next.at ?? 0];
  const share = to > from ? (along - from) / (to - from) : 1;
  const mix = (key: keyof Surplus): number => before[key] + share * (next[key] - before[key]);
  return surplusOf({ width: mix("width"), depth: mix("depth") }, timber);
}
