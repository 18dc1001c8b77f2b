/** The basic loads of a frame, each as line loads of its timbers: own weight, roof, snow, roof live load, wind, floors. */
import type { Frame, Pointer } from "../frame/frame.ts";
import type { LoadKind } from "../loads/combinations.ts";
import { type RoofDead, roofDead } from "../loads/dead.ts";
import { type RoofLive, roofLive } from "../loads/roof-live.ts";
import { roofSnow, type Snow, type SnowCase } from "../loads/snow.ts";
import type { Pitch } from "../loads/snow-factors.ts";
import type { Wind } from "../loads/wind-cases.ts";
import type { Model, RoofSlope, Timber } from "../model/model.ts";
import { dot } from "../model/vec.ts";
import { inches } from "../quantity/length.ts";
import { densityOf } from "../wood/timber-weight.ts";
import { type LineLoad, onLevelArea, onSlopeArea, ownWeight, roofStrips, type Strip } from "./line-loads.ts";
import { windLoads } from "./wind-loads.ts";

export interface BasicLoad {
  /** `D`, `S/balanced`, `S/unbalanced-leeward/A`, `Lr`, `W/+y/A`, `L/loft` */
  readonly id: string;
  readonly kind: LoadKind;
  /** acts straight down only: the second rafter model holds for it */
  readonly vertical: boolean;
  readonly loads: readonly LineLoad[];
}

/** What cannot be loaded, so that nobody takes its silence for zero. */
export type LoadGap =
  | { readonly what: "snow" | "wind"; readonly path: Pointer }
  | { readonly what: "weight"; readonly timber: string; readonly path: Pointer };

/** Roof live load of one timber that carries roof. */
export interface StripLive {
  readonly strip: Strip;
  /** ft² of level projection */
  readonly area: number;
  readonly live: RoofLive;
}

export interface BasicLoads {
  readonly all: readonly BasicLoad[];
  readonly gaps: readonly LoadGap[];
  readonly snow: Snow | undefined;
  readonly wind: Wind | undefined;
  readonly roof: RoofDead | undefined;
  readonly live: readonly StripLive[];
  readonly strips: readonly Strip[];
}

/** The pitch as it was typed, so that limits on a pitch are compared as such; a derived one otherwise. */
export function pitchOf(frame: Frame, slope: RoofSlope): Pitch {
  const typed = frame.roof?.pitch;
  return typed && Math.abs(typed.rise / typed.run - slope.slope) < 1e-9
    ? typed
    : { rise: slope.slope, run: 1 };
}

/** Snow on a slope; undefined while the site leaves something open. */
export function snowOn(frame: Frame, slope: RoofSlope): Snow | undefined {
  const { basis, site, roof } = frame;
  const { snow, wind } = site;
  if (!roof || !basis.loads || !basis.riskCategory || !wind?.exposure) return undefined;
  if (snow?.ground === undefined || !snow.exposure || !snow.thermal) return undefined;
  return roofSnow({
    edition: basis.loads,
    riskCategory: basis.riskCategory,
    ground: snow.ground,
    terrain: wind.exposure,
    exposure: snow.exposure,
    thermal: snow.thermal,
    slides: snow.slides,
    roof: roof.kind,
    pitch: pitchOf(frame, slope),
    eaveToRidge: (slope.run + slope.eaveOverhang) / 12,
    simpleRafters: true,
  });
}

/** Roof build-up over the rafters. */
export function roofDeadOf(frame: Frame): RoofDead | undefined {
  if (!frame.roof) return undefined;
  const { covering, deck } = frame.roof;
  return roofDead({
    covering: covering && {
      kind: covering.kind,
      ...(covering.weight === undefined ? {} : { weight: covering.weight }),
    },
    deck: deck && {
      kind: deck.kind,
      ...(deck.thickness === undefined ? {} : { thickness: inches(deck.thickness) }),
      ...(deck.spacing === undefined ? {} : { spacing: inches(deck.spacing) }),
    },
  });
}

function deadLoad(
  model: Model,
  roof: RoofDead | undefined,
  strips: readonly Strip[],
  gaps: LoadGap[],
): BasicLoad {
  const own = model.timbers.flatMap((t) => {
    const density = densityOf(t.class);
    if (density !== undefined) return [ownWeight(t, density)];
    gaps.push({ what: "weight", timber: t.id, path: t.path });
    return [];
  });
  return {
    id: "D",
    kind: "D",
    vertical: true,
    loads: [...own, ...(roof ? strips.map((s) => onSlopeArea(s, roof.total)) : [])],
  };
}

const snowLoad = (strips: readonly Strip[], caseOf: (strip: Strip) => SnowCase | undefined): LineLoad[] =>
  strips.flatMap((strip) => {
    const c = caseOf(strip);
    return c ? onLevelArea(strip, c.span, c.overhang, c.drift) : [];
  });

