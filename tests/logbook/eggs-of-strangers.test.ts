/** Eggs of a setting that are given to a bird which cannot have laid them. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles} from './around.ts'

const found = (band: string) => linkFiles(around({'hatches/2024-09.md': `---\npen: 2024-A\nset: 2024-03-02\neggs: {B-1: 4, ${band}: 3}\non: 2024-03-23\n---\n`})).problems

describe('eggs by hen', () => {
  it('are none of a cock', () => expect(codesAt(found('H-2'))).toEqual(['hatches/2024-09.md:4 wrong-parent-sex']))
  it('are of hens of the pen', () => {
    expect(codesAt(found('B-3'))).toEqual(['hatches/2024-09.md:4 not-in-pen'])
    expect(found('B-2')).toEqual([])
  })
  it('of a hen in a pen with an unknown band are let be', () => expect(codesAt(found('B-9'))).toEqual(['hatches/2024-09.md:4 unknown-band']))
})
