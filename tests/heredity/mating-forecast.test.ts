import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {readGenotype} from '../../src/heredity/genotype-notation.ts'
import type {Locus} from '../../src/heredity/locus.ts'
import type {LookRule, LookRules} from '../../src/heredity/look-rules.ts'
import type {Homologues} from '../../src/heredity/conceptions.ts'
import {forecastOf, looksOf, lostOfUnphased, phasesOf, type ForecastOfSex, type StatedMating} from '../../src/heredity/mating-forecast.ts'

const P: Locus = {symbol: 'P', on: 'autosome', alleles: ['P', 'p+']}, R: Locus = {symbol: 'R', on: 'autosome', alleles: ['R', 'r+']}
const S: Locus = {symbol: 'S', on: 'Z', alleles: ['S', 's+']}, K: Locus = {symbol: 'K', on: 'Z', alleles: ['K', 'k+']}
const Cp: Locus = {symbol: 'Cp', on: 'autosome', alleles: ['Cp', 'cp+']}

function looking(loci: readonly Locus[], states: readonly string[], shows: readonly (readonly [Readonly<Record<string, string>>, string])[], more: Partial<LookRules> = {}): LookRules {
  const rules = shows.map(([genotypes, is]): LookRule => ({
    patterns: loci.map(locus => {
      const text = genotypes[locus.symbol], read = text === undefined ? null : readGenotype(text, locus)
      return read?.kind === 'read' ? read.pattern : null
    }),
    is: is === 'lethal' ? 'lethal' : states.indexOf(is), sex: null, penetrance: 1,
  }))
  return {loci: loci.map((_, place) => place), states, rules, seenIn: null, ...more}
}

const silver = looking([S], ['silver', 'gold'], [[{S: 'S/_'}, 'silver'], [{S: '_/_'}, 'gold']])
const walnut = looking([R, P], ['walnut', 'rose', 'pea', 'single'], [
  [{R: 'R/_', P: 'P/_'}, 'walnut'], [{R: 'R/_', P: 'p+/p+'}, 'rose'], [{R: 'r+/r+', P: 'P/_'}, 'pea'], [{R: '_/_'}, 'single'],
])
const creeper = looking([Cp], ['creeper', 'long'], [[{Cp: 'Cp/Cp'}, 'lethal'], [{Cp: 'Cp/_'}, 'creeper'], [{Cp: '_/_'}, 'long']])

const share = ({looks}: ForecastOfSex, ...states: number[]): number => looks.find(each => each.states.join() === states.join())?.share ?? 0
const mating = (loci: readonly Locus[], look: LookRules, sire: readonly Homologues[], dam: readonly Homologues[], more: Partial<StatedMating> = {}) =>
  forecastOf({loci, linkages: [], traits: [look], sire, dam, ...more})
const bySex = ({male, female}: ReturnType<typeof forecastOf>) => [share(male, 0), share(female, 0)]

