/** The ground: its line where the frame stands nearest to the eye, and where it lies farthest away. */
import type { Say } from "../core/checks/say.ts";
import type { Model } from "../core/model/model.ts";
import type { Vec2 } from "../core/model/vec.ts";
import { inches } from "../core/quantity/length.ts";
import type { Box, DrawingElement } from "./drawing.ts";
import { planPoint, type Sight } from "./views.ts";

/** a farther ground line within this height of the nearer one would only blur it */
const SAME = 0.5;

/** Heights of the ground along the page, at one depth; straight between grid lines. */
export function groundLine(model: Model, sight: Sight, depth: number, from: number, to: number): Vec2[] {
  const stops = [from, ...sight.lines.map((line) => line.at).filter((at) => at > from && at < to), to];
  return stops.flatMap((right): Vec2[] => {
    // piers reckon from the datum where the file says nothing of the ground
    const z = model.ground(...planPoint(sight, right, depth)) ?? (model.piers.length > 0 ? 0 : undefined);
    return z === undefined || !Number.isFinite(z) ? [] : [[right, z]];
  });
}

const segments = (points: readonly Vec2[], classes: readonly string[]): DrawingElement[] =>
  points.slice(1).map((to, i) => ({ type: "line", from: points[i] ?? to, to, classes }));

/** Short strokes under the line, as earth is drawn. */
function strokes(points: readonly Vec2[], size: number): DrawingElement[] {
  const marks: DrawingElement[] = [];
  let left = size;
  points.slice(1).forEach((b, i) => {
    const a = points[i] ?? b;
    const run = b[0] - a[0];
    for (; left < run && marks.length < 300; left += 1.5 * size) {
      const x = a[0] + left;
      const z = a[1] + ((b[1] - a[1]) * left) / run;
      marks.push({ type: "line", from: [x, z], to: [x - 0.6 * size, z - 0.6 * size], classes: ["earth"] });
    }
    left -= run;
  });
  return marks;
}

/** @returns the ground under a view; nothing where neither the file nor a pier says anything of it */
export function drawGround(
  model: Model,
  sight: Sight,
  around: Box,
  size: number,
  say: Say,
): DrawingElement[] {
  const [nearest, farthest] = [sight.layers[0]?.at ?? 0, sight.layers.at(-1)?.at ?? 0];
  const near = groundLine(model, sight, nearest, around.left, around.right);
  const far = groundLine(model, sight, farthest, around.left, around.right);
  if (near.length < 2) return [];
  const apart = far.some((p, i) => Math.abs(p[1] - (near[i]?.[1] ?? p[1])) > SAME);
  const [first] = model.frame.site.ground;
  return [
    {
      type: "group",
      classes: ["ground"],
      id: "ground",
      ...(first === undefined ? {} : { path: `${model.frame.site.path}/ground` }),
      title: groundTitle(model, say),
      children: [...(apart ? segments(far, ["dashed"]) : []), ...segments(near, []), ...strokes(near, size)],
    },
  ];
}

function groundTitle(model: Model, say: Say): string {
  const given = model.frame.site.ground;
  const heights = given.map((entry) =>
    say.text("{place} at {height}", { place: entry.key, height: say.length(inches(entry.height)) }),
  );
  return given.length === 0
    ? say.text("ground: level at the datum, since the file gives no heights")
    : say.text("ground: {heights}", { heights: say.list(heights) });
}
