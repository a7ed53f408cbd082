import {inside, type Spot} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const keeper = (committee: string) => `---\nname: The keeper at Ternhouse\nconsent: 2021-03-01\nconsent-committee: ${committee}\n---\n`

export const entry: ManualEntry = {
  code: 'consent-contradicts', severity: 'error', title: 'Named to everybody, but not to the committee',
  cause: 'A keeper or judge has agreed to be named on the site, and not to be named to the committee, which reads the site too. One of the two was written wrongly, and a name that has been published cannot be called back; so nothing is published until it is settled.',
  remedy: 'Ask them. Write consent: no where they may be named to nobody or to the committee alone, or take consent-committee away where they may be named to all.',
  wrong: {'keepers/ternhouse.md': keeper('no')},
  right: {'keepers/ternhouse.md': keeper('yes')},
}

export function check({bench}: Linked): void {
  const contradicts = (at: Spot) => bench.note(slipOf(entry, at, 'consent is given to be named on the site, and refused to be named to the committee', 'ask them; then write consent: no, or take consent-committee away'))
  for (const {data, at} of bench.records.keeper) {
    if (data.consent?.given === true && data['consent-committee']?.given === false) contradicts(inside(at, 'consent-committee'))
  }
  for (const {data} of bench.records.show) {
    for (const {value: {consent, 'consent-committee': committee}, at} of data.judges ?? []) if (consent === true && committee === false) contradicts(inside(at, 'consent-committee'))
  }
}
