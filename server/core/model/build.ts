/** From a frame to its model: place the timbers, find where they meet, joint them, give them their true ends. */
import { groupBy, remembering } from "../collect.ts";
import type { Frame } from "../frame/frame.ts";
import { meetAtPeak } from "../frame/roof.ts";
import { postFeet } from "../joinery/foot/post-foot.ts";
import type { LapRoom } from "../joinery/joint-sizes.ts";
import { nearJoints } from "../joinery/near-joints.ts";
import { inches } from "../quantity/length.ts";
import { groundPlan } from "./ground.ts";
import { jointsApart } from "./joints-apart.ts";
import { lapRooms } from "./lap-rooms.ts";
import { reportMeasured } from "./measured-sticks.ts";
import { findDoubles, findMeetings } from "./meetings.ts";
import type { Meeting, Model, RoofModel, Timber } from "./model.ts";
import { namesOf } from "./names.ts";
import { placePiers } from "./piers.ts";
import { placeRoofRafters } from "./place-roof.ts";
import { Placer } from "./placer.ts";
import { seatJoints, shapeJoint } from "./resolve-joints.ts";
import { topsideAt } from "./roof-planes.ts";
import { DEFAULT_HEAD_HOUSING, deckAlong, headRun, onlyRidge, peakRun } from "./roof-reach.ts";
import { seatsAlong } from "./seats-along.ts";
import { type Solid, solidOf, touch } from "./solid.ts";
import { type Shaped, trueEnds } from "./true-ends.ts";
import type { Vec3 } from "./vec.ts";

type Rafters = ReturnType<typeof placeRoofRafters>;

function roofModel(p: Placer, rafters: Rafters, final: (t: Timber) => Timber): RoofModel | undefined {
  const planes = p.roof();
  if (!planes) return undefined;
  const overhang = p.frame.roof?.rafters?.overhang;
  const head = p.frame.roof?.rafters?.head;
  const headHousing =
    meetAtPeak(head) || (head?.into ?? onlyRidge(p)) === undefined
      ? 0
      : head?.housing === undefined
        ? DEFAULT_HEAD_HOUSING
        : inches(head.housing);
  const deck = deckAlong(p, planes);
  const eave = overhang === undefined ? principalTail(p) : inches(overhang.eave);
  return {
    kind: planes.kind,
    slopes: planes.slopes.flatMap((plane) => {
      const own = rafters.find((r) => r.plane === plane);
      const head = own?.head ?? headRun(p, planes, plane);
      if (head === undefined) return [];
      const normal: Vec3 = [0, -plane.inward * Math.sin(plane.angle), Math.cos(plane.angle)];
      return {
        wall: plane.wall,
        rafters: (own?.sticks ?? []).map(final),
        slope: plane.slope,
        angle: plane.angle,
        run: planes.highRun === undefined ? head : planes.highRun + plane.seat,
        span: planes.highRun === undefined ? head - headHousing / 2 - plane.bearing : planes.highRun,
        eaveOverhang: eave,
        peakRun: peakRun(p, planes, plane),
        spacing: own?.spacing ?? 0,
        seatRun: plane.seat,
        bearingRun: plane.bearing,
        seat: plane.seat,
        seatDepth: plane.seat * Math.sin(plane.angle),
        plane: { point: [0, plane.outside, topsideAt(plane, 0)], normal },
        deckFrom: deck[0],
        deckTo: deck[1],
      };
    }),
  };
}

/** Level run of the eave's overhang where only principal rafters have tails. */
function principalTail(p: Placer): number {
  const tails = p.frame.members.flatMap((m) => (m.kind === "rafter" && m.overhang ? [m.overhang.from] : []));
  return Math.max(0, ...tails.map(inches));
}

/** Meetings again, with timbers as they are after their shoulders are known. */
function rebind(meetings: readonly Meeting[], final: (t: Timber) => Timber): Map<Meeting, Meeting> {
  return new Map(meetings.map((m) => [m, { ...m, a: final(m.a), b: final(m.b) }]));
}

type Seats = ReturnType<typeof seatJoints>;

