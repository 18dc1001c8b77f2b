import type { Soil } from "../../frame/site.ts";
import type { FrameResults, PierReaction } from "../../statics/frame-results.ts";

/** A pier with what it carries, and the soil it stands in. */
export interface OnSoil extends Pick<PierReaction, "pier" | "cases">, Pick<FrameResults, "solution"> {
  readonly soil: Soil;
}

/** @returns all piers; none where the frame has no forces, or the file does not say the soil */
export function onSoil(frame: FrameResults | undefined): OnSoil[] {
  const soil = frame?.model.frame.site.soil;
  if (!frame || soil === undefined) return [];
  const { piers, solution } = frame;
  return piers.map(({ pier, cases }) => ({ pier, cases, soil, solution }));
}
