/** Timbers that the grid cannot place: from one point in space to another. */
import type { EndPlace, Member } from "../frame/frame.ts";
import { inches } from "../quantity/length.ts";
import { baseOf } from "./box.ts";
import { placeLines } from "./grid.ts";
import type { Timber } from "./model.ts";
import type { Placer } from "./placer.ts";
import { cross, dot, length, scale, sub, unit, type Vec3 } from "./vec.ts";

function pointOf(p: Placer, end: EndPlace): Vec3 | undefined {
  const lines = end.at && placeLines(p.grid, end.at);
  if (end.at && !lines) return p.unknownPlace(end.at);
  const z = end.level ? p.height(end.level) : 0;
  if (z === undefined) return undefined;
  const x = lines ? (lines.x ?? lines.bent?.at ?? 0) : 0;
  const y = lines?.wall.at ?? 0;
  return [x + inches(end.offset[0]), y + inches(end.offset[1]), z + inches(end.offset[2])];
}

/** A timber on the center line between two points; its depth stands as upright as its slope allows. */
export function placeFree(p: Placer, member: Member, ends: readonly [EndPlace, EndPlace]): Timber[] {
  const timberClass = p.classOf(member.timber, member.kind);
  const section = p.section(member.section, member.turned, timberClass);
  const from = pointOf(p, ends[0]);
  const to = pointOf(p, ends[1]);
  if (!section || !from || !to) return [];
  const axis = unit(sub(to, from));
  const upright: Vec3 = Math.abs(axis[2]) > 0.999 ? [0, 1, 0] : [0, 0, 1];
  const depthDir = unit(sub(upright, scale(axis, dot(upright, axis))));
  return [
    {
      ...baseOf(member, timberClass),
      id: member.name,
      rule: "free-ends",
      reference: { width: -1, depth: 1 },
      walls: [...new Set(ends.flatMap((e) => (e.at ? [e.at.wall] : [])))],
      bents: [...new Set(ends.flatMap((e) => (e.at?.bent ? [e.at.bent] : [])))],
      width: section.width,
      depth: section.depth,
      origin: from,
      axis,
      widthDir: cross(depthDir, axis),
      depthDir,
      span: length(sub(to, from)),
      length: length(sub(to, from)),
      foot: { point: from, normal: scale(axis, -1) },
      head: { point: to, normal: axis },
      curve: undefined,
    },
  ];
}
