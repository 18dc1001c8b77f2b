/**
 * What a roof's deck carries between its supports: boards and purlins as simple spans, panels by the loads of their
 * rating. What bends a deck is the part of a load square to the slope, cos² θ of one that is told by its level projection;
 * the part along the slope goes into the deck's own plane, which is far stiffer.
 *
 * The file names no wood for a deck: that of what carries it is taken, as No.2. Table 4A begins at 2 in (1 1/2 in dressed);
 * thinner boards get its values, which only grow with less depth. Boards count as a strip 12 in wide, at which C_F C_fu is
 * the least of all boards up to 12 in; none shares load with its neighbors (no C_r).
 *
 * A person: 300 lb on any 30 in by 30 in (ASCE 7 Table 4.3-1, roof surfaces subject to maintenance workers, and section
 * 4.4; memory), with the duration of roof live load. No limit of deflection holds for it.
 */
import type { Roof } from "../frame/roof.ts";
import { asdCombinations, durationFactor } from "../loads/combinations.ts";
import { PURLIN_FACE, USUAL_PURLIN_SPACING, USUAL_THICKNESS } from "../loads/dead.ts";
import { roofLive } from "../loads/roof-live.ts";
import type { Snow } from "../loads/snow.ts";
import type { DeflectionLimits } from "../members/deflection.ts";
import { deflectionRule, limitsOf } from "../members/deflection-limits.ts";
import { checkSimpleSpan, longestSpan, type SimpleSpanInput } from "../members/simple-span.ts";
import type { Utilisation } from "../members/utilisation.ts";
import type { Model, RoofSlope } from "../model/model.ts";
import { inches } from "../quantity/length.ts";
import { roofDeadOf } from "../statics/basic-loads.ts";
import { pitchOf, snowOn } from "../statics/snow-loads.ts";
import { findSpecies } from "../wood/species.ts";
import { type TimberValues, timberValues } from "../wood/stated-values.ts";
import { carrierSpacing, deckCarriers } from "./deck-carriers.ts";
import { type PanelRule, panelByThickness, panelReserve } from "./deck-spans.ts";
import { isSpaced } from "./rafter-results.ts";

/** lb, and the side of the square that it stands on, in */
export const PERSON = { load: 300, side: 30 } as const;

/** in: width of a strip of boards */
const STRIP = 12;
/** in: of dimension lumber, nominal 2 to 4 in thick */
const [LEAST_THICK, MOST_THICK] = [1.5, 4] as const;

export type DeckLoad = "snow" | "live" | "person";

/** Loads of a deck in words; a person with its `{weight}`. */
export const DECK_LOADS: Readonly<Record<DeckLoad, string>> = {
  snow: "snow",
  live: "roof live load",
  person: "a person of {weight} on it",
};

export interface DeckUse extends Utilisation {
  readonly load: DeckLoad;
  /** `D + S` */
  readonly combination: string;
}

interface Spanned {
  readonly slope: RoofSlope;
  /** in, center to center of what carries it, along the boards */
  readonly span: number;
  readonly thickness: number;
}

export interface DeckStrip extends Spanned {
  readonly kind: "boards" | "purlins";
  /** in: of a strip of boards, or of one purlin */
  readonly breadth: number;
  readonly wood: TimberValues;
  /** as the trade writes it */
  readonly species: string;
  /** the worst of each kind of check, the worst first */
  readonly uses: readonly DeckUse[];
  /** under each of its loads */
  readonly inputs: readonly SimpleSpanInput[];
}

export interface DeckPanels extends Spanned {
  readonly kind: "panels";
  readonly rule: PanelRule;
  readonly load: "snow" | "live";
  /** psf on the slope: snow or roof live load alone, and with the deck and what lies on it */
  readonly live: number;
  readonly total: number;
  /** (widest spacing ÷ spacing)² */
  readonly reserve: number;
}

export type DeckResult = DeckStrip | DeckPanels;

/** The worst of every snow case anywhere on a slope, at the level of allowable stress: psf of the level projection. */
function mostSnow({ cases, asdFactor }: Snow): number {
  const most = cases.map(({ span, overhang, drift }) => Math.max(span + (drift?.psf ?? 0), overhang));
  return Math.max(0, ...most) * asdFactor.value;
}

/** psf of the slope without what hangs below the rafters. */
function deadOn(model: Model): number | undefined {
  const dead = roofDeadOf(model.frame);
  const layers = dead?.layers.filter(({ what }) => !what.endsWith("-ceiling"));
  return layers?.reduce((sum, { value }) => sum + value, 0);
}

interface Loaded {
  readonly cos: number;
  /** psf square to the slope */
  readonly dead: number;
  readonly variable: readonly { readonly load: "snow" | "live"; readonly psf: number }[];
}

function loadsOn(model: Model, slope: RoofSlope): Loaded | undefined {
  const snow = snowOn(model, slope);
  const dead = deadOn(model);
  if (!snow || dead === undefined) return undefined;
  const cos = Math.cos(slope.angle);
  const live = roofLive(0, pitchOf(model.frame, slope)).value;
  const variable = [
    { load: "snow" as const, psf: mostSnow(snow) * cos * cos },
    { load: "live" as const, psf: live * cos * cos },
  ];
  return { cos, dead: dead * cos, variable: variable.filter(({ psf }) => psf > 0) };
}

