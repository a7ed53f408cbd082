import type {Share} from './estimate.ts'
import type {FeedUse} from './feed-use.ts'
import type {FigureColumn, FiguresTable} from './figures.ts'
import type {FirstEggs} from './first-eggs.ts'
import type {Growth} from './growth-of-groups.ts'
import type {EggsSpeakOf, HatchComparison, HatchShare, ResultsOfGroup} from './hatch-comparisons.ts'
import type {Lay, LayComparison, LaySpeaksOf} from './lay.ts'
import type {LifeComparison, LifeOfChicks} from './livability-of-groups.ts'
import type {RearedAlike} from './reared-alike.ts'
import type {Findings} from './study.ts'

/** The questions of `pinfeather figures` about hatch, life and lay. */
export const LIFE_QUESTIONS = ['lay'] as const
export type LifeQuestion = (typeof LIFE_QUESTIONS)[number]

const NAMES = ['what', 'of', 'name', 'against', 'sex', 'age', 'value', 'low', 'high', 'unit', 'count', 'total', 'left_out', 'groups', 'missing_days', 'speaks_of', 'verdict', 'kept_alike', 'unlike', 'method'] as const
type Row = Partial<Record<(typeof NAMES)[number], string | number | null>>

const SHARES = new Set<unknown>(['share', 'points', 'eggs of a hen in a day'])
const columns = (as: FigureColumn['as'], ...names: string[]): FigureColumn[] => names.map(name => ({name, as}))
const inUnit = (...names: string[]): FigureColumn[] => names.map(name => ({name, as: 'measure', asIn: row => (SHARES.has(row[NAMES.indexOf('unit')]) ? 'share' : 'measure')}))

export const WHAT_HATCHED: Readonly<Record<HatchShare, string>> = {fertility: 'fertility', hatchOfFertile: 'hatch of fertile', hatchOfSet: 'hatch of set'}
const EGGS: Readonly<Record<EggsSpeakOf, string>> = {families: 'eggs bred like these', settings: 'settings of these birds', 'these-eggs': 'these eggs only'}
const CHICKS = {families: 'chicks bred like these', 'these-chicks': 'these chicks only'} as const
const HENS: Readonly<Record<LaySpeaksOf, string>> = {hens: 'hens like these', pens: 'pens like these', 'these-hens': 'these hens only', mixed: 'pens and hens mixed'}
const asides = ({leftOut}: Pick<Share, 'leftOut'>): number => leftOut.reduce((sum, {count}) => sum + count, 0)
const alike = ({verdict, unlike}: RearedAlike): Row => ({kept_alike: {alike: 'yes', 'not-alike': 'no', 'not-told': 'not told'}[verdict], unlike: unlike.map(({what}) => what).join(' ') || null})
const plainly = (verdict: string): string => verdict.replaceAll('-', ' ')

function hatchedRows({group, rates, shares}: ResultsOfGroup): Row[] {
  const shape = {of: group.by, name: group.name, unit: 'share'}
  return [
    ...shares.flatMap(({what, share, drawn, drawnBy, speaksOf, families, settings, days}): Row[] => (share.kind === 'cannot-say' ? [] : [{
      ...shape, what: WHAT_HATCHED[what], value: share.value, low: (drawn ?? share.interval).low, high: (drawn ?? share.interval).high, count: share.count, total: share.total, left_out: asides(share),
      groups: drawnBy === 'days' ? days : speaksOf === 'families' ? families : settings, speaks_of: EGGS[speaksOf], method: drawnBy ? `${drawnBy} drawn whole` : share.method,
    }])),
    ...([['dead in germ', rates.germDeath], ['dead in shell', rates.shellDeath]] as const).flatMap(([what, share]): Row[] => (share.kind === 'cannot-say' ? []
      : [{...shape, what, value: share.value, low: share.interval.low, high: share.interval.high, count: share.count, total: share.total, left_out: asides(share), speaks_of: EGGS['these-eggs'], method: share.method}])),
  ]
}

