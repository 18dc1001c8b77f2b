/**
 * Many combinations of a few basic loads on one factorisation. Each basic load is solved once with every one-way member
 * in action; a combination is a sum of those, plus what the members that let go do, which are found in the small space of
 * one-way strains. What a member that lets go sets free is solved once too, and enters with a factor.
 *
 * Equilibrium of each basic load is verified at every node, stick by stick, and so is that of every member set free; what
 * a combination leaves unbalanced is about the sum of theirs at the most, and what members that let go still seem to carry.
 * Where that is more than rounding, the combination itself is verified so, and refined.
 */
import { faultsOf, readNodeLoads } from "./case-loads.ts";
import { type Combined, failedCombination, type LoadTerm, Sum, sumOf, type Term } from "./combined.ts";
import { ENDS } from "./element-stiffness.ts";
import type { CaseFault } from "./faults.ts";
import { type Answer, Answers, addOwn, MOST_REFINEMENTS, REFINED, tipsOf } from "./linear-answer.ts";
import { addScaled, describe, drives, type Stability } from "./mechanism.ts";
import { at, bump, int } from "./numbers.ts";
import { once } from "./once.ts";
import {
  dropping,
  MOST_KEPT,
  type OneWayMembers,
  type Outcome,
  ownLoads,
  type Start,
  type StickEnds,
  settle,
} from "./one-way.ts";
import { StickMatrix } from "./stick-matrix.ts";
import type { LoadCase } from "./structure.ts";
import type { Stick, System } from "./system.ts";
import { NO_LOADS, OWN, type SummedLoads } from "./unit-loads.ts";

/** A basic load: what it does with every one-way member in action. */
interface Basic extends Answer {
  readonly strains: Float64Array;
  /** forces that the loads put on all motions; the largest on a free one */
  readonly pushed: Float64Array;
  readonly hardest: number;
  readonly loads: SummedLoads;
  readonly own: Float64Array;
  readonly hang: Float64Array;
  /** turns of joints that nothing resists and that it would turn */
  readonly turns: boolean;
}

interface Part {
  readonly by: number;
  readonly answer: Basic;
}

export interface Superposition {
  /** Why a basic load could not be taken; then every combination with it fails. */
  readonly faults: readonly CaseFault[];
  /** @param factors one for each basic load, in their order */
  readonly combine: (id: string, factors: ArrayLike<number>) => Combined;
}

const NOUGHT = 1e-8;
/** With more members out of action than this, what they set free is solved in one. */
const MANY = 12;

/** Of a structure that cannot be analysed: every combination fails for the same reasons. */
export function nothingToCombine(faults: readonly CaseFault[]): Superposition {
  return { faults, combine: (id) => failedCombination(id, faults) };
}

/**
 * @returns what makes superpositions of basic loads, each solved once; they must be without settlements or lack of fit,
 * which would not scale with the factors
 */
export function superposer(
  system: System,
  stability: Stability,
  members: OneWayMembers,
  tolerance: number,
): (cases: readonly LoadCase[]) => Superposition {
  const combiner = once(() => new Combiner(system, stability, members, tolerance));
  return (cases) => {
    const read = cases.map((given) => combiner().basicOf(given));
    const faults = read.flatMap((b) => ("motions" in b ? [] : b));
    return {
      faults,
      combine: (id, factors) => {
        const parts: Part[] = [];
        for (let n = 0; n < read.length; n++) {
          const by = factors[n] ?? 0;
          const answer = read[n];
          if (by === 0 || !answer) continue;
          if (!("motions" in answer)) return failedCombination(id, faults);
          parts.push({ by, answer });
        }
        return combiner().combine(id, parts);
      },
    };
  };
}

class Combiner {
  readonly #system: System;
  readonly #stability: Stability;
  readonly #members: OneWayMembers;
  readonly #answers: Answers;
  readonly #tolerance: number;
  readonly #basics = new WeakMap<LoadCase, Basic | readonly CaseFault[]>();
  readonly #free: (Answer | undefined)[] = [];
  readonly #keeps: boolean;
  readonly #none: SummedLoads;

