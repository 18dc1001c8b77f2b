/**
 * Wind on a frame: net pressures on its roof planes as loads of rafters and purlins, pressures on the sides that are
 * closed, drag on the timbers in the open, and the least wind where nothing else reaches it.
 */

import { elevationFactor } from "../loads/elevation-factor.ts";
import { type Wind, type WindCase, type WindDirection, windCases } from "../loads/wind-cases.ts";
import { gridLines } from "../model/grid.ts";
import type { Model, RoofSlope, Timber } from "../model/model.ts";
import { cross, dot, length, scale, unit, type Vec3 } from "../model/vec.ts";
import { inches } from "../quantity/length.ts";
import { raftersOf } from "../roof/deck-carriers.ts";
import type { BasicLoad } from "./basic-loads.ts";
import { type FrameEnclosure, goesByFlow } from "./enclosure.ts";
import { type LineLoad, type Strip, totalOf } from "./line-loads.ts";
import { overhangWind, planeOf, reachOf, risesToPlus, roofWind } from "./roof-wind.ts";
import { onFace, topOf, type WallFace } from "./wall-faces.ts";

const TOWARD: Readonly<Record<WindDirection, Vec3>> = {
  "+x": [1, 0, 0],
  "-x": [-1, 0, 0],
  "+y": [0, 1, 0],
  "-y": [0, -1, 0],
};

