/**
 * What an accepted `frame-racks` or `end-unsupported` leaves unsaid: without an answer to the loads nothing was checked under them. Judged
 * after all other checks, since it depends on what the file accepts; so it stands beside the registry.
 */
import type { Accepted } from "../frame/frame.ts";
import { caseWords } from "../statics/case-words.ts";
import type { FrameResults } from "../statics/frame-results.ts";
import type { CheckMeta, Finding } from "./check.ts";
import { endUnsupported } from "./geometry/end-unsupported.ts";
import { frameRacks } from "./members/frame-racks.ts";
import type { Say } from "./say.ts";

export const LOADS_UNANSWERED: CheckMeta = {
  id: "loads-unanswered",
  title: "An accepted racking frame, or end in mid-air, of which nothing is known",
  level: "warning",
  area: "members",
  source: { text: "statics: a frame that moves has no forces to check", status: "derived" },
  explanation: {
    what: "The file accepts that the frame racks, or that an end of it hangs in mid-air, and under some loads it has no answer: no timber, joint or pier was checked under them.",
    why: "Without this warning the frame would look clean although it was not checked. It cannot be accepted.",
    remedy:
      "Write what holds the frame into the file (braces, a deck of structural panels, posts in the ground), or have the forces worked out by an engineer.",
  },
};

/** What says of itself that the frame has no answer. */
const SAY_SO: readonly string[] = [frameRacks.meta.id, endUnsupported.meta.id];

const RACKS =
  "That the frame racks is accepted here, but not what holds it: under {failed} of {count} load combinations, {first} first, it has no answer, so no timber, joint or pier was checked under them. Write into the file what holds it (braces, structural panels, posts in the ground), or have the forces worked out by an engineer.";
const HANGS =
  "That an end hangs in mid-air is accepted here, but not what holds it: under {failed} of {count} load combinations, {first} first, the frame has no answer, so no timber, joint or pier was checked under them. Write into the file what holds that end (a post, a pier, a beam), or have the forces worked out by an engineer.";

/** @param findings of all other checks; @returns nothing while one of them says itself that the frame has no answer */
export function unansweredFindings(
  frame: FrameResults | undefined,
  findings: readonly Finding[],
  accepted: readonly Accepted[],
  say: Say,
): Finding[] {
  const failed = frame?.solution.failed ?? [];
  const [first] = failed;
  const said = findings.filter(({ check }) => SAY_SO.includes(check));
  if (!frame || !first || said.length === 0 || said.some((f) => f.accepted === undefined)) return [];
  const racks = said.some(({ check }) => check === frameRacks.meta.id);
  return [
    {
      check: LOADS_UNANSWERED.id,
      level: LOADS_UNANSWERED.level,
      path: accepted.find((a) => SAY_SO.includes(a.check))?.path ?? "",
      onKey: true,
      message: say.text(racks ? RACKS : HANGS, {
        failed: failed.length,
        count: frame.solution.cases.length,
        first: caseWords(frame.solution, first.caseId, say),
      }),
      value: failed.length,
      limit: 0,
      unit: "count",
      places: [],
      related: [],
      fixes: () => [],
    },
  ];
}
