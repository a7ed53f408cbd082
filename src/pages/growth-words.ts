/** How a hatch or a pen's chicks grew, a sentence a sex: the mean weight at each age, and what was put on from one to the next. */
import type {Growth, GrowthGain, GrowthPoint} from '../findings/growth-of-groups.ts'
import type {Project} from '../logbook/book.ts'
import {ageWords} from './dates.ts'
import {mass, massLimits} from './mass-words.ts'
import {figured, listWords, rounded} from './numbers.ts'

const SEX = {male: 'Males', female: 'Females', unknown: 'Chicks not yet sexed'} as const

const pointWords = ({age, n, mean, interval}: GrowthPoint, units: Project['units']): string => `${mass(mean, units)} at ${ageWords(Math.round(age))} (${interval ? `${massLimits(interval, mean, units)}, ` : ''}${figured(n, 'bird')})`

function gainWords({birds, perDay, interval}: GrowthGain, units: Project['units']): string {
  const write = (grams: number): string => (units === 'imperial' ? mass(grams, units) : `${rounded(grams, 1)} g`).replace('-', '−')
  const how = birds === 0 ? 'by the means' : `${interval ? `${write(interval.low).replace(/ .*/, '')} to ${write(interval.high).replace(/ .*/, '')}, ` : ''}${birds} weighed twice`
  return `${write(perDay)} (${how})`
}

/** Empty where nothing was weighed. */
export function growthWords(growth: readonly Growth[], units: Project['units']): readonly string[] {
  return growth.map(({sex, points, gains}) => `${SEX[sex]} weighed ${listWords(points.map(point => pointWords(point, units)))}${gains.length === 0 ? '' : `; gain a day ${listWords(gains.map(gain => gainWords(gain, units)), 'then')}`}.`)
}
