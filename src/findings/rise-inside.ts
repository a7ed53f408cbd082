import type {Bird} from '../logbook/book.ts'
import {rateBetween, realisedSize} from '../pedigree/rate-of-inbreeding.ts'
import {familyJackknife} from '../statistics/family-jackknife.ts'
import {meanAndDeviation} from '../statistics/mean-and-deviation.ts'
import {bredInside} from './closeness.ts'
import type {Interval} from './estimate.ts'
import type {Kinship} from './inbreeding.ts'
import type {LadderStep, ReachedStep} from './ladder.ts'
import {closingOf, stepBefore} from './line-steps.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'
import {sireFamilies} from './sire-families.ts'

/** How fast the latest step mated inside the breed grew closer, by F and by kinship. */
export interface RiseInside {
  readonly step: string
  readonly birds: number
  /** the step one generation before, null where none has hatched; and that at which the line was closed, so many generations ago */
  readonly since: string | null
  readonly closing: string
  readonly generations: number
  /** sire families that the birds come of */
  readonly families: number
  /** birds with a grandparent, or nearer, that is not in the book */
  readonly atLeast: number
  readonly inbreeding: Rise
  /** of two different birds; null where a step has one alone */
  readonly kinship: Rise | null
}

/** Of F, or of mean kinship: worked as if the strains' founders were no kin. */
export interface Rise {
  readonly before: number
  readonly now: number
  /** share of what was left that went in a generation: since the step before, and on average since the closing; with what the families leave open, null under five of them */
  readonly latest: Rate
  readonly average: Rate
}

export interface Rate {
  readonly value: number
  readonly interval: Interval | null
}

/**
 * How fast do F and kinship rise inside the breed?
 *
 *     latest (x(t) − x(t−1)) / (1 − x(t−1))        average 1 − ((1 − x(t)) / (1 − x₀))^(1/g), of F bird by bird        x mean F, or mean kinship of two different birds
 *
 * x₀ is that of the step at which the line was closed, g the generations mated inside since; where no step stands between the two are one. F can fall by crossing two lines while the flock as a
 * whole grows closer, which kinship tells. The intervals leave out one sire family in turn, and take the earlier step for what it is.
 *
 * @returns null where no step of the ladder was mated inside, or nothing is in the book of the line's earlier steps
 * @see Falconer & Mackay 1996, ch. 4; Gutiérrez et al. 2009, J. Anim. Breed. Genet. 126:327; Cervantes et al. 2011, J. Anim. Breed. Genet. 128:56, for kinship (all from memory)
 */
export function riseInside(ladder: readonly LadderStep[], kin: Kinship, pedigree: PedigreeOfBook): RiseInside | null {
  const steps = ladder.flatMap(step => (step.kind === 'reached' && step.birds.length > 0 ? [step] : []))
  const step = steps.findLast(each => !each.beside && each.step.interSe > 0 && closingOf(each, steps) !== null), closing = step && closingOf(step, steps)
  if (!step || !closing) return null
  const since = stepBefore(step, steps), before = since ?? closing, generations = step.step.interSe - closing.step.interSe, families = sireFamilies(step.birds)
  const leaving = families.map(own => step.birds.filter(bird => !own.includes(bird)))
  const fOf = (birds: readonly Bird[]): number => (birds.length === 0 ? 0 : meanAndDeviation(birds.map(bird => kin.since.inbreeding[pedigree.numberOf(bird)]?.mean ?? 0)).mean)
  const kinshipOf = ofTwo(kin, pedigree), then = kinshipOf(before.birds), first = closing === before ? then : kinshipOf(closing.birds), now = kinshipOf(step.birds)
  const inside = {generations, inbreeding: fOf(closing.birds)}, fBefore = fOf(before.birds)
  return {
    step: step.label, birds: step.birds.length, since: since?.label ?? null, closing: closing.label, generations, families: families.length, atLeast: step.birds.filter(bird => kin.of(bird).atLeast).length,
    inbreeding: {
      before: fBefore, now: fOf(step.birds), latest: rated(step.birds, leaving, birds => rateBetween(fBefore, fOf(birds))),
      average: rated(step.birds, leaving, birds => {
        const {rate, count} = realisedSize(bredInside(birds, inside, kin, pedigree))
        return count === 0 ? null : rate
      }),
    },
    kinship: then === null || first === null || now === null ? null : {
      before: then, now, latest: rated(step.birds, leaving, birds => along(kinshipOf(birds), k => rateBetween(then, k))),
      average: rated(step.birds, leaving, birds => along(kinshipOf(birds), k => 1 - ((1 - k) / (1 - first)) ** (1 / generations))),
    },
  }
}

const along = (value: number | null, then: (value: number) => number | null): number | null => (value === null ? null : then(value))

function rated(birds: ReachedStep['birds'], leaving: readonly (readonly Bird[])[], of: (birds: readonly Bird[]) => number | null): Rate {
  const value = of(birds) ?? 0, without = leaving.length < 2 ? [] : leaving.map(of).filter(each => each !== null)
  return {value, interval: without.length < leaving.length ? null : familyJackknife(value, without)}
}

/** Mean kinship of two different birds of a group, worked once for each; null of one alone. */
function ofTwo({since}: Kinship, {numberOf}: PedigreeOfBook): (birds: readonly Bird[]) => number | null {
  const known = new Map<readonly Bird[], number | null>()
  const work = (birds: readonly Bird[]): number | null => {
    const numbers = birds.map(numberOf), n = numbers.length
    return n < 2 ? null : (n ** 2 * since.meansAmong(numbers).group - numbers.reduce((sum, number) => sum + since.self(number), 0)) / (n * (n - 1))
  }
  return birds => {
    const found = known.get(birds)
    if (found !== undefined) return found
    const worked = work(birds)
    known.set(birds, worked)
    return worked
  }
}
