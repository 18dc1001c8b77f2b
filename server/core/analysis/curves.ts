/**
 * Forces and motions along a stick as exact piecewise polynomials, by integrating its loads from end i.
 *
 * Sign convention: the force at x is what the part beyond x puts on the part before it, local axes. So it equals the
 * force of end j at x = L and the opposite of that of end i at x = 0; N is positive in tension. Then
 *   N' = −p_x,  Vy' = −p_y,  Vz' = −p_z,  Mz' = −Vy,  My' = Vz,
 *   u' = N/EA + ε,  φ' = T/GJ,  θz' = Mz/EIz,  v' = θz + Vy/GAy,  θy' = My/EIy,  w' = −θy + Vz/GAz
 * (equilibrium of a slice; plane sections, constant shear strain over the shear area).
 */
import type { StickLoads } from "./element-loads.ts";
import { combine, derivative, evaluate, integral, type Polynomial, rootsWithin } from "./polynomial.ts";
import type { FrameElement } from "./structure.ts";

/** Inverse stiffnesses of a section; nought where the stick is not given any, which means it does not deform so. */
export interface Flexibility {
  readonly axial: number;
  readonly twist: number;
  readonly bendY: number;
  readonly bendZ: number;
  readonly shearY: number;
  readonly shearZ: number;
}

export function flexibilityOf(e: FrameElement): Flexibility {
  const inverse = (stiffness: number) => (stiffness > 0 ? 1 / stiffness : 0);
  const G = e.G ?? 0;
  return {
    axial: inverse(e.E * e.A),
    twist: inverse(G * (e.J ?? 0)),
    bendY: inverse(e.E * (e.Iy ?? 0)),
    bendZ: inverse(e.E * (e.Iz ?? 0)),
    shearY: inverse(G * (e.Asy ?? 0)),
    shearZ: inverse(G * (e.Asz ?? 0)),
  };
}

/** Forces N Vy Vz T My Mz; shifts dx dy dz and turns rx ry rz of the axis, local axes. */
export type Quantity = (typeof FORCES)[number] | (typeof TURNED)[number];
const FORCES = ["N", "Vy", "Vz", "T", "My", "Mz"] as const;
const TURNED = ["dx", "dy", "dz", "rx", "ry", "rz"] as const;

export interface Extreme {
  readonly x: number;
  readonly value: number;
}

type Piece = { readonly from: number; readonly to: number } & Readonly<Record<Quantity, Polynomial>>;

export class Curves {
  readonly length: number;
  readonly #pieces: Piece[];

  /**
   * @param force of end i on the stick, local (6)
   * @param motion of end i, local (6)
   */
  constructor(
    length: number,
    flexibility: Flexibility,
    loads: StickLoads | undefined,
    force: Float64Array,
    motion: Float64Array,
  ) {
    this.length = length;
    this.#pieces = integrate(length, flexibility, loads, force, motion);
  }

  /** Where a load starts, ends or acts, and both ends. */
  get knots(): number[] {
    return [0, ...this.#pieces.filter((p) => p.to > p.from).map((p) => p.to)];
  }

  /** Value at x, which is brought into 0 … L. Where a point load makes it jump: just before x, or just after. */
  valueAt(quantity: Quantity, x: number, side: "before" | "after" = "after"): number {
    const place = Number.isFinite(x) ? Math.min(Math.max(x, 0), this.length) : 0;
    const holds = (p: Piece) => place >= p.from && place <= p.to;
    const piece =
      side === "before"
        ? this.#pieces.find((p) => holds(p) && (place > p.from || place === 0))
        : this.#pieces.findLast(holds);
    return piece ? evaluate(piece[quantity], place - piece.from) : 0;
  }

  /** N Vy Vz T My Mz at x (after a jump there). */
  forcesAt(x: number): number[] {
    return FORCES.map((q) => this.valueAt(q, x));
  }

  /** dx dy dz rx ry rz at x. */
  motionsAt(x: number): number[] {
    return TURNED.map((q) => this.valueAt(q, x));
  }

  /** Least and greatest value along the stick and where, exactly: at a knot or where the slope is nought. */
  extremes(quantity: Quantity): { readonly least: Extreme; readonly greatest: Extreme } {
    return this.#extremes((piece) => piece[quantity]);
  }

  /** The same for the distance of the bent axis from the straight line between the ends. */
  sag(direction: "dy" | "dz"): { readonly least: Extreme; readonly greatest: Extreme } {
    const start = this.valueAt(direction, 0, "before");
    const slope = (this.valueAt(direction, this.length) - start) / this.length;
    return this.#extremes((piece) =>
      combine([1, piece[direction]], [-1, [start + slope * piece.from, slope]]),
    );
  }

