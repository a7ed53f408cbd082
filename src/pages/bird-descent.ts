/** How closely a bird is bred and what blood is in it: F with its range and how far it is known, and the strains by the three ways genes are handed down. */
import type {InbreedingOfBird} from '../findings/inbreeding.ts'
import type {LineageOfBird} from '../findings/lineage.ts'
import type {Findings} from '../findings/study.ts'
import type {Bird, Strain} from '../logbook/book.ts'
import type {Inbreeding} from '../pedigree/coancestry.ts'
import {kinReasonWords} from './kin-reason-words.ts'
import {strainPath} from './links.ts'
import {counted, countWord, limits, percent, percentSign, rounded} from './numbers.ts'

export interface BirdDescent {
  /** F, what it rests on, and the project's limit where it may be passed */
  readonly words: string
  /** why, in one sentence; empty for founders */
  readonly reason: string
  /** expected shares, the greatest first; null for birds of a founding strain, which are all of it */
  readonly blood: {
    readonly shares: readonly {readonly text: string; readonly link: string | null; readonly percent: string}[]
    /** the Z, the mother's line, and how far the copies of a gene come from different strains */
    readonly words: string
  } | null
}

export function birdDescent(bird: Bird, findings: Findings): BirdDescent {
  const found = findings.kinship.of(bird)
  return {
    words: bird.parentage.kind === 'founder' && bird.maybe.length === 0 ? `F ${percentSign(found.f.mean)}${bird.strain ? ', as stated for its strain' : ', for nothing is known of its parents'}.`
      : `${figureWords(found)} ${knownWords(found)}${doubtAboveWords(bird)}${limitWords(found, findings.book.project.limits.matingInbreeding)}`,
    reason: kinReasonWords(bird, findings.kinReason(bird)), blood: bloodOf(bird, findings),
  }
}

/** `12.5%`, or in doubt `6.0 to 19.0%, most likely 12.5%, on average 9.8%`; no one is called likeliest where several are alike */
export function inbreedingWords({mean, low, high, likeliest}: Inbreeding, {as, all, likeliest: alike}: InbreedingOfBird['possible']): string {
  if (percent(low) === percent(high)) return percentSign(mean)
  const average = `on average ${percentSign(mean)}`
  if (alike === 1) return `${limits({low, high})}%, most likely ${percentSign(likeliest)}, ${average}`
  if (alike < all) return `${limits({low, high})}%, ${countWord(alike)} of ${countWord(all)} ${as} likeliest alike, ${average}`
  return all === 2 ? `${percent(low)} or ${percentSign(high)}, equally likely, ${average}` : `${limits({low, high})}%, ${countWord(all)} ${as} alike, ${average}`
}

/** `F at least 2.6%; on the Z 3.1%.` */
function figureWords({f, onZ, atLeast, possible}: InbreedingOfBird): string {
  const ofZ = onZ === null ? '' : `; on the Z ${percent(onZ.low) === percent(onZ.high) ? percentSign(onZ.mean) : `${limits(onZ)}%`}`
  return `F ${atLeast ? 'at least ' : ''}${inbreedingWords(f, possible)}${ofZ}.`
}

function knownWords({full, equivalent}: InbreedingOfBird): string {
  const whole = full === 0 ? 'Not both parents are sure to be in the book' : `Ancestors all known for ${counted(full, 'generation')}`
  return `${whole}; ${rounded(equivalent, 1)} equivalent complete generations.`
}

/** The range of F is over the bird's own parents; doubt about theirs is averaged, and that is said where nothing else tells it. */
export function doubtAboveWords({parentage: {kind, pairs: [pair]}}: Pick<Bird, 'parentage'>): string {
  if (kind !== 'known' || !pair) return ''
  const inDoubt = (['sire', 'dam'] as const).filter(side => pair[side]?.parentage.kind === 'uncertain')
  if (inDoubt.length === 0) return ''
  return ` Who the parents of its ${inDoubt.join(' and ')} were is in doubt, and averaged here.`
}

function limitWords({f}: InbreedingOfBird, limit: number | null): string {
  if (limit === null || f.high <= limit + 1e-12) return ''
  return ` ${f.low > limit + 1e-12 ? 'Above' : 'It may be above'} the project’s limit of ${percentSign(limit)}.`
}

/** `all Holm White`, `Holm White 87.5%, Fell Buff 12.5%` */
function sharesWords(shares: ReadonlyMap<Strain, number>): string {
  const there = [...shares].filter(([, share]) => share >= 0.0005).sort(([, a], [, b]) => b - a), unknown = 1 - there.reduce((sum, [, share]) => sum + share, 0)
  const [only] = there
  if (only && only[1] > 0.9995) return `all ${only[0].name}`
  return [...there.map(([strain, share]) => `${strain.name} ${percentSign(share)}`), ...(unknown > 0.0005 ? [`not known ${percentSign(unknown)}`] : [])].join(', ')
}

function bloodOf(bird: Bird, {lineage, book: {project: {recurrent}}}: Findings): BirdDescent['blood'] {
  if (bird.step.kind === 'strain' || bird.shares.size === 0) return null
  const found = lineage.of(bird), known = [...bird.shares].filter(([, share]) => share > 0).sort(([, a], [, b]) => b - a)
  const unknown = 1 - known.reduce((sum, [, share]) => sum + share, 0)
  return {
    shares: [
      ...known.map(([strain, share]) => ({text: strain.name, link: strainPath(strain), percent: `${percentSign(share)}${strain === recurrent ? giveOrTake(found) : ''}`})),
      ...(unknown > 0.0005 ? [{text: 'not known', link: null, percent: percentSign(unknown)}] : []),
    ],
    words: `On the Z ${sharesWords(found.z)}; mother’s line ${sharesWords(found.damLine)}. Copies of two strains in ${percentSign(found.heterozygosity)} of genes.`,
  }
}

/** The spread of the true share, one standard deviation, where there is any. */
const giveOrTake = ({spread}: LineageOfBird): string => (spread === null || spread < 0.0005 ? '' : `, give or take ${percent(spread)}`)
