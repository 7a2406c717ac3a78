/** Rows and items by a key. Map.groupBy came with Node 21. */

/** In the order of the first of each key. */
export function groupedBy<T>(things: readonly T[], key: (thing: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const thing of things) {
    const known = groups.get(key(thing));
    if (known) known.push(thing);
    else groups.set(key(thing), [thing]);
  }
  return groups;
}
