import {writePattern} from '../heredity/genotype-notation.ts'
import type {Strain, Trait} from '../logbook/book.ts'
import {contraryLooks, impossibleFamily, type DoubtedLook} from '../logbook/inspect/impossible-family.ts'
import {likelyWrongParent, unlikelyParent} from '../logbook/inspect/likely-wrong-parent.ts'
import {scoringsDisputed} from '../logbook/inspect/scorings-contradict.ts'
import {testUnlikely} from '../logbook/inspect/test-contradicted.ts'
import {chicksContradict} from '../logbook/inspect/true-for-contradicted.ts'
import {testSpot} from '../logbook/test-spot.ts'
import {inside, type Slip} from '../records/problem.ts'
import {chickWords, likeliestWrong, lookWords, NAMED_FROM, plainContradictions, plainlyAt, unlikelyTests, type UnlikelyTest} from './contradictions.ts'
import {disputedScorings} from './disputed-scorings.ts'
import type {DoubtedChick, Explanation, FurtherExplanation} from './impossible-families.ts'
import type {Chick} from './ladder-chicks.ts'
import type {LikeliestParent} from './likeliest-sire.ts'
import type {LocusGroup} from './locus-groups.ts'
import type {Findings} from './study.ts'
import {comesOf, suspectedStrains, type SuspectedStrain} from './suspected-strains.ts'

/** A score that is wrong with a smaller chance is listed on the site, and no warning. */
const WARNED_FROM = 0.5
/** So many times likelier than as written, a wrong parent explains more than a wrong score does. */
const WRONG_PARENT_FROM = 200
/** So many chicks that speak against a strain are listed. */
const LISTED = 5
/** A parent that had so much by the records and has so little left is likely wrong. */
const WAS_ALL_BUT_SURE = 0.8, IS_UNLIKELY = 0.05

/**
 * What only the working of heredity can find wrong with the records: a warning for each chick or test, at its own line. Where a record that plainly
 * contradicts another is at the bottom of it, linking has said so already, and nothing more is said.
 */
export function heredityWarnings(findings: Pick<Findings, 'book' | 'heredity' | 'pedigree' | 'impossibleFamilies' | 'likeliestSires'>): readonly Slip[] {
  const plain = plainContradictions(findings.book), {groups} = findings.heredity, suspected = suspectedStrains(findings, WARNED_FROM)
  const covers = (chick: Chick, trait: Trait): boolean => plain.covers(chick, trait) || suspected.some(each => comesOf(each, chick, trait))
  const disputed = disputedScorings(findings, WARNED_FROM), isDisputed = (chick: Chick, trait: Trait): boolean => disputed.some(each => each.bird === chick && each.trait === trait)
  const tests = groups.flatMap(group => unlikelyTests(findings, group).map(test => ({...test, group})))
  const families = findings.impossibleFamilies.map(doubted => ({...doubted, doubts: doubted.doubts.filter(({trait}) => !covers(doubted.chick, trait) && !isDisputed(doubted.chick, trait) && !tests.some(({bird, locus}) => bird === doubted.chick && trait.loci.includes(locus)))}))
    .map(doubted => ({doubted, warnings: warningsOf(doubted)}))
  const isTold = (group: LocusGroup): boolean => plainlyAt(plain, group) || suspected.some(({trait}) => group.traits.includes(trait)) || tests.some(test => test.group === group) || families.some(({doubted, warnings}) => warnings.length > 0 && doubted.doubts.some(({trait}) => group.traits.includes(trait)))
  return [
    ...tests.map(warningOfTest),
    ...suspected.map(warningOfStrain),
    ...disputed.filter(({bird, trait}) => !covers(bird, trait)).map(scoringsDisputed),
    ...families.flatMap(({warnings}) => warnings),
    ...groups.filter(group => !isTold(group)).flatMap(group => oneOfThese(findings, group)),
    ...findings.likeliestSires.moved.filter(({chick}) => ![...chick.looks.keys()].some(trait => covers(chick, trait))).flatMap(unlikelyOf),
  ]
}

/** Of a group that contradicts itself where nothing is likelier wrong than right: at the likeliest look, with the others beside it; where only tests contradict each other, at the unlikeliest. */
function oneOfThese(findings: Pick<Findings, 'book' | 'heredity' | 'pedigree'>, group: LocusGroup): readonly Slip[] {
  const doubts = likeliestWrong(findings, group), [first, ...others] = doubts
  if (first) return [contraryLooks(first.score.at, group.loci.map(({symbol}) => symbol), doubts.map(doubt => ({look: lookWords(doubt), wrong: doubt.wrong})), others.map(doubt => ({at: doubt.score.at, note: `${lookWords(doubt)}, stands here`})))]
  return unlikelyTests(findings, group, 1 - NAMED_FROM).toSorted((a, b) => a.chance - b.chance).slice(0, 1).map(warningOfTest)
}

function warningOfStrain({strain, trait, state, chicks, all, orElse}: SuspectedStrain): Slip {
  const count = chicks.reduce((sum, chick) => sum + chick.count, 0)
  return chicksContradict(strain, trait, state, {count, all, orElse: orElse.map(({id}) => id)}, [
    ...chicks.slice(0, LISTED).map(chick => ({at: chick.at, note: `${chickWords(chick)}, ${String(chick.looks.get(trait)?.counted?.value ?? '')}, stands here`})),
    ...orElse.map(({id, at}) => ({at: inside(at, 'true-for', trait.id), note: `what ${id} is true for stands here`})),
  ])
}

