/** What the wind presses on the slopes of a roof, shared out among the timbers that carry them. */
import { remembering } from "../collect.ts";
import type { PlanePressure, RoofPlane, WindCase, WindDirection } from "../loads/wind-cases.ts";
import type { RoofSlope } from "../model/model.ts";
import { upSlopeAt } from "../roof/deck-carriers.ts";
import { type LineLoad, type Patch, type Strip, squareToSlope, within } from "./line-loads.ts";
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

export function reachOf(slope: RoofSlope): Reach {
  const sign = risesToPlus(slope) ? 1 : -1;
  const eave = slope.plane.point[1] - sign * slope.eaveOverhang;
  return { eave, run: slope.peakRun + slope.eaveOverhang };
}

/** A slope as the wind's cases take it. */
export function planeOf(slope: RoofSlope): RoofPlane {
  return {
    id: slope.wall,
    falls: risesToPlus(slope) ? "-y" : "+y",
    pitch: { rise: slope.slope, run: 1 },
    run: reachOf(slope).run / 12,
  };
}

/** Part of a slope between two places across the walls. @param ys y, in any order */
function between(slope: RoofSlope, ys: readonly [number, number]): Patch {
  const [a, b] = [upSlopeAt(slope, ys[0]), upSlopeAt(slope, ys[1])];
  return { up: a < b ? [a, b] : [b, a] };
}

/** Part of a slope under a strip of pressure: it may end between two timbers. */
function patchOf(
  slope: RoofSlope,
  pressure: PlanePressure,
  toward: WindDirection,
  slopes: readonly RoofSlope[],
): Patch {
  const [low, high] = [pressure.from * 12, pressure.to * 12];
  if (toward === "+x") return { x: [slope.deckFrom + low, slope.deckFrom + high] };
  if (toward === "-x") return { x: [slope.deckTo - high, slope.deckTo - low] };
  const ends = slopes.flatMap((s) => {
    const r = reachOf(s);
    return [r.eave, r.eave + (risesToPlus(s) ? 1 : -1) * r.run];
  });
  const edge = toward === "+y" ? Math.min(...ends) : Math.max(...ends);
  const sign = toward === "+y" ? 1 : -1;
  return between(slope, [edge + sign * low, edge + sign * high]);
}

/** Net pressure of a case on every timber that carries roof. */
export function roofWind(c: WindCase, strips: readonly Strip[], slopes: readonly RoofSlope[]): LineLoad[] {
  return c.roof.flatMap((pressure) => {
    const pressed = remembering((slope: RoofSlope) => patchOf(slope, pressure, c.toward, slopes));
    return strips
      .filter((s) => s.slope.wall === pressure.plane)
      .flatMap((strip) => {
        const part = within(strip, pressed(strip.slope));
        return part ? [squareToSlope(part, pressure.psf)] : [];
      });
  });
}

/** Part of a slope beyond a closed side. */
function beyond(slope: RoofSlope, { outward, at }: WallFace): Patch {
  const far = Number.POSITIVE_INFINITY;
  if (Math.abs(outward[0]) > 0.5) return { x: outward[0] > 0 ? [at, far] : [-far, at] };
  return between(slope, [at, outward[1] > 0 ? far : -far]);
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
  return strips.flatMap((strip) => {
    const part = within(strip, beyond(strip.slope, windward));
    const own = c.roof.find((p) => p.plane === strip.slope.wall)?.psf ?? 0;
    return part ? [squareToSlope(part, windwardOverhang - own)] : [];
  });
}
