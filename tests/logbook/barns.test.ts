/** What barns really produce: each shape of the records, linked as it is meant. */
import {describe, expect, it} from 'vitest'
import type {Bird, Look} from '../../src/logbook/book.ts'
import {dayOf} from '../../src/records/dates.ts'
import {around, bookOf, codesAt, linkFiles, type Files} from './around.ts'

const birdOf = (files: Files, band: string): Bird => {
  const bird = bookOf(files).birds.find(each => each.bands.some(worn => worn.band === band))
  if (!bird) throw new Error(`no ${band}`)
  return bird
}
const HATCH = (lines: string) => `---\npen: 2024-A\nset: 2024-03-02\neggs: 40\nhatched: 20\non: 2024-03-23\n${lines}\n---\n`
const comb = (bird: {readonly looks: Bird['looks']}): Look | undefined => [...bird.looks].find(([trait]) => trait.id === 'comb')?.[1]

describe('chicks that never wore a band', () => {
  const files: Files = {
    'hatches/2024-09.md': HATCH('chicks:\n  - {band: 24-901, comb: pea}\ntallies:\n  - {chicks: 12, mark: basket 2, dam: B-1, comb: pea, left: 2024-04-05 sold}\n  - {chicks: 3, comb: single, left: "2024-03-24 culled, off type"}\n  - {chicks: 2, left: 2024-03-29 died}'),
    'birds/24-950.md': '---\nband: 24-950\nsex: female\nout-of: {hatch: 2024-09, mark: basket 2}\n---\n',
  }
  const book = bookOf(files)
  const [hatch] = book.hatches
  const late = book.birds.find(bird => bird.band === '24-950')

  it('count as written, less those banded later; hatched but unlisted ones are counted too', () => {
    expect(hatch?.tallies.map(tally => [tally.count, tally.written])).toEqual([[11, 12], [3, 3], [2, 2]])
    expect(hatch?.chicks.map(chick => chick.band).sort()).toEqual(['24-901', '24-950'])
    expect(hatch?.unlisted).toBe(2)
  })

  it('keep their look, their dam and what became of them', () => {
    expect(hatch?.tallies.map(tally => comb(tally)?.counted?.value)).toEqual(['pea', 'single', undefined])
    expect(hatch?.tallies[0]?.parentage.dams.map(dam => dam.bird.band)).toEqual(['B-1'])
    expect(hatch?.tallies[1]?.left).toMatchObject({how: 'culled', why: 'off type'})
  })

  it('hand their look, day and parents to a bird banded later', () => {
    expect(late?.outOf).toBe(hatch?.tallies[0])
    expect(late?.hatched?.text).toBe('2024-03-23')
    expect(late && comb(late)?.counted?.value).toBe('pea')
    expect(late?.parentage.dams.map(dam => dam.bird.band)).toEqual(['B-1'])
    expect(late?.step.label).toBe('F1')
  })
})

