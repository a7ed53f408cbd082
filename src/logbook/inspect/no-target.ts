import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

export const entry: ManualEntry = {
  code: 'no-target', severity: 'error', title: 'A required trait without a target',
  cause: 'The standard requires a trait, but nothing says what a bird must show to be right.',
  remedy: 'Add target: with what is wanted, or take required: out.',
  wrong: {'traits/crest.md': '---\nname: Crest\nstates: [none, small]\nrequired: yes\n---\n'},
  right: {'traits/crest.md': '---\nname: Crest\nstates: [none, small]\ntarget: none\nrequired: yes\n---\n'},
}

export const noTarget = (trait: string, at: Spot): Slip =>
  slipOf(entry, at, `${trait} is required, but nothing says what is wanted`, 'add target: with what the breed is to show')
