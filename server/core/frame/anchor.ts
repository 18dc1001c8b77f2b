/** What ties a timber to its pier, as it is written; see `frame.ts` for the units. */
import type { Length } from "../quantity/length.ts";
import type { Pointer } from "./frame.ts";

export interface AnchorSpec {
  readonly path: Pointer;
  readonly kind: "embedded-strap" | "post-base" | "dowel";
  readonly standOff: Length | undefined;
  /** which way the bolts run through the post; undefined = along the bent */
  readonly runs?: "along-wall" | "along-bent";
  /** Of what follows, "unread" where a value of it is written and cannot be read. */
  readonly strap?: StrapSpec | "unread";
  readonly bolts?: AnchorBoltSpec | "unread";
  readonly screws?: AnchorScrewSpec | "unread";
  /** side of the square plate that the end grain stands on; undefined = as large as the post */
  readonly plate?: Length;
  readonly capacity?: AnchorCapacity | "unread";
}

/** The steel beside or inside the post. */
export interface StrapSpec {
  readonly path: Pointer;
  readonly place: StrapPlace;
  readonly thickness: Length | undefined;
  readonly width: Length | undefined;
  /** from the post's end to the top of the steel */
  readonly height: Length | undefined;
  /** how deep each strap is let into its face */
  readonly letIn: Length | undefined;
}

export type StrapPlace = "both-faces" | "one-face" | "in-kerf";

/** Bolts through the post, in one row along its grain. */
export interface AnchorBoltSpec {
  readonly path: Pointer;
  readonly count: number;
  readonly diameter: Length | undefined;
  /** from the post's end to the lowest bolt */
  readonly up: Length | undefined;
  readonly spacing: Length | undefined;
}

/** Screws through each strap into the post, in one row along its grain. */
export interface AnchorScrewSpec extends AnchorBoltSpec {
  readonly length: Length | undefined;
}

/** What a maker's sheet or an engineer says it holds, lb, each way alone; sideways the whole push. */
export interface AnchorCapacity {
  readonly path: Pointer;
  readonly down: number | undefined;
  readonly uplift: number | undefined;
  readonly sideways: number | undefined;
  readonly because: string;
}