describe('bands', () => {
  it('worn in turn make one bird, whose page has the first and whose name is the last', () => {
    const bird = birdOf({'hatches/2024-09.md': HATCH('chicks:\n  - {band: 24-901, bands: [{band: 24-901, to: 2024-06 lost}, {band: Y-7, from: 2024-06}]}')}, 'Y-7')
    expect([bird.id, bird.band]).toEqual(['24-901', 'Y-7'])
    expect(bird.bands[0]).toMatchObject({lost: true})
  })

  it('bring a bird’s own file to its line in the hatch, by any band', () => {
    const bird = birdOf({
      'hatches/2024-09.md': HATCH('chicks:\n  - {band: 24-901, sex: female, comb: pea}'),
      'birds/Y-7.md': '---\nband: Y-7\nbands: [{band: 24-901, to: 2024-06}, {band: Y-7, from: 2024-06}]\nkept: 2024-10-01 for breeding, best keel of her hatch\n---\nA bold one.\n',
    }, 'Y-7')
    expect(bird).toMatchObject({id: '24-901', sex: 'female', body: 'A bold one.', kept: {why: 'for breeding, best keel of her hatch'}})
    expect(bird.hatch?.id).toBe('2024-09')
  })

  const TWO: Files = {
    'hatches/2022-08.md': '---\nstrain: holm-white\non: 2022-03-20\nchicks:\n  - {band: "17", sex: female, left: 2023-02-01 sold}\n---\n',
    'hatches/2023-08.md': '---\nstrain: holm-white\non: 2023-05-20\nkeeper: kelpgarth\nchicks:\n  - {band: "17", sex: female}\n---\n',
  }
  it('used again after a bird had left are settled by the day', () => {
    const book = bookOf({...TWO, 'care/2022-09-01-foot.md': '---\ncare: illness\non: 2022-09-01\nbirds: ["17"]\n---\n', 'care/2024-09-01-foot.md': '---\ncare: illness\non: 2024-09-01\nbirds: ["17"]\n---\n'})
    expect(book.care.map(entry => entry.birds.map(bird => bird.id))).toEqual([['17-2022'], ['17-2023']])
  })

  it('that leave a doubt are a problem that lists the birds', () => {
    const {problems} = linkFiles(around({...TWO, 'care/2023-01-01-foot.md': '---\ncare: illness\non: 2023\nbirds: ["17"]\n---\n'}))
    expect(codesAt(problems)).toEqual(['care/2023-01-01-foot.md:4 band-in-doubt'])
    expect(problems[0]?.reason).toContain('17-2022')
    expect(problems[0]?.reason).toContain('17-2023')
  })

  it('gone: a found bird that proved to be another is one with it', () => {
    const book = bookOf({'birds/X-1.md': '---\nband: X-1\nsex: female\nsame-as: B-1\nobservations: [{on: 2024-08-01, note: Found in the hedge.}]\n---\n'})
    const bird = book.birds.find(each => each.bands.some(worn => worn.band === 'X-1'))
    expect(bird?.bands.map(worn => worn.band)).toContain('B-1')
    expect(bird?.observations).toHaveLength(1)
    expect(book.birds).toHaveLength(6)
  })

  it('gone: a found bird that may be one of two says so, and needs no other origin', () => {
    expect(birdOf({'birds/X-1.md': '---\nband: X-1\nsex: female\nmaybe: [B-1, B-2]\n---\n'}, 'X-1').maybe.map(bird => bird.band)).toEqual(['B-1', 'B-2'])
  })
})

describe('a bird', () => {
  it('sexed twice is of the later sex, and sexed never of the one it breeds as', () => {
    const files: Files = {
      'hatches/2023-09.md': '---\nstrain: holm-white\non: 2023-03-23\nchicks:\n  - {band: 23-901, sex: [{is: male, on: 2023-06}, {is: female, on: 2023-09-12, because: laid}]}\n  - {band: 23-902}\n---\n',
      'pens/2024-B.md': '---\nseason: 2024\nmales: [23-902]\nfemales: [B-3]\n---\n',
    }
    expect(birdOf(files, '23-901').sex).toBe('female')
    expect(birdOf(files, '23-902').sex).toBe('male')
  })

  it('of bought eggs is a founder of their strain and flock', () => {
    const bird = birdOf({'hatches/2024-09.md': '---\nstrain: holm-white\nflock: {name: breeder-7, kinship: 25%}\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901}\n---\n'}, '24-901')
    expect(bird.parentage.kind).toBe('founder')
    expect([bird.strain?.id, bird.step.label, bird.flock]).toEqual(['holm-white', 'strain', {name: 'breeder-7', kinship: 0.25}])
  })

  it('related to another founder is kin from both sides', () => {
    const book = bookOf({'birds/H-9.md': '---\nband: H-9\nsex: male\nstrain: holm-white\nkin: [{with: H-1, kinship: 25%}]\n---\n'})
    expect(book.birds.find(bird => bird.band === 'H-1')?.kin.map(kin => [kin.with.band, kin.kinship])).toEqual([['H-9', 0.25]])
  })

  it('moves from keeper to keeper, and stays where it hatched if nothing is said', () => {
    const files: Files = {
      'keepers/ternhouse.md': '---\nname: The keeper at Ternhouse\nconsent: yes\n---\n',
      'hatches/2024-09.md': HATCH('chicks:\n  - {band: 24-901, kept-at: [{keeper: kelpgarth, to: 2025-10-25}, {keeper: ternhouse, from: 2025-10-25}]}\n  - {band: 24-902}'),
    }
    expect(birdOf(files, '24-901').keptAt.map(stay => stay.keeper.id)).toEqual(['kelpgarth', 'ternhouse'])
    expect(birdOf(files, '24-902').keptAt.map(stay => stay.keeper.id)).toEqual(['kelpgarth'])
  })
})

