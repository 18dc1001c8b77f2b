/**
 * What the pegs of a lap carry when its timbers are drawn apart: sheared once between two halves, at both faces of a blade.
 * Of a scarf the pull runs along the grain of both timbers, else along the joined one's. Thicknesses and distances are
 * plane geometry (derived); the standard speaks of pegs in double shear, its yield modes in single shear are those of the
 * NDS for any dowel (12.3-1 to 12.3-6), with the strengths of wood pegs.
 */
import { type PegJoint, pegJoint } from "../fasteners/pegs/peg-joint.ts";
import { pegGravity } from "../fasteners/pegs/strength.ts";
import type { Frame } from "../frame/frame.ts";
import type { Factor } from "../sourced.ts";
import { adjustedFor, woodOf } from "../statics/timber-wood.ts";
import type { Joint } from "./joint.ts";
import type { PegSizes } from "./joint-sizes.ts";
import { pegSpecies } from "./peg-species.ts";
import { isScarf } from "./scarf.ts";

export interface LapPegs {
  /** in: of the joined timber where the pegs pass, and of what it lies on, a cheek beside a blade */
  readonly thickness: number;
  readonly other: number;
  /** in, across the pull */
  readonly width: number;
  /** in, from where the lap begins to the joined timber's end, and to each line of pegs */
  readonly length: number;
  readonly setbacks: readonly number[];
  /** in, of the pegs in a line, from the middle of the width */
  readonly alongWidth: readonly number[];
  readonly planes: 1 | 2;
}

const spread = (count: number, width: number): number[] =>
  Array.from({ length: count }, (_, i) => ((i + 0.5) / count - 0.5) * width);

/**
 * Pegs in the two blades of a scarf as if those lay side by side with a peg's breadth between: rows and net section are
 * those of both, and no wood counts between the blades.
 */
function bladeRows(height: number, { count, diameter }: PegSizes): number[] {
  const first = Math.ceil(count / 2);
  const apart = (height + diameter.value) / 2;
  return [
    ...spread(first, height).map((w) => w - apart),
    ...(count > first ? spread(count - first, height).map((w) => w + apart) : []),
  ];
}

/** Thinner part of a splayed scarf at its pegs: from half of depth and wedge opening in the middle to the butt at its end. */
function splayedAt({ of, sizes: { lap, splay } }: Joint, setback: number): number {
  if (!lap || !splay) return 0;
  const [from, to] = [splay.key.length / 2, lap.length.value / 2 + splay.undercut];
  const share = (setback - lap.length.value / 2 - from) / Math.max(1e-6, to - from);
  const middle = (of.depth + splay.key.height) / 2;
  return middle + Math.max(0, Math.min(1, share)) * (splay.butt.value - middle);
}

/** @returns undefined for what is no pegged lap */
export function lapPegs(joint: Joint): LapPegs | undefined {
  const { of, into, face, sizes, kind } = joint;
  const { lap, blade, splay, dovetail, pegs } = sizes;
  if (!pegs || pegs.count <= 0) return undefined;
  const { setbacks, alongWidth } = pegs;
  if (dovetail) {
    const across = face.edges[1] - face.edges[0];
    const [socket] = joint.solids.mortises;
    const other = across - (socket ? socket.to - socket.from : across);
    const [length, width] = [dovetail.length.value, dovetail.neck];
    return { thickness: dovetail.depth.value, other, width, length, setbacks, alongWidth, planes: 1 };
  }
  if (!lap) return undefined;
  if (blade) {
    const length = blade.length.value;
    const thickness = blade.thickness.value;
    return {
      thickness,
      other: (Math.min(of.width, into.width) - thickness) / 2,
      width: 2 * lap.depth,
      length,
      setbacks: [length / 2],
      alongWidth: bladeRows(lap.depth, pegs),
      planes: 2,
    };
  }
  const shape = { width: of.width, length: lap.length.value, setbacks, alongWidth, planes: 1 } as const;
  if (splay) {
    const thickness = splayedAt(joint, Math.max(...setbacks));
    return { ...shape, thickness, other: of.depth - thickness };
  }
  const half = { ...shape, thickness: lap.depth, other: lap.depth };
  // pegs of a corner stand over the middle of the other timber
  return kind === "corner-half-lap" ? { ...half, setbacks: [lap.length.value / 2] } : half;
}

/**
 * @param duration C_D of the combination
 * @returns undefined for what is no pegged lap, or where the woods are unknown
 */
export function lapTension(joint: Joint, frame: Frame, duration: Factor): PegJoint | undefined {
  const { of, into, sizes, kind } = joint;
  const [own, other] = [woodOf(of), woodOf(into)];
  const gravity = pegGravity(pegSpecies(frame));
  const lap = lapPegs(joint);
  if (!lap || !sizes.pegs || !own || !other || gravity === undefined) return undefined;
  const { thickness, width, length, setbacks, alongWidth } = lap;
  const values = adjustedFor(of, own, duration);
  return pegJoint({
    peg: { diameter: sizes.pegs.diameter.value, G: gravity.value, count: sizes.pegs.count },
    tenon: {
      species: own.group,
      G: own.values.G.value,
      thickness,
      width,
      length,
      setbacks,
      alongWidth,
      strength: { Fv: values.Fv.value, Ft: values.Ft.value, made: { Fv: values.Fv, Ft: values.Ft } },
    },
    mortised: { species: other.group, G: other.values.G.value, walls: [lap.other, lap.other] },
    angleOfMortised: isScarf(kind) ? 0 : 90,
    planes: lap.planes,
    seasoning: into.class?.seasoning ?? "green",
    duration,
  });
}
