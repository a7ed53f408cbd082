/** The names of steps: how they are written, and what a written one means. `BC2F3` is the second backcross, then two generations inter se. */

export interface StepName {
  /** `F1`, `BC2`, or a name of the keeper's own */
  readonly base: string
  /** generation on that base: F2 is 2, BC2 is 1, BC2F3 is 3 */
  readonly round: number
  /** the donor's id, where several donors make it needed */
  readonly donor: string | null
  /** the strain crossed back to, where it is not the recurrent one */
  readonly to: string | null
}

/** `F1` and 3 → `F3`; `BC2` and 1 → `BC2`; `BC2` and 2 → `BC2F2` */
export function stepLabel({base, round, donor, to}: StepName): string {
  const name = base === 'F1' ? `F${round}` : round === 1 ? base : `${base}F${round}`
  return `${name}${donor === null ? '' : `-${donor}`}${to === null ? '' : ` to ${to}`}`
}

/** Reads a step's name; null when it is none. `BC2F1` is BC2. Names of the keeper's own are taken as written, with F2, F3 … after them. */
export function parseStepName(text: string, ownNames: readonly string[]): StepName | null {
  const words = text.trim()
  const own = [...ownNames].sort((a, b) => b.length - a.length).find(name => words === name || (words.startsWith(`${name}F`) && /^F\d+$/.test(words.slice(name.length))))
  if (own !== undefined) return {base: own, round: words === own ? 1 : Number(words.slice(own.length + 1)), donor: null, to: null}
  const match = /^(?:F(\d+)|BC(\d+)(?:F(\d+))?)(?:-(\S+))?(?: to (\S+))?$/.exec(words)
  if (!match) return null
  const [, filial, backcross, round, donor = null, to = null] = match
  if (Number(filial ?? backcross) === 0 || Number(round ?? 1) === 0) return null
  return filial === undefined ? {base: `BC${backcross ?? ''}`, round: Number(round ?? 1), donor, to} : {base: 'F1', round: Number(filial), donor, to}
}

/** The label of the step that a keeper's words mean: BC2 for BC2F1. Words that are no step stand for themselves. */
export function meantLabel(words: string, ownNames: readonly string[]): string {
  const name = parseStepName(words, ownNames)
  return name ? stepLabel(name) : words
}

/** Does what a keeper wrote agree with a label? A donor or strain that the keeper left out is no difference, nor is BC2F1 for BC2. */
export function sameStep(written: string, label: string, ownNames: readonly string[]): boolean {
  if (written.trim() === label) return true
  const [wrote, found] = [parseStepName(written, ownNames), parseStepName(label, ownNames)]
  if (!wrote || !found) return false
  return wrote.base === found.base && wrote.round === found.round && (wrote.donor === null || wrote.donor === found.donor) && (wrote.to === null || wrote.to === found.to)
}
