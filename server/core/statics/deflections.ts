/**
 * How far lying timbers bend between what holds them up: twice the integral of M/EI from support to support, exact for
 * loads that vary linearly along each piece. Measured from the chord through the two supports; a tail from the same
 * chord, run on; in a span with a scarf, each length as scarfed-spans.ts has it. Shear strain is in the printed modulus (NDS 3.5 and appendix F), so it is not added.
 */

import { lagrange } from "../analysis/inner-sections.ts";
import { at } from "../analysis/numbers.ts";
import type { Vec6 } from "../analysis/structure.ts";
import { creepFactor, type DeflectionLimits } from "../members/deflection.ts";
import { type DeflectionRule, deflectionRule, limitsOf } from "../members/deflection-limits.ts";
import type { Model, Timber } from "../model/model.ts";
import { dot, sub, type Vec3 } from "../model/vec.ts";
import type { Factor } from "../sourced.ts";
import { PLACES, rowOf, tipOf } from "./force-table.ts";
import type { MemberPlan } from "./member-plan.ts";
import { type ScarfedLength, scarfedLengths } from "./scarfed-spans.ts";
import type { FrameStructure } from "./structure.ts";

/** Weight of the value at each place (inner index) in the once and twice integrated curve at each place. */
const [ONCE, TWICE] = [1, 2].map((times) =>
  Float64Array.from(
    PLACES.flatMap((s) =>
      PLACES.map((_, i) =>
        lagrange(i).reduce(
          (sum, c, n) => sum + (c * s ** (n + times)) / (times === 1 ? n + 1 : (n + 1) * (n + 2)),
          0,
        ),
      ),
    ),
  ),
) as [Float64Array, Float64Array];

/** Index of V_y and M_z within a row, and from place to place. */
const [VY, MZ] = [1, 5] as const;
const STEP = rowOf(0, 1) - rowOf(0, 0);
const COUNT = PLACES.length;

/**
 * EI times the bent line of a timber at every place of its elements, from a level start: only differences from a chord
 * mean anything.
 * @param lengths of its elements, in; @param out lb·in³ by element and place
 */
export function bentLine(
  elements: readonly number[],
  lengths: readonly number[],
  table: Float64Array,
  out: Float64Array,
): void {
  let start = 0;
  let slope = 0;
  for (let k = 0; k < elements.length; k++) {
    const row = rowOf(elements[k] as number, 0) + MZ;
    const length = lengths[k] as number;
    let turn = 0;
    for (let place = 0; place < COUNT; place++) {
      let once = 0;
      let twice = 0;
      for (let i = 0; i < COUNT; i++) {
        const M = at(table, row + i * STEP);
        once += at(ONCE, place * COUNT + i) * M;
        twice += at(TWICE, place * COUNT + i) * M;
      }
      out[k * COUNT + place] = start + length * (slope * (PLACES[place] as number) + twice * length);
      turn = once * length;
    }
    start = at(out, k * COUNT + COUNT - 1);
    slope += turn;
  }
}

/**
 * The same of the forces at each element’s first end alone, as if its own loads did nothing between its ends.
 * @param tips forces at the ends of all elements
 */
export function bentByEnds(
  elements: readonly number[],
  lengths: readonly number[],
  tips: Float64Array,
  out: Float64Array,
): void {
  let start = 0;
  let slope = 0;
  for (let k = 0; k < elements.length; k++) {
    const tip = tipOf(elements[k] as number, "i");
    const length = lengths[k] as number;
    const M = at(tips, tip + MZ);
    const fall = at(tips, tip + VY) * length;
    for (let place = 0; place < COUNT; place++) {
      const s = PLACES[place] as number;
      out[k * COUNT + place] = start + length * s * (slope + length * s * (M / 2 - (fall * s) / 6));
    }
    start = at(out, k * COUNT + COUNT - 1);
    slope += length * (M - fall / 2);
  }
}

/** A stretch whose bending is limited: the places it holds and the two places of its chord. */
export interface Stretch {
  /** indices into the bent line */
  readonly places: readonly number[];
  readonly chord: readonly [number, number];
  /** length of which the limit is a share: the span, or twice a tail, in */
  readonly length: number;
  readonly tail: boolean;
  /** the second place of the chord is a scarf, which sinks */
  readonly sinks?: ScarfedLength;
}

export interface DeflectionPlan {
  readonly plan: MemberPlan;
  /** of its elements, in */
  readonly lengths: readonly number[];
  /** axial position of every place, in */
  readonly x: readonly number[];
  readonly stretches: readonly Stretch[];
  readonly rule: DeflectionRule;
  /** its divisors */
  readonly limits: Required<DeflectionLimits>;
  readonly creep: Factor;
}

const isLying = (t: Timber): boolean => Math.abs(t.axis[2]) < 0.5 && t.kind !== "brace";

