/** Why a bird is said to have an allele or not: what makes the chance that is shown, and where two things pull apart both, with the chance between. */
import {writeGenotype, writePattern} from '../heredity/genotype-notation.ts'
import type {Pull} from '../findings/chance-explained.ts'
import type {HiddenAtLocus} from '../findings/hidden-alleles.ts'
import type {Evidence, HiddenAllele} from '../findings/hidden-evidence.ts'
import type {Findings} from '../findings/study.ts'
import type {OwnLook, Why} from '../findings/why-hidden.ts'
import {countedValue} from '../findings/counted-value.ts'
import type {Chick} from '../findings/ladder-chicks.ts'
import type {Bird, Sex} from '../logbook/book.ts'
import {chance} from './chance-words.ts'
import {counted, listWords, percentSign} from './numbers.ts'
import {parentsWords} from './parents-carry.ts'

export const HIS: Readonly<Record<Sex, string>> = {male: 'his', female: 'her', unknown: 'its'}

/** `her sire 24-030 carries w with 10.8%, her dam 24-008 with 14.2%.`; begins small, for it follows a colon */
export function hidesReason(bird: Bird, at: HiddenAtLocus, findings: Findings): string {
  const why = at.why()
  return why === null ? '' : `${whyWords(why, bird, at, findings)}.`
}

function whyWords(why: Why, bird: Bird, at: HiddenAtLocus, findings: Findings): string {
  switch (why.kind) {
    case 'sex': return `its sex decides: a cock is ${writeGenotype(why.cock, at.locus)}, a hen ${writeGenotype(why.hen, at.locus)}`
    case 'look': return `${listWords(why.looks.map(scoredWords))}; by ${HIS[bird.sex]} kin alone ${listWords(why.looks.map(({state}) => state))} would be ${chance(why.kin)}, and ${misreadWords(why.looks)}`
    case 'told': return `${toldWords(why.evidence, why.asked, bird, at)}${why.look === null ? '' : `; ${againstWords(why.look)}`}`
    case 'alone': return aloneWords(why, bird, at, findings)
  }
}

/** One piece that says all. */
function toldWords(evidence: Evidence, asked: HiddenAllele, bird: Bird, at: HiddenAtLocus): string {
  const his = HIS[bird.sex], allele = at.locus.alleles[asked.allele] ?? ''
  switch (evidence.kind) {
    case 'test': return `a test found ${writePattern(evidence.found, at.locus)}`
    case 'threw': return threwWords(evidence, his)
    case 'given': return `${his} ${evidence.parent.sex === 'male' ? 'sire' : 'dam'} ${evidence.parent.band} has only ${allele} to give`
    case 'not-given': {
      const [one, other] = evidence.parents
      return other ? `neither ${one?.band ?? ''} nor ${other.band}, ${his} parents, has ${allele}` : `${his} sire ${one?.band ?? ''} has no ${allele}`
    }
    case 'chicks': case 'strain': case 'descent': throw new RangeError('no such piece says all')
  }
}

/** `…carries it with 78.7%, which makes 39.4%; none of 9 chicks by 2 yellow mates is yellow, which leaves 13.5%` */
function aloneWords({asked, alone, against, pull}: Extract<Why, {kind: 'alone'}>, bird: Bird, at: HiddenAtLocus, findings: Findings): string {
  const base = baseWords(asked, bird, at, findings), look = against === null ? '' : `; ${againstWords(against)}`
  if (pull === null) return `${base}${look}`
  const lifts = alone === null || asked.probability > alone
  return `${base}${look}${alone === null ? '' : `, which makes ${chance(alone)}`}; ${pullWords(pull, alone, asked, bird, at)}, which ${lifts ? 'lifts it to' : 'leaves'} ${chance(asked.probability)}`
}

function baseWords(asked: HiddenAllele, bird: Bird, at: HiddenAtLocus, findings: Findings): string {
  const allele = at.locus.alleles[asked.allele] ?? '', strain = asked.evidence.find(evidence => evidence.kind === 'strain')
  return strain ? strainWords(strain, allele) : `${at.locus.on === 'Z' && bird.sex === 'unknown' ? 'its sex is not known; ' : ''}${parentsWords(bird, at.locus, asked.allele, HIS[bird.sex], findings.heredity)}`
}

function strainWords({strain, share, known}: Extract<Evidence, {kind: 'strain'}>, allele: string): string {
  if (known === 'assumed') return `nothing is known of ${strain.name} here, so every allele is taken alike`
  if (share === 0) return `${strain.name} is without ${allele}`
  return share === 1 ? `${strain.name} has nothing else` : `of ${strain.name}’s copies ${percentSign(share)} are ${allele}`
}

/** What pulls the chance away from what it would be `alone`. */
function pullWords(pull: Pull, alone: number | null, asked: HiddenAllele, bird: Bird, at: HiddenAtLocus): string {
  const his = HIS[bird.sex], lifts = alone === null || asked.probability > alone, way = lifts ? 'for it' : 'against it'
  switch (pull.kind) {
    case 'chicks': return chicksWords(pull, alone, asked, bird, at)
    case 'descendants': return countWords(pull.chicks, lifts, asked, at, '', 'grandchick') ?? `what came of ${his} chicks speaks ${way}`
    case 'linked': return `${bird.sex === 'male' ? 'he' : bird.sex === 'female' ? 'she' : 'it'} is ${listWords(pull.looks.map(({state}) => state))}, and ${listWords([...new Set(pull.looks.flatMap(({loci}) => loci.map(({symbol}) => symbol)))])} lies near ${at.locus.symbol}`
    case 'look': return pull.looks.length === 0 ? `${his} own look speaks ${way}` : `scored ${listWords(pull.looks)}, as birds with it are ${lifts ? 'more often' : 'more seldom'}`
    case 'kin': return `all ${his} kin taken together speak ${way}`
  }
}

