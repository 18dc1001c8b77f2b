/**
 * What one-way members that let go carry: nothing but their own loads, hanging in their joints. In a sum of what basic loads
 * do with every member in action that takes the place of what they would carry there.
 */
import type { LoadTerm } from "./combined.ts";
import { ENDS } from "./element-stiffness.ts";
import { type Answers, addOwn, tipsOf } from "./linear-answer.ts";
import { addScaled } from "./mechanism.ts";
import { at, bump, int } from "./numbers.ts";
import type { OneWayMembers } from "./one-way.ts";
import type { Stick, System } from "./system.ts";
import { OWN, type SummedLoads } from "./unit-loads.ts";

export class LettingGo {
  readonly #system: System;
  readonly #members: OneWayMembers;
  readonly #answers: Answers;
  /** written anew for every member: what it carries hanging, under one load, and how far its sum is off */
  readonly #hung = new Float64Array(ENDS);
  readonly #hungByOne = new Float64Array(ENDS);
  readonly #off = new Float64Array(ENDS);

  constructor(system: System, members: OneWayMembers, answers: Answers) {
    this.#system = system;
    this.#members = members;
    this.#answers = answers;
  }

  /** A member that let go, by its part, and the forces at a stick's ends that hang, less those while it is held fast. */
  instead(n: number, terms: readonly LoadTerm[]): readonly [part: number, ends: Float64Array] {
    const part = this.#members.units[n]?.part ?? -1;
    const ends = new Float64Array(ENDS);
    for (const { by, loads } of terms) {
      if ((loads.from[part] ?? -1) < 0) continue;
      addOwn(loads, part, OWN.hung, ends, 0, by);
      addOwn(loads, part, OWN.ends, ends, 0, -by);
    }
    return [part, ends];
  }

  /**
   * Takes what a member that let go would carry out of the sums.
   * @param tips forces at the ends of all sticks; @param links those of all links
   * @returns by how much that differs from what took its place: were it not nought, nodes would be left with it
   */
  takeOut(
    n: number,
    terms: readonly LoadTerm[],
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
    const hung = this.#hung.fill(0);
    for (const { by, loads } of terms)
      if (int(loads.from, unit.part) >= 0) this.#addHung(loads, stick, by, hung);
    const off = this.#off;
    for (let k = 0; k < ENDS; k++) off[k] = at(tips, from + k) - at(hung, k);
    const modes = stick.localModes();
    for (let m = 0; m < modes.length; m++) {
      const by = at(mu, unit.first + m);
      const b = modes[m] as Float64Array;
      for (let k = 0; k < ENDS; k++) bump(off, k, (k < 6 ? by : -by) * at(b, k));
    }
    tips.set(hung, from);
    return this.#answers.largest(off);
  }

  /** sections += those at the ends of a stick that has let go and only hangs in its joints, by a factor. */
  #addHung(loads: SummedLoads, { index, axes }: Stick, by: number, sections: Float64Array): void {
    const own = this.#hungByOne;
    tipsOf(loads.figures, int(loads.from, index) + OWN.hung, axes.length, own, 0);
    addOwn(loads, index, OWN.tips, own, 0);
    addScaled(sections, by, own);
  }
}
