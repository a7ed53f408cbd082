/** Everything there is to download, with a line on what it holds. */
import {BOOK_FILE, figuresPath, DOWNLOADED_QUESTIONS, type DownloadedQuestion} from './downloads.ts'
import {COLUMN_WORDS} from './figure-columns.ts'
import {DOWNLOADS, METHODS, PROBLEM_MANUAL, RECORD_FORMATS} from './links.ts'
import {METHODS as ENTRIES} from './methods.ts'
import {METHODS_OF_QUESTION} from './methods/asked.ts'
import type {Figure, Page} from './page.ts'

interface FileLine {
  readonly title: string
  readonly words: string
  readonly file: string
  readonly columns: string
  /** how its figures are worked */
  readonly methods: readonly {readonly id: string; readonly title: string}[]
}

export interface RecordsView {
  readonly tables: readonly FileLine[]
  readonly book: string
  readonly charts: readonly {readonly text: string; readonly link: string}[]
  readonly pages: readonly {readonly text: string; readonly link: string}[]
}

const TABLES = {
  birds: {title: 'Birds', words: 'One row a bird: sex, step, hatch day, sire, dam, what became of it. Of an uncertain parent every candidate stands with its chance.'},
  shares: {title: 'Looks', words: 'How often each look was seen, by step, trait and sex, with limits.'},
  spread: {title: 'Spread', words: 'Mean, standard deviation, coefficient of variation and the share within a tenth, by step, trait and sex.'},
  hatches: {title: 'Hatches', words: 'Eggs, fertile and hatched, and the three rates with their limits.'},
  strains: {title: 'Strains', words: 'The expected share of every founding strain in every bird, a column each by its id; then on the Z and of the mother’s line.'},
  'true-bred': {title: 'True-bred rate', words: 'Chicks passing and failing by step, and those counted apart.'},
  founders: {title: 'Founders', words: 'What is left of each founder among the birds bred from, and how many founders that amounts to.'},
  inbreeding: {title: 'Inbreeding', words: 'F and kinship by step, the rate in the closed phase, and the size it amounts to.'},
  clans: {title: 'Ways of mating', words: 'F and kinship to be expected over ten seasons, bred on as the flock stands, by five ways of mating.'},
} as const satisfies Record<DownloadedQuestion, {title: string; words: string}>

/** `band, as worn last · sex, male …` */
const columnsText = (question: DownloadedQuestion): string => Object.entries(COLUMN_WORDS[question]).map(([name, words]) => `${name}: ${words}`).join(' · ')

/** @param figures  every chart of the site; its specification is a download of its own */
export function recordsPage(figures: readonly Figure[]): Page {
  const charts = new Map(figures.map(figure => [figure.name, figure.title]))
  const view: RecordsView = {
    tables: DOWNLOADED_QUESTIONS.map(question => ({...TABLES[question], file: figuresPath(question), columns: columnsText(question), methods: (METHODS_OF_QUESTION[question] ?? []).flatMap(id => ENTRIES.filter(entry => entry.id === id))})),
    book: BOOK_FILE,
    charts: [...charts].sort(([a], [b]) => (a < b ? -1 : 1)).map(([name, title]) => ({text: `${title} (${name})`, link: `charts/${name}.vl.json`})),
    pages: [{text: 'how each figure is worked', link: METHODS}, {text: 'how records are written', link: RECORD_FORMATS}, {text: 'what each problem means', link: PROBLEM_MANUAL}],
  }
  return {path: DOWNLOADS, template: 'records', title: 'Downloads', section: 'records', view, search: {kind: 'records', words: 'downloads records CSV JSON Vega-Lite tables data'}}
}
