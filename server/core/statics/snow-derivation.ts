/** The snow of a roof told line by line, from the snow that loads it. */
import type { Snow, SnowCase } from "../loads/snow.ts";
import { editionName } from "../loads/snow-factors.ts";
import type { Note } from "../note.ts";
import { type Factor, leastCertain } from "../sourced.ts";
import {
  factorLine,
  type LoadLine,
  type LoadPattern,
  resultLine,
  shapeLine,
  shareLine,
  statedLine,
} from "./load-lines.ts";

const FACTORS: Readonly<Record<string, Note>> = {
  C_e: "exposure",
  C_t: "warmth under the roof",
  I_s: "importance, by risk category",
  C_s: "slope",
};

/** What happens between the ground's snow and the roof's. */
export function snowLines(snow: Snow): LoadLine[] {
  const { edition, factors, input, minimum, rainOnSnow, unbalanced } = snow;
  const name = editionName(edition);
  const flat = factors.filter(({ symbol }) => symbol !== "C_s");
  const sloped = factors.filter(({ symbol }) => symbol === "C_s");
  const lineOf = (f: Factor): LoadLine => factorLine(f, FACTORS[f.symbol] ?? f.symbol);
  const known = (of: readonly Factor[], source: string): Pick<LoadLine, "status" | "source"> => ({
    status: leastCertain(of.map(({ status }) => status)),
    source,
  });
  const ground = snow.level === "service" ? "on the ground, service level" : "on the ground, strength level";
  const product = edition === "asce-7-16" ? "0.7 C_e C_t I_s p_g" : "0.7 C_e C_t p_g";
  return [
    statedLine("p_g", ground, input.ground, "psf"),
    ...flat.map(lineOf),
    resultLine(
      "p_f",
      { text: "on a flat roof: {product}", parts: { product: { words: product } } },
      snow.flat,
      "psf",
      known(flat, `${name} Eq. 7.3-1`),
    ),
    shapeLine("θ", "slope of the roof", snow.slope, "degree"),
    ...sloped.map(lineOf),
    resultLine(
      "p_s",
      "on the slope, by level area: C_s p_f",
      snow.sloped,
      "psf",
      known(factors, `${name} Eq. 7.4-1`),
    ),
    ...(minimum ? [resultLine("p_m", "the least on a low slope", minimum.value, "psf", minimum)] : []),
    ...(rainOnSnow.value > 0
      ? [{ id: "rain", what: "rain on the snow, added", unit: "psf" as const, ...rainOnSnow }]
      : []),
    ...(unbalanced ? unbalancedLines(snow, unbalanced) : []),
    shareLine(snow.asdFactor),
  ];
}

function unbalancedLines({ input }: Snow, { drift, rule }: NonNullable<Snow["unbalanced"]>): LoadLine[] {
  const run = shapeLine("W", "level from the eave to the ridge", input.eaveToRidge, "ft");
  if (rule === "short-roof" || !drift) return [run];
  return [
    run,
    resultLine("h_d", "height of the drift beside the ridge", drift.height, "ft", drift),
    resultLine("γ", "weight of the drifted snow", drift.density, "lb/ft3", drift),
  ];
}

/** The load cases of one slope, as they are laid on it. */
export function snowCases({ cases }: Snow): LoadPattern[] {
  return cases.map(({ id, span, overhang, drift, status, source }: SnowCase) => ({
    id,
    pressures: [
      { on: "from plate to ridge", psf: span },
      { on: "on the eave’s overhang", psf: overhang },
      ...(drift
        ? [{ on: "drift on top, from the ridge down", psf: drift.psf, from: 0, to: drift.width }]
        : []),
    ],
    status,
    source,
  }));
}
