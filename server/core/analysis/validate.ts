/** Finds everything in a structure that the analysis cannot work with, before it starts. */
import { localAxes } from "./element-stiffness.ts";
import type { InputFault } from "./faults.ts";
import {
  type FrameElement,
  type FrameLink,
  type FrameSupport,
  MOTIONS,
  type PerMotion,
  type Structure,
  type Vec3,
} from "./structure.ts";
import { axesAreSound } from "./supports.ts";
import { cross, isFinite3, minus, norm, plus, ZERO } from "./vec3.ts";

export function validate(structure: Structure): InputFault[] {
  const faults: InputFault[] = [];
  if (structure.nodes.length === 0)
    faults.push({ kind: "no-nodes", in: "structure", id: "", detail: "nodes" });
  for (const node of structure.nodes)
    if (!isFinite3(node.at)) faults.push({ kind: "bad-number", in: "node", id: node.id, detail: "at" });
  for (const [kind, things] of [
    ["node", structure.nodes],
    ["element", structure.elements],
    ["link", structure.links ?? []],
  ] as const)
    faults.push(...repeated(kind, things));
  for (const e of structure.elements) faults.push(...inElement(structure, e));
  for (const l of structure.links ?? []) faults.push(...inLink(structure, l));
  const seen = new Set<number>();
  structure.supports.forEach((s, n) => {
    const id = structure.nodes[s.node]?.id ?? String(n);
    if (!structure.nodes[s.node])
      faults.push({ kind: "unknown-node", in: "support", id: String(n), detail: String(s.node) });
    else if (seen.has(s.node))
      faults.push({ kind: "repeated-support", in: "support", id, detail: String(s.node) });
    seen.add(s.node);
    faults.push(...inSupport(s, id));
  });
  return faults;
}

function repeated(
  kind: "node" | "element" | "link",
  things: readonly { readonly id: string }[],
): InputFault[] {
  const seen = new Set<string>();
  return things.flatMap(({ id }) => {
    if (!seen.has(id)) {
      seen.add(id);
      return [];
    }
    return [{ kind: "repeated-id", in: kind, id, detail: id }];
  });
}

function inElement(structure: Structure, e: FrameElement): InputFault[] {
  const fault = (kind: InputFault["kind"], detail: string): InputFault => ({
    kind,
    in: "element",
    id: e.id,
    detail,
  });
  const faults: InputFault[] = [];
  const needed = e.axialOnly ? { E: e.E, A: e.A } : { E: e.E, A: e.A, G: e.G, Iy: e.Iy, Iz: e.Iz, J: e.J };
  for (const [key, value] of Object.entries(needed))
    if (!isPositive(value)) faults.push(fault("bad-number", key));
  const shear = { G: e.G, Iy: e.Iy, Iz: e.Iz, J: e.J, Asy: e.Asy, Asz: e.Asz };
  for (const [key, value] of Object.entries(shear))
    if (value !== undefined && !isPositive(value) && !(key in needed)) faults.push(fault("bad-number", key));
  if (e.freeElongation !== undefined && !Number.isFinite(e.freeElongation))
    faults.push(fault("bad-number", "freeElongation"));
  faults.push(...badSprings(e.endSpringI).map((m) => fault("bad-number", `endSpringI.${m}`)));
  faults.push(...badSprings(e.endSpringJ).map((m) => fault("bad-number", `endSpringJ.${m}`)));
  const ends = endsOf(structure, e);
  if (typeof ends === "string") faults.push(fault(ends === "offset" ? "bad-number" : "unknown-node", ends));
  else if (!isFinite3(e.ydir)) faults.push(fault("bad-number", "ydir"));
  else {
    const axes = localAxes(ends[0], ends[1], e.ydir);
    if (axes === "no-length") faults.push(fault("no-length", "i, j"));
    else if (axes === "bad-direction") faults.push(fault("bad-direction", "ydir"));
  }
  return faults;
}

function inLink(structure: Structure, l: FrameLink): InputFault[] {
  const fault = (kind: InputFault["kind"], detail: string): InputFault => ({
    kind,
    in: "link",
    id: l.id,
    detail,
  });
  const faults: InputFault[] = [];
  if (!isPositive(l.stiffness)) faults.push(fault("bad-number", "stiffness"));
  if (!isFinite3(l.direction)) faults.push(fault("bad-number", "direction"));
  else if (!(norm(l.direction) > 0)) faults.push(fault("bad-direction", "direction"));
  const ends = endsOf(structure, l);
  if (typeof ends === "string") faults.push(fault(ends === "offset" ? "bad-number" : "unknown-node", ends));
  else if (faults.length === 0) {
    const lever = norm(cross(minus(ends[1], ends[0]), l.direction)) / norm(l.direction);
    if (lever > ASKEW * Math.max(norm(ends[0]), norm(ends[1]))) faults.push(fault("askew", String(lever)));
  }
  return faults;
}

/** Distance between a link's two lines of force, as a share of the coordinates, that is still rounding. */
const ASKEW = 1e-7;

function inSupport(s: FrameSupport, id: string): InputFault[] {
  const faults: InputFault[] = [];
  const bad = (detail: string) => faults.push({ kind: "bad-number", in: "support", id, detail });
  for (const motion of MOTIONS) {
    const [fixed, spring] = [s.fixed?.[motion], s.springs?.[motion]];
    if (fixed !== undefined && !Number.isFinite(fixed)) bad(`fixed.${motion}`);
    if (spring !== undefined && !(Number.isFinite(spring) && spring >= 0)) bad(`springs.${motion}`);
  }
  if (s.axes && !axesAreSound(s.axes)) faults.push({ kind: "bad-axes", in: "support", id, detail: "axes" });
  return faults;
}

const isPositive = (v: number | undefined): boolean => v !== undefined && Number.isFinite(v) && v > 0;

const badSprings = (springs: PerMotion | undefined): string[] =>
  MOTIONS.filter((m) => {
    const s = springs?.[m];
    return s !== undefined && !(Number.isFinite(s) && s >= 0);
  });

/** Points where a stick or link ends. @returns the id of what is missing, or `offset` when that is no number */
export function endsOf(
  structure: Structure,
  e: Pick<FrameElement, "i" | "j" | "offsetI" | "offsetJ">,
): readonly [Vec3, Vec3] | string {
  const [i, j] = [structure.nodes[e.i], structure.nodes[e.j]];
  if (!i) return `i: ${e.i}`;
  if (!j) return `j: ${e.j}`;
  const [a, b] = [plus(i.at, e.offsetI ?? ZERO), plus(j.at, e.offsetJ ?? ZERO)];
  return isFinite3(a) && isFinite3(b) ? [a, b] : "offset";
}
