/** How true each part of a step is: the two sexes, its pens, the last seasons; and the carriers that the rate leaves, with the throw-backs to expect of them. */
import {currentStep, type ReachedStep} from '../findings/ladder.ts'
import type {Findings} from '../findings/study.ts'
import {lastSeasons, type TrueBredPart} from '../findings/true-bred-parts.ts'
import {chance} from './chance-words.ts'
import {shareCells} from './estimate-words.ts'
import {warningWords} from './home-fixation.ts'
import {penPath} from './links.ts'
import {limits, limitsShort, listWords, NOTHING, percentSign, rounded, sentence} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import {SEX_ROWS} from './sex-words.ts'
import {unwantedWords} from './trait-hidden.ts'

/** Of a step: its sexes and pens, and the last seasons where it is of them. */
function partsOf({label, pens, seasons, step}: ReachedStep, {trueBredParts, trueBred}: Findings): readonly TrueBredPart[] {
  const last = lastSeasons(trueBred), ids = new Set(pens.map(({id}) => id))
  return trueBredParts.filter(({of, name, share}) => share.kind === 'share' && (of === 'sex' ? name === label : of === 'pen' ? ids.has(name) : step.interSe >= 1 && seasons.some(season => last.includes(season))))
}

function headOf({of, name, sex}: TrueBredPart, {pens}: ReachedStep): Cell {
  if (of === 'sex') return sentence(SEX_ROWS[sex])
  const pen = pens.find(({id}) => id === name)
  return of === 'pen' && pen ? {text: `Pen ${name}`, link: penPath(pen)} : `All inside the line, ${name}`
}

/** Both intervals where there are families enough: `72.9–86.9; by 6 families 56.7–93.1`. */
function intervalCell({share, family}: TrueBredPart): string {
  if (share.kind !== 'share') return NOTHING
  return family?.kind === 'families' ? `${limitsShort(share.interval)}; by ${family.families} families ${limitsShort(family)}` : limits(share.interval)
}

/** Null where the step has no more than one part. */
export function partsTable(step: ReachedStep, findings: Findings): Table | null {
  const parts = partsOf(step, findings)
  if (parts.length < 2) return null
  return {
    columns: [{head: 'Of them'}, {head: 'All they could', number: true}, {head: '%', number: true}, {head: 'Interval'}],
    rows: parts.map((part): readonly Cell[] => {
      const [count, share] = shareCells(part.share)
      return [headOf(part, step), count, share, intervalCell(part)]
    }),
  }
}

/** The lower limit of the last seasons beside what the association asks; empty where it asks nothing, or the step is none of theirs. */
export function askedWords(step: ReachedStep, findings: Findings): string {
  const part = partsOf(step, findings).find(({of}) => of === 'seasons'), asked = findings.book.requirements?.items.find(({kind}) => kind === 'true-to-type')?.atLeast ?? null
  if (part?.share.kind !== 'share' || asked === null) return ''
  const read = part.family?.kind === 'families' ? part.family : part.share.interval
  return `Asked for are ${percentSign(asked)}; of ${part.name} the lower limit, ${percentSign(read.low)}${part.family?.kind === 'families' ? ' by families' : ' of these chicks'}, ${read.low >= asked ? 'reaches that too' : 'does not reach that'}.`
}

/** Carriers among the chicks that look right; of the step the breed stands at also what the pens will throw. */
export function carriersWords(step: ReachedStep, findings: Findings): readonly string[] {
  const own = findings.carriersInSteps.filter(each => each.step === step.label)
  const some = own.filter(({carriers, right}) => carriers / right >= 0.0005), none = own.filter(each => !some.includes(each))
  const nameOf = (each: (typeof own)[number]): string => `${each.trait.name.toLowerCase()}, ${unwantedWords(each)}`
  const told = some.map(each => `${nameOf(each)}: ${rounded(each.carriers, 1)} of ${each.right} (${chance(each.carriers / each.right)})${each.leftOut > 0 ? `, ${each.leftOut} not worked` : ''}`)
  const back = currentStep(findings.ladder) === step ? warningWords(findings.throwBacks) : ''
  return [
    ...(own.length === 0 ? [] : [`Carriers to be expected among those that look right: ${told.length === 0 ? 'none' : told.join('; ')}.${told.length > 0 && none.length > 0 ? ` None of ${listWords(none.map(nameOf))}.` : ''}${own.every(({exact}) => exact) ? '' : ' Approximate.'}`]),
    ...(back === '' ? [] : [back]),
  ]
}
