/** What a frame does under one combination of basic loads. Sections between the ends are worked out when asked for. */
import type { CaseFault } from "./faults.ts";
import type { Answer } from "./linear-answer.ts";
import { addScaled } from "./mechanism.ts";
import { at, int } from "./numbers.ts";
import { PER_SECTION, runOn, SHARES, sectionRow } from "./sections.ts";
import type { Vec6 } from "./structure.ts";
import { toGlobal } from "./supports.ts";
import type { System } from "./system.ts";
import { OWN, type SummedLoads } from "./unit-loads.ts";

export type Reactions = readonly { readonly node: number; readonly force: Vec6 }[];

export interface Combined {
  readonly id: string;
  readonly status: "sound" | "slack" | "failed";
  readonly faults: readonly CaseFault[];
  /** forces inside every stick just within its two ends, six each (N Vy Vz T My Mz; lb and lb·in); empty when failed */
  readonly tips: Float64Array;
  /** by link, lb, tension positive */
  readonly links: Float64Array;
  /** ids of one-way members out of action */
  readonly dropped: readonly string[];
  /** loads of its sticks, as they are summed; none when failed */
  readonly loads: readonly LoadTerm[];
  /** largest share of the largest force that some node leaves unbalanced, or a little more */
  readonly residual: number;
  /** no node goes farther, in; some may go less far */
  readonly farthest: number;
  /** forces inside every stick at the shares of its length in `SHARES`, as in `tips`; empty when failed */
  readonly sections: () => Float64Array;
  /** The same of one stick, written to `table`. @param row where; the default is where it stands in the table of all */
  readonly writeSections: (stick: number, table: Float64Array, row?: number) => void;
  /**
   * For each number of a section, between which bounds it lies off the straight line between its values at the stick's ends:
   * the middle of the two, then half of what is between them, six each; written to `out`, but for torque.
   */
  readonly boundInner: (stick: number, out: Float64Array) => void;
  /** global axes, in the order of the supports */
  readonly reactions: () => Reactions;
  /** motions of all nodes, six each, in the nodes' axes */
  readonly motions: () => Float64Array;
  /** motion of one node, global axes */
  readonly displacement: (node: number) => Vec6;
}

/** Something that is summed, and its factor. */
export interface Term {
  readonly by: number;
  readonly answer: Pick<Answer, "motions" | "farthest" | "tips" | "links" | "reactions" | "left">;
}

/** Loads of sticks that are summed, and their factor. */
export interface LoadTerm {
  readonly by: number;
  readonly loads: SummedLoads;
}

const EMPTY = new Float64Array(0);

/** A combination without an answer, for the reasons given. */
export function failedCombination(id: string, faults: readonly CaseFault[]): Combined {
  return {
    id,
    status: "failed",
    faults,
    tips: EMPTY,
    links: EMPTY,
    dropped: [],
    loads: [],
    residual: 0,
    farthest: 0,
    sections: () => EMPTY,
    writeSections: () => {},
    boundInner: () => {},
    reactions: () => [],
    motions: () => EMPTY,
    displacement: () => [0, 0, 0, 0, 0, 0],
  };
}

type Figures = "tips" | "links" | "motions" | "reactions";

/** Sum of one kind of figures of all terms. @param out all nought; where it is written */
export function sumOf(terms: readonly Term[], what: Figures, out: Float64Array): Float64Array {
  // four at a time, so that the sums are read and written less
  let n = 0;
  for (; n + 3 < terms.length; n += 4)
    addFour(out, terms[n] as Term, terms[n + 1] as Term, terms[n + 2] as Term, terms[n + 3] as Term, what);
  for (; n < terms.length; n++) {
    const { by, answer } = terms[n] as Term;
    addScaled(out, by, answer[what]);
  }
  return out;
}

function addFour(out: Float64Array, p: Term, q: Term, r: Term, s: Term, what: Figures): void {
  const [a, b, c, d] = [p.answer[what], q.answer[what], r.answer[what], s.answer[what]];
  const [byA, byB, byC, byD] = [p.by, q.by, r.by, s.by];
  for (let k = 0; k < out.length; k++)
    out[k] = at(out, k) + (byA * at(a, k) + byB * at(b, k)) + (byC * at(c, k) + byD * at(d, k));
}

/** What is known of a combination before anyone asks for more. */
export type Summed = Pick<Combined, "id" | "faults" | "tips" | "links" | "dropped" | "residual"> & {
  readonly status: "sound" | "slack";
  /** of the supports, six each, where their sum over the terms is not near enough */
  readonly reactions: Float64Array | undefined;
};

