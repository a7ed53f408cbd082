import type {Bird, Logbook, Strain, Trait} from '../logbook/book.ts'
import {ancestryOf} from '../pedigree/ancestry-of.ts'
import {baseShares} from '../pedigree/base-shares.ts'
import {coancestry} from '../pedigree/coancestry.ts'
import {donorSegment} from '../pedigree/donor-segment.ts'
import type {Animal} from '../pedigree/pedigree.ts'
import {shareSpread} from '../pedigree/share-spread.ts'
import {strainHeterozygosity} from '../pedigree/strain-heterozygosity.ts'
import type {Census} from './census.ts'
import type {CannotSay, Share} from './estimate.ts'
import type {Kinship} from './inbreeding.ts'
import {currentStep, type LadderStep, type ReachedStep} from './ladder.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'
import {shareOf} from './share-of.ts'
import type {TraitShares} from './shares.ts'
import {wantedOf} from './wanted-look.ts'

/** What is expected of a group of birds, or of the chicks of a mating. */
export interface Prospect {
  /** of the recurrent strain, on the autosomes; and the standard deviation of the true share, from bird to bird */
  readonly share: number
  readonly spread: number
  readonly f: number
  readonly heterozygosity: number
}

/** The wanted look of one required trait; looks alone, so that what is hidden is not in it. */
export interface LookProspect {
  readonly trait: Trait
  /** among the chicks of the step that the breed stands at */
  readonly now: Share | CannotSay
  /** among those of the latest backcross to the strain, by its label; null where there was none */
  readonly atBackcross: {readonly step: string; readonly share: Share | CannotSay} | null
  /** what the recurrent strain is true for, and whether it is wanted; null where its record does not say */
  readonly ofStrain: {readonly state: string; readonly wanted: boolean} | null
}

export interface NextBackcross {
  readonly kind: 'prospects'
  readonly to: Strain
  readonly step: string
  /** those of the step that are bred from, else all of it that live */
  readonly of: 'breeders' | 'living'
  readonly birds: readonly Bird[]
  readonly now: Prospect
  /** null: cocks or hens are wanting */
  readonly interSe: Prospect | null
  /** to a bird of the strain that is no nearer kin than its strain's founders are */
  readonly backcross: Prospect
  /** F of chicks with the birds of the strain that live here, over the pairs of cock and hen; null where there are none */
  readonly withLiving: {readonly birds: number; readonly f: number} | null
  readonly looks: readonly LookProspect[]
  /** required traits without states, of which looks say nothing here */
  readonly measured: number
  /** morgans expected to be left around a chosen donor gene, after the backcrosses made and after one more; null where the step is no count of backcrosses to the strain */
  readonly segment: {readonly arm: number; readonly backcrosses: number; readonly now: number; readonly next: number} | null
}

export interface NoProspects {
  readonly kind: 'cannot-say'
  readonly why: 'no-recurrent-strain' | 'no-step' | 'no-birds'
}

/** Morgans on either side of the gene, as an example: the middle of a chromosome of a hundred centimorgans. */
const ARM = 0.5

/**
 * Should I backcross again? What a backcross would give, beside what one more generation mated inter se would give.
 *
 * Chicks are put to the pedigree as if they had been bred: of any cock and any hen of the group alike, and of any bird of the group and a new bird of
 * the recurrent strain. Their figures are exact for that; a keeper who chooses pairs does better.
 *
 * @see `shareSpread`, `strainHeterozygosity`, `donorSegment`
 */
export function nextBackcross(
  book: Logbook, {ladder, census, pedigree, kinship, shares}: {
    readonly ladder: readonly LadderStep[]; readonly census: Census; readonly pedigree: PedigreeOfBook; readonly kinship: Kinship; readonly shares: readonly TraitShares[]
  },
): NextBackcross | NoProspects {
  const {recurrent} = book.project, step = currentStep(ladder)
  if (recurrent === null) return {kind: 'cannot-say', why: 'no-recurrent-strain'}
  if (step === null) return {kind: 'cannot-say', why: 'no-step'}
  const own = new Set(step.birds), breeders = census.ownBreeders.filter(bird => own.has(bird)), living = census.alive.filter(bird => own.has(bird))
  const birds = breeders.length > 0 ? breeders : living
  if (birds.length === 0) return {kind: 'cannot-say', why: 'no-birds'}
  const required = book.traits.filter(({required: is}) => is), withStates = required.filter(({states}) => states.length > 0)
  return {
    kind: 'prospects', to: recurrent, step: step.label, of: breeders.length > 0 ? 'breeders' : 'living', birds,
    ...prospects(pedigree, birds, recurrent), withLiving: withLiving(pedigree, kinship, birds, census.alive.filter(({strain}) => strain === recurrent)),
    looks: withStates.map(trait => lookProspect(trait, step.label, lastBackcross(ladder, recurrent), recurrent, shares)), measured: required.length - withStates.length,
    segment: segmentOf(step, recurrent),
  }
}

