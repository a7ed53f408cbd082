import type {Hatch} from '../logbook/book.ts'

/**
 * Does this setting tell of its parents? One that the keeper has set aside, with the reason, does not: it stays on record and on its own page,
 * and neither its eggs nor the lives of its chicks enter a share or a comparison.
 */
export const isJudged = ({setAside}: Pick<Hatch, 'setAside'>): boolean => setAside === null
