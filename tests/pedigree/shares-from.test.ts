import {describe, expect, it} from 'vitest'
import {geneFlow} from '../../src/pedigree/gene-flow.ts'
import {sharesFrom} from '../../src/pedigree/shares-from.ts'
import {written} from './pedigrees.ts'

describe('sharesFrom(flow)', () => {
  const {pedigree, ids} = written('cock - -\nhen - -\nother - -\ndaughter cock hen\nback cock daughter\nson other daughter')
  const share = sharesFrom(geneFlow(pedigree, 'autosome'))
  const of = (node: string, from: string) => share(ids.indexOf(node), ids.indexOf(from))

  it('a parent gives half, a grandparent a quarter, one that is both three quarters', () => {
    expect([of('daughter', 'cock'), of('son', 'cock'), of('back', 'cock'), of('back', 'hen')]).toEqual([1 / 2, 1 / 4, 3 / 4, 1 / 4])
  })

  it('all of its own, nothing of one that is no ancestor', () => {
    expect([of('back', 'back'), of('back', 'other'), of('cock', 'back'), of('back', 'son')]).toEqual([1, 0, 0, 0])
  })
})
