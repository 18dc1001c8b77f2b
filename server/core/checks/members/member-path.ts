/** Where in the file a finding about a timber points. */
import type { Pointer } from "../../frame/frame.ts";
import type { Model, Timber } from "../../model/model.ts";
import type { Results } from "../../results.ts";

/** The section of the timber's entry; the entry itself where it has none. */
export function sectionPath(model: Model, timber: Timber): Pointer {
  const hasSection =
    timber.path === model.frame.roof?.rafters?.path
      ? model.frame.roof.rafters.section !== undefined
      : model.members.get(timber.member)?.section !== undefined;
  return hasSection ? `${timber.path}/section` : timber.path;
}

/**
 * Rafters that their own check already finds overtaxed: one finding about them is enough. One of sag is not, where they may
 * break in the frame.
 */
export function spokenFor({ rafters }: Results, timber: Timber, judged: "strength" | "sag"): boolean {
  return rafters.some(
    ({ slope, check }) =>
      slope.rafters.some((t) => t.id === timber.id) &&
      check.worst.some(({ ratio, unit }) => ratio > 1 && (judged === "sag" || unit === "psi")),
  );
}
