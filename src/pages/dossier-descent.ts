/** Descent for the dossier: how closely each step is bred, and what is left of the founders. */
import type {Findings} from '../findings/study.ts'
import type {NumberedTable, References} from './dossier-behind.ts'
import {FOUNDERS, stepPath} from './links.ts'
import {figured, limits, listWords, NOTHING, percent, percentSign, rounded, sizeRange} from './numbers.ts'
import type {Cell} from './page.ts'

/** A row a step: F with its range over who the parents may be, kinship, what a generation of the closed phase cost, and how far back descent is known. */
export function closenessTable({closeness, ladder}: Findings, refs: References): NumberedTable | null {
  if (closeness.length === 0) return null
  const {name, ...head} = refs.table('descent')
  return {
    ...head, columns: [
      {head: 'Step'}, {head: 'Birds', number: true}, {head: 'Mean F, %', number: true}, {head: 'Highest, %', number: true}, {head: 'Mean kinship, %', number: true},
      {head: 'Rise since the step before, %', number: true}, {head: 'Generations known', number: true}, {head: 'Behind it'},
    ],
    rows: closeness.map((of): readonly Cell[] => {
      const step = ladder.find(each => each.label === of.step), birds = step?.kind === 'reached' ? step.birds : []
      const range = percent(of.meanLow) === percent(of.meanHigh) ? '' : ` (${limits({low: of.meanLow, high: of.meanHigh})})`
      return [
        of.step, String(of.birds), `${percent(of.mean)}${range}`, percent(of.most.f), percent(of.kinship), of.rate ? percent(of.rate.value).replace('-', '−') : NOTHING, rounded(of.generations, 1),
        refs.to({of: `${name}, ${of.step}`, birds, records: birds.map(({at}) => at), page: stepPath(of.step)}),
      ]
    }),
  }
}

/** `No chick of BC4 wore a band, so it is not in the table.` Nothing where every step stands in it. */
export function notInTable({closeness, ladder}: Findings): string {
  const steps = ladder.filter(step => step.kind === 'reached' && !closeness.some(of => of.step === step.label)).map(({label}) => label)
  return steps.length === 0 ? '' : `No chick of ${listWords(steps, 'or')} wore a band, so ${steps.length === 1 ? 'it is' : 'they are'} not in it.`
}

/** `The 27 living breeders stand on what 5.2 founders would give that had each bred alike …` */
export function foundersWords({founders}: Findings, refs: References): {readonly text: string; readonly ref: {readonly text: string; readonly link: string}} | null {
  if (founders === null) return null
  const {birds, of, effectiveFounders, effectiveAncestors: {low, high}, founderGenomes, meanKinship, endingLines} = founders
  const between = rounded(low, 1) === rounded(high, 1) ? rounded(low, 1) : sizeRange(rounded(low, 1), rounded(high, 1))
  const ending = endingLines.length === 0 ? '' : ` Lines that go on in one sex alone, or in neither: ${endingLines.map(({bird}) => bird.band).join(', ')}.`
  return {
    text: `The ${figured(birds.length, of === 'breeders' ? 'living breeder' : 'living bird')} of the breed stand on as much as ${rounded(effectiveFounders, 1)} founders of equal share, ${between} ancestors of equal share and ${rounded(founderGenomes, 1)} founder genomes; their mean kinship, each with itself, is ${percentSign(meanKinship)}.${ending}`,
    ref: refs.to({of: 'What is left of the founders', birds, records: birds.map(({at}) => at), page: FOUNDERS}),
  }
}
