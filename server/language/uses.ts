/** How far the sticks of an entry are used, from the frame analysis and the rafter checks: the worst of them. */

import type { CheckKind } from "../core/members/utilisation.ts";
import type { Timber } from "../core/model/model.ts";
import type { Results } from "../core/results.ts";
import { rafterShare } from "../core/roof/rafter-results.ts";
import type { Factor, Sourced } from "../core/sourced.ts";
import type { MemberCheck, MemberUse } from "../core/statics/frame-results.ts";

export interface WorstUse {
  readonly timber: Timber;
  readonly what: MemberCheck | CheckKind;
  readonly value: number;
  readonly limit: number;
  readonly unit: "psi" | "in" | "ratio";
  /** passes up to 1 */
  readonly ratio: number;
  /** `D + S` */
  readonly combination: string;
  /** case of the frame analysis; undefined for a rafter checked as a single beam */
  readonly caseId: string | undefined;
  /** from the foot, in; undefined where the check does not say */
  readonly at: number | undefined;
  /** what bears, where it is bearing */
  readonly area?: MemberUse["area"];
  /** what its limit is a share of, where it is deflection */
  readonly share?: MemberUse["share"];
  readonly reference: Sourced | undefined;
  readonly factors: readonly Factor[];
}

function rafterUses({ rafters }: Results, own: ReadonlySet<string>): WorstUse[] {
  return rafters.flatMap((result) => {
    const { slope, check } = result;
    const timber = slope.rafters.find(({ id }) => own.has(id));
    const { governing: use } = check;
    if (!timber) return [];
    const share = rafterShare(result, use);
    const text = check.combinations.find(({ id }) => id === use.combination)?.combination.text;
    return [
      {
        ...use,
        timber,
        combination: text ?? use.combination,
        caseId: undefined,
        at: undefined,
        ...(share ? { share } : {}),
        reference: use.reference,
      },
    ];
  });
}

/** @returns undefined for sticks that no check has judged */
export function worstUse(sticks: readonly Timber[], results: Results): WorstUse | undefined {
  const members = sticks.flatMap((timber): WorstUse[] => {
    const use = results.frame?.members.get(timber.id)?.uses[0];
    return use ? [{ ...use, timber }] : [];
  });
  const all = [...members, ...rafterUses(results, new Set(sticks.map(({ id }) => id)))];
  return all.reduce<WorstUse | undefined>(
    (worst, use) => (worst === undefined || use.ratio > worst.ratio ? use : worst),
    undefined,
  );
}
