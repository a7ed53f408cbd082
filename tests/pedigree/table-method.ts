/** The slow twin of `coancestry`: kinship by its definition, one pair at a time, from the oldest bird down. Kept apart from the code it holds. */
import type {Animal, Pedigree, Transmission} from '../../src/pedigree/pedigree.ts'

export interface Table {
  kinship(a: number, b: number): number
  inbreeding(animal: number): number
  /** F from each of the matings an animal may come from */
  each(animal: number): readonly number[]
}

/** A parent outside the book is spoken of by its base: `base 0`. */
type Who = number | `base ${number}`

export function tableMethod({animals, bases, kin}: Pedigree, transmission: Transmission = 'autosome'): Table {
  const age = (animal: number, seen: readonly number[] = []): number => {
    if (seen.includes(animal)) throw new Error('loop')
    return 1 + Math.max(0, ...parentsOf(animal).map(parent => age(parent, [...seen, animal])))
  }
  const ages = new Map<number, number>()
  const olderFirst = (animal: number) => ages.get(animal) ?? ages.set(animal, age(animal)).get(animal) ?? 0
  const known = new Map<string, number>()

  function parentsOf(animal: number): number[] {
    const {matings = [], oneOf = [], damStandIn} = animals[animal] ?? {}
    return [...matings.flatMap(({sire, dam}) => [sire, dam]), ...oneOf.map(each => each.animal), damStandIn ?? null].filter(each => each !== null)
  }
  const isFounder = (animal: Animal) => animal.matings.length === 0 && !animal.oneOf
  const baseOf = (who: Who): number | null => (typeof who === 'string' ? Number(who.slice(5)) : animals[who]?.base ?? null)

  function between(a: Who, b: Who): number {
    const key = a < b ? `${a} ${b}` : `${b} ${a}`
    const before = known.get(key)
    if (before !== undefined) return before
    const kinship = work(a, b)
    known.set(key, kinship)
    return kinship
  }
  function work(a: Who, b: Who): number {
    if (typeof a === 'number' && a === b) return withItself(a)
    // expand whichever stands later in descent
    const rank = (who: Who) => (typeof who === 'string' ? 0 : olderFirst(who))
    const [older, younger] = rank(a) <= rank(b) ? [a, b] : [b, a]
    const chick = typeof younger === 'number' ? animals[younger] : undefined
    if (typeof younger !== 'number' || chick === undefined || isFounder(chick)) return ofFounders(older, younger)
    if (chick.oneOf) return chick.oneOf.reduce((sum, {animal, chance}) => sum + chance * between(animal, older), 0)
    const side = (parent: number | null, base: number | null = null) =>
      (parent !== null ? between(parent, older) : base !== null ? between(`base ${base}`, older) : 0)
    const bySire = chick.matings.reduce((sum, {sire, chance}) => sum + chance * side(sire, chick.outside?.sire), 0)
    const byDam = chick.damStandIn !== undefined ? between(chick.damStandIn, older)
      : chick.matings.reduce((sum, {dam, chance}) => sum + chance * side(dam, chick.outside?.dam), 0)
    if (transmission === 'dam line') return byDam
    if (transmission === 'autosome' || chick.sex === 'male') return (bySire + byDam) / 2
    return chick.sex === 'female' ? bySire : bySire * 0.75 + byDam * 0.25
  }
  function ofFounders(a: Who, b: Who): number {
    const stated = kin.find(({animals: pair}) => (pair[0] === a && pair[1] === b) || (pair[0] === b && pair[1] === a))
    if (stated) return stated.kinship
    const around = (base: number | null): number[] => (base === null ? [] : [base, ...around(bases[base]?.within ?? null)])
    const shared = around(baseOf(a)).filter(base => around(baseOf(b)).includes(base))
    return Math.max(0, ...shared.map(base => bases[base]?.kinship ?? 0))
  }
  function withItself(animal: number): number {
    const {sex = 'unknown', oneOf} = animals[animal] ?? {}
    if (oneOf) {
      const none = 1 - oneOf.reduce((sum, {chance}) => sum + chance, 0)
      const unrelated = unknownBird(sex)
      return oneOf.reduce((sum, {animal: each, chance}) => sum + chance * between(each, each), none * unrelated)
    }
    if (transmission === 'dam line') return 1
    const two = (1 + inbreeding(animal)) / 2
    if (transmission === 'autosome' || sex === 'male') return two
    return sex === 'female' ? 1 : (1 + two) / 2
  }
  const unknownBird = (sex: Animal['sex']) => (transmission === 'autosome' ? 0.5 : transmission === 'dam line' || sex === 'female' ? 1 : sex === 'male' ? 0.5 : 0.75)
  /** what reaches an animal from another by all ways down */
  function from(animal: number, other: number): number {
    if (animal === other) return 1
    const {matings = [], oneOf, damStandIn, sex = 'unknown'} = animals[animal] ?? {}
    if (oneOf) return oneOf.reduce((sum, one) => sum + one.chance * from(one.animal, other), 0)
    const bySire = matings.reduce((sum, {sire, chance}) => sum + (sire === null ? 0 : chance * from(sire, other)), 0)
    const byDam = damStandIn !== undefined ? from(damStandIn, other) : matings.reduce((sum, {dam, chance}) => sum + (dam === null ? 0 : chance * from(dam, other)), 0)
    if (transmission === 'dam line') return byDam
    return transmission === 'autosome' || sex === 'male' ? (bySire + byDam) / 2 : sex === 'female' ? bySire : bySire * 0.75 + byDam * 0.25
  }
  const unseen = (base: number | null = null) => (base === null ? null : `base ${base}` as const)
  function each(animal: number): number[] {
    const {matings = [], outside, oneOf, damStandIn: hen} = animals[animal] ?? {}
    if (oneOf) return oneOf.map(one => inbreeding(one.animal))
    return matings.map(({sire, dam}) => {
      const by = sire ?? unseen(outside?.sire)
      if (hen !== undefined && by !== null && !animals[hen]?.oneOf) return between(by, hen)
      const of = dam ?? unseen(outside?.dam)
      // a sire out of the one unknown hen himself: what he has of her meets her again
      const again = hen === undefined || sire === null ? 0 : from(sire, hen)
      if (by === null) return 0
      if (of === null) return again * unknownBird('female')
      return between(by, of) + (again === 0 || hen === undefined ? 0 : again * (between(of, of) - between(hen, of)))
    })
  }
  function inbreeding(animal: number): number {
    const bird = animals[animal]
    if (!bird) throw new Error(`no animal ${animal}`)
    if (isFounder(bird)) return bird.base === null ? 0 : bases[bird.base]?.inbreeding ?? 0
    const chances = (bird.oneOf ?? bird.matings).map(({chance}) => chance)
    return each(animal).reduce((sum, f, index) => sum + f * (chances[index] ?? 0), 0)
  }
  return {kinship: between, inbreeding, each}
}
