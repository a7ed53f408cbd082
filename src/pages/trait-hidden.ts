/** Who may hide what is not wanted: how near the breeders are to being rid of it, every living bird that may carry it, and the test that would tell. */
import type {Fixation} from '../findings/fixation.ts'
import type {LivingCarriers} from '../findings/living-carriers.ts'
import type {Findings} from '../findings/study.ts'
import type {ThrowBacks} from '../findings/throw-backs.ts'
import {looksRight} from '../findings/wanted-look.ts'
import type {UnwantedAlleles} from '../findings/unwanted-alleles.ts'
import type {Logbook, Trait} from '../logbook/book.ts'
import {AS_GOOD_AS, chance} from './chance-words.ts'
import {birdPath} from './links.ts'
import {figured, listWords, NOTHING, rounded, sentence} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import {birdWord} from './sex-words.ts'
import {stepWords} from './step-words.ts'
import {bandCell} from './trait-segregation.ts'

export interface HiddenAtLocus {
  readonly words: readonly string[]
  /** the likeliest */
  readonly birds: Table | null
  /** the rest in a line, or empty */
  readonly others: readonly {readonly text: string; readonly link: string; readonly says: string}[]
  readonly test: string
  /** `Exact.` */
  readonly how: string
}

/** Birds with a row of their own. */
const MOST_ROWS = 20

/** `p+`, `s+ or s^al` */
export const unwantedWords = ({locus, unwanted}: UnwantedAlleles): string => listWords(unwanted.map(allele => locus.alleles[allele] ?? ''), 'or')

export function hiddenOf(trait: Trait, findings: Findings): readonly HiddenAtLocus[] {
  const back = findings.throwBacks.find(each => each.trait === trait)
  return findings.livingCarriers.filter(each => each.trait === trait).map(carriers => {
    const fixation = findings.fixation.find(each => each.trait === trait && each.locus === carriers.locus)
    return {
      words: [...(fixation ? [fixationWords(fixation)] : []), ...(back ? [throwBackWords(back)] : []), carriersWords(carriers)],
      birds: carriers.birds.length === 0 ? null : carriersTable(carriers, findings.book, fixation),
      others: carriers.birds.slice(MOST_ROWS).map(({bird, carries}) => ({text: bird.band, link: birdPath(bird), says: chance(carries)})), test: testWords(carriers),
      how: carriers.exact && (fixation?.exact ?? true) && (back?.exact ?? true) ? 'Exact.' : 'Approximate.',
    }
  })
}

/** The joint chance, which is not the product of single ones. */
export function fixationWords(fixation: Fixation): string {
  const {birds, clean, carriers, inTheWay, slack} = fixation, allele = unwantedWords(fixation)
  if (birds === 0) return 'No living breeder of the new breed is on record.'
  const doubt = slack > 0 ? ' The records contradict themselves here, so one score in a thousand is taken to be wrong.' : '', sure = inTheWay.filter(each => each.carries > AS_GOOD_AS)
  if (clean > AS_GOOD_AS) return `That none of the ${figured(birds, 'living breeder')} carries ${allele} is as good as certain: ${chance(clean)}.${doubt}`
  const expected = `about ${rounded(carriers, 1)} of them ${rounded(carriers, 1) === '1.0' ? 'is' : 'are'} to be expected to carry it`
  if (sure.length > 0) return `${listWords(sure.slice(0, 3).map(({bird}) => bird.band))}${sure.length > 3 ? ` and ${sure.length - 3} more` : ''} of the ${figured(birds, 'living breeder')} ${sure.length === 1 ? 'carries' : 'carry'} ${allele} for certain; ${expected}.${doubt}`
  return `The chance that none of the ${figured(birds, 'living breeder')} carries ${allele} is ${chance(clean)}, all taken together; ${expected}.${doubt}`
}

export function throwBackWords({share, chicks, expected}: ThrowBacks): string {
  if (share <= 0) return 'From the pens as they stand no chick should throw back.'
  const many = expected === null ? '' : `: about ${expected < 0.1 ? 'none' : rounded(expected, 1)} in ${figured(chicks ?? 0, 'chick')}, as many as the season gave`
  return `From the pens as they stand ${chance(share)} of the chicks will show a look that is not wanted${many}.`
}

function carriersWords(carriers: LivingCarriers): string {
  const {birds, showing} = carriers, allele = unwantedWords(carriers)
  const shown = showing.length === 0 ? '' : ` ${figured(showing.length, 'more living bird shows', 'more living birds show')} it.`
  if (birds.length === 0) return `No living bird of the new breed is likely to hide ${allele}.${shown}`
  const sure = birds.filter(({carries}) => carries > AS_GOOD_AS).length
  return `${sentence(figured(birds.length, 'living bird'))} may hide ${allele}${sure === 0 ? '' : `, ${sure} of them for certain`}; the likeliest first.${shown}`
}

function carriersTable(carriers: LivingCarriers, {project, asOf}: Logbook, fixation: Fixation | undefined): Table {
  const inTheWay = new Map(fixation?.inTheWay.map(each => [each.bird, each] as const))
  return {
    caption: `Living birds that may hide ${unwantedWords(carriers)}`,
    columns: [{head: 'Bird'}, {head: 'Carries', number: true}, {head: 'Chicks to clear', number: true}, {head: 'If not bred from', number: true}, {head: 'What'}],
    rows: carriers.birds.slice(0, MOST_ROWS).map(({bird, carries, breeder, testChicks}): readonly Cell[] => {
      const without = inTheWay.get(bird)
      return [bandCell(bird), chance(carries), carries > AS_GOOD_AS ? 'a carrier' : testChicks === null ? NOTHING : String(testChicks), without ? chance(without.ifDropped) : NOTHING,
        `${stepWords(bird)} ${birdWord(bird, project.species, asOf)}${breeder ? ', breeding' : ''}`]
    }),
  }
}

function testWords({birds, locus, trait}: LivingCarriers): string {
  const first = birds.find(({carries, testChicks}) => testChicks !== null && carries <= AS_GOOD_AS)
  if (!first || first.testChicks === null) return ''
  const off = trait.states.filter(state => looksRight(trait, first.bird.sex, state) === false), [only] = off, shows = only !== undefined && off.length === 1 ? only : 'what is not wanted'
  if (locus.on === 'Z') return `His daughters, whatever hen they are of, would tell: ${figured(first.testChicks, 'daughter')}, all as wanted, would leave ${first.bird.band} one chance in a hundred.`
  return `Mated to a bird that shows ${shows}, ${first.bird.band} would need ${figured(first.testChicks, 'chick')}, all as wanted, to leave one chance in a hundred; one that is not settles it at once, if it was scored rightly. Test chicks are chicks: hatch none without a place for it.`
}
