/** How closely the birds of a step are bred: mean F beside mean kinship, what a generation cost, the project's limits, and a caution where they are passed. */
import {candle} from '../charts/candle.ts'
import {axisFromZero} from '../charts/egg-rows.ts'
import type {ClosenessLimits} from '../findings/closeness-limits.ts'
import type {ClosenessOfStep} from '../findings/closeness.ts'
import type {Interval} from '../findings/estimate.ts'
import type {Findings} from '../findings/study.ts'
import type {Stat} from './hatch.ts'
import {strongerWords} from './one-more-male-words.ts'
import {figured, limits, listWords, NOTHING, ofWords, percent, percentSign, rounded} from './numbers.ts'

export interface StepClosenessView {
  readonly scale: string
  readonly stats: readonly Stat[]
  readonly words: readonly string[]
  readonly caution: {readonly head: string; readonly text: string} | null
}

/** Null while no bird of the step is banded. */
export function stepCloseness(label: string, findings: Findings): StepClosenessView | null {
  const place = findings.closeness.findIndex(({step}) => step === label)
  const found = findings.closeness[place], against = findings.closenessLimits[place]
  if (!found || !against) return null
  const range = percent(found.meanLow) === percent(found.meanHigh) ? null : {low: found.meanLow, high: found.meanHigh}
  const level = scaleOf([found.meanHigh, found.kinship, against.mating?.limit ?? 0])
  return {
    scale: scaleWords(level, found, against),
    stats: [
      stat('Mean F', {value: found.mean, range, to: level, mark: against.mating?.limit ?? null},
        `${range ? `${limits(range)} by who the parents are; ` : ''}${figured(found.birds, 'banded bird')}.`),
      stat('Mean kinship', {value: found.kinship, range: null, to: level, mark: against.mating?.limit ?? null}, 'Among these birds, each with itself included: where F goes if they are mated at random.'),
      ...rates(found, against),
    ],
    words: wordsOf(found, against), caution: caution(found, against, findings),
  }
}

/** Of F and kinship, and of the rates where there are any. */
function scaleWords(level: number, {realised, rate}: ClosenessOfStep, {mating, rate: against}: ClosenessLimits): string {
  const dotted = [...(mating ? [`${percentSign(mating.limit)} for a mating`] : []), ...(against && realised ? [`${percentSign(against.limit)} a generation`] : [])]
  const scales = `F and kinship on a scale from 0 to ${percent(level)}${realised && (rate || realised.count > 0) ? `, rates from 0 to ${percent(rateScale(rate, realised, against))}` : ''}.`
  return dotted.length === 0 ? scales : `${scales} Dotted: the project’s limit, ${listWords(dotted)}.`
}

const rateScale = (rate: ClosenessOfStep['rate'], realised: NonNullable<ClosenessOfStep['realised']>, against: ClosenessLimits['rate']): number =>
  scaleOf([rate?.value ?? 0, realised.rate, against?.limit ?? 0])

interface Drawn {
  readonly value: number
  readonly range: Interval | null
  readonly to: number
  readonly mark: number | null
}

const scaleOf = (shares: readonly number[]): number => axisFromZero(shares.map(share => Math.max(0, share) * 100)).to / 100

function stat(title: string, {value, range, to, mark}: Drawn, words: string): Stat {
  const over = mark !== null && value > mark + 1e-12
  const label = `${percent(value)} per cent${range ? `, ${limits(range)}` : ''}${mark === null ? '' : `, limit ${percent(mark)}`}`
  return {title, value: percent(value).replace('-', '−'), unit: '%', candle: {...candle(value, range, {from: 0, to}, mark, over), label}, words}
}

/** What a generation of the closed phase cost; nothing outside of it. */
function rates({rate, realised, birds}: ClosenessOfStep, {rate: against}: ClosenessLimits): readonly Stat[] {
  if (!realised) return []
  const drawn = {range: null, to: rateScale(rate, realised, against), mark: against?.limit ?? null}
  const size = typeof realised.size === 'number'
    ? `as in a flock of ${rounded(realised.size, 1)} breeding birds${realised.standardError === null ? '' : `, standard error ${rounded(realised.standardError, 1)} at the least`}`
    : 'F has not risen, so it is like no size of flock'
  return [
    rate ? stat(`Rise since ${rate.since}`, {...drawn, value: rate.value}, `Of what was not yet inbred in ${rate.since}, lost in one generation.`)
      : notSaid('Rise since the step before', 'The first step mated inside the line: there is none before it to compare with.'),
    realised.count === 0 ? notSaid('Birds’ own rate', 'No bird has two generations of ancestors on record.')
      : stat('Birds’ own rate', {...drawn, value: realised.rate}, `A generation, mean of ${ofWords(realised.count, birds)}: ${size}.`),
  ]
}

const notSaid = (title: string, words: string): Stat => ({title, value: NOTHING, unit: '', candle: null, words})

function wordsOf({most, doubtful, atLeast, birds, unbanded, generations, onZ, heterozygosity}: ClosenessOfStep, {mating}: ClosenessLimits): readonly string[] {
  const known = [
    ...(doubtful > 0 ? [`parents are in doubt for ${doubtful}`] : []), ...(atLeast > 0 ? [`a grandparent is not on record for ${atLeast}, whose F is “at least”`] : []),
  ]
  return [
    `${most.f > 0.0005 ? `Highest is ${most.bird.band}, at up to ${percentSign(most.f)}. ` : ''}${mating && mating.over.length > 0 ? `${ofWords(mating.over.length, birds)} birds are, or may be, above the limit for a mating. ` : ''}${onZ ? `On the Z the ${onZ.cocks === 1 ? 'one cock stands' : `${figured(onZ.cocks, 'cock')} stand`} at ${percentSign(onZ.mean)}. ` : ''}In ${percentSign(heterozygosity)} of genes the two copies are expected to be of different strains.`,
    `Descent is known for ${rounded(generations, 1)} equivalent complete generations on average${known.length > 0 ? `; ${listWords(known)}` : ''}.${unbanded > 0 ? ` ${figured(unbanded, 'unbanded chick')} left out.` : ''}`,
  ]
}

/** Said in plain words when the flock has lost more in a generation than its keeper allows, with the male that would mend most. */
function caution({step, rate, realised}: ClosenessOfStep, {rate: against}: ClosenessLimits, findings: Findings): StepClosenessView['caution'] {
  if (!against || !(against.stepOver || against.ownOver)) return null
  const lost = against.stepOver && rate ? `From ${rate.since} to ${step} the line lost ${percentSign(rate.value)} of the variety it had left` : `The birds of ${step} have lost ${percentSign(realised?.rate ?? 0)} a generation`
  const {ratePassed, oneMoreMale} = findings
  const [best] = oneMoreMale?.choices ?? []
  const helps = ratePassed?.step === step && oneMoreMale && best && best.kinship < oneMoreMale.now - 1e-9
  const stronger = ratePassed?.step === step ? strongerWords(findings) : ''
  const remedy = helps ? `One male more, ${best.male.band}, would bring the mean kinship to be expected of the next generation from ${percentSign(oneMoreMale.now)} to ${percentSign(best.kinship)}.`
    : 'More males, and pairs that are less kin, slow it; what is lost comes back only with other blood.'
  return {head: 'Over the project’s limit.', text: `${lost}; the project allows ${percentSign(against.limit)}. ${remedy}${stronger === '' ? '' : ` ${stronger}`}`}
}
