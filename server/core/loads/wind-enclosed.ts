/**
 * Pressure coefficients of enclosed and partly enclosed buildings, ASCE 7-16 and 7-22 Figure 27.3-1 (directional
 * procedure), internal pressure (Table 26.13-1) and the enclosure classes (section 26.2). All from memory. Plus presses
 * on the surface from outside, minus pulls at it.
 */
import type { Factor } from "../sourced.ts";
import type { Strip } from "./wind-open.ts";

export type Enclosure = "open" | "partially-open" | "partially-enclosed" | "enclosed";

const FIGURE = "ASCE 7 Figure 27.3-1";

/** One side of a building, or its roof. Areas in ft². */
export interface Side {
  readonly gross: number;
  readonly openings: number;
}

/** ft² */
const SMALL_OPENING = 4;

/** ft² of a wall that count as hardly open. */
export const hardlyOpen = (wall: Side): number => Math.min(SMALL_OPENING, 0.01 * wall.gross);

/** Open over at least 80 percent, as every wall of an open building is (section 26.2). */
export const isOpenWall = (wall: Side): boolean => wall.openings >= 0.8 * wall.gross;

/** A wall that is open by more than the rest of the envelope, and that rest. */
interface Dominant<S extends Side> {
  readonly wall: S;
  readonly others: Side;
}

/** @returns the wall whose openings make the building partially enclosed; undefined where none does */
export function dominantWall<S extends Side>(walls: readonly S[], roof: Side): Dominant<S> | undefined {
  const envelope: readonly Side[] = [...walls, roof];
  for (const wall of walls) {
    const rest = envelope.filter((side) => side !== wall);
    const openings = rest.reduce((sum, side) => sum + side.openings, 0);
    const gross = rest.reduce((sum, side) => sum + side.gross, 0);
    if (wall.openings > 1.1 * openings && wall.openings > hardlyOpen(wall) && openings <= 0.2 * gross)
      return { wall, others: { openings, gross } };
  }
  return undefined;
}

/**
 * The enclosure class, section 26.2: open where every wall is open over at least 80 percent; partially enclosed where the
 * openings of one wall exceed those of the rest of the envelope by more than a tenth and 4 ft² or one percent of that
 * wall, while the rest is open over at most a fifth; enclosed where no wall has more than 4 ft² or one percent open;
 * partially open else (7-16 and later).
 * @param roof counts with the rest of the envelope
 */
export function enclosureOf(walls: readonly Side[], roof: Side): Enclosure {
  if (walls.every(isOpenWall)) return "open";
  if (dominantWall(walls, roof)) return "partially-enclosed";
  return walls.every((wall) => wall.openings <= hardlyOpen(wall)) ? "enclosed" : "partially-open";
}

/** GC_pi, both ways (Table 26.13-1); 0 for an open building. */
export function internalPressure(enclosure: Enclosure): Factor {
  const value = { open: 0, "partially-open": 0.18, "partially-enclosed": 0.55, enclosed: 0.18 }[enclosure];
  return { symbol: "GC_pi", value, status: "memory", source: "ASCE 7 Table 26.13-1", note: enclosure };
}

export interface WallCoefficients {
  readonly windward: Factor;
  readonly leeward: Factor;
  readonly side: Factor;
}

/**
 * C_p of walls: windward +0.8, side −0.7, leeward −0.5 up to L/B = 1, −0.3 at 2, −0.2 from 4.
 * @param depth L, ft, along the wind; @param breadth B, ft, across it
 */
export function wallCoefficients(depth: number, breadth: number): WallCoefficients {
  const factor = (value: number, note: string): Factor => ({
    symbol: "C_p",
    value,
    status: "memory",
    source: FIGURE,
    note,
  });
  return {
    windward: factor(0.8, "windward wall"),
    leeward: factor(interpolate([1, 2, 4], [-0.5, -0.3, -0.2], depth / breadth), "leeward wall"),
    side: factor(-0.7, "side wall"),
  };
}

