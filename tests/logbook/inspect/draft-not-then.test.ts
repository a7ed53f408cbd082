/** Shows under drafts that are not on record or not yet written, told once a show and draft. */
import {describe, expect, it} from 'vitest'
import {around, linkFiles} from '../around.ts'

const DRAFT = '---\ndraft: 1\non: 2024-08-10\nscale: {Type: 100}\n---\n## General characteristics, male\n\n**Comb.** Pea, low.\n'
const tried = (on: string, entries: string, draft = DRAFT) => linkFiles(around({'standard/1.md': draft, 'shows/hall.md': `---\nname: Show\non: ${on}\n${entries}---\n`})).problems.filter(({code}) => code === 'draft-not-then' || code === 'unknown-draft').map(({place, severity, reason}) => [place.start.line, severity, reason])

describe('draft-not-then', () => {
  it('says that a draft was written after the show, once for all that name it', () => {
    expect(tried('2024-06-01', 'entries:\n  - {bird: H-1, draft: 1}\n  - {bird: H-2, draft: 1}\nscores:\n  - {bird: H-1, draft: 1, Type: 90}\n')).toEqual([[5, 'warning', 'shown 2024-06-01 under draft 1, which is of 2024-08-10']])
  })
  it('is the error of any draft that is not on record, of a score sheet too', () => {
    expect(tried('2024-09-01', 'scores:\n  - {bird: H-1, draft: 7, Type: 90}\n')).toEqual([[5, 'error', 'there is no draft 7 of the standard']])
  })
  it('leaves a month that may lie after the draft alone, and says nothing where the standard could not be read', () => {
    expect(tried('2024-08', 'entries:\n  - {bird: H-1, draft: 1}\n')).toEqual([])
    expect(tried('2024-06-01', 'entries:\n  - {bird: H-1, draft: 1}\n', DRAFT.replace('2024-08-10', '2024-13-10'))).toEqual([])
  })
})
