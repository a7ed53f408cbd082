/** A bird's life in words: bands it wore, how its sex was told, where it lived, whether it was kept and how it left. */
import type {Bird, Leaving} from '../logbook/book.ts'
import type {PartialDate} from '../records/dates.ts'
import {dateWords, onDate, stayWords} from './dates.ts'

/** A line of a dated list; `when` may be words: `day not recorded`. */
export interface Dated {
  readonly when: string
  readonly text: string
}

const NO_DAY = 'day not recorded'
const when = (date: PartialDate | null): string => (date ? dateWords(date) : NO_DAY)

/** How it left, in a word or two. */
export const LEFT = {
  died: 'died', culled: 'culled', sold: 'sold', given: 'given away', lent: 'lent out', lost: 'lost', taken: 'taken',
} as const satisfies Record<Leaving['how'], string>

/** `culled, off type` */
export const leftWords = (left: Leaving): string => (left.why === null ? LEFT[left.how] : `${LEFT[left.how]}, ${left.why}`)

/** `culled on 24 March 2024, off type` */
export function leftSentence(left: Leaving): string {
  const day = left.on ? ` ${onDate(left.on)}` : ', on a day not recorded'
  return `${LEFT[left.how]}${day}${left.why === null ? '' : `, ${left.why}`}`
}

/** Every band with its time, oldest first: `Y-118, March to May 2022`; one band worn throughout is no history. */
export function bandHistory(bird: Bird): readonly {readonly band: string; readonly text: string}[] {
  if (bird.bands.length === 1 && bird.bands[0]?.from === null && bird.bands[0].to === null && !bird.bands[0].lost) return []
  return bird.bands.map(({band, from, to, lost}) => {
    const stay = stayWords(from, to)
    return {band, text: [...(stay === null ? ['dates not recorded'] : [stay]), ...(lost ? ['then lost'] : [])].join(', ')}
  })
}

/** How its sex was told, oldest first; a change is said plainly. Nothing when it was told once and for all. */
export function sexHistory(bird: Bird): readonly Dated[] {
  if (bird.sexings.length === 0 || (bird.sexings.length === 1 && bird.sexings[0]?.because === null)) return []
  return bird.sexings.map((sexing, index) => {
    const before = bird.sexings[index - 1]
    const is = sexing.is === 'unknown' ? 'could not be sexed' : before && before.is !== sexing.is && before.is !== 'unknown'
      ? `found to be ${sexing.is}, not ${before.is} as taken before` : `sexed as ${sexing.is}`
    return {when: when(sexing.on), text: sexing.because === null ? is : `${is}: ${sexing.because}`}
  })
}

/** Was it ever taken for the other sex? */
export const wasMissexed = (bird: Bird): boolean => new Set(bird.sexings.map(({is}) => is).filter(is => is !== 'unknown')).size > 1

/** The keeper it is with on the last day of the book, or was with last. */
export const lastKeeper = (bird: Bird): string | null => bird.keptAt.at(-1)?.keeper.name ?? null
