/** The joints that can be judged and are pulled, each at what the file says of its pegs. */
import type { MemberKind } from "../../frame/frame.ts";
import type { Joint } from "../../joinery/joint.ts";
import type { JointPull } from "../../statics/joint-pulls.ts";
import type { Shared } from "../shared.ts";
import { judgedJoints } from "./judged.ts";
import { pegsPath } from "./size-path.ts";

/** Sticks of a row: when one lets go, what is stiffer beside it may take over, which the analysis does not try. */
export const IN_ROWS: ReadonlySet<MemberKind> = new Set(["joist", "purlin"]);

/** What every finding about a pull has in common; its value in lb. */
export const pullFound = ({ joint, most }: JointPull) =>
  ({ ...pegsPath(joint), place: joint.id, value: most, unit: "lb" }) as const;

/** @param wanted joints that the check is about: what the others hold is not worked out */
export function* judgedPulls(
  { model, pullOf }: Shared,
  wanted: (joint: Joint) => boolean,
): Generator<JointPull> {
  for (const joint of judgedJoints(model)) {
    const pull = wanted(joint) ? pullOf(joint) : undefined;
    if (pull) yield pull;
  }
}
