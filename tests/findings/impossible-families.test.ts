import {describe, expect, it} from 'vitest'
import {heredityWarnings} from '../../src/findings/heredity-warnings.ts'
import {chanceOf} from '../bench/chance.ts'
import {expectClose} from '../expect-close.ts'
import {COMB, GROUND, heredityBook} from './heredity-book.ts'

const withError = (trait: string) => trait.replace('required: yes', 'required: yes\nmisscoring: 1%')
const TRAITS = {'traits/comb.md': withError(COMB), 'traits/ground.md': withError(GROUND)}
const ALLELES = '{P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}}'
const grown = (line: string) => `${line} hatched=2021-04-01`
const PEN = {'pens/2023-A.md': '---\nseason: 2023\nmales: [A, D]\nfemales: [B]\nfrom: 2023-01-10\nkeeper: kelpgarth\n---\n'}

/** A × B give single gold daughters only; D, who stood in the same pen, would give pea silver ones. */
const FOUNDERS = ['A male - - tested={P:~p+/p+,S:~s+/s+}', 'B female - - tested={P:~p+/p+,S:~s+/-}', 'D male - - tested={P:~P/P,S:~S/S}'].map(grown)
const clean = Array.from({length: 6}, (_, index) => `c${index} female A B comb=single ground=gold`)

describe('impossibleFamilies(book)', () => {
  it('finds the one chick that was scored wrongly, and the one of another male, and no other', () => {
    const {findings} = heredityBook([...FOUNDERS, ...clean, 'wrong female A B comb=pea ground=gold', 'his female A B comb=pea ground=silver'], ALLELES, {...TRAITS, ...PEN})
    const found = new Map(findings.impossibleFamilies.map(each => [each.chick.kind === 'bird' ? each.chick.id : '', each]))
    expect([...found.keys()].sort()).toEqual(['his', 'wrong'])
    // scored so by mistake, once in a hundred; of D she would be pea, but silver and scored gold by mistake: no likelier
    expect(found.get('wrong')).toMatchObject({impossible: false, doubts: [{trait: {id: 'comb'}, instead: 'single', wrong: 1}], explanations: [{kind: 'misscored', times: 1, share: 1}]})
    // twice wrong, 0.01², against twice right, 0.99²
    const [best, second, ...more] = found.get('his')?.explanations ?? []
    expect(more).toEqual([])
    expect([best, second]).toMatchObject([{kind: 'sire', bird: {id: 'D'}}, {kind: 'misscored'}])
    expectClose(best?.times ?? NaN, 99 ** 2, 1e-9 * 99 ** 2, {})
    expectClose(best?.share ?? NaN, 99 ** 2 / (99 ** 2 + 1), 1e-12, {})
    expect(found.get('his')?.kin.map(each => each.kind === 'bird' && each.id)).toEqual(['wrong'])
  })

  it('says so where the records allow for no wrong score, and compares with one in a thousand', () => {
    const {findings} = heredityBook([...FOUNDERS, ...clean, 'his female A B comb=pea'], ALLELES, {...PEN, 'traits/comb.md': COMB, 'traits/ground.md': GROUND})
    const [only, ...more] = findings.impossibleFamilies
    expect(more).toEqual([])
    expect(only).toMatchObject({impossible: true, explanations: [{kind: 'sire', bird: {id: 'D'}}, {kind: 'misscored'}]})
    // pea of two states alike in one of a thousand scores: 0.9995 against 0.0005
    expectClose(only?.explanations[0]?.times ?? NaN, 0.9995 / 0.0005, 1e-6, {})
  })

  it('doubts no score that the records themselves say is often wrong', () => {
    const often = COMB.replace('required: yes', 'required: yes\nmisscoring: {single: {pea: 30%}}')
    expect(heredityBook([...FOUNDERS, 'c female A B comb=pea'], ALLELES, {...TRAITS, 'traits/comb.md': often}).findings.impossibleFamilies).toEqual([])
  })

  it('finds the parent whose own score does not fit its chicks', () => {
    const {findings} = heredityBook(['A male - - comb=single', 'B female - - tested={P:~p+/p+}', ...Array.from({length: 5}, (_, index) => `c${index} female A B comb=pea`)], ALLELES, TRAITS)
    expect(findings.impossibleFamilies.map(({chick}) => chick.kind === 'bird' && chick.id)).toEqual(['A'])
    expect(findings.impossibleFamilies[0]?.explanations).toEqual([{kind: 'misscored', times: 1, share: 1}])
  })

  it('names the rule where a whole family strays from it', () => {
    const {findings} = heredityBook([...FOUNDERS, ...Array.from({length: 6}, (_, index) => `c${index} female A B comb=pea ground=gold`)], ALLELES, TRAITS)
    expect(findings.impossibleFamilies).toHaveLength(6)
    for (const {rule, kin} of findings.impossibleFamilies) {
      expect(kin).toHaveLength(5)
      expect(rule).toMatchObject([{trait: {id: 'comb'}, cross: 'p+/p+ × p+/p+', counts: [6, 0]}])
    }
  })

  it.each([1, 2, 3])('names nobody in a flock without a slip (seed %i)', seed => {
    const {findings} = heredityBook(drawnFlock(seed, 0).lines)
    expect([findings.impossibleFamilies, heredityWarnings(findings)]).toEqual([[], []])
  })

  it('where the records allow for one wrong score in a hundred, and none is, warns of hardly anybody', () => {
    let warned = 0
    for (const seed of [1, 2, 3, 4, 5]) {
      const {lines} = drawnFlock(seed, 0)
      warned += heredityWarnings(heredityBook(lines, undefined, {'traits/comb.md': withError(COMB)}).findings).length
    }
    // 980 birds; of a true 1 % ten scores would be wrong. One flock in six has a bird of so rare a family that it is doubted and right (25 others drawn: 4), so five flocks 0.8; and three standard deviations
    expect(warned).toBeLessThan(4)
  })

  it('doubts scores as often as they are wrong', () => {
    let wrong = 0, expected = 0, variance = 0
    for (const seed of [11, 12, 13, 14, 15, 16]) {
      const {lines, misscored} = drawnFlock(seed, 0.03)
      for (const {chick, doubts: [doubt]} of heredityBook(lines, undefined, {'traits/comb.md': withError(COMB).replace('1%', '3%')}).findings.impossibleFamilies) {
        if (!doubt || chick.kind !== 'bird') throw new Error('a doubted chick has a doubt')
        if (misscored.has(chick.band)) wrong += 1
        expected += doubt.wrong
        variance += doubt.wrong * (1 - doubt.wrong)
      }
    }
    expect(expected).toBeGreaterThan(8)
    // by chance alone beyond three standard deviations in one seed of four hundred
    expect(Math.abs(wrong - expected)).toBeLessThan(3 * Math.sqrt(variance))
  })
})

