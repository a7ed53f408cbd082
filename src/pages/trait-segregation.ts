/** What the matings gave beside what they should have: cross by cross, then mating by mating, and what to ask where one strays. */
import type {CrossTest, MatingTest} from '../findings/segregation.ts'
import type {Questions} from '../findings/segregation-questions.ts'
import type {Findings} from '../findings/study.ts'
import type {Bird, Trait} from '../logbook/book.ts'
import {chance, testChance} from './chance-words.ts'
import {birdPath, penPath} from './links.ts'
import {counted, figured, listWords, NOTHING, percentSign, rounded, sentence} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import {SEX_ROWS} from './sex-words.ts'

export interface TraitSegregation {
  readonly words: readonly string[]
  readonly crosses: Table | null
  readonly matings: Table | null
  /** the matings that stray, each with its questions in their order */
  readonly questions: readonly {readonly head: string; readonly asks: readonly string[]}[]
}

/** Names of a pair's birds written out at most. */
const MOST_NAMED = 2

/** `22 pea, 11 single` */
const inLooks = (trait: Trait, numbers: readonly number[], decimals: number): string =>
  trait.states.flatMap((state, place) => ((numbers[place] ?? 0) > 0 ? [`${rounded(numbers[place] ?? 0, decimals)} ${state}`] : [])).join(', ')

const whose = (sex: MatingTest['sex']): string => (sex === null ? '' : `, ${SEX_ROWS[sex]}`)

export function traitSegregation(trait: Trait, {segregation}: Pick<Findings, 'segregation'>): TraitSegregation | null {
  const crosses = segregation.crosses.filter(cross => cross.trait === trait), matings = segregation.matings.filter(mating => mating.trait === trait)
  const left = segregation.untested.find(each => each.trait === trait)
  const leftWords = left ? [
    ...(left.unsure > 0 ? [`${left.unsure} of parents that are outside the book or not known for sure`] : []), ...(left.phase > 0 ? [`${left.phase} whose ratio rests on how linked loci lie in a parent, or on a locus that kills`] : []),
    ...(left.unsaid > 0 ? [`${left.unsaid} that may have a look no rule names`] : []), ...(left.sexUnknown > 0 ? [`${left.sexUnknown} of unknown sex, where the sexes differ`] : []),
    ...(left.alike > 0 ? [`${left.alike} that could look one way only, and do`] : []),
  ] : []
  if (matings.length === 0 && leftWords.length === 0) return null
  const open = matings.filter(mating => mating.questions !== null)
  const onlyAlike = left !== undefined && left.alike > 0 && leftWords.length === 1
  return {
    words: [
      matings.length > 0 ? `${sentence(counted(matings.length, 'mating'))} of parents whose genotypes are known from elsewhere, held against what such parents give. Of all traits together ${segregation.tests} are tested, and P is corrected for so many: ${
        open.length === 0 ? 'none of these strays.' : `${counted(open.length, 'of these strays', 'of these stray')}.`}`
        : onlyAlike ? `${sentence(counted(left.alike, 'scored chick'))} of known parents could look one way only, and ${left.alike === 1 ? 'does' : 'do'}: there is no ratio to hold against.`
          : left && left.alike > 0 ? 'No mating of parents known from elsewhere could give more than one look, so none can be held against a ratio.'
            : 'No mating has parents whose genotypes are known from elsewhere, so none can be held against a ratio.',
      ...oneSure(trait, matings), ...deadGerms(crosses),
      ...(leftWords.length === 0 || (matings.length === 0 && onlyAlike) ? [] : [`Scored chicks not tested: ${listWords(leftWords)}.`]),
    ],
    crosses: crosses.length === 0 ? null : crossTable(trait, crosses), matings: matings.length < 2 ? null : matingTable(trait, matings), questions: open.map(questionsOf),
  }
}

/** Why neither what is expected nor P is that of the plain ratio. */
function oneSure({states}: Trait, matings: readonly MatingTest[]): readonly string[] {
  const looks = [...new Set(matings.flatMap(({conditional}) => (conditional ? states[conditional.state] ?? [] : [])))]
  return looks.length === 0 ? [] : [`“One sure” marks matings that are known to carry only because a chick hatched that was scored ${
    listWords(looks, 'or')}. They are tested given that one did: more such chicks are expected of them than the plain ratio gives, and P is worked exactly from what can come beside that one. So it is not the P of the plain ratio.`]
}

/** Germs that should die, beside those that did, a cross at a time. */
function deadGerms(crosses: readonly CrossTest[]): readonly string[] {
  return crosses.flatMap(({cross, matings}, place) => {
    if (crosses.findIndex(other => other.cross === cross) < place) return []
    const told = matings.flatMap(({lethal}) => (lethal && lethal.hatches > 0 ? [lethal] : [])), [first] = told
    const sum = (of: (each: NonNullable<MatingTest['lethal']>) => number): number => told.reduce((all, each) => all + of(each), 0)
    return first ? [`Of ${cross} ${percentSign(first.share)} of the fertile eggs should die of their genotype, ${rounded(first.share * sum(({fertile}) => fertile), 1)} of ${sum(({fertile}) => fertile)}; ${
      sum(({deadInGerm}) => deadInGerm)} germs died, of whatever cause.`] : []
  })
}

