/**
 * What a frame does under forces while every one-way member is in action: all of it sums, with factors, to what it does in
 * a combination. Equilibrium is verified at every node, stick by stick.
 */
import { ENDS } from "./element-stiffness.ts";
import { addScaled, flex, type Stability } from "./mechanism.ts";
import { at, int } from "./numbers.ts";
import { Room } from "./room.ts";
import { PER_SECTION, runOn } from "./sections.ts";
import type { StickMatrix } from "./stick-matrix.ts";
import type { System } from "./system.ts";
import { OWN, type SummedLoads } from "./unit-loads.ts";

export interface Answer {
  /** motions of all nodes, six each, in the nodes' axes; the farthest shift of one, in */
  readonly motions: Float64Array;
  readonly farthest: number;
  /** forces inside every stick just within its ends, six each */
  readonly tips: Float64Array;
  /** by link, tension positive */
  readonly links: Float64Array;
  /** what the supports, springs included, put on the frame: six each, in the nodes' axes, in the order of the supports */
  readonly reactions: Float64Array;
  /** largest force that some free motion is left with, lb; moments count by the size of the frame */
  readonly left: number;
}

/** Solutions are refined while they leave more than this share of the largest force. */
export const REFINED = 1e-8;
export const MOST_REFINEMENTS = 2;

/** Makes answers for one factorised frame. */
export class Answers {
  readonly #system: System;
  readonly #stability: Stability;
  readonly #matrix: StickMatrix;
  readonly #scale: number;
  readonly #ends: Float64Array;
  readonly #unbalanced: Float64Array;

  /** How many numbers an answer takes besides its motions. */
  readonly size: number;

  constructor(system: System, stability: Stability, matrix: StickMatrix) {
    this.#system = system;
    this.#stability = stability;
    this.#matrix = matrix;
    this.#scale = stability.reach > 0 ? 1 / stability.reach : 1;
    this.#ends = new Float64Array(ENDS * matrix.count);
    this.size = ENDS * matrix.count + system.links.length + 6 * system.ground.nodes.length;
    this.#unbalanced = new Float64Array(system.size);
  }

