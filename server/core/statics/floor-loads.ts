/**
 * Floors from edge to edge: which timbers carry how much of their boards. Boards lie across a row of joists. Timbers beside
 * the joists, and those that the joists end in, carry their own share where they are level with the joists' tops. Where the
 * boards of two floors meet on a timber, each reaches its middle (floor-shares.ts).
 */
import type { Floor } from "../frame/frame.ts";
import { atEnd, type DeadEnd, floorDead } from "../loads/dead.ts";
import { common, halfExtent, type Interval } from "../model/box.ts";
import type { Model, Timber } from "../model/model.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import { inches } from "../quantity/length.ts";
import type { BasicLoad } from "./basic-loads.ts";
import { type LaidPatch, type Region, shareOut } from "./floor-shares.ts";
import { halves, type LineLoad } from "./line-loads.ts";
import { type Holders, type Lane, laneOf, type Portion, partialLoads } from "./partial-loads.ts";

/** What of a floor cannot be loaded as it is meant, or ends where boards may not. */
export type FloorGap =
  | { readonly what: "no-row"; readonly floor: Floor; readonly kinds: readonly Timber["kind"][] }
  | { readonly what: "alone"; readonly floor: Floor; readonly timber: Timber }
  /** two timbers of the row stand too far apart for boards: taken as an opening */
  | {
      readonly what: "opening";
      readonly floor: Floor;
      readonly between: readonly [Timber, Timber];
      readonly apart: number;
    }
  /** a timber beside the last joist is not level with it */
  | {
      readonly what: "not-level";
      readonly floor: Floor;
      readonly last: Timber;
      readonly beside: Timber;
      readonly step: number;
    }
  /** another floor lies over the same place: both count there */
  | { readonly what: "twice"; readonly floor: Floor; readonly other: Floor; readonly area: number };

/** A part of a floor on one timber. */
type Patch = Omit<LaidPatch, "region">;

export interface FloorPlan {
  readonly floor: Floor;
  readonly row: readonly Timber[];
  /** level, along the joists and across them */
  readonly along: Vec3;
  readonly across: Vec3;
  readonly patches: readonly Patch[];
  readonly gaps: readonly FloorGap[];
}

const ROW: ReadonlySet<Timber["kind"]> = new Set(["joist", "beam", "girt", "tie", "sill"]);
const BESIDE: ReadonlySet<Timber["kind"]> = new Set([...ROW, "plate"]);

/** Tops within this are level: a board lies on both, inches (common practice) */
const LEVEL = 1 / 4;
/** A timber whose top differs by no more than this may have been meant to carry the edge, inches. */
const NEAR_LEVEL = 8;
/** Boards span no further than this share of the usual spacing; a wider gap is an opening (common practice) */
const WIDEST = 1.5;
/** From a joist that stands alone boards reach no further than this, inches (common practice) */
const FURTHEST = 72;
/** A timber beside the joists stops at the post, they may not: it counts so much past its ends, inches. */
const PAST_END = 12;
const UP: Vec3 = [0, 0, 1];

const isLevel = (t: Timber): boolean => Math.abs(t.axis[2]) < 0.02;
const topOf = (t: Timber): number => t.origin[2] + halfExtent(t, UP);

interface Plank {
  readonly timber: Timber;
  readonly u: Interval;
  readonly v: number;
  readonly half: number;
  readonly ofRow: boolean;
}

class Planner {
  readonly along: Vec3;
  readonly across: Vec3;
  readonly patches: LaidPatch[] = [];
  readonly regions: Region[] = [];
  readonly gaps: FloorGap[] = [];
  readonly #told = new Set<string>();
  readonly #row: readonly Plank[];
  readonly #beside: readonly Plank[];
  readonly top: number;
  /** strips over the timbers that joists end in: by timber, on which side of the joists, from where, how wide */
  readonly #ends: { host: Timber; side: -1 | 1; edge: number; region: Region }[] = [];

