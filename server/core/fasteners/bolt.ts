/** Bolts: single and double shear with the full diameter, NDS 12.1.3 and 12.3. */
import type { Sourced } from "../sourced.ts";
import { type Lateral, lateral, type SidePart, type WoodPart } from "./lateral.ts";

/** F_yb of low carbon bolts (NDS Table I1). */
const BOLT_BENDING_YIELD: Sourced = { value: 45000, status: "memory", source: "NDS Table I1, bolts" };

export interface BoltLateral {
  /** in, 1/4 to 1 */
  readonly diameter: number;
  readonly main: WoodPart;
  /** in, along the bolt */
  readonly mainThickness: number;
  readonly side: SidePart;
  /** thickness of the other side member, in; undefined = single shear */
  readonly farSide?: number;
  /** psi; undefined = low carbon steel */
  readonly bendingYield?: Sourced;
  readonly rounded?: boolean;
}

/** Z of one bolt in a hole 1/32 to 1/16 in larger, washers under head and nut (NDS 12.1.3). */
export function boltLateral(input: BoltLateral): Lateral {
  const { diameter, side, farSide } = input;
  return lateral({
    nominal: diameter,
    diameter,
    bendingYield: input.bendingYield ?? BOLT_BENDING_YIELD,
    main: input.main,
    mainLength: input.mainThickness,
    side,
    sideLength: Math.min(side.thickness, farSide ?? side.thickness),
    shear: farSide === undefined ? "single" : "double",
    penetration: undefined,
    ...(input.rounded === undefined ? {} : { rounded: input.rounded }),
  });
}

/** Hole of a bolt: 1/32 to 1/16 in over its diameter, in. */
export function boltHole(diameter: number): { readonly least: number; readonly most: number } {
  return { least: diameter + 1 / 32, most: diameter + 1 / 16 };
}
