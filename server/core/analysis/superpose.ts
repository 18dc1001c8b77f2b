/**
 * Many combinations of a few basic loads on one factorisation. Each basic load is solved once with every one-way member
 * in action, and each strain of a one-way member once; a combination is then a sum of those, whose members in action are
 * found in the small space of one-way strains. What a combination leaves unbalanced is at most the sum of what its parts
 * leave, and that is checked for each part, against the sticks themselves and not against the matrix.
 */
import { type CaseLoads, readCase } from "./case-loads.ts";
import type { CaseFault } from "./faults.ts";
import { addScaled, describe, drives, flex, type Stability } from "./mechanism.ts";
import { at, largest } from "./numbers.ts";
import { type OneWayMembers, ownLoads, type Start, settle } from "./one-way.ts";
import { type Balance, balance, reactionsOf } from "./residual.ts";
import { PER_SECTION, SHARES, sectionRow, sectionTable, stickSections } from "./sections.ts";
import type { LoadCase, Vec6 } from "./structure.ts";
import { toGlobal } from "./supports.ts";
import { type Stick, type System, strainOf } from "./system.ts";

/** What is known of one vector: a basic load, or a unit strain of a one-way member. */
interface Term {
  /** motions with every one-way member in action */
  readonly motions: Float64Array;
  readonly strains: Float64Array;
  /** forces inside the sticks, see sections.ts */
  readonly sections: Float64Array;
  /** of the supports, in the nodes' axes */
  readonly reactions: Float64Array;
  readonly links: Float64Array;
  /** largest force in it, and what it leaves unbalanced, in force */
  readonly size: number;
  readonly left: number;
}

