/**
 * Which one-way members are in action, in the small space of their own strains.
 *
 * With all of them in action the matrix K is factorised once. Dropping members D takes B_D B_Dᵀ away from it, so that
 *   u = u₀ + K⁻¹ B_D μ,   (I − G_DD) μ = B_Dᵀ u₀ + c_D,   G = Bᵀ K⁻¹ B
 * (Sherman, Morrison and Woodbury), c being the strain that their own loads need. Each step then works on numbers of the
 * one-way members alone; a case costs the solves for u₀ and u. Columns of G are found when first asked for and kept.
 *
 * For each member the force it would have in the present motions says whether its state is right: a push member in
 * action must not pull, one out of action must have a gap.
 */
import { inStrains } from "./case-loads.ts";
import { addScaled, flex, isFree, isIdle, type Stability } from "./mechanism.ts";
import { at, bump, largest } from "./numbers.ts";
import { Reduced } from "./reduced.ts";
import type { OneWay } from "./structure.ts";
import { type Part, type Stick, type System, strainOf } from "./system.ts";

export interface Unit {
  /** Place in `system.parts`. */
  readonly part: number;
  readonly of: Part;
  readonly sense: OneWay;
  readonly modes: readonly Float64Array[];
  /** Place of its first strain among all. */
  readonly first: number;
  /** Length force = force · strains (+ what its loads give), tension positive. */
  readonly force: readonly number[];
}

/** What the members start from in one case: strains with all in action, and the share of their own loads. */
export interface Start {
  readonly strains: Float64Array;
  /** Length force from the member's own loads, nodes at rest. */
  readonly own: Float64Array;
  /** c: strains that take the difference between the loads of the member in action and hanging. */
  readonly hang: Float64Array;
  /** Work of all loads along a motion that only the dropped members would resist. */
  readonly work: (motion: Float64Array, dropped: readonly number[]) => { work: number; size: number };
  /** A force below this is nought. */
  readonly nought: number;
}

/** What one set of members in action comes to: μ and strains, by strain, and length forces, by unit. */
export interface Trial {
  readonly mu: Float64Array;
  readonly strains: Float64Array;
  readonly forces: Float64Array;
}

export type Outcome = {
  readonly dropped: readonly number[];
  /** μ, by strain; nought for members in action. */
  readonly mu: Float64Array;
  /** Members in action, or just out of it, at no force. */
  readonly atZero: readonly number[];
  readonly tries: number;
} & (
  | { readonly kind: "settled" }
  /** Without the members at nought it would move so. */
  | { readonly kind: "slack"; readonly motion: Float64Array }
  | { readonly kind: "mechanism"; readonly motion: Float64Array }
  | { readonly kind: "unsettled" }
);

/** Motions are kept while all of them together take up no more numbers than this. */
export const MOST_KEPT = 1e6;
/** Work along a motion below this share of its parts is rounding. */
const NO_WORK = 1e-7;

export class OneWayMembers {
  readonly units: readonly Unit[];
  readonly size: number;
  readonly #system: System;
  readonly #stability: Stability;
  readonly #columns: (Float64Array | undefined)[];
  readonly #motions: (Float64Array | undefined)[] = [];
  /** Written anew at every try of {@link settle}. */
  readonly trial: Trial;

  constructor(system: System, stability: Stability) {
    this.#system = system;
    this.#stability = stability;
    let first = 0;
    this.units = system.parts.flatMap((of, part) => {
      if (!of.oneWay) return [];
      const modes = of.modes();
      const unit: Unit = { part, of, sense: of.oneWay, modes, first, force: lengthForce(system, part) };
      first += modes.length;
      return [unit];
    });
    this.size = first;
    this.#columns = new Array<Float64Array | undefined>(first).fill(undefined);
    this.trial = {
      mu: new Float64Array(first),
      strains: new Float64Array(first),
      forces: new Float64Array(this.units.length),
    };
  }

  /** Strains of all one-way members in the motions `u`. @param out where they are written */
  strains(u: Float64Array, out: Float64Array = new Float64Array(this.size)): Float64Array {
    for (const { modes, of, first } of this.units)
      for (let m = 0; m < modes.length; m++) out[first + m] = strainOf(modes[m] as Float64Array, of, u);
    return out;
  }

