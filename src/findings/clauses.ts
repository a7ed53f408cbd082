import type {Clause, Draft, Logbook, Section, Severity, Sex} from '../logbook/book.ts'
import {clausesOf} from '../logbook/clauses-of.ts'
import {yearOf} from '../records/dates.ts'
import {familyShare, type FamilyShare} from '../statistics/family-bootstrap.ts'
import {shareDifference, type ShareDifference} from '../statistics/share-difference.ts'
import type {Passage} from './bred-from.ts'
import {acceptedIn, canBeHeld, ClauseCell, concerns, familiesOfCells, isOfVariety, judge, shareOfCells, type ClauseShare} from './clause-counts.ts'
import {currentStep, reachedSteps, type LadderStep, type ReachedStep} from './ladder.ts'
import {ladderChicks, type Chick} from './ladder-chicks.ts'
import {SEX_ROWS} from './shares.ts'
import {FAMILY_SEED} from './sire-families.ts'
import {stepBefore} from './step-before.ts'
import {whyUnscored} from './why-unscored.ts'
import {scoresUnderWords} from './words-scored-under.ts'

/** Each clause of the latest draft beside the flock. */
export interface ClausesOfFlock {
  /** null: nothing has been drafted, and all below is empty */
  readonly draft: Draft | null
  /** the step that the breed stands at, and the one it is held against */
  readonly step: string | null
  readonly before: string | null
  /** the steps that count, oldest first */
  readonly steps: readonly string[]
  /** worst first */
  readonly scored: readonly ClauseBeside[]
  /** in the order of the draft */
  readonly unscored: readonly UnscoredClause[]
}

export interface ClauseBeside {
  readonly clause: Clause
  /** null for what stands in a table: a weight, the egg */
  readonly section: Section | null
  /** told by a ruler or scales: held against today's range, whatever the draft of the day */
  readonly measured: boolean
  /** one row a step and sex with anything to tell, oldest step first, then all steps together; in each male, female, unknown, all */
  readonly rows: readonly ClauseShare[]
  /** both sexes: of the latest step, of the one before it, and of all steps together */
  readonly latest: ClauseShare
  readonly before: ClauseShare | null
  readonly all: ClauseShare
  /** of the latest step, whole sire families drawn; null where nobody of it was judged */
  readonly families: FamilyShare | null
  /** latest step less the one before; null where one of them has nobody judged */
  readonly change: ShareDifference | null
  /** scores made under other words of it, the latest words first; never mixed with the rest */
  readonly otherWords: readonly OtherWords[]
  /** is what it accepts for some seasons in force in the season of the book's day? Null: it accepts nothing beside what it allows */
  readonly tolerance: 'in-force' | 'over' | null
}

export interface OtherWords {
  /** the clause as it stood; null: that draft had no such clause, or none was in force, or the day is not known */
  readonly clause: Clause | null
  /** over all steps and sexes, then of the latest step */
  readonly all: ClauseShare
  readonly latest: ClauseShare
}

export interface UnscoredClause {
  readonly clause: Clause
  readonly section: Section | null
  /** words-only: no trait shows it · nothing-allowed: nor its entry nor the trait says what it allows · never-scored: no bird of these steps has a score of its trait · reworded: scored, but only under other words of it */
  readonly why: 'words-only' | 'nothing-allowed' | 'never-scored' | 'reworded'
  /** the scores made under other words of it, the latest words first; empty but for `reworded` */
  readonly otherWords: readonly OtherWords[]
}

type Cells = Map<string, Readonly<Record<Sex, ClauseCell>>>
const SEXES: readonly Sex[] = ['male', 'female', 'unknown']

/**
 * Which clauses of the latest draft does the flock meet, and which not? Share = birds that show what the clause allows their sex / birds scored that can be judged, by step and sex, with its Wilson 95 %
 * interval; of the latest step with that of whole sire families too.
 *
 * Every chick scored counts, culled, sold and dead ones too; an unsexed one where it would meet the clause as either sex, or miss it as either; one of a clause's variety only. Where several scores count the
 * choice is that of `scoresUnderWords`: what is told by eye counts only where the clause said the same in the draft it was scored under, and stands apart elsewhere, held against what that draft
 * allowed, or against today's range where it did not say. What is still accepted in this season counts as met, and is counted apart. Steps are those of the project's ladder, else those reached.
 * Worst first: the least share in the latest step; of equals the one that it is worse to miss, the mandatory one, the one with more birds, the earlier in the draft. Clauses without a bird of that step come
 * after all others, by their share over all steps.
 *
 * @see Wilson 1927, J. Am. Stat. Assoc. 22:209–212; `familyShare`, `shareDifference`
 */
