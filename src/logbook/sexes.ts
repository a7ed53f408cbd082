/** The sex of birds that were never sexed in words, but stand in a pen as males or females or are named as a sire or a dam. */
import type {Bird, Pen} from './book.ts'
import type {Open} from './open.ts'


/** Every bird that the records use as a male or a female: in pens, and as a stated sire or dam. */
function usesAsParent(pens: readonly Pen[], birds: readonly Bird[]): ReadonlyMap<Bird, ReadonlySet<'male' | 'female'>> {
  const uses = new Map<Bird, Set<'male' | 'female'>>()
  const use = (bird: Bird, as: 'male' | 'female') => {
    const known = uses.get(bird)
    if (known) known.add(as)
    else uses.set(bird, new Set([as]))
  }
  for (const pen of pens) {
    for (const {bird} of pen.males) use(bird, 'male')
    for (const {bird} of pen.females) use(bird, 'female')
  }
  const seen = new Set<Bird['parentage']>()
  for (const {parentage} of birds) {
    if (seen.has(parentage)) continue
    seen.add(parentage)
    for (const {bird} of parentage.sires) use(bird, 'male')
    for (const {bird} of parentage.dams) use(bird, 'female')
  }
  return uses
}

/** A bird of unknown sex that is used on one side only is of that sex. */
export function inferSexes(birds: readonly Open<Bird>[], pens: readonly Pen[]): void {
  const uses = usesAsParent(pens, birds)
  for (const bird of birds) {
    const [only, other] = uses.get(bird) ?? []
    if (bird.sex === 'unknown' && only && !other) bird.sex = only
  }
}
