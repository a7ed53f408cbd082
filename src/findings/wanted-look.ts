import type {Sex, Trait, Wanted} from '../logbook/book.ts'

/** Room for rounding in the last bit, as a share of the limit: a value exactly on a limit is inside. */
const SLACK = 1e-12

/** Is this value what one sex is wanted to show? Null when the wish names no limits to hold it against. */
export function meets(wanted: Wanted, value: string | number): boolean | null {
  if (wanted.kind === 'states') return typeof value === 'string' ? wanted.states.includes(value) : null
  if (typeof value !== 'number') return null
  const slack = SLACK * Math.abs(value)
  switch (wanted.kind) {
    case 'at-least': return value >= wanted.value - slack
    case 'at-most': return value <= wanted.value + slack
    case 'between': return value >= wanted.low - slack && value <= wanted.high + slack
    case 'about':
      return wanted.tolerance === null ? null : Math.abs(value - wanted.value) <= wanted.tolerance * Math.abs(wanted.value) + slack
  }
}

/** What is wanted of a bird of this sex. Null: nothing; of an unsexed bird also when the two sexes are not both asked. */
export function wantedOf(trait: Trait, sex: Sex): Wanted | null {
  return sex === 'unknown' ? (trait.wanted.female && trait.wanted.male) : trait.wanted[sex]
}

/**
 * Does a bird of this sex with this value look as the breed should? An unsexed bird is right when it would be so as either
 * sex, off when as neither, and cannot be judged otherwise (null), as where nothing or no limit is wanted.
 */
export function looksRight(trait: Trait, sex: Sex, value: string | number): boolean | null {
  if (sex !== 'unknown') {
    const wanted = trait.wanted[sex]
    return wanted && meets(wanted, value)
  }
  const male = looksRight(trait, 'male', value), female = looksRight(trait, 'female', value)
  return male === female ? male : null
}
