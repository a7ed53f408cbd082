/** What the records cannot show: missing and uncertain data, counted, each with the birds and records that lack it. */
import type {Gap} from '../findings/gaps-of-records.ts'
import type {Findings} from '../findings/study.ts'
import {besidesOf, type References} from './dossier-behind.ts'
import type {Told} from './dossier-flock.ts'
import {leftOutWords} from './estimate-words.ts'
import {DOUBTS} from './links.ts'
import {counted, listWords, sentence} from './numbers.ts'

const WORDS: Readonly<Record<Gap['kind'], {readonly of: string; readonly words: (gap: Gap) => string}>> = {
  unbanded: {of: 'Never banded', words: ({count, of}) => `${count} of ${of} chicks hatched never wore a band; they count in every share they were scored for.`},
  unlisted: {of: 'Never listed', words: ({count}) => `${sentence(counted(count, 'chick'))} hatched without being listed at all.`},
  parents: {of: 'A parent in doubt', words: ({count, of}) => `Of ${count} of ${of} banded birds of the breed a parent is uncertain or unknown.`},
  'several-sires': {of: 'One of several sires', words: ({count}) => `The sire of ${counted(count, 'banded bird')} of the breed is one of several.`},
  'several-dams': {of: 'One of several dams', words: ({count}) => `The dam of ${counted(count, 'banded bird')} of the breed is one of several.`},
  'hatch-day': {of: 'Hatch day not known', words: ({count, of}) => `Of ${count} of ${of} banded birds of the breed the hatch day is not known.`},
  sex: {of: 'Never sexed', words: ({count, of}) => `${count} of ${of} banded birds of the breed were never sexed.`},
  keeper: {of: 'Keeper not known', words: ({count, of}) => `Of ${count} of ${of} living banded birds of the breed no keeper is on record.`},
  candled: {of: 'Not candled', words: ({count, of}) => `${count} of ${of} settings were not candled, so their fertility cannot be told.`},
  'left-undated': {of: 'Left on an unknown day', words: ({count}) => `${sentence(counted(count, 'bird'))} of the breed left on a day nobody wrote down.`},
  'lost-band': {of: 'Lost a band', words: ({count}) => `${sentence(counted(count, 'bird'))} of the breed lost a band.`},
  'maybe-another': {of: 'May be another bird', words: ({count}) => `${sentence(counted(count, 'bird'))} of the breed may be another bird in the book.`},
  outside: {of: 'Outside the days that count', words: ({count}) => `${sentence(counted(count, 'score or weighing was', 'scores or weighings were'))} made outside the days that count.`},
  unlike: {of: 'Scored in two ways', words: ({count}) => `${sentence(counted(count, 'banded bird'))} of the breed ${count === 1 ? 'was' : 'were'} scored for a required look in two ways on two days, and neither was struck; the later counts.`},
  'step-differs': {of: 'Another step than written', words: ({count}) => `Of ${counted(count, 'bird')} of the breed the keeper wrote another step than descent gives.`},
}

/** Scores and sheets of points that were struck; where they are listed they have their references there. */
function struckSentences({book, struckScores}: Findings): readonly string[] {
  const scores = struckScores.length, sheets = book.sheets.filter(({struck}) => struck !== null).length
  return [
    ...(scores === 0 ? [] : [`${sentence(counted(scores, 'score was', 'scores were'))} struck out.`]),
    ...(sheets === 0 ? [] : [`${sentence(counted(sheets, 'sheet of points was', 'sheets of points were'))} struck out.`]),
  ]
}

/** Strains of several founding birds that are taken as strangers because nobody stated their kinship. */
function kinSentence({book}: Findings): readonly string[] {
  const silent = book.strains.filter(({kinship, inbreeding}) => kinship === 0 && inbreeding === 0)
    .filter(strain => book.birds.filter(bird => bird.parentage.kind === 'founder' && bird.strain === strain).length > 1).map(({name}) => name)
  return silent.length === 0 ? [] : [`Founders of ${listWords(silent)} are taken as no kin of one another; if they were kin, the breed is more inbred than descent shows.`]
}

export function gapsTold(findings: Findings, refs: References): readonly Told[] {
  const {book, trueBred} = findings, aside = trueBred.interSe ? leftOutWords(trueBred.interSe.rate.leftOut) : ''
  const plain = (sentences: readonly string[]): readonly Told[] => sentences.map(text => ({text, ref: null}))
  const lines = [
    ...findings.gaps.map((gap): Told => {
      const {of, words} = WORDS[gap.kind]
      return {text: words(gap), ref: refs.to({of: `Gap: ${of.toLowerCase()}`, birds: gap.birds, ...besidesOf(gap.unbanded), records: gap.records, page: gap.kind === 'parents' ? DOUBTS : null})}
    }),
    ...plain(struckSentences(findings)),
    ...plain(book.later === 0 ? [] : [`${sentence(counted(book.later, 'fact'))} dated after the day of these records ${book.later === 1 ? 'is' : 'are'} left aside.`]),
    ...plain(aside === '' ? [] : [`By the required traits, as Figure 1 has it, the true-bred rate of matings inside the breed leaves out ${aside}.`]), ...plain(kinSentence(findings)),
  ]
  return lines.length === 0 ? plain(['Nothing is on record yet, so nothing is missing either.']) : lines
}