  constructor(system: System, stability: Stability, members: OneWayMembers, tolerance: number) {
    this.#system = system;
    this.#stability = stability;
    this.#members = members;
    this.#answers = new Answers(system, stability, new StickMatrix(system));
    this.#tolerance = tolerance;
    this.#none = NO_LOADS(system.sticks.length);
    this.#keeps = members.size * (system.size + ENDS * system.sticks.length) <= 2 * MOST_KEPT;
  }

  basicOf(given: LoadCase): Basic | readonly CaseFault[] {
    const basic = this.#basics.get(given) ?? this.#solve(given);
    this.#basics.set(given, basic);
    return basic;
  }

  #solve(given: LoadCase): Basic | readonly CaseFault[] {
    const system = this.#system;
    const { faults, fault } = faultsOf(given);
    const applied = readNodeLoads(system, given, fault);
    const { made } = system;
    const loads = made.loads.get(given) ?? made.units.sum(given.elementLoads ?? [], fault);
    if (faults.length > 0) return faults.map((f): CaseFault => ({ kind: "input", fault: f }));
    made.loads.set(given, loads);
    const pushed = this.#answers.pushed(applied, loads);
    const answer = this.#answers.of(applied, loads, this.#members.flex(pushed));
    const { idle } = this.#stability;
    return {
      ...answer,
      strains: this.#members.strains(answer.motions),
      pushed,
      hardest: this.#answers.largestFree(pushed),
      loads,
      ...ownLoads(this.#members, system, (stick) => endsIn(loads, stick)),
      turns: idle.some((u) => drives(pushed, u, 1e-6)),
    };
  }

  combine(id: string, parts: readonly Part[]): Combined {
    const system = this.#system;
    const { mechanisms, idle, reach } = this.#stability;
    const members = this.#members;
    const failed = (fault: CaseFault): Combined => failedCombination(id, [fault]);
    const pushed = once(() => this.#sum(parts, (b) => b.pushed, system.size));
    const modes = mechanisms.map((u) => describe(system, u, drives(pushed(), u, NOUGHT), reach));
    if (parts.some(({ answer }) => answer.turns))
      for (const u of idle) if (drives(pushed(), u, 1e-6)) modes.push(describe(system, u, true, reach));
    if (modes.length > 0) return failed({ kind: "mechanism", modes, dropped: [] });

    const hang = this.#sum(parts, (b) => b.hang, members.size);
    const strains = this.#sum(parts, (b) => b.strains, members.size);
    const own = this.#sum(parts, (b) => b.own, members.units.length);
    const nought = NOUGHT * parts.reduce((sum, { by, answer }) => sum + Math.abs(by) * answer.hardest, 0);
    const outcome = settle(members, { strains, own, hang, nought, work: workOf(members, pushed, hang) });
    const names = (list: readonly number[]): string[] => list.map((n) => members.units[n]?.of.id ?? "");
    if (outcome.kind === "unsettled")
      return failed({ kind: "unsettled", tries: outcome.tries, members: names(outcome.dropped) });
    if (outcome.kind === "mechanism")
      return failed({
        kind: "mechanism",
        modes: [describe(system, outcome.motion, true, reach)],
        dropped: names(outcome.dropped),
      });
    const slack: CaseFault[] =
      outcome.kind === "slack"
        ? [
            {
              kind: "slack",
              modes: [describe(system, outcome.motion, false, reach)],
              members: names(outcome.atZero),
            },
          ]
        : [];
    return this.#state(id, parts, outcome, names(outcome.dropped), slack);
  }

  #sum(parts: readonly Part[], of: (b: Basic) => Float64Array, length: number): Float64Array {
    const out = new Float64Array(length);
    for (const { by, answer } of parts) addScaled(out, by, of(answer));
    return out;
  }

