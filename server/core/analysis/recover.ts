/** Forces and motions of single sticks from the motions of the nodes. */
import type { CaseLoads } from "./case-loads.ts";
import { Curves } from "./curves.ts";
import { ENDS } from "./element-stiffness.ts";
import { at } from "./numbers.ts";
import { innerMotions } from "./releases.ts";
import type { Balance } from "./residual.ts";
import type { Vec6 } from "./structure.ts";
import { endMotions, type Stick } from "./system.ts";

export interface StickForces {
  /** Fx Fy Fz Mx My Mz that act on the stick at each end, local axes, right-hand rule. */
  readonly endI: Vec6;
  readonly endJ: Vec6;
  /** Length force, mean of the two ends, tension positive. */
  readonly axial: number;
}

export function stickForces(stick: Stick, state: Balance): StickForces {
  const f = state.ends;
  const i = ENDS * stick.index;
  const j = i + 6;
  return {
    endI: [at(f, i), at(f, i + 1), at(f, i + 2), at(f, i + 3), at(f, i + 4), at(f, i + 5)],
    endJ: [at(f, j), at(f, j + 1), at(f, j + 2), at(f, j + 3), at(f, j + 4), at(f, j + 5)],
    axial: (at(f, j) - at(f, i)) / 2,
  };
}

/**
 * Forces and motions along a stick. One that has let go is drawn as a simple beam between its nodes; so is a bar, which
 * bends under its own loads only if it was given a section to bend.
 */
export function stickCurves(stick: Stick, loads: CaseLoads, state: Balance, dropped: boolean): Curves {
  const { length } = stick.axes;
  const loaded = loads.sticks.get(stick.index);
  const force = state.ends.slice(ENDS * stick.index, ENDS * stick.index + 6);
  const outer = endMotions(stick, state.motions);
  const simple = dropped || stick.element.axialOnly === true;
  const inner = simple ? outer : innerMotions(stick.joint, outer, loaded?.atStep ?? []);
  const motion = inner.slice(0, 6);
  // A stick that has let go keeps its natural length from end i on: its gap shows at end j.
  if (!simple) return new Curves(length, stick.flexibility, loaded?.loads, force, motion);
  motion[4] = 0;
  motion[5] = 0;
  const level = new Curves(length, stick.flexibility, loaded?.loads, force, motion);
  motion[5] = (at(outer, 7) - level.valueAt("dy", length)) / length;
  motion[4] = -(at(outer, 8) - level.valueAt("dz", length)) / length;
  return new Curves(length, stick.flexibility, loaded?.loads, force, motion);
}
