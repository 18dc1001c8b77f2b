/** Supports: which motions of which nodes are held, by how much moved, and by which springs. */
import type { Rows } from "./element-stiffness.ts";
import { type FrameSupport, MOTIONS, type Structure, type Vec3, type Vec6 } from "./structure.ts";

/** All numbers run over 6 motions of each node in turn, in the node's own axes: global, or those of its skew support. */
export interface Ground {
  /** Axes of nodes on a skew support; nothing means global axes. */
  readonly frames: readonly (Rows | undefined)[];
  readonly held: Uint8Array;
  /** Motion at which a held one is held in every case. */
  readonly values: Float64Array;
  readonly springs: Float64Array;
  /** Nodes with a support, in the order given. */
  readonly nodes: readonly number[];
}

export function readSupports(structure: Structure): Ground {
  const size = 6 * structure.nodes.length;
  const frames: (Rows | undefined)[] = structure.nodes.map(() => undefined);
  const held = new Uint8Array(size);
  const values = new Float64Array(size);
  const springs = new Float64Array(size);
  for (const s of structure.supports) {
    frames[s.node] = s.axes;
    MOTIONS.forEach((motion, m) => {
      const k = 6 * s.node + m;
      const fixed = s.fixed?.[motion];
      if (fixed !== undefined) {
        held[k] = 1;
        values[k] = fixed;
      } else springs[k] = s.springs?.[motion] ?? 0;
    });
  }
  return { frames, held, values, springs, nodes: structure.supports.map((s) => s.node) };
}

/** Largest deviation of support axes from orthogonal unit vectors that is still taken for rounding. */
const ROUNDED = 1e-6;

export function axesAreSound(axes: NonNullable<FrameSupport["axes"]>): boolean {
  const product = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  return axes.every((a, r) => axes.every((b, c) => Math.abs(product(a, b) - (r === c ? 1 : 0)) <= ROUNDED));
}

/**
 * A node's 6 numbers, turned from its own axes into global ones.
 * @param place which six of `all` they are
 */
export function toGlobal(ground: Ground, all: Float64Array, node: number, place = node): Vec6 {
  const v = [0, 1, 2, 3, 4, 5].map((m) => all[6 * place + m] ?? 0);
  const rows = ground.frames[node];
  if (!rows) return v as unknown as Vec6;
  const turned = [0, 1, 2, 3, 4, 5].map((m) => {
    const [shift, c] = [m < 3 ? 0 : 3, m % 3];
    return [0, 1, 2].reduce((sum, r) => sum + (rows[r]?.[c] ?? 0) * (v[shift + r] ?? 0), 0);
  });
  return turned as unknown as Vec6;
}

/** The reverse: a force or moment in global axes, as three numbers in the node's own. */
export function toNode(ground: Ground, node: number, v: Vec3): Vec3 {
  const rows = ground.frames[node];
  if (!rows) return v;
  return [0, 1, 2].map((r) => {
    const row = rows[r] ?? [0, 0, 0];
    return row[0] * v[0] + row[1] * v[1] + row[2] * v[2];
  }) as unknown as Vec3;
}
