/** The forces that a joint under the cursor passes on: the most of each over its places and all combinations. */
import type { Say } from "../../core/checks/say.ts";
import type { Joint } from "../../core/joinery/joint.ts";
import { caseWords } from "../../core/statics/case-words.ts";
import type { FrameResults, JointForce } from "../../core/statics/frame-results.ts";
import { table } from "./table.ts";
import { unsolvedWords } from "./unsolved.ts";

const KINDS = [
  ["tension", "pulls out"],
  ["compression", "pushes in"],
  ["alongGrain", "along the receiving grain"],
  ["across", "across the receiving grain"],
] as const satisfies readonly (readonly [keyof JointForce, string])[];

/** Forces below this say nothing, lb. */
const SMALL = 1;

/** @returns a table; only what has no answer where the analysis has none of these joints */
export function jointForceTable(joints: readonly Joint[], frame: FrameResults, say: Say): string[] {
  const found = joints.flatMap(({ id }) => frame.joints.get(id) ?? []);
  const [first] = found;
  const unsolved = unsolvedWords(frame, say);
  if (!first) return unsolved;
  const rows = KINDS.map(([kind, words]) => {
    const top = found.reduce(
      (most, one) => (one[kind].most > most[kind].most * (1 + 1e-9) ? one : most),
      first,
    );
    const { most, caseId } = top[kind];
    const nothing = most < SMALL;
    return [
      say.text(words),
      nothing ? say.text("nothing") : say.force(most),
      ...(joints.length > 1 ? [nothing ? "" : top.joint] : []),
      nothing ? "" : caseWords(frame.solution, caseId, say),
    ];
  });
  const columns = [
    say.text("force"),
    say.text("at most"),
    ...(joints.length > 1 ? [say.text("at")] : []),
    say.text("under"),
  ];
  return [table(columns, rows), ...unsolved];
}
