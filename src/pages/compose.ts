/** Findings → every page of the site as a view, and every file to download. One line a kind of page. */
import type {Findings} from '../findings/study.ts'
import type {PartialDate} from '../records/dates.ts'
import {birdPage} from './bird.ts'
import {birdsPages, ON_ONE_PAGE} from './birds.ts'
import {carePage} from './care.ts'
import {clausesPage} from './clauses.ts'
import {choosingPage} from './choosing.ts'
import {diaryPage} from './diary.ts'
import {diaryEntryPages} from './diary-entry.ts'
import {dossierPage} from './dossier.ts'
import {downloads} from './downloads.ts'
import {draftHistoryPage} from './draft-history.ts'
import {draftPages} from './draft.ts'
import {doubtsPage, hasDoubts} from './doubts.ts'
import {excerpt} from './excerpt.ts'
import {foundersPage} from './founders.ts'
import {hatchPage} from './hatch.ts'
import {hatchesPage} from './hatches.ts'
import {homePage} from './home.ts'
import {keepersPage} from './keepers.ts'
import {ladderPage} from './ladder.ts'
import {layPage} from './lay.ts'
import {diaryPath, STANDARD} from './links.ts'
import {malesPage} from './males.ts'
import {methodsPage} from './methods.ts'
import type {Download, Figure, Page} from './page.ts'
import {penPage} from './pen.ts'
import {pensPage} from './pens.ts'
import {problemManualPage} from './problem-manual.ts'
import {recordFormatsPage} from './record-formats.ts'
import {recordsByBird} from './records-by-bird.ts'
import {recordsPage} from './records.ts'
import {rotationPage} from './rotation.ts'
import {showPages} from './show.ts'
import {showsPage} from './shows.ts'
import {latestSheetPages} from './sheet-to-fill.ts'
import {siteFrame} from './site-frame.ts'
import type {SiteFrame} from './site-frame.ts'
import {standardPage} from './standard.ts'
import {stepPage} from './step.ts'
import {summaryPages} from './summaries.ts'
import {trueBredFigure} from './step-figures.ts'
import {strainPages} from './strain.ts'
import {strainsPage} from './strains.ts'
import {traitPage} from './trait.ts'
import {traitsPage} from './traits.ts'
import {vigourPage} from './vigour.ts'

export interface FeedItem {
  readonly title: string
  readonly path: string
  readonly on: PartialDate
  /** plain text; may be empty */
  readonly summary: string
}

export interface Composed {
  readonly frame: SiteFrame
  readonly pages: readonly Page[]
  readonly downloads: readonly Download[]
  readonly feed: readonly FeedItem[]
}

function pagesOfFlock(findings: Findings): readonly Page[] {
  const {book, ladder, hatchResults, census, trueBred} = findings
  const records = recordsByBird(book), breeders = new Set(census.breeders)
  const shared = trueBredFigure(trueBred.steps, 'Figure 1.')
  return [
    homePage(findings), ladderPage(findings, shared), ...ladder.map(step => stepPage(step, {findings, records, trueBredFigure: shared, large: book.birds.length > ON_ONE_PAGE})),
    ...birdsPages(book, ladder.filter(step => step.kind === 'reached').map(step => step.label), breeders, findings.kinship, findings.livingCarriers), ...book.birds.map(bird => birdPage(bird, findings, records(bird), breeders.has(bird))),
    pensPage(findings), malesPage(findings), rotationPage(findings), foundersPage(findings), choosingPage(findings), vigourPage(findings), ...book.pens.map(pen => penPage(pen, findings)), hatchesPage(findings), layPage(findings), ...hatchResults.hatches.map(result => hatchPage(result, findings, breeders)),
    ...(hasDoubts(findings) ? [doubtsPage(findings)] : []), traitsPage(findings), ...book.traits.map(trait => traitPage(trait, findings)),
  ]
}

function pagesOfPapers(findings: Findings): readonly Page[] {
  const {book} = findings, history = draftHistoryPage(book)
  return [
    showsPage(findings), ...showPages(findings), standardPage(book), ...draftPages(book), ...clausesPage(findings), ...latestSheetPages(findings), ...(history ? [history] : []), dossierPage(findings), diaryPage(book), ...diaryEntryPages(book), ...summaryPages(findings),
    strainsPage(book), ...strainPages(book), keepersPage(book), carePage(book), methodsPage(), recordFormatsPage(), problemManualPage(),
  ]
}

const feedOf = ({book}: Findings): readonly FeedItem[] => [
  ...book.diary.map(entry => ({title: entry.title, path: diaryPath(entry), on: entry.on, summary: excerpt(entry.body)})),
  ...book.drafts.slice(-1).map(draft => ({title: `Draft ${draft.number} of the standard`, path: STANDARD, on: draft.on, summary: ''})),
]

/** The figures of some pages, each specification once: what there is to download. */
function figuresOf(pages: readonly Page[]): readonly Figure[] {
  const found = new Map<string, Figure>()
  const look = (value: unknown): void => {
    if (value === null || typeof value !== 'object') return
    if ('kind' in value && value.kind === 'figure' && 'spec' in value) found.set((value as Figure).name, value as Figure)
    else Object.values(value).forEach(look)
  }
  for (const page of pages) if (!page.fleeting) look(page.view)
  return [...found.values()]
}

export function compose(findings: Findings): Composed {
  const matter = [...pagesOfFlock(findings), ...pagesOfPapers(findings)]
  const pages = [...matter, recordsPage(figuresOf(matter))]
  return {frame: siteFrame(findings, pages), pages, downloads: downloads(findings), feed: feedOf(findings)}
}
