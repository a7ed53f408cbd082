/** What a bird's parents may have given it of one allele, each with its chance; of several that may be the range. */
import type {Heredity} from '../findings/heredity.ts'
import type {Locus} from '../heredity/locus.ts'
import type {Bird, Parent} from '../logbook/book.ts'
import {AS_GOOD_AS, chance} from './chance-words.ts'
import {listWords, percent, percentSign} from './numbers.ts'

/** A parent counts as sure from this chance on. */
const SURE_PARENT = 1 - 1e-12
/** A chance below this is none, and one to have the allele twice below the second is not worth a word. */
const NONE = 0.0005, TWICE = 0.05
/** Of possible parents that have nothing else so many are named. */
const MOST_NAMED = 3

interface Carries {
  /** of having it at all, and of having nothing else */
  readonly once: number
  readonly only: number
}

/** `her sire 24-030 carries w with 10.8%, her dam 24-008 carries it with 14.2%` */
export function parentsWords(bird: Bird, locus: Locus, allele: number, his: string, heredity: Heredity): string {
  const {sires, dams, kind} = bird.parentage, symbol = locus.alleles[allele] ?? ''
  if (kind === 'founder') return `nothing is known of ${his} parents`
  const sides = locus.on === 'Z' && bird.sex === 'female' ? [['sire', sires] as const] : [['sire', sires] as const, ['dam', dams] as const]
  const told = sides.filter(([, parents]) => parents.length > 0)
    .map(([name, parents], place) => `${his} ${sideWords(name, parents, parents.map(parent => carriesOf(parent.bird, locus, allele, heredity)), place === 0 ? symbol : 'it')}`)
  return told.length === 0 ? `${his} parents are not in the book` : told.join(', ')
}

function carriesOf(bird: Bird, locus: Locus, allele: number, heredity: Heredity): Carries {
  const {genotypes} = heredity.of(bird, locus), sum = (has: (is: readonly (number | null)[]) => boolean): number => Math.min(1, genotypes.reduce((total, {is, probability}) => total + (has(is) ? probability : 0), 0))
  return {once: sum(is => is.includes(allele)), only: sum(is => is.every(each => each === allele || each === null))}
}

/** `sire 24-030 carries w with 10.8%`, `possible dams carry it`, `sire H20-02 is without w`, `dam D01 has only w` */
function sideWords(name: 'sire' | 'dam', parents: readonly Parent[], chances: readonly Carries[], allele: string): string {
  const [only] = parents, one = parents.length === 1 && only, low = Math.min(...chances.map(({once}) => once)), high = Math.max(...chances.map(({once}) => once))
  const who = one ? `${only.chance >= SURE_PARENT ? '' : 'likely '}${name} ${only.bird.band}` : `possible ${name}s`
  if (high < NONE) return `${who} ${one ? 'is' : 'are'} without ${allele}`
  if (chances.every(each => each.only > AS_GOOD_AS)) return `${who} ${one ? 'has' : 'have'} only ${allele === 'it' ? 'that' : allele}`
  const carries = `${who} ${one ? 'carries' : 'carry'} ${allele}`, twice = Math.max(...chances.map(each => each.only))
  const pure = parents.filter((_, place) => (chances[place]?.only ?? 0) > AS_GOOD_AS).map(({bird}) => bird.band)
  const twiceWords = twice < TWICE ? '' : one ? `, twice with ${chance(twice)}` : pure.length > 0 ? `, ${pure.length > MOST_NAMED ? `${pure.length} of them` : listWords(pure)} twice` : `, twice with up to ${chance(twice)}`
  return `${carries}${low > AS_GOOD_AS ? '' : ` with ${percent(low) === percent(high) ? chance(high) : low < NONE ? `up to ${chance(high)}` : `${percent(low)} to ${percentSign(high)}`}`}${twiceWords}`
}