  constructor(
    readonly model: Model,
    readonly floor: Floor,
    readonly row: readonly Timber[],
  ) {
    const [x = 1, y = 0] = row[0]?.axis ?? [];
    this.along = [x, y, 0];
    // onward from bent 1 or wall A: spans across the joists are counted that way
    this.across = x < y ? [y, -x, 0] : [-y, x, 0];
    this.top = row[0] ? topOf(row[0]) : 0;
    const names = new Set(row.map((t) => t.id));
    this.#row = row.map((t) => this.#plank(t, true));
    this.#beside = model.timbers
      .filter((t) => !names.has(t.id) && BESIDE.has(t.kind) && isLevel(t))
      .filter((t) => Math.abs(dot(t.axis, this.along)) > 0.98)
      .filter((t) => Math.abs(topOf(t) - this.top) <= NEAR_LEVEL)
      .map((t) => this.#plank(t, false));
  }

  #plank(timber: Timber, ofRow: boolean): Plank {
    const a = dot(timber.origin, this.along);
    const b = a + timber.span * dot(timber.axis, this.along);
    const more = ofRow ? 0 : PAST_END;
    return {
      timber,
      u: [Math.min(a, b) - more, Math.max(a, b) + more],
      v: dot(timber.origin, this.across),
      half: halfExtent(timber, this.across),
      ofRow,
    };
  }