describe('a trait scored more than once', () => {
  const scored = (rows: string): Look | undefined => comb(birdOf({'hatches/2024-09.md': HATCH('chicks:\n  - {band: 24-901, comb: pea}'), 'scores/2024.csv': `band,on,by,comb,struck\n${rows}\n`}, '24-901'))
  it('counts the latest that is not struck and not before its time', () => {
    expect(scored('24-901,2024-05-10,inga,single,')?.counted?.value).toBe('single')
    expect(scored('24-901,2024-05-10,inga,single,bad light')?.counted?.value).toBe('pea')
    // scored from 6 weeks: 23 March + 42 days is 4 May
    expect(scored('24-901,2024-05-03,inga,single,')?.counted?.value).toBe('pea')
    expect(scored('24-901,2024-05-04,inga,single,')?.counted?.value).toBe('single')
    expect(scored('24-901,2024-05-12,inga,pea,\n24-901,2024-05-10,inga,single,')?.counted?.value).toBe('pea')
  })

  it('shows all of them, with who scored', () => {
    const look = scored('24-901,2024-05-03,inga,single,')
    expect(look?.scores.map(score => [score.value, score.outside, score.by?.id ?? null])).toEqual([['pea', false, null], ['single', true, 'kelpgarth']])
  })
})

describe('weigh days', () => {
  const weighed = (rows: string) => {
    const bird = birdOf({'hatches/2024-09.md': HATCH('chicks:\n  - {band: 24-901, sex: male}'), 'measures/w.csv': `band,on,weight\n${rows}\n`}, '24-901')
    const look = [...bird.looks].find(([trait]) => trait.id === 'weight-20')?.[1]
    return look?.counted?.value ?? null
  }
  // 23 March + 140 days is 10 August; the window is 10 days
  it.each([
    ['24-901,2024-08-10,2310', 2310], ['24-901,2024-08-10,2.31 kg', 2310], ['24-901,2024-08-20,2310', 2310], ['24-901,2024-08-21,2310', null], ['24-901,2024-07-31,2310', 2310],
    ['24-901,2024-07-30,2310', null], ['24-901,2024-08-08,2300\n24-901,2024-08-11,2400', 2400], ['24-901,2024-08-08,2300\n24-901,2024-08-12,2400', 2300], ['24-901,2024-08,2310', null],
  ])('%s counts as %s', (rows, value) => expect(weighed(rows)).toBe(value))

  it('without bands belong to a hatch and a sex', () => {
    const book = bookOf({'hatches/2024-09.md': HATCH(''), 'measures/loose.csv': 'hatch,on,sex,weight\n2024-09,2024-04-20,male,0.31 kg\n'})
    expect(book.looseWeighings.map(({hatch, sex, value}) => [hatch.id, sex, value])).toEqual([['2024-09', 'male', 310]])
  })
})

