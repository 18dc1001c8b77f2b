import { MORTISE_CLEARANCE } from "../../joinery/proportions.ts";
import { inches } from "../../quantity/length.ts";
import { defineCheck } from "../check.ts";
import { replaceFix } from "../replace-fix.ts";
import { judgedJoints } from "./judged.ts";
import { sizePath } from "./size-path.ts";

interface Data {
  readonly joint: string;
  readonly into: string;
  readonly path: string;
  readonly length: number;
  /** of the mortised timber behind the housing, in */
  readonly wood: number;
  /** length with which the tenon goes through, its tail included, in */
  readonly through: number;
}

export const wedgeBlind = defineCheck<"model", Data>({
  meta: {
    id: "wedge-blind",
    title: "A wedge in a blind mortise",
    level: "error",
    area: "joinery",
    source: {
      text: "common practice, no source: a wedge is driven from the far side of a through mortise; a mortise is cut 1/4 in deeper than its tenon is long",
      status: "common-practice",
    },
    explanation: {
      what: "The tenon of a wedged half-dovetail ends inside the timber that it enters, so that its mortise does not come out on the far side.",
      why: "The wedge goes in from the far side, above the tenon, with its thick end outward. In a blind mortise there is no way in for it, nothing holds the tail down on its seat, and the timber draws out.",
      formula: "length + 1/4 in ≥ wood of the mortised timber behind the housing",
      remedy: "Leave the tenon's length out, so that it goes through; or take a pegged mortise and tenon.",
    },
  },
  input: "model",
  *find(model) {
    for (const joint of judgedJoints(model)) {
      const { tenon, wedge } = joint.sizes;
      if (!tenon || !wedge || tenon.through) continue;
      const [length, wood] = [tenon.length.value, tenon.room];
      const tail = joint.entry?.tail === undefined ? 0 : inches(joint.entry.tail);
      const where = sizePath(joint, "tenon/length", tenon.length);
      yield {
        ...where,
        place: joint.id,
        data: { joint: joint.id, into: joint.into.id, path: where.path, length, wood, through: wood + tail },
        value: length,
        limit: wood,
        unit: "in",
        severity: wood - length,
      };
    }
  },
  words: (d, say) =>
    say.text(
      "The tenon at {joint} is {length} long and ends inside {into}, which has {wood} of wood there: its mortise is blind, and the wedge, which is driven in from the far side, finds no way in. Make the tenon {through} long, or take a pegged mortise and tenon.",
      {
        joint: d.joint,
        into: d.into,
        length: say.length(d.length),
        wood: say.length(d.wood),
        through: say.length(d.through),
      },
    ),
  worked: (d, say) =>
    say.text("{length} + {room} < {wood}", {
      length: say.length(d.length),
      room: say.length(MORTISE_CLEARANCE),
      wood: say.length(d.wood),
    }),
  fixes: (d, say) =>
    replaceFix(d.path, say.length(d.through), (length) =>
      say.text("Make the tenon {length} long, so that it goes through", { length }),
    ),
});
