/** The shortest way in type, evenness, descent and welfare, in words. */
import type {WantingOfBreeding} from '../findings/ways-of-breeding.ts'

/** What is wanting, without a full stop; `way-words.ts` joins it to the rest and adds when it can be there. */
export function breedingWayWords({kind}: WantingOfBreeding): string {
  return kind.replaceAll('-', ' ')
}
