/** Chicks whose colour variety cannot be told, held against clauses of that variety: those of the demo that left before ground colour is scored, at twelve weeks. */
import {describe, expect, it} from 'vitest'
import {openBook} from '../../src/commands/open-book.ts'
import {progressIn} from '../../src/commands/progress.ts'
import {looksAsked} from '../../src/findings/clauses-asked.ts'
import {typeOfChicks} from '../../src/findings/type-of-chicks.ts'
import type {Verdict} from '../../src/findings/verdict.ts'
import type {Requirement} from '../../src/logbook/book.ts'
import {listeningWorld} from '../folders/listening-world.ts'
import {plainRequirement} from '../paper-parts.ts'

const {book} = openBook('content', undefined, progressIn(listeningWorld(), true))
if (!book) throw new Error('the demo cannot be read')
const verdicts = (more: Partial<Requirement> = {}) => {
  const asked = plainRequirement('true-to-type', more)
  return typeOfChicks(book, looksAsked(asked, book), asked, 2).verdicts
}
const held = verdicts(), of = (band: string): Verdict['is'] | undefined => [...held].find(([chick]) => chick.kind === 'bird' && chick.band === band)?.[1].is
const tallied = (is: Verdict['is'], looks: Readonly<Record<string, string>>): number => [...held].filter(([chick, verdict]) => chick.kind === 'tally' && verdict.is === is)
  .filter(([chick]) => Object.entries(looks).every(([id, value]) => [...chick.looks].some(([trait, look]) => trait.id === id && look.counted?.value === value))).reduce((sum, [{count}]) => sum + count, 0)

describe('chicks of a variety that cannot be told', () => {
  it('are off where they miss a clause of the only variety they may be of, for they are so whichever they are', () => {
    // yellow in the skin, and gone at ten and eleven weeks for it
    expect([of('25-016'), of('25-106')]).toEqual(['off', 'off'])
    expect(tallied('off', {skin: 'yellow'})).toBe(1)
    expect(tallied('off', {comb: 'single'})).toBe(3)
  })

  it('are lost where they left before it could be seen with nothing off, and not fully scored where it could have been', () => {
    // two, two, three and one of 2024, two, four and one of 2025
    expect(tallied('lost', {comb: 'pea', skin: 'white'})).toBe(15)
    expect(of('24-040')).toBe('part-scored')
  })

  it('come to 82 of 105 in the two seasons, counted by hand: fourteen single and two yellow of BC3F2 with a band, one single and two yellow of BC3F3, four without a band', () => {
    const count = (is: Verdict['is']): number => [...held].filter(([, verdict]) => verdict.is === is).reduce((sum, [chick]) => sum + chick.count, 0)
    expect([count('right'), count('off')]).toEqual([82, 23])
  })

  it('are not off where the requirement names its varieties, for a chick of none of them is none of its business', () => {
    const light = verdicts({varieties: ['Light']})
    expect([...light].filter(([chick]) => chick.kind === 'bird' && ['25-016', '25-106'].includes(chick.band)).map(([, {is}]) => is)).not.toContain('off')
  })
})
