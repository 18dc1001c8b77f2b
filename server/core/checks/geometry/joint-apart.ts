import { closeness } from "../../model/joint-match.ts";
import type { Model } from "../../model/model.ts";
import type { ModelProblem } from "../../model/problems.ts";
import { defineCheck } from "../check.ts";

type Data = Extract<ModelProblem, { kind: "joint-apart" }>;

/** Timbers this near each other touch, inches. */
const TOUCHING = 1 / 16;

export const jointApart = defineCheck<"model", Data>({
  meta: {
    id: "joint-apart",
    title: "A joint names timbers that do not meet",
    level: "error",
    area: "geometry",
    source: {
      text: "placement rule of this program: within 1/16 in over at least one square inch",
      status: "file-format",
    },
    explanation: {
      what: "A joint entry names two timbers that come together nowhere, or not with the end that the joint needs.",
      why: "The joint would not be cut anywhere, and the load it should carry has no path.",
      formula: "distance between the nearest two of them ≤ 1/16 in",
      remedy: "Correct the names, or move one of the timbers until they meet.",
    },
  },
  input: "model",
  *find(model) {
    for (const p of model.problems)
      if (p.kind === "joint-apart" && !takenByAnother(model, p))
        yield {
          path: p.path,
          data: p,
          ...(p.gap === undefined || p.gap <= TOUCHING || p.reversed
            ? {}
            : { value: p.gap, limit: TOUCHING, unit: "in" as const }),
        };
  },
  words: (d, say) => {
    if (d.reversed)
      return say.text(
        "It is {into}’s end that meets {of}, so {joint} is cut nowhere and carries nothing. Swap “of” and “into”.",
        { of: d.of, into: d.into, joint: d.joint },
      );
    const start = say.text("No end of {of} meets {into}, so {joint} is cut nowhere and carries nothing.", {
      of: d.of,
      into: d.into,
      joint: d.joint,
    });
    if (d.gap === undefined || !d.nearest)
      return say.text("{start} Correct the names or the placement.", { start });
    const [a, b] = d.nearest;
    return d.gap > TOUCHING
      ? say.text("{start} The nearest are {a} and {b}, {gap} apart. Correct the names or move one of them.", {
          start,
          a,
          b,
          gap: say.length(d.gap),
        })
      : say.text(
          "{start} {a} and {b} pass or graze each other with less than {least} of contact at an end. Correct the names or the placement.",
          {
            start,
            a,
            b,
            least: say.metric ? "650 mm²" : say.text("1 square inch"),
          },
        );
  },
  worked: (d, say) =>
    d.gap !== undefined && d.gap > TOUCHING && !d.reversed
      ? say.text("{gap} > {touching}", { gap: say.length(d.gap), touching: say.length(TOUCHING) })
      : undefined,
});

/** The timbers do meet, and an entry of equal or better right holds at every place. */
function takenByAnother(model: Model, p: Data): boolean {
  const fits = (names: string, stick: Parameters<typeof closeness>[1]): boolean =>
    names.split(", ").some((name) => closeness(name, stick) > 0);
  return model.joints.some((j) => j.entry && fits(p.of, j.of) && fits(p.into, j.into));
}
