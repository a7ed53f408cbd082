import {describe, expect, it} from 'vitest'
import {genotypesAt, readGenotype} from '../../src/heredity/genotype-notation.ts'
import type {Alleles, Locus} from '../../src/heredity/locus.ts'
import {lethalFirst, lookOf, type LookRules} from '../../src/heredity/look-rules.ts'
import {expectClose} from '../expect-close.ts'

interface Line {
  readonly fits: Readonly<Record<string, string>>
  readonly is: string
  readonly sex?: 'male' | 'female'
  readonly penetrance?: number
}

const locus = (symbol: string, alleles: string, on: Locus['on'] = 'autosome'): Locus => ({symbol, on, alleles: alleles.split(' ')})
const R = locus('R', 'R r+'), P = locus('P', 'P p+'), C = locus('C', 'C+ c'), Bl = locus('Bl', 'Bl bl+'), S = locus('S', 'S s+', 'Z')
const Po = locus('Po', 'Po po+'), Cp = locus('Cp', 'Cp cp+'), O = locus('O', 'O o+')

function rulesOf(loci: readonly Locus[], states: readonly string[], lines: readonly Line[], seenIn: LookRules['seenIn'] = null): LookRules {
  return {
    loci: loci.map((_, place) => place), states, seenIn,
    rules: lines.map(({fits, is, sex = null, penetrance = 1}) => ({
      patterns: loci.map(each => {
        const text = fits[each.symbol]
        const read = text === undefined ? null : readGenotype(text, each)
        if (read && read.kind !== 'read') throw new Error(text)
        return read && read.pattern
      }),
      is: is === 'lethal' ? is : states.indexOf(is), sex, penetrance,
    })),
  }
}

/** Shares of the looks among all chicks of two birds, every gamete as likely as every other; lethal chicks counted as such. */
function chicksOf(rules: LookRules, sire: readonly Alleles[], dam: readonly Alleles[]): Record<string, number> {
  const shares: Record<string, number> = {}
  const gametes = (bird: readonly Alleles[]): number[][] => bird.reduce<number[][]>((all, [one, other]) => all.flatMap(gamete => [[...gamete, one], [...gamete, other ?? one]]), [[]])
  const [ofSire, ofDam] = [gametes(sire), gametes(dam)]
  for (const one of ofSire) for (const other of ofDam) {
    const chick = one.map((allele, place): Alleles => [Math.min(allele, other[place] ?? 0), Math.max(allele, other[place] ?? 0)])
    const {states, lethal, unsaid} = lookOf(rules, chick, 'male')
    const share = 1 / (ofSire.length * ofDam.length)
    const entries: [string, number][] = [...rules.states.map((state, place): [string, number] => [state, states[place] ?? 0]), ['lethal', lethal], ['unsaid', unsaid]]
    for (const [name, chance] of entries) if (chance > 0) shares[name] = (shares[name] ?? 0) + chance * share
  }
  return shares
}

const HET: Alleles = [0, 1]

