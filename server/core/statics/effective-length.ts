/**
 * How long each timber is for buckling, about both axes of its section (design, section 6; NDS 3.7.1 and appendix G).
 *
 * What is held: first only the places that stand on the ground. From there it spreads, in each level direction by itself
 * (held-places.ts).
 * So a tie or plate braces a post only where it is itself held; knees on a post that stands on its foot alone hold nothing.
 *
 * Uprights. Held above the foot: 1.0 × between held places, 2.1 × what stands free above (appendix G, cantilever). Not
 * held, with knees in that plane: the frame sways. 2.4 × from the pinned foot to the knees' lower bearing (appendix G:
 * foot free to turn, top held against turning, free to shift), 1.0 × the pieces above, but 2.1 × what stands free above
 * the uppermost timber that runs that way (appendix G: it is a cantilever on it). Not held and without knees there:
 * it leans on the uprights that have some, 1.0 × between the timbers that run that way, and those carry its load as well:
 * their length grows by √(ΣP ÷ ΣP of the swaying ones), P from the analysis: the story buckles as a whole, so each swaying
 * upright must be good for that much more than its own load (derived; of equal uprights that have the same share each).
 * Nothing at all holds that way: 2.4 × the whole.
 * Lying timbers: 1.0 × between what holds them up, or the pairs of rafters that a ridge lies between (held-by-pairs.ts). Sideways (NDS 3.3.3, 3.7.1) between their supports and the timbers that
 * run sideways and are themselves held, at least by the heads of uprights elsewhere: how these sway is their own check. A
 * knee in the timber's own plane holds nothing sideways. The same for the bending of uprights. Braces: 1.0 × length.
 */
import { groupBy } from "../collect.ts";
import type { Model, Timber } from "../model/model.ts";
import { isDiagonal, isUpright } from "../model/upright.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import { deckCarriers } from "../roof/deck-carriers.ts";
import { heldByPairs } from "./held-by-pairs.ts";
import { type Holds, heldPlaces, isHeldBesides, LEANS } from "./held-places.ts";
import { type Contact, contactsOf, type Ground, type Support, supportsOf } from "./member-supports.ts";
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
  hold: { readonly at: readonly number[] } | undefined,
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
 * @param crowd √(load of the story ÷ load of its swaying uprights)
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
  if (lowest !== undefined) {
    const braced = longer(one(lowest, SWAY * crowd, "sways"), between([lowest, ...above], 1, "above-knee"));
    const top = Math.max(...stops);
    return top > (knees.at(-1) ?? lowest) ? longer(braced, one(span - top, FREE, "free-end")) : braced;
  }
  if (othersSway) return between([0, ...above], 1, "leans");
  return one(span, SWAY, "unheld");
}

/** Uprights of one story that nothing holds above the foot in one direction, by id: posts together, king-posts together. */
export interface Story {
  readonly uprights: readonly string[];
  /** those of them that have knees that way; never none */
  readonly swaying: readonly string[];
}

/** Load of the story ÷ load of its swaying uprights; asked only where some lean. */
export type LeaningShare = (story: Story) => number;

