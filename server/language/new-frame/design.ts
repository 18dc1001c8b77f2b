/** What is proposed for the answers, in inches; `frame-text.ts` writes it, `remedies.ts` changes it until it passes. */
import type { Units } from "../../core/frame/frame.ts";
import type { Answers } from "./answers.ts";

/** Width and depth, inches. */
export type Sides = readonly [number, number];

export interface Pegs {
  readonly count: number;
  /** inches */
  readonly diameter: number;
}

export interface Screws {
  readonly count: number;
  /** inches */
  readonly length: number;
}

/** Timbers that are as wide as the frame's posts, so that their outer faces and tenons line up. */
export type Lying = "plate" | "low-plate" | "high-plate" | "tie" | "ridge";
export type Brace = "knee" | "tie-knee" | "ridge-knee";
export type JointName =
  | "post-head"
  | "tie-end"
  | "king-foot"
  | "king-head"
  | "knee-ends"
  | "tie-knee-ends"
  | "ridge-knee-ends";

/** A tube of that diameter and depth on a footing, inches. */
export interface Pier {
  readonly diameter: number;
  readonly depth: number;
  /** diameter of the footing */
  readonly footing: number;
}

/** Everything that a finding may ask to be changed. Lengths in inches. */
export interface Design {
  /** width of posts, and of the timbers that join them */
  readonly gauge: number;
  readonly depths: Readonly<Record<Lying, number>>;
  /** the ridge is thinner than the posts */
  readonly ridgeWidth: number;
  readonly braces: Readonly<Record<Brace, Sides>>;
  readonly legs: Readonly<Record<Brace, number>>;
  readonly housings: Readonly<Record<Brace, number>>;
  readonly pegs: Readonly<Record<JointName, Pegs>>;
  readonly rafter: Sides;
  /** the most between two rafters */
  readonly rafterSpacing: number;
  readonly screws: { readonly seat: Screws; readonly head: Screws };
  readonly pier: Pier;
  /** roof past the end bents' outer faces */
  readonly rake: number;
}

/** Rise in 12: boards and standing seam shed water on both (common practice, no source). */
export const PITCH = { gable: 7, shed: 3 } as const;
/** Below the plate's top the tie's top: room for the post's own tenon and its pegs above the tie's joint. */
export const TIE_DROP = 20;
/** Past the end bents' outer faces, inches: less where plate and ridge then fit the mill. Common practice, no source. */
export const RAKES = [12, 6, 0] as const;
/** How much wider a footing is than the tube on it, and how thick, at least. Common practice, no source. */
export const FOOTING_WIDER = 8;
const FOOTING_THICK = 12;

/** @returns how thick a footing is: never less than it reaches past its tube (IRC R403.1.1), inches */
export function footingThickness({ diameter, footing }: Pier): number {
  return Math.max(FOOTING_THICK, Math.ceil((footing - diameter) / 2));
}

const MM = 25.4;
/** As for the fewest that a proposal starts from: what holds an ordinary frame. Common practice, no source. */
const TUBE = 18;
const LEAST_DEPTH = 48;
/** Below the frost line, inches. */
const BELOW_FROST = 6;

/** @returns the next usual side that is not smaller: whole inches, or steps of 25 mm in a millimetre file */
export function usualSide(inches: number, units: Units): number {
  return units === "inch" ? Math.ceil(inches - 1e-6) : (Math.ceil((inches * MM) / 25 - 0.2) * 25) / MM;
}

/** @returns the step from one usual side to the next, inches */
export function sideStep(units: Units): number {
  return units === "inch" ? 1 : 25 / MM;
}

/** The deepest that is proposed, inches, and of a timber's depth to its width. Common practice, no source. */
export const MOST_DEEP = 16;
export const MOST_SLENDER = 2;

/** @returns the deepest timber of a width that may be proposed and that comes square out of the log, inches */
export function deepest(width: number, { mill, units }: Answers): number {
  const log = mill?.log;
  const round = log === undefined ? Number.POSITIVE_INFINITY : Math.sqrt(Math.max(0, log ** 2 - width ** 2));
  const most = Math.min(MOST_DEEP, width * MOST_SLENDER, round);
  return usualSide(most - sideStep(units) + 1e-3, units);
}

/** Posts of ordinary frames; thinner where the log gives no square of that size. */
function firstGauge(answers: Answers): number {
  const { units } = answers;
  let gauge = usualSide(8, units);
  while (gauge > usualSide(5, units) && deepest(gauge, answers) < gauge - 1e-6) gauge -= sideStep(units);
  return gauge;
}

