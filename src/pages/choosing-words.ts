/** What choosing did, in short sentences for one step or for all of them: what was chosen for, what came of it, how far type has come back. */
import type {KeptMeasure, KeptState} from '../findings/kept-against-all.ts'
import type {RecoveryOfTrait} from '../findings/recovery.ts'
import type {SelectionOfTrait} from '../findings/selection.ts'
import type {Findings} from '../findings/study.ts'
import type {Project} from '../logbook/book.ts'
import {difference, differenceLimits, shareLimits, sharePoints, size} from './difference-words.ts'
import {figured, listWords, ofWords, percentSign} from './numbers.ts'

type Kept = KeptState | KeptMeasure
type Units = Project['units']

/** Steps of which there is something to say: in which birds were chosen, or that came of such a choice. In the ladder's order. */
export function choosingSteps({ladder, keptAgainstAll, selection: {passages}, recovery}: Findings): readonly string[] {
  const told = new Set([...keptAgainstAll.flatMap(({step, kept}) => (step !== null && kept > 0 ? [step] : [])), ...passages.map(({passage}) => passage.from), ...recovery.filter(({found}) => found).map(({step}) => step)])
  return ladder.map(({label}) => label).filter(label => told.has(label))
}

/** `comb pea (21 of 21 kept, 70.3% by a blind choice)`, `type (+1.25 marks, 33 kept of 90)` */
function chosenWords(row: Kept, units: Units): string {
  const {trait, kept, all} = row, name = trait.name.toLowerCase()
  if (row.kind === 'measure') return `${name} (${row.difference === null ? '' : `${difference(row.difference, trait, units)}, `}${kept} kept of ${all})`
  const {share, state, expected} = row
  return `${name} ${state} (${share.kind === 'share' ? `${ofWords(share.count, share.total)} kept` : `${kept} kept`}${expected === null ? '' : `, ${percentSign(expected)} by a blind choice`})`
}

/** Of a trait's states those kept more often; those kept less only where no other of the trait tells it. */
function once(rows: readonly Kept[]): readonly Kept[] {
  const more = (row: Kept): boolean => row.kind === 'measure' || (row.share.kind === 'share' && row.expected !== null && row.share.value > row.expected)
  return rows.filter(row => more(row) || !rows.some(other => other !== row && other.trait === row.trait && other.step === row.step && more(other)))
}

/** `at most 12 kept of 30` */
function mostKept(rows: readonly Kept[]): string {
  const [most] = [...rows].sort((a, b) => b.kept - a.kept)
  return `at most ${most?.kept ?? 0} kept of ${most?.all ?? 0}`
}

/** What the birds kept of some step, or of all together, were chosen for. @param rows  of one step, or all of no step */
export function chosenFor(rows: readonly Kept[], units: Units): readonly string[] {
  const [first] = rows
  if (!first) return []
  if (first.tests === 0 || rows.every(({p}) => p === null)) return ['What the birds kept were chosen for cannot be told: no hatch has birds of one sex of which some were kept and some not, and which differ.']
  const differ = once(rows.filter(row => row.differ)), named = (meant: boolean | null) => listWords(differ.filter(row => row.meant === meant).map(row => chosenWords(row, units)))
  const [asked, unasked, against] = [named(true), named(null), named(false)]
  return [
    ...(asked === '' ? [] : [`Chosen for as the target asks: ${asked}.`]), ...(unasked === '' ? [] : [`Chosen for though no target asks for it: ${unasked}.`]),
    ...(against === '' ? [] : [`Chosen against the target: ${against}.`]), ...(differ.length === 0 ? [`Between the birds kept and the rest of their hatch and sex no difference is told (${mostKept(rows)}).`] : []),
  ]
}

