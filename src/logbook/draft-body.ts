/** What is wrong with how the body of the latest draft is written: names that stand twice, heads that are none, headings that no part or variety of a standard has. */
import {frontRange, spotAt} from '../records/front-matter.ts'
import type {Note, Spot} from '../records/problem.ts'
import type {Reading} from '../records/records.ts'
import {offsetInFile} from './body-pictures.ts'
import type {Draft} from './book.ts'
import {cutDraft} from './cut-draft.ts'
import {slug} from './draft-sections.ts'
import {headingTwice} from './inspect/clause-twice.ts'
import {headingMisspelt, unreadHead, unreadHeads} from './inspect/head-unread.ts'
import {headingOfNoVariety} from './inspect/variety-unknown.ts'
import {partsMeant} from './section-kinds.ts'
import {speltAs} from './variety-names.ts'

export function checkDraftBody({records, texts}: Pick<Reading, 'records' | 'texts'>, draft: Draft | undefined, note: Note): void {
  const record = records.draft.find(({at}) => at.file === draft?.at.file)
  if (!record) return
  const {data, body, file, at} = record, text = texts.get(file) ?? ''
  const spot = (offset: number, length: number): Spot => (frontRange(text) === null ? at : spotAt(file, text, offsetInFile(text, body, offset), length))
  const sections = cutDraft(record)

  const once = (pieces: readonly {readonly title: string; readonly offset: number}[], what: 'section' | 'clause') => {
    const first = new Map<string, Spot>()
    for (const {title, offset} of pieces) {
      const before = first.get(slug(title)), here = spot(offset, title.length)
      if (before) note(headingTwice(what, title, here, before))
      else first.set(slug(title), here)
    }
  }
  once(sections.filter(({title}) => title !== ''), 'section')
  for (const {clauses} of sections) for (const variety of new Set(clauses.map(each => each.variety))) once(clauses.filter(each => each.variety === variety), 'clause')

  for (const head of unreadHeads(body)) note(unreadHead(head, spot(head.offset, head.words.length)))
  for (const {title, kind, offset} of sections) {
    const meant = kind === null ? partsMeant(title) : []
    if (meant.length > 0) note(headingMisspelt(title, spot(offset, title.length + 3), meant))
  }

  const named = (data.varieties ?? []).map(({key}) => key)
  if (named.length === 0) return
  for (const {title, offset} of sections.flatMap(section => section.varieties)) if (!named.includes(speltAs(named)(title))) note(headingOfNoVariety(title, spot(offset, title.length + 4), named))
}
