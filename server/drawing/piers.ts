/** Piers: the tube down to the ground, and dashed below it with the footing. */
import type { Say } from "../core/checks/say.ts";
import type { Model, Pier } from "../core/model/model.ts";
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

/** The anchor in the gap that keeps the post's end grain off the pier. */
function anchor(sight: Sight, pier: Pier): DrawingElement[] {
  if (pier.entry.anchor === undefined || pier.timber === undefined) return [];
  const [x, foot] = project(sight, pier.timber.foot.point);
  const half = Math.min(pier.timber.width, pier.timber.depth, pier.diameter) / 4;
  return box(x - half, x + half, pier.top[2], foot, ["anchor"]);
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
  const [left, right]: [Vec2, Vec2] = [
    [x - half, ground(x - half)],
    [x + half, ground(x + half)],
  ];
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
        points: [[left[0], pier.tubeBottom], [right[0], pier.tubeBottom], right, left],
      },
      { type: "poly", closed: true, points: [left, right, [right[0], top], [left[0], top]] },
      ...anchor(sight, pier),
    ],
  };
}