describe('forecastOf(mating)', () => {
  it('gives the classes of a gene on the Z', () => {
    // source: Morgan 1910, Science 32:120, in fowl cock and hen change places: the four matings by hand
    expect(bySex(mating([S], silver, [[1, 1]], [[0, null]]))).toEqual([1, 0])
    expect(bySex(mating([S], silver, [[0, 1]], [[0, null]]))).toEqual([1, 0.5])
    expect(bySex(mating([S], silver, [[0, 1]], [[1, null]]))).toEqual([0.5, 0.5])
    expect(bySex(mating([S], silver, [[0, 0]], [[1, null]]))).toEqual([1, 1])
  })

  it('gives walnut, rose, pea and single as 9 to 3 to 3 to 1', () => {
    // source: Bateson, Saunders & Punnett 1905 (the ratio is textbook; from memory, no page)
    const {male, female, lost} = mating([R, P], walnut, [[0, 1], [0, 1]], [[0, 1], [0, 1]])
    for (const sex of [male, female]) expect([0, 1, 2, 3].map(state => share(sex, state) * 16)).toEqual([9, 3, 3, 1])
    expect(lost).toBe(0)
  })

  it('takes lethal embryos out of the hatch and says how many: creepers two to one, a quarter lost', () => {
    // source: Landauer & Dunn 1930, J. Genet. 23:397 (creeper lethal when doubled; from memory, no page)
    const {male, female, lost} = mating([Cp], creeper, [[0, 1]], [[0, 1]])
    expect(lost).toBe(0.25)
    for (const sex of [male, female]) expect([share(sex, 0), share(sex, 1)].map(each => each * 3)).toEqual([expect.closeTo(2, 12), expect.closeTo(1, 12)])
  })

  it('gives the F2 of two linked loci, in coupling and in repulsion', () => {
    // closed form: A_B_ (2 + t)/4, A_bb and aaB_ (1 − t)/4, aabb t/4, with t = (1 − r)² in coupling and r² in repulsion
    const classes = (phase: readonly Homologues[], recombination: number) => {
      const {female} = mating([R, P], walnut, phase, phase, {linkages: [{loci: [0, 1], recombination}]})
      return [0, 1, 2, 3].map(state => share(female, state))
    }
    const close = (values: readonly number[]) => values.map(value => expect.closeTo(value, 12) as number)
    expect(classes([[0, 1], [0, 1]], 0.1)).toEqual(close([0.7025, 0.0475, 0.0475, 0.2025]))
    expect(classes([[0, 1], [1, 0]], 0.1)).toEqual(close([0.5025, 0.2475, 0.2475, 0.0025]))
    expect(classes([[0, 1], [1, 0]], 0.5)).toEqual(close([9 / 16, 3 / 16, 3 / 16, 1 / 16]))
  })

  it('lets loci of the Z cross over in cocks only', () => {
    const both = looking([S, K], ['SK', 'other'], [[{S: 'S/_', K: 'K/_'}, 'SK'], [{S: '_/_'}, 'other']])
    const given = (sire: readonly Homologues[], dam: readonly Homologues[]) => bySex(mating([S, K], both, sire, dam, {linkages: [{loci: [0, 1], recombination: 0.1}]}))
    expect(given([[0, 1], [0, 1]], [[1, null], [1, null]])).toEqual([expect.closeTo(0.45, 12), expect.closeTo(0.45, 12)])
    expect(given([[1, 1], [1, 1]], [[0, null], [0, null]])).toEqual([1, 0])
  })

  it('says nothing of a sex that cannot show the trait', () => {
    const {male, female} = mating([P], looking([P], ['blue', 'white'], [[{P: 'P/_'}, 'blue'], [{P: '_/_'}, 'white']], {seenIn: 'female'}), [[0, 1]], [[1, 1]])
    expect(male.looks).toEqual([{states: [null], share: 1}])
    expect([share(female, 0), share(female, 1)]).toEqual([0.5, 0.5])
  })

  it('has no chicks where every embryo dies', () => {
    const all = mating([Cp], creeper, [[0, 0]], [[0, 0]])
    expect([all.lost, all.male.genotypes, all.male.looks]).toEqual([1, [], []])
  })

  it('throws at a genotype that a sex cannot have', () => {
    expect(() => mating([S], silver, [[0, null]], [[0, null]])).toThrow(RangeError)
    expect(() => mating([S], silver, [[0, 0]], [[0, 0]])).toThrow(RangeError)
  })

  it('sums to 1 in each sex, whatever is mated', () => {
    const pair = fc.tuple(fc.nat(1), fc.nat(1)), one = fc.nat(1)
    fc.assert(fc.property(fc.tuple(pair, pair, pair), fc.tuple(pair, pair, one), fc.double({min: 0, max: 0.5, noNaN: true}), ([a, b, c], [d, e, f], recombination) => {
      const found = forecastOf({loci: [R, P, S], linkages: [{loci: [0, 1], recombination}], traits: [walnut, {...silver, loci: [2]}], sire: [a, b, c], dam: [d, e, [f, null]]})
      for (const {genotypes, looks} of [found.male, found.female]) {
        expect(genotypes.reduce((sum, {probability}) => sum + probability, 0)).toBeCloseTo(1, 12)
        expect(looks.reduce((sum, each) => sum + each.share, 0)).toBeCloseTo(1, 12)
      }
    }))
  })

  it('is the same whichever parent has which genotype, on an autosome', () => {
    expect(mating([R, P], walnut, [[0, 1], [1, 1]], [[1, 1], [0, 1]]).male.looks.map(({share: each}) => each).sort())
      .toEqual(mating([R, P], walnut, [[1, 1], [0, 1]], [[0, 1], [1, 1]]).male.looks.map(({share: each}) => each).sort())
  })
})

describe('looksOf(traits, genotypes, sex)', () => {
  it('joins traits genotype by genotype', () => {
    // white skin goes with pea where one chromosome holds both
    const genotypes = [{is: [[0, 0], [0, 0]] as const, probability: 0.5}, {is: [[1, 1], [1, 1]] as const, probability: 0.5}]
    const first = looking([R], ['yes', 'no'], [[{R: 'R/_'}, 'yes'], [{R: '_/_'}, 'no']])
    expect(looksOf([first, {...first, loci: [1]}], genotypes, 'male')).toEqual([{states: [0, 0], share: 0.5}, {states: [1, 1], share: 0.5}])
  })
})

describe('lostOfUnphased(mating)', () => {
  it('holds every phase for alike where none is known', () => {
    const both = looking([R, P], ['lives'], [[{R: 'R/R', P: 'P/P'}, 'lethal'], [{R: '_/_'}, 'lives']])
    const linkages = [{loci: [0, 1], recombination: 0.1}] as const, base = {loci: [R, P], linkages, traits: [both]}
    const doubled = (one: number, other: number) => one * other
    // gamete R P: .45 in coupling, .05 in repulsion
    const wanted = (doubled(0.45, 0.45) + 2 * doubled(0.45, 0.05) + doubled(0.05, 0.05)) / 4
    expect(lostOfUnphased({...base, sire: [[0, 1], [0, 1]], dam: [[0, 1], [0, 1]]})).toBeCloseTo(wanted, 12)
  })
})

describe('phasesOf(genotype)', () => {
  it('tells the chromosomes apart by the first locus that differs', () => {
    expect(phasesOf([[0, 0], [0, 1], [0, 1]])).toEqual([[[0, 0], [0, 1], [0, 1]], [[0, 0], [0, 1], [1, 0]]])
    expect(phasesOf([[0, null]])).toEqual([[[0, null]]])
  })
})
