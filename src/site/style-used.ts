/**
 * The stylesheet cut down to what one page uses, for a page that goes out alone: no comments, no rule for a class, an element or an attribute that is not there;
 * no typeface where it goes out on a few kilobytes. A rule that may apply stays: what a selector says of order, state or what stands beside is not tried.
 */
import {cssString} from './page-heads.ts'

interface Rule {
  /** `@media …`, `@page …`, or selectors */
  readonly head: string
  /** declarations, or null for a rule that holds rules */
  readonly text: string | null
  readonly rules: readonly Rule[]
}

/** Rules in order; braces within quotes are none. */
function parse(style: string): readonly Rule[] {
  const root: Rule[] = [], open: {head: string; rules: Rule[]}[] = []
  let text = ''
  for (const [piece] of style.replace(/\/\*[\s\S]*?\*\//g, '').matchAll(/"(?:[^"\\]|\\.)*"|[{}]|[^"{}]+/g)) {
    if (piece === '{') {
      // what stands before the head is a declaration of the rule around, as `margin` in `@page`
      const end = text.lastIndexOf(';') + 1, around = open.at(-1)
      if (end > 0 && around) around.rules.push({head: '', text: text.slice(0, end), rules: []})
      open.push({head: text.slice(end).trim(), rules: []})
      text = ''
    } else if (piece === '}') {
      const closed = open.pop()
      if (!closed) throw new Error('the stylesheet closes a rule that it never opens')
      const into = open.at(-1)?.rules ?? root
      if (closed.rules.length === 0) into.push({head: closed.head, text, rules: []})
      else into.push({head: closed.head, text: null, rules: text.trim() === '' ? closed.rules : [...closed.rules, {head: '', text, rules: []}]})
      text = ''
    } else text += piece
  }
  if (open.length > 0) throw new Error('the stylesheet leaves a rule open')
  return root
}

/** What a page is made of: `td`, `.wide`, `#matter`, `[aria-current]`. */
function namesIn(html: string): ReadonlySet<string> {
  // tags that may be left out, of what is always there
  const names = new Set(['html', 'head', 'body'])
  for (const [, element = '', attributes = ''] of html.matchAll(/<([a-z][a-z\d]*)((?:\s+[^\s=>"']+(?:=(?:"[^"]*"|[^\s>"']+))?)*)\s*\/?>/gi)) {
    names.add(element.toLowerCase())
    for (const [, name = '', quoted = '', bare = ''] of attributes.matchAll(/([^\s=>"']+)(?:=(?:"([^"]*)"|([^\s>"']+)))?/g)) {
      const value = quoted || bare
      names.add(`[${name}]`)
      if (name === 'class') for (const one of value.split(/\s+/)) names.add(`.${one}`)
      if (name === 'id') names.add(`#${value}`)
    }
  }
  return names
}

/** The names within the head and the foot of a page, by the class of these: what a selector begins with there, it must find there. */
function regionsIn(html: string): ReadonlyMap<string, ReadonlySet<string>> {
  return new Map([...html.matchAll(/<(header|footer) class="?([\w-]+)"?>[\s\S]*?<\/\1>/g)].map(([whole, , name = '']) => [`.${name}`, namesIn(whole)]))
}

/** A list at its commas, those within brackets aside. */
function parts(list: string): readonly string[] {
  const found: string[] = []
  let depth = 0, start = 0
  for (let at = 0; at < list.length; at += 1) {
    if (list[at] === '(' || list[at] === '[') depth += 1
    else if (list[at] === ')' || list[at] === ']') depth -= 1
    else if (list[at] === ',' && depth === 0) {
      found.push(list.slice(start, at))
      start = at + 1
    }
  }
  return [...found, list.slice(start)].map(part => part.trim())
}

const INNERMOST = /:(is|where|has|not|nth-child|nth-last-child|nth-of-type)\(([^()]*)\)/

/** May the selector apply to a page of these names? */
function mayApply(selector: string, names: ReadonlySet<string>): boolean {
  const inner = INNERMOST.exec(selector)
  if (inner) {
    const [whole, name = '', list = ''] = inner, rest = (by: string): string => selector.slice(0, inner.index) + by + selector.slice(inner.index + whole.length)
    // what is tried within brackets is put in its place; a bracket that says what is not there, or in what order, asks for nothing
    return name === 'is' || name === 'where' || name === 'has' ? parts(list).some(part => mayApply(part, names) && mayApply(rest(''), names)) : mayApply(rest(''), names)
  }
  const asked = selector.replace(/::?[\w-]+/g, '').match(/\[[\w-]+|[.#]?[\w-]+(?=[^\]]*(?:\[|$))/g) ?? []
  return asked.every(each => names.has(each.startsWith('[') ? `${each}]` : each))
}

const tight = (text: string): string => text.replace(/\s+/g, ' ').replace(/ ?([{};,]) ?/g, '$1').replace(/: /g, ':').trim().replace(/;$/, '')

interface There {
  /** on a few kilobytes: no typeface, nor what forced colours ask for */
  readonly light: boolean
  readonly names: ReadonlySet<string>
  readonly regions: ReadonlyMap<string, ReadonlySet<string>>
}

/** Where a selector that begins with the head's or the foot's class is to be found. */
const namesFor = (selector: string, {names, regions}: There): ReadonlySet<string> => regions.get(/^\.[\w-]+(?= )/.exec(selector)?.[0] ?? '') ?? names

function write({head, text, rules}: Rule, there: There): string {
  if (there.light && (head.startsWith('@font-face') || /^@media \(forced-colors/.test(head))) return ''
  if (head === '') return `${tight(text ?? '')};`
  if (text === null) {
    const inside = rules.map(rule => write(rule, there)).join('')
    return inside === '' ? '' : `${tight(head)}{${inside}}`
  }
  const kept = head.startsWith('@') ? [head] : parts(head).filter(selector => mayApply(selector, namesFor(selector, there)))
  return kept.length === 0 ? '' : `${tight(kept.join(','))}{${tight(text)}}`
}

/**
 * @param light  without the typeface and what forced colours ask for
 * @returns for the HTML of a page, without the stylesheet, the rules that it may use
 */
export function styleUsed(style: string, light = true): (html: string) => string {
  const rules = parse(style)
  return html => {
    const there = {light, names: namesIn(html), regions: regionsIn(html)}
    const kept = rules.map(rule => write(rule, there)).join('\n').replace(/\n{2,}/g, '\n').trim()
    // a value of which nothing kept makes use, nor the page itself
    return kept.replace(/(--[\w-]+):[^;{}]*(?:;|(?=\}))/g, (whole, name: string) => (kept.includes(`var(${name})`) || html.includes(`var(${name})`) ? whole : ''))
  }
}

/** A rule for sheets with narrow edges and these words at the head of every one. */
export const runningHead = (words: string): string =>
  `@page{margin:14mm 13mm;@top-left{content:${cssString(words)};font:9pt serif;color:#495750}}`
