/** Whether a ridge is held along the walls, and what it can be braced to where it is not. */
import { bracesRoofPlane } from "../../frame/roof.ts";
import type { Model, Timber } from "../../model/model.ts";
import { dot, type Vec3 } from "../../model/vec.ts";

export interface LooseRidge {
  readonly ridge: string;
  /** names of the entries of the posts and king-posts under it */
  readonly under: readonly string[];
}

const ALONG: Vec3 = [1, 0, 0];

/** Least share of its length by which a brace leans along the walls, to hold anything that way. */
const LEANS = 0.25;

const holdsAlong = (t: Timber): boolean => t.kind === "brace" && Math.abs(dot(t.axis, ALONG)) >= LEANS;
const isUpright = (t: Timber): boolean => t.kind === "post" || t.kind === "king-post";
const isOfRoof = (t: Timber): boolean => t.kind === "ridge" || t.kind === "rafter" || t.kind === "purlin";

/**
 * The ridge of a roof whose plane no deck braces, where no brace that leans along the walls meets ridge, rafters or purlins.
 * @returns undefined where something holds the ridge, or there is none
 */
export function looseRidge(model: Model): LooseRidge | undefined {
  const ridge = model.timbers.find((t) => t.kind === "ridge");
  if (!ridge || bracesRoofPlane(model.frame.roof)) return undefined;
  const pairs = model.meetings.flatMap(({ a, b }): [Timber, Timber][] => [
    [a, b],
    [b, a],
  ]);
  if (pairs.some(([brace, other]) => holdsAlong(brace) && isOfRoof(other))) return undefined;
  const under = pairs.flatMap(([post, other]) => (other === ridge && isUpright(post) ? [post.member] : []));
  return { ridge: ridge.member, under: [...new Set(under)] };
}
