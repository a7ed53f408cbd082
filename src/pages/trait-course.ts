/** How far a trait has come: charts and tables step by step, by kind of trait. */
import {hasRows} from '../charts/chart-spec.ts'
import {shareByStep} from '../charts/share-by-step.ts'
import {statesByStep} from '../charts/states-by-step.ts'
import {gradedMarks} from '../findings/graded-marks.ts'
import {LEAST_IN_CLASS} from '../findings/spread.ts'
import {looksRight} from '../findings/wanted-look.ts'
import type {Findings} from '../findings/study.ts'
import type {Trait} from '../logbook/book.ts'
import {fileName} from '../records/file-name.ts'
import {amount, amountPlain, shownIn} from './amounts.ts'
import {leftOutWords, shareCells} from './estimate-words.ts'
import {stepPath} from './links.ts'
import {countWord, figured, listWords, NOTHING, percent, rounded, signed} from './numbers.ts'
import type {Cell, Figure, Table} from './page.ts'
import {SEX_ROWS} from './sex-words.ts'
import {spreadFigure, traitFigure} from './step-figures.ts'
import {gradeChangesTable, gradesTable, spreadChangesTable} from './trait-changes.ts'

export interface Course {
  readonly figures: readonly Figure[]
  readonly tables: readonly Table[]
  readonly words: readonly string[]
}

const tablesOf = (...tables: readonly (Table | null)[]): readonly Table[] => tables.filter(table => table !== null)
const NONE: Course = {figures: [], tables: [], words: []}
const numbered = (figures: readonly (Figure | null)[]): readonly Figure[] =>
  figures.filter(figure => figure !== null).map((figure, index) => ({...figure, head: `Figure ${index + 1}.`}))

/** Do the sexes have to be told apart? A Z locus makes hens and cocks breed differently; some traits only one sex shows. */
const bySex = (trait: Trait): boolean => trait.loci.some(locus => locus.on === 'Z') || trait.seenIn !== null

function statesCourse(trait: Trait, findings: Findings): Course {
  const {shares} = findings
  const own = shares.filter(row => row.trait === trait)
  if (own.length === 0) return {...NONE, words: ['None scored yet in any step of the ladder.']}
  const sexes = trait.seenIn === 'male' || trait.seenIn === 'female' ? [trait.seenIn] as const : bySex(trait) ? ['all', 'male', 'female'] as const : ['all'] as const
  const leftOut = own.filter(row => row.sex === 'all').map(row => ({step: row.step, words: leftOutWords(row.leftOut)})).filter(({words}) => words !== '')
  return {
    figures: numbered(sexes.map(sex => traitFigure(trait, findings, sex, ''))), tables: trait.kind === 'ordered' ? tablesOf(gradesTable(trait, findings), gradeChangesTable(trait, findings)) : [],
    words: [...(leftOut.length === 0 ? [] : [`Left out: ${leftOut.map(({step, words}) => `${step}, ${words}`).join('; ')}.`]), ...(trait.loci.some(locus => locus.on === 'Z') ? ['The locus lies on the Z chromosome, so males and females stand apart as well as together.'] : [])],
  }
}

function measuredCourse(trait: Trait, findings: Findings): Course {
  const {spread, againstStandard, book} = findings
  const {units} = book.project, shown = shownIn(trait, units)
  const rows = spread.rows.filter(row => row.trait === trait && row.sex !== 'all')
  const few = rows.flatMap(({step, sex, spread: found, values}) => (found.kind === 'cannot-say' ? [`${step} ${SEX_ROWS[sex]} (${values.length} measured)`] : []))
  const standard = againstStandard.filter(row => row.trait === trait)
  const unsexed = spread.unsexed.filter(row => row.trait === trait).reduce((sum, {values}) => sum + values.length, 0)
  if (rows.length === 0 && unsexed === 0) return {...NONE, words: [trait.atAge === null ? 'Nobody has been measured.' : 'Nobody has been measured at the age that counts.']}
  const table: Table = {
    caption: 'Against what is wanted, every bird measured at its age',
    columns: [{head: 'Step'}, {head: 'Sex'}, {head: 'Birds', number: true}, {head: 'Mean', number: true}, {head: `Off the mark${shown.unit === '' ? '' : `, ${shown.unit}`}`, number: true}, {head: 'Inside', number: true}, {head: '%', number: true}, {head: 'Interval', number: true}],
    rows: standard.map((row): readonly Cell[] => [{text: row.step, link: stepPath(row.step)}, SEX_ROWS[row.sex], String(row.n), amount(row.mean, shown),
      row.off === null ? NOTHING : signed(amountPlain(row.off, shown)), ...shareCells(row.inside)]),
  }
  return {
    figures: numbered((['female', 'male'] as const).map(sex => spreadFigure(trait, spread.rows, sex, null, ''))), tables: tablesOf(standard.length === 0 ? null : table, spreadChangesTable(trait, findings)),
    words: [
      ...(few.length === 0 ? [] : [`Too few reared alike to say how even they are: ${listWords(few)}.`]),
      ...(unsexed > 0 ? [`${figured(unsexed, 'bird')} measured of unknown sex, in none of these figures.`] : []),
    ],
  }
}

const markName = (mark: number): string => rounded(mark, 1).replace(/\.0$/, '')

