import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (number: number, more: string, tail: string) => `---\ndraft: ${number}\non: 2024-1${number}-01\n${more}---\n## General characteristics, male\n\n**Tail.** ${tail}\n`
const REASON = 'reasons: {general-characteristics-male/tail: As measured.}\n'

export const entry: ManualEntry = {
  code: 'reason-without-change', severity: 'warning', title: 'A reason for what did not change',
  cause: 'The latest draft says why a piece was changed, and the draft before has it just so: the reason is printed nowhere. It was left from an earlier draft, or the change was not made.',
  remedy: 'Make the change, or take the reason out.',
  wrong: {'standard/1.md': draft(1, '', 'Of medium length.'), 'standard/2.md': draft(2, REASON, 'Of medium length.')},
  right: {'standard/1.md': draft(1, '', 'Of medium length.'), 'standard/2.md': draft(2, REASON, 'Long.')},
}

export const reasonWithoutChange = (piece: string, before: number, at: Spot, stood: Spot): Slip =>
  slipOf(entry, at, `nothing changed in ${piece} since draft ${before}`, 'make the change, or take the reason out', {at: stood, note: `draft ${before} stands here`})
