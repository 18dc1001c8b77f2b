/**
 * Adjustment factors of the NDS (Table 4.3.1) that follow from the section, its use and its moisture; those of the load
 * stand in `loads/combinations.ts`, those of stability in `bending.ts` and `compression.ts`.
 */
import { lengthNote, type Note } from "../note.ts";
import type { Factor, ValueStatus } from "../sourced.ts";
import type { DesignValueKey, GradeId, SizeClass } from "../wood/types.ts";

/** Values that factors act on: all but the specific gravity. */
export type StressKey = Exclude<DesignValueKey, "G">;

export interface SizeFactors {
  readonly Fb: Factor;
  readonly Ft: Factor;
  readonly Fc: Factor;
}

/** What a size factor depends on. Breadth lies across the bending, depth in its direction; in, actual. */
export interface SizedSection {
  readonly sizeClass: SizeClass;
  /** design value group; Southern Pine dimension lumber has the size in its values */
  readonly group: string;
  readonly breadth: number;
  readonly depth: number;
}

/** nominal width up to, F_b 2 and 3 in thick, F_b 4 in thick, F_t, F_c */
const TABLE_4A: readonly (readonly [number, number, number, number, number])[] = [
  [4, 1.5, 1.5, 1.5, 1.15],
  [5, 1.4, 1.4, 1.4, 1.1],
  [6, 1.3, 1.3, 1.3, 1.1],
  [8, 1.2, 1.3, 1.2, 1.05],
  [10, 1.1, 1.2, 1.1, 1.0],
  [12, 1.0, 1.1, 1.0, 1.0],
  [Number.POSITIVE_INFINITY, 0.9, 1.0, 0.9, 0.9],
];
/** nominal width up to, 2 and 3 in thick, 4 in thick, status */
const FLAT_USE: readonly (readonly [number, number, number, ValueStatus])[] = [
  [3, 1.0, 1.0, "memory"],
  [4, 1.1, 1.0, "memory"],
  [5, 1.1, 1.05, "memory"],
  [6, 1.15, 1.05, "published"],
  [8, 1.15, 1.05, "memory"],
  [Number.POSITIVE_INFINITY, 1.2, 1.1, "memory"],
];
const SLACK = 1e-6;
const DEEPER = lengthNote("({length}/d)^(1/9) over {length} deep", 12);
/** in; dressed nominal 4 in. Thinner stock takes the lower factors of 2 and 3 in */
const FOUR_THICK = 3.5;

/**
 * C_F. Dimension lumber: Table 4A by the next nominal width above the wide face. Southern Pine: Table 4B notes. Timbers:
 * (12/d)^(1/9) on F_b for depths over 12 in (Table 4D).
 */
export function sizeFactors(section: SizedSection): SizeFactors {
  const wide = Math.max(section.breadth, section.depth);
  const thick = Math.min(section.breadth, section.depth) >= FOUR_THICK - SLACK;
  if (section.sizeClass !== "dimension-lumber") {
    const value = section.depth > 12 + SLACK ? (12 / section.depth) ** (1 / 9) : 1;
    const Fb = C("C_F", value, "published", "NDS Supplement Table 4D", DEEPER);
    return { Fb, Ft: { ...Fb, value: 1 }, Fc: { ...Fb, value: 1 } };
  }
  if (section.group === "southern-pine") {
    const over = wide > 12 + SLACK ? 0.9 : 1;
    const factor = C("C_F", over, "memory", "NDS Supplement Table 4B", "size is in the value");
    return { Fb: { ...factor, value: over * (thick && wide > 6 + SLACK ? 1.1 : 1) }, Ft: factor, Fc: factor };
  }
  const row = TABLE_4A.find(([width]) => wide <= width + SLACK) ?? TABLE_4A[0];
  const [width = 4, Fb2 = 1, Fb4 = 1, Ft = 1, Fc = 1] = row ?? [];
  const note = Number.isFinite(width)
    ? lengthNote("up to {length} wide", width)
    : lengthNote("over {length} wide", 12);
  const one = (value: number) => C("C_F", value, "published", "NDS Supplement Table 4A", note);
  return { Fb: one(thick ? Fb4 : Fb2), Ft: one(Ft), Fc: one(Fc) };
}

/**
 * C_fu on F_b, and the factor on E, of a section bent about its weak axis: Table 4A for dimension lumber, the size
 * factor for load on the wide face of Table 4D for beams and stringers (from memory; older editions have none).
 */
