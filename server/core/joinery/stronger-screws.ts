/** The least change of a brace's screws that holds what loads them: longer or thicker ones, or more of them. */
import { SCREW_SLACK } from "../fasteners/screw-room.ts";
import type { Factor } from "../sourced.ts";
import { screwDistances } from "./brace-screw-room.ts";
import type { Joint } from "./joint.ts";
import type { ScrewSizes } from "./joint-sizes.ts";
import { placesOfScrews, SCREW_LENGTHS, WOOD_BEHIND } from "./kinds/screwed-brace.ts";
import { type ScrewForce, screwHold, screwUse } from "./screw-hold.ts";

export interface StrongerScrews {
  readonly count: number;
  /** in */
  readonly diameter: number;
  readonly length: number;
}

/** Sizes on sale: in, and mm. */
const DIAMETERS = [5 / 16, 3 / 8];
const DIAMETERS_METRIC = [8, 10].map((mm) => mm / 25.4);
const MOST = 6;

/** The same joint with other screws, or undefined where they do not fit its timbers. */
function fitted(joint: Joint, { count, diameter, length }: StrongerScrews): Joint | undefined {
  const set = placesOfScrews(joint, count);
  const wood = set.map((s) => s.wood);
  const crowded = screwDistances(joint, count, diameter).some(({ have, need }) => have < need - SCREW_SLACK);
  const behind = Math.min(...wood) + joint.face.thickness - joint.sizes.housing.value - WOOD_BEHIND;
  if (crowded || length > behind || length <= Math.max(...wood)) return undefined;
  const screws: ScrewSizes = {
    count,
    wood,
    columns: Math.min(2, count),
    diameter: { value: diameter, from: "file" },
    length: { value: length, from: "file" },
    angle: joint.sizes.screws?.angle ?? 0,
    breadth: joint.sizes.screws?.breadth ?? 0,
  };
  return { ...joint, sizes: { ...joint.sizes, screws } };
}

/**
 * @param loads every combination, each with its C_D
 * @returns longer before thicker before more; undefined where none that fit the two timbers hold
 */
export function strongerScrews(
  joint: Joint,
  loads: readonly (ScrewForce & { readonly duration: Factor })[],
  metric: boolean,
): StrongerScrews | undefined {
  const { screws } = joint.sizes;
  if (!screws) return undefined;
  const own = screws.diameter.value;
  const diameters = [own, ...(metric ? DIAMETERS_METRIC : DIAMETERS).filter((D) => D > own + 1e-3)];
  const counts = Array.from({ length: Math.max(0, MOST - screws.count) + 1 }, (_, i) => screws.count + i);
  const tries = counts.flatMap((count) =>
    diameters.flatMap((diameter) => SCREW_LENGTHS(metric).map((length) => ({ count, diameter, length }))),
  );
  return tries.find((each) => {
    const other = fitted(joint, each);
    return (
      other !== undefined &&
      loads.every((load) => {
        const hold = screwHold(other, load.duration);
        return hold !== undefined && screwUse(hold, load).ratio <= 1;
      })
    );
  });
}
