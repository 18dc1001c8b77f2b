import { DRIVEN, PREBORED } from "../../fasteners/nail-room.ts";
import { mostNailsAt } from "../../roof/nail-places.ts";
import { defineCheck } from "../check.ts";
import { fineLength } from "../formula-words.ts";
import type { NailSet } from "./nail-sets.ts";

interface Data extends NailSet {
  /** that stand there driven straight in, and in bored holes */
  readonly driven: number;
  readonly bored: number;
}

export const nailsCrowded = defineCheck<"shared", Data>({
  meta: {
    id: "nails-crowded",
    title: "Nails that stand too close to each other or to an edge",
    level: "warning",
    area: "joinery",
    source: { text: "NDS commentary to 12.1.6.6, Table C12.1.6.6", status: "memory" },
    explanation: {
      what: "More nails are written than stand with their distances on both sides of a rafter over its seat or at its head, or of a purlin over what carries it. A note where holes that are bored first make room for them.",
      why: "The wood splits from nail to nail, and then none of them holds what is counted on.",
      formula:
        "along the grain, over a seat or under a purlin: 15 D from nail to nail, 10 D in bored holes; up the plumb cut of a head 10 D, bored 5 D; 2.5 D to an edge; toe-nails stand half on each side of the rafter or purlin; D = the nail’s diameter",
      remedy:
        "Bore holes of three quarters of the nail (common practice, no source), take fewer or thinner nails, or screws.",
    },
  },
  input: "shared",
  *find({ nailSets }) {
    for (const set of nailSets()) {
      const { of, fasteners, places, written } = set;
      const [driven, bored] = [DRIVEN, PREBORED].map((room) => mostNailsAt(of, fasteners, places, room));
      if (driven === undefined || bored === undefined || fasteners.count <= driven) continue;
      yield {
        path: `${written}/count`,
        place: set.place,
        ...(fasteners.count <= bored ? { level: "note" as const } : {}),
        data: { ...set, driven, bored },
        value: fasteners.count,
        limit: fasteners.count <= bored ? driven : bored,
        unit: "count",
        severity: fasteners.count - driven,
      };
    }
  },
  words: ({ place, of, fasteners, places, driven, bored }, say) => {
    const values = {
      joint: place,
      of: of.id,
      count: fasteners.count,
      diameter: fineLength(fasteners.diameter, say),
      room: say.length(places.room),
      driven,
      bored,
    };
    if (fasteners.count <= bored)
      return say.text(
        "{count} nails of {diameter} stand close at {joint}, in {room} of {of}: {driven} have room when they are driven straight in, {bored} in bored holes. Bore for them, or the wood splits.",
        values,
      );
    return bored > 0
      ? say.text(
          "{count} nails of {diameter} are too many at {joint}, in {room} of {of}: {bored} have room in bored holes, {driven} without, and the wood splits. Take fewer and longer ones, or screws.",
          values,
        )
      : say.text(
          "{count} nails of {diameter} have no room at {joint}, in {room} of {of}: the wood splits. Take thinner ones, or screws.",
          values,
        );
  },
  worked: ({ fasteners, driven, bored }, say) =>
    say.text("{count} > {most}", {
      count: fasteners.count,
      most: fasteners.count <= bored ? driven : bored,
    }),
  fixes: ({ driven, written }, say) =>
    driven > 0
      ? [
          {
            title: say.text("Take {count} of them", { count: driven }),
            edits: [{ kind: "replace", path: `${written}/count`, text: `${driven}` }],
          },
        ]
      : [],
});
