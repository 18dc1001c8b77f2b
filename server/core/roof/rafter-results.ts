/** The rafters of each slope, checked as beams under their own weight, the roof, the snow and the roof live load. */
import type { Frame, Roof, TimberClass } from "../frame/frame.ts";
import { type RoofDead, roofDead } from "../loads/dead.ts";
import { type RoofLive, roofLive } from "../loads/roof-live.ts";
import { roofSnow, type Snow } from "../loads/snow.ts";
import type { Pitch } from "../loads/snow-factors.ts";
import { OPEN_ROOF_LIMITS } from "../members/deflection.ts";
import { checkRafter, type RafterCheck, type RafterInput } from "../members/rafter.ts";
import type { Model, RoofSlope } from "../model/model.ts";
import { inches } from "../quantity/length.ts";
import { weight } from "../wood/weight.ts";

export interface RafterResult {
  readonly slope: RoofSlope;
  readonly input: RafterInput;
  readonly check: RafterCheck;
  readonly dead: RoofDead;
  readonly snow: Snow;
  readonly live: RoofLive;
}

/** Why the rafters of the roof could not be checked, so that nobody takes silence for safety. */
export type SkippedBecause = "no-rafters" | "loads-missing" | "wood-unknown";

export interface RafterResults {
  readonly rafters: readonly RafterResult[];
  readonly skipped: readonly { readonly what: "rafters"; readonly because: SkippedBecause }[];
}

/** The pitch as it was typed, so that limits on a pitch are compared as such; a derived one otherwise. */
function pitchOf(roof: Roof, slope: RoofSlope): Pitch {
  const typed = roof.pitch;
  return typed && Math.abs(typed.rise / typed.run - slope.slope) < 1e-9
    ? typed
    : { rise: slope.slope, run: 1 };
}

function snowOn(frame: Frame, roof: Roof, slope: RoofSlope, pitch: Pitch): Snow | undefined {
  const { basis, site } = frame;
  const { snow, wind } = site;
  const { loads, riskCategory } = basis;
  if (!loads || !riskCategory || !wind?.exposure) return undefined;
  if (snow?.ground === undefined || !snow.exposure || !snow.thermal) return undefined;
  return roofSnow({
    edition: loads,
    riskCategory,
    ground: snow.ground,
    terrain: wind.exposure,
    exposure: snow.exposure,
    thermal: snow.thermal,
    slides: snow.slides,
    roof: roof.kind,
    pitch,
    eaveToRidge: (slope.run + slope.eaveOverhang) / 12,
    simpleRafters: true,
  });
}

/** lb/ft³: as the file says, else as recorded for the wood. */
export function densityOf(timberClass: TimberClass | undefined): number | undefined {
  if (timberClass?.weight !== undefined) return timberClass.weight;
  const species = timberClass?.species?.text;
  return species === undefined ? undefined : weight(species, timberClass?.seasoning ?? "green")?.value;
}

function deadOn(roof: Roof): RoofDead {
  const { covering, deck } = roof;
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

/** Square feet of roof, in plan, that one rafter carries. */
function areaOf(slope: RoofSlope): number {
  return ((slope.span + slope.eaveOverhang) * slope.spacing) / 144;
}

function checkSlope(frame: Frame, roof: Roof, slope: RoofSlope): RafterResult | SkippedBecause {
  const rafter = slope.rafters[0];
  if (!rafter) return "no-rafters";
  const pitch = pitchOf(roof, slope);
  const snow = snowOn(frame, roof, slope, pitch);
  if (!snow || !frame.basis.loads) return "loads-missing";
  const density = densityOf(rafter.class);
  const species = rafter.class?.species?.text;
  if (density === undefined || species === undefined) return "wood-unknown";
  const dead = deadOn(roof);
  const live = roofLive(areaOf(slope), pitch);
  const nailed = roof.deck?.kind === "boards" || roof.deck?.kind === "panels";
  const input: RafterInput = {
    width: rafter.width,
    depth: rafter.depth,
    species,
    grade: rafter.class?.grade?.text,
    seasoning: rafter.class?.seasoning ?? "green",
    own: rafter.class?.values ?? new Map(),
    because: rafter.class?.because,
    span: slope.span,
    overhang: slope.eaveOverhang + slope.seat / 2,
    pitch,
    spacing: slope.spacing,
    count: slope.rafters.length,
    loadSharingDeck: nailed,
    topHeld: nailed,
    deadPsf: dead.total,
    density,
    edition: frame.basis.loads,
    snow,
    roofLivePsf: live.value,
    notch: slope.seatDepth,
    limits: OPEN_ROOF_LIMITS,
  };
  const check = checkRafter(input);
  return check.kind === "checked" ? { slope, input, check, dead, snow, live } : "wood-unknown";
}

/** @returns one result for each slope, or why there is none */
export function rafterResults(model: Model): RafterResults {
  const roof = model.frame.roof;
  if (!roof || !model.roof) return { rafters: [], skipped: [] };
  const all = model.roof.slopes.map((slope) => checkSlope(model.frame, roof, slope));
  return {
    rafters: all.filter((r): r is RafterResult => typeof r !== "string"),
    skipped: [...new Set(all.filter((r) => typeof r === "string"))].map((because) => ({
      what: "rafters" as const,
      because,
    })),
  };
}
