/** The outer shape: what stands at the top level, how long a file may grow, which numerics have their test, which words stay out. */
import {readdirSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {filesBelow, ROOT, textOf} from './source-files.ts'

const TOP_LEVEL = [
  'DEVELOPERS.md', 'LICENSE', 'README.md', 'content', 'package-lock.json', 'package.json', 'site-demo', 'src', 'templates', 'tests', 'tsconfig.json',
]

describe('the top level', () => {
  it('holds the fixed files and folders and, beside dot-files, nothing else', () => {
    const made = ['node_modules', 'site', 'site-for-committee'] // by npm, and by whoever has tried `publish` here
    const there = readdirSync(ROOT).filter(name => !name.startsWith('.') && !made.includes(name)).sort()
    expect(there).toEqual(TOP_LEVEL)
  })
})

describe('files of src/', () => {
  const files = filesBelow('src').filter(file => file.endsWith('.ts'))

  it('stay under 300 lines', () => {
    const long = files.filter(file => textOf(file).split('\n').length > 300)
    expect(long).toEqual([])
  })

  it('are called after what they give, never after odds and ends', () => {
    expect(files.filter(file => /(?:^|\/)(?:utils?|helpers?|common|misc|shared|index)(?:\.ts|\/)/.test(file))).toEqual([])
  })
})

describe('numerics', () => {
  it('have a test of the same name, each that gives more than types', () => {
    const tests = new Set(filesBelow('tests'))
    const numerics = ['statistics', 'pedigree', 'heredity'].flatMap(room => {
      const below = readdirSync(`${ROOT}/src`).includes(room) ? filesBelow(`src/${room}`) : []
      return below.filter(file => file.endsWith('.ts') && /^export (?:async )?(?:function|const|class)/m.test(textOf(file)))
    })
    const untested = numerics.filter(file => !tests.has(file.replace(/^src\//, 'tests/').replace(/\.ts$/, '.test.ts')))
    expect(untested).toEqual([])
  })
})

describe('words that stay out of the repository', () => {
  // joined from halves, so that this file does not hold them itself
  const WORDS = [
    ['trans', 'cript'], ['seed doc', 'ument'], ['lang', 'uage model'], ['artificial intel', 'ligence'], ['\\bL', 'LMs?\\b'], ['\\bA', 'I\\b'], ['\\bprom', 'pt engineer'],
    ['/wo', 'rk/'], ['/tm', 'p/'], ['trade-', 'notes'], ['check-', 'values'], ['style-', 'models'], ['\\bsub', 'agent'],
  ].map(halves => halves.join(''))
  const pattern = new RegExp(WORDS.join('|'))
  const isText = /\.(?:ts|js|json|md|hbs|css|csv|html|svg|xml|txt|yml|yaml)$|(?:^|\/)(?:run|LICENSE|\.gitignore|\.npmrc)$/

  it('are in no text file', () => {
    const files = filesBelow('').filter(file => isText.test(file) && file !== 'package-lock.json')
    const found = files.flatMap(file => textOf(file).split('\n').flatMap((line, index) => {
      const word = pattern.exec(line)?.[0]
      return word === undefined ? [] : [`${file}:${index + 1} ${word}`]
    }))
    expect(found).toEqual([])
  })

  it('are looked for in their whole form', () => {
    expect(pattern.test(['a trans', 'cript of it'].join(''))).toBe(true)
    expect(pattern.test('said, again and maid')).toBe(false)
  })
})
