import {describe, expect, it} from 'vitest'
import {chickScores, sexesOf, type Among} from '../../src/findings/chick-scores.ts'
import type {Alleles} from '../../src/heredity/locus.ts'
import {COMB, GROUND, heredityBook, LEGS, SHELL, TOES} from './heredity-book.ts'

function scores(text: string, sire: readonly Alleles[], dam: readonly Alleles[], among: Among = 'all') {
  const {book, findings} = heredityBook([], '{P: {P: 100%}}', {'traits/asked.md': text}), trait = book.traits.find(({id}) => id === 'asked') ?? expect.fail('asked')
  const [locus] = trait.loci, {scored, seen, lost} = chickScores(findings.heredity.groupOf(locus ?? expect.fail('locus')), trait, among)({sire, dam})
  return {scored: [...scored].map(share => Number(share.toFixed(12))), seen, lost}
}

describe('chickScores(group, trait, among)', () => {
  it('is Mendel’s 3 : 1, rightly read', () => expect(scores(COMB, [[0, 1]], [[0, 1]])).toEqual({scored: [0.75, 0.25], seen: 1, lost: 0}))

  it('has misscoring in it: ¾ · 0.98 + ¼ · 0.02', () => {
    expect(scores(COMB.replace('required: yes', 'misscoring: 2%'), [[0, 1]], [[0, 1]]).scored).toEqual([0.74, 0.26])
  })

  it('has penetrance in it, and both together', () => {
    expect(scores(TOES, [[0, 1]], [[1, 1]]).scored).toEqual([0.3, 0.7])
    // 0.3 · 0.9 + 0.7 · 0.1
    expect(scores(TOES.replace('required: true', 'misscoring: 10%'), [[0, 1]], [[1, 1]]).scored).toEqual([0.34, 0.66])
  })

  it('leaves out the sex that cannot show it', () => {
    expect(scores(SHELL, [[0, 1]], [[1, 1]])).toEqual({scored: [0.5, 0.5], seen: 0.5, lost: 0})
    expect(scores(SHELL, [[0, 1]], [[1, 1]], 'sons')).toEqual({scored: [0, 0], seen: 0, lost: 0})
  })

  it('gives a daughter her sire’s Z alone', () => {
    expect(scores(GROUND, [[0, 1]], [[0, null]], 'daughters').scored).toEqual([0.5, 0.5])
    expect(scores(GROUND, [[0, 1]], [[0, null]], 'sons').scored).toEqual([1, 0])
    expect(scores(GROUND, [[0, 1]], [[0, null]]).scored).toEqual([0.75, 0.25])
  })

  it('counts of those that hatch, and tells the rest: two to one of creepers, a quarter lost', () => {
    expect(scores(LEGS, [[0, 1]], [[0, 1]])).toEqual({scored: [expect.closeTo(2 / 3, 12), expect.closeTo(1 / 3, 12)], seen: expect.closeTo(1, 12), lost: 0.25})
  })
})

describe('sexesOf(among)', () => {
  it('is one or both', () => expect([sexesOf('sons'), sexesOf('daughters'), sexesOf('all')]).toEqual([['male'], ['female'], ['male', 'female']]))
})
