import { defineCheck } from "../check.ts";
import { sizeFound } from "./size-path.ts";
import { type WrittenWedge, wedgeFix, writtenWedges } from "./wedge-lengths.ts";

/** Wedges that were meant are shorter than so many of what the rule takes. */
const MOST = 2;

export const wedgeLong = defineCheck<"model", WrittenWedge>({
  meta: {
    id: "wedge-long",
    title: "A wedge far longer than its mortise and what drying asks for",
    level: "warning",
    area: "joinery",
    source: {
      text: "common practice, no source: at most twice what the rule takes",
      status: "common-practice",
    },
    explanation: {
      what: "The wedge of a half-dovetail is more than twice as long as its mortise is deep with all that the drying tail will ask for.",
      why: "What is over never goes in: it stands out of the post, and with the slope of the wedge its thick end is higher than anyone drives. The number, or its unit, is mostly mistyped.",
      formula: "length ≤ 2 × (mortise + the more of what it stands out and what it is driven on by)",
      remedy: "Shorten it, or leave its length out: the rule takes what drying asks for.",
    },
  },
  input: "model",
  *find(model) {
    for (const wedge of writtenWedges(model)) {
      const { joint, path, length, usual } = wedge;
      const limit = MOST * usual;
      if (length > limit + 1e-6) yield sizeFound(joint, { path }, length, limit, wedge);
    }
  },
  words: (d, say) =>
    say.text(
      "The wedge at {joint} is {length} long, and its mortise is {mortise} deep: {usual} is all that is ever driven in, the rest stands out of the post. Look whether the number or its unit is mistyped.",
      {
        joint: d.joint.id,
        length: say.length(d.length),
        mortise: say.length(d.mortise),
        usual: say.length(d.usual),
      },
    ),
  worked: (d, say) =>
    say.text("{length} > 2 × {usual} = {limit}", {
      length: say.length(d.length),
      usual: say.length(d.usual),
      limit: say.length(MOST * d.usual),
    }),
  fixes: wedgeFix,
});
