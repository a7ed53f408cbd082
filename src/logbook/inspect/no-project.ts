import type {Slip} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

export const entry: ManualEntry = {
  code: 'no-project', severity: 'error', title: 'No project file',
  cause: 'The folder has no project.md, so nothing says what is being bred.',
  remedy: 'Add project.md, or name the folder that holds it.',
  wrong: {'project.md': ''},
  right: {'project.md': '---\nname: Skerry Fowl\naim: A fowl that stands wind and wet.\n---\n'},
}

export const noProject = (): Slip =>
  slipOf(entry, {file: 'project.md', path: []}, 'there is no project.md here', 'add project.md with name: and aim:, or name the folder that holds it')
