/**
 * Linear analysis of a frame in space: displacements, reactions and forces in every stick, with one-way members, for any
 * number of load cases on one factorisation.
 *
 * Direct stiffness method (McGuire, Gallagher and Ziemian, Matrix Structural Analysis, from memory); small displacements,
 * plane sections. It never throws and returns no figure it does not trust: what stands in the way comes back as data.
 */
import { type CaseLoads, readCase } from "./case-loads.ts";
import type { Curves } from "./curves.ts";
import type { CaseFault, InputFault, Mode } from "./faults.ts";
import { addScaled, describe, describeLoose, drives, flex, type Stability, stabilise } from "./mechanism.ts";
import { at, largest } from "./numbers.ts";
import { dropping, OneWayMembers, type Outcome, ownLoads, type Start, settle } from "./one-way.ts";
import { type StickForces, stickCurves, stickForces } from "./recover.ts";
import { type Balance, balance, type Dropped, type Residual, reactionsOf, residualOf } from "./residual.ts";
import type { LoadCase, Structure, Vec6 } from "./structure.ts";
import { nothingToCombine, type Superposition, superposer } from "./superpose.ts";
import { toGlobal } from "./supports.ts";
import { makeSystem, type System, strainOf } from "./system.ts";
import { validate } from "./validate.ts";

export interface Solution {
  /** Motions of each node, global axes. */
  readonly displacements: readonly Vec6[];
  /** What each support, springs included, puts on the frame: global axes, in the order of the supports. */
  readonly reactions: readonly { readonly node: number; readonly force: Vec6 }[];
  /** By element. */
  readonly elements: readonly StickForces[];
  /** Force of each link, tension positive. */
  readonly links: readonly number[];
  /** Ids of one-way members out of action … */
  readonly dropped: readonly string[];
  /** … and of those that rest at exactly no force. */
  readonly atZero: readonly string[];
  /** Shares of the largest force that are left unbalanced. */
  readonly residual: Residual;
  /** Forces and motions along an element. */
  readonly along: (element: number) => Curves | undefined;
}

export interface CaseResult {
  readonly id: string;
  /**
   * `sound`: all figures hold. `slack`: forces are in balance, but only one-way members at no force keep the frame from
   * moving; how far it moves that way is not determined. Otherwise there is no solution and the faults say why.
   */
  readonly status: "sound" | "slack" | "failed";
  readonly faults: readonly CaseFault[];
  readonly solution?: Solution;
}

export interface Analysis {
  /** What is wrong with the structure; then no case has a solution. */
  readonly faults: readonly InputFault[];
  /** How it moves without resistance even with every one-way member in action. */
  readonly mechanisms: readonly Mode[];
  /** Turns of joints that no member resists, and sticks that spin about themselves: no harm, no meaning. */
  readonly idle: readonly Mode[];
  readonly cases: readonly CaseResult[];
}

export interface Options {
  /** Largest unbalanced share of the largest force that is accepted. Default 1e-6. */
  readonly tolerance?: number;
}

export function analyse(structure: Structure, cases: readonly LoadCase[], options: Options = {}): Analysis {
  const prepared = prepare(structure, options);
  return { ...prepared.found, cases: cases.map(prepared.solve) };
}

export interface Prepared {
  readonly found: Omit<Analysis, "cases">;
  readonly solve: (given: LoadCase) => CaseResult;
  /**
   * Basic loads without settlements, to be combined with factors: far cheaper than solving every combination. A load
   * case that was given before is not solved again.
   */
  readonly superpose: (basics: readonly LoadCase[]) => Superposition;
  readonly system: System | undefined;
}

/**
 * Factorises a structure once; each case then costs a few solves.
 * @param like another structure: what was made of the very same sticks serves again, or else of sticks that are alike
 */
