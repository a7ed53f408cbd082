/** A table laid into the other folder of tables is one error that says where it belongs. */
import {describe, expect, it} from 'vitest'
import {around, linkFiles} from './around.ts'

const HATCH = '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male}\n  - {band: 24-902, sex: male}\n---\n'
const TYPE = '---\nname: Type\nscale: 1 to 10\n---\n'
const tried = (file: string, text: string) => linkFiles(around({'hatches/2024-09.md': HATCH, 'traits/type.md': TYPE, 'traits/skin.md': '---\nname: Skin\nstates: [white, yellow]\n---\n', [file]: text})).problems
  .map(({code, severity, place, reason, remedy}) => `${severity} ${code} ${place.file}:${place.start.line}: ${reason.split(',')[0] ?? ''}; ${remedy}`)

describe('a table in the other folder', () => {
  it.each([
    ['band,on,by,comb,skin\n24-901,2024-08-10,inga,pea,white\n24-902,2024-08-10,inga,single,white\n'], ['band,on,comb,skin\n24-901,2024-08-10,pea,white\n24-902,2024-08-10,single,white\n'],
    ['band,on,by,comb,type\n24-901,2024-08-10,inga,pea,7\n24-902,2024-08-10,inga,single,8\n'], ['band,on,type\n24-901,2024-08-10,7\n24-902,2024-08-10,8\n'],
  ])('scores in measures/: %j', text => {
    expect(tried('measures/2024.csv', text)).toEqual(['error misplaced-record measures/2024.csv:1: this looks like scores; move it to scores/2024.csv'])
  })

  it.each([
    ['band,on,weight\n24-901,2024-08-10,2380\n24-902,2024-08-10,2410\n'], ['pen,on,eggs,hens\n2024-A,2024-03-01,2,2\n'], ['pen,on,feed\n2024-A,2024-03-01,2 kg\n'],
    ['hatch,on,sex,weight\n2024-09,2024-08-10,male,2380\n'],
  ])('measures in scores/: %j', text => {
    expect(tried('scores/2024.csv', text)).toEqual(['error misplaced-record scores/2024.csv:1: this looks like measures; move it to measures/2024.csv'])
  })

  it('a heading with a unit is of amounts, though all cells below it have shifted', () => {
    expect(tried('measures/2024.csv', 'band;on;weight (g)\n2024-08-10;24-901;x\n24-902;2024-08-10;2024-08-10\n').filter(line => line.includes('misplaced') || line.includes('no column'))).toEqual([])
  })

  it.each([
    ['measures/2024.csv', 'band,on,weight\n24-901,2024-08-10,2380\n24-902,2024-08-10,2410\n'], ['scores/2024.csv', 'band,on,by,comb,type,weight-20\n24-901,2024-08-10,inga,pea,7,2380\n'],
  ])('none where it is right: %s', (file, text) => expect(tried(file, text)).toEqual([]))
})
