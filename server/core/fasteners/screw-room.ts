/**
 * Room round screws. NDS Table 12.5.1E (memory), lag screws of 1/4 in and more in withdrawal: 4 D from screw to screw and
 * to the end of a timber, 1.5 D to its edge. For thinner ones NDS 12.5.1 gives no numbers; the same are kept (common
 * practice, no source).
 */

/** In diameters, between centers, and from a center to the end and to the edge of a timber. */
export const SCREW_APART = 4;
export const SCREW_END = 4;
export const SCREW_EDGE = 1.5;

/** What a size may fall short, in: less than a saw is true to. */
export const SCREW_SLACK = 1 / 32;

/** @returns how wide a row of screws is with its edges, in */
export const rowWidth = (count: number, diameter: number): number =>
  ((count - 1) * SCREW_APART + 2 * SCREW_EDGE) * diameter;

/** @returns the most screws that stand side by side in so much wood, in inches */
export function mostInRow(room: number, diameter: number): number {
  const most = Math.floor(((room + SCREW_SLACK) / diameter - 2 * SCREW_EDGE) / SCREW_APART) + 1;
  return Number.isFinite(most) ? Math.max(0, most) : 0;
}
