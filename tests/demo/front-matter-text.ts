/** Front matter as a keeper would type it: short things in braces, one line a chick, quotes only where YAML needs them. */

export type Value = string | readonly Value[] | Entries
export interface Entries {
  readonly [key: string]: Value | undefined
}

const isEntries = (value: Value): value is Entries => typeof value === 'object' && !Array.isArray(value)

function inBraces(text: string): string {
  const plain = text !== '' && !/[,[\]{}"]|: |:$|\s#|^['&*!|>%@`#?-]\s*$|^[&*!|>%@`#"']/.test(text)
  return plain ? text : `"${text.replaceAll('\\', '\\\\').replaceAll('"', '\\"')}"`
}

export function flow(value: Value): string {
  if (typeof value === 'string') return inBraces(value)
  if (!isEntries(value)) return `[${value.map(flow).join(', ')}]`
  const parts = Object.entries(value).flatMap(([key, inner]) => (inner === undefined ? [] : [`${key}: ${flow(inner)}`]))
  return `{${parts.join(', ')}}`
}

/** A list of braces gets a line for each. */
function block(key: string, value: Value): string {
  const long = typeof value !== 'string' && !isEntries(value) && value.some(item => typeof item !== 'string' && isEntries(item))
  if (long && (value.length > 1 || flow(value).length > 90)) return `${key}:\n${value.map(item => `  - ${flow(item)}\n`).join('')}`
  return `${key}: ${flow(value)}\n`
}

export function frontMatter(entries: Entries): string {
  return `---\n${Object.entries(entries).map(([key, value]) => (value === undefined ? '' : block(key, value))).join('')}---\n`
}
