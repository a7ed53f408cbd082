/** Home: the breed in one sentence, where it stands today, the whole flock as one feather, what comes next. */
import {candle} from '../charts/candle.ts'
import {currentStep} from '../findings/ladder.ts'
import type {Share} from '../findings/estimate.ts'
import type {Findings} from '../findings/study.ts'
import type {StepTrueBred} from '../findings/true-bred.ts'
import type {Photo, RequirementKind} from '../logbook/book.ts'
import {fact} from './bird-lead.ts'
import type {Fact} from './bird-lead.ts'
import {dateWords, onDate} from './dates.ts'
import {cannotSay, scaleOf, shareCandle, shareInText, shareWords} from './estimate-words.ts'
import {excerpt} from './excerpt.ts'
import {featherView} from './feather-view.ts'
import type {FeatherView} from './feather-view.ts'
import type {Stat} from './hatch.ts'
import {BIRDS, CHOOSING, DIARY, DOSSIER, diaryPath, FOUNDERS, HOME, KEEPERS, LAY, MALES, ROTATION, STANDARD, stepPath, SUMMARIES, traitPath, VIGOUR} from './links.ts'
import {counted, figured, limits, listWords, NOTHING, ofWords, percent, saying, sentence} from './numbers.ts'
import type {Page} from './page.ts'
import {remedyLine, strongerWords} from './one-more-male-words.ts'
import {plates} from './plates.ts'
import type {Plate} from './plates.ts'
import {flockWord, SEX_ROWS} from './sex-words.ts'
import {ALL_IT_COULD, ALL_THEY_COULD, onFewerWords} from './true-bred-words.ts'
import {homeFixation} from './home-fixation.ts'
import type {HomeFixation} from './home-fixation.ts'
import {mainMeasure} from './main-measure.ts'
import {changeInShort} from './step-change-words.ts'
import {comingWords} from './upcoming-words.ts'
import type {Coming} from './upcoming-words.ts'

type HomeStat = Stat & {readonly link: {readonly text: string; readonly link: string} | null}

export interface HomeView {
  readonly name: string
  readonly facts: readonly Fact[]
  readonly lead: string
  readonly plates: readonly Plate[]
  readonly words: readonly string[]
  readonly stats: readonly HomeStat[]
  /** the project's rate limit is passed, and the cheapest remedy; else null */
  readonly remedy: string | null
  /** where the same is told at length: whom to mate, then what became of it */
  readonly onward: readonly (readonly {readonly text: string; readonly link: string}[])[]
  readonly fixation: HomeFixation | null
  readonly feather: FeatherView | null
  readonly coming: readonly Coming[]
  readonly comingMore: string
  readonly diary: readonly {readonly when: string; readonly title: string; readonly link: string; readonly text: string}[]
  readonly diaryLink: string
  readonly body: string
}

/** Entries of what comes next at most. */
const COMING = 8

function facts(findings: Findings): readonly Fact[] {
  const {book, census} = findings, step = currentStep(findings.ladder), draft = book.drafts.at(-1)
  const season = step?.seasons.at(-1) ?? null
  const living = census.aliveCount.all, breeding = census.breederCount.all
  return [
    step ? fact('Now at', `${step.label}${season === null ? '' : `, season ${season}`}`, stepPath(step.label)) : fact('Now at', 'the founders'),
    fact('Living', living === 0 ? 'no bird on record' : `${figured(living, 'bird')}, ${breeding === 0 ? 'none penned to breed' : `${breeding} breeding`}`, BIRDS),
    ...(book.keepers.length === 0 ? [] : [fact('Kept by', counted(book.keepers.length, 'keeper'), KEEPERS)]),
    fact('Standard', draft ? `draft ${draft.number}` : 'not drafted yet', draft ? STANDARD : null),
  ]
}

const finished = (text: string): string => (/[.!?…]$/.test(text) ? text : `${text}.`)

/** The number a requirement names, as the mark for a candle. */
function markOf(findings: Findings, kind: RequirementKind, end: 'atLeast' | 'atMost'): number | null {
  const asked = findings.book.requirements?.items.find(item => item.kind === kind)?.[end] ?? null
  return asked !== null && asked > 0 && asked <= 1 ? asked : null
}

