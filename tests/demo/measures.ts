/** Weigh days, egg and feed records as tables: three keepers, three habits (grams, kilograms with a comma, pounds and ounces). */
import {daysBetween, plusDays} from './calendar.ts'
import {marksOf} from './choosing.ts'
import {AS_OF} from './fates.ts'
import type {DrawnBird, DrawnHatch, Flock} from './flock.ts'
import {goneBy} from './notebook.ts'
import type {Choices} from './seasons.ts'

/** The day a hatch was weighed: about twenty weeks, on a free day. */
export function weighDay(flock: Flock, hatch: DrawnHatch): string {
  return plusDays(hatch.on, 140 + flock.chance(`weigh ${hatch.plan.id}`).whole(-4, 5))
}

export const thereOn = (bird: DrawnBird, day: string) => bird.hatched < day && (bird.left === null || bird.left.on > day)

const tens = (grams: number) => Math.round(grams / 10) * 10

function poundsAndOunces(grams: number): string {
  const ounces = Math.round(grams / 28.349523125)
  return ounces % 16 === 0 ? `${ounces / 16} lb` : `${Math.floor(ounces / 16)} lb ${ounces % 16} oz`
}

/** How each keeper writes a weight. In 2022 the scales at Ternhouse read pounds; the 2023 sheet of Kelpgarth came out of a spreadsheet with commas. */
function habit(year: number, keeper: string): {heading: string; cell: (grams: number) => string} {
  if (year === 2022 && keeper === 'ternhouse') return {heading: 'weight', cell: poundsAndOunces}
  if (year === 2023 && keeper === 'kelpgarth') return {heading: 'weight (kg)', cell: grams => (tens(grams) / 1000).toFixed(2).replace('.', ',')}
  return {heading: 'weight (g)', cell: grams => String(tens(grams))}
}

function table(rows: readonly (readonly string[])[], separator = ','): string {
  return rows.map(row => row.join(separator)).join('\n') + '\n'
}

/** Twenty-week weights, one sheet a year and keeper. */
export function weighSheets(flock: Flock): Map<string, string> {
  const sheets = new Map<string, (readonly string[])[]>()
  for (const hatch of flock.hatches.values()) {
    const {keeper} = hatch.plan
    const year = Number(hatch.on.slice(0, 4))
    const day = weighDay(flock, hatch)
    if (day > AS_OF || hatch.banded.length === 0) continue
    const {heading, cell} = habit(year, keeper)
    const name = `measures/${year}-weights-${keeper}.csv`
    const rows = sheets.get(name) ?? [['band', 'on', heading]]
    for (const {id: band} of hatch.banded) {
      const bird = flock.bird(band)
      const chance = flock.chance(`scale ${band}`)
      if (!thereOn(bird, day) || chance.happens(0.03)) continue
      rows.push([band, day, cell(bird.grams20)])
    }
    sheets.set(name, rows)
  }
  return new Map([...sheets].map(([name, rows]) => [name, table(rows, rows[0]?.[2] === 'weight (kg)' ? ';' : ',')]))
}

/** Breeders weighed in March, at about a year. */
export function grownSheets(flock: Flock, choices: Choices): Map<string, string> {
  const sheets = new Map<string, string>()
  for (const year of [2022, 2023, 2024, 2025]) {
    const day = `${year}-${year === 2024 ? '04-06' : '03-29'}`
    const rows = [...choices.kept].flatMap(([band, season]): string[][] => {
      const bird = flock.bird(band)
      if (season !== year || !thereOn(bird, day) || goneBy(band, day) || bird.id.startsWith('H') || daysBetween(bird.hatched, day) < 310) return []
      return [[band, day, String(tens(marksOf(flock, bird).gramsGrown))]]
    })
    sheets.set(`measures/${year}-weights-grown.csv`, table([['band', 'on', 'weight (g)'], ...rows.sort((a, b) => ((a[0] ?? '') < (b[0] ?? '') ? -1 : 1))]))
  }
  return sheets
}

/** Chicks weighed by the box at eight weeks: no bands were read that day. */
export function boxWeighing(flock: Flock): Map<string, string> {
  const rows: string[][] = []
  for (const id of ['2023-02', '2023-04']) {
    const hatch = flock.hatches.get(id)
    if (!hatch) continue
    const day = plusDays(hatch.on, 56)
    const chance = flock.chance(`box ${id}`)
    for (const {id: band} of hatch.banded) {
      const bird = flock.bird(band)
      if (thereOn(bird, day)) rows.push([id, day, chance.happens(0.8) ? bird.sex : 'unknown', String(tens(bird.grams20 * 0.36 * (1 + 0.05 * chance.normal())))])
    }
  }
  return new Map([['measures/2023-chicks-eight-weeks.csv', table([['hatch', 'on', 'sex', 'weight (g)'], ...rows])]])
}

