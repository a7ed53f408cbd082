/**
 * An object whose values are worked when they are first asked for, and then kept. What nobody asks for is never worked.
 *
 * @param work how each value is worked; it may ask for others of the same object, though not for itself in turn
 * @example const flock = workedOnce<Flock>({birds: () => read(), count: () => flock.birds.length})
 */
export function workedOnce<T extends object>(work: {readonly [Name in keyof T]: () => T[Name]}): T {
  const all = {} as T
  for (const name of Object.keys(work) as (keyof T)[]) {
    Object.defineProperty(all, name, {
      enumerable: true, configurable: true,
      get() {
        const value = work[name]()
        Object.defineProperty(all, name, {enumerable: true, value})
        return value
      },
    })
  }
  return all
}
