/** The stylesheet for paper: each weight of the typeface from a file of its own. */
import {describe, expect, it} from 'vitest'
import {styleOnly} from '../../src/site/one-file.ts'
import {withStillFaces} from '../../src/site/still-faces.ts'
import {readTemplates} from '../../src/site/templates-folder.ts'

const FACE = '@font-face {\n  font-family: "F";\n  src: url("fonts/f-wght-normal.woff2") format("woff2");\n  font-weight: 400 700;\n}'
const files = (...paths: string[]) => new Map(paths.map(path => [path, new Uint8Array()]))

describe('withStillFaces(style, templates)', () => {
  it('has a face for each weight there is, up to the next', () => {
    const style = withStillFaces(`${FACE}\np {}`, files('fonts/still/f-600-normal.woff2', 'fonts/still/f-400-normal.woff2', 'fonts/still/f-500-italic.woff2', 'fonts/still/g-500-normal.woff2'))
    expect(style.match(/url\("[^"]*"\)|font-weight: [\d ]+/g)).toEqual(['url("fonts/still/f-400-normal.woff2")', 'font-weight: 400 599', 'url("fonts/still/f-600-normal.woff2")', 'font-weight: 600 700'])
    expect(style).toMatch(/\}\np \{\}$/)
  })

  it('leaves a face as it is of which there are no single weights', () => {
    expect(withStillFaces(FACE, files('fonts/still/g-400-normal.woff2'))).toBe(FACE)
    const own = FACE.replace('f-wght-normal', 'own')
    expect(withStillFaces(own, files('fonts/still/f-400-normal.woff2'))).toBe(own)
  })

  it('finds those of the house', () => {
    const templates = readTemplates(null).files, style = withStillFaces(styleOnly(templates), templates)
    expect(style.match(/@font-face/g)).toHaveLength(5)
    expect(style).not.toContain('-wght-')
    for (const [, path = ''] of style.matchAll(/url\("(fonts\/[^"]*)"\)/g)) expect(templates.has(path)).toBe(true)
  })
})
