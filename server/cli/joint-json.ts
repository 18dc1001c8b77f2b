/** A joint for programs; schemas/joint.schema.json is its contract. */
import { noteWords, sizeWords } from "../core/checks/amount-words.ts";
import { cutWords } from "../core/joinery/cut-words.ts";
import type { CutRow, Joint } from "../core/joinery/joint.ts";
import { jointKindOf } from "../core/joinery/kinds/index.ts";
import type { Timber } from "../core/model/model.ts";
import { CAUTION } from "../language/caution.ts";
import type { Snapshot } from "../language/frame-service.ts";
import { VERSION } from "../version.ts";
import { findingsAt } from "./joint-findings.ts";
import { jsonText } from "./json-text.ts";
import { entryOf } from "./report-json.ts";
import { gapsOf, jointsOf } from "./results-json.ts";

/** Version of the shape; raised when a member changes its meaning or goes. */
export const JOINT = 1;

export function jointJson(file: string, joint: Joint, snapshot: Snapshot): string {
  const { say, evaluation } = snapshot;
  const { of, into, end } = joint;
  const kind = jointKindOf(joint.kind);
  const frame = evaluation?.results.frame;
  const forces = frame && jointsOf(frame, say).find((one) => one.joint === joint.id);
  const stickOf = (on: CutRow["on"]): string | null =>
    on === "joined" ? of.id : on === "receiving" ? into.id : null;
  return jsonText({
    joint: JOINT,
    tool: { name: "bentwright", version: VERSION },
    file,
    id: joint.id,
    kind: joint.kind,
    title: say.text(kind.title),
    entry: joint.entry?.name ?? null,
    path: joint.path,
    assumed: joint.assumed,
    joined: { ...timberOf(of), end },
    receiving: timberOf(into),
    cuts: kind.cutSheet(joint).map((row) => ({
      on: row.on,
      timber: stickOf(row.on),
      size: sizeWords(row, say),
      value: row.value,
      unit: row.unit,
      text: cutWords(row, say),
      how: noteWords(row.how, say),
    })),
    forces: forces ?? null,
    gaps: frame ? gapsOf(frame) : [],
    findings: findingsAt(joint, snapshot).map((located) => ({
      ...entryOf(file, located),
      ...(located.finding.accepted === undefined ? {} : { because: located.finding.accepted }),
    })),
    caution: CAUTION,
  });
}

export const timberOf = ({ id, width, depth, length }: Timber) => ({ timber: id, width, depth, length });
