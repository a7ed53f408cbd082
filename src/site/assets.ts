/** The files of the templates folder that go into the site as they are: stylesheet, fonts with their licence, script, and drawings that a page asks for. */
export type Files = ReadonlyMap<string, string | Uint8Array>

const ALWAYS = /^(?:style\.css|site\.js|fonts\/[\w.-]+)$/
const DRAWING = /^drawings\/[\w.-]+\.svg$/

/** @param asked  site paths that pages link to */
export function assetsOf(templates: Files, asked: ReadonlySet<string>): Files {
  return new Map([...templates].filter(([path]) => ALWAYS.test(path) || (DRAWING.test(path) && asked.has(path))))
}

/** Of a folder's files those that are text. */
export const textOf = (files: Files): ReadonlyMap<string, string> =>
  new Map([...files].filter((entry): entry is [string, string] => typeof entry[1] === 'string'))
