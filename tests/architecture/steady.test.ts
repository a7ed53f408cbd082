/** Same records, same bytes: nothing in src/ may reach for chance, the clock, the machine's language or its time zone. */
import ts from 'typescript'
import {describe, expect, it} from 'vitest'
import {filesBelow, nodesOf, parsed} from './source-files.ts'

/** Methods of a Date that answer in the machine's own time zone. */
const LOCAL_TIME = /^(?:get|set)(?:FullYear|Month|Date|Day|Hours|Minutes|TimezoneOffset)$|^to(?:Date|Time)String$/
/** Methods that answer in the machine's own language. */
const LOCAL_LANGUAGE = /^toLocale|^localeCompare$/

/** Why this piece of code could give other bytes on another day or machine; null when it cannot. */
function unsteady(node: ts.Node): string | null {
  if (ts.isPropertyAccessExpression(node)) {
    const [of, name] = [node.expression.getText(), node.name.text]
    if (of === 'Math' && name === 'random') return 'chance without a seed'
    if (of === 'Date' && name === 'now') return 'the clock'
    if (LOCAL_LANGUAGE.test(name)) return 'the language of the machine'
    if (LOCAL_TIME.test(name)) return 'the time zone of the machine'
  }
  if (ts.isIdentifier(node) && node.text === 'Intl' && !ts.isPropertyAssignment(node.parent)) return 'the language of the machine'
  if (ts.isIdentifier(node) && /^(?:randomUUID|randomBytes|randomInt|getRandomValues)$/.test(node.text)) return 'chance without a seed'
  if (ts.isNewExpression(node) && node.expression.getText() === 'Date') {
    const given = node.arguments?.length ?? 0
    if (given === 0) return 'the clock'
    if (given > 1) return 'the time zone of the machine'
  }
  if (ts.isCallExpression(node) && node.expression.getText() === 'Date') return 'the clock'
  return null
}

/** The time a stretch of work took may be measured where the work is started, and nowhere else. */
const isStopwatch = (node: ts.Node) =>
  ts.isPropertyAccessExpression(node) && /^(?:performance\.now|process\.(?:hrtime|uptime))$/.test(node.getText())

function found(file: string, text?: string): string[] {
  const source = parsed(file, text)
  return [...nodesOf(source)].flatMap(node => {
    const why = unsteady(node) ?? (isStopwatch(node) && !/^src\/(?:commands\/|cli\.ts)/.test(file) ? 'the clock' : null)
    const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1
    return why === null ? [] : [`${file}:${line} ${node.getText()} leans on ${why}`]
  })
}

describe('src/ gives the same bytes on any day and machine', () => {
  it('leans on no chance, clock, language or time zone', () => {
    const files = filesBelow('src').filter(file => file.endsWith('.ts'))
    expect(files.flatMap(file => found(file))).toEqual([])
  })
})

describe('the check itself', () => {
  it.each([
    'const a = Math.random()', 'const a = Date.now()', 'const a = new Date()', 'const a = Date()', 'const a = new Date(2024, 1, 1)',
    '[].sort((a, b) => a.localeCompare(b))', 'n.toLocaleString()', "new Intl.NumberFormat('en')", 'day.getFullYear()', 'performance.now()',
  ])('sees %s', code => {
    expect(found('src/findings/x.ts', code)).not.toEqual([])
  })

  it.each(['// Date.now() is not used here', "const a = 'new Date()'", 'new Date(86400000).getUTCFullYear()', 'Date.UTC(2000, 1, 1)'])('lets %s be', code => {
    expect(found('src/findings/x.ts', code)).toEqual([])
  })
})
