import {orNear} from '../../records/near.ts'
import type {Slip, Spot} from '../../records/problem.ts'
import type {Ref} from '../../records/scalars.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

export const entry: ManualEntry = {
  code: 'unknown-trait', severity: 'error', title: 'A trait that has no record',
  cause: 'A bird’s line, a scoring day or a weigh day has a key or column that is neither one of its own nor a trait’s id; or a locus, of which only a test can tell.',
  remedy: 'Write the key or the trait’s id as it is called, or add the trait to traits/.',
  wrong: {'hatches/2024-09.md': '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male, coomb: pea}\n---\n'},
  right: {'hatches/2024-09.md': '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male, comb: pea}\n---\n'},
}

export const unknownTrait = (ref: Ref, near: readonly string[]): Slip =>
  slipOf(entry, ref.at, `no trait is called ${ref.text}`, orNear(near, `add traits/${ref.text}.md, or write the trait’s id as its file is called`))

/** A key in a bird's line that is neither a trait nor one of the line's own keys. */
export const unknownKeyOfBird = (key: string, at: Spot, near: readonly string[]): Slip =>
  slipOf(entry, at, `“${key}” is no key of a bird and no trait’s id`, orNear(near, `add traits/${key}.md, or take the key out; words of your own go into observations`))

/** A column of the weigh days that no trait takes its values from. */
export const unknownMeasure = (measure: string, at: Spot, near: readonly string[]): Slip =>
  slipOf(entry, at, `no trait is measured by the column “${measure}”`, orNear(near, `add a trait with measure: ${measure} and its unit to traits/, or take the column out`))

/** A locus in the place of a trait: what a DNA test found is no look. */
export const locusForTrait = (symbol: string, found: string, at: Spot): Slip =>
  slipOf(entry, at, `${symbol} is a locus and no trait’s id`, `what a DNA test found goes with the bird, as tested: {${symbol}: ${found}}; what was seen goes under the id of a trait`)
