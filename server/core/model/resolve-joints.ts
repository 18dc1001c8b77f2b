/**
 * From meetings to joints: which entry holds at each place, which timber joins into which, where shoulders come to lie.
 * Two passes: with timbers as placed to learn their shoulders, then again with their true ends.
 */
import { groupBy } from "../collect.ts";
import type { Frame, JointEntry, JointSpec, MemberKind, Pointer } from "../frame/frame.ts";
import { receivingFace } from "../joinery/face.ts";
import type { Joint, JointEnd, JointPlace } from "../joinery/joint.ts";
import type { LapRoom } from "../joinery/joint-sizes.ts";
import { jointKindOf } from "../joinery/kinds/index.ts";
import { scribeAllowance } from "../joinery/scribe.ts";
import {
  type Chosen,
  jointsTwoEnds,
  kindsThatFit,
  named,
  type Refused,
  readings,
  type Side,
} from "./joint-entries.ts";
import { closeness } from "./joint-match.ts";
import { isBracing, usualKind } from "./joint-usual.ts";
import type { Meeting, Timber } from "./model.ts";
import type { ModelProblem } from "./problems.ts";
import { opposedBy, type SeatAlong } from "./seats-along.ts";
import { isUpright } from "./upright.ts";
import { dot, scale, sub, type Vec3 } from "./vec.ts";

/** A meeting with its joint chosen, before sizes. */
export interface Seat {
  readonly of: Timber;
  readonly end: JointEnd;
  readonly into: Timber;
  readonly meeting: Meeting;
  readonly spec: JointSpec;
  readonly entry: JointEntry | undefined;
  readonly path: Pointer;
  readonly assumed: boolean;
  readonly standsFor?: JointEntry;
  /** name that the place's id begins with */
  readonly name: string;
}

const bare = (kind: JointSpec["kind"]): JointSpec => ({
  kind,
  housing: undefined,
  tenon: undefined,
  pegs: undefined,
  drop: undefined,
  wedge: undefined,
  tail: undefined,
  dovetail: undefined,
  seat: undefined,
  lap: undefined,
  form: undefined,
});

/** By which rule the roof's own seats or heads are laid out. */
const ruleOf = (part: Pick<JointSpec, "rule"> | undefined): Pick<JointSpec, "rule"> =>
  part?.rule ? { rule: part.rule } : {};

/** Entry name of the sticks of `roof.rafters`. */
const ROOF_RAFTER = "rafter";

const CARRIES_RAFTERS: ReadonlySet<MemberKind> = new Set(["plate", "beam", "sill"]);

/** A rafter that crosses a plate, or whose tail or high end is cut off flush with it, sits on it. */
function sitsOn(side: Side): boolean {
  if (side.of.kind !== "rafter" || Math.abs(dot(side.of.axis, side.into.axis)) > 0.5) return false;
  // what stands goes into the rafter with a tenon
  if (isUpright(side.into)) return false;
  // what lies on the rafters is only nailed
  const up = scale(side.of.depthDir, side.of.depthDir[2] >= 0 ? 1 : -1);
  if (dot(sub(side.into.origin, side.of.origin), up) > 0) return false;
  return side.end === "side" || CARRIES_RAFTERS.has(side.into.kind);
}

/** Two rafters that rise toward each other and meet with their heads, as at a ridge without a ridge timber. */
function headToHead({ of, end, into, intoEnd }: Side): boolean {
  if (of.kind !== "rafter" || into.kind !== "rafter" || end !== "head" || intoEnd !== "head") return false;
  return of.axis[0] * into.axis[0] + of.axis[1] * into.axis[1] < 0;
}