/** Timbers of a floor: its joists, what these hang in or lie on, and what carries that in turn. */
export function floorTimbers(model: Model): ReadonlySet<string> {
  const ids = new Set(
    model.frame.floors.flatMap((f) => (f.on ? (model.sticks.get(f.on.text) ?? []) : [])).map((t) => t.id),
  );
  if (ids.size === 0) return ids;
  const hangs = new Set(model.joints.map((j) => `${j.of.id} ${j.into.id}`));
  const rests = model.meetings.flatMap(({ a, b, point }) =>
    [[a, b] as const, [b, a] as const].filter(
      ([t, on]) =>
        isLying(on) && (hangs.has(`${t.id} ${on.id}`) || (isLying(t) && heightOver(t, point) < -t.depth / 4)),
    ),
  );
  for (let known = 0; known < ids.size; ) {
    known = ids.size;
    for (const [t, on] of rests) if (ids.has(t.id)) ids.add(on.id);
  }
  return ids;
}

/** How far a point lies over the middle of a timber there, in. */
function heightOver({ origin, axis }: Timber, point: Vec3): number {
  return point[2] - origin[2] - axis[2] * dot(sub(point, origin), axis);
}

function nearest(x: readonly number[], at: number): number {
  let best = 0;
  x.forEach((v, i) => {
    if (Math.abs(v - at) < Math.abs((x[best] ?? 0) - at)) best = i;
  });
  return best;
}

function stretchesOf(plan: MemberPlan, x: readonly number[], scarfed: readonly ScarfedLength[]): Stretch[] {
  const { timber, lengths } = plan;
  const supports = lengths.supports.map((s) => s.at);
  const holds = supports.map((at) => nearest(x, at));
  const inside = (from: number, to: number): number[] =>
    x.flatMap((v, i) => (v > from + 1e-6 && v < to - 1e-6 ? [i] : []));
  const stretches: Stretch[] = [];
  for (let i = 1; i < supports.length; i++) {
    const [a = 0, b = 0] = [supports[i - 1], supports[i]];
    const chord = [holds[i - 1] ?? 0, holds[i] ?? 0] as const;
    if (chord[0] !== chord[1]) stretches.push({ places: inside(a, b), chord, length: b - a, tail: false });
  }
  const last = supports.length - 1;
  for (const sinks of scarfed) {
    const chord = [nearest(x, sinks.support), nearest(x, sinks.scarf)] as const;
    const [a, b] = [Math.min(sinks.support, sinks.scarf), Math.max(sinks.support, sinks.scarf)];
    if (chord[0] !== chord[1])
      stretches.push({ places: [...inside(a, b), chord[1]], chord, length: sinks.span, tail: false, sinks });
  }
  const tail = (at: number, end: number, chord: readonly [number, number]): void => {
    const length = Math.abs(end - at);
    if (length <= timber.depth || chord[0] === chord[1]) return;
    // what goes on over a scarf is no tail
    if (
      scarfed.some(
        ({ scarf, support }) => Math.abs(support - at) < timber.depth && (scarf - at) * (end - at) > 0,
      )
    )
      return;
    stretches.push({ places: [nearest(x, end)], chord, length: 2 * length, tail: true });
  };
  if (last > 0) {
    tail(supports[0] ?? 0, 0, [holds[0] ?? 0, holds[1] ?? 0]);
    tail(supports[last] ?? 0, timber.span, [holds[last - 1] ?? 0, holds[last] ?? 0]);
  }
  return stretches;
}

/** @returns what is to be looked at of the timbers that lie on two supports or more */
export function deflectionPlans(
  model: Model,
  frame: FrameStructure,
  plans: readonly MemberPlan[],
): DeflectionPlan[] {
  const floors = floorTimbers(model);
  const { site, roof } = model.frame;
  const scarfed = scarfedLengths(model, frame, plans);
  return plans.flatMap((plan): DeflectionPlan[] => {
    const over = scarfed.get(plan.timber.id) ?? [];
    if (plan.lengths.supports.length < 2 && over.length === 0) return [];
    const x = plan.elements.flatMap((element) => {
      const piece = frame.pieces[element];
      return piece ? PLACES.map((s) => piece.from + s * (piece.to - piece.from)) : [];
    });
    const stretches = stretchesOf(plan, x, over);
    const rule = deflectionRule(site.snow?.thermal, roof?.ceiling?.kind, floors.has(plan.timber.id));
    return stretches.length > 0
      ? [
          {
            plan,
            lengths: plan.elements.map((element) => {
              const piece = frame.pieces[element];
              return piece ? piece.to - piece.from : 0;
            }),
            x,
            stretches,
            rule,
            limits: limitsOf(rule),
            creep: creepFactor(plan.timber.class?.seasoning ?? "green"),
          },
        ]
      : [];
  });
}

/**
 * How far the scarf of a stretch lies off the line between the posts of its span, along a direction, in.
 * @param shift of a node, in, global axes
 */
export function sunk({ sinks }: Stretch, along: Vec3, shift: (node: number) => Vec6): number {
  if (!sinks) return 0;
  const [scarf, own, other] = sinks.nodes.map((node) => {
    const [x, y, z] = shift(node);
    return dot([x, y, z], along);
  });
  return (scarf ?? 0) - (own ?? 0) * (1 - sinks.part) - (other ?? 0) * sinks.part;
}

/** The part of the way along a chord at which a place lies. */
export function alongChord(x: readonly number[], place: number, [a, b]: readonly [number, number]): number {
  const xa = x[a] as number;
  return ((x[place] as number) - xa) / ((x[b] as number) - xa);
}
