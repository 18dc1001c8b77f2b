/** A beam that runs unbroken over its supports, by the frame solver itself. */
import { expect } from "vitest";
import { analyse } from "../../../server/core/analysis/analyse.ts";
import type { FrameSupport } from "../../../server/core/analysis/structure.ts";

const SECTION = { A: 48, Iy: 144, Iz: 256, J: 311 };

/**
 * @param supports places along the beam, in order, two or more
 * @param ends where the beam begins and ends
 * @param load by the span that begins at a support; one number for all of it
 * @returns reactions up, in the order of the supports
 */
export function beamReactions(
  supports: readonly number[],
  ends: readonly [number, number],
  load: number | readonly number[],
): number[] {
  const places = [...new Set([ends[0], ...supports, ends[1]])].sort((a, b) => a - b);
  const held = places.flatMap((x, node): FrameSupport[] => {
    const k = supports.indexOf(x);
    if (k < 0) return [];
    return [{ node, fixed: { uy: 0, uz: 0, rx: 0, ...(k === 0 ? { ux: 0 } : {}) } }];
  });
  const of = (i: number): number =>
    typeof load === "number" ? load : (load[supports.indexOf(places[i]!)] ?? 0);
  const [result] = analyse(
    {
      nodes: places.map((x, i) => ({ id: `n${i}`, at: [x, 0, 0] })),
      elements: places.slice(1).map((_, i) => ({
        id: `e${i}`,
        i,
        j: i + 1,
        E: 1_200_000,
        G: 75_000,
        ...SECTION,
        ydir: [0, 1, 0],
      })),
      supports: held,
    },
    [
      {
        id: "load",
        elementLoads: places
          .slice(1)
          .map((_, i) => ({ kind: "spread" as const, element: i, start: [0, -of(i), 0] as const })),
      },
    ],
  ).cases;
  expect(result!.faults).toEqual([]);
  return result!.solution!.reactions.map((r) => r.force[1]);
}
