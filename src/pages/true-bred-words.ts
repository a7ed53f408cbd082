/** The true-bred rate in words, the same on every page: what the chicks that pass have shown, and how many of them could not yet show everything. */
import type {TrueBredRate} from '../findings/true-bred.ts'
import {listWords} from './numbers.ts'

/** What a passing chick has shown, after `showed` or `show`. */
export const ALL_IT_COULD = 'every required trait that it was old enough and of the sex to show'
export const ALL_THEY_COULD = 'every required trait that they were old enough and of the sex to show'

/** Passes judged on fewer than all required traits, and which were wanting; empty when none is. Counts in figures throughout. */
export function onFewerWords({passes, passesOnFewer, traits}: TrueBredRate): string {
  if (passesOnFewer === 0) return ''
  const who = passesOnFewer === passes ? (passes === 1 ? 'The 1 that did' : `All ${passes} that did`) : `${passesOnFewer} of these ${passes}`
  const was = passesOnFewer === 1 ? 'was' : 'were'
  const wanting = traits.filter(({passesWithout}) => passesWithout > 0)
  const [first, second] = wanting
  if (first && !second) return `${who} ${was} too young, or not of the sex, to show ${first.trait.name.toLowerCase()}, and ${was} judged without it.`
  const each = listWords(wanting.map(({trait, passesWithout}) => `${trait.name.toLowerCase()} in ${passesWithout}`))
  return `${who} ${was} too young, or not of the sex, to show all ${traits.length} required traits, and ${was} judged on the others: wanting were ${each}.`
}

/** `9 of the 55 on fewer than 3 traits`, where a whole sentence has no room; empty when none is. */
export function onFewerShort({passes, passesOnFewer, traits}: TrueBredRate): string {
  return passesOnFewer === 0 ? '' : `${passesOnFewer === passes ? 'all' : passesOnFewer} of the ${passes} judged on fewer than ${traits.length}`
}
