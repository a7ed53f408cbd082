/** The letters of keepers without consent never fall on the name of one who is named. */
import {describe, expect, it} from 'vitest'
import {bookOf} from './around.ts'

const keepers = (files: Record<string, string>) => bookOf(files).keepers.map(({id, name}) => `${id}: ${name}`)
const unnamed = '---\nname: Somebody\n---\n'

describe('letters of the unnamed', () => {
  it('skip an id that a named keeper has', () => {
    expect(keepers({'keepers/keeper-a.md': '---\nname: The keeper at Ternhouse\nconsent: yes\n---\n', 'keepers/wadderness.md': unnamed, 'keepers/x.md': unnamed})).toEqual([
      'keeper-a: The keeper at Ternhouse', 'kelpgarth: The keeper at Kelpgarth', 'keeper-b: keeper B', 'keeper-c: keeper C',
    ])
  })

  it('skip one that differs only in capital letters or signs, which make no other page', () => {
    expect(keepers({'keepers/Keeper A.md': '---\nname: The keeper at Ternhouse\nconsent: yes\n---\n', 'keepers/x.md': unnamed})).toContain('keeper-b: keeper B')
  })

  it('skip a name that a named keeper has', () => {
    expect(keepers({'keepers/ternhouse.md': '---\nname: Keeper A\nconsent: yes\n---\n', 'keepers/x.md': unnamed})).toContain('keeper-b: keeper B')
  })

  it('begin with A, and take no heed of records that are not named themselves', () => {
    expect(keepers({'keepers/keeper-a.md': unnamed})).toContain('keeper-a: keeper A')
  })
})
