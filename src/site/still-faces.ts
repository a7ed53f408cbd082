/**
 * The stylesheet for a page that becomes a PDF: a typeface of all weights in one file can only be drawn into a PDF glyph by glyph, which is coarse on some
 * printers and in some readers, so its weights stand in for it one by one, from `fonts/still/`, which embed as they are.
 */
import type {Files} from './assets.ts'

/** `@font-face` of one file with all weights: `fonts/brygada-1918-latin-wght-italic.woff2` */
const FACE = /@font-face\s*\{[^}]*url\("?fonts\/([\w-]+)-wght-(\w+)\.woff2"?\)[^}]*\}/g

/** The heaviest there is in the file of all weights. */
const HEAVIEST = 700

/** A face without single weights in the folder stays as it is, such as that of a project's own stylesheet. */
export function withStillFaces(style: string, templates: Files): string {
  return style.replace(FACE, (whole, family: string, slope: string) => {
    const weights = [...templates.keys()].flatMap(path => {
      const [, name, weight, own] = /^fonts\/still\/([\w-]+)-(\d+)-(\w+)\.woff2$/.exec(path) ?? []
      return name === family && own === slope ? [Number(weight)] : []
    }).sort((a, b) => a - b)
    if (weights.length === 0) return whole
    return weights.map((weight, index) => {
      const last = (weights[index + 1] ?? HEAVIEST + 1) - 1
      return whole.replace(/url\([^)]*\)/, `url("fonts/still/${family}-${weight}-${slope}.woff2")`).replace(/font-weight:[^;}]*/, `font-weight: ${weight} ${last}`)
    }).join('\n')
  })
}
