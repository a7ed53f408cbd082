/** Scoring days: what the keepers wrote down of grown birds, on the weigh day, again in autumn, and of shells in spring. */
import {daysBetween, plusDays} from './calendar.ts'
import {firstEgg} from './breeders.ts'
import {marksOf} from './choosing.ts'
import {AS_OF} from './fates.ts'
import type {DrawnBird, Flock} from './flock.ts'
import {seenNeatness, shellColour, tailAngle, trueComb, trueGround, trueSkin, typeMark} from './looks.ts'
import {thereOn, weighDay} from './measures.ts'
import {goneBy} from './notebook.ts'
import type {Choices} from './seasons.ts'

const SIGNS: Readonly<Record<string, string>> = {kelpgarth: 'inga', ternhouse: 'rasmus', wadderness: 'dagny'}

const table = (rows: readonly (readonly string[])[]) => rows.map(row => row.join(',')).join('\n') + '\n'

/** Type, comb and tail at twenty weeks. The tail was first measured in 2023. */
export function scoringSheets(flock: Flock): Map<string, string> {
  const sheets = new Map<string, string[][]>()
  for (const hatch of flock.hatches.values()) {
    const {keeper, id, strain} = hatch.plan
    const year = Number(hatch.on.slice(0, 4))
    const day = weighDay(flock, hatch)
    if (year < 2021 || day > AS_OF || strain !== undefined || hatch.banded.length === 0 || ['2021-05', '2023-06'].includes(id)) continue
    const withTail = year >= 2023
    const name = `scores/${year}-${keeper}.csv`
    const rows = sheets.get(name) ?? [['band', 'on', 'by', 'comb-neatness', 'type', ...(withTail ? ['tail-angle'] : []), 'struck']]
    for (const {id: band} of hatch.banded) {
      const bird = flock.bird(band)
      if (!thereOn(bird, day) || bird.looks.comb !== 'pea') continue
      const marks = marksOf(flock, bird)
      rows.push([band, day, SIGNS[keeper] ?? '', trueComb(bird.genes) === 'pea' ? marks.neatness : '', String(marks.type), ...(withTail ? [String(marks.tail)] : []), ''])
    }
    sheets.set(name, rows)
  }
  return new Map([...sheets].map(([name, rows]) => [name, table(rows)]))
}

/** Birds chosen in October are looked at once more, by the other keeper. What was wrong at first is put right. */
export function autumnSheets(flock: Flock, choices: Choices): Map<string, string> {
  const sheets = new Map<string, string>()
  for (const year of [2022, 2023, 2024, 2025]) {
    const day = `${year}-10-${year === 2023 ? '14' : '18'}`
    const rows = [...flock.birds.values()].filter(bird => bird.hatch?.on.startsWith(String(year)) && bird.hatch.plan.strain === undefined && bird.hatch.plan.id !== '2023-06' && thereOn(bird, day) && daysBetween(bird.hatched, day) >= 140 && (choices.kept.has(bird.id) || wrongAtFirst(bird)))
      .map(bird => {
        const chance = flock.chance(`autumn ${bird.id}`)
        const comb = trueComb(bird.genes)
        return [bird.id, day, bird.hatch?.plan.keeper === 'kelpgarth' ? 'rasmus' : 'inga', comb, comb === 'pea' ? seenNeatness(bird.genes, chance) : '', trueSkin(bird.genes), trueGround(bird.genes), String(typeMark(bird.genes, chance)), year >= 2023 ? String(tailAngle(bird.genes, bird.sex, chance)) : '']
      })
    sheets.set(`scores/${year}-autumn.csv`, table([['band', 'on', 'by', 'comb', 'comb-neatness', 'skin', 'ground', 'type', 'tail-angle'], ...rows]))
  }
  return sheets
}

function wrongAtFirst(bird: DrawnBird): boolean {
  return bird.looks.comb !== undefined && bird.looks.comb !== trueComb(bird.genes)
}

/** Comb scored at three weeks, in the kitchen, by lamplight: four singles that were none. Struck out in June. */
export function earlyCombs(flock: Flock): Map<string, string> {
  const hatch = flock.hatches.get('2022-01')
  const day = plusDays(hatch?.on ?? '2022-03-27', 20)
  const birds = (hatch?.banded ?? []).map(({id}) => flock.bird(id)).filter(bird => thereOn(bird, day))
  const wrong = birds.filter(bird => trueComb(bird.genes) === 'pea').slice(0, 4)
  return new Map([['scores/2022-early-combs.csv', table([['band', 'on', 'by', 'comb', 'struck'], ...wrong.map(bird => [bird.id, day, 'inga', 'single', 'too early to tell'])])]])
}

