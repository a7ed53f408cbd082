/** JSON Schema of every kind of record, made from the shapes that read them, so that an editor completes and marks keys as they are written. */
import {KINDS, type KindId} from './kinds.ts'
import type {JsonSchema} from './shape.ts'

/** A whole schema document for the front matter of one kind. */
export function jsonSchemaOf(kind: KindId): JsonSchema {
  const {shape, title, purpose} = KINDS[kind]
  return {$schema: 'https://json-schema.org/draft/2020-12/schema', ...shape.schema, title, description: purpose}
}
