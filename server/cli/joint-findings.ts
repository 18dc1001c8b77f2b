/** The findings at one joint. */
import type { Joint } from "../core/joinery/joint.ts";
import type { Model } from "../core/model/model.ts";
import type { LocatedFinding, Snapshot } from "../language/frame-service.ts";

/** Whether a finding is about this place, or about its entry and so about every place of it. */
export function findingsAt(joint: Joint, { findings, evaluation }: Snapshot): LocatedFinding[] {
  const ids = idsOf(evaluation?.model);
  const own = joint.entry !== undefined || joint.path.startsWith("/roof/rafters/");
  return findings.filter(({ finding: { path, places } }) => {
    if (places.includes(joint.id)) return true;
    if (!own || (path !== joint.path && !path.startsWith(`${joint.path}/`))) return false;
    return !places.some((place) => ids.has(place));
  });
}

const idsOf = (model: Model | undefined): ReadonlySet<string> =>
  new Set(model?.joints.map(({ id }) => id) ?? []);
