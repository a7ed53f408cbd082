import {isUnit, UNITS} from '../../records/quantities.ts'
import type {Chicks, Trait, Wanted, Weighing} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'
import {asWritten, inUnit, likelyUnits} from './unlikely-weight.ts'

const HATCH = '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male}\n  - {band: 24-902, sex: female}\n---\n'
const weights = (heading: string) => `band,on,${heading}\n24-901,2024-08-10,2.41\n24-902,2024-08-10,1.98\n`

export const entry: ManualEntry = {
  code: 'far-from-target', severity: 'warning', title: 'A column far from what is wanted',
  cause: 'Half or more of the amounts of a column are over ten times as much as the trait’s target, or under a tenth of it: a whole weigh day in kilograms where the trait is kept in grams. Birds under half the trait’s age (under 16 weeks where it names none: common practice, no source) are not compared.',
  remedy: 'Write the unit in the heading of the column, weight (kg), or with each amount; or mend the trait’s target.',
  wrong: {'hatches/2024-09.md': HATCH, 'measures/2024-08-10.csv': weights('weight')},
  right: {'hatches/2024-09.md': HATCH, 'measures/2024-08-10.csv': weights('weight (kg)')},
}

const FACTOR = 10
/** Days of age from which a bird is compared with a target that names no age. */
const GROWN = 16 * 7

interface Compared {
  readonly weighing: Weighing
  /** the nearest target, and whether it is far */
  readonly trait: Trait
  readonly target: number
  readonly far: boolean
}

export function check({bench, book}: Linked): void {
  const columns = new Map<string, Compared[]>()
  const traits = book.traits.filter(({unit}) => unit !== null && isUnit(unit) && (UNITS[unit].of === 'mass' || UNITS[unit].of === 'length'))
  const compare = (weighing: Weighing, chicks: Pick<Chicks, 'sex' | 'hatched'>) => {
    const compared = comparedOf(weighing, chicks, traits)
    if (!compared) return
    const key = `${weighing.at.file}\n${weighing.measure}`
    const own = columns.get(key)
    if (own) own.push(compared)
    else columns.set(key, [compared])
  }
  for (const bird of book.birds) for (const weighing of bird.weighings) compare(weighing, bird)
  for (const weighing of book.looseWeighings) compare(weighing, {sex: weighing.sex, hatched: weighing.hatch.on})
  for (const all of columns.values()) {
    const far = all.filter(each => each.far).sort((a, b) => lineOf(a) - lineOf(b))
    const [first] = far
    if (!first || 2 * far.length < all.length) continue
    const {weighing: {measure, value, at}, trait, target} = first, unit = trait.unit ?? ''
    const [likely] = likelyUnits(asWritten(first.weighing, unit, bench), target, unit)
    bench.note(slipOf(entry, at, `${far.length === 1 ? '' : `${far.length} amounts of the column, from here on: `}${measure} ${inUnit(value, unit)}, while the target of ${trait.id} is ${inUnit(target, unit)}`,
      likely ? `did you mean ${likely}? write it into the heading: ${measure} (${likely})` : 'write the unit into the heading, mend the amounts, or mend the trait’s target', {at: trait.at, note: `${trait.id} stands here`}))
  }
}

const lineOf = ({weighing: {at}}: Compared): number => ('line' in at ? at.line : 0)

/** The target of a bird's sex and age that is nearest to an amount; null where there is none. */
function comparedOf(weighing: Weighing, {sex, hatched}: Pick<Chicks, 'sex' | 'hatched'>, traits: readonly Trait[]): Compared | null {
  const {measure, value, on} = weighing
  const off = (target: number) => Math.abs(Math.log(value / target))
  const targets = traits.filter(trait => trait.measure === measure && (hatched === null || on.first - hatched.last >= (trait.atAge ?? 2 * GROWN) / 2))
    .flatMap(trait => [...(sex === 'female' ? [] : [trait.wanted.male]), ...(sex === 'male' ? [] : [trait.wanted.female])].map(wanted => ({trait, target: amountOf(wanted)})))
    .filter(({target}) => target > 0)
  const [nearest] = value > 0 ? targets.sort((a, b) => off(a.target) - off(b.target)) : []
  return nearest ? {weighing, ...nearest, far: off(nearest.target) > Math.log(FACTOR)} : null
}

/** The amount a target speaks of, the middle of one that has two; 0 where it speaks of none. */
function amountOf(wanted: Wanted | null): number {
  if (wanted === null || wanted.kind === 'states') return 0
  return wanted.kind === 'between' ? (wanted.low + wanted.high) / 2 : wanted.value
}
