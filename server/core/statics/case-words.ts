/** A combination in words: its sum, and which snow and which wind it takes where there are several. */
import type { Say } from "../checks/say.ts";
import type { LoadKind } from "../loads/combinations.ts";
import type { BasicLoad } from "./basic-loads.ts";
import type { FrameCase } from "./combine.ts";
import type { LaneWay } from "./partial-loads.ts";
import type { FrameSolution } from "./solve-frame.ts";

const SNOW = {
  balanced: "balanced snow",
  minimum: "the least snow of low slopes",
  "eave-ice": "ice at the eave",
} as const;

const ALONG: Readonly<Record<Exclude<LaneWay["along"], "slope">, string>> = {
  walls: "along the walls",
  joists: "along the joists",
  "across-joists": "across the joists",
};

const WHOLE: Readonly<Partial<Record<LoadKind, string>>> = {
  S: "balanced snow",
  Lr: "roof live load",
  L: "floor live load",
};

/** Cases of the figures that have no letter. */
const FIGURES: Readonly<Record<string, string>> = {
  suction: "suction",
  "light-suction": "light suction",
  pressure: "pressure",
  "pressure-inside": "pressure inside",
  "suction-inside": "suction inside",
};

const wayWords = (way: LaneWay, say: Say): string =>
  way.along === "slope"
    ? say.text("up the slope at wall {wall}", { wall: way.wall })
    : say.text(ALONG[way.along]);

function partialWords({ kind, partial }: BasicLoad, say: Say): string | undefined {
  if (!partial) return undefined;
  const values = {
    load: say.text(WHOLE[kind] ?? kind),
    less: say.list(partial.less.map(String)),
    spans: String(partial.spans),
    along: wayWords(partial, say),
  };
  return partial.share > 0
    ? say.text("{load}, half of it on span {less} of {spans} {along}", values)
    : say.text("{load}, none on span {less} of {spans} {along}", values);
}

/** undefined where the letter of the sum says it all */
function choiceWords(load: BasicLoad, say: Say): string | undefined {
  const partial = partialWords(load, say);
  if (partial !== undefined) return partial;
  const { choice } = load;
  // the sum itself says that 0.6 D holds the frame down
  if (!choice || "dead" in choice) return undefined;
  if ("snow" in choice) return say.text(SNOW[choice.snow]);
  if ("leeward" in choice)
    return say.text("unbalanced snow, leeward at wall {wall}", { wall: choice.leeward });
  const { toward, figure } = choice;
  return figure === ""
    ? say.text("wind toward {direction}", { direction: toward })
    : say.text("wind toward {direction}, case {case}", {
        direction: toward,
        case: figure
          .split("/")
          .map((part) => say.text(FIGURES[part] ?? part))
          .join(", "),
      });
}

/** @returns `D + 0.6 W (wind toward +x, case A)` */
export function frameCaseWords({ combination, parts }: FrameCase, say: Say): string {
  const choices = parts.flatMap(({ load }) => choiceWords(load, say) ?? []);
  return choices.length === 0 ? combination.text : `${combination.text} (${choices.join("; ")})`;
}

/** @returns the words of a combination of a solution; its id where it has no such combination */
export function caseWords(solution: FrameSolution, caseId: string, say: Say): string {
  const found = solution.cases.find(({ frameCase }) => frameCase.id === caseId);
  return found ? frameCaseWords(found.frameCase, say) : caseId;
}
