/** The sprite of patterns, eggs and axis cut down to what a page draws on: most draw on none of it. */
import {slimTags} from './slim-tags.ts'

const PIECE = /(<(?:symbol|pattern) id="[\w-]+"[\s\S]*?<\/(?:symbol|pattern)>\s*|<path id="[\w-]+"[^>]*\/>)/
const NAME = /^<(symbol|pattern|path) id="([\w-]+)"/
const EMPTY = /<defs>\s*<\/defs>\s*/

/** How a page calls a symbol, pattern or path: by address, or a pattern through a class of its name, which the stylesheet knows. */
const CALL = /(?:["=]|url\()#([\w-]+)["') >]|class="?(barred|speckled)["\s>]/g

/**
 * @param sprite  the sprite whole
 * @returns  for the rest of a page's HTML, the sprite it needs; empty when it draws on nothing
 */
export function slimSprite(sprite: string): (html: string) => string {
  const pieces = sprite.split(PIECE).map(text => ({text, id: NAME.exec(text)?.[2] ?? null}))
  const names = new Set(pieces.map(({id}) => id))
  /** what a symbol itself calls */
  const within = new Map(pieces.map(({text, id}) => [id, callsIn(text, names)]))
  const known = new Map<string, string>()
  return html => {
    const called = callsIn(html, names)
    for (const id of [...called]) for (const inner of within.get(id) ?? []) called.add(inner)
    const key = [...called].sort().join(' ')
    let slim = known.get(key)
    if (slim === undefined) {
      slim = called.size === 0 ? '' : slimTags(pieces.filter(({id}) => id === null || called.has(id)).map(({text}) => text).join('').replace(EMPTY, ''))
      known.set(key, slim)
    }
    return slim
  }
}

function callsIn(html: string, names: ReadonlySet<string | null>): Set<string> {
  const called = new Set<string>()
  for (const [, address, className] of html.matchAll(CALL)) {
    const id = address ?? className
    if (id !== undefined && names.has(id)) called.add(id)
  }
  return called
}
