/** Which timbers stand, which carry along their length only, and which lie or slope. */
import type { Timber } from "./model.ts";

type Placed = Pick<Timber, "kind" | "axis">;

/** Sine of the least slope at which a post still stands, 30°: no raking post comes near it. */
const RAKING = 0.5;
/** Sine of the slope from which any other timber counts as plumb, about 11° off. */
const PLUMB = 0.98;

/**
 * Whether a timber stands: it carries its load down along its length and bends sideways. The kind decides, since a rafter
 * of a steep roof is as steep as a raking post but is a beam; posts and king-posts stand unless `ends` lay them down,
 * braces, rafters and purlins never do, and of the rest only what is plumb.
 */
export function isUpright({ kind, axis }: Placed): boolean {
  const rise = Math.abs(axis[2]);
  switch (kind) {
    case "post":
    case "king-post":
      return rise > RAKING;
    case "brace":
    case "rafter":
    case "purlin":
      return false;
    default:
      return rise >= PLUMB;
  }
}

/** Braces and raking struts: they carry force along their length, from end to end. */
export function isDiagonal({ kind, axis }: Placed): boolean {
  return kind === "brace" || (kind === "strut" && Math.abs(axis[2]) < PLUMB);
}
