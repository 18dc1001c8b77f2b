/**
 * Many combinations of a few basic loads on one factorisation. Each basic load is solved once with every one-way member
 * in action; a combination is a sum of those, plus one more solve for the members that let go, which are found in the
 * small space of one-way strains. Equilibrium of every combination is verified at every node, stick by stick.
 */
import { type CaseLoads, readCase } from "./case-loads.ts";
import type { CaseFault } from "./faults.ts";
import { addScaled, describe, drives, flex, type Stability } from "./mechanism.ts";
import { at } from "./numbers.ts";
import { dropping, type OneWayMembers, type Outcome, ownLoads, type Start, settle } from "./one-way.ts";
import { PER_SECTION, SHARES, sectionRow, stickSections } from "./sections.ts";
import { StickMatrix } from "./stick-matrix.ts";
import type { LoadCase, Vec6 } from "./structure.ts";
import { toGlobal } from "./supports.ts";
import { once, type System } from "./system.ts";

/** Numbers of one stick in a table of sections. */
const WIDTH = SHARES.length * PER_SECTION;
const ENDS = 12;

/** A basic load: what it does with every one-way member in action. */
interface Basic {
  readonly motions: Float64Array;
  readonly strains: Float64Array;
  /** forces on the nodes themselves */
  readonly applied: Float64Array;
  /** forces that the loads put on the free motions */
  readonly pushed: Float64Array;
  /** sticks with loads of their own: end forces with nodes at rest, and sections without end forces */
  readonly loaded: readonly LoadedStick[];
  readonly own: Float64Array;
  readonly hang: Float64Array;
}

interface LoadedStick {
  readonly stick: number;
  readonly ends: Float64Array;
  readonly hung: Float64Array;
  readonly sections: Float64Array;
}

export interface Combined {
  readonly id: string;
  readonly status: "sound" | "slack" | "failed";
  readonly faults: readonly CaseFault[];
  /** forces inside every stick at the shares of its length in `SHARES`; empty when failed */
  readonly sections: Float64Array;
  /** motions of all nodes, six each, in the nodes' axes */
  readonly motions: Float64Array;
  readonly links: Float64Array;
  /** ids of one-way members out of action */
  readonly dropped: readonly string[];
  /** largest share of the largest force that some node leaves unbalanced */
  readonly residual: number;
  /** global axes, in the order of the supports */
  readonly reactions: () => readonly { readonly node: number; readonly force: Vec6 }[];
  /** motion of one node, global axes */
  readonly displacement: (node: number) => Vec6;
}

export interface Superposition {
  /** Why a basic load could not be taken; then every combination with it fails. */
  readonly faults: readonly CaseFault[];
  /** @param factors one for each basic load, in their order */
  readonly combine: (id: string, factors: readonly number[]) => Combined;
}

const NOUGHT = 1e-8;
const EMPTY = new Float64Array(0);

/** Of a structure that cannot be analysed: every combination fails for the same reasons. */
export function nothingToCombine(faults: readonly CaseFault[]): Superposition {
  return { faults, combine: (id) => failedCombination(id, faults) };
}

/** A combination without an answer, for the reasons given. */
export function failedCombination(id: string, faults: readonly CaseFault[]): Combined {
  return {
    id,
    status: "failed",
    faults,
    sections: EMPTY,
    motions: EMPTY,
    links: EMPTY,
    dropped: [],
    residual: 0,
    reactions: () => [],
    displacement: () => [0, 0, 0, 0, 0, 0],
  };
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
  const matrix = once(() => new StickMatrix(system));
  const known = new WeakMap<LoadCase, Basic | readonly CaseFault[]>();
  const basicOfCase = (given: LoadCase): Basic | readonly CaseFault[] => {
    const basic = known.get(given) ?? basicOf(system, stability, members, matrix(), given);
    known.set(given, basic);
    return basic;
  };
  return (cases) => {
    const read = cases.map(basicOfCase);
    const faults = read.flatMap((b) => ("motions" in b ? [] : b));
    const basics = read.map((b) => ("motions" in b ? b : undefined));
    const combiner = new Combiner(system, stability, members, matrix(), basics, tolerance);
    return {
      faults,
      combine: (id, factors) =>
        basics.some((b, n) => !b && (factors[n] ?? 0) !== 0)
          ? failedCombination(id, faults)
          : combiner.combine(id, factors),
    };
  };
}

