import type {Bird, Parent} from '../logbook/book.ts'

/** How two birds are kin by name. */
export const NEAR_RELATIONS = ['parent and child', 'full sibs', 'half sibs'] as const
export type NearRelation = (typeof NEAR_RELATIONS)[number]

/**
 * Is one the other's parent, are they full brother and sister, or half? The nearest that may be, and whether it is certain.
 *
 * @returns null where none of these can be by the parents on record
 */
export function nearRelation(one: Bird, other: Bird): {readonly is: NearRelation; readonly sure: boolean} | null {
  const asParent = Math.max(chanceOf(one, other), chanceOf(other, one))
  if (asParent > 0) return {is: 'parent and child', sure: isSure(asParent)}
  const bySire = sharedChance(one.parentage.sires, other.parentage.sires), byDam = sharedChance(one.parentage.dams, other.parentage.dams)
  const less = Math.min(bySire, byDam), more = Math.max(bySire, byDam)
  if (isSure(less)) return {is: 'full sibs', sure: true}
  // with one parent the same for certain they are half sibs, unless the other is as likely as not the same too
  if (less > 0 && !(isSure(more) && less < 0.5)) return {is: 'full sibs', sure: false}
  return more > 0 ? {is: 'half sibs', sure: isSure(more)} : null
}

const isSure = (chance: number): boolean => chance > 1 - 1e-9

/** that the first is a parent of the second */
const chanceOf = (parent: Bird, {parentage: {sires, dams}}: Bird): number => [...sires, ...dams].find(({bird}) => bird === parent)?.chance ?? 0

/** that both have one and the same parent on this side, were their doubts apart */
const sharedChance = (one: readonly Parent[], other: readonly Parent[]): number =>
  one.reduce((sum, {bird, chance}) => sum + chance * (other.find(each => each.bird === bird)?.chance ?? 0), 0)
