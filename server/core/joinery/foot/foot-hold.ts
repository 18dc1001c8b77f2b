/**
 * What a post's foot holds on its anchor, each way alone: end grain on the plate, bolts or screws through the steel, the
 * wood round them, and the steel itself. Concrete that breaks out round cast-in or drilled steel is none of it.
 */
import { boltLateral } from "../../fasteners/bolt.ts";
import { adjust, groupAction, wetLateral } from "../../fasteners/connection-factors.ts";
import { dowelBearing, steelBearing } from "../../fasteners/dowel-bearing.ts";
import { boltDistances } from "../../fasteners/placement.ts";
import {
  gradeOf,
  STEEL_MODULUS,
  strapEdgeMoment,
  strapFlatMoment,
  strapRupture,
  strapShear,
  strapYield,
} from "../../fasteners/strap-steel.ts";
import { structuralScrew } from "../../fasteners/structural-screw.ts";
import { cheekSplit, rowTearOut, tenonNetTension } from "../../fasteners/tear-out.ts";
import { doubleShear, reductionTerm } from "../../fasteners/yield.ts";
import type { Adjusted } from "../../members/adjust.ts";
import { type Factor, given, leastCertain, type Sourced } from "../../sourced.ts";
import { adjustedFor, modulusOf, woodOf } from "../../statics/timber-wood.ts";
import type { TimberValues } from "../../wood/stated-values.ts";
import { boltWood } from "./foot-room.ts";
import { type FootRow, type FootStrap, heightsOf, holeOf, type PostFoot } from "./post-foot.ts";

/** Sideways by how its bolts run: along them, or square to them in the plane of the straps. */
export type FootWay = "down" | "uplift" | "along-bolts" | "across-bolts";

export const FOOT_WAYS: readonly FootWay[] = ["down", "uplift", "along-bolts", "across-bolts"];

export type LimitKind =
  | "stated"
  | "end-grain"
  | "bolts"
  | "screws"
  | "row-tear-out"
  | "net-section"
  | "split"
  | "strap-yield"
  | "strap-rupture"
  | "strap-bending"
  | "strap-shear";

export interface FootLimit {
  readonly kind: LimitKind;
  /** lb */
  readonly value: Sourced;
  /** bolts and screws: of one, with its factors; end grain: F_c* in psi */
  readonly each?: Adjusted;
  /** bolts and screws: how many; end grain: in² */
  readonly times?: number;
}

export interface WayHold {
  /** the least first */
  readonly limits: readonly [FootLimit, ...FootLimit[]];
}

/** What the file does not say, without which a way has no capacity. */
export type FootLack = "wood" | "strap" | "fasteners" | "unread";

