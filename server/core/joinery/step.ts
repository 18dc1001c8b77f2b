/**
 * Sections of a step-lap seat, square to the plate. The rafter's underside runs into the plate's top at the crossing and,
 * `seat` inches farther out, over the plate's outside face. On the inner part of that run the rafter stands in a housing of
 * the plate and pushes against the step at its outer end; over the rest its tail laps level over the rim of the plate.
 *
 * `plumb`: the step is plumb and the sole before it level, like a stair. `square`: the sole follows the rafter's underside
 * and the step is square to it.
 *
 * Plane geometry, with θ the slope, h the housing's level run on the plate's top, d its plumb depth:
 * plumb: sole = h − d / tan θ, step = d, notch of the bearing square to the rafter = (h tan θ − d) cos θ;
 * square: d = h sin θ cos θ, sole = h cos θ, step = h sin θ, no notch: the rafter bears on its whole depth.
 */
import type { StepSizes } from "./joint-sizes.ts";
import { downToStep, usual } from "./proportions.ts";

export interface StepInput {
  /** level run of the rafter's underside over the plate, in: from the crossing to the plate's outside face */
  readonly seat: number;
  /** of the slope, radians */
  readonly angle: number;
  readonly form: "plumb" | "square";
  /** plumb depth of the step in the plate, in; undefined = the usual one */
  readonly depth: number | undefined;
  /** across its length, in: a sole ends at the plate's inner face at the latest */
  readonly plateWidth: number;
  readonly metric: boolean;
}

export interface Step extends StepSizes {
  /** plumb depth in the plate, in */
  readonly depth: number;
}

/** Slopes below this have no step: the rafter's underside does not leave the plate's top. */
const FLAT = 1e-6;

const NO_STEP = { depth: 0, housed: 0, abutment: 0, sole: 0, deepest: 0, notch: 0 } as const;

/** A whole eighth of an inch (millimetre) where there is one below. */
function marked(depth: number, metric: boolean): number {
  return downToStep(depth, metric) || depth;
}

/**
 * The housing goes as far in as the tail laps over the plate. The plumb step is half as deep as it could be at most, so that
 * half of that run is left for its level sole (common practice for the equal runs, no source; the rest follows).
 * @returns sizes in inches; all 0 on a flat roof or where the rafter does not reach into the plate
 */
export function stepOf(input: StepInput): Step {
  const { seat, angle, form, depth, plateWidth, metric } = input;
  const sine = Math.sin(angle);
  const cosine = Math.cos(angle);
  const none: Step = { ...NO_STEP, form, lap: Math.max(0, seat), rim: Math.max(0, seat) };
  if (!(seat > 0) || !(sine > FLAT) || !(cosine > FLAT)) return none;
  // as far up the rafter as there is plate under it
  const inner = Math.max(0, seat - plateWidth);
  if (form === "square") {
    const usualDepth = marked((seat / 2) * sine * cosine, metric);
    const housed = Math.min(seat, (depth ?? usualDepth) / (sine * cosine));
    return {
      form,
      depth: housed * sine * cosine,
      housed,
      lap: seat - housed,
      abutment: housed * sine,
      sole: Math.max(0, housed * cosine - inner / cosine),
      rim: seat - housed * cosine ** 2,
      deepest: seat * sine * cosine,
      notch: 0,
    };
  }
  const housed = seat / 2;
  const most = housed * Math.tan(angle);
  const step = Math.min(most, depth ?? marked(most / 2, metric));
  return {
    form,
    depth: step,
    housed,
    lap: seat - housed,
    abutment: step,
    sole: Math.max(0, housed - Math.max(step / Math.tan(angle), inner)),
    rim: seat - housed,
    deepest: most,
    notch: (most - step) * cosine,
  };
}

/**
 * The usual level run over the plate: a lap of 2 in (50 mm) and a housing as long, the tail left with half of the rafter's
 * depth at least (common practice, no source), and no wider than the plate; in steps of 1/4 in, or 5 mm.
 * @param depth of the rafter square to its edges, in; @param angle radians
 */
export function defaultStepLap(depth: number, angle: number, plateWidth: number, metric: boolean): number {
  const step = usual(metric, 1 / 4, 5);
  const sine = Math.sin(angle);
  const tail = sine > FLAT ? depth / 2 / sine : Number.POSITIVE_INFINITY;
  const most = Math.min(usual(metric, 4, 100), tail, plateWidth);
  return Math.max(step, Math.floor(most / step + 1e-9) * step);
}
