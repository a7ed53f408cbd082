import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const bird = (words: string) => `---\nband: H-9\nsex: male\nstrain: holm-white\nphotos: [{file: H-9.jpg${words}}]\n---\n`

export const entry: ManualEntry = {
  code: 'photo-without-words', severity: 'warning', title: 'A photograph without words',
  cause: 'A photograph has no alt text, so a reader who cannot see it learns only which bird it shows.',
  remedy: 'Add alt: with what a judge would see; among your own words, write it between the square brackets: ![A white cock seen from the left](photos/H-9.jpg).',
  wrong: {'photos/H-9.jpg': '', 'birds/H-9.md': bird('')},
  right: {'photos/H-9.jpg': '', 'birds/H-9.md': bird(', alt: A white cock seen from the left.')},
}

export const photoWithoutWords = (file: string, at: Spot, remedy = 'add alt: with what a judge would see'): Slip =>
  slipOf(entry, at, `${file} has no words for readers who cannot see it`, remedy)