interface Joined extends Seats {
  readonly shaped: (seat: Seats["seats"][number]) => Shaped;
  /** the timbers with their true ends, by id */
  readonly ended: ReadonlyMap<string, Timber>;
}

/** Chooses the joints of the meetings and learns from them where the timbers end. */
function joined(
  frame: Frame,
  timbers: readonly Timber[],
  meetings: readonly Meeting[],
  metric: boolean,
): Joined {
  const { seats, problems } = seatJoints(frame, meetings);
  const along = seatsAlong(seats);
  const shape = (seat: Seats["seats"][number], rooms: ReadonlyMap<string, LapRoom>): Shaped =>
    shapeJoint(seat, along.get(seat.into.id) ?? [], metric, rooms.get(seat.id));
  const free = seats.map((seat) => shape(seat, new Map()));
  const ends = trueEnds(timbers, free);
  const rooms = lapRooms(free, ends);
  const shaped = (seat: Seats["seats"][number]): Shaped => shape(seat, rooms);
  // a lap that is too long for its place moves the ends back
  const ended = rooms.size === 0 ? ends : trueEnds(timbers, seats.map(shaped));
  return { seats, problems, shaped, ended };
}

/** Meetings of timbers that still touch once they have their true ends. */
function stillMet(meetings: readonly Meeting[], ended: ReadonlyMap<string, Timber>): Meeting[] {
  const solidWith = remembering((t: Timber) => solidOf(ended.get(t.id) ?? t));
  return meetings.filter(({ a, b }) => touch(solidWith(a), solidWith(b)));
}

/**
 * Builds the model of a frame. Never fails: what cannot be placed is left out and said in `problems`.
 */
export function buildModel(frame: Frame): Model {
  const p = new Placer(frame);
  const placed = [...p.members.keys()].flatMap((name) => p.sticks(name));
  const rafters = placeRoofRafters(p);
  const nominal = [...placed, ...rafters.flatMap((r) => r.sticks)];
  const solids = new Map<Timber, Solid>(nominal.map((t) => [t, solidOf(t)]));
  const metric = frame.units === "mm";
  const doubles = findDoubles(nominal, solids);
  const placedMeetings = findMeetings(nominal, solids, doubles);
  const tried = joined(frame, nominal, placedMeetings, metric);
  // as placed, a timber runs through the one it joins; with its true ends it may not reach a third one behind it
  const met = stillMet(placedMeetings, tried.ended);
  const { seats, problems, ended, shaped } =
    met.length < placedMeetings.length ? joined(frame, nominal, met, metric) : tried;
  const endedOf = (t: Timber): Timber => ended.get(t.id) ?? t;
  const meetings = rebind(met, endedOf);
  const joints = seats.map((seat) => {
    const { shaped: _, ...joint } = shaped({
      ...seat,
      of: endedOf(seat.of),
      into: endedOf(seat.into),
      meeting: meetings.get(seat.meeting) ?? seat.meeting,
    });
    return joint;
  });
  const timbers = nominal.map(endedOf);
  const plan = groundPlan(frame, p.grid);
  const piers = placePiers(p, plan, nominal).map((pier) =>
    pier.timber ? { ...pier, timber: endedOf(pier.timber) } : pier,
  );
  const sticks = groupBy(timbers, (t) => t.member);
  // looked at before the placer's problems are read: both report unknown names there
  reportMeasured(
    p,
    rafters.flatMap((r) => r.sticks.map(({ id }) => id)),
  );
  const apart = jointsApart(frame, p, sticks, joints, met, problems);
  return {
    frame,
    timbers,
    byId: new Map(timbers.map((t) => [t.id, t])),
    meetings: [...meetings.values()],
    doubles: new Set([...doubles.keys()].map((t) => t.id)),
    joints,
    nearJoints: nearJoints(timbers, joints),
    piers,
    feet: postFeet(piers, new Set(joints.map(({ id }) => id))),
    roof: roofModel(p, rafters, endedOf),
    ground: plan.ground,
    sticks,
    members: p.members,
    problems: [...namesOf(frame), ...apart, ...p.problems, ...plan.problems, ...problems],
  };
}
