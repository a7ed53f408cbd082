/** The single values that records are made of, each read from its text. */
import {isoDay, isWhole, parseDate, type Day, type PartialDate} from './dates.ts'
import {isCurly} from './curly-quotes.ts'
import {near, orNear} from './near.ts'
import type {Spot} from './problem.ts'
import {isDoubtful, isUnit, parseNumber, parseQuantity, unitOf, UNITS, type Dimension, type Quantity, type Unit} from './quantities.ts'
import {refuse, scalar, type Refusal, type Shape} from './shape.ts'

/** A word that names something elsewhere, with its place: linking turns it into the thing itself. */
export interface Ref {
  readonly text: string
  readonly at: Spot
}

export const text = (says = 'a text'): Shape<string> => scalar(says, words => (words.trim() === '' ? undefined : words.trim()))

/** The name of another record: a band, a pen, a trait … */
export const reference = (says: string): Shape<Ref> =>
  scalar(says, (words, at) => (words.trim() === '' || isCurly(words) ? undefined : {text: words.trim(), at}))

export const yesNo: Shape<boolean> = scalar(
  'yes or no',
  words => (/^(?:yes|true)$/i.test(words) ? true : /^(?:no|false)$/i.test(words) ? false : undefined),
  {type: ['boolean', 'string'], pattern: '^(yes|no|true|false)$'},
)

export const count: Shape<number> = scalar(
  'a whole number such as 12',
  words => (/^\d+$/.test(words) ? Number(words) : undefined),
  {type: ['integer', 'string'], pattern: String.raw`^\d+$`},
)

export const year: Shape<number> = scalar(
  'a year such as 2024',
  words => {
    if (/^[12]\d{3}$/.test(words)) return Number(words)
    return /^\d+$/.test(words) ? refuse('unreadable-value', `“${words}” is no year`, 'write all four figures, such as 2024') : undefined
  },
  {type: ['integer', 'string'], pattern: String.raw`^[12]\d{3}$`},
)

export const number: Shape<number> = scalar(
  'a number such as 2.5',
  words => parseNumber(words) ?? undefined,
  {type: ['number', 'string']},
)

/** A chance or share, 0 to 1, written as `70%` or `0.7`. */
export const chance: Shape<number> = scalar(
  'a share such as 70% or 0.7',
  words => {
    const match = /^(\d+(?:[.,]\d+)?)\s*(%?)$/.exec(words.trim())
    if (!match) return undefined
    const amount = Number(match[1]!.replace(',', '.')) / (match[2] === '%' ? 100 : 1)
    if (amount <= 1) return amount
    const plain = match[2] === ''
    return refuse('unreadable-value', `“${words}” is more than the whole`, plain && amount < 2 ? `did you mean ${match[1]}% or ${Number((amount * 100).toPrecision(12))}%? A share is at most 100%`
      : plain && amount <= 100 ? `write ${match[1]}%` : 'write a share of at most 100%, such as 70% or 0.7')
  },
  {type: ['string', 'number']},
)

function dateOrRefusal(words: string): PartialDate | Refusal | undefined {
  const bare = words.trim()
  const date = parseDate(bare)
  if (date) return date
  const backwards = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4})$/.exec(bare)
  if (backwards) {
    const [, first = '', second = '', year = ''] = backwards.map(part => part.padStart(2, '0'))
    // 3.4.2024 is a day before its month everywhere; 3/4/2024 depends on the country
    const orders = bare.includes('/') ? [`${year}-${second}-${first}`, `${year}-${first}-${second}`] : [`${year}-${second}-${first}`]
    const meant = [...new Set(orders)].filter(order => parseDate(order) !== null)
    return refuse('unreadable-value', `“${bare}” does not begin with the year`, meant.length === 0 ? 'write a date such as 2024-03-23' : `write ${meant.join(' or ')}`)
  }
  const forwards = /^(\d{4})([-./])(\d{1,2})(?:\2(\d{1,2}))?$/.exec(bare) ?? /^([12]\d{3})()(\d{2})(\d{2})$/.exec(bare)
  if (forwards) {
    const [, year, sign, month = '', day] = forwards
    const written = [year, month.padStart(2, '0'), ...(day === undefined ? [] : [day.padStart(2, '0')])].join('-')
    if (parseDate(written)) return refuse('unreadable-value', sign === '-' ? `“${bare}” lacks a nought` : `“${bare}” has no hyphens between year, month and day`, `write ${written}`)
    if (sign === '-') return refuse('impossible-date', `“${bare}” is not in the calendar`, 'write a date that exists, such as 2024-03-23')
  }
  return undefined
}

const DATE_SCHEMA = {type: ['string', 'integer'], pattern: String.raw`^\d{4}(-\d{2}(-\d{2})?)?$`}

