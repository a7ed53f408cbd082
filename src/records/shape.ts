/**
 * Shapes: how a piece of a record is read. One shape gives the type of the value, the check, the message to the keeper,
 * the JSON Schema for editors and the line on the reference page, so that none of them can drift from the others.
 *
 * A shape is handed what the front matter really holds (every scalar still the text that was written) and gives a value, or notes slips
 * and gives undefined. Reading goes on past a slip, so one run shows everything there is to mend.
 */
import {BRACES_AS_KEY, cutTexts, noteBraces, noteCut, noteKeyAlone} from './braces.ts'
import {curlyQuotes, isCurly} from './curly-quotes.ts'
import {digitsMeant, lettersForDigits} from './letters-for-digits.ts'
import {near, nearWords, orNear} from './near.ts'
import type {ProblemCode} from './problem-codes.ts'
import {meansPrivate, noteMeantPrivate, PRIVATE} from './private.ts'
import {inside, keyOf, type Note, type Spot} from './problem.ts'
import {isList, isMap, type Raw, type RawMap} from './raw.ts'
import {noteForm} from './wrong-form.ts'

export type JsonSchema = {readonly [key: string]: unknown}

export interface Shape<T> {
  /** what it accepts, in the keeper's words, with an example: `a date such as 2024-03-23` */
  readonly says: string
  readonly schema: JsonSchema
  /** the keys of an object and what each is for, for the reference page */
  readonly fields?: Fields
  /** shapes that this one is made of, for the reference page */
  readonly parts?: readonly Shape<unknown>[]
  read(raw: Raw, at: Spot, note: Note): T | undefined
}

export type ValueOf<S> = S extends Shape<infer T> ? T : never

/** Why a scalar's text was not taken. */
export interface Refusal {
  readonly refused: true
  readonly code: ProblemCode
  readonly reason: string
  readonly remedy: string
}

export function refuse(code: ProblemCode, reason: string, remedy: string): Refusal {
  return {refused: true, code, reason, remedy}
}

function isRefusal(value: unknown): value is Refusal {
  return typeof value === 'object' && value !== null && 'refused' in value
}

const ANY_SCALAR: JsonSchema = {type: ['string', 'number', 'boolean']}

/** A single value, read from its text. */
export function scalar<T>(says: string, parse: (text: string, at: Spot) => T | Refusal | undefined, schema: JsonSchema = ANY_SCALAR): Shape<T> {
  return {
    says,
    schema: {...schema, description: says},
    read(raw, at, note) {
      if (typeof raw !== 'string') return noteForm(raw, says, at, note)
      const value = parse(raw, at)
      if ((value === undefined || isRefusal(value)) && isCurly(raw)) {
        note(curlyQuotes(raw, at))
        return undefined
      }
      const meant = value === undefined || isRefusal(value) ? digitsMeant(raw) : null
      const read = meant === null ? undefined : parse(meant, at)
      if (meant !== null && read !== undefined && !isRefusal(read)) {
        note({code: 'unreadable-value', severity: 'error', at, reason: lettersForDigits(raw), remedy: `write ${meant}`})
        return undefined
      }
      if (value === undefined) {
        note({code: 'unreadable-value', severity: 'error', at, reason: `“${raw}” cannot be read as ${says}`, remedy: `write ${says}`})
        return undefined
      }
      if (isRefusal(value)) {
        note({code: value.code, severity: 'error', at, reason: value.reason, remedy: value.remedy})
        return undefined
      }
      return value
    },
  }
}

/** One of a short list of words. `meant`: other words that keepers use for them, which are not taken but answered. */
export function oneOf<const W extends readonly string[]>(words: W, meant: Readonly<Record<string, W[number]>> = {}): Shape<W[number]> {
  const says = `one of ${words.join(', ')}`
  return scalar<W[number]>(
    says,
    text => {
      if (words.includes(text)) return text
      const other = text.toLowerCase()
      const likely = Object.hasOwn(meant, other) ? [meant[other] ?? ''] : nearWords(text, words)
      return refuse('unreadable-value', `“${text}” is not ${says}`, orNear(likely, `write ${says}`))
    },
    {enum: words},
  )
}

const unheard: Note = () => undefined

