/** Ridge, the roof's own rafters, principal rafters and purlins: everything that takes its place from the roof planes. */
import type { Member, Pointer, Ref } from "../frame/frame.ts";
import { meetAtPeak } from "../frame/roof.ts";
import { inches, NO_LENGTH } from "../quantity/length.ts";
import { baseOf, boxTimber, type Interval, lengthOf, type StickBase } from "./box.ts";
import { referenceSign, spanAcross } from "./grid.ts";
import type { EndPlane, Timber } from "./model.ts";
import type { Placer } from "./placer.ts";
import { type RoofPlanes, roofLacks, type SlopePlane, topsideAt, undersideAt } from "./roof-planes.ts";
import { positions } from "./series.ts";
import { solidOf } from "./solid.ts";
import { along, cross, scale, type Vec3 } from "./vec.ts";

/** Depth of the ridge's housing for a rafter's head when the file names none (inches). */
export const DEFAULT_HEAD_HOUSING = 1 / 2;

/** Says what the roof's planes lack, unless something else says it; nothing is placed. */
function withoutPlanes(p: Placer, path: Pointer, name: string): [] {
  const needs = roofLacks(p);
  if (needs.length > 0) p.missing(path, name, needs);
  return [];
}

/** Ridge: midway between the plates' outside faces, its top edges touching the tops of the rafters. */
export function placeRidge(p: Placer, member: Member): Timber[] {
  const timberClass = p.classOf(member.timber, member.kind);
  const section = p.section(member.section, member.turned, timberClass);
  const from = member.from ? p.line(member.from, "bent") : p.grid.bents[0];
  const to = member.to ? p.line(member.to, "bent") : p.grid.bents.at(-1);
  if (!section || !from || !to) return [];
  const planes = p.roof();
  const slope = planes?.slopes[0];
  if (!planes || !slope || planes.ridgeY === undefined) return withoutPlanes(p, member.path, member.name);
  const half = section.width / 2;
  const top = topsideAt(slope, Math.abs(planes.ridgeY - slope.outside) - half);
  const over = member.overhang;
  return [
    boxTimber(
      baseOf(member, timberClass),
      {
        id: member.name,
        rule: "ridge-midway",
        reference: { width: -1, depth: 1 },
        walls: [],
        bents: p.grid.bents.filter((b) => b.at >= from.at && b.at <= to.at).map((b) => b.id),
      },
      "x",
      [from.at - (over ? inches(over.from) : 0), to.at + (over ? inches(over.to) : 0)],
      [planes.ridgeY - half, planes.ridgeY + half],
      [top - section.depth, top],
    ),
  ];
}

interface SlopeStick {
  readonly base: StickBase;
  readonly id: string;
  readonly rule: Timber["rule"];
  readonly plane: SlopePlane;
  readonly x: Interval;
  readonly bents: readonly string[];
  /** runs, level, from the plate's outside face: tail and head */
  readonly run: Interval;
  /** ends other than plumb */
  readonly foot?: EndPlane;
  readonly head?: EndPlane;
  readonly width: number;
  readonly depth: number;
  readonly reference: Timber["reference"];
}

/** A timber that lies up the slope, its underside on the line of the seats, plumb cut at both ends unless told. */
function slopeTimber(s: SlopeStick): Timber {
  const { plane } = s;
  const inward: Vec3 = [0, plane.inward, 0];
  const axis: Vec3 = [0, plane.inward * Math.cos(plane.angle), Math.sin(plane.angle)];
  const depthDir: Vec3 = [0, -plane.inward * Math.sin(plane.angle), Math.cos(plane.angle)];
  const widthDir = cross(depthDir, axis);
  const centerX = (s.x[0] + s.x[1]) / 2;
  const at = (run: number): Vec3 => [
    centerX,
    plane.outside + plane.inward * run,
    undersideAt(plane, run) + s.depth / 2 / Math.cos(plane.angle),
  ];
  const origin = at(s.run[0]);
  return {
    ...s.base,
    id: s.id,
    rule: s.rule,
    reference: s.reference,
    walls: [plane.wall],
    bents: s.bents,
    width: s.width,
    depth: s.depth,
    origin,
    axis,
    widthDir,
    depthDir,
    span: lengthOf(s.run) / Math.cos(plane.angle),
    length: lengthOf(s.run) / Math.cos(plane.angle),
    foot: s.foot ?? { point: origin, normal: scale(inward, -1) },
    head: s.head ?? { point: at(s.run[1]), normal: inward },
    curve: undefined,
  };
}

