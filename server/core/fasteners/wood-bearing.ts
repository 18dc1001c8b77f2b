/** Wood that bears on wood in joints: shoulders, housings, the seat of an oblique strut. */
import { hankinson } from "../members/compression.ts";
import type { Sourced } from "../sourced.ts";

export interface BearingStrength {
  /** F_c* , psi, with its factors */
  readonly Fc: number;
  /** F_c⊥′, psi, with its factors */
  readonly FcPerp: number;
}

export interface BearingUse {
  /** psi allowed */
  readonly allowed: Sourced;
  /** in² */
  readonly area: number;
  /** lb */
  readonly capacity: number;
  /** load ÷ capacity */
  readonly ratio: number;
}

/** Bearing stress allowed on a face at an angle to the grain: Hankinson’s formula, NDS 3.10.3. @param angle degrees */
export function bearingAtAngle(strength: BearingStrength, angle: number): Sourced {
  const { Fc, FcPerp } = strength;
  return {
    value: Fc > 0 && FcPerp > 0 ? hankinson(Fc, FcPerp, angle) : 0,
    status: "published",
    source: "Hankinson’s formula, NDS 3.10.3",
  };
}

/**
 * A shoulder that pushes on a face: two timbers, each at its own angle; the weaker governs.
 * @param load lb; @param area in²; @param faces strength and angle (degrees, load to grain) of each timber
 */
export function shoulderBearing(
  load: number,
  area: number,
  faces: readonly (BearingStrength & { readonly angle: number })[],
): BearingUse {
  const values = faces.map((face) => bearingAtAngle(face, face.angle));
  const allowed = values.reduce(
    (low, value) => (value.value < low.value ? value : low),
    values[0] ?? NOTHING,
  );
  return use(load, area, allowed);
}

export interface HousingUse extends BearingUse {
  /** in, of housing that the load asks for */
  readonly depthNeeded: number;
}

/**
 * Level bearing of a timber’s end in a housing: width × depth × F_c⊥′ (NDS 3.10.2; C_b belongs in F_c⊥′).
 * @param load lb; @param width in, of the end; @param depth in, of the housing; @param FcPerp psi, the weaker timber’s
 */
export function housingBearing(load: number, width: number, depth: number, FcPerp: number): HousingUse {
  const allowed: Sourced = { value: FcPerp, status: "published", source: "NDS 3.10.2" };
  const perInch = width * FcPerp;
  return {
    ...use(load, Math.max(0, width) * Math.max(0, depth), allowed),
    depthNeeded: perInch > 0 ? load / perInch : Number.POSITIVE_INFINITY,
  };
}

interface StrutFace {
  /** psi */
  readonly stress: number;
  /** in², of the face */
  readonly area: number;
  /** degrees between its normal and the grain of both timbers */
  readonly angle: number;
  /** psi; the weaker timber */
  readonly allowed: Sourced;
  readonly ratio: number;
}

export interface StrutSeat {
  /** the nose, which halves the angle between the timbers, and the long face square to it */
  readonly nose: StrutFace;
  readonly heel: StrutFace;
  readonly governs: "nose" | "heel";
}

/**
 * An oblique strut seated by two faces square to each other, each under half of its depth, the nose on the bisector:
 * f_1 = (F/A)(1 + cos θ), f_2 = (F/A)(1 − cos θ) (Civil Engineering Formulas 6.18; the same by statics).
 * @param force lb along the strut; @param area in² of the strut; @param angle θ between the timbers, degrees
 * @param timbers strength of the strut and of the timber it stands on
 */
export function strutSeat(
  force: number,
  area: number,
  angle: number,
  timbers: readonly BearingStrength[],
): StrutSeat {
  const half = (angle * Math.PI) / 360;
  const face = (share: number, size: number, toGrain: number): StrutFace => {
    const seat = shoulderBearing(
      force * share,
      size,
      timbers.map((timber) => ({ ...timber, angle: toGrain })),
    );
    return {
      stress: size > 0 ? (force * share) / size : 0,
      area: size,
      angle: toGrain,
      allowed: seat.allowed,
      ratio: seat.ratio,
    };
  };
  const nose = face(Math.cos(half), area / (2 * Math.cos(half)), angle / 2);
  const heel = face(Math.sin(half), half > 0 ? area / (2 * Math.sin(half)) : 0, 90 - angle / 2);
  return { nose, heel, governs: heel.ratio > nose.ratio ? "heel" : "nose" };
}

function use(load: number, area: number, allowed: Sourced): BearingUse {
  const capacity = Math.max(0, area) * Math.max(0, allowed.value);
  return {
    allowed,
    area,
    capacity,
    ratio: load <= 0 ? 0 : capacity > 0 ? load / capacity : Number.POSITIVE_INFINITY,
  };
}

const NOTHING: Sourced = { value: 0, status: "derived", source: "no face bears" };
