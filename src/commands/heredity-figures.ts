/** `pinfeather figures` of heredity: questions that must be told which birds, which locus, which looks. */
import {contradictionsAt} from '../findings/contradictions.ts'
import {hatchPlan} from '../findings/hatch-plan.ts'
import {forecastTable, genotypesTable, hatchSizeTable, type HeredityQuestion} from '../findings/heredity-figures.ts'
import type {FiguresTable} from '../findings/figures.ts'
import type {Findings} from '../findings/study.ts'
import type {Bird, Locus} from '../logbook/book.ts'
import {setAsideWords} from '../pages/set-aside-words.ts'
import {near, orNear} from '../records/near.ts'
import {birdOf, noSuchBird} from './bird-of.ts'
import {forecastToRead, type ToRead} from './forecast-to-read.ts'
import {Refusal} from './refusal.ts'
import {testMatingAnswer} from './test-mating.ts'
import {wantedChicks} from './wanted-chicks.ts'

/** What may be said beside the question. */
export interface HeredityAsked {
  readonly locus?: string
  readonly allele?: string
  readonly sire?: string
  readonly dam?: string
  readonly bird?: string
  readonly mate?: string
  readonly mateGenotype?: string
  readonly among?: 'sons' | 'daughters' | 'all'
  /** 0 to 1 */
  readonly error?: number
  readonly wanted?: string
  readonly atLeast?: number
  /** 0 to 1 */
  readonly chance?: number
}

export interface HeredityAnswer {
  readonly table: FiguresTable
  /** said on the error stream whatever the format */
  readonly warnings: readonly string[]
  /** where a reader on a terminal gets something else than the table */
  readonly toRead?: ToRead
  /** said beneath a table made to be read */
  readonly said: string
}

/** As the command line has it; which question each belongs to. */
const ASKED_WITH: Readonly<Record<keyof HeredityAsked, readonly [option: string, questions: readonly HeredityQuestion[]]>> = {
  locus: ['--locus', ['genotypes', 'test-mating']], sire: ['--sire', ['forecast', 'hatch-size']], dam: ['--dam', ['forecast', 'hatch-size']], bird: ['--bird', ['test-mating']],
  allele: ['--allele', ['test-mating']], mate: ['--mate', ['test-mating']], mateGenotype: ['--mate-genotype', ['test-mating']], among: ['--among', ['test-mating']], error: ['--error', ['test-mating']],
  wanted: ['--wanted', ['hatch-size']], atLeast: ['--at-least', ['hatch-size']], chance: ['--chance', ['hatch-size']],
}

/** Why these options do not go with the question, and null where they do. */
export function misplacedOption(question: string, asked: HeredityAsked): string | null {
  for (const [name, [option, questions]] of Object.entries(ASKED_WITH)) {
    if (asked[name as keyof HeredityAsked] !== undefined && !questions.some(each => each === question)) return `${option} is for figures ${questions.join(' and ')}.`
  }
  return null
}

/** @throws {Refusal} where the question cannot be asked so */
export function heredityAnswer(question: HeredityQuestion, findings: Findings, asked: HeredityAsked): HeredityAnswer {
  switch (question) {
    case 'genotypes': return genotypes(findings, asked)
    case 'forecast': return forecast(findings, asked)
    case 'test-mating': return testMating(findings, asked)
    case 'hatch-size': return hatchSize(findings, asked)
  }
}

function genotypes(findings: Findings, {locus: symbol}: HeredityAsked): HeredityAnswer {
  const locus = locusOf(findings, symbol, [...findings.book.loci.values()].map(each => each.locus))
  return {table: genotypesTable(findings, locus, findings.book.birds), warnings: contradictions(findings, [locus]), said: ''}
}

function forecast(findings: Findings, asked: HeredityAsked): HeredityAnswer {
  const found = forecastOfPair(findings, asked)
  return {table: forecastTable(found), toRead: forecastToRead(found, findings.ifScoredRight(found)), warnings: contradictions(findings, found.male.genotypes.map(({locus}) => locus)), said: ''}
}

function forecastOfPair(findings: Findings, {sire, dam}: HeredityAsked) {
  if (findings.heredity.groups.length === 0) throw new Refusal('No trait of the records names a locus, so nothing can be forecast.')
  const pair = {sire: named(findings, '--sire', sire), dam: named(findings, '--dam', dam)}
  if (pair.sire.sex !== 'male') throw new Refusal(`${pair.sire.band} is no male; the sire stands after --sire.`)
  if (pair.dam.sex !== 'female') throw new Refusal(`${pair.dam.band} is no female; the dam stands after --dam.`)
  const [found] = findings.forecasts([pair])
  if (!found) throw new Error('a pair without a forecast')
  return found
}

