/** The book as it stood on an earlier day: each kind of dated thing is cut back, and what only the day decides is worked out anew. */
import {describe, expect, it} from 'vitest'
import type {Bird, Chicks, Logbook} from '../../src/logbook/book.ts'
import {parseDate} from '../../src/records/dates.ts'
import {bookOf, type Files} from './around.ts'

const dayOf = (text: string): number => parseDate(text)?.first ?? NaN
const viewOf = (files: Files, on: string): Logbook => bookOf(files, {asOf: dayOf(on)})
const birdIn = (book: Logbook, band: string): Bird | undefined => book.birds.find(bird => bird.bands.some(worn => worn.band === band))
const lookIn = (chick: Pick<Chicks, 'looks'> | undefined, trait: string) => [...chick?.looks ?? []].find(([{id}]) => id === trait)?.[1]
const valueIn = (chick: Pick<Chicks, 'looks'> | undefined, trait: string) => lookIn(chick, trait)?.counted?.value ?? null
const HATCH = (lines: string) => `---\npen: 2024-A\nset: 2024-03-02\neggs: 40\nhatched: 20\non: 2024-03-23\n${lines}\n---\n`

describe('an undated look', () => {
  // hatched on 23 March; the comb is scored from 6 weeks (4 May), the weight taken at 20 weeks (10 August), the down seen at hatch
  const files: Files = {
    'traits/down.md': '---\nname: Down\nstates: [buff, white]\n---\n',
    'traits/egg-colour.md': '---\nname: Egg colour\nstates: [clear, tinted]\nseen-in: female from first egg\n---\n',
    'hatches/2024-09.md': HATCH('chicks:\n  - {band: 24-901, sex: female, comb: pea, down: buff, weight-20: 1.9 kg, first-egg: 2024-09-10, egg-colour: tinted}\ntallies:\n  - {chicks: 3, comb: single, down: white}'),
  }
  const seen = (on: string) => {
    const book = viewOf(files, on), bird = birdIn(book, '24-901'), tally = book.hatches[0]?.tallies[0]
    return [...['down', 'comb', 'weight-20', 'egg-colour'].map(trait => valueIn(bird, trait)), ...['down', 'comb'].map(trait => valueIn(tally, trait)), book.later]
  }
  it.each([
    ['2024-04-02', ['buff', null, null, null, 'white', null, 5]],
    ['2024-05-03', ['buff', null, null, null, 'white', null, 5]],
    ['2024-05-04', ['buff', 'pea', null, null, 'white', 'single', 3]],
    ['2024-08-09', ['buff', 'pea', null, null, 'white', 'single', 3]],
    ['2024-08-10', ['buff', 'pea', 1900, null, 'white', 'single', 2]],
    ['2024-09-10', ['buff', 'pea', 1900, 'tinted', 'white', 'single', 0]],
  ])('on %s stands from the day the trait can be scored', (on, expected) => expect(seen(on)).toEqual(expected))

  it('of a bird’s own file, and in an undated observation, is cut back alike; of a founder of no known day it stands', () => {
    const files: Files = {
      'birds/H-9.md': '---\nband: H-9\nsex: male\nstrain: holm-white\nhatched: 2024-03-01\ncomb: single\n---\n',
      'birds/H-10.md': '---\nband: H-10\nsex: male\nstrain: holm-white\nhatched: 2024-03-01\nobservations: [{comb: single}]\n---\n',
      'birds/H-11.md': '---\nband: H-11\nsex: male\nstrain: holm-white\ncomb: single\n---\n',
    }
    expect(['H-9', 'H-10', 'H-11'].map(band => valueIn(birdIn(viewOf(files, '2024-04-11'), band), 'comb'))).toEqual([null, null, 'single'])
    expect(['H-9', 'H-10', 'H-11'].map(band => valueIn(birdIn(viewOf(files, '2024-04-12'), band), 'comb'))).toEqual(['single', 'single', 'single'])
  })

  it('of the tally a bird was banded from comes back where its own score came later', () => {
    const files: Files = {
      'hatches/2024-09.md': HATCH('tallies:\n  - {chicks: 3, comb: single}'), 'birds/24-950.md': '---\nband: 24-950\nout-of: {hatch: 2024-09}\n---\n',
      'scores/2024.csv': 'band,on,by,comb,struck\n24-950,2024-09-01,inga,pea,\n',
    }
    expect(['2024-04-20', '2024-06-01', '2024-09-01'].map(on => valueIn(birdIn(viewOf(files, on), '24-950'), 'comb'))).toEqual([null, 'single', 'pea'])
  })
})

