/** Evidence that the birds are true to type and even. */
import type {Requirement} from '../logbook/book.ts'
import {judged, nothing, type Finding} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {trueBredOf} from './true-bred.ts'
import {trueBredInSeasons, type TrueBredPart} from './true-bred-parts.ts'

/** How many of the last seasons count where a requirement names no number. */
const SEASONS = 2

/**
 * The rate among chicks of matings inter se in the last seasons that had any, held against the share asked. The rate itself decides, unless the requirement names an interval whose lower
 * limit has to reach the share: by sire families, which cannot be told under five of them, or Clopper and Pearson's.
 */
export function trueToType({atLeast, seasons: asked, interval}: Requirement, {book, trueBred}: Sources): Finding {
  const seasons = trueBred.interSeSeasons.map(({season}) => season).slice(-Math.max(1, asked ?? SEASONS))
  if (seasons.length === 0) return nothing
  const rate = trueBredOf(book, trueBred, seasons), part = trueBredInSeasons(book, trueBred, seasons)
  if (rate.rate.kind === 'cannot-say') return judged(null, {kind: 'true-to-type', seasons, rate, part, sure: false})
  const sure = atLeast !== null && rate.ifAllFail.kind === 'share' && rate.ifAllFail.value >= atLeast
  return judged(reaches(interval === 'families' ? lowByFamilies(part) : interval === 'exact' ? part.exact?.low ?? null : rate.rate.value, atLeast), {kind: 'true-to-type', seasons, rate, part, sure})
}

const reaches = (have: number | null, asked: number | null): boolean | null => (have === null || asked === null ? null : have >= asked)
const lowByFamilies = ({family}: TrueBredPart): number | null => (family?.kind === 'families' ? family.low : null)

/** CV at most, or share within a tenth at least, in every sex measured of the latest step that has a figure; of one trait, or of every measured one. */
export function evenWeight({trait, atMost, atLeast}: Requirement, {ladder, spread}: Sources): Finding {
  const rows = spread.rows.filter(row => row.sex !== 'all' && (trait === null || row.trait === trait) && row.step !== 'mixed')
  // steps beside the ladder, such as test matings, are not what is asked about
  const step = ladder.findLast(each => !each.beside && rows.some(row => row.step === each.label && row.spread.kind === 'spread'))?.label
  if (step === undefined) return judged(null, {kind: 'nothing-recorded', ...(trait && {trait})})
  const here = rows.filter(row => row.step === step)
  if (atMost === null && atLeast === null) return judged(null, {kind: 'even-weight', step, rows: here})
  const verdicts = here.map(({spread: found}) => found.kind === 'cannot-say' ? null
    : (atMost === null || found.cv <= atMost) && (atLeast === null || found.within10.value >= atLeast))
  const missing = verdicts.includes(null) || new Set(here.map(row => row.sex)).size < 2
  return judged(verdicts.includes(false) ? false : missing ? null : true, {kind: 'even-weight', step, rows: here})
}
