/**
 * Whether braces hold the frame upright: its own weight with two percent of it sideways, each way along the walls and
 * across them, braces that only push (design, section 6). A mechanism names what moves.
 */
import { prepare } from "../analysis/analyse.ts";
import type { Mode } from "../analysis/faults.ts";
import type { Model } from "../model/model.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import type { BasicLoads } from "./basic-loads.ts";
import { loadCase } from "./element-loads.ts";
import type { RackingResult } from "./frame-results.ts";
import type { LineLoad } from "./line-loads.ts";
import { skeletonOf } from "./skeleton.ts";
import { structureOf } from "./structure.ts";
import { modulusOf } from "./timber-wood.ts";

/** Sideways push as a share of the weight (common practice, no source). */
const SHARE = 0.02;

const WAYS: readonly { readonly toward: RackingResult["toward"]; readonly direction: Vec3 }[] = [
  { toward: "+x", direction: [1, 0, 0] },
  { toward: "-x", direction: [-1, 0, 0] },
  { toward: "+y", direction: [0, 1, 0] },
  { toward: "-y", direction: [0, -1, 0] },
];

function sideways(load: LineLoad, direction: Vec3): LineLoad {
  const turned = (f: Vec3): Vec3 => {
    const w = -f[2] * SHARE;
    return [direction[0] * w, direction[1] * w, 0];
  };
  return { ...load, startForce: turned(load.startForce), endForce: turned(load.endForce) };
}

/** Ids of the timbers that shift in some mode; `post@A1#2` is a piece of `post@A1`. */
function movingIn(modes: readonly Mode[]): string[] {
  return [...new Set(modes.flatMap((m) => m.elements.map((e) => e.split("#")[0] ?? e)))];
}

/** @returns one result for each way along the walls (x) and across them (y) */
export function rackingOf(model: Model, loads: BasicLoads): RackingResult[] {
  const dead = loads.all.find((l) => l.kind === "D");
  const skeleton = skeletonOf(model);
  if (!dead || skeleton.pieces.length === 0) return [];
  const frame = structureOf(
    model,
    { seats: "hold", modulus: modulusOf, pulls: () => false, endSpring: () => undefined },
    skeleton,
  );
  const prepared = prepare(frame.structure);
  return WAYS.map(({ toward, direction }) => {
    const pushed = dead.loads.map((l) => sideways(l, direction));
    const result = prepared.solve(
      loadCase(frame, `racking ${toward}`, [
        { loads: dead.loads, factor: 1 },
        { loads: pushed, factor: 1 },
      ]),
    );
    const all = result.faults.flatMap((f) => (f.kind === "mechanism" || f.kind === "slack" ? f.modes : []));
    // a frame loose across its bents may well be braced along its walls: only what this push drives counts
    const modes = all.filter((m) => m.driven || Math.abs(dot(m.direction, direction)) > 0.5);
    const stands = modes.length === 0;
    return {
      toward,
      stands,
      moving: stands ? [] : movingIn(modes),
      direction: modes[0]?.direction ?? direction,
    };
  });
}
