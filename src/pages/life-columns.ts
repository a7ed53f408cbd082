/** What each column of the figures of hatch, life and lay holds, in a few words: for the help of the command. */
import type {LifeQuestion} from '../findings/life-figures.ts'

export const LIFE_COLUMN_WORDS: Readonly<Record<LifeQuestion, Readonly<Record<string, string>>>> = {
  lay: {
    what: 'fertility, hatch of fertile, hatch of set, dead in germ, dead in shell, livability, hen-day, hen-housed, egg weight, age at first egg, weight, gain a day, or what became of the feed',
    of: 'step, season, way (hen or machine), pen, hatch or hen', name: 'of the step, the year, the pen …', against: 'the group it is set beside: the row is then of their difference; others stands for all other pens of the season', sex: 'male, female or unknown',
    age: 'days: livability to it, weight at it, gain up to it', value: 'the share, rate or mean; of two groups the first less the second', low: 'lower end of the 95% interval, the one to read', high: 'upper end', unit: 'share, points, g, days …',
    count: 'eggs or chicks it is so of; eggs laid', total: 'of so many; hen-days, hens, birds weighed, bird-days', left_out: 'settings not counted, chicks not followed, eggs of days that cannot be told, hens without a first egg written', groups: 'sire families, settings, hens, pens or weeks that the interval is drawn from',
    missing_days: 'between the first day counted and the last, of which nothing is written', speaks_of: 'what the interval may be taken for', verdict: 'of two groups: more, less, or cannot tell', kept_alike: 'yes, no or not told: whether the records say that the two were kept apart',
    unlike: 'in what they were', method: 'of the value or the interval',
  },
}
