import type {Alleles} from '../heredity/locus.ts'
import {lookOf} from '../heredity/look-rules.ts'
import type {Logbook, Score, Trait} from '../logbook/book.ts'
import {lookRulesOf} from '../logbook/look-rules-of.ts'
import {misscoringRows, statesScored} from './flock-of-book.ts'
import type {WorkedGroup} from './heredity.ts'
import type {Chick} from './ladder-chicks.ts'
import type {LocusGroup} from './locus-groups.ts'

/** How much a scored look is to be doubted, given everything seen in the flock. */
export interface ScoreDoubt {
  readonly chick: Chick
  /** its number in the flock; a tally has one for each of its chicks, all alike, and this is the first */
  readonly animal: number
  readonly trait: Trait
  /** the score that counts */
  readonly score: Score
  /** chance that its true look is another */
  readonly wrong: number
  /** the look that it most likely has, when not the one scored */
  readonly instead: string | null
  /** chance that a bird of its kin has the look that was scored, its own scores of the trait left aside */
  readonly given: number
  /** chance that a bird of its kin is scored so, rightly or wrongly */
  readonly scoredSo: number
  /** the records of the flock contradict each other as they stand, and the trait's own say that the true look is never scored so */
  readonly impossible: boolean
}

/** Every chick with a counted look of a trait of the group, birds before tallies, as the book has them. */
export function scoreDoubts(book: Logbook, group: LocusGroup, worked: WorkedGroup, numberOf: (chick: Chick) => number | null): readonly ScoreDoubt[] {
  const chicks: Chick[] = [...book.birds, ...book.hatches.flatMap(({tallies}) => tallies.filter(({count}) => count > 0))]
  return group.traits.flatMap(trait => {
    const looksOf = looksByGenotype(group, trait), rows = misscoringRows(trait, worked.found.slack), stated = misscoringRows(trait)
    return chicks.flatMap((chick): ScoreDoubt[] => {
      const look = chick.looks.get(trait), animal = numberOf(chick)
      if (!look?.counted || animal === null) return []
      const scored = statesScored(chick, trait)
      const counted = trait.states.indexOf(String(look.counted.value))
      if (counted < 0) return []
      const own = trait.states.map((_, state) => scored.reduce((product, seen) => product * (rows[state]?.[seen] ?? 0), 1))
      const chances = trueLooks(animal, trait, chick.sex, own, trait.states.length ** -scored.length)
      const most = chances.indexOf(Math.max(...chances))
      const before = chances.map((chance, state) => ((own[state] ?? 0) > 0 ? chance / (own[state] ?? 1) : 0)), sum = before.reduce((total, each) => total + each, 0)
      return [{
        chick, animal, trait, score: look.counted, given: sum > 0 ? (before[counted] ?? 0) / sum : 1,
        scoredSo: sum > 0 ? before.reduce((total, chance, state) => total + chance / sum * (rows[state]?.[counted] ?? 0), 0) : 1,
        impossible: worked.found.slack > 0 && most !== counted && stated[most]?.[counted] === 0,
        wrong: chances.reduce((total, chance, state) => (state === counted ? total : total + chance), 0),
        instead: most === counted ? null : trait.states[most] ?? null,
      }]
    })

    /**
     * By state, the chance that it is the true look; what no rule tells is left out.
     *
     * @param own by true state, the chance of its scores; `ofUnsaid` the same where no rule tells the look
     */
    function trueLooks(animal: number, {states, loci}: Trait, sex: Chick['sex'], own: readonly number[], ofUnsaid: number): readonly number[] {
      const chances = states.map(() => 0), [only] = loci
      const place = only && loci.length === 1 ? group.loci.indexOf(only) : -1
      const genotypes = place < 0 ? worked.found.together(animal)
        : worked.found.at(animal, place).map(({is, probability}) => ({is: group.loci.map((_, index): Alleles => (index === place ? is : [0, 0])), probability}))
      for (const {is, probability} of genotypes) {
        const {shows, unsaid} = looksOf(is, sex), fit = shows.map((chance, state) => chance * (own[state] ?? 0))
        const whole = fit.reduce((total, each) => total + each, unsaid * ofUnsaid)
        if (whole > 0) fit.forEach((each, state) => { chances[state] = (chances[state] ?? 0) + probability * each / whole })
      }
      return chances
    }
  })
}

interface Looks {
  readonly shows: readonly number[]
  readonly unsaid: number
}

/** What a genotype looks like; a bird of unknown sex tells it by how many Z it has, else it is of either. */
function looksByGenotype(group: LocusGroup, trait: Trait): (genotype: readonly Alleles[], sex: Chick['sex']) => Looks {
  const rules = lookRulesOf(trait, group.loci), places = trait.loci.map(locus => group.loci.indexOf(locus))
  const known = new Map<string, Looks>()
  return (genotype, sex) => {
    const key = `${sex} ${places.map(place => genotype[place]?.join('/')).join()}`
    const before = known.get(key)
    if (before) return before
    const single = places.some(place => genotype[place]?.[1] === null), both = places.some(place => group.loci[place]?.on === 'Z' && genotype[place]?.[1] !== null)
    const sexes = sex !== 'unknown' ? [sex] : single ? (['female'] as const) : both ? (['male'] as const) : (['male', 'female'] as const)
    const each = rules ? sexes.map(one => lookOf(rules, genotype, one)) : []
    const looks = {
      shows: trait.states.map((_, state) => each.reduce((sum, {states}) => sum + (states[state] ?? 0), 0) / each.length),
      unsaid: each.reduce((sum, {unsaid}) => sum + unsaid, 0) / each.length,
    }
    known.set(key, looks)
    return looks
  }
}
