/** Judges are one person over all shows, and named only where every show that has them says so. */
import {describe, expect, it} from 'vitest'
import {judgesOf} from '../../src/logbook/judges.ts'
import {readFiles} from '../records/reading.ts'

const show = (on: string, judges: string, entries = '') => `---\nname: Autumn show\non: ${on}\n${judges === '' ? '' : `judges: ${judges}\n`}${entries === '' ? '' : `entries: ${entries}\n`}---\n`

function judgesIn(...lists: readonly (readonly [judges: string, entries?: string])[]) {
  const files = lists.map(([judges, entries], index): [string, string] => [`shows/202${index}-11-02-ness.md`, show(`202${index}-11-02`, judges, entries)])
  const shows = readFiles(Object.fromEntries(files)).records.show, judges = judgesOf(shows)
  return {called: (index: number, short: string) => { const file = shows[index]; return file ? judges.called(file, short) : null }, forCommittee: [...judges.forCommittee]}
}

describe('what the public calls a judge', () => {
  it('is the name with consent, else a number in order of the shows, the same in each', () => {
    const {called} = judgesIn(['{a: A judge, b: {name: Another, consent: yes}}'], ['{x: A third, y: A judge, z: {name: Another, consent: yes}}'])
    expect([called(0, 'a'), called(0, 'b'), called(1, 'x'), called(1, 'y'), called(1, 'z')]).toEqual(['judge 1', 'Another', 'judge 2', 'judge 1', 'Another'])
  })

  it('is a number where one of several shows says nothing of consent', () => {
    const {called} = judgesIn(['{a: {name: A judge, consent: yes}}'], ['{b: A judge}'])
    expect([called(0, 'a'), called(1, 'b')]).toEqual(['judge 1', 'judge 1'])
  })

  it('is a number of its own for a short name that no list explains', () => {
    const {called} = judgesIn(['', '[{bird: H-1, judge: a}]'], ['', '[{bird: H-1, judge: a}]'])
    expect([called(0, 'a'), called(1, 'a'), called(0, 'nobody')]).toEqual(['judge 1', 'judge 2', null])
  })

  it('is never a number by which somebody else is named', () => {
    const {called, forCommittee} = judgesIn(['{a: {name: Judge 1, consent: yes}, b: {name: A judge, consent-committee: yes}}'])
    expect([called(0, 'a'), called(0, 'b'), forCommittee]).toEqual(['Judge 1', 'judge 2', [['judge 2', 'A judge']]])
  })
})

describe('whom the committee may be told of besides', () => {
  it.each([
    ['the committee alone', ['{a: {name: A judge, consent: no, consent-committee: yes}}'], ['A judge']],
    ['all, who are named already', ['{a: {name: A judge, consent: yes}}'], []],
    ['nobody', ['{a: {name: A judge, consent: no}}'], []],
    ['all in one show, the committee in another', ['{a: {name: A judge, consent: yes}}', '{b: {name: A judge, consent-committee: yes}}'], ['A judge']],
    ['all in one show, and nothing is said in another', ['{a: {name: A judge, consent: yes}}', '{b: A judge}'], []],
    ['the committee in one show, which another takes back', ['{a: {name: A judge, consent-committee: yes}}', '{b: {name: A judge, consent-committee: no}}'], []],
  ])('with consent to %s', (_, lists, names) => {
    expect(judgesIn(...lists.map((list): [string] => [list])).forCommittee.map(([, name]) => name)).toEqual(names)
  })
})
