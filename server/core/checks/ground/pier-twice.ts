import type { Model, Pier } from "../../model/model.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly pier: string;
  readonly other: string;
  readonly timber: string | undefined;
  /** center to center in plan, and what both need to stand beside each other, inches */
  readonly apart: number;
  readonly room: number;
  readonly diameters: readonly [number, number];
}

/** Each pair whose concrete would stand in the same ground, the later one in the file first. */
function* pairs({ piers }: Model): Generator<readonly [Pier, Pier, number, number]> {
  for (const [i, later] of piers.entries())
    for (const first of piers.slice(0, i)) {
      // a place that its list names twice has its own finding
      if (later.id === first.id && later.place.path !== first.place.path) continue;
      const apart = Math.hypot(later.top[0] - first.top[0], later.top[1] - first.top[1]);
      const room = (later.diameter + first.diameter) / 2;
      if (apart < room - 1 / 16) yield [later, first, apart, room];
    }
}

export const pierTwice = defineCheck<"model", Data>({
  meta: {
    id: "pier-twice",
    title: "Two piers in one place",
    level: "error",
    area: "ground",
    source: { text: "geometry: two bodies do not share a place", status: "derived" },
    explanation: {
      what: "Two piers stand under the same post, or so near each other that they run into one another.",
      why: "Only one can be dug; which of the two sizes holds is not clear from the file, and the frame is reckoned with both.",
      formula: "center to center ≥ half of both diameters",
      remedy: "Leave out one of them, or name the posts that each entry is for (under: [post@A1, post@A2]).",
    },
  },
  input: "model",
  *find(model) {
    for (const [later, first, apart, room] of pairs(model))
      yield {
        path: later.entry.path,
        onKey: true,
        place: later.id,
        data: {
          pier: later.id,
          other: first.id,
          timber: later.timber?.id,
          apart,
          room,
          diameters: [later.diameter, first.diameter],
        },
        value: apart,
        limit: room,
        unit: "in",
        severity: room - apart,
        related:
          first.entry.path === later.entry.path
            ? []
            : [{ path: first.entry.path, message: (say) => say.text("the other pier") }],
      };
  },
  words: (d, say) =>
    d.apart < 1 && d.timber !== undefined
      ? say.text(
          "{pier} and {other} both stand under {timber}: only one can be dug, and which sizes hold is not clear. Leave one of them out, or name the posts that each entry is for.",
          { pier: d.pier, other: d.other, timber: d.timber },
        )
      : say.text(
          "{pier} stands {apart} from {other}, center to center, and they need {room}: they run into one another. Move or leave out one of them.",
          { pier: d.pier, other: d.other, apart: say.length(d.apart), room: say.length(d.room) },
        ),
  worked: (d, say) =>
    say.text("{apart} < ({one} + {other}) ÷ 2 = {room}", {
      apart: say.length(d.apart),
      one: say.length(d.diameters[0]),
      other: say.length(d.diameters[1]),
      room: say.length(d.room),
    }),
});
