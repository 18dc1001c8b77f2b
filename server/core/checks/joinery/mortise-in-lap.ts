import type { Joint } from "../../joinery/joint.ts";
import { isLap, LEAST_WALL, type NearJoints } from "../../joinery/near-joints.ts";
import { isScarf } from "../../joinery/scarf.ts";
import { defineCheck } from "../check.ts";
import { nearEachOther, nearWorked, placeWords, roomWords, shortenFix } from "./near-joints.ts";

interface Data {
  readonly near: NearJoints;
  readonly lap: Joint;
  readonly other: Joint;
}

function sides({ joints: [a, b] }: NearJoints): readonly [Joint, Joint] {
  return isLap(a.kind) ? [a, b] : [b, a];
}

export const mortiseInLap = defineCheck<"model", Data>({
  meta: {
    id: "mortise-in-lap",
    title: "A joint cut in a scarf or lap",
    level: "warning",
    area: "joinery",
    source: {
      text: "common practice, no source: nothing is cut in a scarf, or within 1/2 in (13 mm) of it",
      status: "common-practice",
    },
    explanation: {
      what: "A mortise, tenon or peg of a third timber reaches into the lap where two timbers are scarfed or halved together, or hardly any wood is left beside it. A post that is joined to both lengths over it is cut in both, and is left alone.",
      why: "Each half of a scarf has little more than half the wood, and holds the other by its pegs, blades and butts: a mortise takes these away. In the lap of a corner or a crossing the mortise has to be cut through both timbers, which no cut sheet of the second shows.",
      formula: "the solids of both joints in space; a note at laps, a warning at scarfs",
      remedy: "Move the scarf, or shorten the tenon so far that it stays out of it.",
    },
  },
  input: "model",
  *find(model) {
    for (const near of nearEachOther(model, true)) {
      const [lap, other] = sides(near);
      const scarf = isScarf(lap.kind);
      // beside the lap of a corner or a crossing there is wood enough
      if (!scarf && near.crossing === undefined) continue;
      const depth = near.crossing ? near.depth : -near.depth;
      const spliced = lap.path.endsWith("/splice");
      yield {
        ...(spliced ? { path: `${lap.path}/at` } : { path: other.path, onKey: true as const }),
        apart: spliced ? other.path : lap.path,
        place: lap.id,
        ...(scarf ? {} : { level: "note" as const }),
        data: { near, lap, other },
        value: Math.max(0, near.depth),
        limit: near.crossing ? 0 : LEAST_WALL,
        unit: "in",
        severity: depth,
        related: [
          {
            path: spliced ? other.path : lap.path,
            message: (say) => say.text("{joint} is there", { joint: spliced ? other.id : lap.id }),
          },
        ],
      };
    }
  },
  words: ({ near, lap, other }, say) => {
    const { timber, at, depth, crossing } = near;
    const values = {
      lap: lap.id,
      other: other.id,
      timber: timber.id,
      at: placeWords(at, say),
      depth: say.length(Math.abs(depth)),
      second: (lap.of.id === timber.id ? lap.into : lap.of).id,
      least: say.length(LEAST_WALL),
    };
    if (!isScarf(lap.kind))
      return say.text(
        "{other} goes {depth} into the lap of {lap} in {timber}, {at} along it. Cut its mortise through {second} too when the lap is together, and count on the lap for less.",
        values,
      );
    const what = crossing?.startsWith("peg-")
      ? say.text(
          "A peg of {other} or of {lap} runs {depth} into the other joint in {timber}, {at} along it: a hole there takes wood that holds the scarf together.",
          values,
        )
      : crossing || depth < 0
        ? say.text(
            "{other} goes {depth} into the scarf {lap} in {timber}, {at} along it: it takes wood by which the two lengths hold each other.",
            values,
          )
        : say.text(
            "Only {depth} of wood is left between {other} and the scarf {lap} in {timber}, {at} along it, less than {least}: it breaks out beside the scarf.",
            values,
          );
    return `${what} ${roomWords(near, say)}`;
  },
  worked: ({ near }, say) => nearWorked(near, say),
  fixes: ({ near }, say) => shortenFix(near, say),
});
