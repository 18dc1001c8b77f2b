/**
 * A second solver, made another way, to hold the first up against. Sticks by the flexibility of a cantilever, integrated
 * numerically and inverted; joints as unknowns of their own, not condensed; supports as constraints with multipliers; one
 * full matrix and Gaussian elimination with pivoting. One-way members: those named are left out.
 */
import type {
  FrameElement,
  LoadCase,
  Motion,
  PointLoad,
  SpreadLoad,
  Structure,
  Vec3,
} from "../../../server/core/analysis/structure.ts";

const MOTIONS: Motion[] = ["ux", "uy", "uz", "rx", "ry", "rz"];

export interface OracleResult {
  /** Six a node. */
  readonly motions: number[];
  /** Local end forces on each stick, 12 each (noughts for those left out). */
  readonly ends: number[][];
  /** Six for each support, global: the support's own multipliers, springs included. */
  readonly reactions: number[][];
}

export function oracle(
  structure: Structure,
  load: LoadCase,
  leftOut: ReadonlySet<string> = new Set(),
): OracleResult {
  const count = structure.nodes.length;
  let unknowns = 6 * count;
  const rows: {
    from: Map<number, number>[];
    k: number[][];
    f0: number[];
    soft: [number, number, number][];
  }[] = [];

  for (const [n, e] of structure.elements.entries()) {
    if (leftOut.has(e.id)) {
      rows.push({ from: [], k: [], f0: [], soft: [] });
      continue;
    }
    const s = stick(structure, e);
    // Which unknowns, and how much of each, make up each of the twelve end motions.
    const nodeSide = [0, 1].flatMap((end) =>
      endMotions(s, end, end === 0 ? e.i : e.j, end === 0 ? e.offsetI : e.offsetJ),
    );
    const from = nodeSide.map((m) => new Map(m));
    const soft: [number, number, number][] = [];
    const free = (end: number, motion: Motion) => (end === 0 ? e.releaseI : e.releaseJ)?.includes(motion);
    const spring = (end: number, motion: Motion) => (end === 0 ? e.endSpringI : e.endSpringJ)?.[motion];
    for (let r = 0; r < 12; r++) {
      const [end, motion] = [r < 6 ? 0 : 1, MOTIONS[r % 6]!];
      const stiffness = free(end, motion) ? 0 : spring(end, motion);
      if (stiffness === undefined || e.axialOnly) continue;
      soft.push([unknowns, r, stiffness]);
      from[r] = new Map([[unknowns++, 1]]);
    }
    const elongation =
      (e.freeElongation ?? 0) +
      (load.elongations ?? []).reduce((sum, l) => sum + (l.element === n ? l.value : 0), 0);
    const { k, f0 } = stiffness(
      s,
      e,
      (load.elementLoads ?? []).filter((l) => l.element === n),
      elongation,
    );
    rows.push({ from, k, f0, soft });
  }

  const held = structure.supports.flatMap((s) =>
    MOTIONS.flatMap((motion, m) => {
      const value = s.fixed?.[motion];
      if (value === undefined) return [];
      const more = (load.settlements ?? []).reduce(
        (sum, l) => sum + (l.node === s.node && l.motion === motion ? l.value : 0),
        0,
      );
      return [{ node: s.node, row: axisRow(s.axes, m), shift: m < 3 ? 0 : 3, value: value + more }];
    }),
  );
  const size = unknowns + held.length;
  const a = Array.from({ length: size }, () => new Float64Array(size));
  const b = new Float64Array(size);
  const pair = (x: Map<number, number>, y: Map<number, number>, by: number) => {
    for (const [p, u] of x) for (const [q, v] of y) a[p]![q]! += by * u * v;
  };

  structure.elements.forEach((e, n) => {
    const { from, k, f0, soft } = rows[n]!;
    from.forEach((x, r) => {
      from.forEach((y, c) => {
        pair(x, y, k[r]![c]!);
      });
      for (const [p, u] of x) b[p]! -= u * f0[r]!;
    });
    if (soft.length === 0) return;
    const s = stick(structure, e);
    const nodeSide = [0, 1].flatMap((end) =>
      endMotions(s, end, end === 0 ? e.i : e.j, end === 0 ? e.offsetI : e.offsetJ),
    );
    for (const [own, r, spring] of soft) {
      const gap = new Map([...nodeSide[r]!].map(([p, v]) => [p, -v] as const));
      gap.set(own, 1);
      pair(gap, gap, spring);
    }
  });
  for (const l of structure.links ?? []) {
    if (leftOut.has(l.id)) continue;
    const x = unit(l.direction);
    const stretch = new Map<number, number>();
    for (const [node, arm, sign] of [
      [l.i, l.offsetI, -1],
      [l.j, l.offsetJ, 1],
    ] as const)
      for (const [p, v] of pointMotion(node, x, arm ?? [0, 0, 0]))
        stretch.set(p, (stretch.get(p) ?? 0) + sign * v);
    pair(stretch, stretch, l.stiffness);
  }
  for (const s of structure.supports)
    MOTIONS.forEach((motion, m) => {
      const spring = s.fixed?.[motion] === undefined ? (s.springs?.[motion] ?? 0) : 0;
      const x = new Map(axisRow(s.axes, m).map((v, c) => [6 * s.node + (m < 3 ? 0 : 3) + c, v]));
      pair(x, x, spring);
    });
  for (const l of load.nodeLoads ?? [])
    [...(l.force ?? [0, 0, 0]), ...(l.moment ?? [0, 0, 0])].forEach((v, m) => {
      b[6 * l.node + m]! += v;
    });
  held.forEach((h, n) => {
    h.row.forEach((v, c) => {
      a[unknowns + n]![6 * h.node + h.shift + c]! += v;
      a[6 * h.node + h.shift + c]![unknowns + n]! += v;
    });
    b[unknowns + n] = h.value;
  });

  const x = eliminate(a, b);
  const ends = rows.map(({ from, k, f0 }) => {
    const v = from.map((map) => [...map].reduce((sum, [p, u]) => sum + u * x[p]!, 0));
    return f0.length === 0
      ? new Array<number>(12).fill(0)
      : f0.map((f, r) => f + k[r]!.reduce((sum, q, c) => sum + q * v[c]!, 0));
  });
  const reactions = structure.supports.map((s) => {
    const out = [0, 0, 0, 0, 0, 0];
    held.forEach((h, n) => {
      if (h.node === s.node)
        h.row.forEach((v, c) => {
          out[h.shift + c]! -= x[unknowns + n]! * v;
        });
    });
    MOTIONS.forEach((motion, m) => {
      const spring = s.fixed?.[motion] === undefined ? (s.springs?.[motion] ?? 0) : 0;
      const [row, shift] = [axisRow(s.axes, m), m < 3 ? 0 : 3];
      const moved = row.reduce((sum, v, c) => sum + v * x[6 * s.node + shift + c]!, 0);
      row.forEach((v, c) => {
        out[shift + c]! -= spring * moved * v;
      });
    });
    return out;
  });
  return { motions: Array.from(x.slice(0, 6 * count)), ends, reactions };
}

