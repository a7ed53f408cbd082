import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {malesAnswer} from '../../src/pages/males-answer.ts'
import {malesPlaced} from '../../src/findings/males-placed.ts'
import type {PairHarm} from '../../src/findings/pair-harm.ts'
import {everyPair, neverByLoss, pairTable} from '../../src/pages/males-pairs.ts'
import {twoPens} from '../findings/breeding-book.ts'

const {pairings, pairReason, kinship, book} = study(twoPens())
const locus = {symbol: 'Cp', on: 'autosome', alleles: ['Cp', 'cp+']} as const
/** Two males are said to carry it, and to lose a quarter with every hen. */
const harm: PairHarm = {
  lossOf: ({band}) => (band === 'C2' || band === 'B1' ? {share: 0.25, loci: [locus], ifScored: false} : null),
  burdensOf: ({band}) => (band === 'C2' || band === 'B1' ? [{locus, allele: 0, carries: 1, ifScored: false}] : []),
}

describe('the page of males, of pairs that can lose chicks', () => {
  it('names none of them as good, and warns of the one put there', () => {
    const [first, second] = malesAnswer(malesPlaced(pairings), pairReason, pairings.chicksOf, harm).pens
    expect(first?.words).toContain('Beware: B1 with A2 can lose 25.0% of its chicks, Cp; with 1 more hen some too; without that C1, 25.0%.')
    expect(first?.words).not.toContain('As good')
    expect(second?.words).toContain('As good by kinship: C1.')
  })

  it('marks them in the table of pairs, and says what is never to be put together', () => {
    const table = pairTable(everyPair(pairings, kinship.atLeast, harm), 'The least kin', 6)
    expect(table?.columns.at(-1)?.head).toBe('Beware')
    expect(table?.rows.some(row => row.at(-1) === 'can lose 25.0% of its chicks, Cp')).toBe(true)
    expect(neverByLoss(pairings, harm)?.words).toMatch(/^B1 with A2, A3 and B2 can lose 25\.0% of its chicks, Cp; C2 with/)
    expect(book.birds.length).toBeGreaterThan(0)
  })
})
