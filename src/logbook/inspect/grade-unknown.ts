import {near, orNear} from '../../records/near.ts'
import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const asked = (least: string) => `---\nrequirements:\n  - {kind: show-result, title: Show results, asked: Every bird graded good or better, grades: [fair, good, very good], least-grade: ${least}}\n---\n`

export const entry: ManualEntry = {
  code: 'grade-unknown', severity: 'warning', title: 'A grade that is not in its row',
  cause: 'A requirement on show results names a least grade that is not among its grades, or lists none; or a bird has a grade from a show that no requirement lists, where some list grades. Nobody can say then whether it is enough.',
  remedy: 'Write the grade as it is listed, or list it under grades, in its place from the least on.',
  wrong: {'requirements.md': asked('goode')},
  right: {'requirements.md': asked('good')},
}

const has = (grades: readonly string[], grade: string): boolean => grades.some(each => each.trim().toLowerCase() === grade.trim().toLowerCase())

export function check({bench, book}: Linked): void {
  const graded = (book.requirements?.items ?? []).filter(({leastGrade}) => leastGrade !== null), listed = [...new Set(graded.flatMap(({grades}) => grades))]
  for (const {grades, leastGrade, at} of graded) {
    if (leastGrade === null || has(grades, leastGrade)) continue
    const reason = grades.length === 0 ? `which grades there are beside ${leastGrade} is not said` : `the least grade ${leastGrade} is not among the grades: ${grades.join(', ')}`
    bench.note(slipOf(entry, inside(at, 'least-grade'), reason, orNear(near(leastGrade, grades), 'list the judges’ grades under grades, from the least on, and this one in its place')))
  }
  const [first] = graded
  if (!first || listed.length === 0) return
  for (const {entries} of book.shows) {
    for (const {grade, at} of entries) {
      if (grade !== null && !has(listed, grade)) bench.note(slipOf(entry, inside(at, 'grade'), `no requirement lists the grade ${grade}`, orNear(near(grade, listed), 'list it under grades of the requirement'), {at: first.at, note: 'the grades are listed here'}))
    }
  }
}