/** Of the step the breed stands at; where that cannot have a rate, why not, and beneath it the last one there is, as another step's. */
function trueBredStat(findings: Findings): HomeStat {
  const current = currentStep(findings.ladder), rated = findings.trueBred.steps.filter(step => step.interSe && step.step !== 'mixed')
  if (current === null) return {title: 'True-bred rate', value: NOTHING, unit: '', candle: null, words: 'Nothing has hatched yet.', link: null}
  const title = `True-bred rate, ${current.label}`, rate = rated.find(step => step.step === current.label)
  if (rate?.rate.kind !== 'share') {
    const why = rate ? `${sentence(cannotSay(rate.rate))}.` : `The rate is asked of inter se matings, and none of ${current.label} is.`
    const other = rated.filter(step => step.step !== current.label && step.rate.kind === 'share').at(-1)
    const words = other ? `${why} Of another step, ${other.step}: ${shareInText(other.rate)} right in all they could show.` : why
    return {title, value: NOTHING, unit: '', candle: null, words, link: other ? {text: other.step, link: stepPath(other.step)} : null}
  }
  const link = {text: rate.step, link: stepPath(rate.step)}
  const mark = markOf(findings, 'true-to-type', 'atLeast')
  return {title, value: percent(rate.rate.value), unit: '%', candle: shareCandle(rate.rate, {from: 0, to: 1}, mark), words: `${shareWords(rate.rate, 'chick')} right in all they could show.`, link}
}

function leastStat({leastUniform, ladder}: Findings): HomeStat {
  if (leastUniform === null) return {title: 'Least uniform trait', value: NOTHING, unit: '', candle: null, words: 'Nothing that the standard requires has been scored yet.', link: null}
  const {trait, share, step} = leastUniform, current = currentStep(ladder)
  if (current && current.label !== step) {
    const words = `Nothing that the standard requires has been scored in ${current.label} yet. In another step, ${step}: ${trait.name.toLowerCase()}, ${shareInText(share)} as wanted.`
    return {title: `Least uniform trait, ${current.label}`, value: NOTHING, unit: '', candle: null, words, link: {text: trait.name, link: traitPath(trait)}}
  }
  return {
    title: `Least uniform: ${trait.name}, ${step}`, value: percent(share.value), unit: '%', candle: shareCandle(share, scaleOf([share])), words: `${shareWords(share, 'chick')} as wanted.`,
    link: {text: trait.name, link: traitPath(trait)},
  }
}

function spreadStat(findings: Findings): HomeStat {
  const {spread, book} = findings, trait = mainMeasure(book.traits)
  const title = trait === null ? 'Spread of weights, CV' : `Spread of ${trait.name.toLowerCase()}, CV`
  const row = [...spread.rows].reverse().find(each => each.trait === trait && each.sex !== 'all' && each.step !== 'mixed' && each.spread.kind === 'spread')
  if (trait === null || row?.spread.kind !== 'spread' || row.sex === 'all') return {title, value: NOTHING, unit: '', candle: null, words: trait === null ? 'No measure is written down yet.' : 'Too few weighed at their age and reared alike.', link: trait ? {text: trait.name, link: traitPath(trait)} : null}
  const {cv, cvInterval, n} = row.spread, most = Math.max(0.2, cvInterval?.high ?? 0, cv), mark = markOf(findings, 'even-weight', 'atMost')
  const words = `${cvInterval ? `${limits(cvInterval)}, ` : ''}${n} ${flockWord(row.sex, book.project.species, trait.atAge)} of ${row.step}.`
  return {title: `Spread of ${trait.name.toLowerCase()}${trait.seenIn === null ? ` of ${SEX_ROWS[row.sex]}` : ''}, CV`, value: percent(cv), unit: '%', candle: {...candle(cv, cvInterval, {from: 0, to: most}, mark, mark !== null && cv > mark), label: `${percent(cv)} per cent${cvInterval ? `, ${limits(cvInterval)}` : ''}${mark === null ? '' : `, mark ${percent(mark)} at most`}`}, words, link: {text: trait.name, link: traitPath(trait)}}
}

function evidenceStat({evidence}: Findings): HomeStat {
  const {met, notYet, cannotTell, waived, all} = evidence.counts, link = {text: 'The dossier', link: DOSSIER}
  if (all === 0) return {title: 'Evidence for admission', value: NOTHING, unit: '', candle: null, words: 'No requirements are written down yet.', link}
  const rest = [...(notYet > 0 ? [`${notYet} not yet`] : []), ...(cannotTell > 0 ? [`${cannotTell} cannot be told`] : []), ...(waived > 0 ? [`${waived} waived`] : [])]
  return {title: 'Evidence for admission', value: String(met), unit: ` of ${all}`, candle: null, words: `met${rest.length === 0 ? '' : `; ${rest.join(', ')}`}.`, link}
}