/** A list; a single value is a list of one. */
export function listOf<T>(item: Shape<T>): Shape<readonly T[]> {
  return {
    says: `a list, each entry ${item.says}`,
    schema: {anyOf: [{type: 'array', items: item.schema}, item.schema]},
    parts: [item],
    read(raw, at, note) {
      if (raw === null) return noteForm(raw, `a list, each entry ${item.says}`, at, note)
      if (typeof raw === 'string' && raw.includes(',') && item.read(raw, at, unheard) !== undefined) {
        note({
          code: 'wrong-form', severity: 'error', at, reason: `“${raw}” stands here without brackets, and so as one`,
          remedy: `for several write [${raw.trim()}]; for one with a comma in it ["${raw.trim()}"]`,
        })
        return undefined
      }
      const entries = isList(raw) ? raw : [raw]
      const values: T[] = []
      entries.forEach((entry, index) => {
        const value = item.read(entry, isList(raw) ? inside(at, index) : at, note)
        if (value !== undefined) values.push(value)
      })
      return values
    },
  }
}

export interface Entry<T> {
  readonly key: string
  readonly value: T
  /** where the value stands */
  readonly at: Spot
  /** where the key stands */
  readonly keyAt: Spot
}

/** Keys that the keeper chooses (bands, states, symbols), each with a value. Their order means nothing: keys such as 31 come first, as JavaScript has it. */
export function mapOf<T>(says: string, value: Shape<T>): Shape<readonly Entry<T>[]> {
  return {
    says,
    schema: {type: 'object', properties: {[PRIVATE]: anything.schema}, additionalProperties: value.schema, description: says},
    parts: [value],
    read(raw, at, note) {
      if (!isMap(raw)) return noteForm(raw, says, at, note)
      const entries: Entry<T>[] = []
      const cuts = cutTexts(raw, key => key === PRIVATE)
      for (const [key, inner] of Object.entries(raw)) {
        const spot = inside(at, key)
        const valued = (name: string) => `give “${name}” a value (${value.says}); a list of names goes in square brackets`
        const cut = cuts.find(one => one.key === key)
        if (cut) noteCut(cut, at, note, `, or ${valued(cut.pieces[0] ?? '')}`)
        if (key === PRIVATE || cuts.some(({pieces}) => pieces.includes(key))) continue
        if (key === BRACES_AS_KEY) noteBraces(spot, note)
        else if (meansPrivate(key)) noteMeantPrivate(key, says, at, note)
        else if (inner === null) noteKeyAlone(key, at, note, valued(key))
        else {
          const read = value.read(inner, spot, cut ? unheard : note)
          if (read !== undefined) entries.push({key, value: read, at: spot, keyAt: keyOf(at, key)})
        }
      }
      return entries
    },
  }
}

type Forms = {readonly text?: Shape<unknown>; readonly list?: Shape<unknown>; readonly map?: Shape<unknown>}

/** The form decides how it is read: plain text, a list, or keys with values. */
export function byForm<const F extends Forms>(forms: F): Shape<{[K in keyof F]: ValueOf<F[K]>}[keyof F]> {
  const shapes = [forms.text, forms.list, forms.map].filter(shape => shape !== undefined)
  const says = [...new Set(shapes.map(shape => shape.says))].join(', or ')
  return {
    says,
    schema: {anyOf: shapes.map(shape => shape.schema)},
    parts: shapes,
    read(raw, at, note) {
      const shape = raw === null ? undefined : isMap(raw) ? forms.map : isList(raw) ? forms.list : forms.text
      return (shape ? shape.read(raw, at, note) : noteForm(raw, says, at, note)) as {[K in keyof F]: ValueOf<F[K]>}[keyof F] | undefined
    },
  }
}

/** The same reading, its value turned into another. */
export function turned<A, B>(shape: Shape<A>, turn: (value: A, at: Spot) => B): Shape<B> {
  return {
    ...shape,
    read(raw, at, note) {
      const value = shape.read(raw, at, note)
      return value === undefined ? undefined : turn(value, at)
    },
  }
}

export interface Field<T, R extends boolean = boolean> {
  readonly shape: Shape<T>
  readonly required: R
  /** what the key is for, in a sentence of the reference page */
  readonly help: string
}

export type Fields = {readonly [key: string]: Field<unknown>}

export const required = <T>(shape: Shape<T>, help: string): Field<T, true> => ({shape, help, required: true})
export const optional = <T>(shape: Shape<T>, help: string): Field<T, false> => ({shape, help, required: false})

type Simplify<T> = {[K in keyof T]: T[K]}
export type Read<F extends Fields> = Simplify<
  {readonly [K in keyof F as F[K] extends Field<unknown, true> ? K : never]: F[K] extends Field<infer T> ? T : never} &
  {readonly [K in keyof F as F[K] extends Field<unknown, true> ? never : K]?: F[K] extends Field<infer T> ? T : never} &
  // where it stands, unless a key of the record itself is called `at`
  ('at' extends keyof F ? unknown : {readonly at: Spot})
