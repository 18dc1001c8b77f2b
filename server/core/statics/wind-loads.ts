/** Wind on a frame: net pressures on its roof planes as loads of rafters, and drag on the timbers in the open. */
import {
  type PlanePressure,
  type RoofPlane,
  type Wind,
  type WindCase,
  type WindDirection,
  windCases,
} from "../loads/wind-cases.ts";
import type { Model, RoofSlope, Timber } from "../model/model.ts";
import { cross, dot, length, scale, unit, type Vec3 } from "../model/vec.ts";
import type { BasicLoad } from "./basic-loads.ts";
import { type LineLoad, ridgeLine, type Strip, squareToSlope } from "./line-loads.ts";

const TOWARD: Readonly<Record<WindDirection, Vec3>> = {
  "+x": [1, 0, 0],
  "-x": [-1, 0, 0],
  "+y": [0, 1, 0],
  "-y": [0, -1, 0],
};

/** Whether a slope rises toward +y, from its eave. */
function risesToPlus(slope: RoofSlope): boolean {
  return slope.plane.normal[1] < 0;
}

interface Reach {
  /** y of the slope's eave edge */
  readonly eave: number;
  /** level run from there to the ridge's middle, or to a shed's upper edge, inches */
  readonly run: number;
}

function reachOf(slope: RoofSlope, middle: number | undefined): Reach {
  const sign = risesToPlus(slope) ? 1 : -1;
  const eave = slope.plane.point[1] - sign * slope.eaveOverhang;
  const tails = slope.rafters.map((r) => r.span * Math.abs(r.axis[1]));
  if (middle !== undefined) return { eave, run: Math.abs(middle - eave) };
  return { eave, run: tails.length > 0 ? Math.max(...tails) : slope.run + slope.eaveOverhang };
}

function planeOf(slope: RoofSlope, middle: number | undefined): RoofPlane {
  return {
    id: slope.wall,
    falls: risesToPlus(slope) ? "-y" : "+y",
    pitch: { rise: slope.slope, run: 1 },
    run: reachOf(slope, middle).run / 12,
  };
}

/** Part of a rafter that a strip of pressure covers: axial positions, or nothing. */
function covered(
  strip: Strip,
  pressure: PlanePressure,
  toward: WindDirection,
  slopes: readonly RoofSlope[],
  middle: number | undefined,
): readonly [number, number] | undefined {
  const { slope, timber } = strip;
  const [low, high] = [pressure.from * 12, pressure.to * 12];
  if (toward === "+x" || toward === "-x") {
    const at = timber.kind === "purlin" ? undefined : timber.origin[0];
    const [a, b] =
      toward === "+x"
        ? [slope.deckFrom + low, slope.deckFrom + high]
        : [slope.deckTo - high, slope.deckTo - low];
    if (at !== undefined) return at >= a - 1e-6 && at < b - 1e-6 ? [0, strip.to] : undefined;
    const [from, to] = [Math.max(0, a - timber.origin[0]), Math.min(timber.span, b - timber.origin[0])];
    return to > from ? [from, to] : undefined;
  }
  const ends = slopes.flatMap((s) => {
    const r = reachOf(s, middle);
    return [r.eave, r.eave + (risesToPlus(s) ? 1 : -1) * r.run];
  });
  const edge = toward === "+y" ? Math.min(...ends) : Math.max(...ends);
  const sign = toward === "+y" ? 1 : -1;
  const [y0, y1] = [edge + sign * low, edge + sign * high].sort((p, q) => p - q) as [number, number];
  if (timber.kind === "purlin")
    return timber.origin[1] >= y0 && timber.origin[1] < y1 ? [0, timber.span] : undefined;
  const per = timber.axis[1];
  const at = [(y0 - timber.origin[1]) / per, (y1 - timber.origin[1]) / per].sort((p, q) => p - q) as [
    number,
    number,
  ];
  const [from, to] = [Math.max(0, at[0]), Math.min(strip.to, at[1])];
  return to - from > 1e-6 ? [from, to] : undefined;
}

function roofWind(
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
        return part ? [squareToSlope(strip, pressure.psf, part[0], part[1])] : [];
      }),
  );
}

/** Timbers under the roof that stand in the wind; plates, rafters and the ridge lie in the lee of the roof itself. */
const IN_THE_OPEN: ReadonlySet<Timber["kind"]> = new Set([
  "post",
  "king-post",
  "strut",
  "brace",
  "tie",
  "girt",
]);

/** Drag on a timber, lb per inch of its length: pressure on the face that it turns to the wind. @param psf of that face */
function drag(timber: Timber, toward: Vec3, psf: number): LineLoad | undefined {
  const side = cross(toward, timber.axis);
  const facing = length(side);
  if (facing < 0.05) return undefined;
  const e = unit(side);
  const breadth =
    timber.width * Math.abs(dot(timber.widthDir, e)) + timber.depth * Math.abs(dot(timber.depthDir, e));
  const force = scale(toward, (psf * breadth * facing) / 144);
  return { timber, from: 0, to: timber.span, startForce: force, endForce: force };
}

/** @returns wind cases as loads at strength level; undefined while the site leaves speed, exposure or flow open */
export function windLoads(
  model: Model,
  strips: readonly Strip[],
): { readonly wind: Wind; readonly loads: readonly BasicLoad[] } | undefined {
  const { site, basis } = model.frame;
  const slopes = model.roof?.slopes ?? [];
  const [first, second] = slopes;
  const { wind: given } = site;
  if (!first || !basis.loads || given?.speed === undefined || !given.exposure || !given.flow)
    return undefined;
  const middle = ridgeLine(model);
  const grounds = model.piers.map((p) => p.groundLow);
  const base = grounds.length > 0 ? Math.min(...grounds) : 0;
  const heights = slopes.map((s) => {
    const { run } = reachOf(s, middle);
    const eaveZ = s.plane.point[2] - s.slope * s.eaveOverhang;
    return eaveZ + (s.slope * run) / 2;
  });
  const wind = windCases({
    edition: basis.loads,
    speed: given.speed,
    exposure: given.exposure,
    planes: second ? [planeOf(first, middle), planeOf(second, middle)] : [planeOf(first, middle)],
    meanHeight: Math.max(1, (heights.reduce((a, b) => a + b, 0) / heights.length - base) / 12),
    length: (first.deckTo - first.deckFrom) / 12,
    enclosure: "open",
    flow: given.flow,
  });
  const loads = wind.cases.map(
    (c): BasicLoad => ({
      id: `W/${c.id}`,
      kind: "W",
      vertical: false,
      loads: [
        ...roofWind(c, strips, slopes, middle),
        ...model.timbers
          .filter((t) => IN_THE_OPEN.has(t.kind))
          .flatMap((t) => drag(t, TOWARD[c.toward], wind.members.value) ?? []),
      ],
    }),
  );
  return { wind, loads };
}
