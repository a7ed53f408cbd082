import type {Bird, Trait} from '../logbook/book.ts'
import type {Census} from './census.ts'
import {countedValue} from './counted-value.ts'
import type {Heredity} from './heredity.ts'
import {alwaysHas} from './look-tells.ts'
import {unwantedInBook, type AllelesOfBook, type UnwantedAlleles} from './unwanted-alleles.ts'

/** Living birds and one locus with unwanted alleles. */
export interface LivingCarriers extends UnwantedAlleles {
  /** those that may carry one and were not seen to show it, the likeliest first */
  readonly birds: readonly LivingCarrier[]
  /** those scored with a look that no bird has without one: they hide nothing */
  readonly showing: readonly Bird[]
  readonly exact: boolean
}

export interface LivingCarrier {
  readonly bird: Bird
  /** chance that it carries an unwanted allele */
  readonly carries: number
  readonly breeder: boolean
}

/** A chance below this is not worth a name. */
const WORTH_A_NAME = 0.0005

/**
 * Which living birds of the new breed may hide an allele that the standard does not want?
 *
 * @param traits those asked about; one entry for each locus at which a trait has unwanted alleles
 */
export function livingCarriers(traits: readonly Trait[], {alive, breeders}: Census, heredity: Heredity, alleles: AllelesOfBook): readonly LivingCarriers[] {
  const breeding = new Set(breeders), birds = alive.filter(bird => bird.step.kind !== 'strain')
  return traits.flatMap(trait => unwantedInBook(trait, alleles)).map((asked): LivingCarriers => {
    const {trait, locus, unwanted} = asked
    const told = new Map<string, boolean>()
    const showing = birds.filter(bird => {
      const value = countedValue(bird, trait), key = `${String(value)}\n${bird.sex}`
      if (typeof value !== 'string') return false
      const shows = told.get(key) ?? alwaysHas(trait, value, bird.sex, locus, unwanted)
      told.set(key, shows)
      return shows
    })
    const found = birds.filter(bird => !showing.includes(bird)).map(bird => ({bird, of: heredity.of(bird, locus)}))
    return {
      ...asked, showing, exact: found.every(({of}) => of.exact),
      birds: found.map(({bird, of}): LivingCarrier => {
        const carries = of.genotypes.reduce((sum, {is, probability}) => sum + (is.some(allele => allele !== null && unwanted.includes(allele)) ? probability : 0), 0)
        return {bird, carries, breeder: breeding.has(bird)}
      }).filter(({carries}) => carries >= WORTH_A_NAME).sort((a, b) => Math.round((b.carries - a.carries) * 1e6) || (a.bird.id < b.bird.id ? -1 : 1)),
    }
  })
}
