/** From the cursor to what is drawn: the ids that light up, and the joint that is drawn larger. */
import type { Position } from "vscode-languageserver-types";
import type { AtCursorResult } from "../protocol.ts";
import type { Snapshot } from "./frame-service.ts";
import { shownPlace } from "./joint-picture.ts";
import { spotAt } from "./spot.ts";
import { entrySubject, referredSubject, type Subject } from "./subject.ts";

/**
 * @returns `data-id`s of the drawing: what a name refers to, else the entry that the cursor stands in; where these are
 *   joints, the place of them that their hover draws
 */
export function atCursor(snapshot: Snapshot, position: Position): AtCursorResult {
  const subject = subjectAt(snapshot, position);
  if (!subject) return { ids: [] };
  const ids = idsOf(subject);
  if (subject.kind === "piers") {
    const foot = snapshot.evaluation?.model.feet.find(({ pier }) => subject.piers.includes(pier));
    return foot ? { ids, joint: foot.id } : { ids };
  }
  if (subject.kind !== "joints") return { ids };
  const shown = shownPlace(subject.joints, snapshot.evaluation?.results.frame, snapshot.say);
  return shown ? { ids, joint: shown.joint.id } : { ids };
}

function subjectAt(snapshot: Snapshot, position: Position): Subject | undefined {
  const model = snapshot.evaluation?.model;
  const spot = spotAt(snapshot, position);
  if (!model || !spot) return undefined;
  const referred = spot.onKey ? undefined : referredSubject(model, spot.path, spot.text);
  return referred ?? entrySubject(model, spot.path);
}

function idsOf(subject: Subject): string[] {
  switch (subject.kind) {
    case "timbers":
      return subject.timbers.map(({ id }) => id);
    case "joints":
      return subject.joints.map(({ id }) => id);
    case "piers":
      return subject.piers.map(({ id }) => id);
    case "line":
      return [subject.name];
  }
}