export function prepare(structure: Structure, options: Options = {}, like?: Prepared): Prepared {
  const faults = validate(structure);
  if (faults.length > 0) {
    const caseFaults = faults.map((fault): CaseFault => ({ kind: "input", fault }));
    return {
      found: { faults, mechanisms: [], idle: [] },
      solve: ({ id }) => ({ id, status: "failed", faults: caseFaults }),
      superpose: () => nothingToCombine(caseFaults),
      system: undefined,
    };
  }
  const system = makeSystem(structure, like?.system);
  const stability = stabilise(system);
  const members = new OneWayMembers(system, stability);
  const { mechanisms, idle, loose, reach } = stability;
  const found = {
    faults,
    mechanisms: [
      ...mechanisms.map((u) => describe(system, u, false, reach)),
      ...loose.filter((l) => !l.spins).map((l) => describeLoose(l.stick, l.motion, false)),
    ],
    idle: [
      ...idle.map((u) => describe(system, u, false, reach)),
      ...loose.filter((l) => l.spins).map((l) => describeLoose(l.stick, l.motion, false)),
    ],
  };
  const tolerance = options.tolerance ?? 1e-6;
  return {
    found,
    solve: (given) => solveCase(system, stability, members, given, tolerance),
    superpose: superposer(system, stability, members, tolerance),
    system,
  };
}

/** Forces below this share of the largest are taken for nought when members are judged. */
const NOUGHT = 1e-8;
/** Solutions are refined until the unbalanced share is below this, or no longer falls. */
const REFINED = 1e-11;
const MOST_REFINEMENTS = 4;

function solveCase(
  system: System,
  stability: Stability,
  members: OneWayMembers,
  given: LoadCase,
  tolerance: number,
): CaseResult {
  const failed = (...faults: CaseFault[]): CaseResult => ({ id: given.id, status: "failed", faults });
  const loads = readCase(system, given);
  if (Array.isArray(loads)) return failed(...loads.map((fault): CaseFault => ({ kind: "input", fault })));

  const rest = loads.values.slice();
  const pushed = freeForces(system, balance(system, loads, rest, NONE));
  const modes = pushedModes(system, stability, loads, pushed);
  if (modes.length > 0) return failed({ kind: "mechanism", modes, dropped: [] });

  const all = rest.slice();
  addScaled(all, 1, flex(stability.matrix, stability.factor, pushed));
  const outcome = settle(members, startOf(system, members, loads, rest, pushed, all));
  const dropped: Dropped = new Set(outcome.dropped.map((n) => members.units[n]?.part ?? -1));
  const names = (units: readonly number[]) => units.map((n) => members.units[n]?.of.id ?? "");
  if (outcome.kind === "unsettled")
    return failed({ kind: "unsettled", tries: outcome.tries, members: names(outcome.dropped) });
  if (outcome.kind === "mechanism")
    return failed({
      kind: "mechanism",
      modes: [describe(system, outcome.motion, true, stability.reach)],
      dropped: names(outcome.dropped),
    });

  const u = all;
  if (outcome.dropped.length > 0) addScaled(u, 1, members.flex(members.load(outcome.mu, outcome.dropped)));
  const { state, residual } = refine(system, stability, members, loads, u, outcome, dropped);
  const worst = Math.max(residual.nodes, residual.whole);
  if (!(worst <= tolerance))
    return failed({
      kind: "inaccurate",
      residual: worst,
      tolerance,
      node: system.structure.nodes[residual.node]?.id ?? "",
    });
  const solution = report(
    system,
    loads,
    state,
    dropped,
    residual,
    names(outcome.dropped),
    names(outcome.atZero),
  );
  if (outcome.kind === "settled") return { id: given.id, status: "sound", faults: [], solution };
  const motion = describe(system, outcome.motion, false, stability.reach);
  const slack: CaseFault = { kind: "slack", modes: [motion], members: names(outcome.atZero) };
  return { id: given.id, status: "slack", faults: [slack], solution };
}

const NONE: Dropped = new Set();

/** Forces still to be balanced at the motions that are not held. */
function freeForces(system: System, found: Balance): Float64Array {
  return found.unbalanced.map((v, k) => (system.ground.held[k] ? 0 : -v));
}

