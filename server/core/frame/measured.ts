/** What a real stick measures, as the file says it: rough timbers differ from stick to stick and along one. */
import type { Length } from "../quantity/length.ts";
import type { Pointer, Ref } from "./frame.ts";

/** Width and depth as `section` counts them, at a distance from the foot; undefined = all along. */
export interface MeasuredPlace {
  readonly path: Pointer;
  readonly width: Length;
  readonly depth: Length;
  readonly at: Length | undefined;
}

export interface Measured {
  /** undefined = every stick of the entry */
  readonly stick: Ref | undefined;
  readonly places: readonly MeasuredPlace[];
}