function testMating(findings: Findings, asked: HeredityAsked): HeredityAnswer {
  const bird = named(findings, '--bird', asked.bird), {among = 'all', error: limit = 0.01, allele} = asked
  if (bird.sex === 'unknown') throw new Refusal(`The sex of ${bird.band} is not known; a test mating needs it.`)
  if ((asked.mate === undefined) === (asked.mateGenotype === undefined)) throw new Refusal('Say with --mate which bird it is mated to, or with --mate-genotype of what genotype the mate is, such as p+/p+.')
  const mate = asked.mate === undefined ? null : named(findings, '--mate', asked.mate)
  if (mate && (mate.sex === bird.sex || mate.sex === 'unknown')) throw new Refusal(`${bird.band} and ${mate.band} are not known to be male and female.`)
  const known = locusInGenotype(findings, asked), locus = asked.locus === undefined ? known : locusOf(findings, asked.locus, [])
  const {table, warnings, said, locus: tested} = testMatingAnswer({bird, mate, mateGenotype: asked.mateGenotype ?? '', locus, allele, among, limit}, findings)
  return {table, said, warnings: [...contradictions(findings, [tested]), ...warnings]}
}

/** The one locus of which a mate's genotype names alleles; null where it names several or none. */
function locusInGenotype({book}: Findings, {mateGenotype = ''}: HeredityAsked): Locus | null {
  const words = mateGenotype.split(/[\s,/]+/), named = [...book.loci.values()].map(({locus}) => locus).filter(({alleles}) => alleles.some(allele => words.includes(allele))), [only] = named
  return only && named.length === 1 ? only : null
}

function hatchSize(findings: Findings, asked: HeredityAsked): HeredityAnswer {
  const {wanted, atLeast, chance = 0.95} = asked
  if (wanted === undefined || atLeast === undefined) throw new Refusal('Say with --wanted what the chicks must be, such as "comb pea, female", and with --at-least how many.')
  const {traits} = findings.book, chicks = wantedChicks(wanted, traits.filter(({shows, loci}) => shows.length > 0 && loci.length > 0)), found = forecastOfPair(findings, asked)
  const plan = hatchPlan(found, chicks, atLeast, chance, findings.book, findings.hatchResults.all)
  const uncounted = plan.stages.filter(({counted}) => counted === null).map(({stage}) => stage)
  return {
    table: hatchSizeTable(plan, atLeast, chance, found.exact), warnings: contradictions(findings, found.male.genotypes.map(({locus}) => locus)),
    said: `${plan.share <= 0 ? 'This mating gives no such chick.\n' : plan.chicks === null ? 'More than 2000 chicks would be needed, if any number gives them.\n' : uncounted.length > 0 ? `The eggs cannot be told: the records count no ${uncounted.join(' and no ')}.\n` : ''}${setAsideWords(findings.hatchResults.all.setAside).map(words => `${words}\n`).join('')}`,
  }
}

function named({book}: Findings, option: string, band: string | undefined): Bird {
  if (band === undefined) throw new Refusal(`Say with ${option} which bird, by its band.`)
  const bird = birdOf(book, band)
  if (!bird) throw new Refusal(noSuchBird(book, band))
  return bird
}

/** The locus that is named, else the only one there is. */
function locusOf({book}: Findings, symbol: string | undefined, among: readonly Locus[]): Locus {
  const symbols = among.map(each => each.symbol), [only] = among
  if (symbol === undefined) {
    if (only && among.length === 1) return only
    throw new Refusal(only ? `Say with --locus which one: ${symbols.join(', ')}.` : 'No trait of the records names a locus.')
  }
  const locus = book.loci.get(symbol)?.locus
  if (!locus) throw new Refusal(`No trait of the records names the locus ${symbol}; ${orNear(near(symbol, [...book.loci.keys()]), book.loci.size === 0 ? 'add it to a trait' : `there are ${[...book.loci.keys()].join(', ')}`)}`)
  return locus
}

/** So many of the records that are at fault are named. */
const NAMED = 5

/** Where the records cannot be right as they stand the figures go on, and this is said, with the birds whose records are at fault. */
function contradictions(findings: Findings, loci: readonly Locus[]): readonly string[] {
  const {heredity} = findings, groups = [...new Set(loci.map(locus => heredity.groupOf(locus)))].filter(group => heredity.worked(group).found.slack > 0)
  return groups.map(group => {
    const named = contradictionsAt(findings, group).slice(0, NAMED)
    return `The records contradict each other at ${group.loci.map(({symbol}) => symbol).join(', ')}: ${named.length === 0 ? '' : `${named.join('; ')}. Until that is mended `}one score or test in a thousand is taken to be wrong${named.length === 0 ? '' : ', which moves the figures of other birds too'}.`
  })
}