/** One measured trait from step to step: what was chosen, what came of it; empty where neither is known. */
export function selectionWords({passage: {from, to, back}, trait, male, female, differential, response, birds, families, move, moved, expected}: SelectionOfTrait, units: Units): string {
  const bred = (male.found?.bred ?? 0) + (female.found?.bred ?? 0), measured = (male.found?.measured ?? 0) + (female.found?.measured ?? 0), say = (value: number) => difference(value, trait, units)
  const chosen = differential === null ? bred === 0 ? 'nobody bred from was measured beside mates' : 'not known of both sexes bred from'
    : back ? `chosen ${say(differential)}, half of what those bred from stood off their mates (${bred} bred from, ${measured} measured)` : `those bred from stood ${say(differential)} off their mates (${bred} bred from, ${measured} measured)`
  const came = response !== null
    ? `${to} reared beside ${from}${back ? ` and ${back.name} stands` : ' stands'} ${say(response.value)} (${differenceLimits(response.interval, trait, units)}; ${figured(birds.to, 'bird')} and ${birds.from}${families ? `, ${families.speaksOf}` : ''}) off ${back ? 'half way between them' : 'it'}`
    : move === null ? '' : `the mean went ${say(move)} (${figured(moved.from, 'bird')} and ${moved.to})${back && expected !== null ? `, of which blood should bring ${say(expected)}` : ''}, season and choosing in one`
  return came === '' && differential === null ? '' : `${trait.name}, ${from} to ${to}: ${chosen}${came === '' ? '' : `; ${came}`}.`
}

/** How far one trait of a step has come from donor to the strain crossed back to; empty where it is not told. */
export function recoveryWords({trait, donor, found, expected, birds, together}: RecoveryOfTrait, recurrent: string): string {
  if (found === null) return ''
  const by = expected === null ? '' : `, by blood ${percentSign(expected)}`
  if (found.interval === null) return `${trait.name}: how far it has come from ${donor.name} to ${recurrent} cannot be told, for the two do not differ clearly.`
  return `${trait.name} has come ${sharePoints(found.recovery)}% (${shareLimits(found.interval)}) of the way from ${donor.name} to ${recurrent}${by}; ${figured(birds.step, 'bird')}, ${birds.donor} and ${birds.recurrent}${together ? `, ${together.speaksOf}` : ''}.`
}

/** Steps whose choice and season cannot be told apart, since no birds of both were reared together. */
export function apartWords({passages: order, selection: {passages}}: Findings, from: string | null): string {
  const own = order.filter(passage => from === null || passage.from === from), among = (passage: (typeof own)[number], told: boolean) => passages.some(each => each.passage === passage && (each.response !== null) === told)
  const lone = own.filter(passage => among(passage, false) && !among(passage, true)).map(passage => `from ${passage.from} to ${passage.to}`)
  if (lone.length === 0) return ''
  return `Season and choosing cannot be told apart ${lone.length > 2 && lone.length === own.length ? 'between any two steps' : listWords(lone)}: birds of both were not reared together and measured.`
}

/** What to do next season to find out; empty where all is told, or nothing was chosen yet. */
export function nextSeasonWords({besideNextSeason: found, book}: Findings): string {
  if (found === null) return ''
  const {from, to, back, each, told} = found
  const size20 = told === null ? '' : ` ${each} of each tell a difference of ${size(told.difference, told.trait, book.project.units)} in ${told.trait.name.toLowerCase()} four times in five, fewer only a larger one.`
  return `To find out, repeat a mating that gave ${from} and hatch and rear its chicks in one lot with those of ${to}${back ? ` and of ${back.name}` : ''}; keep back and measure some of all, not the chosen alone.${size20}`
}

/** All there is to say of one step in a few sentences: for its summary. */
export function choosingWords(findings: Findings, step: string): readonly string[] {
  const {keptAgainstAll, selection: {passages}, recovery, book: {project: {units, recurrent}}} = findings
  const apart = apartWords(findings, step)
  return [
    ...chosenFor(keptAgainstAll.filter(row => row.step === step && row.kept > 0), units), ...passages.filter(({passage}) => passage.from === step).map(of => selectionWords(of, units)), apart,
    ...recovery.filter(each => each.step === step).map(each => recoveryWords(each, recurrent?.name ?? '')),
  ].filter(words => words !== '')
}
