/**
 * Net pressure coefficients C_N of open buildings with free roofs, ASCE 7-16 and 7-22 Figures 27.3-4 (monoslope), 27.3-5
 * (pitched) and 27.3-7 (wind along the ridge). Plus presses on the top of the roof, minus lifts it. They hold both sides
 * of the roof, and hold for 0.25 ≤ h/L ≤ 1 and slopes up to 45°.
 */
import { leastCertain, type ValueStatus } from "../sourced.ts";

/** clear: half or less of the section below the roof is blocked; obstructed: more, as by stored goods */
export type Flow = "clear" | "obstructed";
/** the two load cases of the figures; both count */
export type OpenCase = "A" | "B";

/** [C_NW on the windward half, C_NL on the leeward half] */
type Pair = readonly [windward: number, leeward: number];
type Row = Readonly<Record<OpenCase, Readonly<Record<Flow, Pair>>>>;
type Table = readonly (readonly [degrees: number, row: Row])[];

const row = (aClear: Pair, aObstructed: Pair, bClear: Pair, bObstructed: Pair): Row => ({
  A: { clear: aClear, obstructed: aObstructed },
  B: { clear: bClear, obstructed: bObstructed },
});

/** Figure 27.3-5 (7-10: 27.4-5), γ = 0 and 180°: published. */
const PITCHED: Table = [
  [7.5, row([1.1, -0.3], [-1.6, -1.0], [0.2, -1.2], [-0.9, -1.7])],
  [15, row([1.1, -0.4], [-1.2, -1.0], [0.1, -1.1], [-0.6, -1.6])],
  [22.5, row([1.1, 0.1], [-1.2, -1.2], [-0.1, -0.8], [-0.8, -1.7])],
  [30, row([1.3, 0.3], [-0.7, -0.7], [-0.1, -0.9], [-0.2, -1.1])],
  [37.5, row([1.3, 0.6], [-0.6, -0.6], [-0.2, -0.6], [-0.3, -0.9])],
  [45, row([1.1, 0.9], [-0.5, -0.5], [-0.3, -0.5], [-0.3, -0.7])],
];

/** Figure 27.3-4 (7-10: 27.4-4): memory. γ = 0: the wind meets the high edge; γ = 180: the low one. */
const MONOSLOPE: Readonly<Record<"high-edge" | "low-edge", Table>> = {
  "high-edge": [
    [0, row([1.2, 0.3], [-0.5, -1.2], [-1.1, -0.1], [-1.1, -0.6])],
    [7.5, row([-0.6, -1.0], [-1.0, -1.5], [-1.4, 0], [-1.7, -0.8])],
    [15, row([-0.9, -1.3], [-1.1, -1.5], [-1.9, 0], [-2.1, -0.6])],
    [22.5, row([-1.5, -1.6], [-1.5, -1.7], [-2.4, -0.3], [-2.3, -0.9])],
    [30, row([-1.8, -1.8], [-1.5, -1.8], [-2.5, -0.5], [-2.3, -1.1])],
    [37.5, row([-1.8, -1.8], [-1.5, -1.8], [-2.4, -0.6], [-2.2, -1.1])],
    [45, row([-1.6, -1.8], [-1.3, -1.8], [-2.3, -0.7], [-1.9, -1.2])],
  ],
  "low-edge": [
    [0, row([1.2, 0.3], [-0.5, -1.2], [-1.1, -0.1], [-1.1, -0.6])],
    [7.5, row([0.9, 1.5], [-0.2, -1.2], [1.6, 0.3], [0.8, -0.3])],
    [15, row([1.3, 1.6], [0.4, -1.1], [1.8, 0.6], [1.2, -0.3])],
    [22.5, row([1.7, 1.8], [0.5, -1.0], [2.2, 0.7], [1.3, 0])],
    [30, row([2.1, 2.1], [0.6, -1.0], [2.6, 1.0], [1.6, 0.1])],
    [37.5, row([2.1, 2.2], [0.7, -0.9], [2.7, 1.1], [1.9, 0.3])],
    [45, row([2.2, 2.5], [0.8, -0.9], [2.6, 1.4], [2.1, 0.4])],
  ],
};

/** Figure 27.3-7, by distance from the windward edge in mean roof heights: memory. */
const ALONG: readonly {
  readonly to: number;
  readonly C: Readonly<Record<OpenCase, Record<Flow, number>>>;
}[] = [
  { to: 1, C: { A: { clear: -0.8, obstructed: -1.2 }, B: { clear: 0.8, obstructed: 0.5 } } },
  { to: 2, C: { A: { clear: -0.6, obstructed: -0.9 }, B: { clear: 0.5, obstructed: 0.5 } } },
  {
    to: Number.POSITIVE_INFINITY,
    C: { A: { clear: -0.3, obstructed: -0.6 }, B: { clear: 0.3, obstructed: 0.3 } },
  },
];