/** The roof's own seats and heads, from `roof.rafters`. */
function fromRoof(frame: Frame, m: Meeting): Chosen | undefined {
  const rafters = frame.roof?.rafters;
  const side = readings(m).find((s) => s.of.member === ROOF_RAFTER && s.of.path === rafters?.path);
  if (!rafters || !side) return undefined;
  const { head } = rafters;
  if (side.into.kind === "rafter") {
    const form = head?.kind === "bridle" || head?.kind === "lapped" ? head.kind : undefined;
    if (!head || !form || !headToHead(side)) return undefined;
    const spec = { ...bare("rafter-pair"), form, pegs: head.pegs };
    return { side, spec, entry: undefined, path: head.path, assumed: false, name: "rafter-pair" };
  }
  const named = head?.into !== undefined && closeness(head.into.text, side.into) > 0;
  if (side.end === "head" && (named || side.into.kind === "ridge")) {
    const spec = { ...bare("housed"), housing: head?.housing, ...ruleOf(head) };
    return {
      side,
      spec,
      entry: undefined,
      path: head?.path ?? rafters.path,
      assumed: false,
      name: "rafter-head",
    };
  }
  if (sitsOn(side)) {
    const { kind, seat, housing, form, path } = rafters.seat;
    const spec = { ...bare(kind), seat, housing, form, ...ruleOf(rafters.seat) };
    return { side, spec, entry: undefined, path, assumed: false, name: "rafter-seat" };
  }
  return undefined;
}

/** The scarf of a member that its own entry divides. */
function fromSplice(frame: Frame, m: Meeting): Chosen | undefined {
  const [side] = readings(m);
  const splice = frame.members.find((e) => e.path === m.a.path)?.splice;
  if (!splice || m.a.path !== m.b.path || side.end === "side" || side.intoEnd === "side") return undefined;
  if (Math.abs(dot(m.a.axis, m.b.axis)) < 0.95) return undefined;
  return {
    side,
    spec: bare(splice.kind ?? "half-lap-scarf"),
    entry: undefined,
    path: splice.path,
    assumed: false,
    name: `${side.of.member}-scarf`,
  };
}

/** From where to where a timber runs along a direction. */
function runAlong({ foot, head }: Timber, direction: Vec3): readonly [number, number] {
  const [a, b] = [dot(foot.point, direction), dot(head.point, direction)];
  return a < b ? [a, b] : [b, a];
}

/** Two timbers in line are scarfed over a part of the shorter; with more of it in common they stand side by side. */
const MOST_LAP = 1 / 2;

/** Timbers that run alike, one beside or inside the other: an end is jointed into what comes after it, not into these. */
function besideNotAfter({ of, end, into, intoEnd }: Side): boolean {
  if (Math.abs(dot(of.axis, into.axis)) < 0.99) return false;
  if (end === "side" || intoEnd === "side") return true;
  const [own, other] = [runAlong(of, of.axis), runAlong(into, of.axis)];
  const common = Math.min(own[1], other[1]) - Math.max(own[0], other[0]);
  return common > MOST_LAP * Math.min(own[1] - own[0], other[1] - other[0]);
}

/** A brace joins the timbers that its entry names and no others; nothing is let into it. Else the two collide. */
function inTheWay(frame: Frame, { of, into }: Side): boolean {
  if (into.kind === "brace") return true;
  if (!isBracing(of.kind)) return false;
  const between = frame.members.find((m) => m.name === of.member)?.between;
  return between !== undefined && !between.some((ref) => closeness(ref.text, into) > 0);
}

/** The usual joint, where the file names none. Crossings that are only nailed have none. */
function assumedFor(frame: Frame, m: Meeting): Chosen | undefined {
  const [side] = readings(m);
  if (besideNotAfter(side) || inTheWay(frame, side)) return undefined;
  const common = { side, entry: undefined, path: side.of.path, assumed: true } as const;
  if (headToHead(side)) return { ...common, spec: bare("rafter-pair"), name: `${side.of.member}-pair` };
  if (side.end !== "side" && side.intoEnd !== "side" && m.a.kind !== "rafter" && m.b.kind !== "rafter") {
    const parallel = Math.abs(dot(side.of.axis, side.into.axis));
    if (parallel > 0.95) return { ...common, spec: bare("half-lap-scarf"), name: `${side.of.member}-scarf` };
    const lying = Math.abs(side.of.axis[2]) < 0.5 && Math.abs(side.into.axis[2]) < 0.5;
    if (lying && !isBracing(m.a.kind) && !isBracing(m.b.kind))
      return { ...common, spec: bare("corner-half-lap"), name: `${side.of.member}-corner` };
  }
  const rafter = readings(m).find((s) => sitsOn(s) && s.into.kind !== "rafter");
  if (rafter || side.end === "side") {
    return rafter
      ? {
          ...common,
          side: rafter,
          path: rafter.of.path,
          spec: bare("birds-mouth"),
          name: `${rafter.of.member}-seat`,
        }
      : undefined;
  }
  const kind = usualKind(side.of.kind, side.into.kind);
  return kind ? { ...common, spec: bare(kind), name: `${side.of.member}-${side.into.member}` } : undefined;
}

