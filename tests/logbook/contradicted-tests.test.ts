import {describe, expect, it} from 'vitest'
import {contradictedTests} from '../../src/logbook/contradicted-tests.ts'
import {around, bookOf, codesAt, inspectFiles, type Files} from './around.ts'

const COMB = '---\nname: Comb\nstates: [pea, single]\nloci:\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: p+/p+, is: single}\n---\n'
const LEGS = '---\nname: Legs\nstates: [short, long]\nloci:\n  Cp: {on: autosome, alleles: [Cp, cp+]}\nshows:\n  - {Cp: Cp/Cp, is: lethal}\n  - {Cp: Cp/_, is: short}\n  - {Cp: cp+/cp+, is: long}\n---\n'
const GROUND = '---\nname: Ground\nstates: [silver, gold]\nloci:\n  S: {on: Z, alleles: [S, s+]}\nshows:\n  - {S: S/_, is: silver}\n  - {S: s+/_, is: gold}\n---\n'
const bird = (band: string, sex: string, ...more: string[]) => ({[`birds/${band}.md`]: ['---', `band: ${band}`, `sex: ${sex}`, ...more, '---', ''].join('\n')})
const MIXED = {'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\nalleles: {P: {P: 50%, p+: 50%}}\n---\n'}
const filesOf = (...more: Files[]): Files => Object.assign({'traits/comb.md': COMB, 'traits/legs.md': LEGS, 'traits/ground.md': GROUND, ...MIXED}, ...more) as Files
const against = (...more: Files[]) => contradictedTests(bookOf(filesOf(...more))).map(found => `${found.bird.band} ${found.locus.symbol} ${found.against.map(({kind}) => kind).join(' ')}`)
const child = (tested: string, ...more: string[]) => bird('24-1', 'female', 'hatched: 2024-04-01', 'sire: H-1', 'dam: B-7', `tested: {${tested}}`, ...more)

describe('contradictedTests(book)', () => {
  it('finds an allele that the strain has not, stated or by what it is true for', () => {
    expect(against(bird('H-7', 'male', 'strain: holm-white', 'tested: {P: P/p+}'))).toEqual(['H-7 P strain'])
    expect(against(bird('H-7', 'male', 'strain: holm-white', 'tested: {P: p+/_}'))).toEqual([])
    expect(against(bird('B-7', 'male', 'strain: fell-buff', 'tested: {P: P/p+}'))).toEqual([])
  })
  it('finds a look that no bird of the genotype has, whatever misscoring allows for', () => {
    expect(against(bird('B-7', 'male', 'strain: fell-buff', 'tested: {P: P/_}', 'comb: single'))).toEqual(['B-7 P look'])
    expect(against({'traits/comb.md': COMB.replace('loci:', 'misscoring: 1%\nloci:')}, bird('B-7', 'male', 'strain: fell-buff', 'tested: {P: P/_}', 'comb: single'))).toEqual(['B-7 P look'])
    expect(against(bird('B-7', 'male', 'strain: fell-buff', 'tested: {P: P/_}', 'comb: pea'))).toEqual([])
  })
  it('finds a genotype that never hatches', () => expect(against(bird('B-7', 'male', 'strain: fell-buff', 'tested: {Cp: Cp/Cp}'))).toEqual(['B-7 Cp lethal']))
  it('finds what a parent has not to hand on, by its test or its strain', () => {
    expect(against(bird('B-7', 'female', 'strain: fell-buff', 'tested: {P: p+/p+}'), child('P: P/p+'))).toEqual(['24-1 P parent parent'])
    expect(against(bird('B-7', 'female', 'strain: fell-buff', 'tested: {P: P/P}'), child('P: P/p+'))).toEqual([])
    expect(against(bird('B-7', 'female', 'strain: fell-buff'), child('P: P/P'))).toEqual(['24-1 P parent'])
    expect(against(bird('B-7', 'female', 'strain: fell-buff'), bird('24-1', 'female', 'sire: {H-1: 60%, H-2: 40%}', 'dam: B-7', 'tested: {P: P/P}'))).toEqual([])
  })
  it('finds what a parent has not to hand on by a look that is never scored wrongly, and trusts none that may be', () => {
    const dam = bird('B-7', 'female', 'strain: fell-buff', 'comb: single')
    const sire = bird('B-8', 'male', 'strain: fell-buff', 'comb: single'), chick = bird('24-1', 'female', 'hatched: 2024-04-01', 'sire: B-8', 'dam: B-7', 'tested: {P: P/p+}')
    expect(against(sire, dam, chick)).toEqual(['24-1 P parent parent'])
    expect(against({'traits/comb.md': COMB.replace('loci:', 'misscoring: 1%\nloci:')}, sire, dam, chick)).toEqual([])
  })
  it('lets a daughter have her sire’s Z alone', () => {
    const sire = bird('H-7', 'male', 'strain: holm-white', 'tested: {S: S/S}'), dam = bird('B-7', 'female', 'strain: fell-buff', 'tested: {S: s+/-}')
    const daughter = (tested: string) => bird('24-1', 'female', 'hatched: 2024-04-01', 'sire: H-7', 'dam: B-7', `tested: {S: ${tested}}`)
    expect(against(sire, dam, daughter('S/-'))).toEqual([])
    expect(against(sire, dam, daughter('s+/-'))).toEqual(['24-1 S parent'])
  })
  it('leaves a genotype that the sex cannot have to the rule that says so', () => {
    const {problems} = inspectFiles(around(filesOf(bird('B-7', 'female', 'strain: fell-buff', 'tested: {S: S/s+}'))))
    expect(problems.map(({code}) => code)).toEqual(['tested-impossible'])
  })
})

