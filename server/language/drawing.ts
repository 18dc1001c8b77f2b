/** The drawing of an open document, as the preview shows it. */
import { drawElevation } from "../drawing/elevation.ts";
import { toSvg } from "../drawing/svg.ts";
import { viewsOf } from "../drawing/views.ts";
import type { DrawingResult } from "../protocol.ts";
import type { FrameService } from "./frame-service.ts";

/**
 * @param view what is asked for; a view that the frame does not have gives its first
 * @returns the newest drawing there is; without svg while there was nothing to draw yet
 */
export function drawingOf(service: FrameService, uri: string, view: string): DrawingResult {
  const drawable = service.drawable(uri);
  if (!drawable) return { svg: null, version: 0, stale: false, views: [], view };
  const { model, version, stale, say } = drawable;
  const views = viewsOf(model, say);
  const drawn = (views.find(({ id }) => id === view) ?? views[0])?.id ?? view;
  const svg = toSvg(drawElevation(model, drawn, say), { standalone: false });
  return { svg, version, stale, views, view: drawn };
}
