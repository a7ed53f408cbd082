import {age, chance, reference, text, unit, yesNo} from '../scalars.ts'
import {byForm, listOf, mapOf, object, optional, refuse, required, scalar, type ValueOf} from '../shape.ts'
import {inside} from '../problem.ts'
import {kind} from './kind.ts'
import {rules, traitLoci} from './loci.ts'
import {photos, privateNotes, SEX_WORDS, type SexWord} from './parts.ts'

const scale = scalar('a scale such as 1 to 10', words => {
  const match = /^(\d+)\s*(?:to|\.\.|–|-)\s*(\d+)$/.exec(words.trim())
  if (!match) return undefined
  const [from, to] = [Number(match[1]), Number(match[2])]
  return from < to ? {from, to} : refuse('unreadable-value', `“${words}” does not rise`, 'put the lowest mark first, such as 1 to 10')
})

interface SeenIn {
  readonly sex: SexWord | null
  readonly fromFirstEgg: boolean
}

const seenIn = scalar<SeenIn>('male, female, or female from first egg', words => {
  const match = /^(male|female)?\s*(from first egg)?$/.exec(words.trim())
  if (!match || (match[1] === undefined && match[2] === undefined)) return undefined
  return {sex: SEX_WORDS.find(sex => sex === match[1]) ?? null, fromFirstEgg: match[2] !== undefined}
})

/** What is wanted, as written; linking reads it by the trait’s kind. */
const wanted = reference('what is wanted: a state, “at least 7”, “40 to 45” or an amount such as 2.4 kg')

/** What is wanted of both sexes, of one of several looks, or of each sex for itself. */
export const wish = byForm({text: wanted, list: listOf(wanted), map: mapOf('male and female with what is wanted', wanted)})

const trait = object('a trait', {
  name: required(text('a name such as Comb'), 'The trait’s name.'),
  states: optional(listOf(text('a state')), 'What it can look like, for a trait told apart by eye.'),
  order: optional(listOf(text('a state')), 'What it can look like, from the least to the most.'),
  scale: optional(scale, 'The marks it is scored on.'),
  measure: optional(text('a column of the weigh days, such as weight'), 'The column of the weigh days it is taken from.'),
  unit: optional(unit, 'The unit of a measured trait.'),
  at: optional(age, 'The age it is measured at.'),
  window: optional(age, 'How many days before or after that age still count; 7 days when not given.'),
  target: optional(wish, 'What the breed is to show.'),
  tolerance: optional(chance, 'How far from the target is still right, as a share of it.'),
  required: optional(yesNo, 'Whether the standard requires it.'),
  'scored-from': optional(age, 'The age from which it can be scored; earlier scores are shown and not counted.'),
  'seen-in': optional(seenIn, 'Which birds can show it.'),
  loci: optional(traitLoci, 'The loci behind it: symbols of the reference of chicken loci, as [R, P], or each written out.'),
  shows: optional(rules, 'Which genotypes look like what; the first match wins, after those that are lethal, wherever they stand; _ is any allele, - a hen’s missing one. Every genotype should come to a rule: a last one with _/_ takes all that is left. Not needed where the reference has rules for these states.'),
  misscoring: optional(byForm({
    text: chance,
    map: mapOf('true looks with what they are mistaken for', mapOf('scored looks with their chances', chance)),
  }), 'How often it is scored wrongly.'),
  photos,
  private: privateNotes,
}, {
  check(value, note, at) {
    const kinds = (['states', 'order', 'scale', 'unit'] as const).filter(key => value[key] !== undefined)
    const lacksUnit = kinds.length === 0 && value.measure !== undefined
    if (kinds.length !== 1) {
      note({
        code: 'trait-unfinished', severity: 'error', at: kinds[1] === undefined ? at : inside(at, kinds[1]),
        reason: lacksUnit ? `the trait is taken from the column “${value.measure}”, but has no unit` : kinds.length === 0 ? 'the trait says neither what it can look like nor how it is measured' : `the trait has both ${kinds.join(' and ')}`,
        remedy: lacksUnit ? 'add unit: g, or the unit its amounts are to be kept in' : 'give exactly one of states, order, scale or unit',
      })
    }
  },
})

export type TraitRecord = ValueOf<typeof trait>

export const traitKind = kind({
  id: 'trait', files: 'traits/<id>.md', title: 'A trait', shape: trait,
  purpose: 'What is scored or measured, what is wanted, and how it is inherited. Its file’s name is its id: a key in a chick’s line.',
  example: `---
name: Comb
states: [pea, single]
target: pea
required: true
scored-from: 6 weeks
loci:
  P: {on: autosome, alleles: [P, p+]}
shows:
  - {P: P/_, is: pea}
  - {P: p+/_, is: single}
misscoring: 1%
---
Scored in hand, from above.
`,
  more: [
    {title: 'Of two loci, both from the reference with their rules', example: `---
name: Comb
states: [walnut, rose, pea, single]
target: walnut
scored-from: 6 weeks
loci: [R, P]
---
Scored in hand, from above.
`},
    {title: 'On the Z, with a rule for one sex, one for a share of the birds, and a locus near by', example: `---
name: Ground
states: [silver, brassy, gold]
scored-from: 10 weeks
loci:
  S: {on: Z, alleles: [S, s+], linked: {K: 2.4%}}
shows:
  - {S: S/s+, sex: male, is: brassy, penetrance: 60%}
  - {S: S/_, is: silver}
  - {S: s+/_, is: gold}
---
A hen has one Z: S/- is silver, s+/- gold.
`},
    {title: 'With a double dose of which no chick hatches', example: `---
name: Legs
states: [short, long]
loci: {Cp: {}}
shows:
  - {Cp: Cp/Cp, is: lethal}
  - {Cp: Cp/cp+, is: short}
  - {Cp: cp+/cp+, is: long}
---
Short × short loses a quarter of the eggs. Where the law forbids the mating, the law holds.
`},
    {title: 'Measured, taken from the weigh days', example: `---
name: Weight at 20 weeks
unit: g
measure: weight
at: 20 weeks
window: 10 days
target: {male: 2.4 kg, female: 1.9 kg}
tolerance: 10%
---
Crop empty, before the morning feed.
`},
    {title: 'Graded, by marks on a scale', example: `---
name: Type
scale: 1 to 10
target: at least 7
scored-from: 20 weeks
---
Seen from the side, standing quietly.
`},
  ],
})
