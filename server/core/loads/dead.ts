/**
 * Weight of the roof build-up over the rafters, psf of the sloped surface.
 */
import type { CeilingKind, CoveringKind } from "../frame/roof.ts";
import type { Note } from "../note.ts";
import { given, leastCertain, type Sourced, type ValueStatus } from "../sourced.ts";
import type { Pitch } from "./snow-factors.ts";

/** Lining below the rafters that weighs something. */
type Ceiling = Exclude<CeilingKind, "none">;

type Deck = "boards" | "panels" | "purlins";

export interface RoofBuildUp {
  /** `weight` in psf where the file states it */
  readonly covering: { readonly kind: CoveringKind; readonly weight?: number } | undefined;
  /** thickness in in; spacing of purlins in in, center to center */
  readonly deck: { readonly kind: Deck; readonly thickness?: number; readonly spacing?: number } | undefined;
  /** lining that hangs on the rafters; `weight` in psf where the file states it */
  readonly ceiling?: { readonly kind: Ceiling; readonly weight?: number } | undefined;
}

/** One layer; `what` is a stable id, its words are the reader's. */
export interface DeadLayer extends Sourced {
  readonly what: CoveringKind | Deck | "underlayment" | `${Ceiling}-ceiling`;
  /** what it is made of, where the kind alone does not say it */
  readonly note?: Note;
  /** the lightest that goes by its name: all that surely holds the roof down */
  readonly least: Sourced;
}

/** Which end of what a thing may weigh: the most presses on what is below, only the least holds it down in the wind. */
export type DeadEnd = "most" | "least";

/** psf at one end. */
export function atEnd(layer: Sourced & Pick<DeadLayer, "least">, end: DeadEnd): number {
  return end === "most" ? layer.value : layer.least.value;
}

export interface RoofDead {
  readonly layers: readonly DeadLayer[];
  /** psf of the sloped surface */
  readonly total: number;
  readonly status: ValueStatus;
  /** of the lightest layers, psf of the sloped surface */
  readonly least: number;
}

const C31 = "ASCE 7 commentary Table C3.1-1";
const KIDDER = "Kidder, Building Construction and Superintendence, Table IV";

const ROOFWT = "published list of roofing weights";

/** psf; where a source gives a range, its heavier end */
const COVERING: Readonly<Record<CoveringKind, Sourced>> = {
  "standing-seam": { value: 1.0, status: "published", source: KIDDER },
  "ribbed-steel": {
    value: 0.75,
    status: "derived",
    source: "29 ga sheet, 40.8 psf per in of steel, 7 percent for the ribs",
  },
  "corrugated-steel": { value: 1.0, status: "published", source: `${KIDDER}, 26 ga` },
  "asphalt-shingles": {
    value: 3.05,
    status: "published",
    source: `${ROOFWT}, laminated shingles`,
  },
  "wood-shingles": { value: 3.0, status: "memory", source: C31 },
  "wood-shakes": {
    value: 5.6,
    status: "published",
    source: "engineer letter in a public record, cedar shakes, wet",
  },
  slate: { value: 10.0, status: "memory", source: `${C31}, 1/4 in` },
  "clay-tile": { value: 18, status: "published", source: "US Army TI 809-53 Table 8-1, flat tile" },
  "roll-roofing": { value: 1.0, status: "memory", source: `${C31}, three-ply ready roofing` },
};

/** psf; the lighter end of each range: what surely holds the roof down in the wind */
const COVERING_LEAST: Readonly<Record<CoveringKind, Sourced>> = {
  "standing-seam": {
    value: 0.9,
    status: "derived",
    source: "26 ga sheet without its seams",
  },
  "ribbed-steel": COVERING["ribbed-steel"],
  "corrugated-steel": COVERING["ribbed-steel"],
  "asphalt-shingles": { value: 1.95, status: "published", source: `${ROOFWT}, three-tab shingles` },
  "wood-shingles": { value: 2.5, status: "published", source: `${KIDDER}, common shingles` },
  "wood-shakes": {
    value: 1.6,
    status: "published",
    source: "engineer letter in a public record, cedar shakes, dry, light",
  },
  slate: { value: 7.0, status: "memory", source: `${C31}, 3/16 in` },
  "clay-tile": { value: 12, status: "published", source: "US Army TI 809-53 Table 8-1, flat tile, light" },
  "roll-roofing": { value: 0.6, status: "published", source: `${KIDDER}, ready roofing, light` },
};

/** One layer of No.30 felt, 26 lb per 100 ft² (ASTM D226 Type II). */
const UNDERLAYMENT: Sourced = {
  value: 0.26,
  status: "memory",
  source: "ASTM D226 Type II, one layer of No.30 felt",
};

const UNDERLAYMENT_LEAST: Sourced = { value: 0.03, status: "uncertain", source: "synthetic underlayment" };

/** psf */
const CEILING: Readonly<Record<Ceiling, Sourced & { readonly note: Note }>> = {
  plaster: { value: 8, status: "memory", source: C31, note: "gypsum plaster on wood lath" },
  plasterboard: { value: 2.75, status: "memory", source: C31, note: "gypsum board, 5/8 in" },
  boards: { value: 2.25, status: "memory", source: C31, note: "boards, 3/4 in" },
};

/** psf; the thinnest that is usual. A plaster ceiling has no lighter one in the source. */
const CEILING_LEAST: Readonly<Record<Ceiling, Sourced>> = {
  plaster: CEILING.plaster,
  plasterboard: { value: 2.2, status: "memory", source: `${C31}, gypsum board, 1/2 in` },
  boards: {
    value: 1.53,
    status: "derived",
    source: "boards of 3/4 in, dry eastern white pine (Wood Handbook)",
  },
};

