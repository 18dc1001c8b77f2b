/** What a pegged joint carries, as the formulas of its modes and of its tenon with their numbers. */
import type { PegValue } from "../../fasteners/pegs/double-shear.ts";
import type { PegJoint, TenonTerms } from "../../fasteners/pegs/peg-joint.ts";
import { fineLength, madeStress, steps, times } from "../formula-words.ts";
import type { Say } from "../say.ts";

/** Z of one peg by the mode that governs. */
function oneWords({ yields: { governs }, bearing, shear, sizes }: PegValue, say: Say): string {
  const Re = bearing.tenon.value / bearing.cheek.value;
  const values = {
    mode: governs.mode,
    D: say.length(sizes.diameter),
    tenon: say.length(sizes.tenon),
    cheek: say.length(sizes.cheek),
    inTenon: say.stress(bearing.tenon.value),
    inCheek: say.stress(bearing.cheek.value),
    Fvy: say.stress(shear.value),
    R: say.number(governs.reduction, 3),
    k: say.number(governs.k ?? 0, 3),
    Re: say.number(Re, 3),
    planes: sizes.planes,
    Z: say.force(governs.Z),
  };
  const ratio = say.text("R_e: {inTenon} ÷ {inCheek} = {Re}", values);
  switch (governs.mode) {
    case "Im":
      return say.text("Z ({mode}): {D} × {tenon} × {inTenon} ÷ {R} = {Z}", values);
    case "Is":
      return say.text("Z ({mode}): {planes} × {D} × {cheek} × {inCheek} ÷ {R} = {Z}", values);
    case "II":
      return say.text("Z ({mode}): {k} × {D} × {cheek} × {inCheek} ÷ {R} = {Z}", values);
    case "IIIm":
      return steps(
        ratio,
        say.text("Z ({mode}): {k} × {D} × {tenon} × {inTenon} ÷ ((1 + 2 × {Re}) × {R}) = {Z}", values),
      );
    case "IIIs":
      return steps(
        ratio,
        say.text("Z ({mode}): {planes} × {k} × {D} × {cheek} × {inTenon} ÷ ((2 + {Re}) × {R}) = {Z}", values),
      );
    default:
      return say.text("Z ({mode}): {planes} × π × ({D})² × {Fvy} ÷ (4 × {R}) = {Z}", values);
  }
}

/** F_v′ and F_t′ of the tenon with their factors. */
function strengthWords({ tenon: [first] }: PegJoint, say: Say): string[] {
  const made = first?.terms.made;
  return made ? [madeStress("F_v", made.Fv, say), madeStress("F_t", made.Ft, say)] : [];
}

/** What the rows of pegs tear out: n F_v′ t s of each. */
const rowsWords = ({ rows, Fv, thickness }: TenonTerms, say: Say): string =>
  rows
    .map(
      ({ pegs, critical }) =>
        `${pegs} × ${say.stress(Fv)} × ${say.length(thickness)} × ${fineLength(critical, say)}`,
    )
    .join(" + ");

function tenonWords({ what, terms, value }: PegJoint["tenon"][number], say: Say): string {
  const { Ft, thickness, width, diameter, rows, between } = terms;
  const values = {
    rows: rowsWords(terms, say),
    first: say.force(rows[0]?.value ?? 0),
    last: say.force(rows.at(-1)?.value ?? 0),
    Ft: say.stress(Ft),
    width: fineLength(width, say),
    between: fineLength(between, say),
    holes: rows.length,
    gaps: rows.length - 1,
    D: say.length(diameter),
    thickness: say.length(thickness),
    limit: say.force(value),
  };
  switch (what) {
    case "relish":
      return say.text("rows torn out: {rows} = {limit}", values);
    case "group-tear-out":
      return between > (rows.length - 1) * diameter
        ? say.text(
            "rows torn out together: ({first} + {last}) ÷ 2 + {Ft} × ({between} − {gaps} × {D}) × {thickness} = {limit}",
            values,
          )
        : say.text("rows torn out together: ({first} + {last}) ÷ 2 = {limit}", values);
    case "net-section":
      return width > rows.length * diameter
        ? say.text("net section: {Ft} × ({width} − {holes} × {D}) × {thickness} = {limit}", values)
        : say.text("net section: {limit}", values);
  }
}

/**
 * Every limit with its numbers, and the pull against the least of them.
 * @param pull lb; @param count pegs
 */
export function pegFormula(pegs: PegJoint, count: number, pull: number, say: Say): string {
  const all = [pegs.pegs.value, ...pegs.tenon.map(({ value }) => value)].map((pounds) => say.force(pounds));
  return steps(
    oneWords(pegs.one, say),
    say.text("the pegs: {count} × {one}{factors} = {all}", {
      count,
      one: say.force(pegs.one.reference.value),
      factors: times(pegs.pegs.factors, say),
      all: say.force(pegs.pegs.value),
    }),
    ...strengthWords(pegs, say),
    ...pegs.tenon.map((limit) => tenonWords(limit, say)),
    all.length === 1
      ? say.text("{pull} > {least}", { pull: say.force(pull), least: say.force(pegs.tension.value) })
      : say.text("{pull} > min({all}) = {least}", {
          pull: say.force(pull),
          all: all.join(", "),
          least: say.force(pegs.tension.value),
        }),
  );
}
