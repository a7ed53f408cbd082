/** Plain clauses, drafts, requirements and papers, to be changed in what a test is about. */
import type {Clause, Draft, Paper, Requirement, RequirementKind, Section} from '../src/logbook/book.ts'
import {at, date} from './pages/small-logbook.ts'

export const plainClause = (id: string, title: string, text: string, more: Partial<Clause> = {}): Clause => ({
  id, title, text, sex: null, variety: null, trait: null, allows: {male: null, female: null}, ownRange: false, mandatory: false, ifMissed: null, accepted: null, at, ...more,
})

export const plainSection = (id: string, clauses: readonly Clause[], more: Partial<Section> = {}): Section => ({id, title: id, kind: null, lead: '', clauses, ...more})

export const plainDraft = (number: number, on: string, more: Partial<Draft> = {}): Draft => ({
  at, body: '', number, on: date(on), title: '', manner: null, classification: null, origin: null, egg: null, eggAtLeast: null, rings: {male: null, female: null}, sections: [], weights: [],
  points: [], varieties: [], rows: [], reasons: new Map(), photos: [], ...more,
})

export const plainRequirement = (kind: RequirementKind, more: Partial<Requirement> = {}): Requirement => ({
  kind, title: kind, asked: kind, atLeast: null, atMost: null, males: null, females: null, seasons: null, inARow: false, inside: false, perClass: null, judges: null, exhibitors: null, shows: null, insideAtLeast: null,
  rateAtMost: null, sizeAtLeast: null, maleLines: null, judgedOn: null, interval: null, trait: null, clauses: [], classes: [], ages: [], varieties: [], sections: [], toAge: null, grades: [],
  leastGrade: null, from: null, by: null, within: null, stated: null, waived: null, at, ...more,
})

export const plainPaper = (proves: RequirementKind, on: string, until: string | null = null, more: Partial<Paper> = {}): Paper =>
  ({title: proves, proves, on: date(on), until: until === null ? null : date(until), keeper: null, at, ...more})
