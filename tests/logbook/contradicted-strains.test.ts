import {describe, expect, it} from 'vitest'
import {contradictedStrains} from '../../src/logbook/contradicted-strains.ts'
import {around, bookOf, codesAt, inspectFiles} from './around.ts'

const COMB = '---\nname: Comb\nstates: [pea, single]\nloci:\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: p+/p+, is: single}\n---\n'
const TOES = '---\nname: Toes\nstates: [five, four]\nloci:\n  Po: {on: autosome, alleles: [Po, po+]}\nshows:\n  - {Po: Po/_, is: five, penetrance: 80%}\n  - {Po: _/_, is: four}\n---\n'
const buff = (trueFor: string) => `---\nname: Fell Buff\nrole: donor\ntrue-for: {${trueFor}}\n---\n`
const bird = (band: string, sex: string, ...more: string[]) => ['---', `band: ${band}`, `sex: ${sex}`, ...more, '---', ''].join('\n')
const founders = (...looks: string[]) => Object.fromEntries(looks.map((look, index) => [`birds/B-${index + 7}.md`, bird(`B-${index + 7}`, 'female', 'strain: fell-buff', look)]))

describe('contradictedStrains(book)', () => {
  it('finds a strain none of whose scored founders has the look it is true for', () => {
    const [only, ...more] = contradictedStrains(bookOf({'traits/comb.md': COMB, 'strains/fell-buff.md': buff('comb: single'), ...founders('comb: pea', 'comb: pea')}))
    expect(more).toEqual([])
    expect([only?.strain.id, only?.trait.id, only?.state, only?.founders.map(each => each.bird.band)]).toEqual(['fell-buff', 'comb', 'single', ['B-7', 'B-8']])
  })
  it('holds to the strain where one of them has it, or none was scored', () => {
    expect(contradictedStrains(bookOf({'strains/fell-buff.md': buff('comb: single'), ...founders('comb: pea', 'comb: single')}))).toEqual([])
    expect(contradictedStrains(bookOf({'strains/fell-buff.md': buff('comb: single')}))).toEqual([])
  })
  it('asks nothing where the look does not always show', () => {
    expect(contradictedStrains(bookOf({'traits/toes.md': TOES, 'strains/fell-buff.md': buff('comb: pea, toes: five'), ...founders('toes: four')}))).toEqual([])
  })
})

describe('a warning of a strain that none of its founders is like', () => {
  it('stands at the strain, and neither its founders nor their chicks are blamed as well', () => {
    const chick = bird('24-1', 'male', 'hatched: 2024-04-01', 'sire: H-1', 'dam: B-7', 'comb: pea')
    const {problems} = inspectFiles(around({'traits/comb.md': COMB, 'strains/fell-buff.md': buff('comb: single'), ...founders('comb: pea', 'comb: pea'), 'birds/24-1.md': chick}))
    expect(codesAt(problems)).toEqual(['strains/fell-buff.md:4 true-for-contradicted'])
    expect(problems[0]?.reason).toBe('fell-buff is said to breed true for Comb single, and all 2 birds of it that were scored are pea')
    expect(problems[0]?.related?.map(({place}) => place.file)).toEqual(['birds/B-7.md', 'birds/B-8.md'])
  })
  it('leaves to a founder that is alone with its look a warning that speaks of its strain', () => {
    const {problems} = inspectFiles(around({'traits/comb.md': COMB, 'strains/fell-buff.md': buff('comb: pea'), ...founders('comb: pea', 'comb: pea', 'comb: single')}))
    expect(codesAt(problems)).toEqual(['birds/B-9.md:1 impossible-family'])
    expect(problems[0]?.reason).toBe('B-9 was scored single in Comb, which no bird of its strain fell-buff can be; it must be pea, if what is said of fell-buff is right, though the records of Comb allow for no wrong score')
    expect(problems[0]?.remedy).toBe('look again at the bird and strike the score if it is wrong; else see whether it is of fell-buff, and mend what is said of that; else mend the rule of the trait')
    expect(problems[0]?.related?.map(({place}) => `${place.file}:${place.start.line}`)).toEqual(['strains/fell-buff.md:4'])
  })
})
