/** Parents in doubt: chances that want something, any bird that a keeper had, and what cannot be. */
import {describe, expect, it} from 'vitest'
import type {Bird, Logbook, Parentage} from '../../src/logbook/book.ts'
import {around, bookOf, codesAt, linkFiles, type Files} from './around.ts'

const bird = (band: string, lines: string) => `---\nband: ${band}\n${lines}\n---\n`
const pen = (lines: string) => `---\nseason: 2024\n${lines}\n---\n`
const hatch = (lines: string, chicks: string) => `---\n${lines}\nchicks:\n${chicks}\n---\n`

function birdIn(book: Logbook | null, band: string): Bird {
  const found = book?.birds.find(each => each.band === band)
  if (!found) throw new Error(`no ${band}`)
  return found
}
const pairsOf = ({pairs}: Parentage): Record<string, number> =>
  Object.fromEntries(pairs.map(({sire, dam, chance}) => [`${sire?.band ?? '?'} × ${dam?.band ?? '?'}`, Math.round(chance * 1e6) / 1e6]))

function linked(files: Files, band = '24-901') {
  const {book, problems} = linkFiles(around(files))
  return {pairs: pairsOf(birdIn(book, band).parentage), codes: codesAt(problems), problems}
}

describe('chances that make less than the whole', () => {
  const chick = (parents: string) => ({'birds/24-901.md': bird('24-901', `sex: male\nhatched: 2024-05-01\n${parents}`)})

  it('of a stated sire leave the rest to a bird outside the book, with a warning', () => {
    const {pairs, codes, problems} = linked(chick('sire: {H-1: 60%, H-2: 15%}\ndam: B-1'))
    expect(pairs).toEqual({'H-1 × B-1': 0.6, '? × B-1': 0.25, 'H-2 × B-1': 0.15})
    expect(codes).toEqual(['birds/24-901.md:5 chances-wanting'])
    expect(problems[0]?.severity).toBe('warning')
    expect(problems[0]?.reason).toContain('make 75%; the other 25%')
  })

  it('of thirds want nothing', () => {
    const {pairs, codes} = linked({...chick('sire: {H-1: 33%, H-2: 33%, H-4: 33%}\ndam: B-1'), 'birds/H-4.md': bird('H-4', 'sex: male\nstrain: holm-white\nhatched: 2022')})
    expect(pairs).toEqual({'H-1 × B-1': 0.333333, 'H-2 × B-1': 0.333333, 'H-4 × B-1': 0.333333})
    expect(codes).toEqual([])
  })

  it('on both sides belong to pairs of their own', () => {
    expect(linked(chick('sire: {H-1: 50%}\ndam: {B-1: 80%}')).pairs).toEqual({'H-1 × B-1': 0.4, '? × B-1': 0.4, 'H-1 × ?': 0.1, '? × ?': 0.1})
  })

  it('above the whole are an error, and the rest of the book is still checked', () => {
    const {codes, pairs} = linked({...chick('sire: {H-1: 60%, H-2: 60%}\ndam: B-1'), 'birds/24-902.md': bird('24-902', 'sire: H-1\ndam: B-9')})
    expect(codes).toEqual(['birds/24-901.md:5 chances-do-not-sum', 'birds/24-902.md:4 unknown-band'])
    expect(pairs).toEqual({'H-1 × B-1': 0.5, 'H-2 × B-1': 0.5})
  })

  const ofPen = (males: string): Files => ({
    'pens/2024-B.md': pen(`males: ${males}\nfemales: [B-3]\nfrom: 2024-02-10`), 'hatches/2024-09.md': hatch('pen: 2024-B\nset: 2024-07-02', '  - {band: 24-901}\n  - {band: 24-902, sire: H-1}'),
  })

  it('of a pen’s males leave the rest to a bird outside the book', () => {
    const {pairs, codes} = linked(ofPen('{H-1: 50%, H-2: 30%}'))
    expect(pairs).toEqual({'H-1 × B-3': 0.5, 'H-2 × B-3': 0.3, '? × B-3': 0.2})
    expect(codes).toEqual(['pens/2024-B.md:3 chances-wanting'])
    expect(linked(ofPen('{H-1: 50%, H-2: 30%}'), '24-902').pairs).toEqual({'H-1 × B-3': 1})
  })

  it('leave nothing outside where a male has no share, or came and went', () => {
    expect(linked(ofPen('[{band: H-1, chance: 60%}, H-2]')).pairs).toEqual({'H-1 × B-3': 0.6, 'H-2 × B-3': 0.4})
    expect(linked(ofPen('[{band: H-1, chance: 60%}, {band: H-2, chance: 20%, from: 2024-03-01}]')).pairs).toEqual({'H-1 × B-3': 0.75, 'H-2 × B-3': 0.25})
  })
})