/** `2024`, `2024-04` or `2024-04-12`. */
export const date: Shape<PartialDate> = scalar('a date such as 2024-03-23, 2024-03 or 2024', dateOrRefusal, DATE_SCHEMA)

/** A date to the day. */
export const wholeDate: Shape<PartialDate> = scalar(
  'a date to the day such as 2024-03-23',
  words => {
    const read = dateOrRefusal(words)
    if (read === undefined || 'refused' in read) return read
    return isWhole(read) ? read : refuse('unreadable-value', `“${words}” names no day, and one is needed here`, `write the day too, such as ${isoDay(read.first)}`)
  },
  DATE_SCHEMA,
)

/** `2024-02-20..2024-03-01`, or one day. */
export const period: Shape<{readonly from: Day; readonly to: Day}> = scalar(
  'a time such as 2024-02-20..2024-03-01',
  words => {
    const [start, end = start, ...more] = words.split('..').map(part => part.trim())
    if (more.length > 0) return undefined
    const from = dateOrRefusal(start ?? '')
    const to = dateOrRefusal(end ?? '')
    if (from === undefined || to === undefined) return undefined
    if ('refused' in from) return from
    if ('refused' in to) return to
    return to.last < from.first
      ? refuse('impossible-date', `“${words}” ends before it begins`, 'put the earlier day first')
      : {from: from.first, to: to.last}
  },
)

/** A length of time in days: `6 weeks`, `10 days`, `5 months` (of 30 days), `1 year`. */
export const age: Shape<number> = scalar(
  'a time such as 6 weeks or 10 days',
  words => {
    const match = /^(\d+(?:[.,]\d+)?)\s*(days?|weeks?|months?|years?)$/.exec(words.trim())
    if (!match) {
      return /^\d+$/.test(words) ? refuse('wrong-unit', `“${words}” says neither days nor weeks`, `write ${words} days or ${words} weeks`) : undefined
    }
    const days = {d: 1, w: 7, m: 30, y: 365}[match[2]![0] as 'd' | 'w' | 'm' | 'y']
    return Number(match[1]!.replace(',', '.')) * days
  },
)

/** An amount of a stated kind; a bare number is refused, since nobody can tell its unit later. */
export const quantity = (dimension: Dimension, example: string): Shape<Quantity> =>
  scalar(`an amount such as ${example}`, words => {
    const read = parseQuantity(words)
    if (read === null) return undefined
    const units = (Object.keys(UNITS) as Unit[]).filter(name => UNITS[name].of === dimension)
    if ('unknownUnit' in read) return refuse('wrong-unit', `“${read.unknownUnit}” is no unit known here`, orNear(near(read.unknownUnit, units), `use one of ${units.join(', ')}`))
    if (read.parts.some(part => part.unit === null)) return refuse('wrong-unit', `“${words}” has no unit`, `write the unit too, such as ${example}`)
    if (isDoubtful(read)) return refuse('unreadable-value', `“${words}” can be read in two ways`, `write ${twoWays(words)}`)
    return read.parts.every(part => part.unit !== null && UNITS[part.unit].of === dimension)
      ? read
      : refuse('wrong-unit', `“${words}” is not a ${dimension}`, `use one of ${units.join(', ')}, such as ${example}`)
  })

/** The two ways of `1,200 g`. */
export const twoWays = (words: string): string => `${words.replace(/[.,]/, '')} or ${words.replace(/[.,](\d+?)0*(?=\D|$)/, '.$1')}`

/** The unit a trait is kept in. */
export const unit: Shape<Unit> = scalar(
  'a unit such as g, kg, mm or degrees',
  words => unitOf(words.trim()) ?? refuse('wrong-unit', `“${words}” is no unit known here`, orNear(near(words, Object.keys(UNITS)), `use one of ${Object.keys(UNITS).filter(isUnit).join(', ')}`)),
)

export interface Told {
  readonly on: PartialDate | null
  readonly words: string
}

/** A date, if known, and words after it: `2024-10-01 for breeding, best keel of her hatch`. */
export function datedWords(words: string): Told | Refusal | undefined {
  const told = words.trim()
  const [, dateWords, rest = ''] = /^(\d{4}(?:-\d{1,2}){0,2})(?![\w./-])[\s,;:]*(.*)$/s.exec(told) ?? []
  if (dateWords === undefined) {
    const [first = ''] = told.split(/[\s,;:]/)
    const looksLikeDate = /^(?:\d{4}-\d|\d{1,4}([./-])\d{1,2}\1\d)/.test(first)
    if (!looksLikeDate) return told === '' ? undefined : {on: null, words: told}
    const refusal = dateOrRefusal(first)
    return refusal !== undefined && 'refused' in refusal ? refusal : undefined
  }
  const on = dateOrRefusal(dateWords)
  return on === undefined || 'refused' in on ? on : {on, words: rest}
}
