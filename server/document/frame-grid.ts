/** The grid: walls, bents and levels. A line whose place cannot be read is left out, and its name is kept as unread. */
import type { Grid, GridLine, GridReference, Level } from "../core/frame/frame.ts";
import type { Cursor } from "./cursor.ts";

export function readGrid(at: Cursor): Grid {
  return {
    path: at.path,
    walls: at.at("walls").entries().flatMap(readLine),
    bents: at.at("bents").entries().flatMap(readLine),
    levels: at
      .at("levels")
      .named()
      .flatMap(([id, value]): readonly Level[] => {
        const height = value.offset();
        if (height !== undefined) return [{ id, path: value.path, height }];
        at.context.unread.add(id);
        return [];
      }),
  };
}

const REFERENCES = ["center", "outward", "toward-1", "toward-a"] as const satisfies readonly GridReference[];

function readLine([id, value]: readonly [string, Cursor]): readonly GridLine[] {
  const at = value.isMap ? value.at("at").offset() : value.offset();
  if (at === undefined) {
    value.context.unread.add(id);
    return [];
  }
  return [{ id, path: value.path, at, reference: value.at("reference").choice(REFERENCES) }];
}
