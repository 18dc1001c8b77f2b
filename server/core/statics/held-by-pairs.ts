/**
 * Where rafters that lean against each other hold what lies between their heads. One rafter lets its head swing about its
 * foot; a second one from the other side stops that, so that a pair holds a ridge up and down as well as sideways, as the
 * crown of an arch. A timber braces another only where it is itself held (design, section 6): so each of the two stands on
 * something besides the ridge, and is held there level, against their thrust.
 */
import type { Timber } from "../model/model.ts";
import { along, dot, sub, type Vec3 } from "../model/vec.ts";
import { type Holds, isHeldBesides } from "./held-places.ts";
import { type Contact, supportBy } from "./member-supports.ts";

/** Whether it stands on something that is not the ridge. */
function stands(rafter: Timber, contacts: readonly Contact[], ridge: Timber): boolean {
  return contacts.some((c) => c.other !== ridge && supportBy(rafter, c) !== undefined);
}

/**
 * @param contactsOf contacts of a timber
 * @param holds what is held across the ridge, level
 * @returns places along a lying timber that pairs of rafters hold, in from its foot, in order
 */
export function heldByPairs(
  ridge: Timber,
  contactsOf: (timber: Timber) => readonly Contact[],
  holds: Holds,
): number[] {
  const across: Vec3 = [-ridge.axis[1], ridge.axis[0], 0];
  const leaning = contactsOf(ridge).flatMap(({ other, at, point }) => {
    if (other.kind !== "rafter" || Math.abs(other.axis[2]) < 0.02) return [];
    if (!isHeldBesides(holds, other.id, ridge.id) || !stands(other, contactsOf(other), ridge)) return [];
    const away = dot(sub(along(other.origin, other.axis, other.span / 2), point), across);
    return [{ at, side: Math.sign(away) }];
  });
  // staggered by less than the ridge is deep, they lean against each other still
  const near = Math.max(ridge.width, ridge.depth);
  const left = leaning.filter(({ side }) => side < 0);
  const right = leaning.filter(({ side }) => side > 0);
  return left
    .flatMap((one) => {
      const away = (other: { readonly at: number }): number => Math.abs(other.at - one.at);
      const [other] = [...right].sort((a, b) => away(a) - away(b));
      return other && away(other) <= near ? [(one.at + other.at) / 2] : [];
    })
    .sort((a, b) => a - b);
}
