import { defineCheck } from "../check.ts";

interface Data {
  readonly stick: string;
  readonly left: number;
  readonly depth: number;
}

/** Share of its depth that a curved brace keeps at the middle. */
const SHARE = 1 / 2;

export const braceHollowDeep = defineCheck<"model", Data>({
  meta: {
    id: "brace-hollow-deep",
    title: "A curved brace cut too slim",
    level: "warning",
    area: "members",
    source: {
      text: "common practice, no source: a curved brace keeps half its depth",
      status: "common-practice",
    },
    explanation: {
      what: "The hollow of a curved brace leaves less than half its depth at the middle.",
      why: "The force runs straight from end to end, outside the wood that is left, and bends it; the short grain breaks.",
      formula: "depth left = depth − rise, rise = R − √(R² − c²/4) over the chord c between the shoulders",
      remedy: "Take a larger radius or a deeper blank.",
    },
  },
  input: "model",
  *find(model) {
    for (const t of model.timbers) {
      if (!t.curve) continue;
      const left = t.depth - t.curve.rise;
      if (left >= t.depth * SHARE - 1e-6) continue;
      const curve = model.members.get(t.member)?.curve;
      const key = curve?.radius === undefined ? "rise" : "radius";
      yield {
        path: curve ? `${curve.path}/${key}` : t.path,
        place: t.id,
        ...(left <= 0 ? { level: "error" as const } : {}),
        data: { stick: t.id, left, depth: t.depth },
        value: left,
        limit: t.depth * SHARE,
        unit: "in",
        severity: -left,
      };
    }
  },
  words: (d, say) =>
    say.text(
      "The hollow of {stick} leaves {left} of its {depth} at the middle, less than half: the force passes outside the wood. Take a larger radius or a deeper blank.",
      {
        stick: d.stick,
        left: say.length(Math.max(0, d.left)),
        depth: say.length(d.depth),
      },
    ),
  worked: (d, say) =>
    say.text("{depth} − {rise} = {left} < {depth} ÷ 2 = {half}", {
      depth: say.length(d.depth),
      rise: say.length(d.depth - d.left),
      left: say.length(d.left),
      half: say.length(d.depth * SHARE),
    }),
});
