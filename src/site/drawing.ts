/**
 * A keeper's SVG drawing made fit to publish: only elements and attributes that draw, only references inside the drawing itself.
 * Scripts, styles sheets, comments, metadata, titles and whatever a drawing program wrote about its user are gone. What is not well formed is refused whole.
 */

export interface Drawing {
  readonly svg: string
  /** units of its view box */
  readonly width: number
  readonly height: number
}

const ELEMENTS = new Set([
  'svg', 'g', 'defs', 'path', 'rect', 'circle', 'ellipse', 'line', 'polyline', 'polygon', 'linearGradient', 'radialGradient', 'stop', 'clipPath', 'mask',
  'pattern', 'symbol', 'use', 'text', 'tspan',
])
const PRESENTATION = new Set([
  'fill', 'fill-opacity', 'fill-rule', 'stroke', 'stroke-width', 'stroke-opacity', 'stroke-linecap', 'stroke-linejoin', 'stroke-dasharray', 'stroke-dashoffset',
  'stroke-miterlimit', 'opacity', 'color', 'stop-color', 'stop-opacity', 'clip-path', 'clip-rule', 'mask', 'display', 'visibility',
  'font-family', 'font-size', 'font-style', 'font-weight', 'text-anchor',
])
const GEOMETRY = new Set([
  'id', 'd', 'x', 'y', 'x1', 'y1', 'x2', 'y2', 'cx', 'cy', 'r', 'rx', 'ry', 'fx', 'fy', 'dx', 'dy', 'width', 'height', 'points', 'transform', 'viewBox',
  'preserveAspectRatio', 'gradientUnits', 'gradientTransform', 'spreadMethod', 'offset', 'clipPathUnits', 'maskUnits', 'maskContentUnits', 'patternUnits',
  'patternContentUnits', 'patternTransform', 'rotate', 'textLength', 'lengthAdjust',
])
const WORDS_IN = new Set(['text', 'tspan'])

const TOKEN = /<!--[\s\S]*?-->|<\?[\s\S]*?\?>|<!DOCTYPE[^[>]*>|<(\/?)([A-Za-z][\w:.-]*)((?:\s+[\w:.-]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(\/?)>|([^<]+)/gy
const ATTRIBUTE = /\s+([\w:.-]+)\s*=\s*(?:"([^"<]*)"|'([^'<]*)')/g

/** The drawing cleaned; null when it is not a well-formed SVG that states its size. */
export function cleanDrawing(text: string): Drawing | null {
  const source = text.replace(/^\uFEFF/, '').trim()
  const open: {name: string; kept: boolean}[] = []
  let svg = '', size: {width: number; height: number} | null = null
  TOKEN.lastIndex = 0
  while (TOKEN.lastIndex < source.length) {
    const token = TOKEN.exec(source)
    if (!token) return null
    const [, closing, name, attributes = '', empty, words] = token
    const inside = open.at(-1)
    if (words !== undefined) {
      if (inside?.kept && WORDS_IN.has(inside.name)) svg += safeWords(words)
    } else if (name === undefined) {
      continue
    } else if (closing === '/') {
      if (open.pop()?.name !== name) return null
      if (inside?.kept) svg += `</${name}>`
    } else {
      const first = open.length === 0
      if (first && (name !== 'svg' || size !== null)) return null
      const kept = ELEMENTS.has(name) && (inside?.kept ?? true)
      const own = attributesOf(attributes)
      if (first) size = sizeOf(own)
      if (first && size === null) return null
      if (kept) svg += `<${name}${first ? ' xmlns="http://www.w3.org/2000/svg"' : ''}${own.map(([key, value]) => ` ${key}="${value}"`).join('')}${empty}>`
      if (empty !== '/') open.push({name, kept})
    }
  }
  return open.length > 0 || size === null ? null : {svg, ...size}
}

type Attributes = readonly (readonly [string, string])[]

function attributesOf(text: string): Attributes {
  const kept = new Map<string, string>()
  for (const [, name = '', double, single] of text.matchAll(ATTRIBUTE)) {
    const value = (double ?? single ?? '').replaceAll('"', '&quot;')
    if (name === 'style') for (const [key, own] of declarations(value)) kept.set(key, own)
    else if (GEOMETRY.has(name) && harmless(value)) kept.set(name, value)
    else if (PRESENTATION.has(name) && harmless(value) && !kept.has(name)) kept.set(name, value)
    else if ((name === 'href' || name === 'xlink:href') && /^#[\w-]+$/.test(value)) kept.set('href', value)
  }
  return [...kept]
}

const declarations = (style: string): Attributes => style.split(';').flatMap(part => {
  const [key = '', ...rest] = part.split(':')
  const value = rest.join(':').trim()
  return PRESENTATION.has(key.trim()) && harmless(value) ? [[key.trim(), value] as const] : []
})

/** References lead nowhere but into the drawing itself; entities that would hide one are refused with it. */
function harmless(value: string): boolean {
  const bare = value.replace(/url\(\s*(?:&quot;|')?#[\w-]+(?:&quot;|')?\s*\)/g, '')
  return !/url|script|expression|data:|https?:|\/\/|@|&(?!amp;|lt;|gt;|quot;)/i.test(bare)
}

const safeWords = (words: string): string => words.replace(/&(?!(?:amp|lt|gt|quot|apos|#\d+|#x[\da-fA-F]+);)[\w#]*;?/g, '')

function sizeOf(attributes: Attributes): {width: number; height: number} | null {
  const value = new Map(attributes)
  const box = (value.get('viewBox') ?? '').trim().split(/[\s,]+/).map(Number)
  const [, , width, height] = box.length === 4 ? box : [0, 0, Number.parseFloat(value.get('width') ?? ''), Number.parseFloat(value.get('height') ?? '')]
  return width !== undefined && height !== undefined && width > 0 && height > 0 && Number.isFinite(width * height)
    ? {width: Math.round(width), height: Math.round(height)} : null
}