describe('what a view works out anew', () => {
  it('keeps the sex that a stay in a pen shows, though it was written down later', () => {
    const files: Files = {
      'hatches/2023-09.md': '---\nstrain: holm-white\non: 2023-03-23\nchicks:\n  - {band: 23-901, sex: [{is: male, on: 2024-12-01}]}\n  - {band: 23-902}\n---\n',
      'pens/2024-B.md': '---\nseason: 2024\nmales: [23-901, 23-902]\nfemales: [B-3]\nfrom: 2024-02-10\n---\n',
    }
    const sexes = (on: string) => ['23-901', '23-902'].map(band => birdIn(viewOf(files, on), band)?.sex)
    expect(sexes('2024-03-01')).toEqual(['male', 'male'])
    expect(sexes('2024-02-09')).toEqual(['unknown', 'unknown'])
  })

  it('takes the sex of a tally as it was told by then', () => {
    const files: Files = {'hatches/2024-09.md': HATCH('tallies:\n  - {chicks: 3, sex: [{is: male, on: 2024-06-01}, {is: female, on: 2024-09-01}]}')}
    expect(['2024-05-01', '2024-07-01', '2024-09-01'].map(on => viewOf(files, on).hatches[0]?.tallies[0]?.sex)).toEqual(['unknown', 'male', 'female'])
  })

  it('judges anew whether a score counts: by the sex and the first egg as known then', () => {
    const files: Files = {
      'traits/spur.md': '---\nname: Spur\nstates: [short, long]\nseen-in: male\n---\n',
      'hatches/2024-09.md': HATCH('chicks:\n  - {band: 24-901, sex: [{is: male, on: 2024-06}, {is: female, on: 2024-09-12, because: laid}]}'),
      'scores/2024.csv': 'band,on,by,spur,struck\n24-901,2024-07-01,inga,short,\n',
    }
    expect([valueIn(birdIn(bookOf(files), '24-901'), 'spur'), valueIn(birdIn(viewOf(files, '2024-08-01'), '24-901'), 'spur')]).toEqual([null, 'short'])
  })

  it('shows the weighing nearest to the age of those taken by then', () => {
    const files: Files = {
      'hatches/2024-09.md': HATCH('chicks:\n  - {band: 24-901, sex: male}'), 'measures/w.csv': 'band,on,weight\n24-901,2024-07-20,2.1 kg\n24-901,2024-08-04,2.3 kg\n24-901,2024-08-11,2.4 kg\n',
    }
    const look = (on: string) => lookIn(birdIn(viewOf(files, on), '24-901'), 'weight-20')
    expect(['2024-08-03', '2024-08-04', '2024-08-11'].map(on => look(on)?.counted?.value ?? null)).toEqual([null, 2300, 2400])
    expect(look('2024-08-03')?.scores.map(score => [score.value, score.outside])).toEqual([[2100, true]])
    // two weighings left aside, each once, though a trait takes its value from them
    expect(viewOf(files, '2024-08-03').later).toBe(2)
  })

  it('says for which traits birds weighed without bands count by then', () => {
    const files: Files = {'hatches/2024-09.md': HATCH(''), 'measures/w.csv': 'hatch,on,sex,weight\n2024-09,2024-08-04,male,2.3 kg\n2024-09,2024-08-11,male,2.4 kg\n'}
    const counting = (on: string) => viewOf(files, on).looseWeighings.filter(weighing => weighing.countsFor.length > 0).map(weighing => weighing.value)
    expect([counting('2024-08-05'), counting('2024-08-11')]).toEqual([[2300], [2400]])
  })
})

describe('a band', () => {
  const files: Files = {
    'hatches/2024-09.md': HATCH('chicks:\n  - {band: 24-901, bands: [{band: 24-901, to: 2024-06-15 lost}, {band: Y-7}, {band: Y-8, from: 2025-01-10}, Y-9]}'),
  }
  it.each([['2024-06-14', ['24-901']], ['2024-06-15', ['24-901', 'Y-7']], ['2025-01-09', ['24-901', 'Y-7']], ['2025-01-10', ['24-901', 'Y-7', 'Y-8', 'Y-9']]])(
    'without a day of its own shows from when the one before it came off: %s', (on, bands) => {
      const bird = birdIn(viewOf(files, on), '24-901')
      expect([bird?.bands.map(worn => worn.band), bird?.band]).toEqual([bands, bands.at(-1)])
    })

  it('is not lost before its day', () => {
    expect(['2024-06-14', '2024-06-15'].map(on => birdIn(viewOf(files, on), '24-901')?.bands[0]?.lost)).toEqual([false, true])
  })
})

