/** The largest forces inside a timber over all combinations, each with where and under which it acts. */
import { FORCES, isSolved, PLACES, rowOf } from "./force-table.ts";
import type { SolvedCase } from "./solve-frame.ts";
import type { SeatModel } from "./structure.ts";

/**
 * lb, and lb·in for the moments. Shear and moment `depth` act in the plane of the depth (they bend the timber on edge),
 * `width` in that of the width.
 */
export type ForceKind =
  | "tension"
  | "compression"
  | "shear-depth"
  | "shear-width"
  | "torque"
  | "moment-depth"
  | "moment-width";

export interface Extreme {
  /** never negative; 0 = none under any combination */
  readonly value: number;
  /** empty for none */
  readonly caseId: string;
  readonly seats: SeatModel;
  /** axial position from the foot, in */
  readonly at: number;
}

export type MemberForces = Readonly<Record<ForceKind, Extreme>>;

/** What each number of a section's row can be the most of. */
const KINDS: readonly (readonly [above: ForceKind, below: ForceKind])[] = [
  ["tension", "compression"],
  ["shear-depth", "shear-depth"],
  ["shear-width", "shear-width"],
  ["torque", "torque"],
  ["moment-width", "moment-width"],
  ["moment-depth", "moment-depth"],
];

type Tally = Record<ForceKind, { value: number; caseId: string; seats: SeatModel; at: number }>;

const none = () => ({ value: 0, caseId: "", seats: "hold" as const, at: 0 });
const nothing = (): Tally => ({
  tension: none(),
  compression: none(),
  "shear-depth": none(),
  "shear-width": none(),
  torque: none(),
  "moment-depth": none(),
  "moment-width": none(),
});

/** @returns undefined for a timber that is not in the model: it stands on nothing, or no combination has a solution */
export function memberForces(cases: readonly SolvedCase[], timber: string): MemberForces | undefined {
  const tally = nothing();
  const sections = new Float64Array(rowOf(1, 0));
  let found = false;
  for (const solved of cases) {
    if (!isSolved(solved)) continue;
    for (const element of solved.frame.elementsOf.get(timber) ?? []) {
      const piece = solved.frame.pieces[element];
      if (!piece) continue;
      found = true;
      solved.combined.writeSections(element, sections, 0);
      PLACES.forEach((share, place) => {
        const row = rowOf(0, place);
        for (let k = 0; k < FORCES.length; k++) {
          const value = sections[row + k] ?? 0;
          const kinds = KINDS[k];
          const own = kinds && tally[value > 0 ? kinds[0] : kinds[1]];
          if (!own || Math.abs(value) <= own.value) continue;
          own.value = Math.abs(value);
          own.caseId = solved.frameCase.id;
          own.seats = solved.seats;
          own.at = piece.from + share * (piece.to - piece.from);
        }
      });
    }
  }
  return found ? tally : undefined;
}