/** rows of h/L for a wind square to the ridge */
const RATIOS = [0.25, 0.5, 1] as const;
const WINDWARD_ANGLES = [10, 15, 20, 25, 30, 35, 45, 60];
/** Where the figure gives no value of a sign, zero stands in, as its note says for interpolation. */
const WINDWARD_SUCTION = [
  [-0.7, -0.5, -0.3, -0.2, -0.2, 0, 0, 0],
  [-0.9, -0.7, -0.4, -0.3, -0.2, -0.2, 0, 0],
  [-1.3, -1.0, -0.7, -0.5, -0.3, -0.2, 0, 0],
];
const WINDWARD_PRESSURE = [
  [-0.18, 0, 0.2, 0.3, 0.3, 0.4, 0.4, 0.6],
  [-0.18, -0.18, 0, 0.2, 0.2, 0.3, 0.4, 0.6],
  [-0.18, -0.18, -0.18, 0, 0.2, 0.2, 0.3, 0.6],
];
const LEEWARD_ANGLES = [10, 15, 20];
const LEEWARD = [
  [-0.3, -0.5, -0.6],
  [-0.5, -0.5, -0.6],
  [-0.7, -0.6, -0.6],
];

/** From this slope up a wind square to the ridge goes by the slope, below it by the distance from the edge; degrees. */
export const SLOPED_FROM = 10;

/**
 * C_p of the windward slope for a wind square to the ridge, slopes from 10° up: two values, both of which count.
 * @param slope degrees; @param ratio h/L, L along the wind
 */
export function windwardSlope(slope: number, ratio: number): readonly [suction: number, pressure: number] {
  const suction = bilinear(WINDWARD_SUCTION, WINDWARD_ANGLES, slope, ratio);
  if (slope <= 60) return [suction, bilinear(WINDWARD_PRESSURE, WINDWARD_ANGLES, slope, ratio)];
  return [suction, Math.min(0.01 * slope, 0.8)];
}

/** C_p of the leeward slope, slopes from 10° up. */
export function leewardSlope(slope: number, ratio: number): number {
  return bilinear(LEEWARD, LEEWARD_ANGLES, slope, ratio);
}

/** Ends of the strips in mean roof heights, and C_p at h/L up to 0.5 and from 1 up. */
const STRIPS = [
  { to: 0.5, C: [-0.9, -1.3] },
  { to: 1, C: [-0.9, -0.7] },
  { to: 2, C: [-0.5, -0.7] },
  { to: Number.POSITIVE_INFINITY, C: [-0.3, -0.7] },
] as const;
/** the other value of every strip */
const LIGHT_SUCTION = -0.18;

/**
 * C_p by distance from the windward edge: wind along the ridge, or across a roof flatter than 10°. The −1.3 near the edge
 * is not reduced for large areas.
 * @param height h, ft; @param length of the roof along the wind, ft; @param ratio h/L of the building
 */
export function stripCoefficients(
  height: number,
  length: number,
  ratio: number,
): readonly { readonly id: "suction" | "light-suction"; readonly strips: readonly Strip[] }[] {
  const strips = STRIPS.map(({ to, C }, i) => ({
    from: height * (STRIPS[i - 1]?.to ?? 0),
    to: Math.min(height * to, length),
    C: interpolate([0.5, 1], C, ratio),
  })).filter((strip) => strip.to > strip.from);
  return [
    { id: "suction", strips },
    { id: "light-suction", strips: [{ from: 0, to: length, C: LIGHT_SUCTION }] },
  ];
}

function bilinear(
  table: readonly (readonly number[])[],
  angles: readonly number[],
  slope: number,
  ratio: number,
): number {
  return interpolate(
    RATIOS,
    table.map((values) => interpolate(angles, values, slope)),
    ratio,
  );
}

/** Straight between the points, level beyond them. */
function interpolate(xs: readonly number[], ys: readonly number[], x: number): number {
  const above = xs.findIndex((value) => value >= x);
  if (above <= 0) return (above === 0 ? ys[0] : ys.at(-1)) ?? 0;
  const [x0, x1, y0, y1] = [xs[above - 1] ?? 0, xs[above] ?? 0, ys[above - 1] ?? 0, ys[above] ?? 0];
  return y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
}
