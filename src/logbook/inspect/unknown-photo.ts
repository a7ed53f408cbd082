import {orNear} from '../../records/near.ts'
import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const bird = (file: string) => `---\nband: H-9\nsex: male\nstrain: holm-white\nphotos: [{file: ${file}, alt: A white cock seen from the left.}]\n---\n`

export const entry: ManualEntry = {
  code: 'unknown-photo', severity: 'error', title: 'A photograph that is not there',
  cause: 'A record names a file that photos/ does not hold, in its front matter or among its own words. Capital letters count.',
  remedy: 'Put the file into photos/, or write its name as it stands there.',
  wrong: {'photos/H-9.jpg': '', 'birds/H-9.md': bird('H-9.jpeg')},
  right: {'photos/H-9.jpg': '', 'birds/H-9.md': bird('H-9.jpg')},
}

export const unknownPhoto = (file: string, at: Spot, near: readonly string[]): Slip =>
  slipOf(entry, at, `photos/ holds no ${file}`, orNear(near, `put the photograph at photos/${file}, or mend its name`))

/** @param isThere  does photos/ hold a file of that name? */
export const pictureElsewhere = (address: string, name: string, at: Spot, isThere: boolean): Slip =>
  slipOf(entry, at, `${address} is no address in photos/`, isThere ? `write photos/${name}` : `put the photograph at photos/${name}, and write photos/${name}`)
