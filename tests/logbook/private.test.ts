/** Nothing private is reachable from the book: a canary in each place, and the whole web of objects searched for it. */
import {describe, expect, it} from 'vitest'
import {around, bookOf, linkFiles, type Files} from './around.ts'

const CANARY = 'kanarie'

const FILES: Files = {
  'keepers/secret.md': `---\nname: ${CANARY} the keeper\nregion: ${CANARY} isle\nsigns-as: [${CANARY}-signs]\nprivate: ${CANARY}\n---\nLives by the ${CANARY} church.\n`,
  [`keepers/${CANARY}.md`]: '---\nname: A keeper\nconsent: no\n---\n',
  'birds/H-9.md': `---\nband: H-9\nsex: male\nstrain: holm-white\nkeeper: ${CANARY}\nprivate: {paid: ${CANARY}}\nobservations: [{on: 2024-05-01, by: ${CANARY}-signs, note: Calm.}]\n---\nQuiet. <!-- ${CANARY} -->\n`,
  'pens/2024-B.md': `---\nseason: 2024\nmales: [H-2]\nfemales: [B-3]\nkeeper: secret\nprivate: [${CANARY}]\n---\n`,
  'scores/2024.csv': `band,on,by,comb,struck\nH-9,2024-05-10,${CANARY}-signs,single,\nH-9,2024-05-11,${CANARY}-stranger,single,\n`,
  'shows/2024-11-02-ternhouse.md': `---\nname: Autumn show\non: 2024-11-02\njudges: {j1: {name: ${CANARY} the judge, consent: no}, ${CANARY}-j: ${CANARY} the other}\nentries:\n  - {bird: H-9, judge: j1, result: 1 of 4}\n  - {bird: H-1, judge: ${CANARY}-j}\nprivate: ${CANARY}\n---\n<!--\n${CANARY}\n-->\n`,
  'requirements.md': `---\nrequirements: [{kind: veterinary, title: Health, asked: A statement}]\npapers: [{file: ${CANARY}.pdf, on: 2024-08-12, proves: veterinary, private: true}]\nprivate: ${CANARY}\n---\n`,
}

/** Every string that can be reached, through maps and sets too. */
function strings(root: unknown): string[] {
  const seen = new Set<unknown>()
  const found: string[] = []
  const open = [root]
  while (open.length > 0) {
    const value = open.pop()
    if (typeof value === 'string') found.push(value)
    if (typeof value !== 'object' || value === null || seen.has(value)) continue
    seen.add(value)
    if (value instanceof Map) open.push(...value.keys(), ...value.values())
    else if (value instanceof Set) open.push(...value)
    else for (const [key, inner] of Object.entries(value)) open.push(key, inner)
  }
  return found
}

describe('the linked book', () => {
  it('holds no private field, no comment and no name without consent', () => {
    const {book} = linkFiles(around(FILES))
    const found = strings(book)
    expect(found.length).toBeGreaterThan(100)
    expect(found.filter(text => text.includes(CANARY))).toEqual([])
  })

  it('still tells those keepers and judges apart', () => {
    const {book} = linkFiles(around(FILES))
    expect(book?.keepers.map(keeper => keeper.name)).toEqual(['keeper A', 'The keeper at Kelpgarth', 'keeper B', 'keeper C'])
    expect(book?.shows[0]?.entries.map(entry => entry.judge)).toEqual(['judge 1', 'judge 2'])
    expect(book?.birds.find(bird => bird.band === 'H-9')?.body).toBe('Quiet.')
  })

  it('names a judge only where every show that has them says so', () => {
    const show = (on: string, consent: string) => ({[`shows/${on}-x.md`]: `---\nname: Show\non: ${on}\njudges: {j: {name: A. Judge, consent: ${consent}}}\nentries: [{bird: H-1, judge: j}]\n---\n`})
    const judges = (files: Files) => bookOf(files).shows.flatMap(each => each.entries.map(entry => entry.judge))
    expect(judges({...show('2024-01-05', 'yes'), ...show('2024-02-05', 'yes')})).toEqual(['A. Judge', 'A. Judge'])
    expect(judges({...show('2024-01-05', 'yes'), ...show('2024-02-05', 'no')})).toEqual(['judge 1', 'judge 1'])
  })
})
