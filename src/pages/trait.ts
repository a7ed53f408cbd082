/** One trait: what is wanted, how it is inherited as recorded, how far it has come, how it is scored and how surely. */
import type {Findings} from '../findings/study.ts'
import type {Trait} from '../logbook/book.ts'
import {wantedOfBoth} from './amounts.ts'
import {fact} from './bird-lead.ts'
import type {Fact} from './bird-lead.ts'
import {ageWords} from './dates.ts'
import {strainPath, traitPath} from './links.ts'
import {figured, sentence} from './numbers.ts'
import type {Cell, Page, Table} from './page.ts'
import {plates, type Plate} from './plates.ts'
import {courseOf, standingWords} from './trait-course.ts'
import type {Course} from './trait-course.ts'
import {inheritanceOf} from './trait-inheritance.ts'
import type {Inheritance} from './trait-inheritance.ts'
import {traitFrequencies} from './trait-frequencies.ts'
import type {TraitFrequencies} from './trait-frequencies.ts'
import {agreementView, type AgreementView} from './trait-changes.ts'
import {traitGrowth, type TraitGrowth} from './trait-growth.ts'
import {hiddenOf} from './trait-hidden.ts'
import type {HiddenAtLocus} from './trait-hidden.ts'
import {scoreDisputes} from './trait-scores.ts'
import type {ScoreDisputes} from './trait-scores.ts'
import {traitSegregation} from './trait-segregation.ts'
import type {TraitSegregation} from './trait-segregation.ts'

export interface TraitView {
  readonly name: string
  readonly facts: readonly Fact[]
  readonly lead: string
  readonly plates: readonly Plate[]
  readonly course: Course
  /** null where its measure was taken at no two ages */
  readonly growth: TraitGrowth | null
  /** of two who graded the same birds */
  readonly agreement: AgreementView | null
  /** one entry for each locus with alleles that are not wanted */
  readonly hidden: readonly HiddenAtLocus[]
  readonly frequencies: TraitFrequencies | null
  /** what is lethal or hurts the bird, from what is known of its loci: said before anything else */
  readonly grave: readonly {readonly head: string; readonly says: string}[]
  readonly segregation: TraitSegregation | null
  readonly inheritance: Inheritance
  readonly strains: Table | null
  readonly disputes: ScoreDisputes
  readonly body: string
}

const KINDS = {states: 'told apart by look', ordered: 'looks in an order', graded: 'marks on a scale', measured: 'a measure'} as const

/** `six weeks`, `at 20 weeks, 10 days either side` */
export function scoredFromWords(trait: Trait): string {
  if (trait.kind === 'measured' && trait.atAge !== null) return `at ${ageWords(trait.atAge)}${trait.window === null ? '' : `, ${figured(trait.window, 'day')} either side`}`
  return trait.fromFirstEgg ? 'the first egg' : trait.scoredFrom === 0 ? 'the day of hatch' : ageWords(trait.scoredFrom)
}

function facts(trait: Trait, {book}: Findings): readonly Fact[] {
  return [
    fact('Wanted', wantedOfBoth(trait, book.project.units) ?? 'nothing stated'), fact('Required', trait.required ? 'yes' : 'no'),
    fact(trait.kind === 'measured' ? 'Measured' : 'Scored from', scoredFromWords(trait)), fact('Seen in', trait.seenIn === null ? 'both sexes' : `${trait.seenIn}s`), fact('Kind', KINDS[trait.kind]),
    ...(trait.states.length > 0 ? [fact(trait.kind === 'ordered' ? 'From least to most' : 'Looks', trait.states.join(', '))] : []),
    ...(trait.scale ? [fact('Scale', `${trait.scale.from} to ${trait.scale.to}`)] : []),
  ]
}

function strainTable(trait: Trait, {book}: Findings): Table | null {
  const rows = book.strains.flatMap((strain): readonly (readonly Cell[])[] => {
    const state = strain.trueFor.get(trait)
    return state === undefined ? [] : [[{text: strain.name, link: strainPath(strain)}, state]]
  })
  return rows.length === 0 ? null : {columns: [{head: 'Strain'}, {head: 'Breeds true for'}], rows}
}

/** Lethal ones first. */
const graveOf = ({known}: Inheritance): TraitView['grave'] => (['lethal', 'welfare'] as const).flatMap(about => known.flatMap(({cautions}) => cautions.filter(each => each.about === about)))

export function traitPage(trait: Trait, findings: Findings): Page {
  const misscored = findings.misscoring.find(each => each.trait === trait) ?? null
  const course = courseOf(trait, findings), growth = traitGrowth(trait, findings, course.figures.length + 1), inheritance = inheritanceOf(trait, findings.book)
  const view: TraitView = {
    name: trait.name, facts: facts(trait, findings),
    lead: `${trait.required ? 'Required by the standard' : sentence(KINDS[trait.kind])}. ${standingWords(trait, findings)}`,
    course, growth, agreement: agreementView(trait, findings), frequencies: traitFrequencies(trait, findings, course.figures.length + (growth?.figures.length ?? 0)), grave: graveOf(inheritance), hidden: hiddenOf(trait, findings), segregation: traitSegregation(trait, findings), inheritance: {...inheritance, known: inheritance.known.map(known => ({...known, cautions: known.cautions.filter(({about}) => about === 'breeding')}))}, strains: strainTable(trait, findings), disputes: scoreDisputes(trait, findings.book, misscored), body: trait.body, plates: plates(trait.photos ?? [], trait.name, false),
  }
  return {path: traitPath(trait), template: 'trait', title: trait.name, section: 'traits', view, search: {kind: 'trait', words: `${trait.name} ${trait.states.join(' ')} ${trait.loci.map(({symbol}) => symbol).join(' ')}`}}
}
