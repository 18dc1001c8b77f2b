/** Scale on paper, and the foot of the drawing that states it: title, scale bar, scale. */
import type { Say } from "../core/checks/say.ts";
import { type Box, type DrawingElement, elementBox, union } from "./drawing.ts";
import type { Layout } from "./layout.ts";

/** room for the drawing on a letter or A4 sheet with margins, the longer side first; inches */
const SHEET: readonly [number, number] = [10, 7.4];

interface PaperScale {
  /** inches on paper for one inch of the frame */
  readonly ratio: number;
  readonly name: string;
}

/** Architects' scales, inches on paper to the foot. */
const IMPERIAL: readonly PaperScale[] = [
  ["3 in", 3],
  ["1 1/2 in", 1.5],
  ["1 in", 1],
  ["3/4 in", 3 / 4],
  ["1/2 in", 1 / 2],
  ["3/8 in", 3 / 8],
  ["1/4 in", 1 / 4],
  ["3/16 in", 3 / 16],
  ["1/8 in", 1 / 8],
  ["1/16 in", 1 / 16],
  ["1/32 in", 1 / 32],
].map(([name, toTheFoot]) => ({ ratio: Number(toTheFoot) / 12, name: `${name} = 1 ft` }));

/** Scales of ISO 5455:1979 and those usual in building beside them (common practice). */
const METRIC: readonly PaperScale[] = [5, 10, 20, 25, 50, 75, 100, 200, 500, 1000].map((parts) => ({
  ratio: 1 / parts,
  name: `1:${parts}`,
}));

/** @returns the largest usual scale at which a width and height (inches of the frame) fit a sheet, either way up */
export function paperScale(width: number, height: number, metric: boolean): PaperScale {
  const [long, short] = [Math.max(width, height), Math.min(width, height)];
  const fits = (scale: PaperScale): boolean =>
    long * scale.ratio <= SHEET[0] && short * scale.ratio <= SHEET[1];
  const found = (metric ? METRIC : IMPERIAL).find(fits);
  if (found !== undefined) return found;
  const parts = Math.ceil(Math.max(long / SHEET[0], short / SHEET[1]));
  return { ratio: 1 / parts, name: `1:${parts}` };
}

/** A round length near a fifth of the drawing: 1, 2 or 5 times a power of ten, of feet (inches below one) or meters. */
function barLength(width: number, metric: boolean): number {
  const unit = metric ? 1000 / 25.4 : width / 5 < 12 ? 1 : 12;
  const want = width / 5 / unit;
  const power = 10 ** Math.floor(Math.log10(want));
  const steps = [1, 2, 5, 10].map((step) => step * power * unit);
  return steps.filter((step) => step <= width / 5).at(-1) ?? unit;
}

function scaleBar(layout: Layout, left: number, top: number, width: number): DrawingElement[] {
  const s = layout.size;
  const length = barLength(width, layout.say.metric);
  const bottom = top - 0.5 * s;
  const half = left + length / 2;
  const end = left + length;
  const place = (x: number) => ({ x, y: bottom - 1.1 * s, anchor: "middle" as const });
  return [
    {
      type: "poly",
      closed: true,
      points: [
        [left, bottom],
        [end, bottom],
        [end, top],
        [left, top],
      ],
    },
    { type: "line", from: [half, bottom], to: [half, top] },
    { type: "line", from: [left, (top + bottom) / 2], to: [half, (top + bottom) / 2] },
    ...layout.write("0", [place(left)], ["label"]),
    ...layout.write(layout.say.length(length), [place(end)], ["label"]),
  ];
}

export interface Foot {
  readonly elements: DrawingElement[];
  readonly scale: number;
}

/**
 * Title and scale below all that is drawn.
 * @param drawn everything else on the sheet
 */
export function drawFoot(layout: Layout, title: string, drawn: Box): Foot {
  const s = layout.size;
  const left = drawn.left;
  const width = drawn.right - drawn.left;
  const baseline = drawn.bottom - 2.2 * s;
  const heading = layout.write(
    title,
    [{ x: left, y: baseline, anchor: "start" }],
    ["label", "title"],
    1.15 * s,
  );
  const bar = scaleBar(layout, left, baseline - 1.2 * s, width);
  // the sheet's own size, before the note that states the scale widens it
  const sheet =
    union([drawn, ...[...heading, ...bar].flatMap((element) => elementBox(element) ?? [])]) ?? drawn;
  const note = (scale: PaperScale, say: Say): string =>
    say.text("Printed at its own size: {scale}", { scale: scale.name });
  const wordy = layout.width(
    note(paperScale(sheet.right - sheet.left, sheet.top - sheet.bottom, layout.say.metric), layout.say),
  );
  const barEnd = union(bar.flatMap((element) => elementBox(element) ?? []))?.right ?? left;
  const right = Math.max(sheet.right, barEnd + 1.5 * s + wordy);
  const scale = paperScale(right - sheet.left + 3 * s, sheet.top - sheet.bottom + 3 * s, layout.say.metric);
  const text = note(scale, layout.say);
  const noted = layout.write(
    text,
    [{ x: barEnd + 1.5 * s, y: baseline - 1.75 * s, anchor: "start" }],
    ["label", "paper"],
  );
  return {
    elements: [...heading, { type: "group", classes: ["dimension", "scale"], children: [...bar, ...noted] }],
    scale: scale.ratio,
  };
}
