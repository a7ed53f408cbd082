/** Where each way of mating would take the flock, bred on as it stands: drawn as lines over ten seasons, with a table, and what rotating males can and cannot do. */
import {hasRows, type Rows} from '../charts/chart-spec.ts'
import {courses, type Course} from '../charts/courses.ts'
import {SEASONS, type ForecastOfSystem, type Rotation, type SystemName} from '../findings/rotation.ts'
import type {Findings} from '../findings/study.ts'
import {MALES, penPath, ROTATION} from './links.ts'
import {counted, countWord, figured, listWords, percent, percentSign, saying, sentence} from './numbers.ts'
import type {Cell, Figure, Page, Table} from './page.ts'

export interface RotationView {
  readonly lead: string
  readonly wanting: string
  readonly answer: readonly string[]
  readonly start: readonly string[]
  readonly pens: Table | null
  readonly ways: readonly {readonly title: string; readonly words: string}[]
  readonly figures: readonly Figure[]
  readonly summary: Table | null
  readonly passing: readonly string[]
  readonly males: string
}

const WAYS: Readonly<Record<SystemName, {readonly short: string; readonly title: string; readonly words: string}>> = {
  clans: {short: 'clans', title: 'Clans', words: 'Every chick belongs to its dam’s pen. Daughters stay; each season the males go one pen on, in the order of the pens below and from the last to the first, so that none is mated in the pen it comes from.'},
  flock: {short: 'one flock', title: 'One flock', words: 'All males with all hens, and nobody looks who is kin to whom.'},
  'closed pens': {short: 'closed pens', title: 'Closed pens', words: 'Each pen is bred from itself alone. It stands here so that its price is seen; it is not recommended.'},
  rolling: {short: 'rolling', title: 'Rolling', words: 'Two pens: young males go to the hens, last year’s males to the pullets, and both serve two years.'},
  'rolling apart': {short: 'rolling apart', title: 'Rolling apart', words: 'The same, with pullets kept from the pullets’ pen only, so that no cock meets his own daughters.'},
}

/** Heads of a table that a phone shows whole. */
const NARROW: Readonly<Record<string, string>> = {'one flock': 'flock', 'closed pens': 'closed', 'rolling apart': 'apart'}

function courseFigure({systems, season, limit}: Rotation, of: 'inbreeding' | 'kinship', head: string): Figure | null {
  const list = systems.flatMap(({system, course}): Course[] => {
    const points = course.map(each => each[of])
    return hasRows(points) ? [{name: WAYS[system].short, points}] : []
  })
  if (!hasRows(list)) return null
  const f = of === 'inbreeding', first = season + 1
  const ends = (value: (points: Rows<number>) => number): string => listWords(list.map(({name, points}) => `${name} ${percentSign(value(points))}`))
  return {
    kind: 'figure', id: f ? 'inbreeding' : 'kinship', name: f ? 'ways-of-mating-inbreeding' : 'ways-of-mating-kinship', head,
    title: f ? 'Mean F of each season’s chicks, by way of mating' : 'Mean kinship of each season’s chicks, by way of mating',
    caption: f ? `Mean F of the chicks to be expected, %, ${countWord(SEASONS)} seasons ahead.${limit === null ? '' : ` Dotted: the project’s limit for one mating, ${percentSign(limit)}.`}`
      : 'Mean kinship of two chicks, %. It goes on rising where F stands still for a season: a fall in F alone is not proof of progress.',
    description: `In ${first}: ${ends(points => points[0])}. In ${first + SEASONS - 1}: ${ends(points => points.at(-1) ?? 0)}.`,
    spec: courses(list, first, f && limit !== null ? {value: limit, words: 'limit'} : null),
    table: {
      columns: [{head: 'Year'}, ...list.map(({name}) => ({head: sentence(NARROW[name] ?? name), number: true}))],
      rows: Array.from({length: SEASONS}, (_, place): readonly Cell[] => [String(first + place), ...list.map(({points}) => percent(points[place] ?? 0))]),
    },
  }
}

function summary({systems, limit, season}: Rotation): Table {
  const last = season + SEASONS
  // the same year of every way is told once, in words
  const years = limit !== null && new Set(systems.map(({passes}) => passes)).size > 1
  return {
    columns: [{head: 'Way'}, {head: `F ${season + 1}, %`, number: true}, {head: `F ${last}, %`, number: true}, {head: 'Lost a season, %', number: true}, {head: `Kinship ${last}, %`, number: true}, ...(years ? [{head: 'Passes the limit', number: true}] : [])],
    rows: systems.map(({system, course, passes, rate}): readonly Cell[] => [
      sentence(WAYS[system].short), percent(course[0]?.inbreeding ?? 0), percent(course.at(-1)?.inbreeding ?? 0), percent(rate), percent(course.at(-1)?.kinship ?? 0), ...(years ? [passes === null ? 'not yet' : String(passes)] : []),
    ]),
  }
}

