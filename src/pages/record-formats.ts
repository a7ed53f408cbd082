/** The reference page of record formats, made from the schemas themselves so that it cannot say what they do not do. */
import {KINDS} from '../records/kinds.ts'
import type {Kind} from '../records/schema/kind.ts'
import type {Fields, Shape} from '../records/shape.ts'
import {TABLE_FORMATS, TABLE_RULES, type TableFormat} from '../records/table-formats.ts'
import {RECORD_FORMATS} from './links.ts'
import {listWords, sentence} from './numbers.ts'
import type {Page} from './page.ts'

interface KeyView {
  readonly key: string
  readonly required: boolean
  readonly holds: string
  readonly help: string
}

interface KeysView {
  readonly id: string
  /** `Its keys`, or `A chick, inside chicks` */
  readonly caption: string
  readonly keys: readonly KeyView[]
  /** what keys beyond these hold, where they are taken */
  readonly others: string | null
}

interface KindView {
  readonly id: string
  readonly title: string
  readonly purpose: string
  readonly files: string
  readonly example: string
  /** other files of the kind that look different */
  readonly more: readonly {readonly title: string; readonly example: string}[]
  readonly tables: readonly KeysView[]
  readonly schema: string
}

export interface RecordFormats {
  readonly kinds: readonly KindView[]
  /** pieces that several kinds hold, said once */
  readonly shared: readonly KeysView[]
  readonly tableRules: readonly string[]
  readonly tables: readonly TableFormat[]
}

/** Where a kind's JSON Schema is put out for editors. */
export const schemaPath = (id: string): string => `data/schema/${id}.schema.json`

/** The objects a shape is made of, itself or in its lists, maps and forms, each once. */
function objectsIn(shape: Shape<unknown>): readonly Shape<unknown>[] {
  return shape.fields ? [shape] : [...new Set((shape.parts ?? []).flatMap(part => objectsIn(part)))]
}

function othersOf(shape: Shape<unknown>): string | null {
  const rest = shape.schema.additionalProperties
  return typeof rest === 'object' && rest !== null && 'description' in rest && typeof rest.description === 'string' ? rest.description : null
}

function keysOf(fields: Fields): readonly KeyView[] {
  return Object.entries(fields).map(([key, field]) => ({key, required: field.required, holds: field.shape.says, help: field.help}))
}

interface Inner {
  readonly shape: Shape<unknown>
  readonly fields: Fields
  /** the keys that hold it */
  readonly keys: Set<string>
  readonly kinds: Set<string>
}

/** Every object inside a kind of record, outer before inner; the same piece under several keys is one. */
function gather(kind: Kind, shape: Shape<unknown>, found: Map<Fields, Inner>): void {
  for (const [key, field] of Object.entries(shape.fields ?? {})) {
    for (const object of objectsIn(field.shape)) {
      if (!object.fields) continue
      const inner = found.get(object.fields) ?? {shape: object, fields: object.fields, keys: new Set(), kinds: new Set()}
      found.set(object.fields, inner)
      inner.keys.add(key)
      inner.kinds.add(kind.id)
      gather(kind, object, found)
    }
  }
}

function innerView(inner: Inner, within: string): KeysView {
  const keys = listWords([...inner.keys].map(key => `“${key}”`))
  return {id: `${within}-${[...inner.keys].join('-')}`, caption: `${sentence(inner.shape.says)}, inside ${keys}`, keys: keysOf(inner.fields), others: othersOf(inner.shape)}
}

function kindView(kind: Kind, inner: readonly Inner[]): KindView {
  const own: KeysView = {id: `${kind.id}-keys`, caption: 'Its keys', keys: keysOf(kind.shape.fields ?? {}), others: othersOf(kind.shape)}
  const alone = inner.filter(piece => piece.kinds.size === 1 && piece.kinds.has(kind.id)).map(piece => innerView(piece, kind.id))
  return {
    id: kind.id, title: kind.title, purpose: kind.purpose, files: kind.files, example: kind.example.trimEnd(), more: (kind.more ?? []).map(({title, example}) => ({title, example: example.trimEnd()})), tables: [own, ...alone],
    schema: schemaPath(kind.id),
  }
}

export function recordFormatsPage(): Page {
  const all: readonly Kind[] = Object.values(KINDS)
  const found = new Map<Fields, Inner>()
  for (const kind of all) gather(kind, kind.shape, found)
  const inner = [...found.values()]
  const kinds = all.map(kind => kindView(kind, inner))
  const view: RecordFormats = {kinds, shared: inner.filter(piece => piece.kinds.size > 1).map(piece => innerView(piece, 'shared')), tableRules: TABLE_RULES, tables: TABLE_FORMATS}
  return {
    path: RECORD_FORMATS, template: 'record-formats', title: 'How records are written', section: 'records', view,
    search: {kind: 'reference', words: `record formats front matter keys ${kinds.map(kind => kind.title).join(' ')}`},
  }
}