  lay(): this {
    const stops = [...new Set(this.#row.flatMap((p) => p.u))].sort((a, b) => a - b);
    stops.slice(1).forEach((b, i) => {
      const a = stops[i] ?? b;
      if (b - a > 1e-6) this.#slab([a, b]);
    });
    this.#overEnds();
    return this;
  }

  #tell(key: string, gap: FloorGap): void {
    if (this.#told.has(key)) return;
    this.#told.add(key);
    this.gaps.push(gap);
  }

  /** A stretch along the joists in which the same ones lie side by side. */
  #slab(u: Interval): void {
    const here = (p: Plank): boolean => common(p.u, u) > (u[1] - u[0]) / 2;
    const own = this.#row.filter(here).sort((a, b) => a.v - b.v);
    if (own.length === 0) return;
    const spacings = own
      .slice(1)
      .map((p, i) => p.v - (own[i]?.v ?? p.v))
      .sort((a, b) => a - b);
    const usual = spacings[Math.floor(spacings.length / 2)];
    const reach = usual === undefined ? FURTHEST : WIDEST * usual;
    const near = this.#beside.filter(here);
    const flush = near.filter((p) => Math.abs(topOf(p.timber) - this.top) <= LEVEL);
    const all = [...own, ...flush].sort((a, b) => a.v - b.v);
    // of the timbers beside only those next to a joist carry its boards
    const kept = all.filter(
      (p, i) => p.ofRow || [all[i - 1], all[i + 1]].some((o) => o?.ofRow && Math.abs(o.v - p.v) <= reach),
    );
    let group: Plank[] = [];
    for (const [i, p] of kept.entries()) {
      const before = kept[i - 1];
      if (before && p.v - before.v > reach) {
        if (before.ofRow && p.ofRow)
          this.#tell(`opening ${before.timber.id}`, {
            what: "opening",
            floor: this.floor,
            between: [before.timber, p.timber],
            apart: p.v - before.v,
          });
        this.#lay(group, u, near, reach);
        group = [];
      }
      group.push(p);
    }
    this.#lay(group, u, near, reach);
  }

  /** Boards over timbers side by side, from the outer edge of the first to that of the last. */
  #lay(group: readonly Plank[], u: Interval, near: readonly Plank[], reach: number): void {
    const [first, last] = [group[0], group.at(-1)];
    if (!first || !last) return;
    const v: Interval = [first.v - first.half, last.v + last.half];
    if (group.length === 1)
      this.#tell(`alone ${first.timber.id}`, { what: "alone", floor: this.floor, timber: first.timber });
    for (const side of [-1, 1] as const) {
      const edge = side < 0 ? first : last;
      if (!edge.ofRow) continue;
      const away = (p: Plank): number => side * (p.v - edge.v);
      const beside = near.filter((p) => away(p) > 0 && away(p) <= reach).sort((a, b) => away(a) - away(b))[0];
      if (beside)
        this.#tell(`step ${beside.timber.id}`, {
          what: "not-level",
          floor: this.floor,
          last: edge.timber,
          beside: beside.timber,
          step: topOf(beside.timber) - this.top,
        });
    }
    const region: Region = { u, v };
    this.regions.push(region);
    halves(
      group.map((p) => p.v),
      ...v,
    ).forEach((own, i) => {
      const timber = group[i]?.timber;
      if (timber) this.#patch(timber, this.along, u, own, region);
    });
    for (const p of group) if (p.ofRow) this.#end(p, u, region);
  }

  /** A load from place to place in the direction of the timber's grain. */
  #patch(timber: Timber, dir: Vec3, [a, b]: Interval, reach: Interval, region: Region): void {
    const start = dot(timber.origin, dir);
    const per = dot(timber.axis, dir);
    const [from = 0, to = 0] = [(a - start) / per, (b - start) / per].sort((p, q) => p - q);
    this.patches.push({ timber, from, to, reach, region });
  }

  /** Boards run on over what the joists end in, where that is level with them. */
  #end(plank: Plank, u: Interval, region: Region): void {
    for (const { a, b, aEnd, bEnd } of this.model.meetings) {
      const [host, end] = a === plank.timber ? [b, aEnd] : b === plank.timber ? [a, bEnd] : [];
      if (!host || end === undefined || end === "side" || !BESIDE.has(host.kind) || !isLevel(host)) continue;
      if (Math.abs(dot(host.axis, this.across)) < 0.98 || Math.abs(topOf(host) - this.top) > LEVEL) continue;
      const side = (end === "head") === dot(plank.timber.axis, this.along) > 0 ? 1 : -1;
      const edge = plank.u[side < 0 ? 0 : 1];
      if (Math.abs(edge - u[side < 0 ? 0 : 1]) > 1) continue;
      const known = this.#ends.some(
        (e) => e.host === host && e.side === side && common(e.region.v, region.v) > 0,
      );
      if (!known) this.#ends.push({ host, side, edge, region });
    }
  }

  /** Up to the far side of what the joists end in; what another floor or bay takes of it is shared out afterwards. */
  #overEnds(): void {
    for (const { host, side, edge, region } of this.#ends) {
      const far = dot(host.origin, this.along) + side * halfExtent(host, this.along);
      if (side * (far - edge) <= 0) continue;
      const reach: Interval = side > 0 ? [edge, far] : [far, edge];
      region.u = [Math.min(region.u[0], far), Math.max(region.u[1], far)];
      this.#patch(host, this.across, region.v, reach, region);
    }
  }
}

/** The rows of a floor laid out, and all of its timbers; undefined while its row is not known. */
function layOf(
  model: Model,
  floor: Floor,
):
  | {
      readonly floor: Floor;
      readonly row: readonly Timber[];
      readonly laid: readonly Planner[];
      readonly kinds: Timber["kind"][];
    }
  | undefined {
  const sticks = floor.on ? (model.sticks.get(floor.on.text) ?? []) : [];
  if (sticks.length === 0) return undefined;
  const row = sticks.filter((t) => ROW.has(t.kind) && isLevel(t));
  // sticks of one entry at other heights, or across the first, are rows of their own
  const laid = rowsOf(row).map((timbers) => new Planner(model, floor, timbers).lay());
  return { floor, row, laid, kinds: [...new Set(sticks.map((t) => t.kind))] };
}

