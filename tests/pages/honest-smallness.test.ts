/** Three birds, one hatch, all weights equal, no males, no eggs: what little there is, every page says what it can, and prints no nonsense. */
import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {EVENNESS_QUESTIONS, scoresTable, trendTable, changeTable} from '../../src/findings/evenness-figures.ts'
import {FIGURE_QUESTIONS, figuresTable, type FiguresTable} from '../../src/findings/figures.ts'
import {study, type Findings} from '../../src/findings/study.ts'
import {VIGOUR_QUESTIONS, vigourTable} from '../../src/findings/vigour-figures.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {drawnBook} from '../findings/drawn-book.ts'
import {drawnFlock} from '../findings/vigour-book.ts'
import {siteOf, type Block} from './site-blocks.ts'
import {bird, comb, date, F2, hatch, logbook, looks, pen, score, stay, parents, weight} from './small-logbook.ts'

const number = (text = ''): number => Number(text.replace('−', '-').replace(/,/g, ''))
/** `12.3 to 45.6`, `12.3–45.6`, `−3 to 4`: limits as pages print them, one decimal or a whole number */
const LIMITS = /([−-]?\d+(?:\.\d+)?)%?(?: to |–)([−-]?\d+(?:\.\d+)?)(?=[\s).,;%]|$)/g
/** a share with its limits, in a sentence, a row or a stat */
const SHARE_WITH_LIMITS = /(\d+\.\d) ?%?[,:]? ?\(?(\d+\.\d)(?: to |–)(\d+\.\d)\)?/g
const COUNTED = /\d+ of \d+|of \d+\b|\d (?:of \d+ )?(?:birds?|banded birds?|chicks?|eggs?|hens?|cocks?|pullets?|cockerels?|genes?|pairs?)\b/

