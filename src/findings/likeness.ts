import type {Bird, Logbook, Trait} from '../logbook/book.ts'
import {parentOffspring, type ParentAndOffspring, type ParentOffspring} from '../statistics/parent-offspring.ts'
import {lineValues, type LineValue} from './contemporaries.ts'
import {grouped} from './grouped.ts'

/** How like their parents the chicks are in one measured trait. */
export interface Likeness {
  readonly trait: Trait
  readonly parents: 'both' | 'sire' | 'dam'
  readonly found: ParentOffspring
  /** families, each of one pair in one rearing, and their chicks */
  readonly families: number
  readonly chicks: number
  /** measured chicks whose parent is in doubt, was not measured or had no mate that was */
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

/**
 * Do heavy parents have heavy chicks?
 *
 *     h² = b of the family's mean on the mean of both parents        h² = 2b on one parent
 *
 * Chicks and parents as deviations from the mean of their own line, sex and rearing, families compared among those of one line reared together, so that neither season
 * nor strain enters. Each family is one row. Sires and dams apart too: what dams give over and above is the egg and the brooding.
 *
 * @see `parentOffspring`
 */
export function likeness(book: Logbook): readonly Likeness[] {
  return book.traits.filter(({kind}) => kind === 'measured').flatMap(trait => {
    const values = lineValues(book, trait), off = deviations(values)
    const chicks = values.flatMap(({bird, line}) => (bird?.hatch && bird.parentage.kind !== 'founder' && off.has(bird) ? [{bird, off: off.get(bird) ?? 0, rearing: `${bird.hatch.rearing} ${line}`}] : []))
    const of = (parents: Likeness['parents'], parentOf: (bird: Bird) => {readonly key: string; readonly value: number} | null): Likeness => {
      const told = chicks.flatMap(chick => {
        const parent = parentOf(chick.bird)
        return parent ? [{...chick, parent}] : []
      })
      const families = [...grouped(told, ({rearing, parent}) => `${rearing}\n${parent.key}`).values()].flatMap((own): ParentAndOffspring[] => {
        const [first] = own
        return first ? [{group: first.rearing, parent: first.parent.value, offspring: own.reduce((sum, each) => sum + each.off, 0) / own.length}] : []
      })
      return {trait, parents, found: parentOffspring(families, parents === 'both' ? 'both' : 'one'), families: families.length, chicks: told.length, leftOut: chicks.length - told.length}
    }
    const one = (side: 'sires' | 'dams') => ({parentage}: Bird) => {
      const parent = certain(parentage[side]), value = parent && off.get(parent)
      return parent && value !== undefined && value !== null ? {key: parent.id, value} : null
    }
    const [sire, dam] = [one('sires'), one('dams')]
    const both = (bird: Bird) => {
      const a = sire(bird), b = dam(bird)
      return a && b && {key: `${a.key} × ${b.key}`, value: (a.value + b.value) / 2}
    }
    return chicks.length === 0 ? [] : [of('both', both), of('sire', sire), of('dam', dam)]
  })
}