function gradedCourse(trait: Trait, findings: Findings): Course {
  const steps = gradedMarks(trait, findings.ladder)
  const marks = [...new Set(steps.flatMap(step => step.marks.map(({mark}) => mark)))].sort((a, b) => a - b)
  if (steps.length === 0) return {...NONE, words: ['None scored yet in any step of the ladder.']}
  const rows = steps.map(step => ({label: step.step, counts: Object.fromEntries(step.marks.map(({mark, count}) => [markName(mark), count]))}))
  const keys = marks.map(mark => ({name: markName(mark), wanted: looksRight(trait, trait.seenIn ?? 'female', mark)}))
  const drawn = new Set(keys.map(key => key.name)).size === keys.length && hasRows(rows) && hasRows(keys) && keys.length <= 6
  const table: Table = {
    columns: [{head: 'Step'}, {head: 'Scored', number: true}, ...marks.map(mark => ({head: markName(mark), number: true}))],
    rows: steps.map((step): readonly Cell[] => [step.step, String(step.scored), ...marks.map(mark => String(step.marks.find(each => each.mark === mark)?.count ?? 0))]),
  }
  const figure: Figure | null = drawn ? {
    kind: 'figure', id: 'marks', name: `${fileName(trait.id)}-marks-by-step`, head: '', title: `${trait.name}, marks by step`, caption: `Marks given for ${trait.name.toLowerCase()}, step by step.`,
    description: `${steps.map(step => `${step.step}: ${listWords(step.marks.map(({mark, count}) => `${count} with ${markName(mark)}`))}`).join('; ')}.`, spec: statesByStep(rows, keys), table,
  } : null
  const mark = figure ? null : atTheMark(trait, findings)
  return {
    figures: numbered([figure ?? mark]),
    tables: tablesOf(figure ? null : {caption: 'Marks given, step by step', ...table}, figure !== null || mark === null ? gradesTable(trait, findings) : null, gradeChangesTable(trait, findings)),
    words: ['Marks are an order and not a measure, so they are counted and not averaged.'],
  }
}

/** Where marks are too many to tell apart by patterns: how many are at the mark or above. */
function atTheMark(trait: Trait, findings: Findings): Figure | null {
  const own = findings.gradedScores.steps.filter(row => row.trait === trait && row.sex === 'all')
  const rows = own.flatMap(({step, asWanted}) => (asWanted.kind === 'share' ? [{label: step, count: asWanted.count, total: asWanted.total}] : []))
  const table = gradesTable(trait, findings)
  if (!hasRows(rows) || table === null) return null
  return {
    kind: 'figure', id: 'at-the-mark', name: `${fileName(trait.id)}-at-the-mark`, head: '', title: `${trait.name}, at the mark`, caption: `Chicks with the mark that is wanted for ${trait.name.toLowerCase()}, solid, and without, barred.`,
    description: `${listWords(rows.map(({label, count, total}) => `${count} of ${total} in ${label}`))}.`, spec: shareByStep(rows),
    table,
  }
}

export function courseOf(trait: Trait, findings: Findings): Course {
  return trait.kind === 'measured' ? measuredCourse(trait, findings) : trait.kind === 'graded' ? gradedCourse(trait, findings) : statesCourse(trait, findings)
}

/** How it stands, in a sentence for the lead: the latest step in which it was scored, one on the way to the breed before one beside it. */
export function standingWords(trait: Trait, findings: Findings): string {
  const beside = new Set(findings.ladder.filter(step => step.beside || step.label === 'mixed').map(step => step.label))
  const latest = <Row extends {readonly step: string}>(rows: readonly Row[]): Row | undefined => rows.findLast(row => !beside.has(row.step)) ?? rows.at(-1)
  if (trait.kind === 'measured') return measuredStanding(trait, findings, latest)
  const rate = latest(findings.trueBred.steps.flatMap(({step, traits}) => traits.flatMap(({trait: of, share}) => (of === trait && share.kind === 'share' ? [{step, share}] : []))))
  if (rate) return `Latest in ${rate.step}: ${rate.share.count} of ${rate.share.total} scored chicks as wanted, ${percent(rate.share.value)}%.`
  const graded = trait.kind === 'graded' ? latest(findings.gradedScores.steps.filter(row => row.trait === trait && row.sex === 'all')) : undefined
  if (graded?.asWanted.kind === 'share') return `Latest in ${graded.step}: the middle mark ${graded.middle.is.join(' to ')}, ${graded.asWanted.count} of ${graded.asWanted.total} as wanted, ${percent(graded.asWanted.value)}%.`
  const marks = trait.kind === 'graded' ? latest(gradedMarks(trait, findings.ladder)) : undefined
  if (marks) return `Latest in ${marks.step}: ${listWords(marks.marks.map(({mark, count}) => `${count} with ${markName(mark)}`))} of ${marks.scored} scored.`
  const last = latest(findings.shares.filter(each => each.trait === trait && each.sex === 'all'))
  return last ? `Latest in ${last.step}: ${listWords(last.states.filter(({count}) => count > 0).map(({state, count}) => `${count} ${state}`))} of ${last.scored} scored.` : 'None scored yet.'
}

type Latest = <Row extends {readonly step: string}>(rows: readonly Row[]) => Row | undefined

function measuredStanding(trait: Trait, {spread, book}: Findings, latest: Latest): string {
  const rows = spread.rows.filter(row => row.trait === trait && row.sex !== 'all')
  const found = latest(rows.flatMap(({step, sex, spread: row}) => (row.kind === 'spread' ? [{step, sex, row}] : [])))
  if (found) return `Latest in ${found.step}, ${SEX_ROWS[found.sex]}: mean ${amount(found.row.mean, shownIn(trait, book.project.units))}, coefficient of variation ${percent(found.row.cv)}%, ${found.row.n} birds.`
  const measured = [...rows, ...spread.unsexed.filter(row => row.trait === trait)].reduce((sum, {values}) => sum + values.length, 0)
  if (measured === 0) return trait.atAge === null ? 'Nobody measured yet.' : 'Nobody measured yet at the age that counts.'
  return `${figured(measured, 'bird')} measured; no class (one sex, reared alike) had ${countWord(LEAST_IN_CLASS)}, so how even they are cannot be said.`
}
