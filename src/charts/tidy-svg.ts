/** Vega's SVG made fit to stand in a page: title and description with ids of their own, numbers to two decimals, nothing that does not draw. */

const WRAPPER = /^<svg[^>]*?\swidth="([\d.]+)"\sheight="([\d.]+)"[^>]*>/

/** @throws Error when the text is not an SVG of Vega's making, or holds something that is not a number */
export function tidySvg(svg: string, {id, title, description}: {readonly id: string; readonly title: string; readonly description: string}): string {
  const wrapper = WRAPPER.exec(svg)
  if (!wrapper) throw new Error(`chart ${id}: not an SVG: ${svg.slice(0, 80)}`)
  if (/NaN|undefined|Infinity/.test(svg)) throw new Error(`chart ${id}: something in it is not a number`)
  const [whole, width, height] = wrapper
  const drawing = emptied(svg.slice(whole.length, svg.lastIndexOf('</svg>'))
    .replace(/<rect width="[^"]*" height="[^"]*" fill="transparent"\/?>(<\/rect>)?/, '')
    .replace(/<path class="(?:background|foreground)"[^>]*?(?:\/>|><\/path>)/g, '')
    .replace(/ (?:role|class|aria-[a-z]+|font-family|font-size|pointer-events|display|opacity|stroke-miterlimit|stroke-opacity|fill-opacity)="[^"]*"/g,
      attribute => (/^ (?:font-size="16px"|(?:opacity|stroke-opacity|fill-opacity)="1"|stroke-miterlimit="10"|(?:role|class|aria|font-family|pointer|display))/.test(attribute) ? '' : attribute))
    .replace(/ transform="translate\(0,0\)"/g, '')
    .replace(/ text-anchor="start"/g, '')
    .replace(/-?\d+\.\d{3,}(?:e-?\d+)?/g, rounded))
  return `<svg class="marks" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${id}-title ${id}-desc">`
    + `<title id="${id}-title">${escaped(title)}</title><desc id="${id}-desc">${escaped(description)}</desc>${drawing}</svg>`
}

/** Two decimals, away from zero alike on both sides. */
function rounded(number: string): string {
  const value = Number(number)
  return String((Math.sign(value) * Math.round(Math.abs(value) * 100)) / 100)
}

/** Without groups that hold nothing or say nothing. */
function emptied(drawing: string): string {
  const saysSomething: boolean[] = []
  let slim = drawing.replace(/<g( [^>]*)?>|<\/g>/g, tag => {
    if (tag !== '</g>') saysSomething.push(tag !== '<g>')
    return (tag === '</g>' ? saysSomething.pop() : saysSomething.at(-1)) ? tag : ''
  })
  for (let before = ''; before !== slim;) {
    before = slim
    slim = slim.replace(/<g [^>]*><\/g>/g, '')
  }
  return slim
}

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')
