/** The joints that can be judged and are pulled, each at what the file says of its pegs. */
import type { MemberKind } from "../../frame/frame.ts";
import type { Joint } from "../../joinery/joint.ts";
import type { FrameResults } from "../../statics/frame-results.ts";
import { type JointPull, jointPulls } from "../../statics/joint-pulls.ts";
import { judgedJoints } from "./judged.ts";
import { pegsPath } from "./size-path.ts";

/** Sticks of a row: when one lets go, what is stiffer beside it may take over, which the analysis does not try. */
export const IN_ROWS: ReadonlySet<MemberKind> = new Set(["joist", "purlin"]);

interface JudgedPull {
  readonly pull: JointPull;
  /** what every finding about a pull has in common */
  readonly found: ReturnType<typeof pegsPath> & {
    readonly place: string;
    /** lb */
    readonly value: number;
    readonly unit: "lb";
  };
}

/** @param wanted joints that the check is about: what the others hold is not worked out */
export function* judgedPulls(frame: FrameResults, wanted: (joint: Joint) => boolean): Generator<JudgedPull> {
  const pullOf = jointPulls(frame);
  for (const joint of judgedJoints(frame.model)) {
    const pull = wanted(joint) ? pullOf(joint) : undefined;
    if (!pull) continue;
    yield { pull, found: { ...pegsPath(joint), place: joint.id, value: pull.most, unit: "lb" } };
  }
}