/** Which way has the least F at the end and which the least kinship, the sizes that it is reckoned with, and whose males go where if they are moved on. */
function answer({systems, season, pens, rolling}: Rotation): readonly string[] {
  const endOf = (of: 'inbreeding' | 'kinship') => ({course}: ForecastOfSystem): number => course.at(-1)?.[of] ?? 0
  const inOrder = (of: 'inbreeding' | 'kinship', list: readonly ForecastOfSystem[]): string =>
    listWords([...list].sort((a, b) => endOf(of)(a) - endOf(of)(b)).map(each => `${WAYS[each.system].short} ${percentSign(endOf(of)(each))}`))
  const open = systems.filter(({system}) => system !== 'closed pens'), order = pens.map(({pen}) => pen.id)
  const closed = systems.find(({system}) => system === 'closed pens'), last = season + SEASONS
  return [
    `By F of the chicks in ${last}, the least first: ${inOrder('inbreeding', open)}.${closed ? ` Avoid closed pens: ${percentSign(endOf('inbreeding')(closed))}.` : ''}`,
    ...(open.length > 1 ? [`By kinship of two chicks, which is where F goes later: ${inOrder('kinship', open)}.${closed ? ` Closed pens have ${percentSign(endOf('kinship')(closed))}, being strange to each other while each is inbred.` : ''}`] : []),
    `Reckoned with ${listWords(pens.map(({pen, males, females}) => `${figured(males.length, 'male')} and ${figured(females.length, 'female')} ${pens.length === 1 ? 'in' : 'of'} pen ${pen.id}`))}, and as many every season${rolling ? `; in rolling pens ${figured(rolling.cockerels, 'cockerel')} with ${figured(rolling.hens, 'hen')} and ${figured(rolling.cocks, 'cock')} with ${figured(rolling.pullets, 'pullet')}` : ''}.`,
    ...(systems.some(({system}) => system === 'clans') ? [`Clans, next season: ${listWords(order.map((id, place) => `the males of pen ${id} to the hens of ${order[(place + 1) % order.length] ?? ''}`))}. Which of them is the least kin there, and which is to be kept out:`] : []),
  ]
}

/** Which passes the limit for one mating when, and which keeps to that for a generation. */
function passing({systems, limit, season, ruleOfThumb, males, females}: Rotation, perGeneration: number | null): readonly string[] {
  const names = (list: readonly ForecastOfSystem[]): string => listWords(list.map(({system}) => WAYS[system].short))
  const byYear = [...new Set(systems.map(({passes}) => passes))].sort((a, b) => (a ?? Infinity) - (b ?? Infinity))
  const slow = perGeneration === null ? [] : systems.filter(({rate}) => rate <= perGeneration + 1e-12)
  return [
    ...(limit === null ? ['The project states no limit for one mating, so none is drawn.'] : systems.every(({passes}) => passes === season + 1)
      ? [`${systems.length === 1 ? 'It passes' : 'Every way passes'} the limit of ${percentSign(limit)} with the first chicks, in ${season + 1}: the birds are as close kin as that today.${systems.length === 1 ? '' : ' What differs is how fast it goes on.'}`]
      : byYear.map(year => (year === null ? `${sentence(names(systems.filter(({passes}) => passes === null)))} stays within ${percentSign(limit)} through ${season + SEASONS}.` : `${sentence(names(systems.filter(({passes}) => passes === year)))}: past ${percentSign(limit)} in ${year}.`))),
    ...(perGeneration === null ? [] : [slow.length === 0 ? `None keeps to the ${percentSign(perGeneration)} a generation that the project allows: with ${figured(males, 'male')} and ${figured(females, 'female')} it cannot be had by mating rules alone. More males would do most.`
      : `To the ${percentSign(perGeneration)} a generation that the project allows ${slow.length === 1 ? 'keeps' : 'keep'}: ${names(slow)}.`]),
    `By rule of thumb as many unrelated birds mated at random lose ${percentSign(ruleOfThumb)} a generation: an eighth divided by the males, and an eighth divided by the females.`,
  ]
}

function start({pens, males, females, leftOut, season, systems}: Rotation): readonly string[] {
  const say = saying(males, females, pens.length)
  return [
    `It begins with ${say(males, 'male')} and ${say(females, 'female')} of the new breed in ${say(pens.length, 'pen')} of ${season}, as kin to each other as they are. A bird kept for breeding and not penned yet counts to the pen it was hatched from.${leftOut > 0 ? ` ${sentence(counted(leftOut, 'more breeder belongs', 'more breeders belong'))} to none of these pens and ${leftOut === 1 ? 'is' : 'are'} left out.` : ''}`,
    'Nobody comes in from outside; every season as many males and hens are kept of each pen as now, drawn by chance, a year to a season. Real flocks, with unequal families and with selection, do somewhat worse than these means.',
    ...(systems.some(({system}) => system === 'clans') ? [] : ['With one pen there are no clans and nothing to move on.']),
    ...(systems.some(({system}) => system === 'rolling') ? [] : ['Rolling pens need two males and two females or more.']),
  ]
}

const NO_PENS = 'No pen of the latest season holds a living male and a living female of the new breed. Once one does, the ways of mating are worked from there.'

export function rotationPage({rotation, book}: Findings): Page {
  const view: RotationView = {
    lead: `If the flock is bred on as it stands, how closely bred will it be in ${countWord(SEASONS)} seasons?`, wanting: rotation ? '' : NO_PENS, answer: rotation ? answer(rotation) : [], start: rotation ? start(rotation) : [],
    pens: rotation && {
      ...(rotation.pens.length > 1 ? {caption: 'In the order that males would move'} : {}), columns: [{head: 'Pen'}, {head: 'Males', number: true}, {head: 'Females', number: true}],
      rows: rotation.pens.map(({pen, males, females}): readonly Cell[] => [{text: pen.id, link: penPath(pen)}, String(males.length), String(females.length)]),
    },
    ways: rotation ? rotation.systems.map(({system}) => ({title: WAYS[system].title, words: WAYS[system].words})) : [],
    figures: rotation ? [courseFigure(rotation, 'inbreeding', 'Figure 1.'), courseFigure(rotation, 'kinship', 'Figure 2.')].filter(figure => figure !== null) : [],
    summary: rotation && summary(rotation), passing: rotation ? passing(rotation, book.project.limits.inbreedingPerGeneration) : [], males: MALES,
  }
  return {path: ROTATION, template: 'rotation', title: 'Ways of mating', section: 'pens', view, search: {kind: 'index', words: 'ways of mating rotation clans spiral rolling pens closed flock forecast inbreeding'}}
}

