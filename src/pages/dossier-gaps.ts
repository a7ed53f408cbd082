/** What the records cannot show: missing and uncertain data, counted. */
import type {Share, CannotSay} from '../findings/estimate.ts'
import type {Findings} from '../findings/study.ts'
import {leftOutWords} from './estimate-words.ts'
import {counted, listWords, sentence} from './numbers.ts'

const wanting = (share: Share | CannotSay, words: (missing: number, total: number) => string): readonly string[] =>
  (share.kind === 'share' && share.count < share.total ? [words(share.total - share.count, share.total)] : [])

function countedGaps({audit: {counts}}: Findings): readonly string[] {
  const lines: readonly (readonly [number, (count: string) => string])[] = [
    [counts.uncertainSire, count => `${count} may have one of several sires.`],
    [counts.uncertainDam, count => `${count} may have one of several dams.`],
    [counts.leftUndated, count => `${count} left on a day nobody wrote down.`],
    [counts.lostBands, count => `${count} lost a band.`],
    [counts.maybeAnother, count => `${count} may be another bird in the book.`],
  ]
  const birds = lines.flatMap(([count, words]) => (count === 0 ? [] : [sentence(words(counted(count, 'bird')))]))
  const scores = counts.struckScores === 0 ? [] : [`${sentence(counted(counts.struckScores, 'score was', 'scores were'))} struck out.`]
  const outside = counts.outsideScores === 0 ? [] : [`${sentence(counted(counts.outsideScores, 'score or weighing was', 'scores or weighings were'))} made outside the days that count.`]
  const steps = counts.writtenStepDiffers === 0 ? [] : [`Of ${counted(counts.writtenStepDiffers, 'bird')} the keeper wrote another step than descent gives.`]
  const later = counts.later === 0 ? [] : [`${sentence(counted(counts.later, 'fact'))} dated after the day of these records ${counts.later === 1 ? 'is' : 'are'} left aside.`]
  return [...birds, ...scores, ...outside, ...steps, ...later]
}

/** Strains whose founders are taken as strangers because nobody stated their kinship. */
function kinSentence({book}: Findings): readonly string[] {
  const silent = book.strains.filter(({kinship, inbreeding}) => kinship === 0 && inbreeding === 0).map(({name}) => name)
  return silent.length === 0 ? [] : [`Founders of ${listWords(silent)} are taken as no kin of one another; if they were kin, the breed is more inbred than descent shows.`]
}

export function gapSentences(findings: Findings): readonly string[] {
  const {audit, trueBred} = findings
  const aside = trueBred.interSe ? leftOutWords(trueBred.interSe.rate.leftOut) : ''
  const lines = [
    ...wanting(audit.banded, (missing, total) => `${missing} of ${total} chicks hatched never wore a band; they count in every share they were scored for.`),
    ...(audit.counts.unlistedChicks === 0 ? [] : [`${sentence(counted(audit.counts.unlistedChicks, 'chick'))} hatched without being listed at all.`]),
    ...wanting(audit.bothParentsKnown, (missing, total) => `Of ${missing} of ${total} banded birds a parent is uncertain or unknown.`),
    ...wanting(audit.hatchDayKnown, (missing, total) => `Of ${missing} of ${total} banded birds the hatch day is not known.`),
    ...wanting(audit.sexKnown, (missing, total) => `${missing} of ${total} banded birds were never sexed.`),
    ...wanting(audit.candled, (missing, total) => `${missing} of ${total} settings were not candled, so their fertility cannot be told.`),
    ...countedGaps(findings),
    ...(aside === '' ? [] : [`The true-bred rate of matings inside the breed leaves out ${aside}.`]),
    ...kinSentence(findings),
  ]
  return lines.length === 0 ? ['Nothing is on record yet, so nothing is missing either.'] : lines
}
