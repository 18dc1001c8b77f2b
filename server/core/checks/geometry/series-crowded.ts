import { type CrowdedSeries, crowdedSeries } from "../../model/crowded-series.ts";
import { MOST_IN_SERIES } from "../../model/series.ts";
import { defineCheck } from "../check.ts";

export const seriesCrowded = defineCheck<"model", CrowdedSeries>({
  meta: {
    id: "series-crowded",
    title: "A series whose sticks crowd each other",
    level: "error",
    area: "geometry",
    source: {
      text: `two sticks cannot take the same space; the frame language of this program places at most ${MOST_IN_SERIES} bays in a series`,
      status: "file-format",
    },
    explanation: {
      what: "A series is spaced more closely than its sticks are wide, or so closely that it would have more sticks than are placed.",
      why: "Its sticks take each other's space, or what is placed is not what the file says: most likely a slip of the pen or a missing unit. No forces of the frame can be found while it is so.",
      formula: "center to center ≥ width of a stick that way, less 1/16 in",
      remedy: "Give the spacing from center to center, with its unit.",
    },
  },
  input: "model",
  *find(model) {
    for (const data of crowdedSeries(model)) {
      const { path } = data;
      yield data.kind === "many"
        ? { path, data, value: data.count, limit: MOST_IN_SERIES, unit: "count" }
        : { path, data, value: data.apart, limit: data.wide, unit: "in" };
    }
  },
  words: (d, say) =>
    d.kind === "many"
      ? say.text(
          "At this spacing {name} would have more than {most} sticks in a row, so only that many are placed, and no forces are found. Correct the number or its unit.",
          { name: d.name, most: MOST_IN_SERIES },
        )
      : say.text(
          "The sticks of {name} stand {apart} from center to center and are {wide} wide that way, so they take each other’s space, and no forces are found while they do. Set them farther apart, or take fewer.",
          { name: d.name, apart: say.length(d.apart), wide: say.length(d.wide) },
        ),
  worked: (d, say) =>
    d.kind === "many"
      ? say.text("{count} > {most}", { count: d.count, most: MOST_IN_SERIES })
      : say.text("{apart} < {wide}", { apart: say.length(d.apart), wide: say.length(d.wide) }),
});
