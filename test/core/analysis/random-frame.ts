/** Random space frames for property tests: sticks turned any way, joints free or sprung, rigid arms, skew supports, bars. */
import type {
  FrameElement,
  FrameLink,
  FrameSupport,
  LoadCase,
  Motion,
  PointLoad,
  SpreadLoad,
  Structure,
  Vec3,
} from "../../../server/core/analysis/structure.ts";
import { random, section } from "./hall.ts";

export interface RandomFrame {
  readonly structure: Structure;
  readonly cases: LoadCase[];
}

export interface Wanted {
  /** Bars that only push, or pull. */
  readonly oneWay?: boolean;
  /** Rigid arms, joint springs and releases. */
  readonly joints?: boolean;
  readonly settlements?: boolean;
  readonly links?: boolean;
}

export function randomFrame(seed: number, wanted: Wanted = {}): RandomFrame {
  const next = random(seed);
  const between = (low: number, high: number) => low + (high - low) * next();
  const direction = (): Vec3 => [between(-1, 1), between(-1, 1), between(-1, 1)];
  const chance = (share: number) => next() < share;
  const [nx, ny, nz] = [2 + Math.floor(next() * 2), 2, 2 + Math.floor(next() * 2)];
  const at = (i: number, j: number, k: number) => (i * ny + j) * nz + k;
  const nodes = Array.from({ length: nx * ny * nz }, (_, n) => {
    const [i, j, k] = [Math.floor(n / (ny * nz)), Math.floor(n / nz) % ny, n % nz];
    return {
      id: `n${n}`,
      at: [120 * i + between(-9, 9), 100 * j + between(-9, 9), 96 * k + between(-9, 9)] as Vec3,
    };
  });
  const elements: FrameElement[] = [];
  const stick = (i: number, j: number, bar: boolean) => {
    const size = section(between(3, 9), between(5, 13));
    const joints = wanted.joints && !bar;
    const release: Motion[] = chance(0.5) ? ["ry", "rz"] : ["rz"];
    const springs = chance(0.5) ? { rz: between(1e5, 1e7) } : { ux: between(2e4, 2e5), ry: 1e6 };
    elements.push({
      id: `e${elements.length}`,
      i,
      j,
      E: 1_200_000,
      G: 75_000,
      ...size,
      ...(chance(0.3) ? { Asy: size.A / 1.2, Asz: size.A / 1.2 } : {}),
      ydir: direction(),
      ...(joints && chance(0.25) ? { releaseJ: release } : {}),
      ...(joints && chance(0.3) ? { endSpringI: springs } : {}),
      ...(joints && chance(0.25)
        ? { offsetI: [between(-4, 4), between(-4, 4), between(-4, 4)] as Vec3 }
        : {}),
      ...(bar ? { axialOnly: true } : {}),
      ...(bar && wanted.oneWay ? { oneWay: chance(0.85) ? ("push" as const) : ("pull" as const) } : {}),
    });
  };
  const links: FrameLink[] = [];
  for (let i = 0; i < nx; i++)
    for (let j = 0; j < ny; j++)
      for (let k = 0; k < nz; k++) {
        if (i + 1 < nx && k > 0) stick(at(i, j, k), at(i + 1, j, k), false);
        if (j + 1 < ny && k > 0) stick(at(i, j, k), at(i, j + 1, k), false);
        if (k + 1 < nz) stick(at(i, j, k), at(i, j, k + 1), false);
        if (i + 1 < nx && k + 1 < nz) {
          stick(at(i, j, k), at(i + 1, j, k + 1), true);
          stick(at(i, j, k + 1), at(i + 1, j, k), true);
        }
        if (j + 1 < ny && k + 1 < nz) stick(at(i, j, k), at(i, j + 1, k + 1), true);
        if (wanted.links && i + 1 < nx && chance(0.4)) {
          const [a, b] = [nodes[at(i, j, nz - 1)]!.at, nodes[at(i + 1, j, 0)]!.at];
          const offsetI: Vec3 = wanted.joints ? [between(-3, 3), 0, between(-3, 3)] : [0, 0, 0];
          links.push({
            id: `l${links.length}`,
            i: at(i, j, nz - 1),
            j: at(i + 1, j, 0),
            direction: [b[0] - a[0] - offsetI[0], b[1] - a[1] - offsetI[1], b[2] - a[2] - offsetI[2]],
            stiffness: between(1e3, 1e5),
            offsetI,
            ...(wanted.oneWay && chance(0.7) ? { oneWay: "push" as const } : {}),
          });
        }
      }
  const supports: FrameSupport[] = [];
  for (let i = 0; i < nx; i++)
    for (let j = 0; j < ny; j++) {
      const angle = between(0, 1);
      const skew = chance(0.3)
        ? {
            axes: [
              [Math.cos(angle), Math.sin(angle), 0],
              [-Math.sin(angle), Math.cos(angle), 0],
              [0, 0, 1],
            ] as [Vec3, Vec3, Vec3],
          }
        : {};
      const first = i === 0 && j === 0;
      supports.push({
        node: at(i, j, 0),
        fixed: first || chance(0.5) ? { ux: 0, uy: 0, uz: 0, rz: 0 } : { ux: 0, uz: 0 },
        ...(first ? {} : { springs: { uy: between(1e4, 1e6), rx: between(1e5, 1e7) } }),
        ...skew,
      });
    }
  const make = (id: string): LoadCase => {
    const chosen = elements.map((_, n) => n).filter(() => chance(0.4));
    return {
      id,
      nodeLoads: nodes.flatMap((_, node) =>
        chance(0.4)
          ? [
              {
                node,
                force: [between(-800, 800), between(-800, 800), between(-900, 200)] as Vec3,
                // A joint where only bars meet cannot take a moment; here every joint has sticks too.
                moment: [between(-900, 900), between(-900, 900), between(-900, 900)] as Vec3,
              },
            ]
          : [],
      ),
      elementLoads: chosen.map((element): PointLoad | SpreadLoad => {
        const bar = elements[element]!.axialOnly === true;
        if (chance(0.4))
          return {
            kind: "point",
            element,
            at: between(5, 80),
            force: [between(-300, 300), between(-300, 300), between(-500, 100)],
            ...(bar ? {} : { moment: [between(-900, 900), between(-900, 900), between(-900, 900)] as Vec3 }),
            ...(chance(0.5) ? { axes: "local" as const } : {}),
          };
        return {
          kind: "spread",
          element,
          from: between(0, 30),
          to: between(40, 80),
          start: [between(-3, 3), between(-3, 3), between(-9, 0)],
          end: [between(-3, 3), between(-3, 3), between(-9, 0)],
          ...(chance(0.3) ? { axes: "local" as const } : {}),
          ...(chance(0.3) ? { per: "projection" as const } : {}),
        };
      }),
      ...(wanted.settlements && chance(0.7)
        ? { settlements: [{ node: 0, motion: "uz" as const, value: between(-0.5, 0.5) }] }
        : {}),
      ...(wanted.settlements && chance(0.7)
        ? { elongations: [{ element: 1, value: between(-0.2, 0.2) }] }
        : {}),
    };
  };
  return { structure: { nodes, elements, links, supports }, cases: [make("one"), make("two")] };
}