>

/** A word of a keeper's own as a key (a trait's id), its text, and where it stands. */
export type Others = readonly Entry<string>[]

interface ObjectRules<F extends Fields> {
  /** keys beyond the listed ones are taken as text (traits, notes); linking finds out whether they name something */
  readonly others?: string
  /** a check over the whole object, once its parts have been read */
  readonly check?: (value: Read<F>, note: Note, at: Spot) => void
}

/** Known keys with values. An unknown key is a slip that names the nearest known one; nothing is dropped but what is `private`. */
export function object<const F extends Fields>(says: string, fields: F, rules: ObjectRules<F> & {readonly others: string}): Shape<Read<F> & {readonly others: Others}>
export function object<const F extends Fields>(says: string, fields: F, rules?: ObjectRules<F>): Shape<Read<F>>
export function object<const F extends Fields>(says: string, fields: F, rules: ObjectRules<F> = {}): Shape<Read<F> & {readonly others?: Others}> {
  const known = Object.keys(fields)
  /** Where keys of the keeper's own are taken, a text is held for one unless only its capitals are wrong, or a needful key is missing for it. */
  const likelyKeys = (key: string, inner: Raw, raw: RawMap): readonly string[] => near(key, known).filter(name =>
    rules.others === undefined || typeof inner !== 'string' || name === key.toLowerCase() || (key.length > 2 && fields[name]?.required === true && !Object.hasOwn(raw, name)))
  return {
    says,
    fields,
    schema: {
      type: 'object',
      description: says,
      properties: {[PRIVATE]: anything.schema, ...Object.fromEntries(known.map(key => [key, {...fields[key]!.shape.schema, description: fields[key]!.help}]))},
      required: known.filter(key => fields[key]!.required),
      additionalProperties: rules.others === undefined ? false : {...ANY_SCALAR, description: rules.others},
    },
    read(raw, at, note) {
      if (!isMap(raw)) return noteForm(raw, says, at, note)
      const value: Record<string, unknown> = Object.hasOwn(fields, 'at') ? {} : {at}
      const others: Entry<string>[] = []
      let whole = true
      const cuts = isTop(at) ? [] : cutTexts(raw, key => key === PRIVATE || Object.hasOwn(fields, key))
      // a needful key that stands here under a mistyped name is not also missing
      const mistyped = new Set<string>()
      for (const [key, inner] of Object.entries(raw)) {
        const field = Object.hasOwn(fields, key) ? fields[key] : undefined
        const spot = inside(at, key)
        const cut = cuts.find(one => one.key === key)
        if (cut) noteCut(cut, at, note)
        if (cuts.some(({pieces}) => pieces.includes(key)) || (!field && key === PRIVATE)) continue
        if (key === BRACES_AS_KEY) noteBraces(spot, note)
        else if (field) {
          const read = field.shape.read(inner, spot, cut ? unheard : note)
          if (read !== undefined) value[key] = read
          else if (field.required) whole = false
        } else if (meansPrivate(key)) noteMeantPrivate(key, says, at, note)
        else if (inner === null && !isTop(at)) noteKeyAlone(key, at, note, 'give the key a value, or take it out')
        else {
          const likely = likelyKeys(key, inner, raw)
          likely.slice(0, 1).forEach(name => mistyped.add(name))
          if (rules.others === undefined || likely.length > 0) {
            note({code: 'unknown-key', severity: 'error', at: keyOf(at, key), reason: `${says} has no key “${key}”`, remedy: orNear(likely, `use one of ${known.join(', ')}`)})
          } else if (typeof inner === 'string') others.push({key, value: inner, at: spot, keyAt: keyOf(at, key)})
          else noteForm(inner, rules.others, spot, note)
        }
      }
      for (const key of known) {
        if (fields[key]!.required && !Object.hasOwn(raw, key)) {
          whole = false
          if (!mistyped.has(key)) note({code: 'missing-key', severity: 'error', at, reason: `${says} needs “${key}”`, remedy: `add ${key}: ${fields[key]!.shape.says}`})
        }
      }
      if (rules.others !== undefined) value.others = others
      if (!whole) return undefined
      const result = value as Read<F>
      // what a key that could not be read would have said is no second fault
      const unread = known.some(key => Object.hasOwn(raw, key) && value[key] === undefined)
      if (!unread) rules.check?.(result, note, at)
      return result
    },
  }
}

const isTop = (at: Spot) => 'path' in at && at.path.length === 0

/** Anything at all, unread: what stands under `private:`. */
export const anything: Shape<Raw> = {says: 'anything', schema: {}, read: raw => raw ?? ''}
