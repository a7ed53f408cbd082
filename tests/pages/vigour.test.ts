import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {choosingWords, choosingSteps} from '../../src/pages/choosing-words.ts'
import {choosingPage, type ChoosingView} from '../../src/pages/choosing.ts'
import {choosingAnchor} from '../../src/pages/links.ts'
import {crossesOf, crossWords} from '../../src/pages/vigour-words.ts'
import {vigourPage, type VigourView} from '../../src/pages/vigour.ts'
import {drawnBook} from '../findings/drawn-book.ts'
import {chosenFlock, drawnFlock, inbredFlock, linesTogether} from '../findings/vigour-book.ts'
import {logbook, smallBook, weekOld} from './small-logbook.ts'

const vigour = (book: Logbook) => vigourPage(study(book)).view as VigourView
const choosing = (book: Logbook) => choosingPage(study(book)).view as ChoosingView

/** Nothing that is no word, in anything a reader sees. */
function readable(book: Logbook): void {
  const findings = study(book), text = JSON.stringify([vigourPage(findings).view, choosingPage(findings).view, ...choosingSteps(findings).map(step => choosingWords(findings, step))], (key, value: unknown) => (key === 'spec' ? undefined : value))
  expect(text).not.toMatch(/NaN|Infinity|undefined|\[object|null g|\(\)|\s\s/)
  // what has an interval says of how many
  for (const words of (vigourPage(findings).view as VigourView).words) expect(words).toMatch(/\d+ (of|birds|bird|hens|hen) /)
  const {steps} = choosingPage(findings).view as ChoosingView
  for (const {id, label} of steps) expect(id).toBe(choosingAnchor(label))
}

describe('vigourPage(findings)', () => {
  it('names harm where there is harm, beside what others found', () => {
    const {lead, words, figures, caution} = vigour(inbredFlock(3, {loss: -4, grams: -1500}))
    expect(lead).toBe('Inbreeding costs: hatch of fertile eggs, hatch of eggs set, life to eight weeks and weight at 20 weeks.')
    expect(words[0]).toMatch(/^Hatch of fertile eggs: harm, −\d/)
    expect(figures.map(({id}) => id)).toEqual(['hatch-and-life', 'weight-and-eggs'])
    expect(JSON.stringify(figures[0]?.table)).toContain('−4.4 to −2.6')
    expect(caution?.text).toContain('veterinarian')
    expect(caution?.text).toContain('law')
  })

  it('names none where there is none', () => {
    const {lead, words} = vigour(inbredFlock(5, {loss: 0, grams: 0}, {seasons: 6, pairs: 9, eggs: 60}))
    expect(lead).not.toContain('costs:')
    expect(words[1]).toMatch(/^Hatch of eggs set: no loss as great as others found, at most \d/)
    const small = vigour(inbredFlock(5, {loss: 0, grams: 0}, {seasons: 3, pairs: 6, eggs: 12}))
    expect(small.words[1]).toMatch(/the records cannot tell, and a loss of up to \d+\.\d points is not excluded; \d+ of \d+ in 18 hatches/)
    expect(small.toTell.join(' ')).toMatch(/in all, \d+\.\d times these records/)
    expect(small.toTell.join(' ')).toContain('full sibs')
    expect(small.toTell.join(' ')).toMatch(/In hatch of eggs set a loss of 4\.4 points for ten points of F is one of 11\.0 points between the two: \d+ eggs of each\./)
  })

  it('says that a handful of pairs are too few to say, and keeps its list whole', () => {
    const {words, toTell} = vigour(inbredFlock(5, {loss: 0, grams: 0}, {seasons: 1, pairs: 3, eggs: 12}))
    expect(words[0]).toMatch(/^Hatch of fertile eggs: too few to say \(\d+ of 36 in 3 hatches of 3 pairs\)\.$/)
    expect(words[3]).toMatch(/^Weight at 20 weeks: too few to say \(\d+ birds of 3 pairs\)\.$/)
    expect(toTell[0]).toMatch(/too few records yet to say how many it takes\.$/)
  })

  it('tells what a cross gains, and what is wanting where none can be told', () => {
    const together = linesTogether(3, {holm: 2400, fell: 1600, cross: 2200, back: 2250}, 14), {crosses} = vigour(together)
    expect(crosses.words[0]).toMatch(/^Fell Buff × Holm White, weight at 20 weeks: \+\d+\.\d% \(.*better than the mean of its lines; 42 of the cross, 42 Fell Buff, 42 Holm White, these chicks only\.$/)
    expect(crosses.figure?.table.rows).toHaveLength(1)
    expect(crosses.need).toBe('')
    expect(crossesOf(study(together), 'F1').map(crossWords)).toEqual(crosses.words)
    expect(crossesOf(study(together), 'BC1')).toEqual([])
    expect(vigour(smallBook()).crosses.need).toContain('rear all in one lot')
  })

  it('says what is wanting in a book of nothing and of a week', () => {
    expect(vigour(logbook('2024-01-01'))).toMatchObject({wanting: 'No hatch, weight or egg is on record yet.', words: [], figures: [], caution: null})
    expect(vigour(smallBook()).wanting).toContain('closer and of looser matings')
  })
})

describe('choosingPage(findings)', () => {
  it('finds what was chosen without a target, and the response where both steps were reared together', () => {
    const {lead, apart, steps, heritability, figures} = choosing(chosenFlock(5, {h2: 0.5, choose: true}))
    expect(lead).toContain('weight at 20 weeks')
    expect(apart).toBeNull()
    expect(steps[0]?.came?.columns.map(({head}) => head)).toContain('Response')
    expect(JSON.stringify(heritability?.table.rows)).toContain('realised by choosing')
    expect(figures.map(({id}) => id)).toEqual(['kept-looks', 'kept-measures'])
  })

  it('finds nothing in a flock of which the first were kept', () => {
    const {lead, words} = choosing(chosenFlock(6, {h2: 0.5, choose: false}))
    expect(lead).toBe('Nothing is told yet in which the birds kept differ from the rest.')
    expect(words[0]).toMatch(/no difference is told \(at most \d+ kept of \d+\)/)
  })

  it('says that season and choosing cannot be told apart, and what to do next season', () => {
    const {apart} = choosing(smallBook())
    expect(apart?.text).toContain('Season and choosing cannot be told apart from F1 to F2')
    expect(apart?.text).toContain('repeat a mating that gave F1')
    expect(apart?.text).toMatch(/20 of each tell a difference of \d+ g/)
  })

  it('draws how far type has come back beside the share by blood, and says what it takes where it is not told', () => {
    const {recovery} = choosing(linesTogether(3, {holm: 2400, fell: 1600, cross: 2200, back: 2250}, 14))
    expect(recovery?.figures.map(({table}) => table.rows.map(([step, , , blood]) => [step, blood]))).toEqual([[['F1', '50.0'], ['BC1', '75.0']]])
    expect(choosing(smallBook()).recovery?.words.join(' ')).toContain('must be reared in one lot and measured')
  })

  it('has nothing to say of a book of nothing', () => {
    expect(choosing(logbook('2024-01-01'))).toMatchObject({steps: [], figures: [], words: [], heritability: null})
    expect(choosing(weekOld()).wanting).not.toBe('')
  })
})

describe('both pages', () => {
  it('can be read whatever the book', () => {
    for (const book of [logbook('2024-01-01'), weekOld(), smallBook(), inbredFlock(1, {loss: 0, grams: 0}, {seasons: 1, pairs: 1, eggs: 3}), linesTogether(1, {holm: 1, fell: 2, cross: 3, back: 4}, 1, 1)]) readable(book)
    fc.assert(fc.property(drawnFlock, readable), {numRuns: 30})
    fc.assert(fc.property(drawnBook, readable), {numRuns: 6})
  })
})
