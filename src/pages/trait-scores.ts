/** Scores that did not agree and scores that were struck out: how many, how often, and on which birds. */
import type {Misscoring} from '../findings/misscoring.ts'
import type {Bird, Logbook, Score, Trait} from '../logbook/book.ts'
import {scoreWords} from './bird-looks.ts'
import {ageWords, dateWords} from './dates.ts'
import {cannotSay} from './estimate-words.ts'
import {birdPath} from './links.ts'
import {figured, limits, listWords, NOTHING, ofWords, percent, percentSign} from './numbers.ts'
import type {Cell, Table} from './page.ts'

/** Birds listed at most; the count above says how many there are. */
const MOST = 40

const onWords = (score: Score): string => (score.on ? dateWords(score.on) : 'no day given')
const bandCell = (bird: Bird): Cell => ({text: bird.band, link: birdPath(bird)})

/** Which of many weighings a measured trait takes; empty for the others. */
function measuredWords({kind, measure, atAge, window}: Trait): string {
  if (kind !== 'measured' || measure === null || atAge === null) return ''
  return `Taken from the weigh days’ ${measure}: of the days within ${figured(window ?? 7, 'day')} of ${ageWords(atAge)} the nearest counts, of two equally near the earlier.`
}

export interface ScoreDisputes {
  readonly words: readonly string[]
  readonly twice: Table | null
  readonly struck: Table | null
}

function twiceTable({birds}: Misscoring, units: Logbook['project']['units']): Table | null {
  if (birds.length === 0) return null
  return {
    caption: 'Scored more than once, and not alike; the last counts', columns: [{head: 'Bird'}, {head: 'Scores in turn'}],
    rows: birds.slice(0, MOST).map(({bird, scores}): readonly Cell[] => [bandCell(bird), scores.map(score => `${scoreWords(score, units)} (${onWords(score)})`).join(', then ')]),
  }
}

export function scoreDisputes(trait: Trait, book: Logbook, misscoring: Misscoring | null): ScoreDisputes {
  const {units} = book.project
  const aside = book.birds.flatMap(bird => (bird.looks.get(trait)?.scores ?? []).filter(score => score.struck !== null || score.outside).map(score => ({bird, score})))
  const struck = aside.filter(({score}) => score.struck !== null)
  const share = misscoring?.disagreements
  return {
    words: [
      measuredWords(trait),
      ...(share === undefined ? [trait.kind === 'measured' || trait.kind === 'graded' ? '' : 'No bird was scored for it more than once, so the flock’s own rate of mistakes cannot be told.']
        : share.kind === 'cannot-say' ? [`Scored more than once: ${cannotSay(share)}.`]
          : [`${ofWords(share.count, share.total)} repeated ${share.total === 1 ? 'scoring' : 'scorings'} (${percentSign(share.value)}, ${limits(share.interval)}) ${share.total === 1 ? 'differs' : 'differ'} from the one before.${misscoring === null || misscoring.perScoring === null || share.count === 0 ? '' : ` If each scoring is as likely to be wrong, that is ${percent(misscoring.perScoring)} in a hundred.`}`]),
      ...(aside.length === 0 ? [] : [`${figured(aside.length, 'score')} ${aside.length === 1 ? 'is' : 'are'} kept on record and not counted: ${listWords([...(struck.length > 0 ? [`${struck.length} struck out`] : []), ...(aside.length > struck.length ? [`${aside.length - struck.length} too early or off the day`] : [])])}.`]),
    ].filter(words => words !== ''),
    twice: misscoring ? twiceTable(misscoring, units) : null,
    struck: struck.length === 0 ? null : {
      caption: 'Struck out', columns: [{head: 'Bird'}, {head: 'Scored'}, {head: 'On'}, {head: 'Reason'}],
      rows: struck.slice(0, MOST).map(({bird, score}): readonly Cell[] => [bandCell(bird), scoreWords(score, units), onWords(score), score.struck ?? NOTHING]),
    },
  }
}
