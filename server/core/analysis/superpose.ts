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
import type { CaseFault, Mode } from "./faults.ts";
import { LettingGo } from "./letting-go.ts";
import { type Answer, Answers, MOST_REFINEMENTS, REFINED } from "./linear-answer.ts";
import { addScaled, describe, drives, placesOf, type Stability } from "./mechanism.ts";
import { at } from "./numbers.ts";
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
import { Room } from "./room.ts";
import { StickMatrix } from "./stick-matrix.ts";
import type { LoadCase } from "./structure.ts";
import type { System } from "./system.ts";
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

/** A motion of all nodes, and where it is not nought. */
interface Motion {
  readonly u: Float64Array;
  readonly where: readonly number[];
}

const motionOf = (u: Float64Array): Motion => ({ u, where: placesOf(u) });

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
  /** no force on any motion */
  readonly #nothing: Float64Array;
  /** written anew for every combination: sums of its basic loads over one-way members */
  readonly #hang: Float64Array;
  readonly #strains: Float64Array;
  readonly #own: Float64Array;
  readonly #lettingGo: LettingGo;
  /** how it moves even with every member in action; what drives it there differs by combination */
  readonly #moves: () => readonly (Motion & { readonly mode: Mode })[];
  /** turns of joints that nothing resists */
  readonly #idle: readonly Motion[];

  constructor(system: System, stability: Stability, members: OneWayMembers, tolerance: number) {
    this.#system = system;
    this.#stability = stability;
    this.#members = members;
    this.#answers = new Answers(system, stability, new StickMatrix(system));
    this.#lettingGo = new LettingGo(system, members, this.#answers);
    this.#moves = once(() =>
      stability.mechanisms.map((u) => ({
        ...motionOf(u),
        mode: describe(system, u, false, stability.reach),
      })),
    );
    this.#idle = stability.idle.map(motionOf);
    this.#tolerance = tolerance;
    this.#none = NO_LOADS(system.sticks.length);
    this.#nothing = new Float64Array(system.size);
    this.#hang = new Float64Array(members.size);
    this.#strains = new Float64Array(members.size);
    this.#own = new Float64Array(members.units.length);
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
    const { size, made } = system;
    const room = new Room(2 * size + this.#answers.size + this.#members.size);
    const applied = given.nodeLoads ? readNodeLoads(system, given, fault) : this.#nothing;
    const loads = made.loads.get(given) ?? made.units.sum(given.elementLoads ?? [], fault);
    if (faults.length > 0) return faults.map((f): CaseFault => ({ kind: "input", fault: f }));
    made.loads.set(given, loads);
    const pushed = this.#answers.pushed(applied, loads, room.take(size));
    const first = this.#members.flex(pushed, room.take(size));
    const answer = this.#answers.of(applied, loads, first, room);
    return {
      ...answer,
      strains: this.#members.strains(answer.motions, room.take(this.#members.size)),
      pushed,
      hardest: this.#answers.largestFree(pushed),
      loads,
      ...ownLoads(this.#members, system, (stick) => endsIn(loads, stick)),
      turns: this.#idle.some(({ u, where }) => drives(pushed, u, 1e-6, where)),
    };
  }

  combine(id: string, parts: readonly Part[]): Combined {
    const system = this.#system;
    const { reach } = this.#stability;
    const members = this.#members;
    const failed = (fault: CaseFault): Combined => failedCombination(id, [fault]);
    const pushed = once(() => sumInto(new Float64Array(system.size), parts, (b) => b.pushed));
    const modes = this.#moves().map(
      ({ u, where, mode }): Mode => ({ ...mode, driven: drives(pushed(), u, NOUGHT, where) }),
    );
    if (parts.some(({ answer }) => answer.turns))
      for (const { u, where } of this.#idle)
        if (drives(pushed(), u, 1e-6, where)) modes.push(describe(system, u, true, reach));
    if (modes.length > 0) return failed({ kind: "mechanism", modes, dropped: [] });

    const hang = sumInto(this.#hang, parts, (b) => b.hang);
    const strains = sumInto(this.#strains, parts, (b) => b.strains);
    const own = sumInto(this.#own, parts, (b) => b.own);
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
      new Room(this.#answers.size),
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
    const loads = parts.map(({ by, answer }): LoadTerm => ({ by, loads: answer.loads }));
    let { tips, links, left, force } = this.#sums(loads, first, outcome.dropped, outcome.mu);
    let terms = first;
    let reactions: Float64Array | undefined;
    if (left > REFINED * force) {
      const refined = this.#refined(parts, loads, first, outcome);
      terms = refined.terms;
      ({ tips, links, force } = this.#sums(loads, terms, outcome.dropped, refined.mu));
      ({ left, reactions } = refined);
    }
    const residual = force > 0 ? left / force : left;
    if (!(residual <= this.#tolerance && Number.isFinite(force)))
      return failedCombination(id, [{ kind: "inaccurate", residual, tolerance: this.#tolerance, node: "" }]);
    const status = faults.length > 0 ? "slack" : "sound";
    return new Sum({ id, status, faults, tips, links, dropped, residual, reactions }, system, terms, loads);
  }

  /** Forces of all terms, with members out of action that let go; the largest, and about how much is left at the most. */
  #sums(
    loads: readonly LoadTerm[],
    terms: readonly Term[],
    dropped: readonly number[],
    mu: Float64Array,
  ): { tips: Float64Array; links: Float64Array; left: number; force: number } {
    const { sticks, links: all } = this.#system;
    const room = new Room(ENDS * sticks.length + all.length);
    const tips = sumOf(terms, "tips", room.take(ENDS * sticks.length));
    const links = sumOf(terms, "links", room.take(all.length));
    let left = terms.reduce((sum, { by, answer }) => sum + Math.abs(by) * answer.left, 0);
    for (const n of dropped) left += this.#lettingGo.takeOut(n, loads, mu, tips, links);
    return { tips, links, left, force: this.#answers.largest(tips) };
  }

  /**
   * Where little holds a frame without the members that let go, the sum is not near enough: what it leaves at the nodes is
   * worked out stick by stick, and solved for.
   */
  #refined(
    parts: readonly Part[],
    loads: readonly LoadTerm[],
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
    const pushed = sumInto(new Float64Array(size), parts, (b) => b.pushed);
    const letGo = new Map(dropped.map((n) => this.#lettingGo.instead(n, loads)));
    const correct = dropping(members, dropped);
    const mu = before.slice();
    let motions = sumOf(first, "motions", new Float64Array(size));
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
}

/** Ends of a stick under its own loads: held fast, and only hanging; undefined where it has none. */
function endsIn({ from, figures }: SummedLoads, stick: number): StickEnds | undefined {
  const row = from[stick] ?? -1;
  const part = (what: number): Float64Array => figures.subarray(row + what, row + what + ENDS);
  return row < 0 ? undefined : { ends: part(OWN.ends), hung: part(OWN.hung) };
}

/** Sum of one kind of figures of basic loads. @param out written anew */
function sumInto(out: Float64Array, parts: readonly Part[], of: (b: Basic) => Float64Array): Float64Array {
  out.fill(0);
  for (const { by, answer } of parts) addScaled(out, by, of(answer));
  return out;
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
