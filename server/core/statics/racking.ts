/**
 * Whether braces hold the frame upright: its own weight with two percent of it sideways, each way along the walls and
 * across them, braces that only push (design, section 6). A mechanism names what moves.
 */
import type { Mode } from "../analysis/faults.ts";
import type { Combined } from "../analysis/superpose.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import type { BasicLoad } from "./basic-loads.ts";
import type { RackingResult } from "./frame-results.ts";
import type { LineLoad } from "./line-loads.ts";

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

/** Ids of the timbers that shift in some mode; `post@A1#2` is a piece of `post@A1`. */
function movingIn(modes: readonly Mode[]): string[] {
  return [...new Set(modes.flatMap((m) => m.elements.map((e) => e.split("#")[0] ?? e)))];
}

/** What a push has done. */
export function rackingResult(push: Push, combined: Combined): RackingResult {
  const all = combined.faults.flatMap((f) => (f.kind === "mechanism" || f.kind === "slack" ? f.modes : []));
  // a frame loose across its bents may well be braced along its walls: only what this push drives counts
  const modes = all.filter((m) => m.driven || Math.abs(dot(m.direction, push.direction)) > 0.5);
  const stands = modes.length === 0;
  return {
    toward: push.toward,
    stands,
    moving: stands ? [] : movingIn(modes),
    direction: modes[0]?.direction ?? push.direction,
  };
}
