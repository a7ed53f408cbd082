/** Who can be whose parent, worked out by hand. */
import {describe, expect, it} from 'vitest'
import type {Bird, Logbook, Parentage} from '../../src/logbook/book.ts'
import {bookOf, codesAt, linkFiles, around, type Files} from './around.ts'

const hatch = (lines: string, chicks = '  - {band: 24-901, sex: male}') => `---\n${lines}\nchicks:\n${chicks}\n---\n`
const pen = (lines: string) => `---\nseason: 2024\n${lines}\n---\n`

function birdIn(book: Logbook, band: string): Bird {
  const bird = book.birds.find(each => each.band === band)
  if (!bird) throw new Error(`no ${band}`)
  return bird
}

/** `H-1 × B-1` → chance, rounded to the sixth place. */
const pairsOf = ({pairs}: Parentage): Record<string, number> =>
  Object.fromEntries(pairs.map(({sire, dam, chance}) => [`${sire?.band ?? '?'} × ${dam?.band ?? '?'}`, Math.round(chance * 1e6) / 1e6]))

const chickOf = (files: Files, band = '24-901'): Parentage => birdIn(bookOf(files), band).parentage

describe('parentage from pen and hatch', () => {
  it('knows the sire of a pen with one male, and gives each of its hens an equal chance', () => {
    const parentage = chickOf({'hatches/2024-09.md': hatch('pen: 2024-A\nset: 2024-03-02')})
    expect(pairsOf(parentage)).toEqual({'H-1 × B-1': 0.5, 'H-1 × B-2': 0.5})
    expect(parentage.kind).toBe('uncertain')
    expect(parentage.sires.map(({bird, chance}) => [bird.band, chance])).toEqual([['H-1', 1]])
  })

  it('lets a chick’s own dam win', () => {
    const parentage = chickOf({'hatches/2024-09.md': hatch('pen: 2024-A\nset: 2024-03-02', '  - {band: 24-901, dam: B-2}')})
    expect(pairsOf(parentage)).toEqual({'H-1 × B-2': 1})
    expect(parentage.kind).toBe('known')
  })

  it('takes stated shares of two males, and spreads what is left over the others', () => {
    const files = {
      'pens/2024-B.md': pen('males: {H-1: 70%, H-2: 30%}\nfemales: [B-3]\nfrom: 2024-06-10'),
      'hatches/2024-09.md': hatch('pen: 2024-B\nset: 2024-07-02'),
    }
    expect(pairsOf(chickOf(files))).toEqual({'H-1 × B-3': 0.7, 'H-2 × B-3': 0.3})
  })

  describe('with a male changed on 15 March and a sperm store of 21 days', () => {
    const files = (laid: string): Files => ({
      'pens/2024-A.md': pen('males: [{band: H-1, to: 2024-03-15}, {band: H-2, from: 2024-03-16}]\nfemales: [B-1]\nfrom: 2024-02-10\nto: 2024-06-01'),
      'hatches/2024-09.md': hatch(`pen: 2024-A\nlaid: ${laid}`),
    })
    it.each([
      ['2024-03-01..2024-03-15', {'H-1 × B-1': 1}],
      ['2024-03-10..2024-03-20', {'H-1 × B-1': 0.5, 'H-2 × B-1': 0.5}],
      ['2024-04-01..2024-04-05', {'H-1 × B-1': 0.5, 'H-2 × B-1': 0.5}], // 15 March + 21 days is 5 April
      ['2024-04-05..2024-04-12', {'H-1 × B-1': 0.5, 'H-2 × B-1': 0.5}],
      ['2024-04-06..2024-04-12', {'H-2 × B-1': 1}],
    ])('eggs laid %s', (laid, pairs) => expect(pairsOf(chickOf(files(laid)))).toEqual(pairs))

    it('takes the store that the project states', () => {
      const project = '---\nname: Skerry Fowl\naim: Stands wind.\nstrains: {recurrent: holm-white, donors: [fell-buff]}\nsperm-store: 1 week\n---\n'
      expect(pairsOf(chickOf({...files('2024-04-01..2024-04-05'), 'project.md': project}))).toEqual({'H-2 × B-1': 1})
    })

    it('takes eggs to be laid in the fortnight before the setting, where no days are written', () => {
      const set = {...files('2024-03-01'), 'hatches/2024-09.md': hatch('pen: 2024-A\nset: 2024-04-20')}
      expect(pairsOf(chickOf(set))).toEqual({'H-2 × B-1': 1})
    })
  })

  it('keeps pairs within a pen when a setting holds the eggs of two, by their eggs', () => {
    const files = {
      'pens/2024-B.md': pen('males: [H-2]\nfemales: [B-3]\nfrom: 2024-02-10'),
      'hatches/2024-09.md': hatch('pen: {2024-A: 30 eggs, 2024-B: 10 eggs}\nset: 2024-03-02', '  - {band: 24-901}\n  - {band: 24-902, pen: 2024-B}\n  - {band: 24-903, dam: B-3}\n  - {band: 24-904, sire: H-2}'),
    }
    expect(pairsOf(chickOf(files))).toEqual({'H-1 × B-1': 0.375, 'H-1 × B-2': 0.375, 'H-2 × B-3': 0.25})
    for (const band of ['24-902', '24-903', '24-904']) expect(pairsOf(chickOf(files, band))).toEqual({'H-2 × B-3': 1})
  })

  it('weighs hens by their eggs; eggs of unknown hens go evenly to all', () => {
    // 14 + 14/2 of 48 for B-1, 20 + 14/2 of 48 for B-2
    const parentage = chickOf({'hatches/2024-09.md': hatch('pen: 2024-A\nset: 2024-03-02\neggs: {B-1: 14, B-2: 20, unknown: 14}')})
    expect(pairsOf(parentage)).toEqual({'H-1 × B-2': 0.5625, 'H-1 × B-1': 0.4375})
  })

  describe('with the eggs of two pens by hen, and a hen who stood in both', () => {
    const files = (pens: string, eggs: string, lines = '  - {band: 24-901}\n  - {band: 24-902, pen: 2024-B}'): Files => ({
      'pens/2024-A.md': pen('males: [H-1]\nfemales: [B-1]'),
      'pens/2024-B.md': pen('males: [H-2]\nfemales: [B-1, B-2]'),
      'hatches/2024-09.md': hatch(`pen: ${pens}\nset: 2024-03-02\neggs: ${eggs}`, lines),
    })
    it.each([
      ['[2024-A, 2024-B]', '{B-1: 10, B-2: 10}', {'B-1': 0.5, 'B-2': 0.5}],
      ['[2024-A, 2024-B]', '{B-1: 5, B-2: 15}', {'B-1': 0.25, 'B-2': 0.75}],
      // the pens' numbers say in which of them her eggs lay: B-2's 10 are of pen B, so 5 of B-1's are of pen A and 5 of pen B
      ['{2024-A: 5 eggs, 2024-B: 15 eggs}', '{B-1: 10, B-2: 10}', {'B-1': 0.5, 'B-2': 0.5}],
      ['{2024-A: 10 eggs, 2024-B: 10 eggs}', '{B-1: 10, B-2: 10}', {'B-1': 0.5, 'B-2': 0.5}],
      // 12 in pen A are hers, the 8 of pen B are anybody's: 4 + 4
      ['{2024-A: 12 eggs, 2024-B: 8 eggs}', '20', {'B-1': 0.8, 'B-2': 0.2}],
    ])('pens %s, eggs %s', (pens, eggs, dams) => {
      const parentage = chickOf(files(pens, eggs))
      expect(Object.fromEntries(parentage.dams.map(({bird, chance}) => [bird.band, Math.round(chance * 1e6) / 1e6]))).toEqual(dams)
    })

    it('keeps the eggs of each pen as they were given', () => {
      expect(pairsOf(chickOf(files('{2024-A: 5 eggs, 2024-B: 15 eggs}', '{B-1: 10, B-2: 10}')))).toEqual({'H-2 × B-2': 0.5, 'H-1 × B-1': 0.25, 'H-2 × B-1': 0.25})
      expect(pairsOf(chickOf(files('{2024-A: 10 eggs, 2024-B: 10 eggs}', '{B-1: 10, B-2: 10}')))).toEqual({'H-1 × B-1': 0.5, 'H-2 × B-2': 0.5})
    })

    it('gives a chick whose pen is known the hens of that pen by their eggs in it', () => {
      expect(pairsOf(chickOf(files('[2024-A, 2024-B]', '{B-1: 10, B-2: 10}'), '24-902'))).toEqual({'H-2 × B-2': 0.666667, 'H-2 × B-1': 0.333333})
    })

    it('tells her pen by the days, where she moved from one to the other', () => {
      const moved = {...files('[2024-A, 2024-B]', '{B-1: 10, B-2: 10}'),
        'pens/2024-A.md': pen('males: [H-1]\nfemales: [B-1, B-3]\nfrom: 2023-12-01\nto: 2024-01-10'), 'pens/2024-B.md': pen('males: [H-2]\nfemales: [B-1, B-2]\nfrom: 2024-01-11')}
      expect(pairsOf(chickOf(moved))).toEqual({'H-2 × B-1': 0.5, 'H-2 × B-2': 0.5})
    })
  })

  it('takes an unknown dam in a pen to be any of its hens, and one outside the book by her strain', () => {
    const files = {'hatches/2024-09.md': hatch('pen: 2024-A\nset: 2024-03-02', '  - {band: 24-901, dam: unknown}\n  - {band: 24-902, dam: {strain: fell-buff}}')}
    expect(pairsOf(chickOf(files))).toEqual({'H-1 × B-1': 0.5, 'H-1 × B-2': 0.5})
    const outside = chickOf(files, '24-902')
    expect(pairsOf(outside)).toEqual({'H-1 × ?': 1})
    expect(outside.outside?.dam?.id).toBe('fell-buff')
  })

  it('gives a family one dam: what one chick tells holds for its sisters', () => {
    const files = {'hatches/2024-09.md': hatch('pen: 2024-A\nset: 2024-03-02', '  - {band: 24-901, family: basket-2}\n  - {band: 24-902, family: basket-2, dam: B-1}')}
    expect(pairsOf(chickOf(files))).toEqual({'H-1 × B-1': 1})
  })

  it('reads parents with chances in a bird’s own file', () => {
    const files = {'birds/24-901.md': '---\nband: 24-901\nsex: male\nhatched: 2024-05-01\nsire: {H-1: 50%, H-2: 50%}\ndam: B-1\n---\n'}
    expect(pairsOf(chickOf(files))).toEqual({'H-1 × B-1': 0.5, 'H-2 × B-1': 0.5})
  })

  it('keeps the male of a hen’s last pen possible when she has just moved', () => {
    const files = (set: string): Files => ({
      'pens/2024-A.md': pen('males: [H-1]\nfemales: [{band: B-1, to: 2024-03-31}, B-2]\nfrom: 2024-02-10\nto: 2024-06-01'),
      'pens/2024-B.md': pen('males: [H-2]\nfemales: [B-1, B-3]\nfrom: 2024-04-01\nto: 2024-06-01'),
      'hatches/2024-09.md': hatch(`pen: 2024-B\nlaid: ${set}`, '  - {band: 24-901, dam: B-1}\n  - {band: 24-902, dam: B-3}'),
    })
    expect(pairsOf(chickOf(files('2024-04-10..2024-04-14')))).toEqual({'H-1 × B-1': 0.5, 'H-2 × B-1': 0.5})
    expect(pairsOf(chickOf(files('2024-04-10..2024-04-14'), '24-902'))).toEqual({'H-2 × B-3': 1})
    expect(pairsOf(chickOf(files('2024-05-01..2024-05-05')))).toEqual({'H-2 × B-1': 1})
  })

  describe('with a male changed shortly before a hen moved', () => {
    // H-1 was with B-1 until 25 March, H-2 until she left on 31 March; in pen B stands H-4
    const files = (laid: string, chicks = '  - {band: 24-901, dam: B-1}'): Files => ({
      'birds/H-4.md': '---\nband: H-4\nsex: male\nstrain: holm-white\nhatched: 2022\n---\n',
      'pens/2024-A.md': pen('males: [{band: H-1, to: 2024-03-25}, {band: H-2, from: 2024-03-26}]\nfemales: [{band: B-1, to: 2024-03-31}, B-2]\nfrom: 2024-02-10\nto: 2024-06-01'),
      'pens/2024-B.md': pen('males: [H-4]\nfemales: [B-1, B-3]\nfrom: 2024-04-01\nto: 2024-06-01'),
      'hatches/2024-09.md': hatch(`pen: 2024-B\nlaid: ${laid}`, chicks),
    })
    it.each([
      ['2024-04-10..2024-04-14', {'H-1 × B-1': 0.333333, 'H-2 × B-1': 0.333333, 'H-4 × B-1': 0.333333}],
      ['2024-04-15..2024-04-19', {'H-1 × B-1': 0.333333, 'H-2 × B-1': 0.333333, 'H-4 × B-1': 0.333333}], // 25 March + 21 days
      ['2024-04-16..2024-04-19', {'H-2 × B-1': 0.5, 'H-4 × B-1': 0.5}],
      ['2024-04-21..2024-04-24', {'H-2 × B-1': 0.5, 'H-4 × B-1': 0.5}], // 31 March + 21 days
      ['2024-04-22..2024-04-24', {'H-4 × B-1': 1}],
    ])('eggs laid %s', (laid, pairs) => expect(pairsOf(chickOf(files(laid)))).toEqual(pairs))

    it('pairs a stated sire who is known through the store only with the hens that met him, and does not miss him in the pen', () => {
      const given = files('2024-04-10..2024-04-14', '  - {band: 24-901, sire: H-1}\n  - {band: 24-902, sire: H-4}')
      expect(pairsOf(chickOf(given))).toEqual({'H-1 × B-1': 1})
      // of B-1's three males he is one, of B-3 he is the only one
      expect(pairsOf(chickOf(given, '24-902'))).toEqual({'H-4 × B-3': 0.75, 'H-4 × B-1': 0.25})
      expect(linkFiles(around(given)).problems).toEqual([])
    })

    it('misses one whose store is over', () => {
      const {problems} = linkFiles(around(files('2024-05-10..2024-05-14', '  - {band: 24-901, sire: H-1}')))
      expect(codesAt(problems)).toEqual(['hatches/2024-09.md:5 not-in-pen'])
    })

    it('does not take a male for the mate of a hen who came after he had gone', () => {
      const late = {...files('2024-04-05..2024-04-10'), 'pens/2024-A.md': pen('males: [{band: H-1, to: 2024-03-25}, {band: H-2, from: 2024-03-26}]\nfemales: [{band: B-1, from: 2024-04-01}, B-2]\nfrom: 2024-02-10\nto: 2024-06-01'),
        'pens/2024-B.md': pen('males: [H-4]\nfemales: [B-3]\nfrom: 2024-04-01'), 'hatches/2024-09.md': hatch('pen: 2024-A\nlaid: 2024-04-05..2024-04-10', '  - {band: 24-901, dam: B-1}\n  - {band: 24-902, dam: B-2}')}
      expect(pairsOf(chickOf(late))).toEqual({'H-2 × B-1': 1})
      expect(pairsOf(chickOf(late, '24-902'))).toEqual({'H-1 × B-2': 0.5, 'H-2 × B-2': 0.5})
    })

    it('counts the males of a hen’s other pens too, whenever they met; not those she met after laying', () => {
      const both = {...files('2024-04-05..2024-04-10'), 'pens/2024-A.md': pen('males: [H-1, {band: H-2, from: 2024-04-20}]\nfemales: [B-1, B-2]\nfrom: 2024-02-10\nto: 2024-06-01')}
      expect(pairsOf(chickOf(both))).toEqual({'H-1 × B-1': 0.5, 'H-4 × B-1': 0.5})
    })

    it('takes no day from a pen of another year that gives none', () => {
      const undated = {...files('2024-04-05..2024-04-10'), 'pens/2024-A.md': '---\nseason: 2023\nmales: [H-1]\nfemales: [B-1, B-2]\n---\n'}
      expect(pairsOf(chickOf(undated))).toEqual({'H-4 × B-1': 1})
    })
  })

  it('says of a hen named as a sire that she is a hen, and no more', () => {
    const {problems} = linkFiles(around({'hatches/2024-09.md': hatch('pen: 2024-A\nset: 2024-03-02', '  - {band: 24-901, sire: B-3}')}))
    expect(codesAt(problems)).toEqual(['hatches/2024-09.md:5 wrong-parent-sex'])
  })

  it('takes a male that died out of the candidates once the store is over', () => {
    const files = {
      'birds/H-1.md': '---\nband: H-1\nsex: male\nstrain: holm-white\nhatched: 2022\nleft: 2024-03-01 died\n---\n',
      'pens/2024-A.md': pen('males: [H-1, H-2]\nfemales: [B-1]\nfrom: 2024-02-10\nto: 2024-06-01'),
      'hatches/2024-09.md': hatch('pen: 2024-A\nlaid: 2024-04-10..2024-04-14'),
    }
    expect(pairsOf(chickOf(files))).toEqual({'H-2 × B-1': 1})
  })

  it('shares one parentage between hatch mates of the same parents', () => {
    const book = bookOf({'hatches/2024-09.md': hatch('pen: 2024-A\nset: 2024-03-02', '  - {band: 24-901}\n  - {band: 24-902}')})
    expect(birdIn(book, '24-901').parentage).toBe(birdIn(book, '24-902').parentage)
    expect(birdIn(book, '24-901').shares).toBe(birdIn(book, '24-902').shares)
  })

  it('says that nothing is known where the pen is unknown, once', () => {
    const {book, problems} = linkFiles(around({'hatches/2024-09.md': hatch('pen: 2024-Z\nset: 2024-03-02')}))
    expect(codesAt(problems)).toEqual(['hatches/2024-09.md:2 unknown-pen'])
    expect(book && pairsOf(birdIn(book, '24-901').parentage)).toEqual({'? × ?': 1})
  })
})