const axisRow = (axes: readonly Vec3[] | undefined, m: number): number[] =>
  axes ? [...axes[m % 3]!] : [0, 1, 2].map((c) => (c === m % 3 ? 1 : 0));

const unit = (v: Vec3): Vec3 => {
  const size = Math.sqrt(v[0] ** 2 + v[1] ** 2 + v[2] ** 2);
  return [v[0] / size, v[1] / size, v[2] / size];
};
const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

interface Placed {
  length: number;
  axes: [Vec3, Vec3, Vec3];
}

function stick(structure: Structure, e: FrameElement): Placed {
  const point = (node: number, arm: Vec3 | undefined) =>
    structure.nodes[node]!.at.map((v, c) => v + (arm?.[c] ?? 0)) as unknown as Vec3;
  const [p, q] = [point(e.i, e.offsetI), point(e.j, e.offsetJ)];
  const span: Vec3 = [q[0] - p[0], q[1] - p[1], q[2] - p[2]];
  const x = unit(span);
  const z = unit(cross(x, e.ydir));
  return { length: Math.hypot(...span), axes: [x, cross(z, x), z] };
}

/** Motion along `x` of the end of an arm, as shares of the node's six motions: u·x + (θ × arm)·x. */
function pointMotion(node: number, x: Vec3, arm: Vec3): Map<number, number> {
  const turn = cross(arm, x);
  return new Map([
    ...x.map((v, c) => [6 * node + c, v] as const),
    ...turn.map((v, c) => [6 * node + 3 + c, v] as const),
  ]);
}

