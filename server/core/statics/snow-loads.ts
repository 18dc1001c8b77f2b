/** Snow on the slopes of a roof, each by its own pitch and run, as loads of the timbers that carry it. */

import type { Frame } from "../frame/frame.ts";
import { roofSnow, type Snow, type SnowCase, type SnowInput } from "../loads/snow.ts";
import type { Pitch } from "../loads/snow-factors.ts";
import { asksWinterWind } from "../loads/unbalanced-snow.ts";
import type { Model, RoofSlope, Timber } from "../model/model.ts";
import { isSlippery } from "../roof/coverings.ts";
import { deckCarriers } from "../roof/deck-carriers.ts";
import type { BasicLoad, LoadChoice } from "./basic-loads.ts";
import { type LineLoad, onLevelArea, type Strip } from "./line-loads.ts";

/** The pitch as it was typed, so that limits on a pitch are compared as such; a derived one otherwise. */
export function pitchOf(frame: Frame, slope: RoofSlope): Pitch {
  const typed = frame.roof?.pitch;
  return typed && Math.abs(typed.rise / typed.run - slope.slope) < 1e-9
    ? typed
    : { rise: slope.slope, run: 1 };
}

/** Timbers that prop a rafter on its way from plate to ridge, or hang on it. */
const PROPS: ReadonlySet<Timber["kind"]> = new Set([
  "post",
  "strut",
  "brace",
  "beam",
  "girt",
  "tie",
  "purlin",
  // a purlin plate; what lies under a rafter's own eave is no prop, being near its end
  "plate",
  "sill",
]);

/**
 * Whether even timbers span freely from the eave to the ridge and carry the roof alone: no purlins on them, nothing under
 * them between plate and ridge. What meets a rafter near its ends (a tie at the plate) does not prop it.
 */
function spansFreely(model: Model, slope: RoofSlope): boolean {
  const carriers = deckCarriers(model, slope);
  if (carriers.some((t) => t.kind === "purlin")) return false;
  const rafters = new Set(carriers.map((t) => t.id));
  const run = slope.peakRun;
  return !model.meetings.some(({ a, b, point }) => {
    const other = rafters.has(a.id) ? b : rafters.has(b.id) ? a : undefined;
    if (!other || !PROPS.has(other.kind)) return false;
    const share = Math.abs(point[1] - slope.plane.point[1]) / run;
    return share > 0.15 && share < 0.85;
  });
}

/** Everything that the snow of a slope depends on; undefined while the site leaves something open other than W_2. */
function snowInput(model: Model, slope: RoofSlope): SnowInput | undefined {
  const { basis, site, roof } = model.frame;
  const { snow, wind } = site;
  if (!roof || !basis.loads || !basis.riskCategory || !wind?.exposure) return undefined;
  if (snow?.ground === undefined || !snow.exposure || !snow.thermal) return undefined;
  const slopes = model.roof?.slopes ?? [];
  const other = slopes.find((s) => s !== slope);
  const feet = (s: RoofSlope): number => (s.peakRun + s.eaveOverhang) / 12;
  return {
    edition: basis.loads,
    riskCategory: basis.riskCategory,
    ground: snow.ground,
    terrain: wind.exposure,
    exposure: snow.exposure,
    thermal: snow.thermal,
    slides: snow.slides && roof.covering !== undefined && isSlippery(roof.covering.kind),
    roof: roof.kind,
    pitch: pitchOf(model.frame, slope),
    eaveToRidge: feet(slope),
    ...(other ? { fetch: feet(other) } : {}),
    simpleRafters: slopes.every((s) => spansFreely(model, s)),
    ...(snow.winterWind === undefined ? {} : { winterWind: snow.winterWind }),
  };
}

/** Whether the snow of a slope waits for W_2, the winter wind of ASCE 7-22, and for nothing else. */
export function lacksWinterWind(model: Model, slope: RoofSlope): boolean {
  const input = snowInput(model, slope);
  return (
    input?.roof === "gable" && input.ground > 0 && input.winterWind === undefined && asksWinterWind(input)
  );
}

/** Snow on a slope; undefined while the site leaves something open. */
export function snowOn(model: Model, slope: RoofSlope): Snow | undefined {
  const input = snowInput(model, slope);
  return input && !lacksWinterWind(model, slope) ? roofSnow(input) : undefined;
}

export type SlopeSnow = ReadonlyMap<RoofSlope, Snow>;

/** @returns the snow of every slope; undefined as long as one of them waits for the site */
export function slopeSnow(model: Model): SlopeSnow | undefined {
  const slopes = model.roof?.slopes ?? [];
  const all = new Map(
    slopes.flatMap((slope): [RoofSlope, Snow][] => {
      const snow = snowOn(model, slope);
      return snow ? [[slope, snow]] : [];
    }),
  );
  return slopes.length > 0 && all.size === slopes.length ? all : undefined;
}

const caseOf = (snow: Snow | undefined, id: SnowCase["id"]): SnowCase | undefined =>
  snow?.cases.find((c) => c.id === id);

function loadsOf(strips: readonly Strip[], find: (slope: RoofSlope) => SnowCase | undefined): LineLoad[] {
  return strips.flatMap((strip) => {
    const c = find(strip.slope);
    return c ? onLevelArea(strip, c.span, c.overhang, c.drift) : [];
  });
}

/** The lee of an unbalanced case has more rules than the windward side, which is bare, or keeps 0.3 p_s beside a drift. */
function windwardOf(lee: Snow, snow: Snow | undefined): SnowCase | undefined {
  const own = caseOf(snow, "unbalanced-windward");
  if (own || lee.unbalanced?.rule !== "drift" || !snow) return own;
  const psf = 0.3 * snow.sloped;
  const { status, source } = lee.unbalanced.windward;
  return { id: "unbalanced-windward", span: psf, overhang: psf, status, source };
}

/** Every snow case: all slopes alike, or one of them leeward and the other windward, each in turn. */
export function snowLoads(snow: SlopeSnow, strips: readonly Strip[]): BasicLoad[] {
  const make = (id: string, choice: LoadChoice, loads: readonly LineLoad[]): BasicLoad => ({
    id,
    kind: "S",
    vertical: true,
    choice,
    loads,
  });
  const even = (["balanced", "minimum", "eave-ice"] as const).flatMap((id) => {
    if (![...snow.values()].some((s) => caseOf(s, id))) return [];
    // of two unlike slopes the one that has no least load of its own keeps its balanced one
    const find = (slope: RoofSlope): SnowCase | undefined =>
      caseOf(snow.get(slope), id) ?? (id === "minimum" ? caseOf(snow.get(slope), "balanced") : undefined);
    return [make(`S/${id}`, { snow: id }, loadsOf(strips, find))];
  });
  const uneven = [...snow].flatMap(([lee, own]) => {
    const leeward = caseOf(own, "unbalanced-leeward");
    if (!leeward || snow.size < 2) return [];
    const find = (slope: RoofSlope): SnowCase | undefined =>
      slope === lee ? leeward : windwardOf(own, snow.get(slope));
    return [make(`S/unbalanced-leeward/${lee.wall}`, { leeward: lee.wall }, loadsOf(strips, find))];
  });
  return [...even, ...uneven];
}