describe('the day of the whole book', () => {
  it('is no earlier than the day a band came off, though ends of other kinds may be planned', () => {
    const asOf = (line: string) => bookOf({'hatches/2024-09.md': HATCH(`chicks:\n  - {band: 24-901, ${line}}`)}).asOf
    expect(asOf('bands: [{band: 24-901, to: 2025-06-15 lost}, Y-7]')).toBe(dayOf('2025-06-15'))
    expect(asOf('kept-at: [{keeper: kelpgarth, to: 2025-06-15}]')).toBe(dayOf('2024-03-23'))
  })
})

describe('photographs', () => {
  it('of every kind of record are cut back by their own day', () => {
    const photos = 'photos: [{file: a.jpg, on: 2024-05-01, alt: seen}, {file: b.jpg, on: 2024-07-01, alt: seen}]'
    const files: Files = {
      'photos/a.jpg': '-', 'photos/b.jpg': '-',
      'strains/holm-white.md': `---\nname: Holm White\nrole: recurrent\ntrue-for: {comb: single}\n${photos}\n---\n`,
      'traits/down.md': `---\nname: Down\nstates: [buff, white]\n${photos}\n---\n`,
      'pens/2024-B.md': `---\nseason: 2024\nmales: [H-2]\nfemales: [B-3]\nfrom: 2024-02-10\n${photos}\n---\n`,
      'hatches/2024-09.md': HATCH(photos), 'steps/F1.md': `---\n${photos}\n---\nWords.\n`,
      'shows/2024-05-11-wadderness.md': `---\nname: Spring show\non: 2024-05-11\n${photos}\n---\n`,
      'care/2024-05-02-foot.md': `---\ncare: illness\non: 2024-05-02\n${photos}\n---\n`, 'diary/2024-05-03-thaw.md': `---\non: 2024-05-03\ntitle: Thaw\n${photos}\n---\n`,
      'standard/1.md': `---\ndraft: 1\non: 2024-05-04\n${photos}\n---\n# Head\n\nWords.\n`,
      'birds/H-9.md': `---\nband: H-9\nsex: male\nstrain: holm-white\nhatched: 2022-03-01\n${photos}\n---\n`,
    }
    const counts = (book: Logbook) => [book.strains, book.traits, book.pens, book.hatches, [...book.stepNotes.values()], book.shows, book.care, book.diary, book.drafts, book.birds]
      .map(things => things.flatMap(thing => thing.photos ?? []).length)
    expect(counts(bookOf(files))).toEqual(Array(10).fill(2))
    expect(counts(viewOf(files, '2024-06-01'))).toEqual(Array(10).fill(1))
    expect(viewOf(files, '2024-06-01').later).toBe(10)
  })
})

