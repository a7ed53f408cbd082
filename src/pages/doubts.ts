/** Chicks whose look their parents cannot give, or hardly, with what would explain each; and chicks whose looks tell something of who their parents were. No keeper is named. */
import {DOUBTED_FROM, HARDLY, type DoubtedChick, type Explanation, type FurtherExplanation} from '../findings/impossible-families.ts'
import type {Chick} from '../findings/ladder-chicks.ts'
import type {Candidate, LikeliestParent} from '../findings/likeliest-sire.ts'
import type {ScoreDoubt} from '../findings/score-doubt.ts'
import type {Findings} from '../findings/study.ts'
import {trueForBehind} from '../findings/true-for-behind.ts'
import type {Parent} from '../logbook/book.ts'
import {AS_GOOD_AS, chance} from './chance-words.ts'
import {birdPath, DOUBTS, hatchPath} from './links.ts'
import {counted, countWord, listWords, NOTHING, rounded, sentence} from './numbers.ts'
import type {Cell, Page, Table} from './page.ts'
import {wrongRuleWords} from './trait-segregation.ts'

export interface DoubtsView {
  readonly lead: string
  /** what the two chances beside each chick are, and which looks are listed; empty where none is */
  readonly note: string
  readonly chicks: readonly {
    readonly name: string
    readonly link: string | null
    /** what was scored, and how likely it is wrong */
    readonly says: string
    /** what would explain it, the likeliest first */
    readonly explanations: string
    /** kin in doubt as well, or matings that stray; empty where there is none */
    readonly more: string
  }[]
  readonly parents: Table | null
  readonly parentWords: string
}

/** Is there anything to say on such a page? */
export const hasDoubts = ({impossibleFamilies, likeliestSires}: Pick<Findings, 'impossibleFamilies' | 'likeliestSires'>): boolean => impossibleFamilies.length + likeliestSires.moved.length > 0

const nameOf = (chick: Chick): string => (chick.kind === 'bird' ? chick.band : `${chick.count === 1 ? 'a chick' : `${chick.count} chicks`} of hatch ${chick.hatch?.id ?? NOTHING}`)
const linkOf = (chick: Chick): string | null => (chick.kind === 'bird' ? birdPath(chick) : chick.hatch ? hatchPath(chick.hatch) : null)

/** `By 23-117 out of 23-019 on record`; of several that may be it how many */
function recordedWords({parentage: {kind, sires, dams}}: Chick): string {
  if (kind === 'founder') return ''
  const side = (parents: readonly Parent[], word: string): string => {
    const [only] = parents
    return !only ? 'a bird outside the book' : parents.length === 1 ? only.bird.band : `one of ${countWord(parents.length)} ${word}`
  }
  return `By ${side(sires, 'cocks')} out of ${side(dams, 'hens')}, as written.`
}

function doubtWords({chick, trait, score, wrong, instead, given}: ScoreDoubt): string {
  const behind = wrong > AS_GOOD_AS ? trueForBehind(chick, trait, String(score.value)) : []
  const kin = given < 0.0005 ? 'hardly any bird of its family would be' : `${chance(given)} of its family would be`
  return `${trait.name.toLowerCase()} scored ${score.value}, as ${kin}; if its parents are as written, the score is wrong with a chance of ${chance(wrong)}${instead === null ? '' : `, and it is ${instead}`}${
    behind.length === 0 ? '' : `, which rests on ${listWords(behind.map(({strain, state}) => `${strain.name} being true for ${state}`))}`}`
}

type Slip = Explanation | FurtherExplanation

function slipWords(slip: Slip, chick: Chick): string {
  const times = slip.kind === 'misscored' ? '' : slip.times === null ? ', for as written it cannot be' : `, all that was seen being ${slip.times > 1000 ? 'over 1000' : rounded(slip.times, slip.times < 10 ? 1 : 0)} times as likely`
  switch (slip.kind) {
    case 'misscored': return `a wrong score, ${chance(slip.share)}`
    case 'sire': case 'dam': return `${slip.bird.band} its ${slip.kind}${insteadOf(slip.kind === 'sire' ? chick.parentage.sires : chick.parentage.dams)}, ${chance(slip.share)}${times}`
    case 'egg': return `an egg of pen ${slip.pen.id} (${slip.sires.length === 1 ? slip.sires[0]?.band ?? '' : `one of its ${countWord(slip.sires.length)} cocks`} × ${slip.dam.band} likeliest), ${chance(slip.share)}${times}`
    case 'sex': return `sexed wrongly, and a ${slip.is === 'male' ? 'cockerel' : 'pullet'}, ${chance(slip.share)}${times}`
  }
}

/** `, and not 23-019`, where one bird is written */
function insteadOf(parents: readonly Parent[]): string {
  const [only] = parents
  return parents.length === 1 && only ? `, and not ${only.bird.band}` : ''
}

