/**
 * The largest forces inside a timber over all combinations, each with where and under which it acts. They are read at the
 * places of its elements; where one may peak between two of these, the loads there are integrated.
 */
import { FORCES, isSolved, PLACES, rowOf } from "./force-table.ts";
import { forcesAlong, Senses } from "./forces-along.ts";
import type { SolvedCase } from "./solve-frame.ts";
import type { SeatModel } from "./structure.ts";

/**
 * lb, and lb·in for the moments. Shear and moment `depth` act in the plane of the depth (they bend the timber on edge),
 * `width` in that of the width.
 */
export type ForceKind =
  | "tension"
  | "compression"
  | "shear-depth"
  | "shear-width"
  | "torque"
  | "moment-depth"
  | "moment-width";

export interface Extreme {
  /** never negative; 0 = none under any combination */
  readonly value: number;
  /** empty for none */
  readonly caseId: string;
  readonly seats: SeatModel;
  /** axial position from the foot, in */
  readonly at: number;
}

export type MemberForces = Readonly<Record<ForceKind, Extreme>>;

/** What each number of a section's row can be the most of. */
const KINDS: readonly (readonly [above: ForceKind, below: ForceKind])[] = [
  ["tension", "compression"],
  ["shear-depth", "shear-depth"],
  ["shear-width", "shear-width"],
  ["torque", "torque"],
  ["moment-width", "moment-width"],
  ["moment-depth", "moment-depth"],
];

type Tally = Record<ForceKind, { value: number; caseId: string; seats: SeatModel; at: number }>;

const none = () => ({ value: 0, caseId: "", seats: "hold" as const, at: 0 });
const nothing = (): Tally => ({
  tension: none(),
  compression: none(),
  "shear-depth": none(),
  "shear-width": none(),
  torque: none(),
  "moment-depth": none(),
  "moment-width": none(),
});

/** An element that may have more between its places than at them, under one case. */
interface Peak {
  readonly solved: SolvedCase;
  readonly element: number;
  /** what there may be more of, by number of a section, and no more than how much */
  readonly may: readonly May[];
}

interface May {
  readonly k: number;
  readonly kind: ForceKind;
  readonly most: number;
}

const [N, VY, VZ, MY, MZ] = [0, 1, 2, 4, 5] as const;
const PULLS_AND_SHEARS = [N, VY, VZ] as const;
/** Each moment with the shear that it changes by. */
const BENDS = [
  { k: MZ, shear: VY, kind: "moment-depth" },
  { k: MY, shear: VZ, kind: "moment-width" },
] as const;
/**
 * A load lets force and shear stray from the straight line between an element's ends at most so many times as far as it does
 * at the places: the worst one ends just past the first quarter, with 3/4 of itself there and 1/2 at the middle.
 */
const STRAY = 1.5;
/** Of a force: changes below this share are rounding. */
const NOUGHT = 1e-9;

/**
 * How much there may be between the places. A moment peaks where its shear crosses nought (dM_z/dx = −V_y, dM_y/dx = V_z):
 * from place to place it gains at most the shear times the way to there, from either side, so V₁ V₂/(V₁ + V₂) times the way.
 * Length force and shear peak where the load on the element turns: while it acts in one sense they only rise, or only fall.
 * @param rows sections at the places; @param inner between which bounds they lie off the straight line between the element's ends
 * @param length of the element, in; @param turns whether the load along N, V_y or V_z acts in both senses
 */