  /** Largest of forces, six numbers each; moments count by the size of the frame. */
  largest(forces: Float64Array): number {
    let force = 0;
    let moment = 0;
    for (let k = 0; k < forces.length; k += 6)
      for (let m = 0; m < 3; m++) {
        force = Math.max(force, Math.abs(at(forces, k + m)));
        moment = Math.max(moment, Math.abs(at(forces, k + m + 3)));
      }
    return Math.max(force, moment * this.#scale);
  }

  /** The same on free motions alone. */
  largestFree(forces: Float64Array): number {
    const { held } = this.#system.ground;
    let force = 0;
    let moment = 0;
    for (let k = 0; k < forces.length; k += 6)
      for (let m = 0; m < 3; m++) {
        if (!held[k + m]) force = Math.max(force, Math.abs(at(forces, k + m)));
        if (!held[k + m + 3]) moment = Math.max(moment, Math.abs(at(forces, k + m + 3)));
      }
    return Math.max(force, moment * this.#scale);
  }

  /**
   * What supports, springs included, put on the frame.
   * @param needs what it needs from each motion for its balance
   * @param room where they find their place
   */
  reactions(needs: Float64Array, motions: Float64Array, room = new Room(0)): Float64Array {
    const { nodes, held, springs } = this.#system.ground;
    const out = room.take(6 * nodes.length);
    nodes.forEach((node, n) => {
      for (let m = 0; m < 6; m++) {
        const k = 6 * node + m;
        out[6 * n + m] = held[k] ? at(needs, k) : -at(springs, k) * at(motions, k);
      }
    });
    return out;
  }

  /** Forces that loads put on all motions while all nodes are at rest. @param needs all nought; where they are written */
  pushed(applied: Float64Array, loads: SummedLoads, needs: Float64Array): Float64Array {
    for (const stick of loads.sticks)
      this.#matrix.addStick(stick, loads.figures, int(loads.from, stick) + OWN.ends, needs);
    for (let k = 0; k < needs.length; k++) needs[k] = at(applied, k) - at(needs, k);
    return needs;
  }

  /**
   * @param applied forces on the nodes
   * @param first motions under them and the loads of sticks; refined where they leave too much
   * @param room where the answer finds its place, as long as it need not be refined
   */
  of(applied: Float64Array, loads: SummedLoads, first: Float64Array, room = new Room(0)): Answer {
    const { ground } = this.#system;
    const { matrix, factor } = this.#stability;
    let best = this.#from(first, applied, loads, room);
    for (let n = 0; n < MOST_REFINEMENTS && best.left > REFINED * this.largest(best.tips); n++) {
      const rest = this.#unbalanced.map((v, k) => (ground.held[k] ? 0 : -v));
      const motions = best.motions.slice();
      addScaled(motions, 1, flex(matrix, factor, rest));
      const next = this.#from(motions, applied, loads, room);
      if (!(next.left < best.left)) break;
      best = next;
    }
    return best;
  }

  /** @returns what the frame does in given motions, forces on its nodes taken away from what it needs for them */
  under(motions: Float64Array, applied: Float64Array, none: SummedLoads): Answer {
    return this.#from(motions, applied, none, new Room(0));
  }

  /**
   * Forces that motions leave on all of them: where held, what the supports take.
   * @param pushed what all loads put on them, nodes at rest
   * @param letGo parts out of action, with the forces at the ends of a stick that only hangs, less those while held fast
   */
  rest(motions: Float64Array, pushed: Float64Array, letGo: ReadonlyMap<number, Float64Array>): Float64Array {
    const ends = this.#ends.fill(0);
    this.#matrix.addEnds(motions, ends);
    const links = this.#matrix.links(motions, new Float64Array(this.#system.links.length));
    for (const [part, instead] of letGo) {
      if (part < this.#matrix.count) ends.set(instead, ENDS * part);
      else links[part - this.#matrix.count] = 0;
    }
    const needs = new Float64Array(this.#system.size);
    this.#matrix.addNeeds(motions, ends, links, needs);
    return needs.map((v, k) => at(pushed, k) - v);
  }

  #needs(
    motions: Float64Array,
    applied: Float64Array,
    loads: SummedLoads,
    links: Float64Array,
  ): Float64Array {
    const ends = this.#ends.fill(0);
    const unbalanced = this.#unbalanced;
    for (let k = 0; k < unbalanced.length; k++) unbalanced[k] = -at(applied, k);
    this.#matrix.addEnds(motions, ends);
    for (const stick of loads.sticks) addOwn(loads, stick, OWN.ends, ends, ENDS * stick);
    this.#matrix.addNeeds(motions, ends, links, unbalanced);
    return unbalanced;
  }

  #from(motions: Float64Array, applied: Float64Array, loads: SummedLoads, room: Room): Answer {
    const links = this.#matrix.links(motions, room.take(this.#system.links.length));
    const unbalanced = this.#needs(motions, applied, loads, links);
    const left = this.largestFree(unbalanced);
    const reactions = this.reactions(unbalanced, motions, room);
    const tips = this.#tips(loads, room.take(ENDS * this.#matrix.count));
    return { motions, farthest: farthestOf(motions), tips, links, reactions, left };
  }

  #tips(loads: SummedLoads, tips: Float64Array): Float64Array {
    this.#system.sticks.forEach(({ axes }, n) => {
      tipsOf(this.#ends, ENDS * n, axes.length, tips, ENDS * n);
    });
    for (const stick of loads.sticks) addOwn(loads, stick, OWN.tips, tips, ENDS * stick);
    return tips;
  }
}

/** Farthest shift of a node. */
export function farthestOf(motions: Float64Array): number {
  let most = 0;
  for (let k = 0; k < motions.length; k += 6) {
    const [x, y, z] = [at(motions, k), at(motions, k + 1), at(motions, k + 2)];
    most = Math.max(most, x * x + y * y + z * z);
  }
  return Math.sqrt(most);
}

/**
 * Sections at both ends from the end forces on a stick without loads, written to `out` from `to` on.
 * @param from where its end forces begin in `ends`
 */
export function tipsOf(
  ends: Float64Array,
  from: number,
  length: number,
  out: Float64Array,
  to: number,
): void {
  for (let m = 0; m < PER_SECTION; m++) out[to + m] = -at(ends, from + m);
  runOn(out, to, length, out, to + PER_SECTION);
}

/** into[to …] += twelve of the figures of a loaded stick. @param what where they begin among its figures */
export function addOwn(
  loads: SummedLoads,
  stick: number,
  what: number,
  into: Float64Array,
  to: number,
  by = 1,
): void {
  const from = int(loads.from, stick) + what;
  for (let k = 0; k < ENDS; k++) into[to + k] = at(into, to + k) + by * at(loads.figures, from + k);
}
