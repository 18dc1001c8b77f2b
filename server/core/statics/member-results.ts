/**
 * Every timber of a frame held against the NDS under every solved combination, both models of the rafters' seats: the
 * worst of each kind of check, with the combination, the place and all that its limit is made of.
 *
 * Not checked here: torsion, tension across the grain, and joints (pegs, tenons), which have checks of their own.
 */

import { groupBy } from "../collect.ts";
import { deflectionShare } from "../members/deflection-limits.ts";
import type { Factor } from "../sourced.ts";
import { rowOf } from "./force-table.ts";
import type { MemberResult, MemberUse } from "./frame-results.ts";
import type { MemberBasis } from "./member-basis.ts";
import { bearingLimit, bearingStress } from "./member-bearing.ts";
import type { MemberPlan } from "./member-plan.ts";
import { TimberStress } from "./member-stresses.ts";
import { caseNames, ordered, slendernessUse, stressUses } from "./member-uses.ts";
import { type DurationValues, durationValues } from "./member-values.ts";
import { type ShownCase, type ShownCases, shownCases } from "./shown-case.ts";
import type { SolvedCase } from "./solve-frame.ts";
import { type BearingWorst, worstBearing } from "./timber-bearing.ts";
import { TimberBend } from "./timber-bend.ts";

/** All that is kept of one timber while the combinations go by. */
interface Tally {
  readonly plan: MemberPlan;
  readonly stress: TimberStress;
  readonly bearing: BearingWorst | undefined;
  readonly bend: TimberBend | undefined;
}

function valuesOf(plan: MemberPlan, duration: Factor): DurationValues {
  const known = plan.values.get(duration.value);
  if (known) return known;
  const values = durationValues(plan.timber, plan.wood, plan.lengths, duration, plan.repetitive);
  plan.values.set(duration.value, values);
  return values;
}

function bearingUses(tally: Tally, names: ReturnType<typeof caseNames>): MemberUse[] {
  const own = tally.bearing;
  if (!own) return [];
  const values = [...tally.plan.values.values()].find((v) => bearingStress(own.bearing, v) === own.limit);
  const limit = values && bearingLimit(own.bearing, values);
  return [
    {
      what: "bearing",
      value: own.value,
      limit: own.limit,
      unit: "psi",
      ratio: own.ratio,
      ...names(own.solved),
      at: own.bearing.at,
      place: own.bearing.place,
      reference: limit?.reference,
      factors: limit?.factors ?? [],
      area: { value: own.bearing.area, source: "geometry", ...own.bearing.made },
      bearing: own.bearing,
      pressed: { force: own.force, angled: limit?.angled },
    },
  ];
}

function deflectionUses(tally: Tally, names: ReturnType<typeof caseNames>): MemberUse[] {
  const E = [...tally.plan.values.values()][0]?.E;
  if (!tally.bend || !E) return [];
  const { plan, live, total } = tally.bend;
  return (
    [
      ["live-deflection", live, E.factors, "live"],
      ["total-deflection", total, [...E.factors, plan.creep], "total"],
    ] as const
  ).flatMap(([what, w, factors, load]): MemberUse[] =>
    w.solved < 0
      ? []
      : [
          {
            what,
            value: w.value,
            limit: w.limit,
            unit: "in",
            ratio: w.ratio,
            ...names(w.solved),
            at: w.x,
            place: undefined,
            share: deflectionShare(plan.rule, load, w.limit),
            bent: { long: w.long, short: w.short },
            reference: E.reference,
            factors,
          },
        ],
  );
}

/** The combinations that asked most of a timber before: with them looked at first, most others need no closer look. */
function leadingCases(
  shown: readonly ShownCase[],
  before: ReadonlyMap<string, MemberResult> | undefined,
): (timber: string) => readonly ShownCase[] {
  const byId = groupBy(before ? shown : [], ({ solved }) => solved.frameCase.id);
  return (timber) => {
    const ids = new Set(before?.get(timber)?.uses.map(({ caseId }) => caseId));
    return [...ids].flatMap((id) => byId.get(id) ?? []);
  };
}

/**
 * @param cases every combination solved, of the frame that `basis` is of
 * @param before results of the frame as it was: they only say where to look first
 * @returns by timber id
 */
export function memberResults(
  { plans, bearings, bends, onGround }: MemberBasis,
  cases: readonly SolvedCase[],
  before?: ReadonlyMap<string, MemberResult>,
): Map<string, MemberResult> {
  const shown = shownCases(cases, onGround);
  const leading = leadingCases(shown.cases, before);
  const names = caseNames(cases);
  const elements = plans.reduce((most, plan) => Math.max(most, ...plan.elements.map((e) => e + 1)), 0);
  // forces along the timber at hand; every element has its own place in it
  const table = new Float64Array(rowOf(elements, 0));
  // one timber after another, each under all combinations: what it is held against is at hand while it is needed
  return new Map(
    plans.map((plan): [string, MemberResult] => {
      const tally = tallyOf(plan, shown, leading(plan.timber.id), { bearings, bends }, table);
      const { stress } = tally;
      const uses = ordered([
        ...stressUses(plan, stress, names),
        ...bearingUses(tally, names),
        ...deflectionUses(tally, names),
        ...slendernessUse(plan, stress.worst("compression"), names),
      ]);
      return [plan.timber.id, { timber: plan.timber, wood: plan.wood, uses }];
    }),
  );
}

/** One timber under all combinations. @param leading those to look at first; @param table is written to */
function tallyOf(
  plan: MemberPlan,
  shown: ShownCases,
  leading: readonly ShownCase[],
  { bearings, bends }: Pick<MemberBasis, "bearings" | "bends">,
  table: Float64Array,
): Tally {
  const { cases, durations } = shown;
  const values = durations.map((duration) => valuesOf(plan, duration));
  const stress = new TimberStress(plan);
  const bent = bends.get(plan);
  const bend = bent && new TimberBend(bent, shown.loads);
  for (const { solved, duration, comesAndGoes } of bend ? cases : [])
    if (!comesAndGoes) bend?.keepDead(values[duration] as DurationValues, solved, table);
  const seen = new Set(leading);
  for (const list of [leading, cases])
    for (const one of list) {
      if (list === cases && seen.has(one)) continue;
      const v = values[one.duration] as DurationValues;
      stress.show(v, one.solved.combined, table, one.index);
      bend?.show(v, one, table);
    }
  return { plan, stress, bend, bearing: worstBearing(bearings.get(plan.timber.id) ?? [], cases, values) };
}