/** The steepest slope of the figures, degrees. */
export const STEEPEST_OPEN = 45;
/** Below it a pitched free roof takes the monoslope figure, degrees (published). */
const FLATTEST_PITCHED = 7.5;

export interface OpenCoefficients {
  /** `A`, `B`; `A@15` where a neighbouring row stands for the slope; `low-edge-A` by the monoslope figure */
  readonly id: string;
  readonly load: OpenCase;
  /** a neighbouring row stands for the slope, since a coefficient changes its sign between two */
  readonly neighbor: boolean;
  readonly windward: number;
  readonly leeward: number;
  readonly status: ValueStatus;
  readonly source: string;
}

/** A pair by slope: one interpolated pair, or both neighbours where one of the two changes its sign. */
interface At {
  readonly suffix: string;
  readonly neighbor: boolean;
  readonly pair: Pair;
  readonly exact: boolean;
}

/**
 * The figures allow interpolation between like signs only. Where a coefficient of the pair changes its sign between two
 * rows, each row is a case of its own: effects are linear in the coefficients, so that the worse of both covers all that
 * lies between. Zero goes with either sign. Slopes beyond the table take its last row.
 */
function pairsAt(table: Table, slope: number, load: OpenCase, flow: Flow): readonly At[] {
  const above = table.find(([degrees]) => degrees >= slope - 1e-9) ?? table.at(-1);
  const below = table.findLast(([degrees]) => degrees <= slope + 1e-9) ?? table[0];
  if (!above || !below) return [];
  const [low, high] = [below[1][load][flow], above[1][load][flow]];
  const span = above[0] - below[0];
  if (span <= 0) return [{ suffix: "", neighbor: false, pair: high, exact: true }];
  if (low[0] * high[0] < 0 || low[1] * high[1] < 0) {
    return [
      { suffix: `@${below[0]}`, neighbor: true, pair: low, exact: true },
      { suffix: `@${above[0]}`, neighbor: true, pair: high, exact: true },
    ];
  }
  const share = (slope - below[0]) / span;
  const between = (a: number, b: number) => a + share * (b - a);
  return [
    { suffix: "", neighbor: false, pair: [between(low[0], high[0]), between(low[1], high[1])], exact: false },
  ];
}

function coefficientsOf(
  table: Table,
  slope: number,
  flow: Flow,
  known: { readonly prefix: string; readonly status: ValueStatus; readonly source: string },
): readonly OpenCoefficients[] {
  return (["A", "B"] as const).flatMap((load) =>
    pairsAt(table, slope, load, flow).map(({ suffix, neighbor, pair, exact }) => ({
      id: `${known.prefix}${load}${suffix}`,
      load,
      neighbor,
      windward: pair[0],
      leeward: pair[1],
      status: leastCertain([known.status, exact ? "published" : "derived"]),
      source: known.source,
    })),
  );
}

/**
 * A monoslope free roof, wind square to its edges (Figure 27.3-4).
 * @param slope degrees; @param edge which edge the wind meets: high = γ 0, low = γ 180
 */
export function monoslopeCoefficients(
  slope: number,
  flow: Flow,
  edge: "high-edge" | "low-edge",
  prefix = "",
): readonly OpenCoefficients[] {
  return coefficientsOf(MONOSLOPE[edge], slope, flow, {
    prefix,
    status: "memory",
    source: "ASCE 7 Figure 27.3-4",
  });
}

/**
 * A pitched free roof, wind square to the ridge (Figure 27.3-5). Below 7.5° the figure points to the monoslope one; a
 * flat gable is neither of its two directions, so both count.
 * @param slope degrees
 */
export function pitchedCoefficients(slope: number, flow: Flow): readonly OpenCoefficients[] {
  if (slope < FLATTEST_PITCHED - 1e-9) {
    return [
      ...monoslopeCoefficients(slope, flow, "high-edge", "high-edge-"),
      ...monoslopeCoefficients(slope, flow, "low-edge", "low-edge-"),
    ];
  }
  return coefficientsOf(PITCHED, slope, flow, {
    prefix: "",
    status: "published",
    source: "ASCE 7 Figure 27.3-5",
  });
}

/** A strip of roof across the wind: ft from the windward edge. */
export interface Strip {
  readonly from: number;
  readonly to: number;
  readonly C: number;
}

/**
 * Wind along the ridge, γ = 90 and 270° (Figure 27.3-7), for monoslope and pitched free roofs.
 * @param height h, mean roof height, ft; @param length of the roof along the wind, ft
 */
export function alongCoefficients(
  height: number,
  length: number,
  flow: Flow,
): readonly { readonly id: OpenCase; readonly strips: readonly Strip[] }[] {
  return (["A", "B"] as const).map((id) => ({
    id,
    strips: ALONG.map(({ to, C }, i) => ({
      from: height * (ALONG[i - 1]?.to ?? 0),
      to: Math.min(height * to, length),
      C: C[id][flow],
    })).filter((strip) => strip.to > strip.from),
  }));
}
