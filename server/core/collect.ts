/** Groups items by a key, in the order in which keys first appear. */
export function groupBy<T, K>(items: Iterable<T>, key: (item: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const item of items) {
    const k = key(item);
    const group = groups.get(k);
    if (group) group.push(item);
    else groups.set(k, [item]);
  }
  return groups;
}

/** @returns what is made of a key at the first call with it, and the same at every later one; not for keys that are many and short-lived */
export function remembering<K, T>(make: (key: K) => T): (key: K) => T {
  const known = new Map<K, { readonly value: T }>();
  return (key) => {
    const found = known.get(key) ?? { value: make(key) };
    known.set(key, found);
    return found.value;
  };
}
