/** A sheet to write on by hand on a scoring day, and the same as a table to fill in: what may be written stands at the head of each column. */
import type {Findings} from '../findings/study.ts'
import {birdsOfLatestStep, sheetToFill, type BirdToScore, type SheetToFill} from '../findings/sheet-to-fill.ts'
import type {FiguresTable} from '../findings/figures.ts'
import type {Clause, Logbook, Project, Trait} from '../logbook/book.ts'
import {shownIn, wantedWords, withinEnds} from './amounts.ts'
import {ageWords, dateShort, dateWords} from './dates.ts'
import {SCORE_SHEET} from './links.ts'
import {counted, listWords, NOTHING, sentence} from './numbers.ts'
import type {Page} from './page.ts'

export interface SheetView {
  readonly lead: string
  readonly notes: readonly string[]
  readonly parts: readonly SheetPart[]
}

/** So many columns as go on the breadth of a sheet. */
interface SheetPart {
  readonly title: string
  readonly draft: string
  readonly columns: readonly {readonly name: string; readonly asks: string; readonly write: string}[]
  /** of the first sheet when each bird hatched, and its pen; on those after it the band will do */
  readonly told: boolean
  /** `cells`: a dash where the bird's sex does not show it, else empty */
  readonly rows: readonly {readonly band: string; readonly sex: string; readonly hatched: string; readonly pen: string; readonly cells: readonly string[]}[]
}

type Units = Project['units']
type Columns = readonly (SheetPart['columns'][number] & {readonly trait: Trait | null})[]

/** Columns that can be written in beside band, sex, hatch and pen on a sheet laid across. */
const ABREAST = 8
/** Rows left free, for birds that turn up. */
const FREE = 3
const SEX = {male: 'm', female: 'f', unknown: '?'} as const

/** `40 to 50°`, or for each sex its own; `males 40 to 50°` of clauses that speak of one sex alone. */
function asks(trait: Trait, clauses: readonly Clause[], units: Units): string {
  const shown = shownIn(trait, units)
  const of = (sex: 'male' | 'female'): string => [...new Set(clauses.flatMap(({allows}) => (allows[sex] ? [wantedWords(withinEnds(allows[sex]), shown)] : [])))].join('; ')
  const male = of('male'), female = of('female')
  return male === female ? male : [male === '' ? '' : `m ${male}`, female === '' ? '' : `f ${female}`].filter(part => part !== '').join(', ')
}

/** The words that may be written, or the scale or unit; from what age on. */
function mayWrite({states, scale, unit, scoredFrom}: Trait): string {
  const what = states.length > 0 ? listWords(states, 'or') : scale ? `${scale.from} to ${scale.to}` : unit ?? ''
  return scoredFrom > 0 ? `${what}; from ${ageWords(scoredFrom)}` : what
}

function chunks(columns: Columns): readonly Columns[] {
  const sheets = Math.ceil(columns.length / ABREAST), each = Math.ceil(columns.length / Math.max(1, sheets))
  return Array.from({length: sheets}, (_, place) => columns.slice(place * each, (place + 1) * each))
}

function rowOf({bird, pen, notShown}: BirdToScore, columns: Columns): SheetPart['rows'][number] {
  const from = bird.hatch?.pens.map(({pen: own}) => own.id).join(', ') ?? ''
  return {
    band: bird.band, sex: SEX[bird.sex], hatched: bird.hatched ? dateShort(bird.hatched) : '', pen: pen?.id ?? from,
    cells: columns.map(({trait}) => (trait && notShown.includes(trait) ? NOTHING : '')),
  }
}

const freeRow = (columns: Columns): SheetPart['rows'][number] => ({band: '', sex: '', hatched: '', pen: '', cells: columns.map(() => '')})

function partsOf({draft, birds, traits, headings}: SheetToFill, units: Units): readonly SheetPart[] {
  if (!draft) return []
  const looks = traits.map(({trait, clauses}) => ({trait, name: trait.name, asks: asks(trait, clauses, units), write: mayWrite(trait)}))
  const points = headings.map(({name, points: most}) => ({trait: null, name: sentence(name), asks: '', write: `of ${most}`}))
  const total = {trait: null, name: 'Total', asks: '', write: `of ${headings.reduce((sum, {points: most}) => sum + most, 0)}`}
  return ([['Looks', chunks(looks)], ['Points', chunks(points.length === 0 ? [] : [...points, total])]] as const).flatMap(([title, sheets]) => sheets.map((columns, place) => ({
    title: sheets.length === 1 ? title : `${title}, sheet ${place + 1} of ${sheets.length}`, draft: String(draft.number), columns: columns.map(({name, asks: asked, write}) => ({name, asks: asked, write})),
    rows: [...birds.map(bird => rowOf(bird, columns)), ...Array.from({length: FREE}, () => freeRow(columns))],
  }))).map((part, place): SheetPart => ({...part, told: place === 0}))
}

function notesOf({gone, weighed, traits, headings}: SheetToFill): readonly string[] {
  return [
    gone === 0 ? '' : `${sentence(counted(gone, 'bird'))} of those asked for ${gone === 1 ? 'has' : 'have'} left, and ${gone === 1 ? 'has' : 'have'} no row.`,
    traits.length === 0 ? 'No clause is held against a trait yet, so there are no looks to score.' : '',
    weighed.length === 0 ? '' : `${sentence(listWords(weighed.map(({name}) => name.toLowerCase())))}: weigh and measure these on a sheet of their own, which goes into measures/.`,
    headings.length === 0 ? 'The draft has no scale of points.' : '',
  ].filter(note => note !== '')
}

/** @param of which birds they are: `of BC3F3` */
export function sheetToFillPage(sheet: SheetToFill, {project}: Pick<Logbook, 'project'>, of: string): Page {
  const {draft, birds} = sheet
  const view: SheetView = {
    lead: draft ? `By draft ${draft.number} of the standard, of ${dateWords(draft.on)}, for ${counted(birds.length, 'bird')}${of === '' ? '' : ` ${of}`}. Write only what you see: an empty cell means that it was not scored.` : 'No draft of the standard has been written yet, so there is nothing to score by.',
    notes: notesOf(sheet), parts: partsOf(sheet, project.units),
  }
  return {path: SCORE_SHEET, template: 'sheet-to-fill', title: 'Score sheet', section: null, look: 'score', selfContained: true, sheet: `${project.name} · score sheet${draft ? `, draft ${draft.number}` : ''}`, view}
}

/** Of the living birds of the latest step; nothing where nothing has been drafted, or none lives. */
export function latestSheetPages({book, ladder}: Findings): readonly Page[] {
  const asked = birdsOfLatestStep(ladder), sheet = sheetToFill(asked.birds, book)
  return sheet.draft && sheet.birds.length > 0 ? [sheetToFillPage(sheet, book, `of ${sheet.birds[0]?.bird.step.label ?? ''}`)] : []
}

/** The same as a table that goes into scores/ when it has been filled in; `on` and `by` are left for the day. */
export function sheetTable({draft, birds, traits, headings}: SheetToFill, on: string | null): FiguresTable {
  const ids = traits.map(({trait}) => trait.id), names = headings.map(({name}) => name).filter(name => !ids.includes(name))
  return {
    columns: ['band', 'on', 'by', 'draft', ...ids, ...names].map(name => ({name, as: 'text'})),
    rows: birds.map(({bird}) => [bird.band, on, null, draft ? draft.number : null, ...ids.map(() => null), ...names.map(() => null)]),
  }
}
