/** The loads of one case, brought to the nodes. */
import { fixedEndForces, leverForces, readLoad, type StickLoads } from "./element-loads.ts";
import { ENDS } from "./element-stiffness.ts";
import type { InputFault } from "./faults.ts";
import { at, bump, largest } from "./numbers.ts";
import { once } from "./once.ts";
import { joinForces } from "./releases.ts";
import { loadSections } from "./sections.ts";
import { type LoadCase, MOTIONS } from "./structure.ts";
import { toNode } from "./supports.ts";
import type { Stick, System } from "./system.ts";
import { isFinite3, ZERO } from "./vec3.ts";

/** Loads of one stick; forces are of its ends on the stick, local axes, on the nodes' side of its joints. */
export interface LoadedStick {
  readonly loads: StickLoads;
  /** With both nodes at rest. */
  readonly ends: Float64Array;
  /** Forces before each condensed joint, for the motions inside. */
  readonly atStep: readonly number[];
  /** When it has let go and only hangs in its joints. */
  readonly hung: Float64Array;
  /** Forces at its sections from these loads, without any at its ends; see sections.ts. */
  readonly sections: () => Float64Array;
}

export interface CaseLoads {
  /** By stick; sticks without load are missing. */
  readonly sticks: ReadonlyMap<number, LoadedStick>;
  /** Forces on the nodes, in the nodes' axes. */
  readonly applied: Float64Array;
  /** Motions of held ones, nought elsewhere. */
  readonly values: Float64Array;
  /** Sizes of the largest force and moment in play, to judge residuals by. */
  readonly force: number;
  readonly moment: number;
}

type Fault = (kind: InputFault["kind"], detail: string) => void;

/** @returns what does not fit into `applied` is told to `fault` */
export function readNodeLoads(system: System, given: LoadCase, fault: Fault): Float64Array {
  const applied = new Float64Array(system.size);
  for (const load of given.nodeLoads ?? []) {
    const [force, moment] = [load.force ?? ZERO, load.moment ?? ZERO];
    if (!system.structure.nodes[load.node]) fault("unknown-node", String(load.node));
    else if (!isFinite3(force) || !isFinite3(moment)) fault("bad-number", `load on node ${load.node}`);
    else
      [...toNode(system.ground, load.node, force), ...toNode(system.ground, load.node, moment)].forEach(
        (v, m) => {
          bump(applied, 6 * load.node + m, v);
        },
      );
  }
  return applied;
}

/** Where the faults of a load case are gathered. */
export function faultsOf(given: LoadCase): { readonly faults: InputFault[]; readonly fault: Fault } {
  const faults: InputFault[] = [];
  return { faults, fault: (kind, detail) => faults.push({ kind, in: "load-case", id: given.id, detail }) };
}

export function readCase(system: System, given: LoadCase): CaseLoads | InputFault[] {
  const { faults, fault } = faultsOf(given);
  const applied = readNodeLoads(system, given, fault);
  const values = system.ground.values.slice();
  for (const { node, motion, value } of given.settlements ?? []) {
    const k = 6 * node + MOTIONS.indexOf(motion);
    if (!system.structure.nodes[node]) fault("unknown-node", String(node));
    else if (!Number.isFinite(value)) fault("bad-number", `settlement of node ${node}`);
    else if (!system.ground.held[k]) fault("not-held", `${motion} of node ${node}`);
    else bump(values, k, value);
  }
  const sticks = readSticks(system, given, fault);
  if (faults.length > 0) return faults;
  return { sticks, applied, values, ...sizes(system, applied, values, sticks) };
}

function readSticks(system: System, given: LoadCase, fault: Fault): Map<number, LoadedStick> {
  const found = new Map<
    number,
    { points: StickLoads["points"]; spreads: StickLoads["spreads"]; elongation: number }
  >();
  const of = (stick: Stick) => {
    const known = found.get(stick.index);
    if (known) return known;
    const made = { points: [], spreads: [], elongation: 0 };
    found.set(stick.index, made);
    return made;
  };
  for (const stick of system.sticks)
    if (stick.element.freeElongation) of(stick).elongation += stick.element.freeElongation;
  for (const { element, value } of given.elongations ?? []) {
    const stick = system.sticks[element];
    if (!stick) fault("unknown-element", String(element));
    else if (!Number.isFinite(value)) fault("bad-number", `elongation of ${stick.id}`);
    else of(stick).elongation += value;
  }
  for (const load of given.elementLoads ?? []) {
    const stick = system.sticks[load.element];
    if (!stick) {
      fault("unknown-element", String(load.element));
      continue;
    }
    const wrong = readLoad(load, stick.axes, stick.element.axialOnly, of(stick));
    if (wrong) fault(wrong.kind, `${wrong.detail} (${stick.id})`);
  }
  return new Map(
    [...found].map(([index, loads]) => [index, loadedStick(system.sticks[index] as Stick, loads)]),
  );
}

