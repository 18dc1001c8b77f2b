/**
 * How long each timber is for buckling, about both axes of its section (design, section 6; NDS 3.7.1 and appendix G).
 *
 * What is held: first only the places that stand on the ground. From there it spreads, in each level direction by itself:
 *   - a timber that runs that way and is held at one place is held all along (it pushes and pulls), a brace or rafter too
 *     if it leans that way;
 *   - a lying timber held at two places is held between them as a beam, and a third as far past them; an upright is not, or it would brace itself;
 *   - where two timbers touch, what holds the one holds the other there.
 * So a tie or plate braces a post only where it is itself held; knees on a post that stands on its foot alone hold nothing.
 *
 * Uprights. Held above the foot: 1.0 × between held places, 2.1 × what stands free above (appendix G, cantilever). Not
 * held, with knees in that plane: the frame sways. 2.4 × from the pinned foot to the knees' lower bearing (appendix G:
 * foot free to turn, top held against turning, free to shift), 1.0 × the pieces above. Not held and without knees there:
 * it leans on the uprights that have some, 1.0 × between the timbers that run that way, and those carry its load as well:
 * their length grows by √(1 + leaning ÷ swaying uprights) (buckling load of the whole story shared, equal loads; derived).
 * Nothing at all holds that way: 2.4 × the whole.
 * Lying timbers: 1.0 × between what holds them up, and sideways between whatever is joined to them. Braces: 1.0 × length.
 */
import type { Model, Timber } from "../model/model.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import { deckCarriers } from "../roof/deck-carriers.ts";
import {
  type Contact,
  contactsOf,
  type Ground,
  isDiagonal,
  isUpright,
  type Support,
  supportsOf,
} from "./member-supports.ts";
import type { TimberCuts } from "./net-section.ts";

/** NDS appendix G, recommended K_e: pinned foot, top free to shift but not to turn; the file's piers are all pinned. */
const SWAY = 2.4;
/** NDS appendix G, recommended K_e of a cantilever. */
const FREE = 2.1;

/** Buckling in one direction: the stretch that counts, in, and its factor. */
export interface BucklingLength {
  readonly length: number;
  readonly factor: number;
  /** factor × length, in */
  readonly effective: number;
  readonly why: BucklingReason;
}

export type BucklingReason =
  | "held" // between places that are held
  | "free-end" // stands free above what holds it
  | "sways" // foot to knee in a frame that sways
  | "above-knee" // above the knees
  | "leans" // on the other uprights
  | "unheld" // nothing holds that way
  | "deck"; // held all along

export interface TimberLengths {
  /** buckling in the plane of the depth, and of the width */
  readonly depth: BucklingLength;
  readonly width: BucklingLength;
  /** longest stretch between places held sideways, for the lateral stability of a beam, in */
  readonly unbraced: number;
  /** the upper edge is held by boards or panels all along */
  readonly decked: boolean;
  readonly supports: readonly Support[];
}

const X: Vec3 = [1, 0, 0];
const Y: Vec3 = [0, 1, 0];

/** Least share of a timber's length that must run in a direction for it to hold that way by pushing and pulling. */
const LEANS = 0.25;

/** How far past its outer holds a lying timber still holds others, as a share of the distance between those (judgment). */
const OVERHANG = 1 / 3;

interface Hold {
  /** held places in any order */
  readonly at: number[];
  whole: boolean;
}

function isHeld(t: Timber, hold: Hold | undefined, at: number): boolean {
  if (!hold) return false;
  if (hold.whole) return true;
  const near = Math.max(t.width, t.depth);
  if (hold.at.some((p) => Math.abs(p - at) <= near)) return true;
  if (isUpright(t) || isDiagonal(t)) return false;
  const [first, last] = [Math.min(...hold.at), Math.max(...hold.at)];
  const past = (last - first) * OVERHANG;
  return at >= first - past && at <= last + past;
}

/**
 * @param direction level unit vector
 * @returns held places of every timber that has any, by id
 */
