/** Why a bird is said to have an allele or not: the weightiest piece of evidence in one sentence, or where there is none what its parents may have given. */
import {writePattern} from '../heredity/genotype-notation.ts'
import type {Evidence, HiddenAllele, HiddenAtLocus} from '../findings/hidden-alleles.ts'
import type {Findings} from '../findings/study.ts'
import type {Bird, Parent, Sex} from '../logbook/book.ts'
import {AS_GOOD_AS, chance} from './chance-words.ts'
import {counted, figured, listWords, percent, percentSign} from './numbers.ts'

const HIS: Readonly<Record<Sex, string>> = {male: 'his', female: 'her', unknown: 'its'}
/** A parent counts as sure from this chance on. */
const SURE_PARENT = 1 - 1e-12
/** Of chicks that showed it, the likeliest is believed without a word from this chance on. */
const BELIEVED = 0.95

/** `her sire 24-030 carries w with 10.8%, her dam 24-008 with 14.2%.`; begins small, for it follows a colon */
export function hidesReason(bird: Bird, at: HiddenAtLocus, findings: Findings): string {
  // the allele that is in doubt, rather than the one every genotype has
  const asked = at.open.findLast(({probability}) => probability >= 0.0005) ?? null
  if (!asked) return scoredOtherwise(at)
  const [first] = asked.evidence
  return first ? `${evidenceWords(first, asked, bird, at, findings)}.` : ''
}

function scoredOtherwise({looks}: HiddenAtLocus): string {
  return looks.length === 0 ? '' : `scored ${listWords(looks.map(({state}) => state))}, which its kin make doubtful.`
}

function evidenceWords(evidence: Evidence, asked: HiddenAllele, bird: Bird, at: HiddenAtLocus, findings: Findings): string {
  const his = HIS[bird.sex], allele = at.locus.alleles[asked.allele] ?? ''
  switch (evidence.kind) {
    case 'test': return `a test found ${writePattern(evidence.found, at.locus)}`
    case 'threw': {
      const [chick] = evidence.chicks, doubt = evidence.believed < BELIEVED ? `, if it was scored rightly (${percentSign(evidence.believed)})` : ''
      return evidence.count === 1 ? `${his} chick ${chick?.kind === 'bird' ? `${chick.band} ` : ''}is ${evidence.state}${doubt}` : `${counted(evidence.count, 'chick')} of ${his} own are ${evidence.state}`
    }
    case 'given': return `${his} ${evidence.parent.sex === 'male' ? 'sire' : 'dam'} ${evidence.parent.band} has only ${allele} to give`
    case 'not-given': {
      const [one, other] = evidence.parents
      return other ? `neither ${one?.band ?? ''} nor ${other.band}, ${his} parents, has ${allele}` : `${his} sire ${one?.band ?? ''} has no ${allele}`
    }
    case 'chicks': {
      const {chicks, shown, mates, mateLook, genotype} = evidence, [mate] = mates
      const by = mates.length === 1 ? `${mateLook ?? genotype} ${mate?.band ?? ''}` : `${mates.length} ${mateLook ?? genotype} mates`
      return `${shown === 0 ? `none of ${figured(chicks, 'chick')}` : `${shown} of ${figured(chicks, 'chick')}`} by ${by} showed ${allele}`
    }
    case 'strain': return strainWords(evidence, allele)
    case 'descent': return descentWords(bird, asked, at, findings, allele)
  }
}

function strainWords({strain, share, known}: Extract<Evidence, {kind: 'strain'}>, allele: string): string {
  if (known === 'assumed') return `nothing is known of ${strain.name} here, so every allele is taken alike`
  if (share === 0) return `${strain.name} is without ${allele}`
  return share === 1 ? `${strain.name} has nothing else` : `of ${strain.name}’s copies ${percentSign(share)} are ${allele}`
}

/** What the parents may have given, each with its chance; of several candidates the range. */
function descentWords(bird: Bird, {allele: number}: HiddenAllele, {locus}: HiddenAtLocus, {heredity}: Findings, allele: string): string {
  const {sires, dams, kind} = bird.parentage, his = HIS[bird.sex]
  if (kind === 'founder') return 'nothing is known of its parents'
  const sides = locus.on === 'Z' && bird.sex === 'female' ? [['sire', sires] as const] : [['sire', sires] as const, ['dam', dams] as const]
  const told = sides.filter(([, parents]) => parents.length > 0)
    .map(([name, parents], place) => `${his} ${sideWords(name, parents, parents.map(parent => heredity.carries(parent.bird, locus, number)), place === 0 ? allele : 'it')}`)
  return told.length === 0 ? `${his} parents are not in the book` : told.join(', ')
}

/** `sire 24-030 carries w with 10.8%`, `possible dams carry it`, `sire H20-02 has no w` */
function sideWords(name: 'sire' | 'dam', parents: readonly Parent[], chances: readonly number[], allele: string): string {
  const [only] = parents, one = parents.length === 1 && only, low = Math.min(...chances), high = Math.max(...chances)
  const who = one ? `${only.chance >= SURE_PARENT ? '' : 'likely '}${name} ${only.bird.band}` : `possible ${name}s`
  if (high < 0.0005) return one ? `${who} is without ${allele}` : `${who} are without ${allele}`
  const carries = `${who} ${one ? 'carries' : 'carry'} ${allele}`
  if (low > AS_GOOD_AS) return carries
  return `${carries} with ${percent(low) === percent(high) ? chance(high) : `${percent(low)} to ${percentSign(high)}`}`
}
