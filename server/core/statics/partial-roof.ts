/** Snow and roof live load on some spans of a roof only, where its timbers run on over their supports. */

import { unbalancedPitch } from "../loads/snow-factors.ts";
import type { Interval } from "../model/box.ts";
import type { Model, RoofSlope, Timber } from "../model/model.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import type { BasicLoad, StripLive } from "./basic-loads.ts";
import { type LineLoad, onLevelArea, type Strip } from "./line-loads.ts";
import { type Holders, type Lane, laneOf, type Portion, partialLoads } from "./partial-loads.ts";
import { pitchOf, type SlopeSnow } from "./snow-loads.ts";

/**
 * Up to this share of the snow, roof live load on some spans does nothing that partial snow does not do more of. Where R⁺
 * and R⁻ are what the spans add to an effect and take from it, snow makes s R⁺ − s R⁻/2 of it and live load l R⁺. Over inner
 * supports R⁻ is at most R⁺/2 (the moment in the middle of many equal spans); with tails it may be as large as R⁺ (derived).
 */
const COVERED = { inner: 0.75, tails: 0.5 } as const;

/** psf; a roof live load below it is a reduced one */
const FULL_ROOF_LIVE = 20;

/** Level run up a slope, counted in the direction from its eave to its peak. */
const inward = (slope: RoofSlope): Vec3 => [0, -Math.sign(slope.plane.normal[1]), 0];

function portionOf(strip: Strip, load: LineLoad): Portion {
  const { slope, reach, timber } = strip;
  const start = dot(slope.plane.point, inward(slope));
  const run = (up: number): number => start + up * Math.cos(slope.angle);
  const level: Interval = timber.kind === "purlin" ? [run(reach[0]), run(reach[1])] : reach;
  return { load, reach: () => level };
}

/**
 * Which way the timbers of a roof run on over supports: purlins, plates and ridges along the walls; rafters up the slope,
 * save those of gables from 1/2 on 12 to 7 on 12 (ASCE 7-16 section 7.5, memory).
 */
function roofLanes(
  model: Model,
  strips: readonly Strip[],
  holders: Holders,
): { lane: Lane; slope?: RoofSlope }[] {
  const carry = new Set(strips.map((s) => s.timber.id));
  const takes = (t: Timber): boolean =>
    carry.has(t.id) || (holders.contacts.get(t.id) ?? []).some(({ other }) => carry.has(other.id));
  const lengthwise = model.timbers.filter((t) => Math.abs(t.axis[0]) > 0.98 && takes(t));
  const walls = laneOf({ along: "walls" }, [1, 0, 0], lengthwise, holders);
  const up = (model.roof?.slopes ?? []).flatMap((slope) => {
    if (model.frame.roof?.kind === "gable" && unbalancedPitch(pitchOf(model.frame, slope))) return [];
    const rafters = strips
      .filter((s) => s.slope === slope && s.timber.kind !== "purlin")
      .map((s) => s.timber);
    const lane = laneOf({ along: "slope", wall: slope.wall }, inward(slope), rafters, holders);
    return lane ? [{ lane, slope }] : [];
  });
  return walls ? [{ lane: walls }, ...up] : up;
}

/** Half of the balanced snow on some spans; roof live load, where it is reduced, on some spans only. */
export function partialRoof(
  model: Model,
  lives: readonly StripLive[],
  snow: SlopeSnow | undefined,
  holders: Holders,
): BasicLoad[] {
  const strips = lives.map(({ strip }) => strip);
  const snowy = strips.flatMap((strip) => {
    const psf = snow?.get(strip.slope)?.sloped ?? 0;
    return psf > 0 ? onLevelArea(strip, psf, psf).map((load) => ({ strip, load })) : [];
  });
  const reduced = lives.some(({ live }) => live.value < FULL_ROOF_LIVE);
  const live = lives.flatMap(({ strip, live: { value } }) =>
    reduced ? onLevelArea(strip, value, value).map((load) => ({ strip, load })) : [],
  );
  const most = Math.max(0, ...lives.map((one) => one.live.value));
  const least = snow ? Math.min(...[...snow.values()].map((s) => s.sloped * s.asdFactor.value)) : 0;
  return roofLanes(model, strips, holders).flatMap(({ lane, slope }) => {
    const patterns = (
      whole: Pick<BasicLoad, "id" | "kind">,
      all: typeof snowy,
      share: number,
    ): BasicLoad[] => {
      if (all.length === 0) return [];
      const on = all.filter(({ strip }) => !slope || strip.slope === slope);
      const rest = all.filter(({ strip }) => slope && strip.slope !== slope).map(({ load }) => load);
      const portions = on.map(({ strip, load }) => portionOf(strip, load));
      return partialLoads(whole, portions, lane, share).map((p) => ({ ...p, loads: [...p.loads, ...rest] }));
    };
    const covered = most <= (lane.tails ? COVERED.tails : COVERED.inner) * least;
    return [
      ...patterns({ id: "S/balanced", kind: "S" }, snowy, 0.5),
      ...(covered ? [] : patterns({ id: "Lr", kind: "Lr" }, live, 0)),
    ];
  });
}