/** Every snow case: the same on all slopes, or leeward on one and windward on the other, each in turn. */
function snowLoads(snow: Snow, strips: readonly Strip[], slopes: readonly RoofSlope[]): BasicLoad[] {
  const find = (id: SnowCase["id"]): SnowCase | undefined => snow.cases.find((c) => c.id === id);
  const make = (id: string, loads: readonly LineLoad[]): BasicLoad => ({
    id,
    kind: "S",
    vertical: true,
    loads,
  });
  const even = (["balanced", "minimum", "eave-ice"] as const).flatMap((id) => {
    const c = find(id);
    return c
      ? [
          make(
            `S/${id}`,
            snowLoad(strips, () => c),
          ),
        ]
      : [];
  });
  const leeward = find("unbalanced-leeward");
  const windward = find("unbalanced-windward");
  const uneven =
    leeward && slopes.length > 1
      ? slopes.map((lee) =>
          make(
            `S/unbalanced-leeward/${lee.wall}`,
            snowLoad(strips, (s) => (s.slope === lee ? leeward : windward)),
          ),
        )
      : [];
  return [...even, ...uneven];
}

/** Roof live load of each timber that carries roof: the more it carries, the less on each square foot. */
function roofLivesOf(frame: Frame, strips: readonly Strip[]): StripLive[] {
  return strips.map((strip) => {
    const { slope, width, timber } = strip;
    const area = (width * timber.span * Math.cos(slope.angle)) / 144;
    return { strip, area, live: roofLive(area, pitchOf(frame, slope)) };
  });
}

function liveLoads(lives: readonly StripLive[]): BasicLoad[] {
  const loads = lives.flatMap(({ strip, live }) => onLevelArea(strip, live.value, live.value));
  return loads.length > 0 ? [{ id: "Lr", kind: "Lr", vertical: true, loads }] : [];
}

/** Joists of a loft, each with its share of the floor. */
function floorLoads(model: Model): BasicLoad[] {
  return model.frame.floors.flatMap((floor) => {
    const joists = floor.on ? (model.sticks.get(floor.on.text) ?? []) : [];
    if (floor.live === undefined || joists.length === 0) return [];
    const k = Math.abs(joists[0]?.axis[0] ?? 0) > 0.7 ? 1 : 0;
    const at = (t: Timber): number => t.origin[k];
    const loads = joists.map((t) => {
      const beside = joists.filter((o) => o !== t && sameBay(o, t)).map((o) => Math.abs(at(o) - at(t)));
      const left = joists.filter((o) => sameBay(o, t) && at(o) < at(t)).map((o) => at(t) - at(o));
      const right = joists.filter((o) => sameBay(o, t) && at(o) > at(t)).map((o) => at(o) - at(t));
      const nearest = (gaps: readonly number[]): number =>
        gaps.length > 0 ? Math.min(...gaps) / 2 : t.width / 2;
      const share = beside.length > 0 ? nearest(left) + nearest(right) : t.width;
      const w = ((floor.live ?? 0) * share) / 144;
      return {
        timber: t,
        from: 0,
        to: t.span,
        startForce: [0, 0, -w] as const,
        endForce: [0, 0, -w] as const,
      };
    });
    return [{ id: `L/${floor.name}`, kind: "L" as const, vertical: true, loads }];
  });
}

/** Joists side by side, not end to end: they overlap along their grain. */
function sameBay(a: Timber, b: Timber): boolean {
  const start = dot(b.origin, a.axis) - dot(a.origin, a.axis);
  return start < a.span - 1 && start + b.span > 1;
}

/** @returns every basic load of the frame, and what the site leaves open */
export function basicLoads(model: Model): BasicLoads {
  const { frame } = model;
  const gaps: LoadGap[] = [];
  const strips = roofStrips(model);
  const slopes = model.roof?.slopes ?? [];
  const first = slopes[0];
  const roof = roofDeadOf(frame);
  const live = roofLivesOf(frame, strips);
  const dead = deadLoad(model, roof, strips, gaps);
  const snow = first && snowOn(frame, first);
  if (first && !snow) gaps.push({ what: "snow", path: frame.site.snow?.path ?? frame.site.path });
  const wind = windLoads(model, strips);
  if (first && !wind) gaps.push({ what: "wind", path: frame.site.wind?.path ?? frame.site.path });
  return {
    all: [
      dead,
      ...floorLoads(model),
      ...(snow ? snowLoads(snow, strips, slopes) : []),
      ...liveLoads(live),
      ...(wind?.loads ?? []),
    ],
    gaps,
    snow,
    wind: wind?.wind,
    roof,
    live,
    strips,
  };
}
