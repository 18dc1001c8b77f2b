/** The combinations that have an answer, made ready for the checks of timbers: what each timber asks of them is at hand. */
import type { SummedLoads } from "../analysis/unit-loads.ts";
import type { Factor } from "../sourced.ts";
import { isLeastDead } from "./basic-loads.ts";
import { isSolved } from "./force-table.ts";
import type { SolvedCase } from "./solve-frame.ts";

export interface ShownCase {
  readonly solved: SolvedCase;
  /** forces at the ends of all elements, those of the combination */
  readonly tips: Float64Array;
  /** among all combinations solved */
  readonly index: number;
  /** index of its C_D among those in use */
  readonly duration: number;
  /** indices of the loads of its sticks among those in use, and the factor of each */
  readonly loads: Int32Array;
  readonly factors: Float64Array;
  /** of a pier, upwards, lb */
  readonly reaction: (node: number) => number;
  /** of dead load; undefined where nothing of it bends further than elsewhere */
  readonly share: number | undefined;
  readonly comesAndGoes: boolean;
}

export interface ShownCases {
  readonly cases: readonly ShownCase[];
  /** one for each value of C_D */
  readonly durations: readonly Factor[];
  readonly loads: readonly SummedLoads[];
}

/** Only dead load: nothing comes and goes. */
function isPermanent(solved: SolvedCase): boolean {
  return solved.frameCase.parts.every((p) => p.load.kind === "D");
}

/**
 * None for what only holds the frame down: there wind and dead load bend against each other, and less than the wind alone in
 * D + 0.6 W or dead load alone in D; where they bend the same way, D + 0.6 W bends further (derived).
 */
function deadShare({ frameCase: { parts } }: SolvedCase): number | undefined {
  const dead = parts.find((p) => p.load.kind === "D");
  if (!dead) return 0;
  return isLeastDead(dead.load) ? undefined : dead.factor;
}

/** @param onGround whether a lying timber rests on a pier, so that reactions are asked for */
export function shownCases(cases: readonly SolvedCase[], onGround: boolean): ShownCases {
  const durations: Factor[] = [];
  const loads = new Map<SummedLoads, number>();
  const placeOf = (duration: Factor): number => {
    const known = durations.findIndex(({ value }) => value === duration.value);
    return known >= 0 ? known : durations.push(duration) - 1;
  };
  const numberOf = (load: SummedLoads): number => {
    const known = loads.get(load) ?? loads.size;
    loads.set(load, known);
    return known;
  };
  const shown = cases.flatMap((solved, index): ShownCase[] => {
    if (!isSolved(solved)) return [];
    const { combined, frameCase } = solved;
    const reactions = onGround ? new Map(combined.reactions().map((r) => [r.node, r.force[2]])) : undefined;
    return [
      {
        solved,
        tips: combined.tips,
        index,
        duration: placeOf(frameCase.combination.duration),
        loads: Int32Array.from(combined.loads, (term) => numberOf(term.loads)),
        factors: Float64Array.from(combined.loads, ({ by }) => by),
        reaction: (node) => reactions?.get(node) ?? 0,
        share: deadShare(solved),
        comesAndGoes: !isPermanent(solved),
      },
    ];
  });
  return { cases: shown, durations, loads: [...loads.keys()] };
}

/** Whether a ratio is worse than what is kept; of equal ones the earlier case counts, in whatever order they come. */
export function beats(
  kept: { readonly ratio: number; readonly solved: number },
  ratio: number,
  index: number,
): boolean {
  return ratio > kept.ratio || (ratio === kept.ratio && ratio > 0 && index < kept.solved);
}
