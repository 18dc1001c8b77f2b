/** Screws and nails as they are written; see `frame.ts` for the units. */
import type { Length } from "../quantity/length.ts";
import type { Pointer } from "./frame.ts";

/** Screws or nails, so many at each place. Where a value of them is written and cannot be read, they are "unread". */
export interface Fasteners {
  readonly path: Pointer;
  readonly kind: "screws" | "nails";
  readonly count: number;
  readonly diameter: Length | undefined;
  readonly length: Length | undefined;
}
