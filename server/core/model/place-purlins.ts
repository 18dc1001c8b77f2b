/** Purlins on the slopes of the roof. */
import type { Member } from "../frame/frame.ts";
import { inches } from "../quantity/length.ts";
import { baseOf, type Interval, lengthOf } from "./box.ts";
import type { Timber } from "./model.ts";
import type { Placer } from "./placer.ts";
import { type RoofPlanes, type SlopePlane, topsideAt, withoutPlanes } from "./roof-planes.ts";
import { onlyRidge, rakes, runTo } from "./roof-reach.ts";
import { positions } from "./series.ts";
import { along, cross, type Vec3 } from "./vec.ts";

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