/** @returns the longest leg of knees that leaves a third of the span, and of the height below, free */
export function longestLeg(answers: Answers, brace: Brace): number {
  const bay = answers.length / answers.bays;
  const clear = answers.eave - TIE_DROP;
  switch (brace) {
    case "knee":
      return Math.min(48, Math.floor(bay * 0.36), Math.floor(answers.eave * 0.45));
    case "tie-knee":
      return Math.min(54, Math.floor(answers.width * 0.3), Math.floor(clear * 0.55));
    case "ridge-knee":
      return Math.min(36, Math.floor(bay * 0.36), Math.floor(answers.width * 0.2));
  }
}

/** The shortest of knees that have only the room above a tie, inches. Common practice, no source. */
const LEAST_HIGH_LEG = 15;
/** Over the tie's joint in a post, for its drop and slope and a wall of wood, and under it, for a wall; inches. */
const CLEAR = { above: 3, below: 1 } as const;

/**
 * Leg of the knees under a shed's high plate: that of the low ones, unless its foot would come into the tie's joint. The tie
 * is level, and on a flat roof the high plate lies little above the low one: there the foot goes below the tie where the
 * bay allows a leg of that length, else above it.
 * @returns inches
 */
export function highKneeLeg(answers: Answers, { depths, legs, braces }: Design): number {
  const rise = (answers.width * answers.pitch.rise) / 12;
  // down from the underside of the high plate
  const tieTop = TIE_DROP + rise - depths["high-plate"];
  const above = Math.floor(tieTop - CLEAR.above);
  const below = Math.ceil(tieTop + depths.tie + braces.knee[1] * Math.SQRT2 + CLEAR.below);
  if (legs.knee <= above || legs.knee >= below) return legs.knee;
  return below <= longestLeg(answers, "knee") ? below : Math.max(LEAST_HIGH_LEG, above);
}

/** The first proposal: what an ordinary frame of these answers has. */
export function firstDesign(answers: Answers): Design {
  const { units, width, roof } = answers;
  const side = (inches: number): number => usualSide(inches, units);
  const gauge = firstGauge(answers);
  const deep = (inches: number, wide = gauge): number => Math.min(side(inches), deepest(wide, answers));
  const ridgeWidth = Math.min(side(6), gauge);
  const load = (answers.snow?.value ?? 0) * 0.84 + 12;
  const span = roof === "gable" ? width / 2 : width;
  const peg = (count: number, diameter = 0.75): Pegs => ({ count, diameter });
  const brace: Sides = [side(4), side(6)];
  return {
    gauge,
    depths: {
      plate: deep(9),
      "low-plate": deep(9),
      "high-plate": deep(9),
      tie: roof === "gable" ? deep(Math.min(14, Math.max(10, width / 14))) : deep(10),
      ridge: deep(9, ridgeWidth),
    },
    ridgeWidth,
    braces: { knee: brace, "tie-knee": [side(5), side(7)], "ridge-knee": brace },
    legs: {
      knee: Math.min(36, longestLeg(answers, "knee")),
      "tie-knee": Math.min(36, longestLeg(answers, "tie-knee")),
      "ridge-knee": Math.min(24, longestLeg(answers, "ridge-knee")),
    },
    housings: { knee: 0.5, "tie-knee": 0.5, "ridge-knee": 0.5 },
    pegs: {
      "post-head": peg(2, 0.875),
      "tie-end": peg(3, 0.875),
      "king-foot": peg(2),
      "king-head": peg(2),
      "knee-ends": peg(1),
      "tie-knee-ends": peg(1),
      "ridge-knee-ends": peg(1),
    },
    rafter: [side(3), side(rafterDepth(span, load))],
    rafterSpacing: 30,
    screws: { seat: { count: 2, length: 10 }, head: { count: 2, length: 10 } },
    pier: {
      diameter: TUBE,
      depth: Math.max(LEAST_DEPTH, (answers.frost ?? 0) + BELOW_FROST),
      footing: TUBE + FOOTING_WIDER,
    },
    rake: RAKES[0],
  };
}

/** A first guess from bending at 700 psi in a 3 in rafter at 30 in; the checks then tell. */
function rafterDepth(span: number, load: number): number {
  const moment = (((load * 2.5) / 12) * span ** 2) / 8;
  return Math.min(12, Math.max(6, Math.sqrt((moment * 6) / (3 * 700))));
}
