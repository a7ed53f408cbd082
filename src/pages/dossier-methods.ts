/** How the dossier's figures are worked, in short: the same entries as the site's methods page, by their own words and sources, so that the two cannot differ. */
import type {Method} from './methods/method.ts'
import {METHODS} from './methods.ts'

export interface MethodLine {
  readonly title: string
  readonly question: string
  /** the first sentences of its definition; Markdown */
  readonly words: string
  readonly formula: string | null
  readonly source: string
}

/** Those whose figures a dossier holds, in its order. */
const TOLD = ['requirements', 'share', 'true-bred', 'mean', 'evenness', 'inbreeding', 'kinship', 'rate', 'effective-ancestors', 'founder-genomes', 'fixation', 'hatch', 'livability'] as const

const firstParagraph = (definition: string): string => definition.split('\n\n')[0]?.trim() ?? ''

export const methodLines = (): readonly MethodLine[] => TOLD.flatMap(id => {
  const method: Method | undefined = METHODS.find(each => each.id === id)
  return method ? [{title: method.title, question: method.question, words: firstParagraph(method.definition), formula: method.formula, source: method.source}] : []
})
