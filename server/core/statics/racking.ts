/**
 * Whether braces hold the frame upright: its own weight with two percent of it sideways, each way along the walls and
 * across them, braces that only push (design, section 6). A mechanism names what moves.
 */
import type { Combined } from "../analysis/combined.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import type { BasicLoad } from "./basic-loads.ts";
import type { RackingResult } from "./frame-results.ts";
import type { LineLoad } from "./line-loads.ts";
import type { Hold, Skeleton } from "./skeleton.ts";
import { type FrameStructure, timbersOf } from "./structure.ts";

/** Sideways push as a share of the weight (common practice, no source). */
const SHARE = 0.02;

export interface Push {
  readonly toward: RackingResult["toward"];
  readonly direction: Vec3;
  /** which of the two sideways loads, and its sign */
  readonly along: "x" | "y";
  readonly sign: 1 | -1;
}

export const PUSHES: readonly Push[] = [
  { toward: "+x", direction: [1, 0, 0], along: "x", sign: 1 },
  { toward: "-x", direction: [-1, 0, 0], along: "x", sign: -1 },
  { toward: "+y", direction: [0, 1, 0], along: "y", sign: 1 },
  { toward: "-y", direction: [0, -1, 0], along: "y", sign: -1 },
];

function sideways(load: LineLoad, axis: 0 | 1): LineLoad {
  const turned = (f: Vec3): Vec3 => (axis === 0 ? [-f[2] * SHARE, 0, 0] : [0, -f[2] * SHARE, 0]);
  return { ...load, startForce: turned(load.startForce), endForce: turned(load.endForce) };
}

/** Two basic loads: a share of the weight along x, and along y. */
export function pushLoads(dead: BasicLoad): { readonly x: BasicLoad; readonly y: BasicLoad } {
  const make = (axis: 0 | 1): BasicLoad => ({
    id: axis === 0 ? "push/x" : "push/y",
    kind: "D",
    vertical: false,
    loads: dead.loads.map((l) => sideways(l, axis)),
  });
  return { x: make(0), y: make(1) };
}

interface Loose {
  readonly moving: readonly string[];
  readonly lean: number;
}

const STANDS: Loose = { moving: [], lean: 0 };

/**
 * What is so loosely held that it cannot stand by itself: a height h of weight W that yields by Δ to a push of `SHARE` of W
 * falls once W Δ outdoes the push's own h, at Δ = SHARE × h (equilibrium in the displaced place, derived).
 * Less than an inch is no fall.
 * @returns ids of the timbers that go along with the farthest, and how far that goes, in; none where all stay within it
 */
function tooLoose(push: Push, combined: Combined, { nodes, pieces, bearings }: Skeleton): Loose {
  if (combined.status === "failed") return STANDS;
  const base = Math.min(...bearings.map(({ node }) => nodes[node]?.[2] ?? 0));
  const moved = nodes.map((_, node) => {
    const [x, y] = combined.displacement(node);
    return Math.abs(dot([x, y, 0], push.direction));
  });
  const loose = moved.some((d, node) => d > SHARE * ((nodes[node]?.[2] ?? base) - base) && d > 1);
  const farthest = Math.max(...moved);
  if (!loose) return STANDS;
  const goes = ({ node }: Hold): boolean => (moved[node] ?? 0) > farthest / 2;
  const moving = pieces.flatMap(({ timber, i, j }) => (goes(i) || goes(j) ? [timber.id] : []));
  return { moving: [...new Set(moving)], lean: farthest };
}

/** What a push has done. */
export function rackingResult(push: Push, combined: Combined, frame: FrameStructure): RackingResult {
  const all = combined.faults.flatMap((f) => (f.kind === "mechanism" || f.kind === "slack" ? f.modes : []));
  // a frame loose across its bents may well be braced along its walls: only what moves with this push counts, or falls
  const modes = all.filter(({ driven, direction }) => {
    const along = Math.abs(dot(direction, push.direction));
    return along > 0.5 || (driven && Math.hypot(along, direction[2]) > 0.1);
  });
  const elements = modes.flatMap((m) => m.elements);
  const { moving, lean } =
    modes.length > 0
      ? { moving: timbersOf(elements, frame), lean: 0 }
      : tooLoose(push, combined, frame.skeleton);
  return {
    toward: push.toward,
    stands: modes.length === 0 && moving.length === 0,
    soft: modes.length === 0 && moving.length > 0,
    lean,
    moving,
    direction: modes[0]?.direction ?? push.direction,
  };
}
