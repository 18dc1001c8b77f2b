import { DEEPEST_LATERAL, HEIGHT_SHARE, LOAD_SHARE } from "../../ground/embedded-pole.ts";
import { tiesFooting } from "../../ground/pier-concrete.ts";
import {
  depthNeeded,
  isUnsafe,
  type PadUse,
  type PoleUse,
  type SidewaysUse,
  sidewaysUse,
} from "../../ground/sideways.ts";
import type { Pier } from "../../model/model.ts";
import { caseWords } from "../../statics/case-words.ts";
import { defineCheck, type Fix } from "../check.ts";
import { perDepth, steps } from "../formula-words.ts";
import { replaceFix } from "../replace-fix.ts";
import type { Say } from "../say.ts";
import { type OnSoil, onSoil } from "./on-soil.ts";
import { DEEPEST_PIER, depthFix, nextSize, tubeFix, WIDEST_TUBE } from "./pier-sizes.ts";

interface Data extends Omit<OnSoil, "pier"> {
  readonly use: SidewaysUse;
}

/** A push below this is none, lb. */
const NOTHING = 5;

/** Whether a pier like this holds under every combination. */
const does = (pier: Pier, { cases, soil }: Data): boolean =>
  (sidewaysUse(pier, cases, soil)?.ratio ?? 2) <= 1;

function deeperPier(d: Data, say: Say, diameter = d.use.pier.diameter): number | undefined {
  const pier = { ...d.use.pier, diameter };
  return nextSize(pier.groundLow - pier.tubeBottom, DEEPEST_PIER, say, (depth) => {
    const tubeBottom = pier.groundLow - depth;
    return does({ ...pier, tubeBottom, bottom: tubeBottom - (pier.footing?.thickness ?? 0) }, d);
  });
}

function widerTube(d: Data, say: Say): number | undefined {
  const { pier } = d.use;
  return nextSize(pier.diameter, WIDEST_TUBE, say, (diameter) => does({ ...pier, diameter }, d));
}

/** The slimmest tube for which some depth does. */
function widerAndDeeper(d: Data, say: Say): { readonly tube: number; readonly depth: number } | undefined {
  let depth: number | undefined;
  const tube = nextSize(d.use.pier.diameter, WIDEST_TUBE, say, (size) => {
    depth = deeperPier(d, say, size);
    return depth !== undefined;
  });
  return tube !== undefined && depth !== undefined ? { tube, depth } : undefined;
}

function doubled(pier: Pier): Pier {
  return { ...pier, entry: { ...pier.entry, lateral: "doubled" } };
}

/** The doubled value is enough, if it may be taken. */
const mayDouble = (d: Data): boolean =>
  d.use.kind === "pole" && d.use.pier.entry.lateral === "single" && does(doubled(d.use.pier), d);

function remedyWords(d: Data, say: Say): string {
  const [deeper, wider] = [deeperPier(d, say), widerTube(d, say)];
  const { pier } = d.use;
  const words = {
    now: say.length(pier.groundLow - pier.tubeBottom),
    deeper: deeper === undefined ? "" : say.length(deeper),
    wider: wider === undefined ? "" : say.length(wider),
  };
  if (deeper !== undefined && wider !== undefined)
    return say.text("A depth of {deeper} instead of {now}, or a tube of {wider}, holds it.", words);
  if (deeper !== undefined) return say.text("A depth of {deeper} instead of {now} holds it.", words);
  if (wider !== undefined) return say.text("A tube of {wider} holds it.", words);
  const both = widerAndDeeper(d, say);
  if (both)
    return say.text("A tube of {tube} dug {depth} deep holds it.", {
      tube: say.length(both.tube),
      depth: say.length(both.depth),
    });
  return say.text(
    "No usual tube does: brace the frame so that its feet push less, or tie them to each other below.",
  );
}

function padWords(d: Data, use: PadUse, say: Say): string {
  // told in whole pounds: what is less is nothing
  if (use.holds < 0.5)
    return say.text(
      d.cases.some(({ caseId, wind }) => caseId === use.caseId && wind)
        ? "{post} pushes {pier} sideways with {push} under {combination}: the wind takes all load off the pad at the same time, and nothing holds it on “soil: {soil}”. It slides, and the frame spreads. Dig in a tube instead of the pad, or tie the feet to each other."
        : "{post} pushes {pier} sideways with {push} under {combination}: no load presses the pad on the soil at the same time, and nothing holds it on “soil: {soil}”. It slides, and the frame spreads. Dig in a tube instead of the pad, or tie the feet to each other.",
      shared(d, say),
    );
  return say.text(
    "{post} pushes {pier} sideways with {push} under {combination}, more than the {held} with which the {load} on it hold a pad on “soil: {soil}”: it slides, and the frame spreads. Dig in a tube instead of the pad, or tie the feet to each other.",
    {
      ...shared(d, say),
      load: say.force(use.load),
    },
  );
}

const shared = ({ use, soil, solution }: Data, say: Say) => ({
  pier: use.pier.id,
  post: use.pier.timber?.id ?? "",
  push: say.force(use.push),
  combination: caseWords(solution, use.caseId, say),
  soil,
  held: say.force(use.holds),
});

/** Which value counts, where another is larger. */
function valueWords(use: PoleUse, say: Say): string {
  const twice = say.force(2 * use.single);
  if (isUnsafe(use))
    return use.pier.entry.lateral === "doubled" && use.short
      ? say.text(", doubled already")
      : say.text("; the doubled value would hold {twice} only", { twice });
  return use.short
    ? say.text(
        "; the doubled value, {twice}, holds only where half an inch of movement at the ground does no harm: then write “lateral: doubled”",
        { twice },
      )
    : use.pier.entry.lateral === "doubled"
      ? say.text("; the doubled value is for wind, not for what pushes all winter")
      : "";
}