/** Which combination of the standard a load is in. */
const COMBINATION = { snow: "3-S", live: "3-Lr", person: "3-Lr" } as const;

function stripResult(
  model: Model,
  deck: NonNullable<Roof["deck"]>,
  kind: DeckStrip["kind"],
  spanned: Spanned,
): DeckStrip | undefined {
  const { slope, span, thickness } = spanned;
  const { frame } = model;
  const loads = loadsOn(model, slope);
  const timber = deckCarriers(model, slope)[0];
  const species = timber?.class?.species?.text;
  const edition = frame.basis.loads;
  if (!loads || species === undefined || !edition) return undefined;
  const apart = deck.spacing === undefined ? USUAL_PURLIN_SPACING : inches(deck.spacing);
  const [breadth, share] = kind === "boards" ? [STRIP, STRIP] : [PURLIN_FACE, apart];
  const wood = timberValues({
    species,
    grade: undefined,
    width: Math.min(Math.max(thickness, LEAST_THICK), MOST_THICK),
    depth: Math.max(breadth, LEAST_THICK),
    own: new Map(),
    because: undefined,
  });
  if (wood.kind === "none") return undefined;
  const seasoning = timber?.class?.seasoning ?? "green";
  const plf = (psf: number): number => (psf * share) / 12;
  const texts = new Map(asdCombinations(edition).map(({ id, text }) => [id, text]));
  const limits = limitsOf(deflectionRule(frame.site.snow?.thermal, frame.roof?.ceiling?.kind, false));
  const input = (load: DeckLoad, psf: number, bends: DeflectionLimits): SimpleSpanInput => ({
    values: wood.values,
    conditions: {
      section: { sizeClass: wood.sizeClass, group: wood.group, breadth, depth: thickness },
      grade: wood.grade,
      duration: durationFactor(load === "snow" ? "S" : "Lr"),
      wet: seasoning === "green",
    },
    deadPlf: plf(loads.dead),
    livePlf: plf(psf),
    ...(load === "person"
      ? { patch: { load: PERSON.load * Math.min(1, share / PERSON.side) * loads.cos, length: PERSON.side } }
      : {}),
    span,
    unbraced: 0,
    seasoning,
    limits: bends,
  });
  const inputs = [
    ...loads.variable.map(({ load, psf }) => [load, input(load, psf, limits)] as const),
    ["person", input("person", 0, {})] as const,
  ];
  const all = inputs.flatMap(([load, one]) =>
    checkSimpleSpan(one).uses.map(
      (use): DeckUse => ({ ...use, load, combination: texts.get(COMBINATION[load]) ?? "" }),
    ),
  );
  const sorted = [...all].sort((a, b) => b.ratio - a.ratio);
  return {
    ...spanned,
    kind,
    breadth,
    wood,
    species: findSpecies(species)?.name ?? species,
    uses: sorted.filter((use, i) => sorted.findIndex(({ what }) => what === use.what) === i),
    inputs: inputs.map(([, one]) => one),
  };
}

/** @returns in, how far a strip reaches under all of its loads; undefined where no span passes */
export function longestDeckSpan({ inputs }: DeckStrip): number | undefined {
  const reaches = inputs.map((one) => longestSpan(one));
  const known = reaches.filter((reach) => reach !== undefined);
  return known.length === reaches.length ? Math.min(...known) : undefined;
}

function panelResult(model: Model, spanned: Spanned): DeckPanels | undefined {
  const { slope, span, thickness } = spanned;
  const rule = panelByThickness(thickness);
  const loads = loadsOn(model, slope);
  const most = loads?.variable.reduce((a, b) => (b.psf > a.psf ? b : a));
  // farther apart than its rating, or thinner than any, it has a finding of its own
  if (!rule || !loads || !most || span > rule.held + 1e-6) return undefined;
  const { load, psf } = most;
  const total = psf + loads.dead;
  return { ...spanned, kind: "panels", rule, load, live: psf, total, reserve: panelReserve(rule, span) };
}

/** @returns one for each slope whose deck, supports and loads are known */
export function deckResults(model: Model): DeckResult[] {
  const deck = model.frame.roof?.deck;
  const slopes = model.roof?.slopes;
  if (!deck || !slopes || !model.frame.roof || !isSpaced(model.frame.roof)) return [];
  const { kind } = deck;
  const thickness = deck.thickness === undefined ? USUAL_THICKNESS[kind] : inches(deck.thickness);
  // purlins that are timbers of their own are checked as such
  if (!(thickness > 0) || (kind === "purlins" && model.timbers.some((t) => t.kind === "purlin"))) return [];
  return slopes.flatMap((slope): DeckResult[] => {
    const apart = carrierSpacing(model, slope);
    if (apart === undefined || !(apart > 0)) return [];
    const along = kind === "boards" && deck.laid === "diagonal" ? Math.SQRT2 : 1;
    const spanned = { slope, span: apart * along, thickness };
    const result = kind === "panels" ? panelResult(model, spanned) : stripResult(model, deck, kind, spanned);
    return result ? [result] : [];
  });
}