/** The ridge that takes the rafters' heads when the file does not name it. */
export function onlyRidge(p: Placer): Ref | undefined {
  const ridges = p.frame.members.filter((m) => m.kind === "ridge");
  const [ridge] = ridges;
  return ridge && ridges.length === 1 ? { text: ridge.name, path: ridge.path } : undefined;
}

/** Level run from the plate's outside face to the near face of a timber up the slope. */
function runTo(plane: SlopePlane, timber: Timber): number {
  const solid = solidOf(timber);
  return plane.inward === 1 ? solid.low[1] - plane.outside : plane.outside - solid.high[1];
}

/** Where the rafters' heads end, as a level run from the plate's outside face. */
export function headRun(p: Placer, planes: RoofPlanes, plane: SlopePlane): number | undefined {
  const rafters = p.frame.roof?.rafters;
  if (planes.highRun !== undefined)
    return planes.highRun + highPlateWidth(p, planes) + inches(rafters?.overhang.high ?? NO_LENGTH);
  if (planes.ridgeY === undefined) return undefined;
  const middle = Math.abs(planes.ridgeY - plane.outside);
  if (meetAtPeak(rafters?.head)) return middle;
  const into = rafters?.head?.into ?? onlyRidge(p);
  if (!into) return middle;
  const ridge = p.sticksNamed(into)[0];
  if (!ridge) return undefined;
  const housing = rafters?.head?.housing;
  return runTo(plane, ridge) + (housing === undefined ? DEFAULT_HEAD_HOUSING : inches(housing));
}

function highPlateWidth(p: Placer, planes: RoofPlanes): number {
  const high = p.frame.roof?.high?.text;
  const eave = planes.slopes[0];
  const plates = p.frame.members
    .filter(
      (m) =>
        (m.kind === "plate" || m.kind === "beam" || m.kind === "sill") &&
        m.walls?.some((w) => w.text === high),
    )
    .flatMap((m) => p.sticks(m.name).filter((s) => high !== undefined && s.walls.includes(high)));
  return plates[0]?.width ?? eave?.plateWidth ?? 0;
}

/** Level run from the plate's outside face to the roof's upper edge: a gable's middle, a shed's highest rafter head. */
export function peakRun(p: Placer, planes: RoofPlanes, plane: SlopePlane): number {
  if (planes.ridgeY !== undefined) return Math.abs(planes.ridgeY - plane.outside);
  const heads = principals(p)
    .filter((t) => t.walls.includes(plane.wall))
    .map((t) => plane.inward * (along(t.origin, t.axis, t.span)[1] - plane.outside));
  // the roof's own rafters carry the deck alone: where principals end does not matter then
  return Math.max(headRun(p, planes, plane) ?? 0, ...(p.frame.roof?.rafters ? [] : heads));
}

function principals(p: Placer): Timber[] {
  const rafters = p.frame.members.filter((m) => m.kind === "rafter");
  return rafters.flatMap((m) => p.sticks(m.name)).filter((t) => t.rule === "roof-rafter");
}

/** From rake to rake: as the roof's rafters say; else the plates' ends, or the ends of purlins that reach past them. */
export function deckAlong(p: Placer, planes: RoofPlanes): Interval {
  if (p.frame.roof?.rafters?.overhang.rake !== undefined) return rakes(p, planes);
  const purlins = p.frame.members.filter((m) => m.kind === "purlin").flatMap((m) => p.sticks(m.name));
  const ends = purlins
    .filter((t) => t.rule === "purlins-up-slope")
    .flatMap((t) => [t.origin[0], t.origin[0] + t.span]);
  return [Math.min(planes.x[0], ...ends), Math.max(planes.x[1], ...ends)];
}

/** Where the roof ends along the walls as far as its rafters say; the plates' ends where they say nothing. */
function rakes(p: Placer, planes: RoofPlanes): Interval {
  const rake = p.frame.roof?.rafters?.overhang.rake;
  if (rake === undefined) return planes.x;
  const over = inches(rake);
  return [(p.grid.bents[0]?.at ?? planes.x[0]) - over, (p.grid.bents.at(-1)?.at ?? planes.x[1]) + over];
}

