/**
 * Where timbers are held in a level direction. From the places that hold to begin with it spreads:
 *   - a timber that runs that way and is held at one place is held all along (it pushes and pulls), a brace or rafter too
 *     if it leans that way;
 *   - a lying timber held at two places is held between them as a beam, and a third as far past them; an upright is not, or
 *     it would brace itself;
 *   - where two timbers touch, what holds the one holds the other there.
 */
import type { Timber } from "../model/model.ts";
import { isDiagonal, isUpright } from "../model/upright.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import type { Contact } from "./member-supports.ts";

/** Least share of a timber's length that must run in a direction for it to hold that way by pushing and pulling. */
export const LEANS = 0.25;

/** How far past its outer holds a lying timber still holds others, as a share of the distance between those (judgment). */
const OVERHANG = 1 / 3;

/** A place that holds to begin with; `whole`: the timber is held all along. */
export interface FirstHold {
  readonly timber: Timber;
  readonly at: number;
  readonly whole: boolean;
}

interface Hold {
  /** held places in any order, in from the foot */
  readonly at: number[];
  whole: boolean;
  /** ids of the timbers that hold it */
  readonly by: Set<string>;
  /** it holds to begin with */
  first: boolean;
  /** it is to be looked at, for what it holds in turn */
  open: boolean;
}

const newHold = (): Hold => ({ at: [], whole: false, by: new Set(), first: false, open: false });

function hasPlace(places: readonly number[], at: number): boolean {
  for (const p of places) if (Math.abs(p - at) < 1e-6) return true;
  return false;
}

/** By timber id. */
export type Holds = ReadonlyMap<
  string,
  Pick<Readonly<Hold>, "whole" | "first"> & {
    readonly at: readonly number[];
    readonly by: ReadonlySet<string>;
  }
>;

function isHeld(t: Timber, hold: Hold | undefined, at: number): boolean {
  if (!hold) return false;
  if (hold.whole) return true;
  const near = Math.max(t.width, t.depth);
  let first = Number.POSITIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  for (const p of hold.at) {
    if (Math.abs(p - at) <= near) return true;
    first = Math.min(first, p);
    last = Math.max(last, p);
  }
  if (isUpright(t) || isDiagonal(t)) return false;
  const past = (last - first) * OVERHANG;
  return at >= first - past && at <= last + past;
}

/**
 * @param direction level unit vector
 * @returns the holds of every timber that has any, by id
 */
export function heldPlaces(
  timbers: readonly Timber[],
  contacts: ReadonlyMap<string, readonly Contact[]>,
  begin: readonly FirstHold[],
  direction: Vec3,
): Holds {
  const holds = new Map<string, Hold>();
  const open: Timber[] = [];
  const add = (t: Timber, at: number, by: Timber | undefined, whole: boolean): void => {
    const own = holds.get(t.id) ?? newHold();
    if (by) own.by.add(by.id);
    else own.first = true;
    if (own.whole || (!whole && hasPlace(own.at, at))) return;
    own.whole = whole || Math.abs(dot(t.axis, direction)) >= LEANS;
    own.at.push(at);
    holds.set(t.id, own);
    if (!own.open) open.push(t);
    own.open = true;
  };
  for (const b of begin) add(b.timber, b.at, undefined, b.whole);
  const known = new Set(timbers.map((t) => t.id));
  // each timber is looked at again whenever it has gained a place; places are contacts, so the number of turns is bounded
  for (let t = open.pop(); t !== undefined; t = open.pop()) {
    const own = holds.get(t.id);
    if (own) own.open = false;
    for (const c of contacts.get(t.id) ?? [])
      if (known.has(c.other.id) && isHeld(t, own, c.at)) add(c.other, c.otherAt, t, false);
  }
  return holds;
}

/**
 * Whether a timber is held by something else than one that it may hold in turn: a joist hung on a single tie holds that
 * tie no better than the tie holds it.
 * @param id of the timber that would hold; @param besides id of the one that it would hold
 */
export function isHeldBesides(holds: Holds, id: string, besides: string): boolean {
  const seen = new Set([besides]);
  const open = [id];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (seen.has(next)) continue;
    seen.add(next);
    const own = holds.get(next);
    if (own?.first) return true;
    open.push(...(own?.by ?? []));
  }
  return false;
}
