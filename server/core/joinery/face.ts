/** The face of a timber that receives another, and prisms in its axes. */
import { halfExtent } from "../model/box.ts";
import type { Timber } from "../model/model.ts";
import { along, cross, dot, scale, sub, unit, type Vec2, type Vec3 } from "../model/vec.ts";
import type { JointEnd, Peg, Prism, ReceivingFace } from "./joint.ts";
import type { PegSizes } from "./joint-sizes.ts";

/** The way the joined timber goes in: along its grain at an end, toward the other's middle where it crosses. */
function approach(of: Timber, end: JointEnd, into: Timber, point: Vec3): Vec3 {
  if (end === "head") return of.axis;
  if (end === "foot") return scale(of.axis, -1);
  const middle = along(into.origin, into.axis, dot(sub(point, into.origin), into.axis));
  const own = along(of.origin, of.axis, dot(sub(point, of.origin), of.axis));
  const normal = unit(cross(of.axis, into.axis));
  const toward = sub(middle, own);
  const square = scale(normal, dot(toward, normal));
  return Math.hypot(...square) > 1e-6 ? unit(square) : unit(toward);
}

/** Where a line meets the plane through `at` with this normal; `p` itself when the line runs along the plane. */
function onPlane(p: Vec3, direction: Vec3, at: Vec3, normal: Vec3): Vec3 {
  const slant = dot(direction, normal);
  return Math.abs(slant) < 1e-6
    ? along(p, normal, dot(sub(at, p), normal))
    : along(p, direction, dot(sub(at, p), normal) / slant);
}

/**
 * The long face of `into` that `of` enters, with its axes and what lies around the entry.
 * @param point center of the contact, inches
 */
export function receivingFace(of: Timber, end: JointEnd, into: Timber, point: Vec3): ReceivingFace {
  const way = approach(of, end, into, point);
  const normals: Vec3[] = [into.widthDir, scale(into.widthDir, -1), into.depthDir, scale(into.depthDir, -1)];
  const normal = normals.reduce((best, n) => (dot(n, way) < dot(best, way) - 1e-9 ? n : best));
  const inward = scale(normal, -1);
  const grain = into.axis;
  const across = cross(inward, grain);
  const surface = along(into.origin, normal, halfExtent(into, normal));
  const start = end === "side" ? point : along(of.origin, of.axis, end === "head" ? of.span : 0);
  const origin =
    end === "side" ? onPlane(start, inward, surface, normal) : onPlane(start, of.axis, surface, normal);
  const half = halfExtent(into, across);
  const offset = dot(sub(into.origin, origin), across);
  const toFoot = dot(sub(into.origin, origin), grain);
  const sign =
    into.reference.width * dot(into.widthDir, across) + into.reference.depth * dot(into.depthDir, across);
  return {
    origin,
    inward,
    grain,
    across,
    thickness: 2 * halfExtent(into, inward),
    edges: [offset - half, offset + half],
    ends: [toFoot, toFoot + into.span],
    reference: Math.abs(sign) < 0.5 ? 0 : sign > 0 ? 1 : -1,
  };
}

/** A prism whose outline lies in the face's (inward, grain) plane and whose thickness lies across. */
export function cheekPrism(face: ReceivingFace, outline: readonly Vec2[], from: number, to: number): Prism {
  return { base: face.origin, u: face.inward, v: face.grain, w: face.across, outline, from, to };
}

/** A rectangle as an outline: u from…to, v from…to. */
export function rectangle(u: readonly [number, number], v: readonly [number, number]): Vec2[] {
  return [
    [u[0], v[0]],
    [u[1], v[0]],
    [u[1], v[1]],
    [u[0], v[1]],
  ];
}

/** A point given in the face's axes. */
export function facePoint(face: ReceivingFace, inward: number, grain: number, across: number): Vec3 {
  return along(along(along(face.origin, face.inward, inward), face.grain, grain), face.across, across);
}

/** Pegs across the whole receiving timber. @param at where along the grain the middle of a row lies, by its setback; in */
export function pegsThrough(
  face: ReceivingFace,
  pegs: PegSizes | undefined,
  at: (setback: number) => number,
): Peg[] {
  if (!pegs) return [];
  const { setbacks, alongWidth, count, diameter } = pegs;
  return setbacks
    .flatMap((setback) =>
      alongWidth.map((offset) => {
        const grain = at(setback) + offset;
        return {
          from: facePoint(face, setback, grain, face.edges[0]),
          to: facePoint(face, setback, grain, face.edges[1]),
          diameter: diameter.value,
        };
      }),
    )
    .slice(0, count);
}
