/**
 * Every wind case of a gable or shed roof, ready for a frame analysis: net pressure on each roof plane, square to its
 * surface, for wind along +x, −x, +y and −y. ASCE 7-16 and 7-22 chapter 27, directional procedure: free roofs of open
 * buildings by section 27.3.2, others by 27.3.1. A partially open building with an open side takes both, its free roof
 * with the flow obstructed: the ±0.18 of section 27.3.1 alone knows nothing of wind caught under a roof with one wall
 * (common practice); where both sides are open to the wind it passes through, with the flow that the site gives (Figures
 * 27.3-4 to 27.3-7 tell clear from obstructed by what stands under the roof). A bare frame has no roof pressures, only drag.
 *
 * x runs along the ridge, y across it. Plus presses on the top of the roof (or on a wall from outside), minus lifts it.
 * All at strength level: the combinations take 0.6 of it.
 */
import { type Factor, leastCertain, type Sourced, type ValueStatus } from "../sourced.ts";
import { type Edition, editionName, type Pitch, slopeOf, type Terrain } from "./snow-factors.ts";
import { type Drag, type LeastWind, leastWind, loneWall, memberDrag } from "./wind-drag.ts";
import { type Enclosure, internalPressure } from "./wind-enclosed.ts";
import { enclosedAcross, enclosedAlong } from "./wind-enclosed-cases.ts";
import { type Flow, STEEPEST_OPEN } from "./wind-open.ts";
import { openAcross, openAlong } from "./wind-open-cases.ts";
import { exposureCoefficient, gustFactor, type VelocityPressure, velocityPressure } from "./wind-pressure.ts";
import { planeForces } from "./wind-resultant.ts";

/** Where the wind blows to. */
export type WindDirection = "+x" | "-x" | "+y" | "-y";

/** One slope of the roof. */
export interface RoofPlane {
  readonly id: string;
  /** the way it falls, from the ridge or high edge to its eave */
  readonly falls: "+y" | "-y";
  readonly pitch: Pitch;
  /** ft, level, from the eave's edge to the ridge or the high edge, overhangs included */
  readonly run: number;
}

/** For wind along the ridge (x) and across it (y). */
export interface Passage {
  readonly x: boolean;
  readonly y: boolean;
}

export interface WindInput {
  readonly edition: Edition;
  /** V, mph */
  readonly speed: number;
  readonly exposure: Terrain;
  /** a shed has one plane; a gable two, one falling each way; a bare frame none */
  readonly planes: readonly [] | readonly [RoofPlane] | readonly [RoofPlane, RoofPlane];
  /** h, ft: mean height of the roof above the ground, of a bare frame its top; the eave's height serves up to 10° */
  readonly meanHeight: number;
  /** ft, of the roof along the ridge, overhangs included */
  readonly length: number;
  readonly enclosure: Enclosure;
  /** whether some side is an open wall; undefined = so far as is known: wind may be caught under the roof */
  readonly openSide?: boolean;
  /** ways in which the wind passes through between two open sides; undefined = none */
  readonly passage?: Passage;
  /** below an open roof, or where the wind passes through */
  readonly flow: Flow;
  /** ft between the outside faces of the walls, along the ridge and across it; undefined = as large as the roof */
  readonly plan?: { readonly along: number; readonly across: number };
  /** K_zt; undefined = 1 */
  readonly topography?: number;
  /** K_e; undefined = 1 */
  readonly elevation?: number;
}

/** Pressure on a strip of a plane; `from` and `to` in ft, level, from the roof's windward edge. */
export interface PlanePressure {
  readonly plane: string;
  readonly from: number;
  readonly to: number;
  /** psf, square to the surface */
  readonly psf: number;
  /** what it is made with: C_N of an open roof, C_p of one over walls */
  readonly coefficient: number;
}

interface WallPressures {
  /** psf, plus toward the wall from outside, internal pressure included */
  readonly windward: number;
  readonly leeward: number;
  readonly side: number;
}

