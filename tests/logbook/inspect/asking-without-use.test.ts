import {describe, expect, it} from 'vitest'
import {around, linkFiles} from '../around.ts'

const problems = (line: string) => linkFiles(around({'requirements.md': `---\nrequirements:\n  - {title: t, asked: a, ${line}}\n---\n`})).problems.filter(({code}) => code === 'asking-without-use')

describe('asking-without-use', () => {
  it('tells of each key at its place, and of the kinds that read it', () => {
    expect(problems('kind: veterinary, interval: families, at-least: 1, judges: 2')).toMatchObject([
      {severity: 'warning', place: {file: 'requirements.md', start: {line: 3}}, reason: 'a requirement of the kind veterinary does not look at interval', remedy: 'take it out, or ask for a kind that does: true-to-type'},
      {reason: 'a requirement of the kind veterinary does not look at judges', remedy: 'take it out, or ask for a kind that does: shows-and-judges'},
    ])
  })
  it('lets what every kind has alone', () => expect(problems('kind: history, by: 2030, waived: {because: Grown old.}')).toEqual([]))
})
