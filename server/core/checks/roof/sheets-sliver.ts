import { inches } from "../../quantity/length.ts";
import { sheetsAlong } from "../../roof/sheet-takeoff.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly edge: number;
  readonly cover: number;
  readonly sheets: number;
  readonly last: number;
}

/** A last sheet narrower than this share of its cover is a sliver: its lap takes as much as it covers. */
const SLIVER = 1 / 4;

const SHEETS: ReadonlySet<string> = new Set(["standing-seam", "ribbed-steel", "corrugated-steel"]);

export const sheetsSliver = defineCheck<"model", Data>({
  meta: {
    id: "sheets-sliver",
    title: "Sheets that leave a sliver",
    level: "note",
    area: "roof",
    source: { text: "habit of the trade", status: "common-practice" },
    explanation: {
      what: "The width of the roof is so little more than whole sheets that the last one is a sliver.",
      why: "A whole sheet is bought for it, a narrow strip is hard to fasten and looks it, and wind takes it first.",
      formula: "last sheet = width of the deck − whole sheets × coverage, at least a quarter of the coverage",
      remedy:
        "Change the rake overhang by half of the strip on each side, or start with a cut sheet on both sides.",
    },
  },
  input: "model",
  *find(model) {
    const covering = model.frame.roof?.covering;
    if (covering?.coverage === undefined || !SHEETS.has(covering.kind)) return;
    const cover = inches(covering.coverage);
    if (cover <= 0) return;
    for (const slope of model.roof?.slopes ?? []) {
      const edge = slope.deckTo - slope.deckFrom;
      if (edge <= cover) continue;
      const { sheets, last } = sheetsAlong(edge, cover);
      if (last >= cover * SLIVER) continue;
      yield {
        path: `${covering.path}/coverage`,
        data: { edge, cover, sheets, last },
        value: last,
        limit: cover * SLIVER,
        unit: "in",
        severity: cover * SLIVER - last,
      };
    }
  },
  words: (d, say) =>
    say.text(
      "{sheets} sheets of {cover} cover {edge} of roof, and the last one is a sliver of {last}. Shorten each rake overhang by {half}, or cut the sheets at both edges.",
      {
        sheets: d.sheets,
        cover: say.length(d.cover),
        edge: say.length(d.edge),
        last: say.length(d.last),
        half: say.length(d.last / 2),
      },
    ),
  worked: (d, say) =>
    say.text("{edge} − {whole} × {cover} = {last} < {cover} ÷ 4 = {least}", {
      edge: say.length(d.edge),
      whole: d.sheets - 1,
      cover: say.length(d.cover),
      last: say.length(d.last),
      least: say.length(d.cover * SLIVER),
    }),
});
