import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {F2, logbook, pen} from '../pages/small-logbook.ts'
import {bookOfFamilies, evenBook, F3, F4} from './evenness-book.ts'

const parts = (book: Logbook) => study(book).trueBredParts
const shortly = (book: Logbook) => parts(book).map(({of, name, sex, share, leftOut}) => [of, name, sex, share.kind === 'share' ? `${share.count} of ${share.total}` : 'none', leftOut])

/** Each family in a pen and season of its own. */
function penned(book: Logbook): Logbook {
  const pens = book.hatches.map((from, index) => pen(`p-${index}`, 2022 + index, {hatches: [from]}))
  book.hatches.forEach((from, index) => Object.assign(from, {pens: [{pen: pens[index], eggs: null}]}))
  return {...book, pens}
}

describe('trueBredParts(book)', () => {
  it('counts each sex of a step, each pen, and the last two seasons together', () => {
    const book = penned(bookOfFamilies([{step: F2, pea: 3, single: 1}, {step: F3, pea: 4, single: 1, sex: 'female'}, {step: F4, pea: 5, type: [7, 7, 7, 7, 7, 7]}]))
    expect(shortly(book)).toEqual([
      ['sex', 'F2', 'male', '3 of 4', 0], ['sex', 'F2', 'female', 'none', 0], ['sex', 'F3', 'male', 'none', 0], ['sex', 'F3', 'female', '4 of 5', 0], ['sex', 'F4', 'male', '5 of 5', 1], ['sex', 'F4', 'female', 'none', 0],
      ['pen', 'p-0', 'all', '3 of 4', 0], ['pen', 'p-1', 'all', '4 of 5', 0], ['pen', 'p-2', 'all', '5 of 5', 1], ['seasons', '2023 to 2024', 'all', '9 of 10', 1],
    ])
  })

  it('lets five families speak of birds bred like these, and fewer of these chicks only', () => {
    const six = penned(bookOfFamilies([...Array.from({length: 6}, () => ({step: F2, pea: 4, single: 1}))]))
    expect(parts(six).filter(({of}) => of !== 'sex').map(({of, family}) => [of, family?.kind])).toEqual([...Array.from({length: 6}, () => ['pen', 'these-chicks']), ['seasons', 'these-chicks']])
    expect(parts(six)[0]?.family?.kind).toBe('families')
  })

  it('has nothing where nothing is required, nor of a book without chicks', () => {
    expect(parts({...bookOfFamilies([{step: F2, pea: 3}]), traits: []})).toEqual([])
    expect(parts(logbook('2024-01-01'))).toEqual([])
  })

  it('agrees with the rates of pens and with a recount by sex, and leaves nobody out uncounted', () => {
    fc.assert(fc.property(evenBook, book => {
      const {trueBred, trueBredParts} = study(book)
      for (const {of, name, sex, share, leftOut} of trueBredParts) {
        const counts = share.kind === 'share' ? [share.count, share.total] : [0, 0]
        if (of === 'pen') {
          const rate = trueBred.pens.find(each => each.pen.id === name)
          expect([...counts, leftOut]).toEqual([rate?.passes, (rate?.passes ?? 0) + (rate?.fails ?? 0), (rate?.partScored ?? 0) + (rate?.lost ?? 0) + (rate?.tooYoung ?? 0) + (rate?.unlisted ?? 0)])
        }
        if (of !== 'sex') continue
        const own = [...trueBred.verdicts].filter(([chick]) => chick.sex === sex && chick.step.label === name)
        const sum = (is: string) => own.reduce((all, [{count}, verdict]) => (verdict.is === is ? all + count : all), 0)
        expect(counts).toEqual([sum('right'), sum('right') + sum('off')])
        expect(leftOut).toBe(own.reduce((all, [{count}]) => all + count, 0) - sum('right') - sum('off'))
      }
    }), {numRuns: 60})
  })
})
