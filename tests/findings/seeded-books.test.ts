/** Forecasts and fixation on books drawn by a seed: held against the same asked in the slow way, and against laws. */
import {describe, expect, it} from 'vitest'
import {fixationOf} from '../../src/findings/fixation.ts'
import {unwantedAlleles} from '../../src/findings/unwanted-alleles.ts'
import {COMB, GROUND, heredityBook} from './heredity-book.ts'

const SHARES = '{P: {P: 60%, p+: 40%}, S: {S: 70%, s+: 30%}}'
const FILES = {'traits/comb.md': COMB.replace('required: yes', 'required: yes\nmisscoring: 3%'), 'traits/ground.md': GROUND.replace('required: yes', 'required: yes\nmisscoring: 2%')}

/** A multiplicative generator modulo 2³¹ − 1 (Park & Miller 1988). */
function drawn(seed: number): (below: number) => number {
  let state = seed
  return below => {
    state = (state * 48271) % 2147483647
    return Math.floor((state / 2147483647) * below)
  }
}

/** Four founders and ten chicks, inbred as it falls, half of them scored, some sires one of two. */
function drawnBirds(seed: number): readonly string[] {
  const draw = drawn(seed), males = ['a', 'b'], females = ['c', 'd'], lines: string[] = []
  const scores = () => `${draw(2) === 0 ? ` comb=${draw(4) === 0 ? 'single' : 'pea'}` : ''}${draw(2) === 0 ? ` ground=${draw(4) === 0 ? 'gold' : 'silver'}` : ''}`
  for (const band of ['a', 'b']) lines.push(`${band} male - -${scores()}`)
  for (const band of ['c', 'd']) lines.push(`${band} female - -${scores()}`)
  for (let generation = 0; generation < 3; generation++) {
    const young: [string, string][] = []
    for (let index = 0; index < 3; index++) {
      const sex = index === 0 ? 'male' : index === 1 ? 'female' : draw(2) === 0 ? 'male' : 'female', band = `n${generation}${index}`
      const sire = males[draw(males.length)] ?? 'a', other = males[draw(males.length)] ?? 'b', dam = females[draw(females.length)] ?? 'c'
      lines.push(`${band} ${sex} ${draw(3) === 0 && sire !== other ? `{${sire}:~60%,~${other}:~40%}` : sire} ${dam}${scores()}`)
      young.push([band, sex])
    }
    for (const [band, sex] of young) (sex === 'male' ? males : females).push(band)
  }
  return lines
}

describe.each([11, 29, 47, 83, 101])('a book drawn by seed %i', seed => {
  const lines = drawnBirds(seed), book = heredityBook(lines, SHARES, FILES)
  const last = (sex: string) => lines.findLast(line => line.split(' ')[1] === sex)?.split(' ')[0] ?? expect.fail(sex)
  const sire = last('male'), dam = last('female')

  it('forecasts what a chick of the pair that nobody has looked at would be', () => {
    const grown = heredityBook([...lines, `x male ${sire} ${dam}`, `y female ${sire} ${dam}`], SHARES, FILES)
    const [forecast] = book.findings.forecasts([{sire: book.bird(sire), dam: book.bird(dam)}])
    for (const [band, sex] of [['x', forecast?.male], ['y', forecast?.female]] as const) {
      for (const {locus, genotypes} of sex?.genotypes ?? []) for (const {written, probability} of genotypes) expect(probability).toBeCloseTo(grown.chance(band, locus.symbol, written), 9)
      for (const {states, unsaid} of sex?.traits ?? []) expect(states.reduce((sum, {share}) => sum + share, unsaid)).toBeCloseTo(1, 12)
    }
  })

  it('gives a joint chance between what the single ones allow, as certain tests on all of them give it', () => {
    const {heredity, pedigree} = book.findings, birds = book.book.birds.filter(({band}) => band.startsWith('n'))
    for (const asked of book.book.traits.flatMap(unwantedAlleles)) {
      const {clean, carriers, inTheWay, exact} = fixationOf(asked, birds, heredity, pedigree), group = heredity.groupOf(asked.locus), numbers = new Map(birds.map(bird => [pedigree.numberOf(bird), bird]))
      const tested = heredity.workedOtherwise(group, {tested: animal => {
        const bird = numbers.get(animal)
        return bird ? [[0, asked.locus.on === 'Z' && bird.sex === 'female' ? 'none' : 0]] : null
      }})
      expect(exact).toBe(true)
      expect(clean).toBeCloseTo(Math.exp(tested.found.logLikelihood - heredity.worked(group).found.logLikelihood), 9)
      expect(clean).toBeGreaterThanOrEqual(1 - carriers - 1e-9)
      for (const {carries, ifDropped, ifProved} of inTheWay) {
        expect(clean).toBeLessThanOrEqual(1 - carries + 1e-9)
        expect(Math.min(ifDropped, ifProved)).toBeGreaterThanOrEqual(clean - 1e-9)
      }
    }
  })
})
