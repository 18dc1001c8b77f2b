/** The rafters of each slope, checked as beams under their own weight, the roof, the snow and the roof live load. */
import type { Roof } from "../frame/roof.ts";
import type { RoofDead } from "../loads/dead.ts";
import { type RoofLive, roofLive } from "../loads/roof-live.ts";
import type { Snow } from "../loads/snow.ts";
import {
  type DeflectionRule,
  type DeflectionShare,
  deflectionRule,
  deflectionShare,
  limitsOf,
} from "../members/deflection-limits.ts";
import { checkRafter, type RafterCheck, type RafterInput, type RafterUse } from "../members/rafter.ts";
import type { Model, RoofSlope } from "../model/model.ts";
import { roofDeadOf } from "../statics/basic-loads.ts";
import { pitchOf, snowOn } from "../statics/snow-loads.ts";
import { densityOf } from "../wood/timber-weight.ts";

export interface RafterResult {
  readonly slope: RoofSlope;
  readonly input: RafterInput;
  readonly check: RafterCheck;
  readonly dead: RoofDead;
  readonly snow: Snow;
  readonly live: RoofLive;
  /** by what its limits of deflection were chosen */
  readonly deflection: DeflectionRule;
}

const DEFLECTS: ReadonlyMap<RafterUse["what"], "live" | "total"> = new Map([
  ["live-deflection", "live"],
  ["total-deflection", "total"],
  ["tip-live-deflection", "live"],
  ["tip-total-deflection", "total"],
]);

/** @returns what its limit is a share of; undefined for stresses */
export function rafterShare({ deflection }: RafterResult, use: RafterUse): DeflectionShare | undefined {
  const load = DEFLECTS.get(use.what);
  return load && deflectionShare(deflection, load, use.limit);
}

/** Why the rafters of the roof could not be checked, so that nobody takes silence for safety. */
export type SkippedBecause = "no-rafters" | "loads-missing" | "wood-unknown";

export interface RafterResults {
  readonly rafters: readonly RafterResult[];
  readonly skipped: readonly { readonly what: "rafters"; readonly because: SkippedBecause }[];
}

/** Square feet of roof, in plan, that one rafter carries. */
function areaOf(slope: RoofSlope): number {
  return ((slope.span + slope.eaveOverhang) * slope.spacing) / 144;
}

function checkSlope(model: Model, roof: Roof, slope: RoofSlope): RafterResult | SkippedBecause {
  const { frame } = model;
  const rafter = slope.rafters[0];
  if (!rafter) return "no-rafters";
  const pitch = pitchOf(frame, slope);
  const snow = snowOn(model, slope);
  if (!snow || !frame.basis.loads) return "loads-missing";
  const density = densityOf(rafter.class);
  const species = rafter.class?.species?.text;
  const dead = roofDeadOf(frame);
  if (density === undefined || species === undefined || rafter.class?.unreadValues || !dead)
    return "wood-unknown";
  const live = roofLive(areaOf(slope), pitch);
  const nailed = roof.deck?.kind === "boards" || roof.deck?.kind === "panels";
  const deflection = deflectionRule(frame.site.snow?.thermal, roof.ceiling?.kind, false);
  const input: RafterInput = {
    width: rafter.width,
    depth: rafter.depth,
    species,
    grade: rafter.class?.grade?.text,
    seasoning: rafter.class?.seasoning ?? "green",
    own: rafter.class?.values ?? new Map(),
    because: rafter.class?.because,
    span: slope.span,
    overhang: slope.eaveOverhang + slope.bearingRun,
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
    limits: limitsOf(deflection),
  };
  const check = checkRafter(input);
  return check.kind === "checked" ? { slope, input, check, dead, snow, live, deflection } : "wood-unknown";
}

/** Without spacing and count nobody knows how far apart they stand; what is missing has its own finding. */
export function isSpaced({ rafters }: Roof): boolean {
  return rafters === undefined || rafters.spacing !== undefined || rafters.count !== undefined;
}

/** @returns one result for each slope, or why there is none */
export function rafterResults(model: Model): RafterResults {
  const roof = model.frame.roof;
  if (!roof || !model.roof || !isSpaced(roof)) return { rafters: [], skipped: [] };
  const all = model.roof.slopes.map((slope) => checkSlope(model, roof, slope));
  return {
    rafters: all.filter((r): r is RafterResult => typeof r !== "string"),
    skipped: [...new Set(all.filter((r) => typeof r === "string"))].map((because) => ({
      what: "rafters" as const,
      because,
    })),
  };
}
