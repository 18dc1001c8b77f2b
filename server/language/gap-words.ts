/** Which loads are not among the figures that are shown, as a sentence and as a few words. */
import type { Say } from "../core/checks/say.ts";
import type { LoadGap } from "../core/statics/load-gaps.ts";
import { keysOf } from "../document/tree.ts";

/** Timbers of unknown weight go together: one slip in a species has dozens. */
function grouped(gaps: readonly LoadGap[]): LoadGap[][] {
  const weights = gaps.filter(({ what }) => what === "weight");
  const others = gaps.filter(({ what }) => what !== "weight").map((gap) => [gap]);
  return weights.length > 0 ? [...others, weights] : others;
}

/** `“ground” under “snow”` */
function keyWords(path: string, say: Say): string {
  const keys = keysOf(path);
  const [map, key = ""] = [keys.at(-2), keys.at(-1)];
  return map === undefined ? say.text("“{key}”", { key }) : say.text("“{key}” under “{map}”", { key, map });
}

function lacksOf(group: readonly LoadGap[]): readonly string[] {
  return [...new Set(group.flatMap(({ lacks }) => lacks))];
}

/** `snow`, `what floor loft carries`, `the given weight` */
function shortWords(group: readonly LoadGap[], say: Say): string {
  const [gap] = group;
  switch (gap?.what) {
    case "snow":
      return say.text("snow");
    case "wind":
      return say.text("wind");
    case "roof":
      return say.text("the roof");
    case "floor":
      return say.text("the load of floor {floor}", { floor: gap.floor });
    case "weight":
      return group.length === 1
        ? say.text("the weight of {timber}", { timber: gap.timber })
        : say.text("the weight of {count} timbers", { count: group.length });
    default:
      return say.text("the given {keys}", {
        keys: say.list(lacksOf(group).map((path) => keysOf(path).at(-1) ?? "")),
      });
  }
}

/** @returns nothing, or `without snow and wind` */
export function withoutWords(gaps: readonly LoadGap[], say: Say): string[] {
  if (gaps.length === 0) return [];
  const loads = say.list(grouped(gaps).map((group) => shortWords(group, say)));
  return [say.text("without {loads}", { loads })];
}

const INSTEAD = "{load}, in place of which the usual counts (mend {keys})";

/**
 * @param figures whether figures stand beside the sentence
 * @returns nothing, or a sentence: which loads are not in the figures, and where each is to be mended
 */
export function gapWords(gaps: readonly LoadGap[], say: Say, figures = true): string[] {
  if (gaps.length === 0) return [];
  const loads = grouped(gaps)
    .map((group) =>
      say.text(group[0]?.what === "stated" ? INSTEAD : "{load} (mend {keys})", {
        load: shortWords(group, say),
        keys: say.list(lacksOf(group).map((path) => keyWords(path, say))),
      }),
    )
    .join("; ");
  return [
    figures
      ? say.text("Not in these figures, since the file lacks it or it cannot be read: {loads}.", { loads })
      : say.text("In no check, since the file lacks it or it cannot be read: {loads}.", { loads }),
  ];
}
