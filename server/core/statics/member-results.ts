/**
 * Every timber of a frame held against the NDS under every solved combination, both models of the rafters' seats: the
 * worst of each kind of check, with the combination, the place and all that its limit is made of.
 *
 * Not checked here: torsion, tension across the grain, and joints (pegs, tenons), which have checks of their own.
 */

import { at } from "../analysis/numbers.ts";
import { groupBy } from "../collect.ts";
import { totalDeflection } from "../members/deflection.ts";
import { deflectionShare } from "../members/deflection-limits.ts";
import type { Factor } from "../sourced.ts";
import { isLeastDead } from "./basic-loads.ts";
import { type Bearing, pressing } from "./bearing-force.ts";
import { alongChord, bentLine, type DeflectionPlan, offChord, type Stretch, sunk } from "./deflections.ts";
import { isSolved, PLACES, rowOf } from "./force-table.ts";
import type { MemberResult, MemberUse } from "./frame-results.ts";
import type { MemberBasis } from "./member-basis.ts";
import { bearingLimit, bearingStress } from "./member-bearing.ts";
import type { MemberPlan } from "./member-plan.ts";
import { TimberStress } from "./member-stresses.ts";
import { caseNames, ordered, slendernessUse, stressUses } from "./member-uses.ts";
import { type DurationValues, durationValues } from "./member-values.ts";
import type { SolvedCase } from "./solve-frame.ts";

interface BearingWorst {
  readonly bearing: Bearing;
  /** psi, by value of C_D */
  readonly limits: Map<number, number>;
  ratio: number;
  value: number;
  limit: number;
  force: number;
  solved: number;
}

interface DeflectionWorst {
  ratio: number;
  value: number;
  limit: number;
  solved: number;
  x: number;
  long: number;
  short: number;
}

/** All that is kept of one timber while the combinations go by. */
interface Tally {
  readonly plan: MemberPlan;
  readonly stress: TimberStress;
  readonly bearings: readonly BearingWorst[];
  readonly bend: DeflectionPlan | undefined;
  readonly live: DeflectionWorst;
  readonly total: DeflectionWorst;
  /** bent line under the load at hand; EI times, lb·in³ */
  readonly line: Float64Array;
  /** how far dead load bends each place of its stretches, by the model of the seats, in */
  readonly dead: Partial<Record<SolvedCase["seats"], ReadonlyMap<Stretch, Float64Array>>>;
}

/** A combination with an answer, made ready for the checks. */
interface Shown {
  readonly solved: SolvedCase;
  readonly index: number;
  readonly reaction: (node: number) => number;
  /** of dead load; undefined where nothing of it bends further than elsewhere */
  readonly share: number | undefined;
  readonly comesAndGoes: boolean;
}

const noDeflection = (): DeflectionWorst => ({
  ratio: 0,
  value: 0,
  limit: 0,
  solved: -1,
  x: 0,
  long: 0,
  short: 0,
});

function valuesOf(tally: Tally, duration: Factor): DurationValues {
  const { plan } = tally;
  const known = plan.values.get(duration.value);
  if (known) return known;
  const values = durationValues(plan.timber, plan.wood, plan.lengths, duration, plan.repetitive);
  plan.values.set(duration.value, values);
  return values;
}

/** Whether a ratio is worse than what is kept; of equal ones the earlier case counts, in whatever order they come. */
function beats(
  kept: { readonly ratio: number; readonly solved: number },
  ratio: number,
  index: number,
): boolean {
  return ratio > kept.ratio || (ratio === kept.ratio && ratio > 0 && index < kept.solved);
}

