import { caseWords } from "../../statics/case-words.ts";
import type { MemberUse } from "../../statics/frame-results.ts";
import { defineCheck } from "../check.ts";
import type { Say } from "../say.ts";
import { sectionPath, spokenFor } from "./member-path.ts";
import { type OverLimit, overLimit } from "./over-limit.ts";
import { stressFormula } from "./stress-formula.ts";
import { amount, type Exceeded, limitWords, overPercent, placeWords, STRENGTH } from "./use-words.ts";

/** A larger section weighs more itself. */
const HEAVIER = 1.01;

/**
 * Size that the section would need for the stress alone, in the plane in which it bends: S grows with its square, the area
 * with itself. Where it bends both ways, no one size can be told.
 */
function sizeFor({ result, use }: Exceeded): number | undefined {
  const { timber } = result;
  const grow =
    use.what === "shear" || use.what === "notched-shear"
      ? use.ratio
      : use.what === "bending" && use.unit === "psi"
        ? Math.sqrt(use.ratio)
        : undefined;
  const size = use.bends === "width" ? timber.width : timber.depth;
  return grow === undefined || !Number.isFinite(grow) || grow > 3
    ? undefined
    : Math.ceil(size * HEAVIER * grow * 2) / 2;
}

function helpWords(d: OverLimit, say: Say): string {
  const { what, bends } = d.use;
  if (what === "notched-shear")
    return say.text(
      "Give the joint a housing that bears the whole end, or leave more wood in its tenon; a scarf or lap stands best over a post.",
    );
  const size = sizeFor(d);
  if (size !== undefined && bends === "width")
    return say.text(
      "It bends sideways: a width of about {width} would carry it; so would a brace or a tie that holds it sideways there.",
      { width: say.length(size) },
    );
  if (size !== undefined)
    return say.text(
      "A depth of about {depth} would carry it; a better grade, a shorter span or less cut away there also helps.",
      { depth: say.length(size) },
    );
  if (what === "compression" || what === "compression-and-bending")
    return say.text(
      "Take a larger section, brace it nearer its foot, or shorten what stands between its braces.",
    );
  if (what === "tension") return say.text("Take a larger section, or cut less away where it is joined.");
  return say.text("Take a larger section or a better grade, or cut less away there.");
}

/** What keeps from buckling what no stronger wood would. */
function holdWords({ use }: OverLimit, say: Say): string {
  return use.what === "bending"
    ? say.text("Take a wider section, or hold it sideways at shorter distances.")
    : say.text("Take a larger section, brace it nearer its foot, or shorten what stands between its braces.");
}

/** No stress at all is allowed it (R_B over 50), or what acts together passes what buckles it; where no wood is left there is no stress. */
const isSlender = ({ unit, what, value, limit }: MemberUse): boolean =>
  unit === "ratio" ? what !== "tension-and-bending" : limit === 0 && value > 0;

export const timberOverstressed = defineCheck<"results", OverLimit>({
  meta: {
    id: "timber-overstressed",
    title: "A timber that breaks under its load",
    level: "error",
    area: "members",
    source: {
      text: "NDS 2018 chapter 3: bending 3.3, shear 3.4, compression 3.6 and 3.7, tension 3.8, combined 3.9; values and factors of chapter 4 and its Supplement",
      status: "memory",
    },
    explanation: {
      what: "Under one of the load combinations a timber is stressed more than its wood allows, somewhere along its length.",
      why: "Wood that is stressed past its allowable value may break, at once or after years of load.",
      formula:
        "f ≤ F × C_D C_M C_F … on the section that mortises, housings and pegs leave; bending with C_L, compression with C_P; both together by NDS 3.9-1 to 3.9-4",
      remedy:
        "Take a larger section or a better grade, shorten the span, brace it nearer, or cut less away where the stress is.",
    },
  },
  input: "results",
  ofTheWhole: true,
  find: (results) =>
    overLimit(
      results.frame,
      (what) => STRENGTH[what] !== undefined,
      ({ result: { timber } }) =>
        spokenFor(results, timber, "strength") ? undefined : { path: sectionPath(results.model, timber) },
    ),
  words(d, say) {
    const { use, result } = d;
    const facts = {
      stick: result.timber.id,
      section: `${say.length(result.timber.width)} × ${say.length(result.timber.depth)}`,
      what: say.text(STRENGTH[use.what] ?? use.what),
      value: amount(use, use.value, say),
      limit: amount(use, use.limit, say),
      ratio: overPercent(use.ratio, say),
      place: placeWords(use, say),
      combination: caseWords(d.solution, use.caseId, say),
      made: limitWords(use, say),
      help: helpWords(d, say),
    };
    if (!Number.isFinite(use.ratio))
      return isSlender(use)
        ? say.text(
            "{stick} ({section}) buckles under {combination}: it is too slender for its {what} {place} and gives way, however strong its wood is. {help}",
            { ...facts, help: holdWords(d, say) },
          )
        : say.text(
            "{stick} ({section}) is cut through {place}: no wood is left there for what acts on it under {combination}. Take a larger section, or cut less away there.",
            facts,
          );
    return use.unit === "psi"
      ? say.text(
          "{stick} ({section}) has {value} of {what} against {limit} allowed ({ratio}) {place}, under {combination}. Allowed: {made}. {help}",
          facts,
        )
      : say.text(
          "{stick} ({section}) is used to {ratio} by {what} {place}, under {combination}. Allowed: {made}. {help}",
          facts,
        );
  },
  worked: (d, say) => stressFormula(d.use, say),
});
