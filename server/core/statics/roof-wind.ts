/** What the wind presses on the slopes of a roof, shared out among the timbers that carry them. */
import type { PlanePressure, RoofPlane, WindCase, WindDirection } from "../loads/wind-cases.ts";
import type { Interval } from "../model/box.ts";
import type { RoofSlope } from "../model/model.ts";
import { common, type LineLoad, type Strip, squareToSlope } from "./line-loads.ts";
import type { WallFace } from "./wall-faces.ts";

/** Whether a slope rises toward +y, from its eave. */
export function risesToPlus(slope: RoofSlope): boolean {
  return slope.plane.normal[1] < 0;
}

interface Reach {
  /** y of the slope's eave edge */
  readonly eave: number;
  /** level run from there to the ridge's middle, or to a shed's upper edge, inches */
  readonly run: number;
}

/** @param middle y of a gable's ridge, undefined for a shed */
export function reachOf(slope: RoofSlope, middle: number | undefined): Reach {
  const sign = risesToPlus(slope) ? 1 : -1;
  const eave = slope.plane.point[1] - sign * slope.eaveOverhang;
  const tails = slope.rafters.map((r) => r.span * Math.abs(r.axis[1]));
  if (middle !== undefined) return { eave, run: Math.abs(middle - eave) };
  return { eave, run: tails.length > 0 ? Math.max(...tails) : slope.run + slope.eaveOverhang };
}

/** A slope as the wind's cases take it. */
export function planeOf(slope: RoofSlope, middle: number | undefined): RoofPlane {
  return {
    id: slope.wall,
    falls: risesToPlus(slope) ? "-y" : "+y",
    pitch: { rise: slope.slope, run: 1 },
    run: reachOf(slope, middle).run / 12,
  };
}

/** Roof that a strip of pressure presses on one timber: width, and axial positions. */
interface Covered {
  readonly width: number;
  readonly from: number;
  readonly to: number;
}

/** Of what a timber carries, the share under a strip of pressure: it may end between two timbers. */
function covered(
  strip: Strip,
  pressure: PlanePressure,
  toward: WindDirection,
  slopes: readonly RoofSlope[],
  middle: number | undefined,
): Covered | undefined {
  const { slope, timber } = strip;
  const isPurlin = timber.kind === "purlin";
  const [low, high] = [pressure.from * 12, pressure.to * 12];
  const of = (width: number, from: number, to: number): Covered | undefined =>
    width > 1e-6 && to - from > 1e-6 ? { width, from, to } : undefined;
  if (toward === "+x" || toward === "-x") {
    const [a, b] =
      toward === "+x"
        ? [slope.deckFrom + low, slope.deckFrom + high]
        : [slope.deckTo - high, slope.deckTo - low];
    if (!isPurlin) return of(common(strip.reach, [a, b]), 0, strip.to);
    return of(strip.width, Math.max(0, a - timber.origin[0]), Math.min(timber.span, b - timber.origin[0]));
  }
  const ends = slopes.flatMap((s) => {
    const r = reachOf(s, middle);
    return [r.eave, r.eave + (risesToPlus(s) ? 1 : -1) * r.run];
  });
  const edge = toward === "+y" ? Math.min(...ends) : Math.max(...ends);
  const sign = toward === "+y" ? 1 : -1;
  const ys = [edge + sign * low, edge + sign * high] as const;
  const between = (place: (y: number) => number): Interval => {
    const [a, b] = ys.map(place) as [number, number];
    return a < b ? [a, b] : [b, a];
  };
  if (isPurlin) {
    const up = (risesToPlus(slope) ? 1 : -1) / Math.cos(slope.angle);
    const reach = between((y) => (y - slope.plane.point[1]) * up);
    return of(common(strip.reach, reach), 0, timber.span);
  }
  const at = between((y) => (y - timber.origin[1]) / timber.axis[1]);
  return of(strip.width, Math.max(0, at[0]), Math.min(strip.to, at[1]));
}

/** Net pressure of a case on every timber that carries roof. */
export function roofWind(
  c: WindCase,
  strips: readonly Strip[],
  slopes: readonly RoofSlope[],
  middle: number | undefined,
): LineLoad[] {
  return c.roof.flatMap((pressure) =>
    strips
      .filter((s) => s.slope.wall === pressure.plane)
      .flatMap((strip) => {
        const part = covered(strip, pressure, c.toward, slopes, middle);
        return part ? [squareToSlope({ ...strip, width: part.width }, pressure.psf, part.from, part.to)] : [];
      }),
  );
}

/** Part of a timber beyond a face that looks along +y or −y, axial positions. */
function beyond(strip: Strip, k: 0 | 1, face: WallFace): readonly [number, number] | undefined {
  const { timber, to } = strip;
  const sign = face.outward[k];
  const [start, per] = [timber.origin[k], timber.axis[k]];
  if (Math.abs(per) < 0.05) return sign * (start - face.at) > 0 ? [0, to] : undefined;
  const cut = Math.min(to, Math.max(0, (face.at - start) / per));
  const part = sign * per > 0 ? ([cut, to] as const) : ([0, cut] as const);
  return part[1] - part[0] > 1e-6 ? part : undefined;
}

/**
 * What the overhang beyond a closed windward side takes instead of its plane's pressure: the wall's pressure from below
 * and no pressure from inside (section 27.3.3). Given as the difference, on what is there already.
 */
export function overhangWind(
  c: WindCase,
  strips: readonly Strip[],
  windward: WallFace | undefined,
): LineLoad[] {
  const { windwardOverhang } = c;
  if (windwardOverhang === undefined || !windward) return [];
  const along = c.toward === "+x" || c.toward === "-x";
  const own = (strip: Strip) => c.roof.find((p) => p.plane === strip.slope.wall)?.psf ?? 0;
  if (!along) {
    return strips.flatMap((strip) => {
      const part = beyond(strip, 1, windward);
      return part ? [squareToSlope(strip, windwardOverhang - own(strip), part[0], part[1])] : [];
    });
  }
  return strips.flatMap((strip) => {
    const change = windwardOverhang - own(strip);
    if (strip.timber.kind === "purlin") {
      const part = beyond(strip, 0, windward);
      return part ? [squareToSlope(strip, change, part[0], part[1])] : [];
    }
    const width = rakeWidth(strip, strips, windward);
    return width > 1e-6 ? [squareToSlope({ ...strip, width }, change)] : [];
  });
}

/** Width of roof beyond an end that one rafter carries: those of a slope share it from edge to edge. */
function rakeWidth({ slope, timber, width }: Strip, strips: readonly Strip[], end: WallFace): number {
  const sign = end.outward[0];
  const rake = sign * ((sign < 0 ? slope.deckFrom : slope.deckTo) - end.at);
  const nearer = strips.filter(
    (s) => s.slope === slope && sign * (s.timber.origin[0] - timber.origin[0]) > 1e-6,
  );
  return Math.min(width, rake - nearer.reduce((sum, s) => sum + s.width, 0));
}
