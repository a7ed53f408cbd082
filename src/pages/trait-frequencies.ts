/** How common each allele of a trait is, step by step, of all that hatched and of those bred from; on the Z males and females apart as well. */
import {alleleByStep} from '../charts/allele-by-step.ts'
import {hasRows} from '../charts/chart-spec.ts'
import type {AlleleFrequencies, AlleleShare} from '../findings/allele-frequencies.ts'
import type {Locus} from '../heredity/locus.ts'
import type {SexRow} from '../findings/shares.ts'
import type {Findings} from '../findings/study.ts'
import {unwantedInBook} from '../findings/unwanted-alleles.ts'
import type {Trait} from '../logbook/book.ts'
import {fileName} from '../records/file-name.ts'
import {limits, listWords, NOTHING, percent, percentSign} from './numbers.ts'
import type {Cell, Figure, Table} from './page.ts'
import {SEX_ROWS} from './sex-words.ts'

export interface TraitFrequencies {
  readonly figures: readonly Figure[]
  readonly tables: readonly Table[]
  readonly words: string
}

/** @param before figures that stand on the page above these */
export function traitFrequencies(trait: Trait, {frequencies, allelesOfBook}: Pick<Findings, 'frequencies' | 'allelesOfBook'>, before: number): TraitFrequencies | null {
  const figures: Figure[] = [], tables: Table[] = []
  for (const locus of trait.loci) {
    // of a long series those that no strain and no bird may have are not listed
    const all = locus.alleles.map((_, allele) => allele), some = all.filter(allele => allelesOfBook(locus).includes(allele)), there = all.length === 2 || some.length === 0 ? all : some
    const own = frequencies.alleles.filter(row => row.locus === locus)
    for (const sex of locus.on === 'Z' ? (['all', 'male', 'female'] as const) : (['all'] as const)) {
      const rows = own.filter(row => row.sex === sex)
      if (rows.length === 0) continue
      // of two alleles one tells of the other; of more the table tells all
      const drawn = there.length === 2 ? unwantedInBook(trait, allelesOfBook).find(each => each.locus === locus)?.unwanted[0] ?? there[1] ?? 1 : null
      const figure = drawn === null ? null : figureOf(trait, locus, sex, drawn, rows, `Figure ${before + figures.length + 1}.`)
      if (figure) figures.push(figure)
      else tables.push({caption: `Alleles of ${locus.symbol}${sexWords(sex)}, %`, ...tableOf(locus, rows, there)})
    }
  }
  const all = frequencies.alleles.filter(({locus}) => trait.loci.includes(locus)), left = all.filter(({of, sex}) => of === 'hatched' && sex === 'all').reduce((sum, row) => Math.max(sum, row.leftOut), 0)
  if (figures.length + tables.length === 0) return null
  return {
    figures, tables,
    words: `${all.every(({method}) => method === 'counted') ? 'Counted, every genotype being known.' : 'Expected from the chances of every bird’s genotypes.'} Relatives count as independent, so the intervals are too narrow.${left === 0 ? '' : ' Chicks of tallies on which nothing was seen are left out.'}${all.every(({exact}) => exact) ? '' : ' Approximate.'}`,
  }
}

const sexWords = (sex: SexRow): string => (sex === 'all' ? '' : `, ${SEX_ROWS[sex]}`)

const shareOf = (row: AlleleFrequencies | undefined, allele: number): AlleleShare | undefined => row?.alleles.find(each => each.allele === allele)

function figureOf(trait: Trait, locus: Locus, sex: SexRow, allele: number, rows: readonly AlleleFrequencies[], head: string): Figure | null {
  const name = locus.alleles[allele] ?? '', hatched = rows.filter(({of}) => of === 'hatched')
  const drawn = hatched.flatMap(row => {
    const share = shareOf(row, allele), bred = shareOf(rows.find(each => each.of === 'bred-from' && each.step === row.step), allele)
    return share ? [{label: row.step, hatched: share.share, interval: share.interval, bredFrom: bred?.share ?? null}] : []
  })
  if (!hasRows(drawn)) return null
  return {
    kind: 'figure', id: `allele-${fileName(locus.symbol)}-${sex}`, name: `${fileName(trait.id)}-allele-${fileName(locus.symbol)}-by-step${sex === 'all' ? '' : `-${sex}`}`, head, title: `Share of ${name} by step${sexWords(sex)}`,
    caption: `Share of ${name} among the genes at ${locus.symbol}${sexWords(sex)}, %. Egg: of all that hatched, with the 95% interval. Ring: of those bred from.`,
    description: `${listWords(drawn.map(row => `${row.label} ${percentSign(row.hatched)}${row.bredFrom === null ? '' : `, bred from ${percentSign(row.bredFrom)}`}`))}.`,
    spec: alleleByStep(drawn), table: tableOf(locus, rows, [allele]),
  }
}

/** A row for each step and allele; the allele is named where there are several. */
function tableOf({alleles}: Locus, rows: readonly AlleleFrequencies[], told: readonly number[]): Table {
  const several = told.length > 1
  return {
    columns: [{head: several ? 'Step, allele' : 'Step'}, {head: 'Hatched', number: true}, {head: 'Interval', number: true}, {head: 'Bred from', number: true}, {head: 'Birds', number: true}],
    rows: rows.filter(({of}) => of === 'hatched').flatMap(row => told.map((allele): readonly Cell[] => {
      const share = shareOf(row, allele), bred = rows.find(each => each.of === 'bred-from' && each.step === row.step), bredShare = shareOf(bred, allele)
      return [several ? `${row.step}, ${alleles[allele] ?? ''}` : row.step, share ? percent(share.share) : NOTHING, share ? limits(share.interval) : NOTHING, bredShare ? percent(bredShare.share) : NOTHING, `${row.birds}${bred ? `, ${bred.birds}` : ''}`]
    })),
  }
}
