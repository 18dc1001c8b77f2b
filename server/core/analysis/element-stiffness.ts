/**
 * Stiffness of one stick in its local axes, and the way its end motions follow from those of its nodes.
 *
 * Straight prismatic beam with shear deformation (Timoshenko): Przemieniecki, Theory of Matrix Structural Analysis,
 * eq. 5.116 (from memory); without shear areas it is the usual Euler–Bernoulli beam.
 */

import { at, bump } from "./numbers.ts";
import type { FrameElement, Vec3 } from "./structure.ts";
import { cross, dot, minus, norm, times } from "./vec3.ts";

export type Rows = readonly [Vec3, Vec3, Vec3];

export interface LocalAxes {
  readonly length: number;
  /** Unit vectors of local x, y, z in global axes. */
  readonly x: Vec3;
  readonly y: Vec3;
  readonly z: Vec3;
}

/** Shorter than this share of the largest coordinate, a stick has no length. */
const LEAST_LENGTH = 1e-9;
/** The part of `ydir` square to the stick must be at least this share of it. */
const LEAST_ACROSS = 1e-6;

/**
 * Axes of a stick between two points.
 * @returns what is wrong instead: `no-length` when the points coincide, `bad-direction` when `ydir` runs along the stick
 */
export function localAxes(from: Vec3, to: Vec3, ydir: Vec3): LocalAxes | "no-length" | "bad-direction" {
  const span = minus(to, from);
  const length = norm(span);
  const size = Math.max(norm(from), norm(to));
  if (!(length > LEAST_LENGTH * size)) return "no-length";
  const x = times(span, 1 / length);
  const given = norm(ydir);
  if (!(given > 0)) return "bad-direction";
  const unit = times(ydir, 1 / given);
  const across = minus(unit, times(x, dot(unit, x)));
  const part = norm(across);
  if (!(part > LEAST_ACROSS)) return "bad-direction";
  const y = times(across, 1 / part);
  return { length, x, y, z: cross(x, y) };
}

/** Twelve end motions: end i then end j, each ux uy uz rx ry rz. */
export const ENDS = 12;

/**
 * Stiffness matrix, 12 × 12 by rows, both ends fast to their nodes. A stick that is `axialOnly` has E A / L alone.
 * @param length between the stick's ends
 */
export function localStiffness(e: FrameElement, length: number): Float64Array {
  const k = new Float64Array(ENDS * ENDS);
  spring(k, 0, 6, (e.E * e.A) / length);
  if (e.axialOnly) return k;
  const G = e.G ?? 0;
  spring(k, 3, 9, (G * (e.J ?? 0)) / length);
  bend(k, length, e.E * (e.Iz ?? 0), G * (e.Asy ?? 0), 1, 5, 1);
  // About y a positive turn lowers z, hence the sign.
  bend(k, length, e.E * (e.Iy ?? 0), G * (e.Asz ?? 0), 2, 4, -1);
  return k;
}

function spring(k: Float64Array, i: number, j: number, stiffness: number): void {
  k[i * ENDS + i] = stiffness;
  k[j * ENDS + j] = stiffness;
  k[i * ENDS + j] = -stiffness;
  k[j * ENDS + i] = -stiffness;
}

/** @param shear G times the shear area; 0 for none given, which means no shear deformation */
function bend(
  k: Float64Array,
  L: number,
  EI: number,
  shear: number,
  move: number,
  turn: number,
  sign: 1 | -1,
): void {
  const phi = shear > 0 ? (12 * EI) / (shear * L * L) : 0;
  const base = EI / (L * (1 + phi));
  const a = (12 * base) / (L * L);
  const b = (sign * 6 * base) / L;
  const near = (4 + phi) * base;
  const far = (2 - phi) * base;
  for (let end = 0; end < 2; end++) {
    const [u, r] = [move + 6 * end, turn + 6 * end];
    const [other, otherTurn] = [move + 6 - 6 * end, turn + 6 - 6 * end];
    const lean = end === 0 ? b : -b;
    k[u * ENDS + u] = a;
    k[u * ENDS + other] = -a;
    k[u * ENDS + r] = lean;
    k[u * ENDS + otherTurn] = lean;
    k[r * ENDS + u] = lean;
    k[r * ENDS + other] = -lean;
    k[r * ENDS + r] = near;
    k[r * ENDS + otherTurn] = far;
  }
}

/**
 * Local motions of a stick's end from the motions of its node, 6 × 6 by rows: turn into local axes, with a rigid arm.
 * @param arm from the node to the end, global axes
 * @param frame rows of the node's own axes (skew support), or nothing for global axes
 * @param t where it is written
 */
export function endFollowsNode(
  axes: Pick<LocalAxes, "x" | "y" | "z">,
  arm: Vec3,
  frame: Rows | undefined,
  t: Float64Array,
): Float64Array {
  turnRow(t, 0, axes.x, arm, frame);
  turnRow(t, 1, axes.y, arm, frame);
  turnRow(t, 2, axes.z, arm, frame);
  return t;
}

function turnRow(t: Float64Array, row: number, unit: Vec3, arm: Vec3, frame: Rows | undefined): void {
  // Motion of the end = u + θ × arm, so along `unit`: unit·u + (arm × unit)·θ.
  const lever = cross(arm, unit);
  const u = frame ? inFrame(frame, unit) : unit;
  const l = frame ? inFrame(frame, lever) : lever;
  for (let m = 0; m < 3; m++) {
    t[row * 6 + m] = u[m] ?? 0;
    t[row * 6 + 3 + m] = l[m] ?? 0;
    t[(row + 3) * 6 + 3 + m] = u[m] ?? 0;
  }
}

const inFrame = (frame: Rows, v: Vec3): Vec3 => [dot(frame[0], v), dot(frame[1], v), dot(frame[2], v)];

/**
 * Tᵀ K T for a stick with end transformations `ti`, `tj`: into the axes of its nodes.
 * @param half room for a matrix, overwritten
 * @param out all nought; where it is written
 */
export function toNodes(
  k: Float64Array,
  ti: Float64Array,
  tj: Float64Array,
  half: Float64Array,
  out: Float64Array,
): Float64Array {
  half.fill(0);
  // half = K T, columns by end
  for (let r = 0; r < ENDS; r++)
    for (let end = 0; end < 2; end++) {
      const t = end === 0 ? ti : tj;
      for (let m = 0; m < 6; m++) {
        const v = at(k, r * ENDS + end * 6 + m);
        if (v === 0) continue;
        for (let c = 0; c < 6; c++) bump(half, r * ENDS + end * 6 + c, v * at(t, m * 6 + c));
      }
    }
  for (let end = 0; end < 2; end++) {
    const t = end === 0 ? ti : tj;
    for (let m = 0; m < 6; m++)
      for (let r = 0; r < 6; r++) {
        const v = at(t, m * 6 + r);
        if (v === 0) continue;
        for (let c = 0; c < ENDS; c++)
          bump(out, (end * 6 + r) * ENDS + c, v * at(half, (end * 6 + m) * ENDS + c));
      }
  }
  return out;
}
