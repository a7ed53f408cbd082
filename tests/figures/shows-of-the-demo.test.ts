/** The demo's shows twice: by `figures shows`, and by a twin that reads the same files with none of the project's code and lays out every order. */
import {readFileSync, readdirSync} from 'node:fs'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {parse} from 'csv-parse/sync'
import {describe, expect, it} from 'vitest'
import {figures} from '../../src/commands/figures.ts'
import {expectClose} from '../expect-close.ts'
import {listeningWorld} from '../folders/listening-world.ts'
import {ordersOf} from '../statistics/every-order.ts'
import {plain, recordsOf} from './plain-reading.ts'

type Cells = Readonly<Record<string, string>>

const CONTENT = fileURLToPath(new URL('../../content', import.meta.url))
const filesOf = (folder: string): [string, string][] => readdirSync(join(CONTENT, folder)).map(name => [`${folder}/${name}`, readFileSync(join(CONTENT, folder, name), 'utf8')])
const table = (text: string): Cells[] => parse<Cells>(text, {columns: true, skip_empty_lines: true})

interface Entry {
  readonly show: string
  readonly on: string
  readonly bird: string
  readonly class: string
  readonly judge: string
  readonly place: number
  readonly of: number
}

const shows = recordsOf(new Map(filesOf('shows')), 'shows')
const entries = [...shows].filter(([, {cancelled}]) => cancelled === undefined).flatMap(([show, {on, entries: all}]) => plain.list(all).map(plain.map).map((each): Entry => {
  const [place, of] = (plain.text(each.result) ?? '').split(' of ').map(Number)
  return {show, on: plain.text(on) ?? '', bird: plain.text(each.bird) ?? '', class: plain.text(each.class) ?? '', judge: plain.text(each.judge) ?? '', place: place ?? NaN, of: of ?? NaN}
}))

/** The last mark for type from before a day, by the tables alone. */
const marks = filesOf('scores').flatMap(([, text]) => table(text)).filter(row => (row.type ?? '') !== '' && (row.struck ?? '') === '')
const markOf = (bird: string, day: string): number | null => {
  const own = marks.filter(row => row.band === bird && (row.on ?? '') < day).sort((a, b) => ((a.on ?? '') < (b.on ?? '') ? -1 : 1)).at(-1)
  return own ? Number(own.type) : null
}

const groups = [...new Set(entries.map(each => `${each.show} ${each.class} ${each.judge}`))].map(key => entries.filter(each => `${each.show} ${each.class} ${each.judge}` === key)
  .flatMap(({bird, on, place}) => {
    const mark = markOf(bird, on)
    return mark === null ? [] : [{bird, place, mark}]
  })).filter(({length}) => length > 1)

const score = (placed: readonly {readonly place: number; readonly mark: number}[]): number =>
  placed.reduce((sum, one, at) => sum + placed.slice(at + 1).reduce((all, other) => all + Math.sign(other.place - one.place) * Math.sign(one.mark - other.mark), 0), 0)

type Class = (typeof groups)[number]

/** Classes that share a bird, or are joined by others that do. */
const joined = groups.reduce<Class[][]>((parts, placed) => {
  const own = parts.filter(part => part.flat().some(({bird}) => placed.some(other => other.bird === bird)))
  return [...parts.filter(part => !own.includes(part)), [...own.flat(), placed].sort((a, b) => groups.indexOf(a) - groups.indexOf(b))]
}, [])

/** Every way to deal the birds' marks out among them, each bird's own as one: in a class it did not stand in, those of the one before it, else of the next. */
function everyDeal(classes: readonly Class[]): readonly number[] {
  const birds = [...new Set(classes.flat().map(({bird}) => bird))]
  const lots = birds.map(bird => {
    const own = classes.map(placed => placed.find(each => each.bird === bird)?.mark ?? null)
    return own.map((mark, at) => mark ?? own.slice(0, at).findLast(each => each !== null) ?? own.slice(at).find(each => each !== null) ?? NaN)
  })
  return ordersOf(birds.map((_, at) => at)).map(deal => classes.reduce((sum, placed, at) => sum + score(placed.map(({bird, place}) => ({place, mark: lots[deal[birds.indexOf(bird)] ?? 0]?.[at] ?? NaN}))), 0))
}

describe('the shows of the demo', () => {
  const world = listeningWorld()
  expect(figures({question: 'shows', folder: CONTENT, format: 'csv', asOf: undefined, quiet: true}, world)).toBe(0)
  const rows = table(world.said.out)

  it('have a row for each entry, with its place', () => {
    const found = rows.filter(({what}) => what === 'entry')
    expect(found.map(({show, bird, class: name, place, of}) => [show, bird, name, Number(place), Number(of)])).toEqual(entries.map(each => [each.show, each.bird, each.class, each.place, each.of]))
    expect(found.map(({records}) => records)).toEqual(entries.map(({show}) => `shows/${show}.md`))
    found.forEach(({relative_place: relative}, at) => { expectClose(Number(relative), ((entries[at]?.of ?? NaN) - (entries[at]?.place ?? NaN)) / ((entries[at]?.of ?? NaN) - 1), 1e-9) })
  })

  it('keep each that was cancelled', () => {
    expect(rows.filter(({what}) => what === 'cancelled').map(({show}) => show)).toEqual([...shows].filter(([, {cancelled}]) => cancelled !== undefined).map(([show]) => show))
  })

  it('have the judges’ order of type against our marks, and chance by every way to deal them out', () => {
    const found = rows.find(({what, mark, judge}) => what === 'order' && mark === 'type' && judge === 'all')
    const pairs = groups.flatMap(placed => placed.flatMap((one, at) => placed.slice(at + 1).map(other => Math.sign(other.place - one.place) * Math.sign(one.mark - other.mark))))
    const same = pairs.filter(sign => sign > 0).length, other = pairs.filter(sign => sign < 0).length
    expect([Number(found?.pairs), Number(found?.same), Number(found?.other_way)]).toEqual([pairs.length, same, other])
    // no place was shared, so only our own level marks take from one of the two
    expectClose(Number(found?.value), (same - other) / Math.sqrt(pairs.length * (same + other)), 1e-12)
    let chances = new Map([[0, 1]])
    for (const classes of joined) {
      const scores = everyDeal(classes), next = new Map<number, number>()
      for (const [sum, chance] of chances) for (const more of scores) next.set(sum + more, (next.get(sum + more) ?? 0) + chance / scores.length)
      chances = next
    }
    expectClose(Number(found?.p), [...chances].reduce((sum, [at, chance]) => sum + (Math.abs(at) >= Math.abs(same - other) ? chance : 0), 0), 1e-9)
  })
})
