import type {Alleles, Locus} from '../heredity/locus.ts'
import type {LookRules} from '../heredity/look-rules.ts'
import {lostOfUnphased} from '../heredity/mating-forecast.ts'
import type {Bird, Logbook, Trait} from '../logbook/book.ts'
import {lookRulesOf} from '../logbook/look-rules-of.ts'
import {LETHAL} from '../records/schema/loci.ts'
import {isCautioned, lethalAlleles} from './caution-alleles.ts'
import {countedValue} from './counted-value.ts'
import type {Heredity} from './heredity.ts'
import type {LocusGroup} from './locus-groups.ts'
import {lookTells} from './look-tells.ts'
import {WORTH_A_CAUTION, WORTH_A_LOSS} from './mating-forecast.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'
import {unwantedInBook, type AllelesOfBook} from './unwanted-alleles.ts'

/** What a pair may lose of its eggs by lethal rules. */
export interface LossOfPair {
  /** share of the eggs that is expected never to hatch */
  readonly share: number
  /** that the lethal rules name */
  readonly loci: readonly Locus[]
  /** only if one of the two is what it was scored as, which its kin make doubtful */
  readonly ifScored: boolean
}

/** An allele that kills in two doses, or that is not wanted and that a caution speaks of, in one bird. */
export interface BurdenOfBird {
  readonly locus: Locus
  readonly allele: number
  /** chance that it carries it */
  readonly carries: number
  /** its own look is that of a carrier, and its kin make that doubtful */
  readonly ifScored: boolean
}

export interface PairHarm {
  /** null: less than one egg in a thousand */
  lossOf(sire: Bird, dam: Bird): LossOfPair | null
  /** what kills, with one chance in a hundred or more; what only harms, where it is likelier to carry it than not */
  burdensOf(bird: Bird): readonly BurdenOfBird[]
}

/** Where nobody asks. */
export const NO_HARM: PairHarm = {lossOf: () => null, burdensOf: () => []}

interface LethalGroup {
  readonly group: LocusGroup
  readonly traits: readonly Trait[]
  readonly looks: readonly LookRules[]
  /** places in the group that a lethal rule names */
  readonly places: readonly number[]
  readonly lost: Map<string, number>
}

/** What may stand at the loci that lethal rules name, and again as its own look has it where its kin say otherwise. */
interface May {
  readonly ways: readonly Way[]
  readonly asScored: readonly Way[] | null
}

interface Way {
  readonly is: readonly Alleles[]
  readonly key: string
  readonly probability: number
}

/**
 * Which pairs may lose eggs by a lethal rule, and which birds carry what would do it?
 *
 *     share = Σ P(g) · P(h) · lost(g, h)        over what stands in sire and dam at the loci that lethal rules name
 *
 * Quick, for every pair of a flock: only groups of loci with a lethal rule are asked, and the two are taken as if they shared neither kin nor chicks;
 * `matingForecasts` is exact. A bird scored with a look that none has without such an allele counts as one with a dose of it too, though its kin make the score doubtful.
 *
 * @see `lostOfUnphased`, `isCautioned`
 */
