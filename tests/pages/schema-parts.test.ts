import {Ajv2020} from 'ajv/dist/2020.js'
import {describe, expect, it} from 'vitest'
import {schemaInParts} from '../../src/pages/schema-parts.ts'
import {jsonSchemaOf} from '../../src/records/json-schema.ts'
import {KINDS, type KindId} from '../../src/records/kinds.ts'

/** The schema with what it names put back, wherever that stands. */
function putBack(value: unknown, definitions: Readonly<Record<string, unknown>>): unknown {
  if (Array.isArray(value)) return value.map(each => putBack(each, definitions))
  if (typeof value !== 'object' || value === null) return value
  const named = /^#\/\$defs\/(\d+)$/.exec('$ref' in value && typeof value.$ref === 'string' ? value.$ref : '')?.[1]
  if (named !== undefined) return putBack(definitions[named], definitions)
  return Object.fromEntries(Object.entries(value).filter(([key]) => key !== '$defs').map(([key, of]) => [key, putBack(of, definitions)]))
}

describe('schemaInParts(schema)', () => {
  it.each(Object.keys(KINDS) as KindId[])('says the same of a %s, in no more letters', kind => {
    const whole = jsonSchemaOf(kind), parts = schemaInParts(whole)
    expect(putBack(parts, (parts.$defs ?? {}) as Record<string, unknown>)).toEqual(JSON.parse(JSON.stringify(whole)))
    expect(JSON.stringify(parts).length).toBeLessThanOrEqual(JSON.stringify(whole).length)
    expect(() => new Ajv2020({strict: false}).compile(parts)).not.toThrow()
  })

  const date = {type: 'string', pattern: '^\\d{4}-\\d{2}-\\d{2}$', description: 'a date such as 2024-03-23'}

  it('says once what stands in it twice, and within that what stands elsewhere', () => {
    const span = {type: 'object', properties: {from: date, to: date}, description: 'from one day to another, both of them counted'}
    const parts = schemaInParts({type: 'object', properties: {lived: span, laid: {type: 'array', items: span}, died: date}})
    expect(parts.properties).toEqual({lived: {$ref: '#/$defs/2'}, laid: {type: 'array', items: {$ref: '#/$defs/2'}}, died: {$ref: '#/$defs/1'}})
    expect(parts.$defs).toEqual({1: date, 2: {...span, properties: {from: {$ref: '#/$defs/1'}, to: {$ref: '#/$defs/1'}}}})
    const accepts = new Ajv2020({strict: false}).compile(parts)
    expect(accepts({lived: {from: '2024-03-23'}, died: '2024-04-01'})).toBe(true)
    expect(accepts({lived: {from: 'in spring'}})).toBe(false)
  })

  it('leaves alone what is short, stands once, or only looks like a schema', () => {
    for (const schema of [{properties: {a: {}, b: {}, c: {type: 'string'}, d: {type: 'string'}}}, {properties: {a: date}}, {properties: {a: {const: {of: date}}, b: {enum: [date, date]}}}]) expect(schemaInParts(schema)).toEqual(schema)
  })
})
