/** What a generation mated inside the line cost, step by step: the two figures it is worked from in one table with it, and the rate and size that the birds' own F give. */
import type {ClosenessOfStep} from '../findings/closeness.ts'
import type {Findings} from '../findings/study.ts'
import {NOTHING, percent, percentSign, rounded} from './numbers.ts'
import type {Cell, Table} from './page.ts'

export interface ClosenessRates {
  readonly words: string
  readonly table: Table
}

/** Null before a step was mated inside the line. */
export function closenessRates({closeness, book: {project: {limits}}}: Pick<Findings, 'closeness' | 'book'>): ClosenessRates | null {
  const closed = closeness.filter(({realised}) => realised !== null)
  if (closed.length === 0) return null
  const last = closed.findLast(({rate}) => rate !== null), before = last && closed.find(({step}) => step === last.rate?.since)
  return {
    words: [
      'Within the line F is worked as if the strains’ first birds were no kin, for what they brought along no mating of this flock has added. The rise is the share lost of what was not yet inbred',
      last && before ? `, for ${last.step} (${percent(last.fresh)} − ${percent(before.fresh)}) / (100 − ${percent(before.fresh)}) = ${percentSign(last.rate?.value ?? 0).replace('-', '−')}.` : '.',
      limits.inbreedingPerGeneration === null ? '' : ` The project allows ${percentSign(limits.inbreedingPerGeneration)} a generation.`,
      ' The own rate comes of each bird’s F and the generations mated inside since the line was closed; the size is that of a flock, mated at random, that would lose as much, with its standard error.',
    ].join(''),
    table: {
      columns: [
        {head: 'Step'}, {head: 'F, %', number: true}, {head: 'Within the line, %', number: true}, {head: 'Rise, %', number: true}, {head: 'Own rate, %', number: true}, {head: 'Size', number: true},
      ],
      rows: closed.map(rowOf),
    },
  }
}

function rowOf({step, mean, fresh, rate, realised}: ClosenessOfStep): readonly Cell[] {
  const told = realised !== null && realised.count > 0
  return [
    step, percent(mean), percent(fresh), rate === null ? NOTHING : percent(rate.value), told ? percent(realised.rate) : NOTHING,
    told && typeof realised.size === 'number' ? `${rounded(realised.size, 1)}${realised.standardError === null ? '' : ` ± ${rounded(realised.standardError, 1)}`}` : NOTHING,
  ]
}
