/** Which layers of forces there are, and which load combinations they are offered for. */
import type { Say } from "../core/checks/say.ts";
import { isBalancedSnow } from "../core/statics/basic-loads.ts";
import { frameCaseWords } from "../core/statics/case-words.ts";
import type { FrameCase } from "../core/statics/combine.ts";
import type { FrameResults } from "../core/statics/frame-results.ts";

const LAYERS = ["axial", "shear", "moment", "deflected"] as const;
export type ForceLayer = (typeof LAYERS)[number];

/** What is drawn over an elevation. */
export interface Overlay {
  readonly layer: ForceLayer;
  /** id of a combination, or `worst` */
  readonly caseId: string;
  /** undefined while the frame cannot be analysed */
  readonly frame: FrameResults | undefined;
}

export interface Choice {
  readonly id: string;
  readonly title: string;
}

/** Each timber under the combination that gives it the most. */
export const WORST = "worst";
/** No layer. */
export const NONE = "none";

const TITLES: Readonly<Record<ForceLayer, string>> = {
  axial: "Axial force",
  shear: "Shear",
  moment: "Moment",
  deflected: "Deflected shape",
};

export const layerTitle = (layer: ForceLayer, say: Say): string => say.text(TITLES[layer]);

/** @returns the layer of that name; undefined for `none` and for names that there are not */
export const layerOf = (name: string): ForceLayer | undefined => LAYERS.find((layer) => layer === name);

/** @returns no layer first, then each */
export function layersOf(say: Say): Choice[] {
  return [{ id: NONE, title: say.text("None") }, ...LAYERS.map((id) => ({ id, title: layerTitle(id, say) }))];
}

/** Dead load with all of the balanced snow: what people picture as the loaded roof. */
function isUsual({ combination, parts }: FrameCase): boolean {
  return combination.number === 3 && parts.some(({ load }) => isBalancedSnow(load));
}

/** Ids of the combinations that decide some timber's size, the one that uses its timber most first. */
function governing(frame: FrameResults): string[] {
  const uses = [...frame.members.values()].flatMap(({ uses: [first] }) => (first ? [first] : []));
  uses.sort((a, b) => b.ratio - a.ratio);
  return [...new Set(uses.map((use) => use.caseId))];
}

const combinations = (frame: FrameResults): FrameCase[] => [
  ...new Map(frame.solution.cases.map(({ frameCase }) => [frameCase.id, frameCase])).values(),
];

function usualCase(frame: FrameResults, all: readonly FrameCase[]): string {
  return all.find(isUsual)?.id ?? governing(frame)[0] ?? all[0]?.id ?? "";
}

/** @returns the combination asked for; where there is none of that name, dead load with balanced snow, else the one that governs */
export function caseOf(overlay: Overlay): string {
  const { frame, layer, caseId } = overlay;
  if (!frame) return caseId;
  const all = combinations(frame);
  // a shape is of one moment: pieces of several would not meet
  const known = caseId === WORST ? layer !== "deflected" : all.some(({ id }) => id === caseId);
  return known ? caseId : usualCase(frame, all);
}

/** @returns ids of all combinations, `worst` first where the layer has it */
export function caseIds({ frame, layer }: Overlay): string[] {
  const ids = frame ? combinations(frame).map(({ id }) => id) : [];
  return layer === "deflected" ? ids : [WORST, ...ids];
}

/** @returns the short list: worst, those that govern, dead load alone, with balanced snow, and the one drawn */
export function casesOf(overlay: Overlay, say: Say): Choice[] {
  const { frame, layer } = overlay;
  if (!frame) return [];
  const all = combinations(frame);
  const dead = all.find(({ combination }) => combination.number === 1)?.id ?? "";
  const ids = new Set([...governing(frame), usualCase(frame, all), dead, caseOf(overlay)]);
  const failed = new Set(frame.solution.failed.map(({ caseId }) => caseId));
  const named = [...ids].flatMap((id) => {
    const found = all.find((one) => one.id === id);
    if (!found) return [];
    const words = frameCaseWords(found, say);
    return [
      { id, title: failed.has(id) ? say.text("{combination}: no answer", { combination: words }) : words },
    ];
  });
  return layer === "deflected" ? named : [{ id: WORST, title: say.text("Worst of each timber") }, ...named];
}
