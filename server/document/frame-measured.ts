/** Measured sizes of real sticks: of a whole entry, or stick by stick. */
import type { Measured, MeasuredPlace } from "../core/frame/measured.ts";
import type { Cursor } from "./cursor.ts";

/** @returns nothing when nothing is measured, or nothing of it can be read */
export function measuredIn(entry: Cursor): { readonly measured?: readonly Measured[] } {
  const sizes = readMeasured(entry.at("measured"));
  return sizes.length > 0 ? { measured: sizes } : {};
}

function readMeasured(at: Cursor): readonly Measured[] {
  const own = placesOf(at);
  const sticks = at.entries().flatMap(([text, value]): Measured[] => {
    const places = text.includes("@") ? placesOf(value) : [];
    return places.length > 0 ? [{ stick: { text, path: value.path }, places }] : [];
  });
  return [...(own.length > 0 ? [{ stick: undefined, places: own }] : []), ...sticks];
}

function placesOf(at: Cursor): MeasuredPlace[] {
  const all = at.isMap ? [at] : at.items();
  return all.flatMap((item) => {
    const width = item.at("width").size();
    const depth = item.at("depth").size();
    const place = item.at("at").gap();
    // a place that cannot be read would put the size somewhere else
    if (width === undefined || depth === undefined || (item.has("at") && place === undefined)) return [];
    return [{ path: item.path, width, depth, at: place }];
  });
}