  /** Length forces that the members would have, by unit. @param out where they are written */
  forces(
    strains: Float64Array,
    own?: Float64Array,
    out: Float64Array = new Float64Array(this.units.length),
  ): Float64Array {
    for (let n = 0; n < out.length; n++) {
      const { force, first } = this.units[n] as Unit;
      let sum = own ? at(own, n) : 0;
      for (let m = 0; m < force.length; m++) sum += (force[m] as number) * at(strains, first + m);
      out[n] = sum;
    }
    return out;
  }

  /** B x: forces on all motions from strains x, of the units named. */
  load(x: Float64Array, units: readonly number[]): Float64Array {
    const f = new Float64Array(this.#system.size);
    for (const n of units) {
      const unit = this.units[n];
      unit?.modes.forEach((b, m) => {
        const share = at(x, unit.first + m);
        for (let k = 0; k < 6; k++) {
          bump(f, 6 * unit.of.i + k, share * at(b, k));
          bump(f, 6 * unit.of.j + k, share * at(b, k + 6));
        }
      });
    }
    return f;
  }

  /** Column of G. */
  column(strain: number): Float64Array {
    const known = this.#columns[strain];
    if (known) return known;
    const made = this.strains(this.unitMotion(strain));
    this.#columns[strain] = made;
    return made;
  }

  /** B for one strain: forces on all motions. */
  unitLoad(strain: number): Float64Array {
    const unit = this.units.findIndex((u) => strain >= u.first && strain < u.first + u.modes.length);
    const x = new Float64Array(this.size);
    x[strain] = 1;
    return this.load(x, [unit]);
  }

  /** Motions under the forces of one strain; kept, unless those of all would take up too much room. */
  unitMotion(strain: number): Float64Array {
    const known = this.#motions[strain];
    if (known) return known;
    const made = this.flex(this.unitLoad(strain));
    if (this.size * made.length <= MOST_KEPT) this.#motions[strain] = made;
    return made;
  }

  /** K⁻¹ f on all motions. @param u all nought; where they are written */
  flex(f: Float64Array, u?: Float64Array): Float64Array {
    return flex(this.#stability.matrix, this.#stability.factor, f, u);
  }

  /** Whether the motion that a weak reduced direction stands for strains nothing in action, and whether it matters. */
  judge(motion: Float64Array, dropped: readonly number[]): "stiff" | "idle" | "free" {
    const parts = new Set(dropped.map((n) => this.units[n]?.part ?? -1));
    const { matrix, reach } = this.#stability;
    if (!isFree(this.#system, matrix, motion, parts)) return "stiff";
    return isIdle(this.#system, motion, reach) ? "idle" : "free";
  }
}

/** Row that gives the length force (mean of the two ends, tension positive) from a part's strains. */
function lengthForce(system: System, part: number): number[] {
  const stick = system.sticks[part];
  if (stick) return stick.localModes().map((b) => (at(b, 6) - at(b, 0)) / 2);
  const link = system.links[part - system.sticks.length];
  return link ? [Math.sqrt(link.link.stiffness)] : [];
}

/** Forces of a loaded stick's ends: with its nodes at rest, and when it has let go and only hangs in its joints. */
export interface StickEnds {
  readonly ends: Float64Array;
  readonly hung: Float64Array;
}

/** Shares of a member's own loads: length force with its nodes at rest, and the strains c. */
export function ownLoads(
  members: OneWayMembers,
  system: System,
  loadsOf: (stick: number) => StickEnds | undefined,
): Pick<Start, "own" | "hang"> {
  const hang = new Float64Array(members.size);
  const own = Float64Array.from(members.units, (unit) => {
    const stick: Stick | undefined = system.sticks[unit.part];
    const loaded = stick && loadsOf(stick.index);
    if (!stick || !loaded) return 0;
    const more = loaded.ends.map((v, m) => v - at(loaded.hung, m));
    if (largest(more) > 0)
      inStrains(stick, more).forEach((c, m) => {
        hang[unit.first + m] = c;
      });
    return (at(loaded.ends, 6) - at(loaded.ends, 0)) / 2;
  });
  return { own, hang };
}

/** Finds the set of members in action, one change at a time, the worst first; after long, the first in the list. */
export function settle(members: OneWayMembers, start: Start): Outcome {
  const count = members.units.length;
  const patience = 3 * count + 20;
  const most = 30 * count + 200;
  const resting = new Set<number>();
  let reduced = new Reduced(members);
  const { mu, strains, forces } = members.trial;
  let tries = 0;
  for (; tries < most; tries++) {
    reduced.solve(start, members.trial);
    members.forces(strains, start.own, forces);
    const wrong = pick(members, reduced, forces, start.nought, resting, tries > patience);
    if (wrong === undefined) return finish(members, reduced, start, mu.slice(), forces, resting, tries);
    if (reduced.has(wrong)) {
      reduced = reduced.without(wrong);
      continue;
    }
    const motion = reduced.append(wrong);
    if (!motion) continue;
    const { work, size } = start.work(motion, reduced.dropped);
    if (Math.abs(work) <= NO_WORK * size || size === 0) {
      // Free without being pushed: this member carries nothing, its force was rounding.
      reduced = reduced.without(wrong);
      resting.add(wrong);
      continue;
    }
    const back = firstToClose(members, reduced, motion, Math.sign(work), forces, wrong);
    if (back === undefined)
      return {
        kind: "mechanism",
        motion: signed(motion, work),
        dropped: reduced.dropped,
        mu: mu.slice(),
        atZero: [],
        tries,
      };
    reduced = reduced.without(back);
  }
  reduced.solve(start, members.trial);
  return { kind: "unsettled", dropped: reduced.dropped, mu: mu.slice(), atZero: [], tries };
}

const signed = (motion: Float64Array, work: number): Float64Array =>
  work < 0 ? motion.map((v) => -v) : motion;

/** By how much a member's state is wrong: positive when it should change. */
function wrongBy(unit: Unit, force: number, isDropped: boolean): number {
  const pull = unit.sense === "push" ? force : -force;
  return isDropped ? -pull : pull;
}

function pick(
  members: OneWayMembers,
  reduced: Reduced,
  forces: Float64Array,
  nought: number,
  resting: ReadonlySet<number>,
  firstInList: boolean,
): number | undefined {
  let worst: number | undefined;
  let most = nought;
  for (let n = 0; n < forces.length; n++) {
    if (resting.has(n)) continue;
    const by = wrongBy(members.units[n] as Unit, at(forces, n), reduced.has(n));
    if (by > most && !(firstInList && worst !== undefined)) {
      worst = n;
      most = by;
    }
  }
  return worst;
}

/** The dropped member whose gap closes first when the frame moves along a free motion. */
function firstToClose(
  members: OneWayMembers,
  reduced: Reduced,
  motion: Float64Array,
  sign: number,
  forces: Float64Array,
  except: number,
): number | undefined {
  const rates = members.forces(members.strains(motion));
  const fastest = largest(rates);
  let [best, soonest]: [number | undefined, number] = [undefined, Number.POSITIVE_INFINITY];
  for (const n of reduced.dropped) {
    const unit = members.units[n];
    if (!unit || n === except) continue;
    const closing = wrongBy(unit, sign * (rates[n] ?? 0), true);
    if (closing <= 1e-9 * fastest) continue;
    const gap = Math.max(0, -wrongBy(unit, forces[n] ?? 0, true));
    if (gap / closing < soonest) [best, soonest] = [n, gap / closing];
  }
  return best;
}

/** Settled: does anything rest at nought, and would the frame move without it? */
function finish(
  members: OneWayMembers,
  reduced: Reduced,
  start: Start,
  mu: Float64Array,
  forces: Float64Array,
  resting: ReadonlySet<number>,
  tries: number,
): Outcome {
  const near = (n: number) => resting.has(n) || Math.abs(forces[n] ?? 0) <= start.nought;
  const atZero = start.nought > 0 ? members.units.map((_, n) => n).filter(near) : [];
  const found = { dropped: [...reduced.dropped], mu, atZero, tries };
  let without = reduced;
  for (const n of atZero) {
    if (without.has(n)) continue;
    without = without.copy();
    const motion = without.append(n);
    if (motion) return { kind: "slack", motion, ...found };
  }
  return { kind: "settled", ...found };
}

/** Solver for residuals with a set of members dropped: motions, and the strains μ that set the members free in them. */
export function dropping(
  members: OneWayMembers,
  dropped: readonly number[],
): (f: Float64Array) => { readonly motions: Float64Array; readonly mu: Float64Array } {
  const reduced = new Reduced(members);
  for (const n of dropped) reduced.append(n);
  return (f) => {
    const motions = members.flex(f);
    const strains = members.strains(motions);
    const mu = reduced.apply((s) => at(strains, s));
    if (dropped.length > 0) addScaled(motions, 1, members.flex(members.load(mu, dropped)));
    return { motions, mu };
  };
}
