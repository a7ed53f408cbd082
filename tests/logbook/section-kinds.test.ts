import {describe, expect, it} from 'vitest'
import {sectionKindOf, sexOfHeading} from '../../src/logbook/section-kinds.ts'

describe('what a heading is about', () => {
  it.each([
    ['General characteristics, male', 'male'], ['The cock', 'male'], ['Shape of female', 'female'], ['Hen: differences from the male', 'female'], ['Cock and hen', null], ['Head', null], ['Colour of male and female', 'colour'],
    ['Markings', 'colour'], ['Colour varieties', 'colour'], ['Day-old down', 'down'], ['Minor defects', 'minor-faults'], ['Slight faults', 'minor-faults'], ['Serious faults', 'serious-faults'], ['Defects', 'serious-faults'],
    ['Faults', 'faults'], ['Disqualifications and serious faults', 'disqualifications'], ['Scale of points', 'points'], ['Weights', 'weights'], ['Masses', 'weights'], ['Ring sizes', 'rings'], ['Egg for hatching', 'egg'],
    ['General impression', 'impression'], ['Origin and purpose', 'origin'], ['Economic qualities', 'utility'], ['Character', 'temperament'], ['Classification', 'classification'],
  ] as const)('%s: %s', (heading, kind) => expect(sectionKindOf(heading)).toBe(kind))

  it.each([['Male', 'male'], ['Pullets', 'female'], ['Female, as the male', 'female'], ['Cockerels and pullets', null], ['Male/female', null], ['In both sexes', null], ['Hencote', null]] as const)('%s speaks of %s', (heading, sex) => expect(sexOfHeading(heading)).toBe(sex))
})
