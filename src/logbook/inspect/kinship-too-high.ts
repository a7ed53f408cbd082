import type {Slip, Spot} from '../../records/problem.ts'
import {percentWords} from './chances-do-not-sum.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const bird = (kinship: string) => `---\nband: H-4\nsex: female\nstrain: holm-white\nhatched: 2022-03-20\nkin: [{with: H-3, kinship: ${kinship}}]\n---\n`

export const entry: ManualEntry = {
  code: 'kinship-too-high', severity: 'error', title: 'Birds more alike than a bird is to itself',
  cause: 'A kinship is stated of two founders, of the birds of a flock or of a strain that is higher than a bird has with itself: 50%, and half the inbreeding of its strain on top. Full sibs of unrelated parents have 25%, half sibs 12.5%; perhaps a relationship was written, which is twice as much.',
  remedy: 'Write the kinship, half the relationship; or give the strain the inbreeding that it has.',
  wrong: {'birds/H-4.md': bird('75%')},
  right: {'birds/H-4.md': bird('25%')},
}

/** Kinship of a bird with itself, ½(1 + F): no other is more. */
export const mostKinship = (inbreeding: number): number => (1 + inbreeding) / 2

/** @param of the two birds, `the birds of flock breeder-7` or `the birds of holm-white` */
export function kinshipTooHigh(at: Spot, of: string, kinship: number, most: number): Slip {
  return slipOf(entry, at, `${of} are stated to have a kinship of ${percentWords(kinship)}, more than a bird has with itself, ${percentWords(most)}`,
    `write the kinship, not the relationship: ${percentWords(kinship / 2)} would be half of what stands here`)
}
