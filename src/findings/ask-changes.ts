import type {Clause, Severity, Tolerance, Trait, Wanted} from '../logbook/book.ts'
import {rangeChange, type RangeChange} from './range-change.ts'

/** What a clause asks beside its words, and how that changed. */
export type AskChange =
  | {readonly what: 'trait'; readonly before: Trait; readonly after: Trait}
  /** `sex`: the one it holds for where the two differ; null: all that the clause speaks of */
  | {readonly what: 'range'; readonly sex: 'male' | 'female' | null; readonly is: RangeChange; readonly trait: Trait; readonly before: Wanted | null; readonly after: Wanted | null}
  | {readonly what: 'mandatory'; readonly after: boolean}
  | {readonly what: 'if-missed'; readonly before: Severity | null; readonly after: Severity | null}
  | {readonly what: 'sex'; readonly before: Clause['sex']; readonly after: Clause['sex']}
  /** `longer` and `shorter`: by its last season, all else as it was */
  | {readonly what: 'tolerance'; readonly is: 'added' | 'dropped' | 'longer' | 'shorter' | 'otherwise'; readonly before: Tolerance | null; readonly after: Tolerance | null}

/** The range that the clause itself names: what follows from a trait's target is not written in the standard. */
const written = ({ownRange, allows}: Clause): Clause['allows'] => (ownRange ? allows : {male: null, female: null})

type RangeAsk = Extract<AskChange, {what: 'range'}>

function ranges(before: Clause, after: Clause): readonly AskChange[] {
  const trait = after.trait ?? before.trait
  if (!trait) return []
  const was = before.trait === null || before.trait.id === trait.id ? written(before) : {male: null, female: null}
  const is = after.trait ? written(after) : {male: null, female: null}
  const found = (['male', 'female'] as const).flatMap((sex): RangeAsk[] => {
    const change = rangeChange(was[sex], is[sex], trait.scale)
    return change === null ? [] : [{what: 'range', sex, is: change, trait, before: was[sex], after: is[sex]}]
  })
  const [one, other] = found
  if (!one) return []
  const alike = other ? one.is === other.is && same(one.before, other.before) && same(one.after, other.after) : after.sex !== null
  return alike ? [{...one, sex: null}] : found
}

const same = (a: Wanted | null, b: Wanted | null): boolean => rangeChange(a, b, null) === null

function tolerance(before: Tolerance | null, after: Tolerance | null): readonly AskChange[] {
  if (before === null || after === null) return before === after ? [] : [{what: 'tolerance', is: before === null ? 'added' : 'dropped', before, after}]
  const alike = before.what === after.what && before.then === after.then && same(before.looks.male, after.looks.male) && same(before.looks.female, after.looks.female)
  if (alike && before.until === after.until) return []
  return [{what: 'tolerance', is: !alike ? 'otherwise' : after.until > before.until ? 'longer' : 'shorter', before, after}]
}

/**
 * What changed in what a clause asks, from one draft to another? A trait that was not named before, or no longer is, is no change of the standard but of who can score it;
 * a range is one only where the clause itself writes it.
 */
export function askChanges(before: Clause, after: Clause): readonly AskChange[] {
  return [
    ...(before.trait && after.trait && before.trait.id !== after.trait.id ? [{what: 'trait' as const, before: before.trait, after: after.trait}] : []),
    ...ranges(before, after),
    ...(before.mandatory === after.mandatory ? [] : [{what: 'mandatory' as const, after: after.mandatory}]),
    ...(before.ifMissed === after.ifMissed ? [] : [{what: 'if-missed' as const, before: before.ifMissed, after: after.ifMissed}]),
    ...(before.sex === after.sex ? [] : [{what: 'sex' as const, before: before.sex, after: after.sex}]),
    ...tolerance(before.accepted, after.accepted),
  ]
}
