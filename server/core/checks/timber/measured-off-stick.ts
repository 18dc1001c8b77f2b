import { defineCheck } from "../check.ts";
import { measuredWays } from "./measured-sticks.ts";

interface Data {
  readonly stick: string;
  readonly at: number;
  readonly length: number;
}

export const measuredOffStick = defineCheck<"model", Data>({
  meta: {
    id: "measured-off-stick",
    title: "Measured where the stick has ended",
    level: "warning",
    area: "timber",
    source: {
      text: "the file’s own numbers: a place along a stick is at most its length",
      status: "file-format",
    },
    explanation: {
      what: "A stick is measured at a place beyond its length.",
      why: "The size there belongs to no wood of the frame, and the housings near that end are laid out by it.",
      formula: "at ≤ length of the stick, tenons included",
      remedy: "Count `at` from the foot, or from the end at bent 1 or wall A.",
    },
  },
  input: "model",
  *find(model) {
    for (const { stick, size, way } of measuredWays(model)) {
      if (way === "depth" || size.at === undefined || size.at <= stick.length + 1e-6) continue;
      yield {
        path: `${size.path}/at`,
        place: stick.id,
        data: { stick: stick.id, at: size.at, length: stick.length },
        value: size.at,
        limit: stick.length,
        unit: "in",
        severity: size.at - stick.length,
      };
    }
  },
  words: (d, say) =>
    say.text(
      "{stick} is measured at {at}, and is {length} long: that size belongs to no wood of the frame, and housings near its end are laid out by it. Count from the foot, or from the end at bent 1 or wall A.",
      { stick: d.stick, at: say.length(d.at), length: say.length(d.length) },
    ),
  worked: (d, say) => say.text("{at} > {length}", { at: say.length(d.at), length: say.length(d.length) }),
});
