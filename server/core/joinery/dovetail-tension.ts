/**
 * What a dovetail carries when its timber is pulled out of the other, without friction. Its flanks bear on the socket
 * (statics, Hankinson NDS 3.10.3), the shoulders of the tail shear off along the grain, its neck tears; the receiving
 * timber splits along its grain (NDS 3.4.3.3, fasteners across the grain), or the wood between socket and the timber's end
 * shears off under what the flanks spread. Flanks of a green tail bear on what is left after it has drawn out.
 */
import { dovetailFit, dovetailPull } from "../fasteners/dovetail.ts";
import { cheekSplit } from "../fasteners/tear-out.ts";
import { bearingAtAngle } from "../fasteners/wood-bearing.ts";
import type { AdjustedValues } from "../members/adjust.ts";
import { type Factor, leastCertain, type Sourced } from "../sourced.ts";
import { adjustedFor, woodOf } from "../statics/timber-wood.ts";
import { drawOut } from "./dovetail-drying.ts";
import type { Joint } from "./joint.ts";
import { FAR } from "./relish.ts";

const LIMITS = ["bearing", "tail-shear", "neck-tension", "socket-split", "socket-end"] as const;

export type DovetailLimit = (typeof LIMITS)[number];

export interface DovetailHold {
  readonly tension: Sourced;
  readonly governs: DovetailLimit;
  /** lb of each */
  readonly limits: Readonly<Record<DovetailLimit, number>>;
  readonly terms: DovetailTerms;
}

/** What the limits are made of, for whoever shows their formulas. */
export interface DovetailTerms {
  /** in */
  readonly length: number;
  readonly flare: number;
  readonly depth: number;
  readonly neck: number;
  readonly housing: number;
  /** in: how far it draws out as it dries, and the length of flank that bears then */
  readonly drawn: number;
  readonly bears: number;
  /** degrees between a flank and the tail's grain */
  readonly angle: number;
  /** where the flanks give: on the tail at 90° − angle to its grain, or on the socket at `angle` */
  readonly weaker: { readonly on: "tail" | "socket"; readonly angle: number; readonly stress: number };
  readonly tail: Pick<AdjustedValues, "Fv" | "Ft" | "Fc" | "Fc-perp">;
  readonly socket: Pick<AdjustedValues, "Fv" | "Fc" | "Fc-perp">;
  /** NDS 3.4.3.3: d_e and d, in; whether the end is within five depths */
  readonly split: { readonly effective: number; readonly depth: number; readonly near: boolean };
  /** wood from the socket to the end of its timber that counts, and what of the section is sheared for each inch, in */
  readonly end: { readonly counted: number; readonly breadth: number };
}

/** What bears, as the rules of fasteners take it: psi. */
const bearing = (values: Pick<AdjustedValues, "Fc" | "Fc-perp">) => ({
  Fc: values.Fc.value,
  FcPerp: values["Fc-perp"].value,
});

/** Wood behind a socket that is thinner is no wall, in. */
const THIN = 1 / 8;

function weakerFlank(
  tail: DovetailTerms["tail"],
  socket: DovetailTerms["socket"],
  angle: number,
): DovetailTerms["weaker"] {
  const both = [
    { on: "tail", angle: 90 - angle, stress: bearingAtAngle(bearing(tail), 90 - angle).value },
    { on: "socket", angle, stress: bearingAtAngle(bearing(socket), angle).value },
  ] as const;
  return both[0].stress <= both[1].stress ? both[0] : both[1];
}

/**
 * @param duration C_D of the combination
 * @returns undefined for a joint without a dovetail, or whose woods are unknown; 0 lb where drying takes all of its flare
 */
export function dovetailTension(joint: Joint, duration: Factor): DovetailHold | undefined {
  const { of, into, face, sizes } = joint;
  const { dovetail, housing } = sizes;
  const [own, other] = [woodOf(of), woodOf(into)];
  if (!dovetail || !own || !other) return undefined;
  const tail = adjustedFor(of, own, duration);
  const socket = adjustedFor(into, other, duration);
  const [L, flare, t] = [dovetail.length.value, dovetail.flare.value, dovetail.depth.value];
  const drawn = drawOut(of, dovetail) ?? 0;
  const bears = Math.max(0, L - drawn);
  const slope = L > 0 ? flare / L : 0;
  const shape = {
    tail: dovetail.neck + 2 * bears * slope,
    length: bears,
    slope,
    slopedSides: 2,
    shrinkage: 0,
  } as const;
  const { angle } = dovetailFit(shape);
  const wood = { ...bearing(tail), Fv: tail.Fv.value, Ft: tail.Ft.value };
  const pull = dovetailPull(shape, t, wood, bearing(socket));
  const toEnd = Math.max(0, Math.min(-face.ends[0], face.ends[1]) - dovetail.tip / 2);
  const split = cheekSplit(housing.value + bears, 0, face.thickness, [t, 0], socket.Fv.value, toEnd);
  // a tail that reaches the far face leaves no wood behind it to shear
  const behind = face.thickness - housing.value - L > THIN ? t : 0;
  const end = { counted: Math.min(toEnd, FAR * t), breadth: bears + behind };
  const limits = {
    bearing: pull.bearing,
    "tail-shear": pull.tailShear,
    "neck-tension": pull.neckTension,
    "socket-split": split.pull,
    // half the pull on each flank, which spreads it along the grain with cot(angle) of that
    "socket-end": 2 * slope * socket.Fv.value * end.counted * end.breadth,
  };
  const governs = LIMITS.reduce((low, one) => (limits[one] < limits[low] ? one : low));
  return {
    tension: {
      value: limits[governs],
      status: leastCertain(["memory", tail.Fv.status, socket.Fv.status]),
      source: "statics of the flanks without friction; NDS 3.10.3, 3.4.3.3",
    },
    governs,
    limits,
    terms: {
      length: L,
      flare,
      depth: t,
      neck: dovetail.neck,
      housing: housing.value,
      drawn,
      bears,
      angle,
      weaker: weakerFlank(tail, socket, angle),
      tail,
      socket,
      split: { effective: split.effective, depth: face.thickness, near: split.near },
      end,
    },
  };
}
