import { isWhole } from "../../frame/frame.ts";
import { defineCheck } from "../check.ts";

export const siteLoadUnused = defineCheck<"results", undefined>({
  meta: {
    id: "site-load-unused",
    title: "Snow of the site that loads nothing",
    level: "warning",
    area: "loads",
    source: { text: "statics: a load needs something that it acts on", status: "derived" },
    explanation: {
      what: "The file gives snow, but the frame has no roof for it to lie on.",
      why: "Who states a load expects that the frame is checked for it. Here no timber carries any of it.",
      remedy: "Describe the roof; for a frame that stays open take the snow out of the file.",
    },
  },
  input: "results",
  ofTheWhole: true,
  *find({ frame }) {
    if (!frame || !isWhole(frame.model.frame)) return;
    const { site, roof, basis } = frame.model.frame;
    // with a roof, what is missing has findings of its own; so has a basis that is not named
    if (roof || !basis.loads) return;
    const acts = new Set(frame.solution.loads.all.map((l) => l.kind));
    const { snow } = site;
    if (snow?.ground !== undefined && snow.ground > 0 && !acts.has("S"))
      yield { path: snow.path, onKey: true, data: undefined };
  },
  words: (_, say) =>
    say.text(
      "The site gives snow, and the frame has no roof for it to lie on: no timber is checked for snow. Describe the roof, or take the snow out for a frame that stays open.",
    ),
});
