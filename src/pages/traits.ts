/** All traits: those the standard requires first, what is wanted, and how the latest scored step stands. */
import type {Findings} from '../findings/study.ts'
import {wantedOfBoth} from './amounts.ts'
import {traitPath, TRAITS} from './links.ts'
import {NOTHING, saying, sentence} from './numbers.ts'
import type {Cell, Page, Table} from './page.ts'
import {scoredFromWords} from './trait.ts'
import {standingWords} from './trait-course.ts'

export interface TraitsView {
  readonly lead: string
  readonly empty: string
  readonly required: Table | null
  readonly others: Table | null
}

export function traitsPage(findings: Findings): Page {
  const {traits, project} = findings.book
  const table = (required: boolean, caption: string): Table | null => {
    const own = traits.filter(trait => trait.required === required)
    if (own.length === 0) return null
    return {
      caption, columns: [{head: 'Trait'}, {head: 'Wanted'}, {head: 'Scored from'}, {head: 'How it stands'}],
      rows: own.map((trait): readonly Cell[] => [{text: trait.name, link: traitPath(trait)}, wantedOfBoth(trait, project.units) ?? NOTHING, scoredFromWords(trait), standingWords(trait, findings)]),
    }
  }
  const required = traits.filter(trait => trait.required).length
  const say = saying(traits.length, required)
  const view: TraitsView = {
    lead: traits.length === 0 ? 'No trait is written down yet.' : `${sentence(say(traits.length, 'trait'))} scored or measured, ${required === 0 ? 'not required by the standard' : required === traits.length ? 'required by the standard' : `${say(required, 'of them', 'of them')} required by the standard`}.`,
    empty: traits.length === 0 ? 'Begin with the one or two looks that the breed is made for, and a weight.' : '',
    required: table(true, 'Required by the standard'), others: table(false, 'Watched, and not required'),
  }
  return {path: TRAITS, template: 'traits', title: 'Traits', section: 'traits', view, search: {kind: 'index', words: 'traits looks measures'}}
}
