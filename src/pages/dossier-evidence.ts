/** Requirement by requirement: what is asked, what the records show, what stands behind it, and what would meet it. */
import type {Evidence, EvidenceOfAll} from '../findings/evidence.ts'
import type {Findings} from '../findings/study.ts'
import {dayWords} from './dates.ts'
import {besidesOf, type Reference, type References} from './dossier-behind.ts'
import {fixedLines} from './evidence-of-genes-words.ts'
import {shownWords, whereShown} from './evidence-words.ts'
import type {Naming} from './naming.ts'
import {listWords, saying, sentence} from './numbers.ts'
import {waivedWords} from './waiver-words.ts'
import {waySentence} from './way-words.ts'

export interface EvidenceView {
  readonly state: 'met' | 'not' | 'unk' | 'wai'
  readonly egg: string
  readonly mark: string
  readonly title: string
  readonly asked: string
  readonly shown: string
  /** of a requirement on all required traits a line for each; else empty */
  readonly lines: readonly string[]
  /** a place in the dossier itself; null where its numbers stand nowhere else in it */
  readonly where: Reference | null
  /** the birds and records behind it; where there are none, the record that asks for it */
  readonly ref: Reference
  readonly waived: string | null
  /** what would meet it; empty where it is met */
  readonly way: string
}

const MARKS = {
  met: {state: 'met', egg: 'egg-met', mark: 'Met'}, 'not-yet': {state: 'not', egg: 'egg-open', mark: 'Not yet'},
  'cannot-tell': {state: 'unk', egg: 'egg-unknown', mark: 'Cannot be told'}, waived: {state: 'wai', egg: 'egg-waived', mark: 'Waived'},
} as const

export function evidenceViews({evidence, book}: Findings, naming: Naming, refs: References): readonly EvidenceView[] {
  return evidence.items.map((item): EvidenceView => {
    const {requirement, state, shown, behind} = item, where = whereShown(shown), page = where === null || where.link.startsWith('#') ? null : where.link
    return {
      ...MARKS[state], title: requirement.title, asked: requirement.asked, shown: `${shownWords(item, book, naming)}${behind.on === null ? '' : ` Latest record: ${dayWords(behind.on)}.`}`, way: waySentence(item, book.asOf, naming),
      lines: shown.kind === 'fixed' ? fixedLines(shown) : [], where: where && page === null ? where : null,
      ref: refs.to({of: `Requirement: ${requirement.title}`, birds: behind.birds, ...besidesOf(unbandedOf(shown, behind.birds.length)), records: behind.records.length > 0 ? behind.records : [requirement.at], page}), waived: waivedWords(item, book),
    }
  })
}

/** Of chicks that were counted those that wear no band. */
const unbandedOf = (shown: Evidence['shown'], banded: number): number => (shown.kind === 'true-to-type' ? Math.max(0, shown.rate.passes + shown.rate.fails + shown.rate.partScored - banded) : 0)

export function evidenceLead({counts}: EvidenceOfAll): string {
  const purpose = 'Dossier of evidence for the recognition of a new breed.'
  if (counts.all === 0) return `${purpose} No requirements are on record yet.`
  const say = saying(counts.all, counts.met, counts.notYet, counts.cannotTell, counts.waived)
  const parts = [
    `${counts.met === 0 ? 'none of' : say(counts.met, 'of', 'of')} ${say(counts.all, 'requirement')} ${counts.met < 2 ? 'is' : 'are'} met`,
    ...(counts.notYet > 0 ? [say(counts.notYet, 'is not yet', 'are not yet')] : []),
    ...(counts.cannotTell > 0 ? [say(counts.cannotTell, 'cannot be told', 'cannot be told')] : []),
    ...(counts.waived > 0 ? [say(counts.waived, 'is waived, with the reason', 'are waived, with the reason')] : []),
  ]
  return `${purpose} ${sentence(listWords(parts))}.`
}
