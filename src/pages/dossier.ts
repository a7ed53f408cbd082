/**
 * The dossier: requirement by requirement what is asked and what the records show, then history, figures, shows, papers, pictures, keepers, statement
 * and the standard. One self-contained file, made to be printed and sent. Every number comes from a finding and names the page it stands on.
 */
import type {Findings} from '../findings/study.ts'
import type {Confidential} from '../logbook/confidential.ts'
import {checksumSentence, recordsWords} from './checksum-words.ts'
import {dayWords} from './dates.ts'
import {references, type BehindView, type NumberedTable, type Reference} from './dossier-behind.ts'
import {closenessTable, foundersWords, notInTable} from './dossier-descent.ts'
import {behindFigures, evenFigures} from './dossier-even.ts'
import {evidenceLead, evidenceViews, type EvidenceView} from './dossier-evidence.ts'
import {careTold, classesTold, hatchTable, lossTable, pureWords, showLines, type ShowLine, type Told} from './dossier-flock.ts'
import {gapsTold} from './dossier-gaps.ts'
import {draftWords, hasBackcross, historyView, type HistoryView} from './dossier-history.ts'
import {methodLines, type MethodLine} from './dossier-methods.ts'
import {distinctTable, papersTable, signers, type Signing, type TableWithRef} from './dossier-papers.ts'
import {photographsView, type PhotographsView} from './dossier-photographs.ts'
import {shownBirds, shownBirdsRef, type ShownBird} from './dossier-shown-birds.ts'
import {struckTable} from './dossier-struck.ts'
import {DOSSIER, DOSSIER_PDF} from './links.ts'
import {IN_PUBLIC, namedToCommittee, toCommittee, type Naming} from './naming.ts'
import {counted, listWords, sentence} from './numbers.ts'
import type {Figure, Page} from './page.ts'
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
  readonly hatch: NumberedTable | null
  readonly aside: readonly string[]
  readonly losses: NumberedTable | null
  readonly care: Told
  readonly shows: readonly ShowLine[]
  readonly classes: Told | null
  /** of judges without consent, where the shows have any */
  readonly judges: string | null
  readonly distinct: TableWithRef | null
  readonly papers: TableWithRef | null
  readonly photographs: PhotographsView
  readonly closeness: NumberedTable | null
  /** which steps the table of descent has not */
  readonly closenessNote: string
  readonly founders: ReturnType<typeof foundersWords>
  readonly gaps: readonly Told[]
  readonly struck: NumberedTable | null
  readonly methods: readonly MethodLine[]
  readonly shownBirds: readonly ShownBird[]
  readonly shownBirdsRef: Reference | null
  /** what stands behind each number, as the references count */
  readonly behind: readonly BehindView[]
  /** birds that wore another band before; null where none did */
  readonly otherBands: string | null
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

/** `A judge who has not agreed to be named stands as a number.` Null where every judge has a name. */
function judgesWords({shows}: Findings, naming: Naming): string | null {
  const unnamed = shows.judges.map(naming.judge).filter(name => /^judge \d+$/.test(name))
  return unnamed.length === 0 ? null : `${sentence(counted(unnamed.length, 'judge'))} without consent to be named ${unnamed.length === 1 ? 'stands as a number' : 'stand as numbers'}, the same at every show.`
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
    history: historyView(findings, naming, refs), figures, figuresRef: figures.length === 0 ? null : refs.to(behindFigures(findings, figures)),
    figuresWords: figures.length === 0 ? 'No chick has been scored for what the standard requires, and none weighed at the age that counts, so there is nothing to draw yet.'
      : `${hasBackcross(findings) ? 'Backcross steps cannot breed true; they stand for completeness. ' : ''}Birds are held against those reared alike only.`,
    // in the order they are read, which is that of the references and of the tables
    founders: foundersWords(findings, refs), closeness: closenessTable(findings, refs), closenessNote: notInTable(findings),
    hatch: hatchTable(findings, refs), aside: [...setAsideWords(book.hatches), ...pureWords(book)], losses: lossTable(findings, refs), care: careTold(findings, refs),
    shows: showLines(findings, naming, refs), classes: classesTold(findings, refs), judges: judgesWords(findings, naming), distinct: distinctTable(book, refs),
    photographs: photographsView(findings, refs), papers: papersTable(book, refs), gaps: gapsTold(findings, refs), struck: struckTable(findings, naming, refs), methods: methodLines(),
    shownBirdsRef: shownBirdsRef(findings, refs), shownBirds: shownBirds(findings, naming), signing: signers(book, refs, naming), checksum: checksumSentence(book),
    standard: draft ? standardView(book, draft) : null, behind: refs.listed(), otherBands: refs.otherBands(),
  }
  return {
    path: DOSSIER, template: 'dossier', title: `Dossier of evidence${confidential ? ' for the committee only' : ''}, ${dayWords(book.asOf)}`, section: 'dossier', look: 'dossier', selfContained: true, pdf: DOSSIER_PDF, view,
    heads: {left: confidential ? `${project.name}, records to ${dayWords(book.asOf)}` : project.name, right: confidential ? FOR_COMMITTEE : `Dossier of evidence, records to ${dayWords(book.asOf)}`, ...(draft ? {enclosed: `Proposed standard, draft ${draft.number}`} : {})},
    search: {kind: 'dossier', words: `dossier evidence requirements ${findings.evidence.items.map(({requirement}) => requirement.title).join(' ')}`},
  }
}
