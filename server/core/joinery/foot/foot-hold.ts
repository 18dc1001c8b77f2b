/**
 * What a post's foot holds on its anchor, each way alone: end grain on the plate, bolts or screws through the steel, the
 * wood round them, and the steel itself. Concrete that breaks out round cast-in or drilled steel is none of it.
 */
import { adjust, wetWithdrawal } from "../../fasteners/connection-factors.ts";
import {
  strapColumn,
  strapEdgeMoment,
  strapFlatMoment,
  strapRupture,
  strapShear,
  strapYield,
} from "../../fasteners/strap-steel.ts";
import { cheekSplit } from "../../fasteners/tear-out.ts";
import { type Factor, given, type Sourced } from "../../sourced.ts";
import { adjustedFor, woodOf } from "../../statics/timber-wood.ts";
import type { TimberValues } from "../../wood/stated-values.ts";
import { fastenersOf, moistureOf, screwOf, woodPulled } from "./foot-fasteners.ts";
import { type FootLimit, type Held, limit } from "./foot-limits.ts";
import { type FootStrap, heightsOf, holeOf, isInKerf, type PostFoot, woodLeft } from "./post-foot.ts";

/** Sideways by how its bolts run: along them, or square to them in the plane of the straps. */
export type FootWay = "down" | "uplift" | "along-bolts" | "across-bolts";

export const FOOT_WAYS: readonly FootWay[] = ["down", "uplift", "along-bolts", "across-bolts"];

export interface WayHold {
  /** the least first */
  readonly limits: readonly [FootLimit, ...FootLimit[]];
  /** false where what carries the post's end is not judged, so that the least limit is no more than a bound */
  readonly whole: boolean;
}

/** What the file does not say, without which a way has no capacity. */
export type FootLack = "wood" | "strap" | "fasteners" | "kerf-bolts" | "dowel" | "unread";

export interface FootHold {
  readonly ways: Readonly<Partial<Record<FootWay, WayHold>>>;
  readonly lacks: readonly FootLack[];
}

const least = (limits: readonly FootLimit[], whole = true): WayHold | undefined => {
  const [first, ...rest] = [...limits].sort((a, b) => a.value.value - b.value.value);
  return first && { limits: [first, ...rest], whole };
};

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
  const found: Record<FootWay, WayHold | undefined> = {
    down: way(capacity?.down, () => wood && down(foot, wood, duration, held)),
    uplift: way(capacity?.uplift, () => held && least(uplift(held))),
    "along-bolts": way(capacity?.sideways, () => held && least(alongBolts(held))),
    "across-bolts": way(capacity?.sideways, () => held && least(acrossBolts(held))),
  };
  const complete = FOOT_WAYS.every((each) => found[each]);
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
  const ways = Object.fromEntries(FOOT_WAYS.flatMap((each) => (found[each] ? [[each, found[each]]] : [])));
  return { ways, lacks };
}
