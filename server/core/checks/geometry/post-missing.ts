import { isComplete } from "../../model/grounded.ts";
import type { Model } from "../../model/model.ts";
import { type FarEnd, farEnds, unsupportedEnds } from "../../model/unsupported.ts";
import { defineCheck } from "../check.ts";
import { fineLength } from "../formula-words.ts";
import { maybeHeld } from "./not-placed.ts";

interface Data extends Pick<FarEnd, "last" | "reach" | "back" | "overhang" | "allowed"> {
  readonly stick: string;
  /** the place of the grid where it ends; undefined where it ends at something else */
  readonly at: string | undefined;
}

/** `A2`, where a timber of bent 2 is written to run to wall A. */
function placeOf(model: Model, { timber, end }: FarEnd): string | undefined {
  const member = model.members.get(timber.member);
  const line = (end === "foot" ? member?.from : member?.to)?.text;
  const [bent, wall] = [timber.bents[0], timber.walls[0]];
  if (line === undefined) return undefined;
  if (/^[A-Z]$/.test(line) && timber.bents.length === 1 && bent !== undefined) return `${line}${bent}`;
  return /^\d+$/.test(line) && timber.walls.length === 1 && wall !== undefined ? `${wall}${line}` : undefined;
}

export const postMissing = defineCheck<"model", Data>({
  meta: {
    id: "post-missing",
    title: "A lying timber that runs on far past what holds it",
    level: "warning",
    area: "geometry",
    source: {
      text: "common practice, no source: past its last post, and over the overhang that the file gives it, a timber goes no further than a quarter of what is held, or two feet",
      status: "common-practice",
    },
    explanation: {
      what: "A plate, tie, girt, beam, sill or ridge has an end that no post, pier or other timber holds, far past the last one that does, and the file does not call it an overhang. What stands on the timber, as a king-post on its tie, does not hold it.",
      why: "Most often a post is missing at that place of the grid. The forces are right for the frame as it is written: the end hangs out as a cantilever, or on what should stand on it.",
      formula: "past the last hold − written overhang ≤ the greater of 24 in and ¼ of what is held",
      remedy:
        "Set a post there, end the timber nearer, or write what is meant to hang out as its `overhang`.",
    },
  },
  input: "model",
  ofTheWhole: true,
  *find(model) {
    if (!isComplete(model)) return;
    const found = farEnds(model);
    if (found.length === 0) return;
    const excused = maybeHeld(model);
    const told = new Set(unsupportedEnds(model).map(({ timber }) => timber.id));
    for (const far of found) {
      const { timber, last, reach, back, overhang, allowed } = far;
      if (told.has(timber.id) || excused(timber)) continue;
      yield {
        path: timber.path,
        onKey: true,
        place: timber.id,
        data: { stick: timber.id, last, reach, back, overhang, allowed, at: placeOf(model, far) },
        value: reach - overhang,
        limit: allowed,
        unit: "in",
        severity: reach,
      };
    }
  },
  words: ({ stick, last, reach, back, at }, say) => {
    const values = { stick, last, reach: say.length(reach), back: say.length(back), at: at ?? "" };
    return at === undefined
      ? say.text(
          "Nothing holds the end of {stick}: it runs on {reach} past {last}, the last that does, and is held over {back} only. It is reckoned so. Set a post under it, or write how much of it is `overhang`.",
          values,
        )
      : say.text(
          "Nothing holds {stick} at {at}: it runs on {reach} past {last}, the last that does, and is held over {back} only. It is reckoned so. Set a post at {at}, end it nearer, or write how much of it is `overhang`.",
          values,
        );
  },
  worked: ({ reach, overhang, back, allowed }, say) =>
    say.text("{reach} − {overhang} = {past} > {limit}", {
      reach: fineLength(reach, say),
      overhang: fineLength(overhang, say),
      past: fineLength(reach - overhang, say),
      limit:
        allowed > back / 4
          ? fineLength(allowed, say)
          : `${fineLength(back, say)} ÷ 4 = ${fineLength(allowed, say)}`,
    }),
});
