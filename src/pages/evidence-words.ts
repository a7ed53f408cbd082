/** What the records show for a requirement, in a sentence with its numbers, and the page where they stand. */
import type {Evidence} from '../findings/evidence.ts'
import {leftOut} from '../findings/evidence-found.ts'
import type {Shown} from '../findings/evidence-shown.ts'
import type {Logbook} from '../logbook/book.ts'
import {dateWords, dayWords} from './dates.ts'
import {inbreedingWords} from './evidence-of-closeness-words.ts'
import {fixedWords} from './evidence-of-genes-words.ts'
import {birdsPerShowWords, classWords, resultWords, showsWords, yearsShownWords} from './evidence-of-shows-words.ts'
import {evenWords, trueWords} from './evidence-of-type-words.ts'
import {welfareWords} from './evidence-of-welfare-words.ts'
import {breedersWords, interSeWords, keepersWords, yearsBredWords} from './evidence-of-work-words.ts'
import {distinctWords, historyWords, identityWords, paperWords, photoWords, standardWords} from './evidence-on-paper-words.ts'
import {BIRDS, HATCHES, KEEPERS, LADDER, SHOWS, STANDARD, stepPath, traitPath, TRAITS} from './links.ts'
import {IN_PUBLIC, type Naming} from './naming.ts'
import {counted, sentence} from './numbers.ts'

/** What is shown, what of it is too old to count, and whether the day for it is past. */
export function shownWords(item: Evidence, book: Logbook, naming: Naming = IN_PUBLIC): string {
  return [figureWords(item, book, naming), agedWords(item), noDayWords(item, book), lateWords(item)].filter(words => words !== '').join(' ')
}

/** `Two records are older than the rule allows and do not count, the latest of 3 May 2020.` */
function agedWords({aged: {older, earlier, later, undated, pure, last}, requirement: {from, by}}: Evidence): string {
  const said = (count: number, why: string, which = '', noun = 'record', nouns = 'records'): readonly string[] => (count === 0 ? [] : [`${sentence(counted(count, noun, nouns))} ${count === 1 ? 'is' : 'are'} ${why} and ${count === 1 ? 'does' : 'do'} not count${which}.`])
  return [
    ...said(older, 'older than the rule allows', last === null ? '' : older === 1 ? `: it is of ${dayWords(last)}` : `, the latest of ${dayWords(last)}`),
    ...said(earlier, `from before ${from ? dateWords(from) : 'the day asked'}`), ...said(later, `from after ${by ? dateWords(by) : 'the day asked'}`), ...said(undated, 'of no known day'), ...said(pure, `of ${pure === 1 ? 'a bird' : 'birds'} of a pure strain`, '', 'entry', 'entries'),
  ].join(' ')
}

/** Of a book looked back at: what bears no day may have been written since. */
const noDayWords = ({noDay}: Evidence, {asOf}: Logbook): string => (noDay === null ? '' : `The ${NO_DAY[noDay]} bears no day, and may be from after ${dayWords(asOf)}.`)
const NO_DAY = {statement: 'statement', table: 'table of distinctness', waiver: 'waiver'} as const

const lateWords = ({late, requirement: {by}}: Evidence): string => (late && by ? `It had to be reached by ${dateWords(by)}, and was not.` : '')

function figureWords({requirement, shown, aged, ways}: Evidence, book: Logbook, naming: Naming): string {
  switch (shown.kind) {
    case 'years-bred': return yearsBredWords(shown, requirement)
    case 'inter-se-generations': return interSeWords(shown, aged)
    case 'independent-keepers': return keepersWords(shown, naming)
    case 'breeders-alive': return breedersWords(shown, book)
    case 'shown-per-class': return classWords(shown, requirement)
    case 'shows-and-judges': return showsWords(shown)
    case 'show-result': return resultWords(shown, requirement)
    case 'true-to-type': return trueWords(shown, requirement)
    case 'even-weight': return evenWords(shown, requirement, book)
    case 'written-standard': return standardWords(shown)
    case 'distinct': return distinctWords(shown)
    case 'history': return historyWords(shown)
    case 'photographs': return photoWords(shown, ways.some(({kind}) => kind === 'photographs'))
    case 'papers': return paperWords(shown, naming)
    case 'stated': return `The keeper states: ${shown.stated}`
    case 'identity': return identityWords(shown)
    case 'consecutive-shows': return yearsShownWords(shown)
    case 'birds-per-show': return birdsPerShowWords(shown)
    case 'fixed': return fixedWords(shown)
    case 'inbreeding': return inbreedingWords(shown)
    case 'welfare': return welfareWords(shown)
    case 'nothing-recorded': return `The records hold nothing on it${leftOut(aged) > 0 ? ' that counts' : ''}.`
  }
}

/** Where the numbers stand: a page of the site, or a place in the dossier itself. */
export function whereShown(shown: Shown): {readonly text: string; readonly link: string} | null {
  switch (shown.kind) {
    case 'years-bred': return {text: 'Hatches', link: HATCHES}
    case 'inter-se-generations': case 'true-to-type': return {text: 'Ladder', link: LADDER}
    case 'independent-keepers': return {text: 'Keepers', link: KEEPERS}
    case 'breeders-alive': case 'identity': case 'inbreeding': return {text: 'Birds', link: BIRDS}
    case 'shown-per-class': case 'shows-and-judges': case 'show-result': case 'consecutive-shows': case 'birds-per-show': return {text: 'Shows', link: SHOWS}
    case 'even-weight': return {text: `Step ${shown.step}`, link: stepPath(shown.step)}
    case 'written-standard': return {text: 'Standard', link: STANDARD}
    case 'distinct': return {text: 'Distinctness, below', link: '#distinctness'}
    case 'history': return {text: 'History, below', link: '#history'}
    case 'papers': return {text: 'Papers, below', link: '#papers'}
    case 'fixed': return shown.trait === null ? {text: 'Traits', link: TRAITS} : {text: shown.trait.name, link: shown.loci.length === 0 ? traitPath(shown.trait) : `${traitPath(shown.trait)}#may-hide`}
    case 'welfare': return shown.life === null ? {text: 'Traits', link: TRAITS} : {text: 'Hatches', link: HATCHES}
    case 'photographs': return {text: 'Photographs, below', link: '#photographs'}
    case 'stated': case 'nothing-recorded': return null
  }
}
