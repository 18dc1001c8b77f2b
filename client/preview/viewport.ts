/** Zoom and place of a drawing on the page: plain arithmetic, no page. */
import type { Place } from "./messages.ts";

/** A rectangle in drawing units. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The page's visible size, CSS pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A point of the page from its upper left corner, CSS pixels. */
export interface PagePoint {
  readonly x: number;
  readonly y: number;
}

/** Part of the page left empty round a drawing that is shown whole. */
const MARGIN = 0.04;
/** How far one may zoom out of and into the drawing shown whole. */
const LEAST_ZOOM = 0.25;
const MOST_ZOOM = 60;

/** The place that shows the whole box in the middle of the page. */
export function wholeIn(box: Box, size: Size): Place {
  const room = 1 - 2 * MARGIN;
  const scale = Math.min((size.width * room) / box.width, (size.height * room) / box.height);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2, scale };
}

/** The part of the drawing that the page shows: the `viewBox` for an SVG that fills the page. */
export function visible(place: Place, size: Size): Box {
  const width = size.width / place.scale;
  const height = size.height / place.scale;
  return { x: place.x - width / 2, y: place.y - height / 2, width, height };
}

/** Zooms by a factor while the drawing under `at` stays under it. */
export function zoomAt(place: Place, factor: number, at: PagePoint, box: Box, size: Size): Place {
  const whole = wholeIn(box, size).scale;
  const scale = clamp(place.scale * factor, whole * LEAST_ZOOM, whole * MOST_ZOOM);
  const shift = 1 / place.scale - 1 / scale;
  const x = place.x + (at.x - size.width / 2) * shift;
  const y = place.y + (at.y - size.height / 2) * shift;
  return within({ x, y, scale }, box);
}

/** Moves the drawing by CSS pixels; its middle never leaves the box, so it cannot be lost. */
export function panBy(place: Place, dx: number, dy: number, box: Box): Place {
  return within({ ...place, x: place.x - dx / place.scale, y: place.y - dy / place.scale }, box);
}

function within(place: Place, box: Box): Place {
  return {
    x: clamp(place.x, box.x, box.x + box.width),
    y: clamp(place.y, box.y, box.y + box.height),
    scale: place.scale,
  };
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
