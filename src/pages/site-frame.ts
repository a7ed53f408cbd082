/** What every page shares: the breed's name, the list of all pages with a word on each, the day the figures are true on. */
import {reachedSteps} from '../findings/ladder.ts'
import type {Findings} from '../findings/study.ts'
import {dateWords, dayWords} from './dates.ts'
import {
  BIRDS, CARE, CHOOSING, CLAUSES, DIARY, DOSSIER, DOUBTS, DOWNLOADS, DRAFT_HISTORY, FOUNDERS, HATCHES, HOME, KEEPERS, LADDER, LAY, MALES, METHODS, PENS, PROBLEM_MANUAL, RECORD_FORMATS, ROTATION, SCORE_SHEET, SHOWS, STANDARD, STRAINS, SUMMARIES, TRAITS, VIGOUR,
} from './links.ts'
import {counted, countWord} from './numbers.ts'
import type {Page, Section} from './page.ts'

export interface SiteFrame {
  readonly breed: string
  readonly language: string
  readonly home: string
  readonly contents: readonly {readonly section: Section | null; readonly title: string; readonly path: string; readonly note: string}[]
  readonly asOf: string
  readonly url: string | null
}

function ladderNote({ladder}: Findings): string {
  const {on, beside} = reachedSteps(ladder), [first] = on, last = on.at(-1)
  const others = beside.length === 0 ? '' : `${counted(beside.length, 'step')} beside the ladder`
  if (!first || !last) return others || 'no step reached yet'
  const climbed = on.length === 1 ? `one step, ${first.label}` : `${countWord(on.length)} steps from ${first.label} to ${last.label}`
  return others === '' ? climbed : `${climbed}, and ${others}`
}

const noteOr = (count: number, one: string, many: string, none: string): string => (count === 0 ? none : counted(count, one, many))

/** @param pages  what there is: a page that is not composed is not listed */
export function siteFrame(findings: Findings, pages: readonly Page[]): SiteFrame {
  const {book, census, shows} = findings, {project} = book
  const draft = book.drafts.at(-1), oldest = [...book.diary].sort((a, b) => a.on.first - b.on.first)[0]
  const all = [
    {section: 'home', title: 'Home', path: HOME, note: 'where the breed stands'}, {section: 'ladder', title: 'Ladder', path: LADDER, note: ladderNote(findings)},
    {section: 'birds', title: 'Birds', path: BIRDS, note: `${book.birds.length} on record, ${census.aliveCount.all} living`}, {section: 'pens', title: 'Pens', path: PENS, note: 'who was mated to whom'},
    {section: 'hatches', title: 'Hatches', path: HATCHES, note: 'eggs set and chicks out'}, {section: null, title: 'Life and lay', path: LAY, note: 'how chicks live and hens lay'}, {section: 'traits', title: 'Traits', path: TRAITS, note: noteOr(book.traits.length, 'trait', 'traits', 'none written down yet')},
    {section: 'shows', title: 'Shows', path: SHOWS, note: noteOr(shows.shows.length, 'show', 'shows', 'none yet') + (shows.remarks.length === 0 ? '' : ', with judges’ remarks')},
    {section: 'standard', title: 'Standard', path: STANDARD, note: draft ? `draft ${draft.number}` : 'not drafted yet'}, {section: null, title: 'Changes of the standard', path: DRAFT_HISTORY, note: 'draft by draft'},
    {section: null, title: 'The standard beside the flock', path: CLAUSES, note: 'which clauses the birds meet'}, {section: null, title: 'Score sheet', path: SCORE_SHEET, note: 'to print for a scoring day'},
    {section: 'dossier', title: 'Dossier', path: DOSSIER, note: 'the evidence, made to print'}, {section: 'diary', title: 'Diary', path: DIARY, note: oldest ? `kept since ${dateWords(oldest.on)}` : 'nothing written yet'},
    {section: null, title: 'To send on', path: SUMMARIES, note: 'a sheet for each season and step'}, {section: null, title: 'Chicks in doubt', path: DOUBTS, note: 'looks and parents that hardly fit'}, {section: null, title: 'Which cockerel into which pen?', path: MALES, note: 'who is kin to whom'}, {section: null, title: 'Ways of mating', path: ROTATION, note: 'where each would lead'},
    {section: null, title: 'What choosing did', path: CHOOSING, note: 'what for, and what came of it'}, {section: null, title: 'Is inbreeding costing us?', path: VIGOUR, note: 'hatch, life, weight and eggs; what crosses gain'},
    {section: null, title: 'Founders', path: FOUNDERS, note: 'what is left of each'}, {section: null, title: 'Strains', path: STRAINS, note: 'what the breed is made of'}, {section: null, title: 'Keepers', path: KEEPERS, note: 'who keeps the birds'},
    {section: null, title: 'Care', path: CARE, note: 'feed, housing and health'}, {section: 'methods', title: 'Methods', path: METHODS, note: 'how each figure is worked'},
    {section: 'records', title: 'Downloads', path: DOWNLOADS, note: 'the figures as CSV, the book as JSON'}, {section: null, title: 'How records are written', path: RECORD_FORMATS, note: 'every kind and key'},
    {section: null, title: 'Problems in records', path: PROBLEM_MANUAL, note: 'cause and remedy'},
  ] as const
  const there = new Set(pages.map(page => page.path))
  const later = book.later === 0 ? '' : ` ${counted(book.later, 'fact')} after that day ${book.later === 1 ? 'is' : 'are'} left aside.`
  return {
    breed: project.name, language: project.site.language, home: HOME, contents: all.filter(entry => there.has(entry.path)), url: project.site.url,
    asOf: `Worked from the records as they stood on ${dayWords(book.asOf)}.${later.replace(/^ ./, start => start.toUpperCase())}`,
  }
}
