import { usual } from "../../joinery/proportions.ts";
import { defineCheck } from "../check.ts";
import { atWords, measuredWays } from "./measured-sticks.ts";

interface Data {
  readonly stick: string;
  readonly key: "width" | "depth";
  readonly measured: number;
  readonly perfect: number;
  readonly at: number | undefined;
}

/** No stick of this many times its section is meant for it: the number, or its unit, is another (common practice, no source). */
const MISTYPED = 2;

const isMistyped = ({ measured, perfect }: Pick<Data, "measured" | "perfect">): boolean =>
  measured >= MISTYPED * perfect;

/** What a rough stick may be over: 1/2 in, or 12 mm (common practice, no source). */
const most = (metric: boolean): number => usual(metric, 1 / 2, 12);

export const stickOversize = defineCheck<"model", Data>({
  meta: {
    id: "stick-oversize",
    title: "A stick much larger than its perfect timber",
    level: "note",
    area: "timber",
    source: {
      text: "common practice, no source: rough timbers are sawn up to about 1/2 in over",
      status: "common-practice",
    },
    explanation: {
      what: "A stick measures more than 1/2 in (12 mm) over its section in the file; twice the section or more is a warning.",
      why: "Every housing on the faces away from its reference faces goes deeper by that much, which is seen and is work; it also weighs more than is reckoned.",
      formula: "measured size ≤ section + 1/2 in, in width and in depth",
      remedy: "Saw or hew it nearer to size, use it for a larger timber, or keep it so.",
    },
  },
  input: "model",
  *find(model) {
    const limit = most(model.frame.units === "mm");
    for (const { stick, size, key, measured, perfect, over } of measuredWays(model)) {
      if (over <= limit + 1e-6) continue;
      yield {
        path: `${size.path}/${key}`,
        place: stick.id,
        ...(isMistyped({ measured, perfect }) ? { level: "warning" as const } : {}),
        data: { stick: stick.id, key, measured, perfect, at: size.at },
        value: measured,
        limit: perfect + limit,
        unit: "in",
        severity: over,
      };
    }
  },
  words: (d, say) => {
    const values = {
      stick: d.stick,
      measured: say.length(d.measured),
      perfect: say.length(d.perfect),
      over: say.length(d.measured - d.perfect),
      at: atWords(d.at, say),
    };
    if (isMistyped(d))
      return say.text(
        d.key === "width"
          ? "{stick} measures {measured} in width{at}, twice its perfect {perfect} or more: housings away from its reference faces would go {over} deeper, and no such stick is meant for it. Look whether the number or its unit is mistyped."
          : "{stick} measures {measured} in depth{at}, twice its perfect {perfect} or more: housings away from its reference faces would go {over} deeper, and no such stick is meant for it. Look whether the number or its unit is mistyped.",
        values,
      );
    return say.text(
      d.key === "width"
        ? "{stick} measures {measured} in width{at}, {over} over the perfect {perfect}: housings away from its reference faces go so much deeper, and it is heavier than reckoned. Saw it nearer to size, use it for a larger timber, or keep it so."
        : "{stick} measures {measured} in depth{at}, {over} over the perfect {perfect}: housings away from its reference faces go so much deeper, and it is heavier than reckoned. Saw it nearer to size, use it for a larger timber, or keep it so.",
      values,
    );
  },
  worked: (d, say) =>
    say.text("{measured} > {perfect} + {over} = {limit}", {
      measured: say.length(d.measured),
      perfect: say.length(d.perfect),
      over: say.length(most(say.metric)),
      limit: say.length(d.perfect + most(say.metric)),
    }),
});
