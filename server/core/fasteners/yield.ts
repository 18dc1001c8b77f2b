/**
 * Lateral value of one dowel by the yield limit equations, NDS 12.3.1 (Table 12.3.1A): single shear with six modes, double
 * shear with four. Every mode is listed; the least governs.
 */

export type YieldModeName = "Im" | "Is" | "II" | "IIIm" | "IIIs" | "IV" | "V";

export interface YieldMode {
  readonly mode: YieldModeName;
  /** lb, at the level of the standard’s reference values */
  readonly Z: number;
  /** R_d, by which the yield load was divided */
  readonly reduction: number;
  /** k_1, k_2 or k_3 of the standard, where the mode has one */
  readonly k?: number;
}

export interface Yield {
  readonly modes: readonly YieldMode[];
  readonly governs: YieldMode;
}

interface BearingPart {
  /** bearing length of the dowel in this member, in; in double shear of the thinner side */
  readonly length: number;
  /** F_e, psi */
  readonly bearing: number;
}

export interface DowelShear {
  /** diameter that bears and bends, in: the root of a threaded one */
  readonly diameter: number;
  readonly main: BearingPart;
  readonly side: BearingPart;
  /** F_yb, psi */
  readonly bendingYield: number;
  readonly reduction: Reduction;
}

/** R_d of each group of modes. */
export interface Reduction {
  readonly I: number;
  readonly II: number;
  /** modes III and IV */
  readonly III: number;
  /** how it came about, as the standard writes it */
  readonly rule: string;
}

const PLAIN_FROM = 0.25;

/**
 * R_d, NDS Table 12.3.1B: from 1/4 in 4 K_θ, 3.6 K_θ, 3.2 K_θ with K_θ = 1 + θ/360; under 1/4 in K_D = 2.2 up to
 * 0.17 in, then 10 D + 0.5, times K_θ where the nominal diameter is 1/4 in or more (a lag screw’s root is thinner).
 * @param diameter that bears, in; @param nominal in; @param angle largest between load and grain in any member, degrees
 */
export function reductionTerm(diameter: number, nominal: number, angle: number): Reduction {
  const K = 1 + angle / 360;
  if (diameter >= PLAIN_FROM) {
    return { I: 4 * K, II: 3.6 * K, III: 3.2 * K, rule: "4 K_θ, 3.6 K_θ, 3.2 K_θ; K_θ = 1 + θ/360" };
  }
  const KD = diameter <= 0.17 ? 2.2 : 10 * diameter + 0.5;
  const all = nominal >= PLAIN_FROM ? KD * K : KD;
  const small = diameter <= 0.17 ? "K_D = 2.2" : "K_D = 10 D + 0.5";
  return { I: all, II: all, III: all, rule: nominal >= PLAIN_FROM ? `${small}, times K_θ` : small };
}

/**
 * Single shear, NDS 12.3-1 to 12.3-6.
 * @returns lb for each mode; all 0 where a size or strength is not above zero
 */
export function singleShear(shear: DowelShear): Yield {
  const { diameter: D, main, side, reduction: R } = shear;
  const { Re, k2, k3, IV } = terms(shear);
  const Rt = main.length / side.length;
  const k1 =
    (Math.sqrt(Re + 2 * Re ** 2 * (1 + Rt + Rt ** 2) + Rt ** 2 * Re ** 3) - Re * (1 + Rt)) / (1 + Re);
  return least(shear, [
    { mode: "Im", Z: (D * main.length * main.bearing) / R.I, reduction: R.I },
    { mode: "Is", Z: (D * side.length * side.bearing) / R.I, reduction: R.I },
    { mode: "II", Z: (k1 * D * side.length * side.bearing) / R.II, reduction: R.II, k: k1 },
    {
      mode: "IIIm",
      Z: (k2 * D * main.length * main.bearing) / ((1 + 2 * Re) * R.III),
      reduction: R.III,
      k: k2,
    },
    {
      mode: "IIIs",
      Z: (k3 * D * side.length * main.bearing) / ((2 + Re) * R.III),
      reduction: R.III,
      k: k3,
    },
    { mode: "IV", Z: IV / R.III, reduction: R.III },
  ]);
}

/**
 * Double shear, NDS 12.3-7 to 12.3-10: I_m, 2 I_s, 2 III_s, 2 IV.
 * @param shear the side’s length is that of the thinner side member (NDS 12.3.8)
 */
export function doubleShear(shear: DowelShear): Yield {
  const { diameter: D, main, side, reduction: R } = shear;
  const { Re, k3, IV } = terms(shear);
  return least(shear, [
    { mode: "Im", Z: (D * main.length * main.bearing) / R.I, reduction: R.I },
    { mode: "Is", Z: (2 * D * side.length * side.bearing) / R.I, reduction: R.I },
    {
      mode: "IIIs",
      Z: (2 * k3 * D * side.length * main.bearing) / ((2 + Re) * R.III),
      reduction: R.III,
      k: k3,
    },
    { mode: "IV", Z: (2 * IV) / R.III, reduction: R.III },
  ]);
}

/** @returns the modes with one more, and which governs now */
export function withMode(yielding: Yield, mode: YieldMode): Yield {
  return { modes: [...yielding.modes, mode], governs: mode.Z < yielding.governs.Z ? mode : yielding.governs };
}

/** @returns the modes without those named; the first of what is left governs among equals */
export function withoutMode(yielding: Yield, name: YieldModeName): Yield {
  const modes = yielding.modes.filter(({ mode }) => mode !== name);
  return { modes, governs: lowest(modes) };
}

function terms({ diameter: D, main, side, bendingYield: Fyb }: DowelShear) {
  const Re = main.bearing / side.bearing;
  const k2 =
    -1 + Math.sqrt(2 * (1 + Re) + (2 * Fyb * (1 + 2 * Re) * D ** 2) / (3 * main.bearing * main.length ** 2));
  const k3 =
    -1 +
    Math.sqrt((2 * (1 + Re)) / Re + (2 * Fyb * (2 + Re) * D ** 2) / (3 * main.bearing * side.length ** 2));
  return { Re, k2, k3, IV: D ** 2 * Math.sqrt((2 * main.bearing * Fyb) / (3 * (1 + Re))) };
}

function least(shear: DowelShear, modes: readonly YieldMode[]): Yield {
  const { diameter, main, side, bendingYield } = shear;
  const sound = [diameter, main.length, main.bearing, side.length, side.bearing, bendingYield].every(
    (x) => x > 0 && Number.isFinite(x),
  );
  const listed = sound ? modes : modes.map((mode) => ({ ...mode, Z: 0 }));
  return { modes: listed, governs: lowest(listed) };
}

function lowest(modes: readonly YieldMode[]): YieldMode {
  return modes.reduce((low, mode) => (mode.Z < low.Z ? mode : low), modes[0] ?? NONE);
}

const NONE: YieldMode = { mode: "Im", Z: 0, reduction: 1 };