function faultsOf({page, text}: Block): string[] {
  const said = (fault: string) => [`${page}: ${fault}: ${text.slice(0, 300)}`]
  const limits = [...text.matchAll(LIMITS)].filter(([, low, high]) => low?.includes('.') && high?.includes('.'))
  const shares = [...text.matchAll(SHARE_WITH_LIMITS)].filter(() => /%/.test(text) || /^\D*\d+\.\d \d/.test(text))
  return [
    ...(/\bNaN\b|\bInfinity\b|∞|\bundefined\b|\bnull\b|\[object|-0\.0\b|−0\.0+\b(?!\d)/.test(text) ? said('nonsense') : []),
    ...limits.flatMap(([whole, low, high]) => (number(low) <= number(high) ? [] : said(`limits the wrong way round, ${whole}`))),
    ...shares.flatMap(([whole, value, low, high]) => (number(low) <= number(value) && number(value) <= number(high) ? [] : said(`a value outside its limits, ${whole}`))),
    ...shares.flatMap(([whole, , , high]) => (number(high) <= 100 || /CV/.test(text) ? [] : said(`a share over all, ${whole}`))),
    ...(shares.length > 0 && !COUNTED.test(text) ? said('a share without its count') : []),
  ]
}

/** Numbers that are none, anywhere in what charts would draw. */
function unsound(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path}: ${value}`]
  if (typeof value === 'string') return /\bNaN\b|\bundefined\b|\[object/.test(value) ? [`${path}: ${value}`] : []
  return value !== null && typeof value === 'object' ? Object.entries(value).flatMap(([key, each]) => unsound(each, `${path}.${key}`)) : []
}

function tablesOf(findings: Findings): readonly (readonly [string, FiguresTable])[] {
  const reached = findings.ladder.flatMap(step => (step.kind === 'reached' ? [step] : [])), [from, to] = reached.slice(-2)
  return [
    ...FIGURE_QUESTIONS.map(question => [question, figuresTable(question, findings)] as const), ...VIGOUR_QUESTIONS.map(question => [question, vigourTable(question, findings)] as const),
    ['trend', trendTable(findings)], ['scores', scoresTable(findings.gradedScores)], ...(from && to ? [['change', changeTable(findings.change(from, to))] as const] : []),
  ]
}

/** columns that tell how many stand behind a row */
const COUNTS = /^(n|count|total|all|birds|chicks|eggs|fertile|hatched|passes|fails|families|from_total|cross_birds|both|pairs|.*_total|.*_count)$/

function faultsOfTable(question: string, {columns, rows}: FiguresTable): string[] {
  const names = columns.map(({name}) => name), pairs = names.flatMap((name, low) => (/(^|_)low$/.test(name) && name !== 'published_low' ? [[low, names.indexOf(name.replace(/low$/, 'high'))] as const] : []))
  return rows.flatMap(row => {
    const said = (fault: string) => [`figures ${question}: ${fault}: ${JSON.stringify(Object.fromEntries(row.flatMap((cell, place) => (cell === null ? [] : [[names[place] ?? '', cell]]))))}`]
    const limited = pairs.some(([low]) => row[low] !== null)
    return [
      ...row.flatMap((cell, place) => (typeof cell === 'number' && !Number.isFinite(cell) ? said(`${names[place]} is ${cell}`) : [])),
      ...row.flatMap((cell, place) => (columns[place]?.as === 'count' && typeof cell === 'number' && !(Number.isInteger(cell) && cell >= 0) ? said(`${names[place]} is no count`) : [])),
      ...pairs.flatMap(([low, high]) => (Number(row[low]) <= Number(row[high]) + 1e-12 ? [] : said(`${names[low]} above ${names[high]}`))),
      ...(limited && question !== 'birds' && question !== 'kinship' && !names.some((name, place) => COUNTS.test(name) && Number(row[place]) > 0) ? said('limits without a count') : []),
    ]
  })
}

async function faults(book: Logbook): Promise<string[]> {
  const findings = study(book), {blocks, drawn} = await siteOf(findings)
  expect(blocks.length).toBeGreaterThan(100)
  return [...new Set([...blocks.flatMap(faultsOf), ...drawn.flatMap(spec => unsound(spec)), ...tablesOf(findings).flatMap(([question, table]) => faultsOfTable(question, table))])]
}

const FLOCKS = 6, SEED = 20_230_420
const SPRING = date('2023-04-20')
/** One hatch of a cock and a hen, in a pen of the year. */
function oneHatch(sexes: readonly ('male' | 'female')[], grams: (place: number) => number | null, more: Partial<Logbook['hatches'][number]> = {}): Logbook {
  const cock = bird('H-1', 'male'), hen = bird('H-2', 'female'), parentage = parents([[cock, 1]], hen)
  const made = hatch('2023-01', {on: SPRING, step: F2, eggs: sexes.length + 2, hatched: sexes.length, rearing: 'I1', parentage, ...more})
  const chicks = sexes.map((sex, place) => bird(`23-00${place}`, sex, {
    hatched: SPRING, hatch: made, step: F2, strain: null, parentage, looks: looks(score(comb, 'pea')),
    weighings: grams(place) === null ? [] : [{measure: 'weight', value: grams(place) ?? 0, on: {text: '', first: SPRING.first + 140, last: SPRING.first + 140}, at: made.at}],
  }))
  const hatches = [Object.assign(made, {chicks})]
  return logbook('2025-06-01', {traits: [comb, weight], birds: [cock, hen, ...chicks], hatches, pens: [pen('2023-A', 2023, {males: [stay(cock)], females: [stay(hen)], hatches})]})
}

const NAMED: readonly (readonly [string, () => Logbook])[] = [
  ['three birds and one hatch', () => oneHatch(['male', 'female', 'female'], place => 1800 + 50 * place)],
  ['all weights equal', () => oneHatch(Array.from({length: 12}, (_, place) => (place % 2 ? 'female' : 'male')), () => 2000)],
  ['no males', () => oneHatch(['female', 'female', 'female', 'female', 'female', 'female'], place => 1900 + 20 * place)],
  ['nobody weighed, no egg counted', () => oneHatch(['male', 'female'], () => null, {eggs: null})],
  ['a hatch of which every egg was clear', () => oneHatch([], () => null, {eggs: 8, hatched: 0, clear: 8})],
  ['no eggs', () => oneHatch([], () => null, {eggs: 0, hatched: 0, clear: 0})],
]

describe('every page and every table of figures', () => {
  it.each(NAMED)('says what it can of %s', async (_, book) => {
    expect(await faults(book())).toEqual([])
  })

  // sampled and not asserted by fast-check: to print a book that fails takes longer than all the rest
  it.each(fc.sample(fc.oneof(drawnBook, drawnFlock), {numRuns: FLOCKS, seed: SEED}).map((book, place) => [place, book] as const))('says what it can of small flock %i', async (_, book) => {
    expect(await faults(book)).toEqual([])
  })

  it('covers every question but those that must be told what they are asked of', () => {
    const asked = tablesOf(study(oneHatch(['male'], () => 1))).map(([question]) => question)
    expect([...asked, 'change'].sort()).toEqual(expect.arrayContaining([...FIGURE_QUESTIONS, ...VIGOUR_QUESTIONS, ...EVENNESS_QUESTIONS].sort()))
  })
})
