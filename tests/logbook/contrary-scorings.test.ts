import {describe, expect, it} from 'vitest'
import {contraryScorings} from '../../src/logbook/contrary-scorings.ts'
import {around, bookOf, inspectFiles} from './around.ts'

const comb = (misscoring: string) => `---\nname: Comb\nstates: [pea, single]\nscored-from: 6 weeks\nloci:\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: p+/p+, is: single}\n${misscoring}---\n`
const HEN = '---\nband: B-9\nsex: female\nstrain: fell-buff\nhatched: 2022-03-20\ncomb: pea\n---\n'
const book = (misscoring: string, rows: readonly string[]) =>
  ({'traits/comb.md': comb(misscoring), 'birds/B-9.md': HEN, 'scores/2022.csv': ['band,on,by,comb,struck', ...rows, ''].join('\n')})
const found = (misscoring: string, rows: readonly string[]) => contraryScorings(bookOf(book(misscoring, rows)))

describe('contraryScorings(book)', () => {
  it('finds scorings that no true look allows for together, once for a bird and trait, with the one that counts', () => {
    const [only, ...more] = found('', ['B-9,2022-09-01,inga,single,', 'B-9,2022-10-01,inga,single,'])
    expect(more).toEqual([])
    expect([only?.bird.band, only?.trait.id, only?.scores.map(({value}) => value), only?.counted.on?.text]).toEqual(['B-9', 'comb', ['pea', 'single', 'single'], '2022-10-01'])
  })
  it('is silent where they agree, where one is struck or too early, and where the stated misscoring allows for both', () => {
    expect(found('', ['B-9,2022-09-01,inga,pea,'])).toEqual([])
    expect(found('', ['B-9,2022-09-01,inga,single,the wrong hen'])).toEqual([])
    expect(found('', ['B-9,2022-04-01,inga,single,'])).toEqual([])
    expect(found('misscoring: 1%\n', ['B-9,2022-09-01,inga,single,'])).toEqual([])
    expect(found('misscoring: {pea: {single: 5%}}\n', ['B-9,2022-09-01,inga,single,'])).toEqual([])
  })
  it('asks nothing of a trait without rules: the last counts, and nothing rests on the rest', () => {
    expect(contraryScorings(bookOf({'birds/B-9.md': HEN, 'scores/2022.csv': 'band,on,by,comb\nB-9,2022-09-01,inga,single\n'}))).toEqual([])
  })
})

describe('a warning of scorings that contradict', () => {
  it('names the bird, the scorers, their days and places, which one counts and what to do; and the slip is told once', () => {
    const {problems} = inspectFiles(around(book('', ['B-9,2022-09-01,inga,single,'])))
    expect(problems.map(({code, severity, place}) => [code, severity, place.file, place.start.line])).toEqual([['scorings-contradict', 'warning', 'scores/2022.csv', 2]])
    expect(problems[0]?.reason).toBe('B-9 was scored pea and single in Comb, which cannot all be right; single, scored by The keeper at Kelpgarth on 2022-09-01, counts')
    expect(problems[0]?.remedy).toBe('look at the bird again and strike what is wrong, or mend it; if one is now and then taken for the other, state it under misscoring in traits/comb.md')
    expect(problems[0]?.related?.map(({place, note}) => `${place.file}:${place.start.line} ${note}`)).toEqual(['birds/B-9.md:6 pea, written with the bird, stands here'])
  })
})