const warningOfTest = ({bird, locus, written, chance}: UnlikelyTest): Slip => testUnlikely(testSpot(bird, locus), bird.band, locus, written, chance)

function warningsOf(doubted: DoubtedChick): readonly Slip[] {
  const {chick, doubts, explanations, further: [rival]} = doubted
  const best = explanations.find(isParent), [first] = doubts
  if (!first || first.wrong < WARNED_FROM) return []
  // a pullet taken for a cockerel, or an egg of another pen, that explains as much is not to be told as a wrong parent
  const other = rival && (!best || (rival.times ?? Infinity) >= (best.times ?? Infinity)) ? rival : best
  if (best && other === best && (best.times === null || best.times >= WRONG_PARENT_FROM)) {
    const looks = doubts.map(({score, trait}) => `${trait.name} ${score.value}`).join(', ')
    return [likelyWrongParent(chick.at, {chick: chickWords(chick), gone: isGone(chick)}, looks, {band: best.bird.band, role: best.kind, times: best.times}, parentsOf(chick, first.trait))]
  }
  return doubts.filter(({wrong}) => wrong >= WARNED_FROM).map(({trait, score, instead, wrong, given, impossible}) =>
    impossibleFamily(chick.at, {chick: chickWords(chick), several: chick.count > 1, trait: trait.name, scored: String(score.value), instead, wrong, given, neverWrong: impossible, gone: isGone(chick), testedParents: testedParents(chick, trait), resting: restingOn(chick, trait)},
      other ? slipWords(other) : null, [...parentsOf(chick, trait), ...strainOf(chick, trait)]))
}

/** `as a female all that was seen is 30 times likelier` */
function slipWords(slip: FurtherExplanation | Exclude<Explanation, {readonly kind: 'misscored'}>): string {
  const so = slip.kind === 'sex' ? `as a ${slip.is}` : slip.kind === 'egg' ? `as an egg of pen ${slip.pen.id}, likeliest of ${slip.dam.band},` : `with ${slip.bird.band} as its ${slip.kind}`
  return slip.times === null ? `${so} it can be, and as written it cannot` : `${so} all that was seen is ${Math.round(slip.times)} times likelier`
}

/** Nobody can look again at one that died or was culled. */
const isGone = ({left}: Chick): boolean => left?.how === 'died' || left?.how === 'culled'

function testedParents({parentage: {kind, pairs: [pair]}}: Chick, {loci}: Trait): readonly string[] {
  return kind !== 'known' || !pair ? [] : [pair.sire, pair.dam].flatMap(bird => (bird && loci.some(locus => bird.tested.has(locus)) ? [bird.band] : []))
}

/** A founder has no parents in the book: what its strain is said to be speaks for it, or else its chicks. */
function restingOn(chick: Chick, trait: Trait): DoubtedLook['resting'] {
  if (chick.parentage.kind !== 'founder') return {on: 'parents'}
  const strain = strainTold(chick, trait)
  return strain ? {on: 'strain', strain: strain.id} : {on: 'chicks'}
}

/** The strain of a founder, where its record says anything of the trait. */
function strainTold(chick: Chick, trait: Trait): Strain | null {
  const strain = chick.parentage.kind !== 'founder' ? null : chick.kind === 'bird' ? chick.strain ?? chick.hatch?.strain : chick.hatch?.strain
  return strain && (strain.trueFor.has(trait) || trait.loci.some(({symbol}) => strain.alleles.has(symbol))) ? strain : null
}

function strainOf(chick: Chick, trait: Trait): NonNullable<Slip['related']> {
  const strain = strainTold(chick, trait)
  return strain ? [{at: strain.trueFor.has(trait) ? inside(strain.at, 'true-for', trait.id) : inside(strain.at, 'alleles'), note: `what ${strain.id} is said to be stands here`}] : []
}

function unlikelyOf({chick, role, candidates}: LikeliestParent): readonly Slip[] {
  const fallen = candidates.find(({bird, recorded, now}) => bird !== null && recorded >= WAS_ALL_BUT_SURE && now <= IS_UNLIKELY), [likeliest] = candidates
  if (!fallen?.bird || !likeliest) return []
  return [unlikelyParent(chick.at, {chick: chickWords(chick), gone: isGone(chick)}, role, {band: fallen.bird.band, recorded: fallen.recorded, now: fallen.now}, likeliest.bird?.band ?? 'a bird outside the book', [{at: fallen.bird.at, note: `${fallen.bird.band} stands here`}])]
}

const isParent = (explanation: Explanation): explanation is Exclude<Explanation, {readonly kind: 'misscored'}> => explanation.kind !== 'misscored'

/** Where the parents stand, when they are known, with what tests found of them: a test of a parent may be what is wrong. */
function parentsOf({parentage: {kind, pairs: [pair]}}: Chick, {loci}: Trait): NonNullable<Slip['related']> {
  if (kind !== 'known' || !pair) return []
  return ([['sire', pair.sire], ['dam', pair.dam]] as const).flatMap(([role, bird]) => {
    if (!bird) return []
    const tests = loci.flatMap(locus => {
      const pattern = bird.tested.get(locus)
      return pattern ? [`${locus.symbol} ${writePattern(pattern, locus)}`] : []
    })
    return [{at: bird.at, note: `${bird.band}, its ${role}${tests.length > 0 ? `, tested ${tests.join(' and ')}` : ''}, stands here`}]
  })
}
