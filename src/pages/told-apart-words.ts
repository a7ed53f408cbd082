/** The answer above a table of comparisons: how many groups differ, of whom that speaks, and which of them were kept alike; `alikeCaution` warns of the others. */
import type {RearedAlike} from '../findings/reared-alike.ts'
import {counted, countWord, listWords, sentence} from './numbers.ts'

/** One comparison in few words: `more chicks of BC4 lived than of BC3F3`. */
export interface Compared {
  readonly words: string
  readonly verdict: 'more' | 'less' | 'cannot-tell'
  /** it speaks of these eggs, chicks or hens only */
  readonly only: boolean
  readonly alike: RearedAlike
}

/** So many are told one by one; more are left to the table. */
const LISTED = 3

/** @param of what is compared: `eggs`. Empty where nothing was compared. */
export function toldApartWords(all: readonly Compared[], of: string): string {
  if (all.length === 0) return ''
  const told = all.filter(({verdict}) => verdict !== 'cannot-tell'), kept = told.filter(({alike}) => alike.verdict === 'alike'), only = told.filter(each => each.only)
  if (told.length === 0) return all.length === 1 ? 'No difference is shown: the limits leave room for none.' : `None of ${counted(all.length, 'comparison')} shows a difference: the limits of each leave room for none.`
  // limits that speak of these alone leave out how families and pens differ, and show far more by chance than one in twenty
  const wide = all.filter(each => !each.only).length, chance = Math.round(wide / 20)
  const count = all.length === 1 ? 'There is a difference' : `${sentence(countWord(told.length))} of ${counted(all.length, 'comparison')} ${told.length === 1 ? 'shows' : 'show'} a difference${chance === 0 ? '' : `, where chance alone would show about ${countWord(chance)}${wide === all.length ? '' : ` of the ${wide} that speak of more than these ${of}`}`}`
  const which = told.length > LISTED ? '' : `: ${listWords(told.map(({words}) => words))}`
  const narrow = only.length === 0 ? '' : ` ${only.length === told.length ? (told.length === 1 ? 'It speaks' : 'All speak') : only.length === 1 ? 'One speaks' : `${sentence(countWord(only.length))} speak`} of these ${of} only.`
  const birds = kept.length === told.length ? 'By the records they were kept alike.' : kept.length === 0 ? '' : `${sentence(countWord(kept.length))} of them ${kept.length === 1 ? 'is' : 'are'} of groups kept alike.`
  return `${count}${which}.${narrow} ${birds}`.trim()
}