function suffix(stick: Timber): string {
  return stick.id.split("@").slice(1).join("@");
}

/** The grid place a joint stands at: the joined post's, the receiving post's, else the joined stick's own. */
function placeName(seat: Omit<Chosen, "rival">): string {
  const { of, into } = seat.side;
  // a shed's rafter sits twice: the seat on the far wall says which wall
  if (
    of.member === ROOF_RAFTER &&
    into.kind !== "rafter" &&
    into.walls[0] !== undefined &&
    into.walls[0] !== of.walls[0]
  )
    return `${suffix(of)}-${into.walls[0]}`;
  const post = [of, into].find((t) => t.kind === "post");
  if (of.kind !== "brace" && of.kind !== "strut" && of.member !== ROOF_RAFTER && post) return suffix(post);
  return suffix(of) || suffix(into) || of.id;
}

/** Unique names: `post-head@A1`; with the end where one stick has two such joints, and a number where that is not enough. */
function names(chosen: readonly Chosen[]): string[] {
  const plain = chosen.map((c) => `${c.name}@${placeName(c)}`);
  const times = groupBy(plain, (id) => id);
  const ended = plain.map((id, i) => {
    const end = chosen[i]?.side.end;
    return (times.get(id)?.length ?? 0) > 1 && end !== "side" ? `${id}.${end}` : id;
  });
  // numbered by the sticks' names, not by their order in the file
  const order = chosen.map((c, i) => ({ i, key: `${c.side.of.id} ${c.side.into.id}` }));
  order.sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : a.i - b.i));
  const used = new Map<string, number>();
  const out = [...ended];
  for (const { i } of order) {
    const id = ended[i] ?? "";
    const n = (used.get(id) ?? 0) + 1;
    used.set(id, n);
    out[i] = n === 1 ? id : `${id}.${n}`;
  }
  return out;
}

interface Met {
  readonly meeting: Meeting;
  readonly chosen: Chosen;
}

/** An end that bears on one timber and only grazes another: nobody would cut a second joint there. */
const GRAZES = 1 / 4;

/**
 * Leaves out assumed joints at an end that has another joint with four times the contact or more, and assumed pairs of
 * rafters whose heads are jointed into something else, as into a ridge between them.
 */
function withoutGrazing(met: readonly Met[]): Met[] {
  const ends = groupBy(
    met.filter((m) => m.chosen.side.end !== "side"),
    (m) => `${m.chosen.side.of.id} ${m.chosen.side.end}`,
  );
  const most = new Map([...ends].map(([key, all]) => [key, Math.max(...all.map((m) => m.meeting.area))]));
  const elsewhere = ({ of, into }: Side): boolean =>
    (ends.get(`${of.id} head`)?.length ?? 0) > 1 || ends.has(`${into.id} head`);
  return met.filter(({ meeting, chosen }) => {
    if (chosen.assumed && chosen.spec.kind === "rafter-pair" && elsewhere(chosen.side)) return false;
    const largest = most.get(`${chosen.side.of.id} ${chosen.side.end}`) ?? 0;
    return !chosen.assumed || chosen.side.end === "side" || meeting.area > GRAZES * largest;
  });
}

export interface Seats {
  readonly seats: readonly (Seat & { readonly id: string })[];
  readonly problems: readonly ModelProblem[];
}