function hatchDifference({pair, what, one, plain, drawn, drawnBy, speaksOf, verdict, alike: kept}: HatchComparison): Row {
  const read = drawn ?? plain
  return {
    what: WHAT_HATCHED[what], of: pair.one.by, name: pair.one.name, against: pair.other.name, value: read.difference, low: read.low, high: read.high, unit: 'points', count: one.k, total: one.n, speaks_of: EGGS[speaksOf],
    verdict: plainly(verdict), ...alike(kept), method: drawnBy ? `Newcombe, ${drawnBy} drawn whole` : 'Newcombe’s hybrid score interval',
  }
}

function livedRows(of: string, name: string, {ages, undated, unlisted}: LifeOfChicks): Row[] {
  return ages.flatMap(({age, found}): Row[] => (found === null ? [] : [{
    what: 'livability', of, name, age, value: found.share, low: found.low, high: found.high, unit: 'share', count: found.n - found.deaths, total: found.n, left_out: undated + unlisted, groups: found.families, speaks_of: CHICKS[found.kind],
    method: `product limit, ${found.kind === 'families' ? 'families drawn whole' : 'Rothman'}; ${found.left} left alive before`,
  }]))
}

function lifeDifference({pair, age, one, difference, speaksOf, verdict, alike: kept}: LifeComparison): Row {
  return {
    what: 'livability', of: pair.one.by, name: pair.one.name, against: pair.other.name, age, value: difference.difference, low: difference.low, high: difference.high, unit: 'points', count: one.n - one.deaths, total: one.n, groups: one.families,
    speaks_of: CHICKS[speaksOf], verdict: plainly(verdict), ...alike(kept), method: 'product limits, joined',
  }
}

function laidRows(of: string, name: string, lay: Lay): Row[] {
  const {henDay, henHoused, eggWeight, eggs, henDays, unclear, missing, speaksOf} = lay, shape = {of, name, missing_days: missing}
  return [
    {...shape, what: 'hen-day', value: henDay.ratio, low: henDay.interval?.low ?? null, high: henDay.interval?.high ?? null, unit: 'eggs of a hen in a day', count: eggs, total: henDays, left_out: unclear, groups: henDay.parts, speaks_of: henDay.interval && HENS[speaksOf], method: 'ratio, Student'},
    ...(henHoused ? [{...shape, what: 'hen-housed', value: henHoused.eggs, unit: 'eggs of a hen', count: eggs, total: henHoused.hens, left_out: unclear, method: 'eggs by hens at the start'}] : []),
    ...(eggWeight ? [{...shape, what: 'egg weight', value: eggWeight.ratio, low: eggWeight.interval?.low ?? null, high: eggWeight.interval?.high ?? null, unit: 'g', total: eggWeight.eggs, groups: eggWeight.parts, speaks_of: eggWeight.interval && HENS[eggWeight.speaksOf], method: 'ratio, Student'}] : []),
  ]
}

function layDifference({one, other, kind, difference, speaksOf, verdict, alike: kept}: LayComparison): Row {
  const part = kind === null ? '' : `, ${kind}`
  return {
    what: 'hen-day', of: one.by, name: `${one.name}${part}`, against: `${other.name}${part}`, value: difference?.difference ?? null, low: difference?.low ?? null, high: difference?.high ?? null, unit: 'eggs of a hen in a day', count: one.eggs, total: one.henDays,
    speaks_of: difference && HENS[speaksOf], verdict: difference ? plainly(verdict) : 'too few sheets', ...alike(kept), method: 'ratios, joined',
  }
}

const firstEgg = ({by, name, hens, mean, interval, notWritten}: FirstEggs): Row => ({what: 'age at first egg', of: by, name, sex: 'female', value: mean, low: interval?.low ?? null, high: interval?.high ?? null, unit: 'days', total: hens, left_out: notWritten, method: 'mean, Student'})

