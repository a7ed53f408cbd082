/** The sprite of symbols and patterns cut down to what a page draws on, since it stands in every page: most use a handful of its twenty. */

const PIECE = /(<(?:symbol|pattern) id="[\w-]+"[\s\S]*?<\/(?:symbol|pattern)>\s*)/
const NAME = /^<(symbol|pattern) id="([\w-]+)"/

/**
 * @param sprite  the layout's text around it may stand there too; only symbols and patterns are ever left out
 * @returns  for the rest of a page's HTML, the sprite it needs
 */
export function slimSprite(sprite: string): (html: string) => string {
  const pieces = sprite.split(PIECE).map(text => {
    const [, kind = null, id = ''] = NAME.exec(text) ?? []
    return {text, kind, id}
  })
  return html => {
    const symbols = pieces.filter(({kind, id}) => kind === 'symbol' && html.includes(`"#${id}"`)).map(({text}) => text).join('')
    return pieces.map(({text, kind, id}) => {
      if (kind === null) return text
      // a pattern is called by address, or by the stylesheet through a class of its name
      const needed = kind === 'symbol' ? html.includes(`"#${id}"`) : html.includes(id) || symbols.includes(`#${id})`)
      return needed ? text : ''
    }).join('')
  }
}
