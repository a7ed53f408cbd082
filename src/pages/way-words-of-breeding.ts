/** The shortest way in type, evenness, descent and welfare, in words. */
import type {BirdToTest, WantingOfBreeding} from '../findings/ways-of-breeding.ts'
import {AS_GOOD_AS, chance} from './chance-words.ts'
import {ageWords} from './dates.ts'
import {nameOf} from './evidence-of-type-words.ts'
import {harmName} from './evidence-of-welfare-words.ts'
import {bandsOf, someOf} from './evidence-of-work-words.ts'
import {counted, countWord, figured, listWords, percentSign, rounded} from './numbers.ts'

const FIGURES = {'cv': 'coefficient of variation', 'within-tenth': 'share within a tenth', 'inside': 'share inside the target'} as const
const FIGURES_OF_DESCENT = {'mean': 'mean F', 'rate': 'the rise of F in a generation', 'kinship': 'the rise of mean kinship in a generation', 'size': 'the effective size'} as const
const MOST_NAMED = 5
const SEXES = {male: 'males', female: 'females'} as const

type Of<Kind extends WantingOfBreeding['kind']> = Extract<WantingOfBreeding, {readonly kind: Kind}>

/** What is wanting, without a full stop; `way-words.ts` joins it to the rest and adds when it can be there. */
export function breedingWayWords(way: WantingOfBreeding & {readonly earliest: unknown}): string {
  switch (way.kind) {
    case 'score': return `score ${nameOf(way)}${whomWords(way)}`
    case 'score-rest': return `score the rest${whomWords(way)}, of whom at least ${way.right} must be right${way.gone > 0 ? ` (${way.gone} are gone and can be scored no more)` : ''}`
    case 'hold-clauses': return `give ${listWords(way.clauses)} a trait, and say what it may show${way.orName ? ', or name in the requirement the clauses it is about' : ''}`
    case 'of-age': return `wait until ${figured(way.chicks, 'chick')} ${way.chicks === 1 ? 'is' : 'are'} of an age to be scored for all of it`
    case 'chicks-true': return chicksWay(way)
    case 'weigh': return `weigh ${figured(way.more, 'more bird')} of the ${SEXES[way.sex]}, reared together, for ${way.trait.name.toLowerCase()}`
    case 'more-even': return evenWay(way)
    case 'give-target': return `give ${way.trait.name.toLowerCase()} a target with a tolerance for ${SEXES[way.sex]}`
    case 'name-classes': return `call ${listWords(way.classes)} cock, cockerel, hen or pullet`
    case 'test-mate': return `test by mating, for ${way.locus.symbol} (${way.trait.name.toLowerCase()}), ${listWords([...way.birds.map(testWords), ...(way.others === 0 ? [] : [`${way.others} more after them`])])}`
    case 'leave-out': return `leave ${bandsOf(way.birds)} out of the breeding pens, for ${way.locus.symbol} (${way.trait.name.toLowerCase()})${way.clean === null ? '' : `: the chance that none of the rest carries it would be ${chance(way.clean)}`}`
    case 'put-others': return othersWay(way)
    case 'score-breeders': return `score or test ${bandsOf(way.birds)} for ${way.trait.name.toLowerCase()}`
    case 'say-genes': return way.traits.length === 0 ? 'say in a trait which genes it comes of' : `say which genes ${listWords(way.traits.map(({name}) => name.toLowerCase()))} ${way.traits.length === 1 ? 'comes' : 'come'} of, and which are wanted`
    case 'keep-breeders': return 'record which birds are bred from'
    case 'mate-wider': return widerWay(way)
    case 'know-descent': return way.birds.length === 0 ? 'find out more of the descent' : `find out the descent of ${bandsOf(way.birds)}`
    case 'breed-on': return 'one more generation mated inside the breed'
    case 'more-males': return malesWay(way)
    case 'more-sires': return `chicks of ${counted(way.more, 'more sire')} in a generation, before the families tell how far off a figure may be`
    case 'more-lines': return `${counted(way.more, 'more line')} of males bred from${way.males.length === 0 ? ', and no living male is surely of another' : `, such as by ${bandsOf(way.males)}`}`
    case 'ask-otherwise': return `ask for another look than ${listWords([...new Set(way.harms.map(harmName))])}, or drop the demand; ask a veterinarian, and the law, first`
    case 'veterinary-word': return wordWay(way)
    case 'follow-chicks': return `write what became of ${figured(way.chicks, 'chick')}`
    case 'chicks-live': return way.more === null ? `more chicks that live to ${ageWords(way.age)}` : `${figured(way.more, 'more chick')}, if every one lives to ${ageWords(way.age)}`
  }
}

