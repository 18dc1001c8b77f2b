/** From the cursor to what is drawn: the ids that light up. */
import type { Position } from "vscode-languageserver-types";
import type { Snapshot } from "./frame-service.ts";
import { spotAt } from "./spot.ts";
import { entrySubject, referredSubject, type Subject } from "./subject.ts";

/** @returns `data-id`s of the drawing: what a name refers to, else the entry that the cursor stands in */
export function idsAt(snapshot: Snapshot, position: Position): string[] {
  const model = snapshot.evaluation?.model;
  const spot = spotAt(snapshot, position);
  if (!model || !spot) return [];
  const referred = spot.onKey ? undefined : referredSubject(model, spot.path, spot.text);
  const subject = referred ?? entrySubject(model, spot.path);
  return subject ? idsOf(subject) : [];
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