function footingWords({ pier }: PoleUse, say: Say): string {
  if (!pier.footing) return "";
  return tiesFooting(pier)
    ? say.text(" with its footing")
    : say.text(" (no bars tie its footing on, so that does not count)");
}

function poleWords(d: Data, use: PoleUse, say: Say): string {
  return say.text(
    "{post} pushes {pier} sideways with {push} under {combination}, {height} above the ground, more than the {held} that “soil: {soil}” holds beside a pier {breadth} across and {depth} deep{footing}{value}. Beyond that it leans. {help}",
    {
      ...shared(d, say),
      height: say.length(use.height),
      breadth: say.length(use.pier.diameter),
      depth: say.length(use.depth),
      footing: footingWords(use, say),
      value: valueWords(use, say),
      help: remedyWords(d, say),
    },
  );
}

function poleWorked(use: PoleUse, say: Say): string {
  const { lateral } = use.soil;
  const twice = use.holds > use.single ? "2 × " : "";
  const pressure =
    (use.holds / use.single) * (lateral.value / 12) * Math.min(use.depth, 12 * DEEPEST_LATERAL);
  const third = say.pressure(pressure / 3);
  const [depth, height] = [say.length(use.depth), say.length(use.height)];
  const most = say.length(Math.min(use.depth, 12 * DEEPEST_LATERAL));
  return steps(
    `S_1: ${twice}${perDepth(lateral.value, say)} × ${most} ÷ 3 = ${third}`,
    `${third} × ${say.length(use.pier.diameter)} × (${depth})² ÷ (${say.number(LOAD_SHARE)} × (${depth} + ${say.number(HEIGHT_SHARE)} × ${height})) = ${say.force(use.holds)} < ${say.force(use.push)}`,
  );
}

function padWorked(use: PadUse, say: Say): string {
  const { sliding } = use.soil;
  const side = say.length(use.pier.diameter);
  const held =
    sliding.kind === "friction"
      ? `${say.number(sliding.coefficient.value)} × ${say.force(use.load)}`
      : `min(${say.pressure(sliding.psf.value)} × (${side})², 0.5 × ${say.force(use.load)})`;
  return `${held} = ${say.force(use.holds)} < ${say.force(use.push)}`;
}

function together(d: Data, say: Say): Fix[] {
  const both = widerAndDeeper(d, say);
  if (!both) return [];
  const { path } = d.use.pier.entry;
  const [tube, depth] = [say.length(both.tube), say.length(both.depth)];
  return [
    {
      title: say.text("Take a tube of {tube}, {depth} deep", { tube, depth }),
      edits: [
        { kind: "replace", path: `${path}/diameter`, text: tube },
        { kind: "replace", path: `${path}/depth`, text: depth },
      ],
    },
  ];
}

export const pierPushedOver = defineCheck<"results", Data>({
  meta: {
    id: "pier-pushed-over",
    title: "A pier that is pushed over",
    level: "warning",
    area: "ground",
    source: {
      text: "IBC 1807.3.2.1, equation 18-1, nothing held at the ground; lateral bearing of IBC 2012 Table 1806.2 (published), doubled by IBC 1806.3.4; pads by its friction",
      status: "memory",
    },
    explanation: {
      what: "A post pushes its pier sideways with more than the soil beside it holds; beyond the doubled value of the soil it is an error. The concrete of the shaft itself is not checked in bending.",
      why: "Knees under snow push the feet apart, wind pushes them over; a pier that gives way leans, and the frame spreads or racks.",
      formula:
        "A tube: push ≤ S_1 b d² ÷ (2.34 (d + 1.09 h)). S_1 is a third of the depth times the soil’s lateral bearing, b the tube’s width, d its depth with a footing that bars tie on, h the height of its top above the lowest ground. A pad: push ≤ friction × (dead load + pad), in clay its adhesion.",
      remedy:
        "Dig deeper or take a wider tube. Where half an inch of movement at the ground does no harm, “lateral: doubled” takes the doubled value for combinations with wind; what pushes all winter goes by the single one.",
    },
  },
  input: "results",
  ofTheWhole: true,
  *find({ frame }) {
    for (const { pier, cases, soil, solution } of onSoil(frame)) {
      const use = sidewaysUse(pier, cases, soil);
      if (!use || use.push < NOTHING || use.ratio <= 1 + 1e-9) continue;
      const key = use.kind === "pad" ? "width" : "depth";
      yield {
        path: `${pier.entry.path}/${key}`,
        place: pier.id,
        level: isUnsafe(use) ? "error" : "warning",
        data: { use, cases, soil, solution },
        value: use.push,
        limit: use.holds,
        unit: "lb",
        // equal reactions at mirrored places differ in the last digits
        severity: Math.round(100 * (use.kind === "pole" ? depthNeeded(use) - use.depth : use.ratio)),
      };
    }
  },
  words: (d, say) => (d.use.kind === "pad" ? padWords(d, d.use, say) : poleWords(d, d.use, say)),
  worked: ({ use }, say) => (use.kind === "pad" ? padWorked(use, say) : poleWorked(use, say)),
  fixes: (d, say): Fix[] => {
    if (d.use.kind === "pad") return [];
    const { pier } = d.use;
    const [deeper, wider] = [deeperPier(d, say), widerTube(d, say)];
    return [
      ...depthFix(pier, deeper, say),
      ...tubeFix(pier, wider, say),
      ...(deeper === undefined && wider === undefined ? together(d, say) : []),
      ...(mayDouble(d)
        ? replaceFix(`${pier.entry.path}/lateral`, "doubled", () =>
            say.text("Take the doubled value: half an inch of movement at the ground does no harm here"),
          )
        : []),
    ];
  },
});
