/** The standard beside the flock: which clauses the birds meet, the worst first; which nobody scores; what was scored under other words. */
import type {ClauseShare} from '../findings/clause-counts.ts'
import type {ClauseBeside, ClausesOfFlock, OtherWords, UnscoredClause} from '../findings/clauses.ts'
import type {Findings} from '../findings/study.ts'
import type {Clause, Draft, Project} from '../logbook/book.ts'
import {shownIn, wantedOfBoth, wantedWords, withinEnds} from './amounts.ts'
import {acceptedWords, expiredWords} from './ask-words.ts'
import {anchorOf} from './clause-view.ts'
import {dateWords} from './dates.ts'
import {shareInText} from './estimate-words.ts'
import {CLAUSES, clauseLink, SCORE_SHEET} from './links.ts'
import {counted, limitsShort, listWords, NOTHING, ofWords, percent, percentSign, sentence} from './numbers.ts'
import type {Cell, Page, Table} from './page.ts'
import {SEX_ROWS} from './sex-words.ts'
import {clauseName} from './standard-changes.ts'

export interface ClausesView {
  readonly lead: string
  /** the worst first; null: nobody has been scored for any */
  readonly table: Table | null
  /** what changed since the step before; empty where nothing can be said */
  readonly since: string
  /** what is accepted beside what clauses allow, and birds that could not be judged */
  readonly notes: readonly string[]
  readonly unscored: readonly {readonly head: string; readonly clauses: readonly {readonly name: string; readonly link: string}[]}[]
  readonly others: Table | null
  readonly sheet: string
}

type Units = Project['units']

const linkTo = (clause: Clause): string => clauseLink(anchorOf(clause.id))
const linked = (draft: Draft, clause: Clause): {readonly text: string; readonly link: string} => ({text: clauseName(draft, clause), link: linkTo(clause)})

/** `pea`, `at least 7`; of one sex where the two differ. */
function allowedWords({trait, allows}: Clause, sex: ClauseShare['sex'], units: Units): string {
  if (!trait) return NOTHING
  const ends = {male: allows.male && withinEnds(allows.male), female: allows.female && withinEnds(allows.female)}
  const own = sex === 'male' || sex === 'female' ? ends[sex] : null
  if (own) return wantedWords(own, shownIn(trait, units))
  const both = wantedOfBoth({...trait, wanted: ends}, units)
  // where one sex alone is asked the clause says which
  return (ends.male && ends.female ? both : both?.replace(/^(?:fe)?males /, '')) ?? NOTHING
}

const missedWords = ({ifMissed, mandatory}: Clause): string => ifMissed ?? (mandatory ? 'mandatory' : NOTHING)

/** `Since BC3F2 more birds meet “Tail, male” (70.0% then).`; those that cannot be told apart after the others. */
function sinceWords({draft, scored, before}: ClausesOfFlock): string {
  const told = (of: (one: ClauseBeside) => boolean): string => listWords(scored.filter(one => one.change && of(one)).map(({clause, before: then}) =>
    `“${draft ? clauseName(draft, clause) : clause.title}”${then?.share.kind === 'share' ? ` (${percentSign(then.share.value)} then)` : ''}`))
  const more = told(({change}) => (change?.low ?? 0) > 0), fewer = told(({change}) => (change?.high ?? 0) < 0), alike = told(({change}) => !change || (change.low <= 0 && change.high >= 0))
  const parts = [more === '' ? '' : `more birds meet ${more}`, fewer === '' ? '' : `fewer meet ${fewer}`, alike === '' ? '' : `the two steps cannot be told apart in ${alike}`].filter(part => part !== '')
  return before === null || parts.length === 0 ? '' : `Since ${before} ${parts.join('; ')}.`
}

/** Of the latest step each sex with anybody judged; where nobody was, one row all the same. */
function sexRows({rows, latest}: ClauseBeside): readonly ClauseShare[] {
  const own = rows.filter(row => row.step === latest.step && row.sex !== 'all' && row.share.kind === 'share')
  return own.length === 0 ? [latest] : own
}

const unscoredIn = ({share}: ClauseShare): number => share.leftOut.reduce((sum, {count}) => sum + count, 0)

/** `3 of 5, 2 more accepted until 2027` */
const metWords = ({outright, accepted}: ClauseShare, {accepted: tolerance}: Clause): string =>
  (outright.kind === 'cannot-say' ? NOTHING : `${ofWords(outright.count, outright.total)}${accepted > 0 && tolerance ? `, ${accepted} more accepted until ${tolerance.until}` : ''}`)

function rowsOf(one: ClauseBeside, draft: Draft, units: Units): readonly (readonly Cell[])[] {
  const own = sexRows(one), several = own.length > 1
  return own.map((row, place): readonly Cell[] => {
    const {outright, sex} = row, name = linked(draft, one.clause)
    return [
      several ? {...name, text: `${name.text}, ${SEX_ROWS[sex]}`} : name, allowedWords(one.clause, sex, units), missedWords(one.clause),
      ...(outright.kind === 'share' ? [metWords(row, one.clause), percent(outright.value), limitsShort(outright.interval)] : ['none scored', NOTHING, NOTHING]),
      String(unscoredIn(several ? row : one.latest)), place === 0 && one.all.outright.kind === 'share' ? metWords(one.all, one.clause) : NOTHING,
    ]
  })
}