/** Eggs of pen 2024-A day by day in March, weighed on Saturdays and not counted while the keeper was away; of pen 2024-B week by week; and of the hens on trial in November 2024 one by one. */
export function eggSheets(flock: Flock): Map<string, string> {
  const hensOf = (pen: string) => flock.pens.get(pen)?.females.length ?? 0
  const away = new Set(['2024-03-18', '2024-03-19'])
  const ofPen = Array.from({length: 31}, (_, index) => plusDays('2024-03-01', index)).filter(day => !away.has(day)).map(day => {
    const chance = flock.chance(`eggs ${day}`), hens = hensOf('2024-A')
    const eggs = Array.from({length: hens}, () => chance.happens(0.7)).filter(Boolean).length
    return ['2024-A', day, String(eggs), String(hens), daysBetween('2024-03-02', day) % 7 === 0 ? String(weightOfEggs(flock, day, eggs)) : '']
  })
  const ofB = Array.from({length: 6}, (_, week) => plusDays('2024-03-02', week * 7)).map(day => {
    const chance = flock.chance(`eggs B ${day}`), hens = hensOf('2024-B')
    const eggs = Array.from({length: hens * 7}, () => chance.happens(0.64)).filter(Boolean).length
    return ['2024-B', day, String(eggs), String(hens)]
  })
  const trial = flock.hatches.get('2025-01')?.plan.from['2025-T'] ?? {}
  const ofHens = Object.entries(typeof trial === 'number' ? {} : trial).flatMap(([hen, set]) => {
    const chance = flock.chance(`nest ${hen}`)
    const days = Array.from({length: 15}, (_, index) => plusDays('2024-11-23', index))
    const laidOn = new Set(chance.some(days, set + chance.whole(0, 3)))
    return days.map(day => [hen, day, laidOn.has(day) ? '1' : '0'])
  })
  return new Map([
    ['measures/2024-eggs-pen-A.csv', table([['pen', 'on', 'eggs', 'hens', 'weight (g)'], ...ofPen])],
    ['measures/2024-eggs-pen-B.csv', table([['pen', 'on', 'eggs', 'hens'], ...ofB])],
    ['measures/2024-eggs-trial-hens.csv', table([['band', 'on', 'eggs'], ...ofHens])],
  ])
}

/** What the eggs of a day weighed together, in grams. */
function weightOfEggs(flock: Flock, day: string, eggs: number): number {
  const chance = flock.chance(`egg weights ${day}`)
  return Math.round(Array.from({length: eggs}, () => 56.5 * (1 + 0.06 * chance.normal())).reduce((sum, grams) => sum + grams, 0))
}

/** Feed put into the hoppers, by pen and week; in April what was left was weighed first. And that of the growers of 2023-02 from eight weeks on, by the fortnight. */
export function feedSheets(flock: Flock): Map<string, string> {
  const ofPens = ['2024-A', '2024-B'].flatMap(pen => Array.from({length: 6}, (_, week) => {
    const day = plusDays('2024-03-02', week * 7)
    const birds = (flock.pens.get(pen)?.females.length ?? 0) + 1
    const feed = birds * 7 * 0.128 * (1 + 0.06 * flock.chance(`feed ${pen} ${day}`).normal())
    return [pen, day, feed.toFixed(1), week < 4 ? '' : (0.2 + 0.1 * flock.chance(`left ${pen} ${day}`).whole(0, 6)).toFixed(1)]
  }))
  const growers = flock.hatches.get('2023-02')
  const fortnights = growers ? Array.from({length: 7}, (_, index) => plusDays(growers.on, 56 + 14 * index)) : []
  const ofGrowers = fortnights.map((day, index) => {
    const there = [...(growers?.banded ?? []), ...(growers?.tallied ?? [])].filter(bird => thereOn(bird, day)).length
    return ['2023-02', day, (there * 14 * (0.072 + 0.006 * index) * (1 + 0.04 * flock.chance(`growers ${day}`).normal())).toFixed(1)]
  })
  return new Map([
    ['measures/2024-feed.csv', table([['pen', 'on', 'feed (kg)', 'left (kg)'], ...ofPens])],
    ['measures/2023-feed-growers.csv', table([['hatch', 'on', 'feed (kg)'], ...ofGrowers])],
  ])
}
