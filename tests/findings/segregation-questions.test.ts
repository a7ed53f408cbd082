import {describe, expect, it} from 'vitest'
import {questionsOf} from '../../src/findings/segregation-questions.ts'
import {matingsApart} from '../../src/findings/matings-apart.ts'
import {expectClose} from '../expect-close.ts'
import {COMB, heredityBook} from './heredity-book.ts'

const tested = (band: string, sex: string, genotype: string) => `${band} ${sex} - - tested={P:~${genotype}} hatched=2021-04-01`
const chicks = (sire: string, dam: string, pea: number, single: number) => Array.from({length: pea + single}, (_, index) => `${sire}${dam}${index} female ${sire} ${dam} comb=${index < pea ? 'pea' : 'single'}`)
const PEN = '---\nseason: 2023\nmales: [A, D, E]\nfemales: [B, C]\nfrom: 2023-01-10\nkeeper: kelpgarth\n---\n'

/** The questions of the mating of a cock and a hen. */
function asked(lines: readonly string[], sire: string, dam: string, others: readonly number[] = [], files = {}) {
  const {book, findings: {pedigree, heredity, knownApart}} = heredityBook(lines, undefined, files)
  const mating = matingsApart(pedigree, heredity, knownApart).matings.find(each => each.sires[0]?.band === sire && each.dams[0]?.band === dam)
  if (!mating) throw new Error('no mating')
  return questionsOf(book, pedigree, heredity, mating, others)
}

describe('questionsOf(book, pedigree, heredity, mating, others)', () => {
  const birds = [tested('A', 'male', 'P/p+'), tested('D', 'male', 'P/P'), tested('E', 'male', 'p+/p+'), tested('B', 'female', 'p+/p+'), tested('C', 'female', 'p+/p+')]

  it('names other birds of the pen with which the counts would be likelier, the likeliest first, by how many times', () => {
    const {parents} = asked([...birds, ...chicks('A', 'B', 10, 0)], 'A', 'B', [], {'pens/2023-A.md': PEN})
    // all pea of P/P, half and half of P/p+: 2¹⁰; of E none could be pea, so he is no answer, and C is like B
    expect(parents.map(({bird, role, cross}) => [bird.band, role, cross])).toEqual([['D', 'sire', 'P/P × p+/p+']])
    expectClose(parents[0]?.times ?? NaN, 1024, 1e-6)
  })

  it('says of parents who cannot give such chicks that the others make them possible', () => {
    const {parents, misscored} = asked([...birds, ...chicks('D', 'B', 9, 1)], 'D', 'B', [], {'pens/2023-A.md': PEN})
    expect(parents.map(({bird, times}) => [bird.band, times])).toEqual([['A', null]])
    // one wrong score is likelier than a wrong test and luck in nine
    expect(misscored.map(({chick}) => (chick.kind === 'bird' ? chick.band : ''))).toEqual(['DB9'])
  })

  it('names doubtful scores from 5 in 100 on, the most doubtful first', () => {
    // a carrier and a single give half and half: one wrong score in ten makes a single one wrong with 1/10, where all are single
    const comb = COMB.replace('required: yes', 'required: yes\nmisscoring: 10%')
    const {misscored} = asked([...birds, ...chicks('A', 'B', 0, 8)], 'A', 'B', [], {'traits/comb.md': comb})
    expect(misscored.length).toBe(8)
    for (const {chance} of misscored) expectClose(chance, 0.1, 1e-9)
    const few = COMB.replace('required: yes', 'required: yes\nmisscoring: 4%')
    expect(asked([...birds, ...chicks('A', 'B', 0, 8)], 'A', 'B', [], {'traits/comb.md': few}).misscored).toEqual([])
  })

  it('counts how many other matings of the cross stray', () => {
    expect(asked([...birds, ...chicks('A', 'B', 10, 0)], 'A', 'B', [0.5, 0.04, 0.05, 0.001]).rule).toEqual({otherMatings: 4, straying: 2})
  })
})
