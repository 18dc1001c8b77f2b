/**
 * A frame solver of its own kind that knows nothing but the JSON of `bentwright model`. Direct stiffness with a full
 * matrix; ends set free or on springs are unknowns of their own (the program condenses them), loads on elements come in
 * by integrating the shape functions (the program goes by way of a cantilever).
 */
import { choleskyInPlace, choleskySolve } from "../core/analysis/dense.ts";

type V3 = readonly [number, number, number];
const MOTIONS = ["ux", "uy", "uz", "rx", "ry", "rz"];

interface OutsideElement {
  readonly id: string;
  readonly i: string;
  readonly j: string;
  readonly offsetI?: V3;
  readonly offsetJ?: V3;
  readonly A: number;
  readonly Iy: number;
  readonly Iz: number;
  readonly J: number;
  readonly E: number;
  readonly G: number;
  readonly ydir: V3;
  readonly releaseI?: readonly string[];
  readonly releaseJ?: readonly string[];
  readonly endSpringI?: Readonly<Record<string, number>>;
  readonly endSpringJ?: Readonly<Record<string, number>>;
  readonly axialOnly?: true;
}

interface OutsideLoad {
  readonly element: string;
  readonly kind: "point" | "spread";
  readonly at: number;
  readonly force: V3;
  readonly from: number;
  readonly to: number;
  readonly start: V3;
  readonly end: V3;
}

export interface OutsideCombination {
  readonly id: string;
  readonly seats: "hold" | "slide";
  readonly bracesBothWays: boolean;
  readonly loads: {
    readonly elements: readonly OutsideLoad[];
    readonly nodes: readonly { readonly node: string; readonly force: V3; readonly moment: V3 }[];
  };
  readonly answer: {
    readonly status: string;
    readonly dropped: readonly string[];
    readonly reactions: readonly { readonly node: string; readonly force: readonly number[] }[];
    readonly endForces: readonly {
      readonly element: string;
      readonly i: readonly number[];
      readonly j: readonly number[];
    }[];
  };
}

export interface OutsideModel {
  readonly nodes: readonly { readonly id: string; readonly at: V3 }[];
  readonly elements: readonly OutsideElement[];
  readonly seats: readonly {
    readonly seats: "hold" | "slide";
    readonly links: readonly {
      readonly i: string;
      readonly j: string;
      readonly offsetI?: V3;
      readonly offsetJ?: V3;
      readonly direction: V3;
      readonly stiffness: number;
    }[];
    readonly supports: readonly { readonly node: string; readonly fixed: readonly string[] }[];
  }[];
  readonly combinations: readonly OutsideCombination[];
}

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

/** Stiffness of a straight prismatic beam without shear deformation, 12 × 12 (any textbook of matrix analysis). */
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
}