export function pairHarm(book: Logbook, heredity: Heredity, {numberOf}: Pick<PedigreeOfBook, 'numberOf'>, alleles: AllelesOfBook): PairHarm {
  const groups = heredity.groups.flatMap(group => lethalGroup(group) ?? [])
  const asked = new Map<Locus, Set<number>>(), traitsAt = (locus: Locus) => book.traits.filter(({loci}) => loci.includes(locus))
  const ask = (locus: Locus, some: readonly number[]): void => { asked.set(locus, new Set([...asked.get(locus) ?? [], ...some])) }
  for (const {group, traits} of groups) for (const locus of group.loci) ask(locus, lethalAlleles(traits, locus))
  for (const {locus, unwanted} of book.traits.flatMap(trait => unwantedInBook(trait, alleles))) ask(locus, unwanted.filter(allele => isCautioned(book, locus, allele)))
  const kills = (locus: Locus, allele: number): boolean => groups.some(({group, traits}) => group.loci.includes(locus) && lethalAlleles(traits, locus).includes(allele))
  const kept = new Map<Bird, readonly (May | null)[]>(), burdens = new Map<Bird, readonly BurdenOfBird[]>()

  function mayOf(bird: Bird): readonly (May | null)[] {
    const known = kept.get(bird)
    if (known) return known
    const found = groups.map(({group, traits, places}): May | null => {
      if (bird.sex === 'unknown') return null
      const lumps = new Map<string, Way>()
      for (const {is, probability} of heredity.worked(group).found.together(numberOf(bird))) {
        const way = is.map((own, place): Alleles => (places.includes(place) ? own : [0, own[1] === null ? null : 0])), key = way.join(';')
        lumps.set(key, {is: way, key, probability: probability + (lumps.get(key)?.probability ?? 0)})
      }
      const ways = [...lumps.values()].sort((a, b) => b.probability - a.probability), [likeliest] = ways
      const scored = places.flatMap(place => group.loci[place] ?? []).flatMap(locus => lethalAlleles(traits, locus).filter(allele => shows(bird, locus, allele)).map(allele => ({locus, allele})))
      const doubted = scored.filter(({locus, allele}) => heredity.carries(bird, locus, allele) < 0.5)
      if (!likeliest || doubted.length === 0) return {ways, asScored: null}
      const is = likeliest.is.map((own, place): Alleles => {
        const dose = doubted.find(({locus}) => group.loci[place] === locus)
        return !dose ? own : own[1] === null ? [dose.allele, null] : [Math.min(dose.allele, own[1]), Math.max(dose.allele, own[1])]
      })
      return {ways, asScored: [{is, key: is.join(';'), probability: 1}]}
    })
    kept.set(bird, found)
    return found
  }

  const shows = (bird: Bird, locus: Locus, allele: number): boolean => traitsAt(locus).some(trait => {
    const look = countedValue(bird, trait)
    return typeof look === 'string' && lookTells(trait, look, bird.sex, locus)?.must.has(allele) === true
  })

  function lostOf({group: {loci, linkages}, looks, lost}: LethalGroup, sires: readonly Way[], dams: readonly Way[]): number {
    return sires.reduce((sum, sire) => sum + dams.reduce((part, dam) => {
      const key = `${sire.key} ${dam.key}`, share = lost.get(key) ?? lostOfUnphased({loci, linkages, traits: looks, sire: sire.is, dam: dam.is})
      lost.set(key, share)
      return part + sire.probability * dam.probability * share
    }, 0), 0)
  }

  return {
    lossOf(sire, dam) {
      const his = mayOf(sire), hers = mayOf(dam)
      const losses = groups.flatMap((group, index): LossOfPair[] => {
        const one = his[index], other = hers[index]
        if (!one || !other) return []
        const share = lostOf(group, one.ways, other.ways), asScored = one.asScored || other.asScored ? lostOf(group, one.asScored ?? one.ways, other.asScored ?? other.ways) : 0
        return [{share: Math.max(share, asScored), ifScored: asScored > share, loci: group.places.flatMap(place => group.group.loci[place] ?? [])}]
      }).filter(({share}) => share >= WORTH_A_LOSS)
      return losses.length === 0 ? null : {share: 1 - losses.reduce((left, {share}) => left * (1 - share), 1), loci: losses.flatMap(({loci}) => loci), ifScored: losses.some(({ifScored}) => ifScored)}
    },
    burdensOf(bird) {
      const found = burdens.get(bird) ?? [...asked].flatMap(([locus, some]) => [...some].map((allele): BurdenOfBird => {
        const carries = heredity.carries(bird, locus, allele)
        return {locus, allele, carries, ifScored: carries < 0.5 && shows(bird, locus, allele)}
      })).filter(({locus, allele, carries, ifScored}) => ifScored || carries >= (kills(locus, allele) ? WORTH_A_CAUTION : 0.5))
      burdens.set(bird, found)
      return found
    },
  }
}

function lethalGroup(group: LocusGroup): LethalGroup | null {
  const traits = group.traits.filter(({shows}) => shows.some(({is}) => is === LETHAL))
  if (traits.length === 0) return null
  const looks = traits.flatMap(trait => lookRulesOf(trait, group.loci) ?? []).map(look => ({...look, rules: look.rules.filter(({is}) => is === 'lethal')}))
  const named = new Set(traits.flatMap(({shows}) => shows.filter(({is}) => is === LETHAL).flatMap(({patterns}) => [...patterns].filter(([, pattern]) => pattern.some(each => each !== 'any')).map(([locus]) => locus))))
  return {group, traits, looks, places: group.loci.flatMap((locus, place) => (named.has(locus) ? [place] : [])), lost: new Map()}
}
