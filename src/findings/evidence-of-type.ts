/** Evidence that the birds are true to type and even. */
import type {Requirement} from '../logbook/book.ts'
import {judged, nothing, type Finding, type Sources} from './evidence-shown.ts'
import {trueBredOf} from './true-bred.ts'

/** How many of the last seasons count where a requirement names no number. */
const SEASONS = 2

/** The rate among chicks of matings inter se in the last seasons that had any, held against the share asked. The value decides, not its lower limit; both are shown. */
export function trueToType({atLeast, seasons: asked}: Requirement, {book, trueBred}: Sources): Finding {
  const seasons = trueBred.interSeSeasons.map(({season}) => season).slice(-Math.max(1, asked ?? SEASONS))
  if (seasons.length === 0) return nothing
  const rate = trueBredOf(book, trueBred, seasons)
  if (rate.rate.kind === 'cannot-say') return {state: 'cannot-tell', shown: {kind: 'true-to-type', seasons, rate, sure: false}}
  const sure = atLeast !== null && rate.ifAllFail.kind === 'share' && rate.ifAllFail.value >= atLeast
  return judged(atLeast === null ? null : rate.rate.value >= atLeast, {kind: 'true-to-type', seasons, rate, sure})
}

/** CV at most, or share within a tenth at least, in every sex measured of the latest step that has a figure; of one trait, or of every measured one. */
export function evenWeight({trait, atMost, atLeast}: Requirement, {ladder, spread}: Sources): Finding {
  const rows = spread.rows.filter(row => row.sex !== 'all' && (trait === null || row.trait === trait) && row.step !== 'mixed')
  // steps beside the ladder, such as test matings, are not what is asked about
  const step = ladder.findLast(each => !each.beside && rows.some(row => row.step === each.label && row.spread.kind === 'spread'))?.label
  if (step === undefined) return {state: 'cannot-tell', shown: {kind: 'nothing-recorded', ...(trait && {trait})}}
  const here = rows.filter(row => row.step === step)
  if (atMost === null && atLeast === null) return {state: 'cannot-tell', shown: {kind: 'even-weight', step, rows: here}}
  const verdicts = here.map(({spread: found}) => found.kind === 'cannot-say' ? null
    : (atMost === null || found.cv <= atMost) && (atLeast === null || found.within10.value >= atLeast))
  const missing = verdicts.includes(null) || new Set(here.map(row => row.sex)).size < 2
  return judged(verdicts.includes(false) ? false : missing ? null : true, {kind: 'even-weight', step, rows: here})
}
