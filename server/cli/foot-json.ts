/** The foot of a post on its anchor for programs; schemas/joint.schema.json is its contract. */
import { noteWords, sizeWords } from "../core/checks/amount-words.ts";
import { cutWords } from "../core/joinery/cut-words.ts";
import { footCuts } from "../core/joinery/foot/foot-cuts.ts";
import type { PostFoot } from "../core/joinery/foot/post-foot.ts";
import { footUses } from "../core/statics/foot-uses.ts";
import { CAUTION } from "../language/caution.ts";
import type { Snapshot } from "../language/frame-service.ts";
import { FOOT_TITLE } from "../language/hover/foot.ts";
import { VERSION } from "../version.ts";
import { figure } from "./figures-json.ts";
import { footFindings } from "./joint-findings.ts";
import { JOINT, timberOf } from "./joint-json.ts";
import { jsonText } from "./json-text.ts";
import { entryOf } from "./report-json.ts";
import { gapsOf } from "./results-json.ts";

export function footJson(file: string, foot: PostFoot, snapshot: Snapshot): string {
  const { say, evaluation } = snapshot;
  const frame = evaluation?.results.frame;
  const { post, pier } = foot;
  return jsonText({
    joint: JOINT,
    tool: { name: "bentwright", version: VERSION },
    file,
    id: foot.id,
    kind: "post-foot",
    title: say.text(FOOT_TITLE),
    entry: pier.entry.name,
    path: foot.path,
    assumed: false,
    joined: { ...timberOf(post), end: post.axis[2] > 0 ? "foot" : "head" },
    receiving: { pier: pier.id, diameter: pier.diameter },
    cuts: footCuts(foot).map((row) => ({
      on: row.on,
      timber: row.on === "joined" ? post.id : null,
      size: sizeWords(row, say),
      value: row.value,
      unit: row.unit,
      text: cutWords(row, say),
      how: noteWords(row.how, say),
    })),
    forces: null,
    holds: (frame ? footUses(frame) : [])
      .filter((use) => use.foot.id === foot.id)
      .map(({ way, force, caseId, hold, ratio }) => ({
        way,
        force: figure(force),
        combination: caseId,
        holds: hold ? figure(hold.limits[0].value.value) : null,
        by: hold?.limits[0].kind ?? null,
        whole: hold?.whole ?? null,
        ratio: ratio === undefined || !Number.isFinite(ratio) ? null : figure(ratio),
      })),
    gaps: frame ? gapsOf(frame) : [],
    findings: footFindings(foot, snapshot).map((located) => ({
      ...entryOf(file, located),
      ...(located.finding.accepted === undefined ? {} : { because: located.finding.accepted }),
    })),
    caution: CAUTION,
  });
}
