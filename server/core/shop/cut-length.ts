/** How long a stick must be cut, from the tip of one tenon to the tip of the other. */
import type { Joint } from "../joinery/joint.ts";
import type { Timber } from "../model/model.ts";
import { solidOf } from "../model/solid.ts";
import { add, dot, scale, sub, type Vec3 } from "../model/vec.ts";

/**
 * Length along the grain that holds the whole stick: its long points, its tenons and what stands in housings.
 * @param timber the stick
 * @param joints the joints of the model; only those that `timber` is joined by count
 * @returns inches
 */
export function cutLength(timber: Timber, joints: readonly Joint[]): number {
  const at = (point: Vec3): number => dot(sub(point, timber.origin), timber.axis);
  const reaches = solidOf(timber).corners.map(at);
  for (const joint of joints) {
    if (joint.of.id !== timber.id) continue;
    for (const tenon of joint.solids.tenons)
      for (const [u, v] of tenon.outline)
        for (const w of [tenon.from, tenon.to]) {
          const flat = add(tenon.base, add(scale(tenon.u, u), scale(tenon.v, v)));
          reaches.push(at(add(flat, scale(tenon.w, w))));
        }
    if (joint.end === "head") reaches.push(timber.span + joint.extension);
    if (joint.end === "foot") reaches.push(-joint.extension);
  }
  return Math.max(...reaches) - Math.min(...reaches);
}
