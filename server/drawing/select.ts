/** What a view shows: all timbers, or those of one bent or wall and what crosses it, cut. */
import type { Joint } from "../core/joinery/joint.ts";
import { isSeatKind } from "../core/joinery/seat.ts";
import type { Model, Pier, Timber } from "../core/model/model.ts";
import { dot } from "../core/model/vec.ts";
import { type Body, bodyOf, cutOf } from "./body.ts";
import { nearness, type Sight } from "./views.ts";

/** a timber that runs this straight at the eye (cosine) is cut by a view of one bent or wall */
const HEAD_ON = 0.7;

/** The depth at which a bent or wall is cut: the middle of its upright timbers, else its grid line. */
function cutDepth(model: Model, sight: Sight, at: number): number {
  const posts = standing(model, sight).filter((timber) => timber.kind === "post");
  if (posts.length > 0) {
    return posts.reduce((sum, post) => sum + nearness(sight, post.origin), 0) / posts.length;
  }
  return at * (sight.across === 0 ? sight.toward[1] : sight.toward[0]);
}

/** Timbers that the model says stand in the view's bent or wall. */
function standing(model: Model, sight: Sight): Timber[] {
  const name = sight.only?.id;
  return model.timbers.filter(
    (timber) => name !== undefined && (sight.kind === "bent" ? timber.bents : timber.walls).includes(name),
  );
}

/** The roof's rafters nearest to a bent, one of each slope: a bent seldom stands under a pair of them. */
function nearestRafters(model: Model, depth: number, sight: Sight): Timber[] {
  return (model.roof?.slopes ?? []).flatMap((slope) => {
    const away = (rafter: Timber): number => Math.abs(nearness(sight, rafter.origin) - depth);
    const [nearest] = [...slope.rafters].sort((a, b) => away(a) - away(b));
    return nearest === undefined ? [] : [nearest];
  });
}

/** @returns the bodies of a view, in the model's order */
export function bodiesOf(model: Model, sight: Sight): Body[] {
  const look = (timber: Timber): Body[] => {
    const body = bodyOf(sight, timber);
    return body === undefined ? [] : [body];
  };
  if (sight.only === undefined) return model.timbers.flatMap(look);
  const depth = cutDepth(model, sight, sight.only.at);
  const shown = new Set(standing(model, sight));
  if (sight.kind === "bent") {
    for (const rafter of (model.roof?.slopes ?? []).flatMap((slope) => slope.rafters)) shown.delete(rafter);
    for (const rafter of nearestRafters(model, depth, sight)) shown.add(rafter);
  }
  // a shed's rafters belong to the wall of their eave, and lie on the high one all the same
  if (sight.kind === "wall")
    for (const { kind, of, into } of model.joints) if (isSeatKind(kind) && shown.has(into)) shown.add(of);
  return model.timbers.flatMap((timber) => {
    // a flat roof's rafters run at the eye of a wall, which shows them whole all the same
    const headOn = Math.abs(dot(timber.axis, sight.toward)) > HEAD_ON && timber.rule !== "roof-rafter";
    const cut = headOn ? cutOf(sight, timber, depth) : undefined;
    if (cut !== undefined) return [cut];
    return shown.has(timber) ? look(timber) : [];
  });
}

/** @returns joints both of whose timbers are shown */
export function jointsOf(model: Model, bodies: readonly Body[]): Joint[] {
  const shown = new Set(bodies.map((body) => body.timber.id));
  return model.joints.filter((joint) => shown.has(joint.of.id) && shown.has(joint.into.id));
}

/** @returns the view's piers, the farthest first */
export function piersOf(model: Model, sight: Sight): Pier[] {
  const { only } = sight;
  const place = (pier: Pier): string | undefined =>
    sight.kind === "bent" ? pier.place.bent : pier.place.wall;
  // one that stands between grid lines by its own measure may stand on this one all the same
  const crosses = (pier: Pier, at: number): boolean =>
    Math.abs(pier.top[sight.across === 0 ? 1 : 0] - at) < pier.diameter / 2;
  return model.piers
    .filter((pier) => only === undefined || place(pier) === only.id || crosses(pier, only.at))
    .sort((a, b) => nearness(sight, a.top) - nearness(sight, b.top));
}