/** The rafters of `roof.rafters`, evenly between the rake rafters: `rafter@A.4`, numbered from bent 1. */
export function placeRoofRafters(p: Placer): {
  readonly plane: SlopePlane;
  readonly sticks: Timber[];
  readonly spacing: number;
  readonly head: number;
}[] {
  const rafters = p.frame.roof?.rafters;
  const planes = p.roof();
  if (!rafters) return [];
  if (!planes) return withoutPlanes(p, rafters.path, "rafter");
  const timberClass = p.classOf(rafters.timber, "rafters");
  const section = p.section(rafters.section, false, timberClass);
  if (!section) return [];
  const half = section.width / 2;
  const centers = positions(
    planes.x[0] + half,
    planes.x[1] - half,
    rafters.spacing === undefined ? undefined : inches(rafters.spacing),
    rafters.count,
    rafters.layout,
  );
  const spacing =
    centers.length > 1
      ? Math.max(...centers.slice(1).map((c, i) => c - (centers[i] ?? c)))
      : lengthOf(planes.x);
  return planes.slopes.flatMap((plane) => {
    const head = headRun(p, planes, plane);
    if (head === undefined) return [];
    const sticks = centers.map((center, index) =>
      slopeTimber({
        base: { member: "rafter", kind: "rafter", path: rafters.path, class: timberClass },
        id: `rafter@${plane.wall}.${index + 1}`,
        rule: "roof-rafter",
        plane,
        x: [center - half, center + half],
        bents: [],
        run: [-inches(rafters.overhang.eave), head],
        width: section.width,
        depth: section.depth,
        reference: { width: 0, depth: 1 },
      }),
    );
    return [{ plane, sticks, spacing, head }];
  });
}

/** Principal rafters: a pair in each bent, in the plane of the roof, from the plate or tie up to ridge or king-post. */
export function placePrincipals(p: Placer, member: Member): Timber[] {
  const timberClass = p.classOf(member.timber, "rafters");
  const section = p.section(member.section, member.turned, timberClass);
  const planes = p.roof();
  if (!member.bents) return p.missing(member.path, member.name, ["bents"]) ?? [];
  if (!section) return [];
  if (!planes) return withoutPlanes(p, member.path, member.name);
  return member.bents.flatMap((ref) => {
    const line = p.line(ref, "bent");
    if (!line) return [];
    return planes.slopes.flatMap((plane) => {
      const head = principalHead(p, member, planes, plane);
      const foot = principalFoot(p, member, plane, section.depth);
      if (head === undefined || foot === undefined) return [];
      const sign = referenceSign(line);
      return [
        slopeTimber({
          base: baseOf(member, timberClass),
          id: `${member.name}@${plane.wall}${line.id}`,
          rule: "roof-rafter",
          plane,
          x: spanAcross(line, section.width),
          bents: [line.id],
          run: [foot.run, head],
          ...(foot.plane ? { foot: foot.plane } : {}),
          width: section.width,
          depth: section.depth,
          // up the slope of the first wall the width axis runs against x
          reference: { width: plane.inward === -1 ? sign : sign === 1 ? -1 : 1, depth: 1 },
        }),
      ];
    });
  });
}

/**
 * Run at which a principal rafter's head meets its king-post or ridge; the middle where it meets its fellow. Over a shed's
 * high plate it runs on to its overhang.
 */
function principalHead(p: Placer, member: Member, planes: RoofPlanes, plane: SlopePlane): number | undefined {
  const carriers = member.to ? p.sticksNamed(member.to) : [];
  const high = p.frame.roof?.high?.text;
  const overHigh =
    !member.to || carriers.some((t) => high !== undefined && t.walls.includes(high) && isAlongWall(t));
  if (planes.highRun !== undefined && overHigh)
    return planes.highRun + highPlateWidth(p, planes) + inches(member.overhang?.to ?? NO_LENGTH);
  if (!member.to) return planes.ridgeY === undefined ? undefined : Math.abs(planes.ridgeY - plane.outside);
  // of timbers that stand in both slopes, a purlin beam over each row of posts, the nearer one
  const runs = carriers.map((t) => runTo(plane, t)).filter((run) => run > 0);
  return runs.length > 0 ? Math.min(...runs) : undefined;
}

/**
 * Over the plate of its slope the rafter runs on to its overhang and ends plumb; on any other timber that is named it
 * stands level on its top, in the roof's plane.
 */