function endMotions(s: Placed, _end: number, node: number, arm: Vec3 = [0, 0, 0]): Map<number, number>[] {
  return [
    ...s.axes.map((x) => pointMotion(node, x, arm)),
    ...s.axes.map((x) => new Map(x.map((v, c) => [6 * node + 3 + c, v] as const))),
  ];
}

/** Four-point Gauss rule on 0 … 1. */
const GAUSS = [
  [0.0694318442, 0.1739274226],
  [0.3300094782, 0.3260725774],
  [0.6699905218, 0.3260725774],
  [0.9305681558, 0.1739274226],
] as const;

/** Section forces N Vy Vz T My Mz at x from the six forces of end j, by statics of the part beyond x. */
function fromEnd(q: readonly number[], arm: number): number[] {
  return [q[0]!, q[1]!, q[2]!, q[3]!, q[4]! - arm * q[2]!, q[5]! + arm * q[1]!];
}

function stiffness(
  s: Placed,
  e: FrameElement,
  loads: readonly (PointLoad | SpreadLoad)[],
  elongation: number,
): { k: number[][]; f0: number[] } {
  const L = s.length;
  const G = e.G ?? 1;
  const soft = (v: number | undefined, by: number) => (v ? 1 / (by * v) : 0);
  const bar = e.axialOnly === true;
  const flex = [
    1 / (e.E * e.A),
    soft(e.Asy, G),
    soft(e.Asz, G),
    soft(e.J, G),
    soft(e.Iy, e.E),
    soft(e.Iz, e.E),
  ];
  const local = (v: Vec3, axes: string | undefined): Vec3 =>
    axes === "local" ? v : (s.axes.map((a) => a[0] * v[0] + a[1] * v[1] + a[2] * v[2]) as unknown as Vec3);
  /** Section forces at x of the loads beyond it, end j free. */
  const free = (x: number): number[] => {
    const sum = [0, 0, 0, 0, 0, 0];
    const add = (f: Vec3, m: Vec3, at: number, by: number) =>
      fromEnd([...f, ...m], at - x).forEach((v, c) => {
        sum[c]! += by * v;
      });
    for (const l of loads) {
      if (l.kind === "point") {
        if (l.at > x) add(local(l.force ?? [0, 0, 0], l.axes), local(l.moment ?? [0, 0, 0], l.axes), l.at, 1);
        continue;
      }
      const [a, b] = [l.from ?? 0, l.to ?? L];
      const [from, to] = [Math.max(a, x), b];
      if (to <= from) continue;
      for (const [t, w] of GAUSS) {
        const at = from + t * (to - from);
        const share = (at - a) / (b - a);
        const slant = (v: Vec3): Vec3 => {
          const size = Math.hypot(...v);
          if (l.per !== "projection" || size === 0) return v;
          const along =
            l.axes === "local"
              ? v[0] / size
              : (v[0] * s.axes[0][0] + v[1] * s.axes[0][1] + v[2] * s.axes[0][2]) / size;
          const seen = Math.sqrt(Math.max(0, 1 - along * along));
          return [v[0] * seen, v[1] * seen, v[2] * seen];
        };
        const [p, q] = [slant(l.start), slant(l.end ?? l.start)];
        const here = p.map((v, c) => v + share * (q[c]! - v)) as unknown as Vec3;
        add(local(here, l.axes), [0, 0, 0], at, w * (to - from));
      }
    }
    return sum;
  };
  const knots = new Set([0, L]);
  for (const l of loads)
    for (const x of l.kind === "point" ? [l.at] : [l.from ?? 0, l.to ?? L]) knots.add(Math.min(x, L));
  const places = [...knots].sort((x, y) => x - y);
  const f = Array.from({ length: 6 }, () => new Float64Array(6));
  const d = new Float64Array(6);
  const bases = [0, 1, 2, 3, 4, 5].map((m) => [0, 1, 2, 3, 4, 5].map((c) => (c === m ? 1 : 0)));
  for (let n = 1; n < places.length; n++)
    for (const [t, w] of GAUSS) {
      const [from, to] = [places[n - 1]!, places[n]!];
      const x = from + t * (to - from);
      const weight = w * (to - from);
      const own = free(x);
      const unitForces = bases.map((q) => fromEnd(q, L - x));
      unitForces.forEach((p, r) => {
        unitForces.forEach((q, c) => {
          p.forEach((v, m) => {
            f[r]![c]! += weight * v * q[m]! * flex[m]!;
          });
        });
        p.forEach((v, m) => {
          d[r]! += weight * v * own[m]! * flex[m]!;
        });
      });
    }
  d[0]! += elongation;
  const used = bar ? [0] : [0, 1, 2, 3, 4, 5];
  const inverse = invert(used.map((r) => used.map((c) => f[r]![c]!)));
  // Forces of end i balance those of end j and the loads.
  const toI = (q: readonly number[]) => fromEnd(q, L).map((v) => -v);
  const k = Array.from({ length: 12 }, () => new Array<number>(12).fill(0));
  const h = used.map((m) => [...toI(bases[m]!), ...bases[m]!]);
  for (let r = 0; r < 12; r++)
    for (let c = 0; c < 12; c++)
      for (let m = 0; m < used.length; m++)
        for (let n = 0; n < used.length; n++) k[r]![c]! += h[m]![r]! * inverse[m]![n]! * h[n]![c]!;
  const q = new Array<number>(6).fill(0);
  used.forEach((m, r) => {
    q[m] = -used.reduce((sum, n, c) => sum + inverse[r]![c]! * d[n]!, 0);
  });
  const loaded = free(0);
  if (bar) {
    // No moments at either end: end j carries what balances the moment of the loads about end i.
    q[1] = -loaded[5]! / L;
    q[2] = loaded[4]! / L;
  }
  const atI = toI(q).map((v, c) => v - loaded[c]!);
  return { k, f0: [...atI, ...q] };
}

