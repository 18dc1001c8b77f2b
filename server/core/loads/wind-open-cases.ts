/**
 * Pressures on the roof of an open building, one direction of the wind at a time.
 */
import { leastCertain } from "../sourced.ts";
import { slopeOf } from "./snow-factors.ts";
import type { Blowing, Pressures } from "./wind-cases.ts";
import {
  alongCoefficients,
  monoslopeCoefficients,
  type OpenCoefficients,
  pitchedCoefficients,
} from "./wind-open.ts";

/** Wind square to the ridge: a gable's two planes, a shed's two halves. */
export function openAcross(blowing: Blowing): readonly Pressures[] {
  const { input, planes, toward, length, psf } = blowing;
  const [first, second] = planes;
  if (!first) return [];
  const middle = second ? first.run : length / 2;
  const lee = second ?? first;
  const pairs = second
    ? gablePairs(slopeOf(first.pitch), slopeOf(second.pitch), input.flow)
    : monoslopeCoefficients(
        slopeOf(first.pitch),
        input.flow,
        first.falls === toward ? "high-edge" : "low-edge",
      );
  return pairs.map(({ id, neighbor, windward, leeward, status, source }) => ({
    id,
    neighbor,
    roof: [
      { plane: first.id, from: 0, to: middle, psf: psf(windward), coefficient: windward },
      { plane: lee.id, from: middle, to: length, psf: psf(leeward), coefficient: leeward },
    ],
    status,
    source,
  }));
}

/** Slopes that differ take each its own coefficient, in every pairing of the rows that stand for them. */
function gablePairs(
  windward: number,
  leeward: number,
  flow: Blowing["input"]["flow"],
): readonly OpenCoefficients[] {
  const first = pitchedCoefficients(windward, flow);
  if (Math.abs(windward - leeward) < 1e-6) return first;
  return first.flatMap((a) =>
    pitchedCoefficients(leeward, flow)
      .filter((b) => b.load === a.load)
      .map((b) => ({
        load: a.load,
        neighbor: a.neighbor || b.neighbor,
        id: a.id === b.id ? a.id : `${a.id}+${b.id}`,
        windward: a.windward,
        leeward: b.leeward,
        status: leastCertain([a.status, b.status, "derived"]),
        source: a.source,
      })),
  );
}

/** Wind along the ridge: strips by their distance from the windward edge, the same on every plane. */
export function openAlong({ input, planes, length, psf }: Blowing): readonly Pressures[] {
  return alongCoefficients(input.meanHeight, length, input.flow).map(({ id, strips }) => ({
    id,
    roof: planes.flatMap((plane) =>
      strips.map(({ from, to, C }) => ({ plane: plane.id, from, to, psf: psf(C), coefficient: C })),
    ),
    status: "memory",
    source: "ASCE 7 Figure 27.3-7",
  }));
}
