/** Should I backcross again? A further backcross beside a further generation inside the line, row by row, and what cannot be told. */
import type {CannotSay, Share} from '../findings/estimate.ts'
import type {LookProspect, NextBackcross, NoProspects, Prospect} from '../findings/next-backcross.ts'
import {wantedOfBoth} from './amounts.ts'
import {cannotSayShort} from './estimate-words.ts'
import {traitPath} from './links.ts'
import {counted, figured, NOTHING, percent, percentSign, rounded, sentence} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import type {Project} from '../logbook/book.ts'

export interface BackcrossAgainView {
  /** for and against, a line each; empty where it cannot be told */
  readonly verdict: readonly {readonly head: string; readonly words: string}[]
  readonly words: string
  readonly table: Table | null
  /** wanted looks now and in the latest backcross; null where no required trait has states */
  readonly looks: Table | null
  readonly notes: readonly string[]
}

const WHY_NOT: Readonly<Record<NoProspects['why'], string>> = {
  'no-recurrent-strain': 'The project names no strain to cross back to, so this cannot be told.',
  'no-step': 'No step has been reached yet, so this cannot be told.',
  'no-birds': 'No banded bird of the step the breed stands at is living, so this cannot be told.',
}

export function backcrossAgain(found: NextBackcross | NoProspects, units: Project['units']): BackcrossAgainView {
  if (found.kind === 'cannot-say') return {verdict: [], words: WHY_NOT[found.why], table: null, looks: null, notes: []}
  return {verdict: verdict(found), words: summary(found), table: tableOf(found), looks: looksTable(found, units), notes: notes(found)}
}

/** What speaks for a backcross and what against, by the figures. */
function verdict({to, step, now, interSe, backcross, looks}: NextBackcross): BackcrossAgainView['verdict'] {
  const inside = interSe ?? now, less = percent(backcross.f) !== percent(inside.f) && backcross.f < inside.f
  const lost = looks.filter(({ofStrain}) => ofStrain !== null && !ofStrain.wanted)
  const gain = `${percentSign(backcross.share - now.share)} more`
  const good = [...(less ? [`F of the chicks falls to ${percentSign(backcross.f)}, from ${percentSign(inside.f)} ${interSe ? 'inside the line' : 'now'}`] : []), ...(now.share < MOSTLY ? [`${gain} of it is ${to.name}`] : [])]
  const bad = [
    ...(less ? [] : [`F of the chicks is no lower, ${percentSign(backcross.f)}`]), ...(now.share < MOSTLY ? [] : [`${percentSign(now.share)} ${to.name} already, only ${gain} to be had`]),
    ...lost.map(({trait, ofStrain, now: here, atBackcross}) => `${to.name} is ${trait.name.toLowerCase()} ${ofStrain?.state ?? ''}, so what is wanted would have to be fixed again${here.kind === 'share' && atBackcross?.share.kind === 'share' ? ` (shown by ${percentSign(here.value)} now${atBackcross.step === step ? '' : `, by ${percentSign(atBackcross.share.value)} in ${atBackcross.step}`})` : ''}`),
  ]
  return [{head: 'For', words: good}, {head: 'Against', words: bad}].flatMap(({head, words}) => (words.length === 0 ? [] : [{head, words: `${sentence(words.join('; '))}.`}]))
}

/** From this share of the strain on, more of it is no reason any more; the choice is ours. */
const MOSTLY = 0.9

/** The answer in short; whether it is worth it is the breeder's to say. */
function summary({to, interSe, backcross, now}: NextBackcross): string {
  const inside = interSe ? `; one more generation inside the line leaves the share as it is and gives chicks of F ${percentSign(interSe.f)}` : ''
  return `A further backcross would take the expected share of ${to.name} from ${percentSign(now.share)} to ${percentSign(backcross.share)} and give chicks of F ${percentSign(backcross.f)}${inside}. A donor gene that every bird now has twice, every chick of the backcross would have once: it would have to be fixed again.`
}

const measured = (value: (of: Prospect) => string, {now, interSe, backcross}: NextBackcross): readonly string[] => [value(now), interSe ? value(interSe) : NOTHING, value(backcross)]

