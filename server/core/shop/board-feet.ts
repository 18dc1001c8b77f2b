/**
 * How much wood a stick is, as it is bought and sold.
 *
 * Board feet = thickness (in) × width (in) × length (ft) / 12, of nominal sizes: American trade practice, as the
 * lumber scales print it (published: the lumber scale `board-feet` of test/reference/geometry.yaml, source BFTAB).
 */

/**
 * @param thickness nominal, inches
 * @param width nominal, inches
 * @param length inches, tenons included
 * @returns board feet, not rounded
 */
export function boardFeet(thickness: number, width: number, length: number): number {
  return (thickness * width * (length / 12)) / 12;
}

/**
 * Nominal size of a dressed one: the next whole inch. Dressing takes 1/4 to 3/4 in off a nominal size of whole inches
 * (American softwood lumber standard PS 20; memory).
 * @param dressed inches
 */
export function nominalOf(dressed: number): number {
  return Math.ceil(dressed - 1e-6);
}
