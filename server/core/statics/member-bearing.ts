/**
 * Wood pressed across its grain: under the heads of posts, under king-posts and whatever else stands on lying timbers,
 * under rafters' seats and timbers that lie across others, and on piers (NDS 3.10).
 *
 * The area is what really touches: an upright's shoulder without its tenon, a seat, the contact of two timbers, the strip
 * of a round pier under the timber. The lying timber takes F_c⊥′ with C_b, without C_D; while it is green C_M is in it.
 * What presses takes it at its own angle: end grain F_c*, a rafter's seat by Hankinson's formula.
 */

import { groupBy } from "../collect.ts";
import type { Joint } from "../joinery/joint.ts";
import { type Adjusted, withFactor } from "../members/adjust.ts";
import { bearingAreaFactor } from "../members/bearing.ts";
import { hankinson } from "../members/compression.ts";
import type { Model, Timber } from "../model/model.ts";
import { dot } from "../model/vec.ts";
import type { Note } from "../note.ts";
import type { ValueStatus } from "../sourced.ts";
import { PLACES, rowOf } from "./force-table.ts";
import { type Ground, isDiagonal, isUpright } from "./member-supports.ts";
import type { DurationValues } from "./member-values.ts";
import type { SolvedCase } from "./solve-frame.ts";
import type { FrameStructure } from "./structure.ts";

/** Where the pressing force of a bearing is read. */
type Source =
  | { readonly kind: "end"; readonly index: number }
  | { readonly kind: "link"; readonly link: number; readonly sign: 1 | -1 }
  | { readonly kind: "ground"; readonly node: number };

export interface Bearing {
  /** the timber whose wood is looked at */
  readonly timber: Timber;
  readonly at: number;
  readonly place: string;
  /** in² */
  readonly area: number;
  /** along the grain of the timber, in; and from its edge to the timber's end */
  readonly length: number;
  readonly fromEnd: number;
  /** between the force and the grain, degrees */
  readonly angle: number;
  readonly source: Source;
  /** how the area came about, and how well that is known */
  readonly made: { readonly note: Note; readonly status: ValueStatus };
}

const derived = (note: Note): Bearing["made"] => ({ note, status: "derived" });

const overlap = (half: number, [low, high]: readonly [number, number]): number =>
  Math.max(0, Math.min(half, high) - Math.max(-half, low));

/** From the edge of a bearing to the nearer end of the timber. */
const toEnd = (timber: Timber, at: number, length: number): number =>
  Math.max(0, Math.min(at, timber.span - at) - length / 2);

/** An upright's end on a lying timber: on that one across the grain, on its own end grain along it. */
function endBearings(frame: FrameStructure, joint: Joint): Bearing[] {
  const { of, into, end, face, sizes } = joint;
  if (end === "side" || !isUpright(of) || isUpright(into) || isDiagonal(into)) return [];
  const elements = frame.elementsOf.get(of.id) ?? [];
  const element = end === "head" ? elements.at(-1) : elements[0];
  if (element === undefined) return [];
  const half = (d: readonly [number, number, number]): number =>
    (Math.abs(dot(of.widthDir, d)) * of.width + Math.abs(dot(of.depthDir, d)) * of.depth) / 2;
  const across = overlap(half(face.across), face.edges);
  const along = overlap(half(face.grain), face.ends);
  const tenon = sizes.tenon ? sizes.tenon.thickness.value * sizes.tenon.width.value : 0;
  const area = across * along - tenon;
  const at = Math.min(Math.max(-face.ends[0], 0), into.span);
  const source: Source = {
    kind: "end",
    index: rowOf(element, end === "head" ? PLACES.length - 1 : 0),
  };
  const shared = {
    place: joint.id,
    area,
    source,
    made: derived(tenon > 0 ? "shoulder without the tenon" : "the whole end"),
  };
  return [
    { ...shared, timber: into, at, length: along, fromEnd: toEnd(into, at, along), angle: 90 },
    { ...shared, timber: of, at: end === "head" ? of.span : 0, length: 0, fromEnd: 0, angle: 0 },
  ];
}

