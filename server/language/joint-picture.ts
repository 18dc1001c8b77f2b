/** The drawing of a joint as a picture in Markdown, and which place of an entry it shows. */
import type { Say } from "../core/checks/say.ts";
import type { Joint } from "../core/joinery/joint.ts";
import type { FrameResults } from "../core/statics/frame-results.ts";
import { FRICTION } from "../core/statics/joint-pulls.ts";
import { drawJointSheet, jointTitle } from "../drawing/joint-sheet.ts";
import { worstHold } from "./hover/joint-forces.ts";
import { escapeMarkdown } from "./hover/table.ts";
import { ratioText } from "./hover/use-words.ts";
import { pictureOf } from "./picture.ts";

export interface ShownPlace {
  readonly joint: Joint;
  /** why this one of several */
  readonly why: string;
}

/**
 * The place of an entry that its drawing shows: where what holds is used most or nothing holds a pull, else the first.
 * @returns undefined when there is none
 */
export function shownPlace(
  joints: readonly Joint[],
  frame: FrameResults | undefined,
  say: Say,
): ShownPlace | undefined {
  const [first] = joints;
  if (!first) return undefined;
  if (joints.length === 1) return { joint: first, why: "" };
  const worst = frame && worstHold(joints, frame);
  if (worst?.ratio !== undefined)
    return {
      joint: worst.joint,
      why: say.text("Drawn at {place}, where it is used most ({ratio}).", {
        place: worst.joint.id,
        ratio: ratioText(worst.ratio, say),
      }),
    };
  if (worst?.by === "nothing" && worst.pull.most >= FRICTION)
    return {
      joint: worst.joint,
      why: say.text("Drawn at {place}, where {force} pulls and nothing holds.", {
        place: worst.joint.id,
        force: say.force(worst.pull.most),
      }),
    };
  return {
    joint: first,
    why: say.text("Drawn at {place}, the first of {count} places.", {
      place: first.id,
      count: joints.length,
    }),
  };
}

/** @returns Markdown: the picture, and under it which place it shows */
export function jointPicture(
  joints: readonly Joint[],
  frame: FrameResults | undefined,
  say: Say,
): string | undefined {
  const shown = shownPlace(joints, frame, say);
  if (!shown) return undefined;
  const picture = pictureOf(jointTitle(shown.joint, say), drawJointSheet(shown.joint, say));
  return shown.why === "" ? picture : `${picture}\n\n${escapeMarkdown(shown.why)}`;
}
