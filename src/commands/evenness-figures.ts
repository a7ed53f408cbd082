/** `pinfeather figures` of whether steps grow truer and more even: how they run, what changed from one to another, how they were graded. */
import {changeTable, scoresTable, trendTable, type EvennessQuestion} from '../findings/evenness-figures.ts'
import type {FiguresTable} from '../findings/figures.ts'
import {reachedSteps, type ReachedStep} from '../findings/ladder.ts'
import type {Findings} from '../findings/study.ts'
import {near, orNear} from '../records/near.ts'
import {changeToRead, scoresToRead, trendToRead} from './evenness-to-read.ts'
import type {ToRead} from './forecast-to-read.ts'
import {Refusal} from './refusal.ts'

/** Steps by their labels, for `change`. */
export interface EvennessAsked {
  readonly from?: string | undefined
  readonly to?: string | undefined
}

export interface EvennessAnswer {
  readonly table: FiguresTable
  /** what a reader on a terminal gets in its place */
  readonly toRead: ToRead
  /** why there are no rows, where there are none */
  readonly none: string
}

/** Why steps or drafts do not go with the question, and null where they do. */
export function misplacedStep(question: string, {from, to}: EvennessAsked): string | null {
  if (question === 'change' || question === 'changes') return null
  return from !== undefined ? '--from is for figures change and changes.' : to !== undefined ? '--to is for figures change and changes.' : null
}

/** @throws {Refusal} where a step cannot be asked about */
export function evennessAnswer(question: EvennessQuestion, findings: Findings, asked: EvennessAsked): EvennessAnswer {
  switch (question) {
    case 'trend': return {table: trendTable(findings), toRead: trendToRead(findings.trends, findings.trueBredParts), none: 'no chick of a step has been scored for a required trait or measured'}
    case 'scores': return {table: scoresTable(findings.gradedScores), toRead: scoresToRead(findings.gradedScores), none: 'no chick of a step has been graded on a scale or by states in order'}
    case 'change': {
      const change = findings.change(stepOf(findings, '--from', asked.from), stepOf(findings, '--to', asked.to))
      if (change.from === change.to) throw new Refusal(`Say two steps; ${change.from} cannot have changed from itself.`)
      return {table: changeTable(change), toRead: changeToRead(change), none: 'neither step has a chick that was scored or measured'}
    }
  }
}

function stepOf({ladder}: Findings, option: string, label: string | undefined): ReachedStep {
  const {on, beside} = reachedSteps(ladder), steps = [...on, ...beside], labels = steps.map(step => step.label)
  const there = labels.length === 0 ? 'no step has been hatched yet' : `hatched are ${labels.join(', ')}`
  if (label === undefined) throw new Refusal(`Say with ${option} which step; ${there}.`)
  const found = steps.find(step => step.label === label)
  if (found) return found
  if (ladder.some(step => step.label === label && step.kind === 'planned')) throw new Refusal(`Of ${label} no chick has hatched yet; ${there}.`)
  throw new Refusal(`There is no step ${label}; ${orNear(near(label, labels), there)}`)
}