describe('birds reared alike', () => {
  const hatch = (lines: string) => `---\nset: 2024-03-02\non: 2024-03-23\n${lines}\n---\n`
  const files: Files = {
    'keepers/ternhouse.md': '---\nname: The keeper at Ternhouse\n---\n',
    'pens/2024-B.md': '---\nseason: 2024\nmales: [H-2]\nfemales: [B-3]\nkeeper: ternhouse\n---\n',
    'hatches/1.md': hatch('pen: 2024-A\nmachine: incubator'),
    'hatches/2.md': hatch('pen: 2024-B\nmachine: incubator'),
    'hatches/3.md': hatch('pen: 2024-B\nmachine: incubator\nkeeper: inga'),
    'hatches/4.md': hatch('pen: 2024-A\nbroody: B-1'),
    'hatches/5.md': hatch('pen: 2024-B\nbroody: B-1\nkeeper: kelpgarth'),
    'hatches/6.md': hatch('pen: 2024-A'),
  }
  const rearing = new Map(bookOf(files).hatches.map(each => [each.id, each.rearing]))
  it('are those of one machine and day of one keeper, the hatch’s or else the pen’s', () => {
    expect(rearing.get('3')).toBe(rearing.get('1'))
    expect(rearing.get('2')).not.toBe(rearing.get('1'))
    expect(rearing.get('5')).toBe(rearing.get('4'))
    expect(rearing.get('6')).toBe('6')
  })

  it('and nothing in it leads to a keeper without consent', () => expect([...rearing.values()].join('\n')).not.toMatch(/ternhouse/i))
})

describe('a target', () => {
  const wanted = (lines: string) => bookOf({'traits/x.md': `---\nname: X\n${lines}\n---\n`}).traits.find(trait => trait.id === 'x')?.wanted
  it.each([
    ['scale: 1 to 10\ntarget: at least 7', {kind: 'at-least', value: 7}],
    ['unit: degrees\ntarget: 40 to 45', {kind: 'between', low: 40, high: 45}],
    ['unit: g\ntarget: 2.4 kg\ntolerance: 10%', {kind: 'about', value: 2400, tolerance: 0.1}],
    ['unit: g\ntarget: at most 5 lb', {kind: 'at-most', value: 5 * 453.59237}],
    ['states: [pea, single]\ntarget: pea', {kind: 'states', states: ['pea']}],
    ['order: [clear, tinted, dark]\ntarget: at most tinted', {kind: 'states', states: ['clear', 'tinted']}],
  ])('%s', (lines, both) => expect(wanted(lines)).toEqual({male: both, female: both}))

  it('may differ by sex', () => {
    expect(wanted('unit: degrees\ntarget: {male: 45, female: 40}')).toEqual({male: {kind: 'about', value: 45, tolerance: null}, female: {kind: 'about', value: 40, tolerance: null}})
  })

  it('has its misscoring spread evenly, or as stated', () => {
    const comb = bookOf({'traits/comb.md': '---\nname: Comb\nstates: [pea, single, coarse]\ntarget: pea\nmisscoring: 2%\n---\n'}).traits.find(trait => trait.id === 'comb')
    expect([...comb?.misscoring.get('pea') ?? []]).toEqual([['single', 0.01], ['coarse', 0.01]])
  })
})

describe('the book as it stood on an earlier day', () => {
  const files: Files = {
    'hatches/2024-09.md': HATCH('chicks:\n  - {band: 24-901, sex: male, left: 2024-12-01 sold}'), 'scores/2024.csv': 'band,on,by,comb,struck\n24-901,2024-05-10,inga,pea,\n24-901,2024-09-10,inga,single,\n',
    'pens/2025-A.md': '---\nseason: 2025\nmales: [24-901]\nfemales: [B-1]\nfrom: 2025-02-01\n---\n', 'diary/2025-03-01-thaw.md': '---\non: 2025-03-01\ntitle: Thaw\n---\n',
  }
  it('leaves aside and counts what came later', () => {
    const book = bookOf(files, {asOf: dayOf(2024, 6, 1) as number})
    const chick = book.birds.find(bird => bird.band === '24-901')
    expect([chick?.left, chick && comb(chick)?.counted?.value, book.pens.length, book.diary.length]).toEqual([null, 'pea', 1, 0])
    expect(book.later).toBe(4)
  })

  it('does not know chicks that had not hatched', () => {
    const book = bookOf(files, {asOf: dayOf(2024, 3, 10) as number})
    expect(book.birds.some(bird => bird.band === '24-901')).toBe(false)
    expect(book.hatches.map(hatch => [hatch.eggs, hatch.hatched, hatch.chicks.length])).toEqual([[40, null, 0]])
  })

  it('is whole, and of the latest date, when no day is asked for', () => {
    const book = bookOf(files)
    expect([book.asOf, book.later]).toEqual([dayOf(2025, 3, 1), 0])
  })
})
