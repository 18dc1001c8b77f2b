/**
 * Boards and purlins between their supports, and panels by their rating: what roofs and floors have in
 * common.
 *
 * The file names no wood for a deck: that of what carries it is taken, as No.2. Table 4A begins at 2 in (1 1/2 in dressed);
 * thinner boards get its values, which only grow with less depth. Boards count as a strip 12 in wide, at which C_F C_fu is
 * the least of all boards up to 12 in; none shares load with its neighbors (no C_r). How long they are the file does not
 * say: they are taken to run on over a support, beside which they have the most shear.
 */
import type { Pointer } from "../frame/frame.ts";
import type { DeflectionLimits } from "../members/deflection.ts";
import { checkSimpleSpan, longestSpan, type SimpleSpanInput } from "../members/simple-span.ts";
import type { Utilisation } from "../members/utilisation.ts";
import type { Timber } from "../model/model.ts";
import type { Factor } from "../sourced.ts";
import { findSpecies } from "../wood/species.ts";
import { type TimberValues, timberValues } from "../wood/stated-values.ts";
import type { PanelRule } from "./deck-spans.ts";

/** lb, and the side of the square that it stands on, in */
export const PERSON = { load: 300, side: 30 } as const;

/** in: width of a strip of boards */
export const STRIP = 12;
/** in: of dimension lumber, nominal 2 to 4 in thick */
const [LEAST_THICK, MOST_THICK] = [1.5, 4] as const;

export type DeckLoad = "snow" | "live" | "person" | "floor";

/** Loads of a deck in words; a person with its `{weight}`. */
export const DECK_LOADS: Readonly<Record<DeckLoad, string>> = {
  snow: "snow",
  live: "roof live load",
  person: "a person of {weight} on it",
  floor: "floor live load",
};

export interface DeckUse extends Utilisation {
  readonly load: DeckLoad;
  /** `D + S` */
  readonly combination: string;
}

/** A deck between two of its supports. */
export interface Spanned {
  readonly on: { readonly wall: string } | { readonly floor: string };
  /** the value that says how thick it is, else what it is */
  readonly path: Pointer;
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

/** One load on a strip. */
export interface StripLoad {
  readonly load: DeckLoad;
  readonly combination: string;
  /** C_D */
  readonly duration: Factor;
  readonly plf: number;
  readonly patch?: SimpleSpanInput["patch"];
  readonly limits: DeflectionLimits;
}

export interface StripInput extends Spanned {
  readonly kind: DeckStrip["kind"];
  readonly breadth: number;
  /** what carries it */
  readonly carrier: Timber | undefined;
  readonly deadPlf: number;
  readonly loads: readonly StripLoad[];
}

/** @returns undefined where the wood of what carries it has no values */
export function deckStrip(strip: StripInput): DeckStrip | undefined {
  const { breadth, carrier, deadPlf, loads, ...spanned } = strip;
  const species = carrier?.class?.species?.text;
  if (species === undefined) return undefined;
  const wood = timberValues({
    species,
    grade: undefined,
    width: Math.min(Math.max(strip.thickness, LEAST_THICK), MOST_THICK),
    depth: Math.max(breadth, LEAST_THICK),
    own: new Map(),
    because: undefined,
  });
  if (wood.kind === "none") return undefined;
  const seasoning = carrier?.class?.seasoning ?? "green";
  const inputs = loads.map(
    ({ duration, plf, patch, limits }): SimpleSpanInput => ({
      values: wood.values,
      conditions: {
        section: { sizeClass: wood.sizeClass, group: wood.group, breadth, depth: strip.thickness },
        grade: wood.grade,
        duration,
        wet: seasoning === "green",
      },
      deadPlf,
      livePlf: plf,
      ...(patch ? { patch } : {}),
      span: strip.span,
      unbraced: 0,
      runsOn: true,
      seasoning,
      limits,
    }),
  );
  const all = inputs.flatMap((input, i) => {
    const { load = "live", combination = "" } = loads[i] ?? {};
    return checkSimpleSpan(input).uses.map((use): DeckUse => ({ ...use, load, combination }));
  });
  const sorted = [...all].sort((a, b) => b.ratio - a.ratio);
  return {
    ...spanned,
    breadth,
    wood,
    species: findSpecies(species)?.name ?? species,
    uses: sorted.filter((use, i) => sorted.findIndex(({ what }) => what === use.what) === i),
    inputs,
  };
}

/** @returns in, how far a strip reaches under all of its loads; undefined where no span passes */
export function longestDeckSpan({ inputs }: DeckStrip): number | undefined {
  const reaches = inputs.map((one) => longestSpan(one));
  const known = reaches.filter((reach) => reach !== undefined);
  return known.length === reaches.length ? Math.min(...known) : undefined;
}
