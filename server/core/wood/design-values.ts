/**
 * Reference design values (allowable stress) of a species, grade and section: NDS Supplement Tables 4A, 4B and 4D.
 */
import { leastCertain, type Sourced, type ValueStatus } from "../sourced.ts";
import { sourceText } from "./data/sources.ts";
import { TABLE_4A } from "./data/table-4a.ts";
import { TABLE_4B } from "./data/table-4b.ts";
import { TABLE_4D } from "./data/table-4d.ts";
import type { DesignRow } from "./data/table-types.ts";
import { sizeClass } from "./size-class.ts";
import { findGroup, findSpecies } from "./species.ts";
import type { DesignValueKey, DesignValues, GradeId, SizeClass } from "./types.ts";

type TableName = "4A" | "4B" | "4D";

export interface FoundValues {
  readonly kind: "values";
  /** the group of the table, which may be another name than the species */
  readonly group: string;
  readonly table: TableName;
  readonly sizeClass: SizeClass;
  readonly grade: GradeId;
  /** no grade was given: an own-sawn timber without a stamp counts as No.2 */
  readonly assumedGrade: boolean;
  readonly values: DesignValues;
  /** the least certain status among the values */
  readonly status: ValueStatus;
}

/** Why there are no values; `grades` and `limit` are there where the reader can do something with them. */
export interface NoValues {
  readonly kind: "none";
  readonly reason:
    | "unknown-species"
    | "too-thin"
    /** the species has values, but not in this size class */
    | "not-in-size-class"
    /** the species is in no table recorded here */
    | "no-table"
    | "unknown-grade";
  readonly sizeClass: SizeClass | "too-thin";
  /** grades that the species has in this size class */
  readonly grades: readonly GradeId[];
}

/** The grade that counts when a file gives none (design rule for own-sawn timber, common practice). */
export const ASSUMED_GRADE: GradeId = "no-2";

interface Lookup {
  readonly table: TableName;
  readonly group: string;
  readonly rows: readonly DesignRow[];
}

/**
 * @param species kebab-case id of a species or group
 * @param grade kebab-case id of a grade; undefined = No.2, and the result says so
 * @param width in, actual
 * @param depth in, actual
 * @returns psi, each with status and source; or why there are none. Never throws.
 */
export function designValues(
  species: string,
  grade: string | undefined,
  width: number,
  depth: number,
): FoundValues | NoValues {
  const wood = findSpecies(species);
  const size = sizeClass(width, depth);
  if (wood === undefined) return { kind: "none", reason: "unknown-species", sizeClass: size, grades: [] };
  if (size === "too-thin") return { kind: "none", reason: "too-thin", sizeClass: size, grades: [] };
  const found = lookUp(wood, size, Math.max(width, depth));
  if (found === undefined) {
    const elsewhere = wood.timberGroup !== undefined || wood.dimensionGroup !== undefined;
    return {
      kind: "none",
      reason: elsewhere ? "not-in-size-class" : "no-table",
      sizeClass: size,
      grades: [],
    };
  }
  const wanted = grade ?? ASSUMED_GRADE;
  const row = found.rows.find((r) => r[0] === wanted);
  if (row === undefined) {
    return { kind: "none", reason: "unknown-grade", sizeClass: size, grades: found.rows.map((r) => r[0]) };
  }
  const values = valuesOf(row, found);
  return {
    kind: "values",
    group: found.group,
    table: found.table,
    sizeClass: size,
    grade: row[0],
    assumedGrade: grade === undefined,
    values,
    status: leastCertain(Object.values(values).map((v) => v.status)),
  };
}

/**
 * @returns grades of a species over both tables, strongest first as printed; empty for an unknown species
 */
export function gradeIds(species: string): readonly GradeId[] {
  const wood = findSpecies(species);
  if (wood === undefined) return [];
  const classes: readonly SizeClass[] = ["beams-and-stringers", "posts-and-timbers", "dimension-lumber"];
  return [...new Set(classes.flatMap((size) => lookUp(wood, size, 8)?.rows.map((r) => r[0]) ?? []))];
}

/** E_min = 1.03 E (1 − 1.645 COV)/1.66, COV 0.25 for visually graded sawn lumber (NDS Appendix D). @returns psi */
export function minimumModulus(E: number, variation = 0.25): number {
  return (1.03 * E * (1 - 1.645 * variation)) / 1.66;
}

/** E_min that goes with an E which the file states itself. @param E psi */
export function minimumModulusOf(E: number): Sourced {
  return { value: minimumModulus(E), status: "derived", source: "NDS Appendix D, from the E of the file" };
}

/**
 * Stability goes by E_min: where the file states E alone, E_min follows it, not the table's E.
 * @param values what the tables give
 * @param own psi (or G) that the file states itself; @param because the reason given there
 */
export function overrideValues(
  values: DesignValues,
  own: ReadonlyMap<DesignValueKey, number>,
  because: string | undefined,
): DesignValues {
  const result: Record<DesignValueKey, Sourced> = { ...values };
  for (const [key, value] of own) {
    result[key] = { value, status: "given", source: because ?? "stated in the file" };
  }
  const E = own.get("E");
  if (E !== undefined && !own.has("E-min")) result["E-min"] = minimumModulusOf(E);
  return result;
}

function lookUp(
  wood: { readonly timberGroup: string | undefined; readonly dimensionGroup: string | undefined },
  size: SizeClass,
  wide: number,
): Lookup | undefined {
  if (size !== "dimension-lumber") {
    const group = TABLE_4D.find((g) => g.group === wood.timberGroup);
    const rows = group?.both ?? (size === "beams-and-stringers" ? group?.beams : group?.posts);
    return group && rows ? { table: "4D", group: group.group, rows } : undefined;
  }
  if (wood.dimensionGroup === "southern-pine") {
    const block = TABLE_4B.find((b) => wide <= b.nominalWidth + 1e-6) ?? TABLE_4B.at(-1);
    return block && { table: "4B", group: "southern-pine", rows: block.rows };
  }
  const group = TABLE_4A.find((g) => g.group === wood.dimensionGroup);
  return group && { table: "4A", group: group.group, rows: group.rows };
}

function valuesOf(row: DesignRow, { table, group }: Lookup): DesignValues {
  const [, Fb, Ft, Fv, FcPerp, Fc, E, Emin, status, exceptions, seen] = row;
  const print = `NDS Supplement 2015/2018 Table ${table}`;
  const seenIn = seen?.map(sourceText).join("; ");
  const one = (key: DesignValueKey, value: number): Sourced => {
    const own = exceptions?.[key] ?? status;
    const wasSeen = seenIn !== undefined && (own === "published" || own === "derived");
    return { value, status: own, source: wasSeen ? `${print} (${seenIn})` : print };
  };
  const G = findGroup(group)?.G;
  return {
    Fb: one("Fb", Fb),
    Ft: one("Ft", Ft),
    Fv: one("Fv", Fv),
    "Fc-perp": one("Fc-perp", FcPerp),
    Fc: one("Fc", Fc),
    E: one("E", E),
    "E-min": one("E-min", Emin),
    G: {
      value: G?.[0] ?? Number.NaN,
      status: G?.[1] ?? "uncertain",
      source: G?.[2] ? sourceText(G[2]) : "NDS 2018 Table 12.3.3A",
    },
  };
}
