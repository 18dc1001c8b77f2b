/** The formulas of a timber's stresses (NDS chapter 3) with the numbers that its check put into them. */
import type { Adjusted } from "../../members/adjust.ts";
import type { MemberUse } from "../../statics/frame-results.ts";
import type { Bent, StressTerms } from "../../statics/stress-terms.ts";
import { noteWords } from "../amount-words.ts";
import { cube, madeStress, moment, square, steps } from "../formula-words.ts";
import type { Say } from "../say.ts";
import { productWords } from "./use-words.ts";

/** Shares of a limit below this change no figure that is shown. */
const NOTHING = 1e-4;
/** Digits of a sum of shares. */
const DIGITS = 4;

const bendingStress = ({ moment: M, modulus: S }: Bent, say: Say): string =>
  `${moment(M, say)} ÷ ${cube(S, say)}`;

const axialStress = (force: number, area: number, say: Say): string =>
  `${say.force(force)} ÷ ${square(area, say)}`;

/** `f_b1: 15,000 lb·in ÷ 64 in³ = 234 psi` */
const bentWords = (symbol: string, bent: Bent, say: Say): string =>
  `${symbol}: ${bendingStress(bent, say)} = ${say.stress(bent.stress)}`;

/** `F_b1: F_b 875 psi × C_D 1.15 = 1,006 psi` */
const limitOf = (name: string, symbol: string, made: Adjusted, say: Say): string =>
  `${name}: ${madeStress(symbol, made, say)}`;

/** `C_P (l_e/d = 17.69): E_min 400,000 psi × C_fu 0.9 = 360,000 psi`: what a stability factor is worked from. */
function fromWords(
  { factors }: Pick<Adjusted, "factors">,
  symbol: "C_P" | "C_L",
  say: Say,
): string | undefined {
  const factor = factors.find((f) => f.symbol === symbol);
  if (!factor?.from) return undefined;
  const about = factor.note === undefined ? symbol : `${symbol} (${noteWords(factor.note, say)})`;
  return `${about}: ${madeStress(factor.from.symbol, factor.from, say)}`;
}

const counts = (bent: Bent, limit: number): boolean => bent.stress > NOTHING * limit;

/** How a stress alone was reckoned: `1,200 lb ÷ 36 in²`. */
function plainStress(
  { what }: MemberUse,
  t: StressTerms,
  about: Bent | undefined,
  say: Say,
): string | undefined {
  switch (what) {
    case "bending":
      return about && bendingStress(about, say);
    case "shear":
      return `1.5 × ${axialStress(t.force, t.area, say)}`;
    case "notched-shear":
      return (
        t.notch &&
        `1.5 × ${say.force(t.force)} ÷ (${say.length(t.notch.breadth)} × ${say.length(t.notch.left)}) × (${say.length(t.notch.depth)} ÷ ${say.length(t.notch.left)})²`
      );
    case "tension":
    case "compression":
      return axialStress(t.force, t.area, say);
    default:
      return undefined;
  }
}

/** Bending both ways, NDS 3.9-3 without axial force. */
function bothBendings([one, two]: readonly [Bent, Bent], use: MemberUse, say: Say): string {
  const values = {
    f1: say.stress(one.stress),
    f2: say.stress(two.stress),
    F1: say.stress(one.value.value),
    F2: say.stress(two.value.value),
    critical: say.stress(one.critical),
    ratio: say.number(use.value, DIGITS),
  };
  return steps(
    bentWords("f_b1", one, say),
    bentWords("f_b2", two, say),
    fromWords(one.value, "C_L", say),
    limitOf("F_b1′", "F_b", one.value, say),
    limitOf("F_b2′", "F_b", two.value, say),
    Number.isFinite(one.critical)
      ? say.text("{f1} ÷ {F1} + {f2} ÷ ({F2} × (1 − ({f1} ÷ {critical})²)) = {ratio} > 1", values)
      : say.text("{f1} ÷ {F1} + {f2} ÷ {F2} = {ratio} > 1", values),
  );
}

/** NDS 3.9-1 on the face in tension, 3.9-2 on the one in compression: the greater of the two. */
function tensionAndBending(
  t: StressTerms,
  [one, two]: readonly [Bent, Bent],
  use: MemberUse,
  say: Say,
): string {
  const ft = t.force / t.tensionArea;
  const onTension = ft / t.Ft.value + one.stress / one.star.value + two.stress / two.star.value;
  const tension = onTension >= use.value - 1e-9;
  const made = (bent: Bent): Adjusted => (tension ? bent.star : bent.value);
  const weak = counts(two, made(two).value);
  const values = {
    ft: say.stress(ft),
    Ft: say.stress(t.Ft.value),
    f1: say.stress(one.stress),
    F1: say.stress(made(one).value),
    weak: weak ? ` + ${say.stress(two.stress)} ÷ ${say.stress(made(two).value)}` : "",
    ratio: say.number(use.value, DIGITS),
  };
  return steps(
    `f_t: ${axialStress(t.force, t.tensionArea, say)} = ${values.ft}`,
    bentWords("f_b1", one, say),
    weak ? bentWords("f_b2", two, say) : undefined,
    tension ? limitOf("F_t′", "F_t", t.Ft, say) : undefined,
    fromWords(made(one), "C_L", say),
    limitOf("F_b1′", "F_b", made(one), say),
    weak ? limitOf("F_b2′", "F_b", made(two), say) : undefined,
    tension
      ? say.text("{ft} ÷ {Ft} + {f1} ÷ {F1}{weak} = {ratio} > 1", values)
      : say.text("({f1} − {ft}) ÷ {F1}{weak} = {ratio} > 1", values),
  );
}

