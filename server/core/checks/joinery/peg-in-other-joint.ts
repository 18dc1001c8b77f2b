import type { NearJoints } from "../../joinery/near-joints.ts";
import { defineCheck } from "../check.ts";
import { nearEachOther, placeWords, upTo } from "./near-joints.ts";
import { pegsPath } from "./size-path.ts";

interface Data {
  readonly near: NearJoints;
}

export const pegInOtherJoint = defineCheck<"model", Data>({
  meta: {
    id: "peg-in-other-joint",
    title: "A peg that runs into another joint",
    level: "warning",
    area: "joinery",
    source: {
      text: "two pegs cannot take the same space (plane geometry); common practice, no source: a peg goes through its own tenon alone",
      status: "common-practice",
    },
    explanation: {
      what: "The hole of a peg or screw goes through the tenon or the mortise of another joint in the same timber, or across that joint's peg.",
      why: "A peg through a second tenon holds it where it should be free to be drawn up, and splits it as the timber dries; in an empty mortise it has no wood to bear on. Of two pegs whose holes cross only one can be driven; that is a note, since one hole is easily bored beside the place that is laid out.",
      formula: "the holes and the solids of both joints in space; 1/32 in of play counts for nothing",
      remedy:
        "Move one joint along the timber, take fewer pegs, or a longer tenon whose peg stands elsewhere.",
    },
  },
  input: "model",
  *find(model) {
    for (const near of nearEachOther(model, false)) {
      const { crossing, depth, joints } = near;
      if (!crossing?.startsWith("peg-")) continue;
      const [joint, other] = joints;
      yield {
        ...pegsPath(joint),
        apart: other.path,
        place: joint.id,
        // the hole is bored elsewhere as soon as it is known
        ...(crossing === "peg-in-peg" ? { level: "note" as const } : {}),
        data: { near },
        value: depth,
        limit: 0,
        unit: "in",
        severity: depth,
        related:
          other.path === joint.path
            ? []
            : [{ path: other.path, message: (say) => say.text("{joint} is there", { joint: other.id }) }],
      };
    }
  },
  words: ({ near: { joints, timber, at, crossing, depth, move } }, say) => {
    const [joint, other] = joints;
    const values = {
      a: joint.id,
      b: other.id,
      timber: timber.id,
      at: placeWords(at, say),
      depth: say.length(depth),
      move: say.length(upTo(move, say)),
    };
    const screwed = joint.solids.pegs.length === 0;
    const what =
      crossing === "peg-in-peg"
        ? say.text(
            "The pegs of {a} and {b} cross in {timber}, {at} along it: the second cannot be driven. Bore the holes of one of them {move} to the side, within its tenon.",
            values,
          )
        : crossing === "peg-in-tenon"
          ? say.text(
              screwed
                ? "A screw of {a} goes {depth} deep through the tenon of {b} in {timber}, {at} along it: it pins and splits a tenon that is not its own."
                : "A peg of {a} goes {depth} deep through the tenon of {b} in {timber}, {at} along it: it pins and splits a tenon that is not its own.",
              values,
            )
          : say.text(
              screwed
                ? "A screw of {a} runs {depth} into the mortise of {b} in {timber}, {at} along it: it has no wood to hold in there."
                : "A peg of {a} runs {depth} into the mortise of {b} in {timber}, {at} along it: it has no wood to bear on there.",
              values,
            );
    return crossing === "peg-in-peg"
      ? what
      : `${what} ${say.text("Set one of the two {move} farther along {timber}.", values)}`;
  },
  worked: ({ near: { depth } }, say) =>
    say.text("{depth} > {none}", { depth: say.length(depth), none: say.length(0) }),
});