const without901 = (files: Files): Files => Object.fromEntries(Object.entries(files).filter(([file]) => file !== 'birds/24-901.md'))

describe('any bird that a keeper had', () => {
  const keeper = '---\nname: The keeper at Ternhouse\nconsent: 2020-01-15\n---\n'
  const files = (parents: string, more: Files = {}): Files => ({
    'keepers/ternhouse.md': keeper,
    'birds/T-1.md': bird('T-1', 'sex: female\nstrain: fell-buff\nhatched: 2022\nkeeper: ternhouse'),
    'birds/T-2.md': bird('T-2', 'sex: female\nstrain: holm-white\nhatched: 2023-09-01\nkept-at: [{keeper: ternhouse, from: 2024-03}]'),
    'birds/T-3.md': bird('T-3', 'sex: female\nstrain: fell-buff\nhatched: 2022\nkeeper: ternhouse\nleft: 2024-02-01 died'),
    'birds/T-4.md': bird('T-4', 'sex: female\nstrain: fell-buff\nhatched: 2024-02-01\nkeeper: ternhouse'),
    'birds/T-5.md': bird('T-5', 'sex: male\nstrain: fell-buff\nhatched: 2022\nkeeper: ternhouse'),
    'birds/24-901.md': bird('24-901', `sex: male\nhatched: 2024-05-01\n${parents}`), ...more,
  })

  it('is each hen that was grown, alive and there when the egg was laid, with equal chances', () => {
    // hatched 1 May: laid from 27 March to 10 April. T-3 had died, T-4 was two months old
    const {pairs, codes} = linked(files('sire: H-1\ndam: {keeper: ternhouse}'))
    expect(pairs).toEqual({'H-1 × T-1': 0.5, 'H-1 × T-2': 0.5})
    expect(codes).toEqual([])
  })

  it('is a male on the sire’s side', () => {
    expect(linked(files('sire: {keeper: ternhouse}\ndam: B-1')).pairs).toEqual({'T-5 × B-1': 1})
  })

  it('counts a bird by the pen it stood in there, and one never sexed by its side of the pen', () => {
    const {pairs, codes} = linked(files('sire: {keeper: kelpgarth}\ndam: {keeper: kelpgarth}', {
      'birds/H-1.md': bird('H-1', 'strain: holm-white\nhatched: 2022-03-20'),
    }))
    expect(pairs).toEqual({'H-1 × B-1': 0.5, 'H-1 × B-2': 0.5})
    expect(codes).toEqual([])
  })

  it('counts a bird by no pen of another season, dated or not', () => {
    const {pairs} = linked(files('sire: H-1\ndam: {keeper: ternhouse}', {
      'pens/2025-T.md': '---\nseason: 2025\nmales: [T-5]\nfemales: [B-1]\nkeeper: ternhouse\n---\n',
    }))
    expect(pairs).toEqual({'H-1 × T-1': 0.5, 'H-1 × T-2': 0.5})
  })

  it('may be asked for in a hatch, where it is not held against the pen', () => {
    const {pairs, codes} = linked({
      ...without901(files('')), 'hatches/2024-09.md': `${hatch('pen: 2024-A\nset: 2024-04-02', '  - {band: 24-901, dam: {keeper: ternhouse}}').slice(0, -4)}tallies:\n  - {chicks: 2, dam: {keeper: ternhouse}}\n---\n`,
    })
    expect(pairs).toEqual({'H-1 × T-1': 0.5, 'H-1 × T-2': 0.5})
    expect(codes).toEqual([])
  })

  it('is nobody, with a warning, where the day is not known', () => {
    const {pairs, codes, problems} = linked({...files(''), 'birds/24-901.md': bird('24-901', 'sex: male\nsire: H-1\ndam: {keeper: ternhouse}')})
    expect(pairs).toEqual({'H-1 × ?': 1})
    expect(codes).toEqual(['birds/24-901.md:5 none-at-keeper'])
    expect(problems[0]?.reason).toContain('nobody knows when the egg was laid')
  })
})

