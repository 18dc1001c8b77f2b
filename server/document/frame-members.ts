/** The timbers of a frame, entry by entry. */
import { type EndPlace, MEMBER_KINDS, type Member, SCARF_KINDS } from "../core/frame/frame.ts";
import { MOST_IN_SERIES } from "../core/model/series.ts";
import { fromInches } from "../core/quantity/length.ts";
import type { Cursor } from "./cursor.ts";
import { readFasteners } from "./frame-fasteners.ts";
import { measuredIn } from "./frame-measured.ts";

/**
 * Values that say where a timber is or how thick: when one is written and cannot be read, the timber would be drawn
 * somewhere else or as something else, so it is left out.
 */
const ESSENTIAL = [
  "section",
  "at",
  "walls",
  "bents",
  "from",
  "to",
  "top",
  "bottom",
  "overhang",
  "between",
  "leg",
  "legs",
  "curve",
  "spacing",
  "count",
  "ends",
  "splice",
] as const;

export function readMembers(at: Cursor): readonly Member[] {
  return at.named().flatMap(([name, value]) => {
    const member = readMember(name, value);
    if (member !== undefined) return [member];
    at.context.unread.add(name);
    return [];
  });
}

function readMember(name: string, at: Cursor): Member | undefined {
  const kind = at.at("kind").choice(MEMBER_KINDS);
  if (kind === undefined) return undefined;
  const member: Member = {
    name,
    path: at.path,
    kind,
    section: at.at("section").section(),
    turned: at.at("turned").flag(),
    timber: at.at("timber").ref(),
    at: at.at("at").places(),
    walls: at.at("walls").refs(),
    bents: at.at("bents").refs(),
    from: at.at("from").ref(),
    to: at.at("to").ref(),
    top: at.at("top").height(),
    bottom: at.at("bottom").height(),
    overhang: readOverhang(at.at("overhang")),
    between: at.at("between").refs(),
    leg: at.at("leg").size(),
    legs: readLegs(at.at("legs")),
    curve: readCurve(at.at("curve")),
    above: at.at("above").flag(),
    face: at.at("face").choice(["reference", "center"]) ?? "reference",
    spacing: at.at("spacing").size(),
    count: at.at("count").count(1, MOST_IN_SERIES),
    layout: at.at("layout").choice(["even", "fixed"]) ?? "even",
    splice: readSplice(at.at("splice")),
    ends: readEnds(at.at("ends")),
    ...hungOn(at.at("hung-on")),
    ...measuredIn(at),
    ...fastened(at),
  };
  if (at.isCut) return undefined;
  const lost = ESSENTIAL.some((key) => at.has(key) && lacks(member, at, key));
  return lost || member.section === undefined ? undefined : member;
}

/** A list that lost one of its items counts as lost: the timber at that place would be missing silently. */
function lacks(member: Member, at: Cursor, key: (typeof ESSENTIAL)[number]): boolean {
  const value = member[key];
  if (value === undefined) return true;
  const written = at.at(key).node;
  return Array.isArray(value) && written?.kind === "list" && value.length < written.items.length;
}

function hungOn(at: Cursor): Pick<Member, "hungOn"> {
  const hung = at.ref();
  return hung === undefined ? {} : { hungOn: hung };
}

function fastened(at: Cursor): Pick<Member, "fasten"> {
  const fasten = readFasteners(at);
  return fasten === undefined ? {} : { fasten };
}

function readOverhang(at: Cursor): Member["overhang"] {
  if (!at.isMap) {
    const both = at.gap();
    return both === undefined ? undefined : { from: both, to: both };
  }
  const [from, to] = (["from", "to"] as const).map((key) => (at.has(key) ? at.at(key).gap() : fromInches(0)));
  return from === undefined || to === undefined ? undefined : { from, to };
}

function readLegs(at: Cursor): Member["legs"] {
  if (!at.isMap) return undefined;
  const entries = at.entries();
  const legs = entries.flatMap(([text, value]) => {
    const length = value.size();
    return length === undefined ? [] : [{ along: { text, path: value.path }, length }];
  });
  return legs.length < entries.length ? undefined : legs;
}

function readCurve(at: Cursor): Member["curve"] {
  if (!at.isMap) return undefined;
  const radius = at.at("radius").size();
  const rise = at.at("rise").size();
  if (radius === undefined && rise === undefined) return undefined;
  return { path: at.path, ...(radius !== undefined && { radius }), ...(rise !== undefined && { rise }) };
}

function readSplice(at: Cursor): Member["splice"] {
  const place = at.at("at").ref();
  return place === undefined
    ? undefined
    : { path: at.path, at: place, kind: at.at("kind").choice(SCARF_KINDS) };
}

function readEnds(at: Cursor): Member["ends"] {
  const [first, second, ...more] = at.node?.kind === "list" ? at.items().map(readEnd) : [];
  return first === undefined || second === undefined || more.length > 0 ? undefined : [first, second];
}

function readEnd(at: Cursor): EndPlace | undefined {
  if (!at.isMap) return undefined;
  const place = at.at("at").place();
  const level = at.at("level").height();
  if ((place === undefined && at.has("at")) || (level === undefined && at.has("level"))) return undefined;
  const zero = fromInches(0);
  if (!at.has("offset")) return { path: at.path, at: place, level, offset: [zero, zero, zero] };
  const [x, y, z] = at
    .at("offset")
    .items()
    .map((item) => item.offset());
  if (x === undefined || y === undefined || z === undefined) return undefined;
  return { path: at.path, at: place, level, offset: [x, y, z] };
}
