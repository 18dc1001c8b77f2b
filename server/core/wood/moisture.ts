/**
 * Wood and water: shrinkage, equilibrium moisture, specific gravity and density. USDA Wood Handbook (FPL-GTR-282, 2021)
 * chapter 4, equations as named. Moisture is in percent of oven-dry weight.
 */

/** percent; the moisture above which wood does not move (Wood Handbook 4) */
const FIBER_SATURATION = 30;
/** lb/ft³ */
const WATER_DENSITY = 62.4;
/** specific gravity of the cell wall (Wood Handbook Eq 4-3) */
const CELL_WALL_GRAVITY = 1.54;

/**
 * Shrinkage from green to a moisture, Wood Handbook Eq 4-9: S_x = S_0 (1 − x/30).
 * @param total percent of the green size, green to oven-dry
 * @returns percent of the green size; 0 at or above 30 percent moisture
 */
export function shrinkageTo(total: number, moisture: number): number {
  return total * (1 - Math.min(Math.max(moisture, 0), FIBER_SATURATION) / FIBER_SATURATION);
}

/**
 * Size of a timber after a change of moisture, exact between any two moistures: D2 = D1 (1 − S_x2)/(1 − S_x1), the same
 * as the change formula of Wood Handbook chapter 13.
 * @param size in, at moisture `from`
 */
export function sizeAfter(size: number, total: number, from: number, to: number): number {
  return (size * (1 - shrinkageTo(total, to) / 100)) / (1 - shrinkageTo(total, from) / 100);
}

/**
 * Shrinkage of dimension lumber in the mean of flat and vertical grain, percent from green (28 percent), for 8 to 19
 * percent moisture. FPL-RP-489.
 */
export function lumberShrinkage(moisture: number): { readonly width: number; readonly thickness: number } {
  return { width: 6.031 - 0.215 * moisture, thickness: 5.062 - 0.181 * moisture };
}

/**
 * Equilibrium moisture, Wood Handbook Eq 4-5 (Simpson 1973).
 * @param temperature °F
 * @param humidity percent, 0 to below 100
 */
export function equilibriumMoisture(temperature: number, humidity: number): number {
  const t = ((temperature - 32) * 5) / 9;
  const h = humidity / 100;
  const w = 349 + 1.29 * t + 0.0135 * t ** 2;
  const k = 0.805 + 0.000736 * t - 0.00000273 * t ** 2;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t ** 2;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t ** 2;
  const kh = k * h;
  return (1800 / w) * (kh / (1 - kh) + (k1 * kh + 2 * k1 * k2 * kh ** 2) / (1 + k1 * kh + k1 * k2 * kh ** 2));
}

/** Most water that wood can hold, percent. Wood Handbook Eq 4-3. @param gravity on green volume */
export function mostMoisture(gravity: number): number {
  return (100 * (CELL_WALL_GRAVITY - gravity)) / (CELL_WALL_GRAVITY * gravity);
}

/** Moisture at which wood sinks: its density is that of water. @param gravity on green volume */
export function sinkingMoisture(gravity: number): number {
  return (100 * (1 - gravity)) / gravity;
}

/** Volumetric shrinkage estimated from gravity on green volume, percent. Wood Handbook Eq 4-12. */
export function estimatedVolumetricShrinkage(gravity: number): number {
  return 26.5 * gravity;
}

/**
 * Specific gravity on the volume at a moisture, Wood Handbook Eq 4-11.
 * @param gravity on green volume; @param volumetric percent, green to oven-dry
 */
export function gravityAt(gravity: number, volumetric: number, moisture: number): number {
  return gravity / (1 - shrinkageTo(volumetric, moisture) / 100);
}

/**
 * Density in lb/ft³, Wood Handbook Eq 4-14: 62.4 G_x (1 + x/100).
 * @param gravity on the volume at that moisture (green volume from 30 percent on)
 */
export function density(gravity: number, moisture: number): number {
  return WATER_DENSITY * gravity * (1 + moisture / 100);
}

/**
 * Density in lb/ft³ from the gravity that the NDS assigns, NDS Supplement 3.1.3. Its volume grows without end, so that it
 * is too light for timber above about 30 percent moisture.
 * @param gravity on oven-dry mass and volume
 */
export function densityFromAssignedGravity(gravity: number, moisture: number): number {
  return ((WATER_DENSITY * gravity) / (1 + 0.009 * gravity * moisture)) * (1 + moisture / 100);
}
