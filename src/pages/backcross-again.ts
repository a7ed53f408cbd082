/** Should I backcross again? A further backcross beside a further generation inside the line, row by row, and what cannot be told. */
import type {CannotSay, Share} from '../findings/estimate.ts'
import type {LookProspect, NextBackcross, NoProspects, Prospect} from '../findings/next-backcross.ts'
import {wantedOfBoth} from './amounts.ts'
import {cannotSayShort} from './estimate-words.ts'
import {traitPath} from './links.ts'
import {counted, figured, NOTHING, percent, percentSign, rounded} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import type {Project} from '../logbook/book.ts'

export interface BackcrossAgainView {
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
  if (found.kind === 'cannot-say') return {words: WHY_NOT[found.why], table: null, looks: null, notes: []}
  return {words: summary(found), table: tableOf(found), looks: looksTable(found, units), notes: notes(found)}
}

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

function looksTable({looks, step}: NextBackcross, units: Project['units']): Table | null {
  if (looks.length === 0) return null
  const backcross = looks.find(({atBackcross}) => atBackcross !== null)?.atBackcross?.step ?? null
  return {
    columns: [{head: 'Wanted look'}, {head: step, number: true}, {head: backcross ?? 'Backcross', number: true}],
    rows: looks.map((look): readonly Cell[] => [
      {text: lookHead(look, units), link: traitPath(look.trait)}, shareCell(look.now), look.atBackcross === null || look.atBackcross.share.kind === 'cannot-say' ? 'cannot be told' : shareCell(look.atBackcross.share),
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
    `Reckoned for the ${figured(birds.length, of === 'breeders' ? 'bird' : 'living bird')} of ${step}${of === 'breeders' ? ' that are bred from' : ', none of them in a breeding pen or kept for one'}, every cock with every hen${interSe ? '' : '; one sex is wanting, so a mating inside the line cannot be told'}. Give or take: standard deviation of the true share from bird to bird. Chosen pairs do better than the average.`,
    `The backcross is to a bird of ${to.name} not bred here.${withLiving ? ` With the ${counted(withLiving.birds, 'living bird')} of it on record F would be ${percentSign(withLiving.f)} on average.` : ' None of it lives here.'}`,
    ...(looks.length > 0 ? [`Of looks only what was counted is told, over the chicks scored: those of the step the breed stands at, and those of the latest backcross. What the next chicks of the line will show hangs on alleles that looks hide, and cannot be told from looks.${own.length > 0 ? ` ${to.name} is written as true for ${own.join('; ')}.` : ''}`] : []),
    ...(withoutStates > 0 ? [`${figured(withoutStates, 'required trait')} without states left out.`] : []),
    segment ? `Around a chosen gene: an example, for a gene with ${rounded(segment.arm * 100, 0)} centimorgans of chromosome on either side, after ${counted(segment.backcrosses, 'backcross', 'backcrosses')} in which it was chosen, and after one more; matings inside the line cut it a little further.`
      : 'How much is left around a donor gene cannot be told for a step that is no plain count of backcrosses.',
  ]
}
