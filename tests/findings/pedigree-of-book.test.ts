import {describe, expect, it} from 'vitest'
import {kinshipOfBook} from '../../src/findings/inbreeding.ts'
import {pedigreeOfBook} from '../../src/findings/pedigree-of-book.ts'
import type {Bird, Logbook} from '../../src/logbook/book.ts'
import {bookOf, type Files} from '../logbook/around.ts'
import {bird, logbook} from '../pages/small-logbook.ts'

const file = (band: string, lines: string) => `---\nband: ${band}\n${lines}\n---\n`
const hatch = (lines: string, chicks: string) => `---\n${lines}\nset: 2024-03-02\nchicks:\n${chicks}\n---\n`

function seen(files: Files) {
  const book = bookOf(files)
  const found = pedigreeOfBook(book)
  const kin = kinshipOfBook(found)
  const named = (band: string) => birdIn(book, band)
  return {
    ...found, book, f: (band: string) => kin.of(named(band)).f, between: (a: string, b: string) => Number(kin.between(named(a), named(b)).toFixed(9)),
    animal: (band: string) => found.pedigree.animals[found.numberOf(named(band))], number: (band: string) => found.numberOf(named(band)),
  }
}
function birdIn(book: Logbook, band: string): Bird {
  const found = book.birds.find(each => each.band === band)
  if (!found) throw new Error(`no ${band}`)
  return found
}

