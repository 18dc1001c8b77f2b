/** The sides of the building that are closed. */
import type { Siding } from "../core/frame/frame.ts";
import type { Cursor } from "./cursor.ts";

/** A side whose entry cannot be read is left out: the schema has told of it. */
export function readSiding(at: Cursor): readonly Siding[] {
  // a side whose map is still being typed is closed already: the wind must not blow through it meanwhile
  return at.entries().map(([line, value]): Siding => {
    const open = value.at("open").number();
    return {
      line,
      path: value.path,
      openings: value.at("openings").amount("area"),
      open: open !== undefined && open >= 0 && open <= 1 ? open : undefined,
      weight: value.at("weight").amount("pressure"),
    };
  });
}