describe('a loop in descent', () => {
  it('names every bird on it, each with its place, and the rest is still checked', () => {
    const {problems} = linkFiles(around({
      'birds/24-901.md': bird('24-901', 'sex: male\nsire: 24-903\ndam: B-2'),
      'birds/24-902.md': bird('24-902', 'sex: female\nsire: 24-901\ndam: B-2'),
      'birds/24-903.md': bird('24-903', 'sex: male\nsire: H-1\ndam: 24-902'),
      'birds/24-904.md': bird('24-904', 'sire: H-1\ndam: B-9'),
    }))
    expect(codesAt(problems)).toEqual(['birds/24-902.md:4 loop-in-descent', 'birds/24-904.md:4 unknown-band'])
    const [loop] = problems
    expect(loop?.reason).toBe('24-901 is a parent of 24-902 is a parent of 24-903 is a parent of 24-901, which cannot be')
    expect(loop?.related?.map(({place}) => `${place.file}:${place.start.line}`)).toEqual(['birds/24-903.md:5', 'birds/24-901.md:4'])
  })

  it('of a bird in the pen that it hatched from says so, at the pen', () => {
    const {book, problems} = linkFiles(around({
      'pens/2024-B.md': pen('males: [H-2]\nfemales: [B-3, 24-901]\nfrom: 2024-02-10'), 'hatches/2024-09.md': hatch('pen: 2024-B\nset: 2024-04-02', '  - {band: 24-901}\n  - {band: 24-902}'),
    }))
    const loop = problems.find(({code}) => code === 'loop-in-descent')
    expect(loop && `${loop.place.file}:${loop.place.start.line}`).toBe('pens/2024-B.md:4')
    expect(loop?.reason).toBe('24-901 stands in the pen that its own egg came from, and so among its own parents')
    expect(pairsOf(birdIn(book, '24-901').parentage)).toEqual({'? × ?': 1})
  })

  it('may run through a bird that is perhaps another', () => {
    const {book, problems} = linkFiles(around({'birds/X-1.md': bird('X-1', 'sex: male\nmaybe: [24-901, H-2]'), 'birds/24-901.md': bird('24-901', 'sex: male\nsire: X-1\ndam: B-2')}))
    const [loop] = problems.filter(({code}) => code === 'loop-in-descent')
    expect(loop?.reason).toBe('24-901 is perhaps X-1 is a parent of 24-901, which cannot be')
    expect(birdIn(book, 'X-1').maybe).toEqual([])
  })

  it('that shares a bird with another is reported beside it', () => {
    const {problems} = linkFiles(around({
      'birds/24-901.md': bird('24-901', 'sex: male\nsire: {24-902: 50%, 24-903: 50%}\ndam: B-2'),
      'birds/24-902.md': bird('24-902', 'sex: male\nsire: 24-901\ndam: B-2'), 'birds/24-903.md': bird('24-903', 'sex: male\nsire: 24-901\ndam: B-2'),
    }))
    expect(problems.filter(({code}) => code === 'loop-in-descent')).toHaveLength(2)
  })
})

describe('a bird that may be itself', () => {
  it('is told so, and may still be the others', () => {
    const {book, problems} = linkFiles(around({'birds/X-1.md': bird('X-1', 'sex: female\nmaybe: [X-1, B-1, B-2]')}))
    expect(codesAt(problems)).toEqual(['birds/X-1.md:4 maybe-itself'])
    expect(birdIn(book, 'X-1').maybe.map(({band}) => band)).toEqual(['B-1', 'B-2'])
    expect(bookOf({'birds/X-1.md': bird('X-1', 'sex: female\nmaybe: [B-1, B-1]')}).birds.find(({band}) => band === 'X-1')?.maybe).toHaveLength(1)
  })
})
