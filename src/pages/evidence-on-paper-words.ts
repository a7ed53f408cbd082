/** Evidence on paper, in words: the standard, the table of distinctness, history, pictures, papers and how the birds are told apart. */
import type {Shown} from '../findings/evidence-shown.ts'
import type {PictureWanted} from '../findings/ways.ts'
import {sexesWords} from './count-words.ts'
import {dateWords, dayWords} from './dates.ts'
import {bandsOf, someOf} from './evidence-of-work-words.ts'
import {shareInText} from './estimate-words.ts'
import type {Naming} from './naming.ts'
import {counted, countWord, figured, listWords, saying, sentence} from './numbers.ts'
import {SECTION_WORDS} from './section-words.ts'

type Of<Kind extends Shown['kind']> = Extract<Shown, {kind: Kind}>

export function standardWords({draft, clauses, emptySections, emptyClauses, missing, points, mandatory, unscored}: Of<'written-standard'>): string {
  const gaps = [
    ...(missing.length === 0 ? [] : [`no section on ${listWords(missing.map(kind => SECTION_WORDS[kind]), 'or')}`]),
    ...(emptySections.length === 0 ? [] : [`nothing yet under ${listWords(emptySections)}`]),
    ...(emptyClauses.length === 0 ? [] : [`no words in ${listWords(emptyClauses.map(({title}) => title))}`]),
  ]
  return [
    `Draft ${draft}, ${figured(clauses, 'clause')}, ${gaps.length === 0 ? 'every section there and filled' : gaps.join(', ')}, ${figured(points, 'point')}.`,
    mandatory === 0 ? 'No clause is marked mandatory.' : `${sentence(counted(mandatory, 'clause is', 'clauses are'))} mandatory.`,
    ...(unscored.length === 0 ? [] : [`Of these nobody can score ${someOf(unscored.map(({id}) => id))}: no trait shows ${unscored.length === 1 ? 'it' : 'them'}.`]),
  ].join(' ')
}

/** As the keeper wrote them; with a comma in one they are parted by semicolons. */
export const charactersWords = (characters: readonly string[]): string => (characters.some(each => each.includes(',')) ? characters.join('; ') : listWords(characters))

export function distinctWords({breeds}: Of<'distinct'>): string {
  const say = saying(...breeds.map(({differing}) => differing.length)), open = breeds.filter(({unfilled}) => unfilled.length > 0)
  const said = breeds.map(({breed, differing}) => `from ${breed} in ${say(differing.length, 'character')}${differing.length === 0 ? '' : ` (${charactersWords(differing)})`}`).join('; ')
  return `${sentence(said)}.${open.length === 0 ? '' : ` Not filled in: ${open.map(({breed, unfilled}) => `beside ${breed} ${charactersWords(unfilled)}`).join('; ')}.`}`
}

export const historyWords = ({founders, unfounded, steps, hatched, kept}: Of<'history'>): string => [
  `Founders: ${listWords(founders.map(({strain, birds}) => `${birds} ${strain.name}`)) || 'none on record'}; ${figured(steps, 'step')}, ${figured(hatched, 'chick')} hatched, ${figured(kept, 'breeder')} living.`,
  ...(unfounded.length === 0 ? [] : [`No founder of ${listWords(unfounded.map(({name}) => name))} is on record.`]),
].join(' ')

/** `a young male`, `a grown female of variety Light` */
export const pictureWords = ({sex, age, variety}: Omit<PictureWanted, 'living'>): string => `a ${age === null ? '' : `${age} `}${sex}${variety === null ? '' : ` of variety ${variety}`}`

/** More kinds of picture than this are named once, in the way to them. */
const MOST_MISSING = 2

/** @param isNamed  whether the way to meet it names those that are missing */
export function photoWords({birds, photos, dated, missing, wanted}: Of<'photographs'>, isNamed: boolean): string {
  const few = isNamed && missing.length > MOST_MISSING ? `Of ${countWord(missing.length)} of the ${countWord(wanted)} kinds that are wanted there is no dated one` : `No dated one of ${listWords(missing.map(pictureWords), 'or')}`
  const none = missing.length === 0 ? wanted > 1 ? ` ${sentence(countWord(wanted))} kinds are wanted, by sex, age and variety, and all are among them.` : '' : ` ${few}.`
  if (photos === 0) return `No photograph of a bird of the breed.${none}`
  return `${figured(photos, 'photograph')} of ${figured(birds.all, 'bird')}: ${sexesWords(birds)}; ${dated === photos ? 'all' : dated} dated.${none}`
}

export function paperWords({papers, valid, keepers, until}: Of<'papers'>, naming: Naming): string {
  const last = papers.at(-1)
  if (!last) return 'No paper on record.'
  const told = valid.length > 0 ? valid : [last]
  const words = told.map(({title, on, until: end, keeper}) => `${title}${keepers && keeper ? ` (${naming.keeper(keeper)})` : ''}, ${dateWords(on)}${end ? `, ${valid.length > 0 ? 'holds' : 'held'} until ${dateWords(end)}` : ''}`).join('; ')
  const ends = valid.length > 0 && until !== null && !valid.some(paper => paper.until?.last === until) ? [`By the rule the last counts until ${dayWords(until)}.`] : []
  return [`${words}.`, ...(valid.length > 0 ? [] : ['None holds now.']), ...ends, ...signerWords(keepers, naming)].join(' ')
}

function signerWords(keepers: Of<'papers'>['keepers'], naming: Naming): readonly string[] {
  if (keepers === null) return []
  const {signed, without, unnamed} = keepers
  return [
    ...(signed.length === 0 ? [] : [`Signed by ${counted(signed.length, 'keeper')}.`]), ...(without.length === 0 ? [] : [`None yet of ${listWords(without.map(naming.keeper), 'or')}.`]),
    ...(unnamed === 0 ? [] : [`${sentence(counted(unnamed, 'paper does', 'papers do'))} not say whose ${unnamed === 1 ? 'it is' : 'they are'}.`]),
  ]
}

export function identityWords({banded, bothParents, uncertain}: Of<'identity'>): string {
  const who = uncertain.length === 0 ? '' : ` A parent is uncertain of ${bandsOf(uncertain)}.`
  return `Living birds banded: ${shareInText(banded)}; both parents certain: ${shareInText(bothParents)}.${who}`
}