export interface FootHold {
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

const least = (limits: readonly FootLimit[]): WayHold | undefined => {
  const [first, ...rest] = [...limits].sort((a, b) => a.value.value - b.value.value);
  return first && { limits: [first, ...rest] };
};

const limit = (kind: LimitKind, value: Sourced): FootLimit => ({ kind, value });

/** End grain of the post on the plate or on the straps’ seat, F_c* on what is left of it (NDS 3.10.1). */
function endGrainOf(foot: PostFoot, wood: TimberValues, duration: Factor): FootLimit {
  const { through, breadth, plate, strap, dowel } = foot;
  const whole = Math.min(through, plate ?? through) * Math.min(breadth, plate ?? breadth);
  const kerf = strap ? strap.kerf * Math.min(breadth, plate ?? breadth) : 0;
  const letIn = strap && strap.letIn > 0 && plate === undefined ? strap.sides * strap.letIn * strap.width : 0;
  const hole = dowel ? (Math.PI / 4) * dowel.diameter ** 2 : 0;
  const area = Math.max(0, whole - kerf - letIn - hole);
  const { Fc } = adjustedFor(foot.post, wood, duration);
  return {
    kind: "end-grain",
    value: { value: Fc.value * area, status: Fc.status, source: "F_c* × area, NDS 3.10.1" },
    each: Fc,
    times: area,
  };
}

/** Wood that a bolt bears on, in: what the straps leave, or both cheeks of a kerf. */
const woodThickness = ({ foot, strap }: Held): number =>
  Math.max(0, foot.through - strap.sides * strap.letIn - strap.kerf);

/** Z of one bolt or screw, lb, before any factor. @param angle degrees, load to grain */
function reference(held: Held, angle: number): Sourced {
  const { row, strap, wood } = held;
  const G = wood.values.G.value;
  const grade = gradeOf(strap.thickness);
  const bearing = steelBearing(grade.ultimate, strap.thickness < 0.25 - 1e-9 ? "cold" : "hot");
  const side = { kind: "plate", thickness: strap.thickness, bearing } as const;
  const main = { kind: "wood", G, angle } as const;
  if (row.kind === "screws")
    return structuralScrew({
      diameter: row.diameter,
      length: row.length ?? 0,
      main,
      mainThickness: held.foot.through,
      side,
    }).Z;
  const thickness = woodThickness(held);
  if (strap.place !== "in-kerf")
    return boltLateral({
      diameter: row.diameter,
      main,
      mainThickness: thickness,
      side,
      ...(strap.sides === 2 ? { farSide: strap.thickness } : {}),
    }).reference;
  // a plate between two cheeks of wood: steel in the middle (NDS 12.3.1, double shear)
  const cheek = dowelBearing(G, row.diameter, angle);
  const { governs } = doubleShear({
    diameter: row.diameter,
    main: { length: strap.thickness, bearing: bearing.value },
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

function fastenersOf(held: Held, way: "uplift" | "across-bolts"): FootLimit {
  const { foot, row, strap, duration } = held;
  const along = way === "uplift";
  const { factor } = boltDistances(boltWood(foot, row, along ? "along-tension" : "across"));
  const group = groupAction({
    count: along ? row.count : 1,
    spacing: row.spacing.value,
    diameter: row.diameter,
    main: modulusOf(foot.post) * woodThickness(held) * foot.breadth,
    side: STEEL_MODULUS * strap.sides * strap.thickness * strap.width,
    sideIs: "steel",
  });
  const moisture = { placed: foot.post.class?.seasoning ?? "green", service: "dry" } as const;
  // they stand in one row along the grain
  const each = adjust(reference(held, along ? 0 : 90), [
    duration,
    wetLateral(moisture, row.diameter, 1),
    group,
    factor,
  ]);
  const times = countOf(held);
  return {
    kind: row.kind,
    value: { value: each.value * times, status: each.status, source: each.reference.source },
    each,
    times,
  };
}

/** Wood torn out below the bolts, and what is left beside their holes (NDS 3.1.2 and appendix E). */
function woodPulled(held: Held): FootLimit[] {
  const { foot, row, wood, duration } = held;
  if (row.kind === "screws") return [];
  const { Fv, Ft } = adjustedFor(foot.post, wood, duration);
  const thickness = woodThickness(held);
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

/**
 * Square to the bolts: they bear across the grain, the straps stand on edge and bend from the concrete to the lowest bolt
 * (statics, derived).
 */
function acrossBolts(held: Held): FootLimit[] {
  const { foot, row, strap, wood, duration } = held;
  const lever = foot.standOff.value + row.up.value;
  const moment = strapEdgeMoment(strap, lever);
  const { Fv } = adjustedFor(foot.post, wood, duration);
  const cheek = woodThickness(held) / 2;
  const split = cheekSplit(foot.breadth / 2, 0, foot.breadth, [cheek, cheek], Fv.value, row.up.value);
  return [
    fastenersOf(held, "across-bolts"),
    ...(row.kind === "bolts" ? [limit("split", { ...split.shear, value: split.pull })] : []),
    limit("strap-bending", all(strap.sides, { ...moment, value: moment.value / lever })),
    limit("strap-shear", all(strap.sides, strapShear(strap))),
  ];
}

/**
 * Along the bolts the straps bend flat. Of two, the post's end pushes the one over the stand-off, and its lowest bolt draws
 * the other over the stand-off and its own height; one alone, or a plate in a kerf, is counted with the longer lever. What
 * stays in balance within the steel's moment is safe (lower bound of plastic theory, derived).
 */
function alongBolts({ foot, row, strap }: Held): FootLimit[] {
  const moment = strapFlatMoment(strap);
  const long = foot.standOff.value + row.up.value;
  const drawn = moment.value / long;
  const pushed = strap.sides === 1 ? 0 : moment.value / Math.max(foot.standOff.value, 1e-6);
  const shear = strapShear(strap);
  return [
    limit("strap-bending", { ...moment, value: drawn + Math.min(pushed, shear.value) }),
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
  const held = wood && row && strap && !unread ? { foot, row, strap, wood, duration } : undefined;
  const capacity = anchor.capacity === "unread" ? undefined : anchor.capacity;
  const way = (own: number | undefined, reckoned: () => readonly FootLimit[]): WayHold | undefined =>
    least(own === undefined ? reckoned() : [limit("stated", given(own, capacity?.because))]);
  const found: Record<FootWay, WayHold | undefined> = {
    down: way(capacity?.down, () => (wood ? [endGrainOf(foot, wood, duration)] : [])),
    uplift: way(capacity?.uplift, () => (held ? uplift(held) : [])),
    "along-bolts": way(capacity?.sideways, () => (held ? alongBolts(held) : [])),
    "across-bolts": way(capacity?.sideways, () => (held ? acrossBolts(held) : [])),
  };
  const complete = FOOT_WAYS.every((each) => found[each]);
  const lacks: FootLack[] = complete
    ? []
    : [
        ...(unread ? (["unread"] as const) : []),
        ...(wood ? [] : (["wood"] as const)),
        ...(strap || anchor.strap === "unread" ? [] : (["strap"] as const)),
        ...(row || unread ? [] : (["fasteners"] as const)),
      ];
  const ways = Object.fromEntries(FOOT_WAYS.flatMap((each) => (found[each] ? [[each, found[each]]] : [])));
  return { ways, lacks };
}

/** A sentence's end: what makes it no more. */
export const LIMIT_WORDS: Readonly<Record<LimitKind, string>> = {
  stated: "what the file states",
  "end-grain": "the end grain on its plate",
  bolts: "the bolts in the wood",
  screws: "the screws in the wood",
  "row-tear-out": "the wood below the bolts, which tears out",
  "net-section": "the wood beside the bolt holes",
  split: "the wood, which splits at the bolts",
  "strap-yield": "the strap, which yields",
  "strap-rupture": "the strap at its hole",
  "strap-bending": "the strap, which bends",
  "strap-shear": "the strap, which shears",
};

/** The highest place that a fastener takes, from the post's end, in. */
export const topOf = (row: FootRow): number => Math.max(...heightsOf(row));
