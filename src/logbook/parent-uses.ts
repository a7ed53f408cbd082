/** Every place where the records use a bird as a parent: a stay in a pen, a sire or dam written with a chick, or a hen to whom eggs of a setting are given. */
import {inside, type Spot} from '../records/problem.ts'
import type {Span} from './band-book.ts'
import type {Bird, Hatch, Logbook, Pen, Stay} from './book.ts'
import {femalesAt, layingOf, malesAt} from './laying.ts'
import type {ParentLine} from './origins.ts'
import {told, type Told} from './tellings.ts'

export interface ParentUse {
  readonly bird: Bird
  readonly as: 'male' | 'female'
  readonly at: Spot
  /** the pen it stood in; null where it is written with a chick or with eggs set */
  readonly pen: Pen | null
  readonly stay: Stay | null
  /** settings of eggs that may be its own, and when they were laid */
  readonly layings: readonly {readonly span: Span; readonly hatch: Hatch | null; readonly at: Spot}[]
}

/** @param lineOf what is written of a tally's own parents */
export function parentUses(book: Logbook, tellings: ReadonlyMap<Bird, Told>, lineOf: (hatch: Hatch, tally: number) => ParentLine | undefined): readonly ParentUse[] {
  const {incubationDays, spermStoreDays} = book.project
  const layings = new Map(book.hatches.map(hatch => [hatch, layingOf(hatch, incubationDays)]))
  const uses: ParentUse[] = []
  for (const pen of book.pens) {
    for (const as of ['male', 'female'] as const) {
      const stays = as === 'male' ? pen.males : pen.females
      const taken = pen.hatches.map(hatch => {
        const span = layings.get(hatch) ?? null
        const possible = as === 'male' ? malesAt(pen, span, spermStoreDays) : femalesAt(pen, span)
        return {hatch, span, stays: possible.length > 0 ? possible : stays}
      })
      for (const stay of stays) {
        uses.push({
          bird: stay.bird, as, at: stay.at, pen, stay,
          layings: taken.flatMap(({hatch, span, stays: possible}) => (span && possible.includes(stay) ? [{span, hatch, at: hatch.at}] : [])),
        })
      }
    }
  }
  for (const bird of book.birds) {
    const own = tellings.get(bird)
    if (own) uses.push(...statedUses(bird, own, bird.hatch ? layings.get(bird.hatch) ?? null : layingOf({on: bird.hatched}, incubationDays)))
  }
  for (const hatch of book.hatches) {
    uses.push(...ofEggs(hatch, layings.get(hatch) ?? null))
    for (const [index, tally] of hatch.tallies.entries()) {
      const span = layings.get(hatch)
      if (tally.parentage === hatch.parentage) continue
      for (const [as, parents, key] of [['male', tally.parentage.sires, 'sire'], ['female', tally.parentage.dams, 'dam']] as const) {
        // any of a keeper's birds is chosen by its sex and age, and stands nowhere as a parent itself
        if (lineOf(hatch, index)?.[key]?.kind === 'keeper') continue
        const inPens = new Set(hatch.pens.flatMap(({pen}) => (as === 'male' ? pen.males : pen.females).map(stay => stay.bird)))
        for (const {bird} of parents) {
          if (!inPens.has(bird)) uses.push({bird, as, at: inside(tally.at, key), pen: null, stay: null, layings: span ? [{span, hatch, at: hatch.at}] : []})
        }
      }
    }
  }
  return uses
}

/** Hens to whom eggs are given, as far as they do not stand in its pens. */
function ofEggs(hatch: Hatch, span: Span | null): readonly ParentUse[] {
  return hatch.eggsByDam.filter(({dam}) => !hatch.pens.some(({pen}) => pen.females.some(({bird}) => bird === dam)))
    .map(({dam}): ParentUse => ({bird: dam, as: 'female', at: inside(hatch.at, 'eggs', dam.band), pen: null, stay: null, layings: span ? [{span, hatch, at: hatch.at}] : []}))
}

function statedUses(chick: Bird, own: Told, span: Span | null): readonly ParentUse[] {
  const layings = span ? [{span, hatch: chick.hatch, at: chick.at}] : []
  const uses: ParentUse[] = []
  const sire = told(own, 'sire'), dam = told(own, 'dam')
  // nor do a keeper's birds stand as parents here
  if (sire && sire.value.kind !== 'keeper') for (const {bird} of chick.parentage.sires) uses.push({bird, as: 'male', at: inside(sire.by.at, 'sire'), pen: null, stay: null, layings})
  if (dam && dam.value.kind !== 'keeper') for (const {bird} of chick.parentage.dams) uses.push({bird, as: 'female', at: inside(dam.by.at, 'dam'), pen: null, stay: null, layings})
  return uses
}
