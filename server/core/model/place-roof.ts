/** Ridge, the roof's own rafters and principal rafters: what takes its place from the roof planes and carries the rest. */
import type { Member } from "../frame/frame.ts";
import { inches, NO_LENGTH } from "../quantity/length.ts";
import { baseOf, boxTimber, type Interval, lengthOf, type StickBase } from "./box.ts";
import { referenceSign, spanAcross } from "./grid.ts";
import type { EndPlane, Timber } from "./model.ts";
import type { Placer } from "./placer.ts";
import { type RoofPlanes, type SlopePlane, topsideAt, undersideAt, withoutPlanes } from "./roof-planes.ts";
import { headRun, highPlateWidth, runTo } from "./roof-reach.ts";
import { positions } from "./series.ts";
import { solidOf } from "./solid.ts";
import { cross, scale, type Vec3 } from "./vec.ts";

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
