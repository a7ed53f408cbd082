/**
 * A chart drawn the same with fewer words: lines become paths, marks painted alike and touching nowhere one path, and what neighbours have in common is said once, of their group.
 * Vega says every mark by itself. Reads what `src/charts/tidy-svg.ts` gives: groups, paths, lines and texts, moved by `translate` at most.
 */
import {extentOf, movedPath, placesApart, type Extent} from './slim-path.ts'

interface Element {
  readonly name: string
  readonly attributes: ReadonlyMap<string, string>
  readonly children: readonly Node[]
}
type Node = Element | string

/** What says where a thing is, each for itself; what else may differ between neighbours painted alike. */
const OWN = new Set(['d', 'x', 'y', 'transform'])
const PLACE = new Set([...OWN, 'text-anchor'])
/** A group costs about as many letters as its tags. */
const GROUP_COST = '<g></g>'.length

/** @param svg  whole, as the renderer of charts gives it */
export function slimDrawing(svg: string): string {
  const start = /^<svg[^>]*>(?:<title[^>]*>[^<]*<\/title><desc[^>]*>[^<]*<\/desc>)?/.exec(svg)?.[0]
  if (start === undefined) throw new Error(`not a drawing: ${svg.slice(0, 80)}`)
  return start + read(svg.slice(start.length, svg.lastIndexOf('</svg>'))).map(slim).map(written).join('') + '</svg>'
}

function read(markup: string): Node[] {
  const open: {element: Omit<Element, 'children'>; children: Node[]}[] = []
  const top: Node[] = []
  for (const [, close, name, attributes, alone, text] of markup.matchAll(/<(\/)?([a-z]+)((?: [\w-]+="[^"]*")*)(\/)?>|([^<]+)/g)) {
    const into = open.at(-1)?.children ?? top
    if (text !== undefined) into.push(text)
    else if (close !== undefined) {
      const last = open.pop()
      if (last) (open.at(-1)?.children ?? top).push({...last.element, children: last.children})
    } else if (name !== undefined) {
      const element = {name, attributes: new Map([...(attributes ?? '').matchAll(/ ([\w-]+)="([^"]*)"/g)].map(([, key = '', value = '']) => [key, value]))}
      if (alone === undefined) open.push({element, children: []})
      else into.push({...element, children: []})
    }
  }
  return top
}

function slim(node: Node): Node {
  if (typeof node === 'string') return node
  const placed = plainlyPlaced(node)
  if (placed.name !== 'g') return placed
  const children = gathered(joined(placed.children.map(slim)))
  const [only] = children
  // a group that holds nothing but a group is one with it, unless both say the same of themselves
  if (children.length !== 1 || only === undefined || typeof only === 'string' || only.name !== 'g' || [...only.attributes.keys()].some(key => placed.attributes.has(key))) return {...placed, children}
  return {...placed, attributes: new Map([...placed.attributes, ...only.attributes]), children: only.children}
}

/** Where it is said in the fewest words: a text by x and y, a line as a path, a path by its own numbers. A pattern lies where its element does, so what it fills stays. */
function plainlyPlaced(element: Element): Element {
  const attributes = new Map(element.attributes)
  if (!attributes.has('stroke') && element.name !== 'g') attributes.delete('stroke-width')
  const by = /^translate\((-?[\d.]+),(-?[\d.]+)\)$/.exec(attributes.get('transform') ?? '')
  const x = Number(by?.[1] ?? 0), y = Number(by?.[2] ?? 0)
  if ((!by && attributes.has('transform')) || attributes.get('fill')?.startsWith('url') === true) return {...element, attributes}
  if (element.name === 'text' && !attributes.has('x') && !attributes.has('y')) {
    attributes.delete('transform')
    return {...element, attributes: new Map([...(x === 0 ? [] : [['x', String(x)] as const]), ...(y === 0 ? [] : [['y', String(y)] as const]), ...attributes])}
  }
  const line = element.name === 'line' && !attributes.has('x1') && !attributes.has('y1') ? `M0,0L${attributes.get('x2') ?? 0},${attributes.get('y2') ?? 0}` : undefined
  const path = line ?? (element.name === 'path' ? attributes.get('d') : undefined)
  const moved = path === undefined ? null : movedPath(path, x, y)
  if (moved === null) return {...element, attributes}
  for (const key of ['transform', 'x2', 'y2', 'd']) attributes.delete(key)
  return {...element, name: 'path', attributes: new Map([['d', moved], ...attributes])}
}

const paintOf = ({name, attributes}: Element, leave: ReadonlySet<string>): string =>
  [name, ...[...attributes].filter(([key]) => !leave.has(key)).map(([key, value]) => `${key}="${value}"`).sort()].join(' ')

/** Marks in one path at most: each is held against all the others in it. */
const MOST_IN_A_PATH = 400

/** Neighbouring paths painted alike as one: as a rule only where they touch nowhere, so that none lies on another. */
function joined(nodes: readonly Node[]): Node[] {
  const out: Node[] = []
  let extents: Extent[] = [], before = ''
  for (const node of nodes) {
    const isPath = typeof node !== 'string' && node.name === 'path' && !node.attributes.has('transform')
    const paint = isPath ? paintOf(node, new Set(['d'])) : '', path = isPath ? node.attributes.get('d') ?? '' : ''
    const extent = isPath ? extentOf(path, Number(node.attributes.get('stroke-width') ?? 0)) : null
    const last = out.at(-1)
    if (isPath && extent && last !== undefined && typeof last !== 'string' && paint === before && extents.length < MOST_IN_A_PATH && extents.every(other => placesApart(other, extent))) {
      out[out.length - 1] = {...last, attributes: new Map([...last.attributes, ['d', `${last.attributes.get('d') ?? ''}${path}`]])}
      extents.push(extent)
    } else {
      out.push(node)
      extents = extent ? [extent] : []
      before = paint
    }
  }
  return out
}

/** Neighbours painted alike in a group that says how, where that is shorter. */
function gathered(nodes: readonly Node[]): Node[] {
  const out: Node[] = []
  for (let from = 0; from < nodes.length;) {
    const first = nodes[from]
    if (first === undefined) break
    let to = from + 1
    if (typeof first !== 'string' && first.name !== 'g') {
      const paint = paintOf(first, PLACE)
      for (let next = nodes[to]; next !== undefined && typeof next !== 'string' && paintOf(next, PLACE) === paint; next = nodes[to]) to++
      const run = nodes.slice(from, to).filter(node => typeof node !== 'string')
      const shared = new Map([...first.attributes].filter(([key, value]) => !OWN.has(key) && run.every(({attributes}) => attributes.get(key) === value)))
      const length = [...shared].reduce((sum, [key, value]) => sum + key.length + value.length + 4, 0)
      if (length * (run.length - 1) > GROUP_COST) {
        const children = run.map(each => ({...each, attributes: new Map([...each.attributes].filter(([key]) => !shared.has(key)))}))
        out.push({name: 'g', attributes: shared, children})
        from = to
        continue
      }
    }
    out.push(...nodes.slice(from, to))
    from = to
  }
  return out
}

function written(node: Node): string {
  if (typeof node === 'string') return node
  const start = `<${node.name}${[...node.attributes].map(([key, value]) => ` ${key}="${value}"`).join('')}`
  return node.children.length === 0 ? `${start}/>` : `${start}>${node.children.map(written).join('')}</${node.name}>`
}
