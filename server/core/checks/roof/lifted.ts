/** How the checks of what is lifted off, rafters and purlins, find and word what holds too little against it. */
import type { Fastening } from "../../roof/fastening.ts";
import type { UpliftHold } from "../../roof/seat-fasteners.ts";
import { caseWords } from "../../statics/case-words.ts";
import type { FrameResults, Pull } from "../../statics/frame-results.ts";
import type { Found } from "../check.ts";
import { overPercent } from "../members/use-words.ts";
import type { Say } from "../say.ts";

/** What pulls at a place, and what is there against it. */
export interface Lifted {
  readonly pull: Pull;
  readonly fastening: Fastening;
  /** undefined = the file names nothing that holds, or gives no size for it */
  readonly hold: UpliftHold | undefined;
}

export function liftedFound<D>({ pull, fastening, hold }: Lifted, place: string, data: D): Found<D> {
  return {
    path: fastening.path,
    onKey: true,
    place,
    data,
    value: pull.most,
    limit: hold?.uplift.value ?? 0,
    unit: "lb",
    // equal pulls at mirrored places differ in the last digits
    severity: Math.round(pull.most),
  };
}

/** With what force under which combination, for the sentence's first half. */
export const pullWords = ({ pull }: Lifted, solution: FrameResults["solution"], say: Say) => ({
  force: say.force(pull.most),
  combination: caseWords(solution, pull.caseId, say),
});

/**
 * @param lifted the sentence's first half: what is lifted, with what force and when
 * @param counted how the length of what is there counts
 * @param help what would hold
 */
export function liftedWords(
  { pull, fastening, hold }: Lifted,
  lifted: string,
  counted: (hold: UpliftHold) => string,
  help: string,
  say: Say,
): string {
  if (!hold)
    return say.text(
      fastening.written === undefined
        ? "{lifted}, and nothing is named that holds it down. {help}"
        : "{lifted}; what holds it is named without a diameter and a length, and counts for nothing. {help}",
      { lifted, help },
    );
  const { fasteners, uplift } = hold;
  const values = {
    lifted,
    help,
    count: fasteners.count,
    diameter: say.length(fasteners.diameter),
    counted: counted(hold),
  };
  if (uplift.value <= 0)
    return say.text(
      fasteners.kind === "screws"
        ? "{lifted}, and its screws hold nothing: {count} of {diameter}, {counted}. {help}"
        : "{lifted}, and its nails hold nothing: {count} of {diameter}, {counted}. {help}",
      values,
    );
  return say.text(
    fasteners.kind === "screws"
      ? "{lifted}, more than the {limit} that its screws hold ({ratio}): {count} of {diameter}, {counted}. {help}"
      : "{lifted}, more than the {limit} that its nails hold ({ratio}): {count} of {diameter}, {counted}. {help}",
    { ...values, limit: say.force(uplift.value), ratio: overPercent(pull.most / uplift.value, say) },
  );
}
