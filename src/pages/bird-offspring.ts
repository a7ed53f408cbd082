/** A bird's chicks, hatch by hatch: how many are listed, with whom, and how many only may be its own. And its hatch mates. */
import type {Bird} from '../logbook/book.ts'
import {dateShort} from './dates.ts'
import {birdPath, hatchPath} from './links.ts'
import {counted, listWords, NOTHING, saying, sentence} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import type {Offspring} from './records-by-bird.ts'

/** The other parents of a bird's chicks in one hatch, each once. */
function mates(bird: Bird, chicks: readonly Bird[]): readonly Bird[] {
  const others = chicks.flatMap(chick => chick.parentage.pairs.flatMap(pair => (pair.sire === bird ? [pair.dam] : pair.dam === bird ? [pair.sire] : [])))
  return [...new Set(others.filter(other => other !== null))]
}

export function offspringTable(bird: Bird, offspring: readonly Offspring[]): Table | null {
  if (offspring.length === 0) return null
  const uncertain = offspring.some(({possible, talliedPossible}) => possible.length + talliedPossible > 0)
  const rows = offspring.map(({hatch, certain, possible, tallied, talliedPossible}): readonly Cell[] => {
    const others = mates(bird, [...certain, ...possible])
    const [only] = others
    const withWhom: Cell = others.length === 1 && only ? {text: only.band, link: birdPath(only)} : others.length === 0 ? NOTHING : listWords(others.map(each => each.band), 'or')
    const sure = String(certain.length + tallied), maybe = String(possible.length + talliedPossible)
    return [{text: hatch.id, link: hatchPath(hatch)}, hatch.on ? dateShort(hatch.on) : 'not hatched yet', withWhom, sure, ...(uncertain ? [maybe] : [])]
  })
  return {
    columns: [{head: 'Hatch'}, {head: 'Hatched'}, {head: 'With'}, {head: 'Chicks', number: true}, ...(uncertain ? [{head: 'May be its own', number: true}] : [])], rows,
  }
}

/** Its banded chicks that live, the certain ones first, as links. */
export function livingChicks(offspring: readonly Offspring[]): readonly {readonly band: string; readonly link: string; readonly may: boolean}[] {
  const chicks = [...offspring.flatMap(({certain}) => certain.map(bird => ({bird, may: false}))), ...offspring.flatMap(({possible}) => possible.map(bird => ({bird, may: true})))]
  return chicks.filter(({bird}) => bird.left === null).map(({bird, may}) => ({band: bird.band, link: birdPath(bird), may}))
}

const sameSide = (one: readonly {readonly bird: Bird; readonly chance: number}[], other: readonly {readonly bird: Bird; readonly chance: number}[]): boolean =>
  one.length === 1 && other.length === 1 && one[0]?.bird === other[0]?.bird && (one[0]?.chance ?? 0) > 0.9995 && (other[0]?.chance ?? 0) > 0.9995

/** Who hatched beside it: how many, and which are known to be full brothers and sisters. */
export function matesOfHatch(bird: Bird): {readonly words: string; readonly full: readonly {readonly band: string; readonly link: string}[]} | null {
  const {hatch} = bird
  if (!hatch) return null
  const others = hatch.chicks.filter(chick => chick !== bird)
  const tallied = hatch.tallies.reduce((sum, tally) => sum + tally.count, 0)
  const full = others.filter(chick => sameSide(chick.parentage.sires, bird.parentage.sires) && sameSide(chick.parentage.dams, bird.parentage.dams))
  const basket = bird.family === null ? 0 : others.filter(chick => chick.family === bird.family).length
  const say = saying(others.length, tallied)
  const words = [
    `${sentence(say(others.length, 'other banded chick'))}${tallied > 0 ? ` and ${say(tallied, 'unbanded one')}` : ''} came out of the same hatch.`,
    full.length > 0 ? `${sentence(counted(full.length, 'is a full brother or sister', 'are full brothers and sisters'))}, both parents known.`
      : bird.parentage.kind === 'uncertain' ? 'Its parents are not certain, so none can be called a full brother or sister for sure.' : '',
    basket > 0 ? `${sentence(counted(basket, 'shares', 'share'))} its dam, whichever hen she is: they came from one basket (${bird.family ?? ''}).` : '',
  ].filter(part => part !== '').join(' ')
  return {words, full: full.map(chick => ({band: chick.band, link: birdPath(chick)}))}
}
