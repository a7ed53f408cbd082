/** How a trait is inherited: its loci in words, which genotypes show which look, and what a breeder ought to know of each locus. */
import {speaksOfLocus} from '../findings/caution-alleles.ts'
import {writePattern} from '../heredity/genotype-notation.ts'
import type {BookLinkage, KnownLocus, Locus, Logbook, Rule, Trait} from '../logbook/book.ts'
import {LETHAL} from '../records/schema/loci.ts'
import {counted, listWords, percentSign, sentence} from './numbers.ts'
import type {Cell, Table} from './page.ts'

export interface Inheritance {
  readonly words: readonly string[]
  readonly shows: Table | null
  readonly misscoring: Table | null
  /** what is known of its loci beyond the records of the trait */
  readonly known: readonly KnownView[]
}

export interface KnownView {
  /** `P, pea comb` */
  readonly head: string
  /** Markdown */
  readonly body: string
  /** the gravest first */
  readonly cautions: readonly {readonly about: (typeof CAUTIONS)[number][0]; readonly head: string; readonly says: string}[]
  readonly beliefs: readonly {readonly heard: string; readonly right: string}[]
  readonly doubts: readonly string[]
  /** gene, dominance and sources, a sentence each */
  readonly words: readonly string[]
}

export function inheritanceOf(trait: Trait, book: Pick<Logbook, 'loci' | 'linkages'>): Inheritance {
  const {loci, shows, misscoring} = trait
  const mistakes = [...misscoring].flatMap(([real, mistaken]) => [...mistaken].map(([seen, chance]): readonly Cell[] => [real, seen, percentSign(chance)]))
  return {
    words: [...lociWords(loci), ...linkageWords(loci, book.linkages), ...rulesWords(shows)],
    shows: shows.length === 0 ? null : showsTable(loci, shows),
    misscoring: mistakes.length === 0 ? null : {caption: 'How often a look is taken for another, as the keeper states', columns: [{head: 'True look'}, {head: 'Taken for'}, {head: 'Chance', number: true}], rows: mistakes},
    known: knownViews(loci, book.loci),
  }
}

function lociWords(loci: readonly Locus[]): readonly string[] {
  if (loci.length === 0) return ['No locus is recorded for it: what is inherited and how is left open here.']
  return [`${sentence(counted(loci.length, 'locus', 'loci'))} on record: ${loci.map(locusWords).join('. ')}.`]
}

function locusWords({symbol, on, alleles}: Locus): string {
  const where = on === 'Z' ? 'on the Z chromosome: a cock has two, a hen one, which she has from her sire' : 'on an ordinary chromosome, the same in both sexes'
  return `${symbol}, ${where}; alleles ${listWords(alleles)}`
}

/** Of the linkages that touch the trait's loci. */
function linkageWords(loci: readonly Locus[], linkages: readonly BookLinkage[]): readonly string[] {
  return linkages.filter(({loci: pair}) => pair.some(locus => loci.includes(locus))).map(({loci: [one, other], recombination, doubt}) => {
    const share = `${percentSign(recombination)} of ${one.on === 'Z' ? 'a cock’s gametes' : 'gametes'} cross over between them${one.on === 'Z' ? ', and none of a hen’s, who hands on her Z as it is' : ''}`
    return `${one.symbol} and ${other.symbol} lie near each other: ${share}.${doubt === null ? '' : ` ${doubt}`}`
  })
}

function rulesWords(shows: readonly Rule[]): readonly string[] {
  if (shows.length === 0) return []
  const partly = shows.some(({penetrance}) => penetrance < 1) ? ' A share at the end of a line says how many of such birds show it; of the rest the next line that fits holds.' : ''
  const whose = shows.some(({from}) => from === 'reference') ? ' The lines are those of the reference of chicken loci.' : ''
  return [`Read from above, the first line that fits holds; _ stands for any allele${shows.some(({patterns}) => [...patterns].some(([{on}]) => on === 'Z')) ? ', and for the one that a hen does not have' : ''}.${partly}${whose}`]
}

function showsTable(loci: readonly Locus[], shows: readonly Rule[]): Table {
  const partly = shows.some(({penetrance}) => penetrance < 1)
  const rows = shows.map(({patterns, is, sex, penetrance}): readonly Cell[] => {
    const genotype = loci.map(locus => {
      const pattern = patterns.get(locus)
      return pattern ? writePattern(pattern, locus) : 'any'
    }).join(', ')
    return [sex === null ? genotype : `${genotype} (${sex}s)`, is === LETHAL ? 'never hatches' : is, ...(partly ? [percentSign(penetrance)] : [])]
  })
  return {caption: 'What each genotype shows', columns: [{head: loci.map(({symbol}) => symbol).join(', ')}, {head: 'Shows'}, ...(partly ? [{head: 'In', number: true}] : [])], rows}
}

/** What is said of several of its loci is said once. */
function knownViews(loci: readonly Locus[], all: Logbook['loci']): readonly KnownView[] {
  const heard = new Set<string>(), cautioned = new Set<string>()
  return loci.flatMap((locus): readonly KnownView[] => {
    const {symbol} = locus, known = all.get(symbol)?.known
    if (!known) return []
    const beliefs = known.beliefs.filter(belief => !heard.has(belief.heard))
    const cautions = known.cautions.filter(({says}) => !cautioned.has(says) && speaksOfLocus(says, locus))
    for (const belief of beliefs) heard.add(belief.heard)
    for (const {says} of cautions) cautioned.add(says)
    return [{
      head: `${symbol}, ${within(known.name)}`, body: known.body.trim(), beliefs, doubts: known.doubts, words: knownWords(known),
      cautions: CAUTIONS.flatMap(([about, head]) => cautions.filter(caution => caution.about === about).map(({says}) => ({about, head, says}))),
    }]
  })
}

/** the gravest first, each with what it is headed by */
export const CAUTIONS = [['lethal', 'Chicks that never hatch'], ['welfare', 'The bird’s good'], ['breeding', 'In breeding']] as const

function knownWords({chromosome, gene, dominance, sources, catalogue, from}: KnownLocus): readonly string[] {
  return [
    ...(dominance === null ? [] : [`Dominance: ${within(dominance)}`]),
    ...(gene === null && chromosome === null ? [] : [`${chromosome === null ? 'Gene' : `Chromosome ${chromosome}`}${gene === null ? '' : `: ${within(gene)}`}`.replace(/\.?$/, '.')]),
    ...(sources.length === 0 ? [] : [`Told by ${listWords(sources.map(sourceWords))}.`]),
    ...(catalogue === null ? [] : [`In the catalogue of inherited traits of animals: ${catalogue}.`]),
    ...(from === 'reference' ? ['From the reference of chicken loci that comes with these pages.'] : []),
  ]
}

/** A sentence put behind a colon; letters that stand for a gene stay large. */
const within = (words: string): string => (/^[A-Z](?:[a-z]| )/.test(words) ? words.charAt(0).toLowerCase() + words.slice(1) : words)

function sourceWords({by, year, known}: KnownLocus['sources'][number]): string {
  const mark = {read: '', cited: 'not read for this', hobbyists: 'hobbyists', memory: 'from memory'}[known]
  const told = year === null || by.includes(`${year}`) ? by : `${by} ${year}`
  return mark === '' ? told : `${told} (${mark})`
}
