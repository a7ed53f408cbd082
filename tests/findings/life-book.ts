/** Books drawn by chance with settings of several pens, lives of every kind, egg and feed sheets with gaps, and care. */
import fc from 'fast-check'
import type {Bird, CareEntry, EggCount, Feeding, Hatch, Leaving, Logbook, Pen} from '../../src/logbook/book.ts'
import {CARE_KINDS} from '../../src/logbook/book.ts'
import {isoDay} from '../../src/records/dates.ts'
import {at, bird, date, F1, F2, hatch, logbook, parents, pen, stay, tally} from '../pages/small-logbook.ts'

const HOW: readonly Leaving['how'][] = ['died', 'culled', 'sold', 'given', 'lent', 'lost', 'taken']

const life = fc.record({left: fc.option(fc.record({how: fc.constantFrom(...HOW), age: fc.nat(200), dated: fc.boolean()}), {nil: null}), sex: fc.constantFrom('male', 'female', 'unknown'), firstEgg: fc.option(fc.integer({min: 120, max: 260}), {nil: null}), grams: fc.array(fc.integer({min: 40, max: 3000}), {maxLength: 2})} as const)
const setting = fc.record({pen: fc.nat(3), eggs: fc.option(fc.nat(20), {nil: null}), clear: fc.option(fc.nat(4), {nil: null}), germ: fc.option(fc.nat(3), {nil: null}), shell: fc.option(fc.nat(3), {nil: null}), how: fc.constantFrom('I1', 'I2', 'broody', null), lives: fc.array(life, {maxLength: 9}), unlisted: fc.nat(2), tallied: fc.nat(3), month: fc.integer({min: 2, max: 5})})
const sheetRow = fc.record({day: fc.nat(50), eggs: fc.nat(7), hens: fc.option(fc.nat(5), {nil: null}), days: fc.option(fc.integer({min: 1, max: 8}), {nil: null}), grams: fc.option(fc.integer({min: 30, max: 70}), {nil: null})})
const fed = fc.record({day: fc.nat(50), grams: fc.nat(9000), left: fc.option(fc.nat(9000), {nil: null})})

export const lifeBook: fc.Arbitrary<Logbook> = fc.record({
  settings: fc.array(setting, {maxLength: 8}), hens: fc.nat(4), sheets: fc.array(fc.tuple(fc.nat(3), fc.array(sheetRow, {maxLength: 12})), {maxLength: 3}), ofHens: fc.array(fc.array(sheetRow, {maxLength: 9}), {maxLength: 3}),
  feeds: fc.array(fc.tuple(fc.boolean(), fc.nat(3), fc.array(fed, {maxLength: 5})), {maxLength: 3}), care: fc.array(fc.record({kind: fc.constantFrom(...CARE_KINDS), day: fc.nat(300), pen: fc.option(fc.nat(3), {nil: null})}), {maxLength: 3}), short: fc.boolean(),
}).map(drawn => {
  const birds: Bird[] = []
  const pens = [[2023, 'A'], [2023, 'B'], [2024, 'A'], [2024, 'B']].map(([season, name], place): Pen => {
    const cock = bird(`M-${place}`, 'male'), hens = Array.from({length: drawn.hens}, (_, number) => bird(`F-${place}-${number}`, 'female', {step: place < 2 ? F1 : F2, hatched: date('2022-04-01')}))
    birds.push(cock, ...hens)
    return pen(`${season}-${name}`, Number(season), {males: [stay(cock)], females: hens.map(hen => stay(hen)), from: date(`${season}-02-01`), to: date(`${season}-06-01`)})
  })
  const hatches = drawn.settings.map((one, number): Hatch => {
    const from = pens[one.pen] ?? pens[0], [sire] = from?.males ?? []
    if (!from || !sire) throw new Error('no pen')
    const on = date(`${from.season}-0${one.month}-1${number}`), step = from.season === 2023 ? F1 : F2
    const made = hatch(`h${number}`, {pens: [{pen: from, eggs: null}], on, step, parentage: parents([[sire.bird, 1]], null), unlisted: one.unlisted, ...(one.how === 'broody' ? {broody: sire.bird} : {machine: one.how}), deadInGerm: one.germ, deadInShell: one.shell, clear: one.clear, eggs: one.eggs, rearing: `h${number}`})
    const chicks = one.lives.map((each, place): Bird => bird(`c${number}-${place}`, each.sex, {
      hatched: on, hatch: made, step, parentage: made.parentage, strain: null, firstEgg: each.firstEgg === null ? null : date(isoDay(on.first + each.firstEgg)),
      left: each.left === null ? null : {how: each.left.how, on: each.left.dated ? date(isoDay(on.first + each.left.age)) : null, why: null},
      weighings: each.grams.map((value, week) => ({measure: 'weight', value, on: date(isoDay(on.first + 56 + 84 * week)), at})),
    }))
    birds.push(...chicks)
    const hatched = chicks.length + one.unlisted + one.tallied
    Object.assign(made, {chicks, tallies: one.tallied === 0 ? [] : [tally(made, one.tallied)], hatched: one.eggs === null || hatched <= one.eggs ? hatched : null})
    return made
  })
  const eggRow = (of: Partial<EggCount>, row: {day: number; eggs: number; hens: number | null; days: number | null; grams: number | null}, year: number): EggCount => ({
    pen: null, bird: null, on: date(isoDay(date(`${year}-02-10`).first + row.day)), eggs: row.eggs, hens: row.hens, ...(row.days === null ? {} : {days: row.days}), ...(row.grams === null || row.eggs === 0 ? {} : {weight: {grams: row.grams * row.eggs, eggs: row.eggs}}), at, ...of,
  })
  const layers = birds.filter(({sex}) => sex === 'female')
  const eggCounts = [
    ...drawn.sheets.flatMap(([place, rows]) => rows.map(row => eggRow({pen: pens[place] ?? null}, row, pens[place]?.season ?? 2024))),
    ...drawn.ofHens.flatMap((rows, place) => (layers[place] ? rows.map(row => eggRow({bird: layers[place] ?? null, hens: null}, row, 2024)) : [])),
  ]
  const feedings = drawn.feeds.flatMap(([ofPen, place, rows]) => {
    const one = ofPen ? pens[place] : hatches[place], begun = ofPen ? date(`${pens[place]?.season ?? 2024}-02-10`).first : (hatches[place]?.on?.first ?? 0) + 50
    return one ? rows.map((row): Feeding => ({pen: ofPen ? pens[place] ?? null : null, hatch: ofPen ? null : hatches[place] ?? null, on: date(isoDay(begun + row.day)), feed: row.grams, ...(row.left === null ? {} : {left: row.left}), at})) : []
  })
  const care = drawn.care.map(({kind, day, pen: place}, number): CareEntry => ({at, body: '', id: `care-${number}`, care: kind, on: date(isoDay(date('2023-02-01').first + day)), to: null, pens: place === null || !pens[place] ? [] : [pens[place]], birds: [], hatches: [], with: null, eggsWithheldUntil: null, meatWithheldUntil: null}))
  for (const each of pens) Object.assign(each, {hatches: hatches.filter(({pens: [from]}) => from?.pen === each)})
  return logbook(drawn.short ? '2024-06-15' : '2025-06-01', {birds, pens, hatches, eggCounts, feedings, care})
})