/** psf per inch of thickness */
const BOARDS = 3.0;
const PANELS = 3.2;
/**
 * psf per inch of thickness: the lightest softwood that boards are usually sawn from, 62.4 × 0.35 × 1.12 lb/ft³ (common
 * practice), and light plywood
 */
const BOARDS_LEAST: Sourced = {
  value: 2.04,
  status: "derived",
  source: "dry eastern white pine (Wood Handbook)",
};
const PANELS_LEAST: Sourced = {
  value: 2.5,
  status: "published",
  source: "engineer letter in a public record, plywood 5/8 in of 50 lb a sheet",
};
/** in; what is laid at the thinnest where the file gives no thickness (common practice) */
const THINNEST: Readonly<Record<Deck, number>> = { boards: 0.75, panels: 0.4375, purlins: 0.75 };
/** in; purlins are 2x4 laid flat */
export const PURLIN_FACE = 3.5;
export const USUAL_THICKNESS: Readonly<Record<Deck, number>> = { boards: 1, panels: 0.625, purlins: 1.5 };
export const USUAL_PURLIN_SPACING = 24;

/**
 * Layers of a roof from the outside in. A closed deck carries one layer of felt under the covering; purlins carry none.
 * @returns psf of the sloped surface
 */
export function roofDead(buildUp: RoofBuildUp): RoofDead {
  const { covering, deck, ceiling } = buildUp;
  const layers: DeadLayer[] = [];
  if (covering) {
    const weight = covering.weight === undefined ? COVERING[covering.kind] : given(covering.weight);
    const least = covering.weight === undefined ? COVERING_LEAST[covering.kind] : weight;
    layers.push({ what: covering.kind, ...weight, least });
    if (deck && deck.kind !== "purlins")
      layers.push({ what: "underlayment", ...UNDERLAYMENT, least: UNDERLAYMENT_LEAST });
  }
  if (deck) layers.push(deckLayer(deck.kind, deck.thickness, deck.spacing));
  if (ceiling) {
    const weight = ceiling.weight === undefined ? CEILING[ceiling.kind] : given(ceiling.weight);
    const least = ceiling.weight === undefined ? CEILING_LEAST[ceiling.kind] : weight;
    layers.push({ what: `${ceiling.kind}-ceiling`, ...weight, least });
  }
  return {
    layers,
    total: layers.reduce((sum, layer) => sum + layer.value, 0),
    status: leastCertain(layers.map((layer) => layer.status)),
    least: layers.reduce((sum, layer) => sum + layer.least.value, 0),
  };
}

export interface FloorBuildUp {
  /** thickness in in; undefined = boards of the usual thickness */
  readonly deck: { readonly kind: "boards" | "panels"; readonly thickness?: number } | undefined;
  /** psf where the file states it for all that lies on the joists */
  readonly dead?: number;
}

/** Weight of a floor over its joists, psf: never nothing, since something is walked on. */
export function floorDead({ deck, dead }: FloorBuildUp): Sourced & Pick<DeadLayer, "note" | "least"> {
  if (dead === undefined) return deckLayer(deck?.kind ?? "boards", deck?.thickness, undefined);
  return { ...given(dead), least: given(dead) };
}

/** Siding of boards 1 in thick where the file states no weight, psf of what is closed. */
export function sidingDead(stated: number | undefined): Sourced & Pick<DeadLayer, "least"> {
  if (stated !== undefined) return { ...given(stated), least: given(stated) };
  const least = { ...BOARDS_LEAST, value: BOARDS_LEAST.value * THINNEST.boards };
  return { value: BOARDS, status: "memory", source: C31, least };
}

/** The weight of a sloped square foot over the level square foot it covers: psf ÷ cos θ. */
export function onLevel(psfOfSlope: number, pitch: Pitch): number {
  return psfOfSlope * (Math.hypot(pitch.rise, pitch.run) / pitch.run);
}

const SPREAD = {
  given: "{thickness} at {weight} for each {inch}",
  assumed: "{thickness}, assumed, at {weight} for each {inch}",
} as const;
const SPACED = {
  given: "{thickness} by {face} every {spacing}, at {weight} for each {inch}",
  assumed: "{thickness}, assumed, by {face} every {spacing}, at {weight} for each {inch}",
} as const;

function deckLayer(kind: Deck, thickness: number | undefined, spacing: number | undefined): DeadLayer {
  const inches = thickness ?? USUAL_THICKNESS[kind];
  const perInch = kind === "panels" ? PANELS : BOARDS;
  const share = kind === "purlins" ? PURLIN_FACE / (spacing ?? USUAL_PURLIN_SPACING) : 1;
  const light = kind === "panels" ? PANELS_LEAST : BOARDS_LEAST;
  return {
    what: kind,
    value: perInch * inches * share,
    status: kind === "purlins" ? "derived" : "memory",
    source: C31,
    least: { ...light, value: light.value * (thickness ?? THINNEST[kind]) * share },
    note: {
      text: (kind === "purlins" ? SPACED : SPREAD)[thickness === undefined ? "assumed" : "given"],
      parts: {
        thickness: { value: inches, unit: "in" },
        weight: { value: perInch, unit: "psf" },
        inch: { value: 1, unit: "in" },
        face: { value: PURLIN_FACE, unit: "in" },
        spacing: { value: spacing ?? USUAL_PURLIN_SPACING, unit: "in" },
      },
    },
  };
}
