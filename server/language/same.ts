/** Structural equality of plain data: what tells a changed frame from a changed blank. */

/**
 * @returns true when both hold the same values: plain objects by their own keys, arrays and sets in order, maps by
 * key; functions and class instances only when they are one and the same
 */
export function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (Object.getPrototypeOf(a) !== Object.getPrototypeOf(b)) return false;
  if (Array.isArray(a) && Array.isArray(b)) return sameItems(a, b);
  if (a instanceof Set && b instanceof Set) return a.size === b.size && sameItems([...a], [...b]);
  if (a instanceof Map && b instanceof Map) return a.size === b.size && sameItems([...a], [...b]);
  if (Object.getPrototypeOf(a) !== Object.prototype) return false;
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  return keys.every((key) => Object.hasOwn(b, key) && same(valueAt(a, key), valueAt(b, key)));
}

function sameItems(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((item, index) => same(item, b[index]));
}

function valueAt(object: object, key: string): unknown {
  return Reflect.get(object, key);
}
