/**
 * A JSON Schema with what stands in it many times said once, under `$defs`, and named where it is meant. It accepts the same, and editors say the same of it.
 * Source: JSON Schema draft 2020-12, core, 8.2.3.1 "Direct references with $ref" and 8.2.4 "Schema re-use with $defs".
 */

type Schema = Readonly<Record<string, unknown>>

/** Keys under which a schema stands, a list of them, or a map of names to them. Nothing else is one, whatever it looks like. */
const ONE = new Set(['items', 'additionalProperties', 'propertyNames', 'contains', 'not', 'if', 'then', 'else'])
const MANY = new Set(['anyOf', 'oneOf', 'allOf', 'prefixItems'])
const NAMED = new Set(['properties', 'patternProperties', 'dependentSchemas'])

const isSchema = (value: unknown): value is Schema => typeof value === 'object' && value !== null && !Array.isArray(value)

/** The schema with another in place of each that stands in it. */
function withParts(schema: Schema, change: (part: Schema) => Schema): Schema {
  const part = (value: unknown): unknown => (isSchema(value) ? change(value) : value)
  return Object.fromEntries(Object.entries(schema).map(([key, value]) => {
    if (ONE.has(key)) return [key, part(value)]
    if (MANY.has(key) && Array.isArray(value)) return [key, value.map(part)]
    return [key, NAMED.has(key) && isSchema(value) ? Object.fromEntries(Object.entries(value).map(([name, of]) => [name, part(of)])) : value]
  }))
}

const REFERENCE = '{"$ref":"#/$defs/00"}'.length
/** Fewer letters won are not worth a look elsewhere for whoever reads it. */
const WORTH = 30

/** How many letters it saves to say a part once. */
const saved = (text: string, times: number): number => (times - 1) * text.length - times * REFERENCE

/** The part whose repeats cost most; the first of equals. */
function costliest(schemas: readonly Schema[]): string | null {
  const times = new Map<string, number>()
  const count = (schema: Schema): Schema => withParts(schema, part => {
    const text = JSON.stringify(part)
    if (!('$ref' in part)) times.set(text, (times.get(text) ?? 0) + 1)
    return count(part)
  })
  schemas.forEach(count)
  let best: string | null = null, most = WORTH
  for (const [text, count] of times) {
    const gain = saved(text, count)
    if (gain > most) [best, most] = [text, gain]
  }
  return best
}

/** @param schema  without `$defs` of its own */
export function schemaInParts(schema: Schema): Schema {
  let whole = schema, definitions: Schema[] = []
  for (let text = costliest([whole]); text !== null; text = costliest([whole, ...definitions])) {
    const reference = {$ref: `#/$defs/${definitions.length + 1}`}, found = text
    const replaced = (part: Schema): Schema => (JSON.stringify(part) === found ? reference : withParts(part, replaced))
    const definition = JSON.parse(found) as Schema
    whole = withParts(whole, replaced)
    definitions = [...definitions.map(each => withParts(each, replaced)), definition]
  }
  return definitions.length === 0 ? whole : {...whole, $defs: Object.fromEntries(definitions.map((definition, index) => [String(index + 1), definition]))}
}
