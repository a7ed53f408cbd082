/** A reworded piece as a reader wants it: the sentences that differ, with the words that went and came marked, and long stretches between them left out. */
import {shareKept, type WordRun} from '../findings/word-changes.ts'

export interface MarkedWords {
  readonly out: boolean
  readonly in: boolean
  readonly text: string
}

/** Below this share of kept letters marks are confetti: the old and the new sentence are set side by side instead. */
const LEGIBLE = 0.4

/** A stretch of kept words longer than this is told by its beginning and end. */
const LONG = 24
const ENDS = 6

const SENTENCE = /[.;:!?]\s+/g

/** Where the last sentence of a text begins. */
const lastBegin = (text: string): number => [...text.matchAll(SENTENCE)].reduce((_, match) => match.index + match[0].length, 0)

/** Where the first sentence ends, its stop taken in. */
const firstEnd = (text: string): number => (/[.;:!?](?=\s|$)/.exec(text)?.index ?? text.length) + 1

function shortened(text: string): string {
  const words = text.trim().split(' ')
  if (words.length <= LONG) return text
  return `${/^\s/.test(text) ? ' ' : ''}${words.slice(0, ENDS).join(' ')} … ${words.slice(-ENDS).join(' ')}${/\s$/.test(text) ? ' ' : ''}`
}

const leadingSpace = (text: string): string => /^\s*/.exec(text)?.[0] ?? ''

/** The runs without the sentences that they begin and end with alike. */
export function passage(runs: readonly WordRun[]): readonly WordRun[] {
  return runs.flatMap((run, index): WordRun[] => {
    if (run.is !== 'same') return [run]
    const before = runs[index - 1], after = runs[index + 1]
    let {text} = run
    if (!before) text = text.slice(lastBegin(text + leadingSpace(after?.text ?? '')))
    // a change that ended with its own stop needs nothing after it
    if (!after) text = /[.;:!?]\s*$/.test(before?.text ?? '') ? '' : text.slice(0, firstEnd(text))
    if (before && after) text = shortened(text)
    return text === '' ? [] : [{...run, text}]
  })
}

const only = (runs: readonly WordRun[], left: WordRun['is']): string => runs.filter(({is}) => is !== left).map(({text}) => text).join('').trim()

export interface Reworded {
  /** empty where marks could not be read, or only words were put in or taken out */
  readonly marked: readonly MarkedWords[]
  /** null: words were put in and none taken out */
  readonly was: string | null
  /** null: words were taken out and none put in */
  readonly now: string | null
}

export function reworded(runs: readonly WordRun[]): Reworded {
  const shown = passage(runs), kept = shown.some(({is}) => is === 'same'), was = only(shown, 'in'), now = only(shown, 'out')
  if (was === '' || now === '') return {marked: [], was: was === '' ? null : stopped(was), now: now === '' ? null : stopped(now)}
  const oneWay = (['in', 'out'] as const).some(only => shown.every(({is, text}) => is === 'same' || is === only || !/[\p{L}\p{N}]/u.test(text)))
  return {marked: kept && (oneWay || shareKept(shown) >= LEGIBLE) ? spacesOutside(endedWell(shown)) : [], was: stopped(was), now: stopped(now)}
}

/** What ends in the middle of a longer sentence says so. */
const stopped = (text: string): string => text.replace(/[;:]$/, ' …')

const endedWell = (runs: readonly WordRun[]): readonly WordRun[] => runs.map((run, index) => (index === runs.length - 1 ? {...run, text: stopped(run.text)} : run)).filter(({text}) => text !== '')

/** The space before a marked word is none of the mark; two words that took each other's place at the start of a text have one between them. */
function spacesOutside(runs: readonly WordRun[]): readonly MarkedWords[] {
  return runs.flatMap(({is, text}, index): MarkedWords[] => {
    const start = index === 0 ? text.trimStart() : text, swapped = is === 'in' && runs[index - 1]?.is === 'out' && /^[\p{L}\p{N}]/u.test(start), space = is === 'same' ? '' : swapped ? ' ' : leadingSpace(start)
    return [...(space === '' ? [] : [{out: false, in: false, text: space}]), {out: is === 'out', in: is === 'in', text: swapped ? start : start.slice(space.length)}]
  })
}
