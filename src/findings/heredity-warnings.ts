import {impossibleFamily} from '../logbook/inspect/impossible-family.ts'
import {likelyWrongParent, unlikelyParent} from '../logbook/inspect/likely-wrong-parent.ts'
import type {Slip} from '../records/problem.ts'
import type {DoubtedChick, Explanation} from './impossible-families.ts'
import type {Chick} from './ladder-chicks.ts'
import type {LikeliestParent} from './likeliest-sire.ts'
import type {Findings} from './study.ts'

/** A score that is wrong with a smaller chance is listed on the site, and no warning. */
const WARNED_FROM = 0.5
/** So many times likelier than as written, a wrong parent explains more than a wrong score does. */
const WRONG_PARENT_FROM = 200
/** A parent that had so much by the records and has so little left is likely wrong. */
const WAS_ALL_BUT_SURE = 0.8, IS_UNLIKELY = 0.05

/** What only the working of heredity can find wrong with the records: a warning for each chick, at its own line. */
export function heredityWarnings({impossibleFamilies, likeliestSires}: Pick<Findings, 'impossibleFamilies' | 'likeliestSires'>): readonly Slip[] {
  return [...impossibleFamilies.flatMap(warningsOf), ...likeliestSires.moved.flatMap(unlikelyOf)]
}

function warningsOf(doubted: DoubtedChick): readonly Slip[] {
  const {chick, doubts, explanations} = doubted
  const related = parentsOf(chick), best = explanations.find(isParent), [first] = doubts
  if (!first || first.wrong < WARNED_FROM) return []
  if (best && (best.times === null || best.times >= WRONG_PARENT_FROM)) {
    const looks = doubts.map(({score, trait}) => `${trait.name} ${score.value}`).join(', ')
    return [likelyWrongParent(chick.at, wordsOf(chick), looks, {band: best.bird.band, role: best.kind, times: best.times}, related)]
  }
  return doubts.filter(({wrong}) => wrong >= WARNED_FROM).map(({trait, score, instead, wrong, given, impossible}) =>
    impossibleFamily(chick.at, {chick: wordsOf(chick), trait: trait.name, scored: String(score.value), instead, wrong, given, neverWrong: impossible},
      best?.times ? `with ${best.bird.band} as its ${best.kind} all that was seen is ${Math.round(best.times)} times likelier` : null, related))
}

function unlikelyOf({chick, role, candidates}: LikeliestParent): readonly Slip[] {
  const fallen = candidates.find(({bird, recorded, now}) => bird !== null && recorded >= WAS_ALL_BUT_SURE && now <= IS_UNLIKELY), [likeliest] = candidates
  if (!fallen?.bird || !likeliest) return []
  return [unlikelyParent(chick.at, wordsOf(chick), role, {band: fallen.bird.band, recorded: fallen.recorded, now: fallen.now}, likeliest.bird?.band ?? 'a bird outside the book', [{at: fallen.bird.at, note: `${fallen.bird.band} stands here`}])]
}

const isParent = (explanation: Explanation): explanation is Exclude<Explanation, {readonly kind: 'misscored'}> => explanation.kind !== 'misscored'

const wordsOf = (chick: Chick): string => (chick.kind === 'bird' ? chick.band : `${chick.count === 1 ? 'a chick' : `${chick.count} chicks`} of hatch ${chick.hatch?.id ?? ''}`)

/** Where the parents stand, when they are known. */
function parentsOf({parentage: {kind, pairs: [pair]}}: Chick): NonNullable<Slip['related']> {
  if (kind !== 'known' || !pair) return []
  return ([['sire', pair.sire], ['dam', pair.dam]] as const).flatMap(([role, bird]) => (bird ? [{at: bird.at, note: `${bird.band}, its ${role}, stands here`}] : []))
}
