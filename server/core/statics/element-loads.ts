/** Line loads of timbers, cut to the elements of a structure. Nothing is lost: what lies past the pieces goes to their ends. */
import type { LoadCase, PointLoad, SpreadLoad } from "../analysis/structure.ts";
import { add, scale, type Vec3 } from "../model/vec.ts";
import type { LineLoad } from "./line-loads.ts";
import type { FrameStructure } from "./structure.ts";

type ElementLoad = PointLoad | SpreadLoad;

function forceAt(load: LineLoad, s: number): Vec3 {
  if (load.startForce === load.endForce) return load.startForce;
  const t = load.to > load.from ? (s - load.from) / (load.to - load.from) : 0;
  return add(scale(load.startForce, 1 - t), scale(load.endForce, t));
}

/** Whole force of a stretch of a line load. */
function resultant(load: LineLoad, a: number, b: number): Vec3 {
  return scale(add(forceAt(load, a), forceAt(load, b)), (b - a) / 2);
}

/** @param factor of the load in its combination */
function elementLoads(frame: FrameStructure, load: LineLoad, factor: number): ElementLoad[] {
  const elements = frame.elementsOf.get(load.timber.id) ?? [];
  const first = elements[0];
  const last = elements.at(-1);
  const start = first === undefined ? undefined : frame.pieces[first];
  const end = last === undefined ? undefined : frame.pieces[last];
  if (first === undefined || last === undefined || !start || !end || factor === 0) return [];
  const loads: ElementLoad[] = [];
  if (load.from < start.from) {
    const force = scale(resultant(load, load.from, Math.min(load.to, start.from)), factor);
    loads.push({ kind: "point", element: first, at: 0, force });
  }
  if (load.to > end.to) {
    const force = scale(resultant(load, Math.max(load.from, end.to), load.to), factor);
    loads.push({ kind: "point", element: last, at: end.to - end.from, force });
  }
  for (const element of elements) {
    const piece = frame.pieces[element];
    if (!piece) continue;
    const a = Math.max(load.from, piece.from);
    const b = Math.min(load.to, piece.to);
    if (b - a < 1e-9) continue;
    const near = forceAt(load, a);
    const far = forceAt(load, b);
    const start = scale(near, factor);
    const end = far === near ? start : scale(far, factor);
    loads.push({ kind: "spread", element, from: a - piece.from, to: b - piece.from, start, end });
  }
  return loads;
}

/** One load case from line loads with their factors. */
export function loadCase(
  frame: FrameStructure,
  id: string,
  parts: readonly { readonly loads: readonly LineLoad[]; readonly factor: number }[],
): LoadCase {
  return {
    id,
    elementLoads: parts.flatMap(({ loads, factor }) => loads.flatMap((l) => elementLoads(frame, l, factor))),
  };
}
