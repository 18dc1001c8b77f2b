/** A joint for people: what to cut on each timber, forces, capacity, findings. */
import { noteWords, sizeWords } from "../core/checks/amount-words.ts";
import type { Say } from "../core/checks/say.ts";
import { cutWords } from "../core/joinery/cut-words.ts";
import type { CutRow, Joint, JointEnd } from "../core/joinery/joint.ts";
import { jointKindOf } from "../core/joinery/kinds/index.ts";
import type { Timber } from "../core/model/model.ts";
import { CAUTION } from "../language/caution.ts";
import type { LocatedFinding, Snapshot } from "../language/frame-service.ts";
import { jointForceRows, jointHoldWords } from "../language/hover/joint-forces.ts";
import { unsolvedWords } from "../language/hover/unsolved.ts";
import { findingsAt } from "./joint-findings.ts";
import { findingWords } from "./report-text.ts";
import { textTable } from "./text-table.ts";

const ENDS: Readonly<Record<JointEnd, string>> = {
  foot: "Foot of {of} into {into}",
  head: "Head of {of} into {into}",
  side: "{of} on {into}",
};

/** What is made apart from the timbers. */
const LOOSE: Readonly<Record<string, string>> = { peg: "Pegs", wedge: "Wedge", screw: "Screws" };

export function jointText(joint: Joint, snapshot: Snapshot): string {
  const { say, evaluation } = snapshot;
  const frame = evaluation?.results.frame;
  const rows = jointKindOf(joint.kind).cutSheet(joint);
  const forces = frame && jointForceRows([joint], frame, say);
  const found = findingsAt(joint, snapshot);
  const loose = [...new Set(rows.map(({ on }) => on))].filter((on) => on !== "joined" && on !== "receiving");
  const parts = [
    `${joint.id}: ${say.text(jointKindOf(joint.kind).title)}\n${placeWords(joint, say)}`,
    ...cuts(say.text("Cut on {timber}", { timber: joint.of.id }), rows, "joined", say),
    ...cuts(say.text("Cut on {timber}", { timber: joint.into.id }), rows, "receiving", say),
    ...loose.flatMap((on) => cuts(say.text(LOOSE[on] ?? on), rows, on, say)),
    ...(forces ? [`${say.text("Forces")}\n${textTable([forces.columns, ...forces.rows])}`] : []),
    ...(forces && frame ? jointHoldWords([joint], frame, say) : []),
  ];
  return withEnd(parts, found, snapshot);
}

/** The parts with what every such text ends with: whether the frame has forces, the findings there, the caution. */
export function withEnd(
  parts: readonly string[],
  found: readonly LocatedFinding[],
  { say, evaluation }: Snapshot,
): string {
  const frame = evaluation?.results.frame;
  const all = [
    ...parts,
    ...(frame
      ? unsolvedWords(frame, say)
      : [say.text("Its forces are not known: the frame cannot be analysed yet.")]),
    found.length === 0
      ? say.text("No finding at this joint.")
      : [say.text("Findings"), ...found.map((one) => `  ${findingWords(one)}`)].join("\n"),
    CAUTION,
  ];
  return `${all.join("\n\n")}\n`;
}

/** A timber by its id and section. */
export const sizedTimber = ({ id, width, depth }: Timber, say: Say): string =>
  say.text("{id} ({width} × {depth})", { id, width: say.length(width), depth: say.length(depth) });

function placeWords(joint: Joint, say: Say): string {
  const between = say.text(ENDS[joint.end], {
    of: sizedTimber(joint.of, say),
    into: sizedTimber(joint.into, say),
  });
  if (!joint.assumed) return `${between}.`;
  const assumed = joint.standsFor
    ? say.text("Assumed: the kind that {entry} names cannot be cut here.", { entry: joint.standsFor.name })
    : say.text("Assumed: the file names no joint here.");
  return `${between}. ${assumed}`;
}

/** The lines of a cut sheet on one part, under a title; nothing where there are none. */
export function cuts(title: string, rows: readonly CutRow[], on: CutRow["on"], say: Say): string[] {
  const own = rows.filter((row) => row.on === on);
  if (own.length === 0) return [];
  const lines = own.map((row) => [sizeWords(row, say), cutWords(row, say), noteWords(row.how, say)]);
  return [`${title}\n${textTable([[say.text("size"), say.text("cut"), say.text("how")], ...lines])}`];
}
