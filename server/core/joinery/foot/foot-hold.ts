/**
 * What a post's foot holds on its anchor, each way alone: end grain on the plate, bolts or screws through the steel, the
 * wood round them, and the steel itself. Concrete that breaks out round cast-in or drilled steel is none of it.
 */
import { boltLateral } from "../../fasteners/bolt.ts";
import {
  adjust,
  type FastenerMoisture,
  groupAction,
  wetLateral,
  wetWithdrawal,
} from "../../fasteners/connection-factors.ts";
import { dowelBearing, steelBearing } from "../../fasteners/dowel-bearing.ts";
import { boltDistances } from "../../fasteners/placement.ts";
import {
  gradeOf,
  STEEL_MODULUS,
  strapColumn,
  strapEdgeMoment,
  strapFlatMoment,
  strapRupture,
  strapShear,
  strapYield,
} from "../../fasteners/strap-steel.ts";
import { type StructuralScrewValue, structuralScrew } from "../../fasteners/structural-screw.ts";
import { cheekSplit, rowTearOut, tenonNetTension } from "../../fasteners/tear-out.ts";
import { doubleShear, reductionTerm } from "../../fasteners/yield.ts";
import type { Adjusted } from "../../members/adjust.ts";
import { type Factor, given, leastCertain, type Sourced } from "../../sourced.ts";
import { adjustedFor, modulusOf, woodOf } from "../../statics/timber-wood.ts";
import type { TimberValues } from "../../wood/stated-values.ts";
import { boltWood } from "./foot-room.ts";
import type { LimitKind } from "./limit-words.ts";
import {
  type FootRow,
  type FootStrap,
  heightsOf,
  holeOf,
  isInKerf,
  type PostFoot,
  screwRoom,
  woodLeft,
} from "./post-foot.ts";

/**
 * Sideways by how its bolts run: along them, or square to them in the plane of the straps. A foot whose file states what
 * holds it sideways, or gives it no steel and bolts to reckon with, has one way for the whole push.
 */
export type FootWay = "down" | "uplift" | "sideways" | "along-bolts" | "across-bolts";

const FOOT_WAYS: readonly FootWay[] = ["down", "uplift", "sideways", "along-bolts", "across-bolts"];

export interface FootLimit {
  readonly kind: LimitKind;
  /** lb */
  readonly value: Sourced;
  /** bolts and screws: of one, with its factors; end grain: F_c* in psi */
  readonly each?: Adjusted;
  /** bolts and screws: how many; end grain: in² */
  readonly times?: number;
  /** bolts and screws that hold nothing: no wood is left, they stand too near something, or reach too little wood */
  readonly none?: "wood" | "place" | "reach";
}

export interface WayHold {
  /** the least first */
  readonly limits: readonly [FootLimit, ...FootLimit[]];
  /** false where what carries the post's end is not judged, so that the least limit is no more than a bound */
  readonly whole: boolean;
}

/** What the file does not say, without which a way has no capacity. */
export type FootLack = "wood" | "strap" | "fasteners" | "kerf-bolts" | "dowel" | "unread";

export interface FootHold {
  /** the ways in which it is pushed and held: sideways as a whole, or by how its bolts run */
  readonly asked: readonly FootWay[];
  readonly ways: Readonly<Partial<Record<FootWay, WayHold>>>;
  readonly lacks: readonly FootLack[];
}

/** What the limits of one foot are reckoned from. */
interface Held {
  readonly foot: PostFoot;
  readonly row: FootRow;
  readonly strap: FootStrap;
  readonly wood: TimberValues;
  readonly duration: Factor;
}

const least = (limits: readonly FootLimit[], whole = true): WayHold | undefined => {
  const [first, ...rest] = [...limits].sort((a, b) => a.value.value - b.value.value);
  return first && { limits: [first, ...rest], whole };
};

const limit = (kind: LimitKind, value: Sourced): FootLimit => ({ kind, value });

