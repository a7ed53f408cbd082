/** How near the breeders are to being rid of what is not wanted, trait by trait, for the home page: the joint chance, who stands in the way, and how many chicks will throw back. */
import type {Fixation} from '../findings/fixation.ts'
import type {Findings} from '../findings/study.ts'
import type {ThrowBacks} from '../findings/throw-backs.ts'
import {AS_GOOD_AS, chance} from './chance-words.ts'
import {hasDoubts} from './doubts.ts'
import {birdPath, DOUBTS, traitPath} from './links.ts'
import {counted, countWord, figured, listWords, NOTHING, rounded, sentence} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import {oneOf} from './test-mate-words.ts'
import {unwantedWords} from './trait-hidden.ts'

export interface HomeFixation {
  readonly words: string
  readonly table: Table
  /** the birds worth testing or leaving out first, trait by trait */
  readonly inTheWay: readonly {readonly head: string; readonly birds: readonly {readonly text: string; readonly link: string; readonly says: string}[]}[]
  /** what will throw back, or empty */
  readonly warning: string
  /** chicks in doubt, where there are any */
  readonly doubts: {readonly text: string; readonly link: string} | null
}

/** Birds named a trait. */
const MOST_NAMED = 3

/** Null where no required trait has a locus on record, or nothing breeds. */
export function homeFixation(findings: Findings): HomeFixation | null {
  const {fixation, throwBacks} = findings, own = fixation.filter(({birds}) => birds > 0)
  if (own.length === 0) return null
  const fixed = own.filter(each => each.fixed), loose = own.filter(each => !each.exact)
  return {
    words: `${own.length === 1 ? `${fixed.length === 1 ? 'Fixed' : 'Not fixed yet'} in the one required trait` : `Fixed in ${fixed.length === own.length ? 'all' : fixed.length === 0 ? 'none' : countWord(fixed.length)} of the ${counted(own.length, 'required trait')}`} whose genes are known, by what ${figured(own[0]?.birds ?? 0, 'living breeder')} may carry between them.${loose.length === 0 ? '' : loose.length === own.length ? ' The chances are approximate.' : ` Approximate: ${listWords(loose.map(({trait}) => trait.name.toLowerCase()))}.`}`,
    table: {
      columns: [{head: 'Trait'}, {head: 'None carries it', number: true}, {head: 'Carriers expected', number: true}],
      rows: own.map((each): readonly Cell[] => [{text: nameOf(each), link: `${traitPath(each.trait)}#may-hide`}, chance(each.clean), rounded(each.carriers, 1)]),
    },
    inTheWay: own.filter(({inTheWay, fixed: is}) => inTheWay.length > 0 && !is).map(each => ({head: nameOf(each), birds: each.inTheWay.slice(0, MOST_NAMED).map(one => birdInTheWay(one, each, findings))})),
    warning: warningWords(throwBacks), doubts: hasDoubts(findings) ? {text: `${sentence(counted(findings.impossibleFamilies.length, 'look'))} that the parents hardly give`, link: DOUBTS} : null,
  }
}

/** `Comb, r+`: one trait may stand there by several loci */
const nameOf = (each: Fixation): string => `${each.trait.name}, ${unwantedWords(each)}`

function birdInTheWay({bird, carries, ifDropped}: Fixation['inTheWay'][number], fixation: Fixation, {testMates}: Findings): HomeFixation['inTheWay'][number]['birds'][number] {
  const {clean} = fixation, advice = testMates.of(fixation, bird.sex), testChicks = carries > AS_GOOD_AS ? null : testMates.clearing(fixation, bird)?.chicks ?? null
  const gain = ifDropped - clean >= 0.0005 ? `; without it ${chance(ifDropped)}` : ''
  return {text: bird.band, link: birdPath(bird), says: carries > AS_GOOD_AS ? `a carrier${gain}` : `${chance(carries)}${testChicks === null ? '' : `, ${figured(testChicks, `test ${advice.kind === 'mate' ? oneOf(advice) : 'chick'}`)}`}${gain}`}
}

/** Empty where no pen stands or nothing will throw back. */
export function warningWords(throwBacks: readonly ThrowBacks[]): string {
  const told = throwBacks.filter(({share}) => share >= 0.0005)
  if (told.length === 0) return ''
  const chicks = told[0]?.chicks ?? null
  return `From the pens as they stand, ${listWords(told.map(({trait, share, expected, pens}) => {
    const worst = pens.toSorted((a, b) => b.share - a.share)[0]
    return `${chance(share)} of the chicks ${expected === null ? '' : `(${rounded(expected, 1)} in ${chicks ?? NOTHING}) `}will not be as wanted in ${trait.name.toLowerCase()}${worst && pens.length > 1 ? `, most in pen ${worst.pen.id}, ${chance(worst.share)}` : ''}`
  }))}.`
}
