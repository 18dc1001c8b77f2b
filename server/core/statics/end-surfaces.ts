/**
 * The surfaces on which a timber's joined end presses: its shoulder, the floor of its housing, pocket or lap together with
 * the edge of its tenon, the toe of a leaning end. Sizes are those to which the joint is cut: both the floor and the edge
 * are cut to bear (common practice), the socket of a dovetail behind a housing is cut deeper and does not.
 */
import type { JointKindName } from "../frame/frame.ts";
import { halfOnFace } from "../joinery/end-breadth.ts";
import type { Joint } from "../joinery/joint.ts";
import { rise } from "../joinery/seat.ts";
import { isUpright } from "../model/upright.ts";
import { add, dot, scale, unit, type Vec3 } from "../model/vec.ts";
import type { Note } from "../note.ts";

/** A size by which a bearing grows when it is cut larger. */
export interface Growth {
  readonly size: "housing" | "seat";
  /** in² for each inch of it */
  readonly breadth: number;
  /** what it is now, in */
  readonly now: number;
}

/** What one end presses, and which way. */
export interface EndSurface {
  /** the way it presses into the receiving timber, a unit vector */
  readonly toward: Vec3;
  /** it bears the other way just as well: a tenon in a mortise closed on both sides */
  readonly bothWays: boolean;
  /** in² */
  readonly area: number;
  /** along the grain of the joined and of the receiving timber, in */
  readonly lengthOf: number;
  readonly lengthInto: number;
  /** wood of the joined timber past the bearing, in */
  readonly pastOf: number;
  readonly note: Note;
  /** undefined where no size of the joint makes it larger */
  readonly growth: Growth | undefined;
}

/** Directions that lean less than this (as a sine) count as square. */
const SQUARE = 0.1;
/** A direction of a face steeper than this (as a sine) goes up and down. */
const STEEP = 0.7;

const overlap = (half: number, [low, high]: readonly [number, number]): number =>
  Math.max(0, Math.min(half, high) - Math.max(-half, low));

/** Kinds whose bearing no housing makes larger. */
const UNHOUSED: ReadonlySet<JointKindName> = new Set(["corner-half-lap", "corner-bridle", "dovetail-lap"]);
/** Kinds whose mortise is closed on all sides. */
const CLOSED: ReadonlySet<JointKindName> = new Set(["mortise-and-tenon", "stub-tenon"]);

/** How far the end lies in or on the receiving timber: a housing, the bearing of a pocket, the length of a corner's lap. */
function reachOf({ kind, sizes, face }: Joint): number {
  const reach = kind === "corner-half-lap" ? sizes.lap?.length.value : sizes.housing.value;
  return Math.min(reach ?? 0, face.thickness);
}

const length = (value: number) => ({ value, unit: "in" }) as const;

/** How an edge came about: the housing's part of it, the tenon's, or both. */
function edgeNote(
  what: "floor" | "toe",
  breadth: number,
  reach: number,
  tenon: readonly [number, number] | undefined,
): Note {
  const housing = { breadth: length(breadth), deep: length(reach) };
  const edge = tenon && { thick: length(tenon[0]), long: length(tenon[1]) };
  if (edge && reach > 0)
    return {
      text:
        what === "floor"
          ? "floor of the housing, {breadth} × {deep}, and edge of the tenon, {thick} × {long}"
          : "toe in the housing, {breadth} × {deep}, and of the tenon, {thick} × {long}",
      parts: { ...housing, ...edge },
    };
  if (edge)
    return {
      text: what === "floor" ? "edge of the tenon, {thick} × {long}" : "toe of the tenon, {thick} × {long}",
      parts: edge,
    };
  return {
    text:
      what === "floor"
        ? "floor that it lies on, {breadth} × {deep}"
        : "toe in the housing, {breadth} × {deep}",
    parts: housing,
  };
}

