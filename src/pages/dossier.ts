/**
 * The dossier: requirement by requirement what is asked and what the records show, then history, figures, shows, papers, pictures, keepers, statement
 * and the standard. One self-contained file, made to be printed and sent. Every number comes from a finding and names the page it stands on.
 */
import type {EvidenceOfAll} from '../findings/evidence.ts'
import type {Findings} from '../findings/study.ts'
import type {Confidential} from '../logbook/confidential.ts'
import {checksumSentence, recordsWords} from './checksum-words.ts'
import {dayWords} from './dates.ts'
import {evenFigures} from './dossier-even.ts'
import {careSentence, classSentence, hatchTable, lossTable, showLines, type ShowLine} from './dossier-flock.ts'
import {gapSentences} from './dossier-gaps.ts'
import {draftWords, historyView, type HistoryView} from './dossier-history.ts'
import {birdPlates, distinctTable, papersTable, picturesWords, signers, type Signing} from './dossier-papers.ts'
import {fixedLines} from './evidence-of-descent-words.ts'
import {shownWords, whereShown} from './evidence-words.ts'
import {sourcesTable} from './dossier-sources.ts'
import {DOSSIER, DOSSIER_PDF} from './links.ts'
import {IN_PUBLIC, namedToCommittee, toCommittee, type Naming} from './naming.ts'
import {listWords, saying, sentence} from './numbers.ts'
import type {Figure, Page, Table} from './page.ts'
import type {Plate} from './plates.ts'
import {setAsideWords} from './set-aside-words.ts'
import {standardView, type StandardView} from './standard-view.ts'

interface EvidenceView {
  readonly state: 'met' | 'not' | 'unk' | 'wai'
  readonly egg: string
  readonly mark: string
  readonly title: string
  readonly asked: string
  readonly shown: string
  /** of a requirement on all required traits a line for each; else empty */
  readonly lines: readonly string[]
  /** a place in the dossier itself, or in words the page of the site */
  readonly where: {readonly text: string; readonly link: string | null} | null
  readonly waived: string | null
}

export interface DossierView {
  readonly breed: string
  /** for whom it is, and that it must not be published; null on the public one */
  readonly confidential: string | null
  readonly facts: readonly {readonly term: string; readonly words: string}[]
  readonly lead: string
  readonly evidence: readonly EvidenceView[]
  /** Markdown: what the keeper wrote on the requirements */
  readonly requirementsBody: string
  readonly history: HistoryView
  readonly figures: readonly Figure[]
  readonly figuresWords: string
  readonly hatch: Table | null
  readonly aside: readonly string[]
  readonly losses: Table | null
  readonly care: string
  readonly shows: readonly ShowLine[]
  readonly classes: string | null
  readonly distinct: Table | null
  readonly papers: Table | null
  readonly plates: readonly Plate[]
  readonly picturesWords: string
  readonly gaps: readonly string[]
  readonly sources: Table | null
  readonly signing: Signing
  /** what the checksum at the head is of */
  readonly checksum: string
  readonly standard: StandardView | null
}

const MARKS = {
  met: {state: 'met', egg: 'egg-met', mark: 'Met'}, 'not-yet': {state: 'not', egg: 'egg-open', mark: 'Not yet'},
  'cannot-tell': {state: 'unk', egg: 'egg-unknown', mark: 'Cannot be told'}, waived: {state: 'wai', egg: 'egg-waived', mark: 'Waived'},
} as const

/** The dossier is sent alone, so a page of the site is named, not linked. */
const whereIn = (where: ReturnType<typeof whereShown>): EvidenceView['where'] =>
  (where === null || where.link.startsWith('#') ? where : {text: `In the site: ${where.link}`, link: null})

function evidenceViews({evidence, book}: Findings, naming: Naming): readonly EvidenceView[] {
  return evidence.items.map(item => {
    const {requirement, state, shown} = item
    const {waived} = requirement
    return {
      ...MARKS[state], title: requirement.title, asked: requirement.asked, shown: shownWords(item, book, naming), lines: shown.kind === 'fixed' ? fixedLines(shown) : [], where: whereIn(whereShown(shown)),
      waived: waived ? `Waived${waived.by === null ? '' : ` by ${waived.by}`}: ${waived.because.replace(/[.]$/, '')}.` : null,
    }
  })
}

function leadOf({counts}: EvidenceOfAll): string {
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

/** `For the committee only, not to be published. Keeper A and judge 1 of the site stand here by name.` */
function confidentialWords({book}: Findings, confidential: Confidential): string {
  const {keepers, judges} = namedToCommittee(book, confidential), named = [...keepers, ...judges]
  const who = named.length === 0 ? 'It names nobody whom the site does not.' : `${sentence(listWords(named))} of the site ${named.length === 1 ? 'stands' : 'stand'} here by name.`
  return `${FOR_COMMITTEE}. ${who}`
}

const FOR_COMMITTEE = 'For the committee only, not to be published'

/** @param confidential  whom the committee may be told of besides; null: the public dossier of the site. Every name of a person is asked of the naming. */
export function dossierPage(findings: Findings, confidential: Confidential | null = null): Page {
  const naming = confidential ? toCommittee(confidential) : IN_PUBLIC
  const {book} = findings
  const {requirements, project} = book
  const draft = book.drafts.at(-1)
  const figures = evenFigures(findings)
  const view: DossierView = {
    breed: project.name, confidential: confidential ? confidentialWords(findings, confidential) : null, lead: leadOf(findings.evidence), evidence: evidenceViews(findings, naming), requirementsBody: requirements?.body ?? '',
    facts: [
      ...(requirements?.association ? [{term: 'For', words: requirements.association}] : []), {term: 'This book', words: recordsWords(book)},
      {term: 'With', words: draftWords(draft)},
    ],
    history: historyView(findings), figures,
    figuresWords: figures.length === 0 ? 'No chick has been scored for what the standard requires, and none weighed at the age that counts, so there is nothing to draw yet.'
      : 'Backcross steps cannot breed true; they stand for completeness. Birds are held against those reared alike only.',
    hatch: hatchTable(findings), aside: setAsideWords(book.hatches), losses: lossTable(findings), care: careSentence(findings), shows: showLines(findings, naming), classes: classSentence(findings), distinct: distinctTable(book),
    papers: papersTable(book), plates: birdPlates(book), picturesWords: picturesWords(book), gaps: gapSentences(findings), sources: sourcesTable(findings), signing: signers(book, naming), checksum: checksumSentence(book),
    standard: draft ? standardView(book, draft) : null,
  }
  return {
    path: DOSSIER, template: 'dossier', title: `Dossier of evidence${confidential ? ' for the committee only' : ''}, ${dayWords(book.asOf)}`, section: 'dossier', look: 'dossier', selfContained: true, pdf: DOSSIER_PDF, view,
    heads: {left: project.name, right: confidential ? FOR_COMMITTEE : `Dossier of evidence, records to ${dayWords(book.asOf)}`, ...(draft ? {enclosed: `Proposed standard, draft ${draft.number}`} : {})},
    search: {kind: 'dossier', words: `dossier evidence requirements ${findings.evidence.items.map(({requirement}) => requirement.title).join(' ')}`},
  }
}
