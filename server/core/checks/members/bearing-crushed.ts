import type { Model } from "../../model/model.ts";
import type { Bearing } from "../../statics/bearing-force.ts";
import { caseWords } from "../../statics/case-words.ts";
import type { MemberUse } from "../../statics/frame-results.ts";
import { amountWords, noteWords } from "../amount-words.ts";
import { defineCheck, type Found } from "../check.ts";
import { seatKey, sizePath } from "../joinery/size-path.ts";
import type { Say } from "../say.ts";
import { bearingFormula } from "./bearing-formula.ts";
import { sectionPath } from "./member-path.ts";
import { type OverLimit, overLimit } from "./over-limit.ts";
import { byEndGrain, type Exceeded, limitWords, overPercent, placeWords } from "./use-words.ts";

/** Past this the crushing is no longer a matter of a dent (common practice). */
const DENT = 1.5;

/** No housing takes more of the timber that it is cut into (common practice). */
const MOST_HOUSING = 1 / 3;
/** A bird's mouth takes no more of its rafter's depth (common practice). */
const MOST_NOTCH = 1 / 4;
/** The tail beyond a step keeps the rest (common practice, no source). */
const MOST_LAPPED = 1 / 2;

/** Where to change it: the size of the joint that makes the bearing larger, else the joint; without one the section. */
function pathOf(model: Model, { result, use }: Exceeded): Pick<Found<OverLimit>, "path" | "onKey"> {
  const { joint, growth } = use.bearing ?? {};
  if (!joint) return { path: sectionPath(model, result.timber) };
  if (!growth) return { path: joint.path, onKey: true };
  const { housing, seat } = joint.sizes;
  return growth.size === "seat"
    ? sizePath(joint, seatKey(joint), seat?.level)
    : sizePath(joint, "housing", housing);
}

/** in² */
const areaOf = (use: MemberUse): number => use.area?.value ?? 0;

/** Up to the next 1/8 in, or 2 mm. */
function roundUp(inches: number, say: Say): number {
  const steps = say.metric ? 12.7 : 8;
  return Math.ceil(inches * steps - 1e-6) / steps;
}

/** An end that is let in deeper is longer, and brings so much more load. */
const LONGER = 1.02;

/** The housing or seat that would bear the load, where one can. */
function larger({ area, joint, growth }: Bearing, ratio: number, say: Say): number | undefined {
  if (!joint || !growth) return undefined;
  const size = roundUp(growth.now + (area * (LONGER * ratio - 1)) / growth.breadth, say);
  const { seat, step } = joint.sizes;
  const angle = ((seat?.angle ?? 0) * Math.PI) / 180;
  if (growth.size === "seat")
    return size * Math.sin(angle) <= joint.of.depth * (step ? MOST_LAPPED : MOST_NOTCH) ? size : undefined;
  const deepest = Math.min(step?.deepest ?? Number.POSITIVE_INFINITY, joint.face.thickness * MOST_HOUSING);
  return size <= deepest ? size : undefined;
}

function helpWords({ use }: Exceeded, say: Say): string {
  const { bearing } = use;
  const size = bearing && larger(bearing, use.ratio, say);
  if (bearing?.growth && size === undefined)
    return say.text("No cut here is deep enough for that: take a wider timber or a denser wood.");
  if (size === undefined && byEndGrain(use))
    return say.text("Take a wider timber or a denser wood there, or lay a steel plate between the two.");
  if (size === undefined) return say.text("Take a wider timber there, a bolster, or a denser wood.");
  const length = say.length(size);
  if (bearing?.growth?.size === "seat")
    return say.text("A level seat of {length} would carry it.", { length });
  return bearing?.joint?.kind === "pocket"
    ? say.text("A pocket in which it bears {length} would carry it.", { length })
    : say.text("A housing {length} deep would carry it.", { length });
}

export const bearingCrushed = defineCheck<"results", OverLimit>({
  meta: {
    id: "bearing-crushed",
    title: "Wood crushed across its grain",
    level: "warning",
    area: "members",
    source: {
      text: "NDS 2018 3.10: F_c⊥′ with C_b, end grain 0.75 F_c*, at an angle by Hankinson's formula",
      status: "memory",
    },
    explanation: {
      what: "Where a timber stands on another, lies on it or ends in it, the wood of one of them is pressed harder than it takes there.",
      why: "The wood is dented, the frame settles there and joints open; green wood takes a third less than dry. Up to 1.5 times what the wood takes it is a warning: a deep dent. Beyond that it is an error: the joint fails.",
      formula:
        "f = P/A ≤ F_c⊥ × C_M C_b across the grain, 0.75 F_c* along it, F_c* F_c⊥′/(F_c* sin²θ + F_c⊥′ cos²θ) between, and never more than 0.75 F_c*; A = the shoulder without the tenon, the floor of a housing or pocket and the edge of the tenon, the toe of a brace, the seat, or the pier's top under the timber",
      remedy:
        "Make the bearing larger: a deeper housing, a longer seat, a wider timber, a bolster; or take a denser wood.",
    },
  },
  input: "results",
  ofTheWhole: true,
  find: ({ frame, model }) =>
    overLimit(
      frame,
      (what) => what === "bearing",
      (one) => ({ ...pathOf(model, one), ...(one.use.ratio > DENT ? { level: "error" as const } : {}) }),
    ),
  words: (d, say) =>
    say.text(
      "{stick} is pressed with {value} {place}, more than the {limit} its wood takes there ({ratio}), under {combination}. Allowed: {made}. It bears on {area} ({note}) and needs {need}. {help}",
      {
        stick: d.result.timber.id,
        value: say.stress(d.use.value),
        place: placeWords(d.use, say),
        limit: say.stress(d.use.limit),
        ratio: overPercent(d.use.ratio, say),
        combination: caseWords(d.solution, d.use.caseId, say),
        made: limitWords(d.use, say),
        area: amountWords({ value: areaOf(d.use), unit: "in2" }, say),
        note: d.use.area ? noteWords(d.use.area.note, say) : "",
        need: amountWords(
          { value: Math.ceil(areaOf(d.use) * d.use.ratio * 10 - 1e-9) / 10, unit: "in2" },
          say,
        ),
        help: helpWords(d, say),
      },
    ),
  worked: ({ use }, say) => bearingFormula(use, say),
});
