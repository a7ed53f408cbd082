import type {Bird, Logbook, Trait} from '../logbook/book.ts'
import {FEWEST_FAMILIES} from '../statistics/family-bootstrap.ts'
import {levelsAcrossClasses} from '../statistics/levels-across-classes.ts'
import {parentOffspring, type ParentAndOffspring, type ParentOffspring} from '../statistics/parent-offspring.ts'
import {lineValues, type LineValue} from './contemporaries.ts'
import {grouped} from './grouped.ts'

/** How like their parents the chicks are in one measured trait. */
export interface Likeness {
  readonly trait: Trait
  readonly parents: 'both' | 'sire' | 'dam'
  /** `few` too where there are fewer than `FEWEST_FAMILIES` parents of a side, or as few comparisons */
  readonly found: ParentOffspring
  /** parents, or pairs, that were compared with others, each once however often it bred; and their chicks */
  readonly families: number
  readonly chicks: number
  /** cocks and hens among them; 0 where these are not asked about */
  readonly males: number
  readonly females: number
  /** measured chicks whose parent is in doubt, was not measured, had no mate that was, or whose chicks nobody else's were reared with */
  readonly leftOut: number
}

/** How far each bird stands from the mean of its line, sex and rearing, where another of it was measured. */
function deviations(values: readonly LineValue[]): ReadonlyMap<Bird, number> {
  const found = new Map<Bird, number>()
  for (const own of grouped(values, ({group, line}) => `${group} ${line}`).values()) {
    if (own.length < 2) continue
    const mean = own.reduce((sum, {value}) => sum + value, 0) / own.length
    for (const {bird, value} of own) if (bird) found.set(bird, value - mean)
  }
  return found
}

const certain = (parents: Bird['parentage']['sires']): Bird | null => {
  const [first] = parents
  return first && first.chance >= 1 - 1e-9 ? first.bird : null
}

/** A parent or pair of which chicks were measured. */
interface Told {
  readonly key: string
  readonly value: number
  readonly male: Bird | null
  readonly female: Bird | null
}

/**
 * Do heavy parents have heavy chicks?
 *
 *     h² = b of the family's mean on the mean of both parents        h² = 2b on one parent
 *
 * Chicks and parents as deviations from the mean of their own line, sex and rearing, families compared among those of one line reared together, so that neither season
 * nor strain enters. Each parent, or pair, is one row over all its rearings (`levelsAcrossClasses`): what its genes and its own luck did to it is the same in all of them, so
 * that a second hatch of the same birds says more of their chicks and nothing more of parents. Sires and dams apart too: what dams give over and above is the egg and the
 * brooding. Too few where fewer than five cocks or hens, or parents not linked with each other, leave less than the slope of five would.
 *
 * @see `parentOffspring`
 */
export function likeness(book: Logbook): readonly Likeness[] {
  return book.traits.filter(({kind}) => kind === 'measured').flatMap(trait => {
    const values = lineValues(book, trait), off = deviations(values)
    const chicks = values.flatMap(({bird, line}) => (bird?.hatch && bird.parentage.kind !== 'founder' && off.has(bird) ? [{bird, off: off.get(bird) ?? 0, rearing: `${bird.hatch.rearing} ${line}`}] : []))
    const of = (parents: Likeness['parents'], parentOf: (bird: Bird) => Told | null): Likeness => {
      const told = chicks.flatMap(chick => {
        const parent = parentOf(chick.bird)
        return parent ? [{...chick, parent}] : []
      })
      const known = new Map(told.map(({parent}) => [parent.key, parent])), levels = levelsAcrossClasses(told.map(each => ({name: each.parent.key, group: each.rearing, value: each.off})))
      const sets = [...grouped(levels, ({linked}) => String(linked)).values()].filter(own => own.length > 1), compared = sets.flat()
      const families = compared.map(({name, level, linked}): ParentAndOffspring => {
        const {value = NaN, male = null, female = null} = known.get(name) ?? {}
        return {group: String(linked), parent: value, offspring: level, ...(male && female ? {shared: [male.id, female.id]} : {})}
      })
      const count = (side: 'male' | 'female') => new Set(compared.flatMap(({name}) => known.get(name)?.[side] ?? [])).size, males = count('male'), females = count('female')
      const few = (parents !== 'dam' && males < FEWEST_FAMILIES) || (parents !== 'sire' && females < FEWEST_FAMILIES) || families.length - sets.length < FEWEST_FAMILIES - 1
      const seen = compared.reduce((sum, each) => sum + each.count, 0)
      return {
        trait, parents, found: few ? {kind: 'few', pairs: families.length} : parentOffspring(families, parents === 'both' ? 'both' : 'one'),
        families: families.length, chicks: seen, males, females, leftOut: chicks.length - seen,
      }
    }
    const one = (side: 'sires' | 'dams') => ({parentage}: Bird): Told | null => {
      const parent = certain(parentage[side]), value = parent && off.get(parent)
      return parent && value !== undefined && value !== null ? {key: parent.id, value, male: side === 'sires' ? parent : null, female: side === 'dams' ? parent : null} : null
    }
    const [sire, dam] = [one('sires'), one('dams')]
    const both = (bird: Bird): Told | null => {
      const a = sire(bird), b = dam(bird)
      return a && b && {key: `${a.key} × ${b.key}`, value: (a.value + b.value) / 2, male: a.male, female: b.female}
    }
    return chicks.length === 0 ? [] : [of('both', both), of('sire', sire), of('dam', dam)]
  })
}
