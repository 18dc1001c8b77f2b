/** What the deck of a slope lies on, and how far apart that stands. Lengths in in. */
import type { Model, RoofSlope, Timber } from "../model/model.ts";
import { dot, sub, type Vec3 } from "../model/vec.ts";

const liesOn = (slope: RoofSlope, timber: Timber): boolean => timber.walls.includes(slope.wall);

/** Purlins lie over everything else; without them the roof's own rafters carry the deck, without those the principal rafters. */
export function deckCarriers(model: Model, slope: RoofSlope): readonly Timber[] {
  const purlins = model.timbers.filter((t) => t.rule === "purlins-up-slope" && liesOn(slope, t));
  if (purlins.length > 0) return purlins;
  if (slope.rafters.length > 0) return slope.rafters;
  return model.timbers.filter((t) => t.kind === "rafter" && t.rule === "roof-rafter" && liesOn(slope, t));
}

/** How far up the slope a point lies from the plate's outside face, inches along the slope. */
export function upSlope(slope: RoofSlope, p: Vec3): number {
  const [, y, z] = slope.plane.normal;
  return dot(sub(p, slope.plane.point), [0, -Math.sign(y) * z, Math.abs(y)]);
}

/** @returns the widest distance between neighbors, center to center; undefined for fewer than two carriers */
export function carrierSpacing(model: Model, slope: RoofSlope): number | undefined {
  const carriers = deckCarriers(model, slope);
  const at = carriers
    .map((t) => (t.rule === "purlins-up-slope" ? upSlope(slope, t.origin) : t.origin[0]))
    .sort((a, b) => a - b);
  return at.length < 2 ? undefined : Math.max(...at.slice(1).map((p, i) => p - (at[i] ?? p)));
}