describe('lookOf', () => {
  it('gives walnut, rose, pea and single as 9 : 3 : 3 : 1', () => {
    // source: Bateson 1902, as every textbook of genetics has it
    const comb = rulesOf([R, P], ['walnut', 'rose', 'pea', 'single'], [
      {fits: {R: 'R/_', P: 'P/_'}, is: 'walnut'}, {fits: {R: 'R/_'}, is: 'rose'}, {fits: {P: 'P/_'}, is: 'pea'}, {fits: {}, is: 'single'},
    ])
    expect(chicksOf(comb, [HET, HET], [HET, HET])).toEqual({walnut: 9 / 16, rose: 3 / 16, pea: 3 / 16, single: 1 / 16})
  })

  it('lets recessive white hide the blue beneath: 3 : 6 : 3 coloured, 4 white', () => {
    const colour = rulesOf([C, Bl], ['white', 'splash', 'blue', 'black'], [
      {fits: {C: 'c/c'}, is: 'white'}, {fits: {Bl: 'Bl/Bl'}, is: 'splash'}, {fits: {Bl: 'Bl/bl+'}, is: 'blue'}, {fits: {Bl: 'bl+/bl+'}, is: 'black'},
    ])
    expect(chicksOf(colour, [HET, HET], [HET, HET])).toEqual({white: 4 / 16, splash: 3 / 16, blue: 6 / 16, black: 3 / 16})
  })

  it('tells the carrier of incomplete dominance from both others', () => {
    const blue = rulesOf([Bl], ['splash', 'blue', 'black'], [{fits: {Bl: 'Bl/Bl'}, is: 'splash'}, {fits: {Bl: 'Bl/_'}, is: 'blue'}, {fits: {Bl: '_/_'}, is: 'black'}])
    expect(genotypesAt(Bl, 'male').map(each => [...lookOf(blue, [each], 'male').states])).toEqual([[1, 0, 0], [0, 1, 0], [0, 0, 1]])
  })

  it('reads a hen’s single Z, and a rule for one sex alone', () => {
    const ground = rulesOf([S], ['silver', 'brassy', 'gold'], [{fits: {S: 'S/s+'}, is: 'brassy', sex: 'male'}, {fits: {S: 'S/_'}, is: 'silver'}, {fits: {S: 's+/_'}, is: 'gold'}])
    expect(genotypesAt(S, 'female').map(each => [...lookOf(ground, [each], 'female').states])).toEqual([[1, 0, 0], [0, 0, 1]])
    expect(genotypesAt(S, 'male').map(each => [...lookOf(ground, [each], 'male').states])).toEqual([[1, 0, 0], [0, 1, 0], [0, 0, 1]])
  })

  it('hands what penetrance leaves to the next rule that fits', () => {
    const toes = rulesOf([Po], ['five', 'four'], [{fits: {Po: 'Po/Po'}, is: 'five', penetrance: 0.9}, {fits: {Po: 'Po/_'}, is: 'five', penetrance: 0.5}, {fits: {}, is: 'four'}])
    expectClose(lookOf(toes, [[0, 0]], 'male').states[0] ?? 0, 0.95, 1e-12)
    expectClose(lookOf(toes, [[0, 0]], 'male').states[1] ?? 0, 0.05, 1e-12)
    expect([...lookOf(toes, [HET], 'female').states]).toEqual([0.5, 0.5])
    expect([...lookOf(toes, [[1, 1]], 'female').states]).toEqual([0, 1])
  })

  it('keeps what never hatches apart: 1 lethal, 2 short, 1 long', () => {
    const legs = rulesOf([Cp], ['short', 'long'], [{fits: {Cp: 'Cp/Cp'}, is: 'lethal'}, {fits: {Cp: 'Cp/_'}, is: 'short'}, {fits: {}, is: 'long'}])
    expect(chicksOf(legs, [HET], [HET])).toEqual({lethal: 1 / 4, short: 1 / 2, long: 1 / 4})
  })

  it('lets what kills go before every look, wherever its rule stands', () => {
    const legs = rulesOf([R, Cp], ['rose short', 'short', 'long'], [{fits: {R: 'R/_', Cp: 'Cp/_'}, is: 'rose short'}, {fits: {Cp: 'Cp/Cp'}, is: 'lethal', penetrance: 0.75}, {fits: {Cp: 'Cp/_'}, is: 'short'}, {fits: {}, is: 'long'}])
    expect(lookOf(legs, [HET, [0, 0]], 'male')).toEqual({states: new Float64Array([0.25, 0, 0]), lethal: 0.75, unsaid: 0})
    expect(lookOf(legs, [[1, 1], [0, 0]], 'male')).toEqual({states: new Float64Array([0, 0.25, 0]), lethal: 0.75, unsaid: 0})
    expect(lethalFirst(legs.rules).map(({is}) => is)).toEqual(['lethal', 0, 1, 2])
  })

  it('says nothing of what no rule names, and of a sex that cannot show it, unless it kills', () => {
    const shell = rulesOf([O], ['blue', 'other'], [{fits: {O: 'O/O'}, is: 'lethal', penetrance: 0.25}, {fits: {O: 'O/_'}, is: 'blue'}], 'female')
    expect(lookOf(shell, [[1, 1]], 'female')).toEqual({states: new Float64Array(2), lethal: 0, unsaid: 1})
    expect(lookOf(shell, [[0, 0]], 'female')).toEqual({states: new Float64Array([0.75, 0]), lethal: 0.25, unsaid: 0})
    expect(lookOf(shell, [[0, 0]], 'male')).toEqual({states: new Float64Array(2), lethal: 0.25, unsaid: 0.75})
  })

  it('finds its loci by their places in a longer list', () => {
    const blue: LookRules = {...rulesOf([Bl], ['splash', 'other'], [{fits: {Bl: 'Bl/Bl'}, is: 'splash'}, {fits: {}, is: 'other'}]), loci: [2]}
    expect([...lookOf(blue, [[1, 1], [1, 1], [0, 0]], 'male').states]).toEqual([1, 0])
    expect(() => lookOf(blue, [[1, 1]], 'male')).toThrow(RangeError)
  })

  it('always makes a whole', () => {
    const toes = rulesOf([Po, S], ['five', 'four'], [{fits: {Po: 'Po/_', S: 'S/_'}, is: 'five', penetrance: 0.7}, {fits: {S: 's+/-'}, is: 'lethal', penetrance: 0.3}, {fits: {Po: 'po+/po+'}, is: 'four'}])
    for (const sex of ['male', 'female'] as const) for (const one of genotypesAt(Po, sex)) for (const other of genotypesAt(S, sex)) {
      const {states, lethal, unsaid} = lookOf(toes, [one, other], sex)
      expectClose(states.reduce((sum, chance) => sum + chance, lethal + unsaid), 1, 1e-12)
    }
  })
})
