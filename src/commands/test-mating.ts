/** `pinfeather figures test-mating`: which bird, which allele, which mate, and how many clean chicks clear it. */
import {testMatingTable} from '../findings/heredity-figures.ts'
import type {FiguresTable} from '../findings/figures.ts'
import {WORTH_A_LOSS} from '../findings/mating-forecast.ts'
import type {Findings} from '../findings/study.ts'
import {testMatingPlan, type TestMatingPlan} from '../findings/test-mating-plan.ts'
import {unwantedInBook, type UnwantedAlleles} from '../findings/unwanted-alleles.ts'
import type {Among} from '../findings/chick-scores.ts'
import type {Bird, Locus, Logbook} from '../logbook/book.ts'
import {chance} from '../pages/chance-words.ts'
import {burdenWords} from '../pages/harm-words.ts'
import {listWords, sentence} from '../pages/numbers.ts'
import {amongWords, mateWords, ordinaryWords} from '../pages/test-mate-words.ts'
import {near, orNear} from '../records/near.ts'
import {mateGenotype} from './mate-genotype.ts'
import {Refusal} from './refusal.ts'

export interface TestMatingQuestion {
  readonly bird: Bird
  /** null: stated by its genotype */
  readonly mate: Bird | null
  readonly mateGenotype: string
  readonly locus: Locus | null
  /** as the trade writes it */
  readonly allele: string | undefined
  readonly among: Among
  readonly limit: number
}

export interface TestMatingAnswer {
  readonly table: FiguresTable
  readonly locus: Locus
  readonly warnings: readonly string[]
  readonly said: string
}

/** So near to certain counts as known. */
const CERTAIN = 1 - 1e-9

/** @throws {Refusal} in one sentence, before any table, where nothing can be told */
export function testMatingAnswer(question: TestMatingQuestion, findings: Findings): TestMatingAnswer {
  const {bird, mate, among, limit} = question, {book, heredity} = findings, asked = askedOf(question, findings), {locus} = asked
  const carried = asked.unwanted.map(allele => ({allele, chance: heredity.carries(bird, locus, allele)})), name = written(locus, asked.unwanted)
  if (carried.every(each => each.chance === 0)) throw new Refusal(`${bird.band} does not carry ${name}, as far as the records tell: there is nothing to test.`)
  const sure = carried.find(each => each.chance >= CERTAIN)
  if (sure) throw new Refusal(`${bird.band} carries ${written(locus, [sure.allele])} for certain: no number of clean chicks clears it.`)

  const group = heredity.groupOf(locus), stated = mate ? null : mateGenotype(question.mateGenotype, group.loci, bird.sex === 'male' ? 'female' : 'male', book)
  const plan = testMatingPlan({bird, locus, alleles: asked.unwanted, mate: mate ?? stated?.genotype ?? [], among, limit}, heredity, findings.pedigree)
  if (!plan) throw new Refusal(whyUntold(question, asked, findings))
  const advice = findings.testMates.of({...asked, trait: plan.trait}, bird.sex)
  return {
    table: testMatingTable(plan), locus,
    warnings: [
      ...(stated && stated.says !== '' ? [stated.says] : []),
      ...(plan.lost >= WORTH_A_LOSS ? [`Of the eggs of this pair ${chance(plan.lost)} would never hatch, by what is known of it. ${sentence(ordinaryWords('lethal'))}`] : advice.kind === 'ordinary' && advice.because === 'welfare' ? [sentence(ordinaryWords(advice.because))] : []),
      ...[bird, mate].flatMap(each => (each ? burdenCaution(each, asked, findings) : [])),
    ],
    said: saidOf(plan, name, bird, limit, among),
  }
}

/** That half the test chicks will have what kills or harms, of a bird likelier to carry it than not; and what is known of it. */
function burdenCaution(bird: Bird, asked: UnwantedAlleles, {book, pairHarm}: Findings): readonly string[] {
  const burdens = pairHarm.burdensOf(bird).filter(({locus, allele, carries, ifScored}) => (ifScored || carries > 0.5) && !(locus === asked.locus && asked.unwanted.includes(allele)))
  const known = [...new Set(burdens.flatMap(({locus}) => book.loci.get(locus.symbol)?.known?.cautions ?? []).filter(({about}) => about !== 'breeding').map(({says}) => says))]
  return burdens.length === 0 ? [] : [`${bird.band} ${burdenWords(burdens)}, and half of its test chicks can be expected to have it too: take the chicks it has anyway, or its DNA, rather than hatch more.${known.length === 0 ? '' : ` ${known.join(' ')}`}`]
}

/** What counts against the bird, and whether any number clears it. */
function saidOf({trait, shows, sexes, chicks}: TestMatingPlan, name: string, {band}: Bird, limit: number, among: Among): string {
  const [only] = sexes, seen = among === 'all' && sexes.length === 1 ? `${only === 'male' ? 'sons' : 'daughters'}, for they alone tell it` : among === 'all' ? 'chicks' : among
  const counts = shows.length === 0 ? '' : `Tested for ${name}. Looked at: ${seen}. Against it speaks ${trait.name.toLowerCase()} ${listWords(shows, 'or')}; misscoring and how often a carrier shows it are in the figures.\n`
  return `${counts}${chicks === null ? `No number of clean chicks of this mate brings the chance that ${band} carries ${name} down to ${limit * 100}%.\n` : ''}`
}

