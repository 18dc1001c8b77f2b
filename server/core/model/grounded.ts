/** Which timbers stand on the ground: on a pier, or joined through others to one that does. */
import { isWhole } from "../frame/frame.ts";
import type { Model, Timber } from "./model.ts";
import { solidOf } from "./solid.ts";

/** Feet of uprights may stand this far above the lowest timber and still count as standing, where no piers are given. */
const NEAR_LOWEST = 1;

/**
 * Timbers that carry the frame to the ground: those on piers; without piers the uprights whose feet are free, or else the
 * lowest timbers.
 */
export function bearingTimbers(model: Model): readonly Timber[] {
  const onPiers = model.piers.flatMap((p) => (p.timber ? [p.timber] : []));
  if (onPiers.length > 0) return [...new Set(onPiers)];
  const footed = new Set(model.joints.filter((j) => j.end === "foot").map((j) => j.of.id));
  const uprights = model.timbers.filter((t) => t.kind === "post" && !footed.has(t.id));
  if (uprights.length > 0) return uprights;
  const lows = model.timbers.map((t) => solidOf(t).low[2]);
  const lowest = Math.min(...lows);
  return model.timbers.filter((_, i) => (lows[i] ?? lowest) <= lowest + NEAR_LOWEST);
}

/** @returns ids of all timbers that are joined, through any number of others, to one that bears */
export function groundedTimbers(model: Model): ReadonlySet<string> {
  const beside = new Map<string, string[]>();
  const link = (a: string, b: string): void => {
    const list = beside.get(a);
    if (list) list.push(b);
    else beside.set(a, [b]);
  };
  for (const { a, b } of model.meetings) {
    link(a.id, b.id);
    link(b.id, a.id);
  }
  const reached = new Set(bearingTimbers(model).map((t) => t.id));
  const open = [...reached];
  for (let id = open.pop(); id !== undefined; id = open.pop())
    for (const next of beside.get(id) ?? [])
      if (!reached.has(next)) {
        reached.add(next);
        open.push(next);
      }
  return reached;
}

/** Whether every entry of the file is in the model: a half-typed line must not make the rest look unsafe. */
export function isComplete(model: Model): boolean {
  if (!isWhole(model.frame)) return false;
  return !model.problems.some(
    (p) =>
      p.kind === "placement-missing" ||
      p.kind === "placement-circular" ||
      p.kind === "no-length" ||
      p.kind === "unknown-id" ||
      p.kind === "duplicate-id",
  );
}
