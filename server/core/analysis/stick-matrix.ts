/**
 * End forces of all sticks from the motions of all nodes, as flat arrays: one product for each stick, no objects. The
 * same figures as `balance`, for the many combinations of a superposition.
 */
import { ENDS } from "./element-stiffness.ts";
import { at, bump } from "./numbers.ts";
import { type LinkPart, type System, strainOf } from "./system.ts";

export class StickMatrix {
  readonly count: number;
  readonly #system: System;
  readonly #k: Float64Array;
  readonly #to: Float64Array;
  readonly #nodes: Int32Array;

  constructor(system: System) {
    this.#system = system;
    this.count = system.sticks.length;
    const { k, to, nodes } = system.made.matrices();
    this.#k = k;
    this.#to = to;
    this.#nodes = nodes;
  }

  /** ends += end forces of every stick in the motions `u`. */
  addEnds(u: Float64Array, ends: Float64Array): void {
    const k = this.#k;
    const nodes = this.#nodes;
    for (let n = 0; n < this.count; n++) {
      const i = nodes[2 * n] as number;
      const j = nodes[2 * n + 1] as number;
      let q = 144 * n;
      for (let r = 0; r < ENDS; r++) {
        let sum = 0;
        for (let c = 0; c < 6; c++) sum += (k[q + c] as number) * (u[i + c] as number);
        for (let c = 0; c < 6; c++) sum += (k[q + 6 + c] as number) * (u[j + c] as number);
        ends[ENDS * n + r] = (ends[ENDS * n + r] as number) + sum;
        q += ENDS;
      }
    }
  }

  /** unbalanced += what sticks, links and springs need from each motion, for given end forces and link forces. */
  addNeeds(u: Float64Array, ends: Float64Array, links: Float64Array, unbalanced: Float64Array): void {
    for (let n = 0; n < this.count; n++) this.addStick(n, ends, ENDS * n, unbalanced);
    const parts = this.#system.links;
    for (let n = 0; n < parts.length; n++) {
      const pull = at(links, n);
      if (pull === 0) continue;
      const { i, j, stretch } = parts[n] as LinkPart;
      for (let m = 0; m < 6; m++) {
        bump(unbalanced, 6 * i + m, pull * at(stretch, m));
        bump(unbalanced, 6 * j + m, pull * at(stretch, m + 6));
      }
    }
    const { springs } = this.#system.ground;
    for (let k = 0; k < springs.length; k++)
      if (springs[k] !== 0) bump(unbalanced, k, at(springs, k) * at(u, k));
  }

  /** unbalanced += what one stick needs from the motions of its nodes. @param from where its end forces begin in `ends` */
  addStick(n: number, ends: Float64Array, from: number, unbalanced: Float64Array): void {
    const to = this.#to;
    for (let end = 0; end < 2; end++) {
      const node = this.#nodes[2 * n + end] as number;
      const t = 72 * n + 36 * end;
      for (let r = 0; r < 6; r++) {
        const f = ends[from + 6 * end + r] as number;
        if (f === 0) continue;
        for (let c = 0; c < 6; c++)
          unbalanced[node + c] = (unbalanced[node + c] as number) + (to[t + 6 * r + c] as number) * f;
      }
    }
  }

  /** Force of every link in the motions `u`, tension positive. @param out where they are written */
  links(u: Float64Array, out: Float64Array): Float64Array {
    const { links } = this.#system;
    for (let n = 0; n < out.length; n++) {
      const part = links[n] as LinkPart;
      out[n] = part.link.stiffness * strainOf(part.stretch, part, u);
    }
    return out;
  }
}
