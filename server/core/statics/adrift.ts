/**
 * An answer that goes too far to be one. Where a frame is all but loose, the equations still have a solution, with
 * motions of whole stories and forces to match; the analysis takes motions as small (McGuire, Gallagher and Ziemian,
 * Matrix Structural Analysis, from memory), so such a figure is no answer but a sign that nothing holds the frame that way.
 */

import { type Combined, failedCombination } from "../analysis/combined.ts";
import type { Mode } from "../analysis/faults.ts";
import { farthestOf } from "../analysis/linear-answer.ts";
import { unit, type Vec3 } from "../model/vec.ts";
import type { Hold, Skeleton } from "./skeleton.ts";

/** Motions past this share of the frame's size are not small (common practice, no source). */
const FARTHEST = 1 / 10;
/** What lies low over its piers, a beam on them or a deck, is as large as this share of its longest timber (likewise). */
const LYING = 1 / 4;

/** Height of the frame over its lowest bearing, or what counts as its size where it lies rather than stands, inches. */
function sizeOf({ nodes, bearings, piecesOf }: Skeleton): number {
  const base = Math.min(...bearings.map(({ node }) => nodes[node]?.[2] ?? 0));
  const height = Math.max(...nodes.map((n) => n[2])) - base;
  const longest = Math.max(0, ...[...piecesOf.values()].map(([piece]) => piece?.timber.span ?? 0));
  return Math.max(height, LYING * longest);
}

/** How the frame moves, the farthest node by 1, with the sticks that go along with it. */
function modeOf(combined: Combined, { nodes, owners, pieces }: Skeleton, farthest: number): Mode {
  const motions = nodes.map((_, node) => combined.displacement(node));
  const way = (node: number): Vec3 => {
    const [x, y, z] = motions[node] ?? [0, 0, 0];
    return [x, y, z];
  };
  const far = (node: number): number => Math.hypot(...way(node));
  const goes = ({ node }: Hold): boolean => far(node) > farthest / 2;
  const sum = nodes.reduce<Vec3>(
    ([x, y, z], _, node) => {
      const [dx, dy, dz] = way(node);
      return [x + dx, y + dy, z + dz];
    },
    [0, 0, 0],
  );
  return {
    nodes: nodes.flatMap((_, node) =>
      far(node) > farthest / 2
        ? [
            {
              node,
              id: owners[node]?.timber.id ?? String(node),
              motion: (motions[node] ?? []).map((m) => m / farthest),
            },
          ]
        : [],
    ),
    elements: [...new Set(pieces.flatMap(({ timber, i, j }) => (goes(i) || goes(j) ? [timber.id] : [])))],
    direction: unit(sum),
    driven: true,
  };
}

/** @returns gives the combination, or in its place a failed one that says what moves, where the frame goes adrift under it */
export function unlessAdrift(skeleton: Skeleton): (combined: Combined) => Combined {
  const most = FARTHEST * sizeOf(skeleton);
  return (combined) => {
    if (combined.status === "failed" || combined.farthest <= most) return combined;
    const farthest = farthestOf(combined.motions());
    if (farthest <= most) return combined;
    const modes = [modeOf(combined, skeleton, farthest)];
    return failedCombination(combined.id, [{ kind: "mechanism", modes, dropped: combined.dropped }]);
  };
}
