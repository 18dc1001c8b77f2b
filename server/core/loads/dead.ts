/**
 * Weight of the roof build-up over the rafters, psf of the sloped surface.
 */
import type { Note } from "../note.ts";
import { given, leastCertain, type Sourced, type ValueStatus } from "../sourced.ts";
import type { Pitch } from "./snow-factors.ts";

type Covering =
  | "standing-seam"
  | "ribbed-steel"
  | "corrugated-steel"
  | "asphalt-shingles"
  | "wood-shingles"
  | "wood-shakes"
  | "slate"
  | "clay-tile"
  | "roll-roofing";

/** Lining below the rafters that weighs something. */
type Ceiling = "plaster" | "plasterboard" | "boards";

type Deck = "boards" | "panels" | "purlins";

export interface RoofBuildUp {
  /** `weight` in psf where the file states it */
  readonly covering: { readonly kind: Covering; readonly weight?: number } | undefined;
  /** thickness in in; spacing of purlins in in, center to center */
  readonly deck: { readonly kind: Deck; readonly thickness?: number; readonly spacing?: number } | undefined;
  /** lining that hangs on the rafters; `weight` in psf where the file states it */
  readonly ceiling?: { readonly kind: Ceiling; readonly weight?: number } | undefined;
}

/** One layer; `what` is a stable id, its words are the reader's. */
export interface DeadLayer extends Sourced {
  readonly what: Covering | Deck | "underlayment" | `${Ceiling}-ceiling`;
  /** what it is made of, where the kind alone does not say it */
  readonly note?: Note;
}

export interface RoofDead {
  readonly layers: readonly DeadLayer[];
  /** psf of the sloped surface */
  readonly total: number;
  readonly status: ValueStatus;
}

const C31 = "ASCE 7 commentary Table C3.1-1";
const KIDDER = "Kidder, Building Construction and Superintendence, Table IV";

/** psf; where a source gives a range, its heavier end */
const COVERING: Readonly<Record<Covering, Sourced>> = {
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
    source: "published list of roofing weights, laminated shingles",
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

/** One layer of No.30 felt, 26 lb per 100 ft² (ASTM D226 Type II). */
const UNDERLAYMENT: Sourced = {
  value: 0.26,
  status: "memory",
  source: "ASTM D226 Type II, one layer of No.30 felt",
};

/** psf */
const CEILING: Readonly<Record<Ceiling, Sourced & { readonly note: Note }>> = {
  plaster: { value: 8, status: "memory", source: C31, note: "gypsum plaster on wood lath" },
  plasterboard: { value: 2.75, status: "memory", source: C31, note: "gypsum board, 5/8 in" },
  boards: { value: 2.25, status: "memory", source: C31, note: "boards, 3/4 in" },
};

/** psf per inch of thickness */
const BOARDS = 3.0;
const PANELS = 3.2;
/** in; purlins are 2x4 laid flat */
const PURLIN_FACE = 3.5;
const USUAL_THICKNESS: Readonly<Record<Deck, number>> = { boards: 1, panels: 0.625, purlins: 1.5 };
const USUAL_PURLIN_SPACING = 24;

/**
 * Layers of a roof from the outside in. A closed deck carries one layer of felt under the covering; purlins carry none.
 * @returns psf of the sloped surface
 */
export function roofDead(buildUp: RoofBuildUp): RoofDead {
  const { covering, deck, ceiling } = buildUp;
  const layers: DeadLayer[] = [];
  if (covering) {
    const weight = covering.weight === undefined ? COVERING[covering.kind] : given(covering.weight);
    layers.push({ what: covering.kind, ...weight });
    if (deck && deck.kind !== "purlins") layers.push({ what: "underlayment", ...UNDERLAYMENT });
  }
  if (deck) layers.push(deckLayer(deck.kind, deck.thickness, deck.spacing));
  if (ceiling) {
    const weight = ceiling.weight === undefined ? CEILING[ceiling.kind] : given(ceiling.weight);
    layers.push({ what: `${ceiling.kind}-ceiling`, ...weight });
  }
  return {
    layers,
    total: layers.reduce((sum, layer) => sum + layer.value, 0),
    status: leastCertain(layers.map((layer) => layer.status)),
  };
}

export interface FloorBuildUp {
  /** thickness in in; undefined = boards of the usual thickness */
  readonly deck: { readonly kind: "boards" | "panels"; readonly thickness?: number } | undefined;
  /** psf where the file states it for all that lies on the joists */
  readonly dead?: number;
}

/** Weight of a floor over its joists, psf: never nothing, since something is walked on. */
export function floorDead({ deck, dead }: FloorBuildUp): Sourced & Pick<DeadLayer, "note"> {
  return dead === undefined ? deckLayer(deck?.kind ?? "boards", deck?.thickness, undefined) : given(dead);
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
  return {
    what: kind,
    value: perInch * inches * share,
    status: kind === "purlins" ? "derived" : "memory",
    source: C31,
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
