/** What a frame should carry and cannot be loaded with, so that nobody takes its silence for zero. */
import type { Pointer } from "../frame/frame.ts";
import type { Model } from "../model/model.ts";
import { timberDensity } from "../wood/timber-weight.ts";
import { enclosureOfFrame, goesByFlow } from "./enclosure.ts";
import type { FloorPlan } from "./floor-loads.ts";
import { lacksWinterWind } from "./snow-loads.ts";
import { needsWind } from "./wind-need.ts";

/** `lacks`: the keys of the file, one or more, that must be there and readable before the load can act. */
export type LoadGap = { readonly lacks: readonly Pointer[] } & (
  | { readonly what: "snow" | "wind" }
  /** a roof without a place in space: its weight, and all that lies on it */
  | { readonly what: "roof" }
  /** own weight of a timber */
  | { readonly what: "weight"; readonly timber: string }
  /** what stands on a floor, or all of it where no timber carries it */
  | { readonly what: "floor"; readonly floor: string }
  /** the file gives it, and it cannot be read: something usual stands in its place */
  | { readonly what: "stated" }
);

/** What acts, of that which the site or the floors may leave open. */
export interface Acting {
  readonly snow: boolean;
  readonly wind: boolean;
  readonly floors: readonly FloorPlan[];
}

function snowLacks(model: Model): Pointer[] {
  const { basis, site } = model.frame;
  const { snow, wind } = site;
  const [under, beside] = [`${site.path}/snow`, `${site.path}/wind`];
  const slopes = model.roof?.slopes ?? [];
  return [
    ...(snow?.ground === undefined ? [`${under}/ground`] : []),
    ...(snow?.exposure === undefined ? [`${under}/exposure`] : []),
    ...(snow?.thermal === undefined ? [`${under}/thermal`] : []),
    ...(slopes.some((slope) => lacksWinterWind(model, slope)) ? [`${under}/winter-wind`] : []),
    // how rough the land is rules how much snow the wind clears
    ...(wind?.exposure === undefined ? [`${beside}/exposure`] : []),
    ...(basis.loads === undefined ? [`${basis.path}/loads`] : []),
    ...(basis.riskCategory === undefined ? [`${basis.path}/risk-category`] : []),
  ];
}

function windLacks(model: Model): Pointer[] {
  const { basis, site } = model.frame;
  const { wind } = site;
  const under = `${site.path}/wind`;
  const blownThrough = (): boolean => model.roof !== undefined && goesByFlow(enclosureOfFrame(model));
  return [
    ...(wind?.speed === undefined ? [`${under}/speed`] : []),
    ...(wind?.exposure === undefined ? [`${under}/exposure`] : []),
    ...(wind?.flow === undefined && blownThrough() ? [`${under}/flow`] : []),
    ...(basis.loads === undefined ? [`${basis.path}/loads`] : []),
  ];
}

function weightGaps({ timbers }: Model): LoadGap[] {
  return timbers
    .filter((t) => timberDensity(t.class) === undefined)
    .map((t) => ({ what: "weight", timber: t.id, lacks: [t.class ? `${t.class.path}/species` : t.path] }));
}

function floorGaps({ frame }: Model, plans: readonly FloorPlan[]): LoadGap[] {
  const carried = new Set(plans.filter(({ patches }) => patches.length > 0).map(({ floor }) => floor));
  return frame.floors.flatMap((floor): LoadGap[] => {
    const lacks = [
      ...(floor.live === undefined ? [`${floor.path}/live`] : []),
      ...(carried.has(floor) ? [] : [`${floor.path}/on`]),
    ];
    return lacks.length > 0 ? [{ what: "floor", floor: floor.name, lacks }] : [];
  });
}

function* siteGaps(model: Model, acting: Acting): Generator<LoadGap> {
  const { roof } = model.frame;
  const unplaced = roof && (model.roof?.slopes ?? []).length === 0;
  if (unplaced) yield { what: "roof", lacks: [roof.path] };
  if (roof && !unplaced && !acting.snow) yield { what: "snow", lacks: snowLacks(model) };
  if (acting.wind || !needsWind(model)) return;
  const lacks = windLacks(model);
  if (lacks.length > 0) yield { what: "wind", lacks };
}

/** @returns every load that the frame should carry and does not, or not as the file says it */
export function loadGaps(model: Model, acting: Acting): LoadGap[] {
  const { frame } = model;
  const gaps = [...weightGaps(model), ...siteGaps(model, acting), ...floorGaps(model, acting.floors)];
  const told = new Set(gaps.flatMap(({ lacks }) => lacks));
  // a frame without a roof carries no snow
  const stated = frame.unreadLoads.filter(
    (path) => !told.has(path) && (frame.roof !== undefined || !path.startsWith(`${frame.site.path}/snow`)),
  );
  return stated.length > 0 ? [...gaps, { what: "stated", lacks: stated }] : gaps;
}