/** Rafters' seats, and lying timbers across others: the force of the upright spring at their contact. */
function contactBearings(model: Model, frame: FrameStructure): Bearing[] {
  const joints = new Map(model.joints.map((j) => [j.id, j]));
  return frame.ties.flatMap(({ tie, links }): Bearing[] => {
    const { a, b, area: contact } = tie.meeting;
    const joint = tie.joint && joints.get(tie.joint.id);
    const link = links.find((l) => frame.structure.links?.[l]?.id.endsWith(".z"));
    if (link === undefined || isUpright(a) || isUpright(b) || isDiagonal(a) || isDiagonal(b)) return [];
    if (joint && joint.end !== "side") return [];
    const axialAt = (t: Timber): number =>
      dot([tie.at[0] - t.origin[0], tie.at[1] - t.origin[1], tie.at[2] - t.origin[2]], t.axis);
    const heightOver = (t: Timber): number => tie.at[2] - (t.origin[2] + t.axis[2] * axialAt(t));
    const upper = heightOver(a) < heightOver(b) ? a : b;
    const lower = upper === a ? b : a;
    // the contact must lie on top of the one and under the other, or they only touch side by side
    if (heightOver(lower) < lower.depth / 4 || heightOver(upper) > -upper.depth / 4) return [];
    const seat = joint?.sizes.seat?.level.value;
    const area = seat === undefined ? contact : seat * upper.width;
    const along = upper.width;
    const onUpper = area / upper.width;
    // tension pulls the first toward the second: what presses is the opposite, seen from the one above
    const source: Source = { kind: "link", link, sign: upper === a ? 1 : -1 };
    const shared = {
      place: joint?.id ?? `${upper.id} on ${lower.id}`,
      area,
      source,
      made: derived(seat === undefined ? "contact of the two" : "level seat"),
    };
    const slope = (Math.asin(Math.min(1, Math.abs(upper.axis[2]))) * 180) / Math.PI;
    const [atLower, atUpper] = [axialAt(lower), axialAt(upper)];
    return [
      {
        ...shared,
        timber: lower,
        at: atLower,
        length: along,
        fromEnd: toEnd(lower, atLower, along),
        angle: 90,
      },
      {
        ...shared,
        timber: upper,
        at: atUpper,
        length: onUpper,
        fromEnd: toEnd(upper, atUpper, onUpper),
        angle: 90 - slope,
      },
    ];
  });
}

/** Area of a round pier's top under a strip of the timber's width, in². */
function stripOfCircle(width: number, diameter: number): number {
  const r = diameter / 2;
  const h = Math.min(width / 2, r);
  return 2 * (h * Math.sqrt(r * r - h * h) + r * r * Math.asin(h / r));
}

/** Lying timbers on piers. Held off the concrete, they sit on a saddle as long as they are wide. */
function groundBearings(grounds: readonly Ground[]): Bearing[] {
  return grounds.flatMap(({ timber, at, node, pier }): Bearing[] => {
    if (!pier || isUpright(timber)) return [];
    const saddle = (pier.entry.anchor?.standOff ?? 0) > 0;
    const square = pier.entry.kind === "pad";
    const length = saddle ? timber.width : pier.diameter;
    const area = saddle || square ? timber.width * length : stripOfCircle(timber.width, length);
    return [
      {
        timber,
        at,
        place: pier.id,
        area,
        length,
        fromEnd: toEnd(timber, at, length),
        angle: 90,
        source: { kind: "ground", node },
        made: saddle
          ? { note: "saddle as long as the timber is wide", status: "common-practice" }
          : derived("top of the pier"),
      },
    ];
  });
}

/** @returns every place where wood is pressed across its grain, and the wood that presses */
export function bearingsOf(model: Model, frame: FrameStructure, grounds: readonly Ground[]): Bearing[] {
  return [
    ...model.joints.flatMap((j) => endBearings(frame, j)),
    ...contactBearings(model, frame),
    ...groundBearings(grounds),
  ].filter((b) => b.area > 1e-6);
}

/** @returns lb pressing, 0 when it lifts */
export function pressing(
  source: Source,
  table: Float64Array,
  links: SolvedCase["combined"]["links"],
  reaction: (node: number) => number,
): number {
  const force =
    source.kind === "end"
      ? -(table[source.index] ?? 0)
      : source.kind === "link"
        ? source.sign * (links[source.link] ?? 0)
        : reaction(source.node);
  return Math.max(0, force);
}

/** @returns psi that the bearing may take under a load duration, with every factor */
export function bearingLimit(bearing: Bearing, values: DurationValues): Adjusted {
  const { angle, length, fromEnd } = bearing;
  if (angle > 89.5) return withFactor(values.FcPerp, bearingAreaFactor(length, fromEnd));
  if (angle < 0.5) return values.FcStar;
  const value = hankinson(values.FcStar.value, values.FcPerp.value, angle);
  return {
    ...values.FcPerp,
    factors: [
      ...values.FcPerp.factors,
      {
        symbol: "F_θ/F_c⊥",
        value: value / values.FcPerp.value,
        status: "derived",
        source: "NDS 3.10-1",
        note: { text: "{angle} to the grain", parts: { angle: { value: angle, unit: "degree" } } },
      },
    ],
    value,
  };
}

/** Grouped by the timber whose wood is looked at. */
export function byTimber(bearings: readonly Bearing[]): Map<string, Bearing[]> {
  return groupBy(bearings, (b) => b.timber.id);
}
