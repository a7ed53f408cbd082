/** The manual of problems: for every code its cause, its remedy, and the wrong and the right example that the tests run. */
import {RULES} from '../logbook/inspect/rules.ts'
import {READING_MANUAL, type ExampleFiles, type ManualEntry} from '../records/manual.ts'
import {PROBLEM_MANUAL} from './links.ts'
import {counted, sentence} from './numbers.ts'
import type {Page} from './page.ts'

interface FileView {
  readonly file: string
  readonly text: string
}

interface EntryView {
  readonly code: string
  readonly title: string
  readonly severity: string
  readonly cause: string
  readonly remedy: string
  readonly wrong: readonly FileView[]
  readonly right: readonly FileView[]
}

export interface ProblemManual {
  readonly lead: string
  readonly groups: readonly {readonly title: string; readonly words: string; readonly entries: readonly EntryView[]}[]
}

const SEVERITY = {error: 'error: nothing is published until it is mended', warning: 'warning: published all the same'} as const

/** Files with nothing in them (photographs) are not shown; of two like files in both examples only what differs matters, but both are whole. */
const filesOf = (files: ExampleFiles): readonly FileView[] =>
  Object.entries(files).filter(([, text]) => text !== '').map(([file, text]) => ({file, text: text.trimEnd()}))

function entryView(entry: ManualEntry): EntryView {
  const {code, title, severity, cause, remedy, wrong, right} = entry
  return {code, title, severity: SEVERITY[severity], cause, remedy, wrong: filesOf(wrong), right: filesOf(right)}
}

/** A code that both ways of looking can give has one entry. */
export function problemManualPage(): Page {
  const once = RULES.map(({entry}) => entry).filter(rule => !READING_MANUAL.some(entry => entry.code === rule.code))
  const groups = [
    {title: 'Found in a file by itself', words: 'Each file is read alone first. Reading goes on past a fault, so that one run shows everything there is to mend.', entries: READING_MANUAL.map(entryView)},
    {title: 'Found between files', words: 'Then all files are held against one another. A file that could not be read is not missed a second time.', entries: once.map(entryView)},
  ].filter(({entries}) => entries.length > 0)
  const view: ProblemManual = {lead: `${sentence(counted(READING_MANUAL.length + once.length, 'kind'))} of problem, each with its cause and the edit to make.`, groups}
  return {
    path: PROBLEM_MANUAL, template: 'problem-manual', title: 'Problems in records', section: 'records', view,
    search: {kind: 'reference', words: `problems errors warnings ${groups.flatMap(({entries}) => entries.map(({code, title}) => `${code} ${title}`)).join(' ')}`},
  }
}
