/** What to do next, as the findings have it: what is due, who stands in the way, which male into which pen, what else would tell. Only of the latest season and step. */
import {grouped} from '../findings/grouped.ts'
import {malesPlaced} from '../findings/males-placed.ts'
import {neededToTell} from '../findings/needed-to-tell.ts'
import type {Findings} from '../findings/study.ts'
import type {Upcoming} from '../findings/upcoming.ts'
import {nextSeasonWords} from './choosing-words.ts'
import {daySpan, dayWords} from './dates.ts'
import {homeFixation} from './home-fixation.ts'
import {maleWarning} from './harm-words.ts'
import {counted, countWord, figured, listWords, percentSign, sentence} from './numbers.ts'
import {comingWords} from './upcoming-words.ts'

export interface ToDo {
  readonly head: string
  readonly text: string
}

/** Things due that are named, and pens. */
const DUE = 5, PENS = 6

type Aged = Extract<Upcoming, {readonly kind: 'weigh' | 'score'}>

/** Weighings and scorings of one trait on many days are one thing to do. */
function aged(entries: readonly Aged[]): string {
  const [first] = entries, birds = figured(new Set(entries.flatMap(entry => entry.birds)).size, 'bird')
  if (!first) return ''
  const from = entries.reduce((least, entry) => Math.min(least, entry.kind === 'weigh' ? entry.from : entry.on), Infinity), to = entries.reduce((most, entry) => Math.max(most, entry.kind === 'weigh' ? entry.to : entry.on), -Infinity)
  return `${first.trait.name}, ${birds}: ${first.kind === 'weigh' ? `to be taken between ${daySpan(from, to).replace(' to ', ' and ')}` : `can be scored from ${dayWords(from)}`}.`
}

function due({upcoming, book}: Findings): readonly ToDo[] {
  const byTrait = grouped(upcoming, entry => (entry.kind === 'weigh' || entry.kind === 'score' ? entry.trait : entry))
  const all = [...byTrait.values()].flatMap(entries => {
    const ages = entries.filter((entry): entry is Aged => entry.kind === 'weigh' || entry.kind === 'score'), [first] = entries
    if (ages.length > 0 || !first) return [aged(ages)]
    const {when, title, text} = comingWords(first, book.asOf)
    return [first.kind === 'planned-step' ? `${title} is planned.` : `${title}, ${when}: ${text}`]
  })
  return all.length === 0 ? [] : [{head: 'Due.', text: `${all.slice(0, DUE).join(' ')}${all.length > DUE ? ` ${sentence(counted(all.length - DUE, 'thing'))} more later.` : ''}`}]
}

/** One male for every pen, so that the chicks are the least inbred, with what speaks against him. */
function pens({pairings, pairHarm}: Findings): readonly ToDo[] {
  const placed = malesPlaced(pairings).pens.flatMap(({pen: {pen, hens}, placed: him}) => {
    if (!pen || !him) return []
    const warning = maleWarning(him.male, hens, pairHarm)
    return [`${pen.id} ${him.male.band}${him.here ? ', there now' : ''} (${him.atLeast ? 'at least ' : ''}${percentSign(him.mean)}, at most ${percentSign(him.worst.high)}${warning === '' ? '' : `; beware, ${warning}`})`]
  })
  return placed.length === 0 ? [] : [{head: 'Males for the hens of the pens as they stand, none in two, by kinship alone.', text: `${placed.slice(0, PENS).join('; ')}${placed.length > PENS ? `; and ${placed.length - PENS} pens more` : ''}: in brackets F of the chicks.`}]
}

function hidden(findings: Findings): readonly ToDo[] {
  const found = homeFixation(findings)
  if (found === null) return []
  const birds = found.inTheWay.map(({head, birds: own}) => `${head}: ${listWords(own.map(({text, says}) => `${text} (${says})`))}`)
  return [
    {head: 'Hidden in the breeders.', text: `${found.words}${found.warning === '' ? '' : ` ${found.warning}`}`},
    ...(birds.length === 0 ? [] : [{head: 'Test, or leave out.', text: `${birds.join('; ')}.`}]), ...(found.doubts ? [{head: 'In doubt.', text: `${found.doubts.text}: see who was in the pen, and look at the birds again.`}] : []),
  ]
}

/** What the season after this would have to hold to be believed further. */
function toTell({summaries}: Findings): readonly ToDo[] {
  const found = neededToTell(summaries)
  if (!found || (!found.families && !found.spread)) return []
  const {season, families, spread} = found
  return [{
    head: 'To be able to tell.',
    text: [
      ...(families ? [`Let ${countWord(families.need)} cocks or more have chicks in a season: with ${families.have} in ${season} or the season before nothing can be said of birds bred like these.`] : []),
      ...(spread ? [`To see the spread of ${spread.trait.name.toLowerCase()} shrink by a fifth about three times in four, some ${spread.need} birds reared in lots of five and more are measured each season; ${season} had ${spread.have}.`] : []),
    ].join(' '),
  }]
}

export function toDo(findings: Findings): readonly ToDo[] {
  const tell = nextSeasonWords(findings)
  return [...due(findings), ...hidden(findings), ...pens(findings), ...toTell(findings), ...(tell === '' ? [] : [{head: 'What choosing did.', text: tell}])]
}