function crossTable(trait: Trait, crosses: readonly CrossTest[]): Table {
  return {
    caption: 'All matings of one cross together', columns: [{head: 'Cross'}, {head: 'Matings', number: true}, {head: 'Came'}, {head: 'Expected'}, {head: 'P', number: true}, {head: 'P that they agree', number: true}],
    rows: crosses.map((cross): readonly Cell[] => {
      const sums = (of: (mating: MatingTest) => readonly number[]): readonly number[] => trait.states.map((_, place) => cross.matings.reduce((sum, mating) => sum + (of(mating)[place] ?? 0), 0))
      return [`${cross.cross}${whose(cross.sex)}`, String(cross.matings.length), inLooks(trait, sums(({counts}) => counts), 0),
        `${inLooks(trait, sums(({expected}) => expected), 1)}${cross.byRecessives > 0 ? `; one sure in ${cross.byRecessives === cross.matings.length ? 'each' : figured(cross.byRecessives, 'mating')}` : ''}`,
        testChance(cross.p), cross.heterogeneity ? testChance(cross.heterogeneity.p) : NOTHING]
    }),
  }
}

function matingTable(trait: Trait, matings: readonly MatingTest[]): Table {
  return {
    caption: 'Mating by mating', columns: [{head: 'Pen'}, {head: 'Sire × dam'}, {head: 'Cross'}, {head: 'Came'}, {head: 'Expected'}, {head: 'P', number: true}, {head: 'Corrected', number: true}],
    rows: matings.map((mating): readonly Cell[] => [
      mating.pen ? {text: mating.pen.id, link: penPath(mating.pen)} : 'no pen', `${namesOf(mating.sires)} × ${namesOf(mating.dams)}`, `${mating.cross}${whose(mating.sex)}`,
      inLooks(trait, mating.counts, 0), `${inLooks(trait, mating.expected, 1)}${mating.conditional ? '; one sure' : ''}`, testChance(mating.p), testChance(mating.adjusted),
    ]),
  }
}

const namesOf = (birds: readonly Bird[]): string => (birds.length > MOST_NAMED ? `one of ${birds.length}` : birds.map(({band}) => band).join(' or '))

function questionsOf(mating: MatingTest): TraitSegregation['questions'][number] {
  const {questions, trait} = mating
  return {
    head: `${mating.pen ? `Pen ${mating.pen.id}, ` : ''}${namesOf(mating.sires)} × ${namesOf(mating.dams)}: ${inLooks(trait, mating.counts, 0)}, where ${mating.cross} gives ${inLooks(trait, mating.expected, 1)}${whose(mating.sex)}`,
    asks: questions ? [misscored(questions), wrongParent(questions), wrongRule(questions)] : [],
  }
}

function misscored({misscored: doubts}: Questions): string {
  const named = doubts.slice(0, 3).map(({chick, chance: wrong}) => `${chick.kind === 'bird' ? chick.band : 'a chick of a tally'} (${chance(wrong)})`)
  return `First, a mis-scored bird? ${named.length === 0 ? 'No score among these chicks is in doubt by its relatives.' : `Likeliest to be scored wrongly: ${listWords(named)}.`}`
}

function wrongParent({parents}: Questions): string {
  const [best] = parents
  if (!best) return 'Second, a wrong parent? No other bird of known genotype that stood near would explain it better.'
  return `Second, a wrong parent? With ${best.bird.band} as ${best.role} (${best.cross}) these chicks would be ${best.times === null ? 'possible, which they are not as written' : `${rounded(best.times, best.times < 10 ? 1 : 0)} times as likely`}.`
}

const wrongRule = (questions: Questions): string => `Third, a wrong rule? ${sentence(wrongRuleWords(questions))}.`

/** Is the rule in doubt? `of five other matings of this cross none strays, so the rule stands`: one answer for every page. */
export function wrongRuleWords({rule: {otherMatings, straying}}: Pick<Questions, 'rule'>): string {
  if (otherMatings === 0) return 'there is no other mating of this cross to tell by'
  return `of ${counted(otherMatings, 'other mating')} of this cross ${straying === 0 ? 'none strays, so the rule stands' : `${counted(straying, 'strays', 'stray')}${straying * 2 >= otherMatings ? ': look at the rule' : ''}`}`
}

/** A way to the bird, for tables of them. */
export const bandCell = (bird: Bird): Cell => ({text: bird.band, link: birdPath(bird)})
