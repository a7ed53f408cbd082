import {near} from '../../records/near.ts'
import {inside} from '../../records/problem.ts'
import type {Clause} from '../book.ts'
import {clausesOf} from '../clauses-of.ts'
import {latestDraft} from '../latest-draft.ts'
import type {Linked} from '../linked.ts'
import {sectionKindOf} from '../section-kinds.ts'
import {speltAs} from '../variety-names.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (end: string) => `---\ndraft: 1\non: 2024-10-01\n---\n## Colour\n\n### Light\n\n**Male.** White, the hackle striped.\n\n${end}`

export const entry: ManualEntry = {
  code: 'variety-unfinished', severity: 'warning', title: 'A colour variety told of one sex, without its down, or not at all',
  cause: 'The latest draft tells a colour variety clause by clause, and one of male, female and the down of day-old chicks is not among them. A variety told in one piece, or for both sexes together, is whole; so is one whose down stands in a section of its own. Or one of several under varieties: has neither a heading nor a clause.',
  remedy: 'Write the clause: **Female.** or **Day-old down.** under the variety’s heading; “as the male” will do.',
  wrong: {'standard/1.md': draft('**Day-old down.** Cream.\n')},
  right: {'standard/1.md': draft('**Female.** As the male.\n\n**Day-old down.** Cream.\n')},
}

function wanting(clauses: readonly Clause[], downElsewhere: boolean): readonly string[] {
  const isDown = ({title}: Clause): boolean => sectionKindOf(title) === 'down'
  const grown = clauses.filter(clause => !isDown(clause)), has = (sex: 'male' | 'female'): boolean => grown.some(clause => clause.sex === sex)
  // neither sex by itself: what stands there is of both
  const sexes = has('male') === has('female') ? [] : [has('male') ? 'the female' : 'the male']
  return [...sexes, ...(downElsewhere || clauses.some(isDown) ? [] : ['the down of day-old chicks'])]
}

export function check({bench, book}: Linked): void {
  const draft = latestDraft({bench, book})
  if (!draft) return
  const downElsewhere = draft.sections.some(({kind, clauses}) => kind === 'down' || clauses.some(({title, variety}) => variety === null && sectionKindOf(title) === 'down'))
  const headings = draft.varieties.map(({name}) => name).filter(name => clausesOf(draft).some(({variety}) => variety === name)), record = bench.records.draft.find(({at}) => at.file === draft.at.file)
  const named = (record?.data.varieties ?? []).map(({key}) => key), misnamed = headings.filter(name => named.length > 0 && !named.includes(speltAs(named)(name)))
  for (const {name} of draft.varieties) {
    // where it is the only one, the section on colour is of it; one whose heading is misspelt is told of there
    if (!headings.includes(name) && (draft.varieties.length > 1 || headings.length > 0) && !misnamed.some(heading => near(heading, named).includes(name))) {
      bench.note(slipOf(entry, inside(draft.at, 'varieties', name), `the variety ${name} is named, and no heading or clause tells of it`, `write ### ${name} in the section on colour, or take it out`))
    }
    const clauses = draft.sections.filter(({kind}) => kind === 'colour').flatMap(section => section.clauses.filter(({variety}) => variety === name))
    if (clauses.length === 0 || clauses.some(({title}) => title === name)) continue
    const lacks = wanting(clauses, downElsewhere)
    if (lacks.length > 0) bench.note(slipOf(entry, draft.at, `the variety ${name} says nothing of ${lacks.join(' and ')}`, 'write the clause under the variety’s heading'))
  }
}