function invert(m: number[][]): number[][] {
  const n = m.length;
  return m
    .map((_, c) =>
      eliminate(
        m.map((row) => Float64Array.from(row)),
        Float64Array.from({ length: n }, (__, r) => (r === c ? 1 : 0)),
      ),
    )
    .map((_, r, columns) => Array.from(columns, (column) => column[r]!));
}

/** Gaussian elimination with row pivoting; an unknown that nothing holds is set to nought. */
function eliminate(a: Float64Array[], b: Float64Array): Float64Array {
  const n = b.length;
  const size = a.map((row) => row.reduce((m, v) => Math.max(m, Math.abs(v)), 0));
  const idle = new Set<number>();
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let r = k + 1; r < n; r++) if (Math.abs(a[r]![k]!) > Math.abs(a[best]![k]!)) best = r;
    [a[k], a[best]] = [a[best]!, a[k]!];
    [b[k], b[best]] = [b[best]!, b[k]!];
    const pivot = a[k]![k]!;
    if (Math.abs(pivot) <= 1e-12 * (size[k] ?? 1)) {
      idle.add(k);
      continue;
    }
    for (let r = k + 1; r < n; r++) {
      const by = a[r]![k]! / pivot;
      if (by === 0) continue;
      for (let c = k; c < n; c++) a[r]![c]! -= by * a[k]![c]!;
      b[r]! -= by * b[k]!;
    }
  }
  const x = new Float64Array(n);
  for (let k = n - 1; k >= 0; k--) {
    if (idle.has(k)) continue;
    let sum = b[k]!;
    for (let c = k + 1; c < n; c++) sum -= a[k]![c]! * x[c]!;
    x[k] = sum / a[k]![k]!;
  }
  return x;
}