export function clausesOfFlock(book: Logbook, ladder: readonly LadderStep[], passages: readonly Passage[]): ClausesOfFlock {
  const draft = book.drafts.at(-1) ?? null, current = currentStep(ladder), {on, beside} = reachedSteps(ladder), counting = on.length > 0 ? on : beside
  const labels = counting.map(({label}) => label), before = current && stepBefore(current, ladder, passages)
  if (!draft) return {draft, step: current?.label ?? null, before: before?.label ?? null, steps: labels, scored: [], unscored: []}
  const sections = new Map(draft.sections.flatMap(section => section.clauses.map(clause => [clause, section] as const)))
  const at: Standing = {book, draft, labels, chicks: ladderChicks(book).filter(({step}) => labels.includes(step.label)), current, before: before && labels.includes(before.label) ? before : null, read: scoresUnderWords(book)}
  const scored: ClauseBeside[] = [], unscored: UnscoredClause[] = []
  for (const clause of clausesOf(draft)) {
    const section = sections.get(clause) ?? null
    if (clause.trait === null || !canBeHeld(clause)) {
      unscored.push({clause, section, why: clause.trait === null ? 'words-only' : 'nothing-allowed', otherWords: []})
      continue
    }
    const found = besideFlock(clause, section, at), {share, sexUnknown, varietyUnknown} = found.all
    if (share.kind === 'share' || sexUnknown + varietyUnknown > 0) scored.push(found)
    else unscored.push({clause, section, why: found.otherWords.length > 0 ? 'reworded' : 'never-scored', otherWords: found.otherWords})
  }
  return {draft, step: current?.label ?? null, before: at.before?.label ?? null, steps: labels, scored: worstFirst(scored), unscored}
}

interface Standing {
  readonly book: Logbook
  readonly draft: Draft
  readonly labels: readonly string[]
  readonly chicks: readonly Chick[]
  readonly current: ReachedStep | null
  readonly before: ReachedStep | null
  readonly read: ReturnType<typeof scoresUnderWords>
}

const cellsFor = (labels: readonly string[]): Cells => new Map(labels.map(label => [label, {male: new ClauseCell(), female: new ClauseCell(), unknown: new ClauseCell()}]))

function besideFlock(clause: Clause, section: Section | null, at: Standing): ClauseBeside {
  const {book, labels, current, before} = at, {cells, others} = countsOf(clause, at)
  const of = (from: Cells, step: string | null, sexes: readonly Sex[]): readonly ClauseCell[] =>
    [...from].filter(([label]) => step === null || label === step).flatMap(([, bySex]) => sexes.map(sex => bySex[sex]))
  const row = (from: Cells, step: string | null): ClauseShare => shareOfCells(step, 'all', of(from, step, SEXES))
  const rows = [...labels, null].flatMap(step => SEX_ROWS.flatMap(sex => {
    const own = of(cells, step, sex === 'all' ? SEXES : [sex])
    return own.every(({empty}) => empty) ? [] : [shareOfCells(step, sex, own)]
  }))
  const latest = row(cells, current?.label ?? ''), earlier = before && row(cells, before.label)
  const one = latest.share, other = earlier?.share
  return {
    clause, section, measured: clause.trait?.kind === 'measured', rows, latest, before: earlier, all: row(cells, null),
    families: familyShare(familiesOfCells(of(cells, current?.label ?? '', SEXES)), {seed: FAMILY_SEED}),
    change: one.kind === 'share' && other?.kind === 'share' ? shareDifference({k: one.count, n: one.total}, {k: other.count, n: other.total}) : null,
    otherWords: latestFirst(others.map(({clause: then, cells: own}) => ({clause: then, all: row(own, null), latest: row(own, current?.label ?? '')}))),
    tolerance: clause.accepted === null ? null : yearOf(book.asOf) <= clause.accepted.until ? 'in-force' : 'over',
  }
}