/** A combination with an answer. */
export class Sum implements Combined {
  readonly id: Summed["id"];
  readonly status: Summed["status"];
  readonly faults: Summed["faults"];
  readonly tips: Summed["tips"];
  readonly links: Summed["links"];
  readonly dropped: Summed["dropped"];
  readonly loads: readonly LoadTerm[];
  readonly residual: Summed["residual"];
  readonly farthest: number;
  readonly #system: System;
  readonly #terms: readonly Term[];
  readonly #held: Float64Array | undefined;
  #sections: Float64Array | undefined;
  #motions: Float64Array | undefined;
  #reactions: Reactions | undefined;

  constructor(summed: Summed, system: System, terms: readonly Term[], loads: readonly LoadTerm[]) {
    this.id = summed.id;
    this.status = summed.status;
    this.faults = summed.faults;
    this.tips = summed.tips;
    this.links = summed.links;
    this.dropped = summed.dropped;
    this.residual = summed.residual;
    this.farthest = terms.reduce((sum, { by, answer }) => sum + Math.abs(by) * answer.farthest, 0);
    this.#system = system;
    this.#terms = terms;
    this.#held = summed.reactions;
    this.loads = loads;
  }

  sections(): Float64Array {
    if (!this.#sections) {
      const count = this.#system.sticks.length;
      this.#sections = new Float64Array(sectionRow(count, 0));
      for (let stick = 0; stick < count; stick++) this.writeSections(stick, this.#sections);
    }
    return this.#sections;
  }

  motions(): Float64Array {
    this.#motions ??= sumOf(this.#terms, "motions", new Float64Array(this.#system.size));
    return this.#motions;
  }

  reactions(): Reactions {
    if (!this.#reactions) {
      const { ground } = this.#system;
      const all = this.#held ?? sumOf(this.#terms, "reactions", new Float64Array(6 * ground.nodes.length));
      this.#reactions = ground.nodes.map((node, n) => ({ node, force: toGlobal(ground, all, node, n) }));
    }
    return this.#reactions;
  }

  writeSections(stick: number, table: Float64Array, row = sectionRow(stick, 0)): void {
    const length = this.#system.sticks[stick]?.axes.length ?? 0;
    const from = 2 * PER_SECTION * stick;
    for (let place = 0; place < SHARES.length; place++)
      runOn(this.tips, from, (SHARES[place] as number) * length, table, row + place * PER_SECTION);
    for (let n = 0; n < this.loads.length; n++) {
      const { by, loads } = this.loads[n] as LoadTerm;
      const own = int(loads.from, stick);
      if (own < 0) continue;
      // nought at the first place
      for (let k = PER_SECTION; k < PER_SECTION * SHARES.length; k++)
        table[row + k] = at(table, row + k) + by * at(loads.figures, own + OWN.inner + k);
    }
  }

  boundInner(stick: number, out: Float64Array): void {
    // every stick is asked under every combination: numbers are summed as such, and torque, which nobody bounds, is left out
    let N = 0;
    let Vy = 0;
    let Vz = 0;
    let My = 0;
    let Mz = 0;
    let moreN = 0;
    let moreVy = 0;
    let moreVz = 0;
    let moreMy = 0;
    let moreMz = 0;
    for (let t = 0; t < this.loads.length; t++) {
      const { by, loads } = this.loads[t] as LoadTerm;
      const own = int(loads.from, stick);
      if (own < 0) continue;
      const { figures } = loads;
      const size = Math.abs(by);
      const middle = own + OWN.middle;
      const half = own + OWN.half;
      N += by * at(figures, middle);
      Vy += by * at(figures, middle + 1);
      Vz += by * at(figures, middle + 2);
      My += by * at(figures, middle + 4);
      Mz += by * at(figures, middle + 5);
      moreN += size * at(figures, half);
      moreVy += size * at(figures, half + 1);
      moreVz += size * at(figures, half + 2);
      moreMy += size * at(figures, half + 4);
      moreMz += size * at(figures, half + 5);
    }
    out[0] = N;
    out[1] = Vy;
    out[2] = Vz;
    out[4] = My;
    out[5] = Mz;
    out[6] = moreN;
    out[7] = moreVy;
    out[8] = moreVz;
    out[10] = moreMy;
    out[11] = moreMz;
  }

  displacement(node: number): Vec6 {
    return toGlobal(this.#system.ground, this.motions(), node);
  }
}