function mayPeak(
  rows: Float64Array,
  inner: Float64Array,
  length: number,
  turns: (k: number) => boolean,
): May[] {
  const value = (place: number, k: number): number => rows[rowOf(0, place) + k] ?? 0;
  const stray = (k: number): number => STRAY * (Math.abs(inner[k] ?? 0) + (inner[k + FORCES.length] ?? 0));
  const may: May[] = [];
  for (const { k, shear, kind } of BENDS) {
    let most = 0;
    for (let place = 1; place < PLACES.length; place++) {
      const [v1, v2] = [value(place - 1, shear), value(place, shear)];
      if (!(v1 * v2 < 0)) continue;
      const step = ((PLACES[place] ?? 0) - (PLACES[place - 1] ?? 0)) * length;
      const ends = Math.max(Math.abs(value(place - 1, k)), Math.abs(value(place, k)));
      most = Math.max(most, ends + step * Math.abs((v1 * v2) / (v1 - v2)));
    }
    // where the load turns, shear may cross nought twice between two places, of one sense at both
    if (turns(shear)) {
      const shears = Math.max(Math.abs(value(0, shear)), Math.abs(value(PLACES.length - 1, shear)));
      let moments = 0;
      for (let place = 0; place < PLACES.length; place++)
        moments = Math.max(moments, Math.abs(value(place, k)));
      const way = length / (PLACES.length - 1) / 2;
      most = Math.max(most, moments + way * (shears + stray(shear)));
    }
    if (most > 0) may.push({ k, kind, most });
  }
  for (const k of PULLS_AND_SHEARS) {
    if (!turns(k)) continue;
    const [first, last] = [value(0, k), value(PLACES.length - 1, k)];
    const more = stray(k);
    const [above, below] = KINDS[k] ?? [];
    if (above) may.push({ k, kind: above, most: Math.max(first, last) + more });
    if (below) may.push({ k, kind: below, most: more - Math.min(first, last) });
  }
  return may;
}

/** Keeps a force where it is more than all before. @param k number within a section; @param at in from the foot */
function raise(tally: Tally, k: number, value: number, solved: SolvedCase, at: number, margin = 0): void {
  const own = kept(tally, k, value);
  if (!own || Math.abs(value) <= own.value * (1 + margin)) return;
  own.value = Math.abs(value);
  own.caseId = solved.frameCase.id;
  own.seats = solved.seats;
  own.at = at;
}

function kept(tally: Tally, k: number, value: number): Tally[ForceKind] | undefined {
  const kinds = KINDS[k];
  return kinds && tally[value > 0 ? kinds[0] : kinds[1]];
}

/**
 * @param wanted kinds whose peaks between the places are looked for too; it costs time
 * @returns undefined for a timber that is not in the model: it stands on nothing, or no combination has a solution
 */
export function memberForces(
  cases: readonly SolvedCase[],
  timber: string,
  wanted: (kind: ForceKind) => boolean = () => true,
): MemberForces | undefined {
  const tally = nothing();
  const sections = new Float64Array(rowOf(1, 0));
  const inner = new Float64Array(2 * FORCES.length);
  const peaks: Peak[] = [];
  const senses = new Senses(timber);
  let found = false;
  for (const solved of cases) {
    if (!isSolved(solved)) continue;
    const turns = senses.turns(solved);
    for (const element of solved.frame.elementsOf.get(timber) ?? []) {
      const piece = solved.frame.pieces[element];
      if (!piece) continue;
      found = true;
      solved.combined.writeSections(element, sections, 0);
      PLACES.forEach((share, place) => {
        const row = rowOf(0, place);
        for (let k = 0; k < FORCES.length; k++)
          raise(tally, k, sections[row + k] ?? 0, solved, piece.from + share * (piece.to - piece.from));
      });
      solved.combined.boundInner(element, inner);
      const may = mayPeak(sections, inner, piece.to - piece.from, turns).filter(({ kind }) => wanted(kind));
      if (may.length > 0) peaks.push({ solved, element, may });
    }
  }
  for (const peak of peaks) raisePeak(tally, peak);
  return found ? tally : undefined;
}

function raisePeak(tally: Tally, { solved, element, may }: Peak): void {
  const piece = solved.frame.pieces[element];
  const open = may.filter(({ kind, most }) => most > tally[kind].value * (1 + NOUGHT));
  const curves = open.length > 0 ? forcesAlong(solved, element) : undefined;
  if (!piece || !curves) return;
  for (const { k } of open) {
    const { least, greatest } = curves.extremes(FORCES[k] ?? "N");
    for (const { x, value } of [least, greatest]) raise(tally, k, value, solved, piece.from + x, NOUGHT);
  }
}