/** `: 24-003, 24-010, 4 more and 5 that wear no band` */
function whomWords({birds, unbanded}: Pick<Of<'score'>, 'birds' | 'unbanded'>): string {
  const some = birds.slice(0, MOST_NAMED).map(({band}) => band), more = birds.length - some.length
  const who = [...some, ...(more === 0 ? [] : [`${more} more`]), ...(unbanded === 0 ? [] : [`${unbanded} that ${unbanded === 1 ? 'wears' : 'wear'} no band`])]
  return who.length === 0 ? '' : `: ${listWords(who)}`
}

function chicksWay({more, seasons, reared, without, sires, earliest}: Of<'chicks-true'> & {readonly earliest: unknown}): string {
  const from = sires === 0 ? '' : `, of ${counted(sires, 'more sire')} at least`
  if (more === null) return `more chicks that are right${from}`
  const rate = earliest === null ? `, in ${seasons === 1 ? 'one season' : `${countWord(seasons)} seasons`}, where ${reared} were reared in the latest` : without.length === 0 ? '' : `, as ${listWords(without.map(String))} then ${without.length === 1 ? 'counts' : 'count'} no more`
  return `${figured(more, 'more chick')}, if every one is right${from}${rate}`
}

function evenWay({of, trait, sex, have, mark, n, birds, sires}: Of<'more-even'>): string {
  const what = `${FIGURES[of]} of the ${SEXES[sex]} in ${trait.name.toLowerCase()}`
  if (sires > 0) return `weigh ${SEXES[sex]} of ${counted(sires, 'more sire')}, reared with the others, for ${trait.name.toLowerCase()}`
  if (birds !== null) return `weigh more ${SEXES[sex]}: with ${birds} in place of ${n}, as even as these, no interval would reach past what is asked`
  return `bring the ${what} from ${percentSign(have)} to ${percentSign(mark)}`
}

const testWords = ({bird, carries, chicks}: BirdToTest): string =>
  `${bird.band} (${carries > AS_GOOD_AS ? 'carries it' : chance(carries)}${chicks === null ? ', no test mating is to be made for it' : `, ${figured(chicks, 'clean chick')}`})`

function othersWay({trait, locus, birds, sexes, choices}: Of<'put-others'>): string {
  const none = `no ${listWords(sexes.map(sex => SEXES[sex]), 'or')} would be left to breed from`
  return `put others in the place of ${bandsOf(birds)}, for ${locus.symbol} (${trait.name.toLowerCase()}), without whom ${none}${choices.length === 0 ? '; of those living none may be free of it' : `, such as ${listWords(choices.map(choice => (choice.carries < 1 - AS_GOOD_AS ? `${choice.bird.band} (free of it)` : testWords(choice))))}`}`
}

function wordWay({harms, traits}: Of<'veterinary-word'>): string {
  const paper = `a veterinarian’s paper on ${listWords([...new Set([...harms.map(harmName), ...traits.map(({name}) => name.toLowerCase())])])}`
  return traits.length === 0 || harms.length > 0 ? paper : `${paper}, or rules that say ${traits.length === 1 ? 'its' : 'their'} genes`
}

function malesWay({more, choices}: Of<'more-males'>): string {
  const such = choices.length === 0 ? '' : `, such as ${someOf(choices.map(({band}) => band))}, the least akin of those there`
  return more === null ? `more hens bred from, for no number of males is enough with so few${such}` : `${counted(more, 'more male')} bred from${such}, at the least, for 4MN/(M + N) takes the birds to be no kin; it shows first in their chicks`
}

function widerWay({figures, least}: Of<'mate-wider'>): string {
  const said = listWords(figures.map(({of, have, mark}) => `${FIGURES_OF_DESCENT[of]} from ${of === 'size' ? `${rounded(have, 1)} to ${mark}` : `${percentSign(have)} to ${percentSign(mark)}`}`)), mean = figures.find(({of}) => of === 'mean')
  const forecast = least === null ? '' : `, each hen with the male least akin to her (chicks of ${percentSign(least)} on average${mean && least > mean.mark ? ', so that males less akin are needed too' : ''})`
  return `mate birds that are less akin${forecast}, to bring ${said}`
}
