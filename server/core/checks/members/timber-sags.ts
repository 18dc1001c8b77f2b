import { totalDeflection } from "../../members/deflection.ts";
import { caseWords } from "../../statics/case-words.ts";
import type { MemberUse } from "../../statics/frame-results.ts";
import { amountWords, noteWords } from "../amount-words.ts";
import { defineCheck } from "../check.ts";
import { creepSum, fineLength } from "../formula-words.ts";
import type { Say } from "../say.ts";
import { sectionPath, spokenFor } from "./member-path.ts";
import { type OverLimit, overLimit } from "./over-limit.ts";
import { fromFoot } from "./use-words.ts";

/** `, 1/240 of 12' (carries a floor)` */
function shareWords({ share }: MemberUse, say: Say): string {
  if (!share) return "";
  return say.text(", 1/{divisor} of {length} ({note})", {
    divisor: say.number(share.divisor.value, 0),
    length: amountWords({ value: share.length, unit: "in" }, say),
    note: noteWords(share.note, say),
  });
}

export const timberSags = defineCheck<"results", OverLimit>({
  meta: {
    id: "timber-sags",
    title: "A timber that sags too far",
    level: "warning",
    area: "members",
    source: {
      text: "limits of IBC Table 1604.3; creep of NDS 3.5.2",
      status: "memory",
    },
    explanation: {
      what: "A lying timber bends further between what holds it up than its use allows. Where it is scarfed between two supports, both lengths sink with the scarf and are judged over the whole span from support to support. The tail of a rafter counts only where it bends down: a tip that wind, or the load on the span behind it, lifts is no sag.",
      why: "A roof that sags holds water and snow and opens its joints; a floor that gives feels unsafe.",
      formula:
        "from the chord of its supports: live load alone ≤ L/180, creep × dead + live ≤ L/120; under a roof that keeps warmth or cold in L/240 and L/180, floors L/360 and L/240; creep 2.0 for timber framed green, 1.5 seasoned; tails twice their length",
      remedy: "Make it deeper, shorten its span with a post or a knee, or let it season before it is loaded.",
    },
  },
  input: "results",
  ofTheWhole: true,
  find: (results) =>
    overLimit(
      results.frame,
      (what) => what === "live-deflection" || what === "total-deflection",
      ({ result: { timber } }) =>
        spokenFor(results, timber, "sag") ? undefined : { path: sectionPath(results.model, timber) },
    ),
  words: (d, say) =>
    say.text(
      "{stick} ({section}) sags {value} {where}, more than the {limit} allowed for {what}{share}, under {combination}. A depth of about {depth} would hold it; so would a support in its span.",
      {
        stick: d.result.timber.id,
        section: `${say.length(d.result.timber.width)} × ${say.length(d.result.timber.depth)}`,
        value: say.length(d.use.value),
        where: fromFoot(d.use.at, say),
        limit: say.length(d.use.limit),
        what:
          d.use.what === "live-deflection"
            ? say.text("snow, wind or live load alone")
            : say.text("all load with creep"),
        share: shareWords(d.use, say),
        combination: caseWords(d.solution, d.use.caseId, say),
        // I grows with d³
        depth: say.length(Math.ceil(d.result.timber.depth * Math.cbrt(d.use.ratio) * 2) / 2),
      },
    ),
  worked: ({ use }, say) => {
    const { bent, share, factors } = use;
    if (!bent || !share) return undefined;
    const creep = factors.find(({ symbol }) => symbol === "K_cr");
    // told in the way in which it bends
    const way = (creep ? totalDeflection(creep.value, bent.long, bent.short) : bent.short) < 0 ? -1 : 1;
    const [long, short] = [way * bent.long, way * bent.short];
    return say.text("{made} = {value} > {length} ÷ {divisor} = {limit}", {
      made: creep
        ? creepSum(creep, long, short, say)
        : `${fineLength(long + short, say)} ${long < 0 ? "+" : "−"} ${fineLength(Math.abs(long), say)}`,
      value: fineLength(use.value, say),
      length: fineLength(share.length, say),
      divisor: say.number(share.divisor.value, 0),
      limit: fineLength(use.limit, say),
    });
  },
});