function rowsOf(timbers: readonly Timber[]): Timber[][] {
  const rows: Timber[][] = [];
  for (const t of timbers) {
    const fits = ([first]: readonly Timber[]): boolean =>
      first !== undefined &&
      Math.abs(dot(t.axis, first.axis)) > 0.98 &&
      Math.abs(topOf(t) - topOf(first)) <= LEVEL;
    const row = rows.find(fits);
    if (row) row.push(t);
    else rows.push([t]);
  }
  return rows;
}

/** @returns every floor of the frame laid out over its timbers, each board on one of them only */
export function floorPlans(model: Model): FloorPlan[] {
  const floors = model.frame.floors.flatMap((floor) => layOf(model, floor) ?? []);
  const { patches, twice } = shareOut(floors.flatMap(({ laid }) => laid));
  return floors.map(({ floor, row, laid, kinds }) => {
    const [first] = laid;
    if (!first) {
      const none = { floor, row, along: UP, across: UP, patches: [] };
      return { ...none, gaps: [{ what: "no-row", floor, kinds }] };
    }
    return {
      floor,
      row,
      along: first.along,
      across: first.across,
      patches: laid.flatMap((one) => patches.get(one) ?? []),
      gaps: [
        ...laid.flatMap(({ gaps }) => gaps),
        ...twice
          .filter(({ later }) => laid.includes(later))
          .map(({ first: { floor: other }, area }): FloorGap => ({ what: "twice", floor, other, area })),
      ],
    };
  });
}

function lineLoad({ timber, from, to, reach }: Patch, psf: number): LineLoad {
  const force: Vec3 = [0, 0, (-psf * (reach[1] - reach[0])) / 144];
  return { timber, from, to, startForce: force, endForce: force };
}

/** Weight of a floor, psf. */
export function floorWeight({ deck, dead }: Floor): ReturnType<typeof floorDead> {
  return floorDead({
    deck: deck?.kind && {
      kind: deck.kind,
      ...(deck.thickness === undefined ? {} : { thickness: inches(deck.thickness) }),
    },
    ...(dead === undefined ? {} : { dead }),
  });
}

/** Weight of all floors. */
export function floorWeights(plans: readonly FloorPlan[], end: DeadEnd): LineLoad[] {
  return plans.flatMap(({ floor, patches }) => {
    const psf = atEnd(floorWeight(floor), end);
    return patches.map((patch) => lineLoad(patch, psf));
  });
}

/** Lanes of a floor in which its timbers run on over their supports: its joists, and what these lie on. */
function lanesOf(plan: FloorPlan, holders: Holders): Lane[] {
  const { row, along, across } = plan;
  const ids = new Set(row.map((t) => t.id));
  const under = row.flatMap((t) => (holders.contacts.get(t.id) ?? []).map(({ other }) => other));
  const girders = new Set(
    under.filter((t) => !ids.has(t.id) && isLevel(t) && Math.abs(dot(t.axis, across)) > 0.98),
  );
  return [
    laneOf({ along: "joists" }, along, row, holders),
    laneOf({ along: "across-joists" }, across, [...girders], holders),
  ].filter((lane) => lane !== undefined);
}

/** Live load of every floor: on all of it, and where timbers run on over supports on some spans only. */
export function floorLives(plans: readonly FloorPlan[], holders: Holders): BasicLoad[] {
  return plans.flatMap((plan) => {
    const { floor, patches } = plan;
    const { live } = floor;
    if (live === undefined || live <= 0 || patches.length === 0) return [];
    const portions = patches.map(
      (patch): Portion => ({ load: lineLoad(patch, live), reach: () => patch.reach }),
    );
    const whole = { id: `L/${floor.name}`, kind: "L", vertical: true } as const;
    return [
      { ...whole, loads: portions.map((p) => p.load) },
      ...lanesOf(plan, holders).flatMap((lane) => partialLoads(whole, portions, lane, 0)),
    ];
  });
}
