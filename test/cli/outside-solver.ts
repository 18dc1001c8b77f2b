/**
 * A frame solver of its own kind that knows nothing but the JSON of `bentwright model`: direct stiffness with full
 * matrices, inverted by ml-matrix, a general library of linear algebra. Ends set free or on springs are unknowns of their
 * own (the program condenses them), loads on elements come in by integrating the shape functions (the program goes by way
 * of a cantilever), and nothing is superposed: each combination is a right-hand side of its own.
 *
 * Formulas: element stiffness of the prismatic space beam, turning to global axes, rigid end arms and equivalent loads as
 * in McGuire, Gallagher, Ziemian, Matrix Structural Analysis (2nd ed., chapters 4, 5 and 13), the same in Przemieniecki,
 * Theory of Matrix Structural Analysis (chapter 5); from memory.
 */
import { CholeskyDecomposition, Matrix } from "ml-matrix";
import type { OutsideCombination, OutsideElement, OutsideModel, V3 } from "./outside-model.ts";

const MOTIONS = ["ux", "uy", "uz", "rx", "ry", "rz"];

const minus = (a: V3, b: V3): V3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const plus = (a: V3, b: V3): V3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const dot = (a: V3, b: V3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const times = (a: V3, s: number): V3 => [a[0] * s, a[1] * s, a[2] * s];
const unit = (a: V3): V3 => times(a, 1 / Math.sqrt(dot(a, a)));
const cross = (a: V3, b: V3): V3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const O: V3 = [0, 0, 0];
/** lb-in/rad */
const SOFT = 1e-4;

/** A motion as a sum of unknowns. */
type Row = readonly (readonly [unknown: number, by: number])[];

/** Shift of a point on a rigid arm, and turn of its node, along a direction. */
function shiftRow(node: number, arm: V3, along: V3): Row {
  // u + θ × a, along d: d·u + θ·(a × d)
  const turn = cross(arm, along);
  return [
    ...along.map((v, k) => [6 * node + k, v] as const),
    ...turn.map((v, k) => [6 * node + 3 + k, v] as const),
  ];
}

const turnRow = (node: number, along: V3): Row => along.map((v, k) => [6 * node + 3 + k, v] as const);

/** Stiffness of a straight prismatic beam without shear deformation, 12 × 12, local axes. */
function beam(e: OutsideElement, L: number): number[][] {
  const k = Array.from({ length: 12 }, () => new Array<number>(12).fill(0));
  const set = (r: number, c: number, v: number): void => {
    k[r]![c] = v;
    k[c]![r] = v;
  };
  const axial = (e.E * e.A) / L;
  set(0, 0, axial);
  set(6, 6, axial);
  set(0, 6, -axial);
  if (e.axialOnly) return k;
  const twist = (e.G * e.J) / L;
  set(3, 3, twist);
  set(9, 9, twist);
  set(3, 9, -twist);
  for (const [v, r, EI, s] of [
    [1, 5, e.E * e.Iz, 1],
    [2, 4, e.E * e.Iy, -1],
  ] as const) {
    const [a, b, c] = [(12 * EI) / L ** 3, (6 * EI) / L ** 2, EI / L];
    set(v, v, a);
    set(v + 6, v + 6, a);
    set(v, v + 6, -a);
    set(v, r, s * b);
    set(v, r + 6, s * b);
    set(v + 6, r, -s * b);
    set(v + 6, r + 6, -s * b);
    set(r, r, 4 * c);
    set(r + 6, r + 6, 4 * c);
    set(r, r + 6, 2 * c);
  }
  return k;
}

/** Four points of Gauss on 0 to 1. */
const GAUSS = [
  [0.0694318442029737, 0.1739274225687269],
  [0.3300094782075719, 0.3260725774312731],
  [0.6699905217924281, 0.3260725774312731],
  [0.9305681557970263, 0.1739274225687269],
] as const;

/** What a force at x gives the ends that are held fast: cubic shape functions, or the lever rule; halves along what has let go. */
function endShares(p: V3, x: number, L: number, lever: boolean, gone: boolean): number[] {
  const t = x / L;
  const f = new Array<number>(12).fill(0);
  const [a, b] = lever ? [1 - t, t] : [1 - 3 * t * t + 2 * t ** 3, 3 * t * t - 2 * t ** 3];
  f[0] = p[0] * (gone ? 0.5 : 1 - t);
  f[6] = p[0] * (gone ? 0.5 : t);
  for (const k of [1, 2] as const) {
    f[k] = p[k] * a;
    f[k + 6] = p[k] * b;
  }
  if (lever) return f;
  const [m, n] = [x * (1 - t) ** 2, x * t * (t - 1)];
  f[5] = p[1] * m;
  f[11] = p[1] * n;
  f[4] = -p[2] * m;
  f[10] = -p[2] * n;
  return f;
}

interface Stick {
  readonly e: OutsideElement;
  readonly L: number;
  readonly axes: readonly [V3, V3, V3];
  readonly k: number[][];
  /** each of the twelve local end motions as a sum of unknowns */
  readonly rows: readonly Row[];
}

export interface OutsideAnswer {
  readonly reactions: ReadonlyMap<string, readonly number[]>;
  /** forces on the element at end i, then at end j, local axes */
  readonly endForces: ReadonlyMap<string, readonly number[]>;
  /** three shifts and three turns of each node */
  readonly displacements: ReadonlyMap<string, readonly number[]>;
  /** largest of K u − f over the largest load: how well the library has solved */
  readonly residual: number;
}

/** A frame without the elements named. */
class OutsideFrame {
  readonly #nodeOf: ReadonlyMap<string, number>;
  readonly #gone: ReadonlySet<string>;
  readonly #sticks: readonly Stick[];
  readonly #springs: { readonly row: Row; readonly stiffness: number }[] = [];
  readonly #supports: OutsideModel["seats"][number]["supports"];
  #size: number;

  constructor(
    readonly model: OutsideModel,
    seatsName: "hold" | "slide",
    dropped: readonly string[],
  ) {
    const seats = model.seats.find((s) => s.seats === seatsName)!;
    this.#nodeOf = new Map(model.nodes.map(({ id }, n) => [id, n]));
    this.#gone = new Set(dropped);
    this.#size = 6 * model.nodes.length;
    this.#sticks = model.elements.map((e) => this.#stick(e));
    this.#supports = seats.supports;
    for (const l of seats.links) {
      const d = unit(l.direction);
      const from = shiftRow(this.#node(l.i), l.offsetI ?? O, d).map(([n, by]) => [n, -by] as const);
      const row = [...from, ...shiftRow(this.#node(l.j), l.offsetJ ?? O, d)];
      this.#springs.push({ row, stiffness: l.stiffness });
    }
  }

  #node(id: string): number {
    return this.#nodeOf.get(id)!;
  }

  #stick(e: OutsideElement): Stick {
    const at = (id: string): V3 => this.model.nodes[this.#node(id)]!.at;
    const [armI, armJ] = [e.offsetI ?? O, e.offsetJ ?? O];
    const span = minus(plus(at(e.j), armJ), plus(at(e.i), armI));
    const L = Math.sqrt(dot(span, span));
    const x = times(span, 1 / L);
    const y = unit(minus(e.ydir, times(x, dot(e.ydir, x))));
    const axes = [x, y, cross(x, y)] as const;
    const rows = [
      ...this.#endRows(e, this.#node(e.i), armI, axes, e.releaseI ?? [], e.endSpringI ?? {}),
      ...this.#endRows(e, this.#node(e.j), armJ, axes, e.releaseJ ?? [], e.endSpringJ ?? {}),
    ];
    return { e, L, axes, k: beam(e, L), rows };
  }

  #endRows(
    e: OutsideElement,
    node: number,
    arm: V3,
    axes: Stick["axes"],
    free: readonly string[],
    soft: Readonly<Record<string, number>>,
  ): Row[] {
    return MOTIONS.map((motion, m): Row => {
      const rigid = m < 3 ? shiftRow(node, arm, axes[m]!) : turnRow(node, axes[m - 3]!);
      const stiffness = soft[motion];
      if (this.#gone.has(e.id) || (!free.includes(motion) && stiffness === undefined)) return rigid;
      const own = this.#size++;
      if (!free.includes(motion) && stiffness !== undefined)
        this.#springs.push({ row: [...rigid.map(([n, by]) => [n, -by] as const), [own, 1]], stiffness });
      return [[own, 1]];
    });
  }

  #stiffness(): Matrix {
    const K = Matrix.zeros(this.#size, this.#size);
    const spread = (a: Row, b: Row, by: number): void => {
      for (const [r, p] of a) for (const [c, q] of b) K.set(r, c, K.get(r, c) + p * q * by);
    };
    for (const { e, k, rows } of this.#sticks) {
      if (this.#gone.has(e.id)) continue;
      rows.forEach((a, r) => {
        rows.forEach((b, c) => {
          if (k[r]![c] !== 0) spread(a, b, k[r]![c]!);
        });
      });
    }
    for (const { row, stiffness } of this.#springs) spread(row, row, stiffness);
    // idle turns hang on a spring far too soft to carry anything
    const shifts = (n: number): boolean => n < 6 * this.model.nodes.length && n % 6 < 3;
    for (let n = 0; n < this.#size; n++) if (!shifts(n)) K.set(n, n, K.get(n, n) + SOFT);
    // the halves differ by rounding; the library takes only what is symmetric to the last digit
    return Matrix.add(K, K.transpose()).mul(0.5);
  }

  /** What the loads give each of the twelve end motions that are held fast. */
  #onEnds({ loads }: OutsideCombination): Map<string, number[]> {
    const onEnds = new Map(this.#sticks.map(({ e }) => [e.id, new Array<number>(12).fill(0)]));
    const byId = new Map(this.#sticks.map((s) => [s.e.id, s]));
    for (const load of loads.elements) {
      const { e, L, axes } = byId.get(load.element)!;
      const gone = this.#gone.has(e.id);
      const own = onEnds.get(e.id)!;
      const give = (p: V3, x: number): void => {
        const local: V3 = [dot(axes[0], p), dot(axes[1], p), dot(axes[2], p)];
        endShares(local, x, L, gone || e.axialOnly === true, gone).forEach((v, n) => {
          own[n]! += v;
        });
      };
      if (load.kind === "point") give(load.force, load.at);
      else
        for (const [t, weight] of GAUSS) {
          const p = plus(times(load.start, 1 - t), times(load.end, t));
          give(times(p, weight * (load.to - load.from)), load.from + t * (load.to - load.from));
        }
    }
    return onEnds;
  }

  /** @throws Error for a mechanism */
  solve(combinations: readonly OutsideCombination[]): OutsideAnswer[] {
    const K = this.#stiffness();
    const held = this.#supports.flatMap(({ node, fixed }) =>
      fixed.map((motion) => 6 * this.#node(node) + MOTIONS.indexOf(motion)),
    );
    const fast = new Set(held);
    const free = Array.from({ length: this.#size }, (_, n) => n).filter((n) => !fast.has(n));
    const onEnds = combinations.map((c) => this.#onEnds(c));
    const F = Matrix.zeros(this.#size, combinations.length);
    combinations.forEach(({ loads }, column) => {
      const push = (n: number, v: number): void => {
        F.set(n, column, F.get(n, column) + v);
      };
      for (const { e, rows } of this.#sticks)
        onEnds[column]!.get(e.id)!.forEach((v, m) => {
          for (const [n, by] of rows[m]!) push(n, v * by);
        });
      for (const { node, force, moment } of loads.nodes)
        [...force, ...moment].forEach((v, m) => {
          push(6 * this.#node(node) + m, v);
        });
    });
    const all = combinations.map((_, c) => c);
    const Kff = K.subMatrixRow(free).subMatrixColumn(free);
    const factor = new CholeskyDecomposition(Kff);
    if (!factor.isPositiveDefinite()) throw new Error("the outside solver finds a mechanism");
    const Ff = F.subMatrixRow(free);
    const uf = factor.solve(Ff);
    const error = Kff.mmul(uf).sub(Ff);
    const u = Matrix.zeros(this.#size, combinations.length);
    free.forEach((n, row) => {
      for (const c of all) u.set(n, c, uf.get(row, c));
    });
    const R = K.subMatrixRow(held).mmul(u).sub(F.subMatrixRow(held));
    return combinations.map((combination, c) => ({
      reactions: this.#reactions(held, (row) => R.get(row, c)),
      endForces: this.#endForces(combination, onEnds[c]!, (n) => u.get(n, c)),
      displacements: new Map(
        this.model.nodes.map(({ id }, node) => [id, MOTIONS.map((_, m) => u.get(6 * node + m, c))]),
      ),
      residual: Matrix.abs(error).getColumnVector(c).max() / Matrix.abs(F).getColumnVector(c).max(),
    }));
  }

  #reactions(held: readonly number[], of: (row: number) => number): Map<string, number[]> {
    return new Map(
      this.#supports.map(({ node }) => [
        node,
        MOTIONS.map((_, m) => {
          const row = held.indexOf(6 * this.#node(node) + m);
          return row < 0 ? 0 : of(row);
        }),
      ]),
    );
  }

  #endForces(
    { loads }: OutsideCombination,
    onEnds: ReadonlyMap<string, readonly number[]>,
    u: (unknown: number) => number,
  ): Map<string, number[]> {
    return new Map(
      this.#sticks.map(({ e, k, rows, L, axes }) => {
        const v = rows.map((row) => row.reduce((sum, [n, by]) => sum + by * u(n), 0));
        const f = onEnds
          .get(e.id)!
          .map((o, r) => (this.#gone.has(e.id) ? 0 : v.reduce((s, w, c) => s + k[r]![c]! * w, 0)) - o);
        // a load at the very end counts with the end
        for (const load of loads.elements) {
          if (load.element !== e.id || load.kind !== "point") continue;
          const first = load.at < 1e-6 ? 0 : load.at > L - 1e-6 ? 6 : undefined;
          if (first === undefined) continue;
          axes.forEach((axis, m) => {
            f[first + m]! += dot(axis, load.force);
          });
        }
        return [e.id, f];
      }),
    );
  }
}

/**
 * Combinations that share how their rafters sit and which elements have let go, solved without these elements.
 * @throws Error for a mechanism
 */
export function outside(
  model: OutsideModel,
  combinations: readonly [OutsideCombination, ...OutsideCombination[]],
): OutsideAnswer[] {
  const [{ seats, answer }] = combinations;
  return new OutsideFrame(model, seats, answer.dropped).solve(combinations);
}