/** The cock of pen 2022-C, looked at again in the sun after his gold daughters. */
export function brassyCock(flock: Flock): Map<string, string> {
  const band = flock.pens.get('2022-C')?.males[0]?.band ?? ''
  return new Map([['scores/2022-ground.csv', table([['band', 'on', 'by', 'ground'], [band, '2022-06-18', 'rasmus', 'brassy']])]])
}

/** The yellow chicks of the closed line that were yellow indeed, looked at again by the other keeper a week before they went. */
export function yellowAgain(flock: Flock): Map<string, string> {
  const years = new Map<string, string[][]>()
  for (const bird of flock.birds.values()) {
    const {hatch} = bird
    if (!hatch || hatch.on < '2024' || hatch.plan.strain !== undefined || bird.looks.skin !== 'yellow' || trueSkin(bird.genes) !== 'yellow') continue
    const day = plusDays(hatch.on, 63), year = hatch.on.slice(0, 4)
    if (thereOn(bird, day)) years.set(year, [...years.get(year) ?? [], [bird.id, day, hatch.plan.keeper === 'kelpgarth' ? 'rasmus' : 'inga', 'yellow']])
  }
  return new Map([...years].map(([year, rows]) => [`scores/${year}-yellow.csv`, table([['band', 'on', 'by', 'skin'], ...rows])]))
}

/** Shells of hens in the pens, held beside the same card each spring; the young hens of 2025 in October. */
export function shellSheets(flock: Flock, choices: Choices): Map<string, string> {
  const sheets = new Map<string, string>()
  const days: readonly (readonly [season: number, day: string])[] = [[2022, '2022-03-20'], [2023, '2023-03-25'], [2024, '2024-03-23'], [2025, '2025-04-05'], [2026, '2025-10-19']]
  for (const [season, day] of days) {
    const rows = [...choices.kept].flatMap(([band, keptFor]): string[][] => {
      const bird = flock.bird(band)
      const egg = firstEgg(flock, bird)
      if (keptFor !== season || bird.sex === 'male' || egg === null || egg.slice(0, 7) >= day.slice(0, 7) || band.startsWith('H') || goneBy(band, day)) return []
      return [[band, day, SIGNS[bird.hatch?.plan.keeper ?? ''] ?? 'inga', shellColour(bird.genes, flock.chance(`shell ${band}`))]]
    })
    sheets.set(`scores/${day.slice(0, 7)}-shells.csv`, table([['band', 'on', 'by', 'shell'], ...rows.sort((a, b) => ((a[0] ?? '') < (b[0] ?? '') ? -1 : 1))]))
  }
  return sheets
}

const SCALE = ['Type and carriage', 'Colour and markings', 'Head and comb', 'Legs and feet', 'Size and weight', 'Condition', 'Closeness of feather']

/** Points by the scale of draft 5, six days old: not drawn but written by hand, after what was scored of these birds two days before. */
const POINTS: readonly (readonly string[])[] = [
  ['25-101', '2025-10-20', 'inga', '5', '28', '18', '10', '9', '8', '9', '4', ''],
  ['25-102', '2025-10-20', 'inga', '5', '28', '18', '14', '9', '8', '9', '5', ''],
  ['25-104', '2025-10-20', 'inga', '5', '21', '17', '14', '9', '7', '8', '4', ''],
  ['25-105', '2025-10-19', 'inga', '5', '26', '15', '10', '9', '8', '6', '4', 'wet through, scored again the next day'],
  ['25-105', '2025-10-20', 'inga', '5', '26', '18', '10', '9', '8', '8', '4', ''],
  ['25-115', '2025-10-20', 'inga', '5', '27', '18', '11', '9', '9', '9', '5', ''],
  ['25-202', '2025-10-20', 'inga', '5', '25', '18', '14', '9', '8', '9', '5', ''],
  ['25-204', '2025-10-20', 'inga', '5', '18', '17', '10', '9', '7', '8', '4', ''],
  ['25-210', '2025-10-20', 'inga', '5', '25', '18', '14', '9', '6', '8', '5', ''],
  ['25-005', '2025-10-20', 'rasmus', '5', '27', '18', '11', '9', '8', '9', '4', ''],
  ['25-008', '2025-10-20', 'rasmus', '5', '28', '17', '14', '9', '8', '9', '5', ''],
  ['25-101', '2025-10-20', 'rasmus', '5', '28', '17', '11', '9', '8', '9', '4', ''],
]

export function pointsSheet(): Map<string, string> {
  const quoted = POINTS.map(row => row.map(cell => (cell.includes(',') ? `"${cell}"` : cell)))
  return new Map([['scores/2025-10-points.csv', table([['band', 'on', 'by', 'draft', ...SCALE, 'struck'], ...quoted])]])
}
