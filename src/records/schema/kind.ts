/** A kind of record: where its files lie, what they hold, and an example that the tests read. */
import type {Shape} from '../shape.ts'

export interface Kind<T = unknown> {
  readonly id: string
  /** where its files lie in the folder of records */
  readonly files: string
  readonly title: string
  /** what it is for, in a sentence of the reference page */
  readonly purpose: string
  readonly shape: Shape<T>
  /** a whole file that reads without a fault */
  readonly example: string
  /** other files of the kind that look different, each whole too */
  readonly more?: readonly {readonly title: string; readonly example: string}[]
}

export const kind = <T>(definition: Kind<T>): Kind<T> => definition