function grownRows(of: string, name: string, growth: readonly Growth[]): Row[] {
  return growth.flatMap(({sex, points, gains}) => [
    ...points.map(({age, n, mean, interval}): Row => ({what: 'weight', of, name, sex, age, value: mean, low: interval?.low ?? null, high: interval?.high ?? null, unit: 'g', total: n, method: 'mean, Student'})),
    ...gains.map(({to, birds, perDay, interval}): Row => ({what: 'gain a day', of, name, sex, age: to, value: perDay, low: interval?.low ?? null, high: interval?.high ?? null, unit: 'g', total: birds, method: birds === 0 ? 'of the means' : 'of birds weighed twice'})),
  ])
}

function fedRows({pen, hatch, eaten, birdDays, perBirdDay, ofEggs, ofGain}: FeedUse): Row[] {
  const shape = {of: pen ? 'pen' : 'hatch', name: pen?.id ?? hatch?.id ?? null, method: 'given less left, one observation'}
  return [
    {...shape, what: 'feed', value: eaten, unit: 'g', total: birdDays}, ...(perBirdDay === null ? [] : [{...shape, what: 'feed of a bird in a day', value: perBirdDay, unit: 'g', total: birdDays}]),
    ...(ofEggs ? [{...shape, what: 'feed for an egg', value: ofEggs.perEgg, unit: 'g', total: ofEggs.eggs}, ...(ofEggs.conversion === null ? [] : [{...shape, what: 'feed to egg', value: ofEggs.conversion, unit: 'by weight', total: ofEggs.eggs}])] : []),
    ...(ofGain ? [{...shape, what: 'feed to gain', value: ofGain.conversion, unit: 'by weight', total: ofGain.weighed, left_out: ofGain.unlisted}] : []),
  ]
}

/** Hatching of every group and its differences, then livability, lay, first eggs, growth and feed. */
function lay({life}: Findings): FiguresTable {
  const rows: readonly Row[] = [
    ...life.hatching.flatMap(hatchedRows), ...life.hatchComparisons.map(hatchDifference),
    ...life.livability.groups.flatMap(one => livedRows(one.group.by, one.group.name, one)), ...[...life.livability.hatches].flatMap(([hatch, one]) => livedRows('hatch', hatch.id, one)), ...life.livability.comparisons.map(lifeDifference),
    ...life.lay.groups.flatMap(one => [one, ...one.kinds].flatMap(each => laidRows(one.by, each === one ? one.name : `${one.name}, ${each.of}`, each))), ...life.lay.sheets.flatMap(one => one.sheets.flatMap(({pen, bird}) => laidRows(pen ? 'pen' : 'hen', pen?.id ?? bird?.id ?? '', one))), ...life.lay.comparisons.map(layDifference),
    ...life.firstEggs.map(firstEgg), ...[...life.growth.hatches].flatMap(([hatch, growth]) => grownRows('hatch', hatch.id, growth)), ...life.growth.pens.flatMap(({group, growth}) => grownRows('pen', group.name, growth)), ...life.feed.flatMap(fedRows),
  ]
  return {
    columns: [
      ...columns('text', 'what', 'of', 'name', 'against', 'sex'), ...columns('measure', 'age'), ...inUnit('value', 'low', 'high'), ...columns('text', 'unit'), ...columns('count', 'count', 'total', 'left_out', 'groups', 'missing_days'),
      ...columns('text', 'speaks_of', 'verdict', 'kept_alike', 'unlike', 'method'),
    ],
    rows: rows.map(row => NAMES.map(name => row[name] ?? null)),
  }
}

const TABLES: Readonly<Record<LifeQuestion, (findings: Findings) => FiguresTable>> = {lay}

export const lifeTable = (question: LifeQuestion, findings: Findings): FiguresTable => TABLES[question](findings)