export interface WindCase {
  /** `+y/A`: direction, then the load case of the figure */
  readonly id: string;
  readonly toward: WindDirection;
  /** load case of the figure, empty where there is only one */
  readonly figure: string;
  /** a row of the figure beside the slope's own stands for it */
  readonly neighbor: boolean;
  readonly roof: readonly PlanePressure[];
  /** undefined for an open building */
  readonly walls: WallPressures | undefined;
  /** psf on the overhang at the windward edge, where wind also pushes from below; undefined: as its plane */
  readonly windwardOverhang: number | undefined;
  /** lb on the whole roof: along the ridge, across it, up; without walls, posts and the extra under the overhang */
  readonly resultant: { readonly x: number; readonly y: number; readonly up: number };
  readonly status: ValueStatus;
  readonly source: string;
}

/** Where the rules do not reach, so that nobody takes the figure for theirs. */
export type WindNote =
  /** h/L outside 0.25 to 1: the figures of open roofs do not hold there, their values are taken all the same */
  | { readonly kind: "height-to-length"; readonly along: "x" | "y"; readonly ratio: number }
  /** steeper than the figures of open roofs, whose last row is taken */
  | { readonly kind: "too-steep"; readonly plane: string; readonly slope: number; readonly limit: number }
  /** the two slopes differ: each took the coefficient of its own */
  | { readonly kind: "unequal-slopes" }
  /** a coefficient changes its sign between two rows of the figure: both rows are cases */
  | { readonly kind: "both-rows"; readonly toward: WindDirection };

export interface Wind {
  /** what it was computed from */
  readonly input: WindInput;
  readonly edition: Edition;
  readonly level: "strength";
  /** what the allowable stress combinations multiply wind by; they do so themselves */
  readonly asdFactor: Sourced;
  /** q_h, psf, at mean roof height */
  readonly velocityPressure: VelocityPressure;
  /** G, GC_pi */
  readonly factors: readonly Factor[];
  readonly cases: readonly WindCase[];
  /** a case of its own, instead of the pressures */
  readonly least: LeastWind;
  /** psf of a wall that stands alone in the wind, front and back together, where a case gives no wall pressures */
  readonly loneWall: Sourced;
  /** psf of the face that posts, braces and ties turn to the wind, in open buildings on top of the roof's pressures */
  readonly members: Drag;
  readonly notes: readonly WindNote[];
}

/** What a figure gives for one direction: a case before its forces are summed. */
export interface Pressures {
  readonly id: string;
  readonly neighbor?: boolean;
  readonly roof: readonly PlanePressure[];
  readonly walls?: WallPressures;
  readonly windwardOverhang?: number;
  readonly status: ValueStatus;
  readonly source: string;
}

/** What the figures need to know of a direction. Pressures follow by `psf`: C → q (K_d) G C. */
export interface Blowing {
  readonly input: WindInput;
  readonly toward: WindDirection;
  /** planes in the order in which the wind meets them; for wind along the ridge the order of the input */
  readonly planes: readonly RoofPlane[];
  /** L, ft, of the roof along the wind */
  readonly length: number;
  readonly psf: (coefficient: number) => number;
  /** psf of one unit of GC_pi */
  readonly internal: number;
}

/** Gable or shed, in any wind. @returns strength-level cases; all zero for a speed of zero */
export function windCases(input: WindInput): Wind {
  const { edition, exposure, meanHeight } = input;
  const q = velocityPressure({
    edition,
    speed: input.speed,
    Kz: exposureCoefficient(edition, exposure, meanHeight),
    ...(input.topography === undefined ? {} : { topography: input.topography }),
    ...(input.elevation === undefined ? {} : { elevation: input.elevation }),
  });
  const G = gustFactor(edition);
  const GCpi = internalPressure(input.enclosure);
  const width = input.planes.reduce((sum, plane) => sum + plane.run, 0);
  const open = input.enclosure === "open";
  const free = input.planes.length > 0 && (open || isCaughtUnder(input));
  const cases = (["+x", "-x", "+y", "-y"] as const).flatMap((toward): readonly WindCase[] => {
    const along = toward === "+x" || toward === "-x";
    const blowing: Blowing = {
      input,
      toward,
      planes: along ? input.planes : met(input.planes, toward),
      length: along ? input.length : width,
      psf: (coefficient) => q.value * q.direction * G.value * coefficient,
      internal: q.value * q.direction * GCpi.value,
    };
    const found = pressuresOf(blowing, along);
    return found.map((pressures) => finish(pressures, blowing, leastCertain([q.status, G.status])));
  });
  return {
    input,
    edition,
    level: "strength",
    asdFactor: { value: 0.6, status: "published", source: `${editionName(edition)} section 2.4.1` },
    velocityPressure: q,
    factors: open ? [G] : [G, GCpi],
    cases,
    least: leastWind(edition),
    loneWall: loneWall(edition, q),
    members: memberDrag(edition, q),
    notes: free ? openNotes(input, width, cases) : unequal(input),
  };
}

