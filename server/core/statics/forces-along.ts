/** Forces along one element under one combination, exactly, also between the places of the force table. */
import { Curves, flexibilityOf } from "../analysis/curves.ts";
import { readLoad, type StickLoads } from "../analysis/element-loads.ts";
import { localAxes } from "../analysis/element-stiffness.ts";
import type { Structure } from "../analysis/structure.ts";
import type { Timber } from "../model/model.ts";
import { add, dot, type Vec3 } from "../model/vec.ts";
import type { BasicLoad } from "./basic-loads.ts";
import { loadCase } from "./element-loads.ts";
import { isSolved, tipOf } from "./force-table.ts";
import { localZ } from "./skeleton.ts";
import type { SolvedCase } from "./solve-frame.ts";

const AT_REST = new Float64Array(6);

/**
 * Integrates the loads on an element from the forces just within its first end.
 * @param element index within the case's structure
 * @returns lb and lb·in, local axes, by inches from end i; motions are none of an end at rest and mean nothing. Undefined
 * when the case has no solution
 */
export function forcesAlong(solved: SolvedCase, element: number): Curves | undefined {
  const { frame, frameCase, combined } = solved;
  const piece = frame.pieces[element];
  const given = frame.structure.elements[element];
  if (!isSolved(solved) || !piece || !given) return undefined;
  const axes = localAxes(
    pointAt(frame.structure, given.i, given.offsetI),
    pointAt(frame.structure, given.j, given.offsetJ),
    given.ydir,
  );
  if (typeof axes === "string") return undefined;
  const loads: StickLoads = { points: [], spreads: [], elongation: 0 };
  const own = frameCase.parts.map(({ load, factor }) => ({
    loads: load.loads.filter((l) => l.timber.id === piece.timber.id),
    factor,
  }));
  // forces at points stand at the very ends of timbers: they belong to the joint there
  for (const load of loadCase(frame, frameCase.id, own).elementLoads ?? [])
    if (load.element === element && load.kind === "spread") readLoad(load, axes, given.axialOnly, loads);
  const from = tipOf(element, "i");
  const force = combined.tips.slice(from, from + AT_REST.length).map((v) => -v);
  return new Curves(axes.length, flexibilityOf(given), loads, force, AT_REST);
}

const pointAt = ({ nodes }: Structure, node: number, arm: Vec3 = [0, 0, 0]): Vec3 =>
  add(nodes[node]?.at ?? [0, 0, 0], arm);

/** Directions of a timber's local axes, in the order of N, V_y and V_z. */
const DIRECTIONS: readonly ((timber: Timber) => Vec3)[] = [(t) => t.axis, (t) => t.depthDir, localZ];

/** In which senses the loads of a case act on one timber: two bits for each direction, forward and back. */
export class Senses {
  readonly #known = new Map<BasicLoad, number>();
  readonly #timber: string;

  constructor(timber: string) {
    this.#timber = timber;
  }

  /** @returns whether loads in the direction of N, V_y or V_z (0, 1, 2) act in both senses */
  turns({ frameCase }: SolvedCase): (k: number) => boolean {
    let senses = 0;
    for (const { load } of frameCase.parts) senses |= this.#of(load);
    return (k) => ((senses >> (2 * k)) & 3) === 3;
  }

  #of(load: BasicLoad): number {
    const known = this.#known.get(load);
    if (known !== undefined) return known;
    let senses = 0;
    for (const { timber, startForce, endForce } of load.loads) {
      if (timber.id !== this.#timber) continue;
      DIRECTIONS.forEach((direction, k) => {
        for (const force of [startForce, endForce]) {
          const part = dot(force, direction(timber));
          if (part !== 0) senses |= (part > 0 ? 1 : 2) << (2 * k);
        }
      });
    }
    this.#known.set(load, senses);
    return senses;
  }
}
