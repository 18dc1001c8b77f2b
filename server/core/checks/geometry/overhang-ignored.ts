import { defineCheck } from "../check.ts";
import { isBetween } from "./spacing-ignored.ts";

interface Data {
  readonly name: string;
  readonly ends: "joined" | "named";
}

export const overhangIgnored = defineCheck<"frame", Data>({
  meta: {
    id: "overhang-ignored",
    title: "An overhang where nothing can hang out",
    level: "warning",
    area: "geometry",
    source: { text: "placement rules of this program", status: "file-format" },
    explanation: {
      what: "An entry gives an overhang, but its sticks end at the two timbers that they lie between, or at ends that the file names.",
      why: "The value is not used, so the timbers are shorter than the file seems to say.",
      remedy:
        "Place the timbers on walls or bents, on top of what carries them, so that they run on past it; or leave the value out.",
    },
  },
  input: "frame",
  *find(frame) {
    for (const member of frame.members) {
      const named = member.ends !== undefined;
      if (member.overhang === undefined || !(named || isBetween(member))) continue;
      yield {
        path: `${member.path}/overhang`,
        onKey: true,
        data: { name: member.name, ends: named ? "named" : "joined" },
      };
    }
  },
  words: ({ name, ends }, say) =>
    ends === "named"
      ? say.text(
          "“overhang” is ignored: {name} goes from one of its “ends” to the other. Move the ends farther apart, or leave it out.",
          { name },
        )
      : say.text(
          "“overhang” is ignored: {name} lies between two timbers and ends where it meets them. Place it on walls or bents, on top of what carries it, to let it hang out, or leave it out.",
          { name },
        ),
});
