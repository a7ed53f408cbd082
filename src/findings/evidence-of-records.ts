/** Evidence that the breed’s making is written down, and that the birds can be told apart. */
import type {Requirement} from '../logbook/book.ts'
import {behind, judged, type Finding} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {bothParentsCertain} from './identity-of-living.ts'
import {onDay} from './next-season.ts'
import type {CannotSay, Share} from './estimate.ts'
import type {Way} from './ways.ts'

/**
 * The history of creation is written as far as the records hold a founder of every strain crossed in, and a step with its chicks; as many steps as are asked, one where no number is.
 */
export function history({atLeast}: Requirement, {book, ladder, census}: Sources): Finding {
  const founders = book.strains.map(strain => ({strain, birds: book.birds.filter(bird => bird.parentage.kind === 'founder' && bird.strain === strain)}))
  const reached = ladder.filter(step => step.kind === 'reached'), crossed = new Set(reached.flatMap(({step}) => step.strains))
  const present = founders.filter(({birds}) => birds.length > 0), unfounded = founders.filter(({strain, birds}) => birds.length === 0 && crossed.has(strain)).map(({strain}) => strain)
  const least = atLeast ?? 1, steps = Math.max(0, least - reached.length), isFounded = present.length > 0 && unfounded.length === 0
  const shown = {
    kind: 'history', founders: present.map(({strain, birds}) => ({strain, birds: birds.length})), unfounded, steps: reached.length, hatched: reached.reduce((sum, step) => sum + step.chicks.hatched, 0),
    kept: census.ownBreeders.length,
  } as const
  const all = present.flatMap(({birds}) => birds), ways: readonly Way[] = [{kind: 'founders-and-steps', founders: present.length === 0, unfounded, steps, earliest: onDay(book.asOf)}]
  return judged(isFounded && steps === 0, shown, {behind: behind([...all, ...census.ownBreeders], [...all, ...census.ownBreeders, ...reached.flatMap(step => step.hatches)], reached.map(({lastHatch}) => lastHatch?.last)), ways})
}

/** Of the living birds of the breed, the share banded and the share with both parents certain; both must reach what is asked. */
export function identity({atLeast}: Requirement, {identity: {banded, bothParents}, census, book}: Sources): Finding {
  const own = census.alive.filter(bird => bird.step.kind !== 'strain')
  const uncertain = own.filter(bird => !bothParentsCertain(bird)), found = behind(own, own)
  const shown = {kind: 'identity', banded, bothParents, uncertain} as const
  if (banded.kind === 'cannot-say' || bothParents.kind === 'cannot-say') return judged(null, shown, {behind: found})
  if (atLeast === null) return judged(null, shown, {behind: found, ways: [{kind: 'name-figure', earliest: null}]})
  const ways: readonly Way[] = [
    ...(wanting(banded, atLeast) > 0 ? [{kind: 'band', more: wanting(banded, atLeast), earliest: onDay(book.asOf)} as const] : []),
    ...(wanting(bothParents, atLeast) > 0 ? [{kind: 'parents', more: wanting(bothParents, atLeast), birds: uncertain, earliest: null} as const] : []),
  ]
  return judged(banded.value >= atLeast && bothParents.value >= atLeast, shown, {behind: found, ways})
}

/** How many more of the total it takes to reach a share. */
const wanting = (share: Exclude<Share | CannotSay, {kind: 'cannot-say'}>, atLeast: number): number => Math.max(0, Math.ceil(atLeast * share.total - 1e-9) - share.count)
