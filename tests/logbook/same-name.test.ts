/** Two records whose pages would be one file are a located problem, never a site that cannot be written. */
import {describe, expect, it} from 'vitest'
import {around, linkFiles, type Files} from './around.ts'

const codes = (files: Files) => linkFiles(around(files)).problems.filter(problem => problem.code === 'same-name')
const pen = '---\nseason: 2024\nmales: [H-2]\nfemales: [B-3]\n---\n'
const step = (name: string) => `---\nname: ${name}\n---\nWords.\n`

describe('names of pages', () => {
  it.each([
    [{'pens/2024-Z.md': pen, 'pens/2024 Z.md': pen}],
    [{'pens/2024-Z.md': pen, 'pens/2024-z.md': pen}],
    [{'diary/a b.md': '---\non: 2024-01-01\ntitle: One\n---\n', 'diary/a-b.md': '---\non: 2024-01-02\ntitle: Two\n---\n'}],
    [{'traits/leg down.md': '---\nname: One\nstates: [a, b]\n---\n', 'traits/leg-down.md': '---\nname: Two\nstates: [a, b]\n---\n'}],
    [{'keepers/in ga.md': '---\nname: One\n---\n', 'keepers/in-ga.md': '---\nname: Two\n---\n'}],
    [{'steps/one.md': step('Grey  line'), 'steps/two.md': step('grey line')}],
  ])('that come out alike are found: %j', files => expect(codes(files)).toHaveLength(1))

  it('of steps are compared as the steps they mean, with both places', () => {
    const found = codes({'steps/BC2.md': '---\n{}\n---\nOne.\n', 'steps/BC2F1.md': '---\n{}\n---\nTwo.\n'})
    expect(found.map(({place, related}) => [place.file, ...related?.map(other => other.place.file) ?? []])).toEqual([['steps/BC2F1.md', 'steps/BC2.md']])
    expect(found[0]?.reason).toBe('there is a step called BC2 (BC2F1 is the same) already')
    const joined = '---\nname: SY1\njoins: [F1, holm-white]\n---\nOne.\n'
    expect(codes({'steps/SY1.md': joined, 'steps/two.md': step('SY1F1')})).toHaveLength(1)
    expect(codes({'steps/BC2.md': '---\n{}\n---\nOne.\n', 'steps/BC2F2.md': '---\n{}\n---\nTwo.\n'})).toEqual([])
  })

  it('that are long and begin alike are two', () => {
    expect(codes({[`pens/${'a'.repeat(90)}b.md`]: pen, [`pens/${'a'.repeat(90)}c.md`]: pen})).toEqual([])
  })
})

describe('names that keepers sign with', () => {
  const keeper = (name: string, signs?: string) => `---\nname: ${name}\nconsent: yes\n${signs === undefined ? '' : `signs-as: ${signs}\n`}---\n`
  const found = (files: Files) => codes(files).map(({place, related}) => [`${place.file}:${place.start.line}`, ...related?.map(other => `${other.place.file}:${other.place.start.line}`) ?? []])

  it('that are one for two keepers are found, with both places', () => {
    expect(found({'keepers/ternhouse.md': keeper('One', 'inga')})).toEqual([['keepers/ternhouse.md:4', 'keepers/kelpgarth.md:4']])
  })

  it('that are the name of another keeper’s record are found', () => {
    expect(found({'keepers/ternhouse.md': keeper('One', '[tern, kelpgarth]')})).toEqual([['keepers/ternhouse.md:4', 'keepers/kelpgarth.md:1']])
    expect(found({'keepers/inga.md': keeper('One')})).toEqual([['keepers/kelpgarth.md:4', 'keepers/inga.md:1']])
  })

  it('may be the keeper’s own, and written twice', () => {
    expect(found({'keepers/ternhouse.md': keeper('One', '[ternhouse, tern, tern]')})).toEqual([])
  })
})
