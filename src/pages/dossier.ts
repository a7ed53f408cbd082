/**
 * The dossier: requirement by requirement what is asked and what the records show, then history, figures, shows, papers, pictures, keepers, statement
 * and the standard. One self-contained file, made to be printed and sent. Every number comes from a finding and names the page it stands on.
 */
import type {Findings} from '../findings/study.ts'
import type {Confidential} from '../logbook/confidential.ts'
import {checksumSentence, recordsWords} from './checksum-words.ts'
import {dayWords} from './dates.ts'
import {references, type BehindView, type Reference} from './dossier-behind.ts'
import {closenessTable, foundersWords} from './dossier-descent.ts'
import {behindFigures, evenFigures} from './dossier-even.ts'
import {evidenceLead, evidenceViews, type EvidenceView} from './dossier-evidence.ts'
import {careSentence, classSentence, hatchTable, lossTable, showLines, type ShowLine} from './dossier-flock.ts'
import {gapSentences} from './dossier-gaps.ts'
import {draftWords, historyView, type HistoryView} from './dossier-history.ts'
import {methodLines, type MethodLine} from './dossier-methods.ts'
import {distinctTable, papersTable, signers, type Signing} from './dossier-papers.ts'
import {photographsView, type PhotographsView} from './dossier-photographs.ts'
import {shownBirds, type ShownBird} from './dossier-shown-birds.ts'
import {struckTable} from './dossier-struck.ts'
import {DOSSIER, DOSSIER_PDF} from './links.ts'
import {IN_PUBLIC, namedToCommittee, toCommittee} from './naming.ts'
import {listWords, sentence} from './numbers.ts'
import type {Figure, Page, Table} from './page.ts'
import {setAsideWords} from './set-aside-words.ts'
import {standardView, type StandardView} from './standard-view.ts'

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
  readonly figuresRef: Reference | null
  readonly hatch: Table | null
  readonly aside: readonly string[]
  readonly losses: Table | null
  readonly care: string
  readonly shows: readonly ShowLine[]
  readonly classes: string | null
  readonly distinct: Table | null
  readonly papers: Table | null
  readonly photographs: PhotographsView
  readonly closeness: Table | null
  readonly founders: ReturnType<typeof foundersWords>
  readonly gaps: readonly string[]
  readonly struck: Table | null
  readonly methods: readonly MethodLine[]
  readonly shownBirds: readonly ShownBird[]
  /** what stands behind each number, as the references count */
  readonly behind: readonly BehindView[]
  readonly signing: Signing
  /** what the checksum at the head is of */
  readonly checksum: string
  readonly standard: StandardView | null
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
  const figures = evenFigures(findings), refs = references(book)
  const view: DossierView = {
    breed: project.name, confidential: confidential ? confidentialWords(findings, confidential) : null, lead: evidenceLead(findings.evidence), evidence: evidenceViews(findings, naming, refs), requirementsBody: requirements?.body ?? '',
    facts: [
      ...(requirements?.association ? [{term: 'For', words: requirements.association}] : []), {term: 'This book', words: recordsWords(book)},
      {term: 'With', words: draftWords(draft)},
    ],
    history: historyView(findings, naming, refs), figures, figuresRef: figures.length === 0 ? null : refs.to(behindFigures(findings)),
    figuresWords: figures.length === 0 ? 'No chick has been scored for what the standard requires, and none weighed at the age that counts, so there is nothing to draw yet.'
      : 'Backcross steps cannot breed true; they stand for completeness. Birds are held against those reared alike only.',
    closeness: closenessTable(findings, refs), founders: foundersWords(findings, refs),
    hatch: hatchTable(findings, refs), aside: setAsideWords(book.hatches), losses: lossTable(findings, refs), care: careSentence(findings), shows: showLines(findings, naming, refs), classes: classSentence(findings), distinct: distinctTable(book),
    papers: papersTable(book), photographs: photographsView(findings, refs), gaps: gapSentences(findings), struck: struckTable(findings, naming, refs), methods: methodLines(), shownBirds: shownBirds(findings, naming), signing: signers(book, naming), checksum: checksumSentence(book),
    standard: draft ? standardView(book, draft) : null, behind: refs.listed(),
  }
  return {
    path: DOSSIER, template: 'dossier', title: `Dossier of evidence${confidential ? ' for the committee only' : ''}, ${dayWords(book.asOf)}`, section: 'dossier', look: 'dossier', selfContained: true, pdf: DOSSIER_PDF, view,
    heads: {left: confidential ? `${project.name}, records to ${dayWords(book.asOf)}` : project.name, right: confidential ? FOR_COMMITTEE : `Dossier of evidence, records to ${dayWords(book.asOf)}`, ...(draft ? {enclosed: `Proposed standard, draft ${draft.number}`} : {})},
    search: {kind: 'dossier', words: `dossier evidence requirements ${findings.evidence.items.map(({requirement}) => requirement.title).join(' ')}`},
  }
}
