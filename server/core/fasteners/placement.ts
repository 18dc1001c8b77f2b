/** Where bolts and lag screws of 1/4 in and more may stand, and the factor C_Δ for less: NDS 12.5.1 and its tables. */
import type { Factor, ValueStatus } from "../sourced.ts";

/** A distance that must be kept, for a hover or a check. */
export interface Requirement {
  readonly what: string;
  /** in, or without unit */
  readonly have: number;
  readonly need: number;
  readonly sense: "least" | "most";
  readonly ok: boolean;
  readonly status: ValueStatus;
  readonly source: string;
}

/** @returns whether `have` keeps the limit, sizes cut to 1/1000 in counting as equal */
export function requirement(
  what: string,
  have: number,
  need: number,
  known: { readonly status: ValueStatus; readonly source: string },
  sense: Requirement["sense"] = "least",
): Requirement {
  const ok = sense === "least" ? have >= need - 1e-3 : have <= need + 1e-3;
  return { what, have, need, sense, ok, status: known.status, source: known.source };
}

type BoltLoad = "along-compression" | "along-tension" | "across";

export interface BoltDistance extends Requirement {
  /** in, for the full value */
  readonly full: number;
  /** have / full between the least and the full distance; 0 below the least */
  readonly factor: number;
}

export interface BoltPlaces {
  readonly diameter: number;
  readonly load: BoltLoad;
  readonly wood: "softwood" | "hardwood";
  /** length of the bolt in the member ÷ diameter: the smaller of main member and both sides */
  readonly slenderness: number;
  /** in; undefined = not of concern */
  readonly end?: number;
  /** in, to the edge the load pushes towards (across), or the nearer edge (along) */
  readonly edge?: number;
  /** in, to the edge away from the load across the grain */
  readonly unloadedEdge?: number;
  /** in, in a row along the load */
  readonly spacing?: number;
  /** in, between rows */
  readonly rowSpacing?: number;
}

const KNOWN = { status: "memory" } as const;

/** @returns every distance with what it should be, and C_Δ: the smallest of their factors (NDS 12.5.1) */
export function boltDistances(places: BoltPlaces): {
  readonly distances: readonly BoltDistance[];
  readonly factor: Factor;
} {
  const { diameter: D, load, slenderness } = places;
  const along = load !== "across";
  const endFull = load === "along-tension" ? (places.wood === "softwood" ? 7 : 5) : 4;
  const found: BoltDistance[] = [];
  const add = (what: string, have: number | undefined, full: number, least: number, table: string) => {
    if (have !== undefined) found.push(distance(what, have, full * D, least * D, `NDS Table 12.5.1${table}`));
  };
  add("end", places.end, endFull, endFull / 2, "A");
  add("spacing", places.spacing, 4, 3, "B");
  const alongEdge =
    slenderness <= 6 ? 1.5 : Math.max(1.5, places.rowSpacing === undefined ? 0 : places.rowSpacing / (2 * D));
  const edge = along ? alongEdge : 4;
  add("edge", places.edge, edge, edge, "C");
  if (!along) add("unloaded edge", places.unloadedEdge, 1.5, 1.5, "C");
  const rows = along ? 1.5 : Math.max(2.5, Math.min(5, (5 * slenderness + 10) / 8));
  add("row spacing", places.rowSpacing, rows, rows, "D");
  const value = found.reduce((low, one) => Math.min(low, one.factor), 1);
  const worst = found.find((one) => one.factor === value && value < 1);
  return {
    distances: found,
    factor: {
      symbol: "C_Δ",
      value,
      ...KNOWN,
      source: "NDS 12.5.1",
      note: worst ? `by the ${worst.what}` : "full distances",
    },
  };
}

function distance(what: string, have: number, full: number, least: number, source: string): BoltDistance {
  const base = requirement(what, have, least, { ...KNOWN, source });
  return { ...base, full, factor: base.ok ? Math.min(1, have / full) : 0 };
}