/** The edge on which an end bears along or across the receiving grain: of its housing, and of its tenon or dovetail. */
function edgeSurface(
  joint: Joint,
  what: "floor" | "toe",
  toward: Vec3,
  alongGrain: boolean,
  along: number,
  across: number,
): EndSurface {
  const { sizes, face, kind } = joint;
  const { tenon, dovetail } = sizes;
  const reach = reachOf(joint);
  const breadth = alongGrain ? across : along;
  const inside = Math.max(0, face.thickness - reach);
  const behind = tenon
    ? ([
        alongGrain ? tenon.thickness.value : tenon.width.value,
        Math.min(tenon.length.value, inside),
      ] as const)
    : dovetail && reach === 0
      ? ([(dovetail.neck + dovetail.tip) / 2, Math.min(dovetail.length.value, inside)] as const)
      : undefined;
  return {
    toward,
    bothWays: CLOSED.has(kind),
    area: breadth * reach + (behind ? behind[0] * behind[1] : 0),
    lengthOf: reach + (behind?.[1] ?? 0),
    lengthInto: along,
    pastOf: tenon ? Math.max(0, tenon.length.value - inside) : 0,
    note: edgeNote(what, breadth, reach, behind),
    growth: UNHOUSED.has(kind) ? undefined : { size: "housing", breadth, now: reach },
  };
}

const DOWN: Vec3 = [0, 0, -1];

/** The level seat of a bird's mouth, which takes what comes straight down. */
function seatSurface({ of, sizes }: Joint): EndSurface[] {
  const level = sizes.seat?.level.value ?? 0;
  return [
    {
      toward: DOWN,
      bothWays: false,
      area: level * of.width,
      lengthOf: level,
      lengthInto: of.width,
      pastOf: 0,
      note: "level seat",
      growth: { size: "seat", breadth: of.width, now: level },
    },
  ];
}

/**
 * Sole and step of a step-lap seat, square to each other. The level lap over the rim is not counted: wood that shrinks
 * leaves it hollow (on the safe side).
 */
function stepSurfaces({ of, entry, sizes }: Joint): EndSurface[] {
  const { step, seat, housing } = sizes;
  if (!step || !seat || !(step.abutment > 0)) return [];
  const { uphill } = rise(of);
  const slant = step.form === "square" ? (seat.angle * Math.PI) / 180 : 0;
  const toward = (out: number, down: number): Vec3 => add(scale(uphill, -out), scale(DOWN, down));
  const one = { bothWays: false, lengthInto: of.width, pastOf: 0 } as const;
  return [
    {
      ...one,
      toward: toward(-Math.sin(slant), Math.cos(slant)),
      area: step.sole * of.width,
      lengthOf: step.sole,
      note: {
        text: "sole before the step, {long} × {width}",
        parts: { long: length(step.sole), width: length(of.width) },
      },
      // the roof's own seat says how long it is; elsewhere the timbers' places do
      growth: entry
        ? undefined
        : { size: "seat", breadth: (of.width * step.sole) / seat.level.value, now: seat.level.value },
    },
    {
      ...one,
      toward: toward(Math.cos(slant), Math.sin(slant)),
      area: step.abutment * of.width,
      lengthOf: 0,
      note: {
        text: "abutment of the step, {width} × {long}",
        parts: { width: length(of.width), long: length(step.abutment) },
      },
      growth: {
        size: "housing",
        breadth: (of.width * step.abutment) / housing.value,
        now: housing.value,
      },
    },
  ];
}

/** @returns the surface of a step-lap seat that takes the thrust */
export function abutmentOf(joint: Joint): EndSurface | undefined {
  return stepSurfaces(joint)[1];
}

/**
 * Abutment and sole of a stepped heel. They are not square to each other, so that together they are asked for somewhat more
 * than the whole force: on the safe side.
 */
