/**
 * Long partly threaded timber screws. Their makers’ values are not used: they are judged as a lag screw or wood screw of
 * the same diameter, which the maker’s evaluation report replaces.
 */
import { leastCertain, type Sourced } from "../sourced.ts";
import { endGrain } from "./connection-factors.ts";
import {
  lagLateral,
  lagPenetration,
  lagSize,
  lagThread,
  lagWithdrawal,
  type Withdrawal,
} from "./lag-screw.ts";
import type { Lateral, SidePart, WoodPart } from "./lateral.ts";
import { headPullThrough } from "./nail.ts";
import { woodScrewLateral, woodScrewThread, woodScrewWithdrawal } from "./wood-screw.ts";

export interface StructuralScrew {
  /** in, nominal (of the thread) */
  readonly diameter: number;
  /** in, under the head */
  readonly length: number;
  /** in, threaded; undefined = as a lag or wood screw of that length has */
  readonly thread?: number;
  /** in; undefined = the head is not checked for pulling through */
  readonly head?: number;
  readonly main: WoodPart;
  /** in, along the screw; undefined = it ends in the main member */
  readonly mainThickness?: number;
  readonly side: SidePart;
  /** the main member takes it in end grain */
  readonly endGrain?: boolean;
}

export interface StructuralScrewValue {
  readonly asIf: "lag-screw" | "wood-screw";
  readonly lateral: Lateral;
  readonly withdrawal: Withdrawal;
  readonly pullThrough: Sourced | undefined;
  /** Z, lb, with C_eg */
  readonly Z: Sourced;
  /** the lesser of thread and head, lb, with C_eg; 0 where end grain may not be relied on */
  readonly W: Sourced;
  /** the thread passes wholly into the main member, so that the screw draws the joint tight; undefined = not told how long it is */
  readonly draws: boolean | undefined;
}

const NOTE = "NDS rules for its diameter; the maker’s evaluation report governs";

/** Values of one screw through `side` into `main`; all `uncertain`, because only the maker’s report is binding. */
export function structuralScrew(screw: StructuralScrew): StructuralScrewValue {
  const { diameter, length, main, side } = screw;
  const lag = diameter >= 0.25 - 1e-9;
  const tip = lag ? lagSize(diameter).tip : 0;
  const thread = Math.min(length, screw.thread ?? (lag ? lagThread(length) : woodScrewThread(length)));
  // the thread ends at the point: of one that comes out of the far face only what lies between the faces holds
  const far = side.thickness + (screw.mainThickness ?? Number.POSITIVE_INFINITY);
  const reach = Math.min(far, length - tip);
  const held = Math.max(0, reach - Math.max(side.thickness, length - thread));
  const lateral = lag
    ? lagLateral({
        diameter,
        main,
        side,
        penetration: lagPenetration(diameter, Math.min(length, far + tip), side.thickness),
      })
    : woodScrewLateral({ diameter, main, side, reach: Math.max(0, Math.min(length, far) - side.thickness) });
  const withdrawal = lag
    ? lagWithdrawal(main.G, diameter, held)
    : woodScrewWithdrawal(main.G, diameter, held);
  const pullThrough =
    screw.head !== undefined && side.kind === "wood"
      ? headPullThrough(screw.head, side.G, side.thickness)
      : undefined;
  const grain = screw.endGrain === true;
  const end = grain ? (lag ? endGrain("lag-withdrawal").value : 0) : 1;
  const W = Math.min(withdrawal.reference.value * end, pullThrough?.value ?? Number.POSITIVE_INFINITY);
  return {
    asIf: lag ? "lag-screw" : "wood-screw",
    lateral,
    withdrawal,
    pullThrough,
    Z: uncertain(lateral.reference.value * (grain ? endGrain("lateral").value : 1), lateral.reference),
    W: uncertain(W, withdrawal.reference),
    draws: screw.thread === undefined ? undefined : length - side.thickness >= screw.thread - 1e-9,
  };
}

function uncertain(value: number, from: Sourced): Sourced {
  return { value, status: leastCertain([from.status, "uncertain"]), source: `${from.source}; ${NOTE}` };
}