/** NDS 3.9-3; where a stress reaches the one at which the timber buckles, that. */
function compressionAndBending(
  t: StressTerms,
  [one, two]: readonly [Bent, Bent],
  use: MemberUse,
  say: Say,
): string | undefined {
  const { Fc, FcStar, netArea, FcE1, FcE2 } = t.column;
  const fc = t.force / t.area;
  const whole = fc / Fc.value >= t.force / netArea / FcStar.value;
  const f1 = one.stress;
  const values = {
    fc: say.stress(fc),
    axial: say.stress(whole ? fc : t.force / netArea),
    Fc: say.stress(whole ? Fc.value : FcStar.value),
    f1: say.stress(f1),
    F1: say.stress(one.value.value),
    E1: say.stress(FcE1),
    E2: say.stress(FcE2),
    critical: say.stress(one.critical),
    ratio: say.number(use.value, DIGITS),
  };
  const start = [
    `f_c: ${axialStress(t.force, t.area, say)} = ${values.fc}`,
    whole ? undefined : `f_c (net): ${axialStress(t.force, netArea, say)} = ${values.axial}`,
    bentWords("f_b1", one, say),
  ];
  if (fc >= FcE1) return steps(...start, say.text("F_cE1: {fc} ≥ {E1}", values));
  if (fc >= FcE2) return steps(...start, say.text("F_cE2: {fc} ≥ {E2}", values));
  const lateral = Number.isFinite(one.critical) ? ` − (${values.f1} ÷ ${values.critical})²` : "";
  if (!Number.isFinite(use.ratio))
    return steps(...start, say.text("F_cE2, F_bE: {fc} ÷ {E2} + ({f1} ÷ {critical})² ≥ 1", values));
  const weak = counts(two, two.value.value);
  const left = (critical: number, shown: string): string =>
    Number.isFinite(critical) ? ` − ${values.fc} ÷ ${shown}` : "";
  const second = weak
    ? ` + ${say.stress(two.stress)} ÷ (${say.stress(two.value.value)} × (1${left(FcE2, values.E2)}${lateral}))`
    : "";
  return steps(
    ...start,
    weak ? bentWords("f_b2", two, say) : undefined,
    whole ? fromWords(Fc, "C_P", say) : undefined,
    whole ? limitOf("F_c′", "F_c", Fc, say) : limitOf("F_c*", "F_c", FcStar, say),
    fromWords(one.value, "C_L", say),
    limitOf("F_b1′", "F_b", one.value, say),
    weak ? limitOf("F_b2′", "F_b", two.value, say) : undefined,
    say.text("({axial} ÷ {Fc})² + {f1} ÷ ({F1} × (1{left})){second} = {ratio} > 1", {
      ...values,
      left: left(FcE1, values.E1),
      second,
    }),
  );
}

/** @returns undefined where nothing of the section is left, so that no formula holds */
export function stressFormula(use: MemberUse, say: Say): string | undefined {
  const { terms, what, unit } = use;
  if (!terms) return undefined;
  const { bent } = terms;
  if (unit === "psi") {
    const about =
      bent &&
      (Math.abs(bent[0].stress - use.value) <= Math.abs(bent[1].stress - use.value) ? bent[0] : bent[1]);
    const made = plainStress(use, terms, about, say);
    const product = productWords(use, say);
    const worked = product === undefined || made === undefined ? product : `${made} = ${product}`;
    return worked && steps(fromWords(use, "C_P", say), fromWords(use, "C_L", say), worked);
  }
  if (!bent) return undefined;
  switch (what) {
    case "bending":
      return Number.isFinite(use.ratio)
        ? bothBendings(bent, use, say)
        : steps(
            bentWords("f_b1", bent[0], say),
            say.text("F_bE: {stress} ≥ {critical}", {
              stress: say.stress(bent[0].stress),
              critical: say.stress(bent[0].critical),
            }),
          );
    case "tension-and-bending":
      return tensionAndBending(terms, bent, use, say);
    case "compression-and-bending":
      return compressionAndBending(terms, bent, use, say);
    default:
      return undefined;
  }
}
