/** Piers: the tube down to the ground, and dashed below it with the footing. */
import type { Say } from "../core/checks/say.ts";
import type { Model, Pier } from "../core/model/model.ts";
import { solidOf } from "../core/model/solid.ts";
import type { Vec2 } from "../core/model/vec.ts";
import type { DrawingElement } from "./drawing.ts";
import { planPoint, project, type Sight } from "./views.ts";

const box = (
  left: number,
  right: number,
  bottom: number,
  top: number,
  classes: readonly string[],
): DrawingElement[] =>
  right > left && top > bottom
    ? [
        {
          type: "poly",
          closed: true,
          classes,
          points: [
            [left, bottom],
            [right, bottom],
            [right, top],
            [left, top],
          ],
        },
      ]
    : [];

function titleOf(pier: Pier, say: Say): string {
  const words = {
    id: pier.id,
    diameter: say.length(pier.diameter),
    depth: say.length(pier.groundLow - pier.tubeBottom),
    footing: say.length(pier.footing?.diameter ?? 0),
    thickness: say.length(pier.footing?.thickness ?? 0),
  };
  const shaft =
    pier.entry.kind === "tube"
      ? say.text("{id}, tube {diameter} across, {depth} deep", words)
      : say.text("{id}, pad {diameter} wide, {depth} deep", words);
  return pier.footing === undefined
    ? shaft
    : say.text("{shaft}, on a footing {footing} across and {thickness} thick", { ...words, shaft });
}

/** The anchor in the gap that keeps the wood off the pier. */
function anchor(sight: Sight, pier: Pier): DrawingElement[] {
  if (pier.entry.anchor === undefined || pier.timber === undefined) return [];
  const [x, top] = project(sight, pier.top);
  const half = Math.min(pier.timber.width, pier.timber.depth, pier.diameter) / 4;
  return box(x - half, x + half, top, solidOf(pier.timber).low[2], ["anchor"]);
}

/** @returns the group of one pier */
export function drawPier(model: Model, sight: Sight, pier: Pier, say: Say): DrawingElement {
  const [x, top] = project(sight, pier.top);
  const half = pier.diameter / 2;
  const depth = pier.top[sight.across === 0 ? 1 : 0];
  const ground = (right: number): number => {
    const z = model.ground(...planPoint(sight, right, depth)) ?? pier.groundLow;
    return Math.min(top, Math.max(pier.tubeBottom, z));
  };
  // the ground bends at grid lines, and a pier under a post stands across one
  const [left, right] = [x - half, x + half];
  const bends = sight.lines.map((line) => line.at).filter((at) => at > left && at < right);
  const surface = [left, ...bends, right].map((at): Vec2 => [at, ground(at)]);
  const footing =
    pier.footing === undefined
      ? []
      : box(x - pier.footing.diameter / 2, x + pier.footing.diameter / 2, pier.bottom, pier.tubeBottom, [
          "dashed",
        ]);
  return {
    type: "group",
    classes: ["pier"],
    id: pier.id,
    path: pier.entry.path,
    title: titleOf(pier, say),
    children: [
      ...footing,
      {
        type: "poly",
        closed: true,
        classes: ["dashed"],
        points: [[left, pier.tubeBottom], [right, pier.tubeBottom], ...[...surface].reverse()],
      },
      { type: "poly", closed: true, points: [...surface, [right, top], [left, top]] },
      ...anchor(sight, pier),
    ],
  };
}
