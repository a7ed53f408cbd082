/** How much a requirement asks for: a share of kinds that ask for one, a count of all others. */
import {describe, expect, it} from 'vitest'
import {REQUIREMENT_WORDS} from '../../src/records/schema/requirements.ts'
import {front, readFiles} from './reading.ts'

const read = (line: string) => readFiles({'requirements.md': front(`requirements:\n  - {title: t, asked: a, ${line}}`)})
const problems = (line: string) => read(line).problems.map(({reason, remedy, severity, place}) => [severity, `${place.start.line}:${place.start.column}`, reason, remedy])
const atLeast = (line: string) => read(line).records.requirements[0]?.data.requirements[0]?.['at-least']?.value

describe('at-least and at-most', () => {
  it('takes a bare number over one for no share', () => {
    expect(problems('kind: inbreeding, at-most: 20')).toEqual([['error', '3:53', '“20” is more than the whole', 'a share is asked: write 20%']])
    expect(problems('kind: identity, at-least: 95')).toMatchObject([['error', expect.any(String), '“95” is more than the whole', 'a share is asked: write 95%']])
    expect(problems('kind: welfare, at-least: 8500')).toMatchObject([['error', expect.any(String), '“8500” is more than the whole', 'a share is asked: write it in per cent, such as 70%']])
    expect(problems('kind: fixed, at-least: 120%')).toMatchObject([['error', expect.any(String), '“120%” is more than the whole', 'write a share of at most 100%, such as 70% or 0.7']])
  })
  it('takes a share for no count', () => {
    expect(problems('kind: years-bred, at-least: 5%')).toMatchObject([['error', expect.any(String), '“5%” is no count, and years-bred counts', 'write how many, such as 5']])
    expect(problems('kind: photographs, at-least: 0.5')).toMatchObject([['error', expect.any(String), '“0.5” is no count, and photographs counts', 'write how many, such as 5']])
    expect(problems('kind: show-result, at-least: 95%')).toMatchObject([['error', expect.any(String), '“95%” is no count, and show-result counts', 'write how many, such as 5']])
  })
  it('reads what each kind asks for', () => {
    expect([['identity', '95%'], ['identity', '0.95'], ['true-to-type', '1'], ['years-bred', '5'], ['show-result', '92.5']].map(([kind, amount]) => [problems(`kind: ${kind}, at-least: ${amount}`), atLeast(`kind: ${kind}, at-least: ${amount}`)]))
      .toEqual([[[], 0.95], [[], 0.95], [[], 1], [[], 5], [[], 92.5]])
  })
  it('knows of every kind which of the two it asks for', () => {
    const shares = REQUIREMENT_WORDS.filter(kind => problems(`kind: ${kind}, at-least: 50%`).length === 0)
    expect(shares).toEqual(['true-to-type', 'fixed', 'even-weight', 'welfare', 'inbreeding', 'identity'])
    expect(REQUIREMENT_WORDS.filter(kind => problems(`kind: ${kind}, at-least: 50`).length === 0)).toEqual(REQUIREMENT_WORDS.filter(kind => !shares.includes(kind)))
  })
})

describe('a paper', () => {
  it('does not end before its day', () => {
    const of = (until: string) => readFiles({'requirements.md': front(`requirements:\n  - {kind: veterinary, title: t, asked: a}\npapers:\n  - {on: 2025-08-12, until: ${until}, proves: veterinary}`)}).problems
    expect(of('2024-08-12')).toMatchObject([{severity: 'error', code: 'impossible-date', place: {start: {line: 5}}, reason: 'the paper of 2025-08-12 ends before it begins'}])
    expect([of('2025-08-12'), of('2025')]).toEqual([[], []])
  })
})
