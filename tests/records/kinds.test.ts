import {Ajv2020} from 'ajv/dist/2020.js'
import {FAILSAFE_SCHEMA, load} from 'js-yaml'
import {describe, expect, it} from 'vitest'
import {parse} from 'yaml'
import {jsonSchemaOf} from '../../src/records/json-schema.ts'
import {KINDS, type KindId} from '../../src/records/kinds.ts'
import type {Kind} from '../../src/records/schema/kind.ts'
import {idOf, ownerOf} from '../../src/records/places.ts'
import {TABLE_FORMATS} from '../../src/records/table-formats.ts'
import {readFiles} from './reading.ts'

const KIND_IDS = Object.keys(KINDS) as KindId[]
const exampleFile = (kind: KindId) => KINDS[kind].files.replace(/<[^>]*>/g, 'example')
const frontOf = (example: string) => example.split(/^---$/m)[1] ?? ''

describe.each(KIND_IDS)('a record of the kind %s', kind => {
  it('stands where its kind says', () => {
    expect(ownerOf(exampleFile(kind))).toEqual({what: 'record', kind})
  })

  it('reads its example without a fault', () => {
    const {records, problems} = readFiles({[exampleFile(kind)]: KINDS[kind].example})
    expect(problems).toEqual([])
    expect(records[kind].map(({file, id}) => [file, id])).toEqual([[exampleFile(kind), idOf(exampleFile(kind))]])
  })

  it('reads its other examples without a fault', () => {
    const {more = []}: Kind = KINDS[kind]
    for (const {title, example} of more) expect(readFiles({[exampleFile(kind)]: example}).problems, title).toEqual([])
  })

  it('has a JSON Schema that takes the example, as an editor reads it and as we do, and refuses a key that is not known', () => {
    const ajv = new Ajv2020({strict: false})
    const validate = ajv.compile(jsonSchemaOf(kind))
    const example = frontOf(KINDS[kind].example)
    for (const data of [parse(example), load(example, {schema: FAILSAFE_SCHEMA})]) {
      expect(validate(data), ajv.errorsText(validate.errors)).toBe(true)
    }
    if (kind !== 'bird') expect(validate({...(parse(example) as object), 'no-such-key': 'x'})).toBe(false)
  })

  it('tells what every key is for', () => {
    for (const [key, field] of Object.entries(KINDS[kind].shape.fields ?? {})) expect(field.help, key).toMatch(/^\S.*\.$/)
  })
})

describe.each(TABLE_FORMATS)('$title', ({files, example, columns}) => {
  it('reads its example without a fault', () => {
    const {records, problems} = readFiles({[files.replace('<name>', 'example')]: example})
    expect(problems).toEqual([])
    expect(records.weighings.length + records.eggCounts.length + records.feedings.length + records.scorings.length).toBe(example.trim().split('\n').length - 1)
  })

  it('has its required columns in the example', () => {
    const headings = (example.split('\n')[0] ?? '').split(/[,;]/).map(heading => heading.replace(/ \(.*/, ''))
    for (const {name, required} of columns) if (required && !name.startsWith('<')) expect(headings).toContain(name)
  })
})