/**
 * Three generations of twelve hens and four cocks each, genes dropped by chance, every comb scored.
 *
 * @param error chance of a score to be wrong
 */
function drawnFlock(seed: number, error: number): {readonly lines: readonly string[]; readonly misscored: ReadonlySet<string>} {
  const misscored = new Set<string>()
  const {happens, oneOf: pick} = chanceOf(seed)
  type Bird = {readonly band: string; readonly genes: readonly [number, number]; readonly line: string}
  const bird = (band: string, sex: string, parents: string, genes: readonly [number, number]): Bird => {
    const isWrong = happens(error)
    if (isWrong) misscored.add(band)
    return {band, genes, line: `${band} ${sex} ${parents} comb=${genes.includes(0) !== isWrong ? 'pea' : 'single'}`}
  }
  const half = (): number => (happens(0.5) ? 0 : 1)
  let cocks = Array.from({length: 4}, (_, index) => bird(`0M${index}`, 'male', '- -', [half(), half()])), hens = Array.from({length: 12}, (_, index) => bird(`0F${index}`, 'female', '- -', [half(), half()]))
  const all = [...cocks, ...hens]
  for (const generation of [1, 2, 3]) {
    const chicks = hens.flatMap((hen, index) => {
      const cock = pick(cocks)
      return Array.from({length: 5}, (_, number) => bird(`${generation}${number === 0 ? 'M' : 'F'}${index}-${number}`, number === 0 ? 'male' : 'female', `${cock.band} ${hen.band}`, [pick(cock.genes), pick(hen.genes)]))
    })
    all.push(...chicks)
    cocks = chicks.filter(({line}) => line.includes(' male ')).slice(0, 4)
    hens = chicks.filter(({line}) => line.includes(' female ')).slice(0, 12)
  }
  return {misscored, lines: all.map(({line}) => line)}
}
