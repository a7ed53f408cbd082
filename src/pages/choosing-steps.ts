/** Step by step: in what the birds kept differ from the rest, and what came of choosing them. */
import type {KeptMeasure, KeptState} from '../findings/kept-against-all.ts'
import type {DifferentialOfSex, SelectionOfTrait} from '../findings/selection.ts'
import type {Findings} from '../findings/study.ts'
import type {Project} from '../logbook/book.ts'
import {chosenFor, choosingSteps} from './choosing-words.ts'
import {difference, differenceLimits} from './difference-words.ts'
import {choosingAnchor, stepPath} from './links.ts'
import {listWords, NOTHING} from './numbers.ts'
import type {Cell, Table} from './page.ts'

export interface ChoosingStep {
  readonly id: string
  readonly label: string
  readonly link: string
  readonly words: readonly string[]
  readonly came: Table | null
  readonly notes: readonly string[]
}

/** `+94 g, 3 of 12` */
function sexCell({found}: DifferentialOfSex, {trait}: SelectionOfTrait, units: Project['units']): string {
  return found === null ? NOTHING : `${difference(found.differential, trait, units)}, ${found.bred} of ${found.measured}`
}

function cameTable(rows: readonly SelectionOfTrait[], units: Project['units']): Table | null {
  const told = rows.filter(({differential, move, male, female, response}) => differential !== null || move !== null || male.found !== null || female.found !== null || response !== null)
  if (told.length === 0) return null
  const together = told.some(({response}) => response !== null), backcross = told.some(({passage}) => passage.back !== null), moves = backcross || told.some(({response, move}) => response === null && move !== null)
  return {
    columns: [
      {head: 'Next step'}, {head: 'Chosen', number: true}, ...(together ? [{head: 'Response', number: true}] : []), ...(moves ? [{head: 'Means', number: true}] : []),
      ...(backcross ? [{head: 'By blood', number: true}] : []), {head: 'Males', number: true}, {head: 'Females', number: true},
    ],
    rows: told.map((row): readonly Cell[] => {
      const {passage: {to, back}, trait, differential, response, birds, move, moved, expected} = row, say = (value: number) => difference(value, trait, units)
      return [
        `${to}, ${trait.name.toLowerCase()}`, differential === null ? NOTHING : say(differential),
        ...(together ? [response ? `${say(response.value)} (${differenceLimits(response.interval, trait, units)}), ${birds.from} and ${birds.to}` : NOTHING] : []), ...(moves ? [move === null ? NOTHING : `${say(move)}, ${moved.from} and ${moved.to}`] : []),
        ...(backcross ? [back && expected !== null ? say(expected) : NOTHING] : []), sexCell(row.male, row, units), sexCell(row.female, row, units),
      ]
    }),
  }
}

/** What the columns leave out. */
function notesOf(rows: readonly SelectionOfTrait[]): readonly string[] {
  const out = rows.flatMap(({passage, trait, male, female}) => (male.leftOut + female.leftOut > 0 && (male.found || female.found) ? [`${male.leftOut + female.leftOut} in ${trait.name.toLowerCase()} to ${passage.to}`] : [])), chicks = rows.filter(({families}) => families?.speaksOf === 'these chicks only')
  return [
    ...(out.length === 0 ? [] : [`Bred from and not measured beside mates: ${listWords(out)}.`]),
    ...(rows.some(({response}) => response !== null) ? ['Response: the next step less this one, of birds reared together; of a backcross less half way to the strain, so that blood does not pass for choosing. The vigour that goes with the cross’s blood is in it.'] : []),
    ...(chicks.length === 0 ? [] : ['A response of fewer than five sire families speaks of these chicks only.']),
  ]
}

/** Every step of which there is something to say. */
export function choosingStepViews(findings: Findings): readonly ChoosingStep[] {
  const {keptAgainstAll, selection: {passages}, book: {project: {units}}} = findings
  return choosingSteps(findings).flatMap((label): ChoosingStep[] => {
    const kept: readonly (KeptState | KeptMeasure)[] = keptAgainstAll.filter(row => row.step === label && row.kept > 0), own = passages.filter(({passage}) => passage.from === label), came = cameTable(own, units)
    const words = chosenFor(kept, units)
    return words.length === 0 && came === null ? [] : [{id: choosingAnchor(label), label, link: stepPath(label), words, came, notes: notesOf(own)}]
  })
}