function basicOf(
  system: System,
  stability: Stability,
  members: OneWayMembers,
  matrix: StickMatrix,
  given: LoadCase,
): Basic | readonly CaseFault[] {
  const loads = readCase(system, given);
  if (Array.isArray(loads)) return loads.map((fault): CaseFault => ({ kind: "input", fault }));
  const loaded = [...loads.sticks].map(
    ([stick, { ends, hung, sections }]): LoadedStick => ({ stick, ends, hung, sections: sections() }),
  );
  const ends = new Float64Array(ENDS * matrix.count);
  for (const l of loaded) ends.set(l.ends, ENDS * l.stick);
  const needs = loads.applied.map((v) => -v);
  matrix.addNeeds(loads.values, ends, new Float64Array(system.links.length), needs);
  const { held } = system.ground;
  const pushed = needs.map((v, k) => (held[k] ? 0 : -v));
  const motions = flex(stability.matrix, stability.factor, pushed);
  return {
    motions,
    strains: members.strains(motions),
    applied: loads.applied,
    pushed,
    loaded,
    ...ownLoads(members, system, loads as CaseLoads),
  };
}

/** Sums basic loads; what no result keeps is written into the same arrays for every combination. */
class Combiner {
  readonly #scale: number;
  readonly #pushed: Float64Array;
  readonly #hang: Float64Array;
  readonly #strains: Float64Array;
  readonly #own: Float64Array;
  readonly #scratch: Pick<State, "ends" | "unbalanced">;

