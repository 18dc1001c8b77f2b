/**
 * What a roof's deck carries between its supports. What bends it is the part of a load square to the slope, cos² θ of one
 * that is told by its level projection; the part along the slope goes into the deck's own plane, which is far stiffer.
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
import type { Model, RoofSlope } from "../model/model.ts";
import { inches } from "../quantity/length.ts";
import { roofDeadOf } from "../statics/basic-loads.ts";
import { pitchOf, snowOn } from "../statics/snow-loads.ts";
import { carrierSpacing, deckCarriers } from "./deck-carriers.ts";
import { panelByThickness, panelReserve } from "./deck-spans.ts";
import {
  type DeckLoad,
  type DeckPanels,
  type DeckResult,
  type DeckStrip,
  deckStrip,
  PERSON,
  type Spanned,
  STRIP,
  type StripLoad,
} from "./deck-strip.ts";
import { isSpaced } from "./rafter-results.ts";

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

interface Variable {
  readonly load: "snow" | "live";
  readonly psf: number;
}

interface Loaded {
  readonly cos: number;
  /** psf square to the slope */
  readonly dead: number;
  readonly variable: readonly Variable[];
}

function loadsOn(model: Model, slope: RoofSlope): Loaded | undefined {
  const snow = snowOn(model, slope);
  const dead = deadOn(model);
  if (!snow || dead === undefined) return undefined;
  const cos = Math.cos(slope.angle);
  const live = roofLive(0, pitchOf(model.frame, slope)).value;
  const variable: Variable[] = [
    { load: "snow", psf: mostSnow(snow) * cos * cos },
    { load: "live", psf: live * cos * cos },
  ];
  return { cos, dead: dead * cos, variable: variable.filter(({ psf }) => psf > 0) };
}

/** Which combination of the standard a load is in, and the load whose duration it has. */
const COMBINATION = { snow: ["3-S", "S"], live: ["3-Lr", "Lr"], person: ["3-Lr", "Lr"] } as const;

function stripResult(
  model: Model,
  deck: NonNullable<Roof["deck"]>,
  kind: DeckStrip["kind"],
  slope: RoofSlope,
  spanned: Spanned,
): DeckStrip | undefined {
  const { frame } = model;
  const loads = loadsOn(model, slope);
  const edition = frame.basis.loads;
  if (!loads || !edition) return undefined;
  const apart = deck.spacing === undefined ? USUAL_PURLIN_SPACING : inches(deck.spacing);
  const [breadth, share] = kind === "boards" ? [STRIP, STRIP] : [PURLIN_FACE, apart];
  const plf = (psf: number): number => (psf * share) / 12;
  const texts = new Map(asdCombinations(edition).map(({ id, text }) => [id, text]));
  const limits = limitsOf(deflectionRule(frame.site.snow?.thermal, frame.roof?.ceiling?.kind, false));
  const one = (
    load: Exclude<DeckLoad, "floor">,
    psf: number,
    bends: DeflectionLimits,
    patch?: StripLoad["patch"],
  ): StripLoad => {
    const [id, lasts] = COMBINATION[load];
    const known = { load, combination: texts.get(id) ?? "", duration: durationFactor(lasts) };
    return { ...known, plf: plf(psf), limits: bends, ...(patch ? { patch } : {}) };
  };
  const person = PERSON.load * Math.min(1, share / PERSON.side) * loads.cos;
  return deckStrip({
    ...spanned,
    kind,
    breadth,
    carrier: deckCarriers(model, slope)[0],
    deadPlf: plf(loads.dead),
    loads: [
      ...loads.variable.map(({ load, psf }) => one(load, psf, limits)),
      one("person", 0, {}, { load: person, length: PERSON.side }),
    ],
  });
}

function panelResult(model: Model, slope: RoofSlope, spanned: Spanned): DeckPanels | undefined {
  const { span, thickness } = spanned;
  const rule = panelByThickness(thickness);
  const loads = loadsOn(model, slope);
  const most = loads?.variable.reduce<Variable | undefined>(
    (a, b) => (a && a.psf >= b.psf ? a : b),
    undefined,
  );
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
  const path = `${deck.path}/${deck.thickness === undefined ? "kind" : "thickness"}`;
  // purlins that are timbers of their own are checked as such
  if (!(thickness > 0) || (kind === "purlins" && model.timbers.some((t) => t.kind === "purlin"))) return [];
  return slopes.flatMap((slope): DeckResult[] => {
    const apart = carrierSpacing(model, slope);
    if (apart === undefined || !(apart > 0)) return [];
    const along = kind === "boards" && deck.laid === "diagonal" ? Math.SQRT2 : 1;
    const spanned = { on: { wall: slope.wall }, path, span: apart * along, thickness };
    const result =
      kind === "panels" ? panelResult(model, slope, spanned) : stripResult(model, deck, kind, slope, spanned);
    return result ? [result] : [];
  });
}
