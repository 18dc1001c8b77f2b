/** The forces that a joint under the cursor passes on: the most of each over its places and all combinations. */
import type { Say } from "../../core/checks/say.ts";
import type { Joint } from "../../core/joinery/joint.ts";
import { caseWords } from "../../core/statics/case-words.ts";
import type { FrameResults, JointForce } from "../../core/statics/frame-results.ts";
import { type JointHold, jointHolds } from "../../core/statics/joint-holds.ts";
import { FRICTION } from "../../core/statics/joint-pulls.ts";
import { escapeMarkdown, table } from "./table.ts";
import { unsolvedWords } from "./unsolved.ts";
import { ratioText } from "./use-words.ts";

const KINDS = [
  ["tension", "pulls out"],
  ["compression", "pushes in"],
  ["alongGrain", "along the receiving grain"],
  ["across", "across the receiving grain"],
] as const satisfies readonly (readonly [keyof JointForce, string])[];

/** Forces below this say nothing, lb. */
const SMALL = 1;

export interface ForceRows {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** @returns undefined where the analysis has none of these joints */
export function jointForceRows(
  joints: readonly Joint[],
  frame: FrameResults,
  say: Say,
): ForceRows | undefined {
  const found = joints.flatMap(({ id }) => frame.joints.get(id) ?? []);
  const [first] = found;
  if (!first) return undefined;
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
  return { columns, rows };
}

/** @returns a table; only what has no answer where the analysis has none of these joints */
export function jointForceTable(joints: readonly Joint[], frame: FrameResults, say: Say): string[] {
  const found = jointForceRows(joints, frame, say);
  const unsolved = unsolvedWords(frame, say);
  if (!found) return unsolved;
  return [...unsolved, table(found.columns, found.rows), ...jointHoldWords(joints, frame, say)];
}

const BY: Readonly<Record<JointHold["by"], string>> = {
  pegs: "pegs hold {capacity}: {ratio}",
  dovetail: "its dovetail holds {capacity}: {ratio}",
  screws: "screws hold {capacity}: {ratio}",
  nails: "nails hold {capacity}: {ratio}",
  nothing: "nothing in it holds",
  unjudged: "how much it holds is not known: sizes, values of its wood or wood round its pegs are missing",
};

/** How hard a hold is used: what holds nothing comes before what nobody can tell. */
const use = ({ by, ratio, pull }: JointHold): number =>
  ratio ?? (by === "nothing" && pull.most >= FRICTION ? Number.POSITIVE_INFINITY : 0);

/** @returns the hold that is used most; undefined where nothing pulls at any of these joints */
export function worstHold(joints: readonly Joint[], frame: FrameResults): JointHold | undefined {
  const holdOf = jointHolds(frame);
  return joints
    .flatMap((joint) => holdOf(joint) ?? [])
    .reduce<JointHold | undefined>((most, one) => (most && use(most) >= use(one) ? most : one), undefined);
}

/** `Pulls 310 lb under 0.6 D + 0.6 W; pegs hold 1,240 lb: 0.25`, at the place that is used most. */
export function jointHoldWords(joints: readonly Joint[], frame: FrameResults, say: Say): string[] {
  const worst = worstHold(joints, frame);
  if (!worst) return [];
  const { pull, by, capacity, ratio, joint, along } = worst;
  const holds = say.text(BY[by], {
    capacity: say.force(capacity?.value ?? 0),
    ratio: ratioText(ratio ?? 0, say),
  });
  if (along)
    return [
      say.text("Its screws carry {force} along the face at {joint} under {combination}; {holds}.", {
        force: say.force(pull.most),
        joint: escapeMarkdown(joint.id),
        combination: caseWords(frame.solution, pull.caseId, say),
        holds,
      }),
    ];
  return [
    say.text(
      joints.length > 1
        ? "Pulls {force} at {joint} under {combination}; {holds}."
        : "Pulls {force} under {combination}; {holds}.",
      {
        force: say.force(pull.most),
        joint: escapeMarkdown(joint.id),
        combination: caseWords(frame.solution, pull.caseId, say),
        holds,
      },
    ),
  ];
}