  /** What members that let go do: each by its strain, or all in one. */
  #freed(outcome: Outcome): readonly Term[] {
    const { mu, dropped } = outcome;
    const { units } = this.#members;
    if (this.#keeps && dropped.length <= MANY)
      return dropped.flatMap((n) => {
        const unit = units[n];
        return (unit?.modes ?? []).map((_, m) => {
          const strain = (unit?.first ?? 0) + m;
          return { by: at(mu, strain), answer: this.#freeOf(strain) };
        });
      });
    return dropped.length > 0 ? [{ by: 1, answer: this.#freedInOne(outcome) }] : [];
  }

  #freeOf(strain: number): Answer {
    const known = this.#free[strain];
    if (known) return known;
    const made = this.#answers.of(
      this.#members.unitLoad(strain),
      this.#none,
      this.#members.unitMotion(strain),
    );
    this.#free[strain] = made;
    return made;
  }

  #freedInOne({ mu, dropped }: Outcome): Answer {
    const applied = this.#members.load(mu, dropped);
    return this.#answers.of(applied, this.#none, this.#members.flex(applied));
  }

  #state(
    id: string,
    parts: readonly Part[],
    outcome: Outcome,
    dropped: readonly string[],
    faults: readonly CaseFault[],
  ): Combined {
    const system = this.#system;
    const first: readonly Term[] = [...parts, ...this.#freed(outcome)];
    let { tips, links, left, force } = this.#sums(parts, first, outcome.dropped, outcome.mu);
    let terms = first;
    let reactions: Float64Array | undefined;
    if (left > REFINED * force) {
      const refined = this.#refined(parts, first, outcome);
      terms = refined.terms;
      ({ tips, links, force } = this.#sums(parts, terms, outcome.dropped, refined.mu));
      ({ left, reactions } = refined);
    }
    const residual = force > 0 ? left / force : left;
    if (!(residual <= this.#tolerance && Number.isFinite(force)))
      return failedCombination(id, [{ kind: "inaccurate", residual, tolerance: this.#tolerance, node: "" }]);
    const status = faults.length > 0 ? "slack" : "sound";
    const loads = parts.map(({ by, answer }): LoadTerm => ({ by, loads: answer.loads }));
    return new Sum({ id, status, faults, tips, links, dropped, residual, reactions }, system, terms, loads);
  }

  /** Forces of all terms, with members out of action that let go; the largest, and about how much is left at the most. */
  #sums(
    parts: readonly Part[],
    terms: readonly Term[],
    dropped: readonly number[],
    mu: Float64Array,
  ): { tips: Float64Array; links: Float64Array; left: number; force: number } {
    const tips = sumOf(terms, "tips", ENDS * this.#system.sticks.length);
    const links = sumOf(terms, "links", this.#system.links.length);
    let left = terms.reduce((sum, { by, answer }) => sum + Math.abs(by) * answer.left, 0);
    for (const n of dropped) left += this.#letGo(n, parts, mu, tips, links);
    return { tips, links, left, force: this.#answers.largest(tips) };
  }

  /**
   * Where little holds a frame without the members that let go, the sum is not near enough: what it leaves at the nodes is
   * worked out stick by stick, and solved for.
   */
  #refined(
    parts: readonly Part[],
    first: readonly Term[],
    { dropped, mu: before }: Outcome,
  ): {
    readonly terms: readonly Term[];
    readonly mu: Float64Array;
    readonly left: number;
    readonly reactions: Float64Array;
  } {
    const { size } = this.#system;
    const members = this.#members;
    const answers = this.#answers;
    const pushed = this.#sum(parts, (b) => b.pushed, size);
    const letGo = new Map(dropped.map((n) => this.#instead(n, parts)));
    const correct = dropping(members, dropped);
    const mu = before.slice();
    let motions = sumOf(first, "motions", size);
    let rest = answers.rest(motions, pushed, letGo);
    const terms = [...first];
    for (let n = 0; n < MOST_REFINEMENTS; n++) {
      const more = correct(rest);
      const better = motions.slice();
      addScaled(better, 1, more.motions);
      const next = answers.rest(better, pushed, letGo);
      if (!(answers.largestFree(next) < answers.largestFree(rest))) break;
      motions = better;
      addScaled(mu, 1, more.mu);
      terms.push({ by: 1, answer: answers.under(more.motions, members.load(more.mu, dropped), this.#none) });
      rest = next;
    }
    const needs = rest.map((v) => -v);
    return { terms, mu, left: answers.largestFree(rest), reactions: answers.reactions(needs, motions) };
  }

  /** A member that let go, by its part, and the forces at a stick's ends that hang, less those while it is held fast. */
  #instead(n: number, parts: readonly Part[]): readonly [part: number, ends: Float64Array] {
    const part = this.#members.units[n]?.part ?? -1;
    const ends = new Float64Array(ENDS);
    for (const { by, answer } of parts) {
      if ((answer.loads.from[part] ?? -1) < 0) continue;
      addOwn(answer.loads, part, OWN.hung, ends, 0, by);
      addOwn(answer.loads, part, OWN.ends, ends, 0, -by);
    }
    return [part, ends];
  }

  /**
   * Takes what a member that let go would carry out of the sums.
   * @returns by how much that differs from what took its place: were it not nought, nodes would be left with it
   */
  #letGo(
    n: number,
    parts: readonly Part[],
    mu: Float64Array,
    tips: Float64Array,
    links: Float64Array,
  ): number {
    const unit = this.#members.units[n];
    if (!unit) return 0;
    const stick = this.#system.sticks[unit.part];
    if (!stick) {
      const link = unit.part - this.#system.sticks.length;
      const stiffness = this.#system.links[link]?.link.stiffness ?? 0;
      const off = Math.abs(at(links, link) - Math.sqrt(stiffness) * at(mu, unit.first));
      links[link] = 0;
      return off;
    }
    const from = ENDS * unit.part;
    const hung = new Float64Array(ENDS);
    for (const { by, answer } of parts)
      if (int(answer.loads.from, unit.part) >= 0) addHung(answer.loads, stick, by, hung);
    const off = tips.slice(from, from + ENDS);
    addScaled(off, -1, hung);
    const modes = stick.localModes();
    for (let m = 0; m < modes.length; m++) {
      const by = at(mu, unit.first + m);
      const b = modes[m] as Float64Array;
      for (let k = 0; k < ENDS; k++) bump(off, k, (k < 6 ? by : -by) * at(b, k));
    }
    tips.set(hung, from);
    return this.#answers.largest(off);
  }
}

/** Ends of a stick under its own loads: held fast, and only hanging; undefined where it has none. */
function endsIn({ from, figures }: SummedLoads, stick: number): StickEnds | undefined {
  const row = from[stick] ?? -1;
  const part = (what: number): Float64Array => figures.subarray(row + what, row + what + ENDS);
  return row < 0 ? undefined : { ends: part(OWN.ends), hung: part(OWN.hung) };
}

/** sections += those at the ends of a stick that has let go and only hangs in its joints, by a factor. */
function addHung(loads: SummedLoads, { index, axes }: Stick, by: number, sections: Float64Array): void {
  const own = new Float64Array(ENDS);
  tipsOf(loads.figures, int(loads.from, index) + OWN.hung, axes.length, own, 0);
  addOwn(loads, index, OWN.tips, own, 0);
  addScaled(sections, by, own);
}

/** Work of the loads along a motion that only the dropped members would resist. */
function workOf(members: OneWayMembers, pushed: () => Float64Array, hang: Float64Array): Start["work"] {
  return (motion, dropped) => {
    let [work, size] = [0, 0];
    const add = (w: number): void => {
      work += w;
      size += Math.abs(w);
    };
    for (let k = 0; k < motion.length; k++) add(at(motion, k) * at(pushed(), k));
    const along = members.strains(motion);
    for (const n of dropped) {
      const unit = members.units[n];
      unit?.modes.forEach((_, m) => {
        add(at(along, unit.first + m) * at(hang, unit.first + m));
      });
    }
    return { work, size };
  };
}