function whyUntold({bird, among}: TestMatingQuestion, asked: UnwantedAlleles, {book, heredity, testMates}: Findings): string {
  const {locus} = asked, name = written(locus, asked.unwanted), group = heredity.groupOf(locus)
  const best = (of: Among | undefined) => group.traits.filter(trait => trait.loci.includes(locus)).map(trait => testMates.of({...asked, trait}, bird.sex, of))
  const there = best(among).find(advice => advice.kind === 'mate')
  if (there) return `This mate would hide ${name}: none of its chicks could show it. Mate ${bird.band} to ${mateWords(there, locus, bird.sex, book)}, and look at the ${amongWords(there)}.`
  const burden = best(among).find(advice => advice.kind === 'ordinary')
  if (burden) return `This mate would hide ${name}: none of its chicks could show it. ${sentence(ordinaryWords(burden.because))}`
  const other = among === 'all' ? undefined : best(undefined).find(advice => advice.kind === 'mate')
  if (other) return `The ${among} cannot show ${name} here; look at the ${amongWords(other)}.`
  const carries = asked.unwanted.reduce((sum, allele) => sum + heredity.carries(bird, locus, allele), 0)
  if (bird.sex === 'female' && locus.on === 'Z' && carries > 0.01 && carries < 0.99) return among === 'daughters' ? `A hen hands her daughters nothing at ${locus.symbol}, which is on the Z: look at the sons.` : `${bird.band}’s own look hides what she has at ${locus.symbol}, and the sons of this mate cannot tell it: take a cock that hides neither ${name} nor the look by another locus.`
  return bird.sex === 'female' && locus.on === 'Z' ? `A hen has one allele at ${locus.symbol}, and her own look tells it.` : `No look of the chicks tells ${name}.`
}

/** The locus and the alleles asked about: those named, else what the breed must be rid of, else the likeliest that the bird may hide. */
function askedOf({bird, locus, allele}: TestMatingQuestion, findings: Findings): UnwantedAlleles {
  const {book} = findings, loci = locus ? [locus] : [...book.loci.values()].map(each => each.locus)
  if (loci.length === 0) throw new Refusal('No trait of the records names a locus.')
  if (allele !== undefined) {
    const [there, ...more] = loci.filter(({alleles}) => alleles.includes(allele)), all = loci.flatMap(({alleles}) => alleles)
    if (!there) throw new Refusal(`“${allele}” is no allele of ${listWords(loci.map(({symbol}) => symbol), 'or')}; ${orNear(near(allele, all), `there are ${all.join(', ')}`)}`)
    if (more.length > 0) throw new Refusal(`Say with --locus which one: ${[there, ...more].map(({symbol}) => symbol).join(', ')}.`)
    return {...traitAt(findings, there), unwanted: [there.alleles.indexOf(allele)]}
  }
  const found = loci.flatMap(each => defaultAt(each, bird, findings) ?? []), [only, ...more] = found
  if (!only) throw new Refusal(locus ? `${bird.band} hides nothing at ${locus.symbol} that its chicks could show.` : `${bird.band} hides nothing that its chicks could show.`)
  if (more.length > 0) throw new Refusal(`Say with --locus which one: ${found.map(each => each.locus.symbol).join(', ')}.`)
  return only
}

function defaultAt(locus: Locus, bird: Bird, findings: Findings): UnwantedAlleles | null {
  const {book, heredity, hidden, testMates} = findings
  const carried = (alleles: readonly number[]): readonly number[] => alleles.filter(allele => heredity.carries(bird, locus, allele) > 0)
  const [wanted] = unwantedAt(book, locus, findings)
  if (wanted) {
    const {told, there} = {told: testMates.of(wanted, bird.sex), there: carried(wanted.unwanted)}
    const tellable = told.kind === 'mate' ? there.filter(allele => told.alleles.includes(allele)) : there
    if (tellable.length > 0) return {...wanted, unwanted: tellable}
  }
  const open = hidden(bird).find(each => each.locus === locus)?.open.find(({probability, allele}) => probability > 0 && probability < 1 && wanted?.unwanted.includes(allele) !== false)
  return open ? {...traitAt(findings, locus), unwanted: [open.allele]} : null
}

/** Traits of which something is wanted, required ones first. */
const unwantedAt = ({traits}: Logbook, locus: Locus, {allelesOfBook}: Findings): readonly UnwantedAlleles[] =>
  traits.flatMap(trait => unwantedInBook(trait, allelesOfBook)).filter(each => each.locus === locus).toSorted((a, b) => Number(b.trait.required) - Number(a.trait.required))

function traitAt({heredity}: Findings, locus: Locus): Pick<UnwantedAlleles, 'trait' | 'locus'> {
  const trait = heredity.groupOf(locus).traits.find(({loci}) => loci.includes(locus))
  if (!trait) throw new Refusal(`No trait says what ${locus.symbol} looks like, so no chick can tell.`)
  return {trait, locus}
}

const written = ({alleles}: Locus, numbers: readonly number[]): string => listWords(numbers.map(allele => alleles[allele] ?? ''), 'or')