function uprightLengths(
  model: Model,
  contacts: ReadonlyMap<string, readonly Contact[]>,
  grounds: readonly Ground[],
  direction: Vec3,
  lowerBearing: LowerBearing,
  leaningShare: LeaningShare,
): Map<string, BucklingLength> {
  const feet = grounds.map(({ timber, at }) => ({ timber, at, whole: false }));
  const holds = heldPlaces(model.timbers, contacts, feet, direction);
  const uprights = model.timbers
    .filter(isUpright)
    .map((t) => uprightIn(t, contacts.get(t.id) ?? [], holds.get(t.id), direction, lowerBearing));
  const found = new Map<string, BucklingLength>();
  for (const [kind, those] of groupBy(uprights, (u) => u.timber.kind)) {
    const story = those.filter((o) => o.held.length === 0);
    const swaying = story.filter((o) => o.knees.length > 0);
    const ids = (of: readonly Upright[]): string[] => of.map((o) => o.timber.id);
    const leans = swaying.length > 0 && swaying.length < story.length;
    const crowd = leans ? Math.sqrt(leaningShare({ uprights: ids(story), swaying: ids(swaying) })) : 1;
    // what stands on other timbers is steadied by what it carries: rafters stand against each other
    const steadied = swaying.length > 0 || kind !== "post";
    for (const u of those)
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

/** What holds timbers sideways that do not sway themselves: uprights, and whatever these hold. */
function heldByUprights(
  { timbers }: Model,
  contacts: ReadonlyMap<string, readonly Contact[]>,
  grounds: readonly Ground[],
  direction: Vec3,
): Holds {
  const begin = [
    ...grounds.map(({ timber, at }) => ({ timber, at, whole: false })),
    ...timbers.filter(isUpright).map((timber) => ({ timber, at: 0, whole: true })),
  ];
  return heldPlaces(timbers, contacts, begin, direction);
}

/** Places along a timber where another that runs sideways holds it. */
function heldSideways(timber: Timber, contacts: readonly Contact[], holds: Holds): number[] {
  return contacts
    .filter(
      ({ other }) =>
        Math.abs(dot(other.axis, timber.widthDir)) >= LEANS && isHeldBesides(holds, other.id, timber.id),
    )
    .map((c) => c.at);
}

/** The longest stretch of a lying timber between places that hold it sideways, its supports among them. */
function sidewaysGap(timber: Timber, held: readonly number[], supports: readonly Support[]): BucklingLength {
  const places = [...held, ...supports.map((s) => s.at)].sort((a, b) => a - b);
  const [first, last] = [places[0], places.at(-1)];
  if (first === undefined || last === undefined) return one(timber.span, FREE, "unheld");
  return longer(between(places, 1, "held"), one(Math.max(first, timber.span - last), FREE, "free-end"));
}

/** The longest stretch of an upright that may turn over sideways in bending: from foot to head, or between what holds it. */
function uprightGap(timber: Timber, held: readonly number[]): number {
  return between(
    [0, ...held, timber.span].sort((a, b) => a - b),
    1,
    "held",
  ).length;
}

/**
 * @param pairs where pairs of rafters hold it: a ridge that nothing else carries. One that is carried takes its share of the
 * roof while their seats slide, and holds them
 */
function upAndDownGap(
  timber: Timber,
  supports: readonly Support[],
  pairs: readonly number[],
): BucklingLength {
  const carried = supports.map((s) => s.at);
  const places = carried.length > 1 ? carried : [...carried, ...pairs].sort((a, b) => a - b);
  const [first, last] = [places[0], places.at(-1)];
  if (first === undefined || last === undefined || first === last) return one(timber.span, FREE, "unheld");
  return longer(between(places, 1, "held"), one(Math.max(first, timber.span - last), FREE, "free-end"));
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
 * @param leaningShare from the solved forces
 * @returns lengths of every timber, by id
 */
export function bucklingLengths(
  model: Model,
  grounds: readonly Ground[],
  cuts: ReadonlyMap<string, TimberCuts>,
  leaningShare: LeaningShare,
): Map<string, TimberLengths> {
  const contacts = contactsOf(model);
  const lower = lowerBearings(cuts);
  const onDeck = deckedTimbers(model);
  const x = uprightLengths(model, contacts, grounds, X, lower, leaningShare);
  const y = uprightLengths(model, contacts, grounds, Y, lower, leaningShare);
  const heldX = heldByUprights(model, contacts, grounds, X);
  const heldY = heldByUprights(model, contacts, grounds, Y);
  return new Map(
    model.timbers.map((t) => {
      const own = contacts.get(t.id) ?? [];
      const along = one(t.span, 1, "held");
      const alongX = (d: Vec3): boolean => Math.abs(d[0]) > Math.abs(d[1]);
      const sideways = heldSideways(t, own, alongX(t.widthDir) ? heldX : heldY);
      if (isUpright(t)) {
        const in_ = (d: Vec3): BucklingLength => (alongX(d) ? x : y).get(t.id) ?? along;
        return [
          t.id,
          {
            depth: in_(t.depthDir),
            width: in_(t.widthDir),
            unbraced: uprightGap(t, sideways),
            decked: false,
            supports: [],
          },
        ];
      }
      if (isDiagonal(t))
        return [t.id, { depth: along, width: along, unbraced: t.span, decked: false, supports: [] }];
      const supports = supportsOf(t, own, grounds);
      const decked = onDeck.has(t);
      const gap = sidewaysGap(t, sideways, supports);
      const pairs = heldByPairs(t, (o) => contacts.get(o.id) ?? [], alongX(t.widthDir) ? heldX : heldY);
      return [
        t.id,
        {
          depth: upAndDownGap(t, supports, pairs),
          width: decked ? one(0, 1, "deck") : gap,
          unbraced: gap.length,
          decked,
          supports,
        },
      ];
    }),
  );
}