function scoredTable({draft, scored, step}: ClausesOfFlock, units: Units): Table | null {
  if (!draft || scored.length === 0) return null
  return {
    columns: [
      {head: 'Clause'}, {head: 'It allows'}, {head: 'If missed'}, {head: step ?? '', number: true}, {head: '%', number: true}, {head: '95%', number: true}, {head: 'Not scored', number: true}, {head: 'All steps', number: true},
    ],
    rows: scored.flatMap(one => rowsOf(one, draft, units)),
  }
}

/** A sentence for whatever a row of numbers would hide. */
function notesOf({draft, scored}: ClausesOfFlock): readonly string[] {
  if (!draft) return []
  return scored.flatMap(({clause, latest, all, tolerance, families}) => {
    const name = clauseName(draft, clause), {accepted} = clause
    const words = [
      ...(accepted && tolerance === 'in-force' ? [`${acceptedWords(accepted)} ${all.accepted === 0 ? 'No bird counts by that alone.' : `${sentence(counted(latest.accepted, 'bird'))} of the latest step and ${all.accepted} of all ${all.accepted === 1 ? 'counts' : 'count'} by that alone.`}`] : []),
      ...(accepted && tolerance === 'over' ? [expiredWords(accepted)] : []),
      ...(families?.kind === 'families' ? [`By whole sire families, ${families.families} of them, ${limitsShort(families)}.`] : []),
      ...(all.varietyUnknown > 0 ? [`${sentence(counted(all.varietyUnknown, 'bird'))} scored, but whether of this variety cannot be told.`] : []),
      ...(latest.sexUnknown > 0 ? [`${sentence(counted(latest.sexUnknown, 'bird'))} of the latest step scored, but not to be judged while unsexed.`] : []),
    ]
    return words.length === 0 ? [] : [`${name}: ${words.map((each, place) => (place === 0 ? each.charAt(0).toLowerCase() + each.slice(1) : each)).join(' ')}`]
  })
}

const WHY: readonly (readonly [UnscoredClause['why'], string])[] = [
  ['never-scored', 'Nobody has scored the trait'], ['reworded', 'Not scored since the clause was reworded'], ['nothing-allowed', 'Nothing says what is allowed of the trait'], ['words-only', 'Words alone, no trait shows whether a bird meets them'],
]

const unscoredOf = ({draft, unscored}: ClausesOfFlock): ClausesView['unscored'] => WHY.flatMap(([why, head]) => {
  const clauses = unscored.filter(one => one.why === why)
  return !draft || clauses.length === 0 ? [] : [{head, clauses: clauses.map(({clause}) => ({name: clauseName(draft, clause), link: linkTo(clause)}))}]
})

const underWords = ({clause, all}: OtherWords): string => (clause === null ? 'no draft that has it' : `draft${all.drafts.length === 1 ? '' : 's'} ${listWords(all.drafts.map(String))}`)

function otherTable({draft, scored, unscored}: ClausesOfFlock): Table | null {
  const rows = [...scored, ...unscored].flatMap(one => one.otherWords.map((words, place) => ({clause: one.clause, words, first: place === 0})))
  if (!draft || rows.length === 0) return null
  return {
    columns: [{head: 'Clause'}, {head: 'Scored under'}, {head: 'Met it as it stood', number: true}, {head: '%', number: true}, {head: '95%', number: true}],
    rows: rows.map(({clause, words, first}): readonly Cell[] => {
      const {share} = words.all, name = clauseName(draft, clause)
      return [first ? {text: name, link: linkTo(clause)} : name, underWords(words), ...(share.kind === 'share' ? [ofWords(share.count, share.total), percent(share.value), limitsShort(share.interval)] : ['cannot be judged', NOTHING, NOTHING])]
    }),
  }
}

function leadOf({draft, step, scored, unscored}: ClausesOfFlock): string {
  if (!draft) return ''
  const [worst] = scored, of = `Draft ${draft.number} of ${dateWords(draft.on)}`
  const none = unscored.length === 0 ? 'every clause is scored' : unscored.length === 1 ? 'one clause nobody scores' : `${counted(unscored.length, 'clause')} nobody scores`
  if (!worst || step === null) return `${of}: ${none}.`
  const {share, outright, accepted} = worst.latest
  if (share.kind === 'cannot-say' || outright.kind === 'cannot-say') return `${of}, beside the birds of ${step}, of which none was scored for a clause yet; ${none}.`
  const more = accepted > 0 && worst.clause.accepted ? `, and ${accepted} more by what is accepted until ${worst.clause.accepted.until}` : ''
  const fell = share.count < share.total ? `the lowest share so far is that of “${clauseName(draft, worst.clause)}”, which ${shareInText(outright)} meet${more}` : `the flock meets every clause it was scored for${scored.some(one => one.latest.accepted > 0) ? ', in part by what is still accepted' : ''}`
  return `${of}, beside the birds of ${step}: ${fell}; ${none}.`
}

/** Nothing where nothing has been drafted. */
export function clausesPage({clauses, book}: Findings): readonly Page[] {
  if (!clauses.draft) return []
  const {units} = book.project
  const view: ClausesView = {lead: leadOf(clauses), table: scoredTable(clauses, units), since: sinceWords(clauses), notes: notesOf(clauses), unscored: unscoredOf(clauses), others: otherTable(clauses), sheet: SCORE_SHEET}
  return [{path: CLAUSES, template: 'clauses', title: 'The standard beside the flock', section: 'standard', view, search: {kind: 'index', words: 'clauses standard scored met worst faults points sheet'}}]
}

