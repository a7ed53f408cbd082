/** The cheapest remedy in words: which one male more, from what to what; and that the project's limit has been passed. */
import type {OneMoreMale, RatePassed} from '../findings/one-more-male.ts'
import {counted, figured, listWords, percentSign, saying, sentence} from './numbers.ts'

/** Others named beside the best. */
const OTHERS = 2
/** What prints alike is alike. */
const helps = (one: OneMoreMale, kinship: number): boolean => percentSign(kinship) !== percentSign(one.now) && kinship < one.now

export function ratePassedWords({step, rate, limit}: RatePassed): string {
  return `With ${step} the breed lost ${percentSign(rate)} of the variety it had left in one generation; the project allows ${percentSign(limit)}.`
}

export function oneMoreWords(found: OneMoreMale): readonly string[] {
  const {males, females, now, choices} = found, [best, ...others] = choices
  const say = saying(males.length, females.length)
  const start = `${sentence(say(males.length, 'male'))} and ${say(females.length, 'female')} of the new breed are bred from. Used alike, they give a next generation of mean kinship ${percentSign(now)}.`
  if (!best) return [start, 'Every male there is to choose from is among them already, so one more would have to come from elsewhere: a chick kept, or a bird of the strain crossed back to.']
  if (!helps(found, best.kinship)) return [start, `None of the ${counted(choices.length, 'male')} beside them would lower it by as much as shows: they are too near to those in use. Other blood, or a hen line that is not used yet, would.`]
  const also = others.slice(0, OTHERS).filter(({kinship}) => helps(found, kinship))
  return [start, `One male more: of the ${figured(choices.length, 'male')} beside them ${best.male.band} lowers it most, to ${percentSign(best.kinship)}${also.length === 0 ? '' : `; after him ${listWords(also.map(({male, kinship}) => `${male.band} (${percentSign(kinship)})`))}`}.`]
}

/** The same in one line, for the page that everybody opens; null when no limit is passed. */
export function remedyLine(passed: RatePassed | null, found: OneMoreMale | null): string | null {
  if (passed === null) return null
  const best = found?.choices[0]
  return `${ratePassedWords(passed)} ${found && best && helps(found, best.kinship) ? `The cheapest remedy in the flock is one male more: ${best.male.band} would bring the kinship to be expected from ${percentSign(found.now)} to ${percentSign(best.kinship)}.` : 'No one male more of this flock would mend it.'}`
}