/** What of its chicks speaks: those that showed it; or clean ones, by the mates that had most of them, where these make most of it; or all that are or may be its own. */
function chicksWords({chicks, sure}: Extract<Pull, {kind: 'chicks'}>, alone: number | null, asked: HiddenAllele, bird: Bird, at: HiddenAtLocus): string {
  const threw = asked.evidence.find(each => each.kind === 'threw'), clean = asked.evidence.find(each => each.kind === 'chicks'), lifts = alone === null || asked.probability > alone
  if (lifts && threw) return threwWords(threw, HIS[bird.sex])
  if (!lifts && clean?.shown === 0 && alone - afterClean(alone, clean) >= (alone - asked.probability) / 2) return cleanWords(clean)
  const hers = bird.sex === 'female' ? 'hers' : bird.sex === 'male' ? 'his' : 'its own'
  return countWords(chicks, lifts, asked, at, sure ? ` of ${hers}` : ` that may be ${hers}`) ?? `what ${HIS[bird.sex]} chicks look like speaks ${lifts ? 'for it' : 'against it'}`
}

/** c(1 − q)^n / (c(1 − q)^n + 1 − c) */
function afterClean(before: number, {each, chicks}: Extract<Evidence, {kind: 'chicks'}>): number {
  const carrier = before * (1 - each) ** chicks
  return carrier / (carrier + 1 - before)
}

/** `2 of 14 chicks that may be hers are yellow`; null where no look shows the allele alone, or it does not speak that way */
function countWords(chicks: readonly Chick[], lifts: boolean, {allele}: HiddenAllele, {alone}: HiddenAtLocus, of: string, called = 'chick'): string | null {
  for (const {trait, state} of alone(allele)) {
    const scored = chicks.filter(chick => trait.states.includes(String(countedValue(chick, trait)))), number = (some: readonly Chick[]): number => some.reduce((sum, {count}) => sum + count, 0)
    const all = number(scored), shown = number(scored.filter(chick => countedValue(chick, trait) === state))
    if (all > 0 && (shown > 0 || !lifts)) return `${!lifts && shown > 0 && all > 1 ? 'only ' : ''}${ofThem(shown, all, of, called)} ${state}`
  }
  return null
}

/** Of chicks that showed it, the likeliest is believed without a word from this chance on. */
const BELIEVED = 0.95

function threwWords({chicks: [chick], count, state, believed}: Extract<Evidence, {kind: 'threw'}>, his: string): string {
  const doubt = believed < BELIEVED ? ', if scored rightly' : ''
  return count === 1 ? `${his} chick ${chick?.kind === 'bird' ? `${chick.band} ` : ''}is ${state}${doubt}` : `${counted(count, 'chick')} of ${his} own are ${state}${doubt}`
}

/** `none of 9 chicks of hers is`, `the one chick by pea 24-001 is not` */
function ofThem(shown: number, all: number, of: string, called = 'chick'): string {
  if (all === 1) return `the one ${called}${of} is${shown === 0 ? ' not' : ''}`
  return `${shown === 0 ? 'none' : shown} of ${all} ${called}s${of} ${shown < 2 ? 'is' : 'are'}`
}

function cleanWords({chicks, shown, mates, mateLook, genotype, state}: Extract<Evidence, {kind: 'chicks'}>): string {
  const [mate] = mates, by = mates.length === 1 ? `${mateLook ?? genotype} ${mate?.band ?? ''}` : `${mates.length} ${mateLook ?? genotype} mates`
  return `${ofThem(shown, chicks, ` by ${by}`)} ${state}`
}

/** `scored silver`, `scored yellow twice`, `scored walnut twice and rose once` */
function scoredWords({state, scored}: OwnLook): string {
  if (scored.length < 2) return `scored ${state}`
  return `scored ${listWords([...new Set(scored)].map(each => `${each} ${times(scored.filter(other => other === each).length)}`))}`
}

const times = (count: number): string => (count === 1 ? 'once' : count === 2 ? 'twice' : `${count} times`)

const againstWords = (look: OwnLook): string => `${scoredWords(look)}${look.passes ? `, as ${look.passes.state} is ${rateWords(look.passes.rate)}` : ''}`

/** `one score in 100 is wrong` */
function misreadWords(looks: readonly OwnLook[]): string {
  const [most] = looks.flatMap(({passes}) => passes ?? []).sort((a, b) => b.rate - a.rate)
  return most ? most.stated ? `${most.state} is scored so ${rateWords(most.rate)}` : `since the records contradict each other one score in ${Math.round(1 / most.rate)} is taken to be wrong` : 'no score is taken to be wrong'
}

/** `3 times in 10`, `once in 100` */
const rateWords = (rate: number): string => (rate >= 0.15 ? `${Math.round(rate * 10)} times in 10` : `once in ${Math.round(1 / rate)}`)