describe('pedigreeOfBook(book)', () => {
  it('numbers the book’s birds in its order, founders of a strain by its base', () => {
    const {pedigree, book, birds, numberOf, baseOf, animal} = seen({'strains/holm-white.md': '---\nname: Holm White\nrole: recurrent\ninbreeding: 6%\nkinship: 5%\n---\n'})
    expect(birds.map(numberOf)).toEqual(book.birds.map((_, index) => index))
    const base = book.strains.map(baseOf)
    expect(pedigree.bases.map(({inbreeding, kinship, within}) => [inbreeding, kinship, within])).toEqual(book.strains.map(({inbreeding, kinship}) => [inbreeding, kinship, null]))
    expect(animal('H-1')?.base).toBe(base[book.strains.findIndex(({id}) => id === 'holm-white')])
  })

  it('refuses a bird and a strain that are not in the book', () => {
    const {numberOf} = pedigreeOfBook(logbook('2025-01-01', {birds: [bird('1', 'male')]}))
    expect(() => numberOf(bird('9', 'male'))).toThrow('9 is not in the book')
    expect(() => pedigreeOfBook(logbook('2025-01-01', {strains: []})).baseOf(bird('1', 'male').strain ?? (() => { throw new Error('no strain') })())).toThrow('is not in the book')
  })

  it('gives hatch mates one list of matings', () => {
    const {animal} = seen({'hatches/2024-09.md': hatch('pen: 2024-A', '  - {band: 24-901}\n  - {band: 24-902}')})
    expect(animal('24-901')?.matings).toBe(animal('24-902')?.matings)
    expect(animal('24-901')?.matings).toHaveLength(2)
  })

  describe('a family of one unknown dam', () => {
    const chicks = '  - {band: 24-901, family: basket-2}\n  - {band: 24-902, family: basket-2}\n  - {band: 24-903}\n  - {band: 24-904, family: basket-3, dam: B-1}\n  - {band: 24-905, family: basket-3}'
    const {animal, pedigree, book, number, between} = seen({'hatches/2024-09.md': hatch('pen: 2024-A', chicks)})

    it('has one hen for all its chicks, who may be any hen of the pen', () => {
      expect(animal('24-901')?.damStandIn).toBe(book.birds.length)
      expect(animal('24-902')?.damStandIn).toBe(book.birds.length)
      expect(animal('24-903')?.damStandIn).toBeUndefined()
      expect(pedigree.animals[book.birds.length]).toMatchObject({sex: 'female', oneOf: [{animal: number('B-1'), chance: 0.5}, {animal: number('B-2'), chance: 0.5}]})
      // one known dam needs none
      expect(animal('24-905')?.damStandIn).toBeUndefined()
      expect(pedigree.animals).toHaveLength(book.birds.length + 1)
    })

    it('makes its chicks full sibs; others of the pen lie between full and half', () => {
      // by hand: the cock ⅛; the one dam ⅛, or the mean of two hens 1/16
      expect([between('24-901', '24-902'), between('24-901', '24-903'), between('24-904', '24-905')]).toEqual([0.25, 3 / 16, 0.25])
    })

    it('is of the strain that is stated of her, and one hen', () => {
      const strain = {'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\ninbreeding: 8%\nkinship: 6%\n---\n'}
      const bought = seen({...strain, 'hatches/2024-09.md': hatch('pen: 2024-A', '  - {band: 24-901, family: a, dam: {strain: fell-buff}}\n  - {band: 24-902, family: a, dam: {strain: fell-buff}}')})
      // by hand: the cock ⅛, the one dam ¼ · ½(1 + 0.08); half of what two birds of the strain have in common
      expect(bought.between('24-901', '24-902')).toBeCloseTo(1 / 8 + 1.08 / 8, 12)
      expect(bought.between('24-901', 'B-1')).toBeCloseTo(0.03, 12)
    })

    it('of another hatch is another hen', () => {
      const two = seen({'hatches/2024-09.md': hatch('pen: 2024-A', '  - {band: 24-901, family: a}'), 'hatches/2024-10.md': hatch('pen: 2024-A', '  - {band: 24-902, family: a}')})
      expect(two.animal('24-901')?.damStandIn).not.toBe(two.animal('24-902')?.damStandIn)
    })
  })

  it('stands a bought flock within its strain', () => {
    const {pedigree, animal, baseOf, book, between} = seen({
      'birds/H-4.md': file('H-4', 'sex: female\nstrain: holm-white\nflock: {name: breeder-7, kinship: 12.5%}'), 'birds/H-5.md': file('H-5', 'sex: male\nstrain: holm-white\nflock: {name: breeder-7}'),
      'birds/B-4.md': file('B-4', 'sex: female\nstrain: fell-buff\nflock: {name: breeder-7, kinship: 3%}'),
    })
    const holm = book.strains.find(({id}) => id === 'holm-white')
    expect(pedigree.bases).toHaveLength(4)
    expect(pedigree.bases[animal('H-4')?.base ?? -1]).toEqual({inbreeding: 0, kinship: 0.125, within: holm && baseOf(holm)})
    // the same name in another strain is another flock
    expect([between('H-4', 'H-5'), between('H-4', 'B-4'), between('H-4', 'H-1')]).toEqual([0.125, 0, 0])
  })

  it('takes a parent outside the book from its strain, kin to the strain’s birds as they are', () => {
    const {animal, baseOf, book, between, f} = seen({
      'strains/holm-white.md': '---\nname: Holm White\nrole: recurrent\ninbreeding: 6%\nkinship: 5%\n---\n',
      'birds/24-901.md': file('24-901', 'sex: male\nsire: {strain: holm-white}\ndam: H-3'), 'birds/24-902.md': file('24-902', 'sex: male\nsire: {strain: fell-buff}\ndam: unknown'),
    })
    const holm = book.strains.find(({id}) => id === 'holm-white')
    expect(animal('24-901')?.outside).toEqual({sire: holm && baseOf(holm), dam: null})
    // by hand: with H-1 ½ · 5 % + ½ · 5 %; F the kinship of two of the strain
    expect(between('24-901', 'H-1')).toBe(0.05)
    expect(f('24-901').mean).toBe(0.05)
    expect(between('24-902', 'H-1')).toBe(0)
  })

  it('stands a bird found without its band for all that it may be', () => {
    const {animal, number, between} = seen({'birds/X-1.md': file('X-1', 'sex: female\nmaybe: [H-3, B-1]'), 'birds/24-901.md': file('24-901', 'sex: male\nsire: H-1\ndam: H-3')})
    expect(animal('X-1')?.oneOf).toEqual([{animal: number('H-3'), chance: 0.5}, {animal: number('B-1'), chance: 0.5}])
    expect(between('X-1', '24-901')).toBe(0.125)
  })

  it('goes by the parents where a found bird names them', () => {
    const {animal} = seen({'birds/X-1.md': file('X-1', 'sex: female\nmaybe: [H-3, B-1]\nsire: H-1\ndam: B-2')})
    expect(animal('X-1')?.oneOf).toBeUndefined()
    expect(animal('X-1')?.matings).toHaveLength(1)
  })

  it('states each pair of kin founders once', () => {
    const {pedigree, number} = seen({
      'birds/H-4.md': file('H-4', 'sex: female\nstrain: holm-white\nkin: [{with: H-5, kinship: 25%}]'), 'birds/H-5.md': file('H-5', 'sex: male\nstrain: holm-white\nkin: [{with: H-4, kinship: 25%}]'),
    })
    expect(pedigree.kin.map(({animals, kinship}) => [...animals].sort((a, b) => a - b).concat(kinship))).toEqual([[number('H-4'), number('H-5')].sort((a, b) => a - b).concat(0.25)])
  })
})