function principalFoot(
  p: Placer,
  member: Member,
  plane: SlopePlane,
  depth: number,
): { run: number; plane?: EndPlane } | undefined {
  const meaning = member.from && p.meaning(member.from);
  if (member.from && !meaning) return undefined;
  const over = { run: -inches(member.overhang?.from ?? NO_LENGTH) };
  if (!member.from || !meaning || (meaning.sort !== "member" && meaning.sort !== "stick")) return over;
  const carriers = p.sticksNamed(member.from);
  if (carriers.some((t) => t.walls.includes(plane.wall) && isAlongWall(t))) return over;
  const solid = carriers.map(solidOf)[0];
  if (!solid) return undefined;
  const top = solid.high[2];
  const run = plane.seat + (top - plane.plateTop - depth / 2 / Math.cos(plane.angle)) / plane.slope;
  const point: Vec3 = [0, plane.outside + plane.inward * run, top];
  return { run, plane: { point, normal: [0, 0, -1] } };
}

const isAlongWall = (t: Timber): boolean => Math.abs(t.axis[0]) > 0.7;

/** How far up a slope purlins find rafters under them: to the ridge's near face, without a ridge to the middle. */
function purlinRun(p: Placer, planes: RoofPlanes, plane: SlopePlane): number | undefined {
  if (planes.ridgeY === undefined) return planes.highRun ?? 0;
  const ridge = onlyRidge(p);
  if (!ridge) return Math.abs(planes.ridgeY - plane.outside);
  const stick = p.sticksNamed(ridge)[0];
  return stick && runTo(plane, stick);
}

/** From rake to rake; with an overhang, that far past the first and the last grid line. An end named inside ends there. */
function alongRoof(p: Placer, { from, to, overhang }: Member, edges: Interval): Interval | undefined {
  const first = from ? p.line(from, "bent") : p.grid.bents[0];
  const last = to ? p.line(to, "bent") : p.grid.bents.at(-1);
  if (!first || !last) return undefined;
  const outer = { from: first === p.grid.bents[0], to: last === p.grid.bents.at(-1) };
  return [
    overhang ? first.at - inches(overhang.from) : outer.from ? edges[0] : first.at,
    overhang ? last.at + inches(overhang.to) : outer.to ? edges[1] : last.at,
  ];
}

/** Purlins on the slopes: from rake to rake, spaced up the slope between the plate and the ridge. */
export function placePurlins(p: Placer, member: Member): Timber[] {
  const timberClass = p.classOf(member.timber, member.kind);
  const section = p.section(member.section, member.turned, timberClass);
  const planes = p.roof();
  if (!section) return [];
  if (!planes)
    return p.frame.roof
      ? withoutPlanes(p, member.path, member.name)
      : (p.missing(member.path, member.name, ["walls", "bents"]) ?? []);
  const x = alongRoof(p, member, rakes(p, planes));
  if (!x) return [];
  return planes.slopes.flatMap((plane) => {
    const topRun = purlinRun(p, planes, plane);
    if (topRun === undefined) return [];
    const slant = topRun / Math.cos(plane.angle);
    const places = positions(
      section.width / 2,
      slant - section.width / 2,
      member.spacing === undefined ? undefined : inches(member.spacing),
      member.count,
      member.layout,
    );
    const up: Vec3 = [0, plane.inward * Math.cos(plane.angle), Math.sin(plane.angle)];
    const normal: Vec3 = [0, -plane.inward * Math.sin(plane.angle), Math.cos(plane.angle)];
    const start: Vec3 = [x[0], plane.outside, topsideAt(plane, 0)];
    return places.map((s, index): Timber => {
      const origin = along(along(start, up, s), normal, section.depth / 2);
      const axis: Vec3 = [1, 0, 0];
      return {
        ...baseOf(member, timberClass),
        id: `${member.name}@${plane.wall}.${index + 1}`,
        rule: "purlins-up-slope",
        reference: { width: 0, depth: 1 },
        walls: [plane.wall],
        bents: p.grid.bents.map((b) => b.id),
        width: section.width,
        depth: section.depth,
        origin,
        axis,
        // axis × width = depth: with the grain along x the width runs up the slope on the side toward +y
        widthDir: cross(normal, axis),
        depthDir: normal,
        span: lengthOf(x),
        length: lengthOf(x),
        foot: { point: origin, normal: [-1, 0, 0] },
        head: { point: along(origin, axis, lengthOf(x)), normal: axis },
        curve: undefined,
      };
    });
  });
}
