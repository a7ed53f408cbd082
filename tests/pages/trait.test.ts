import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook, Sex, Trait} from '../../src/logbook/book.ts'
import {traitPage, type TraitView} from '../../src/pages/trait.ts'
import {traitsPage, type TraitsView} from '../../src/pages/traits.ts'
import {at, bird, comb, date, F2, hatch, logbook, looks, score, trait, weight} from './small-logbook.ts'

const on = date('2024-03-23')

/** A hatch of so many males, females and unsexed birds, each weighed on the day. */
function weighedBook(counts: Readonly<Record<Sex, number>>, off = 0): Logbook {
  const from = hatch('2024-03', {on, step: F2})
  const chicks = (['male', 'female', 'unknown'] as const).flatMap(sex => Array.from({length: counts[sex]}, (_, index) => {
    const day = {text: '', first: on.first + 140 + off, last: on.first + 140 + off}
    return bird(`24-${sex}-${index}`, sex, {hatched: on, hatch: from, step: F2, strain: null, weighings: [{measure: 'weight', value: 2000 + 10 * index, on: day, at}]})
  }))
  return logbook('2025-10-30', {traits: [weight], birds: chicks, hatches: [Object.assign(from, {chicks})]})
}

function told(of: Trait, book: Logbook) {
  const findings = study(book)
  const view = traitPage(of, findings).view as TraitView, list = traitsPage(findings).view as TraitsView
  return {lead: view.lead, course: view.course.words, listed: [...list.required?.rows ?? [], ...list.others?.rows ?? []].map(row => row.at(-1))}
}

describe('the page of a measured trait', () => {
  it('says how many were measured, and that no class had five, where they are too few', () => {
    const {lead, course, listed} = told(weight, weighedBook({male: 4, female: 3, unknown: 0}))
    expect(lead).toBe('A measure. 7 birds measured; no class (one sex, reared alike) had five, so how even they are cannot be said.')
    expect(listed).toEqual(['7 birds measured; no class (one sex, reared alike) had five, so how even they are cannot be said.'])
    expect(course).toEqual(['Too few reared alike to say how even they are: F2 males (4 measured) and F2 females (3 measured).'])
  })

  it('counts birds whose sex nobody knows among the measured', () => {
    const {lead, course} = told(weight, weighedBook({male: 0, female: 0, unknown: 6}))
    expect(lead).toContain('6 birds measured; no class')
    expect(course).toEqual(['6 birds measured of unknown sex, in none of these figures.'])
  })

  it('says that nobody was measured where nobody was, or not at the age', () => {
    for (const book of [weighedBook({male: 0, female: 0, unknown: 0}), weighedBook({male: 6, female: 0, unknown: 0}, 30)]) {
      expect(told(weight, book)).toMatchObject({lead: 'A measure. Nobody measured yet at the age that counts.', course: ['Nobody has been measured at the age that counts.']})
    }
  })

  it('gives the latest mean where a class is large enough', () => expect(told(weight, weighedBook({male: 5, female: 2, unknown: 0})).lead).toContain('Latest in F2, males: mean'))
})

describe('the page of a scored trait', () => {
  it('says that none was scored', () => expect(told(comb, logbook('2025-10-30', {traits: [comb]})).lead).toBe('Required by the standard. None scored yet.'))

  it('counts the marks of a scale that the standard does not require', () => {
    const vigour = trait('vigour', 'Vigour', {kind: 'graded', scale: {from: 1, to: 5}})
    const from = hatch('2024-03', {on, step: F2})
    const chicks = [3, 4, 4].map((mark, index) => bird(`24-${index}`, 'male', {hatched: on, hatch: from, step: F2, strain: null, looks: looks(score(vigour, mark))}))
    expect(told(vigour, logbook('2025-10-30', {traits: [vigour], birds: chicks, hatches: [Object.assign(from, {chicks})]})).lead).toBe('Marks on a scale. Latest in F2: 1 with 3 and 2 with 4 of 3 scored.')
  })
})