function press(
  tally: Tally,
  v: DurationValues,
  solved: SolvedCase,
  reaction: (node: number) => number,
  index: number,
): void {
  for (const own of tally.bearings) {
    const force = pressing(own.bearing.source, solved, reaction);
    if (!(force > 0)) continue;
    const duration = v.duration.value;
    let limit = own.limits.get(duration);
    if (limit === undefined) {
      limit = bearingStress(own.bearing, v);
      own.limits.set(duration, limit);
    }
    const value = force / own.bearing.area;
    if (!beats(own, value / limit, index)) continue;
    own.ratio = value / limit;
    own.value = value;
    own.force = force;
    own.limit = limit;
    own.solved = index;
  }
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

/**
 * How far a place counts as bent, in. A tail only down: one that its span bends up, or that wind lifts, does not sag, and
 * no covering suffers from it (judgment). A span bends either way between its supports.
 */
function counted(inches: number, down: number, tail: boolean): number {
  return tail ? Math.max(0, down * inches) : Math.abs(inches);
}

function keepBent(
  kept: DeflectionWorst,
  value: number,
  limit: number,
  index: number,
  x: number,
  long: number,
  short: number,
): void {
  kept.ratio = value / limit;
  kept.value = value;
  kept.limit = limit;
  kept.solved = index;
  kept.x = x;
  kept.long = long;
  kept.short = short;
}

/** @param share of dead load in the combination; @param comesAndGoes some of its load does */
function bend(
  tally: Tally,
  v: DurationValues,
  { seats, combined }: SolvedCase,
  share: number,
  comesAndGoes: boolean,
  table: Float64Array,
  index: number,
): void {
  const { bend: plan, line, dead } = tally;
  if (!plan) return;
  const { timber, elements } = plan.plan;
  const EI = stiffnessOf(plan.plan, v);
  for (const element of elements) combined.writeSections(element, table);
  bentLine(elements, plan.lengths, table, line);
  const permanent = dead[seats];
  const creep = plan.creep.value;
  // the bent line runs along the depth, whichever way that points
  const down = timber.depthDir[2] > 0 ? -1 : 1;
  for (const stretch of plan.stretches) {
    const { chord, places, sinks, tail } = stretch;
    const all = stretch.length / plan.limits.total;
    const live = stretch.length / plan.limits.live;
    const goesDown = sinks ? sunk(stretch, timber.depthDir, (node) => combined.displacement(node)) : 0;
    const lasting = permanent?.get(stretch);
    for (let n = 0; n < places.length; n++) {
      const place = places[n] as number;
      const part = sinks ? alongChord(plan.x, place, chord) : 0;
      const whole = offChord(line, plan.x, place, chord) / EI + part * goesDown;
      const long = lasting ? share * at(lasting, n) : 0;
      const short = whole - long;
      const x = plan.x[place] as number;
      const sum = counted(totalDeflection(creep, long, short), down, tail);
      if (beats(tally.total, sum / all, index)) keepBent(tally.total, sum, all, index, x, long, short);
      if (!comesAndGoes || !permanent) continue;
      const coming = counted(short, down, tail);
      if (beats(tally.live, coming / live, index)) keepBent(tally.live, coming, live, index, x, long, short);
    }
  }
}

/** EI of a timber on edge, lb·in². */
const stiffnessOf = ({ timber }: MemberPlan, { E }: DurationValues): number =>
  (E.value * timber.width * timber.depth ** 3) / 12;

/** Dead load first: what other combinations bend is told from it. */
function keepDead(tallies: readonly Tally[], cases: readonly SolvedCase[], table: Float64Array): void {
  for (const solved of cases) {
    if (!isPermanent(solved) || !isSolved(solved)) continue;
    const { seats, combined, frameCase } = solved;
    for (const tally of tallies) {
      const { plan, bend: bent, line } = tally;
      if (!bent || tally.dead[seats]) continue;
      const EI = stiffnessOf(plan, valuesOf(tally, frameCase.combination.duration));
      for (const element of plan.elements) combined.writeSections(element, table);
      bentLine(plan.elements, bent.lengths, table, line);
      tally.dead[seats] = new Map(
        bent.stretches.map((stretch) => {
          const { places, chord, sinks } = stretch;
          const goesDown = sinks
            ? sunk(stretch, plan.timber.depthDir, (node) => combined.displacement(node))
            : 0;
          const off = (place: number): number =>
            offChord(line, bent.x, place, chord) / EI +
            (sinks ? alongChord(bent.x, place, chord) * goesDown : 0);
          return [stretch, Float64Array.from(places, off)];
        }),
      );
    }
  }
}

function bearingUses(tally: Tally, names: ReturnType<typeof caseNames>): MemberUse[] {
  const own = tally.bearings.reduce<BearingWorst | undefined>(
    (most, b) => (b.solved >= 0 && b.ratio > (most?.ratio ?? 0) ? b : most),
    undefined,
  );
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
  const { bend: plan, live, total } = tally;
  if (!plan || !E) return [];
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
  shown: readonly Shown[],
  before: ReadonlyMap<string, MemberResult> | undefined,
): (timber: string) => readonly Shown[] {
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
  const tallies = plans.map(
    (plan): Tally => ({
      plan,
      stress: new TimberStress(plan),
      bearings: (bearings.get(plan.timber.id) ?? []).map((bearing) => ({
        bearing,
        limits: new Map(),
        ratio: 0,
        value: 0,
        limit: 0,
        force: 0,
        solved: -1,
      })),
      bend: bends.get(plan),
      live: noDeflection(),
      total: noDeflection(),
      line: new Float64Array(plan.elements.length * PLACES.length),
      dead: {},
    }),
  );
  const elements = plans.reduce((most, plan) => Math.max(most, ...plan.elements.map((e) => e + 1)), 0);
  // forces along the timber at hand; every element has its own place in it
  const table = new Float64Array(rowOf(elements, 0));
  keepDead(tallies, cases, table);
  const shown = cases.flatMap((solved, index): Shown[] => {
    if (!isSolved(solved)) return [];
    const reactions = onGround
      ? new Map(solved.combined.reactions().map((r) => [r.node, r.force[2]]))
      : undefined;
    return [
      {
        solved,
        index,
        reaction: (node) => reactions?.get(node) ?? 0,
        share: deadShare(solved),
        comesAndGoes: !isPermanent(solved),
      },
    ];
  });
  const leading = leadingCases(shown, before);
  // one timber after another, each under all combinations: what it is held against is at hand while it is needed
  for (const tally of tallies)
    for (const list of [leading(tally.plan.timber.id), shown])
      for (const { solved, index, reaction, share, comesAndGoes } of list) {
        const v = valuesOf(tally, solved.frameCase.combination.duration);
        tally.stress.show(v, solved.combined, table, index);
        press(tally, v, solved, reaction, index);
        if (share !== undefined) bend(tally, v, solved, share, comesAndGoes, table, index);
      }
  const names = caseNames(cases);
  return new Map(
    tallies.map((tally): [string, MemberResult] => {
      const { plan, stress } = tally;
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