/** A frame without the elements named; solves any combination on it. */
export function outside(
  model: OutsideModel,
  seatsName: "hold" | "slide",
  dropped: readonly string[],
): (combination: OutsideCombination) => OutsideAnswer {
  const seats = model.seats.find((s) => s.seats === seatsName)!;
  const nodeOf = new Map(model.nodes.map(({ id }, n) => [id, n]));
  const at = (id: string): V3 => model.nodes[nodeOf.get(id)!]!.at;
  const gone = new Set(dropped);
  let size = 6 * model.nodes.length;
  const springs: { row: Row; stiffness: number }[] = [];

  const sticks = model.elements.map((e): Stick => {
    const [armI, armJ] = [e.offsetI ?? O, e.offsetJ ?? O];
    const span = minus(plus(at(e.j), armJ), plus(at(e.i), armI));
    const L = Math.sqrt(dot(span, span));
    const x = times(span, 1 / L);
    const y = unit(minus(e.ydir, times(x, dot(e.ydir, x))));
    const axes = [x, y, cross(x, y)] as const;
    const rows = [0, 1].flatMap((end) => {
      const node = nodeOf.get(end === 0 ? e.i : e.j)!;
      const arm = end === 0 ? armI : armJ;
      const free = (end === 0 ? e.releaseI : e.releaseJ) ?? [];
      const soft = (end === 0 ? e.endSpringI : e.endSpringJ) ?? {};
      return MOTIONS.map((motion, m): Row => {
        const rigid = m < 3 ? shiftRow(node, arm, axes[m]!) : turnRow(node, axes[m - 3]!);
        const spring = soft[motion];
        if (gone.has(e.id) || (!free.includes(motion) && spring === undefined)) return rigid;
        const own = size++;
        if (!free.includes(motion))
          springs.push({ row: [...rigid.map(([n, by]) => [n, -by] as const), [own, 1]], stiffness: spring! });
        return [[own, 1]];
      });
    });
    return { e, L, axes, k: beam(e, L), rows };
  });
  for (const l of seats.links) {
    const d = unit(l.direction);
    const from = shiftRow(nodeOf.get(l.i)!, l.offsetI ?? O, d).map(([n, by]) => [n, -by] as const);
    springs.push({
      row: [...from, ...shiftRow(nodeOf.get(l.j)!, l.offsetJ ?? O, d)],
      stiffness: l.stiffness,
    });
  }

  const K = new Float64Array(size * size);
  const spread = (a: Row, b: Row, by: number): void => {
    for (const [r, p] of a) for (const [c, q] of b) K[r * size + c]! += p * q * by;
  };
  for (const { e, k, rows } of sticks) {
    if (gone.has(e.id)) continue;
    for (let r = 0; r < 12; r++)
      for (let c = 0; c < 12; c++) if (k[r]![c] !== 0) spread(rows[r]!, rows[c]!, k[r]![c]!);
  }
  for (const { row, stiffness } of springs) spread(row, row, stiffness);
  // idle turns hang on a spring far too soft to carry anything
  for (let n = 0; n < size; n++) K[n * size + n]! += n < 6 * model.nodes.length && n % 6 < 3 ? 0 : 1e-4;
  const full = K.slice();
  const held = seats.supports.flatMap(({ node, fixed }) =>
    fixed.map((motion) => 6 * nodeOf.get(node)! + MOTIONS.indexOf(motion)),
  );
  for (const h of held) {
    for (let n = 0; n < size; n++) {
      K[h * size + n] = 0;
      K[n * size + h] = 0;
    }
    K[h * size + h] = 1;
  }
  if (!choleskyInPlace(K, size)) throw new Error("the outside solver finds a mechanism");

  return ({ loads }) => {
    const force = new Array<number>(size).fill(0);
    const onEnds = new Map(sticks.map(({ e }) => [e.id, new Array<number>(12).fill(0)]));
    const byId = new Map(sticks.map((s) => [s.e.id, s]));
    for (const load of loads.elements) {
      const { e, L, axes } = byId.get(load.element)!;
      const lever = gone.has(e.id) || e.axialOnly === true;
      const local = (p: V3): V3 => [dot(axes[0], p), dot(axes[1], p), dot(axes[2], p)];
      const own = onEnds.get(e.id)!;
      const give = (p: V3, x: number): void => {
        endShares(local(p), x, L, lever, gone.has(e.id)).forEach((v, n) => {
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
    for (const { e, rows } of sticks)
      onEnds.get(e.id)!.forEach((v, m) => {
        for (const [n, by] of rows[m]!) force[n]! += v * by;
      });
    for (const { node, force: f, moment } of loads.nodes)
      [...f, ...moment].forEach((v, m) => {
        force[6 * nodeOf.get(node)! + m]! += v;
      });
    const pushed = force.map((v, n) => (held.includes(n) ? 0 : v));
    const u = choleskySolve(K, size, pushed);
    const reactions = new Map(
      seats.supports.map(({ node }) => {
        const first = 6 * nodeOf.get(node)!;
        const sums = MOTIONS.map((_, m) => {
          if (!held.includes(first + m)) return 0;
          let sum = -force[first + m]!;
          for (let n = 0; n < size; n++) sum += full[(first + m) * size + n]! * u[n]!;
          return sum;
        });
        return [node, sums] as const;
      }),
    );
    const endForces = new Map(
      sticks.map(({ e, k, rows, L, axes }) => {
        const v = rows.map((row) => row.reduce((sum, [n, by]) => sum + by * u[n]!, 0));
        const own = onEnds.get(e.id)!;
        const f = own.map((o, r) => (gone.has(e.id) ? 0 : v.reduce((s, w, c) => s + k[r]![c]! * w, 0)) - o);
        // a load at the very end counts with the end
        for (const load of loads.elements) {
          if (load.element !== e.id || load.kind !== "point") continue;
          const first = load.at < 1e-6 ? 0 : load.at > L - 1e-6 ? 6 : undefined;
          if (first === undefined) continue;
          axes.forEach((axis, m) => {
            f[first + m]! += dot(axis, load.force);
          });
        }
        return [e.id, f] as const;
      }),
    );
    return { reactions, endForces };
  };
}
