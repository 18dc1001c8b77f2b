import { isWhole } from "../../frame/frame.ts";
import { defineCheck } from "../check.ts";
import { isUnknownWood } from "../file/unknown-id.ts";

interface Data {
  readonly stick: string;
  readonly species: string | undefined;
  readonly grade: string | undefined;
  readonly width: number;
  readonly depth: number;
}

export const timberUnchecked = defineCheck<"results", Data>({
  meta: {
    id: "timber-unchecked",
    title: "A timber whose strength is not known",
    level: "warning",
    area: "members",
    source: { text: "NDS Supplement Tables 4A, 4B and 4D", status: "memory" },
    explanation: {
      what: "There are no design values for the wood of a timber in its size and grade, so no check of its strength was made.",
      why: "Silence about a timber must not be read as a pass.",
      remedy:
        "Name a species and grade that the tables have in this size, or state the values under timber, with the reason.",
    },
  },
  input: "results",
  ofTheWhole: true,
  *find({ frame }) {
    // a species or grade on a line that is lost is not missing
    if (!frame || !isWhole(frame.model.frame)) return;
    for (const t of frame.unchecked) {
      // neither is one whose stated value cannot be read
      if (t.class && (isUnknownWood(t.class) || t.class.unreadValues)) continue;
      yield {
        path: t.path,
        onKey: true,
        place: t.id,
        data: {
          stick: t.id,
          species: t.class?.species?.text,
          grade: t.class?.grade?.text,
          width: t.width,
          depth: t.depth,
        },
      };
    }
  },
  words: (d, say) =>
    say.text(
      "The strength of {stick} was not checked: no table has values of {wood} for a section of {section}. Name another species or grade, or state values (Fb, Ft, Fv, Fc-perp, Fc, E) with a reason under timber.",
      {
        stick: d.stick,
        wood: [d.species ?? say.text("a species that is not named"), d.grade].filter(Boolean).join(", "),
        section: `${say.length(d.width)} × ${say.length(d.depth)}`,
      },
    ),
});
