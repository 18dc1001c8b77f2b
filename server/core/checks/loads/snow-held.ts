import type { CoveringKind } from "../../frame/roof.ts";
import { isSlippery } from "../../roof/coverings.ts";
import { defineCheck } from "../check.ts";
import { COVERING_NAMES } from "../roof/covering-names.ts";
import { isRoofLost } from "./roof-lost.ts";

interface Data {
  /** undefined = the roof names none */
  readonly covering: CoveringKind | undefined;
}

export const snowHeld = defineCheck<"frame", Data>({
  meta: {
    id: "snow-held",
    title: "Snow said to slide off a covering that holds it",
    level: "warning",
    area: "loads",
    source: {
      text: "ASCE 7-16 and 7-22 section 7.4: slippery surfaces are metal, slate, glass and smooth membranes; granules and shakes are none",
      status: "memory",
    },
    explanation: {
      what: "The site says that the roof sheds its snow, but its covering is not slippery, or none is named.",
      why: "Less snow would be counted than will lie there. The whole of it is counted instead.",
      formula: "C_s of slippery surfaces for metal and slate alone; of all other surfaces for the rest",
      remedy: "Take “slides” out, or choose a covering that sheds snow and keep its eaves clear.",
    },
  },
  input: "frame",
  *find(frame) {
    const { roof } = frame;
    const { snow } = frame.site;
    if (!snow?.slides || !roof || (roof.covering && isSlippery(roof.covering.kind))) return;
    // the covering may be what is being typed
    if (isRoofLost(frame, roof)) return;
    yield { path: `${snow.path}/slides`, data: { covering: roof.covering?.kind } };
  },
  words: ({ covering }, say) =>
    covering === undefined
      ? say.text(
          "The snow is said to slide, and no covering is named that it could slide on: all of it is counted. Name the covering, or take “slides” out.",
          {},
        )
      : say.text(
          "{covering} holds its snow, though the site says that it slides: all of it is counted. Take “slides” out, or choose a covering of metal or slate.",
          { covering: COVERING_NAMES[covering] },
        ),
});