/** End grain of the post on the plate or on the straps’ seat, F_c* on what is left of it (NDS 3.10.1). */
function endGrainOf(foot: PostFoot, wood: TimberValues, duration: Factor): FootLimit {
  const { through, breadth, strap, dowel } = foot;
  const [long, wide] = [through, breadth].map((side) => Math.min(side, foot.plate ?? side)) as [
    number,
    number,
  ];
  const kerf = strap ? Math.min(strap.kerf, long) * wide : 0;
  // of each notch what lies over the plate
  const over = strap ? Math.min(long / 2, Math.max(0, long / 2 - (through / 2 - strap.letIn))) : 0;
  const letIn = strap ? strap.sides * over * Math.min(strap.width, wide) : 0;
  const hole = dowel ? (Math.PI / 4) * dowel.diameter ** 2 : 0;
  const area = Math.max(0, long * wide - kerf - letIn - hole);
  const { Fc } = adjustedFor(foot.post, wood, duration);
  return {
    kind: "end-grain",
    value: { value: Fc.value * area, status: Fc.status, source: "F_c* × area, NDS 3.10.1" },
    each: Fc,
    times: area,
  };
}

/**
 * Pressed down. End grain counts where it has something to stand on: a plate, a seat of the straps, the concrete. Over a
 * plate in a kerf without one the bolts carry it all. Straps on both faces carry their seat as columns over the stand-off.
 */
function down(
  foot: PostFoot,
  wood: TimberValues,
  duration: Factor,
  held: Held | undefined,
): WayHold | undefined {
  const { strap, plate, standOff } = foot;
  const onStraps = strap !== undefined && plate === undefined && standOff.value > 0;
  const column = (known: FootStrap): FootLimit =>
    limit("strap-column", all(known.sides, strapColumn(known, standOff.value)));
  if (onStraps && strap.place === "in-kerf")
    return held && least([fastenersOf(held, "down"), column(held.strap)]);
  const seat = onStraps && strap.place === "both-faces" ? [column(strap)] : [];
  return least([endGrainOf(foot, wood, duration), ...seat], false);
}

