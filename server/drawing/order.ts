/**
 * Which timber hides which: a painter's order, far to near. Two boxes that a plane divides are ordered by that plane;
 * where one is let into the other, the one that receives covers the end that enters.
 */
import type { Joint } from "../core/joinery/joint.ts";
import { cross, dot, length, unit, type Vec3 } from "../core/model/vec.ts";
import type { Body } from "./body.ts";
import type { Sight } from "./views.ts";

/** wood that touches or is let in by less than a scribe line does not overlap */
const TOUCH = 0.07;

/** a face let in that leans this much (cosine) to the eye still tells before from behind: a rafter on its plate */
const LEANS = 0.02;

function reach(corners: readonly Vec3[], axis: Vec3): readonly [number, number] {
  let [low, high] = [Infinity, -Infinity];
  for (const p of corners) {
    const d = dot(p, axis);
    low = Math.min(low, d);
    high = Math.max(high, d);
  }
  return [low, high];
}

/** @returns 1 when b hides a, -1 when a hides b, 0 when neither does */
function hides(a: Body, b: Body, toward: Vec3, lets: ReadonlySet<string>): -1 | 0 | 1 {
  if (a.cut !== b.cut) return a.cut ? -1 : 1;
  const [s, t] = [a.timber, b.timber];
  const axes = [
    s.widthDir,
    s.depthDir,
    s.foot.normal,
    s.head.normal,
    t.widthDir,
    t.depthDir,
    t.foot.normal,
    t.head.normal,
    unit(cross(s.axis, t.axis)),
  ];
  let best = { facing: 0, apart: false, gap: -Infinity };
  for (const axis of axes) {
    if (!(length(axis) > 0.5)) continue;
    const [aLow, aHigh] = reach(a.corners, axis);
    const [bLow, bHigh] = reach(b.corners, axis);
    // b beyond a along the axis, or before it
    const [beyond, before] = [bLow - aHigh, aLow - bHigh];
    const gap = Math.max(beyond, before);
    const facing = dot(axis, toward) * (beyond >= before ? 1 : -1);
    const apart = gap >= -TOUCH;
    const better = apart
      ? !best.apart || Math.abs(facing) > Math.abs(best.facing) + 1e-9
      : !best.apart && gap > best.gap + 1e-9;
    if (better) best = { facing, apart, gap };
  }
  if (best.apart) return Math.abs(best.facing) < 1e-6 ? 0 : best.facing > 0 ? 1 : -1;
  if (Math.abs(best.facing) > LEANS) return best.facing > 0 ? 1 : -1;
  if (lets.has(`${s.id}\n${t.id}`)) return 1;
  if (lets.has(`${t.id}\n${s.id}`)) return -1;
  return Math.abs(a.near - b.near) < TOUCH ? 0 : a.near < b.near ? 1 : -1;
}

/** @returns the bodies, the farthest first; the same frame always gives the same order */
export function paintOrder(sight: Sight, bodies: readonly Body[], joints: readonly Joint[]): Body[] {
  const lets = new Set(joints.map((joint) => `${joint.of.id}\n${joint.into.id}`));
  const over: number[][] = bodies.map(() => []);
  const under = bodies.map(() => 0);
  bodies.forEach((a, i) => {
    for (let j = i + 1; j < bodies.length; j++) {
      const b = bodies[j];
      if (b === undefined) continue;
      const overlap =
        Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left) > 0.01 &&
        Math.min(a.box.top, b.box.top) - Math.max(a.box.bottom, b.box.bottom) > 0.01;
      const way = overlap ? hides(a, b, sight.toward, lets) : 0;
      if (way === 0) continue;
      const [back, front] = way > 0 ? [i, j] : [j, i];
      over[back]?.push(front);
      under[front] = (under[front] ?? 0) + 1;
    }
  });
  const left = new Set(bodies.keys());
  const done: Body[] = [];
  while (left.size > 0) {
    // three timbers may hide each other in a ring: then the farthest is painted first
    let next = -1;
    for (const i of left) {
      const free = (under[i] ?? 0) <= 0;
      const nextFree = next >= 0 && (under[next] ?? 0) <= 0;
      const farther = next < 0 || (bodies[i]?.near ?? 0) < (bodies[next]?.near ?? 0);
      if (free !== nextFree ? free || next < 0 : farther) next = i;
    }
    left.delete(next);
    const body = bodies[next];
    if (body !== undefined) done.push(body);
    for (const front of over[next] ?? []) under[front] = (under[front] ?? 0) - 1;
  }
  return done;
}