function tableOf(found: NextBackcross): Table {
  const {to, segment} = found
  return {
    columns: [{head: 'Expected'}, {head: 'Now', number: true}, {head: 'Inside the line', number: true}, {head: 'Backcross', number: true}],
    rows: [
      [`${to.name}, %`, ...measured(({share}) => percent(share), found)],
      ['Give or take', ...measured(({spread}) => percent(spread), found)],
      ['F, %', ...measured(({f}) => percent(f), found)],
      ['Copies of two strains, %', ...measured(({heterozygosity}) => percent(heterozygosity), found)],
      ['Left around a donor gene, cM', ...(segment ? [segment.now, segment.now, segment.next].map(morgans => rounded(morgans * 100, 0)) : [NOTHING, NOTHING, NOTHING])],
    ],
  }
}

/** The step the breed stands at, and beside it the latest backcross, where that is another step. */
function looksTable({looks, step}: NextBackcross, units: Project['units']): Table | null {
  if (looks.length === 0) return null
  const backcross = looks.find(({atBackcross}) => atBackcross !== null)?.atBackcross?.step ?? 'Backcross', told = backcross === step ? null : backcross
  return {
    columns: [{head: 'Wanted look'}, {head: step, number: true}, ...(told === null ? [] : [{head: told, number: true}])],
    rows: looks.map((look): readonly Cell[] => [
      {text: lookHead(look, units), link: traitPath(look.trait)}, shareCell(look.now),
      ...(told === null ? [] : [look.atBackcross === null || look.atBackcross.share.kind === 'cannot-say' ? 'cannot be told' : shareCell(look.atBackcross.share)]),
    ]),
  }
}

const lookHead = ({trait}: LookProspect, units: Project['units']): string => {
  const wanted = wantedOfBoth(trait, units)
  return wanted === null ? trait.name : `${trait.name}: ${wanted}`
}
const shareCell = (share: Share | CannotSay): string => (share.kind === 'share' ? `${percentSign(share.value)} of ${share.total}` : cannotSayShort(share))

function notes({of, birds, step, to, withLiving, interSe, looks, measured: withoutStates, segment}: NextBackcross): readonly string[] {
  const own = looks.flatMap(({trait, ofStrain}) => (ofStrain ? [`${trait.name.toLowerCase()} ${ofStrain.state}, ${ofStrain.wanted ? 'as wanted' : 'not wanted'}`] : []))
  return [
    `Reckoned for the ${figured(birds.length, of === 'breeders' ? 'bird' : 'living bird')} of ${step}${of === 'breeders' ? ' that are bred from' : ', none of them in a breeding pen or kept for one'}, every cock with every hen${interSe ? '' : '; one sex is wanting, so a mating inside the line cannot be told'}. Chosen pairs do better than the average.`,
    `Give or take: two birds in three are expected within so much of the share. Copies of two strains: of so many genes a bird has one copy from each. cM, centimorgan: so much of a chromosome that two genes a centimorgan apart are parted in one chick of a hundred.`,
    `The backcross is to a bird of ${to.name} not bred here.${withLiving ? ` With the ${counted(withLiving.birds, 'living bird')} of it on record F would be ${percentSign(withLiving.f)} on average.` : ' None of it lives here.'}`,
    ...(looks.length > 0 ? [`Of looks only what was counted is told, over the chicks scored: those of the step the breed stands at${looks.some(({atBackcross}) => atBackcross !== null && atBackcross.step !== step) ? ', and those of the latest backcross' : ''}. What the next chicks of the line will show hangs on alleles that looks hide, and cannot be told from looks.${own.length > 0 ? ` ${to.name} is written as true for ${own.join('; ')}.` : ''}`] : []),
    ...(withoutStates > 0 ? [`${figured(withoutStates, 'required trait')} without states left out.`] : []),
    segment ? `Around a chosen gene: an example, for a gene with ${rounded(segment.arm * 100, 0)} centimorgans of chromosome on either side, after ${counted(segment.backcrosses, 'backcross', 'backcrosses')} in which it was chosen, and after one more; matings inside the line cut it a little further.`
      : 'How much is left around a donor gene cannot be told for a step that is no plain count of backcrosses.',
  ]
}