/** A screw of the row, as deep as its own wood goes. @param angle degrees, load to grain */
function screwOf({ foot, row, strap, wood }: Held, angle: number): StructuralScrewValue {
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

const moistureOf = ({ foot }: Held): FastenerMoisture => ({
  placed: foot.post.class?.seasoning ?? "green",
  service: "dry",
});

function fastenersOf(held: Held, way: keyof typeof LOADS): FootLimit {
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
function woodPulled(held: Held): FootLimit[] {
  const { foot, row, wood, duration } = held;
  if (row.kind === "screws") return [];
  const { Fv, Ft } = adjustedFor(foot.post, wood, duration);
  const thickness = woodLeft(foot);
  return [
    limit("row-tear-out", rowTearOut(row.up.value, row.spacing.value, row.count, thickness, Fv.value)),
    limit("net-section", tenonNetTension(foot.breadth, thickness, holeOf(row.diameter), 1, Ft.value)),
  ];
}

const all = (sides: number, each: Sourced): Sourced => ({ ...each, value: sides * each.value });

function uplift(held: Held): FootLimit[] {
  const { strap, row } = held;
  const hole = row.kind === "bolts" ? holeOf(row.diameter) : row.diameter;
  return [
    fastenersOf(held, "uplift"),
    ...woodPulled(held),
    limit("strap-yield", all(strap.sides, strapYield(strap))),
    limit("strap-rupture", all(strap.sides, strapRupture(strap, hole))),
  ];
}

/** From the concrete to each bolt or screw of a strap, in. */
const leversOf = ({ foot, row }: Held): number[] =>
  heightsOf(row).map((high) => Math.max(foot.standOff.value + high, 1e-6));

/**
 * The most that a row sets on steel that stands up from the concrete, lb: each fastener at most its own value, the lowest
 * filled first, until their moments together are the steel’s (statics; lower bound of plastic theory, derived).
 * @param levers from the concrete, in, the least first; @param each lb; @param moment lb·in
 */
export function rowPush(levers: readonly number[], each: number, moment: number): number {
  let [left, pushed] = [moment, 0];
  for (const lever of levers) {
    const force = Math.min(each, left / lever);
    pushed += force;
    left -= force * lever;
  }
  return pushed;
}

/** Square to the bolts: they bear across the grain, the straps stand on edge and bend from the concrete up (`rowPush`). */
function acrossBolts(held: Held): FootLimit[] {
  const { foot, row, strap, wood, duration } = held;
  const levers = leversOf(held);
  const moment = all(strap.sides, strapEdgeMoment(strap, levers[0] ?? 0));
  const { Fv } = adjustedFor(foot.post, wood, duration);
  const cheek = woodLeft(foot) / 2;
  const split = cheekSplit(foot.breadth / 2, 0, foot.breadth, [cheek, cheek], Fv.value, row.up.value);
  const fasteners = fastenersOf(held, "across-bolts");
  const each = fasteners.value.value / row.count;
  return [
    fasteners,
    ...(row.kind === "bolts" ? [limit("split", { ...split.shear, value: split.pull })] : []),
    limit("strap-bending", { ...moment, value: rowPush(levers, each, moment.value) }),
    limit("strap-shear", all(strap.sides, strapShear(strap))),
  ];
}

/**
 * Along the bolts the straps bend flat. Of two, the post's end pushes the one over the stand-off, and its lowest bolt draws
 * the other over the stand-off and its own height; one alone, or a plate in a kerf, is counted with the longer lever.
 * Screws draw the strap only as far as their thread holds (NDS 12.2.1). What stays in balance within the steel's moment is
 * safe (lower bound of plastic theory, derived).
 */
function alongBolts(held: Held): FootLimit[] {
  const { foot, row, strap, duration } = held;
  const moment = strapFlatMoment(strap);
  const levers = leversOf(held);
  const shear = strapShear(strap);
  const pushed =
    strap.sides === 1 ? 0 : Math.min(moment.value / Math.max(foot.standOff.value, 1e-6), shear.value);
  const drawn = rowPush(levers, Number.POSITIVE_INFINITY, moment.value);
  const thread =
    row.kind === "screws"
      ? adjust(screwOf(held, 90).W, [duration, wetWithdrawal(moistureOf(held), "screw")])
      : undefined;
  return [
    limit("strap-bending", { ...moment, value: drawn + pushed }),
    ...(thread
      ? [
          limit("withdrawal", {
            ...thread.reference,
            value: rowPush(levers, thread.value, moment.value) + pushed,
          }),
        ]
      : []),
    limit("strap-shear", all(strap.sides, shear)),
  ];
}

/**
 * @param duration C_D of the combination; what the file states is taken as it stands
 * @returns the ways that have a capacity, and what the file does not say for the others
 */
export function footHold(foot: PostFoot, duration: Factor): FootHold {
  const { anchor, row, strap } = foot;
  const wood = woodOf(foot.post);
  const unread = [anchor.strap, anchor.bolts, anchor.screws, anchor.capacity].includes("unread");
  const held =
    wood && row && strap && !unread
      ? {
          foot,
          row,
          // steel past the post's own width has no wood to press on
          strap: { ...strap, width: Math.min(strap.width, foot.breadth) },
          wood,
          duration,
        }
      : undefined;
  const capacity = anchor.capacity === "unread" ? undefined : anchor.capacity;
  const way = (own: number | undefined, reckoned: () => WayHold | undefined): WayHold | undefined =>
    own === undefined ? reckoned() : least([limit("stated", given(own, capacity?.because))]);
  const byBolts = held && capacity?.sideways === undefined ? held : undefined;
  const found: Record<FootWay, WayHold | undefined> = {
    down: way(capacity?.down, () => wood && down(foot, wood, duration, held)),
    uplift: way(capacity?.uplift, () => held && least(uplift(held))),
    sideways: way(capacity?.sideways, () => undefined),
    "along-bolts": byBolts && least(alongBolts(byBolts)),
    "across-bolts": byBolts && least(acrossBolts(byBolts)),
  };
  const asked = FOOT_WAYS.filter((each) =>
    each === "sideways" ? !byBolts : each === "down" || each === "uplift" || byBolts,
  );
  const complete = asked.every((each) => found[each]);
  const lacks: FootLack[] = complete
    ? []
    : [
        ...(unread ? (["unread"] as const) : []),
        ...(wood ? [] : (["wood"] as const)),
        ...(anchor.kind === "dowel"
          ? (["dowel"] as const)
          : [
              ...(strap || anchor.strap === "unread" ? [] : (["strap"] as const)),
              ...(row || unread
                ? []
                : anchor.screws && isInKerf(anchor)
                  ? (["kerf-bolts"] as const)
                  : (["fasteners"] as const)),
            ]),
      ];
  const ways = Object.fromEntries(asked.flatMap((each) => (found[each] ? [[each, found[each]]] : [])));
  return { asked, ways, lacks };
}

/** The highest place that a fastener takes, from the post's end, in. */
export const topOf = (row: FootRow): number => Math.max(...heightsOf(row));
