/** Center lines of timbers as they move, in the plane of a view. */
import type { Vec6 } from "../core/analysis/structure.ts";
import { add, cross, dot, type Vec2, type Vec3 } from "../core/model/vec.ts";
import { bentLine } from "../core/statics/deflections.ts";
import { forceTable, PLACES, rowOf } from "../core/statics/force-table.ts";
import { type Hold, localZ } from "../core/statics/skeleton.ts";
import type { SolvedCase } from "../core/statics/solve-frame.ts";
import type { PaperLine } from "./forces-line.ts";
import { project, type Sight } from "./views.ts";

/** Where a point of a center line is, and how far it moves on paper, inches. */
export interface Moved {
  readonly at: number;
  readonly by: Vec2;
}

const [MY, MZ] = [4, 5];
const SIX = rowOf(0, 1) - rowOf(0, 0);
/** points between two places of an element */
const PARTS = 2;

/** Motion of the end of a piece: that of its node, and what the node's turn does at the end of the arm. */
function endMotion(sight: Sight, hold: Hold, motion: Vec6): Vec2 {
  const shift: Vec3 = [motion[0], motion[1], motion[2]];
  const turn: Vec3 = [motion[3], motion[4], motion[5]];
  return project(sight, add(shift, cross(turn, hold.arm)));
}

/** The value at t of the quartic through values at the places. */
function quartic(values: readonly number[], t: number): number {
  return PLACES.reduce<number>((sum, own, i) => {
    const weight = PLACES.reduce<number>(
      (w, other, k) => (k === i ? w : (w * (t - other)) / (own - other)),
      1,
    );
    return sum + weight * (values[i] ?? 0);
  }, 0);
}

/**
 * How an element bows from the chord between its ends, toward `up`, at each place, inches: twice the integral of its
 * curvature, which is M_z/(E I_z) toward y and −M_y/(E I_y) toward z.
 */
function bow(line: PaperLine, solved: SolvedCase, element: number, length: number): number[] {
  const table = forceTable(solved);
  const stick = solved.frame.structure.elements[element];
  if (!table || !stick?.Iz || !stick.Iy) return [];
  const { timber, upward } = line;
  const y = dot(timber.depthDir, upward) / (stick.E * stick.Iz);
  const z = dot(localZ(timber), upward) / (stick.E * stick.Iy);
  // the bent line of one element, with curvature in the place of its moment
  const curvature = new Float64Array(SIX * PLACES.length);
  PLACES.forEach((_, place) => {
    const row = rowOf(element, place);
    curvature[place * SIX + MZ] = y * (table[row + MZ] ?? 0) - z * (table[row + MY] ?? 0);
  });
  const out = new Float64Array(PLACES.length);
  bentLine([0], [length], curvature, out);
  const end = out.at(-1) ?? 0;
  return PLACES.map((share, place) => (out[place] ?? 0) - share * end);
}

/** @returns points of the timber's center line, foot to head; none where the case has no answer */
export function movedOf(sight: Sight, line: PaperLine, solved: SolvedCase): Moved[] {
  if (!forceTable(solved)) return [];
  const { frame, combined } = solved;
  return (frame.elementsOf.get(line.timber.id) ?? []).flatMap((element) => {
    const piece = frame.pieces[element];
    if (!piece) return [];
    const from = endMotion(sight, piece.i, combined.displacement(piece.i.node));
    const to = endMotion(sight, piece.j, combined.displacement(piece.j.node));
    const length = piece.to - piece.from;
    const bowed = frame.structure.elements[element]?.axialOnly ? [] : bow(line, solved, element, length);
    const parts = bowed.some((v) => Math.abs(v) > 1e-9) ? PARTS * (PLACES.length - 1) : 1;
    return Array.from({ length: parts + 1 }, (_, k): Moved => {
      const t = k / parts;
      const aside = parts === 1 ? 0 : quartic(bowed, t);
      const at = (c: 0 | 1): number => from[c] + t * (to[c] - from[c]) + aside * line.up[c];
      return { at: piece.from + t * length, by: [at(0), at(1)] };
    });
  });
}

/** @returns the largest movement on paper, inches */
export function mostOf(moved: readonly Moved[]): number {
  return moved.reduce((most, { by }) => Math.max(most, Math.hypot(by[0], by[1])), 0);
}
