/** The cheapest remedy in words: which one male more, from what to what; and that the project's limit has been passed. */
import type {Findings} from '../findings/study.ts'
import type {OneMoreMale, RatePassed} from '../findings/one-more-male.ts'
import {NO_HARM, type PairHarm} from '../findings/pair-harm.ts'
import {burdenWords} from './harm-words.ts'
import {counted, figured, listWords, percentSign, saying, sentence} from './numbers.ts'

type StrongerFrom = Pick<Findings, 'ratePassed' | 'oneMoreMale' | 'nextBackcross' | 'book'>

/** Others named beside the best. */
const OTHERS = 2
/** Males left out that are named. */
const LEFT_OUT = 5
/** What prints alike is alike. */
const helps = (one: OneMoreMale, kinship: number): boolean => percentSign(kinship) !== percentSign(one.now) && kinship < one.now

export function ratePassedWords({step, rate, limit}: RatePassed): string {
  return `With ${step} the breed lost ${percentSign(rate)} of the variety it had left in one generation; the project allows ${percentSign(limit)}.`
}

export function oneMoreWords(found: OneMoreMale, harm: PairHarm = NO_HARM): readonly string[] {
  const {males, females, now, choices, harmful} = found, [best, ...others] = choices
  const say = saying(males.length, females.length)
  const start = `${sentence(say(males.length, 'male'))} and ${say(females.length, 'female')} of the new breed are bred from. Used alike, they give a next generation of mean kinship ${percentSign(now)}.`
  const left = harmful.length === 0 ? [] : [`Left out, whatever their kinship: ${harmful.slice(0, LEFT_OUT).map(({male}) => `${male.band} (${burdenWords(harm.burdensOf(male))})`).join(', ')}${harmful.length > LEFT_OUT ? ` and ${harmful.length - LEFT_OUT} more` : ''}.`]
  if (!best && harmful.length > 0) return [start, 'There is none to choose from beside them that is free of what kills or harms.', ...left]
  if (!best) return [start, 'Every male there is to choose from is among them already, so one more would have to come from elsewhere: a chick kept, or a bird of the strain crossed back to.']
  if (!helps(found, best.kinship)) return [start, `${choices.length === 1 ? `${best.male.band}, the one male beside them, would not lower it by as much as shows: he is` : `None of the ${counted(choices.length, 'male')} beside them would lower it by as much as shows: they are`} too near to those in use. Other blood, or a hen line that is not used yet, would.`, ...left]
  const also = others.slice(0, OTHERS).filter(({kinship}) => helps(found, kinship))
  return [start, `One male more: ${choices.length === 1 ? `${best.male.band}, the one beside them, lowers it` : `of the ${figured(choices.length, 'male')} beside them ${best.male.band} lowers it most,`} to ${percentSign(best.kinship)}${also.length === 0 ? '' : `; after him ${listWords(also.map(({male, kinship}) => `${male.band} (${percentSign(kinship)})`))}`}.`, ...left]
}

/** That one male more does not bring the flock under the limit, and what would do more; empty where no limit is passed or a backcross would not help. */
export function strongerWords({ratePassed, oneMoreMale, nextBackcross: next, book: {project: {limits: {matingInbreeding: limit}}}}: StrongerFrom): string {
  const kinship = oneMoreMale ? oneMoreMale.choices[0]?.kinship ?? oneMoreMale.now : null
  const still = limit !== null && kinship !== null && kinship > limit + 1e-12
  if (next.kind === 'cannot-say' || !(still || ratePassed)) return ''
  const inside = (next.interSe ?? next.now).f, {f} = next.backcross
  if (f >= inside || percentSign(f) === percentSign(inside)) return ''
  return `${still ? `With that too the flock stays over the project’s limit of ${percentSign(limit)}. ` : ''}Stronger is another backcross to ${next.to.name}: chicks of F ${percentSign(f)} in place of ${percentSign(inside)} inside the line.`
}

/** The same in one line, for the page that everybody opens; null when no limit is passed. */
export function remedyLine(passed: RatePassed | null, found: OneMoreMale | null, stronger = ''): string | null {
  if (passed === null) return null
  const best = found?.choices[0]
  return `${ratePassedWords(passed)} ${found && best && helps(found, best.kinship) ? `The cheapest remedy in the flock is one male more: ${best.male.band} would bring the kinship to be expected from ${percentSign(found.now)} to ${percentSign(best.kinship)}.` : 'No one male more of this flock would mend it.'}${stronger === '' ? '' : ` ${stronger}`}`
}
