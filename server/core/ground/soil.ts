/** What soils carry where nobody tested them: the presumptive values of IBC Table 1806.2. */
import type { Soil } from "../frame/site.ts";
import type { Sourced } from "../sourced.ts";

export interface SoilValues {
  /** what the table calls it */
  readonly title: string;
  /** allowable foundation pressure, psf */
  readonly bearing: Sourced;
  /** allowable lateral bearing for each foot below grade, psf/ft */
  readonly lateral: Sourced;
  /** resistance to sliding: a share of the dead load, or for clay an adhesion in psf over the contact */
  readonly sliding:
    | { readonly kind: "friction"; readonly coefficient: Sourced }
    | { readonly kind: "cohesion"; readonly psf: Sourced };
}

const seen = (value: number): Sourced => ({
  value,
  status: "published",
  source: "IBC 2012 Table 1806.2; bearing also IRC Table R401.4.1",
});

const friction = (value: number): SoilValues["sliding"] => ({ kind: "friction", coefficient: seen(value) });

/**
 * Presumptive values (published: IBC 2012 Table 1806.2, seen in reprint). Mud, organic silt and clay, peat and
 * unprepared fill have none: they need a test.
 */
export const SOILS: Readonly<Record<Soil, SoilValues>> = {
  bedrock: {
    title: "crystalline bedrock",
    bearing: seen(12000),
    lateral: seen(1200),
    sliding: friction(0.7),
  },
  "sedimentary-rock": {
    title: "sedimentary and foliated rock",
    bearing: seen(4000),
    lateral: seen(400),
    sliding: friction(0.35),
  },
  gravel: {
    title: "sandy gravel and gravel GW GP",
    bearing: seen(3000),
    lateral: seen(200),
    sliding: friction(0.35),
  },
  sand: {
    title: "sand, silty or clayey sand and gravel SW SP SM SC GM GC",
    bearing: seen(2000),
    lateral: seen(150),
    sliding: friction(0.25),
  },
  clay: {
    title: "clay, silt CL ML MH CH",
    bearing: seen(1500),
    lateral: seen(100),
    sliding: { kind: "cohesion", psf: seen(130) },
  },
};

const federal = (value: number): Sourced => ({ value, status: "published", source: "24 CFR 3285.202" });

/**
 * The federal rule for manufactured homes, psf, lower than the building code for gravel and sand (published:
 * 24 CFR 3285.202). Shown beside the code's figure, never used in its place.
 */
export const FEDERAL_BEARING = {
  untested: federal(1500),
  sandyGravel: federal(2000),
  sand: federal(1500),
} as const;
