/** Axial force, shear or moment of every timber in the plane of the view, to one scale, with its largest values. */
import type { Say } from "../core/checks/say.ts";
import { frameCaseWords } from "../core/statics/case-words.ts";
import type { SolvedCase } from "../core/statics/solve-frame.ts";
import type { DrawingElement } from "./drawing.ts";
import { type Basis, type DrawnForces, slackLines, slackRow, VALUE } from "./forces-basis.ts";
import { layerTitle } from "./forces-cases.ts";
import { type DiagramStyle, diagram, offset } from "./forces-diagram.ts";
import type { LegendRow } from "./forces-legend.ts";
import { coincide, type PaperLine } from "./forces-line.ts";
import { clearFirst, obstaclesIn } from "./forces-room.ts";
import { type DiagramLayer, type Ordinate, ordinatesOf, peakOf } from "./forces-values.ts";
import { amount, roundBelow, signed, unitOf } from "./forces-words.ts";
import type { TextPlace } from "./layout.ts";

/** ems that the largest force measures */
const LARGEST: Readonly<Record<DiagramLayer, number>> = { axial: 2.4, shear: 3, moment: 3.4 };
/** share of the largest below which a value is not written */
const SMALL = 0.06;
/** lb or lb·in: less is rounding of the analysis */
const NOUGHT = 0.01;

interface Plotted {
  readonly line: PaperLine;
  readonly solved: SolvedCase;
  readonly peak: number;
}

/** The case that gives each line the most. */
function worstOf({ cases, lines }: Basis, layer: DiagramLayer): Plotted[] {
  return lines.flatMap((line): Plotted[] => {
    let most: Plotted | undefined;
    for (const solved of cases) {
      const peak = peakOf(line, solved, layer);
      if (Number.isFinite(peak) && (!most || peak > most.peak)) most = { line, solved, peak };
    }
    return most ? [most] : [];
  });
}

/** Of timbers one behind the other, the one with the largest force, largest first. */
function foremost(all: readonly Plotted[]): Plotted[] {
  const kept: Plotted[] = [];
  for (const one of [...all].sort((a, b) => b.peak - a.peak))
    if (!kept.some(({ line }) => coincide(line, one.line))) kept.push(one);
  return kept;
}

/** @returns diagrams, the largest force first, and what their patterns mean */
export function drawDiagrams(basis: Basis, layer: DiagramLayer): DrawnForces {
  const { layout } = basis;
  const { say, size } = layout;
  const all = worstOf(basis, layer);
  const shown = foremost(all);
  const largest = shown[0]?.peak ?? 0;
  const slack = slackLines(basis);
  if (!(largest > NOUGHT))
    return {
      elements: slack,
      legend: [{ text: say.text("No timber in this plane carries any.") }, ...slackRow(basis, slack.length)],
    };
  const style: DiagramStyle = {
    scale: (LARGEST[layer] * size) / largest,
    hatch: 0.5 * size,
    thin: 0.12 * size,
    centered: layer === "axial",
    inverted: layer === "moment",
  };
  const drawn = shown.map((one) => {
    const elements = ordinatesOf(one.line, one.solved, layer, 0.8 * size);
    return { ...one, elements, extremes: extremesOf(elements, style) };
  });
  const shapes = drawn.flatMap(({ line, solved, elements, extremes }): DrawingElement[] => {
    const children = diagram(line, elements, style);
    if (children.length === 0) return [];
    const values = say.list(extremes.map(({ shown: value }) => signed(layer, value, say)));
    return [
      {
        type: "group",
        classes: ["force", layer],
        id: line.timber.id,
        path: line.timber.path,
        title: say.text("{timber}, {layer}: {values}, {combination}", {
          timber: line.timber.id,
          layer: layerTitle(layer, say),
          values,
          combination: frameCaseWords(solved.frameCase, say),
        }),
        children,
      },
    ];
  });
  const obstacles = obstaclesIn(shapes);
  const texts = drawn
    .flatMap(({ line, extremes }) => extremes.map((extreme) => ({ line, extreme })))
    .filter(({ extreme }) => Math.abs(extreme.value) > SMALL * largest)
    .sort((a, b) => Math.abs(b.extreme.value) - Math.abs(a.extreme.value))
    .flatMap(({ line, extreme }) => {
      const text = signed(layer, extreme.shown, say);
      const reach = (Math.abs(extreme.value) * style.scale) / (style.centered ? 2 : 1);
      const places = clearFirst(
        placesBeside(line, extreme, reach, style.centered, size),
        text,
        VALUE * size,
        obstacles,
      );
      return layout.write(text, places, ["value"], VALUE * size);
    });
  const unit = unitOf(layer, say);
  const round = roundBelow(largest / unit / 1.5) * unit;
  return {
    elements: [...slack, ...shapes, ...texts],
    legend: [
      { text: say.text("= {amount}", { amount: amount(layer, round, say) }), sample: round * style.scale },
      ...signRows(layer, say),
      ...slackRow(basis, slack.length),
      ...(shown.length < all.length
        ? [{ text: say.text("Of timbers one behind the other, the one that carries the most is shown.") }]
        : []),
    ],
  };
}

