/** What carries a ridge, and what keeps it from rolling. */
import type { Joint } from "../joinery/joint.ts";
import type { Model, Timber } from "../model/model.ts";

const isRidge = (t: Timber): boolean => t.kind === "ridge";

/** The timbers that a ridge meets. */
function neighbors({ meetings }: Model, ridge: Timber): Timber[] {
  return meetings.flatMap(({ a, b }) => (a === ridge ? [b] : b === ridge ? [a] : []));
}

/**
 * Whether something besides the roof's own rafters carries a ridge: only then may the rafters' seats slide. A ridge that
 * only lies between them, as a board does, stands by their thrust.
 */
export function ridgeIsCarried(model: Model): boolean {
  const own = new Set(model.roof?.slopes.flatMap(({ rafters }) => rafters.map(({ id }) => id)));
  return model.timbers.some((t) => isRidge(t) && neighbors(model, t).some(({ id }) => !own.has(id)));
}

/**
 * A ridge between rafters alone would roll between their two rows of pins. The housings and nails of one slope hold it: its
 * rafters, the first wall's, turn with the ridge, and the pins of the other slope are the crown of the arch.
 * @returns joints at a rafter's head that do not turn about the ridge
 */
export function rollHolders(model: Model): ReadonlySet<Joint> {
  const loose = new Set(
    model.timbers.filter(
      (t) => isRidge(t) && neighbors(model, t).every(({ kind }) => kind === "rafter" || kind === "purlin"),
    ),
  );
  return new Set(
    model.joints.filter(
      ({ of, into, end }) => loose.has(into) && of.kind === "rafter" && end === "head" && of.axis[1] > 0,
    ),
  );
}
