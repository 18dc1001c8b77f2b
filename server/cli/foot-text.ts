/** The foot of a post on its anchor for people: what to cut, forces, capacity, findings. */
import type { Say } from "../core/checks/say.ts";
import { footCuts } from "../core/joinery/foot/foot-cuts.ts";
import type { PostFoot } from "../core/joinery/foot/post-foot.ts";
import { footUses } from "../core/statics/foot-uses.ts";
import type { Snapshot } from "../language/frame-service.ts";
import { FOOT_TITLE, footGoesIn, footHoldRows, footRemarks } from "../language/hover/foot.ts";
import { footFindings } from "./joint-findings.ts";
import { cuts, sizedTimber, withEnd } from "./joint-text.ts";
import { textTable } from "./text-table.ts";

export function footText(foot: PostFoot, snapshot: Snapshot): string {
  const { say, evaluation } = snapshot;
  const frame = evaluation?.results.frame;
  const rows = footCuts(foot);
  const found = footFindings(foot, snapshot);
  const { columns, rows: holds } = footHoldRows(foot, frame ? footUses(frame) : [], frame, say);
  const parts = [
    `${foot.id}: ${say.text(FOOT_TITLE)}\n${placeWords(foot, say)}`,
    ...cuts(say.text("Cut on {timber}", { timber: foot.post.id }), rows, "joined", say),
    ...cuts(say.text("Bolts"), rows, "bolt", say),
    ...cuts(say.text("Screws"), rows, "screw", say),
    footGoesIn(foot, say),
    `${say.text("What holds it")}\n${textTable([columns, ...holds])}`,
    ...footRemarks(foot, say),
  ];
  return withEnd(parts, found, snapshot);
}

function placeWords({ post, pier }: PostFoot, say: Say): string {
  return say.text("Foot of {of} on {into}.", { of: sizedTimber(post, say), into: pier.id });
}
