import {describe, expect, it} from 'vitest'
import {matingsApart, type MatingsApart} from '../../src/findings/matings-apart.ts'
import {expectClose} from '../expect-close.ts'
import {COMB, GROUND, heredityBook, LEGS} from './heredity-book.ts'

const found = (lines: readonly string[], files = {}, alleles?: string): MatingsApart => {
  const {findings: {pedigree, heredity, knownApart}} = heredityBook(lines, alleles, files)
  return matingsApart(pedigree, heredity, knownApart)
}
const tested = (band: string, sex: string, genotype: string) => `${band} ${sex} - - tested={P:~${genotype}}`
const chicks = (sire: string, dam: string, pea: number, single: number) => Array.from({length: pea + single}, (_, index) => `${sire}${dam}${index} female ${sire} ${dam} comb=${index < pea ? 'pea' : 'single'}`)
const left = ({untested}: MatingsApart, trait = 'comb') => untested.find(each => each.trait.id === trait)
const ZEROS = {unsure: 0, phase: 0, unsaid: 0, sexUnknown: 0, alike: 0}

describe('matingsApart(pedigree, heredity, knownApart)', () => {
  it('counts the looks of a mating whose parents are known, with its ratio', () => {
    const {matings, untested} = found([tested('A', 'male', 'P/p+'), tested('B', 'female', 'P/p+'), ...chicks('A', 'B', 3, 2)])
    expect(matings).toMatchObject([{written: 'P/p+ × P/p+', counts: [3, 2], sex: null, pen: null, knownBy: null, ratio: {looks: [0.75, 0.25]}}])
    expect(untested).toMatchObject([ZEROS])
  })

  it('counts every scored chick once, tested or by why it was not', () => {
    const all = found([
      tested('A', 'male', 'P/p+'), tested('B', 'female', 'p+/p+'), tested('C', 'female', 'P/P'), 'D male - - comb=pea', 'E female - - comb=pea',
      ...chicks('A', 'B', 3, 2), ...chicks('A', 'C', 4, 0), ...chicks('D', 'E', 3, 0), ...chicks('D', 'B', 2, 1),
    ])
    const of = all.matings.reduce((sum, {counts}) => sum + counts.reduce((total, count) => total + count, 0), 0)
    const {unsure = 0, alike = 0} = left(all) ?? {}
    expect([of, unsure, alike]).toEqual([5 + 3, 3, 4])
  })

  describe('known by its recessives alone', () => {
    it('is tested by them where both parents show the other allele', () => {
      expect(found(['A male - - comb=pea', 'B female - - comb=pea', ...chicks('A', 'B', 3, 2)]).matings).toMatchObject([{knownBy: 1, counts: [3, 2], written: 'P/p+ × P/p+'}])
    })
    it('is not where a parent’s own look is not known: then chicks of both looks told what it is', () => {
      const all = found(['A male - -', tested('B', 'female', 'p+/p+'), ...chicks('A', 'B', 3, 2)])
      expect(all.matings).toEqual([])
      expect(left(all)).toMatchObject({...ZEROS, unsure: 5})
    })
    it('leaves out the matings of such a cock that show none', () => {
      const pen = '---\nseason: 2023\nmales: [A]\nfemales: [B, C]\nfrom: 2023-01-10\nkeeper: kelpgarth\n---\n', hatch = `---\npen: 2023-A\nset: 2023-03-11\non: 2023-04-01\ntallies:\n${['3, dam: B, comb: pea', '2, dam: B, comb: single', '2, dam: C, comb: pea'].map(each => `  - {chicks: ${each}}\n`).join('')}---\n`
      const old = ['A male - - comb=pea', 'B female - - comb=single', 'C female - - comb=single'].map(line => `${line} hatched=2021-04-01`)
      const all = found(old, {'pens/2023-A.md': pen, 'hatches/2023-01.md': hatch})
      expect(all.matings.map(({dams, knownBy, counts}) => [dams.map(({band}) => band), knownBy, counts])).toEqual([[['B'], 1, [3, 2]]])
      expect(left(all)).toMatchObject({...ZEROS, unsure: 2})
    })
    it('is tested on the Z too, by the daughters; sons of a silver hen look one way and tell nothing', () => {
      const young = Array.from({length: 12}, (_, index) => `k${index} ${index % 2 ? 'male' : 'female'} A B ground=${index % 6 === 0 ? 'gold' : 'silver'}`)
      const all = found(['A male - - ground=silver', 'B female - - ground=silver', ...young], {'traits/ground.md': GROUND}, '{P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}}')
      expect(all.matings).toMatchObject([{written: 'S/s+ × S/-', sex: 'female', knownBy: 1, counts: [4, 2], ratio: {looks: [0.5, 0.5]}}])
      expect(left(all, 'ground')).toMatchObject({...ZEROS, alike: 6})
    })
    it('and of a gold hen by sons and daughters alike', () => {
      const young = Array.from({length: 8}, (_, index) => `k${index} ${index % 2 ? 'male' : 'female'} A B ground=${index < 3 ? 'gold' : 'silver'}`)
      const {matings} = found(['A male - - ground=silver', 'B female - - ground=gold', ...young], {'traits/ground.md': GROUND}, '{P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}}')
      expect(matings).toMatchObject([{written: 'S/s+ × s+/-', sex: null, knownBy: 1, counts: [5, 3]}])
    })
    it('keeps misscoring in its ratio', () => {
      const comb = COMB.replace('required: yes', 'required: yes\nmisscoring: 1%')
      const {matings} = found(['A male - - comb=pea', 'B female - - comb=pea', ...chicks('A', 'B', 11, 5)], {'traits/comb.md': comb})
      // ¾ · 1 % + ¼ · 99 %
      expectClose(matings[0]?.ratio.scored[1] ?? NaN, 0.255, 1e-12)
      expect(matings[0]?.knownBy).toBe(1)
    })
  })

  it('counts as resting on phase what a lethal locus near by would change, and tests what it would not', () => {
    const rose = '---\nname: Comb\nstates: [rose, single]\nloci: [R]\nshows:\n  - {R: R/_, is: rose}\n  - {R: r+/r+, is: single}\n---\n'
    const birds = ['a male - - tested={R:~r+/r+,~Cp:~Cp/cp+}', 'b female - - tested={R:~R/R,~Cp:~cp+/cp+}', 's male a b legs=creeper comb=rose', 'd female a b legs=creeper comb=rose', 'e female a b legs=long comb=rose']
    const young = (dam: string, count: number) => Array.from({length: count}, (_, index) => `${dam}${index} female s ${dam} comb=${index % 4 ? 'rose' : 'single'} legs=${index % 3 ? 'creeper' : 'long'}`)
    const all = found([...birds, ...young('d', 12), ...young('e', 8)], {'traits/comb.md': rose, 'traits/legs.md': LEGS}, '{R: {R: 50%, r+: 50%}, Cp: {Cp: 5%, cp+: 95%}}')
    expect(left(all)).toMatchObject({phase: 12})
    // two short-legged birds lose their Cp/Cp chicks; a long-legged one and a short-legged lose none, and their comb is held to 3 : 1
    expect(all.matings.filter(({trait, dams}) => trait.id === 'comb' && dams[0]?.band === 'e')).toMatchObject([{counts: [6, 2], ratio: {looks: [0.75, 0.25]}}])
  })

  it('passes over broods that could look one way only, and counts those a wrong score could have made stray as passed', () => {
    const birds = [tested('A', 'male', 'P/P'), tested('B', 'female', 'p+/p+'), ...chicks('A', 'B', 5, 0)]
    expect(found(birds)).toMatchObject({matings: [], passed: 0, untested: [{...ZEROS, alike: 5}]})
    expect(found(birds, {'traits/comb.md': COMB.replace('required: yes', 'required: yes\nmisscoring: 1%')})).toMatchObject({matings: [], passed: 1})
  })

  it('leaves out chicks of unknown sex where the sexes differ, and those with a look no rule tells', () => {
    const young = ['k1 unknown x y ground=silver', 'k2 female x y ground=gold', 'k3 female x y ground=silver']
    const files = {'traits/ground.md': GROUND}, birds = ['x male - - tested={S:~S/s+}', 'y female - - tested={S:~S/-}']
    expect(left(found([...birds, ...young], files), 'ground')).toMatchObject({...ZEROS, sexUnknown: 1})
    const partly = COMB.replace('  - {P: _/_, is: single}\n', '')
    expect(left(found([tested('A', 'male', 'P/p+'), tested('B', 'female', 'p+/p+'), ...chicks('A', 'B', 3, 0)], {'traits/comb.md': partly}))).toMatchObject({...ZEROS, unsaid: 3})
  })
})
