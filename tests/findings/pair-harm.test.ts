import {describe, expect, it} from 'vitest'
import {matingForecasts} from '../../src/findings/mating-forecast.ts'
import {oneMoreMale} from '../../src/findings/one-more-male.ts'
import {NO_HARM} from '../../src/findings/pair-harm.ts'
import {burdenWords, lossWords, maleWarning, pairWarning} from '../../src/pages/harm-words.ts'
import {heredityBook, LEGS} from './heredity-book.ts'

const FILES = {'traits/legs.md': LEGS.replace('loci:', 'target: long\nloci:')}
const CREEPERS = '{P: {P: 50%, p+: 50%}, Cp: {Cp: 50%, cp+: 50%}}'
const book = heredityBook([
  'A male - - tested={Cp:~Cp/cp+}', 'B female - - tested={Cp:~Cp/cp+}', 'C female - - tested={Cp:~cp+/cp+}', 'D male - - tested={Cp:~cp+/cp+}',
  'E male A C',
], CREEPERS, FILES), {findings: {pairHarm: harm}, bird} = book

describe('pairHarm(book, heredity, pedigree, alleles)', () => {
  it('takes a quarter of the eggs of two creepers, and none of one', () => {
    expect(harm.lossOf(bird('A'), bird('B'))).toMatchObject({share: expect.closeTo(1 / 4, 12) as number, ifScored: false})
    expect(harm.lossOf(bird('A'), bird('C'))).toBeNull()
    expect(harm.lossOf(bird('D'), bird('B'))).toBeNull()
    // by hand: a carrier half the time
    expect(harm.lossOf(bird('E'), bird('B'))?.share).toBeCloseTo(1 / 8, 12)
  })

  it('is what the forecast of a mating says, of birds that share nothing', () => {
    const [found] = matingForecasts(book.book, book.findings.heredity, book.findings.pedigree, [{sire: bird('E'), dam: bird('B')}])
    expect(harm.lossOf(bird('E'), bird('B'))?.share).toBeCloseTo(found?.lost[0]?.share ?? NaN, 12)
  })

  it('takes a bird for what it was scored as, where its kin say otherwise', () => {
    const misread = {'traits/legs.md': FILES['traits/legs.md'].replace('target: long', 'target: long\nmisscoring: 2%')}
    const doubted = heredityBook(['B female - - tested={Cp:~Cp/cp+}', 'C female - - tested={Cp:~cp+/cp+}', 'D male - - tested={Cp:~cp+/cp+}', 'F male D C legs=creeper'], CREEPERS, misread)
    const {findings: {pairHarm: found}, bird: named} = doubted
    expect(found.lossOf(named('F'), named('B'))).toMatchObject({share: expect.closeTo(1 / 4, 12) as number, ifScored: true})
    expect(burdenWords(found.burdensOf(named('F')))).toBe('was scored as having Cp')
  })

  it('tells who carries what kills, with its chance', () => {
    expect(['A', 'D', 'E'].map(each => burdenWords(harm.burdensOf(bird(each))))).toEqual(['carries Cp', '', 'may carry Cp (50.0%)'])
  })

  it('says nothing of a book without lethal rules', () => {
    const {findings, bird: named} = heredityBook(['A male - -', 'B female - -'])
    expect([findings.pairHarm.lossOf(named('A'), named('B')), findings.pairHarm.burdensOf(named('A'))]).toEqual([null, []])
  })
})

describe('harm in words', () => {
  it('names the hen, the share and the locus', () => {
    const loss = harm.lossOf(bird('A'), bird('B'))
    expect(loss && lossWords(loss)).toBe('can lose 25.0% of its chicks, Cp')
    expect(maleWarning(bird('A'), [bird('C'), bird('B')], harm)).toBe('with B can lose 25.0% of its chicks, Cp')
    expect(maleWarning(bird('A'), [bird('C')], harm)).toBe('carries Cp')
    expect([pairWarning(bird('A'), bird('C'), harm), pairWarning(bird('D'), bird('B'), harm), pairWarning(bird('D'), bird('C'), harm)]).toEqual(['he carries Cp', 'she carries Cp', ''])
  })
})

describe('oneMoreMale(census, choices, pedigree, kinship, harm)', () => {
  it('never chooses a male that carries what kills', () => {
    const {census, pedigree, kinship} = book.findings, breeders = {...census, ownBreeders: [bird('D'), bird('B')]}
    const of = (asked: typeof harm) => oneMoreMale(breeders, [bird('A'), bird('E')], pedigree, kinship, asked)
    expect(of(NO_HARM)?.choices.length).toBe(2)
    expect([of(harm)?.choices.length, of(harm)?.harmful.map(({male}) => male.band).sort()]).toEqual([0, ['A', 'E']])
  })
})