export function flatUseFactors(
  section: SizedSection,
  grade: GradeId,
): { readonly Fb: Factor; readonly E: Factor } | undefined {
  if (section.depth >= section.breadth - SLACK) return undefined;
  const none = C("C_fu", 1, "memory", "NDS Supplement Table 4D", "load on the wide face");
  if (section.sizeClass === "posts-and-timbers") return undefined;
  if (section.sizeClass === "beams-and-stringers") {
    if (grade.startsWith("no-2") || grade === "dense-no-2") return { Fb: none, E: none };
    if (grade.startsWith("no-1") || grade === "dense-no-1")
      return { Fb: { ...none, value: 0.74 }, E: { ...none, value: 0.9 } };
    return { Fb: { ...none, value: 0.86 }, E: none };
  }
  const row = FLAT_USE.find(([width]) => section.breadth <= width + SLACK) ?? FLAT_USE[0];
  const [, thin = 1, thick = 1, status = "memory"] = row ?? [];
  const value = section.depth >= FOUR_THICK - SLACK ? thick : thin;
  const Fb = C("C_fu", value, status, "NDS Supplement Table 4A", "bent about the weak axis");
  return { Fb, E: { ...Fb, value: 1 } };
}

/**
 * C_M for service, or a green timber until it is dry, above 19 percent moisture: Tables 4A/4B, 4D. Southern Pine timbers have it in
 * their values.
 * @param bending F_b C_F, psi: up to 1150 psi dimension lumber keeps its bending value
 * @param compression F_c C_F, psi: up to 750 psi it keeps its value along the grain
 */
export function wetServiceFactors(
  section: SizedSection,
  bending: number,
  compression: number,
): Readonly<Record<StressKey, Factor>> {
  const dimension = section.sizeClass === "dimension-lumber";
  const source = dimension ? "NDS Supplement Tables 4A, 4B" : "NDS Supplement Table 4D";
  const one = (value: number, note: Note = "above 19 percent moisture") =>
    C("C_M", value, "published", source, note);
  if (!dimension) {
    if (section.group === "southern-pine")
      return every(C("C_M", 1, "memory", source, "wet use is in the value"));
    return { ...every(one(1)), "Fc-perp": one(0.67), Fc: one(0.91) };
  }
  return {
    Fb: bending <= 1150 ? one(1, atMost("F_b C_F is at most {stress}", 1150)) : one(0.85),
    Ft: one(1),
    Fv: one(0.97),
    "Fc-perp": one(0.67),
    Fc: compression <= 750 ? one(1, atMost("F_c C_F is at most {stress}", 750)) : one(0.8),
    E: one(0.9),
    "E-min": one(0.9),
  };
}

const atMost = (text: string, psi: number): Note => ({
  text,
  parts: { stress: { value: psi, unit: "psi" } },
});

export interface RepetitiveUse {
  readonly sizeClass: SizeClass;
  readonly count: number;
  /** in, center to center */
  readonly spacing: number;
  /** a deck that shares the load among them is fastened to all */
  readonly loadSharingDeck: boolean;
}

/** C_r = 1.15 on F_b, NDS 4.3.9: 2 to 4 in thick, three or more, at most 24 in on center, joined by a load-sharing deck. */
export function repetitiveFactor(use: RepetitiveUse): Factor {
  const why =
    use.sizeClass !== "dimension-lumber"
      ? "not for timbers"
      : use.count < 3
        ? "fewer than three"
        : use.spacing > 24 + SLACK
          ? lengthNote("more than {length} apart", 24)
          : use.loadSharingDeck
            ? undefined
            : "no load-sharing deck";
  return C(
    "C_r",
    why === undefined ? 1.15 : 1,
    "published",
    "NDS 4.3.9",
    why ?? lengthNote("three or more, at most {length} apart", 24),
  );
}

/** C_i of incised dimension lumber, NDS Table 4.3.8. */
export function incisingFactors(): Readonly<Record<StressKey, Factor>> {
  const one = (value: number) => C("C_i", value, "published", "NDS Table 4.3.8", "incised");
  return { ...every(one(0.8)), "Fc-perp": one(1), E: one(0.95), "E-min": one(0.95) };
}

/** C_t = 1 up to 100 °F; hotter service is not covered (NDS Table 2.3.3). */
export const TEMPERATURE: Factor = C("C_t", 1, "published", "NDS Table 2.3.3", {
  text: "up to {temperature}",
  parts: { temperature: { value: 100, unit: "degF" } },
});

function C(symbol: string, value: number, status: ValueStatus, source: string, note: Note): Factor {
  return { symbol, value, status, source, note };
}

function every(factor: Factor): Readonly<Record<StressKey, Factor>> {
  return { Fb: factor, Ft: factor, Fv: factor, "Fc-perp": factor, Fc: factor, E: factor, "E-min": factor };
}