/** Neither open nor closed, and one side lets all of the wind in under the roof. */
const isCaughtUnder = ({ enclosure, openSide }: WindInput): boolean =>
  enclosure === "partially-open" && openSide !== false;

/** By the enclosure: of a free roof, of one over walls, or of both. */
function pressuresOf(blowing: Blowing, along: boolean): readonly Pressures[] {
  const { enclosure, edition, planes, passage, flow } = blowing.input;
  if (planes.length === 0)
    return [{ id: "", roof: [], status: "memory", source: `${editionName(edition)} section 29.4` }];
  const free = (under: Blowing) => (along ? openAlong : openAcross)(under);
  if (enclosure === "open") return free(blowing);
  const walled = (along ? enclosedAlong : enclosedAcross)(blowing);
  if (!isCaughtUnder(blowing.input)) return walled;
  // between two open sides the wind flows as the site says; where it is caught it finds no way out
  const through = along ? passage?.x : passage?.y;
  return [
    ...walled,
    ...free({ ...blowing, input: { ...blowing.input, flow: through ? flow : "obstructed" } }),
  ];
}

/** A plane that falls against the wind is met first. */
function met(planes: readonly RoofPlane[], toward: WindDirection): readonly RoofPlane[] {
  return [...planes.filter((p) => p.falls !== toward), ...planes.filter((p) => p.falls === toward)];
}

function finish(pressures: Pressures, blowing: Blowing, status: ValueStatus): WindCase {
  const { input, toward } = blowing;
  const along = toward === "+x" || toward === "-x";
  let [y, up] = [0, 0];
  for (const { plane: id, from, to, psf } of pressures.roof) {
    const plane = input.planes.find((p) => p.id === id);
    if (!plane) continue;
    const area = (to - from) * (along ? plane.run : input.length);
    const { down, sideways } = planeForces(psf, plane.pitch, area);
    up -= down;
    // Pressure pushes a plane away from its eave.
    y += plane.falls === "+y" ? -sideways : sideways;
  }
  return {
    id: pressures.id === "" ? toward : `${toward}/${pressures.id}`,
    toward,
    figure: pressures.id,
    neighbor: pressures.neighbor ?? false,
    roof: pressures.roof,
    walls: pressures.walls,
    windwardOverhang: pressures.windwardOverhang,
    resultant: { x: 0, y, up },
    status: leastCertain([status, pressures.status]),
    source: pressures.source,
  };
}

/** Open roofs: 0.25 ≤ h/L ≤ 1 (published for the pitched figure), slopes up to 45°. */
function openNotes(input: WindInput, width: number, cases: readonly WindCase[]): readonly WindNote[] {
  const ratios = [
    { along: "x", ratio: input.meanHeight / input.length },
    { along: "y", ratio: input.meanHeight / width },
  ] as const;
  const rows = (["+y", "-y"] as const).filter((toward) =>
    cases.some((c) => c.toward === toward && c.neighbor),
  );
  return [
    ...ratios
      .filter(({ ratio }) => ratio < 0.25 || ratio > 1)
      .map((found) => ({ kind: "height-to-length", ...found }) as const),
    ...input.planes
      .map((plane) => ({ plane: plane.id, slope: slopeOf(plane.pitch) }))
      .filter(({ slope }) => slope > STEEPEST_OPEN + 1e-9)
      .map((found) => ({ kind: "too-steep", limit: STEEPEST_OPEN, ...found }) as const),
    ...unequal(input),
    ...rows.map((toward) => ({ kind: "both-rows", toward }) as const),
  ];
}

function unequal({ planes: [first, second] }: WindInput): readonly WindNote[] {
  const differ = first && second && Math.abs(slopeOf(first.pitch) - slopeOf(second.pitch)) > 0.01;
  return differ ? [{ kind: "unequal-slopes" }] : [];
}