function signRows(layer: DiagramLayer, say: Say): LegendRow[] {
  const words = {
    axial: ["+ tension", "− compression"],
    shear: ["+ turns the timber clockwise", "− turns it counter-clockwise"],
    moment: [
      "+ tension below, or at the right; drawn on that side",
      "− tension above, or at the left; drawn on that side",
    ],
  } as const;
  return [
    { text: say.text(words[layer][0]), sample: "positive" },
    { text: say.text(words[layer][1]), sample: "negative" },
  ];
}

interface Extreme {
  readonly at: number;
  readonly value: number;
  /** with the sign of the legend */
  readonly shown: number;
}

/** The largest value of each sign; that of an even stretch stands at its middle. */
function extremesOf(elements: readonly (readonly Ordinate[])[], style: DiagramStyle): Extreme[] {
  return [1, -1].flatMap((sign): Extreme[] => {
    let best: Extreme | undefined;
    for (const ordinates of elements)
      for (const { at, value } of ordinates) {
        if (value * sign <= Math.max(0, (best?.value ?? 0) * sign)) continue;
        const [from, to] = [ordinates[0], ordinates.at(-1)];
        const even = from && to && Math.abs(from.value - to.value) < 0.1 * Math.abs(value);
        const middle = even ? (from.at + to.at) / 2 : at;
        best = { at: style.inverted ? at : middle, value, shown: style.inverted ? -value : value };
      }
    return best ? [best] : [];
  });
}

/** Where a value may stand: past the tip, a little along, then on the other side of the line. */
function placesBeside(
  line: PaperLine,
  { at, value }: Pick<Extreme, "at" | "value">,
  reach: number,
  bothSides: boolean,
  s: number,
): TextPlace[] {
  const side = value < 0 && !bothSides ? -1 : 1;
  const base = line.at(at);
  const beside = (sign: number, out: number, shift: number): TextPlace => {
    const [ux, uy] = [line.up[0] * sign, line.up[1] * sign];
    const tip = offset(offset(base, [ux, uy], out), line.ahead, shift);
    const anchor = ux > 0.4 ? "start" : ux < -0.4 ? "end" : "middle";
    const drop = uy > 0.5 ? 0.2 : uy < -0.5 ? -0.8 : -0.28;
    return { x: tip[0], y: tip[1] + drop * VALUE * s, anchor };
  };
  const shifts = [0, s, -s, 2.2 * s, -2.2 * s];
  const out = reach + 0.35 * s;
  const near = shifts.map((shift) => beside(side, out, shift));
  const far = shifts.slice(0, 3).map((shift) => beside(side, out + s, shift));
  const other = shifts.slice(0, 3).map((shift) => beside(-side, bothSides ? out : 0.6 * s, shift));
  return [...near, ...far, ...other];
}
