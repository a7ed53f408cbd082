import {existsSync, readdirSync, readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {openBook} from '../../src/commands/open-book.ts'
import {drawnFiles, truth, withBody} from './draw.ts'
import {drawSeasons} from './seasons.ts'
import {trueComb, trueGround, trueSkin} from './looks.ts'
import {SEED} from './seed.ts'

const CONTENT = new URL('../../content/', import.meta.url)
const textOf = (name: string) => (existsSync(new URL(name, CONTENT)) ? readFileSync(new URL(name, CONTENT), 'utf8') : null)
const drawn = drawnFiles()
const {flock} = drawSeasons(SEED)
const chicks = [...flock.hatches.values()].flatMap(hatch => [...hatch.banded, ...hatch.tallied])
const of = (...pens: string[]) => chicks.filter(chick => chick.pen !== null && pens.includes(chick.pen))

describe('the drawn records of the demo', () => {
  it('stand in content/ as they were drawn', () => {
    const other = [...drawn].filter(([name, text]) => {
      const there = textOf(name)
      return there !== (name.endsWith('.md') ? withBody(text, there) : text)
    })
    expect(other.map(([name]) => name)).toEqual([])
  })

  it('leave no pen, hatch, bird or table in content/ that was not drawn', () => {
    const there = ['birds', 'pens', 'hatches', 'measures', 'scores'].flatMap(folder => readdirSync(new URL(folder, CONTENT)).map(name => `${folder}/${name}`))
    expect(there.filter(name => !drawn.has(name))).toEqual([])
  })

  it('come from the true genotypes in truth.json', () => {
    expect(readFileSync(new URL('truth.json', import.meta.url), 'utf8')).toBe(truth())
  })

  it('read without an error', () => {
    const quiet = {phase: () => undefined, at: () => undefined, end: () => undefined, timings: new Map<string, number>()}
    const {problems} = openBook(CONTENT.pathname, undefined, quiet)
    expect(problems.filter(problem => problem.severity === 'error')).toEqual([])
  })
})

describe('the genes that were dropped', () => {
  // common practice, no source: what a keeper expects of these crosses (1:1, 1:1 and 3:1), here within three standard errors
  it('give half pea in the crosses back and three quarters in the first mating inside the line', () => {
    const share = (pens: string[]) => of(...pens).filter(chick => trueComb(chick.genes) === 'pea').length / of(...pens).length
    const back = ['2021-A', '2021-B', '2022-A', '2022-B', '2022-C', '2023-A', '2023-B']
    expect(Math.abs(share(back) - 1 / 2)).toBeLessThan(3 * Math.sqrt(0.25 / of(...back).length))
    const inside = ['2024-A', '2024-B', '2024-C']
    expect(Math.abs(share(inside) - 3 / 4)).toBeLessThan(3 * Math.sqrt(0.1875 / of(...inside).length))
  })

  it('make every F1 pea, white, and silver or brassy', () => {
    expect(new Set(of('2020-A').map(({genes, sex}) => `${sex} ${trueComb(genes)} ${trueSkin(genes)} ${trueGround(genes)}`)))
      .toEqual(new Set(['male pea white brassy', 'female pea white silver']))
  })

  it('give gold daughters only under a crossed or a brassy cock', () => {
    const gold = chicks.filter(({genes}) => trueGround(genes) === 'gold')
    expect(new Set(gold.map(({pen}) => pen))).toEqual(new Set(['2021-B', '2022-C']))
  })

  it('let yellow skin come up first in the matings inside the line', () => {
    const yellow = chicks.filter(({genes}) => trueSkin(genes) === 'yellow').map(({pen}) => pen?.slice(0, 4))
    expect(yellow.length).toBeGreaterThan(1)
    expect(yellow.every(season => season === '2024' || season === '2025')).toBe(true)
  })
})