function prospects({pedigree, numberOf, baseOf}: PedigreeOfBook, birds: readonly Bird[], recurrent: Strain): Pick<NextBackcross, 'now' | 'interSe' | 'backcross'> {
  const base = baseOf(recurrent), part = ancestryOf(pedigree, birds.map(numberOf))
  const animals: Animal[] = [...part.pedigree.animals]
  const add = (animal: Animal): number => animals.push(animal) - 1
  /** any of a group alike; by halves, for a stand-in of many birds at once costs a walk for every two of them */
  const standIn = (group: readonly Bird[], sex: Animal['sex']): number => {
    const [only] = group
    if (only && group.length === 1) return part.numberOf.get(numberOf(only)) ?? NaN
    const middle = group.length >> 1
    const halves = [group.slice(0, middle), group.slice(middle)]
    return add({sex, base: null, matings: [], oneOf: halves.map(half => ({animal: standIn(half, sex), chance: half.length / group.length}))})
  }
  const chick = (sire: number, dam: number): number => add({sex: 'unknown', base: null, matings: [{sire, dam, chance: 1}]})
  const cocks = birds.filter(({sex}) => sex === 'male'), hens = birds.filter(({sex}) => sex === 'female')
  const any = standIn(birds, 'unknown')
  const interSe = cocks.length > 0 && hens.length > 0 ? chick(standIn(cocks, 'male'), standIn(hens, 'female')) : null
  const backcross = chick(add({sex: 'male', base, matings: []}), any)

  const whole = {...part.pedigree, animals}
  const share = baseShares(whole, 'autosome', base), spread = shareSpread(whole, base), heterozygosity = strainHeterozygosity(whole), {inbreeding} = coancestry(whole)
  const of = (animal: number): Prospect =>
    ({share: share[animal] ?? 0, spread: spread[animal] ?? 0, f: inbreeding[animal]?.mean ?? 0, heterozygosity: heterozygosity[animal] ?? 0})
  return {now: of(any), interSe: interSe === null ? null : of(interSe), backcross: of(backcross)}
}

function withLiving({numberOf}: PedigreeOfBook, kin: Kinship, birds: readonly Bird[], ofStrain: readonly Bird[]): NextBackcross['withLiving'] {
  let sum = 0, pairs = 0, used = 0
  for (const one of ofStrain) {
    const others = birds.filter(bird => bird.sex !== 'unknown' && one.sex !== 'unknown' && bird.sex !== one.sex)
    if (others.length === 0) continue
    used += 1
    sum += kin.autosome.withEach(numberOf(one), others.map(numberOf)).reduce((total, each) => total + each, 0)
    pairs += others.length
  }
  return pairs === 0 ? null : {birds: used, f: sum / pairs}
}

/** The latest backcross to the strain that has hatched. */
const lastBackcross = (ladder: readonly LadderStep[], to: Strain): string | null =>
  ladder.filter(step => step.kind === 'reached').filter(({step}) => step.kind === 'backcross' && step.interSe === 0 && step.to === to).at(-1)?.label ?? null

function lookProspect(trait: Trait, step: string, backcross: string | null, strain: Strain, shares: readonly TraitShares[]): LookProspect {
  const state = strain.trueFor.get(trait)
  return {
    trait, now: wantedShare(trait, step, shares), atBackcross: backcross === null ? null : {step: backcross, share: wantedShare(trait, backcross, shares)},
    ofStrain: state === undefined ? null : {state, wanted: isWanted(trait, 'male', state) || isWanted(trait, 'female', state)},
  }
}

/** Chicks with the look that is wanted of their sex; those of a sex of which nothing is wanted are left out. */
function wantedShare(trait: Trait, step: string, shares: readonly TraitShares[]): Share | CannotSay {
  let count = 0, total = 0
  for (const row of shares) {
    const {sex} = row
    if (row.step !== step || row.trait !== trait || sex === 'all' || wantedOf(trait, sex) === null) continue
    total += row.scored
    for (const each of row.states) if (isWanted(trait, sex, each.state)) count += each.count
  }
  return shareOf(count, total)
}

function isWanted(trait: Trait, sex: 'male' | 'female' | 'unknown', state: string): boolean {
  const wanted = wantedOf(trait, sex)
  return wanted?.kind === 'states' && wanted.states.includes(state)
}

function segmentOf({step}: ReachedStep, recurrent: Strain): NextBackcross['segment'] {
  const counts = step.kind === 'filial' || (step.kind === 'backcross' && step.to === recurrent)
  if (!counts) return null
  const left = (backcrosses: number) => 2 * donorSegment(backcrosses, ARM)
  return {arm: ARM, backcrosses: step.backcrosses, now: left(step.backcrosses), next: left(step.backcrosses + 1)}
}
