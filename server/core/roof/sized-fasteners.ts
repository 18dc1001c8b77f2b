/** The screws or nails of rafters, with a size; and which of those on sale hold a force. */
import type { Fasteners } from "../frame/fasteners.ts";
import { inches } from "../quantity/length.ts";

export interface SizedFasteners {
  readonly kind: Fasteners["kind"];
  readonly count: number;
  /** in */
  readonly diameter: number;
  readonly length: number;
}

/** @returns undefined where the file leaves out how thick or how long they are, or has words that cannot be read */
export function sizedFasteners(written: Fasteners | "unread" | undefined): SizedFasteners | undefined {
  if (!written || written === "unread") return undefined;
  const { kind, count, diameter, length } = written;
  if (diameter === undefined || length === undefined) return undefined;
  return { kind, count, diameter: inches(diameter), length: inches(length) };
}

/** Screws on sale for this: in, and mm. */
const SCREWS = { diameter: 5 / 16, lengths: [6, 8, 10, 12, 14] };
const SCREWS_METRIC = { diameter: 8 / 25.4, lengths: [160, 200, 240, 280, 320].map((mm) => mm / 25.4) };
const COUNTS = [2, 3, 4];

/** @returns the fewest and shortest screws that hold, at least two; undefined where none do */
export function screwsFor(
  holds: (screws: SizedFasteners) => boolean,
  metric: boolean,
): SizedFasteners | undefined {
  const { diameter, lengths } = metric ? SCREWS_METRIC : SCREWS;
  return COUNTS.flatMap((count) =>
    lengths.map((length): SizedFasteners => ({ kind: "screws", count, diameter, length })),
  ).find(holds);
}
