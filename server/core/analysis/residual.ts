/**
 * End forces from motions, and what they leave unbalanced: summed stick by stick, without the assembled matrix, so that
 * an error in it or in its factor cannot hide.
 */
import type { CaseLoads } from "./case-loads.ts";
import { ENDS } from "./element-stiffness.ts";
import { at, bump } from "./numbers.ts";
import type { Vec3 } from "./structure.ts";
import { toGlobal } from "./supports.ts";
import { endMotions, type System, strainOf } from "./system.ts";
import { cross, minus, norm, plus, three, ZERO } from "./vec3.ts";

/** Parts out of action, by their place in `system.parts`. */
export type Dropped = ReadonlySet<number>;

export interface Balance {
  /** The motions it is for. */
  readonly motions: Float64Array;
  /** Forces of both ends on each stick (12 a stick), local axes, at its nodes' side of the joints. */
  readonly ends: Float64Array;
  /** Forces that sticks, links and springs need from each motion, less the loads: the reaction where held, else nought. */
  readonly unbalanced: Float64Array;
  /** Largest force and moment at the ends of sticks. */
  readonly force: number;
  readonly moment: number;
}

export function balance(system: System, loads: CaseLoads, u: Float64Array, dropped: Dropped): Balance {
  const unbalanced = loads.applied.map((v) => -v);
  const ends = new Float64Array(ENDS * system.sticks.length);
  const v = new Float64Array(ENDS);
  system.sticks.forEach((stick, n) => {
    const from = ENDS * n;
    const loaded = loads.sticks.get(n);
    if (dropped.has(n)) {
      if (!loaded) return;
      ends.set(loaded.hung, from);
    } else {
      if (loaded) ends.set(loaded.ends, from);
      endMotions(stick, u, v);
      multiply(stick.joint.k, v, ends, from);
    }
    addEnd(ends, from, stick.toI, unbalanced, 6 * stick.i);
    addEnd(ends, from + 6, stick.toJ, unbalanced, 6 * stick.j);
  });
  let [force, moment] = [loads.force, loads.moment];
  for (let k = 0; k < ends.length; k++) {
    const size = Math.abs(at(ends, k));
    if (k % 6 < 3) force = Math.max(force, size);
    else moment = Math.max(moment, size);
  }
  system.links.forEach((link, n) => {
    if (dropped.has(system.sticks.length + n)) return;
    const pull = link.link.stiffness * strainOf(link.stretch, link, u);
    force = Math.max(force, Math.abs(pull));
    for (let m = 0; m < 6; m++) {
      bump(unbalanced, 6 * link.i + m, pull * at(link.stretch, m));
      bump(unbalanced, 6 * link.j + m, pull * at(link.stretch, m + 6));
    }
  });
  for (let k = 0; k < system.size; k++) {
    const stiffness = at(system.ground.springs, k);
    if (stiffness === 0) continue;
    const spring = stiffness * at(u, k);
    bump(unbalanced, k, spring);
    if (k % 6 < 3) force = Math.max(force, Math.abs(spring));
    else moment = Math.max(moment, Math.abs(spring));
  }
  return { motions: u, ends, unbalanced, force, moment };
}

/** into[from …] += K v */
function multiply(k: Float64Array, v: Float64Array, into: Float64Array, from: number): void {
  for (let c = 0; c < ENDS; c++) {
    const value = at(v, c);
    if (value === 0) continue;
    for (let r = 0; r < ENDS; r++) bump(into, from + r, at(k, r * ENDS + c) * value);
  }
}

/** sum[node …] += Tᵀ f[from …] */
function addEnd(f: Float64Array, from: number, t: Float64Array, sum: Float64Array, node: number): void {
  for (let r = 0; r < 6; r++) {
    const value = at(f, from + r);
    if (value === 0) continue;
    for (let c = 0; c < 6; c++) bump(sum, node + c, at(t, 6 * r + c) * value);
  }
}

export interface Residual {
  /** Largest share of the largest force (or moment) in the case that some node leaves unbalanced. */
  readonly nodes: number;
  /** Node at which that is. */
  readonly node: number;
  /** Sum of all loads and reactions, and their moment about the first node, as a share of the largest. */
  readonly whole: number;
}

/**
 * @param reach size of the frame: turns forces into moments and back, so that one can be weighed against the other
 */
export function residualOf(system: System, loads: CaseLoads, found: Balance, reach: number): Residual {
  const force = Math.max(found.force, reach > 0 ? found.moment / reach : 0);
  const moment = Math.max(found.moment, force * reach);
  let [nodes, node] = [0, 0];
  for (let k = 0; k < system.size; k++) {
    if (system.ground.held[k]) continue;
    const share = part(at(found.unbalanced, k), k % 6 < 3 ? force : moment);
    if (share > nodes) [nodes, node] = [share, Math.floor(k / 6)];
  }
  const [sum, turn] = wholeBalance(system, loads, found);
  const whole = Math.max(part(norm(sum), force), part(norm(turn), moment));
  return { nodes, node, whole };
}

const part = (v: number, size: number): number => (size > 0 ? Math.abs(v) / size : v === 0 ? 0 : 1);

/** Loads on the frame plus what supports and springs put on it: force, and moment about the first node. */
function wholeBalance(system: System, loads: CaseLoads, found: Balance): [Vec3, Vec3] {
  const { nodes } = system.structure;
  const origin = nodes[0]?.at ?? ZERO;
  let [sum, turn]: [Vec3, Vec3] = [ZERO, ZERO];
  const add = (point: Vec3, force: Vec3, moment: Vec3) => {
    sum = plus(sum, force);
    turn = plus(turn, plus(moment, cross(minus(point, origin), force)));
  };
  const applied = loads.applied;
  const reactions = reactionsOf(system, found);
  nodes.forEach((n, k) => {
    for (const list of [applied, reactions]) {
      const v = toGlobal(system.ground, list, k);
      add(n.at, three(v), three(v, 3));
    }
  });
  for (const [index, { loads: acts }] of loads.sticks) {
    const stick = system.sticks[index];
    if (!stick) continue;
    const { x, y, z, length } = stick.axes;
    const turnOut = (v: Vec3): Vec3 =>
      [0, 1, 2].map((c) => (x[c] ?? 0) * v[0] + (y[c] ?? 0) * v[1] + (z[c] ?? 0) * v[2]) as unknown as Vec3;
    const start = plus(nodes[stick.i]?.at ?? ZERO, stick.element.offsetI ?? ZERO);
    const point = (d: number): Vec3 => plus(start, [x[0] * d, x[1] * d, x[2] * d]);
    for (const p of acts.points) add(point(Math.min(p.at, length)), turnOut(p.force), turnOut(p.moment));
    for (const s of acts.spreads) {
      const span = s.to - s.from;
      const half = (v: Vec3): Vec3 => turnOut([(v[0] * span) / 2, (v[1] * span) / 2, (v[2] * span) / 2]);
      add(point(s.from + span / 3), half(s.start), ZERO);
      add(point(s.to - span / 3), half(s.end), ZERO);
    }
  }
  return [sum, turn];
}

/** What each support puts on the frame, springs included, in the nodes' axes; nought at free motions. */
export function reactionsOf(system: System, found: Balance): Float64Array {
  return found.unbalanced.map((v, k) =>
    system.ground.held[k] ? v : -at(system.ground.springs, k) * at(found.motions, k),
  );
}