/** Timbers under the roof that stand in the wind; plates, rafters and the ridge lie in the lee of the roof itself. */
const IN_THE_OPEN: ReadonlySet<Timber["kind"]> = new Set([
  "post",
  "king-post",
  "strut",
  "brace",
  "tie",
  "girt",
  "beam",
  "sill",
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

/** Whether the drag on a timber counts besides what the closed sides take. */
function standsInWind(t: Timber, toward: Vec3, { class: kind, openSide, faces }: FrameEnclosure): boolean {
  if (kind === "enclosed") return false;
  const facing = faces.filter((face) => Math.abs(dot(face.outward, toward)) > 0.5);
  const on = facing.filter((face) => t.walls.includes(face.line) || t.bents.includes(face.line));
  if (on.some((face) => face.siding && face.solid === 1)) return false;
  // behind closed sides only what stands in an open one meets the wind
  return (kind !== "partially-enclosed" && openSide) || on.length > 0;
}

interface Faces {
  readonly windward: WallFace | undefined;
  readonly leeward: WallFace | undefined;
  readonly sides: readonly WallFace[];
}

/** The closed sides as a wind meets them. */
function metBy(toward: Vec3, faces: readonly WallFace[]): Faces {
  const closed = faces.filter((face) => face.siding);
  const facing = (sign: -1 | 1) => closed.find((face) => sign * dot(face.outward, toward) > 0.5);
  return {
    windward: facing(-1),
    leeward: facing(1),
    sides: closed.filter((face) => Math.abs(dot(face.outward, toward)) < 0.5),
  };
}

const inward = (face: WallFace): Vec3 => scale(face.outward, -1);

/** Pressures on the closed sides; a case without them leaves the walls to stand alone in the wind, each by itself. */
function wallWind(c: WindCase, wind: Wind, toward: Vec3, met: Faces): LineLoad[] {
  const { windward, leeward, sides } = met;
  const { walls } = c;
  if (!walls)
    return [windward, leeward].flatMap((face) => (face ? onFace(face, wind.loneWall.value, toward) : []));
  return [
    ...(windward ? onFace(windward, walls.windward, inward(windward)) : []),
    ...(leeward ? onFace(leeward, walls.leeward, inward(leeward)) : []),
    ...sides.flatMap((face) => onFace(face, walls.side, inward(face))),
  ];
}

/** Level push on the upright projection of the slopes that the wind meets, or of a gable's end that nothing closes. */
function leastOnRoof(
  psf: number,
  toward: WindDirection,
  strips: readonly Strip[],
  slopes: readonly RoofSlope[],
): LineLoad[] {
  const way = TOWARD[toward];
  if (toward === "+x" || toward === "-x") return [];
  const rising = slopes.filter((s) => risesToPlus(s) === (toward === "+y"));
  // a shed that falls with the wind shows it its back
  const seen = rising.length > 0 ? rising : slopes;
  return strips
    .filter((s) => seen.includes(s.slope))
    .map((s) => {
      const force = scale(way, (psf * s.width * Math.sin(s.slope.angle)) / 144);
      return { timber: s.timber, from: s.from, to: s.to, startForce: force, endForce: force };
    });
}

interface Setting {
  readonly model: Model;
  readonly strips: readonly Strip[];
  readonly slopes: readonly RoofSlope[];
  readonly wind: Wind;
  readonly enclosure: FrameEnclosure;
}

const dragging = ({ model, enclosure, slopes }: Setting, toward: Vec3): readonly Timber[] =>
  model.timbers.filter(
    (t) =>
      (slopes.length === 0 || IN_THE_OPEN.has(t.kind)) &&
      !model.doubles.has(t.id) &&
      standsInWind(t, toward, enclosure),
  );

/**
 * Section 27.1.5: 16 psf on the closed side that the wind meets (else on the one behind) and 8 psf on the upright
 * projection of the roof; on an open building 16 psf on all that the wind sees of it.
 */
function leastLoads(setting: Setting, toward: WindDirection): LineLoad[] {
  const { wind, enclosure, strips, slopes } = setting;
  const { least } = wind;
  const way = TOWARD[toward];
  const { windward, leeward } = metBy(way, enclosure.faces);
  const wall = windward ?? leeward;
  const roof = enclosure.class === "open" ? least.open.value : least.roof.value;
  const seen =
    enclosure.class === "open" && slopes.length > 0
      ? [...dragging(setting, way), ...endRafters(setting, toward)]
      : dragging(setting, way);
  return [
    ...(wall ? onFace(wall, least.walls.value, way) : []),
    ...leastOnRoof(roof, toward, strips, slopes),
    ...seen.flatMap((t) => drag(t, way, least.open.value) ?? []),
  ];
}

/** The rafters whose sides a wind along the ridge meets first. */
function endRafters({ model, slopes }: Setting, toward: WindDirection): readonly Timber[] {
  if (toward === "+y" || toward === "-y") return [];
  const sign = toward === "+x" ? 1 : -1;
  return slopes.flatMap((s) =>
    [...raftersOf(model, s)].sort((p, q) => sign * (p.origin[0] - q.origin[0])).slice(0, 1),
  );
}

/**
 * Rows of which only the first stick meets the wind: rafters under a wind along the ridge, joists of an open floor; what
 * lies behind it is in its lee. Closed sides take the wind off them.
 */
function foremost(setting: Setting, toward: WindDirection): readonly Timber[] {
  const { model, enclosure, slopes } = setting;
  if (enclosure.class !== "open" || slopes.length === 0) return [];
  const way = TOWARD[toward];
  const rows = [...model.sticks.values()].filter(([first]) => first?.kind === "joist");
  const first = rows.flatMap((row) =>
    [...row].sort((p, q) => dot(p.origin, way) - dot(q.origin, way)).slice(0, 1),
  );
  return [...endRafters(setting, toward), ...first];
}

/** The least wind is a case only where no other from its side pushes as hard. */
function leastCases(setting: Setting, loads: readonly (BasicLoad & Blown)[]): BasicLoad[] {
  return (["+x", "-x", "+y", "-y"] as const).flatMap((toward): BasicLoad[] => {
    const push = (all: readonly LineLoad[]) => dot(totalOf(all), TOWARD[toward]);
    const own = leastLoads(setting, toward);
    const most = Math.max(0, ...loads.filter((l) => l.choice.toward === toward).map((l) => push(l.loads)));
    if (push(own) <= most + 1e-6) return [];
    const choice = { toward, figure: "least" };
    return [{ id: `W/${toward}/least`, kind: "W", vertical: false, choice, loads: own }];
  });
}

interface Blown {
  readonly choice: { readonly toward: WindDirection };
}

/** ft above the lowest ground: mean height of the roof, of a bare frame its top. */
function heightOf(model: Model, slopes: readonly RoofSlope[]): number {
  const grounds = model.piers.map((p) => p.groundLow);
  const base = grounds.length > 0 ? Math.min(...grounds) : 0;
  const heights = slopes.map((s) => {
    const { run } = reachOf(s);
    const eaveZ = s.plane.point[2] - s.slope * s.eaveOverhang;
    return eaveZ + (s.slope * run) / 2;
  });
  const mean =
    heights.length > 0
      ? heights.reduce((a, b) => a + b, 0) / heights.length
      : Math.max(base, ...model.timbers.map(topOf));
  return Math.max(1, (mean - base) / 12);
}

/** Whether wind without a known flow can be computed: only a roof that it blows under asks for it. */
function flowOf(model: Model, enclosure: FrameEnclosure): "clear" | "obstructed" | undefined {
  const given = model.frame.site.wind?.flow;
  return model.roof && goesByFlow(enclosure) ? given : (given ?? "obstructed");
}

/** What the wind was computed from, for whoever shows it. */
export interface FrameWind {
  readonly wind: Wind;
  readonly enclosure: FrameEnclosure;
  readonly loads: readonly BasicLoad[];
}

/** @returns wind cases as loads at strength level; undefined while the site leaves speed, exposure or flow open */
export function windLoads(
  model: Model,
  strips: readonly Strip[],
  enclosure: FrameEnclosure,
): FrameWind | undefined {
  const { site, basis } = model.frame;
  const slopes = model.roof?.slopes ?? [];
  const { wind: given } = site;
  // a roof that cannot be placed leaves no bare frame
  if (model.frame.roof && !model.roof) return undefined;
  if (!basis.loads || given?.speed === undefined || !given.exposure || model.timbers.length === 0)
    return undefined;
  const flow = flowOf(model, enclosure);
  if (!flow) return undefined;
  const [first, second] = slopes.map(planeOf);
  const plan = planOf(model);
  const wind = windCases({
    edition: basis.loads,
    speed: given.speed,
    exposure: given.exposure,
    planes: first ? (second ? [first, second] : [first]) : [],
    meanHeight: heightOf(model, slopes),
    length: slopes[0] ? (slopes[0].deckTo - slopes[0].deckFrom) / 12 : 0,
    enclosure: enclosure.class,
    openSide: enclosure.openSide,
    passage: enclosure.passage,
    flow,
    ...(plan && { plan }),
    ...(given.topography === undefined ? {} : { topography: given.topography }),
    ...(site.elevation === undefined
      ? {}
      : { elevation: elevationFactor(inches(site.elevation) / 12).value }),
  });
  const setting: Setting = { model, strips, slopes, wind, enclosure };
  const loads = wind.cases.map((c) => {
    const toward = TOWARD[c.toward];
    const met = metBy(toward, enclosure.faces);
    return {
      id: `W/${c.id}`,
      kind: "W" as const,
      vertical: false,
      choice: { toward: c.toward, figure: c.figure },
      loads: [
        ...roofWind(c, strips, slopes),
        ...overhangWind(c, strips, met.windward),
        ...wallWind(c, wind, toward, met),
        ...[...dragging(setting, toward), ...foremost(setting, c.toward)].flatMap(
          (t) => drag(t, toward, wind.members.value) ?? [],
        ),
      ],
    };
  });
  return { wind, enclosure, loads: [...loads, ...leastCases(setting, loads)] };
}

/** ft between the outside faces of the walls, along the ridge and across it. */
function planOf(model: Model): { readonly along: number; readonly across: number } | undefined {
  const { walls, bents } = gridLines(model.frame);
  const along = ((bents.at(-1)?.at ?? 0) - (bents[0]?.at ?? 0)) / 12;
  const across = ((walls.at(-1)?.at ?? 0) - (walls[0]?.at ?? 0)) / 12;
  return along > 0 && across > 0 ? { along, across } : undefined;
}
