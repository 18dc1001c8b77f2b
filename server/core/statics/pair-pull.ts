/**
 * What a rafter pair leaves to its pegs. Wood bears wood where the rafters press on each other: the joined rafter's cheeks
 * on the ends of the tines, square to the other's underside, and its tongue on the bottom of the slot, square to its own
 * underside. Together they take any thrust that points between these two directions; what is left over is the pegs'
 * (statics without friction: the least force that with such a thrust makes up the whole; derived).
 */
import type { Joint } from "../joinery/joint.ts";
import { dot, type Vec3 } from "../model/vec.ts";

type Plane = readonly [number, number];

/** @returns lb, how far a force is from what a push along one direction makes up */
function besides([x, y]: Plane, [u, v]: Plane): number {
  const push = Math.max(0, x * u + y * v);
  return Math.hypot(x - push * u, y - push * v);
}

/**
 * @param force on the joined rafter's head, global axes, lb
 * @returns lb on the pegs
 */
export function pairPull({ face, sizes }: Joint, force: Vec3): number {
  const { pair } = sizes;
  const f: Plane = [dot(force, face.inward), dot(force, face.grain)];
  if (!pair) return Math.max(0, f[0]);
  const [own, other] = pair.slopes;
  const down: Plane = [-Math.sin(other), -Math.cos(other)];
  const up: Plane = [-Math.sin(own), Math.cos(own)];
  // both pushes that make up the force: f = a · down + b · up
  const turn = down[0] * up[1] - down[1] * up[0];
  const a = (f[0] * up[1] - f[1] * up[0]) / turn;
  const b = (down[0] * f[1] - down[1] * f[0]) / turn;
  if (a >= 0 && b >= 0) return 0;
  return Math.min(besides(f, down), besides(f, up));
}
