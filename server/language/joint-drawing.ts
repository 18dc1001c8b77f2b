/** The drawing of one joint of an open document, as the preview shows it beneath the elevation. */
import { drawFootSheet, footTitle } from "../drawing/foot-sheet.ts";
import { drawJointSheet, jointTitle } from "../drawing/joint-sheet.ts";
import { toSvg } from "../drawing/svg.ts";
import type { JointDrawingParams, JointDrawingResult } from "../protocol.ts";
import type { FrameService } from "./frame-service.ts";

/** @returns null where the newest frame that can be drawn has no such joint */
export function jointDrawingOf(
  service: FrameService,
  { uri, id }: JointDrawingParams,
): JointDrawingResult | null {
  const drawable = service.drawable(uri);
  if (!drawable) return null;
  const { say, model } = drawable;
  const foot = model.feet.find((one) => one.id === id);
  if (foot)
    return { id, title: footTitle(foot, say), svg: toSvg(drawFootSheet(foot, say), { standalone: false }) };
  const joint = model.joints.find((one) => one.id === id);
  if (!joint) return null;
  return { id, title: jointTitle(joint, say), svg: toSvg(drawJointSheet(joint, say), { standalone: false }) };
}
