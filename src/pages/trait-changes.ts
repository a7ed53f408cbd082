/** One trait from step to step: how its evenness or its grades moved and whether that can be believed; how it was graded; and whether those who grade it agree. */
import type {Agreement} from '../findings/scorer-agreement.ts'
import type {ChangeOfSpread} from '../findings/spread-change.ts'
import type {ChangeOfMarks, StepChange} from '../findings/step-change.ts'
import type {Findings} from '../findings/study.ts'
import type {Trait} from '../logbook/book.ts'
import {shareCells} from './estimate-words.ts'
import {stepPath} from './links.ts'
import {listWords, NOTHING, ofWords, percentSign, rounded, signed, sizeRange} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import {SEX_ROWS} from './sex-words.ts'
import {EVEN_VERDICT, evenP, gradeP, gradeVerdict, marksToTell, spreadsToTell, timesWords} from './step-change-words.ts'

const against = ({from, to}: StepChange, sex: keyof typeof SEX_ROWS): Cell => ({text: `${to} against ${from}${sex === 'all' ? '' : `, ${SEX_ROWS[sex]}`}`, link: stepPath(to)})
const cvOf = ({spread}: ChangeOfSpread['from']): string => (spread?.kind === 'spread' ? percentSign(spread.cv) : NOTHING)
const plainly = (value: number, decimals: number): string => rounded(value, decimals).replace(/\.0$/, '')
const varianceWords = ({variances}: ChangeOfSpread): string => (variances ? `; variance ${rounded(variances.ratio, 2)} (${rounded(variances.interval.low, 2)} to ${rounded(variances.interval.high, 2)})` : '')

/** Evenness against the step before; null where no two steps can be compared. */
export function spreadChangesTable(trait: Trait, {changes}: Findings): Table | null {
  const rows = changes.flatMap(change => spreadsToTell(change).filter(row => row.trait === trait).map((row): readonly Cell[] => [
    against(change, row.sex), `${cvOf(row.to)} after ${cvOf(row.from)}`, `${timesWords(row)}${varianceWords(row)}`, `${EVEN_VERDICT[row.verdict]}${evenP(row) === '' ? '' : `, ${evenP(row)}`}`,
  ]))
  return rows.length === 0 ? null : {caption: 'More even than the step before?', columns: [{head: 'Step'}, {head: 'CV'}, {head: 'As much spread as before, 95%'}, {head: 'Told'}], rows}
}

/** `+1 (0 to 1)`; the interval takes chicks one by one, and of few sires there is none to believe */
const shiftWords = ({shift, byFamilies}: ChangeOfMarks): string => (shift ? `${signed(plainly(shift.shift, 1))}${shift.interval && byFamilies ? ` (${sizeRange(plainly(shift.interval.low, 1), plainly(shift.interval.high, 1))})` : ''}` : NOTHING)

/** Grades against the step before; null where no two steps can be compared. */
export function gradeChangesTable(trait: Trait, {changes}: Findings): Table | null {
  const rows = changes.flatMap(change => marksToTell(change).filter(row => row.trait === trait).map((row): readonly Cell[] =>
    [against(change, row.sex), shiftWords(row), row.test.kind === 'compared' ? percentSign(row.test.superiority) : NOTHING, `${gradeVerdict(row)}${gradeP(row) === '' ? '' : `, ${gradeP(row)}`}`]))
  return rows.length === 0 ? null : {caption: `Graded otherwise than the step before? The shift is in ${trait.kind === 'ordered' ? 'places of the order' : 'marks'}; “higher”: how often a chick is graded above one of its sex of the step before, ties counting half.`, columns: [{head: 'Step'}, {head: 'Shift, 95%'}, {head: 'Higher', number: true}, {head: 'Told'}], rows}
}

/** The middle grade and the share at the mark, step by step; null while nobody is graded. */
export function gradesTable(trait: Trait, {gradedScores}: Findings): Table | null {
  const own = gradedScores.steps.filter(row => row.trait === trait && row.sex === 'all'), judged = own.some(({asWanted}) => asWanted.kind === 'share')
  if (own.length === 0) return null
  return {
    caption: judged ? 'The middle grade, and how many are as wanted' : 'The middle grade',
    columns: [{head: 'Step'}, {head: 'Graded', number: true}, {head: 'Middle'}, ...(judged ? [{head: 'As wanted', number: true}, {head: '%', number: true}, {head: 'Interval', number: true}] : [])],
    rows: own.map((row): readonly Cell[] => [{text: row.step, link: stepPath(row.step)}, String(row.scored), row.middle.is.join(' to '), ...(judged ? shareCells(row.asWanted) : [])]),
  }
}

export interface AgreementView {
  readonly table: Table
  readonly words: string
}

/** Do two who grade the same birds agree? Null where nobody graded a bird that another did. */
export function agreementView(trait: Trait, {gradedScores}: Findings): AgreementView | null {
  const own = gradedScores.agreements.filter(each => each.trait === trait), told = own.filter(({birds}) => birds > 0)
  const [first] = own
  if (!first) return null
  const who = ({between, names}: Agreement): string => (between === 'judges' ? `Book and judges, ${listWords(names)}` : listWords(names))
  const left = own.filter(({leftOut}) => leftOut > 0).map(({leftOut}) => `${leftOut} on judges’ sheets cannot be held against the book.`)
  return {
    table: {
      caption: 'Do they agree who grade it?',
      columns: [{head: 'Who'}, {head: 'Alike'}, {head: 'Second higher, lower'}, {head: 'Kappa, 95%'}],
      rows: told.map((row): readonly Cell[] => [who(row), ofWords(row.same, row.birds), `${row.higher}, ${row.lower}`, kappaWords(row)]),
    },
    words: [...(told.length === 0 ? [] : ['Kappa is 1 where two agree in all and 0 where they agree no more than by chance; a miss by one grade counts little, one by many whole. Where its interval holds 0, the two may be seeing different birds: agree on what each grade is before marks are compared.']), ...left].join(' '),
  }
}

const kappaWords = ({kappa}: Agreement): string => (kappa ? `${rounded(kappa.kappa, 2).replace('-', '−')}${kappa.interval ? ` (${sizeRange(rounded(kappa.interval.low, 2), rounded(kappa.interval.high, 2))})` : ''}` : NOTHING)