interface BasicTerm extends Term {
  readonly loads: CaseLoads;
  readonly pushed: Float64Array;
  readonly own: readonly number[];
  readonly hang: Float64Array;
  /** sections of one-way sticks that have let go, by unit */
  readonly hung: readonly (Float64Array | undefined)[];
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
  /** share of the largest force that is left unbalanced, at most */
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
const NONE: ReadonlySet<number> = new Set();
const EMPTY = new Float64Array(0);
/** Numbers of one stick in a table of sections. */
const WIDTH = SHARES.length * PER_SECTION;

function linkForces(system: System, u: Float64Array): Float64Array {
  return Float64Array.from(system.links, (link) => link.link.stiffness * strainOf(link.stretch, link, u));
}

/** Refining stops below this share of the largest force: far under what is accepted. */
const REFINED = 1e-9;

/** Largest force that some free motion leaves unbalanced; moments count by the size of the frame. */
function leftOf(system: System, stability: Stability, state: Balance): number {
  const { held } = system.ground;
  const lever = stability.reach > 0 ? 1 / stability.reach : 1;
  let most = 0;
  for (let k = 0; k < system.size; k++) {
    if (held[k]) continue;
    const size = Math.abs(at(state.unbalanced, k));
    most = Math.max(most, k % 6 < 3 ? size : size * lever);
  }
  return most;
}

/** Motions, forces and what is left, for given forces on the free motions. */
function termOf(
  system: System,
  stability: Stability,
  members: OneWayMembers,
  loads: CaseLoads,
  pushed: Float64Array,
): Term {
  const { held } = system.ground;
  let motions = loads.values.slice();
  addScaled(motions, 1, flex(stability.matrix, stability.factor, pushed));
  let state = balance(system, loads, motions, NONE);
  let left = leftOf(system, stability, state);
  const size = Math.max(state.force, stability.reach > 0 ? state.moment / stability.reach : 0);
  for (let n = 0; n < 2 && left > REFINED * size; n++) {
    const rest = state.unbalanced.map((v, k) => (held[k] ? 0 : -v));
    const better = motions.slice();
    addScaled(better, 1, flex(stability.matrix, stability.factor, rest));
    const next = balance(system, loads, better, NONE);
    const less = leftOf(system, stability, next);
    if (!(less < left)) break;
    [motions, state, left] = [better, next, less];
  }
  return {
    motions,
    strains: members.strains(motions),
    sections: sectionTable(system, loads, state.ends),
    reactions: reactionsOf(system, state),
    links: linkForces(system, motions),
    size,
    left,
  };
}

/** Of a structure that cannot be analysed: every combination fails for the same reasons. */
export function nothingToCombine(faults: readonly CaseFault[]): Superposition {
  return { faults, combine: (id) => failure(id, faults) };
}

function failure(id: string, faults: readonly CaseFault[]): Combined {
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

/** @param cases basic loads without settlements or lack of fit: those would not scale with the factors */
export function superpose(
  system: System,
  stability: Stability,
  members: OneWayMembers,
  cases: readonly LoadCase[],
  tolerance: number,
): Superposition {
  const faults: CaseFault[] = [];
  const basics = cases.map((given) => basicTerm(system, stability, members, given, faults));
  const units = new Map<number, Term>();
  const unitTerm = (strain: number, unit: number): Term => {
    const known = units.get(strain);
    if (known) return known;
    const x = new Float64Array(members.size);
    x[strain] = 1;
    const applied = members.load(x, [unit]);
    const loads: CaseLoads = {
      sticks: new Map(),
      applied,
      values: new Float64Array(system.size),
      force: largest(applied),
      moment: 0,
    };
    const made = termOf(
      system,
      stability,
      members,
      loads,
      applied.map((v, k) => (system.ground.held[k] ? 0 : v)),
    );
    units.set(strain, made);
    return made;
  };
  return {
    faults,
    combine: (id, factors) =>
      combine(system, stability, members, basics, unitTerm, faults, id, factors, tolerance),
  };
}

function basicTerm(
  system: System,
  stability: Stability,
  members: OneWayMembers,
  given: LoadCase,
  faults: CaseFault[],
): BasicTerm | undefined {
  const loads = readCase(system, given);
  if (Array.isArray(loads)) {
    faults.push(...loads.map((fault): CaseFault => ({ kind: "input", fault })));
    return undefined;
  }
  const rest = balance(system, loads, loads.values.slice(), NONE);
  const pushed = rest.unbalanced.map((v, k) => (system.ground.held[k] ? 0 : -v));
  const term = termOf(system, stability, members, loads, pushed);
  const hung = members.units.map((unit) => {
    const stick = system.sticks[unit.part];
    const loaded = stick && loads.sticks.get(stick.index);
    if (!stick || !loaded) return undefined;
    const sections = new Float64Array(WIDTH);
    stickSections(stick, loaded.loads, loaded.hung, 0, sections, 0);
    return sections;
  });
  return { ...term, loads, pushed, ...ownLoads(members, system, loads), hung };
}

function sum(
  terms: readonly (Float64Array | undefined)[],
  factors: readonly number[],
  length: number,
): Float64Array {
  const out = new Float64Array(length);
  terms.forEach((t, n) => {
    const by = factors[n] ?? 0;
    if (t && by !== 0) addScaled(out, by, t);
  });
  return out;
}

function combine(
  system: System,
  stability: Stability,
  members: OneWayMembers,
  basics: readonly (BasicTerm | undefined)[],
  unitTerm: (strain: number, unit: number) => Term,
  basicFaults: readonly CaseFault[],
  id: string,
  factors: readonly number[],
  tolerance: number,
): Combined {
  const failed = (...faults: readonly CaseFault[]): Combined => failure(id, faults);
  if (basics.some((b, n) => !b && (factors[n] ?? 0) !== 0)) return failed(...basicFaults);
  const pick = <K extends keyof BasicTerm>(key: K): (BasicTerm[K] | undefined)[] =>
    basics.map((b) => b?.[key]);
  const pushed = sum(pick("pushed"), factors, system.size);
  const modes = stability.mechanisms.map((u) =>
    describe(system, u, drives(pushed, u, NOUGHT), stability.reach),
  );
  for (const u of stability.idle)
    if (drives(pushed, u, 1e-6)) modes.push(describe(system, u, true, stability.reach));
  if (modes.length > 0) return failed({ kind: "mechanism", modes, dropped: [] });

  const strains = sum(pick("strains"), factors, members.size);
  const hang = sum(pick("hang"), factors, members.size);
  const own = members.units.map((_, n) =>
    basics.reduce((s, b, k) => s + (factors[k] ?? 0) * (b?.own[n] ?? 0), 0),
  );
  const size = basics.reduce((s, b, k) => s + Math.abs(factors[k] ?? 0) * (b?.size ?? 0), 0);
  const start: Start = { strains, own, hang, nought: NOUGHT * size, work: workOf(members, pushed, hang) };
  const outcome = settle(members, start);
  const names = (list: readonly number[]): string[] => list.map((n) => members.units[n]?.of.id ?? "");
  if (outcome.kind === "unsettled")
    return failed({ kind: "unsettled", tries: outcome.tries, members: names(outcome.dropped) });
  if (outcome.kind === "mechanism")
    return failed({
      kind: "mechanism",
      modes: [describe(system, outcome.motion, true, stability.reach)],
      dropped: names(outcome.dropped),
    });

  const terms: Term[] = basics.flatMap((b) => b ?? []);
  const weights = basics.flatMap((b, n) => (b ? [factors[n] ?? 0] : []));
  for (const n of outcome.dropped) {
    const unit = members.units[n];
    unit?.modes.forEach((_, m) => {
      const mu = at(outcome.mu, unit.first + m);
      if (mu === 0) return;
      terms.push(unitTerm(unit.first + m, n));
      weights.push(mu);
    });
  }
  const left = terms.reduce((s, t, n) => s + Math.abs(weights[n] ?? 0) * t.left, 0);
  const residual = size > 0 ? left / size : 0;
  if (!(residual <= tolerance)) return failed({ kind: "inaccurate", residual, tolerance, node: "" });

  const total = (key: "motions" | "sections" | "links" | "reactions", length: number): Float64Array =>
    sum(
      terms.map((t) => t[key]),
      weights,
      length,
    );
  const sections = total("sections", system.sticks.length * WIDTH);
  const links = total("links", system.links.length);
  const motions = total("motions", system.size);
  const released = outcome.dropped.flatMap((n) =>
    letGo(system, members, basics, factors, n, sections, links),
  );
  let reactions: Float64Array | undefined;
  const kept = (): Float64Array => {
    reactions ??= withoutDropped(system, released, total("reactions", system.size));
    return reactions;
  };
  const common = {
    id,
    sections,
    motions,
    links,
    dropped: names(outcome.dropped),
    residual,
    reactions: () =>
      system.ground.nodes.map((node) => ({ node, force: toGlobal(system.ground, kept(), node) })),
    displacement: (node: number) => toGlobal(system.ground, motions, node),
  };
  if (outcome.kind === "settled") return { ...common, status: "sound", faults: [] };
  const motion = describe(system, outcome.motion, false, stability.reach);
  return {
    ...common,
    status: "slack",
    faults: [{ kind: "slack", modes: [motion], members: names(outcome.atZero) }],
  };
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

interface Released {
  readonly stick: Stick;
  /** sections of it hanging, less those it would have in action */
  readonly change: Float64Array;
}

/** A member out of action carries only what hangs on it. */
function letGo(
  system: System,
  members: OneWayMembers,
  basics: readonly (BasicTerm | undefined)[],
  factors: readonly number[],
  unit: number,
  sections: Float64Array,
  links: Float64Array,
): Released[] {
  const part = members.units[unit]?.part ?? -1;
  const stick = system.sticks[part];
  if (!stick) {
    links[part - system.sticks.length] = 0;
    return [];
  }
  const row = sectionRow(stick.index, 0);
  const hung = sum(
    basics.map((b) => b?.hung[unit]),
    factors,
    WIDTH,
  );
  const change = hung.map((v, k) => v - at(sections, row + k));
  sections.set(hung, row);
  return [{ stick, change }];
}

/** Reactions as summed count dropped members in action; where one meets a support the difference is put right. */
function withoutDropped(
  system: System,
  released: readonly Released[],
  reactions: Float64Array,
): Float64Array {
  const { held } = system.ground;
  for (const { stick, change } of released) {
    for (const [node, to, row, sign] of [
      [stick.i, stick.toI, 0, -1],
      [stick.j, stick.toJ, WIDTH - PER_SECTION, 1],
    ] as const)
      for (let r = 0; r < 6; r++) {
        const force = sign * at(change, row + r);
        for (let c = 0; c < 6; c++) {
          const k = 6 * node + c;
          if (held[k]) reactions[k] = at(reactions, k) + at(to, 6 * r + c) * force;
        }
      }
  }
  return reactions;
}