/** Whether an entry is cut elsewhere between sticks of the same two members: where two cross it is not the corner or scarf meant. */
function heldElsewhere({ entry, side }: Refused, found: readonly Met[]): boolean {
  return (
    jointsTwoEnds(entry.kind) &&
    found.some(
      ({ chosen }) =>
        chosen.entry === entry &&
        chosen.side.of.member === side.of.member &&
        chosen.side.into.member === side.into.member,
    )
  );
}

function seatOf({ side, spec, entry, path, assumed, name, standsFor }: Chosen, meeting: Meeting): Seat {
  const { of, end, into } = side;
  return { of, end, into, meeting, spec, entry, path, assumed, name, ...(standsFor ? { standsFor } : {}) };
}

/** Chooses the joint of every meeting and gives each place its name. */
export function seatJoints(frame: Frame, meetings: readonly Meeting[]): Seats {
  const problems: ModelProblem[] = [];
  const turnedDown: Refused[] = [];
  const met = meetings.flatMap((meeting) => {
    const { chosen: byName, refused } = named(frame, meeting);
    turnedDown.push(...refused);
    const usual = byName ?? fromRoof(frame, meeting) ?? fromSplice(frame, meeting);
    const assumed = usual ? undefined : assumedFor(frame, meeting);
    // what is taken instead keeps the place's name
    const standsFor = refused[0]?.entry;
    const chosen =
      usual ?? (assumed && standsFor ? { ...assumed, name: standsFor.name, standsFor } : assumed);
    return chosen ? [{ meeting, chosen }] : [];
  });
  const found = withoutGrazing(met);
  const ids = names(found.map((f) => f.chosen));
  for (const one of turnedDown) {
    if (heldElsewhere(one, found)) continue;
    const at = found.findIndex(({ meeting }) => meeting === one.meeting);
    problems.push({
      kind: "kind-unfit",
      path: one.entry.path,
      entry: one.entry.name,
      joint: one.entry.kind,
      of: one.side.of.id,
      into: one.side.into.id,
      unfit: one.unfit,
      place: ids[at],
      instead: found[at]?.chosen.spec.kind,
      fits: kindsThatFit(one.side),
      holds: found.some(({ chosen }) => chosen.entry === one.entry),
    });
  }
  const seats = found.map(({ meeting, chosen }, i) => {
    const { rival } = chosen;
    const id = ids[i] ?? chosen.name;
    if (rival)
      problems.push({
        kind: "joint-twice",
        path: chosen.path,
        other: rival.path,
        place: id,
        names: [chosen.name, rival.name],
      });
    return { ...seatOf(chosen, meeting), id };
  });
  return { seats, problems };
}

/** Sizes, solids and shoulders of one seat. */
export function shapeJoint(
  seat: Seat & { readonly id: string },
  along: readonly SeatAlong[],
  metric: boolean,
  room?: LapRoom,
): Joint & { readonly shaped: ReturnType<ReturnType<typeof jointKindOf>["shape"]> } {
  const kind = jointKindOf(seat.spec.kind);
  const face = (kind.face ?? receivingFace)(seat.of, seat.end, seat.into, seat.meeting.point);
  const reach = Math.max(seat.of.width, seat.of.depth) * 1.5;
  const place: JointPlace = {
    of: seat.of,
    end: seat.end,
    into: seat.into,
    meeting: seat.meeting,
    face,
    spec: seat.spec,
    metric,
    opposed: seat.end !== "side" && opposedBy(seat, along, face.inward, reach),
    ...(room ? { room } : {}),
  };
  const shaped = kind.shape(place);
  return {
    id: seat.id,
    kind: seat.spec.kind,
    entry: seat.entry,
    path: seat.path,
    assumed: seat.assumed,
    ...(seat.standsFor ? { standsFor: seat.standsFor } : {}),
    pegsPath: seat.spec.pegs?.path,
    of: seat.of,
    end: seat.end,
    into: seat.into,
    meeting: seat.meeting,
    face,
    sizes: shaped.sizes,
    solids: shaped.solids,
    extension: shaped.extension,
    scribe: seat.spec.rule === "scribe" ? scribeAllowance(metric) : 0,
    shaped,
  };
}