/** A bird that has left cannot be looked at again, nor can a chick that never had a band. */
const whatToLookAt = (chick: Chick): string => (chick.kind !== 'bird' ? 'the notes of its hatch' : chick.left ? 'its photographs and notes' : 'the bird again')

function explanationsOf({chick, explanations, further}: DoubtedChick): string {
  const all: readonly Slip[] = [...explanations, ...further].sort((a, b) => b.share - a.share)
  if (all.length < 2) return `No other parent that stood near, no egg of another pen and no wrong sex would explain it, so look at ${whatToLookAt(chick)}.`
  return `Were the parents in doubt too, and every slip thought alike beforehand: ${all.map(slip => slipWords(slip, chick)).join('; ')}. Look at ${whatToLookAt(chick)} first.`
}

/** Below this share of wrong scores nothing is said but here. */
const INSPECT_WARNS_FROM = 0.5

const wholePercent = (share: number): string => `${rounded(share * 100, 0)}%`

const NOTE = `Two chances stand with each, and they answer two questions. How likely the score is wrong holds the parents for right. The shares after it let the parents be wrong as well, one slip at a time: where another parent explains the look, a wrong score has a small share there, though it would be likely if nothing else could be wrong. Listed is a look that is wrong with ${wholePercent(DOUBTED_FROM)} or more and that ${wholePercent(HARDLY)} of its family at most would be scored so; the check of the records (inspect) warns of it from ${wholePercent(INSPECT_WARNS_FROM)} on, and stays silent below that.`

function moreOf({kin, rule}: DoubtedChick): string {
  return [
    ...(kin.length === 0 ? [] : [`In doubt as well, and perhaps by the same slip: ${listWords(kin.map(nameOf))}.`]),
    ...rule.map(({trait, questions}) => `Its family strays from the ratio in ${trait.name.toLowerCase()}${questions ? `; ${wrongRuleWords(questions)}` : ''}.`),
  ].join(' ')
}

const candidateName = ({bird}: Candidate): Cell => (bird ? {text: bird.band, link: birdPath(bird)} : 'a bird outside the book')

function parentTable(moved: readonly LikeliestParent[]): Table | null {
  if (moved.length === 0) return null
  return {
    caption: 'Who was it?', columns: [{head: 'Chick'}, {head: 'Candidate'}, {head: 'As its'}, {head: 'By the records', number: true}, {head: 'By its looks too', number: true}, {head: 'What speaks'}],
    rows: moved.flatMap(({chick, role, candidates}) => candidates.map((candidate, place): readonly Cell[] => {
      const link = linkOf(chick), name = nameOf(chick)
      return [place > 0 || link === null ? name : {text: name, link}, candidateName(candidate), role, chance(candidate.recorded), chance(candidate.now), evidenceWords(candidate)]
    })),
  }
}

/** `comb × 2.1`: what speaks for or against, where it speaks at all */
function evidenceWords({evidence}: Candidate): string {
  const told = evidence.filter(({times}) => times > 1.2 || times < 1 / 1.2).map(({traits, times}) => `${listWords(traits.map(({name}) => name.toLowerCase()))} ${times === 0 ? 'rules it out' : `× ${rounded(times, 1)}`}`)
  return told.length === 0 ? NOTHING : told.join(', ')
}

export function doubtsPage(findings: Findings): Page {
  const {impossibleFamilies, likeliestSires: {moved, unmoved}} = findings, silent = unmoved.sires + unmoved.dams
  const view: DoubtsView = {
    lead: impossibleFamilies.length === 0 ? 'No chick looks as its parents could not have made it.'
      : `${sentence(counted(impossibleFamilies.length, 'look'))} that the parents on record cannot give, or hardly. Every flock has some, since one score in a hundred or so goes wrong; nothing here is changed in the records.`,
    note: impossibleFamilies.length === 0 ? '' : NOTE,
    chicks: impossibleFamilies.map(doubted => ({name: nameOf(doubted.chick), link: linkOf(doubted.chick), says: `${recordedWords(doubted.chick)} ${sentence(doubted.doubts.map(doubtWords).join('; '))}.`.trimStart(), explanations: explanationsOf(doubted), more: moreOf(doubted)})),
    parents: parentTable(moved),
    parentWords: moved.length + silent === 0 ? '' : `${moved.length === 0 ? 'Where a parent is in doubt the looks of the chick tell little or nothing' : `Of ${counted(moved.length, 'parent')} in doubt the chick’s looks tell something`}${silent === 0 || moved.length === 0 ? '' : `; of ${silent} more, little or nothing`}.`,
  }
  return {path: DOUBTS, template: 'doubts', title: 'Chicks in doubt', section: 'birds', view, search: {kind: 'index', words: 'doubts wrong scores parents likeliest sire'}}
}
