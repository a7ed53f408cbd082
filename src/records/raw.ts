/** Front matter as parsed, before any schema has read it. */

/** Text stays text; null is a key without a value. */
export type Raw = string | null | readonly Raw[] | RawMap
export interface RawMap {
  readonly [key: string]: Raw
}

export function isMap(raw: Raw): raw is RawMap {
  return typeof raw === 'object' && raw !== null && !Array.isArray(raw)
}

export function isList(raw: Raw): raw is readonly Raw[] {
  return Array.isArray(raw)
}
