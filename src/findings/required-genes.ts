import type {Locus} from '../heredity/locus.ts'
import type {Logbook, Requirement, Trait} from '../logbook/book.ts'
import {clausesOf} from '../logbook/clauses-of.ts'
import {GRAVE, allelesSpokenOf, isCautioned, lethalAlleles} from './caution-alleles.ts'
import {isAskedVariety, lookOf, looksAsked, type AskedLook} from './clauses-asked.ts'
import {lookTells} from './look-tells.ts'
import type {HarmAsked} from './shown-of-breeding.ts'
import {requiredTraits} from './verdict.ts'

/** What the standard and its targets ask of the genes. */
export interface RequiredGenes {
  readonly harms: readonly HarmAsked[]
  /** looks asked for, of traits told by looks; each clause once */
  readonly looks: number
  /** of these the traits of which no rule says what they come of: of them nothing can be told */
  readonly withoutGenes: readonly Trait[]
  /** clauses that the requirement names, and that have no trait or are not in the latest draft */
  readonly untoldClauses: readonly string[]
}

/**
 * Does the standard ask for what cannot be had without an allele that kills or harms? Gone through are the clauses that the requirement names, or all mandatory ones of the latest draft, and in any
 * case every clause of it that it is serious or disqualifying to miss, and every required trait. An allele is required where every bird of every look that will do has it.
 *
 * It kills where a lethal rule of any trait, or a caution about what is lethal, names it; it harms where a caution about the bird's good does. What a look merely allows is not required.
 */
export function requiredGenes(requirement: Pick<Requirement, 'clauses' | 'varieties'>, book: Pick<Logbook, 'drafts' | 'traits' | 'loci'>): RequiredGenes {
  const {by, looks: first, untold, draft} = looksAsked(requirement, book), byClause = first.filter(({clause}) => clause !== null), already = new Set(byClause.map(({clause}) => clause))
  const grave = draft === null ? [] : clausesOf(draft).filter(clause => (clause.ifMissed === 'serious' || clause.ifMissed === 'disqualifying') && !already.has(clause) && isAskedVariety(clause, requirement))
  const asked = [...byClause, ...grave.flatMap(clause => lookOf(clause) ?? [])], named = new Set(asked.map(({scored}) => scored))
  const required = requiredTraits(book).filter(trait => !named.has(trait)).map((trait): AskedLook => ({clause: null, trait, scored: trait}))
  const looks = [...asked, ...required].filter(({scored: {states}}) => states.length > 0)
  return {
    looks: looks.length, untoldClauses: by === 'clauses' ? untold : [], withoutGenes: [...new Set(looks.filter(({scored: {loci, shows}}) => loci.length === 0 || shows.length === 0).map(({scored}) => scored))],
    harms: looks.flatMap(look => (['male', 'female'] as const).flatMap(sex => harmsOf(look, sex, book))),
  }
}

function harmsOf({clause, trait, scored}: AskedLook, sex: 'male' | 'female', book: Pick<Logbook, 'traits' | 'loci'>): readonly HarmAsked[] {
  const wanted = trait.wanted[sex]
  if (wanted?.kind !== 'states' || (scored.seenIn !== null && scored.seenIn !== sex)) return []
  return scored.loci.flatMap(locus => {
    // a look that no rule gives cannot be had at all, and asks for nothing
    const musts = wanted.states.flatMap(state => lookTells(scored, state, sex, locus)?.must ?? [])
    const needed = locus.alleles.flatMap((_, allele) => (musts.length > 0 && musts.every(must => must.has(allele)) ? [allele] : []))
    return needed.flatMap((allele): readonly HarmAsked[] => {
      const harm = lethalAlleles(book.traits, locus).includes(allele) || isCautioned(book, locus, allele, ['lethal']) ? 'lethal' : isCautioned(book, locus, allele) ? 'welfare' : null
      return harm === null ? [] : [{clause, trait: scored, sex, locus, allele, harm, says: saysOf(book, locus, allele, harm)}]
    })
  })
}

/** The caution that speaks of it, of the graver kind. */
function saysOf({loci}: Pick<Logbook, 'loci'>, locus: Locus, allele: number, harm: HarmAsked['harm']): string | null {
  const cautions = (loci.get(locus.symbol)?.known?.cautions ?? []).filter(({about, says}) => GRAVE.includes(about) && allelesSpokenOf(says, locus).includes(locus.alleles[allele] ?? ''))
  return (cautions.find(({about}) => about === harm) ?? cautions[0])?.says ?? null
}
