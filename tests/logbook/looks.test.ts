/** The look that counts is settled once, in linking: by the chick's own scores, its weighings and the tally it was banded from. */
import {describe, expect, it} from 'vitest'
import {countedValue} from '../../src/findings/counted-value.ts'
import {study} from '../../src/findings/study.ts'
import type {Bird, Logbook, Look} from '../../src/logbook/book.ts'
import {around, bookOf, linkFiles, type Files} from './around.ts'

const HATCH = (lines: string) => `---\npen: 2024-A\nset: 2024-03-02\neggs: 40\nhatched: 20\non: 2024-03-23\n${lines}\n---\n`
const birdIn = (book: Logbook, band: string): Bird => {
  const bird = book.birds.find(each => each.band === band)
  if (!bird) throw new Error(`no ${band}`)
  return bird
}
const lookIn = (bird: Bird, trait: string): Look | undefined => [...bird.looks].find(([{id}]) => id === trait)?.[1]

describe('the look of a bird banded from a tally', () => {
  const files = (row: string): Files => ({
    'hatches/2024-09.md': HATCH('tallies:\n  - {chicks: 3, comb: pea}'), 'birds/24-950.md': '---\nband: 24-950\nout-of: {hatch: 2024-09}\n---\n',
    'scores/2024.csv': `band,on,by,comb,struck\n${row}\n`,
  })
  it.each([
    ['is the tally’s, its own being struck', '24-950,2024-05-10,inga,single,bad light', 'pea', ['pea', 'single']],
    ['is the tally’s, its own being too early', '24-950,2024-04-10,inga,single,', 'pea', ['pea', 'single']],
    ['is its own, where one counts', '24-950,2024-05-10,inga,single,', 'single', ['single']],
  ])('%s; nothing that was scored is lost', (_, row, counted, scores) => {
    const look = lookIn(birdIn(bookOf(files(row)), '24-950'), 'comb')
    expect([look?.counted?.value, look?.scores.map(score => score.value)]).toEqual([counted, scores])
  })
})

describe('the weighing that counts', () => {
  const weighed = (chick: string, rows: string, more: Files = {}) => {
    const book = bookOf({'hatches/2024-09.md': HATCH(`chicks:\n  - {band: 24-901, sex: male${chick}}`), 'measures/w.csv': `band,on,weight\n${rows}\n`, ...more})
    return {bird: birdIn(book, '24-901'), book}
  }
  it('goes before a value of no day, which counts where no weighing was taken in time', () => {
    const value = (rows: string) => lookIn(weighed(', weight-20: 2.2 kg', rows).bird, 'weight-20')?.counted?.value
    expect([value('24-901,2024-08-11,2.4 kg'), value('24-901,2024-09-11,2.4 kg')]).toEqual([2400, 2200])
  })

  it('is the one every figure takes', () => {
    const {bird, book} = weighed('', '24-901,2024-08-08,2.3 kg\n24-901,2024-08-12,2.4 kg')
    const trait = book.traits.find(({id}) => id === 'weight-20')
    expect(trait && [countedValue(bird, trait), lookIn(bird, 'weight-20')?.counted?.value]).toEqual([2300, 2300])
  })

  it('is none of a cock’s for what only hens show', () => {
    const {bird} = weighed('', '24-901,2024-08-08,2.3 kg', {'traits/hen-weight.md': '---\nname: Weight of hens\nmeasure: weight\nunit: g\nseen-in: female\n---\n'})
    expect(lookIn(bird, 'hen-weight')?.counted ?? null).toBe(null)
  })
})

describe('a measured trait of no age', () => {
  const files: Files = {
    'traits/shank.md': '---\nname: Shank\nunit: mm\n---\n', 'hatches/2024-09.md': HATCH('chicks:\n  - {band: 24-901, sex: male}'),
    'measures/bird.csv': 'band,on,shank\n24-901,2024-06-01,80 mm\n24-901,2024-09,95 mm\n',
    'measures/loose.csv': `hatch,on,sex,shank\n${[70, 71].map(mm => `2024-09,2024-06-01,male,${mm}`).join('\n')}\n${[90, 91, 92, 93, 94].map(mm => `2024-09,2024-08-01,male,${mm}`).join('\n')}\n`,
  }
  const book = bookOf(files)

  it('takes the latest weighing from the column of its own name', () => {
    expect(lookIn(birdIn(book, '24-901'), 'shank')?.counted?.value).toBe(95)
    expect(lookIn(birdIn(book, '24-901'), 'shank')?.scores.map(score => score.value)).toEqual([80, 95])
  })

  it('finds birds weighed without bands, those of the latest day', () => {
    expect(book.looseWeighings.filter(weighing => weighing.countsFor.some(trait => trait.id === 'shank')).map(weighing => weighing.value)).toEqual([90, 91, 92, 93, 94])
    const row = study(book).spread.rows.find(({trait, sex}) => trait.id === 'shank' && sex === 'male')
    expect(row?.spread.kind === 'spread' && [row.spread.n, row.spread.mean]).toEqual([6, (90 + 91 + 92 + 93 + 94 + 95) / 6])
  })
})

describe('the draft that a score was made under', () => {
  it('is the one that an observation or a row names; where none is named nothing is', () => {
    const book = bookOf({
      'standard/1.md': '---\ndraft: 1\non: 2023-01-10\n---\n## Colour\n\nWhite.\n', 'scores/2024.csv': 'band,on,comb,draft\nH-2,2024-05-10,single,1\nH-3,2024-05-10,single,\n',
      'birds/H-1.md': '---\nband: H-1\nsex: male\nstrain: holm-white\nhatched: 2022-03-20\nobservations:\n  - {on: 2024-05-10, draft: 1, comb: single, temper: calm}\n---\n',
    })
    expect(['H-1', 'H-2', 'H-3'].map(band => lookIn(birdIn(book, band), 'comb')?.counted?.draft)).toEqual([1, 1, undefined])
    expect(birdIn(book, 'H-1').observations).toMatchObject([{notes: [['temper', 'calm']]}])
  })
  it('is told of where no such draft is on record', () => {
    const {problems} = linkFiles(around({'birds/H-1.md': '---\nband: H-1\nsex: male\nstrain: holm-white\nhatched: 2022-03-20\nobservations:\n  - {on: 2024-05-10, draft: 4, comb: single}\n---\n'}))
    expect(problems.map(({code, place, remedy}) => [code, place.file, place.start.line, remedy])).toEqual([['unknown-draft', 'birds/H-1.md', 7, 'leave it out until a draft stands in standard/']])
  })
})
