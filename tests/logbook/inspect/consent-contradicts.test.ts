/** Consent to be named to all, and refused to the committee. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles} from '../around.ts'

const keeper = (consents: string) => codesAt(linkFiles(around({'keepers/ternhouse.md': `---\nname: The keeper at Ternhouse\n${consents}---\n`})).problems)
const judge = (words: string) => codesAt(linkFiles(around({'shows/2024-11-02-ternhouse.md': `---\nname: Autumn show\non: 2024-11-02\njudges:\n  j1: ${words}\n---\n`})).problems)

describe('consent-contradicts', () => {
  it('stands at the refusal, of a keeper and of a judge', () => {
    expect(keeper('consent: 2021-03-01\nconsent-committee: no\n')).toEqual(['keepers/ternhouse.md:4 consent-contradicts'])
    expect(judge('{name: A judge, consent: yes, consent-committee: no}')).toEqual(['shows/2024-11-02-ternhouse.md:5 consent-contradicts'])
  })

  it.each(['', 'consent: yes\n', 'consent: no\n', 'consent-committee: yes\n', 'consent-committee: no\n', 'consent: no\nconsent-committee: 2021-03-01\n', 'consent: no\nconsent-committee: no\n', 'consent: yes\nconsent-committee: yes\n'])('is not in %j', words => {
    expect(keeper(words)).toEqual([])
    expect(judge(`{name: A judge, ${words.trim().replaceAll('\n', ', ').replace('2021-03-01', 'yes')}}`.replace(', }', '}'))).toEqual([])
  })
})