/** Ways to move without resistance: mechanisms always, idle turns when the loads of the case push along them. */
function pushedModes(system: System, stability: Stability, loads: CaseLoads, pushed: Float64Array): Mode[] {
  const { mechanisms, idle, loose, reach } = stability;
  const pushes = (u: Float64Array) => drives(pushed, u, NOUGHT);
  const modes = mechanisms.map((u) => describe(system, u, pushes(u), reach));
  for (const u of idle)
    if (matters(u, pushed, loads, reach) && pushes(u)) modes.push(describe(system, u, true, reach));
  for (const { stick, motion, spins } of loose) {
    const force = at(loads.sticks.get(stick.index)?.ends ?? new Float64Array(12), motion);
    const driven = Math.abs(force) > NOUGHT * Math.max(loads.force, loads.moment / Math.max(reach, 1e-300));
    if (driven || !spins) modes.push(describeLoose(stick, motion, driven));
  }
  return modes;
}

/** Whether the moments along an idle turn are more than the rounding of the forces in the case. */
function matters(u: Float64Array, pushed: Float64Array, loads: CaseLoads, reach: number): boolean {
  let most = 0;
  for (let k = 0; k < u.length; k++) most = Math.max(most, Math.abs(at(u, k) * at(pushed, k)));
  return most > 1e-10 * Math.max(loads.moment, loads.force * reach) * largest(u);
}

function startOf(
  system: System,
  members: OneWayMembers,
  loads: CaseLoads,
  rest: Float64Array,
  pushed: Float64Array,
  all: Float64Array,
): Start {
  const strains = members.strains(all);
  const { own, hang } = ownLoads(members, system, (stick) => loads.sticks.get(stick));
  const before = members.strains(rest);
  const nought = NOUGHT * Math.max(loads.force, largest(members.forces(strains, own)));
  const work: Start["work"] = (motion, dropped) => {
    let [sum, size] = [0, 0];
    const add = (w: number) => {
      sum += w;
      size += Math.abs(w);
    };
    motion.forEach((v, k) => {
      add(v * at(pushed, k));
    });
    const along = members.strains(motion);
    for (const n of dropped) {
      const unit = members.units[n];
      unit?.modes.forEach((_, m) => {
        const s = unit.first + m;
        add(at(along, s) * (at(before, s) + at(hang, s)));
      });
    }
    return { work: sum, size };
  };
  return { strains, own, hang, work, nought };
}

function refine(
  system: System,
  stability: Stability,
  members: OneWayMembers,
  loads: CaseLoads,
  first: Float64Array,
  outcome: Outcome,
  dropped: Dropped,
): { state: Balance; residual: Residual } {
  let state = balance(system, loads, first, dropped);
  let residual = residualOf(system, loads, state, stability.reach);
  let correct: ReturnType<typeof dropping> | undefined;
  for (let n = 0; n < MOST_REFINEMENTS && residual.nodes > REFINED; n++) {
    correct ??= dropping(members, outcome.dropped);
    const u = state.motions.slice();
    addScaled(u, 1, correct(freeForces(system, state)).motions);
    const next = balance(system, loads, u, dropped);
    const better = residualOf(system, loads, next, stability.reach);
    if (!(better.nodes < residual.nodes)) break;
    [state, residual] = [next, better];
  }
  return { state, residual };
}

function report(
  system: System,
  loads: CaseLoads,
  state: Balance,
  dropped: Dropped,
  residual: Residual,
  droppedIds: readonly string[],
  atZero: readonly string[],
): Solution {
  const { ground, structure, sticks } = system;
  const u = state.motions;
  const reactions = reactionsOf(system, state);
  return {
    displacements: structure.nodes.map((_, node) => toGlobal(ground, u, node)),
    reactions: ground.nodes.map((node) => ({ node, force: toGlobal(ground, reactions, node) })),
    elements: sticks.map((stick) => stickForces(stick, state)),
    links: system.links.map((link, n) =>
      dropped.has(sticks.length + n) ? 0 : link.link.stiffness * strainOf(link.stretch, link, u),
    ),
    dropped: droppedIds,
    atZero,
    residual,
    along: (element) => {
      const stick = sticks[element];
      return stick && stickCurves(stick, loads, state, dropped.has(element));
    },
  };
}
