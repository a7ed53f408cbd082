import {matches} from '../heredity/genotype-notation.ts'
import type {Alleles} from '../heredity/locus.ts'
import type {Bird, Trait} from '../logbook/book.ts'
import {AS_GOOD, hasAllele, type ChanceExplained, type Pull} from './chance-explained.ts'
import {misscoringRows} from './flock-of-book.ts'
import type {Heredity} from './heredity.ts'
import type {Evidence, EvidenceAtLocus, HiddenAllele} from './hidden-evidence.ts'

/** A look of a bird's own, and how far it may be trusted. */
export interface OwnLook {
  readonly trait: Trait
  /** the one that counts */
  readonly state: string
  /** every scoring that is weighed: one state where all agree */
  readonly scored: readonly string[]
  /** the look most often taken for it, and how often, as the records state it (`stated`) or as is allowed for where they contradict each other; null: none ever is */
  readonly passes: {readonly state: string; readonly rate: number; readonly stated: boolean} | null
}

/** Why the genotypes of a bird at a locus have the chances they have: what a breeder would point at. */
export type Why =
  /** either sex would be sure: what stands in a cock and in a hen */
  | {readonly kind: 'sex'; readonly cock: Alleles; readonly hen: Alleles}
  /** its look is set against its kin: `kin` is the chance of a genotype of this look, had nobody looked at it */
  | {readonly kind: 'look'; readonly looks: readonly OwnLook[]; readonly kin: number}
  /** one piece of evidence makes the chance what it is */
  /** … but for what its own look, were it wrong, leaves open: `look` */
  | {readonly kind: 'told'; readonly asked: HiddenAllele; readonly evidence: Evidence; readonly look: OwnLook | null}
  /** its parents, or its strain, make it `alone`, to which its own look is added where that speaks against the allele; and the pull makes it what is shown */
  | {readonly kind: 'alone'; readonly asked: HiddenAllele; readonly alone: number | null; readonly against: OwnLook | null; readonly pull: Pull | null}

/** Chances of sure things: a genotype of a parent, and a look as likely to be right as most scores are. */
const SURE = 0.999, TOLD = 0.96, RIGHT = 0.95
/** An allele less likely than this is not spoken of. */
const NOTICED = 0.0005
/** A look that another passes for so often is no sure sign by itself. */
const OFTEN = 0.1

/** Null where there is nothing to say: every genotype has the one allele. */
export function whyHidden(bird: Bird, at: EvidenceAtLocus, heredity: Heredity, {explained, byParentsOnly, unlooked}: ChanceExplained): Why | null {
  const {locus} = at, {genotypes} = heredity.of(bird, locus)
  if (locus.on === 'Z' && bird.sex === 'unknown') {
    const [cock, hen] = [false, true].map(isHen => sureOf(genotypes.filter(({is: [, other]}) => (other === null) === isHen)))
    if (cock && hen) return {kind: 'sex', cock, hen}
  }
  const looks = at.looks.map(({trait, state}) => ownLook(bird, trait, state, heredity)), fitting = chanceFitting(genotypes)
  const [against] = looks.filter(({passes}) => passes && passes.rate >= OFTEN)
  if (looks.length > 0 && fitting < RIGHT && (!against || fitting < 0.5)) return {kind: 'look', looks, kin: chanceFitting(unlooked(bird, locus))}

  const excluded = at.open.length > 0 ? null : at.excluded.at(-1)
  const asked = at.open.findLast(({probability}) => probability >= NOTICED) ?? excluded
  if (!asked) return null
  const told = asked.evidence.find(evidence => tellsAll(evidence, asked.probability))
  if (told) return {kind: 'told', asked, evidence: told, look: lookBehind()}
  const {alone, pull} = explained(bird, locus, asked.allele, asked.probability), isAgainst = asked === excluded
  const shownSeldom = pull === null && !isAgainst && looks.length > 0 ? leftByLook(asked.allele) : null
  if (shownSeldom !== null && Math.abs(shownSeldom - asked.probability) > AS_GOOD) return {kind: 'alone', asked, alone: shownSeldom, against: null, pull: {kind: 'look', looks: looks.map(({state}) => state)}}
  return {kind: 'alone', asked, alone, against: isAgainst ? against ?? looks[0] ?? null : null, pull}

  /** Chance of the allele by its parents, of the genotypes that may look so, each looking so alike. */
  function leftByLook(allele: number): number | null {
    const fit = byParentsOnly(bird, locus)?.filter(({is}) => isFitting(is)) ?? [], whole = fit.reduce((sum, {probability}) => sum + probability, 0)
    return whole > 0 ? hasAllele(fit, allele) / whole : null
  }

  /** A look that says the rest, where most of what the likeliest genotype leaves is what only a wrong score allows. */
  function lookBehind(): OwnLook | null {
    const left = 1 - (genotypes[0]?.probability ?? 1)
    return left >= NOTICED && 1 - fitting > left / 2 ? looks.find(({passes}) => passes?.stated) ?? null : null
  }

  function tellsAll(evidence: Evidence, shown: number): boolean {
    switch (evidence.kind) {
      case 'test': return genotypes.reduce((sum, {is, probability}) => sum + (matches(evidence.found, is) ? probability : 0), 0) >= TOLD
      case 'threw': return evidence.believed >= RIGHT && shown >= TOLD
      case 'given': return shown >= TOLD
      case 'not-given': return shown <= 1 - TOLD
      default: return false
    }
  }

  function chanceFitting(some: readonly {readonly is: Alleles; readonly probability: number}[]): number {
    return some.reduce((sum, {is, probability}) => sum + (isFitting(is) ? probability : 0), 0)
  }

  function isFitting(is: Alleles): boolean {
    return at.shows.every(allele => is.includes(allele)) && is.every(allele => allele === null || at.shows.includes(allele) || at.open.some(open => open.allele === allele))
  }
}

function sureOf(genotypes: readonly {readonly is: Alleles; readonly probability: number}[]): Alleles | null {
  const whole = genotypes.reduce((sum, {probability}) => sum + probability, 0), [first] = genotypes
  return first && first.probability >= SURE * whole ? first.is : null
}

function ownLook(bird: Bird, trait: Trait, state: string, heredity: Heredity): OwnLook {
  const scored = (bird.looks.get(trait)?.scores ?? []).filter(({struck, outside}) => struck === null && !outside).map(({value}) => String(value))
  const [first] = trait.loci, {slack} = first ? heredity.worked(heredity.groupOf(first)).found : {slack: 0}
  const number = trait.states.indexOf(state), rates = misscoringRows(trait).map((row, is) => (is === number ? 0 : row[number] ?? 0)), rate = Math.max(...rates)
  return {trait, state, scored, passes: Math.max(rate, slack) > 0 ? {state: trait.states[rates.indexOf(rate)] ?? '', rate: Math.max(rate, slack), stated: rate > 0} : null}
}
