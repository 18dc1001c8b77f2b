/** Forces of a timber in the plane of a view, along its center line. */
import { dot } from "../core/model/vec.ts";
import { forceTable, PLACES, rowOf } from "../core/statics/force-table.ts";
import { localZ } from "../core/statics/skeleton.ts";
import type { SolvedCase } from "../core/statics/solve-frame.ts";
import type { ForceLayer } from "./forces-cases.ts";
import type { PaperLine } from "./forces-line.ts";

/** Layers that are drawn as diagrams. */
export type DiagramLayer = Exclude<ForceLayer, "deflected">;

/** A value at an axial position: lb, or lb·in for moments. */
export interface Ordinate {
  readonly at: number;
  /** the sign decides the side: positive is `up` of the line; of a moment, that of the tension */
  readonly value: number;
}

/** Weights of two forces in the table, by their place in a row. */
interface Weights {
  readonly first: number;
  readonly second: number;
  readonly a: number;
  readonly b: number;
}

const [N, VY, VZ, MY, MZ] = [0, 1, 2, 4, 5];

/**
 * Axial: tension positive. Shear: positive turns a piece clockwise as it is seen, drawn up. Moment: on its tension side,
 * which by the signs of the table is −M_z y + M_y z in the element's axes.
 */
function weightsOf({ timber, upward, reversed }: PaperLine, layer: DiagramLayer): Weights {
  if (layer === "axial") return { first: N, second: N, a: 1, b: 0 };
  const [y, z] = [dot(timber.depthDir, upward), dot(localZ(timber), upward)];
  if (layer === "moment") return { first: MY, second: MZ, a: z, b: -y };
  const sign = reversed ? 1 : -1;
  return { first: VY, second: VZ, a: sign * y, b: sign * z };
}

/** @returns the largest size of a force along the timber; 0 where the case has no answer, lb or lb·in */
export function peakOf(line: PaperLine, solved: SolvedCase, layer: DiagramLayer): number {
  const table = forceTable(solved);
  if (!table) return 0;
  const { first, second, a, b } = weightsOf(line, layer);
  let peak = 0;
  for (const element of solved.frame.elementsOf.get(line.timber.id) ?? [])
    for (let place = 0; place < PLACES.length; place++) {
      const row = rowOf(element, place);
      peak = Math.max(peak, Math.abs(a * (table[row + first] ?? 0) + b * (table[row + second] ?? 0)));
    }
  return peak;
}

/** Cubic through two values with their slopes; t from 0 to 1, slopes for the whole of t. */
function hermite(from: number, to: number, rise: number, end: number, t: number): number {
  const u = 1 - t;
  return u * u * (1 + 2 * t) * from + t * t * (3 - 2 * t) * to + t * u * (u * rise - t * end);
}

/**
 * @param step largest distance between two ordinates of a curved diagram, inches
 * @returns ordinates in order, those of each element together; none where the case has no answer
 */
export function ordinatesOf(
  line: PaperLine,
  solved: SolvedCase,
  layer: DiagramLayer,
  step: number,
): Ordinate[][] {
  const table = forceTable(solved);
  if (!table) return [];
  const read = ({ first, second, a, b }: Weights, row: number): number =>
    a * (table[row + first] ?? 0) + b * (table[row + second] ?? 0);
  const weights = weightsOf(line, layer);
  // the slope of a moment is the shear: d(−M_z y + M_y z)/ds = V_y y + V_z z by the signs of the table
  const shear = weightsOf({ ...line, reversed: true }, "shear");
  return (solved.frame.elementsOf.get(line.timber.id) ?? []).flatMap((element) => {
    const piece = solved.frame.pieces[element];
    if (!piece) return [];
    const length = piece.to - piece.from;
    const ordinates: Ordinate[] = [];
    PLACES.forEach((share, place) => {
      const row = rowOf(element, place);
      const value = read(weights, row);
      const before = PLACES[place - 1];
      if (before !== undefined && layer === "moment") {
        const last = rowOf(element, place - 1);
        const run = (share - before) * length;
        const parts = Math.min(Math.max(1, Math.ceil(run / step)), 8);
        for (let k = 1; k < parts; k++) {
          const t = k / parts;
          const between = hermite(
            read(weights, last),
            value,
            read(shear, last) * run,
            read(shear, row) * run,
            t,
          );
          ordinates.push({ at: piece.from + (before + t * (share - before)) * length, value: between });
        }
      }
      ordinates.push({ at: piece.from + share * length, value });
    });
    return [ordinates];
  });
}
