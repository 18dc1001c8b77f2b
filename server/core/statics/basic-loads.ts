/** The basic loads of a frame, each as line loads of its timbers: own weight, roof, snow, roof live load, wind, floors. */
import type { Frame } from "../frame/frame.ts";
import type { LoadKind } from "../loads/combinations.ts";
import { type DeadEnd, type RoofDead, roofDead } from "../loads/dead.ts";
import { type RoofLive, roofLive } from "../loads/roof-live.ts";
import type { Wind, WindDirection } from "../loads/wind-cases.ts";
import type { Model } from "../model/model.ts";
import { inches } from "../quantity/length.ts";
import { leastTimberDensity, timberDensity } from "../wood/timber-weight.ts";
import { enclosureOfFrame, type FrameEnclosure, sideLoads } from "./enclosure.ts";
import { type FloorPlan, floorLives, floorPlans, floorWeights } from "./floor-loads.ts";
import { type LineLoad, onLevelArea, onSlopeArea, ownWeight, roofStrips, type Strip } from "./line-loads.ts";
import { type LoadGap, loadGaps } from "./load-gaps.ts";
import { holdersOf, type Partial } from "./partial-loads.ts";
import { partialRoof } from "./partial-roof.ts";
import { pitchOf, type SlopeSnow, slopeSnow, snowLoads } from "./snow-loads.ts";
import { windLoads } from "./wind-loads.ts";

/** Which of several weights, snows or winds a load is. */
export type LoadChoice =
  | { readonly dead: "least" }
  | { readonly snow: "balanced" | "minimum" | "eave-ice" }
  | { readonly leeward: string }
  /** `figure`: load case of the standard's figure, empty where there is only one */
  | { readonly toward: WindDirection; readonly figure: string };

export interface BasicLoad {
  /** `D`, `D/least`, `S/balanced`, `S/balanced/walls-2`, `S/balanced/slope-A-1`, `S/unbalanced-leeward/A`, `Lr`, `W/+y/A`, `L/loft` */
  readonly id: string;
  readonly kind: LoadKind;
  /** acts straight down only: the second rafter model holds for it */
  readonly vertical: boolean;
  /** missing where the kind says it all, and where `partial` does */
  readonly choice?: LoadChoice;
  /** set where it lies on some spans with less, or with nothing */
  readonly partial?: Partial;
  readonly loads: readonly LineLoad[];
}

/** What is left to hold the frame down against the wind. */
export const isLeastDead = ({ choice }: BasicLoad): boolean => choice !== undefined && "dead" in choice;

/** All of the snow at rest, on every slope. */
export const isBalancedSnow = ({ choice }: BasicLoad): boolean =>
  choice !== undefined && "snow" in choice && choice.snow === "balanced";

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
  readonly snow: SlopeSnow | undefined;
  readonly wind: Wind | undefined;
  /** how closed the building is, which the wind's cases follow */
  readonly enclosure: FrameEnclosure | undefined;
  readonly roof: RoofDead | undefined;
  readonly live: readonly StripLive[];
  readonly strips: readonly Strip[];
}

/** Roof build-up over the rafters. */
export function roofDeadOf(frame: Frame): RoofDead | undefined {
  if (!frame.roof) return undefined;
  const { covering, deck, ceiling } = frame.roof;
  return roofDead({
    covering: covering && {
      kind: covering.kind,
      ...(covering.weight === undefined ? {} : { weight: covering.weight }),
    },
    // purlins that are timbers of the frame weigh what timbers weigh
    deck:
      deck && !(deck.kind === "purlins" && frame.members.some(({ kind }) => kind === "purlin"))
        ? {
            kind: deck.kind,
            ...(deck.thickness === undefined ? {} : { thickness: inches(deck.thickness) }),
            ...(deck.spacing === undefined ? {} : { spacing: inches(deck.spacing) }),
          }
        : undefined,
    ceiling:
      ceiling === undefined || ceiling.kind === "none"
        ? undefined
        : { kind: ceiling.kind, ...(ceiling.weight === undefined ? {} : { weight: ceiling.weight }) },
  });
}

/**
 * All that weighs. At its most: green timber, the heavier end of what roofing weighs. At its least, which alone may be
 * counted on against uplift (ASCE 7 commentary C3.1, from memory: no more than is surely there): dry timber of the lightest
 * species of its name, the lighter end of the roofing.
 */
function deadLoad(
  model: Model,
  roof: RoofDead | undefined,
  strips: readonly Strip[],
  floors: readonly FloorPlan[],
  enclosure: FrameEnclosure,
  end: DeadEnd,
): BasicLoad {
  const densityOf = end === "most" ? timberDensity : leastTimberDensity;
  const own = model.timbers.flatMap((t) => {
    const density = densityOf(t.class);
    return density === undefined ? [] : [ownWeight(t, density.value)];
  });
  const covered = roof && (end === "most" ? roof.total : roof.least);
  return {
    ...(end === "most" ? { id: "D" } : { id: "D/least", choice: { dead: end } }),
    kind: "D",
    vertical: true,
    loads: [
      ...own,
      ...floorWeights(floors, end),
      ...sideLoads(enclosure, end),
      ...(covered === undefined ? [] : strips.map((s) => onSlopeArea(s, covered))),
    ],
  };
}

/** Roof live load of each timber that carries roof: the more it carries, the less on each square foot. */
function roofLivesOf(frame: Frame, strips: readonly Strip[]): StripLive[] {
  const areas = new Map<string, number>();
  for (const { slope, width, timber, from, to } of strips) {
    const long = Math.max(0, Math.min(to, timber.span) - Math.max(from, 0));
    areas.set(timber.id, (areas.get(timber.id) ?? 0) + (width * long * Math.cos(slope.angle)) / 144);
  }
  return strips.map((strip) => {
    const area = areas.get(strip.timber.id) ?? 0;
    return { strip, area, live: roofLive(area, pitchOf(frame, strip.slope)) };
  });
}

function liveLoads(lives: readonly StripLive[]): BasicLoad[] {
  const loads = lives.flatMap(({ strip, live }) => onLevelArea(strip, live.value, live.value));
  return loads.length > 0 ? [{ id: "Lr", kind: "Lr", vertical: true, loads }] : [];
}

/** @returns every basic load of the frame, and what the site leaves open */
export function basicLoads(model: Model): BasicLoads {
  const { frame } = model;
  const strips = roofStrips(model);
  const floors = floorPlans(model);
  const roof = roofDeadOf(frame);
  const enclosure = enclosureOfFrame(model);
  const weigh = (end: DeadEnd): BasicLoad => deadLoad(model, roof, strips, floors, enclosure, end);
  const snow = slopeSnow(model);
  const live = roofLivesOf(frame, strips);
  const wind = windLoads(model, strips, enclosure);
  const holders = holdersOf(model);
  return {
    all: [
      weigh("most"),
      ...(wind ? [weigh("least")] : []),
      ...floorLives(floors, holders),
      ...(snow ? snowLoads(snow, strips) : []),
      ...liveLoads(live),
      ...partialRoof(model, live, snow, holders),
      ...(wind?.loads ?? []),
    ],
    gaps: loadGaps(model, { snow: snow !== undefined, wind: wind !== undefined, floors }),
    snow,
    wind: wind?.wind,
    enclosure: wind?.enclosure,
    roof,
    live,
    strips,
  };
}
