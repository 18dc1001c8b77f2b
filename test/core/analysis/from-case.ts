/** Reads a case of frames.yaml into the analysis' own input. Conventions are at the head of that file. */
import type {
  FrameElement,
  FrameSupport,
  LoadCase,
  Motion,
  Structure,
  Vec3,
} from "../../../server/core/analysis/structure.ts";
import { MOTIONS } from "../../../server/core/analysis/structure.ts";

// biome-ignore lint/suspicious/noExplicitAny: inputs differ from case to case
type Given = Record<string, any>;

export interface FromCase {
  readonly structure: Structure;
  readonly load: LoadCase;
  readonly nodeIds: readonly string[];
  readonly elementIds: readonly string[];
}

/** Motions out of the plane of a flat case, held at every node. */
const OUT_OF_PLANE: Record<string, readonly Motion[]> = { xy: ["uz", "rx", "ry"], xz: ["uy", "rx", "rz"] };

export function fromCase(given: Given): FromCase {
  const nodeIds = Object.keys(given.nodes);
  const elementIds = Object.keys(given.members);
  const node = (id: string) => nodeIds.indexOf(String(id));
  const elements = elementIds.map((id): FrameElement => {
    const m = given.members[id];
    const { E, G } = given.materials[m.material];
    const bar = m.kind === "axial" || m.axial_only === true;
    return {
      id,
      i: node(m.i),
      j: node(m.j),
      E,
      // Where no shear modulus is given nothing is twisted, and any will do.
      ...(bar ? {} : { G: G ?? E / 2.5 }),
      ...given.sections[m.section],
      ydir: m.ydir,
      ...(bar ? { axialOnly: true } : {}),
      ...(m.release_i ? { releaseI: m.release_i } : {}),
      ...(m.release_j ? { releaseJ: m.release_j } : {}),
      ...(m.kind === "push" || m.kind === "pull" ? { oneWay: m.kind } : {}),
      ...(m.tconst === undefined ? {} : { freeElongation: m.tconst }),
    };
  });
  const outOfPlane = given.plane ? OUT_OF_PLANE[given.plane]! : [];
  const supports = nodeIds.flatMap((id, n): FrameSupport[] => {
    const s = given.supports[id] ?? {};
    const fixed = Object.fromEntries([
      ...outOfPlane.map((m) => [m, 0]),
      ...MOTIONS.filter((m) => s[m] !== undefined).map((m) => [m, s[m]]),
    ]);
    if (Object.keys(fixed).length === 0 && !s.spring) return [];
    return [
      {
        node: n,
        fixed,
        ...(s.spring ? { springs: s.spring } : {}),
        ...(s.axes ? { axes: s.axes as [Vec3, Vec3, Vec3] } : {}),
      },
    ];
  });
  const loads: Given[] = given.loads;
  const load: LoadCase = {
    id: "load",
    nodeLoads: loads
      .filter((l) => l.node !== undefined)
      .map((l) => ({
        node: node(l.node),
        ...(l.F ? { force: l.F } : {}),
        ...(l.M ? { moment: l.M } : {}),
      })),
    elementLoads: loads
      .filter((l) => l.member !== undefined)
      .map((l) => {
        const element = elementIds.indexOf(l.member);
        const axes = l.axes === "local" ? { axes: "local" as const } : {};
        if (l.kind === "point")
          return {
            kind: "point" as const,
            element,
            at: l.a,
            ...axes,
            ...(l.F ? { force: l.F } : {}),
            ...(l.M ? { moment: l.M } : {}),
          };
        return {
          kind: "spread" as const,
          element,
          ...(l.a === undefined ? {} : { from: l.a }),
          ...(l.b === undefined ? {} : { to: l.b }),
          start: l.wa,
          ...(l.wb ? { end: l.wb } : {}),
          ...axes,
          ...(l.per === "projection" ? { per: "projection" as const } : {}),
        };
      }),
  };
  return {
    structure: { nodes: nodeIds.map((id) => ({ id, at: given.nodes[id] })), elements, supports },
    load,
    nodeIds,
    elementIds,
  };
}
