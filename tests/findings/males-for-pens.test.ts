import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {bookOf, type Files} from '../logbook/around.ts'

const chick = (band: string, sex: string, hatched: string, sire: string, dam: string, more = '') => `---\nband: ${band}\nsex: ${sex}\nhatched: ${hatched}\nsire: ${sire}\ndam: ${dam}\n${more}---\n`
/** two F1 hens, one of H-1 and one of H-2, in a pen with the brother of the first; a second cockerel is the brother of the other */
const files: Files = {
  'birds/24-1.md': chick('24-1', 'male', '2024-04-01', 'H-1', 'B-1'), 'birds/24-2.md': chick('24-2', 'female', '2024-04-01', 'H-1', 'B-1'),
  'birds/24-3.md': chick('24-3', 'female', '2024-04-01', '{H-2: 50%, H-1: 50%}', 'B-2'), 'birds/24-4.md': chick('24-4', 'male', '2024-04-01', 'H-2', 'B-2'),
  'birds/24-5.md': chick('24-5', 'male', '2024-04-01', 'H-1', 'B-3', 'left: 2024-11-01 sold\n'),
  'pens/2025-A.md': '---\nseason: 2025\nmales: [24-1]\nfemales: [24-2, 24-3]\nfrom: 2025-02-10\n---\n',
}

describe('malesForPens(book, census, pedigree, kinship)', () => {
  const {pairings} = study(bookOf(files))
  const [pen] = pairings.pens

  it('asks of living males of the new breed, whether in the pen or young', () => {
    expect(pairings.males.map(({band}) => band).sort()).toEqual(['24-1', '24-4'])
    expect(pen?.hens.map(({band}) => band)).toEqual(['24-2', '24-3'])
  })

  it('puts first the male whose chicks are least inbred, by hand', () => {
    // 24-1: full sister ¼, and 24-3 half sister with a chance of ½: 1/16. 24-4: 24-2 nothing; 24-3 full or half sister by the dam: 3/16
    expect(pen?.males.map(({male, mean, here}) => [male.band, mean, here])).toEqual([['24-4', 3 / 32, false], ['24-1', 5 / 32, true]])
  })

  it('tries the worst pair at the upper end of its range', () => {
    const [first, second] = pen?.males ?? []
    expect(first?.worst).toMatchObject({mean: 3 / 16, low: 1 / 8, high: 1 / 4})
    expect(first?.worst.hen.band).toBe('24-3')
    expect(second?.worst).toMatchObject({mean: 1 / 4, low: 1 / 4, high: 1 / 4})
    const [a, b] = pairings.males
    if (!a || !b) throw new Error('no males')
    expect(pairings.chicksOf(a, b)).toEqual(pairings.chicksOf(b, a))
  })
})