interface Counted {
  readonly cells: Cells
  /** by the words they were scored under */
  readonly others: readonly {readonly clause: Clause | null; readonly cells: Cells}[]
}

function countsOf(clause: Clause, {book, draft, labels, chicks, read}: Standing): Counted {
  const cells = cellsFor(labels), others = new Map<string, Counted['others'][number]>()
  const {trait} = clause, ofVariety = isOfVariety(clause, draft), season = yearOf(book.asOf), accepted = acceptedIn(clause, season)
  if (!trait) return {cells, others: []}
  // drafts that say the same share their cells
  const known = new Map<Clause | null, {readonly asked: Clause; readonly own: Counted['others'][number]}>()
  const wordsOf = (then: Clause | null): {readonly asked: Clause; readonly own: Counted['others'][number]} => {
    const before = known.get(then)
    if (before) return before
    const asked = then?.trait === trait && canBeHeld(then) ? then : clause, key = then ? JSON.stringify([then.text, asked.allows]) : ''
    const own = others.get(key) ?? {clause: then, cells: cellsFor(labels)}
    others.set(key, own)
    known.set(then, {asked, own})
    return {asked, own}
  }
  const scoreOf = read(clause, trait), oneSex = !(concerns(clause, 'male') && concerns(clause, 'female'))
  for (const chick of chicks) {
    const cell = cells.get(chick.step.label)?.[chick.sex]
    if (!cell || !concerns(clause, chick.sex)) continue
    const is = ofVariety(chick)
    if (is === false) continue
    const found = scoreOf(chick)
    if (!found) {
      const why = whyUnscored(chick, trait, book)
      if (why) cell.aside.add(oneSex && chick.sex === 'unknown' ? 'sex-unknown' : why, chick.count)
      continue
    }
    const {score: {value, at: place}, under} = found
    if (is === null) cell.varietyUnknown += chick.count
    else if (under.asNow) cell.judge(chick, judge(trait, clause.allows, accepted, chick.sex, value), place, under.draft?.number ?? null)
    else {
      cell.otherWords += chick.count
      const {asked, own} = wordsOf(under.clause)
      const cellThen = own.cells.get(chick.step.label)?.[chick.sex]
      if (concerns(asked, chick.sex)) cellThen?.judge(chick, judge(trait, asked.allows, acceptedIn(asked, season), chick.sex, value), place, under.draft?.number ?? null)
      else if (cellThen) cellThen.sexUnknown += chick.count
    }
  }
  for (const hatch of book.hatches) {
    if (hatch.unlisted > 0 && trait.seenIn === null) cells.get(hatch.step.label)?.unknown.aside.add('not-listed', hatch.unlisted)
  }
  return {cells, others: [...others.values()]}
}

/** Scores of no draft last. */
const latestFirst = (words: readonly OtherWords[]): readonly OtherWords[] => [...words].sort((a, b) => Number(a.clause === null) - Number(b.clause === null) || (b.all.drafts.at(-1) ?? 0) - (a.all.drafts.at(-1) ?? 0))

const WORSE: readonly (Severity | null)[] = ['disqualifying', 'serious', 'minor', null]
const shareIn = ({share}: ClauseShare): number | null => (share.kind === 'share' ? share.value : null)

/** Those scored in the latest step first; a sort keeps the order of the draft among equals. */
function worstFirst(found: readonly ClauseBeside[]): readonly ClauseBeside[] {
  const told = (one: ClauseBeside): number => (shareIn(one.latest) !== null ? 0 : shareIn(one.all) !== null ? 1 : 2)
  const share = (one: ClauseBeside): number => shareIn(one.latest) ?? shareIn(one.all) ?? 1
  const total = ({latest, all}: ClauseBeside): number => (latest.share.kind === 'share' ? latest.share.total : all.share.kind === 'share' ? all.share.total : 0)
  return [...found].sort((a, b) => told(a) - told(b) || share(a) - share(b) || WORSE.indexOf(a.clause.ifMissed) - WORSE.indexOf(b.clause.ifMissed)
    || Number(b.clause.mandatory) - Number(a.clause.mandatory) || total(b) - total(a))
}