  constructor(
    readonly system: System,
    readonly stability: Stability,
    readonly members: OneWayMembers,
    readonly matrix: StickMatrix,
    readonly basics: readonly (Basic | undefined)[],
    readonly tolerance: number,
  ) {
    this.#scale = stability.reach > 0 ? 1 / stability.reach : 1;
    this.#pushed = new Float64Array(system.size);
    this.#hang = new Float64Array(members.size);
    this.#strains = new Float64Array(members.size);
    this.#own = new Float64Array(members.units.length);
    this.#scratch = {
      ends: new Float64Array(ENDS * matrix.count),
      unbalanced: new Float64Array(system.size),
    };
  }

  #sum(of: (b: Basic) => Float64Array, factors: readonly number[], out: Float64Array): Float64Array {
    out.fill(0);
    this.basics.forEach((b, n) => {
      const by = factors[n] ?? 0;
      if (b && by !== 0) addScaled(out, by, of(b));
    });
    return out;
  }

  combine(id: string, factors: readonly number[]): Combined {
    const { system, stability, members } = this;
    const failed = (fault: CaseFault): Combined => failedCombination(id, [fault]);
    const pushed = this.#sum((b) => b.pushed, factors, this.#pushed);
    const modes = stability.mechanisms.map((u) =>
      describe(system, u, drives(pushed, u, NOUGHT), stability.reach),
    );
    for (const u of stability.idle)
      if (drives(pushed, u, 1e-6)) modes.push(describe(system, u, true, stability.reach));
    if (modes.length > 0) return failed({ kind: "mechanism", modes, dropped: [] });

    const hang = this.#sum((b) => b.hang, factors, this.#hang);
    const strains = this.#sum((b) => b.strains, factors, this.#strains);
    const own = this.#sum((b) => b.own, factors, this.#own);
    const nought = NOUGHT * this.#largest(pushed);
    const outcome = settle(members, { strains, own, hang, nought, work: workOf(members, pushed, hang) });
    const names = (list: readonly number[]): string[] => list.map((n) => members.units[n]?.of.id ?? "");
    if (outcome.kind === "unsettled")
      return failed({ kind: "unsettled", tries: outcome.tries, members: names(outcome.dropped) });
    if (outcome.kind === "mechanism")
      return failed({
        kind: "mechanism",
        modes: [describe(system, outcome.motion, true, stability.reach)],
        dropped: names(outcome.dropped),
      });
    const state = this.#state(factors, outcome);
    if (!(state.residual <= this.tolerance))
      return failed({ kind: "inaccurate", residual: state.residual, tolerance: this.tolerance, node: "" });
    const { motions } = state;
    const { ground } = system;
    const reactions = this.#reactions(state);
    const common = {
      id,
      sections: this.#sections(factors, state.ends),
      motions,
      links: state.links,
      dropped: names(outcome.dropped),
      residual: state.residual,
      reactions: () => reactions,
      displacement: (node: number) => toGlobal(ground, motions, node),
    };
    if (outcome.kind === "settled") return { ...common, status: "sound", faults: [] };
    const motion = describe(system, outcome.motion, false, stability.reach);
    return {
      ...common,
      status: "slack",
      faults: [{ kind: "slack", modes: [motion], members: names(outcome.atZero) }],
    };
  }

  /** Largest force on a free motion; moments count by the size of the frame. */
  #largest(f: Float64Array): number {
    const { held } = this.system.ground;
    let most = 0;
    for (let k = 0; k < f.length; k++) {
      if (held[k]) continue;
      const size = Math.abs(f[k] as number);
      most = Math.max(most, k % 6 < 3 ? size : size * this.#scale);
    }
    return most;
  }

  /** Motions, end forces and what is left; refined while the rest is more than rounding. */
  #state(factors: readonly number[], outcome: Outcome): State {
    const { system, stability, members } = this;
    const motions = this.#sum((b) => b.motions, factors, new Float64Array(system.size));
    if (outcome.dropped.length > 0)
      addScaled(
        motions,
        1,
        flex(stability.matrix, stability.factor, members.load(outcome.mu, outcome.dropped)),
      );
    let state = this.#forces(factors, outcome.dropped, motions, this.#scratch);
    for (let n = 0; n < 2 && state.residual > this.tolerance / 100; n++) {
      const { held } = system.ground;
      const rest = state.unbalanced.map((v, k) => (held[k] ? 0 : -v));
      const better = motions.slice();
      addScaled(better, 1, dropping(members, outcome.dropped)(rest));
      const next = this.#forces(factors, outcome.dropped, better, {
        ends: new Float64Array(state.ends.length),
        unbalanced: new Float64Array(system.size),
      });
      if (!(next.residual < state.residual)) break;
      state = next;
    }
    return state;
  }

  /** @param into arrays that the state is written to */
  #forces(
    factors: readonly number[],
    dropped: readonly number[],
    motions: Float64Array,
    into: Pick<State, "ends" | "unbalanced">,
  ): State {
    const { members, matrix } = this;
    const { ends, unbalanced } = into;
    ends.fill(0);
    unbalanced.fill(0);
    matrix.addEnds(motions, ends);
    const links = matrix.links(motions);
    const out = new Set<number>();
    for (const n of dropped) {
      const part = members.units[n]?.part ?? -1;
      if (part < matrix.count) {
        out.add(part);
        ends.fill(0, ENDS * part, ENDS * part + ENDS);
      } else links[part - matrix.count] = 0;
    }
    this.basics.forEach((b, n) => {
      const by = factors[n] ?? 0;
      if (!b || by === 0) return;
      addScaled(unbalanced, -by, b.applied);
      for (const l of b.loaded) {
        const from = l.stick * ENDS;
        const f = out.has(l.stick) ? l.hung : l.ends;
        for (let k = 0; k < ENDS; k++) ends[from + k] = (ends[from + k] as number) + by * (f[k] as number);
      }
    });
    matrix.addNeeds(motions, ends, links, unbalanced);
    let force = 0;
    for (let k = 0; k < ends.length; k++) {
      const size = Math.abs(ends[k] as number);
      force = Math.max(force, k % 6 < 3 ? size : size * this.#scale);
    }
    return { motions, ends, links, unbalanced, residual: force > 0 ? this.#largest(unbalanced) / force : 0 };
  }

  /** What each support, springs included, puts on the frame; written over what it left unbalanced. */
  #reactions({ unbalanced, motions }: State): ReturnType<Combined["reactions"]> {
    const { ground } = this.system;
    for (const node of ground.nodes)
      for (let k = 6 * node; k < 6 * node + 6; k++)
        if (!ground.held[k]) unbalanced[k] = -at(ground.springs, k) * at(motions, k);
    return ground.nodes.map((node) => ({ node, force: toGlobal(ground, unbalanced, node) }));
  }

  #sections(factors: readonly number[], ends: Float64Array): Float64Array {
    const table = new Float64Array(WIDTH * this.matrix.count);
    for (const stick of this.system.sticks)
      stickSections(stick, undefined, ends, ENDS * stick.index, table, sectionRow(stick.index, 0));
    this.basics.forEach((b, n) => {
      const by = factors[n] ?? 0;
      if (!b || by === 0) return;
      for (const l of b.loaded) {
        const row = l.stick * WIDTH;
        for (let k = 0; k < WIDTH; k++)
          table[row + k] = (table[row + k] as number) + by * (l.sections[k] as number);
      }
    });
    return table;
  }
}

interface State {
  readonly motions: Float64Array;
  readonly ends: Float64Array;
  readonly links: Float64Array;
  readonly unbalanced: Float64Array;
  readonly residual: number;
}

/** Work of the loads along a motion that only the dropped members would resist. */
function workOf(members: OneWayMembers, pushed: Float64Array, hang: Float64Array): Start["work"] {
  return (motion, dropped) => {
    let [work, size] = [0, 0];
    const add = (w: number): void => {
      work += w;
      size += Math.abs(w);
    };
    for (let k = 0; k < motion.length; k++) add(at(motion, k) * at(pushed, k));
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