  /** The polynomial pieces of one quantity, each in the distance from its own start. */
  piecesOf(
    quantity: Quantity,
  ): { readonly from: number; readonly to: number; readonly coefficients: Polynomial }[] {
    return this.#pieces.map((p) => ({ from: p.from, to: p.to, coefficients: p[quantity] }));
  }

  #extremes(pick: (piece: Piece) => Polynomial): { least: Extreme; greatest: Extreme } {
    let least: Extreme = { x: 0, value: Number.POSITIVE_INFINITY };
    let greatest: Extreme = { x: 0, value: Number.NEGATIVE_INFINITY };
    for (const piece of this.#pieces) {
      const p = pick(piece);
      const h = piece.to - piece.from;
      for (const t of [0, ...rootsWithin(derivative(p), h), h]) {
        const found = { x: piece.from + t, value: evaluate(p, t) };
        if (found.value < least.value) least = found;
        if (found.value > greatest.value) greatest = found;
      }
    }
    return { least, greatest };
  }
}

function integrate(
  length: number,
  flex: Flexibility,
  loads: StickLoads | undefined,
  force: Float64Array,
  motion: Float64Array,
): Piece[] {
  const knots = knotsOf(length, loads);
  const strain = (loads?.elongation ?? 0) / length;
  // Running values at the start of the piece: forces as cut from the part before, then shifts and turns.
  const f = Array.from(force, (v) => -v);
  let d = Array.from(motion);
  const pieces: Piece[] = [];
  for (let k = 0; k < knots.length; k++) {
    const from = knots[k] ?? 0;
    const to = knots[k + 1] ?? length;
    for (const p of loads?.points ?? [])
      if (p.at === from)
        [...p.force, ...p.moment].forEach((v, m) => {
          f[m] = (f[m] ?? 0) - v;
        });
    const q = spreadOn(from, to, loads);
    const [N, Vy, Vz] = [0, 1, 2].map((c) => integral(combine([-1, q[c] ?? []]), f[c] ?? 0)) as [
      Polynomial,
      Polynomial,
      Polynomial,
    ];
    const T: Polynomial = [f[3] ?? 0];
    const My = integral(Vz, f[4] ?? 0);
    const Mz = integral(combine([-1, Vy]), f[5] ?? 0);
    const dx = integral(combine([flex.axial, N], [1, [strain]]), d[0] ?? 0);
    const rx = integral(combine([flex.twist, T]), d[3] ?? 0);
    const ry = integral(combine([flex.bendY, My]), d[4] ?? 0);
    const rz = integral(combine([flex.bendZ, Mz]), d[5] ?? 0);
    const dy = integral(combine([1, rz], [flex.shearY, Vy]), d[1] ?? 0);
    const dz = integral(combine([-1, ry], [flex.shearZ, Vz]), d[2] ?? 0);
    pieces.push({ from, to, N, Vy, Vz, T, My, Mz, dx, dy, dz, rx, ry, rz });
    const h = to - from;
    [N, Vy, Vz, T, My, Mz].forEach((p, m) => {
      f[m] = evaluate(p, h);
    });
    d = [dx, dy, dz, rx, ry, rz].map((p) => evaluate(p, h));
  }
  return pieces;
}

/** Every place where a load starts, ends or acts, from 0 on; L itself only when a point load acts there. */
function knotsOf(length: number, loads: StickLoads | undefined): number[] {
  const places = new Set([0]);
  for (const s of loads?.spreads ?? []) for (const x of [s.from, s.to]) if (x < length) places.add(x);
  for (const p of loads?.points ?? []) places.add(p.at);
  return [...places].sort((a, b) => a - b);
}

/** Sum of the spread loads over one piece, as straight lines in the distance from its start: one for each axis. */
function spreadOn(from: number, to: number, loads: StickLoads | undefined): Polynomial[] {
  const sum = [
    [0, 0],
    [0, 0],
    [0, 0],
  ];
  for (const s of loads?.spreads ?? []) {
    if (s.from > from || s.to < to || to <= from) continue;
    for (let c = 0; c < 3; c++) {
      const slope = ((s.end[c] ?? 0) - (s.start[c] ?? 0)) / (s.to - s.from);
      const line = sum[c];
      if (!line) continue;
      line[0] = (line[0] ?? 0) + (s.start[c] ?? 0) + slope * (from - s.from);
      line[1] = (line[1] ?? 0) + slope;
    }
  }
  return sum;
}
