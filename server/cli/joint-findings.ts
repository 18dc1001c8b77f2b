/** The findings at one joint. */
import type { PostFoot } from "../core/joinery/foot/post-foot.ts";
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

/** The findings at the foot of a post: those at its pier and at its anchor. */
export function footFindings({ id, pier, path }: PostFoot, { findings }: Snapshot): LocatedFinding[] {
  return findings.filter(({ finding: { path: at, places } }) =>
    places.length > 0
      ? places.includes(pier.id) || places.includes(id)
      : at === path || at.startsWith(`${path}/`),
  );
}