/** Where the breed stands, said before it is drawn. */
function words(findings: Findings): readonly string[] {
  const {trueBred, leastUniform, census, book} = findings, step = currentStep(findings.ladder)
  if (step === null) {
    return [book.birds.length === 0 ? 'The book is open and nothing is written in it yet.'
      : `${sentence(counted(census.aliveCount.all, 'founder'))} and no hatch so far: the breed begins with the first cross. What stands below fills up as chicks are hatched, banded and scored.`]
  }
  const rate = trueBred.steps.find(each => each.step === step.label)
  const scored = rate?.rate.kind === 'share' ? scoredWords(rate, rate.rate) : `${sentence(counted(step.chicks.hatched, 'chick'))} of ${step.label} hatched; none fully scored yet.`
  const least = leastUniform && leastUniform.share.value < 1 && leastUniform.step === step.label ? ` The weakest point is ${leastUniform.trait.name.toLowerCase()}: ${ofWords(leastUniform.share.count, leastUniform.share.total)} as wanted.` : ''
  const few = rate?.rate.kind === 'share' ? fewFamilies(findings, step.label) : '', change = findings.changes.find(({to}) => to === step.label)
  const {aliveCount: {all}, breederCount: {male, female, unknown}} = census, say = saying(all, male, female, unknown)
  const breeding = [...(male + female + unknown === 0 ? ['none'] : []), ...(male > 0 ? [say(male, 'male')] : []), ...(female > 0 ? [say(female, 'female')] : []), ...(unknown > 0 ? [say(unknown, 'bird not sexed', 'birds not sexed')] : [])]
  return [`${scored}${least}${few}`, ...(change ? [changeInShort(change)] : []), all === 0 ? 'No bird is living by the records.' : `${sentence(say(all, 'bird'))} living, ${listWords(breeding)} breeding.`]
}

/** Empty where the families of the step are enough. */
function fewFamilies({trends}: Findings, step: string): string {
  const family = trends.shares.find(({by}) => by === 'true-bred')?.steps.find(each => each.step === step)?.family
  return family?.kind === 'these-chicks' ? ` These chicks come of ${counted(family.families, 'sire family', 'sire families')}, so the figures speak of these chicks only.` : ''
}

/** `Of the 58 chicks of BC3F3 scored, 55 showed …`; every count in figures. */
function scoredWords(rate: StepTrueBred, {count, total}: Share): string {
  const fewer = onFewerWords(rate)
  return `Of the ${figured(total, 'chick')} of ${rate.step} scored, ${count === total ? 'all' : count === 0 ? 'none' : count} showed ${count === 1 ? ALL_IT_COULD : ALL_THEY_COULD}.${fewer === '' ? '' : ` ${fewer}`}`
}

/** Newest photograph of a male and of a female; else those of the latest draft. */
function homePlates({book}: Findings): readonly Plate[] {
  const newest = (sex: 'male' | 'female'): readonly Photo[] => book.birds.filter(bird => bird.sex === sex && bird.left === null && bird.step.kind !== 'strain').flatMap(bird => bird.photos)
    .sort((a, b) => (b.on?.first ?? -1e9) - (a.on?.first ?? -1e9) || (a.file < b.file ? -1 : 1)).slice(0, 1)
  const pair = [...newest('male'), ...newest('female')]
  return plates(pair.length > 0 ? pair : book.drafts.at(-1)?.photos.slice(0, 2) ?? [], book.project.name, false)
}

export function homePage(findings: Findings): Page {
  const {book} = findings, {project} = book
  const nextStep = findings.upcoming.find(entry => entry.kind === 'planned-step')
  const upcoming = findings.upcoming.filter(entry => entry.kind !== 'planned-step' || entry === nextStep)
  const diary = [...book.diary].sort((a, b) => b.on.first - a.on.first || (a.id < b.id ? 1 : -1)).slice(0, 3)
  const view: HomeView = {
    name: project.name, facts: facts(findings), lead: `${finished(project.aim)}${project.begun ? ` Begun ${onDate(project.begun)}.` : ''}`, plates: homePlates(findings),
    words: words(findings), remedy: remedyLine(findings.ratePassed, findings.oneMoreMale, strongerWords(findings)),
    onward: [
      [{text: 'Which cockerel into which pen?', link: MALES}, {text: 'Ways of mating', link: ROTATION}, {text: 'Founders', link: FOUNDERS}],
      [{text: 'What choosing did', link: CHOOSING}, {text: 'Is inbreeding costing us?', link: VIGOUR}, {text: 'Life and lay', link: LAY}, ...(findings.summaries.seasons.length > 0 ? [{text: 'Sheets to send on', link: SUMMARIES}] : [])],
    ],
    stats: [trueBredStat(findings), leastStat(findings), spreadStat(findings), evidenceStat(findings)], fixation: homeFixation(findings), feather: featherView(findings),
    coming: upcoming.slice(0, COMING).map(entry => comingWords(entry, book.asOf)).map(entry => ({...entry, title: finished(entry.title)})), comingMore: upcoming.length > COMING ? `${sentence(counted(upcoming.length - COMING, 'more thing is', 'more things are'))} due later.` : '',
    diary: diary.map(entry => ({when: dateWords(entry.on), title: finished(entry.title), link: diaryPath(entry), text: excerpt(entry.body)})), diaryLink: DIARY, body: project.body,
  }
  return {path: HOME, template: 'home', title: `${project.name}: where the breed stands`, section: 'home', view, search: {kind: 'index', words: `${project.name} home where the breed stands`}}
}