function heldPlaces(
  timbers: readonly Timber[],
  contacts: ReadonlyMap<string, readonly Contact[]>,
  grounds: readonly Ground[],
  direction: Vec3,
): ReadonlyMap<string, { readonly at: readonly number[]; readonly whole: boolean }> {
  const holds = new Map<string, Hold>();
  const open: Timber[] = [];
  const add = (t: Timber, at: number): void => {
    let own = holds.get(t.id);
    if (own && (own.whole || own.at.some((p) => Math.abs(p - at) < 1e-6))) return;
    own ??= { at: [], whole: Math.abs(dot(t.axis, direction)) >= LEANS };
    own.at.push(at);
    holds.set(t.id, own);
    open.push(t);
  };
  for (const g of grounds) add(g.timber, g.at);
  const known = new Set(timbers.map((t) => t.id));
  // each timber is looked at again whenever it has gained a place; places are contacts, so the number of turns is bounded
  for (let t = open.pop(); t !== undefined; t = open.pop()) {
    const own = holds.get(t.id);
    for (const c of contacts.get(t.id) ?? [])
      if (known.has(c.other.id) && isHeld(t, own, c.at)) add(c.other, c.otherAt);
  }
  return holds;
}

/** What an upright knows of one direction. */
interface Upright {
  readonly timber: Timber;
  /** places held above the foot */
  readonly held: readonly number[];
  /** lower bearings of knees in that plane, lowest first */
  readonly knees: readonly number[];
  /** where timbers that run that way meet it */
  readonly stops: readonly number[];
}

/** Lowest place where a brace bears on an upright, in above its foot. */
type LowerBearing = (timber: Timber, contact: Contact) => number;

function uprightIn(
  timber: Timber,
  contacts: readonly Contact[],
  hold: { readonly at: readonly number[]; readonly whole: boolean } | undefined,
  direction: Vec3,
  lowerBearing: LowerBearing,
): Upright {
  const runs = (c: Contact): boolean => Math.abs(dot(c.other.axis, direction)) >= LEANS;
  // a knee leaves the upright going up: its own lower end is on it
  const rises = (c: Contact): boolean => c.otherAt < c.other.span / 2 === c.other.axis[2] > 0;
  return {
    timber,
    held: (hold?.at ?? []).filter((at) => at > Math.max(timber.width, timber.depth)).sort((a, b) => a - b),
    knees: contacts
      .filter((c) => c.other.kind === "brace" && runs(c) && rises(c))
      .map((c) => lowerBearing(timber, c))
      .sort((a, b) => a - b),
    stops: contacts.filter((c) => !isDiagonal(c.other) && !isUpright(c.other) && runs(c)).map((c) => c.at),
  };
}

function one(length: number, factor: number, why: BucklingReason): BucklingLength {
  const l = Math.max(length, 0);
  return { length: l, factor, effective: factor * l, why };
}

const longer = (a: BucklingLength, b: BucklingLength): BucklingLength => (b.effective > a.effective ? b : a);

/** The longest of the stretches between places, in order, each times its factor. */
function between(places: readonly number[], factor: number, why: BucklingReason): BucklingLength {
  let worst = one(0, factor, why);
  for (let i = 1; i < places.length; i++)
    worst = longer(worst, one((places[i] ?? 0) - (places[i - 1] ?? 0), factor, why));
  return worst;
}

/**
 * Buckling length of an upright in one direction.
 * @param crowd √(1 + leaning ÷ swaying uprights)
 * @param othersSway whether some upright of the frame has knees that way
 */
export function uprightLength(
  upright: Omit<Upright, "timber"> & { readonly span: number },
  crowd: number,
  othersSway: boolean,
): BucklingLength {
  const { held, knees, stops, span } = upright;
  if (held.length > 0) {
    const top = held.at(-1) ?? 0;
    return longer(between([0, ...held], 1, "held"), one(span - top, FREE, "free-end"));
  }
  const lowest = knees[0];
  const above = [...knees, ...stops, span].filter((at) => at >= (lowest ?? 0)).sort((a, b) => a - b);
  if (lowest !== undefined)
    return longer(one(lowest, SWAY * crowd, "sways"), between([lowest, ...above], 1, "above-knee"));
  if (othersSway) return between([0, ...above], 1, "leans");
  return one(span, SWAY, "unheld");
}

/** Uprights of one story: posts together, king-posts together. */
const storyOf = (t: Timber): string => t.kind;

function uprightLengths(
  model: Model,
  contacts: ReadonlyMap<string, readonly Contact[]>,
  grounds: readonly Ground[],
  direction: Vec3,
  lowerBearing: LowerBearing,
): Map<string, BucklingLength> {
  const holds = heldPlaces(model.timbers, contacts, grounds, direction);
  const uprights = model.timbers
    .filter(isUpright)
    .map((t) => uprightIn(t, contacts.get(t.id) ?? [], holds.get(t.id), direction, lowerBearing));
  const found = new Map<string, BucklingLength>();
  for (const u of uprights) {
    const story = uprights.filter((o) => o.held.length === 0 && storyOf(o.timber) === storyOf(u.timber));
    const swaying = story.filter((o) => o.knees.length > 0).length;
    const crowd = swaying > 0 ? Math.sqrt(story.length / swaying) : 1;
    // what stands on other timbers is steadied by what it carries: rafters stand against each other
    const steadied = swaying > 0 || u.timber.kind !== "post";
    found.set(u.timber.id, uprightLength({ ...u, span: u.timber.span }, crowd, steadied));
  }
  return found;
}