/** What loads do to one stick. */
export function loadedStick(stick: Stick, loads: StickLoads): LoadedStick {
  const { length } = stick.axes;
  const fast = fixedEndForces(loads, length, stick.flexibility, stick.fast, stick.element.axialOnly);
  const { f: ends, atStep } = joinForces(stick.joint, fast);
  const hung = stick.oneWay ? hang(stick, ends, leverForces(loads, length)) : ends;
  const sections = once(() => loadSections(loads, length));
  return { loads, ends, atStep, hung, sections };
}

/**
 * End forces of a one-way stick that has let go: what is left of `ends` without any of the stick's own strain. The lever
 * rule gives that, unless a joint cannot take such a force; then the part of `ends` that strains nothing is left.
 */
function hang(stick: Stick, ends: Float64Array, lever: Float64Array): Float64Array {
  const strain = inStrains(
    stick,
    ends.map((v, m) => v - at(lever, m)),
  );
  const reached = expand(stick, strain);
  const missed = reached.map((v, m) => v - (at(ends, m) - at(lever, m)));
  if (largest(missed) <= 1e-9 * largest(ends)) return lever;
  const own = expand(stick, inStrains(stick, ends));
  return ends.map((v, m) => v - at(own, m));
}

const expand = (stick: Stick, strain: readonly number[]): Float64Array => {
  const out = new Float64Array(ENDS);
  stick.localModes().forEach((b, n) => {
    for (let m = 0; m < ENDS; m++) bump(out, m, at(b, m) * (strain[n] ?? 0));
  });
  return out;
};

/** Coefficients c of the deformations B with B c nearest to the end forces `f` (least squares by Gram–Schmidt). */
export function inStrains(stick: Stick, f: Float64Array): number[] {
  const columns = stick.localModes();
  const dot = (a: Float64Array, b: Float64Array) => a.reduce((sum, v, m) => sum + v * at(b, m), 0);
  const basis: { q: Float64Array; size: number; shares: number[] }[] = [];
  for (const column of columns) {
    let q = column.slice();
    const shares: number[] = [];
    for (const earlier of basis) {
      const share = dot(earlier.q, q);
      shares.push(share);
      q = q.map((v, m) => v - share * at(earlier.q, m));
    }
    const size = Math.sqrt(dot(q, q));
    basis.push({ q: q.map((v) => v / size), size, shares });
  }
  const c = new Array<number>(columns.length).fill(0);
  for (let n = columns.length - 1; n >= 0; n--) {
    const b = basis[n];
    if (!b) continue;
    let sum = dot(b.q, f);
    for (let later = n + 1; later < columns.length; later++)
      sum -= (basis[later]?.shares[n] ?? 0) * (c[later] ?? 0);
    c[n] = sum / b.size;
  }
  return c;
}

function sizes(
  system: System,
  applied: Float64Array,
  values: Float64Array,
  sticks: ReadonlyMap<number, LoadedStick>,
): { force: number; moment: number } {
  let [force, moment] = [0, 0];
  const see = (list: Float64Array, from: number) => {
    for (let m = 0; m < 6; m++) {
      const v = Math.abs(at(list, from + m));
      if (m < 3) force = Math.max(force, v);
      else moment = Math.max(moment, v);
    }
  };
  for (let node = 0; node < system.structure.nodes.length; node++) see(applied, 6 * node);
  for (const { ends } of sticks.values()) {
    see(ends, 0);
    see(ends, 6);
  }
  // Supports that move: forces far below what one support alone would need to move so are rounding, as when all of them
  // go along with a rigid motion.
  values.forEach((value, k) => {
    const alone = Math.abs(value) * at(system.gross, k) * ROUNDED;
    if (k % 6 < 3) force = Math.max(force, alone);
    else moment = Math.max(moment, alone);
  });
  return { force, moment };
}

const ROUNDED = 1e-6;