describe('everything else that is dated', () => {
  it('stays of a pen, of a keeper, and what a bird is kept or left for', () => {
    const files: Files = {
      'keepers/ternhouse.md': '---\nname: The keeper at Ternhouse\nconsent: yes\nsince: 2025\n---\n',
      'birds/H-9.md': '---\nband: H-9\nsex: male\nstrain: holm-white\nhatched: 2022-03-01\nkept-at: [{keeper: kelpgarth, to: 2024-10-25}, {keeper: ternhouse}]\nkept: 2024-10-01 for breeding\nleft: 2025-01-10 died\nobservations: [{on: 2024-11-01, note: Moults.}]\n---\n',
      'pens/2024-B.md': '---\nseason: 2024\nmales: [H-2, {band: H-9, from: 2024-04-01}]\nfemales: [B-3]\nfrom: 2024-02-10\n---\n',
    }
    const view = viewOf(files, '2024-03-01'), bird = birdIn(view, 'H-9')
    expect(bird).toMatchObject({kept: null, left: null, observations: []})
    expect(bird?.keptAt.map(({keeper, to}) => [keeper.id, to])).toEqual([['kelpgarth', null]])
    expect(view.pens.find(pen => pen.id === '2024-B')?.males.map(stay => stay.bird.band)).toEqual(['H-2'])
    expect(view.keepers.map(keeper => keeper.since)).toEqual([null, null])
    expect(view.later).toBe(6)
  })

  it('papers, and a waiver with the paper that shows it', () => {
    const files: Files = {
      'requirements.md': '---\nrequirements:\n  - {kind: years-bred, title: Years, asked: At least 5 years, waived: {because: All gatherings were forbidden., paper: w1.pdf}}\n  - {kind: veterinary, title: Health, asked: A statement, waived: {because: Not asked this year.}}\npapers:\n  - {file: w1.pdf, title: Letter, on: 2024-08-12, proves: years-bred}\n---\n',
    }
    const waived = (book: Logbook) => [book.requirements?.papers.length, ...book.requirements?.items.map(item => item.waived !== null) ?? []]
    expect([waived(viewOf(files, '2024-08-11')), waived(viewOf(files, '2024-08-12'))]).toEqual([[0, false, true], [1, true, true]])
  })

  it('drafts of the standard, and what a show names of a later one', () => {
    const files: Files = {
      'standard/1.md': '---\ndraft: 1\non: 2024-01-04\n---\n# Head\n\nWords.\n', 'standard/2.md': '---\ndraft: 2\non: 2024-09-04\n---\n# Head\n\nOther words.\n',
      'shows/2024-05-11-wadderness.md': '---\nname: Spring show\non: 2024-05-11\nentries:\n  - {bird: H-1, draft: 2}\n  - {bird: H-2, draft: 1}\nscores:\n  - {bird: H-1, draft: 2, head: 8 of 10}\n---\n',
    }
    const view = viewOf(files, '2024-06-01')
    expect(view.drafts.map(draft => draft.number)).toEqual([1])
    expect([view.shows[0]?.entries.map(entry => entry.draft), view.shows[0]?.scores?.map(score => score.draft)]).toEqual([[null, 1], [null]])
    expect(viewOf(files, '2024-05-10').shows).toEqual([])
  })

  it('scores, that are then of no later draft', () => {
    const draft = (number: number, on: string) => ({[`standard/${number}.md`]: `---\ndraft: ${number}\non: ${on}\n---\n# Head\n\nWords.\n`})
    const files: Files = {...draft(1, '2024-01-04'), ...draft(2, '2024-09-04'), 'scores/2024.csv': 'band,on,by,draft,comb\nH-1,2024-05-11,inga,2,single\nH-2,2024-05-11,inga,1,single\n'}
    const drafts = (asOf: string) => viewOf(files, asOf).birds.flatMap(({looks}) => [...looks.values()].flatMap(({scores}) => scores.map(score => score.draft ?? null)))
    expect([drafts('2024-06-01'), drafts('2024-10-01')]).toEqual([[null, 1], [2, 1]])
  })

  it('care, with the pens, birds and hatches that were there; the diary; feed and eggs', () => {
    const files: Files = {
      'care/2024-01-10-housing.md': '---\ncare: housing\non: 2024-01-10\npens: [2024-A]\nbirds: [H-1]\n---\n', 'care/2024-09-10-foot.md': '---\ncare: illness\non: 2024-09-10\n---\n',
      'diary/2024-09-03-thaw.md': '---\non: 2024-09-03\ntitle: Thaw\n---\n', 'measures/eggs.csv': 'pen,on,eggs,hens\n2024-A,2024-02-20,2,2\n2024-A,2024-03-20,2,2\n', 'measures/feed.csv': 'pen,on,feed\n2024-A,2024-03-20,2 kg\n',
    }
    const winter = viewOf(files, '2024-01-31'), spring = viewOf(files, '2024-03-01')
    expect(winter.care.map(({pens, birds}) => [pens.length, birds.length])).toEqual([[0, 1]])
    expect(spring.care.map(({pens, birds}) => [pens.length, birds.length])).toEqual([[1, 1]])
    expect([spring.diary.length, spring.eggCounts.length, spring.feedings.length]).toEqual([0, 1, 0])
  })

  it('a hatch that says only when it was set or laid hatches in its time, and its chicks with it', () => {
    const hatch = (lines: string): Files => ({'hatches/2024-09.md': `---\npen: 2024-A\n${lines}\neggs: 10\nhatched: 4\nchicks:\n  - {band: 24-901, comb: pea}\n---\n`})
    const stands = (files: Files, on: string) => {
      const book = viewOf(files, on)
      return [book.hatches.map(({hatched}) => hatched), birdIn(book, '24-901') !== undefined, valueIn(birdIn(book, '24-901'), 'comb')]
    }
    // eggs of chickens are hatched after 21 days
    expect(['2024-03-01', '2024-03-22', '2024-03-23', '2024-05-04'].map(on => stands(hatch('set: 2024-03-02'), on))).toEqual([[[], false, null], [[null], false, null], [[4], true, null], [[4], true, 'pea']])
    expect(['2024-02-19', '2024-03-21', '2024-03-22'].map(on => stands(hatch('laid: 2024-02-20..2024-03-01'), on))).toEqual([[[], false, null], [[null], false, null], [[4], true, null]])
  })
})
