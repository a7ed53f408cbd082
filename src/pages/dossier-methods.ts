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

/** The dossier has no room for the examples, nor then for where they are from. */
const withoutExample = (source: string): string => source.replace(/\s*The example\b[^.]*\.(?=\s|$)/g, '').trim()

export const methodLines = (): readonly MethodLine[] => TOLD.map(id => {
  const method: Method | undefined = METHODS.find(each => each.id === id)
  if (!method) throw new Error(`the methods have no entry ${id}`)
  return {title: method.title, question: method.question, words: firstParagraph(method.definition), formula: method.formula, source: withoutExample(method.source)}
})
