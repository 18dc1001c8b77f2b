/** Wood screws: lateral values with the root diameter, withdrawal, NDS 12.1.5, 12.2.2, 12.3 and Appendix L. */
import { type Withdrawal, withdrawalOf } from "./lag-screw.ts";
import { between, type Lateral, lateral, penetration, type SidePart, type WoodPart } from "./lateral.ts";
import { nailBendingYield } from "./nail.ts";

/** gauge, nominal and root diameter, in (NDS Table L3; roots and No.6, No.14 and up from memory) */
export const WOOD_SCREWS: readonly (readonly [gauge: number, diameter: number, root: number])[] = [
  [6, 0.138, 0.113],
  [7, 0.151, 0.122],
  [8, 0.164, 0.131],
  [9, 0.177, 0.142],
  [10, 0.19, 0.152],
  [12, 0.216, 0.171],
  [14, 0.242, 0.196],
  [16, 0.268, 0.209],
  [18, 0.294, 0.232],
];

/** D_r in; diameters between gauges in proportion */
export function woodScrewRoot(diameter: number): number {
  return between(
    WOOD_SCREWS.map(([, nominal, root]) => [nominal, root]),
    diameter,
  );
}

export interface WoodScrewLateral {
  /** in, nominal */
  readonly diameter: number;
  /** in; undefined = by the gauge */
  readonly root?: number;
  readonly main: WoodPart;
  /** in the main member, in; its thickness where the screw passes through */
  readonly reach: number;
  readonly side: SidePart;
  /** bearing in the farther side member of a screw in double shear, in; undefined = single shear */
  readonly farSide?: number;
  readonly rounded?: boolean;
}

/**
 * Z of one wood screw. In the reduction term, too, stands the root diameter: the printed tables come out only so.
 * @returns 0 where it enters the main member by less than 6 D
 */
export function woodScrewLateral(input: WoodScrewLateral): Lateral {
  const { diameter, side, farSide } = input;
  return lateral({
    nominal: diameter,
    diameter: input.root ?? woodScrewRoot(diameter),
    bendingYield: nailBendingYield(diameter),
    main: input.main,
    mainLength: input.reach,
    side,
    sideLength: Math.min(side.thickness, farSide ?? side.thickness),
    shear: farSide === undefined ? "single" : "double",
    penetration: penetration(input.reach, diameter, "screw-or-nail"),
    ...(input.rounded === undefined ? {} : { rounded: input.rounded }),
  });
}

/**
 * Withdrawal from side grain: W = 2,850 G² D lb per inch of thread (NDS 12.2-2). Nothing from end grain (NDS 12.2.2.3).
 * @param G assigned specific gravity; @param diameter nominal, in; @param thread in the main member, in
 */
export function woodScrewWithdrawal(G: number, diameter: number, thread: number): Withdrawal {
  return withdrawalOf(2850 * G ** 2 * diameter, thread, {
    status: "published",
    source: "2,850 G² D, NDS 12.2-2",
  });
}

/** Thread of a cut wood screw: two thirds of its length (NDS Table L3). */
export function woodScrewThread(length: number): number {
  return (2 / 3) * length;
}
