/** Boards of a floor between its joists, under what people and goods weigh on it. */
import { asdCombinations, durationFactor } from "../loads/combinations.ts";
import { floorDeck } from "../loads/floor-deck.ts";
import { deflectionRule, limitsOf } from "../members/deflection-limits.ts";
import { common, type Interval } from "../model/box.ts";
import type { Model, Timber } from "../model/model.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import { type DeckStrip, deckStrip, STRIP } from "../roof/deck-strip.ts";
import { type FloorPlan, floorPlans, floorWeight } from "./floor-loads.ts";

function reachAlong(timber: Timber, along: Vec3): Interval {
  const a = dot(timber.origin, along);
  const b = a + timber.span * dot(timber.axis, along);
  return [Math.min(a, b), Math.max(a, b)];
}

/** The widest distance between neighbors of a row, center to center, in; what is taken as an opening bears no boards. */
function widest({ row, along, across, gaps }: FloorPlan): number | undefined {
  const open = (a: Timber, b: Timber): boolean =>
    gaps.some((gap) => gap.what === "opening" && gap.between.includes(a) && gap.between.includes(b));
  const sorted = [...row].sort((a, b) => dot(a.origin, across) - dot(b.origin, across));
  const apart = sorted.flatMap((timber, i) => {
    const own = reachAlong(timber, along);
    const half = (own[1] - own[0]) / 2;
    const next = sorted.slice(i + 1).find((other) => common(reachAlong(other, along), own) > half);
    if (!next || open(timber, next)) return [];
    return [dot(next.origin, across) - dot(timber.origin, across)];
  });
  const most = Math.max(0, ...apart);
  return most > 0 ? most : undefined;
}

function stripOf(model: Model, plan: FloorPlan): DeckStrip | undefined {
  const { floor, row } = plan;
  const { deck, live } = floor;
  // a floor on usual boards is held against its load as such
  const laid = floorDeck(floor);
  const span = widest(plan);
  const edition = model.frame.basis.loads ?? "asce-7-16";
  if (laid?.kind !== "boards" || live === undefined || span === undefined) return undefined;
  const { thickness } = laid;
  if (!(thickness > 0)) return undefined;
  const combination = asdCombinations(edition, false).find(({ id }) => id === "2")?.text ?? "";
  const plf = (psf: number): number => (psf * STRIP) / 12;
  return deckStrip({
    on: { floor: floor.name },
    path: deck ? `${deck.path}/${deck.thickness === undefined ? "kind" : "thickness"}` : `${floor.path}/live`,
    kind: "boards",
    breadth: STRIP,
    span,
    thickness,
    carrier: row[0],
    deadPlf: plf(floorWeight(floor).value),
    loads: [
      {
        load: "floor",
        combination,
        duration: durationFactor("L"),
        plf: plf(live),
        limits: limitsOf(deflectionRule(undefined, undefined, true)),
      },
    ],
  });
}

/** @returns one for each floor on boards, named or taken as usual, whose joists and live load the file names */
export function floorDecks(model: Model): readonly DeckStrip[] {
  return floorPlans(model).flatMap((plan) => stripOf(model, plan) ?? []);
}
