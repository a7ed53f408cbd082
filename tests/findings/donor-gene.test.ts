import {describe, expect, it} from 'vitest'
import {donorGenes, type DonorGene} from '../../src/findings/donor-gene.ts'
import type {Bird, Logbook, Trait} from '../../src/logbook/book.ts'
import {comb, logbook, rule} from '../pages/small-logbook.ts'
import {donorBook} from './breeding-book.ts'

const only = (book: Logbook, group: readonly Bird[] = book.birds.slice(-4)): DonorGene => {
  const [gene] = donorGenes(book, group)
  if (!gene) throw new Error('no gene found')
  return gene
}
const ids = (birds: DonorGene['still']) => birds.map(({id}) => id)

/** Every way from a chick down, one by one: the slow twin. */
function openWays(book: Logbook, from: string, group: ReadonlySet<string>, denied: ReadonlySet<string>): boolean {
  if (denied.has(from)) return false
  if (group.has(from)) return true
  return book.birds.some(({id, parentage: {sires, dams}}) => [...sires, ...dams].some(({bird}) => bird.id === from) && openWays(book, id, group, denied))
}

/** The most copies, by trying every giving of chicks to donors. */
function mostByTrying(candidates: readonly (readonly string[])[], given: Readonly<Record<string, number>> = {}): number {
  const [first, ...rest] = candidates
  if (!first) return 0
  const with_ = first.filter(donor => (given[donor] ?? 0) < 2).map(donor => 1 + mostByTrying(rest, {...given, [donor]: (given[donor] ?? 0) + 1}))
  return Math.max(mostByTrying(rest, given), ...with_)
}

describe('donorGenes(book, group)', () => {
  const book = donorBook()

  it('counts the copies drawn and those that a way still leads from, by hand', () => {
    // 23-3 is single and has none; 23-4 passed none to 24-2, which is single; of 23-1, 23-2 and 23-5 three copies, as B-2 may have had 23-5
    const gene = only(book)
    expect([gene.trait.id, gene.strain.id, gene.state, gene.showsInOne, gene.onZ]).toEqual(['comb', 'fell-buff', 'pea', true, false])
    expect(ids(gene.donors)).toEqual(['B-1', 'B-2'])
    expect(ids(gene.drawn)).toEqual(['23-1', '23-2', '23-4', '23-5'])
    expect(ids(gene.still)).toEqual(['23-1', '23-2', '23-5'])
    expect([gene.copies, gene.carriers]).toEqual([3, 3])
  })

  it('takes no more than two different copies of one donor bird', () => {
    for (const chick of book.birds) {
      if (chick.id === '23-5') Object.assign(chick, {parentage: {...chick.parentage, dams: [{bird: book.named('B-1'), chance: 1}]}})
    }
    expect([only(book).still.length, only(book).copies]).toEqual([3, 2])
  })

  it('agrees with every way gone one by one, and every giving of chicks to donors tried', () => {
    const fresh = donorBook(), gene = only(fresh)
    const denied = new Set(['23-3', '24-2']), group = new Set(fresh.group.map(({id}) => id))
    const still = ['23-1', '23-2', '23-3', '23-4', '23-5'].filter(id => openWays(fresh, id, group, denied))
    expect(ids(gene.still)).toEqual(still)
    expect(gene.copies).toBe(mostByTrying(still.map(id => fresh.named(id).parentage.dams.map(({bird}) => bird.id))))
  })

  it('rules nothing out by looks where one copy does not show', () => {
    const hidden: Trait = {...comb, shows: [rule({P: 'p+/_'}, 'single', comb.loci), rule({P: 'P/P'}, 'pea', comb.loci)]}
    const fresh = donorBook()
    const birds = fresh.birds.map(bird => Object.assign(bird, {looks: new Map([...bird.looks].map(([, look]) => [hidden, look]))}))
    const donors = fresh.project.donors.map(strain => Object.assign(strain, {trueFor: new Map([[hidden, 'pea']])}))
    const gene = only({...fresh, traits: [hidden], birds, project: {...fresh.project, donors}}, fresh.group)
    expect([gene.showsInOne, gene.drawn.length, gene.still.length]).toEqual([false, 5, 4])
  })

  it('on the Z a hen gives none to her daughters, and one copy to her sons', () => {
    const loci = [{symbol: 'P', on: 'Z', alleles: ['P', 'p+']}] as const
    const onZ: Trait = {...comb, loci, shows: [rule({P: 'P/_'}, 'pea', loci), rule({P: 'p+/_'}, 'single', loci)]}
    const fresh = donorBook()
    for (const bird of fresh.birds) Object.assign(bird, {looks: new Map([...bird.looks].map(([, look]) => [onZ, look]))})
    for (const strain of fresh.project.donors) Object.assign(strain, {trueFor: new Map([[onZ, 'pea']])})
    const gene = only({...fresh, traits: [onZ]}, fresh.group)
    expect([gene.onZ, gene.drawn.length, gene.copies]).toEqual([true, 0, 0])
  })

  it('asks of no trait that the breed does not want of a donor, and of no empty book', () => {
    expect(donorGenes(logbook('2024-01-01'), [])).toEqual([])
    expect(donorGenes({...book, traits: [{...comb, required: false}]}, book.group)).toEqual([])
    const {recurrent} = book.project
    if (recurrent) expect(donorGenes({...book, project: {...book.project, recurrent: {...recurrent, trueFor: new Map([[comb, 'pea']])}}}, book.group)).toEqual([])
  })
})
