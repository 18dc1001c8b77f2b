/**
 * One-way members the plain way: drop or take back one, factorise anew, look again. Slow and simple, to hold the program's
 * own way up against.
 */
import { analyse, type CaseResult } from "../../../server/core/analysis/analyse.ts";
import type { LoadCase, OneWay, Structure, Vec3 } from "../../../server/core/analysis/structure.ts";

export interface Plain {
  readonly result: CaseResult;
  readonly dropped: readonly string[];
}

/** @returns nothing when a set of members on the way leaves a mechanism, or it does not settle */
export function plainOneWay(structure: Structure, load: LoadCase): Plain | undefined {
  const links = structure.links ?? [];
  const members = [
    ...structure.elements.map((e, index) => ({ id: e.id, sense: e.oneWay, index, link: false })),
    ...links.map((l, index) => ({ id: l.id, sense: l.oneWay, index, link: true })),
  ].filter((m) => m.sense !== undefined);
  const out = new Set<string>();
  for (let tries = 0; tries < 10 * members.length + 20; tries++) {
    const kept = structure.elements.map((e, n) => ({ e, n })).filter(({ e }) => !out.has(e.id));
    const place = new Map(kept.map(({ n }, k) => [n, k]));
    const lost = { nodes: [] as { node: number; force: readonly [number, number, number] }[] };
    // A bar that has let go hangs in its ends: the lever rule across it, half to each end along it.
    for (const l of load.elementLoads ?? []) {
      const e = structure.elements[l.element]!;
      if (!out.has(e.id)) continue;
      const [a, b] = [structure.nodes[e.i]!.at, structure.nodes[e.j]!.at];
      const span = b.map((v, c) => v - a[c]!);
      const length = Math.hypot(...span);
      if (l.kind !== "point" || l.axes === "local" || l.moment)
        throw new Error("only global point forces here");
      const pull = span.reduce((sum, v, c) => sum + (v / length) * l.force![c]!, 0);
      const part = (share: number) =>
        l.force!.map((f, c) => {
          const along = (pull * span[c]!) / length;
          return (f - along) * share + along / 2;
        }) as unknown as Vec3;
      lost.nodes.push(
        { node: e.i, force: part(1 - l.at / length) },
        { node: e.j, force: part(l.at / length) },
      );
    }
    const plain: Structure = {
      nodes: structure.nodes,
      elements: kept.map(({ e }) => twoWay(e)),
      links: links.filter((l) => !out.has(l.id)).map(twoWay),
      supports: structure.supports,
    };
    const loads: LoadCase = {
      ...load,
      nodeLoads: [...(load.nodeLoads ?? []), ...lost.nodes],
      elementLoads: (load.elementLoads ?? []).flatMap((l) =>
        place.has(l.element) ? [{ ...l, element: place.get(l.element)! }] : [],
      ),
      elongations: (load.elongations ?? []).flatMap((l) =>
        place.has(l.element) ? [{ ...l, element: place.get(l.element)! }] : [],
      ),
    };
    const result = analyse(plain, [loads]).cases[0]!;
    if (!result.solution) return undefined;
    const { solution } = result;
    const wrong = members.map((m) => {
      const pull = m.sense === "push" ? 1 : -1;
      if (!out.has(m.id)) {
        const force = m.link
          ? solution.links[plain.links!.findIndex((l) => l.id === m.id)]!
          : solution.elements[place.get(m.index)!]!.axial;
        return pull * force;
      }
      return -pull * wouldBe(structure, m, load, solution.displacements);
    });
    const worst = wrong.reduce((best, v, n) => (v > wrong[best]! ? n : best), 0);
    if (members.length === 0 || wrong[worst]! <= 1e-6) return { result, dropped: [...out].sort() };
    const { id } = members[worst]!;
    if (out.has(id)) out.delete(id);
    else out.add(id);
  }
  return undefined;
}

function twoWay<T extends { readonly oneWay?: OneWay }>(thing: T): Omit<T, "oneWay"> {
  const { oneWay: _, ...rest } = thing;
  return rest;
}

/** Force of a bar or link without rigid arms, were it in action, from the motions of its nodes alone. */
function wouldBe(
  structure: Structure,
  m: { readonly index: number; readonly link: boolean },
  load: LoadCase,
  u: readonly (readonly number[])[],
): number {
  const thing = m.link ? structure.links![m.index]! : structure.elements[m.index]!;
  const [a, b] = [structure.nodes[thing.i]!.at, structure.nodes[thing.j]!.at];
  const span = m.link ? structure.links![m.index]!.direction : b.map((v, c) => v - a[c]!);
  const length = Math.hypot(...span);
  const stretch = span.reduce((sum, v, c) => sum + (v / length) * (u[thing.j]![c]! - u[thing.i]![c]!), 0);
  if (m.link) return structure.links![m.index]!.stiffness * stretch;
  const e = structure.elements[m.index]!;
  const free =
    (e.freeElongation ?? 0) +
    (load.elongations ?? []).reduce((sum, l) => sum + (l.element === m.index ? l.value : 0), 0);
  // The bar's own loads, shared by the lever rule, add nothing to the mean of its two ends beyond this.
  const own = (load.elementLoads ?? []).reduce((sum, l) => {
    if (l.element !== m.index || l.kind !== "point") return sum;
    const along = span.reduce((s, v, c) => s + (v / length) * l.force![c]!, 0);
    return sum + along * (0.5 - l.at / length);
  }, 0);
  return ((e.E * e.A) / length) * (stretch - free) + own;
}
