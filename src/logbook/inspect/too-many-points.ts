import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const DRAFT = '---\ndraft: 1\non: 2024-01-10\nscale: {Type and carriage: 60, Colour: 40}\n---\n## General characteristics, male\n\n**Comb.** Pea, low.\n'
const scores = (colour: string) => `band,on,by,draft,Type and carriage,Colour\nH-1,2024-10-02,inga,1,52,${colour}\n`

export const entry: ManualEntry = {
  code: 'too-many-points', severity: 'error', title: 'More points than the heading has',
  cause: 'A scoring day gives more points than the scale of its draft has under that heading, or says it is out of another number.',
  remedy: 'Mend the points, or write under draft the one that was scored by.',
  wrong: {'standard/1.md': DRAFT, 'scores/2024-10.csv': scores('44')},
  right: {'standard/1.md': DRAFT, 'scores/2024-10.csv': scores('34')},
}

export const tooManyPoints = (given: string, heading: {readonly name: string; readonly points: number}, draft: number, at: Spot): Slip =>
  slipOf(entry, at, `“${given}” under ${heading.name}, which has ${heading.points} points in draft ${draft}`, 'mend the points, or write under draft the one that was scored by')
