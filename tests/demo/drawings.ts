/**
 * Renders the demo's pictures from two drawings of our own: `node --import tsx tests/demo/drawings.ts content/photos`. A bird seen from the
 * other side, a tail set higher, a comb of another kind: each is the same drawing with a piece exchanged.
 */
import {mkdirSync, readFileSync} from 'node:fs'
import {join} from 'node:path'
import sharp from 'sharp'

const drawing = (name: string) => readFileSync(new URL(`../../templates/drawings/${name}.svg`, import.meta.url), 'utf8')

const HEN_COMB = /<path d="M88 92[^>]*\/><path d="M92 87[^>]*\/>/
const COMBS = {
  single: '<path d="M90 95L85 72L95 81L96 56L106 73L112 47L119 73L130 55L131 79L143 70L133 98Q110 86 90 95Z" fill="#96342e"/>',
  coarse: '<path d="M88 92C83 82 90 70 98 70C98 56 110 50 115 60C122 52 135 58 132 70C139 75 136 88 124 87C112 83 98 84 88 92Z" fill="#96342e"/><path d="M93 86C100 74 112 66 118 70M104 82C112 74 122 72 129 76" fill="none" stroke="#6f211e" stroke-width="1.8"/>',
} as const

/** The part of the drawing that is looked at: left, top, width and height. */
const seen = (svg: string, box: string) => svg.replace('viewBox="0 0 480 480"', `viewBox="${box}"`)
const mirrored = (svg: string) => svg.replace(/(<svg[^>]*>)([\s\S]*)(<\/svg>)/, '$1<g transform="translate(480 0) scale(-1 1)">$2</g>$3')
/** The cock's tail stands behind his body and turns about its root. */
const tailTurned = (svg: string, degrees: number) =>
  svg.replace(/<g fill="#1b2622">.*?<\/g><path[^>]*stroke="#5f7a70"[^>]*\/>/s, tail => `<g transform="rotate(${degrees} 322 196)">${tail}</g>`)

const HEAD = '34 30 130 130'

export function drawings(): Map<string, string> {
  const [cock, hen] = [drawing('cock'), drawing('hen')]
  return new Map([
    ['cock-24.png', cock],
    ['hen-24.png', hen],
    ['cockerel-23.png', tailTurned(cock, -17)],
    ['cockerel-25.png', mirrored(tailTurned(cock, 3))],
    ['pullet-25.png', mirrored(hen)],
    ['comb-pea.png', seen(hen, HEAD)],
    ['comb-coarse.png', seen(hen.replace(HEN_COMB, COMBS.coarse), HEAD)],
    ['comb-single.png', seen(hen.replace(HEN_COMB, COMBS.single), HEAD)],
  ])
}

const folder = process.argv[2]
if (folder !== undefined && process.argv[1]?.endsWith('drawings.ts')) {
  mkdirSync(folder, {recursive: true})
  for (const [name, svg] of drawings()) await sharp(Buffer.from(svg), {density: 96}).resize(720, 720).png({palette: true, colours: 64, effort: 10}).toFile(join(folder, name))
}