function heelSurfaces({ face, sizes }: Joint): EndSurface[] {
  const { heel, tenon, housing } = sizes;
  if (!heel || !(heel.abutment > 0) || !(heel.sole > 0)) return [];
  const step = housing.value;
  const back = Math.sqrt(Math.max(0, heel.abutment ** 2 - step ** 2));
  const run = Math.sqrt(Math.max(0, heel.sole ** 2 - step ** 2));
  const toe = Math.sign(heel.bottom - (tenon?.center[0] ?? 0)) || 1;
  const toward = (inward: number, along: number): Vec3 =>
    unit(add(scale(face.inward, inward), scale(face.grain, toe * along)));
  const one = { bothWays: false, lengthOf: 0, pastOf: 0 } as const;
  return [
    {
      ...one,
      toward: toward(back, step),
      area: heel.abutment * heel.width,
      lengthInto: back,
      note: {
        text: "abutment of the step, {width} × {long}",
        parts: { width: length(heel.width), long: length(heel.abutment) },
      },
      growth: { size: "housing", breadth: (heel.width * heel.abutment) / Math.max(step, 1e-6), now: step },
    },
    {
      ...one,
      toward: toward(run, -step),
      area: heel.sole * (heel.width - (tenon?.thickness.value ?? 0)),
      lengthInto: run,
      note: "sole behind the step without the tenon",
      growth: undefined,
    },
  ];
}

/** @returns the surfaces of a joint that carry load; none of a scarf, nor where timbers only cross */
export function bearingSurfaces(joint: Joint): EndSurface[] {
  const { of, end, face, sizes, kind } = joint;
  if (kind === "birds-mouth") return seatSurface(joint);
  if (kind === "step-lap") return stepSurfaces(joint);
  if (kind === "rafter-heel") return heelSurfaces(joint);
  const slant = dot(of.axis, face.inward);
  if (end === "side" || Math.abs(slant) < SQUARE) return [];
  const along = overlap(halfOnFace(of, face.inward, face.grain), face.ends);
  const across = overlap(halfOnFace(of, face.inward, face.across), face.edges);
  const { tenon, dovetail } = sizes;
  const root = tenon
    ? tenon.thickness.value * tenon.width.value
    : dovetail
      ? dovetail.neck * dovetail.depth.value
      : 0;
  const surfaces: EndSurface[] = [];
  if (kind !== "corner-half-lap")
    surfaces.push({
      toward: face.inward,
      bothWays: false,
      area: along * across - root,
      lengthOf: 0,
      lengthInto: along,
      pastOf: 0,
      note: root > 0 ? "shoulder without the tenon" : "the whole end",
      growth: undefined,
    });
  const out = end === "head" ? of.axis : scale(of.axis, -1);
  const lean = dot(out, face.grain);
  const down = (axis: Vec3): Vec3 => scale(axis, axis[2] > 0 ? -1 : 1);
  if (Math.abs(lean) > SQUARE)
    surfaces.push(edgeSurface(joint, "toe", scale(face.grain, Math.sign(lean)), true, along, across));
  else if (!isUpright(of) && Math.abs(face.grain[2]) > STEEP)
    surfaces.push(edgeSurface(joint, "floor", down(face.grain), true, along, across));
  if (!isUpright(of) && Math.abs(face.across[2]) > STEEP)
    surfaces.push(edgeSurface(joint, "floor", down(face.across), false, along, across));
  return surfaces.filter((s) => s.area > 1e-6);
}

/**
 * The floor of the housing under a lying timber's end, without what its tenon bears.
 * @returns in²; 0 where there is none
 */
export function housingFloor(joint: Joint): number {
  const { of, end, face, sizes } = joint;
  if (end === "side" || Math.abs(dot(of.axis, face.inward)) < SQUARE) return 0;
  const upright = Math.abs(face.grain[2]) > STEEP;
  const breadth = upright
    ? overlap(halfOnFace(of, face.inward, face.across), face.edges)
    : overlap(halfOnFace(of, face.inward, face.grain), face.ends);
  return breadth * Math.min(sizes.housing.value, face.thickness);
}
