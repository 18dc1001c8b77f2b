/** The two ends of a stick as they are marked: the shoulder or the cut, the tenon past it, and what is left long to scribe. */
import type { Joint, JointEnd, Prism } from "../../joinery/joint.ts";
import { leftLong } from "../../joinery/scribe.ts";
import { isSeatKind } from "../../joinery/seat.ts";
import type { EndPlane, Timber } from "../../model/model.ts";
import { along, dot, sub, type Vec3 } from "../../model/vec.ts";
import { type Corner, cornersOf, type Marked, type Range } from "./cuts.ts";
import { acrossFace, breadthOf, type FaceNumber } from "./faces.ts";
import { type MeasuredSize, type Surplus, surplusAt } from "./measured.ts";

export interface TenonMarks {
  /** from `cheeksFrom` to the near and to the far cheek */
  readonly cheeks: Range;
  readonly cheeksFrom: 1 | 2;
  /** the face on which the outline is marked: the one that the cheeks lie parallel to, a reference face */
  readonly face: 1 | 2;
  readonly outline: readonly Corner[];
  /** the same where it is square to the arris */
  readonly rectangle: { readonly along: Range; readonly across: Range } | undefined;
  /** the outline takes the whole breadth of its face, square */
  readonly full: boolean;
  /** what the rough stick stands outside the outline's farther edge, to be pared off; 0 where that edge is its own */
  readonly over: number;
}

export interface EndMarks {
  readonly end: "foot" | "head";
  /** joints of this end, and the timbers they go into */
  readonly joints: readonly { readonly id: string; readonly into: string }[];
  /** it stands against or in another timber and goes on in a tenon */
  readonly shoulder: boolean;
  /**
   * Where shoulder or cut crosses the four long edges: the arris (faces 1 and 2), then between 2 and 3, 3 and 4, 4 and 1;
   * inches from the foot's outermost point
   */
  readonly crosses: readonly [number, number, number, number];
  readonly tenons: readonly TenonMarks[];
  /** inches to leave beyond the marks for scribing; 0 when it is cut to length */
  readonly leave: number;
  /** a measured stick that is over, and goes into a housing: pared to the perfect size over so many inches */
  readonly pare: number | undefined;
}

/** Where the end's plane crosses the long edge between two faces. */
function crossing(timber: Timber, plane: EndPlane, edge: Vec3): Vec3 {
  const slant = dot(timber.axis, plane.normal);
  return Math.abs(slant) < 1e-9
    ? edge
    : along(edge, timber.axis, dot(sub(plane.point, edge), plane.normal) / slant);
}

/** The four long edges by the faces that meet there, as shares of the section from its center. */
const EDGES = [
  [1, 1],
  [-1, 1],
  [-1, -1],
  [1, -1],
] as const;

function crossings(timber: Timber, plane: EndPlane, { frame, spot }: Marked): EndMarks["crosses"] {
  const { normals, sizes } = frame;
  return EDGES.map(([one, two]) => {
    const side = along(timber.origin, normals[0], (one * sizes[0]) / 2);
    return spot(crossing(timber, plane, along(side, normals[1], (two * sizes[1]) / 2))).along;
  }) as unknown as EndMarks["crosses"];
}

/** Closer than this, two marks are one. */
const SAME = 1e-4;

function outlineOn(prism: Prism, face: FaceNumber, { spot }: Marked): Corner[] {
  const corners = prism.outline.map(([x, y]) => {
    const mark = spot(along(along(along(prism.base, prism.u, x), prism.v, y), prism.w, prism.from));
    return { along: mark.along, across: acrossFace(face, mark) };
  });
  return corners.filter(
    (c, i) =>
      !corners
        .slice(0, i)
        .some((o) => Math.abs(o.along - c.along) < SAME && Math.abs(o.across - c.across) < SAME),
  );
}

function rectangleOf(outline: readonly Corner[]): TenonMarks["rectangle"] {
  const range = (way: keyof Corner): Range => {
    const at = outline.map((corner) => corner[way]);
    return [Math.min(...at), Math.max(...at)];
  };
  const [along, across] = [range("along"), range("across")];
  const onEdge = (value: number, edges: Range): boolean => edges.some((e) => Math.abs(e - value) < SAME);
  const square =
    outline.length === 4 && outline.every((c) => onEdge(c.along, along) && onEdge(c.across, across));
  return square ? { along, across } : undefined;
}

function tenonMarks(prism: Prism, surplus: Surplus, where: Marked): TenonMarks {
  const { frame, spot } = where;
  const parallel = (i: 0 | 1): number => Math.abs(dot(prism.w, frame.normals[i]));
  const cheeksFrom = parallel(0) >= parallel(1) ? 1 : 2;
  const below = cornersOf(prism).map((p) => spot(p).below[cheeksFrom - 1] ?? 0);
  const outline = outlineOn(prism, cheeksFrom, where);
  const rectangle = rectangleOf(outline);
  const breadth = breadthOf(cheeksFrom, frame);
  const low = Math.min(...outline.map((corner) => corner.across));
  const high = Math.max(...outline.map((corner) => corner.across));
  const surplusThere = surplus[frame.ways[cheeksFrom === 1 ? 1 : 0]];
  const over = surplusThere > LEAST_OVER && high > breadth - SAME ? surplusThere : 0;
  return {
    cheeks: [Math.min(...below), Math.max(...below)],
    cheeksFrom,
    face: cheeksFrom,
    outline,
    rectangle,
    full: rectangle !== undefined && over === 0 && Math.abs(low) < SAME && Math.abs(high - breadth) < SAME,
    over,
  };
}

/** Less than this is not pared off: half of the finest mark. */
export const LEAST_OVER = 1 / 32;

function pared(here: readonly Joint[], { width, depth }: Surplus): number | undefined {
  // a seat in a housing of its plate is pared where it stands there, which is not at the very end
  const housed = here.filter(({ kind }) => !isSeatKind(kind));
  const housing = Math.max(0, ...housed.map((joint) => joint.sizes.housing.value));
  return housing > 0 && Math.max(width, depth) > LEAST_OVER ? housing : undefined;
}

/**
 * The marks of one end.
 * @param own the joints that the timber joins into others with
 */
export function endMarks(
  timber: Timber,
  end: "foot" | "head",
  own: readonly Joint[],
  measured: readonly MeasuredSize[],
  where: Marked,
): EndMarks {
  const here = own.filter((joint) => joint.end === (end satisfies JointEnd));
  const tenons = here.flatMap((joint) => joint.solids.tenons);
  const tip = end === "foot" ? 0 : where.length;
  const surplus = surplusAt(measured, timber, tip);
  return {
    end,
    joints: here.map((joint) => ({ id: joint.id, into: joint.into.id })),
    shoulder: tenons.length > 0,
    crosses: crossings(timber, end === "foot" ? timber.foot : timber.head, where),
    tenons: tenons.map((prism) => tenonMarks(prism, surplus, where)),
    leave: leftLong(own)[end],
    pare: pared(here, surplus),
  };
}

/** Whether an end is cut square across all four faces. */
export function isSquare({ crosses: [first, ...others] }: EndMarks): boolean {
  return others.every((at) => Math.abs(at - first) < SAME);
}
