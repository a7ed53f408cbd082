/** Books drawn by chance for laws and slow twins: any mixture of steps, sexes, scores, weighings, leavings, tallies and chicks nobody listed. */
import fc from 'fast-check'
import type {Bird, Hatch, Logbook, Look, Sex, Step, Tally, Trait} from '../../src/logbook/book.ts'
import {bird, comb, date, F1, F2, fell, hatch, holm, logbook, looks, score, stay, strainStep, pen, tally, trait, weight} from '../pages/small-logbook.ts'

export const BC1: Step = {label: 'BC1', kind: 'backcross', to: holm, strains: [holm, fell], backcrosses: 1, interSe: 0, depth: 2}
export const STEPS: readonly Step[] = [F1, F2, BC1, strainStep(holm)]

export const skin: Trait = trait('skin', 'Skin', {
  states: ['white', 'yellow'], wanted: {male: {kind: 'states', states: ['white']}, female: {kind: 'states', states: ['white']}}, required: true,
})
export {comb, weight}

const SEXES: readonly Sex[] = ['male', 'female', 'unknown']

const chick = fc.record({
  sex: fc.constantFrom(...SEXES), step: fc.nat(STEPS.length - 1), comb: fc.constantFrom('pea', 'single', null, 'struck'), skin: fc.constantFrom('white', 'yellow', null),
  grams: fc.option(fc.integer({min: 900, max: 3200})), off: fc.integer({min: -14, max: 14}), left: fc.option(fc.integer({min: 0, max: 300})), kept: fc.boolean(),
})
const setting = fc.record({
  step: fc.nat(STEPS.length - 1), chicks: fc.array(chick, {maxLength: 22}), unlisted: fc.nat(4), machine: fc.constantFrom('I1', 'I2', null), month: fc.integer({min: 2, max: 5}),
  year: fc.integer({min: 2022, max: 2024}), clear: fc.option(fc.nat(6)), extra: fc.nat(9), eggsKnown: fc.boolean(),
  tallies: fc.array(fc.record({count: fc.nat(9), comb: fc.constantFrom('pea', 'single', null), sex: fc.constantFrom(...SEXES), left: fc.boolean()}), {maxLength: 3}),
})

const pad = (number: number, digits: number): string => String(number).padStart(digits, '0')

function looksOf(drawn: {readonly comb: string | null; readonly skin?: string | null}): Map<Trait, Look> {
  return looks(
    ...(drawn.comb === 'struck' ? [score(comb, 'single', {struck: 'too early'})] : drawn.comb === null ? [] : [score(comb, drawn.comb)]),
    ...(drawn.skin ? [score(skin, drawn.skin)] : []),
  )
}

/** A book of some settings, each of one rearing or of a machine's day shared with others. */
export const drawnBook: fc.Arbitrary<Logbook> = fc.array(setting, {minLength: 1, maxLength: 7}).map(settings => {
  const cock = bird('H-1', 'male'), hen = bird('B-1', 'female')
  const birds: Bird[] = [cock, hen]
  const hatches: Hatch[] = settings.map((drawn, number) => {
    const step = STEPS[drawn.step] ?? F1, on = date(`${drawn.year}-${pad(drawn.month, 2)}-1${number}`)
    const parentage = {kind: 'known', pairs: [{sire: cock, dam: hen, chance: 1}], sires: [{bird: cock, chance: 1}], dams: [{bird: hen, chance: 1}]} as const
    const half = new Map([[holm, 0.5], [fell, 0.5]])
    const made = hatch(`${drawn.year}-${number}`, {on, step, unlisted: drawn.unlisted, machine: drawn.machine, rearing: drawn.machine ? `${drawn.machine} ${drawn.year}` : `h${number}`, shares: half, parentage})
    const chicks: Bird[] = drawn.chicks.map((each, index) => bird(`${drawn.year}-${number}-${pad(index, 2)}`, each.sex, {
      hatched: on, hatch: made, step: STEPS[each.step] ?? F1, strain: null, parentage, looks: looksOf(each), shares: half,
      weighings: each.grams === null ? [] : [{measure: 'weight', value: each.grams, on: {text: '', first: on.first + 140 + each.off, last: on.first + 140 + each.off}, at: made.at}],
      left: each.left === null ? null : {on: {text: '', first: on.first + each.left, last: on.first + each.left}, how: 'culled', why: null},
      kept: each.kept ? {on: null, why: 'for breeding'} : null,
    }))
    const tallies: Tally[] = drawn.tallies.map(each => tally(made, each.count, {sex: each.sex, looks: looksOf(each), left: each.left ? {on: null, how: 'sold', why: null} : null}))
    const hatched = chicks.length + tallies.reduce((sum, each) => sum + each.count, 0) + drawn.unlisted
    const eggs = hatched + (drawn.clear ?? 0) + drawn.extra
    birds.push(...chicks)
    return Object.assign(made, {chicks, tallies, hatched, eggs: drawn.eggsKnown ? eggs : null, clear: drawn.clear})
  })
  const pens = [pen('A', 2022, {males: [stay(cock)], females: [stay(hen)], hatches})]
  for (const each of hatches) Object.assign(each, {pens: [{pen: pens[0], eggs: null}]})
  return logbook('2025-06-01', {traits: [comb, skin, weight], birds, hatches, pens})
})

/** The same records written down in another order. */
export const turned = (book: Logbook): Logbook => ({...book, birds: [...book.birds].reverse(), hatches: [...book.hatches].reverse()})
