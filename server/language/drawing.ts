/** The drawing of an open document, as the preview shows it. */
import { drawElevation } from "../drawing/elevation.ts";
import { caseOf, casesOf, layerOf, layersOf, NONE, type Overlay } from "../drawing/forces-cases.ts";
import { toSvg } from "../drawing/svg.ts";
import { viewsOf } from "../drawing/views.ts";
import type { DrawingParams, DrawingResult } from "../protocol.ts";
import type { FrameService } from "./frame-service.ts";

/**
 * @param asked a view that the frame does not have gives its first, a layer that there is not gives none
 * @returns the newest drawing there is; without svg while there was nothing to draw yet
 */
export function drawingOf(service: FrameService, asked: DrawingParams): DrawingResult {
  const drawable = service.drawable(asked.uri);
  const { view } = asked;
  const layer = layerOf(asked.layer ?? NONE);
  const bare = { layers: [], layer: layer ?? NONE, cases: [], case: "" };
  if (!drawable) return { svg: null, version: 0, stale: false, views: [], view, ...bare };
  const { model, results, version, stale, say } = drawable;
  const views = viewsOf(model, say);
  const drawn = (views.find(({ id }) => id === view) ?? views[0])?.id ?? view;
  const overlay: Overlay | undefined = layer && {
    layer,
    caseId: asked.case ?? "",
    frame: results.frame,
  };
  return {
    svg: toSvg(drawElevation(model, drawn, say, overlay), { standalone: false }),
    version,
    stale,
    views,
    view: drawn,
    layers: layersOf(say),
    layer: layer ?? NONE,
    cases: overlay ? casesOf(overlay, say) : [],
    case: overlay ? caseOf(overlay) : "",
  };
}
