/** The classes of wood in words. */
import type { DecayGroup } from "../../core/wood/data/table-types.ts";
import type { SizeClass } from "../../core/wood/types.ts";

export const SIZE_CLASSES: Readonly<Record<SizeClass, string>> = {
  "dimension-lumber": "dimension lumber",
  "beams-and-stringers": "beams and stringers",
  "posts-and-timbers": "posts and timbers",
};

export const DECAY: Readonly<Record<DecayGroup, string>> = {
  "slight-or-none": "slight or none",
  "moderately-resistant": "moderately resistant",
  resistant: "resistant",
  "very-resistant": "very resistant",
};
