/** Makes timber halls of any size for tests and measurements: posts, ties, plates, rafters and knees that only push. */
import type {
  FrameElement,
  FrameNode,
  FrameSupport,
  LoadCase,
  PointLoad,
  SpreadLoad,
  Structure,
  Vec3,
} from "../../../server/core/analysis/structure.ts";

/** Numbers in 0 … 1 that repeat for a seed (mulberry32). */
export function random(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** Solid rectangle: local y is the depth's direction. Torsion constant as in Roark, table 10.1 (from memory). */
export function section(width: number, depth: number) {
  const [a, b] = [Math.max(width, depth) / 2, Math.min(width, depth) / 2];
  return {
    A: width * depth,
    Iz: (width * depth ** 3) / 12,
    Iy: (depth * width ** 3) / 12,
    J: a * b ** 3 * (16 / 3 - 3.36 * (b / a) * (1 - b ** 4 / (12 * a ** 4))),
  };
}

const WOOD = { E: 1_200_000, G: 75_000 };
const POST = section(8, 8);
const TIE = section(8, 12);
const PLATE = section(8, 9);
const RAFTER = section(3, 7);
const KNEE = section(4, 6);

class Builder {
  readonly nodes: FrameNode[] = [];
  readonly elements: FrameElement[] = [];
  readonly supports: FrameSupport[] = [];
  timbers = 0;
  readonly #places = new Map<string, number>();

  node(at: Vec3): number {
    const key = at.map((v) => v.toFixed(4)).join(" ");
    const known = this.#places.get(key);
    if (known !== undefined) return known;
    this.#places.set(key, this.nodes.length);
    this.nodes.push({ id: `n${this.nodes.length}`, at });
    return this.nodes.length - 1;
  }

  /** A timber through all its points, its ends pinned (they do not turn about its own axis). */
  timber(
    id: string,
    points: readonly Vec3[],
    size: ReturnType<typeof section>,
    ydir: Vec3,
    pinned = [true, true],
  ): number[] {
    this.timbers++;
    return points.slice(1).map((to, n) => {
      const [first, last] = [n === 0, n === points.length - 2];
      this.elements.push({
        id: `${id}.${n}`,
        i: this.node(points[n]!),
        j: this.node(to),
        ...WOOD,
        ...size,
        ydir,
        ...(first && pinned[0] ? { releaseI: ["ry", "rz"] as const } : {}),
        ...(last && pinned[1] ? { releaseJ: ["ry", "rz"] as const } : {}),
      });
      return this.elements.length - 1;
    });
  }

  knee(id: string, from: Vec3, to: Vec3): void {
    this.timbers++;
    this.elements.push({
      id,
      i: this.node(from),
      j: this.node(to),
      ...WOOD,
      ...KNEE,
      ydir: Math.abs(to[0] - from[0]) > 1 ? [0, 1, 0] : [1, 0, 0],
      axialOnly: true,
      oneWay: "push",
    });
  }

  structure(): Structure {
    return { nodes: this.nodes, elements: this.elements, supports: this.supports };
  }
}

export interface Hall {
  readonly structure: Structure;
  readonly timbers: number;
  readonly cases: LoadCase[];
}

/**
 * A hall with its ridge over the middle line of posts; x runs along the walls, y across.
 * @param aisles even: spans between lines of posts
 */
export function hall(bents: number, aisles: number, seed = 1): Hall {
  const next = random(seed);
  const between = (low: number, high: number) => low + (high - low) * next();
  const b = new Builder();
  const x = [0];
  for (let n = 1; n < bents; n++) x.push(x[n - 1]! + Math.round(between(108, 156)));
  const half = Array.from({ length: aisles / 2 }, () => Math.round(between(96, 144)));
  const y = [0];
  for (const w of [...half, ...half.toReversed()]) y.push(y[y.length - 1]! + w);
  const width = y[y.length - 1]!;
  const eave = Math.round(between(96, 120));
  const pitch = 7 / 12;
  const roofAt = (across: number) => eave + pitch * Math.min(across, width - across);
  const leg = 30;
  const gravity: number[] = [];
  const across: number[] = [];

  x.forEach((px, n) => {
    y.forEach((py) => {
      const top = roofAt(py);
      const foot: Vec3 = [px, py, 0];
      const heights = [...new Set([0, eave - leg, eave, top - leg, top])]
        .filter((z) => z <= top)
        .sort((p, q) => p - q);
      const wide = heights.filter((z, k) => k === 0 || z - heights[k - 1]! > 1e-6);
      const made = b.timber(
        `post${n}-${py}`,
        wide.map((z): Vec3 => [px, py, z]),
        POST,
        [0, 1, 0],
        [false, true],
      );
      b.supports.push({ node: b.node(foot), fixed: { ux: 0, uy: 0, uz: 0, rz: 0 } });
      if (py === 0) across.push(...made);
    });
    for (let k = 0; k < aisles; k++) {
      const [from, to] = [y[k]!, y[k + 1]!];
      const ends = [from, from + leg, to - leg, to].map((py): Vec3 => [px, py, eave]);
      gravity.push(...b.timber(`tie${n}-${k}`, ends, TIE, [0, 0, 1]));
      b.knee(`knee${n}-${k}a`, [px, from, eave - leg], ends[1]!);
      b.knee(`knee${n}-${k}b`, [px, to, eave - leg], ends[2]!);
    }
  });
  y.forEach((py, line) => {
    const z = roofAt(py);
    // Rafters stand over the bents and at thirds between them.
    const stands = x.flatMap((px, n) => {
      const to = x[n + 1];
      return to === undefined ? [px] : [px, px + (to - px) / 3, px + ((to - px) * 2) / 3];
    });
    const knees = x.flatMap((px, n) => [...(n > 0 ? [px - leg] : []), ...(n < bents - 1 ? [px + leg] : [])]);
    const along = [...new Set([...stands, ...knees])].sort((p, q) => p - q);
    b.timber(
      `plate${line}`,
      along.map((px): Vec3 => [px, py, z]),
      PLATE,
      [0, 0, 1],
      [false, false],
    );
    x.forEach((px, n) => {
      for (const side of [-1, 1]) {
        if (!x[n + side]) if (!(side === -1 && n === 1)) continue;
        // Now and then one is left out, but never both of a bay.
        if (side === 1 || next() > 0.2)
          b.knee(`knee-${line}-${n}${side}`, [px, py, z - leg], [px + side * leg, py, z]);
      }
    });
    if (line === aisles) return;
    const [to, up] = [y[line + 1]!, roofAt(y[line + 1]!)];
    for (const px of stands)
      gravity.push(
        ...b.timber(
          `rafter${line}-${px}`,
          [
            [px, py, z],
            [px, to, up],
          ],
          RAFTER,
          [0, 0, 1],
        ),
      );
  });
  // Plates are held against rolling about their length, one place each.
  y.forEach((py) => {
    const node = b.node([x[0]!, py, roofAt(py)]);
    b.supports.push({ node, fixed: { rx: 0 } });
  });
  const spread = (elements: readonly number[], start: Vec3): SpreadLoad[] =>
    elements.map((element) => ({ kind: "spread", element, start }));
  const knees = b.elements.flatMap((e, element): PointLoad[] =>
    e.oneWay ? [{ kind: "point", element, at: 15, force: [0, 0, -25] }] : [],
  );
  const push = (force: Vec3) =>
    y.flatMap((py) => x.map((px) => ({ node: b.node([px, py, roofAt(py)]), force })));
  const dead = spread(gravity, [0, 0, -4]);
  const cases: LoadCase[] = [
    { id: "dead", elementLoads: [...dead, ...knees] },
    { id: "snow", elementLoads: [...dead, ...spread(gravity, [0, 0, -9])] },
    { id: "half snow", elementLoads: [...dead, ...spread(gravity.slice(0, gravity.length / 2), [0, 0, -9])] },
    { id: "wind across", elementLoads: dead, nodeLoads: push([0, 60, 0]) },
    { id: "wind back", elementLoads: dead, nodeLoads: push([0, -60, 0]) },
    { id: "wind along", elementLoads: dead, nodeLoads: push([60, 0, 0]) },
    { id: "wind from the end", elementLoads: dead, nodeLoads: push([-60, 0, 20]) },
    { id: "on the wall", elementLoads: [...dead, ...spread(across, [0, 2, 0])] },
  ];
  return { structure: b.structure(), timbers: b.timbers, cases };
}
