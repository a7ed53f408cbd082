/** Things under the keys they belong to, in the order both first appear. A thing whose key is undefined belongs nowhere. */
export function grouped<Thing, Key>(things: Iterable<Thing>, keyOf: (thing: Thing) => Key | undefined): Map<Key, Thing[]> {
  const groups = new Map<Key, Thing[]>()
  for (const thing of things) {
    const key = keyOf(thing)
    if (key === undefined) continue
    const known = groups.get(key)
    if (known) known.push(thing)
    else groups.set(key, [thing])
  }
  return groups
}
