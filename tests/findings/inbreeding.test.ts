import {describe, expect, it} from 'vitest'
import {kinshipOfBook} from '../../src/findings/inbreeding.ts'
import {pedigreeOfBook} from '../../src/findings/pedigree-of-book.ts'
import {bookOf, type Files} from '../logbook/around.ts'

const file = (band: string, lines: string) => `---\nband: ${band}\n${lines}\n---\n`

function worked(files: Files) {
  const book = bookOf(files)
  const kin = kinshipOfBook(pedigreeOfBook(book))
  const named = (band: string) => {
    const found = book.birds.find(each => each.band === band)
    if (!found) throw new Error(`no ${band}`)
    return found
  }
  return {kin, of: (band: string) => kin.of(named(band)), between: (a: string, b: string) => kin.between(named(a), named(b))}
}

describe('kinshipOfBook(pedigree)', () => {
  // a cock, his daughter, and her chicks by him or by a stranger
  const {of, between, kin} = worked({
    'birds/24-901.md': file('24-901', 'sex: female\nsire: H-1\ndam: B-2'),
    'birds/24-902.md': file('24-902', 'sex: male\nsire: {H-1: 50%, H-2: 50%}\ndam: 24-901'), 'birds/24-903.md': file('24-903', 'sex: female\nsire: H-1\ndam: 24-901'),
  })

  it('gives F with its range, by hand', () => {
    expect(of('24-902').f).toEqual({mean: 0.125, low: 0, high: 0.25, likeliest: 0.25})
    expect(of('24-903').f).toEqual({mean: 0.25, low: 0.25, high: 0.25, likeliest: 0.25})
    expect(between('H-1', '24-901')).toBe(0.25)
  })

  it('gives the Z of cocks alone', () => {
    // H-1 with his daughter, who has her one Z from him: the chance that two draws of his two take the same
    expect(of('24-902').onZ).toEqual({mean: 0.25, low: 0, high: 0.5, likeliest: 0.5})
    expect(of('24-903').onZ).toBeNull()
  })

  it('says how far descent is known, and where F is at least what it says', () => {
    expect(['H-1', '24-901', '24-902'].map(band => [of(band).full, of(band).equivalent, of(band).atLeast])).toEqual([[0, 0, true], [1, 1, true], [1, 1.5, true]])
    const deep = worked({
      'birds/24-901.md': file('24-901', 'sex: female\nsire: H-1\ndam: B-2'), 'birds/24-904.md': file('24-904', 'sex: male\nsire: H-2\ndam: B-1'), 'birds/24-905.md': file('24-905', 'sire: 24-904\ndam: 24-901'),
    })
    expect([deep.of('24-905').full, deep.of('24-905').equivalent, deep.of('24-905').atLeast]).toEqual([2, 2, false])
  })

  it('works the project’s own part alone once more only where a strain states something', () => {
    expect(kin.since).toBe(kin.autosome)
    const stated = worked({'strains/holm-white.md': '---\nname: Holm White\nrole: recurrent\ninbreeding: 6%\nkinship: 5%\n---\n', 'birds/24-901.md': file('24-901', 'sex: male\nsire: H-1\ndam: H-3')})
    expect(stated.of('24-901').f.mean).toBe(0.05)
    expect(stated.kin.since.inbreeding.every(({mean}) => mean === 0)).toBe(true)
  })
})
