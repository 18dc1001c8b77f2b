/** From the worst places of a timber to what hovers, reports and findings show: numbers, combination, place, factors. */
import type { Adjusted } from "../members/adjust.ts";
import { MOST_COLUMN_SLENDERNESS } from "../members/compression.ts";
import type { Factor } from "../sourced.ts";
import type { BucklingLength } from "./effective-length.ts";
import type { MemberUse } from "./frame-results.ts";
import type { MemberPlan } from "./member-plan.ts";
import type { TimberStress } from "./member-stresses.ts";
import { slendernessOf } from "./member-values.ts";
import type { SolvedCase } from "./solve-frame.ts";
import { stressTerms } from "./stress-terms.ts";
import { STRESSES, type Stress, type Worst } from "./worst-stress.ts";

export type CaseNames = (solved: number) => { readonly caseId: string; readonly combination: string };

export function caseNames(cases: readonly SolvedCase[]): CaseNames {
  return (index) => {
    const found = cases[index]?.frameCase;
    return { caseId: found?.id ?? "", combination: found?.combination.text ?? "" };
  };
}

/** The bending value that leads, in the sense in which it bends. */
function bendingValue(w: Worst): Adjusted {
  const values = w.values[w.axis];
  return w.positive ? values.positive : values.negative;
}

type MadeOf = Pick<MemberUse, "reference" | "factors" | "second">;

/** Both values, the factors of each once: `C_F` of the second is named apart where it differs. */
function together(first: Adjusted, second: Adjusted, mark: "F_c" | "F_t"): MadeOf {
  const more = second.factors.filter(
    (f) => !first.factors.some((o) => o.symbol === f.symbol && o.value === f.value),
  );
  const named = more.map((f) =>
    first.factors.some((o) => o.symbol === f.symbol) ? { ...f, symbol: `${f.symbol} (${mark})` } : f,
  );
  return {
    reference: first.reference,
    factors: [...first.factors, ...named],
    second: {
      symbol: mark,
      reference: second.reference,
      factors: second.factors,
      own: first.factors.length,
    },
  };
}

/** What the limit of a stress is made of. */
function madeOf(what: Stress, w: Worst): MadeOf {
  const { values: v } = w;
  const bending = bendingValue(w);
  const plain = ({ reference, factors }: Adjusted): MadeOf => ({
    reference,
    factors,
  });
  switch (what) {
    case "bending":
      return plain(bending);
    case "shear":
    case "notched-shear":
      return plain(v.Fv);
    case "tension":
      return plain(v.Ft);
    case "compression":
      return plain(w.limit === v.Fc.value ? v.Fc : v.FcStar);
    case "tension-and-bending":
      return together(bending, v.Ft, "F_t");
    case "compression-and-bending":
      return together(bending, v.Fc, "F_c");
  }
}

const INTERACTIONS: ReadonlySet<Stress> = new Set(["tension-and-bending", "compression-and-bending"]);
const BENDS: ReadonlySet<Stress> = new Set(["bending", ...INTERACTIONS]);

/** @returns the stress checks of a timber, those that act at all */
export function stressUses(plan: MemberPlan, stress: TimberStress, names: CaseNames): MemberUse[] {
  return STRESSES.flatMap((what): MemberUse[] => {
    const w = stress.worst(what);
    if (!w) return [];
    return [
      {
        what,
        value: w.value,
        limit: w.limit,
        unit: w.mixed ? "ratio" : "psi",
        ...(INTERACTIONS.has(what) ? { interaction: true as const } : {}),
        ratio: w.ratio,
        ...names(w.solved),
        at: w.x,
        place: w.place ?? w.station?.place.joint,
        ...(BENDS.has(what) ? { bends: w.axis === "z" ? ("depth" as const) : ("width" as const) } : {}),
        ...madeOf(what, w),
        terms: stressTerms(plan, w),
      },
    ];
  });
}

/** Why a length counts for buckling, in words. */
export const BUCKLING_WORDS: Readonly<Record<BucklingLength["why"], string>> = {
  held: "between places that are held",
  "free-end": "free end past what holds it",
  sways: "from the foot to the knee in a frame that sways",
  "above-knee": "above the knee",
  leans: "leans on the uprights with knees",
  unheld: "nothing holds it that way",
  deck: "held by the deck",
};

/** Buckling length and its factor as one factor of the slenderness. */
function lengthFactor(b: BucklingLength): Factor {
  return {
    symbol: "K_e",
    value: b.factor,
    status: b.why === "sways" || b.why === "leans" ? "derived" : "memory",
    source: "NDS appendix G",
    note: {
      text: "{why}, {length}",
      parts: { why: { words: BUCKLING_WORDS[b.why] }, length: { value: b.length, unit: "in" } },
    },
  };
}

/** l_e/d of a timber that is pressed along its length. NDS 3.7.1.4 */
export function slendernessUse(plan: MemberPlan, pressed: Worst | undefined, names: CaseNames): MemberUse[] {
  if (!pressed) return [];
  const { z, y } = slendernessOf(plan.timber, plan.lengths);
  const value = Math.max(z, y);
  if (!(value > 0)) return [];
  const buckling = z >= y ? plan.lengths.depth : plan.lengths.width;
  return [
    {
      what: "slenderness",
      value,
      limit: MOST_COLUMN_SLENDERNESS,
      unit: "ratio",
      ratio: value / MOST_COLUMN_SLENDERNESS,
      ...names(pressed.solved),
      at: pressed.x,
      place: undefined,
      reference: undefined,
      buckling,
      factors: [lengthFactor(buckling)],
    },
  ];
}

/** An interaction names the timber's state only when it says more than the plain checks do. */
const INTERACTION = 1.02;

/**
 * The governing one first. Slenderness that is allowed is no utilisation: twice the length is not twice the load; it comes
 * last.
 */
export function ordered(uses: readonly MemberUse[]): MemberUse[] {
  const weight = (u: MemberUse): number =>
    u.what === "slenderness" && u.ratio <= 1 ? 0 : u.interaction ? u.ratio / INTERACTION : u.ratio;
  return [...uses].sort((a, b) => weight(b) - weight(a));
}
