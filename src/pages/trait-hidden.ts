/** Who may hide what is not wanted: how near the breeders are to being rid of it, every living bird that may carry it, and the test that would tell. */
import type {Fixation} from '../findings/fixation.ts'
import type {LivingCarriers} from '../findings/living-carriers.ts'
import type {Findings} from '../findings/study.ts'
import {TEST_LIMIT, type TestAdvice} from '../findings/test-mates.ts'
import type {ThrowBacks} from '../findings/throw-backs.ts'
import type {UnwantedAlleles} from '../findings/unwanted-alleles.ts'
import type {Bird, Trait} from '../logbook/book.ts'
import {AS_GOOD_AS, chance} from './chance-words.ts'
import {birdPath} from './links.ts'
import {figured, listWords, NOTHING, rounded, sentence} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import {birdWord} from './sex-words.ts'
import {stepWords} from './step-words.ts'
import {mateWords, oneOf, ordinaryWords} from './test-mate-words.ts'
import {bandCell} from './trait-segregation.ts'

export interface HiddenAtLocus {
  readonly words: readonly string[]
  /** the likeliest */
  readonly birds: Table | null
  /** the rest in a line, or empty */
  readonly others: readonly {readonly text: string; readonly link: string; readonly says: string}[]
  /** some bird can be cleared by a mating */
  readonly clears: boolean
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
      birds: carriers.birds.length === 0 ? null : carriersTable(carriers, findings, fixation),
      others: carriers.birds.slice(MOST_ROWS).map(({bird, carries}) => ({text: bird.band, link: birdPath(bird), says: chance(carries)})), test: testWords(carriers, findings), clears: clears(carriers, findings),
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
  // as many for certain say as much
  const isSaid = rounded(carriers, 1) === rounded(sure.length, 1), expected = `about ${rounded(carriers, 1)} of them ${rounded(carriers, 1) === '1.0' ? 'is' : 'are'} to be expected to carry it`
  if (sure.length > 0) return `${listWords(sure.slice(0, 3).map(({bird}) => bird.band))}${sure.length > 3 ? ` and ${sure.length - 3} more` : ''} of the ${figured(birds, 'living breeder')} ${sure.length === 1 ? 'carries' : 'carry'} ${allele} for certain${isSaid ? '' : `; ${expected}`}.${doubt}`
  return `The chance that none of the ${figured(birds, 'living breeder')} carries ${allele} is ${chance(clean)}, all taken together; ${expected}.${doubt}`
}

function throwBackWords({share, chicks, expected}: ThrowBacks): string {
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

const clears = (carriers: LivingCarriers, {testMates}: Findings): boolean => carriers.birds.some(({bird, carries}) => carries <= AS_GOOD_AS && testMates.of(carriers, bird.sex).kind === 'mate')

function carriersTable(carriers: LivingCarriers, findings: Findings, fixation: Fixation | undefined): Table {
  const {testMates, book: {project, asOf}} = findings, isTested = clears(carriers, findings)
  const inTheWay = new Map(fixation?.inTheWay.map(each => [each.bird, each] as const))
  return {
    caption: `Living birds that may hide ${unwantedWords(carriers)}`,
    columns: [{head: 'Bird'}, {head: 'Carries', number: true}, ...(isTested ? [{head: 'Chicks to clear', number: true}] : []), {head: 'If not bred from', number: true}, {head: 'What'}],
    rows: carriers.birds.slice(0, MOST_ROWS).map(({bird, carries, breeder}): readonly Cell[] => {
      const without = inTheWay.get(bird), testChicks = isTested && carries <= AS_GOOD_AS ? testMates.clearing(carriers, bird)?.chicks ?? null : null
      return [bandCell(bird), chance(carries), ...(isTested ? [carries > AS_GOOD_AS ? 'a carrier' : testChicks === null ? untested(testMates.of(carriers, bird.sex).kind, bird, carries) : String(testChicks)] : []), without ? chance(without.ifDropped) : NOTHING,
        `${stepWords(bird)} ${birdWord(bird, project.species, asOf)}${breeder ? ', breeding' : ''}`]
    }),
  }
}

/** Why no number stands there. */
const untested = (kind: TestAdvice['kind'], {sex}: Bird, carries: number): string => (kind !== 'own-look' || carries <= TEST_LIMIT ? NOTHING : sex === 'unknown' ? 'sex unknown' : 'hidden: her sons tell')

/** The mate, the chicks to look at and their number, for the likeliest bird that can be tested and carries nothing that kills or harms; or that no bird is to be mated for it. */
function testWords(carriers: LivingCarriers, {testMates, book, pairHarm}: Findings): string {
  const {locus} = carriers, isBurdened = (bird: Bird): boolean => pairHarm.burdensOf(bird).some(burden => burden.locus !== locus)
  const open = carriers.birds.filter(({carries, bird}) => carries <= AS_GOOD_AS && !isBurdened(bird))
  for (const {bird} of open) {
    const advice = testMates.of(carriers, bird.sex), clearing = testMates.clearing(carriers, bird), chicks = clearing?.chicks ?? null
    if (advice.kind === 'ordinary') return `At ${locus.symbol} ${ordinaryWords(advice.because)}`
    if (advice.kind !== 'mate' || !clearing || chicks === null || chicks === 0) continue
    const allele = unwantedWords({...carriers, unwanted: advice.alleles}), look = listWords(clearing.shows, 'or'), rest = carriers.unwanted.filter(each => !advice.alleles.includes(each))
    return `Test for ${allele} at ${locus.symbol}: mated to ${mateWords(advice, locus, bird.sex, book)}, ${bird.band} would need ${figured(chicks, oneOf(advice))}, none scored ${look}, to leave one chance in a hundred. Misscoring, and how often a carrier shows it, are in the number. One scored ${look} settles it, if it was scored rightly.${rest.length === 0 ? '' : ` No look of the chicks tells ${unwantedWords({...carriers, unwanted: rest})}.`} Test chicks are chicks: hatch none without a place for it.`
  }
  return ''
}