describe('a warning of a contradicted test', () => {
  it('stands at the test, names every record against it and what to mend, and is the only one', () => {
    const {problems} = inspectFiles(around(filesOf(bird('H-7', 'male', 'strain: holm-white', 'comb: single', 'tested: {P: P/P}'))))
    expect(codesAt(problems)).toEqual(['birds/H-7.md:6 test-contradicted'])
    expect(problems[0]?.reason).toBe('H-7 was tested P P/P, but it was scored single in Comb, which no such bird is; and its strain holm-white has no P by what it is true for')
    expect(problems[0]?.remedy).toBe('see whether the sample was of H-7 and the genotype is written right; else look at the bird again and strike the score; else mend what is written of holm-white, or the bird’s strain')
    expect(problems[0]?.related?.map(({place}) => `${place.file}:${place.start.line}`)).toEqual(['birds/H-7.md:5', 'strains/holm-white.md:4'])
  })
  it('says of a parent by what it cannot hand it on', () => {
    const {problems} = inspectFiles(around(filesOf(bird('B-7', 'female', 'strain: fell-buff', 'tested: {P: p+/p+}'), child('P: P/_'))))
    expect(codesAt(problems)).toEqual(['birds/24-1.md:7 test-contradicted'])
    expect(problems[0]?.reason).toBe('24-1 was tested P P/_, but its sire H-1, of holm-white, cannot hand that on; and its dam B-7, tested p+/p+, cannot hand that on')
    expect(problems[0]?.remedy).toBe('see whether the sample was of 24-1 and the genotype is written right; else see whether H-1 is its sire; else see whether the sample of that test was of B-7; else see whether B-7 is its dam')
  })
  it('never asks to mend what the reference says is lethal', () => {
    const {problems} = inspectFiles(around(filesOf(bird('B-7', 'male', 'strain: fell-buff', 'tested: {Cp: Cp/Cp}'))))
    expect(problems.map(({code, remedy}) => `${code}: ${remedy}`)).toEqual(['test-contradicted: see whether the sample was of B-7 and the genotype is written right'])
  })
})
