/**
 * Pressures on roof and walls of a building with walls, one direction of the wind at a time: p = q G C_p − q_i (GC_pi),
 * with q and q_i at mean roof height on every surface (never too little up to that height; the gable above it is left
 * out), and internal pressure both ways. Memory, as the coefficients are.
 */
import { slopeOf } from "./snow-factors.ts";
import type { Blowing, PlanePressure, Pressures } from "./wind-cases.ts";
import {
  leewardSlope,
  SLOPED_FROM,
  stripCoefficients,
  wallCoefficients,
  windwardSlope,
} from "./wind-enclosed.ts";
import type { Strip } from "./wind-open.ts";

/** C_p on the underside of an overhang at the windward wall (section 27.3.3). */
const UNDER_OVERHANG = 0.8;
const SOURCE = "ASCE 7 section 27.3.1";

/** External coefficients of the roof, before internal pressure. */
interface External {
  readonly id: string;
  readonly roof: readonly (Strip & { readonly plane: string })[];
}

/** Wind square to the ridge. A shed is one windward or one leeward slope as a whole. */
export function enclosedAcross(blowing: Blowing): readonly Pressures[] {
  const { input, planes, toward, length } = blowing;
  const depth = input.plan?.across ?? length;
  const ratio = input.meanHeight / depth;
  if (planes.some((plane) => slopeOf(plane.pitch) < SLOPED_FROM - 1e-9)) {
    const strips = stripCoefficients(input.meanHeight, length, ratio);
    return both(
      blowing,
      depth,
      strips.map(({ id, strips }) => ({ id, roof: onPlanes(blowing, strips) })),
    );
  }
  const starts = planes.map((_, i) => planes.slice(0, i).reduce((sum, plane) => sum + plane.run, 0));
  const external = (["suction", "pressure"] as const).map((id, pick) => ({
    id,
    roof: planes.map((plane, i) => {
      const slope = slopeOf(plane.pitch);
      const from = starts[i] ?? 0;
      const C = plane.falls === toward ? leewardSlope(slope, ratio) : windwardSlope(slope, ratio)[pick];
      return { plane: plane.id, from, to: from + plane.run, C: C ?? 0 };
    }),
  }));
  // A shed that falls with the wind is a leeward slope only: both values are one.
  const onlyLeeward = planes.every((plane) => plane.falls === toward);
  return both(blowing, depth, onlyLeeward ? external.slice(0, 1) : external);
}

/** Wind along the ridge. */
export function enclosedAlong(blowing: Blowing): readonly Pressures[] {
  const { input, planes, length } = blowing;
  const depth = input.plan?.along ?? length;
  const strips = stripCoefficients(input.meanHeight, length, input.meanHeight / depth);
  return both(
    blowing,
    depth,
    strips.map(({ id, strips }) => ({
      id,
      roof: planes.flatMap((plane) => strips.map((strip) => ({ plane: plane.id, ...strip }))),
    })),
  );
}

/** Strips across the wind cut where one plane ends and the next begins. */
function onPlanes({ planes }: Blowing, strips: readonly Strip[]): External["roof"] {
  let start = 0;
  return planes.flatMap((plane) => {
    const [from, to] = [start, start + plane.run];
    start = to;
    return strips
      .map((strip) => ({
        plane: plane.id,
        from: Math.max(from, strip.from),
        to: Math.min(to, strip.to),
        C: strip.C,
      }))
      .filter((strip) => strip.to > strip.from);
  });
}

/** Each external case with internal pressure pushing out, and pulling in. */
function both(blowing: Blowing, depth: number, external: readonly External[]): readonly Pressures[] {
  const { input, toward, psf, internal } = blowing;
  const along = toward === "+x" || toward === "-x";
  const width = input.planes.reduce((sum, plane) => sum + plane.run, 0);
  const breadth = along ? (input.plan?.across ?? width) : (input.plan?.along ?? input.length);
  const walls = wallCoefficients(depth, breadth);
  return external.flatMap(({ id, roof }) =>
    ([1, -1] as const).map((sign): Pressures => {
      const net = (C: number) => psf(C) - sign * internal;
      return {
        id: `${id}/${sign > 0 ? "pressure-inside" : "suction-inside"}`,
        roof: roof.map(
          ({ plane, from, to, C }): PlanePressure => ({ plane, from, to, psf: net(C), coefficient: C }),
        ),
        walls: {
          windward: net(walls.windward.value),
          leeward: net(walls.leeward.value),
          side: net(walls.side.value),
        },
        windwardOverhang: psf((roof[0]?.C ?? 0) - UNDER_OVERHANG),
        status: "memory",
        source: SOURCE,
      };
    }),
  );
}
