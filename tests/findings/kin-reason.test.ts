import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {kinshipOfBook} from '../../src/findings/inbreeding.ts'
import {kinReasons, pairReasons, type KinReason} from '../../src/findings/kin-reason.ts'
import {pedigreeOfBook} from '../../src/findings/pedigree-of-book.ts'
import type {Bird, Logbook} from '../../src/logbook/book.ts'
import {expectClose} from '../expect-close.ts'
import {bird, fell, holm, logbook, smallBook, strain} from '../pages/small-logbook.ts'
import {chick, halfSibs} from './kin-book.ts'

function asked(book: Logbook): {reason: ReturnType<typeof kinReasons>; likeliest: (bird: Bird) => number} {
  const pedigree = pedigreeOfBook(book), kin = kinshipOfBook(pedigree)
  return {reason: kinReasons(pedigree, pairReasons(pedigree, kin)), likeliest: each => kin.of(each).f.likeliest}
}
const pairReason = (found: ReturnType<ReturnType<typeof kinReasons>>): KinReason => {
  if (found.kind !== 'pair') throw new Error(found.kind)
  return found
}

describe('kinReasons(pedigree, kin)', () => {
  const book = halfSibs(), {reason} = asked(book)
  const of = (id: string) => reason(book.named(id))

  it('names the one ancestor of half sibs and the way to it (an eighth, as path counting gives: ½ · ½ · ½)', () => {
    const {parts, ...rest} = pairReason(of('24-001'))
    expect(rest).toMatchObject({f: 0.125, chance: 1, pairs: 1, others: {count: 0, share: 0}, fromStrains: 0})
    expect(parts.map(({bird: each, ...part}) => [each?.id, part])).toEqual([['22-005', {share: 0.125, up: {fromSire: 1, fromDam: 1}}]])
  })
  it('tells of the likeliest pair where there are several', () => {
    expect(of('24-002')).toMatchObject({chance: 0.6, pairs: 2, f: 0.125})
  })
  it('tells a sire who is his hen’s sire too (a quarter)', () => {
    expect(pairReason(of('24-003')).parts).toMatchObject([{bird: book.named('22-005'), share: 0.25, up: {fromSire: 0, fromDam: 1}}])
  })
  it('says where there is no pair to tell of', () => {
    expect([of('22-005').kind, of('24-004').kind]).toEqual(['founder', 'outside'])
    const found = bird('X', 'male', {maybe: [book.named('24-001'), book.named('24-003')], strain: null})
    const more = {...book, birds: [...book.birds, found]}
    expect(asked(more).reason(found).kind).toBe('one-of')
  })
  it('names the strains’ part where founders are kin (kinship 0.1 of a stated strain)', () => {
    const close = strain('holm-white', 'Holm White', {role: 'recurrent', inbreeding: 0.1, kinship: 0.1}), own = {strain: close}
    const cock = bird('H-1', 'male', own), hen = bird('H-2', 'female', own), young = chick('C', 'female', [[cock, hen]])
    const found = pairReason(asked(logbook('2025-01-01', {strains: [close, fell], birds: [cock, hen, young]})).reason(young))
    expect(found.parts).toEqual([])
    expectClose(found.fromStrains, 0.1, 1e-12)
  })
  it('names three at most and sums up the others', () => {
    const founders = Array.from({length: 8}, (_, index) => bird(`H-${index}`, index % 2 ? 'female' : 'male', {strain: holm}))
    const up = [0, 1, 2, 3].map(index => chick(`P${index}`, index % 2 ? 'female' : 'male', [[founders[2 * index] ?? null, founders[2 * index + 1] ?? null]]))
    const [a, b, c, d] = up as [Bird, Bird, Bird, Bird]
    const one = chick('G0', 'male', [[a, b]]), two = chick('G1', 'female', [[c, d]]), three = chick('G2', 'male', [[c, b]])
    const sire = chick('S', 'male', [[one, two]]), dam = chick('D', 'female', [[three, two]]), young = chick('Y', 'male', [[sire, dam]])
    const found = pairReason(asked(logbook('2025-01-01', {birds: [...founders, ...up, one, two, three, sire, dam, young]})).reason(young))
    expect(found.parts.map(part => [part.bird?.id, part.share])).toEqual([['G1', 0.125], ['P1', 0.03125], ['P2', 0.03125]])
    expect(found.others).toEqual({count: 0, share: 0})
  })

  it('adds up to the F of the likeliest pair, whatever the book', () => {
    for (const here of [halfSibs(), smallBook()]) {
      const {reason: why, likeliest} = asked(here)
      for (const each of here.birds) {
        const found = why(each)
        if (found.kind !== 'pair') continue
        expectClose(found.parts.reduce((sum, part) => sum + part.share, found.others.share + found.fromStrains), likeliest(each), 1e-12, each.id)
      }
    }
  })
  it('adds up in drawn lines of cousins and sibs', () => {
    fc.assert(fc.property(fc.array(fc.tuple(fc.nat(99), fc.nat(99)), {minLength: 3, maxLength: 18}), picks => {
      const birds: Bird[] = [bird('H-0', 'male'), bird('H-1', 'female'), bird('H-2', 'male'), bird('H-3', 'female')]
      picks.forEach(([m, f], index) => {
        const males = birds.filter(each => each.sex === 'male'), females = birds.filter(each => each.sex === 'female')
        birds.push(chick(`C${index}`, index % 2 ? 'female' : 'male', [[males[m % males.length] ?? null, females[f % females.length] ?? null]]))
      })
      const {reason: why, likeliest} = asked(logbook('2025-01-01', {birds}))
      for (const each of birds.slice(4)) {
        const {parts, others, fromStrains, f} = pairReason(why(each))
        expectClose(f, likeliest(each), 1e-12)
        expectClose(parts.reduce((sum, part) => sum + part.share, others.share + fromStrains), f, 1e-12)
        expect(parts.length).toBeLessThanOrEqual(3)
      }
    }), {numRuns: 60})
  })
})