/** Where the brace's mortise or housing ends below, on the upright. */
function lowerBearings(cuts: ReadonlyMap<string, TimberCuts>): LowerBearing {
  return (timber, contact) => {
    const own = (cuts.get(timber.id)?.cuts ?? []).filter((c) => c.joint === contact.joint?.id);
    const lowest = Math.min(...own.flatMap((c) => c.breaks));
    return Number.isFinite(lowest) && contact.joint ? Math.min(lowest, contact.at) : contact.at;
  };
}

/** Places along a lying timber at which something joined to it holds it sideways, its ends included where they rest. */
function sidewaysGap(
  timber: Timber,
  contacts: readonly Contact[],
  supports: readonly Support[],
): BucklingLength {
  const across = contacts.filter((c) => Math.abs(dot(c.other.axis, timber.axis)) < 0.97).map((c) => c.at);
  const places = [...across, ...supports.map((s) => s.at)].sort((a, b) => a - b);
  const [first, last] = [places[0], places.at(-1)];
  if (first === undefined || last === undefined) return one(timber.span, FREE, "unheld");
  return longer(between(places, 1, "held"), one(Math.max(first, timber.span - last), FREE, "free-end"));
}

function upAndDownGap(timber: Timber, supports: readonly Support[]): BucklingLength {
  const [first, last] = [supports[0], supports.at(-1)];
  if (!first || !last || first === last) return one(timber.span, FREE, "unheld");
  return longer(
    between(
      supports.map((s) => s.at),
      1,
      "held",
    ),
    one(Math.max(first.at, timber.span - last.at), FREE, "free-end"),
  );
}

/**
 * Boards or panels nailed to a floor's joists, and to what the roof's deck lies on, hold their upper edges: purlins, the
 * roof's own rafters. Rafters under purlins do not touch the deck; principal rafters stand too far apart to count on it.
 */
function deckedTimbers(model: Model): ReadonlySet<Timber> {
  const floored = new Set(model.frame.floors.flatMap((f) => (f.deck && f.on ? [f.on.text] : [])));
  const joists = model.timbers.filter((t) => floored.has(t.member));
  const deck = model.frame.roof?.deck?.kind;
  if (deck !== "boards" && deck !== "panels") return new Set(joists);
  const nailed = (model.roof?.slopes ?? []).flatMap((slope) =>
    deckCarriers(model, slope).filter((t) => t.kind === "purlin" || slope.rafters.includes(t)),
  );
  return new Set([...joists, ...nailed]);
}

/**
 * @param cuts of every timber, by id
 * @returns lengths of every timber, by id
 */
export function bucklingLengths(
  model: Model,
  grounds: readonly Ground[],
  cuts: ReadonlyMap<string, TimberCuts>,
): Map<string, TimberLengths> {
  const contacts = contactsOf(model);
  const lower = lowerBearings(cuts);
  const onDeck = deckedTimbers(model);
  const x = uprightLengths(model, contacts, grounds, X, lower);
  const y = uprightLengths(model, contacts, grounds, Y, lower);
  return new Map(
    model.timbers.map((t) => {
      const own = contacts.get(t.id) ?? [];
      const along = one(t.span, 1, "held");
      if (isUpright(t)) {
        const in_ = (d: Vec3): BucklingLength => (Math.abs(d[0]) > Math.abs(d[1]) ? x : y).get(t.id) ?? along;
        const gap = sidewaysGap(t, own, []);
        return [
          t.id,
          {
            depth: in_(t.depthDir),
            width: in_(t.widthDir),
            unbraced: Math.min(gap.length, t.span),
            decked: false,
            supports: [],
          },
        ];
      }
      if (isDiagonal(t))
        return [t.id, { depth: along, width: along, unbraced: t.span, decked: false, supports: [] }];
      const supports = supportsOf(t, own, grounds);
      const decked = onDeck.has(t);
      const gap = sidewaysGap(t, own, supports);
      return [
        t.id,
        {
          depth: upAndDownGap(t, supports),
          width: decked ? one(0, 1, "deck") : gap,
          unbraced: gap.length,
          decked,
          supports,
        },
      ];
    }),
  );
}
