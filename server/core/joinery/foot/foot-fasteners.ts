/** What the bolts or screws of a post's foot hold in its wood, and what the wood round them does. */
import { boltLateral } from "../../fasteners/bolt.ts";
import {
  adjust,
  type FastenerMoisture,
  groupAction,
  wetLateral,
} from "../../fasteners/connection-factors.ts";
import { dowelBearing, steelBearing } from "../../fasteners/dowel-bearing.ts";
import { boltDistances } from "../../fasteners/placement.ts";
import { gradeOf, STEEL_MODULUS } from "../../fasteners/strap-steel.ts";
import { type StructuralScrewValue, structuralScrew } from "../../fasteners/structural-screw.ts";
import { rowTearOut, tenonNetTension } from "../../fasteners/tear-out.ts";
import { doubleShear, reductionTerm } from "../../fasteners/yield.ts";
import { leastCertain, type Sourced } from "../../sourced.ts";
import { adjustedFor, modulusOf } from "../../statics/timber-wood.ts";
import { type FootLimit, type Held, limit } from "./foot-limits.ts";
import { boltWood } from "./foot-room.ts";
import { type FootStrap, holeOf, screwRoom, woodLeft } from "./post-foot.ts";

/** A screw of the row, as deep as its own wood goes. @param angle degrees, load to grain */
export function screwOf({ foot, row, strap, wood }: Held, angle: number): StructuralScrewValue {
  return structuralScrew({
    diameter: row.diameter,
    length: row.length ?? 0,
    main: { kind: "wood", G: wood.values.G.value, angle },
    mainThickness: screwRoom(foot),
    side: sideOf(strap),
  });
}

const sideOf = ({ thickness }: FootStrap) => {
  const bearing = steelBearing(gradeOf(thickness).ultimate, thickness < 0.25 - 1e-9 ? "cold" : "hot");
  return { kind: "plate", thickness, bearing } as const;
};

/** Z of one bolt or screw, lb, before any factor. @param angle degrees, load to grain */
function reference(held: Held, angle: number): Sourced {
  const { row, strap, wood } = held;
  if (row.kind === "screws") return screwOf(held, angle).Z;
  const G = wood.values.G.value;
  const side = sideOf(strap);
  const thickness = woodLeft(held.foot);
  if (strap.place !== "in-kerf")
    return boltLateral({
      diameter: row.diameter,
      main: { kind: "wood", G, angle },
      mainThickness: thickness,
      side,
      ...(strap.sides === 2 ? { farSide: strap.thickness } : {}),
    }).reference;
  // a plate between two cheeks of wood: steel in the middle (NDS 12.3.1, double shear)
  const cheek = dowelBearing(G, row.diameter, angle);
  const { governs } = doubleShear({
    diameter: row.diameter,
    main: { length: strap.thickness, bearing: side.bearing.value },
    side: { length: thickness / 2, bearing: cheek.value },
    bendingYield: BOLT_YIELD,
    reduction: reductionTerm(row.diameter, row.diameter, angle),
  });
  return {
    value: governs.Z,
    status: leastCertain(["memory", cheek.status]),
    source: `NDS 12.3.1, mode ${governs.mode}`,
  };
}

/** F_yb of low carbon bolts, psi (NDS Table I1; memory). */
const BOLT_YIELD = 45_000;

/** How many fasteners pass the force on: each bolt once, the screws of each strap. */
const countOf = ({ row, strap }: Held): number =>
  row.kind === "bolts" ? row.count : row.count * (strap.place === "both-faces" ? 2 : 1);

const LOADS = { down: "along-compression", uplift: "along-tension", "across-bolts": "across" } as const;

export const moistureOf = ({ foot }: Held): FastenerMoisture => ({
  placed: foot.post.class?.seasoning ?? "green",
  service: "dry",
});

export function fastenersOf(held: Held, way: keyof typeof LOADS): FootLimit {
  const { foot, row, strap, duration } = held;
  const along = way !== "across-bolts";
  const { factor } = boltDistances(boltWood(foot, row, LOADS[way]));
  const group = groupAction({
    count: along ? row.count : 1,
    spacing: row.spacing.value,
    diameter: row.diameter,
    main: modulusOf(foot.post) * woodLeft(foot) * foot.breadth,
    side: STEEL_MODULUS * strap.sides * strap.thickness * strap.width,
    sideIs: "steel",
  });
  const unplaced = reference(held, along ? 0 : 90);
  // they stand in one row along the grain
  const each = adjust(unplaced, [duration, wetLateral(moistureOf(held), row.diameter, 1), group, factor]);
  const times = countOf(held);
  const none = !(woodLeft(foot) > 0) ? "wood" : !(unplaced.value > 0) ? "reach" : "place";
  return {
    kind: row.kind,
    value: { value: each.value * times, status: each.status, source: each.reference.source },
    each,
    times,
    ...(each.value > 0 ? {} : { none }),
  };
}

/** Wood torn out below the bolts, and what is left beside their holes (NDS 3.1.2 and appendix E). */
export function woodPulled(held: Held): FootLimit[] {
  const { foot, row, wood, duration } = held;
  if (row.kind === "screws") return [];
  const { Fv, Ft } = adjustedFor(foot.post, wood, duration);
  const thickness = woodLeft(foot);
  return [
    limit("row-tear-out", rowTearOut(row.up.value, row.spacing.value, row.count, thickness, Fv.value)),
    limit("net-section", tenonNetTension(foot.breadth, thickness, holeOf(row.diameter), 1, Ft.value)),
  ];
}
